/** Random slabs for the tests of joint plans, with a repeatable stream of numbers. */

/** A stream of numbers from 0 to 1 that is the same every time (a linear congruential generator). */
export function stream(seed: number): () => number {
  let state = BigInt(seed) * 2654435761n + 12345n;
  return () => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & ((1n << 64n) - 1n);
    return Number(state >> 11n) / 2 ** 53;
  };
}

/** A whole number from `least` to `most`. */
export const between = (next: () => number, least: number, most: number): number =>
  least + Math.floor(next() * (most - least + 1));

export type Xy = readonly [number, number];

/** An outline of sides along x or y, in whole feet, whose columns overlap from one to the next. */
export interface Yard {
  readonly ring: readonly Xy[];
  /** Rectangular openings: x, y, length, width. */
  readonly openings: readonly (readonly [number, number, number, number])[];
}

interface Column {
  readonly x0: number;
  readonly x1: number;
  readonly lo: number;
  readonly hi: number;
}

function columns(next: () => number, count: number, widest: number, tallest: number): Column[] {
  const list: Column[] = [];
  let x = 0;
  for (let i = 0; i < count; i += 1) {
    const x1 = x + between(next, 3, widest);
    const before = list.at(-1);
    let [lo, hi] = [between(next, 0, tallest - 4), 0];
    hi = between(next, lo + 4, tallest);
    if (before) {
      // Overlap by 3 ft at least, so that the slab is one piece.
      lo = Math.min(lo, before.hi - 3);
      hi = Math.max(hi, before.lo + 3);
      if (lo === before.lo && hi === before.hi) hi += 2;
    }
    list.push({ x0: x, x1, lo, hi });
    x = x1;
  }
  return list;
}

function ringOf(list: readonly Column[]): Xy[] {
  const below = list.flatMap(({ x0, x1, lo }): Xy[] => [
    [x0, lo],
    [x1, lo],
  ]);
  const above = [...list].reverse().flatMap(({ x0, x1, hi }): Xy[] => [
    [x1, hi],
    [x0, hi],
  ]);
  const all = [...below, ...above];
  const same = (a: Xy, b: Xy): boolean => a[0] === b[0] && a[1] === b[1];
  const once = all.filter((p, i) => !same(p, all[(i + all.length - 1) % all.length] as Xy));
  return once.filter((p, i) => {
    const [a, b] = [once[(i + once.length - 1) % once.length] as Xy, once[(i + 1) % once.length] as Xy];
    return !((a[0] === p[0] && p[0] === b[0]) || (a[1] === p[1] && p[1] === b[1]));
  });
}

/** A random yard, with an opening in its broadest column now and then. */
export function yard(
  next: () => number,
  count: number,
  widest: number,
  tallest: number,
  opening: number,
): Yard {
  const list = columns(next, count, widest, tallest);
  const room = list.find(({ x0, x1, lo, hi }) => x1 - x0 >= 9 && hi - lo >= 9);
  if (!room || next() > opening) return { ring: ringOf(list), openings: [] };
  const [l, w] = [between(next, 3, room.x1 - room.x0 - 6), between(next, 3, room.hi - room.lo - 6)];
  const x = between(next, room.x0 + 3, room.x1 - l - 3);
  const y = between(next, room.lo + 3, room.hi - w - 3);
  return { ring: ringOf(list), openings: [[x, y, l, w]] };
}

/** The yard as input of the library. */
export const inputOf = ({ ring, openings }: Yard): object => ({
  outline: { shape: 'polygon', points: ring.map(([x, y]) => ({ x: `${x} ft`, y: `${y} ft` })) },
  ...(openings.length > 0
    ? {
        openings: openings.map(([x, y, l, w]) => ({
          shape: 'rectangle',
          at: { x: `${x} ft`, y: `${y} ft` },
          length: `${l} ft`,
          width: `${w} ft`,
        })),
      }
    : {}),
});

/** Every ring of the yard, the outline first. */
export const ringsOf = ({ ring, openings }: Yard): Xy[][] => [
  [...ring],
  ...openings.map(([x, y, l, w]): Xy[] => [
    [x, y],
    [x + l, y],
    [x + l, y + w],
    [x, y + w],
  ]),
];
