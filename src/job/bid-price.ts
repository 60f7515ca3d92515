/**
 * From the cost of the lines to the price: tax on purchases, contingency, overhead, profit, tax on the price.
 *
 * A markup is a share of the cost, `P = B × m`; a margin one of the price, `P = B × g ÷ (1 − g)`. They are one at
 * `m = g ÷ (1 − g)`. Every amount is rounded half-up to the cent once, and sums are of the rounded ones.
 */
import type { Dimension } from '../quantity/dimensions';
import type { Quantity } from '../quantity/quantity';
import type { Saying } from '../reckoning/words';
import type { Extended } from './bid-extend';
import type { CostKind } from './bid-lines';
import { costOf, type Money, ONE, type Ratio, sumOf, type Time, toCents } from './bid-money';
import type { Terms } from './bid-terms';

/** A line as it goes into the price. */
export interface Costed extends Extended {
  /** The option that it belongs to; none where it is of the base bid. */
  readonly option: string | undefined;
  /** The rate of tax on purchases that is due on it. */
  readonly taxRate: Ratio | undefined;
  /** That tax, where each line is rounded. */
  readonly tax: Money | undefined;
}

/** What a price is made of. */
export interface Priced {
  readonly lines: Money;
  readonly purchaseTax: Money;
  readonly cost: Money;
  readonly contingency: Money;
  readonly overhead: Money;
  readonly breakEven: Money;
  readonly profit: Money;
  readonly price: Money;
  readonly priceTax: Money;
  readonly total: Money;
}

/** Notes a step, or nothing: options are priced as the base is, and one working of it is enough. */
export type Note = <D extends Dimension>(
  what: Saying,
  formula: string,
  values: Readonly<Record<string, Quantity>>,
  gives: Quantity<D>,
) => Quantity<D>;

export const silent: Note = (_what, _formula, _values, gives) => gives;

/** The profit of a margin, as a share of the cost. */
export const markupOf = (margin: Ratio): Ratio => margin.over(ONE().minus(margin));

/** The margin of a markup. */
export const marginOf = (markup: Ratio): Ratio => markup.over(ONE().plus(markup));

/** The rate of tax on purchases that is due on a line. */
export function taxRateOf(
  line: { readonly taxable: boolean | undefined; readonly taxRate: Ratio | undefined },
  kind: CostKind,
  { tax }: Terms,
): Ratio | undefined {
  if (line.taxable === false) return undefined;
  if (line.taxRate) return line.taxRate;
  if (tax?.kind !== 'on-purchases') return undefined;
  return line.taxable || tax.on.includes(kind) ? tax.rate : undefined;
}

/** Whether tax on purchases is rounded once for all lines of a rate. */
export const isOnce = ({ tax }: Terms): boolean => tax?.kind === 'on-purchases' && tax.rounded === 'once';

/** A sum of two; where the second is nothing, no step. */
function sumNote(note: Note, what: string, symbol: string, parts: Readonly<Record<string, Money>>): Money {
  const [one, other] = Object.values(parts) as [Money, Money];
  if (other.sign() === 0) return one;
  return note(what, `${symbol} = ${Object.keys(parts).join(' + ')}`, parts, one.plus(other));
}

/** A sum of many, noted where there are several. */
function total(note: Note, what: string, symbol: string, parts: readonly Money[], nothing: Money): Money {
  const sum = sumOf(parts, nothing);
  if (parts.length < 2) return sum;
  const values = Object.fromEntries(parts.map((part, i) => [`${symbol}${i + 1}`, part]));
  return note(what, `${symbol} = ${Object.keys(values).join(' + ')}`, values, sum);
}

function taxOnce(lines: readonly Costed[], nothing: Money, note: Note): Money {
  const rates = new Map<string, { readonly rate: Ratio; readonly amounts: Money[] }>();
  for (const { taxRate: rate, amount } of lines) {
    if (!rate) continue;
    const key = rate.toString();
    const own = rates.get(key) ?? { rate, amounts: [] };
    own.amounts.push(amount);
    rates.set(key, own);
  }
  return [...rates.values()].reduce((sum, { rate: r, amounts }) => {
    const Q = sumOf(amounts, nothing);
    return sum.plus(note('tax on purchases, rounded half-up', 'V = Q × r', { Q, r }, toCents(Q.times(r))));
  }, nothing);
}

const purchaseTax = (lines: readonly Costed[], terms: Terms, nothing: Money, note: Note): Money =>
  isOnce(terms)
    ? taxOnce(lines, nothing, note)
    : total(
        note,
        'tax on purchases',
        'V',
        lines.flatMap(({ tax }) => (tax ? [tax] : [])),
        nothing,
      );

function contingencyOn(C: Money, { contingency }: Terms, nothing: Money, note: Note): Money {
  const { share: k, amount } = contingency ?? {};
  if (amount) return toCents(amount);
  if (!k) return nothing;
  return note('contingency, rounded half-up', 'K = C × k', { C, k }, toCents(C.times(k)));
}

/** Hours of labor, of all together. */
const laborHours = (lines: readonly Costed[]): Time | undefined =>
  lines.reduce<Time | undefined>(
    (sum, { kind, hours }) => (kind === 'labor' && hours ? (sum?.plus(hours) ?? hours) : sum),
    undefined,
  );

function overheadOn(
  D: Money,
  lines: readonly Costed[],
  { overhead }: Terms,
  nothing: Money,
  note: Note,
): Money {
  const { markup: o, margin: g, hourly, amount, on } = overhead ?? {};
  const what = 'overhead, rounded half-up';
  if (amount) return toCents(amount);
  if (hourly) {
    const H = laborHours(lines);
    if (!H) return nothing;
    const { amount: p, per: u } = hourly;
    return note(what, 'O = H × p ÷ u', { H, p, u }, toCents(costOf(H, hourly)));
  }
  if (g) return note(what, 'O = D × g ÷ (1 − g)', { D, g }, toCents(D.times(markupOf(g))));
  if (!o) return nothing;
  if (!on) return note(what, 'O = D × o', { D, o }, toCents(D.times(o)));
  const L = sumOf(
    lines.flatMap(({ kind, amount: own }) => (on.includes(kind) ? [own] : [])),
    nothing,
  );
  return note(what, 'O = L × o', { L, o }, toCents(L.times(o)));
}

function profitOn(B: Money, { profit }: Terms, nothing: Money, note: Note): Money {
  const { markup: m, margin: g, amount, price: S } = profit ?? {};
  const what = 'profit, rounded half-up';
  if (amount) return toCents(amount);
  if (S) {
    const price = toCents(S);
    return note('profit that the price leaves', 'P = S − B', { S: price, B }, price.minus(B));
  }
  if (g) return note(what, 'P = B × g ÷ (1 − g)', { B, g }, toCents(B.times(markupOf(g))));
  return m ? note(what, 'P = B × m', { B, m }, toCents(B.times(m))) : nothing;
}

/** The least charge, where the price is below it. */
function charged(S: Money, { minimumCharge: M }: Terms, note: Note): Money {
  if (!M?.greaterThan(S)) return S;
  return note('price, no less than the minimum charge', 'W = max(S, M)', { S, M: toCents(M) }, toCents(M));
}

/** The price of lines, on these terms. */
export function priced(lines: readonly Costed[], terms: Terms, nothing: Money, note: Note): Priced {
  const each = lines.map(({ amount }) => amount);
  const amounts = total(note, 'sum of the lines', 'A', each, nothing);
  const V = purchaseTax(lines, terms, nothing, note);
  const C = sumNote(note, 'cost with tax on purchases', 'C', { A: amounts, V });
  const K = contingencyOn(C, terms, nothing, note);
  const D = sumNote(note, 'cost with contingency', 'D', { C, K });
  const O = overheadOn(D, lines, terms, nothing, note);
  const B = sumNote(note, 'break-even: cost with overhead', 'B', { D, O });
  const P = profitOn(B, terms, nothing, note);
  const S = charged(sumNote(note, 'price before tax on it', 'S', { B, P }), terms, note);
  const r = terms.tax?.kind === 'on-price' ? terms.tax.rate : undefined;
  const T = r
    ? note('tax on the price, rounded half-up', 'T = S × r', { S, r }, toCents(S.times(r)))
    : nothing;
  const sum = sumNote(note, 'total of the bid', 'F', { S, T });
  return {
    lines: amounts,
    purchaseTax: V,
    cost: C,
    contingency: K,
    overhead: O,
    breakEven: B,
    profit: S.minus(B),
    price: S,
    priceTax: T,
    total: sum,
  };
}

/** What one more on a line adds to the total, before rounding: the total is linear in each line. */
export function weightOf({ kind, taxRate }: Costed, terms: Terms): Ratio {
  const { overhead: { markup, margin, on } = {}, profit, contingency, tax } = terms;
  if (profit?.price) return ONE().minus(ONE());
  const direct = ONE().plus(taxRate ?? ONE().minus(ONE()));
  const withContingency = contingency?.share ? direct.times(ONE().plus(contingency.share)) : direct;
  const overhead = overheadWeight({ markup, margin, on }, kind, withContingency);
  const share = profit?.margin ? markupOf(profit.margin) : profit?.markup;
  const price = share ? overhead.times(ONE().plus(share)) : overhead;
  return tax?.kind === 'on-price' ? price.times(ONE().plus(tax.rate)) : price;
}

function overheadWeight(
  { markup, margin, on }: Pick<NonNullable<Terms['overhead']>, 'markup' | 'margin' | 'on'>,
  kind: CostKind,
  cost: Ratio,
): Ratio {
  if (margin) return cost.times(ONE().plus(markupOf(margin)));
  if (!markup) return cost;
  if (!on) return cost.times(ONE().plus(markup));
  return on.includes(kind) ? cost.plus(markup) : cost;
}
