/**
 * What published rules ask of risers and treads, as data.
 *
 * The limits differ from place to place and year to year: the local code decides.
 */

import { constant, length } from '../quantity/make';
import { type AnyPair, paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Source } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';
import * as sources from './sources';

/** Whose rules the steps must meet. */
export type StepRules = 'dwelling' | 'accessible' | 'public';

/** Limits of risers and treads. */
export interface StepLimits {
  readonly highest: () => Quantity<'length'>;
  /** The highest as the same rule has it in metric, where that is more. */
  readonly highestMetric?: () => Quantity<'length'>;
  readonly lowest: () => Quantity<'length'>;
  readonly narrowest: () => Quantity<'length'>;
  /** For sentences: where these limits hold. */
  readonly where: string;
  readonly because: Words;
  readonly source: Source;
  /** From how many risers on a handrail is due. */
  readonly handrailFrom: number;
  /** The most that one flight rises. */
  readonly tallest: () => Quantity<'length'>;
  readonly tallestSource: Source;
  /** How high a guard is. */
  readonly guard: AnyPair;
  readonly guardSource: Source;
  /** Where the lowest riser comes from, when it is another source. */
  readonly lowestSource: Source;
}

/** The least riser under both of its names, 4 in and 100 mm. */
export const LOWEST_METRIC: () => Quantity<'length'> = constant(() => length('100 mm'));

const inches = (text: string): (() => Quantity<'length'>) => constant(() => length(text));

const LOW = /*#__PURE__*/ paired('length', '4 in', '100 mm');
const HIGH = /*#__PURE__*/ paired('length', '7 in', '180 mm');
const TREAD = /*#__PURE__*/ paired('length', '11 in', '280 mm');

/** The limits, by rules. */
export const STEP_LIMITS: Record<StepRules, StepLimits> = {
  dwelling: {
    highest: inches('7-3/4 in'),
    lowest: inches('4 in'),
    narrowest: inches('10 in'),
    where: 'in most dwellings',
    handrailFrom: 4,
    tallest: inches('147 in'),
    tallestSource: sources.IRC_FLIGHTS,
    guard: /*#__PURE__*/ paired('length', '36 in', '914 mm'),
    guardSource: sources.IRC_GUARDS,
    because: /*#__PURE__*/ (() =>
      say`steps of a dwelling: risers up to ${{ high: paired('length', '7-3/4 in', '197 mm') }}, treads from ${{ tread: paired('length', '10 in', '254 mm') }}; below ${{ low: LOW }} by practice only`)(),
    source: sources.IRC_STAIRS,
    lowestSource: sources.CC_STEPS,
  },
  accessible: {
    highest: inches('7 in'),
    lowest: inches('4 in'),
    narrowest: inches('11 in'),
    highestMetric: inches('180 mm'),
    where: 'on accessible steps',
    handrailFrom: 1,
    tallest: inches('12 ft'),
    tallestSource: sources.PUBLIC_FLIGHTS,
    guard: /*#__PURE__*/ paired('length', '42 in', '1067 mm'),
    guardSource: sources.PUBLIC_GUARDS,
    because: /*#__PURE__*/ (() =>
      say`steps on an accessible exit: risers of ${{ low: LOW }} to ${{ high: HIGH }}, treads from ${{ tread: TREAD }}`)(),
    source: sources.ABA_STAIRS,
    lowestSource: sources.ABA_STAIRS,
  },
  public: {
    highest: inches('7 in'),
    lowest: inches('4 in'),
    narrowest: inches('11 in'),
    highestMetric: inches('180 mm'),
    where: 'on steps of public buildings',
    handrailFrom: 1,
    tallest: inches('12 ft'),
    tallestSource: sources.PUBLIC_FLIGHTS,
    guard: /*#__PURE__*/ paired('length', '42 in', '1067 mm'),
    guardSource: sources.PUBLIC_GUARDS,
    because: /*#__PURE__*/ (() =>
      say`steps of other buildings: risers of ${{ low: LOW }} to ${{ high: HIGH }}, treads from ${{ tread: TREAD }}`)(),
    source: sources.BOCA_STAIRS,
    lowestSource: sources.BOCA_STAIRS,
  },
};
