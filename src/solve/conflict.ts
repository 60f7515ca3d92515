/**
 * Which of some conditions cannot be met together.
 *
 * The proof that the costs of a problem cannot vanish rests on some rows only; from these, one at a time
 * is left out for as long as the rest still conflict. Two are named where two do.
 */
import { leastOf, type Row, rough } from './kinks';

/** Above so many rows pairs are not tried one by one. */
const PAIRS_TRIED = 60;
/** Broken by more than this, in the measure of the rows. */
const BROKEN = 1e-7;

const conflict = (unknowns: number, rows: readonly Row[]): boolean =>
  rows.length > 0 && (rough({ unknowns, rows }).total[0] as number) > BROKEN;

function pairAmong(unknowns: number, rows: readonly Row[]): number[] | undefined {
  const tried = rows.length <= PAIRS_TRIED ? rows.length : 0;
  for (let i = 0; i < tried; i += 1) {
    for (let j = i + 1; j < tried; j += 1) {
      if (conflict(unknowns, [rows[i] as Row, rows[j] as Row])) return [i, j];
    }
  }
  return undefined;
}

/**
 * Some rows that cannot be met together, none of which can be left out.
 *
 * @param rows - rows that cost at the first place only, and cannot all be met
 * @returns their places
 */
export function conflictAmong(unknowns: number, rows: readonly Row[]): number[] {
  const pair = pairAmong(unknowns, rows);
  if (pair) return pair;
  let left = [...(leastOf({ unknowns, rows })?.heavy ?? rows.keys())];
  for (const k of [...left]) {
    const without = left.filter((other) => other !== k);
    if (
      conflict(
        unknowns,
        without.map((other) => rows[other] as Row),
      )
    )
      left = without;
  }
  return left;
}
