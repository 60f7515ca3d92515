/**
 * How many bars of one length longest-first fitting takes, for lists of very many lengths.
 *
 * With the lengths in falling order, each bar takes the longest that still fits, again and again; equal bars
 * come out together. The next length that fits is found by halving, and lengths that are used up are leapt
 * over, so the work grows with the pieces and not with lengths × bars.
 */

/** Lengths with how many of each: what is still to be cut. */
interface Left {
  readonly weights: readonly number[];
  readonly counts: number[];
  /** The first length from each place on of which there may be some left. */
  readonly next: Uint32Array;
}

/** The first length from a place on that is not used up; as many as there are lengths where none is left. */
function leftFrom({ next }: Left, place: number): number {
  let at = place;
  while (next[at] !== at) {
    // Each place looked at is put nearer to the end of its leap.
    const on = next[at] as number;
    next[at] = next[on] as number;
    at = on;
  }
  return at;
}

/** The first length, from a place on, that fits into a room. */
function fittingFrom(left: Left, place: number, room: number): number {
  let [low, high] = [place, left.weights.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((left.weights[middle] as number) <= room) high = middle;
    else low = middle + 1;
  }
  return leftFrom(left, low);
}

/** What one bar takes: lengths and how many of each. */
function oneBar(left: Left, capacity: number): [at: number, n: number][] {
  const taken: [number, number][] = [];
  let room = capacity;
  for (let at = fittingFrom(left, 0, room); at < left.weights.length; at = fittingFrom(left, at + 1, room)) {
    const weight = left.weights[at] as number;
    const n = Math.min(left.counts[at] as number, Math.floor(room / weight));
    taken.push([at, n]);
    room -= n * weight;
  }
  return taken;
}

/** As many bars alike as there are pieces for. */
function alike({ counts }: Left, taken: readonly (readonly [number, number])[]): number {
  let bars = Infinity;
  for (const [at, n] of taken) bars = Math.min(bars, Math.floor((counts[at] as number) / n));
  return bars;
}

/**
 * Bars of one length that longest-first fitting takes.
 *
 * @param list - lengths in whole steps, the longest first and each once, with how many of each
 * @param capacity - length of a bar; none of the lengths is longer
 */
export function firstFitBars(
  list: readonly (readonly [steps: number, count: number])[],
  capacity: number,
): number {
  const size = list.length;
  const left: Left = {
    weights: list.map(([steps]) => steps),
    counts: list.map(([, n]) => n),
    next: Uint32Array.from({ length: size + 1 }, (_, i) => i),
  };
  let bars = 0;
  while (leftFrom(left, 0) < size) {
    const taken = oneBar(left, capacity);
    const n = alike(left, taken);
    bars += n;
    for (const [at, each] of taken) {
      left.counts[at] = (left.counts[at] as number) - each * n;
      if (left.counts[at] === 0) left.next[at] = at + 1;
    }
  }
  return bars;
}
