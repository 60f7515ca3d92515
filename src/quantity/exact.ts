/**
 * A quantity as exact plain data: the number as text, and a unit in which that number is finite.
 *
 * A third of a foot has no finite number of feet, but 4 inches. Whether a value is finite in a unit is told
 * without a division: by whether its digits, as a whole number, can be divided by what the factor of the unit has
 * besides twos and fives.
 */
import { beyondQuotient, type Decimal, kept } from './decimal';
import { type Unit, unitsIn } from './units';

/** More digits than this are no product of what a tape shows: the value has been through a root or a division. */
const EXACT_DIGITS = 40;

/** The digits of a decimal are kept by sevens. A remainder times this must be a whole number still. */
const WORD = 1e7;
const SMALL = 9e8;
/** Up to here they are taken in two steps, of four and of three digits. */
const MIDDLE = 9e11;

/** What the digits of a number leave when they are divided as a whole number, without regard to the point. */
function remainder(words: readonly number[], by: number): number {
  let rest = 0;
  if (by < SMALL) {
    for (const word of words) rest = (rest * WORD + word) % by;
    return rest;
  }
  for (const word of words) {
    const high = Math.floor(word / 1000);
    rest = (((rest * 1e4 + high) % by) * 1e3 + (word - high * 1000)) % by;
  }
  return rest;
}

/** True where its digits are a multiple of what the unit asks for. */
function divides({ divisor }: Unit, { d: words }: Decimal): boolean {
  if (divisor < MIDDLE) return remainder(words, Number(divisor)) === 0;
  const digits = words.map((word) => String(word).padStart(7, '0')).join('');
  return BigInt(digits) % BigInt(divisor) === BigInt(0);
}

const isPlain = (unit: Unit): boolean => unit.form !== 'feet-inches' && unit.form !== 'one-in';

/** True where a value of not too many digits is a finite number of that unit. */
const finiteIn = (value: Decimal, unit: Unit): boolean =>
  isPlain(unit) && (unit.canonical || divides(unit, unit.offset ? value.minus(unit.offset) : value));

interface Others {
  /** Those of the family of the unit first. */
  readonly ordered: readonly Unit[];
  /** The canonical unit where it is one of the trade, otherwise the unit itself. */
  readonly base: Unit;
}

const others = new Map<Unit, Others>();

function othersOf(unit: Unit): Others {
  let made = others.get(unit);
  if (!made) {
    const all = unitsIn(unit.dimension);
    const family = unit.system ?? 'customary';
    const ordered = [...all.filter((u) => u.system === family), ...all];
    made = { ordered, base: all.find((u) => u.canonical) ?? unit };
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
  if ((written && isPlain(unit)) || unit.canonical) return unit;
  const { ordered, base } = othersOf(unit);
  if (value.precision() > EXACT_DIGITS) return base;
  if (finiteIn(value, unit)) return unit;
  return ordered.find((other) => finiteIn(value, other)) ?? base;
}

/** The number in that unit as text; where it is not finite, with so many digits that it reads back as the same. */
export const exactText = (value: Decimal, unit: Unit): string =>
  (unit.canonical
    ? kept(value)
    : beyondQuotient(unit.offset ? value.minus(unit.offset) : value, unit.factor)
  ).toFixed();
