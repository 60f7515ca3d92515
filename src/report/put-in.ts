/** The right-hand side of a formula with its numbers put in, as a step of the working is printed. */
import { type Decimal, ROUND_HALF_UP } from '../quantity/decimal';
import { withUnit } from '../quantity/format';
import { canonicalValue, numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { exactFraction, isInSmallUnit, largeEnough, localized, type View, viewed } from './show';

const WORKING_DIGITS = 10;

/** Where a last digit tips a number up to the next whole one, it must be seen. */
const TIPPING_DIGITS = 16;

const SIXTY_FOURTHS = 64;

/** Rounded to so many digits, all of them written: 100.0000000 is not quite 100. */
function shortened(number: Decimal, digits: number): string {
  if (number.precision() <= digits) return number.toFixed();
  const short = number.toSignificantDigits(digits, ROUND_HALF_UP);
  return short.toFixed(Math.max(0, digits - 1 - short.e));
}

type Values = Readonly<Record<string, Quantity>>;

/**
 * Values in the units that they are put in with: volumes that are all small in the small unit in which the sheet tells
 * them too. Beside a larger one, or what is sold by, they stay in one unit with it.
 */
function inUnitsPut(values: Values, view: View): Values {
  const all = Object.entries(values).map(([name, q]) => [name, viewed(q, view)] as const);
  return Object.fromEntries(hasLarge(values, view) ? all : all.map(([name, q]) => [name, largeEnough(q)]));
}

/** Whether a volume among them is told in the large unit: what they come to is told beside it. */
export const hasLarge = (values: Values, view: View): boolean =>
  Object.values(values).some((given) => {
    const q = viewed(given, view);
    return q.dimension === 'volume' && q.sign() !== 0 && largeEnough(q) === q && !isInSmallUnit(q);
  });

/** As exact as fits on a line: what is put in must come to what is printed. */
function putText(q: Quantity, digits: number, view: View): string {
  const unit = unitShown(q);
  if (unit.form === 'one-in' && q.sign() === 0) return q.format();
  if (unit.form === 'feet-inches') {
    const inches = canonicalValue(q).times(SIXTY_FOURTHS).div('0.0254');
    if (inches.isInteger()) return q.format('ft-in', { denominator: SIXTY_FOURTHS });
  }
  const fraction = exactFraction(q, view);
  if (fraction !== undefined) return fraction;
  const text = shortened(numberShown(q), digits);
  return unit.dimension === 'count' || unit.form === 'to-one' ? text : withUnit(text, unit);
}

/** A formula cut up: text, then a symbol with its power, and so on in turn. */
type Pieces = readonly string[];

const SYMBOL = /([A-Za-z]\w*[²³]?)/;

const CACHED = 500;
const cut = new Map<string, Pieces>();

/** The formulas of a library are few; the long sums of an outline are not kept. */
function piecesOf(formula: string): Pieces {
  const known = cut.get(formula);
  if (known) return known;
  const pieces = formula
    .slice(formula.indexOf('=') + 1)
    .trim()
    .split(SYMBOL);
  if (cut.size < CACHED && formula.length < 100) cut.set(formula, pieces);
  return pieces;
}

const POWER = /[²³]$/;

/** The formula behind its sign of equality, its symbols replaced by what they stand for. */
export function putIn(formula: string, given: Values, view: View = {}): string {
  const values = inUnitsPut(given, view);
  const digits = formula.includes('ceil') || formula.includes('floor') ? TIPPING_DIGITS : WORKING_DIGITS;
  const put = (piece: string): string => {
    const power = POWER.exec(piece)?.[0] ?? '';
    const q = values[power ? piece.slice(0, -1) : piece];
    if (!q) return piece;
    const text = localized(putText(q, digits, view), view);
    return power || q.sign() < 0 ? `(${text})${power}` : text;
  };
  return piecesOf(formula).map(put).join('');
}
