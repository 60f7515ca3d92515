/**
 * The shortest joint plan by trying every one, written apart from the search.
 *
 * In whole 16ths of an inch. A plan along one axis picks some of the coordinates of corners and divides
 * evenly what lies between two neighboring ones, lines being set out in whole 16ths rounded up. All
 * pairs of plans are tried; a pair is judged by cutting the slab into cells and flooding them.
 */
import type { Asked } from './verifier';
import type { Xy } from './yards';

const PER_FOOT = 12 * 16;

/** Broken rules and length, the fewest first. */
export interface Judged {
  readonly broken: number;
  /** In 16ths of an inch. */
  readonly length: number;
}

const sorted = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);

/** Lines strictly between a and b that make n panels. */
const divided = (a: number, b: number, n: number): number[] =>
  Array.from({ length: n - 1 }, (_, k) => a + Math.ceil(((k + 1) * (b - a)) / n));

/** All sets of lines along an axis. */
function sets(stops: readonly number[], leastSide: number): number[][] {
  const [first, last] = [stops[0] as number, stops.at(-1) as number];
  const inner = stops.slice(1, -1);
  const all: number[][] = [];
  const grow = (lines: number[], from: number, rest: readonly number[]): void => {
    for (const [i, to] of [...rest, last].entries()) {
      const most = Math.max(1, Math.floor((to - from) / leastSide));
      for (let n = 1; n <= Math.max(most, 8); n += 1) {
        if (n > most && (to - from) / n < leastSide / 2) break;
        const more = [...lines, ...divided(from, to, n)];
        if (to === last) all.push(more);
        else grow([...more, to], to, rest.slice(i + 1));
      }
    }
  };
  grow([], first, inner);
  const byKey = new Map(all.map((lines) => [lines.join(), lines]));
  return [...byKey.values()];
}

function crossings(rings: readonly (readonly Xy[])[], axis: 0 | 1, at: number): number[] {
  const across = axis === 0 ? 1 : 0;
  const found: number[] = [];
  for (const ring of rings) {
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length] as Xy;
      if (a[axis] > at !== b[axis] > at) found.push(a[across]);
    });
  }
  return found.sort((p, q) => p - q);
}

/** Length of a line that has slab on both sides of it. */
function sawn(rings: readonly (readonly Xy[])[], axis: 0 | 1, at: number): number {
  const [left, right] = [crossings(rings, axis, at - 0.5), crossings(rings, axis, at + 0.5)];
  let length = 0;
  for (let i = 0; i + 1 < left.length; i += 2) {
    for (let j = 0; j + 1 < right.length; j += 2) {
      const from = Math.max(left[i] as number, right[j] as number);
      const to = Math.min(left[i + 1] as number, right[j + 1] as number);
      length += Math.max(0, to - from);
    }
  }
  return length;
}

/** Broken rules of a pair of sets of lines; infinite where it cannot be. */
function brokenIn(
  rings: readonly (readonly Xy[])[],
  xs: readonly number[],
  ys: readonly number[],
  asked: Asked,
): number {
  const gx = sorted([...rings.flat().map(([x]) => x), ...xs]);
  const gy = sorted([...rings.flat().map(([, y]) => y), ...ys]);
  const wallX = gx.map((x) => xs.includes(x));
  const wallY = gy.map((y) => ys.includes(y));
  const slab = gx.slice(1).map((x, i) => {
    const heights = crossings(rings, 0, (x + (gx[i] as number)) / 2);
    return gy.slice(1).map((y, j) => {
      const middle = (y + (gy[j] as number)) / 2;
      return heights.filter((h) => h < middle).length % 2 === 1;
    });
  });
  let broken = 0;
  const seen = slab.map((column) => column.map(() => false));
  for (let i = 0; i < slab.length; i += 1) {
    for (let j = 0; j < (slab[i] as boolean[]).length; j += 1) {
      if (!slab[i]?.[j] || seen[i]?.[j]) continue;
      broken += judged(flood(slab, seen, wallX, wallY, i, j), gx, gy, asked);
      if (broken === Infinity) return broken;
    }
  }
  return broken;
}

interface Flooded {
  i0: number;
  i1: number;
  j0: number;
  j1: number;
  cells: number;
}

function flood(
  slab: readonly (readonly boolean[])[],
  seen: boolean[][],
  wallX: readonly boolean[],
  wallY: readonly boolean[],
  i: number,
  j: number,
): Flooded {
  const box = { i0: i, i1: i, j0: j, j1: j, cells: 0 };
  const waiting: Xy[] = [[i, j]];
  (seen[i] as boolean[])[j] = true;
  for (let cell = waiting.pop(); cell; cell = waiting.pop()) {
    const [a, b] = cell;
    box.i0 = Math.min(box.i0, a);
    box.i1 = Math.max(box.i1, a);
    box.j0 = Math.min(box.j0, b);
    box.j1 = Math.max(box.j1, b);
    box.cells += 1;
    const ways: [number, number, boolean | undefined][] = [
      [a + 1, b, wallX[a + 1]],
      [a - 1, b, wallX[a]],
      [a, b + 1, wallY[b + 1]],
      [a, b - 1, wallY[b]],
    ];
    for (const [c, d, wall] of ways) {
      if (wall || !slab[c]?.[d] || seen[c]?.[d]) continue;
      (seen[c] as boolean[])[d] = true;
      waiting.push([c, d]);
    }
  }
  return box;
}

function judged(
  { i0, i1, j0, j1, cells }: Flooded,
  gx: readonly number[],
  gy: readonly number[],
  asked: Asked,
): number {
  if (cells !== (i1 - i0 + 1) * (j1 - j0 + 1)) return Infinity;
  const w = (gx[i1 + 1] as number) - (gx[i0] as number);
  const h = (gy[j1 + 1] as number) - (gy[j0] as number);
  const [short, long] = w < h ? [w, h] : [h, w];
  if (long > asked.spacing * PER_FOOT) return Infinity;
  return (short < asked.leastSide * PER_FOOT ? 1 : 0) + (long > asked.ratio * short ? 1 : 0);
}

/**
 * The best of all plans: the shortest that keeps every rule or, where none does, the one for which length
 * and two spacings for each broken rule come to least. `undefined` when there are too many to try.
 */
export function bestOfAll(
  ringsInFeet: readonly (readonly Xy[])[],
  asked: Asked,
  most: number,
): Judged | undefined {
  const rings = ringsInFeet.map((ring) => ring.map(([x, y]): Xy => [x * PER_FOOT, y * PER_FOOT]));
  const plans = ([0, 1] as const).map((axis) => {
    const stops = sorted(rings.flat().map((p) => p[axis]));
    const lengths = new Map<number, number>();
    const lengthOf = (at: number): number => {
      const known = lengths.get(at) ?? sawn(rings, axis, at);
      lengths.set(at, known);
      return known;
    };
    return sets(stops, asked.leastSide * PER_FOOT)
      .map((lines) => ({ lines, length: lines.reduce((sum, at) => sum + lengthOf(at), 0) }))
      .sort((a, b) => a.length - b.length);
  });
  const [px, py] = plans as unknown as [Plan[], Plan[]];
  if (px.length * py.length > most) return undefined;
  return tryAll(rings, px, py, asked);
}

interface Plan {
  readonly lines: readonly number[];
  readonly length: number;
}

/** The best of each sort so far. */
interface Best {
  keeps: Judged | undefined;
  gives: Judged | undefined;
}

function tryAll(
  rings: readonly (readonly Xy[])[],
  px: readonly Plan[],
  py: readonly Plan[],
  asked: Asked,
): Judged {
  const weight = 2 * asked.spacing * PER_FOOT;
  const best: Best = { keeps: undefined, gives: undefined };
  const worth = (j: Judged | undefined): number => (j ? j.length + weight * j.broken : Infinity);
  for (const x of px) {
    for (const y of py) {
      const length = x.length + y.length;
      // The plans come in order of length: nothing longer is better than one that keeps every rule.
      if (best.keeps && length >= best.keeps.length) break;
      const broken = brokenIn(rings, x.lines, y.lines, asked);
      if (broken === 0) best.keeps = { broken, length };
      else if (worth({ broken, length }) < worth(best.gives)) best.gives = { broken, length };
    }
  }
  return (best.keeps ?? best.gives) as Judged;
}
