/**
 * What published rules ask of risers and treads, as data.
 *
 * The limits differ from place to place and year to year: the local code decides.
 */

import { constant, length } from '../quantity/make';
import { type AnyPair, type Paired, paired, sameInBoth } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/parts';
import type { Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import { handrail, handrailOneSide, handrails } from './cautions';
import * as sources from './sources';

/** Whose rules the steps must meet. */
export type StepRules =
  | 'dwelling'
  | 'accessible'
  | 'public'
  | 'approved-document-k'
  | 'approved-document-k-general'
  | 'din-18065'
  | 'ncc'
  | 'nbc';

/** Limits of risers and treads. */
export interface StepLimits {
  readonly highest: Paired<'length'>;
  /** From where on to ask which edition is enforced, where one is noticeably stricter than the other. */
  readonly asked?: Paired<'length'>;
  readonly lowest: Paired<'length'>;
  readonly narrowest: Paired<'length'>;
  /** What twice the riser and the tread come to, at least and at most, where the rules say so. */
  readonly stride?: readonly [least: Paired<'length'>, most: Paired<'length'>];
  /** For sentences: where these limits hold. */
  readonly where: string;
  readonly source: Source;
  /** From how many risers on a handrail is due. */
  readonly handrailFrom: number;
  /** How much a flight rises from which on a handrail is due. */
  readonly handrailRise?: Paired<'length'>;
  readonly handrail: (source: Source, limit: Quantity, actual: Quantity) => Caution;
  /** The most that one flight rises. */
  readonly tallest?: Paired<'length'>;
  /** The most risers of one flight. */
  readonly mostRisers?: number;
  readonly tallestSource: Source;
  /** Open sides higher than this need a guard. */
  readonly guardAbove: Paired<'length'>;
  /** How far out the ground below is looked at, where the rules say so. */
  readonly guardWithin?: AnyPair;
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
const GUARD_ABOVE = /*#__PURE__*/ paired('length', '30 in', '762 mm');
const GUARD_WITHIN = /*#__PURE__*/ paired('length', '36 in', '914 mm');

/** How deep a landing is at least. */
export const LEAST_LANDING: Paired<'length'> = /*#__PURE__*/ paired('length', '36 in', '900 mm');

/** Why the rules of a dwelling are taken where none are named. */
export const DWELLING_BECAUSE = /*#__PURE__*/ (() =>
  say`steps of a dwelling: risers up to ${{ high: DWELLING_HIGH }}, treads from ${{ tread: DWELLING_TREAD }}; below ${{ low: LOW }} by practice only`)();

const PUBLIC = {
  highest: HIGH,
  lowest: LOW,
  narrowest: TREAD,
  asked: STRICTER,
  handrailFrom: 1,
  handrail: (_: Source, limit: Quantity, actual: Quantity) =>
    handrails(sources.PUBLIC_HANDRAILS, limit, actual),
  tallest: PUBLIC_FLIGHT,
  tallestSource: sources.PUBLIC_FLIGHTS,
  guardAbove: GUARD_ABOVE,
  guardWithin: GUARD_WITHIN,
  guard: /*#__PURE__*/ paired('length', '42 in', '1067 mm'),
  guardSource: sources.PUBLIC_GUARDS,
};

type Metric = 'highest' | 'lowest' | 'narrowest' | 'guardAbove' | 'guard';
type Sized = 'handrailRise' | 'tallest';

/** Rules that are written in millimeters alone, all out of one work. */
const inMillimeters = (
  sizes: Readonly<Record<Metric, number>>,
  stride: readonly [number, number] | undefined,
  {
    handrailRise,
    tallest,
    ...flight
  }: Pick<StepLimits, 'handrailFrom' | 'mostRisers'> &
    Partial<Pick<StepLimits, 'handrail'>> &
    Partial<Record<Sized, number>>,
  source: Source,
): (() => StepLimits) =>
  constant(() => {
    const mm = (n: number): Paired<'length'> => sameInBoth(length(`${n} mm`));
    const { highest, lowest, narrowest, guardAbove, guard } = sizes;
    return {
      highest: mm(highest),
      lowest: mm(lowest),
      narrowest: mm(narrowest),
      guardAbove: mm(guardAbove),
      guard: mm(guard),
      ...(handrailRise && { handrailRise: mm(handrailRise) }),
      ...(tallest && { tallest: mm(tallest) }),
      ...(stride && { stride: [mm(stride[0]), mm(stride[1])] as const }),
      where: 'under these rules',
      handrail: handrailOneSide,
      source,
      tallestSource: source,
      guardSource: source,
      lowestSource: source,
      ...flight,
    };
  });

const LIMITS: Readonly<Record<StepRules, () => StepLimits>> = {
  dwelling: constant(() => ({
    highest: DWELLING_HIGH,
    lowest: LOW,
    narrowest: DWELLING_TREAD,
    where: 'in most dwellings',
    handrailFrom: 4,
    handrail,
    tallest: paired('length', '147 in', '3734 mm'),
    tallestSource: sources.IRC_FLIGHTS,
    guardAbove: GUARD_ABOVE,
    guardWithin: GUARD_WITHIN,
    guard: paired('length', '36 in', '914 mm'),
    guardSource: sources.IRC_GUARDS,
    source: sources.IRC_STAIRS,
    lowestSource: sources.CC_STEPS,
  })),
  accessible: constant(() => ({
    ...PUBLIC,
    where: 'on accessible steps',
    source: sources.ABA_STAIRS,
    lowestSource: sources.ABA_STAIRS,
  })),
  public: constant(() => ({
    ...PUBLIC,
    where: 'on steps of public buildings',
    source: sources.BOCA_STAIRS,
    lowestSource: sources.BOCA_STAIRS,
  })),
  'approved-document-k': /*#__PURE__*/ inMillimeters(
    { highest: 220, lowest: 150, narrowest: 220, guardAbove: 600, guard: 900 },
    [550, 700],
    { handrailFrom: 1, handrailRise: 600 },
    sources.ADK_STAIRS,
  ),
  'approved-document-k-general': /*#__PURE__*/ inMillimeters(
    { highest: 170, lowest: 150, narrowest: 280, guardAbove: 380, guard: 1100 },
    [550, 700],
    { handrailFrom: 1, handrail: handrails, mostRisers: 12 },
    sources.ADK_STAIRS,
  ),
  'din-18065': /*#__PURE__*/ inMillimeters(
    { highest: 190, lowest: 140, narrowest: 260, guardAbove: 1000, guard: 900 },
    [590, 650],
    { handrailFrom: 3, mostRisers: 18 },
    sources.DIN_STAIRS,
  ),
  ncc: /*#__PURE__*/ inMillimeters(
    { highest: 190, lowest: 115, narrowest: 240, guardAbove: 1000, guard: 1000 },
    [550, 700],
    {
      handrailFrom: 1,
      handrailRise: 1000,
      mostRisers: 18,
    },
    sources.NCC_STAIRS,
  ),
  nbc: /*#__PURE__*/ inMillimeters(
    { highest: 200, lowest: 125, narrowest: 255, guardAbove: 600, guard: 1070 },
    undefined,
    { handrailFrom: 4, tallest: 3700 },
    sources.NBC,
  ),
};

/** Every set of rules, for fields. */
export const STEP_RULES: readonly StepRules[] = /*#__PURE__*/ Object.keys(LIMITS) as StepRules[];

/** The limits of a set of rules. */
export const stepLimits = (rules: StepRules): StepLimits => LIMITS[rules]();
