/**
 * The quantity: an exact decimal with its dimension. Immutable.
 *
 * Dimensions are checked when compiling, by the type parameter, and when running, by `dimension`.
 */
import {
  type Amount,
  amount,
  compared,
  difference,
  opposite,
  product,
  quotient,
  stepped,
  sum,
} from './arithmetic';
import { ceilWhole, Decimal, floorWhole, ZERO } from './decimal';
import {
  type Dimension,
  type Divisor,
  isDimension,
  type Multiplier,
  type Product,
  type Quotient,
} from './dimensions';
import { exactText, exactUnit } from './exact';
import * as faults from './faults';
import { type FormatOptions, inUnit, numberForShow, show, withUnit } from './format';
import { fail } from './input-error';
import { partsOfText, type QuantityPart } from './parts';
import { readData } from './read-data';
import { isFault } from './reading';
import { currencyUnit, idOf, type System, type Unit, type UnitId, unitOf, usualUnit } from './units';

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
interface Inner extends Amount {
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
    HIDDEN.value = {
      dimension,
      value: amount,
      unit: shown,
      written,
      exact: unit,
      text: undefined,
      number: undefined,
    };
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
    return quantityOfAmount(sum(innerOf(this), taken(other))) as Quantity<D>;
  }

  /**
   * The difference, shown as a sum is. Temperatures have no difference here; ask for
   * `temperature-difference` where one is wanted.
   *
   * @param other - same dimension, and same currency for money
   * @throws {InputError} `dimension-mismatch`, `currency-mismatch`
   */
  minus(other: Quantity<D>): Quantity<D> {
    return quantityOfAmount(difference(innerOf(this), taken(other))) as Quantity<D>;
  }

  /**
   * The product, in the dimension that it has: length × length is an area.
   *
   * @param other - a quantity that this one multiplies with
   * @throws {InputError} `dimension-mismatch` when the product has no meaning here
   */
  times<E extends Multiplier<D>>(other: Quantity<E>): Quantity<Product<D, E>> {
    return quantityOfAmount(product(innerOf(this), taken(other))) as Quantity<Product<D, E>>;
  }

  /**
   * The quotient, in the dimension that it has: volume over area is a length, and like over like
   * is a ratio.
   *
   * @param other - a quantity that divides this one, not zero
   * @throws {InputError} `dimension-mismatch`, `divide-by-zero`, `currency-mismatch`
   */
  over<E extends Divisor<D>>(other: Quantity<E>): Quantity<Quotient<D, E>> {
    return quantityOfAmount(quotient(innerOf(this), taken(other))) as Quantity<Quotient<D, E>>;
  }

  /** The opposite sign. */
  negated(): Quantity<D> {
    return quantityOfAmount(opposite(innerOf(this))) as Quantity<D>;
  }

  /** Without its sign. */
  abs(): Quantity<D> {
    const { value, dimension } = innerOf(this);
    // A temperature, which has no opposite, is refused as one.
    return value.isNegative() || dimension === 'temperature' ? this.negated() : this;
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
    return quantityOfAmount(stepped(innerOf(this), taken(increment), ceilWhole)) as Quantity<D>;
  }

  /**
   * Rounded down to a whole number of increments; a stray last digit never tips it under.
   *
   * @param increment - same dimension, greater than zero
   * @throws {InputError} `dimension-mismatch`, `not-positive`
   */
  downTo(increment: Quantity<D>): Quantity<D> {
    return quantityOfAmount(stepped(innerOf(this), taken(increment), floorWhole)) as Quantity<D>;
  }

  /**
   * Which is greater: -1, 0 or 1. A difference in stray last digits counts as equal.
   *
   * @param other - same dimension, and same currency for money
   * @throws {InputError} `dimension-mismatch`, `currency-mismatch`
   */
  compareTo(other: Quantity<D>): -1 | 0 | 1 {
    return compared(innerOf(this), taken(other));
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
    const [a, b] = [innerOf(this), amountFrom(other)];
    if (!b || a.dimension !== b.dimension) return false;
    return a.value.equals(b.value) && (a.dimension !== 'money' || a.unit === b.unit);
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

const quantityOfAmount = ({ dimension, value, unit }: Amount): Quantity =>
  newQuantity(dimension, value, unit);

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

/** What a quantity of this copy, of another copy or plain data that says what it measures is made of. */
function amountFrom(x: unknown): Amount | undefined {
  if (isQuantity(x)) return innerOf(x);
  try {
    const { dimension, value = '', unit = '' } = x as Partial<QuantityData>;
    if (dimension === 'money') return moneyFrom(value, unit);
    const read = isDimension(dimension) && readData(x as object, dimension, 'it');
    return read && !isFault(read) ? innerOf(newQuantity(dimension, read.value, read.unit)) : undefined;
  } catch {
    // No object, or a getter that is a trap.
    return undefined;
  }
}

const AMOUNT = /^-?\d{1,60}(?:\.\d{1,60})?$/;

/** Money of another copy: whether there is such a currency was settled there. */
const moneyFrom = (value: string, unit: string): Amount | undefined =>
  AMOUNT.test(value) && /^[A-Z]{3}$/.test(unit)
    ? amount('money', new Decimal(value), currencyUnit(unit))
    : undefined;

const taken = (x: unknown): Amount => amountFrom(x) ?? fail(faults.bareArithmetic());

function unitNamed(q: Quantity, given: unknown): Unit {
  const id = idOf(given);
  const { unit } = innerOf(q);
  if (id === unit.id) return unit;
  if (q.dimension === 'money') return fail(faults.currencyMismatch(unit.id, id));
  return unitOf(q.dimension, id) ?? fail(faults.unknownUnit('the unit', id, q.dimension));
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
