/**
 * How a value of the input is felt in the working: which values that come from outside into the steps follow it, and
 * how. So a slip in it can be tried by the steps alone, though no printed step takes the value itself: a width less its
 * covers, a wage by the hour, a side of a shape whose area is measured.
 *
 * Found from two runs with other values. A curve through them is a guess: what is found by it is reckoned by the
 * calculation itself before it is told.
 */
import type { Graph } from './graph';

/** What a value becomes, by that of the input. */
export type Curve = (x: number) => number;

/** What follows one value of the input. */
export interface Response {
  /** Values that steps take from outside, by `step symbol`. */
  readonly taken: ReadonlyMap<string, Curve>;
  /** Outcomes of steps that cannot be reckoned again. */
  readonly given: ReadonlyMap<number, Curve>;
  /** Claimed figures that are no outcome of a step. */
  readonly figures: ReadonlyMap<number, Curve>;
  /** The steps at which it begins. */
  readonly starts: readonly number[];
}

/** One run: the value of the input, the steps, and the claimed figures. */
export interface Seen {
  readonly x: number;
  readonly graph: Graph;
  readonly figures: readonly number[];
}

const CLOSE = 1e-7;
const alike = (a: number, b: number): boolean =>
  Math.abs(a - b) <= CLOSE * Math.max(Math.abs(a), Math.abs(b), 1e-12);

type Point = readonly [x: number, y: number];

const proportional =
  ([x0, y0]: Point): Curve =>
  (x) =>
    (y0 * x) / x0;

function straight([x0, y0]: Point, [x1, y1]: Point): Curve {
  const rise = (y1 - y0) / (x1 - x0);
  return (x) => y0 + rise * (x - x0);
}

function power([x0, y0]: Point, [x1, y1]: Point): Curve | undefined {
  if (!(x0 > 0 && x1 > 0 && y0 > 0 && y1 > 0)) return undefined;
  const exponent = Math.log(y1 / y0) / Math.log(x1 / x0);
  return (x) => (x > 0 ? y0 * (x / x0) ** exponent : Number.NaN);
}

/** Twice the spacing, half the bars: whole bars, so that it is half of them about. */
const ABOUT = 0.05;
/** A little off, every product is about the same: what it is off must be little beside what the figure has fallen. */
const BESIDE = 0.25;

function isInverse([x0, y0]: Point, [x1, y1]: Point): boolean {
  const off = Math.abs(x0 * y0 - x1 * y1);
  return x0 * x1 > 0 && off <= ABOUT * Math.abs(x0 * y0) && off <= BESIDE * Math.abs(x0 * (y1 - y0));
}

/** Through three points; of two of them, the third tells whether it holds. */
function curveThrough(a: Point, b: Point, c: Point | undefined): Curve {
  const plain = proportional(a);
  if (a[0] !== 0 && alike(plain(b[0]), b[1]) && (!c || alike(plain(c[0]), c[1]))) return plain;
  if (!c) return isInverse(a, b) ? (x) => (a[1] * a[0]) / x : straight(a, b);
  const line = straight(a, b);
  if (Math.abs(line(c[0]) - c[1]) <= 1e-5 * Math.abs(c[1])) return straight(a, c);
  const curve = power(a, c);
  if (curve && Math.abs(curve(b[0]) - b[1]) <= 1e-5 * Math.abs(b[1] - a[1])) return curve;
  // Newton's form of the one parabola.
  const first = (b[1] - a[1]) / (b[0] - a[0]);
  const second = ((c[1] - b[1]) / (c[0] - b[0]) - first) / (c[0] - a[0]);
  return (x) => a[1] + first * (x - a[0]) + second * (x - a[0]) * (x - b[0]);
}

const sameFormulas = (a: Graph, b: Graph): boolean =>
  a.length === b.length && a.every(({ step }, i) => step.formula === b[i]?.step.formula);

/** Every value that comes from outside, with its place. */
function* outside(graph: Graph): Generator<readonly [place: string, step: number, si: number]> {
  for (const [i, { takes, tree, si }] of graph.entries()) {
    if (!tree) yield [String(i), i, si];
    else for (const one of takes) if (one.from === undefined) yield [`${i} ${one.symbol}`, i, one.si];
  }
}

/** Whether nothing but what is proportional has changed: then one more run tells nothing new. */
export const isSettled = ({ taken, given, figures }: Response, base: Seen, at: Seen): boolean =>
  given.size === 0 &&
  figures.size === 0 &&
  [...outside(at.graph)].every(([place, , si]) => {
    const curve = taken.get(place);
    return !curve || base.x === 0 || alike(curve(2 * base.x), (2 * si * base.x) / at.x);
  });

/**
 * What follows a value, from the run as it is and one or two with another value in its place; `undefined` where the
 * steps are others then.
 *
 * @param isOutcome - tells whether a claimed figure is the outcome of a step
 */
export function responseOf(
  base: Seen,
  one: Seen,
  two: Seen | undefined,
  isOutcome: (claim: number) => boolean,
): Response | undefined {
  if (!sameFormulas(base.graph, one.graph)) return undefined;
  const third = two && sameFormulas(base.graph, two.graph) ? two : undefined;
  const others = new Map([...outside(one.graph)].map(([place, , si]) => [place, si]));
  const thirds = third && new Map([...outside(third.graph)].map(([place, , si]) => [place, si]));
  const taken = new Map<string, Curve>();
  const given = new Map<number, Curve>();
  const starts = new Set<number>();
  const curve = (y: number, y1: number, y2: number | undefined): Curve =>
    curveThrough([base.x, y], [one.x, y1], third && y2 !== undefined ? [third.x, y2] : undefined);
  for (const [place, step, si] of outside(base.graph)) {
    const other = others.get(place);
    // What is no outcome here and one there hangs together otherwise.
    if (other === undefined) return undefined;
    if (alike(si, other)) continue;
    starts.add(step);
    const own = curve(si, other, thirds?.get(place));
    if (base.graph[step]?.tree) taken.set(place, own);
    else given.set(step, own);
  }
  const figures = new Map<number, Curve>();
  base.figures.forEach((y, i) => {
    const y1 = one.figures[i] as number;
    if (!isOutcome(i) && !alike(y, y1)) figures.set(i, curve(y, y1, third?.figures[i]));
  });
  return { taken, given, figures, starts: [...starts] };
}
