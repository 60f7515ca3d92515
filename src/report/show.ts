/** Quantities in the units and the marks of numbers of who reads. */
import type { Dimension } from '../quantity/dimensions';
import { partsOfText } from '../quantity/parts';
import { type Quantity, unitShown } from '../quantity/quantity';
import { type System, type UnitId, usualUnit } from '../quantity/units';

/** A language: from an English sentence or word, as it stands in the data, to the same in that language. */
export type Language = { readonly [english: string]: string };

/** How a result is to be shown. */
export interface View {
  /** Show every quantity in the units of this family; by default each as it was given or is usual for it. */
  readonly system?: System;
  /** A language tag for the marks of numbers, such as `de-DE`; by default they are written as `1234.5`. */
  readonly locale?: string;
  /** Words of another language. */
  readonly language?: Language;
}

/** Smaller than this they are given in the small unit of the family, as on drawings. */
const SMALL_METRIC = 1;

/**
 * Units of the two families that are told as each other, where the usual ones of a dimension do not fit. The first
 * pair that holds a unit serves.
 */
const LIKE: readonly Readonly<Record<System, string>>[] = [
  { customary: 'in', metric: 'mm' },
  { customary: 'in', metric: 'cm' },
  { customary: 'in2', metric: 'mm2' },
  { customary: 'in2', metric: 'cm2' },
  { customary: 'gal', metric: 'L' },
  { customary: 'ton', metric: 'tonne' },
  { customary: 'pcf', metric: 'kg/m3' },
  { customary: 'lb/yd3', metric: 'kg/m3' },
  { customary: 'kip', metric: 'kN' },
  { customary: 'psf', metric: 'kPa' },
  { customary: 'ksf', metric: 'kPa' },
  { customary: 'in/h', metric: 'mm/h' },
  { customary: 'gal/min', metric: 'L/s' },
  { customary: 'ft3/s', metric: 'L/s' },
];

const isSmall = (q: Quantity): boolean =>
  q.dimension === 'length' && Math.abs((q as Quantity<'length'>).toNumber('m')) < SMALL_METRIC;

/** The unit of a family that says the same in the trade. */
function likeUnit(q: Quantity, system: System): UnitId {
  const unit = unitShown(q);
  const own = unit.system;
  if (own === undefined || own === system) return unit.id;
  const like = LIKE.find((pair) => pair[own] === unit.id)?.[system];
  if (like) return like;
  if (system === 'metric' && isSmall(q)) return 'mm';
  return usualUnit(q.dimension as Exclude<Dimension, 'money'>, system).id;
}

/** A quantity in the units of the view. */
export const viewed = (q: Quantity, { system }: View): Quantity => (system ? q.in(likeUnit(q, system)) : q);

/** Text of a quantity with the marks of the locale. */
export const localized = (text: string, { locale }: View): string =>
  locale === undefined
    ? text
    : partsOfText(text, locale)
        .map(({ value }) => value)
        .join('');
