/**
 * A quantity as exact plain data: the number as text, and a unit in which that number is finite.
 *
 * A third of a foot has no finite number of feet, but 4 inches. Whether a value is finite in a unit is told
 * without a division: by whether its digits, as a whole number, can be divided by what the factor of the unit has
 * besides twos and fives.
 */
import { beyondQuotient, type Decimal } from './decimal';
import { type Unit, unitIds, unitOf } from './units';

/** More digits than this are no product of what a tape shows: the value has been through a root or a division. */
const EXACT_DIGITS = 40;

/** The digits of a decimal are kept by sevens: a remainder times 1e7 must be a whole number still. */
const WORD = 1e7;
const LARGEST_DIVISOR = 9e8;

/** What is left of a whole number when all of these primes are taken out of it. */
function without(primes: readonly bigint[], whole: bigint): bigint {
  const prime = primes.find((p) => whole % p === BigInt(0));
  return prime === undefined ? whole : without(primes, whole / prime);
}

const divisors = new WeakMap<Unit, bigint>();

/** What the factor of a unit has besides twos and fives: a value finite in it is a multiple of that. */
function divisorOf(unit: Unit): bigint {
  let made = divisors.get(unit);
  if (made === undefined) {
    const digits = unit.factor.toFixed().replace('.', '');
    made = without([BigInt(2), BigInt(5)], BigInt(digits));
    divisors.set(unit, made);
  }
  return made;
}

/** True where its digits as a whole number, without regard to the point, are a multiple of what the unit asks for. */
function divides(unit: Unit, { d: words }: Decimal): boolean {
  const by = divisorOf(unit);
  if (by < LARGEST_DIVISOR) {
    const n = Number(by);
    return words.reduce((rest, word) => (rest * WORD + word) % n, 0) === 0;
  }
  const digits = words.map((word) => String(word).padStart(7, '0')).join('');
  return BigInt(digits) % by === BigInt(0);
}

const isPlain = (unit: Unit): boolean => unit.form !== 'feet-inches' && unit.form !== 'one-in';

const isCanonical = (unit: Unit): boolean => !unit.offset && unit.factor.equals(1);

/** True where a value of not too many digits is a finite number of that unit. */
const finiteIn = (value: Decimal, unit: Unit): boolean =>
  isPlain(unit) && (isCanonical(unit) || divides(unit, unit.offset ? value.minus(unit.offset) : value));

interface Others {
  /** Those of the family of the unit first. */
  readonly ordered: readonly Unit[];
  /** The canonical unit where it is one of the trade, otherwise the unit itself. */
  readonly base: Unit;
}

const others = new WeakMap<Unit, Others>();

function othersOf(unit: Unit): Others {
  let made = others.get(unit);
  if (!made) {
    const all = unitIds(unit.dimension).map((id) => unitOf(unit.dimension, id) as Unit);
    const family = unit.system ?? 'customary';
    const ordered = [...all.filter((u) => u.system === family), ...all];
    made = { ordered, base: all.find(isCanonical) ?? unit };
    others.set(unit, made);
  }
  return made;
}

/**
 * The unit in which a value is given as plain data: the one it is shown in where the value is finite there,
 * otherwise the first of its dimension in which it is. A value that is finite in none (π in it, say) is given in
 * the canonical unit.
 *
 * @param written - true where the value was read from a number in that unit
 */
export function exactUnit(value: Decimal, unit: Unit, written: boolean): Unit {
  if ((written && isPlain(unit)) || isCanonical(unit)) return unit;
  const { ordered, base } = othersOf(unit);
  if (value.precision() > EXACT_DIGITS) return base;
  if (finiteIn(value, unit)) return unit;
  return ordered.find((other) => finiteIn(value, other)) ?? base;
}

/** The number in that unit as text; where it is not finite, with so many digits that it reads back as the same. */
export const exactText = (value: Decimal, unit: Unit): string =>
  (isCanonical(unit)
    ? value
    : beyondQuotient(unit.offset ? value.minus(unit.offset) : value, unit.factor)
  ).toFixed();
