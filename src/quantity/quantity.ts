/**
 * The quantity: an exact decimal with its dimension. Immutable.
 *
 * Dimensions are checked when compiling, by the type parameter, and when running, by `dimension`.
 */
import { ceilWhole, compareSteady, Decimal, floorWhole, ZERO } from './decimal';
import {
  type Dimension,
  type Divisor,
  isDimension,
  isScalar,
  type Multiplier,
  type Product,
  productRule,
  type Quotient,
  quotientRule,
} from './dimensions';
import { exactText, exactUnit } from './exact';
import * as faults from './faults';
import { type FormatOptions, inUnit, numberForShow, show, withUnit } from './format';
import { type Fault, fail } from './input-error';
import { readPair, readText } from './parse';
import { partsOfText, type QuantityPart } from './parts';
import { isFault } from './reading';
import { currencyUnit, type System, type Unit, type UnitId, unitOf, usualUnit } from './units';

/**
 * A quantity as plain data, as JSON, `structuredClone` and databases keep it. It is exact, is accepted wherever a
 * quantity is, and {@link revive} makes a quantity of it again.
 */
export interface QuantityData<D extends Dimension = Dimension> {
  /** Decimal number, exact. */
  readonly value: string;
  /** Id of the unit of that number. */
  readonly unit: UnitId<D>;
  /** What it measures. */
  readonly dimension: D;
  /** Id of the unit to show it in, where that is another: 12 ft 2 in are 146 in, shown in feet and inches. */
  readonly shownIn?: UnitId<D>;
}

/** A number with its unit, as it comes out of a form or a file. */
export interface QuantityPair {
  /** Decimal number; as text it is exact. */
  readonly value: string | number;
  /** Name of a unit, as it may be written in text. */
  readonly unit: string;
}

/** Anything accepted where a quantity is wanted: text with a unit, `{ value, unit }`, or a quantity. */
export type QuantityInput<D extends Dimension> = string | QuantityPair | QuantityData<D> | Quantity<D>;

/** What a quantity is inside, out of the way of those who copy, compare or list its members. */
interface Inner {
  readonly value: Decimal;
  readonly unit: Unit;
  /** The number in that unit as it was written. */
  readonly written: Decimal | undefined;
  /** The unit of the exact text. */
  readonly exact: Unit;
  /** The exact text, made when first asked for. */
  text: string | undefined;
  /** The number to show, worked out when first shown. */
  number: Decimal | undefined;
}

const INNER = Symbol('inner');

/** One descriptor for all: it is read at once, and making one for each costs as much as the quantity. */
const HIDDEN: { value: Inner | undefined } = { value: undefined };

/** The number is made into text when it is asked for: most quantities are on the way to another. */
const VALUE: PropertyDescriptor & ThisType<Quantity> = {
  enumerable: true,
  get() {
    const inner = innerOf(this);
    inner.text ??= textOf(inner);
    return inner.text;
  },
};

/** A power of ten below which an amount is what rounding left over, whatever its unit: it is zero. */
const STRAY = -40;

/** Feet that were reckoned rather than written are shown in feet and inches: 29 ft 2 in, not 29.167 ft. */
const computed = (unit: Unit): Unit => (unit.id === 'ft' ? usualUnit('length', 'customary') : unit);

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
  /** Decimal number, exact, as text. */
  declare readonly value: string;
  /** Id of the unit of that number. */
  declare readonly unit: UnitId<D>;
  /** What this measures. */
  declare readonly dimension: D;
  /** Id of the unit to show it in, where that is another. */
  declare readonly shownIn?: UnitId<D>;

  private constructor(dimension: D, value: Decimal, shown: Unit, number?: Decimal) {
    const stray = value.e < STRAY;
    const amount = stray ? ZERO : value;
    const written = stray ? undefined : number;
    const unit = exactUnit(amount, shown, written !== undefined);
    HIDDEN.value = { value: amount, unit: shown, written, exact: unit, text: undefined, number: undefined };
    Object.defineProperty(this, INNER, HIDDEN);
    Object.defineProperty(this, 'value', VALUE);
    this.unit = unit.id as UnitId<D>;
    this.dimension = dimension;
    if (unit !== shown) this.shownIn = shown.id as UnitId<D>;
    Object.freeze(this);
  }

  /** Within the library only. */
  // biome-ignore lint/correctness/noUnusedPrivateClassMembers: the way in for the rest of this file
  private static readonly of = <E extends Dimension>(d: E, value: Decimal, unit: Unit, number?: Decimal) =>
    new Quantity(d, value, unit, number);

  /**
   * The sum, shown in the unit of the first, or in feet and inches for feet.
   *
   * @param other - same dimension, and same currency for money
   * @throws {InputError} `dimension-mismatch`, `currency-mismatch`
   */
  plus(other: Quantity<D>): Quantity<D> {
    const [a, b] = alike(this, other, 'add');
    return newQuantity(this.dimension, a.value.plus(b.value), computed(a.unit));
  }

  /**
   * The difference, shown as a sum is. Temperatures have no difference here; ask for
   * `temperature-difference` where one is wanted.
   *
   * @param other - same dimension, and same currency for money
   * @throws {InputError} `dimension-mismatch`, `currency-mismatch`
   */
  minus(other: Quantity<D>): Quantity<D> {
    const [a, b] = alike(this, other, 'subtract');
    return newQuantity(this.dimension, a.value.minus(b.value), computed(a.unit));
  }

  /**
   * The product, in the dimension that it has: length × length is an area.
   *
   * @param other - a quantity that this one multiplies with
   * @throws {InputError} `dimension-mismatch` when the product has no meaning here
   */
  times<E extends Multiplier<D>>(other: Quantity<E>): Quantity<Product<D, E>> {
    return product(this, taken(other)) as Quantity<Product<D, E>>;
  }

  /**
   * The quotient, in the dimension that it has: volume over area is a length, and like over like
   * is a ratio.
   *
   * @param other - a quantity that divides this one, not zero
   * @throws {InputError} `dimension-mismatch`, `divide-by-zero`, `currency-mismatch`
   */
  over<E extends Divisor<D>>(other: Quantity<E>): Quantity<Quotient<D, E>> {
    return quotient(this, taken(other)) as Quantity<Quotient<D, E>>;
  }

  /** The opposite sign. */
  negated(): Quantity<D> {
    noPoint(this, 'negate');
    const { value, unit } = innerOf(this);
    return newQuantity(this.dimension, value.neg(), unit);
  }

  /** Without its sign. */
  abs(): Quantity<D> {
    noPoint(this, 'negate');
    return innerOf(this).value.isNegative() ? this.negated() : this;
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
    return stepped(this, increment, ceilWhole);
  }

  /**
   * Rounded down to a whole number of increments; a stray last digit never tips it under.
   *
   * @param increment - same dimension, greater than zero
   * @throws {InputError} `dimension-mismatch`, `not-positive`
   */
  downTo(increment: Quantity<D>): Quantity<D> {
    return stepped(this, increment, floorWhole);
  }

  /**
   * Which is greater: -1, 0 or 1. A difference in stray last digits counts as equal.
   *
   * @param other - same dimension, and same currency for money
   * @throws {InputError} `dimension-mismatch`, `currency-mismatch`
   */
  compareTo(other: Quantity<D>): -1 | 0 | 1 {
    const b = sameAs(this, other, 'compare');
    return compareSteady(innerOf(this).value, b.value);
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
    const b = quantityFrom(other);
    if (!b || this.dimension !== b.dimension) return false;
    const [mine, theirs] = [innerOf(this), innerOf(b)];
    return mine.value.equals(theirs.value) && (this.dimension !== 'money' || mine.unit === theirs.unit);
  }

  /** -1, 0 or 1. */
  sign(): -1 | 0 | 1 {
    const { value } = innerOf(this);
    return value.isZero() ? 0 : value.isNegative() ? -1 : 1;
  }

  /**
   * The same amount, shown in another unit from now on.
   *
   * @param unit - id of a unit of this dimension, for example `yd3`, or `ft-in` for feet and inches
   * @throws {InputError} `unknown-unit`
   */
  in(unit: UnitId<D>): Quantity<D> {
    return newQuantity(this.dimension, innerOf(this).value, unitNamed(this, unit));
  }

  /**
   * The nearest binary number in a unit, for plotting and the like. Not for further reckoning.
   *
   * @param unit - id of a unit of this dimension
   * @throws {InputError} `unknown-unit`
   */
  toNumber(unit: UnitId<D>): number {
    return inUnit(innerOf(this).value, unitNamed(this, unit)).toNumber();
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
   * length('150.5 in').format('ft-in'); // '12 ft 6-1/2 in'
   * length('1 m').format('ft-in', { denominator: 8 }); // '3 ft 3-3/8 in'
   * ```
   */
  format(unit?: UnitId<D>, options?: FormatOptions): string {
    const inner = innerOf(this);
    if (unit === undefined) return show(inner.value, inner.unit, options, numberShown(this));
    return show(inner.value, unitNamed(this, unit), options);
  }

  /**
   * The same as parts of text, named as `Intl.NumberFormat` names them, to be set as a front-end likes: number and
   * unit apart, and the number as a locale writes it. Units are as print sets them, `m³`.
   *
   * @param unit - id of a unit, as in {@link Quantity.format}
   * @param locale - a language tag such as `de-DE`; without one, numbers are as `format` writes them
   * @param options - places or fraction
   * @throws {InputError} `unknown-unit`; `wrong-type` for what is no language tag
   * @example
   * ```ts
   * import { volume } from 'flatwork-reckoner';
   *
   * volume('5800 L').parts('m3', 'de-DE').map(({ value }) => value).join(''); // '5,80 m³'
   * ```
   */
  parts(unit?: UnitId<D>, locale?: string, options?: FormatOptions): readonly QuantityPart[] {
    return partsOfText(this.format(unit, options), locale);
  }

  /** Exact text with a unit, which reads back as the same quantity. */
  toString(): string {
    return withUnit(this.value, innerOf(this).exact);
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
}

/** A quantity from a canonical value and the unit to show it in; `number` is as it was written in that unit. */
export const newQuantity: <D extends Dimension>(
  d: D,
  value: Decimal,
  unit: Unit,
  number?: Decimal,
) => Quantity<D> = Quantity['of'];

/** True for a quantity made by this copy of the library. */
export function isQuantity(x: unknown): x is Quantity {
  try {
    return typeof x === 'object' && x !== null && Object.hasOwn(x, INNER);
  } catch {
    // A proxy may be a trap.
    return false;
  }
}

const textOf = ({ written, unit, exact, value }: Inner): string =>
  written && exact === unit ? written.toFixed() : exactText(value, exact);

const innerOf = (q: Quantity): Inner => (q as unknown as { [INNER]: Inner })[INNER];

/** The canonical value of a quantity. */
export const canonicalValue = (q: Quantity): Decimal => innerOf(q).value;

/** The unit a quantity is shown in. */
export const unitShown = (q: Quantity): Unit => innerOf(q).unit;

/** The number that stands before the unit a quantity is shown in. */
export function numberShown(q: Quantity): Decimal {
  const inner = innerOf(q);
  inner.number ??= inner.written ?? numberForShow(inner.value, inner.unit);
  return inner.number;
}

/** A quantity of this copy, of another copy or of plain data that says what it measures. */
function quantityFrom(x: unknown): Quantity | undefined {
  if (isQuantity(x)) return x;
  if (typeof x !== 'object' || x === null) return undefined;
  try {
    const data = x as Partial<QuantityData>;
    if (data.dimension === 'money') return moneyFrom(data);
    const q = isDimension(data.dimension) ? readObject(x, data.dimension, 'it') : undefined;
    return q && !isFaulty(q) ? q : undefined;
  } catch {
    // A getter may be a trap.
    return undefined;
  }
}

const AMOUNT = /^-?\d{1,60}(?:\.\d{1,60})?$/;

/** Money of another copy: whether there is such a currency was settled there. */
const moneyFrom = ({ value = '', unit = '' }: Partial<QuantityData>): Quantity | undefined =>
  AMOUNT.test(value) && /^[A-Z]{3}$/.test(unit)
    ? newQuantity('money', new Decimal(value), currencyUnit(unit))
    : undefined;

const taken = (x: unknown): Quantity => quantityFrom(x) ?? fail(faults.bareArithmetic());

/** A temperature is a point on a scale: it has no sum, difference or opposite here. */
function noPoint(q: Quantity, verb: string): void {
  if (q.dimension === 'temperature') fail(faults.mismatch(verb, 'temperature', 'temperature'));
}

/** The other, which must be of the same dimension and currency. */
function sameAs(q: Quantity, other: Quantity, verb: string): Inner {
  const read = taken(other);
  if (read.dimension !== q.dimension) fail(faults.mismatch(verb, q.dimension, read.dimension));
  const [a, b] = [innerOf(q), innerOf(read)];
  if (q.dimension === 'money' && a.unit !== b.unit) fail(faults.currencyMismatch(a.unit.id, b.unit.id));
  return b;
}

function alike(q: Quantity, other: Quantity, verb: string): [Inner, Inner] {
  const b = sameAs(q, other, verb);
  noPoint(q, verb);
  return [innerOf(q), b];
}

function product(q: Quantity, other: Quantity): Quantity {
  const [a, b] = [innerOf(q), innerOf(other)];
  const rule = productRule(q.dimension, other.dimension);
  const plainProduct = a.value.times(b.value);
  if (rule) {
    const value = rule.factor ? plainProduct.div(rule.factor) : plainProduct;
    return derived(rule.dimension, value, a, b);
  }
  if (isScalar(other.dimension) && q.dimension !== 'temperature' && q.dimension !== 'ratio') {
    return newQuantity(q.dimension, plainProduct, computed(a.unit));
  }
  if (isScalar(q.dimension) && other.dimension !== 'temperature') {
    return newQuantity(other.dimension, plainProduct, computed(b.unit));
  }
  return fail(faults.mismatch('multiply', q.dimension, other.dimension));
}

function quotient(q: Quantity, other: Quantity): Quantity {
  const [a, b] = [innerOf(q), innerOf(other)];
  if (q.dimension === 'temperature') return fail(faults.mismatch('divide', q.dimension, other.dimension));
  if (b.value.isZero()) return fail(faults.divideByZero());
  if (q.dimension === other.dimension) {
    sameAs(q, other, 'divide');
    return newQuantity('ratio', a.value.div(b.value), unitOf('ratio', ':1') as Unit);
  }
  if (isScalar(other.dimension)) return newQuantity(q.dimension, a.value.div(b.value), a.unit);
  const rule = quotientRule(q.dimension, other.dimension);
  if (!rule) return fail(faults.mismatch('divide', q.dimension, other.dimension));
  const value = (rule.factor ? a.value.times(rule.factor) : a.value).div(b.value);
  return derived(rule.dimension, value, a, b);
}

function derived(dimension: Dimension, value: Decimal, a: Inner, b: Inner): Quantity {
  const d = dimension as Exclude<Dimension, 'money'>;
  return newQuantity(d, value, usualUnit(d, systemOf(a.unit, b.unit)));
}

function stepped<D extends Dimension>(
  q: Quantity<D>,
  increment: Quantity<D>,
  whole: (n: Decimal) => Decimal,
): Quantity<D> {
  const b = sameAs(q, increment, 'round');
  if (b.value.isZero() || b.value.isNegative()) fail(faults.notPositive('the increment'));
  const a = innerOf(q);
  return newQuantity(q.dimension, whole(a.value.div(b.value)).times(b.value), a.unit);
}

/** The id of a unit as it was given: what is no text may be a trap when made into one. */
const idOf = (given: unknown): string => (typeof given === 'string' ? given : 'no text');

function unitNamed(q: Quantity, given: unknown): Unit {
  const id = idOf(given);
  const { unit } = innerOf(q);
  if (id === unit.id) return unit;
  if (q.dimension === 'money') return fail(faults.currencyMismatch(unit.id, id));
  return unitOf(q.dimension, id) ?? fail(faults.unknownUnit('the unit', id, q.dimension));
}

/** Read any accepted input but money as a quantity, or say what is wrong with it. */
export function readQuantity<D extends Dimension>(input: unknown, d: D, what: string): Quantity<D> | Fault {
  if (isQuantity(input)) {
    return input.dimension === d ? (input as Quantity<D>) : faults.wrongDimension(what, input.dimension, d);
  }
  if (typeof input === 'string') return made(readText(input, d, what), d);
  if (typeof input === 'number' || typeof input === 'bigint')
    return faults.missingUnit(what, d, typed(input));
  if (input === undefined || input === null) return faults.missing(what, faults.examplesOf(d, what));
  if (typeof input !== 'object') return faults.notAQuantity(what, d);
  return readObject(input, d, what);
}

/** A number as it was typed, where it is short enough to be told. */
function typed(number: number | bigint): string | undefined {
  const text = String(number);
  return PLAIN_NUMBER.test(text) ? text : undefined;
}

const PLAIN_NUMBER = /^-?\d{1,9}(?:\.\d{1,6})?$/;

const DATA_KEYS: readonly string[] = ['value', 'unit', 'dimension', 'shownIn'];

/** Plain data is exact; what it says of its dimension and of the unit to show it in must hold. */
function readObject<D extends Dimension>(input: object, d: D, what: string): Quantity<D> | Fault {
  try {
    const { value, unit, dimension, shownIn } = input as Partial<QuantityData>;
    const extra = Object.keys(input).find((k) => !DATA_KEYS.includes(k));
    if (extra !== undefined) return faults.unknownKey(extra, ['value', 'unit']);
    if (dimension !== undefined && dimension !== d) return otherDimension(dimension, d, what);
    return inShownUnit(made(readPair(value, unit, d, what), d), shownIn, what);
  } catch {
    return faults.notAQuantity(what, d);
  }
}

const otherDimension = (said: unknown, d: Dimension, what: string): Fault =>
  isDimension(said) ? faults.wrongDimension(what, said, d) : faults.notAQuantity(what, d);

function inShownUnit<D extends Dimension>(
  read: Quantity<D> | Fault,
  shownIn: unknown,
  what: string,
): Quantity<D> | Fault {
  if (isFaulty(read) || shownIn === undefined) return read;
  const unit = unitOf(read.dimension, idOf(shownIn));
  if (!unit) return faults.unknownUnit(what, idOf(shownIn), read.dimension);
  return newQuantity(read.dimension, canonicalValue(read), unit);
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
