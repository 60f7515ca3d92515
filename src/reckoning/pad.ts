/** The pad that a calculation writes on while it reckons: working, assumptions, cautions. */
import { ROUND_HALF_UP } from '../quantity/decimal';
import type { Dimension } from '../quantity/dimensions';
import { withUnit } from '../quantity/format';
import { canonicalValue, numberShown, type Quantity, unitShown } from '../quantity/quantity';
import type { Assumption, Caution, Step } from './result';

const WORKING_DIGITS = 10;

/** Where a last digit tips a number up to the next whole one, it must be seen. */
const TIPPING_DIGITS = 16;

const SIXTY_FOURTHS = 64;

/** As exact as fits on a line: what is put in must come to what is printed. */
function putText(q: Quantity, digits: number): string {
  const unit = unitShown(q);
  if (unit.form === 'one-in' && q.sign() === 0) return q.format();
  if (unit.form === 'feet-inches') {
    const inches = canonicalValue(q).times(SIXTY_FOURTHS).div('0.0254');
    if (inches.isInteger()) return q.format('ft-in', { denominator: SIXTY_FOURTHS });
  }
  const number = numberShown(q);
  const short = number.precision() > digits ? number.toSignificantDigits(digits, ROUND_HALF_UP) : number;
  return unit.dimension === 'count' ? short.toFixed() : withUnit(short.toFixed(), unit);
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

function putIn(formula: string, values: Readonly<Record<string, Quantity>>): string {
  const digits = formula.includes('ceil') || formula.includes('floor') ? TIPPING_DIGITS : WORKING_DIGITS;
  let text = '';
  for (const piece of piecesOf(formula)) {
    const power = piece.endsWith('²') || piece.endsWith('³') ? piece.slice(-1) : '';
    const q = values[power ? piece.slice(0, -1) : piece];
    if (!q) text += piece;
    else text += power || q.sign() < 0 ? `(${putText(q, digits)})${power}` : putText(q, digits);
  }
  return text;
}

/** Collects what a result shows beside its figures. */
export class Pad {
  readonly working: Step[] = [];
  readonly assumed: Assumption[] = [];
  readonly cautions: Caution[] = [];

  /**
   * Note one step and hand its outcome on.
   *
   * @param what - what is computed, in words
   * @param formula - in symbols, `A = L × W`; those named in `values` have their numbers put in
   * @param values - the quantities that the symbols stand for
   * @param gives - the outcome, computed from the same quantities
   */
  step<D extends Dimension>(
    what: string,
    formula: string,
    values: Readonly<Record<string, Quantity>>,
    gives: Quantity<D>,
  ): Quantity<D> {
    this.working.push(Object.freeze({ what, formula, put: putIn(formula, values), gives: gives.format() }));
    return gives;
  }

  /** List a default that is being used. */
  assume(assumption: Assumption): void {
    this.assumed.push(assumption);
  }

  /** Note a caution. */
  caution(caution: Caution): void {
    this.cautions.push(caution);
  }
}
