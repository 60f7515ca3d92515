/**
 * Of all points that are as good, the one with the least sum of squares: `Σ square × value²`.
 *
 * Where the least of kinked costs is met by many points, which of them a search ends at hangs on the
 * order of its rows. The least sum of squares does not: it is one point, it turns and mirrors with the
 * problem. Which rows meet there is searched in binary numbers by an active set; the point is then
 * solved exactly from those and looked at against every row.
 */
import type { Decimal } from '../quantity/decimal';
import { type Arithmetic, BINARY, EXACT } from './arithmetic';
import { type Equation, solved } from './equations';
import type { Kinks, Least, Row, Stands } from './kinks';

/** A row that every point as good keeps to. */
interface Kept {
  readonly row: Row;
  readonly stands: Stands;
}

interface Quick {
  readonly weights: readonly number[];
  readonly level: number;
  /** 1 where the row may rise over its level, -1 where it may fall below, 0 where it may do neither: it always meets. */
  readonly side: number;
}

const SIDE: Readonly<Record<Stands, number>> = { on: 0, above: 1, below: -1, free: 0 };
const STEPS = 40;
const STRAY = 1e-11;

function spread<T>(sum: Arithmetic<T>, { at, weights }: Row, unknowns: number): T[] {
  const all = Array.from({ length: unknowns }, () => sum.zero);
  at.forEach((v, i) => {
    all[v] = sum.plus(all[v] as T, sum.of(weights[i] as Decimal));
  });
  return all;
}

const dot = (a: readonly number[], b: readonly number[]): number => {
  let total = 0;
  for (let i = 0; i < a.length; i += 1) total += (a[i] as number) * (b[i] as number);
  return total;
};

/** Where the squares are least on the rows that meet, as a step from a point; then what each row bears. */
function stepTo<T>(
  sum: Arithmetic<T>,
  squares: readonly T[],
  meeting: readonly (readonly T[])[],
  from: readonly T[],
  missing: readonly T[],
): readonly T[] {
  const [n, m] = [squares.length, meeting.length];
  const blank = (count: number): T[] => Array.from({ length: count }, () => sum.zero);
  const rows = meeting.map(
    (weights, k): Equation<T> => ({
      weights: [...weights, ...blank(m)],
      equals: missing[k] as T,
    }),
  );
  const still = squares.map((square, i): Equation<T> => {
    const weights = blank(n + m);
    weights[i] = square;
    meeting.forEach((row, k) => {
      weights[n + k] = row[i] as T;
    });
    return { weights, equals: sum.less(sum.zero, square, from[i] as T) };
  });
  return solved(sum, [...rows, ...still], n + m);
}

/** How far the step may be taken, and the row that stops it; -1 for none. */
function reach(
  rows: readonly Quick[],
  meeting: ReadonlySet<number>,
  point: readonly number[],
  step: readonly number[],
) {
  let [far, by] = [1, -1];
  rows.forEach(({ weights, level, side }, k) => {
    if (meeting.has(k)) return;
    const rise = side * dot(weights, step);
    if (rise >= -STRAY) return;
    const room = Math.max(side * (dot(weights, point) - level), 0) / -rise;
    if (room < far) [far, by] = [room, k];
  });
  return { far, by };
}

/** The row that should be let go: one that bears against its side. */
function letGo(rows: readonly Quick[], meeting: readonly number[], bears: readonly number[]): number {
  let [most, at] = [STRAY, -1];
  meeting.forEach((k, i) => {
    const against = (rows[k] as Quick).side * (bears[i] as number);
    if (against > most) [most, at] = [against, k];
  });
  return at;
}

/** Which rows meet where the squares are least; at the end of the steps those that meet where it has come to. */
function search(rows: readonly Quick[], squares: readonly number[], start: readonly number[]) {
  const n = squares.length;
  const point = [...start];
  const meeting = new Set(rows.flatMap(({ side }, k) => (side === 0 ? [k] : [])));
  const most = STEPS * (n + 4);
  for (let tries = 0; tries < most; tries += 1) {
    const held = [...meeting];
    const step = stepTo(
      BINARY,
      squares,
      held.map((k) => (rows[k] as Quick).weights),
      point,
      held.map(() => 0),
    );
    const { far, by } = reach(rows, meeting, point, step);
    point.forEach((v, i) => {
      point[i] = v + far * (step[i] as number);
    });
    if (by !== -1) {
      meeting.add(by);
      continue;
    }
    const loose = letGo(rows, held, step.slice(n));
    if (loose === -1) return held;
    meeting.delete(loose);
  }
  return [...meeting];
}

const over = (row: Row, values: readonly Decimal[]): Decimal =>
  row.at.reduce(
    (s, v, i) => s.plus((row.weights[i] as Decimal).times(values[v] as Decimal)),
    row.level.neg(),
  );

/** True when a point keeps to a row. */
function keeps({ row, stands }: Kept, values: readonly Decimal[]): boolean {
  const sign = EXACT.sign(over(row, values));
  return sign === 0 || sign === SIDE[stands];
}

const STEADY_PLACES = 45;

/**
 * The smallest of all points that are as good.
 *
 * @param kinks - the problem
 * @param least - its least, proved
 * @param squares - weight of each unknown's square; 0 where it does not count
 * @returns the point, exact; that of `least` where it is the only one
 */
export function smallestOf(
  { unknowns, rows }: Kinks,
  least: Least,
  squares: readonly Decimal[],
): readonly Decimal[] {
  if (least.only) return least.values;
  const kept = rows.flatMap((row, k): Kept[] => {
    const stands = least.stands[k] as Stands;
    return stands === 'free' ? [] : [{ row, stands }];
  });
  const binary = kept.map(
    ({ row, stands }): Quick => ({
      weights: spread(BINARY, row, unknowns),
      level: row.level.toNumber(),
      side: SIDE[stands],
    }),
  );
  const size = Math.max(...squares.map((s) => s.toNumber()), Number.MIN_VALUE);
  const found = search(
    binary,
    squares.map((s) => s.toNumber() / size),
    least.values.map((v) => v.toNumber()),
  );
  const held = found.map((k) => (kept[k] as Kept).row);
  const step = stepTo(
    EXACT,
    squares,
    held.map((row) => spread(EXACT, row, unknowns)),
    least.values,
    held.map((row) => over(row, least.values).neg()),
  );
  const values = least.values.map((v, i) => v.plus(step[i] as Decimal).toDecimalPlaces(STEADY_PLACES));
  return kept.every((k) => keeps(k, values)) ? values : least.values;
}
