/**
 * Measurements with their plus or minus: how low and how high a figure may be, which measurement it comes from, and the
 * chance that an order is short of it.
 *
 * Bounds are taken at the ends of every measurement. Where the figure only rises or only falls with each of them, as
 * found by trying it at quarters of the way, the least and the greatest are at such ends; where it does not, that is
 * said, and they are the least and greatest that were tried. The chance is that of a normal distribution whose standard
 * deviation is half of the plus or minus, for every measurement apart: a model, which nobody measured on your site.
 */
import { Decimal, ZERO } from '../quantity/decimal';
import type { Dimension } from '../quantity/dimensions';
import * as sharedFaults from '../quantity/faults';
import { canonicalValue, isQuantity, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { type Unit, unitOf } from '../quantity/units';
import { type Calculation, pathText, refuse } from '../reckoning/calculation';
import type { FigureSet } from '../reckoning/parts';
import { plainCopy } from '../reckoning/plain';
import type { Result } from '../reckoning/result';
import type { ReckonOptions } from '../reckoning/system';
import { say, type Words } from '../reckoning/words';
import type { AnyQuantityInput } from './claims';
import { runsWorth } from './effort';
import { asCalculation } from './estimate-check';
import { figureAt, figuresIn, pathOf } from './figure-places';
import type { Leaf } from './input-places';
import { chanceAbove } from './normal';
import { type AnyResult, figureNamed, leafAt, Runs, readGiven } from './varied';

/**
 * The plus or minus of measurements, by their paths in the input: `{ thickness: '1/2 in' }`; or as a share of what was
 * measured, `10%`, where that is no share or slope itself.
 */
export interface Measures {
  readonly [path: string]: AnyQuantityInput;
}

/** What else may be asked of {@link tolerances}. */
export interface ToleranceOptions extends ReckonOptions {
  /** The figures that matter; by default all that the measurements change. */
  readonly figures?: readonly string[];
  /** What is ordered of a figure, to be told the chance that it is short: `{ volume: '8 yd3' }`. */
  readonly ordered?: { readonly [figure: string]: AnyQuantityInput };
}

/** What one measurement contributes to a figure. */
export interface Contribution {
  /** Path of the measurement in the input. */
  readonly measure: string;
  /** Its plus or minus. */
  readonly tolerance: Quantity;
  /** By how much the figure is less when it alone is off. */
  readonly below: Quantity;
  /** By how much it is more. */
  readonly above: Quantity;
  /** Its share of all that makes the figure uncertain: of the sum of squares. */
  readonly share: Quantity<'ratio'>;
}

/** One figure with its bounds. */
export interface FigureTolerance {
  /** Path of the figure. */
  readonly figure: string;
  /** The least that it may be. */
  readonly low: Quantity;
  /** What it is with the measurements as they are. */
  readonly likely: Quantity;
  /** The most that it may be. */
  readonly high: Quantity;
  /**
   * How the bounds were found: `corners` where the figure only rises or only falls with each measurement, so that they
   * are bounds; `samples` where it does not, and they are the least and greatest that were tried.
   */
  readonly bounds: 'corners' | 'samples';
  /** What each measurement contributes, the greatest first. */
  readonly contributions: readonly Contribution[];
  /** The chance that what was ordered is less than the figure, by the normal model; where an order was given. */
  readonly shortChance?: Quantity<'ratio'>;
  /** What was ordered. */
  readonly ordered?: Quantity;
}

/** What {@link tolerances} says. */
export interface Tolerances<F extends FigureSet = FigureSet> {
  /** Id of the calculation. */
  readonly id: string;
  /** Each figure that the measurements change, or that was asked for. */
  readonly figures: readonly FigureTolerance[];
  /** The measurement to take again: the one that makes the first figure most uncertain. */
  readonly measureAgain?: string;
  /** In a sentence. */
  readonly says: Words;
  /** The model that the chance rests on. */
  readonly model: Words;
  /** The result with the measurements as they are. */
  readonly result: Result<F>;
}

/** More measurements than this have too many corners. */
const MOST = 12;
/** Up to here every corner is tried, and not only the two that the tries point to. */
const ALL_CORNERS = 5;
const LEAST_RUNS = 40;
const MOST_RUNS = 400;
const MOST_FIGURES = 60;

interface Measure {
  readonly leaf: Leaf;
  readonly tolerance: Quantity;
  /** How far it reaches below and above, as it is kept. */
  readonly below: Decimal;
  readonly above: Decimal;
}

/** Where each measurement stands, as a share of its reach. */
type Stand = readonly number[];

class Trials {
  private readonly runs: Runs;

  constructor(
    readonly measures: readonly Measure[],
    result: AnyResult,
    runs: Runs,
  ) {
    this.runs = runs;
    this.center = result;
  }

  readonly center: AnyResult;

  /** The result with every measurement off by a share of its reach. */
  at(stand: Stand): AnyResult | undefined {
    const changes = this.measures.flatMap(({ leaf, below, above }, i) => {
      const share = stand[i] ?? 0;
      const reach = share < 0 ? below : above;
      return share === 0 ? [] : [[leaf, canonicalValue(leaf.quantity).plus(reach.times(share))] as const];
    });
    return changes.length === 0 ? this.center : this.runs.with(changes);
  }
}

const alone = (n: number, i: number, share: number): Stand =>
  Array.from({ length: n }, (_, j) => (j === i ? share : 0));

const SHARES = [-1, -0.5, 0.5, 1] as const;

/** One measurement off alone, by shares of its reach. */
type Line = readonly (AnyResult | undefined)[];

type Path = readonly (string | number)[];

const amount = (result: AnyResult | undefined, path: Path): Decimal | undefined => {
  const q = result && figureAt(result.figures, path);
  return q && canonicalValue(q);
};

interface Tried {
  readonly lines: readonly Line[];
  readonly corners: readonly (AnyResult | undefined)[];
}

/** Whether a figure goes one way along a line: 1 up, -1 down, 0 not at all; `undefined` where it turns. */
function wayOf(line: Line, center: Decimal, path: Path): -1 | 0 | 1 | undefined {
  const [a, b, c, d] = line.map((one) => amount(one, path));
  if (!a || !b || !c || !d) return undefined;
  const all = [a, b, center, c, d];
  const signs = new Set(all.slice(1).map((one, i) => one.comparedTo(all[i] as Decimal)));
  if (signs.has(1) && signs.has(-1)) return undefined;
  return signs.has(1) ? 1 : signs.has(-1) ? -1 : 0;
}

function* cornersOf(n: number): Generator<Stand> {
  for (let bits = 0; bits < 2 ** n; bits += 1)
    yield Array.from({ length: n }, (_, i) => (Math.floor(bits / 2 ** i) % 2 === 0 ? -1 : 1));
}

function tryOut(trials: Trials): Tried {
  const n = trials.measures.length;
  const lines = trials.measures.map((_, i) => SHARES.map((share) => trials.at(alone(n, i, share))));
  const corners = n <= ALL_CORNERS ? [...cornersOf(n)].map((stand) => trials.at(stand)) : [];
  return { lines, corners };
}

interface Bounds {
  readonly low: Decimal;
  readonly high: Decimal;
  readonly bounds: FigureTolerance['bounds'];
}

/** The least and the greatest: at the two corners that the ways point to, at all corners, and of all that was tried. */
function boundsOf(trials: Trials, { lines, corners }: Tried, path: Path, center: Decimal): Bounds {
  const ways = lines.map((line) => wayOf(line, center, path));
  const known = ways.every((way) => way !== undefined);
  const ends = known
    ? [ways.map((way) => -(way as number)), ways.map((way) => way as number)].map((stand) => trials.at(stand))
    : [];
  const tried = [...ends, ...corners, ...lines.flat()];
  const values = [center, ...tried.flatMap((one) => amount(one, path) ?? [])];
  const whole = known && [...ends, ...corners].every((one) => amount(one, path) !== undefined);
  return { low: Decimal.min(...values), high: Decimal.max(...values), bounds: whole ? 'corners' : 'samples' };
}

const share = (part: Decimal): Quantity<'ratio'> => newQuantity('ratio', part, unitOf('ratio', '%') as Unit);

const squared = (a: Decimal): Decimal => a.times(a);

/** A difference of temperatures is one of their own. */
const apart = (like: Quantity, amountApart: Decimal): Quantity =>
  like.dimension === 'temperature'
    ? newQuantity(
        'temperature-difference',
        amountApart,
        unitOf('temperature-difference', unitShown(like).id) as Unit,
      )
    : newQuantity(like.dimension, amountApart, unitShown(like));

interface Effect {
  readonly measure: Measure;
  readonly below: Decimal;
  readonly above: Decimal;
  /** Half of what it moves the figure from end to end. */
  readonly half: Decimal;
}

function effectOf(measure: Measure, line: Line, path: Path, center: Decimal): Effect {
  const values = [center, ...line.flatMap((one) => amount(one, path) ?? [])];
  const below = center.minus(Decimal.min(...values));
  const above = Decimal.max(...values).minus(center);
  return { measure, below, above, half: below.plus(above).div(2) };
}

function contributionsOf(effects: readonly Effect[], like: Quantity): Contribution[] {
  const all = effects.reduce((sum, { half }) => sum.plus(squared(half)), ZERO);
  return [...effects]
    .sort((a, b) => b.half.comparedTo(a.half))
    .map(({ measure, below, above, half }) => ({
      measure: measure.leaf.at,
      tolerance: measure.tolerance,
      below: apart(like, below),
      above: apart(like, above),
      share: share(all.isZero() ? ZERO : squared(half).div(all)),
    }));
}

/** Whether a figure stands still over a part of what a measurement may be, and leaps elsewhere: it is bought in steps. */
function leaps({ lines }: Tried, path: Path, center: Decimal): boolean {
  return lines.some((line) => {
    const [a, b, c, d] = line.map((one) => amount(one, path));
    const all = [a, b, center, c, d];
    const still = all.slice(1).filter((one, i) => one !== undefined && all[i]?.equals(one));
    return still.length > 0 && still.length < all.length - 1;
  });
}

/** How far out it is looked, in standard deviations: beyond, there is next to no chance. */
const FARTHEST = 5;
const HALVINGS = 12;

/**
 * The chance that a figure in steps is more than what was ordered: how many standard deviations all measurements must
 * be off together, each by its part, before it is.
 */
function shortInSteps(
  trials: Trials,
  { lines }: Tried,
  path: Path,
  ordered: Decimal,
  { center, effects }: { readonly center: Decimal; readonly effects: readonly Effect[] },
): Quantity<'ratio'> | undefined {
  const ways = lines.map((line) => wayOf(line, center, path));
  const all = effects.reduce((sum, { half }) => sum.plus(squared(half)), ZERO).sqrt();
  if (all.isZero() || ways.some((way) => way === undefined)) return undefined;
  const parts = effects.map(({ half }, i) => half.div(all).toNumber() * (ways[i] as number));
  // A plus or minus is two standard deviations.
  const isShort = (out: number): boolean | undefined =>
    amount(trials.at(parts.map((part) => (part * out) / 2)), path)?.greaterThan(ordered);
  let [least, most] = [-FARTHEST, FARTHEST];
  const [low, high] = [isShort(least), isShort(most)];
  if (low === undefined || high === undefined) return undefined;
  if (low || !high) return share(low ? new Decimal(1) : ZERO);
  for (let n = 0; n < HALVINGS; n += 1) {
    const middle = (least + most) / 2;
    if (isShort(middle)) most = middle;
    else least = middle;
  }
  return share(chanceAbove(new Decimal(most)));
}

/** The chance that the figure is more than what was ordered. */
function shortOf(ordered: Quantity, center: Decimal, effects: readonly Effect[]): Quantity<'ratio'> {
  const deviation = effects.reduce((sum, { half }) => sum.plus(squared(half.div(2))), ZERO).sqrt();
  const above = canonicalValue(ordered).minus(center);
  if (deviation.isZero()) return share(above.isNegative() ? new Decimal(1) : ZERO);
  return share(chanceAbove(above.div(deviation)));
}

function figureTolerance(
  trials: Trials,
  tried: Tried,
  at: string,
  ordered: Quantity | undefined,
): FigureTolerance {
  const path = pathOf(at) as Path;
  const likely = figureAt(trials.center.figures, path) as Quantity;
  const center = canonicalValue(likely);
  const { low, high, bounds } = boundsOf(trials, tried, path, center);
  const effects = trials.measures.map((measure, i) =>
    effectOf(measure, tried.lines[i] as Line, path, center),
  );
  const unit = unitShown(likely);
  const inSteps =
    ordered && leaps(tried, path, center)
      ? shortInSteps(trials, tried, path, canonicalValue(ordered), { center, effects })
      : undefined;
  return {
    figure: at,
    low: newQuantity(likely.dimension, low, unit),
    likely,
    high: newQuantity(likely.dimension, high, unit),
    bounds,
    contributions: contributionsOf(effects, likely),
    ...(ordered ? { ordered, shortChance: inSteps ?? shortOf(ordered, center, effects) } : {}),
  };
}

type Given = Readonly<Record<string, unknown>>;

const asObject = (x: unknown, at: string): Given =>
  typeof x === 'object' && x !== null && !Array.isArray(x) && !isQuantity(x)
    ? (x as Given)
    : refuse(at, sharedFaults.wrongType('it', 'an object with paths and quantities'));

const SHARE = /^\s*(\d{1,3}(?:\.\d{1,6})?)\s*%\s*$/;
/** Of these a percentage is an amount of their own, and no share of them. */
const IN_PERCENT: ReadonlySet<Dimension> = /*#__PURE__*/ new Set(['ratio', 'slope', 'temperature', 'count']);

/** `5%` of a density is a twentieth of it. */
function asShare(given: unknown, { dimension, quantity }: Leaf): Quantity | undefined {
  const [, percent] = (typeof given === 'string' && !IN_PERCENT.has(dimension) && SHARE.exec(given)) || [];
  if (percent === undefined) return undefined;
  return newQuantity(dimension, canonicalValue(quantity).times(percent).div(100), unitShown(quantity));
}

function readMeasures(calculation: Parameters<typeof leafAt>[0], input: unknown, given: Given): Measure[] {
  const names = Object.keys(given);
  if (names.length === 0) refuse('measures', sharedFaults.tooFew('measures', 1));
  if (names.length > MOST) refuse('measures', sharedFaults.tooMany('measures', MOST));
  return names.map((name) => {
    const at = pathText(['measures', name]);
    const leaf = leafAt(calculation, input, name, at);
    const like = leaf.dimension === 'temperature' ? apart(leaf.quantity, ZERO) : leaf.quantity;
    const tolerance = (asShare(given[name], leaf) ?? readGiven(given[name], like, at)).abs();
    const reach = canonicalValue(tolerance);
    return { leaf, tolerance, below: reach, above: reach };
  });
}

const ALL = new Decimal(1);
const NEXT_TO_ALL = new Decimal('0.999999');

/**
 * What may not be so low or so high reaches as far as it may: nothing is narrower than nothing, no air damper than wet.
 */
function withinReason(measure: Measure, runs: Runs): Measure {
  const { leaf, below, above } = measure;
  const own = canonicalValue(leaf.quantity);
  const may = (x: Decimal): boolean => runs.with([[leaf, x]]) !== undefined;
  const toNothing = !own.isNegative() && own.lessThan(below) && !may(own.minus(below));
  // Where nothing at all is refused, next to nothing is not.
  const least = toNothing ? (may(ZERO) ? own : own.times(NEXT_TO_ALL)) : below;
  const room = ALL.minus(own);
  const isShare = leaf.dimension === 'ratio' && !room.isNegative() && room.lessThan(above);
  return { ...measure, below: least, above: isShare && !may(own.plus(above)) ? room : above };
}

/** The figures asked for, or all that any measurement changes. */
function figuresFor(trials: Trials, { lines }: Tried, asked: unknown): string[] {
  if (asked !== undefined && !Array.isArray(asked))
    refuse('figures', sharedFaults.wrongType('figures', 'a list'));
  if (Array.isArray(asked)) {
    asked.forEach((one, i) => {
      figureNamed(trials.center, one, `figures[${i}]`);
    });
    return [...new Set(asked as string[])].slice(0, MOST_FIGURES);
  }
  const all = figuresIn(trials.center.figures).slice(0, MOST_FIGURES);
  const changes = ({ at, quantity }: { at: string; quantity: Quantity }): boolean =>
    lines.flat().some((one) => {
      const value = amount(one, pathOf(at) as Path);
      return value !== undefined && !value.equals(canonicalValue(quantity));
    });
  return all.filter(changes).map(({ at }) => at);
}

function readOrdered(result: AnyResult, given: unknown): Map<string, Quantity> {
  const entries = given === undefined ? [] : Object.entries(asObject(given, 'ordered'));
  return new Map(
    entries.map(([name, q]) => {
      const at = pathText(['ordered', name]);
      const like = figureAt(result.figures, figureNamed(result, name, at)) as Quantity;
      return [name, readGiven(q, like, at)];
    }),
  );
}

const MODEL: Words = {
  says: 'The chance is that of a normal distribution: each measurement is off independently, with a standard deviation of half its plus or minus.',
};

/** Measurements that move a figure, the one that moves it most first. */
const moving = (first: FigureTolerance | undefined): readonly Contribution[] =>
  first?.contributions.filter(({ share: part }) => part.sign() > 0) ?? [];

function sentence(first: FigureTolerance | undefined, measures: readonly Measure[]): Words {
  const [most, next] = moving(first);
  if (measures.every(({ tolerance }) => tolerance.sign() === 0))
    return { says: 'The plus or minus of every measurement is nothing, so that no figure changes.' };
  if (!first) return { says: 'No figure changes with these measurements.' };
  const { figure, low, high } = first;
  if (!most) return say`${{ figure }} does not change with these measurements.`;
  const range = say`${{ figure }} lies between ${{ low }} and ${{ high }}`;
  const { measure } = most;
  return next?.share.equals(most.share)
    ? say`${range}; no more of that comes from ${{ measure }} than from ${{ other: next.measure }}.`
    : say`${range}; most of that comes from ${{ measure }}.`;
}

/**
 * How low and how high the figures of a calculation may be when what was measured is off by so much.
 *
 * @param calculation - any calculation of this library
 * @param input - its input, as measured
 * @param measures - the plus or minus of each measurement, by its path: at most 12
 * @param options - the figures that matter, and what is ordered of them
 * @returns low, likely and high of each figure, what each measurement contributes, and which to take again
 * @throws {InputError} `unknown-name` for paths that are no quantities; and what the calculation refuses
 * @source closed form; the normal model is an assumption, and is said to be one
 * @example
 * ```ts
 * import { slabVolume, tolerances } from 'flatwork-reckoner';
 *
 * const input = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;
 * const { figures, measureAgain } = tolerances(slabVolume, input, {
 *   'outline.length': '1/2 in',
 *   thickness: '3/8 in',
 * }, { figures: ['volume'], ordered: { volume: '6.75 yd3' } });
 * figures[0]?.low.format(); // '5.63 yd3'
 * figures[0]?.high.format(); // '6.82 yd3'
 * figures[0]?.shortChance?.format(); // '3.52%'
 * measureAgain; // 'thickness'
 * ```
 */
export function tolerances<Input, F extends FigureSet>(
  calculation: Calculation<Input, F>,
  input: Input,
  measures: Measures,
  options: ToleranceOptions = {},
): Tolerances<F> {
  const any = asCalculation(calculation);
  const plain = plainCopy(input);
  const { figures: asked, ordered: orders, ...rest } = asObject(plainCopy(options), 'options');
  const result = any(plain, rest as ReckonOptions) as Result<F>;
  const own = readMeasures(any, plain, asObject(plainCopy(measures), 'measures'));
  const runs = new Runs(
    any,
    plain,
    { system: result.system },
    runsWorth(plain, result, LEAST_RUNS, MOST_RUNS),
  );
  const trials = new Trials(
    own.map((one) => withinReason(one, runs)),
    result,
    runs,
  );
  const tried = tryOut(trials);
  const ordered = readOrdered(result, orders);
  const names = [...new Set([...ordered.keys(), ...figuresFor(trials, tried, asked)])];
  const figures = names.map((name) => figureTolerance(trials, tried, name, ordered.get(name)));
  const first = figures[0];
  const again = moving(first)[0]?.measure;
  return Object.freeze({
    id: any.id,
    figures: Object.freeze(figures.map((one) => Object.freeze(one))),
    ...(again ? { measureAgain: again } : {}),
    says: sentence(first, own),
    model: MODEL,
    result,
  });
}
