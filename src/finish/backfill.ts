/**
 * Making good the ground after the forms are off: fill along the edges, topsoil, seed and straw, and the fall of the
 * ground away from the building.
 *
 * The gap along stripped forms is a prism, `V = L × D × (b + m × D ÷ 2)`, with a bottom `b` wide and a side that runs out
 * `m` for each unit of depth; fill is bought loose, `V × (1 + s)`. Topsoil settles, `T = A × d × (1 + s)`. Seed is sown by
 * what of it is pure and alive, `M = A × r ÷ (p × g)`.
 */
import { gradeLimits } from '../grade/limits';
import * as faults from '../quantity/faults';
import { area, constant, mass, ratio, slope, time } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { type Field, fields, maybe, quantity, wholeNumber, yesOrNo } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { anyOf, given } from '../reckoning/together';
import { carried, wholeUnits } from '../reckoning/whole';
import { noDeicer } from '../weather/cautions';
import * as cautions from './cautions';
import {
  BALE,
  BATTER,
  CONCRETE_AGE,
  GAP_DEPTH,
  GAP_WIDTH,
  GREEN,
  GROUND_FALL,
  LIVE,
  RUN,
  SETTLES,
  SOD_DEPTH,
  SOWN,
  STRAWED,
  STRIPPED,
} from './ordinary';
import { SEED_CORNELL, SEED_MINNESOTA, SEED_YORK } from './sources';

/** The gap that is left where forms were. */
export interface GapInput {
  /** Length of the edges that were formed. */
  readonly length: QuantityInput<'length'>;
  /** Width at the bottom: the forms and the stakes behind them. */
  readonly width: QuantityInput<'length'>;
  /** Depth from the finished ground to the bottom of the gap. */
  readonly depth: QuantityInput<'length'>;
  /** How far the far side runs out for each unit of depth; by default it is upright. */
  readonly batter?: QuantityInput<'ratio'>;
  /** How much more the fill is loose than tamped. */
  readonly looser: QuantityInput<'ratio'>;
  /** True where it is filled with earth kept from the dig; by default fill is bought. */
  readonly fromDig?: boolean;
}

/** Topsoil to be spread. */
export interface TopsoilInput {
  /** Area. */
  readonly area: QuantityInput<'area'>;
  /** Depth when it has settled. */
  readonly depth: QuantityInput<'length'>;
  /** How much it settles, as a share of that. */
  readonly settles: QuantityInput<'ratio'>;
}

/** Seed to be sown. */
export interface SeedInput {
  /** Area. */
  readonly area: QuantityInput<'area'>;
  /** Pure live seed on an area: `4 lb per 1000 ft2`. */
  readonly rate: QuantityInput<'mass-per-area'>;
  /** Share of the bag that is the seed, by its label. */
  readonly purity?: QuantityInput<'ratio'>;
  /** Share of that which sprouts, by its label. */
  readonly germination?: QuantityInput<'ratio'>;
}

/** Straw on the seed. */
export interface StrawInput {
  /** Area. */
  readonly area: QuantityInput<'area'>;
  /** Straw on an area: `70 lb per 1000 ft2`. */
  readonly rate: QuantityInput<'mass-per-area'>;
  /** Weight of a bale, where bales are wanted. */
  readonly bale?: QuantityInput<'mass'>;
}

/** How the finished ground falls away from the building. */
export interface GroundInput {
  /** How far it falls. */
  readonly fall: QuantityInput<'length'>;
  /** Over this distance from the wall. */
  readonly over: QuantityInput<'length'>;
}

/** Input of {@link backfill}. Give at least one of its parts. */
export interface BackfillInput {
  /** The gap that is left where forms were. */
  readonly gap?: GapInput;
  /** Topsoil to be spread. */
  readonly topsoil?: TopsoilInput;
  /** Seed to be sown. */
  readonly seed?: SeedInput;
  /** Straw on the seed. */
  readonly straw?: StrawInput;
  /** How the finished ground falls away from the building. */
  readonly ground?: GroundInput;
  /** Age of the concrete when the gap is filled. */
  readonly age?: QuantityInput<'time'>;
  /** True where it freezes in its first winter. */
  readonly freezes?: boolean;
}

/** What published rates of seed are for, and who says so. */
export type SeedPublished =
  | 'Kentucky bluegrass (Cornell)'
  | 'perennial ryegrass (Cornell)'
  | 'tall fescue (Cornell)'
  | 'Kentucky bluegrass, home lawns (Minnesota)'
  | 'bluegrass with fine fescue or ryegrass (Minnesota)'
  | 'permanent grass (York County)';

/** What published texts give for seed, on an area. */
export interface PublishedSeeding {
  /** What is sown, and who says so. */
  readonly of: SeedPublished;
  /** The lower end. */
  readonly least: Quantity<'mass-per-area'>;
  /** The upper end. */
  readonly most: Quantity<'mass-per-area'>;
}

/** Figures of {@link backfill}. */
export interface BackfillFigures {
  /** The gap, tamped full. */
  readonly gapVolume?: Quantity<'volume'>;
  /** Fill for it, loose: to bring, or to keep from the dig. */
  readonly looseFill?: Quantity<'volume'>;
  /** Topsoil to bring. */
  readonly topsoil?: Quantity<'volume'>;
  /** Seed to buy. */
  readonly seed?: Quantity<'mass'>;
  /** Share of the seed that is pure and alive. */
  readonly pureLiveSeed?: Quantity<'ratio'>;
  /** Straw to bring. */
  readonly straw?: Quantity<'mass'>;
  /** Whole bales of it. */
  readonly bales?: Quantity<'count'>;
  /** How the ground falls. */
  readonly groundSlope?: Quantity<'slope'>;
  /** Rates of seed that published texts give; they hang on the grass, so none is assumed. */
  readonly publishedSeeding?: readonly PublishedSeeding[];
}

type Parsed = Read<BackfillInput>;
type Part<K extends keyof Parsed> = NonNullable<Parsed[K]>;
type Ratio = Quantity<'ratio'>;

const ONE = constant(() => ratio('1:1'));
const ALL = constant(() => ratio('100%'));
const UPRIGHT = constant(() => ratio('0:1'));
const FULL = constant(() => slope('100%'));
/** One in three: as steep as a bank is mown. */
const STEEP = constant(() => slope('1:3'));
/** A pound on 1,000 ft2. */
const ONE_POUND = constant(() => mass('1 lb').over(area('1000 ft2')));
const POOR = constant(() => ratio('70%'));
/** Seven days: when most edges bear a tamper beside them. */
const HARD = constant(() => time('7 day'));

/** Six weeks of mild and dry weather before any salt. */
const DRIED = constant(() => time('42 day'));

/** Pounds on 1,000 ft2. */
const SEEDING = [
  ['Kentucky bluegrass (Cornell)', '1', '3'],
  ['perennial ryegrass (Cornell)', '4', '6'],
  ['tall fescue (Cornell)', '6', '8'],
  ['Kentucky bluegrass, home lawns (Minnesota)', '2', '3'],
  ['bluegrass with fine fescue or ryegrass (Minnesota)', '3', '4'],
  ['permanent grass (York County)', '5', '5'],
] as const;

function filled(
  { length: L, width: b, depth: D, batter, looser: s }: Part<'gap'>,
  pad: Pad,
): Partial<BackfillFigures> {
  const m = batter ?? UPRIGHT();
  const unit = pad.system === 'metric' ? 'm3' : 'yd3';
  const half = m.times(D).over(wholeNumber(2));
  const prism = D.times(b.plus(half)).times(L).in(unit);
  const V = pad.step('gap', 'V = L × D × (b + m × D ÷ 2)', { L, D, b, m }, prism);
  const loose = pad.step('fill, loose', 'F = V × (1 + s)', { V, s }, V.times(ONE().plus(s)));
  return { gapVolume: V, looseFill: loose };
}

function spread({ area: A, depth: d, settles: s }: Part<'topsoil'>, pad: Pad): Partial<BackfillFigures> {
  const unit = pad.system === 'metric' ? 'm3' : 'yd3';
  const T = A.times(d).times(ONE().plus(s)).in(unit);
  return { topsoil: pad.step('topsoil', 'T = A × d × (1 + s)', { A, d, s }, T) };
}

const LABELED: Readonly<Record<'purity' | 'germination', readonly [because: string, override: string]>> = {
  purity: ['as though nothing but seed were in the bag', 'Give purity by the label of the bag'],
  germination: ['as though every seed sprouted', 'Give germination by the label of the bag'],
};

/** A share by the label of the bag; all of it, where that is not given, so that the seed comes out at the least. */
function labeled(name: keyof typeof LABELED, given: Ratio | undefined, pad: Pad): Ratio {
  if (given) return given;
  const [because, override] = LABELED[name];
  pad.assume({ name: `seed.${name}`, value: ALL(), because, override, source: SEED_CORNELL });
  return ALL();
}

function sown({ area: A, rate: r, purity, germination }: Part<'seed'>, pad: Pad): Partial<BackfillFigures> {
  const [p, g] = [labeled('purity', purity, pad), labeled('germination', germination, pad)];
  const f: Ratio = pad.step('pure live seed', 'f = p × g', { p, g }, p.times(g).in('%'));
  if (f.lessThan(POOR())) pad.caution(cautions.poorSeed(POOR(), f));
  const M = pad.step('seed', 'M = A × r ÷ f', { A, r, f }, A.times(r).over(f));
  return { seed: M, pureLiveSeed: f, publishedSeeding: published(pad) };
}

/** By weight on an area of the job's own units. */
function published({ system }: Pad): PublishedSeeding[] {
  const unit = system === 'metric' ? 'g/m2' : 'lb/ft2';
  const on = (pounds: string): Quantity<'mass-per-area'> =>
    ONE_POUND()
      .times(ratio(`${pounds}:1`))
      .in(unit);
  return SEEDING.map(([of, least, most]) => ({ of, least: on(least), most: on(most) }));
}

function strawed({ area: A, rate: r, bale }: Part<'straw'>, pad: Pad): Partial<BackfillFigures> {
  const M = pad.step('straw', 'S = A × r', { A, r }, A.times(r));
  return { straw: M, ...(bale ? { bales: wholeUnits('bales', M, bale, 'straw.bale', pad) } : {}) };
}

function sloped({ fall: f, over: o }: Part<'ground'>, pad: Pad): Partial<BackfillFigures> {
  const rule = gradeLimits(pad.system).find(({ use }) => use === 'ground-by-building');
  const u = FULL();
  const groundSlope = pad.step('fall of the ground', 'q = u × (f ÷ o)', { u, f, o }, u.times(f.over(o)));
  if (rule?.least && groundSlope.lessThan(rule.least)) {
    const caution = groundSlope.sign() < 0 ? cautions.groundRunsBack : cautions.flatGround;
    pad.caution(caution(rule.least, groundSlope, rule.source));
  }
  if (groundSlope.greaterThan(STEEP())) pad.caution(cautions.steepGround(STEEP(), groundSlope));
  return { groundSlope };
}

/** What can be made good. */
const PARTS = ['gap', 'topsoil', 'seed', 'straw', 'ground'] as const;

function reckon(input: Parsed, pad: Pad): BackfillFigures {
  const { gap, topsoil, seed, straw, ground, age, freezes } = input;
  if (!PARTS.some((part) => input[part])) refuse('', faults.giveSomeOf(PARTS));
  const figures = {
    ...(gap ? filled(gap, pad) : {}),
    ...(topsoil ? spread(topsoil, pad) : {}),
    ...(seed ? sown(seed, pad) : {}),
    ...(straw ? strawed(straw, pad) : {}),
    ...(ground ? sloped(ground, pad) : {}),
  };
  if (freezes) pad.caution(noDeicer(DRIED()));
  if (gap && age?.lessThan(HARD())) pad.caution(cautions.earlyBackfill(HARD(), age));
  return figures;
}

function door(): Field<Parsed> {
  return fields(
    {
      gap: maybe(
        fields({
          length: quantity('length', 'length', 'positive', STRIPPED),
          width: quantity('length', 'width', 'positive', GAP_WIDTH),
          depth: quantity('length', 'depth', 'positive', GAP_DEPTH),
          batter: maybe(quantity('ratio', 'batter', 'not-negative', BATTER)),
          looser: quantity('ratio', 'looser', 'not-negative', SETTLES),
          fromDig: maybe(yesOrNo('fromDig')),
        }),
      ),
      topsoil: maybe(
        fields({
          area: quantity('area', 'area', 'positive', GREEN),
          depth: quantity('length', 'depth', 'positive', SOD_DEPTH),
          settles: quantity('ratio', 'settles', 'not-negative', SETTLES),
        }),
      ),
      seed: maybe(
        fields({
          area: quantity('area', 'area', 'positive', GREEN),
          rate: quantity('mass-per-area', 'rate', 'positive', SOWN),
          purity: maybe(quantity('ratio', 'purity', 'positive', LIVE)),
          germination: maybe(quantity('ratio', 'germination', 'positive', LIVE)),
        }),
      ),
      straw: maybe(
        fields({
          area: quantity('area', 'area', 'positive', GREEN),
          rate: quantity('mass-per-area', 'rate', 'positive', STRAWED),
          bale: maybe(quantity('mass', 'bale', 'positive', BALE)),
        }),
      ),
      ground: maybe(
        fields({
          fall: quantity('length', 'fall', 'any', GROUND_FALL),
          over: quantity('length', 'over', 'positive', RUN),
        }),
      ),
      age: maybe(quantity('time', 'age', 'positive', CONCRETE_AGE)),
      freezes: maybe(yesOrNo('freezes')),
    },
    anyOf(...PARTS.map((part) => given(part))),
  );
}

/**
 * Making good the ground after the forms are off: fill, topsoil, seed, straw, fall.
 *
 * @param input - the gap along the edges, topsoil, seed, straw and the fall of the ground, each where it is wanted
 * @returns what to bring of each, and the fall
 * @throws {InputError} `give-one-of` where none is given; `too-many` bales; quantities that cannot be read or are not greater than zero
 * @source closed forms; rates of seed from Cornell University, the University of Minnesota and a conservation district
 * @example
 * ```ts
 * import { backfill } from 'flatwork-reckoner';
 *
 * const { figures } = backfill({
 *   gap: { length: '92 ft', width: '6 in', depth: '10 in', looser: '20%' },
 *   seed: { area: '600 ft2', rate: '0.004 lb/ft2', purity: '95%', germination: '85%' },
 * });
 * figures.looseFill?.format(); // '1.70 yd3'
 * figures.seed?.format(); // '3 lb'
 * ```
 */
export const backfill: Calculation<BackfillInput, BackfillFigures> = /*#__PURE__*/ define({
  id: 'backfill',
  title: 'Backfill, topsoil and seed',
  version: 1,
  sources: [SEED_CORNELL, SEED_MINNESOTA, SEED_YORK],
  limits: [carried('bales')],
  input: door,
  reckon,
  takes: (_figures, { gap }) => [
    { item: 'fill', from: 'looseFill', of: { kept: gap?.fromDig ? 'from the dig' : undefined } },
    { item: 'topsoil', from: 'topsoil' },
    { item: 'seed', from: 'seed' },
    { item: 'straw', from: 'straw' },
  ],
});
