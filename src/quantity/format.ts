/**
 * Showing a quantity as the trade reads it. Showing never changes the stored value.
 *
 * Half-up rounding, as people round by hand. A value below one keeps two significant digits where the places
 * usual for its unit would leave fewer: 0.073 in2 of steel, not 0.07; 0.0063 m2, not 0.01.
 */
import { type Decimal, ROUND_HALF_UP, shownQuotient } from './decimal';
import * as faults from './faults';
import { fail } from './input-error';
import { type Unit, unitOf } from './units';

/** How to show a quantity. */
export interface FormatOptions {
  /** Decimal places; by default those usual for the unit. */
  readonly places?: number;
  /** Feet and inches to the nearest 1/denominator inch: 1, 2, 4, 8, 16 (default), 32 or 64. */
  readonly denominator?: 1 | 2 | 4 | 8 | 16 | 32 | 64;
}

/** The number that stands before the unit, as exact as 60 digits are. */
export function inUnit(value: Decimal, unit: Unit): Decimal {
  if (unit.form === 'one-in') return value.isZero() ? value : unit.factor.div(value);
  return (unit.offset ? value.minus(unit.offset) : value).div(unit.factor);
}

/** The same to 24 digits, at less cost: for showing only. */
export function numberForShow(value: Decimal, unit: Unit): Decimal {
  if (unit.form === 'one-in') return inUnit(value, unit);
  return shownQuotient(unit.offset ? value.minus(unit.offset) : value, unit.factor);
}

/** A zero of a scale is no smallness, and nobody pays thousandths of a coin. */
const onAScale = (unit: Unit): boolean =>
  unit.form === 'money' || unit.dimension === 'temperature' || unit.dimension === 'temperature-difference';

/** A power of ten below which a number of any unit is what rounding left over: it is shown as nothing. */
const NOTHING = -12;

/** Places usual for the unit, or as many more as two significant digits of a small value take. */
const usualPlaces = (number: Decimal, unit: Unit): number =>
  number.e >= 0 || number.e < NOTHING || onAScale(unit) ? unit.places : Math.max(unit.places, 1 - number.e);

function rounded(number: Decimal, unit: Unit, places: number | undefined): string {
  const wanted = places ?? usualPlaces(number, unit);
  const near = number.decimalPlaces() > wanted ? number.toDecimalPlaces(wanted, ROUND_HALF_UP) : number;
  if (near.isZero() && number.e >= NOTHING && !number.isZero() && places === undefined) {
    return number.toSignificantDigits(2, ROUND_HALF_UP).toFixed();
  }
  const least = places ?? (unit.fixed ? unit.places : 0);
  const text = near.toFixed(Math.max(least, near.decimalPlaces()));
  return near.isZero() ? text.replace('-', '') : text;
}

/** Put number and unit together. */
export function withUnit(number: string, unit: Unit): string {
  switch (unit.form) {
    case 'percent':
      return `${number}%`;
    case 'one-in':
      return number.startsWith('-') ? `-1:${number.slice(1)}` : `1:${number}`;
    case 'to-one':
      return `${number}:1`;
    case 'feet-inches':
      return `${number} ft`;
    default:
      return `${number} ${unit.id}`;
  }
}

const divisorCommon = (a: number, b: number): number => (b === 0 ? a : divisorCommon(b, a % b));

/** `12 ft 6-1/2 in` to the nearest fraction, with the hyphen that prints have. */
function feetInches(value: Decimal, denominator: number): string {
  const inch = (unitOf('length', 'in') as Unit).factor;
  const parts = value.abs().times(denominator).div(inch).toDecimalPlaces(0, ROUND_HALF_UP);
  const perFoot = 12 * denominator;
  const feet = parts.divToInt(perFoot);
  const rest = parts.minus(feet.times(perFoot)).toNumber();
  const inches = Math.floor(rest / denominator);
  const top = rest % denominator;
  const common = divisorCommon(top, denominator);
  const fraction = top === 0 ? '' : `${top / common}/${denominator / common}`;
  const inchText = [inches > 0 || (feet.isZero() && !fraction) ? String(inches) : '', fraction]
    .filter(Boolean)
    .join('-');
  const sign = value.isNegative() && !parts.isZero() ? '-' : '';
  const feetText = feet.isZero() ? '' : `${feet.toFixed()} ft`;
  const inchPart = feet.isZero() || rest > 0 ? `${inchText} in` : '';
  return sign + [feetText, inchPart].filter(Boolean).join(' ');
}

const NO_OPTIONS: FormatOptions = {};

const DENOMINATORS = [1, 2, 4, 8, 16, 32, 64];
const MOST_PLACES = 60;

/** The options, each read once: a getter may be a trap. */
function checked(options: FormatOptions): FormatOptions {
  let given: FormatOptions;
  try {
    const { places, denominator } = options;
    given = { places, denominator } as FormatOptions;
  } catch {
    return fail(faults.wrongType('options', 'an object'));
  }
  const { places = 0, denominator = 16 } = given;
  if (!Number.isInteger(places) || places < 0 || places > MOST_PLACES) {
    fail(faults.wrongType('places', `a whole number from 0 to ${MOST_PLACES}`));
  }
  if (!DENOMINATORS.includes(denominator))
    fail(faults.wrongType('denominator', `one of ${DENOMINATORS.join(', ')}`));
  return given;
}

/** Show a canonical value in a unit; the number in that unit may be given where it is known. */
export function show(
  value: Decimal,
  unit: Unit,
  asked: FormatOptions | null = NO_OPTIONS,
  number?: Decimal,
): string {
  const options = asked === NO_OPTIONS || asked === null ? NO_OPTIONS : checked(asked);
  if (unit.form === 'feet-inches') return feetInches(value, options.denominator ?? 16);
  if (unit.form === 'one-in' && value.isZero()) return 'level';
  return withUnit(rounded(number ?? numberForShow(value, unit), unit, options.places), unit);
}
