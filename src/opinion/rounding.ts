/**
 * How far a right estimate may be off because it was rounded on the way, as people round in a notebook.
 *
 * Values are written in feet with two decimals (4 in as 0.33 ft), long ones with one and short ones with three; outcomes of steps with three
 * digits that count, or two decimals. Each step is reckoned with the least and the greatest that its values may then
 * be, so that every mixture of these is confirmed. Common practice.
 */
import { type Quantity, unitShown } from '../quantity/quantity';
import { unitOf } from '../quantity/units';
import { BINARY, type Reckoner, reckoned, type Sign } from './formula';
import type { Graph, Taken } from './graph';
import { isElevation, leveled, leveledIn } from './leveled';
import { unitWritten } from './outcome-slips';
import { FOOT, siOf, siOfUnit } from './scale';

/** From the least to the greatest. */
export type Interval = readonly [low: number, high: number];

const hull = (...values: number[]): Interval => [Math.min(...values), Math.max(...values)];

function signed(s: Sign, [a, b]: Interval, [c, d]: Interval): Interval {
  const by = (x: number, y: number): number => BINARY.sign(s, x, y);
  // A divisor that may be nothing has no bounds.
  if (s === '÷' && c <= 0 && d >= 0) return [Number.NaN, Number.NaN];
  return hull(by(a, c), by(a, d), by(b, c), by(b, d));
}

/** Every function here goes one way between two values so near each other, or takes the least or greatest of them. */
const called = (name: string, of: readonly Interval[]): Interval =>
  hull(
    BINARY.call(
      name,
      of.map(([low]) => low),
    ),
    BINARY.call(
      name,
      of.map(([, high]) => high),
    ),
  );

const BETWEEN: Reckoner<Interval> = {
  of: (text) => [Number(text), Number(text)],
  pi: [3.14, Math.PI],
  sign: signed,
  call: called,
};

/** Rounded to so many decimals in a unit. */
const rounded = (si: number, unit: number, places: number): number =>
  (Math.round((si / unit) * 10 ** places) / 10 ** places) * unit;

const MANY = 10;
/** Below it a hundredth of a foot is too coarse. */
const FEW = 0.25;

/** The ways in which a length is written: in feet, or in meters. */
function lengthWritten(q: Quantity, si: number): number[] {
  if (unitShown(q).system === 'metric') return [rounded(si, 1, Math.abs(si) < 1 ? 3 : 2)];
  const own = [rounded(si, FOOT, Math.abs(si) < FEW * FOOT ? 3 : 2)];
  if (Math.abs(si) >= MANY * FOOT) own.push(rounded(si, FOOT, 1));
  // A fraction of an inch, in decimals.
  return unitShown(q).id === 'in' ? [...own, rounded(si, 0.0254, 2)] : own;
}

const DIGITS = 3;

/** With three digits that count, in the unit that it is shown in. */
function threeDigits(si: number, unit: number): number {
  const n = Math.abs(si / unit);
  if (n === 0 || !Number.isFinite(n)) return si;
  const places = DIGITS - 1 - Math.floor(Math.log10(n));
  const scale = 10 ** places;
  return (Math.sign(si) * Math.round(n * scale) * unit) / scale;
}

/** What stands in handbooks, and by how much one says more or less than another: 0.67 lb/ft for a #4. */
const HANDBOOK: ReadonlySet<string> = /*#__PURE__*/ new Set(['density', 'mass-per-length', 'mass-per-area']);
const HANDBOOKS = 0.005;

function leafBetween({ quantity: q, given }: Taken, isLeveled: boolean): Interval {
  const si = siOf(q);
  if (isLeveled) return hull(si, ...lengthWritten(q, si).map((one) => leveled(si, one, q)));
  if (q.dimension === 'count') return [si, si];
  if (!given && HANDBOOK.has(q.dimension)) return [si * (1 - HANDBOOKS), si * (1 + HANDBOOKS)];
  if (q.dimension === 'length' && unitShown(q).form !== 'one-in') return hull(si, ...lengthWritten(q, si));
  if (unitShown(q).offset || unitShown(q).form === 'one-in') return [si, si];
  return hull(si, threeDigits(si, siOfUnit(unitShown(q))));
}

/** Units in which an outcome is written on the way to the one it is shown in. */
function unitsOf(q: Quantity): number[] {
  const own = unitWritten(q);
  if (own.offset || own.form === 'one-in') return [];
  const feet =
    own.id === 'yd3' ? unitOf('volume', 'ft3') : own.id === 'yd2' ? unitOf('area', 'ft2') : undefined;
  return [own, ...(feet ? [feet] : [])].map(siOfUnit);
}

/** An outcome as it may have been written: half of the third digit more or less. */
function written(q: Quantity, [low, high]: Interval, isLeveled: boolean): Interval {
  if (q.dimension === 'count') return [low, high];
  const digits = (si: number, unit: number): number =>
    isLeveled ? leveled(si, threeDigits(si, unit), q) : threeDigits(si, unit);
  const units = unitsOf(q);
  if (units.length === 0) return [low, high];
  // By the middle as by the ends: all of them are rounded alike.
  return hull(low, high, ...units.flatMap((unit) => [digits(low, unit), digits(high, unit)]));
}

/** What is bought in steps is rounded up from what was reckoned: a step less is short of it, however it came about. */
export const isStepped = (step: Graph[number]['step']): boolean =>
  /\b(?:ceil|floor)\(/.test(step.formula) && step.gives.dimension !== 'count';

/** What each step may have come to. */
export function betweenOf(graph: Graph): Interval[] {
  const out: Interval[] = [];
  const { steps, values } = leveledIn(graph);
  for (const [i, { tree, takes, si, step }] of graph.entries()) {
    const value = (symbol: string): Interval => {
      const taken = takes.find((one) => one.symbol === symbol);
      if (!taken) return [Number.NaN, Number.NaN];
      return taken.from === undefined
        ? leafBetween(taken, values.has(taken.quantity))
        : (out[taken.from] as Interval);
    };
    const own = tree && !isStepped(step) ? reckoned(tree, value, BETWEEN) : ([si, si] as const);
    out.push(own.every(Number.isFinite) ? written(step.gives, hull(si, ...own), steps.has(i)) : [si, si]);
  }
  return out;
}

/** The share by which a figure may be off that is no outcome of a printed step. */
const UNSEEN = 0.005;

/** What a claimed figure may have come to. */
export function roundedBetween(
  { figure, reckoned: q }: { readonly figure: string; readonly reckoned: Quantity },
  node: number | undefined,
  between: readonly Interval[],
): Interval {
  const si = siOf(q);
  const known = node === undefined ? undefined : between[node];
  if (known) return known;
  if (isElevation(figure)) return hull(si, leveled(si, 0, q));
  return q.dimension === 'count' || unitShown(q).offset
    ? [si, si]
    : hull(si * (1 - UNSEEN), si * (1 + UNSEEN));
}
