/**
 * What published rules ask of risers and treads, as data.
 *
 * The limits differ from place to place and year to year: the local code decides.
 */

import { type AnyPair, type Paired, paired } from '../quantity/paired';
import type { Source } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';
import * as sources from './sources';

/** Whose rules the steps must meet. */
export type StepRules = 'dwelling' | 'accessible' | 'public';

/** Limits of risers and treads. */
export interface StepLimits {
  readonly highest: Paired<'length'>;
  /** From where on to ask which edition is enforced, where one is noticeably stricter than the other. */
  readonly asked?: Paired<'length'>;
  readonly lowest: Paired<'length'>;
  readonly narrowest: Paired<'length'>;
  /** For sentences: where these limits hold. */
  readonly where: string;
  readonly because: Words;
  readonly source: Source;
  /** From how many risers on a handrail is due. */
  readonly handrailFrom: number;
  /** The most that one flight rises. */
  readonly tallest: Paired<'length'>;
  readonly tallestSource: Source;
  /** How high a guard is. */
  readonly guard: AnyPair;
  readonly guardSource: Source;
  /** Where the lowest riser comes from, when it is another source. */
  readonly lowestSource: Source;
}

const LOW = /*#__PURE__*/ paired('length', '4 in', '100 mm');
const HIGH = /*#__PURE__*/ paired('length', '7 in', '180 mm');
const TREAD = /*#__PURE__*/ paired('length', '11 in', '280 mm');
/** The 7 in of the customary edition, which the metric one has as 180 mm. */
const STRICTER = /*#__PURE__*/ paired('length', '7 in', '178 mm');
const DWELLING_HIGH = /*#__PURE__*/ paired('length', '7-3/4 in', '196 mm');
const DWELLING_TREAD = /*#__PURE__*/ paired('length', '10 in', '254 mm');
const PUBLIC_FLIGHT = /*#__PURE__*/ paired('length', '12 ft', '3.66 m');

/** Open sides higher than this need a guard. */
export const GUARD_ABOVE: Paired<'length'> = /*#__PURE__*/ paired('length', '30 in', '762 mm');
/** How deep a landing is at least. */
export const LEAST_LANDING: Paired<'length'> = /*#__PURE__*/ paired('length', '36 in', '900 mm');

/** The limits, by rules. */
export const STEP_LIMITS: Record<StepRules, StepLimits> = {
  dwelling: {
    highest: DWELLING_HIGH,
    lowest: LOW,
    narrowest: DWELLING_TREAD,
    where: 'in most dwellings',
    handrailFrom: 4,
    tallest: /*#__PURE__*/ paired('length', '147 in', '3734 mm'),
    tallestSource: sources.IRC_FLIGHTS,
    guard: /*#__PURE__*/ paired('length', '36 in', '914 mm'),
    guardSource: sources.IRC_GUARDS,
    because: /*#__PURE__*/ (() =>
      say`steps of a dwelling: risers up to ${{ high: DWELLING_HIGH }}, treads from ${{ tread: DWELLING_TREAD }}; below ${{ low: LOW }} by practice only`)(),
    source: sources.IRC_STAIRS,
    lowestSource: sources.CC_STEPS,
  },
  accessible: {
    highest: HIGH,
    lowest: LOW,
    narrowest: TREAD,
    asked: STRICTER,
    where: 'on accessible steps',
    handrailFrom: 1,
    tallest: PUBLIC_FLIGHT,
    tallestSource: sources.PUBLIC_FLIGHTS,
    guard: /*#__PURE__*/ paired('length', '42 in', '1067 mm'),
    guardSource: sources.PUBLIC_GUARDS,
    because: /*#__PURE__*/ (() =>
      say`steps on an accessible exit: risers of ${{ low: LOW }} to ${{ high: HIGH }}, treads from ${{ tread: TREAD }}`)(),
    source: sources.ABA_STAIRS,
    lowestSource: sources.ABA_STAIRS,
  },
  public: {
    highest: HIGH,
    lowest: LOW,
    narrowest: TREAD,
    asked: STRICTER,
    where: 'on steps of public buildings',
    handrailFrom: 1,
    tallest: PUBLIC_FLIGHT,
    tallestSource: sources.PUBLIC_FLIGHTS,
    guard: /*#__PURE__*/ paired('length', '42 in', '1067 mm'),
    guardSource: sources.PUBLIC_GUARDS,
    because: /*#__PURE__*/ (() =>
      say`steps of other buildings: risers of ${{ low: LOW }} to ${{ high: HIGH }}, treads from ${{ tread: TREAD }}`)(),
    source: sources.BOCA_STAIRS,
    lowestSource: sources.BOCA_STAIRS,
  },
};
