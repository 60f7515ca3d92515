/**
 * Money in a bid: amounts and prices as they are read, one currency throughout, and prices put to quantities.
 *
 * A price is an amount of money for a quantity, `165 USD` for `1 yd3`; what is bought is in the dimension of that
 * quantity, so that a price for an area never meets a volume.
 */
import { toCents } from '../quantity/cents';
import { Decimal } from '../quantity/decimal';
import type { Dimension } from '../quantity/dimensions';
import * as faults from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { constant, ratio } from '../quantity/make';
import { readMoney } from '../quantity/money';
import {
  canonicalValue,
  isQuantity,
  newQuantity,
  type Quantity,
  type QuantityInput,
  unitShown,
} from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { type Unit, unitsNamed } from '../quantity/units';
import { pathText, refuse } from '../reckoning/calculation';
import * as inputFaults from '../reckoning/faults';
import { type Field, fields, later, quantity, quantitySchema, reading, type Sign } from '../reckoning/fields';
import type { Ordinary } from '../reckoning/ordinary';
import type { Read } from '../reckoning/read';
import { ambiguousMeasure, dayAndHours, nothingPriced, notMeasured } from './bid-faults';

/** What is bought and done by: counted, measured, weighed or timed. */
export type Measured = 'count' | 'length' | 'area' | 'volume' | 'mass' | 'time';

/** A price, checked by the dimension of what it is for. */
export interface PriceInput {
  /** So much money. */
  readonly amount: QuantityInput<'money'>;
  /** For so much: `1 yd3`, `100 ft2`, `1 h`, `1 each`; a unit alone is one of it. */
  readonly per: QuantityInput<Measured>;
}

/** A price that has been read. */
export type Price = Read<PriceInput>;

export type Money = Quantity<'money'>;
export type Ratio = Quantity<'ratio'>;
export type Time = Quantity<'time'>;
export type Measure = Quantity<Measured>;

export const ONE = constant(() => ratio('1:1'));

const MEASURED: readonly Measured[] = ['count', 'length', 'area', 'volume', 'mass', 'time'];

/** More than any job costs, in any currency. */
const LARGEST = 15;

function signOf(q: Money, what: string, sign: Sign): Money | Fault {
  if (canonicalValue(q).e >= LARGEST) return faults.outOfRange(what);
  if (sign !== 'any' && q.sign() < 0) return inputFaults.negative(what);
  if (sign === 'positive' && q.sign() === 0) return faults.notPositive(what);
  return q;
}

/** A field of money. */
export const moneyField = (what: string, sign: Sign = 'not-negative'): Field<Money> =>
  reading(
    (input) => {
      const found = readMoney(input, what);
      return isFaulty(found) ? found : signOf(found, what, sign);
    },
    (defs) => quantitySchema(defs, 'money'),
  );

const refusing = (fault: Fault): Field<Measure> =>
  reading<Measure>(
    () => fault,
    () => ({}),
  );

const isObject = (x: unknown): x is object => typeof x === 'object' && x !== null;

/** One word behind a number or alone; of several, `sq ft`, the last says too little. */
const UNIT_BEHIND = /(?:^|\d) *([A-Za-z]+[23]?) *$/;

const isMeasured = (d: Dimension): d is Measured => (MEASURED as readonly Dimension[]).includes(d);

/** The name of the unit that an input ends in. */
function unitName(input: unknown): string {
  const text = isObject(input) ? (input as { readonly unit?: unknown }).unit : input;
  return (typeof text === 'string' && text.length < 60 && UNIT_BEHIND.exec(text)?.[1]) || '';
}

/** The dimensions that an input reads in: by the name of its unit, else by trying. */
function dimensionsOf(input: unknown): readonly Measured[] {
  if (isQuantity(input)) return isMeasured(input.dimension) ? [input.dimension] : [];
  const named = [...new Set(unitsNamed(unitName(input)).map(({ dimension }) => dimension))].filter(
    isMeasured,
  );
  if (named.length > 0) return named;
  const tried = MEASURED.map((d) => [d, readQuantity(input, d, 'it')] as const);
  const read = tried.filter(([, q]) => !isFaulty(q)).map(([d]) => d);
  // A tonne or a ton: whoever reads it as mass says which two there are.
  const doubtful = tried.filter(([, q]) => isFaulty(q) && q.code === 'ambiguous').map(([d]) => d);
  return read.length > 0 ? read : doubtful.slice(0, 1);
}

const isOther = (input: unknown): boolean => isQuantity(input) && !isMeasured(input.dimension);

/**
 * A quantity of whatever is counted, measured, weighed or timed.
 *
 * @param usual - what it mostly is: what cannot be read is refused as that
 */
export function measureField(
  what: string,
  bareUnit = false,
  sign: Sign = 'positive',
  usual: Measured = 'volume',
): Field<Measure> {
  const members = Object.fromEntries(MEASURED.map((d) => [d, quantity(d, what, sign)])) as unknown as {
    readonly [D in Measured]: Field<Measure>;
  };
  const choose = (input: unknown): Field<Measure> => {
    if (isOther(input)) return refusing(notMeasured(what));
    const [found, other] = dimensionsOf(input);
    if (found && other) return refusing(ambiguousMeasure(what));
    return members[found ?? usual];
  };
  const field = later(choose, () => ({ Count: members.count, Measure: members.volume }));
  return {
    read: (input, report) => field.read(bareUnit ? withOne(input) : input, report),
    json: (defs) => ({
      anyOf: MEASURED.map((d) => ({ title: TITLES[d], ...quantitySchema(defs, d) })),
    }),
  };
}

const TITLES: { readonly [D in Measured]: string } = {
  count: 'Count',
  length: 'Length',
  area: 'Area',
  volume: 'Volume',
  mass: 'Mass',
  time: 'Time',
};

/** A unit by itself is one of it. */
const withOne = (input: unknown): unknown =>
  typeof input === 'string' && /^ *[A-Za-z][A-Za-z0-9 ]*$/.test(input) && input.length < 20
    ? `1 ${input.trim()}`
    : input;

/** A price for whatever is measured. */
export const priceField = (what: string, sign: Sign = 'not-negative', usual?: Measured): Field<Price> =>
  fields({ amount: moneyField(what, sign), per: measureField('per', true, 'positive', usual) });

/** A price for time: a wage, or what waiting costs. */
export const hourlyField = (what: string, sign?: Sign): Field<Price> => priceField(what, sign, 'time');

/** A share of something. */
export const shareField = (what: string, ordinary?: Ordinary, sign: Sign = 'not-negative'): Field<Ratio> =>
  quantity('ratio', what, sign, ordinary);

/** How often one goes into the other. */
export const times = (q: Measure, per: Measure): Ratio =>
  (q as Quantity<'volume'>).over(per as Quantity<'volume'>) as Ratio;

/** What a quantity costs at a price, not yet rounded. */
export const costOf = (q: Measure, { amount, per }: Price): Money => amount.times(times(q, per));

/** Refuse what is not of the dimension of its price or rate. */
export function sameDimension(q: Quantity, wanted: Dimension, path: string): void {
  if (q.dimension === wanted) return;
  refuse(path, faults.wrongDimension(path.split('.').at(-1) ?? path, q.dimension, wanted));
}

const inDays = (q: Quantity): boolean => q.dimension === 'time' && unitShown(q).id === 'day';

/** A day on site is no 24 hours: times of one line are in days, or none of them is. */
export function sameClock(path: string, ...given: readonly (Quantity | undefined)[]): void {
  const timed = given.filter((q): q is Quantity => q?.dimension === 'time' && q.sign() > 0);
  if (timed.some(inDays) && !timed.every(inDays)) refuse(path, dayAndHours());
}

function* moneyIn(
  value: unknown,
  path: readonly PropertyKey[] = [],
): Generator<readonly [Money, readonly PropertyKey[]]> {
  if (!isObject(value)) return;
  if (isQuantity(value)) {
    if (value.dimension === 'money') yield [value as Money, path];
    return;
  }
  for (const [key, part] of Object.entries(value)) {
    yield* moneyIn(part, [...path, Array.isArray(value) ? Number(key) : key]);
  }
}

/**
 * Nothing, in the one currency of an input.
 *
 * @param at - where it stands, if it is a part of an input
 * @throws {InputError} `currency-mismatch`; `not-served` where there is no money at all
 */
export function nothingIn(input: unknown, otherwise: string, at: readonly PropertyKey[] = []): Money {
  let unit: Unit | undefined;
  for (const [q, path] of moneyIn(input, at)) {
    const own = unitShown(q);
    unit ??= own;
    if (own !== unit) refuse(pathText(path), faults.currencyMismatch(own.id, unit.id));
  }
  if (!unit) return refuse(otherwise, nothingPriced());
  return newQuantity('money', new Decimal(0), unit);
}

/** The smallest coin of a currency: what everything is rounded to. */
export function coinOf(nothing: Money): Money {
  const unit = unitShown(nothing);
  return newQuantity('money', new Decimal(`1e-${unit.places}`), unit);
}

/** The exact sum of amounts. */
export const sumOf = (amounts: readonly Money[], nothing: Money): Money =>
  amounts.reduce((sum, amount) => sum.plus(amount), nothing);

export { toCents };
