/**
 * Linear programmes, solved by the library yalps, for the least fill and the least raise.
 *
 * The library reckons in binary numbers to about 0.000 000 01; what is reported is solved again
 * exactly from the conditions that turn out to bind (see `exactly`).
 */
import { type Constraint, solve } from 'yalps';
import { Decimal } from '../quantity/decimal';

/** A linear expression: how much of each variable. */
export type Weights = Readonly<Record<string, number>>;

/** A condition on a linear expression. */
export interface Condition {
  readonly weights: Weights;
  readonly least?: number;
  readonly most?: number;
}

/** A linear programme; variables listed in `free` may be negative. */
export interface Programme {
  readonly conditions: readonly Condition[];
  readonly free: ReadonlySet<string>;
  /** To be made least, one after the other. */
  readonly aims: readonly Weights[];
}

/** Values of all variables; `undefined` when nothing meets the conditions. */
export type Solved = ReadonlyMap<string, number> | undefined;

const PLUS = '+';
const MINUS = '-';
const AIM = 'aim';
const ROOM = 1e-8;
const PIVOTS = 100_000;

/** A free variable is the difference of two that are not negative. */
function columns(
  conditions: readonly Condition[],
  aim: Weights,
  free: ReadonlySet<string>,
): Map<string, Map<string, number>> {
  const made = new Map<string, Map<string, number>>();
  const put = (variable: string, row: string, weight: number): void => {
    const column = made.get(variable) ?? new Map<string, number>();
    column.set(row, (column.get(row) ?? 0) + weight);
    made.set(variable, column);
  };
  const add = (row: string, weights: Weights): void => {
    for (const [variable, weight] of Object.entries(weights)) {
      put(PLUS + variable, row, weight);
      if (free.has(variable)) put(MINUS + variable, row, -weight);
    }
  };
  conditions.forEach(({ weights }, i) => {
    add(String(i), weights);
  });
  add(AIM, aim);
  return made;
}

function bounds({ least, most }: Condition): Constraint {
  if (least !== undefined && least === most) return { equal: least };
  return { ...(least === undefined ? {} : { min: least }), ...(most === undefined ? {} : { max: most }) };
}

function once(conditions: readonly Condition[], aim: Weights, free: ReadonlySet<string>): Solved {
  const solution = solve(
    {
      direction: 'minimize',
      objective: AIM,
      constraints: conditions.map((c, i) => [String(i), bounds(c)] as const),
      variables: columns(conditions, aim, free),
    },
    { maxPivots: PIVOTS, checkCycles: conditions.length < 200 },
  );
  if (solution.status !== 'optimal') return undefined;
  const values = new Map<string, number>();
  for (const [key, value] of solution.variables) {
    const name = key.slice(1);
    values.set(name, (values.get(name) ?? 0) + (key.startsWith(PLUS) ? value : -value));
  }
  return values;
}

const totalOf = (weights: Weights, values: ReadonlyMap<string, number>): number =>
  Object.entries(weights).reduce((sum, [name, weight]) => sum + weight * (values.get(name) ?? 0), 0);

/** Make the aims least, one after the other: each is held while the next is sought. */
export function leastOf({ conditions, free, aims }: Programme): Solved {
  const held: Condition[] = [...conditions];
  let best: Solved;
  for (const aim of aims) {
    const next = once(held, aim, free);
    // A later aim never undoes an earlier one: where rounding leaves no room, the earlier stands.
    if (!next) return best;
    best = next;
    held.push({ weights: aim, most: totalOf(aim, next) + ROOM });
  }
  return best;
}

/** True when something meets all conditions. */
export const canMeet = (conditions: readonly Condition[], free: ReadonlySet<string>): boolean =>
  once(conditions, {}, free) !== undefined;

/** Above so many conditions pairs are not tried one by one. */
const PAIRS_TRIED = 60;

function pairAmong(conditions: readonly Condition[], free: ReadonlySet<string>): number[] | undefined {
  const tried = conditions.length <= PAIRS_TRIED ? conditions.length : 0;
  for (let i = 0; i < tried; i += 1) {
    for (let j = i; j < tried; j += 1) {
      const pair = [conditions[i] as Condition, conditions[j] as Condition];
      if (!canMeet(pair, free)) return i === j ? [i] : [i, j];
    }
  }
  return undefined;
}

/**
 * Some conditions that cannot be met together, no one of which can be left out: two where two will
 * do, otherwise what is left when they are taken away, many at a time and then fewer.
 */
export function conflictAmong(conditions: readonly Condition[], free: ReadonlySet<string>): number[] {
  const pair = pairAmong(conditions, free);
  if (pair) return pair;
  let left = conditions.map((_, i) => i);
  let chunk = Math.ceil(left.length / 2);
  for (;;) {
    for (let from = 0; from < left.length; ) {
      const without = [...left.slice(0, from), ...left.slice(from + chunk)];
      if (
        canMeet(
          without.map((k) => conditions[k] as Condition),
          free,
        )
      )
        from += chunk;
      else left = without;
    }
    if (chunk === 1) return left;
    chunk = Math.ceil(chunk / 2);
  }
}

/** One exact equation: weights by variable and the right-hand side. */
export interface Equation {
  readonly weights: readonly Decimal[];
  readonly equals: Decimal;
}

const STEADY_PLACES = 45;

/** Rows this small against their own largest weight depend on those before. */
const DEPENDENT = new Decimal('1e-12');

function reduced(row: readonly Decimal[], by: readonly Decimal[], pivot: number): Decimal[] {
  const factor = (row[pivot] as Decimal).div(by[pivot] as Decimal);
  return row.map((w, k) => w.minus(factor.times(by[k] as Decimal)));
}

/** The place of the largest weight, when it is not negligible. */
function pivotOf(row: readonly Decimal[], count: number, largest: Decimal): number {
  let best = -1;
  for (let k = 0; k < count; k += 1) {
    const size = (row[k] as Decimal).abs();
    if (
      size.greaterThan(largest.times(DEPENDENT)) &&
      (best === -1 || size.greaterThan((row[best] as Decimal).abs()))
    )
      best = k;
  }
  return best;
}

/**
 * Solve exactly from the first equations that determine all variables.
 *
 * @param equations - those that bind, the ones that must hold first
 * @param count - how many variables there are
 * @returns the values, or `undefined` where the equations do not determine them
 */
export function exactly(equations: readonly Equation[], count: number): Decimal[] | undefined {
  const kept: { readonly row: Decimal[]; readonly pivot: number }[] = [];
  for (const { weights, equals } of equations) {
    if (kept.length === count) break;
    const largest = weights.reduce((m, w) => (w.abs().greaterThan(m) ? w.abs() : m), new Decimal(0));
    let row: Decimal[] = [...weights, equals];
    for (const { row: by, pivot } of kept) row = reduced(row, by, pivot);
    const pivot = pivotOf(row, count, largest);
    if (pivot === -1) continue;
    kept.forEach((other, k) => {
      kept[k] = { row: reduced(other.row, row, pivot), pivot: other.pivot };
    });
    kept.push({ row, pivot });
  }
  if (kept.length < count) return undefined;
  const values = new Array<Decimal>(count).fill(new Decimal(0));
  for (const { row, pivot } of kept) {
    // The last of 60 digits are strays of the elimination; no input has so many.
    values[pivot] = (row[count] as Decimal).div(row[pivot] as Decimal).toDecimalPlaces(STEADY_PLACES);
  }
  return values;
}
