/** Rules of days that are published: how long after placing a slab or a wall is left alone, in ordinary weather. */
import { time } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import { BEALL_TIMES } from './sources';

/** What published rules of days are for. */
export type PublishedUse =
  | 'forms of slabs off'
  | 'people on it'
  | 'light cars on it'
  | 'heavy trucks on it'
  | 'forms of walls and footings off'
  | 'frame of a house on walls and footings';

/** A rule of days that is published. */
export interface PublishedTime {
  /** What for. */
  readonly use: PublishedUse;
  /** After placing, in ordinary weather. */
  readonly after: Quantity<'time'>;
  /** Title of the source. */
  readonly source: string;
}

const PUBLISHED: readonly (readonly [use: PublishedUse, after: string, source: Source])[] = [
  ['forms of slabs off', '24 h', BEALL_TIMES],
  ['people on it', '1 day', BEALL_TIMES],
  ['people on it', '3 day', COMMON_PRACTICE],
  ['light cars on it', '7 day', BEALL_TIMES],
  ['heavy trucks on it', '28 day', COMMON_PRACTICE],
  ['forms of walls and footings off', '3 day', BEALL_TIMES],
  ['frame of a house on walls and footings', '14 day', BEALL_TIMES],
];

/** All of them. */
export const publishedTimes = (): PublishedTime[] =>
  PUBLISHED.map(([use, after, source]) => ({ use, after: time(after), source: source.title }));

/** The first rule for a use. */
export const timeFor = (use: PublishedUse): Quantity<'time'> =>
  (publishedTimes().find((rule) => rule.use === use) as PublishedTime).after;
