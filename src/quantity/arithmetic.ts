/** Sums, products and quotients of amounts: which have a meaning, in which dimension, and the unit to show them in. */
import { compareSteady, type Decimal } from './decimal';
import { type Dimension, isScalar, productRule, quotientRule } from './dimensions';
import * as faults from './faults';
import { fail } from './input-error';
import { type System, type Unit, unitOf, usualUnit } from './units';

/** What a quantity is made of. */
export interface Amount {
  readonly dimension: Dimension;
  /** In the canonical unit of the dimension. */
  readonly value: Decimal;
  /** The unit to show it in. */
  readonly unit: Unit;
}

export const amount = (dimension: Dimension, value: Decimal, unit: Unit): Amount => ({
  dimension,
  value,
  unit,
});

/** Feet that were reckoned rather than written are shown in feet and inches: 29 ft 2 in, not 29.167 ft. */
const computed = (unit: Unit): Unit => (unit.id === 'ft' ? usualUnit('length', 'customary') : unit);

const systemOf = (unit: Unit, other: Unit): System => unit.system ?? other.system ?? 'customary';

/** A temperature is a point on a scale: it has no sum, difference or opposite here. */
function noPoint({ dimension }: Amount, verb: string): void {
  if (dimension === 'temperature') fail(faults.mismatch(verb, 'temperature', 'temperature'));
}

/** The two must be of the same dimension and currency. */
function sameKind(a: Amount, b: Amount, verb: string): void {
  if (b.dimension !== a.dimension) fail(faults.mismatch(verb, a.dimension, b.dimension));
  if (a.dimension === 'money' && a.unit !== b.unit) fail(faults.currencyMismatch(a.unit.id, b.unit.id));
}

function alike(a: Amount, b: Amount, verb: string): void {
  sameKind(a, b, verb);
  noPoint(a, verb);
}

/** The first plus the second. */
export function sum(a: Amount, b: Amount): Amount {
  alike(a, b, 'add');
  return amount(a.dimension, a.value.plus(b.value), computed(a.unit));
}

/** The first less the second. */
export function difference(a: Amount, b: Amount): Amount {
  alike(a, b, 'subtract');
  return amount(a.dimension, a.value.minus(b.value), computed(a.unit));
}

/** With the other sign. */
export function opposite(a: Amount): Amount {
  noPoint(a, 'negate');
  return amount(a.dimension, a.value.neg(), a.unit);
}

/** Which is greater; a difference in stray last digits counts as equal. */
export function compared(a: Amount, b: Amount): -1 | 0 | 1 {
  sameKind(a, b, 'compare');
  return compareSteady(a.value, b.value);
}

/** The product in the dimension that it has. */
export function product(a: Amount, b: Amount): Amount {
  const rule = productRule(a.dimension, b.dimension);
  const value = a.value.times(b.value);
  if (rule) return derived(rule.dimension, rule.factor ? value.div(rule.factor) : value, a, b);
  if (isScalar(b.dimension) && a.dimension !== 'temperature' && a.dimension !== 'ratio')
    return amount(a.dimension, value, computed(a.unit));
  if (isScalar(a.dimension) && b.dimension !== 'temperature')
    return amount(b.dimension, value, computed(b.unit));
  return fail(faults.mismatch('multiply', a.dimension, b.dimension));
}

/** The quotient in the dimension that it has. */
export function quotient(a: Amount, b: Amount): Amount {
  if (a.dimension === 'temperature') return fail(faults.mismatch('divide', a.dimension, b.dimension));
  if (b.value.isZero()) return fail(faults.divideByZero());
  if (a.dimension === b.dimension) {
    sameKind(a, b, 'divide');
    return amount('ratio', a.value.div(b.value), unitOf('ratio', ':1') as Unit);
  }
  if (isScalar(b.dimension)) return amount(a.dimension, a.value.div(b.value), a.unit);
  const rule = quotientRule(a.dimension, b.dimension);
  if (!rule) return fail(faults.mismatch('divide', a.dimension, b.dimension));
  const value = (rule.factor ? a.value.times(rule.factor) : a.value).div(b.value);
  return derived(rule.dimension, value, a, b);
}

function derived(dimension: Dimension, value: Decimal, a: Amount, b: Amount): Amount {
  const d = dimension as Exclude<Dimension, 'money'>;
  return amount(d, value, usualUnit(d, systemOf(a.unit, b.unit)));
}

/** A whole number of increments, by the way that `whole` rounds. */
export function stepped(a: Amount, increment: Amount, whole: (n: Decimal) => Decimal): Amount {
  sameKind(a, increment, 'round');
  const step = increment.value;
  if (step.isZero() || step.isNegative()) fail(faults.notPositive('the increment'));
  return amount(a.dimension, whole(a.value.div(step)).times(step), a.unit);
}
