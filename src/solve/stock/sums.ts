/**
 * Sums that whole numbers of bars can cost: a bound may be raised to the next of them.
 *
 * By remainders of the least cost: of each remainder the least sum is kept, and all greater ones are that and
 * whole least costs more. So the work is that of the least cost and not that of the bound.
 */

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** What all costs are whole multiples of, and so all their sums. */
export const costStep = (costs: readonly number[]): number => costs.reduce(gcd, 0) || 1;

/** The least sum of each remainder of the first unit; infinite where none has it. */
function leastOfRemainders([first, ...others]: readonly [number, ...number[]]): Float64Array {
  const least = new Float64Array(first).fill(Infinity);
  least[0] = 0;
  for (const unit of others) {
    const rounds = gcd(first, unit);
    for (let start = 0; start < rounds; start += 1) goAround(least, unit, start, first / rounds);
  }
  return least;
}

/** One more unit again and again over the remainders that it leads to, twice around from any of them. */
function goAround(least: Float64Array, unit: number, start: number, steps: number): void {
  let sum = Infinity;
  let at = start;
  for (let step = 0; step < 2 * steps; step += 1) {
    sum = Math.min(sum, least[at] as number);
    least[at] = sum;
    sum += unit;
    at = (at + unit) % least.length;
  }
}

/** The least sum that is not below a bound. */
function atLeast(least: Float64Array, from: number): number {
  const first = least.length;
  if ((least[from % first] as number) <= from) return from;
  let found = Infinity;
  for (const sum of least) {
    const next = sum >= from ? sum : sum + Math.ceil((from - sum) / first) * first;
    if (next < found) found = next;
  }
  return found;
}

/** Most remainders that are kept. */
const MOST_KEPT = 2_000_000;

/**
 * Raises a bound to the next sum of whole bars; no plan can cost anything in between.
 *
 * @param costs - of one bar of each stock, whole multiples of `step`
 * @param work - remainders that may be touched; where that is not enough bounds stay as they are
 */
export function nextSum(costs: readonly number[], step: number, work: number): (bound: number) => number {
  const units = [...new Set(costs.map((cost) => cost / step))].sort((a, b) => a - b);
  const [first = 1, ...others] = units;
  if (others.length === 0 || first > Math.min(MOST_KEPT, work / units.length)) return (bound) => bound;
  let least: Float64Array | undefined;
  let [from, to] = [0, 0];
  return (bound) => {
    const wanted = bound / step;
    // Bounds rise a little at a time and mostly to the same sum.
    if (wanted <= from || wanted > to) {
      least ??= leastOfRemainders([first, ...others]);
      [from, to] = [wanted - 1, atLeast(least, wanted)];
    }
    return to * step;
  };
}
