/**
 * The bid of a job: lines, what is put on them, the price, and what comes after the award.
 *
 * Quantity times unit price for each line, or hours times wages, rounded half-up to the cent; sums are of the rounded
 * amounts, so that they agree in any order. Then tax on purchases, contingency, overhead, profit and tax on the price,
 * in this order. No price and no rate is built in.
 */
import { constant } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { type Base, costedAll } from './bid-base';
import * as cautions from './bid-cautions';
import type { Extended } from './bid-extend';
import { heed, isLeast } from './bid-heed';
import { type Bid, door, type JobBidInput, OPTIONS } from './bid-input';
import { COST_KINDS, type CostKind, type Line } from './bid-lines';
import { coinOf, type Measured, type Money, nothingIn, type Ratio, sumOf, toCents } from './bid-money';
import { type OptionFigures, optionsOf } from './bid-options';
import { type Costed, marginOf, markupOf, type Priced, priced, silent } from './bid-price';
import { type ChangeFigures, changesOf, type PaymentFigures, payment } from './bid-progress';
import {
  type BidRange,
  bidRange,
  type Distribution,
  type LineRange,
  type Ranged,
  rangeOf,
} from './bid-range';
import { FAR_QUANTITY, FAR_RETAINAGE, HALF_UP } from './bid-sources';
import { assumeRounding, checkTerms } from './bid-terms';

/** A line as it comes out. */
export interface LineFigures {
  /** What it is. */
  readonly name: string;
  /** What it is for. */
  readonly kind: CostKind;
  /** The option that it belongs to. */
  readonly option?: string;
  /** What is billed for. */
  readonly quantity?: Quantity<Measured>;
  /** Hours of all together. */
  readonly hours?: Quantity<'time'>;
  /** Days that the crew takes, where its working day is told. */
  readonly days?: Quantity<'count'>;
  /** What it comes to. */
  readonly amount: Quantity<'money'>;
  /** Tax on its purchase. */
  readonly tax?: Quantity<'money'>;
  /** What it may come to. */
  readonly range?: LineRange;
  /** The elements of the job that it is for. */
  readonly elements?: readonly LineElementFigures[];
}

/** An element that a line is for. */
export interface LineElementFigures {
  /** Its name in the job. */
  readonly element: string;
  /** How much of the line it takes; left out where all take alike. */
  readonly quantity?: Quantity<Measured>;
}

/** A price for each unit of area. */
export interface UnitPrice {
  /** So much, rounded to the cent. */
  readonly amount: Quantity<'money'>;
  /** For so much. */
  readonly per: Quantity<'area'>;
}

/** Figures of {@link jobBid}. */
export interface JobBidFigures {
  /** The total of the bid. */
  readonly total: Quantity<'money'>;
  /** Before tax on the price. */
  readonly price: Quantity<'money'>;
  /** The lines, as they were given. */
  readonly lines: readonly LineFigures[];
  /** Sums of the lines by what they are for. */
  readonly byKind: { readonly [kind: string]: Quantity<'money'> };
  /** Hours of labor, where lines tell them. */
  readonly laborHours?: Quantity<'time'>;
  /** Sum of the lines. */
  readonly linesTotal: Quantity<'money'>;
  /** Tax on purchases. */
  readonly purchaseTax?: Quantity<'money'>;
  /** Cost: the lines with tax on purchases. */
  readonly cost: Quantity<'money'>;
  /** Contingency. */
  readonly contingency?: Quantity<'money'>;
  /** Overhead. */
  readonly overhead?: Quantity<'money'>;
  /** Cost with contingency and overhead: below it the work is done at a loss. */
  readonly breakEven: Quantity<'money'>;
  /** Profit; below zero for a loss. */
  readonly profit: Quantity<'money'>;
  /** Profit as a share of the break-even. */
  readonly markup?: Quantity<'ratio'>;
  /** Profit as a share of the price. */
  readonly margin?: Quantity<'ratio'>;
  /** Tax on the price. */
  readonly priceTax?: Quantity<'money'>;
  /** What everything is rounded to, half-up. */
  readonly roundedTo: Quantity<'money'>;
  /** The total for each unit of area. */
  readonly pricePerArea?: UnitPrice;
  /** What the total may come to. */
  readonly range?: BidRange;
  /** Options and alternates, each by itself. */
  readonly options?: readonly OptionFigures[];
  /** Changes since the award. */
  readonly changes?: readonly ChangeFigures[];
  /** The total with all changes. */
  readonly contract?: Quantity<'money'>;
  /** What is due now. */
  readonly payment?: PaymentFigures;
}

const UNIT_AREA = constant(() => paired('area', '1 ft2', '1 m2'));

function byKind(lines: readonly Extended[], nothing: Money): { readonly [kind: string]: Money } {
  return Object.fromEntries(
    COST_KINDS.flatMap((kind) => {
      const own = lines.filter((one) => one.kind === kind).map(({ amount }) => amount);
      return own.length > 0 ? [[kind, sumOf(own, nothing)] as const] : [];
    }),
  );
}

/** The lines with one of the ends of their range in place of what is bid, and the tax on that. */
const atEnd = (all: readonly Ranged[], end: 'low' | 'high'): Costed[] =>
  all.map(({ line: one, range }) => {
    const amount = range?.[end] ?? one.amount;
    const { taxRate, tax } = one;
    return { ...one, amount, tax: tax && taxRate ? toCents(amount.times(taxRate)) : tax };
  });

function distributionOf({ distribution, lines }: Bid, pad: Pad): Distribution {
  if (distribution) return distribution;
  if (lines.some(({ low, high }) => low || high)) {
    pad.assume({
      name: 'distribution',
      value: 'pert',
      because: 'the rule of network planning, which weighs the likely amount four times',
      override: 'Give triangular, which trusts the likely amount less and spreads more',
      source: COMMON_PRACTICE,
    });
  }
  return 'pert';
}

function rangeFigures(all: readonly Ranged[], distribution: Distribution, base: Base): BidRange | undefined {
  if (!all.some(({ range }) => range)) return undefined;
  const { input, nothing, price, pad } = base;
  const totalAt = (end: 'low' | 'high'): Money => priced(atEnd(all, end), input, nothing, silent).total;
  const range = bidRange(all, input, [totalAt('low'), price.total, totalAt('high')], distribution, pad);
  if (range && range.mean.sign() > 0 && !input.contingency) {
    const share = range.spread.over(range.mean).in('%');
    if (share.greaterThan(cautions.WIDE_SPREAD())) {
      pad.caution(cautions.noContingency(cautions.WIDE_SPREAD(), share));
    }
  }
  return range;
}

type Shares = Pick<JobBidFigures, 'markup' | 'margin'>;

/** The terms as they were given, exactly; no rounded profit stands between the two. */
function askedShares({ profit }: Bid, pad: Pad): Shares | undefined {
  const { markup: m, margin: g } = profit ?? {};
  if (g)
    return {
      markup: pad.step('the margin as a markup', 'm = g ÷ (1 − g)', { g }, markupOf(g).in('%')),
      margin: g,
    };
  if (!m) return undefined;
  return {
    markup: m,
    margin: pad.step('the markup as a margin', 'g = m ÷ (1 + m)', { m }, marginOf(m).in('%')),
  };
}

/** Profit as a share of the cost and of the price. */
function shares(base: Base): Shares {
  const { input, price, pad } = base;
  const { profit: P, breakEven: B, price: S } = price;
  if (B.sign() <= 0 || S.sign() <= 0) return {};
  const asked = isLeast(base) ? undefined : askedShares(input, pad);
  if (asked) return asked;
  return {
    markup: pad.step('profit as a markup on the cost', 'm = P ÷ B', { P, B }, P.over(B).in('%')),
    margin: pad.step('profit as a margin of the price', 'g = P ÷ S', { P, S }, P.over(S).in('%')),
  };
}

function perArea({ area: a }: Bid, F: Money, pad: Pad): UnitPrice | undefined {
  if (!a) return undefined;
  const u = UNIT_AREA().as(pad.system);
  const amount = pad.step(
    'price of each unit of area, rounded half-up',
    'f = F × u ÷ a',
    { F, u, a },
    toCents(F.times(u.over(a) as Ratio)),
  );
  return { amount, per: u };
}

/** What comes after the award. */
function account(base: Base): Pick<JobBidFigures, 'changes' | 'contract' | 'payment'> {
  const { input, lines, nothing, price, pad } = base;
  const changes = changesOf(input, pad);
  const { total: F } = price;
  const V = sumOf(
    changes.map(({ amount }) => amount),
    nothing,
  );
  const contract = input.changes
    ? pad.step('contract with its changes', 'C = F + V', { F, V }, F.plus(V))
    : F;
  const paid = payment(input, { lines, contract, nothing }, pad);
  return {
    ...(input.changes ? { changes } : {}),
    ...(input.changes || paid ? { contract } : {}),
    ...(paid ? { payment: paid } : {}),
  };
}

function lineFigures({ line: one, range }: Ranged, { elements }: Line): LineFigures {
  const { name, kind, option, quantity: billed, hours, days, amount, tax } = one;
  return {
    name,
    kind,
    ...(option ? { option } : {}),
    ...(billed ? { quantity: billed } : {}),
    ...(hours ? { hours } : {}),
    ...(days ? { days } : {}),
    amount,
    ...(tax ? { tax } : {}),
    ...(range ? { range } : {}),
    ...(elements
      ? {
          elements: elements.map(({ element, quantity }) => ({ element, ...(quantity ? { quantity } : {}) })),
        }
      : {}),
  };
}

function laborHours(lines: readonly Costed[]): Pick<JobBidFigures, 'laborHours'> {
  const all = lines.flatMap(({ kind, hours }) => (kind === 'labor' && hours ? [hours] : []));
  const [first, ...rest] = all;
  return first ? { laborHours: rest.reduce((sum, hours) => sum.plus(hours), first) } : {};
}

/** What is nothing is left out. */
const some = <K extends string>(name: K, amount: Money): { readonly [N in K]?: Money } =>
  amount.sign() === 0 ? {} : ({ [name]: amount } as { readonly [N in K]?: Money });

function priceFigures({
  lines,
  cost,
  breakEven,
  profit,
  price,
  total,
  ...more
}: Priced): Omit<Partial<JobBidFigures>, 'total'> &
  Pick<JobBidFigures, 'total' | 'price' | 'linesTotal' | 'cost' | 'breakEven' | 'profit'> {
  return {
    total,
    price,
    linesTotal: lines,
    ...some('purchaseTax', more.purchaseTax),
    cost,
    ...some('contingency', more.contingency),
    ...some('overhead', more.overhead),
    breakEven,
    profit,
    ...some('priceTax', more.priceTax),
  };
}

function reckon(input: Bid, pad: Pad): JobBidFigures {
  checkTerms(input);
  const nothing = nothingIn(input, 'lines[0].price');
  const all = costedAll(input, nothing, pad);
  const lines = all.filter(({ option }) => option === undefined);
  const optional = all.filter(({ option }) => option !== undefined);
  assumeRounding(all, input, pad);
  const distribution = distributionOf(input, pad);
  const ranged = all.map((one, i): Ranged => {
    const given = input.lines[i] as Line;
    return { line: one, range: rangeOf(given, one.amount, distribution, `lines[${i}]`, pad) };
  });
  const price = priced(lines, input, nothing, pad.step.bind(pad));
  const base: Base = { input, lines, optional, price, nothing, pad };
  const options = optionsOf(base);
  const inBase = ranged.filter(({ line }) => line.option === undefined);
  const range = rangeFigures(inBase, distribution, base);
  const unit = perArea(input, price.total, pad);
  heed(base);
  return {
    ...priceFigures(price),
    lines: ranged.map((one, i) => lineFigures(one, input.lines[i] as Line)),
    byKind: byKind(lines, nothing),
    ...laborHours(lines),
    ...shares(base),
    roundedTo: coinOf(nothing),
    ...(unit ? { pricePerArea: unit } : {}),
    ...(range ? { range } : {}),
    ...(options ? { options } : {}),
    ...account(base),
  };
}

/**
 * The bid of a job: lines by quantity and unit price, hours and wages, what is put on them, and what comes after.
 *
 * @param input - lines of one currency; overhead and profit as markup or margin; tax, contingency, options;
 * changes, retainage and progress after the award; the area
 * @returns the total with all that it is made of, rounded half-up to the cent, sums exact
 * @throws {InputError} `currency-mismatch`; `give-one-of` markup and margin, amount and price; `wrong-dimension` for a
 * quantity that its price is not for; `ambiguous` for days beside hours; `unknown-name` of a line; `outside-range`
 * for a margin of 100% or more; `too-many` options
 * @source arithmetic; half-up as tax offices and textbooks round; limits of the Federal Acquisition Regulation
 * @example
 * ```ts
 * import { jobBid } from 'flatwork-reckoner';
 *
 * const { figures } = jobBid({
 *   lines: [
 *     { kind: 'material', name: 'concrete', quantity: '8.25 yd3', price: { amount: '165 USD', per: '1 yd3' } },
 *     { kind: 'labor', name: 'place and finish', hours: '32 h', wage: { amount: '28.50 USD', per: '1 h' } },
 *   ],
 *   profit: { margin: '20%' },
 * });
 * figures.cost.format(); // '2273.25 USD'
 * figures.profit.format(); // '568.31 USD'
 * figures.markup?.format(); // '25%'
 * figures.total.format(); // '2841.56 USD'
 * ```
 */
export const jobBid: Calculation<JobBidInput, JobBidFigures> = /*#__PURE__*/ define({
  id: 'job-bid',
  title: 'Job bid',
  version: 1,
  sources: [HALF_UP, FAR_RETAINAGE, FAR_QUANTITY],
  limits: [OPTIONS],
  input: door,
  reckon,
});
