/**
 * What an input must be for a figure to be what is wanted: how thick with 9 yd3, how many feet from what is left.
 *
 * Where the figure grows evenly, the answer is exact: it is found by a straight line through two tries, `x = a + (w − u)
 * × (b − a) ÷ (v − u)`, and put back. Else it is enclosed, which asks for a figure that only rises or only falls, and
 * found to a step of the trade.
 */
import { compareSteady, Decimal, ZERO } from '../quantity/decimal';
import { canonicalValue, isQuantity, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { type Unit, unitOf } from '../quantity/units';
import type { Calculation } from '../reckoning/calculation';
import { refuse } from '../reckoning/calculation';
import type { FigureSet, Step } from '../reckoning/parts';
import { plainCopy } from '../reckoning/plain';
import type { Result } from '../reckoning/result';
import type { ReckonOptions } from '../reckoning/system';
import { say, type Words } from '../reckoning/words';
import type { AnyQuantityInput } from './claims';
import { runsWorth } from './effort';
import { type Bracket, enclosed, nearest, type Point } from './enclose';
import { asCalculation } from './estimate-check';
import * as faults from './faults';
import { figureAt, pathOf } from './figure-places';
import { type AnyCalculation, LEFT_OUT, type Leaf, valueAt, withValue } from './input-places';
import { siOf } from './scale';
import { tradeStep } from './trade-step';
import { type AnyResult, amountAt, figureNamed, leafAt, leafQuantity, Runs, readGiven } from './varied';

/** What is asked of {@link solveFor}. */
export interface SolveForInput<Input> {
  /** The input, with some value of what is varied, or without one where `between` is given. */
  readonly input: Input;
  /** The path in the input of what is varied: `thickness`, `outline.length`. */
  readonly vary: string;
  /** The path of the figure: `volume`. */
  readonly figure: string;
  /** What it is to be. */
  readonly wanted: AnyQuantityInput;
  /** How near it must come; by default a step of the trade, such as a quarter of a yard; a count just so. */
  readonly within?: AnyQuantityInput;
  /** The step in which what is varied is told; by default that of the trade, such as a sixteenth of an inch. */
  readonly step?: AnyQuantityInput;
  /** From where to where it may be varied; by default within what is ordinary. */
  readonly between?: readonly [AnyQuantityInput, AnyQuantityInput];
}

/** What {@link solveFor} found. */
export interface Solution<F extends FigureSet = FigureSet> {
  /** Id of the calculation. */
  readonly id: string;
  /** What was varied. */
  readonly vary: string;
  /** The figure. */
  readonly figure: string;
  /** What it was to be. */
  readonly wanted: Quantity;
  /** What the input must be. */
  readonly value: Quantity;
  /** What the figure then is. */
  readonly gives: Quantity;
  /** True where it is exactly what is wanted. */
  readonly exact: boolean;
  /** The value in whole steps, the one that comes nearest. */
  readonly inSteps: Quantity;
  /** What the figure is with that. */
  readonly inStepsGives: Quantity;
  /** The step. */
  readonly step: Quantity;
  /**
   * From where to where the figure stays what is wanted, to a step, where it does so over a range: so many bags are
   * enough for volumes up to the last.
   */
  readonly holds?: readonly [from: Quantity, to: Quantity];
  /** The range in which it was looked for, where it was. */
  readonly between?: readonly [Quantity, Quantity];
  /** In a sentence. */
  readonly says: Words;
  /** How it was found. */
  readonly working: readonly Step[];
  /** The result with the value put in. */
  readonly result: Result<F>;
}

/** What is solved, read. */
interface Task {
  readonly runs: Runs;
  readonly leaf: Leaf;
  readonly path: readonly (string | number)[];
  readonly like: Quantity;
  readonly wanted: Decimal;
  readonly within: Decimal;
  readonly step: Quantity;
  readonly between: readonly [Decimal, Decimal] | undefined;
  readonly names: { readonly vary: string; readonly figure: string };
}

const LEAST_RUNS = 40;
const MOST_RUNS = 120;

const figureOf = (task: Task, x: Decimal): Point | undefined => {
  const y = amountAt(task.runs.with([[task.leaf, x]]), task.path);
  return y && { x, y };
};

const isWanted = ({ y }: Point, { wanted }: Task): boolean => compareSteady(y, wanted) === 0;

const inside = (x: Decimal, { between, leaf }: Task): boolean => {
  if (between) return x.greaterThanOrEqualTo(between[0]) && x.lessThanOrEqualTo(between[1]);
  return leaf.quantity.sign() <= 0 || leaf.dimension === 'temperature' || x.greaterThan(0);
};

const figureLike = (task: Task, y: Decimal): Quantity =>
  newQuantity(task.like.dimension, y, unitShown(task.like));

/** The straight line through two tries, as a step. */
function lineStep(task: Task, a: Point, b: Point, x: Decimal): Step {
  const { leaf } = task;
  return {
    says: 'on the straight line through two tries',
    formula: 'x = a + (w − u) × (b − a) ÷ (v − u)',
    values: {
      a: leafQuantity(leaf, a.x),
      b: leafQuantity(leaf, b.x),
      u: figureLike(task, a.y),
      v: figureLike(task, b.y),
      w: figureLike(task, task.wanted),
    },
    gives: leafQuantity(leaf, x),
  };
}

interface Found {
  readonly at: Point;
  readonly exact: boolean;
  readonly working: readonly Step[];
  readonly between?: Bracket;
}

const onLine = (task: Task, a: Point, b: Point): Decimal =>
  a.x.plus(task.wanted.minus(a.y).times(b.x.minus(a.x)).div(b.y.minus(a.y)));

/** Where the figure grows evenly: by two tries, put back. */
function straight(task: Task): Found | undefined {
  const [low, high] = task.between ?? startOf(task.leaf);
  const [a, b] = [figureOf(task, low), figureOf(task, high)];
  if (!a || !b || compareSteady(a.y, b.y) === 0) return undefined;
  const x = onLine(task, a, b);
  if (!inside(x, task)) return undefined;
  const whole = task.leaf.plain ? x.toDecimalPlaces(0) : x;
  if (task.leaf.plain && compareSteady(whole, x) !== 0) return undefined;
  const back = figureOf(task, whole);
  if (!back || !isWanted(back, task)) return undefined;
  return { at: back, exact: true, working: [lineStep(task, a, b, whole)] };
}

/** A value and one a quarter larger. */
function startOf({ quantity, plain }: Leaf): readonly [Decimal, Decimal] {
  const x = canonicalValue(quantity);
  if (plain) return [x, x.plus(1)];
  return x.isZero() ? [x, x.plus(1)] : [x, x.times('1.25')];
}

/** The limits of what is ordinary, as the calculation itself tells them of a value far outside. */
function ordinaryEnds(task: Task): readonly [Decimal, Decimal] {
  const x = canonicalValue(task.leaf.quantity);
  const size = x.isZero() ? x.plus(1) : x;
  const limitAt = (far: Decimal): Decimal | undefined => {
    const result = task.runs.with([[task.leaf, far]]);
    const isOwn = ({ code, input }: { code: string; input?: string }): boolean =>
      code === 'unusual' && input === task.leaf.at;
    const limit = result?.cautions.find(isOwn)?.limit;
    return limit && canonicalValue(limit);
  };
  // Far enough to be out of the ordinary, and not so far as to be refused: which that is, is tried.
  // What is nearer costs less to work out.
  const low = limitAt(size.div(40)) ?? limitAt(size.div(1000)) ?? size.div(64);
  const high = limitAt(size.times(500)) ?? limitAt(size.times(20_000)) ?? size.times(64);
  const ends = [low, high] as const;
  const wide = task.leaf.plain ? ([size.minus(size).plus(1), ends[1].ceil()] as const) : ends;
  return wide[0].lessThan(wide[1]) ? wide : [wide[1], wide[0]];
}

function refuseFor(task: Task, bracket: Bracket, why: 'none' | 'same' | 'turns' | 'outside'): never {
  const { vary, figure } = task.names;
  const [from, to] = [leafQuantity(task.leaf, bracket.from), leafQuantity(task.leaf, bracket.to)];
  if (why === 'none') return refuse('vary', faults.notReckonable(vary, from, to));
  if (why === 'same') return refuse('vary', faults.sameThroughout(vary, figure));
  if (why === 'turns') return refuse('vary', faults.notMonotone(figure, vary, from, to));
  const [low, high] = [figureLike(task, bracket.low), figureLike(task, bracket.high)];
  return refuse('wanted', faults.notReached(figure, low, high, from, to));
}

/** By enclosing it, to a step. */
function closedIn(task: Task): Found {
  const ends = task.between ?? ordinaryEnds(task);
  const try_ = (x: Decimal): Point | undefined => figureOf(task, x);
  const bracket = enclosed(ends, try_, task.wanted, task.leaf.plain);
  if (bracket.why) return refuseFor(task, bracket, bracket.why);
  const { a, b, at } = nearest(bracket, try_, task.wanted, task.leaf.plain);
  if (at.y.minus(task.wanted).abs().greaterThan(task.within))
    return refuse(
      'wanted',
      faults.leapsOver(task.names.figure, figureLike(task, a.y), figureLike(task, b.y)),
    );
  const working = compareSteady(a.y, b.y) === 0 ? [] : [lineStep(task, a, b, onLine(task, a, b))];
  return { at, exact: isWanted(at, task), working, between: bracket };
}

/** Feet are told in feet and inches, a temperature on its own scale, all else in the unit of the step. */
function unitOnTape({ leaf, step }: Task): Unit {
  const own = unitShown(leaf.quantity);
  if (/^ft(?:-in)?$/.test(own.id)) return unitOf('length', 'ft-in') as Unit;
  return leaf.dimension === 'temperature' ? own : unitShown(step);
}

/** Where the steps of a scale begin that does not begin at nothing. */
const beginOf = ({ leaf }: Task): Decimal | undefined =>
  leaf.dimension === 'temperature' ? unitShown(leaf.quantity).offset : undefined;

function stepTo(task: Task, at: Decimal, to: Decimal): Step {
  const { leaf } = task;
  const begin = beginOf(task);
  const way = to.greaterThan(at) ? 'ceil' : 'floor';
  return {
    says: 'the whole step that comes nearest',
    formula: begin ? `X = ${way}((x − z) ÷ i) × i + z` : `X = ${way}(x ÷ i) × i`,
    values: {
      x: leafQuantity(leaf, at),
      i: task.step,
      ...(begin ? { z: leafQuantity(leaf, begin) } : {}),
    },
    gives: leafQuantity(leaf, to, unitOnTape(task)),
  };
}

/** The whole step that comes nearest. */
function wholeStep(task: Task, at: Point): { readonly point: Point; readonly step: Step } | undefined {
  const size = canonicalValue(task.step);
  const begin = beginOf(task) ?? ZERO;
  const below = at.x.minus(begin).div(size).floor().times(size).plus(begin);
  const points = [below, below.plus(size)].flatMap((x) => (inside(x, task) ? (figureOf(task, x) ?? []) : []));
  const [first, second] = points.sort((p, q) =>
    p.y.minus(task.wanted).abs().comparedTo(q.y.minus(task.wanted).abs()),
  );
  // Of two that come equally near, the one nearer to the value itself.
  const tie = first && second && compareSteady(first.y, second.y) === 0;
  const point = tie && second.x.minus(at.x).abs().lessThan(first.x.minus(at.x).abs()) ? second : first;
  if (!point) return undefined;
  return { point, step: stepTo(task, at.x, point.x) };
}

/** What is found, and what that is on a tape: nobody measures in thousandths of a foot. */
function inStepsWords(
  { vary, figure }: Task['names'],
  { gives, value }: { readonly gives: Quantity; readonly value: Quantity },
  inSteps: Quantity,
  inStepsGives: Quantity,
): Words {
  const found = say`${{ figure }} is ${{ gives }} where ${{ vary }} is ${{ value }}`;
  return inSteps.equals(value)
    ? say`${{ figure }} is ${{ gives }} where ${{ vary }} is ${{ inSteps }}.`
    : say`${found}; ${{ inSteps }} gives ${{ inStepsGives }}.`;
}

/** Runs for what is told of what was found. */
const AFTER = 60;
/** Halvings of the way from where it holds to where it does not. */
const HALVINGS = 28;
/** So much finer than a step, that no whole step is lost. */
const FINER = 16;

/** How far out a figure stays what is wanted on one side, to a step. */
function edgeOf(task: Task, at: Point, side: 1 | -1, end: Decimal): Decimal {
  const size = canonicalValue(task.step);
  const fine = size.div(FINER);
  const holds = (x: Decimal): boolean => {
    const point = inside(x, task) ? figureOf(task, x) : undefined;
    return point !== undefined && isWanted(point, task);
  };
  if (!holds(at.x.plus(size.times(side)))) return at.x;
  let known = at.x.plus(size.times(side));
  let beyond = side > 0 ? Decimal.max(end, known) : Decimal.min(end, known);
  for (let n = 0; n < HALVINGS && beyond.minus(known).abs().greaterThan(fine); n += 1) {
    const half = known.plus(beyond).div(2);
    if (holds(half)) known = half;
    else beyond = half;
  }
  // A whole step that still holds.
  const begin = beginOf(task) ?? ZERO;
  const steps = known.minus(begin).div(size);
  const whole = (side > 0 ? steps.floor() : steps.ceil()).times(size).plus(begin);
  return whole.minus(at.x).times(side).isNegative() ? known : whole;
}

/** Where a figure leaps and stands still between, from where to where it stands. */
function heldOver(task: Task, { at, exact, between }: Found): readonly [Decimal, Decimal] | undefined {
  if (!exact || task.leaf.plain) return undefined;
  const [low, high] = between ? [between.from, between.to] : [at.x.div(8), at.x.times(8)];
  const [from, to] = [edgeOf(task, at, -1, low), edgeOf(task, at, 1, high)];
  return from.lessThan(to) ? [from, to] : undefined;
}

function solutionOf<F extends FigureSet>(asked: Task, found: Found, id: string): Solution<F> {
  const { runs } = asked;
  const task: Task = { ...asked, runs: new Runs(runs.calculation, runs.input, runs.options, AFTER) };
  const { leaf, names, step } = task;
  const over = heldOver(task, found)?.map((x) => leafQuantity(leaf, x, unitOnTape(task))) as
    | readonly [Quantity, Quantity]
    | undefined;
  const whole = leaf.plain ? undefined : wholeStep(task, found.at);
  const value = leafQuantity(leaf, found.at.x);
  const gives = figureLike(task, found.at.y);
  const result = new Runs(task.runs.calculation, task.runs.input, task.runs.options, 1).with([
    [leaf, found.at.x],
  ]);
  return Object.freeze({
    id,
    vary: names.vary,
    figure: names.figure,
    wanted: figureLike(task, task.wanted),
    value,
    gives,
    exact: found.exact,
    inSteps: whole ? (whole.step.gives as Quantity) : value,
    inStepsGives: whole ? figureLike(task, whole.point.y) : gives,
    step,
    ...(found.between
      ? { between: [leafQuantity(leaf, found.between.from), leafQuantity(leaf, found.between.to)] as const }
      : {}),
    ...(over ? { holds: over } : {}),
    says: over
      ? say`${{ figure: names.figure }} is ${{ gives }} where ${{ vary: names.vary }} lies between ${{ from: over[0] }} and ${{ to: over[1] }}.`
      : whole
        ? inStepsWords(names, { gives, value }, whole.step.gives, figureLike(task, whole.point.y))
        : say`${{ figure: names.figure }} is ${{ gives }} where ${{ vary: names.vary }} is ${{ value }}.`,
    working: Object.freeze(
      [...found.working, ...(whole ? [whole.step] : [])].map((one) => Object.freeze(one)),
    ),
    result: result as Result<F>,
  });
}

/** The input with something in the place of what is varied, where nothing stands there. */
function started(input: unknown, vary: unknown, between: unknown): unknown {
  const path = typeof vary === 'string' ? pathOf(vary) : undefined;
  const first = Array.isArray(between) ? between[0] : undefined;
  if (!path || first === undefined || valueAt(input, path) !== undefined) return input;
  const inner = valueAt(input, path.slice(0, -1));
  if (typeof inner !== 'object' || inner === null || isQuantity(inner)) return input;
  return withValue(input, path, first === LEFT_OUT ? undefined : first);
}

function endsOf(between: unknown, like: Quantity): readonly [Decimal, Decimal] | undefined {
  if (between === undefined) return undefined;
  const [a, b] = Array.isArray(between) ? between : [];
  const [low, high] = [a, b].map((one, i) => canonicalValue(readGiven(one, like, `between[${i}]`))) as [
    Decimal,
    Decimal,
  ];
  return low.lessThan(high) ? [low, high] : [high, low];
}

const optional = (given: unknown, like: Quantity, at: string, otherwise: () => Quantity): Quantity =>
  given === undefined ? otherwise() : readGiven(given, like, at).abs();

interface Plain {
  readonly input?: unknown;
  readonly vary?: unknown;
  readonly figure?: unknown;
  readonly wanted?: unknown;
  readonly within?: unknown;
  readonly step?: unknown;
  readonly between?: unknown;
}

/** A difference of temperatures counts in degrees as the scale does. */
const size = (q: Quantity): Decimal => canonicalValue(q).abs();

/** A step of the trade; a count is right or wrong. */
const nearEnough = (like: Quantity, system: AnyResult['system']): Quantity =>
  like.dimension === 'count' ? like.minus(like) : tradeStep(like, system);

/** A step that is more than this of an amount says nothing of it: bags are no quarter yards. */
const COARSE = 0.1;

/** What is little is told in tenths of the step. */
function finerFor(q: Quantity, step: Quantity): Quantity {
  const tells = q.dimension === 'volume' || q.dimension === 'mass';
  return tells && q.sign() > 0 && siOf(step) > COARSE * siOf(q)
    ? newQuantity(step.dimension, canonicalValue(step).div(10), unitShown(step))
    : step;
}

function taskOf(calculation: AnyCalculation, asked: Plain, options: ReckonOptions | undefined): Task {
  const input = started(asked.input, asked.vary, asked.between);
  const result: AnyResult = calculation(input, options);
  const leaf = leafAt(calculation, input, asked.vary, 'vary');
  const path = figureNamed(result, asked.figure, 'figure');
  const like = figureAt(result.figures, path) as Quantity;
  const own = finerFor(leaf.quantity, tradeStep(leaf.quantity, result.system));
  return {
    runs: new Runs(
      calculation,
      input,
      { system: result.system },
      runsWorth(input, result, LEAST_RUNS, MOST_RUNS),
    ),
    leaf,
    path,
    like,
    wanted: canonicalValue(readGiven(asked.wanted, like, 'wanted')),
    within: size(optional(asked.within, like, 'within', () => nearEnough(like, result.system))),
    step: optional(asked.step, own, 'step', () => own),
    between: endsOf(asked.between, leaf.quantity),
    names: { vary: String(asked.vary), figure: String(asked.figure) },
  };
}

/**
 * What one value of an input must be for a figure to be what is wanted.
 *
 * @param calculation - any calculation of this library
 * @param asked - the input, what is varied, the figure and what it is to be; how near, in which steps and within which
 * range where that matters
 * @param options - the family of units to reckon and show in
 * @returns the value, whether it is exact, and the whole step that comes nearest; how it was found; and the result with
 * it
 * @throws {InputError} `no-solution` where the figure does not change with it, is not reached, or rises and falls;
 * `unknown-name` for paths that are no quantities; and what the calculation refuses
 * @source closed form
 * @example
 * ```ts
 * import { slabVolume, solveFor } from 'flatwork-reckoner';
 *
 * const thick = solveFor(slabVolume, {
 *   input: { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' },
 *   vary: 'thickness',
 *   figure: 'volume',
 *   wanted: '9 yd3',
 * });
 * thick.inSteps.format('in'); // '5.8125 in'
 * thick.exact; // true
 * ```
 */
export function solveFor<Input, F extends FigureSet>(
  calculation: Calculation<Input, F>,
  asked: SolveForInput<Input>,
  options?: ReckonOptions,
): Solution<F> {
  const any = asCalculation(calculation);
  const plain = plainCopy(asked);
  const task = taskOf(any, (typeof plain === 'object' && plain !== null ? plain : {}) as Plain, options);
  return solutionOf(task, straight(task) ?? closedIn(task), any.id);
}
