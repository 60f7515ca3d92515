/**
 * The quantity: an exact decimal with its dimension. Immutable.
 *
 * Dimensions are checked when compiling, by the type parameter, and when running, by `dimension`.
 */
import { beyondQuotient, ceilWhole, compareSteady, type Decimal, floorWhole, ZERO } from './decimal';
import {
  type Dimension,
  type Divisor,
  isScalar,
  type Multiplier,
  type Product,
  productRule,
  type Quotient,
  quotientRule,
} from './dimensions';
import * as faults from './faults';
import { type FormatOptions, inUnit, numberForShow, show, withUnit } from './format';
import { type Fault, fail } from './input-error';
import { canonical, isFault, readPair, readText } from './parse';
import { type System, type Unit, unitIds, unitOf, usualUnit } from './units';

/** A quantity as JSON: a decimal number as text, and the id of its unit. */
export interface QuantityJson {
  /** Decimal number, exact. */
  readonly value: string;
  /** Id of a unit. */
  readonly unit: string;
}

/** A number with its unit, as it comes out of a form or a file. */
export interface QuantityPair {
  /** Decimal number; as text it is exact. */
  readonly value: string | number;
  /** Name of a unit, as it may be written in text. */
  readonly unit: string;
}

/** Anything accepted where a quantity is wanted: text with a unit, `{ value, unit }`, or a quantity. */
export type QuantityInput<D extends Dimension> = string | QuantityPair | Quantity<D>;

/** A power of ten below which an amount is what rounding left over, whatever its unit: it is zero. */
const STRAY = -40;

/** Marks quantities of another copy of this library, as when ESM and CommonJS meet. */
const MARK = Symbol.for('flatwork-reckoner.quantity');

/** Feet that were reckoned rather than written are shown in feet and inches: 29 ft 2 in, not 29.167 ft. */
const computed = (unit: Unit): Unit => (unit.id === 'ft' ? usualUnit('length', 'customary') : unit);

/** A quantity from a canonical value and the unit to show it in. */
export let newQuantity: <D extends Dimension>(
  d: D,
  value: Decimal,
  unit: Unit,
  number?: Decimal,
) => Quantity<D>;

/** The number that stands before the unit a quantity is shown in. */
export let numberShown: (q: Quantity) => Decimal;

/** The canonical value of a quantity. */
export let canonicalValue: (q: Quantity) => Decimal;

/** The unit a quantity is shown in. */
export let unitShown: (q: Quantity) => Unit;

/** True for a quantity made by this copy of the library. */
export let isQuantity: (x: unknown) => x is Quantity;

const systemOf = (unit: Unit, other: Unit): System => unit.system ?? other.system ?? 'customary';

/**
 * An exact amount of one dimension.
 *
 * Make one with {@link length}, {@link area} and their like. `plus`, `minus`, `times` and `over`
 * never round, but for the one division that a quotient or a mixed unit may need, kept to 60
 * digits.
 *
 * @example
 * ```ts
 * import { length } from 'flatwork-reckoner';
 *
 * const area = length(`12' 6-1/2"`).times(length('10 ft'));
 * area.format(); // '125.42 ft2'
 * area.format('m2'); // '11.65 m2'
 * ```
 */
export class Quantity<D extends Dimension = Dimension> {
  readonly #dimension: D;
  readonly #value: Decimal;
  readonly #unit: Unit;
  /** The number in that unit: as it was written, or worked out when first shown. */
  #number: Decimal | undefined;

  private constructor(dimension: D, value: Decimal, unit: Unit, number?: Decimal) {
    this.#dimension = dimension;
    const stray = value.e < STRAY;
    this.#value = stray ? ZERO : value;
    this.#unit = unit;
    this.#number = stray ? undefined : number;
  }

  // The rest of the library reaches in through these functions, so that no decimal type shows in
  // the public declarations.
  static {
    newQuantity = (d, value, unit, number) => new Quantity(d, value, unit, number);
    canonicalValue = (q) => q.#value;
    numberShown = (q) => {
      q.#number ??= numberForShow(q.#value, q.#unit);
      return q.#number;
    };
    unitShown = (q) => q.#unit;
    isQuantity = (x): x is Quantity => typeof x === 'object' && x !== null && #value in x;
    Object.defineProperty(Quantity.prototype, MARK, { value: true });
  }

  /** What this measures. */
  get dimension(): D {
    return this.#dimension;
  }

  /**
   * The sum, shown in the unit of the first, or in feet and inches for feet.
   *
   * @param other - same dimension, and same currency for money
   * @throws {InputError} `dimension-mismatch`, `currency-mismatch`
   */
  plus(other: Quantity<D>): Quantity<D> {
    this.#sameAs(other, 'add');
    this.#noPoint('add');
    return new Quantity(this.dimension, this.#value.plus(other.#value), computed(this.#unit));
  }

  /**
   * The difference, shown as a sum is. Temperatures have no difference here; ask for
   * `temperature-difference` where one is wanted.
   *
   * @param other - same dimension, and same currency for money
   * @throws {InputError} `dimension-mismatch`, `currency-mismatch`
   */
  minus(other: Quantity<D>): Quantity<D> {
    this.#sameAs(other, 'subtract');
    this.#noPoint('subtract');
    return new Quantity(this.dimension, this.#value.minus(other.#value), computed(this.#unit));
  }

  /**
   * The product, in the dimension that it has: length × length is an area.
   *
   * @param other - a quantity that this one multiplies with
   * @throws {InputError} `dimension-mismatch` when the product has no meaning here
   */
  times<E extends Multiplier<D>>(other: Quantity<E>): Quantity<Product<D, E>> {
    const b: Quantity = other;
    if (!isQuantity(b)) return fail(faults.bareArithmetic());
    const rule = productRule(this.#dimension, b.#dimension);
    const plainProduct = this.#value.times(b.#value);
    if (rule) {
      const value = rule.factor ? plainProduct.div(rule.factor) : plainProduct;
      return this.#derived(rule.dimension, value, b) as Quantity<Product<D, E>>;
    }
    if (isScalar(b.dimension) && this.dimension !== 'temperature' && !(this.dimension === 'ratio')) {
      return new Quantity(this.dimension, plainProduct, computed(this.#unit)) as Quantity<Product<D, E>>;
    }
    if (isScalar(this.dimension) && b.dimension !== 'temperature') {
      return new Quantity(b.dimension, plainProduct, computed(b.#unit)) as Quantity<Product<D, E>>;
    }
    return fail(faults.mismatch('multiply', this.dimension, b.dimension));
  }

  /**
   * The quotient, in the dimension that it has: volume over area is a length, and like over like
   * is a ratio.
   *
   * @param other - a quantity that divides this one, not zero
   * @throws {InputError} `dimension-mismatch`, `divide-by-zero`, `currency-mismatch`
   */
  over<E extends Divisor<D>>(other: Quantity<E>): Quantity<Quotient<D, E>> {
    const b: Quantity = other;
    if (!isQuantity(b)) return fail(faults.bareArithmetic());
    if (this.dimension === 'temperature') return fail(faults.mismatch('divide', this.dimension, b.dimension));
    if (b.#value.isZero()) return fail(faults.divideByZero());
    if (this.dimension === b.dimension) {
      this.#sameAs(b, 'divide');
      return new Quantity('ratio', this.#value.div(b.#value), unitOf('ratio', ':1') as Unit) as Quantity<
        Quotient<D, E>
      >;
    }
    if (isScalar(b.dimension)) {
      return new Quantity(this.dimension, this.#value.div(b.#value), this.#unit) as Quantity<Quotient<D, E>>;
    }
    const rule = quotientRule(this.dimension, b.dimension);
    if (!rule) return fail(faults.mismatch('divide', this.dimension, b.dimension));
    const value = (rule.factor ? this.#value.times(rule.factor) : this.#value).div(b.#value);
    return this.#derived(rule.dimension, value, b) as Quantity<Quotient<D, E>>;
  }

  /** The opposite sign. */
  negated(): Quantity<D> {
    this.#noPoint('negate');
    return new Quantity(this.dimension, this.#value.neg(), this.#unit);
  }

  /** Without its sign. */
  abs(): Quantity<D> {
    this.#noPoint('negate');
    return this.#value.isNegative() ? this.negated() : this;
  }

  /**
   * Rounded up to a whole number of increments; a stray last digit never tips it over.
   *
   * @param increment - same dimension, greater than zero
   * @throws {InputError} `dimension-mismatch`, `not-positive`
   * @example
   * ```ts
   * import { volume } from 'flatwork-reckoner';
   *
   * volume('5.25 yd3').upTo(volume('0.25 yd3')).format(); // '5.25 yd3'
   * volume('5.26 yd3').upTo(volume('0.25 yd3')).format(); // '5.50 yd3'
   * ```
   */
  upTo(increment: Quantity<D>): Quantity<D> {
    return this.#stepped(increment, ceilWhole);
  }

  /**
   * Rounded down to a whole number of increments; a stray last digit never tips it under.
   *
   * @param increment - same dimension, greater than zero
   * @throws {InputError} `dimension-mismatch`, `not-positive`
   */
  downTo(increment: Quantity<D>): Quantity<D> {
    return this.#stepped(increment, floorWhole);
  }

  /**
   * Which is greater: -1, 0 or 1. A difference in stray last digits counts as equal.
   *
   * @param other - same dimension, and same currency for money
   * @throws {InputError} `dimension-mismatch`, `currency-mismatch`
   */
  compareTo(other: Quantity<D>): -1 | 0 | 1 {
    this.#sameAs(other, 'compare');
    return compareSteady(this.#value, other.#value);
  }

  /** True when less than the other. Throws as {@link Quantity.compareTo} does. */
  lessThan(other: Quantity<D>): boolean {
    return this.compareTo(other) < 0;
  }

  /** True when greater than the other. Throws as {@link Quantity.compareTo} does. */
  greaterThan(other: Quantity<D>): boolean {
    return this.compareTo(other) > 0;
  }

  /** True when dimension and amount are the same, to the last digit kept; the unit shown may differ. */
  equals(other: Quantity): boolean {
    return (
      isQuantity(other) &&
      this.dimension === other.dimension &&
      this.#value.equals(other.#value) &&
      (this.dimension !== 'money' || this.#unit === other.#unit)
    );
  }

  /** -1, 0 or 1. */
  sign(): -1 | 0 | 1 {
    return this.#value.isZero() ? 0 : this.#value.isNegative() ? -1 : 1;
  }

  /**
   * The same amount, shown in another unit from now on.
   *
   * @param unit - id of a unit of this dimension, for example `yd3`, or `ft-in` for feet and inches
   * @throws {InputError} `unknown-unit`
   */
  in(unit: string): Quantity<D> {
    return new Quantity(this.dimension, this.#value, this.#unitNamed(unit));
  }

  /**
   * The nearest binary number in a unit, for plotting and the like. Not for further reckoning.
   *
   * @param unit - id of a unit of this dimension
   * @throws {InputError} `unknown-unit`
   */
  toNumber(unit: string): number {
    return inUnit(this.#value, this.#unitNamed(unit)).toNumber();
  }

  /**
   * As the trade reads it: feet and inches to the nearest 1/16, cubic yards and tons to two places.
   *
   * @param unit - id of a unit; by default the one it was written in or is usual for it
   * @param options - places or fraction
   * @throws {InputError} `unknown-unit`
   * @example
   * ```ts
   * import { length } from 'flatwork-reckoner';
   *
   * length('150.5 in').format('ft-in'); // '12 ft 6 1/2 in'
   * length('1 m').format('ft-in', { denominator: 8 }); // '3 ft 3 3/8 in'
   * ```
   */
  format(unit?: string, options?: FormatOptions): string {
    if (unit === undefined) return show(this.#value, this.#unit, options, numberShown(this));
    return show(this.#value, this.#unitNamed(unit), options);
  }

  /** Exact text with a unit, which reads back as the same quantity. */
  toString(): string {
    const { value, unit } = this.toJSON();
    return withUnit(value, this.#unitNamed(unit));
  }

  /**
   * Exact: in the unit shown where that is a finite decimal, otherwise in the first unit of its
   * dimension that is.
   */
  toJSON(): QuantityJson {
    for (const unit of this.#candidates()) {
      if (unit.form === 'feet-inches' || unit.form === 'one-in') continue;
      const number = inUnit(this.#value, unit);
      if (canonical(number, unit).equals(this.#value) && number.decimalPlaces() <= EXACT_PLACES) {
        return { value: number.toFixed(), unit: unit.id };
      }
    }
    return this.#inBase();
  }

  /** Operators such as `+` and `<` would drop the unit, so they throw; template text works. */
  [Symbol.toPrimitive](hint: string): string {
    if (hint === 'string') return this.toString();
    return fail(faults.bareArithmetic());
  }

  /** What Node prints in a REPL. */
  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return this.format();
  }

  /** A temperature is a point on a scale: it has no sum, difference or opposite here. */
  #noPoint(verb: string): void {
    if (this.#dimension === 'temperature') fail(faults.mismatch(verb, 'temperature', 'temperature'));
  }

  #sameAs(other: Quantity, verb: string): void {
    if (!isQuantity(other)) fail(faults.bareArithmetic());
    if (other.dimension !== this.dimension) fail(faults.mismatch(verb, this.dimension, other.dimension));
    if (this.dimension === 'money' && this.#unit !== other.#unit) {
      fail(faults.currencyMismatch(this.#unit.id, other.#unit.id));
    }
  }

  #derived(dimension: Dimension, value: Decimal, other: Quantity): Quantity {
    const d = dimension as Exclude<Dimension, 'money'>;
    return new Quantity(d, value, usualUnit(d, systemOf(this.#unit, other.#unit)));
  }

  #stepped(increment: Quantity<D>, whole: (n: Decimal) => Decimal): Quantity<D> {
    this.#sameAs(increment, 'round');
    if (increment.sign() <= 0) fail(faults.notPositive('the increment'));
    const steps = whole(this.#value.div(increment.#value));
    return new Quantity(this.dimension, steps.times(increment.#value), this.#unit);
  }

  #unitNamed(given: string): Unit {
    // What is no text may be a trap when made into one.
    const id = typeof given === 'string' ? given : 'no text';
    if (this.dimension === 'money') {
      if (id === this.#unit.id) return this.#unit;
      return fail(faults.currencyMismatch(this.#unit.id, id));
    }
    return unitOf(this.dimension, id) ?? fail(faults.unknownUnit('the unit', id, this.dimension));
  }

  #candidates(): Unit[] {
    if (this.dimension === 'money') return [this.#unit];
    const system = systemOf(this.#unit, this.#unit);
    const rest = unitIds(this.dimension).map((id) => unitOf(this.dimension, id) as Unit);
    return [this.#unit, ...rest.filter((u) => u.system === system), ...rest];
  }

  /**
   * A value that is finite in no unit (π in it, say) is given in the canonical unit itself; where that is no
   * unit of the trade, in another with so many digits that it reads back as the same.
   */
  #inBase(): QuantityJson {
    const rest = unitIds(this.dimension).map((id) => unitOf(this.dimension, id) as Unit);
    const base = rest.find((u) => u.factor.equals(1) && !u.offset) ?? this.#unit;
    return { value: beyondQuotient(this.#value, base.factor).toFixed(), unit: base.id };
  }
}

/** More places than this are never typed; beyond it the canonical unit serves better. */
const EXACT_PLACES = 24;

/** Read any accepted input but money as a quantity, or say what is wrong with it. */
export function readQuantity<D extends Dimension>(input: unknown, d: D, what: string): Quantity<D> | Fault {
  if (isQuantity(input)) {
    return input.dimension === d ? (input as Quantity<D>) : faults.wrongDimension(what, input.dimension, d);
  }
  if (typeof input === 'string') return made(readText(input, d, what), d);
  if (typeof input === 'number' || typeof input === 'bigint') return faults.missingUnit(what, d);
  if (input === undefined || input === null) return faults.missing(what, faults.exampleOf(d));
  if (typeof input !== 'object') return faults.notAQuantity(what, d);
  return readObject(input, d, what);
}

function readObject<D extends Dimension>(input: object, d: D, what: string): Quantity<D> | Fault {
  try {
    const source = MARK in input ? (input as unknown as { toJSON(): object }).toJSON() : input;
    const { value, unit } = source as Partial<QuantityJson>;
    const extra = Object.keys(source).find((k) => k !== 'value' && k !== 'unit');
    if (extra !== undefined) return faults.unknownKey(extra, ['value', 'unit']);
    return made(readPair(value, unit, d, what), d);
  } catch {
    return faults.notAQuantity(what, d);
  }
}

function made<D extends Dimension>(reading: ReturnType<typeof readText>, d: D): Quantity<D> | Fault {
  return isFault(reading) ? reading : newQuantity(d, reading.value, reading.unit, reading.number);
}

/** A quantity from a canonical value, shown as usual for the system. */
export function quantityOf<D extends Exclude<Dimension, 'money'>>(
  d: D,
  value: Decimal,
  system: System,
): Quantity<D> {
  return newQuantity(d, value, usualUnit(d, system));
}

/** The family of units that a quantity was given in. */
export function systemOfQuantity(q: Quantity): System {
  return unitShown(q).system ?? 'customary';
}

/** True for a code and a sentence in place of a quantity. */
export function isFaulty(q: Quantity | Fault): q is Fault {
  return !isQuantity(q);
}
