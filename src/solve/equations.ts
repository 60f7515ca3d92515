/** Linear equations, by elimination; unknowns that nothing decides are nought. */
import type { Arithmetic } from './arithmetic';

/** One equation: weights by unknown and what they come to. */
export interface Equation<T> {
  readonly weights: readonly T[];
  readonly equals: T;
}

interface Kept<T> {
  readonly row: T[];
  readonly pivot: number;
}

const sizeOf = <T>(sum: Arithmetic<T>, a: T): T =>
  sum.order(a, sum.zero) < 0 ? sum.less(sum.zero, a, sum.one) : a;

function reduced<T>(sum: Arithmetic<T>, row: readonly T[], { row: by, pivot }: Kept<T>): T[] {
  const at = row[pivot] as T;
  const factor = sum.over(at, by[pivot] as T);
  return row.map((w, k) => (k === pivot ? sum.zero : sum.less(w, factor, by[k] as T)));
}

function largest<T>(sum: Arithmetic<T>, row: readonly T[], unknowns: number): number {
  let [best, size] = [-1, sum.zero];
  for (let k = 0; k < unknowns; k += 1) {
    const here = sizeOf(sum, row[k] as T);
    if (sum.sign(here) > 0 && sum.order(here, size) > 0) [best, size] = [k, here];
  }
  return best;
}

/**
 * A solution.
 *
 * @param sum - the arithmetic to reckon in
 * @param equations - those that hang on others before them are passed over
 * @param unknowns - how many
 * @returns the values; of many solutions the one where unknowns that are left over are nought
 */
export function solved<T>(
  sum: Arithmetic<T>,
  equations: readonly Equation<T>[],
  unknowns: number,
): readonly T[] {
  const kept: Kept<T>[] = [];
  for (const { weights, equals } of equations) {
    if (kept.length === unknowns) break;
    let row: T[] = [...weights, equals];
    for (const other of kept) row = reduced(sum, row, other);
    const pivot = largest(sum, row, unknowns);
    if (pivot !== -1) kept.push({ row, pivot });
  }
  const values = Array.from({ length: unknowns }, () => sum.zero);
  for (const { row, pivot } of kept.reverse()) {
    let rest = row[unknowns] as T;
    for (let k = 0; k < unknowns; k += 1) {
      // At the pivot it is still nought.
      rest = sum.less(rest, row[k] as T, values[k] as T);
    }
    values[pivot] = sum.over(rest, row[pivot] as T);
  }
  return values;
}
