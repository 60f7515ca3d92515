/**
 * What a line comes to: quantity times unit price, hours times wages, what a load lacks, what a truck waits; each
 * rounded half-up to the cent, once.
 *
 * Hours from a production rate: `H = Q ÷ o × t ÷ e`, by the efficiency e that is reached.
 */
import * as faults from '../quantity/faults';
import { greaterOf } from '../quantity/greater';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { say, type Words } from '../reckoning/words';
import * as cautions from './bid-cautions';
import { notUsed } from './bid-faults';
import type { CostKind, Labor, Line, Sold } from './bid-lines';
import {
  costOf,
  type Measure,
  type Money,
  ONE,
  type Price,
  sameClock,
  sameDimension,
  type Time,
  times,
  toCents,
} from './bid-money';

/** What a line comes to. */
export interface Extended {
  readonly name: string;
  readonly kind: CostKind;
  readonly amount: Money;
  /** What is billed for, where the line is by quantity. */
  readonly quantity?: Measure;
  /** Hours of all together, where it is by hours. */
  readonly hours?: Time;
  /** Days that the crew takes, where its working day is told. */
  readonly days?: Quantity<'count'>;
}

interface At {
  readonly name: string;
  readonly path: string;
  readonly nothing: Money;
  readonly pad: Pad;
}

const rounded = (name: string): Words => say`${{ name }}, rounded half-up`;

/** Quantity with its allowance, no less than the minimum, in whole steps. */
function billed(line: Sold, Q: Measure, { name, path, pad }: At): Measure {
  const { allowance: a, minimum: m, increment: i } = line;
  for (const [key, q] of [
    ['minimum', m],
    ['increment', i],
  ] as const) {
    if (q) sameDimension(q, Q.dimension, `${path}.${key}`);
  }
  sameClock(path, Q, m, i);
  let q = Q;
  if (a && a.sign() > 0) {
    q = pad.step(
      say`${{ name }}, with its allowance`,
      'B = Q × (1 + a)',
      { Q, a },
      (Q as Quantity<'volume'>).times(ONE().plus(a)) as Measure,
    );
  }
  if (m?.greaterThan(q))
    q = pad.step(say`${{ name }}, the least that is billed`, 'L = max(Q, m)', { Q: q, m }, m);
  if (!i) return q;
  const up = q.upTo(i);
  if (up.compareTo(q) === 0) return q;
  return pad.step(say`${{ name }}, in whole steps`, 'W = ceil(B ÷ i) × i', { B: q, i }, up);
}

function atPrice(Q: Measure, price: Price, { name, path, pad }: At): Money {
  const { amount: p, per: u } = price;
  sameClock(path, Q, u);
  if (p.sign() === 0) pad.caution(cautions.zeroPrice(name));
  return pad.step(rounded(name), 'A = Q × p ÷ u', { Q, p, u }, toCents(costOf(Q, price)));
}

function withMinimum(amount: Money, line: Sold, { name, pad }: At): Money {
  const { minimumCharge: M } = line;
  if (!M?.greaterThan(amount)) return amount;
  pad.caution(cautions.minimumCharge(name, toCents(M), amount));
  return toCents(M);
}

/** The hours on the clock, of the crew or of all together. */
function clockHours(line: Labor, { name, path, pad }: At): Time | undefined {
  const { hours, production, quantity: Q, efficiency: e = ONE(), crew } = line;
  if (hours) {
    sameClock(path, hours, ...(crew ?? []).map(({ wage }) => wage.per), line.wage?.per);
    return hours;
  }
  if (!production) return undefined;
  if (!Q) return refuse(`${path}.quantity`, faults.missing('quantity', ['"504 ft2"', '"46.8 m2"']));
  const { output: o, time: t, by } = production;
  sameDimension(o, Q.dimension, `${path}.production.output`);
  const wages = [...(crew ?? []).map(({ wage }) => wage.per), line.wage?.per];
  sameClock(path, Q, o, t, ...wages);
  const H = t.times(times(Q, o)).over(e);
  pad.step(say`hours for ${{ name }}`, 'H = Q ÷ o × t ÷ e', { Q, o, t, e }, H);
  if (by === 'crew' && !crew)
    return refuse(`${path}.crew`, faults.missing('crew', '[{ count: 4, wage: … }]'));
  if (by === 'crew' || !crew) return H;
  const n = heads(crew);
  return pad.step(say`hours of each for ${{ name }}`, 'T = H ÷ n', { H, n }, H.over(n));
}

type Crew = NonNullable<Labor['crew']>;

const heads = (crew: Crew): Quantity<'count'> => crew.reduce((n, { count }) => n.plus(count), wholeNumber(0));

/** No less than the minimum, in whole steps. */
function paidHours(line: Labor, H: Time, { name, path, pad }: At): Time {
  const { minimum, increment } = line;
  for (const [key, q] of [
    ['minimum', minimum],
    ['increment', increment],
  ] as const) {
    if (q) sameDimension(q, 'time', `${path}.${key}`);
  }
  sameClock(path, H, minimum, increment);
  const m = minimum as Time | undefined;
  const least = m?.greaterThan(H)
    ? pad.step(say`${{ name }}, the least that is billed`, 'L = max(H, m)', { H, m }, m)
    : H;
  if (!increment) return least;
  const i = increment as Time;
  const up = least.upTo(i);
  if (up.compareTo(least) === 0) return least;
  return pad.step(say`hours paid for ${{ name }}`, 'T = ceil(H ÷ i) × i', { H: least, i }, up);
}

/** What an hour costs, of the whole crew or of one. */
function hourly(line: Labor, { path, nothing }: At): Price {
  const { crew, wage } = line;
  if (crew && wage) return refuse(path, faults.giveOneOf(['crew', 'wage']));
  for (const [i, { wage: own }] of (crew ?? []).entries()) {
    sameDimension(own.per, 'time', `${path}.crew[${i}].wage.per`);
  }
  if (wage) sameDimension(wage.per, 'time', `${path}.wage.per`);
  if (wage) return wage;
  const per = crew?.[0]?.wage.per;
  if (!crew || !per)
    return refuse(`${path}.wage`, faults.missing('wage', '{ amount: "25 USD", per: "1 h" }'));
  return {
    amount: crew.reduce((sum, { count, wage: own }) => sum.plus(costOf(per, own).times(count)), nothing),
    per,
  };
}

function wages(line: Labor, T: Time, at: At): Money {
  const { name, pad } = at;
  const { burden: b } = line;
  const hour = hourly(line, at);
  const { amount: w, per: u } = hour;
  const bare = costOf(T, hour);
  return b
    ? pad.step(rounded(name), 'A = T ÷ u × w × (1 + b)', { T, u, w, b }, toCents(bare.times(ONE().plus(b))))
    : pad.step(rounded(name), 'A = T ÷ u × w', { T, u, w }, toCents(bare));
}

function labor(line: Labor, at: At): Extended | undefined {
  const { path } = at;
  if (line.hours && line.production) return refuse(path, faults.giveOneOf(['hours', 'production']));
  const H = clockHours(line, at);
  if (!H) {
    const alone = (['crew', 'wage', 'efficiency', 'workday', 'burden'] as const).find((key) => line[key]);
    return alone ? refuse(`${path}.${alone}`, notUsed(alone, 'hours or production')) : undefined;
  }
  if (line.price || line.amount)
    return refuse(
      path,
      faults.giveOneOf([line.price ? 'price' : 'amount', line.hours ? 'hours' : 'production']),
    );
  const T = paidHours(line, H, at);
  const amount = wages(line, T, at);
  const n = line.crew ? heads(line.crew) : wholeNumber(1);
  return {
    name: line.name,
    kind: 'labor',
    amount: withMinimum(amount, line, at),
    hours: T.times(n),
    ...daysOf(line, H, at),
  };
}

/** How many days the crew is there: a day that is begun counts. */
function daysOf({ workday: d, crew }: Labor, H: Time, { name, path, pad }: At): { days?: Quantity<'count'> } {
  if (!d) return {};
  if (!crew) return refuse(`${path}.crew`, faults.missing('crew', '[{ count: 4, wage: … }]'));
  sameClock(path, H, d);
  const days = H.upTo(d).over(d);
  const whole = wholeNumber(Math.round(days.toNumber(':1')));
  return { days: pad.step(say`days for ${{ name }}`, 'D = ceil(H ÷ d)', { H, d }, whole) };
}

function sold(line: Sold, at: At): Extended {
  const { name, kind, quantity: Q, price, amount } = line;
  const { path, pad, nothing } = at;
  if (amount) {
    if (price || Q) return refuse(path, faults.giveOneOf(['amount', price ? 'price' : 'quantity']));
    if (amount.sign() === 0) pad.caution(cautions.zeroPrice(name));
    return { name, kind, amount: withMinimum(toCents(amount), line, at) };
  }
  if (!price) {
    pad.caution(Q ? cautions.noPrice(name) : cautions.nothingKnown(name));
    return { name, kind, amount: nothing, ...(Q ? { quantity: Q } : {}) };
  }
  if (!Q) return refuse(`${path}.quantity`, faults.missing('quantity', ['"6 yd3"', '"4.5 m3"']));
  sameDimension(Q, price.per.dimension, `${path}.quantity`);
  const q = billed(line, Q, at);
  return { name, kind, amount: withMinimum(atPrice(q, price, at), line, at), quantity: q };
}

type ShortLoad = Extract<Line, { kind: 'short-load' }>;
type Waiting = Extract<Line, { kind: 'waiting' }>;

function shortLoad({ loads, minimumLoad: m, price, name }: ShortLoad, at: At): Extended {
  const small = loads.filter((load) => load.lessThan(m));
  if (price.per.dimension === 'count') {
    return {
      name,
      kind: 'fee',
      amount: atPrice(wholeNumber(small.length), price, at),
      quantity: wholeNumber(small.length),
    };
  }
  sameDimension(price.per, 'volume', `${at.path}.price.per`);
  const none = m.minus(m);
  const lacking = small.reduce((sum, load) => sum.plus(m.minus(load)), none);
  return { name, kind: 'fee', amount: atPrice(lacking, price, at), quantity: lacking };
}

function waiting({ onSite, free: f, increment: i, price, name }: Waiting, at: At): Extended {
  sameDimension(price.per, 'time', `${at.path}.price.per`);
  sameClock(at.path, ...onSite, f, i);
  const none = f.minus(f);
  const over = onSite.reduce((sum, t) => {
    const beyond = greaterOf(t.minus(f), none);
    return sum.plus(i ? beyond.upTo(i) : beyond);
  }, none);
  return { name, kind: 'fee', amount: atPrice(over, price, at), quantity: over };
}

function amountOf(line: Line, at: At): Extended {
  switch (line.kind) {
    case 'short-load':
      return shortLoad(line, at);
    case 'waiting':
      return waiting(line, at);
    case 'labor':
      return labor(line, at) ?? sold(line, at);
    default:
      return sold(line, at);
  }
}

/** What elements take of a line is told of all of them in one measure, or of none. */
function checkElements({ elements = [] }: Line, path: string): void {
  const [first] = elements;
  elements.forEach(({ quantity: q }, i) => {
    const at = `${path}.elements[${i}].quantity`;
    if (first?.quantity && q) sameDimension(q, first.quantity.dimension, at);
    else if (first?.quantity) refuse(at, faults.missing('quantity', ['"6 yd3"', '"4.5 m3"']));
    else if (q) refuse(`${path}.elements[0].quantity`, faults.missing('quantity', ['"6 yd3"', '"4.5 m3"']));
  });
}

/** Reckon a line, and hold the total that is written beside it to what it comes to. */
export function extend(line: Line, path: string, nothing: Money, pad: Pad): Extended {
  checkElements(line, path);
  const found = amountOf(line, { name: line.name, path, nothing, pad });
  const { extension } = line;
  if (extension && toCents(extension).compareTo(found.amount) !== 0) {
    pad.caution(cautions.extensionDiffers(line.name, found.amount, extension));
  }
  return found;
}
