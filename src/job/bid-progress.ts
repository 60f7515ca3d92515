/**
 * After the award: changes by what was measured, work done to date, retainage, and what is due now.
 *
 * A change is what was measured less what was planned, at the agreed unit price; where the contract has quantities
 * vary by a share without a new price, it is the part beyond that share.
 */
import * as faults from '../quantity/faults';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { type Field, fields, label, list, maybe } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { oneOf } from '../reckoning/together';
import { say } from '../reckoning/words';
import * as cautions from './bid-cautions';
import { noLine, pastWhole, twoLines } from './bid-faults';
import {
  costOf,
  type Measure,
  type Measured,
  type Money,
  measureField,
  moneyField,
  ONE,
  type PriceInput,
  priceField,
  type Ratio,
  sameDimension,
  shareField,
  sumOf,
  times,
  toCents,
} from './bid-money';
import { BAND, RETAINAGE } from './bid-ordinary';
import type { Costed } from './bid-price';

/** A change to the contract: of a measured quantity at its agreed price, or a lump sum. */
export interface ChangeInput {
  /** What changed. */
  readonly name: string;
  /** The quantity that was bid. */
  readonly planned?: QuantityInput<Measured>;
  /** The quantity as measured. */
  readonly measured?: QuantityInput<Measured>;
  /** The agreed unit price of what is more or less. */
  readonly price?: PriceInput;
  /** How far the quantity may vary before the price of the rest changes, by the contract. */
  readonly band?: QuantityInput<'ratio'>;
  /** A lump sum, below zero for a credit. */
  readonly amount?: QuantityInput<'money'>;
}

/** How much of one line is done. */
export interface DoneInput {
  /** The line of the base bid. */
  readonly line: string;
  /** How much of it is done. */
  readonly complete: QuantityInput<'ratio'>;
}

/** A payment on account. */
export interface ProgressInput {
  /** How much of all the work is done. */
  readonly complete?: QuantityInput<'ratio'>;
  /** How much of each line is done; the others are taken as not begun. */
  readonly lines?: readonly DoneInput[];
  /** Work done to date, as an amount. */
  readonly amount?: QuantityInput<'money'>;
  /** What was paid before. */
  readonly paid?: QuantityInput<'money'>;
}

/** What comes after the award. */
export interface AccountInput {
  /** Changes agreed on since. */
  readonly changes?: readonly ChangeInput[];
  /** What is kept back of each payment until the work is accepted. */
  readonly retainage?: QuantityInput<'ratio'>;
  /** What is asked for now. */
  readonly progress?: ProgressInput;
}

type Account = Read<AccountInput>;
type Change = NonNullable<Account['changes']>[number];

/** A change as it is billed. */
export interface ChangeFigures {
  /** What changed. */
  readonly name: string;
  /** The quantity that is paid for or credited. */
  readonly quantity?: Quantity<Measured>;
  /** What it adds to the contract. */
  readonly amount: Quantity<'money'>;
}

/** A payment on account. */
export interface PaymentFigures {
  /** Work done to date. */
  readonly done: Quantity<'money'>;
  /** Kept back of that. */
  readonly retained: Quantity<'money'>;
  /** Paid before. */
  readonly paid: Quantity<'money'>;
  /** Due now. */
  readonly due: Quantity<'money'>;
  /** What is left to pay, with what is kept back. */
  readonly balance: Quantity<'money'>;
}

type V = Quantity<'volume'>;

/** What is paid for beyond the band, or all of the difference where there is none. */
function varied({ name, planned, measured, band: k }: Change, path: string, pad: Pad): Measure | undefined {
  if (!planned || !measured) return undefined;
  sameDimension(measured, planned.dimension, `${path}.measured`);
  const [p, m] = [planned as V, measured as V];
  // What was not planned at all differs from no plan.
  const share = p.sign() > 0 ? times(m.minus(p), p).abs().in('%') : undefined;
  if (share?.greaterThan(cautions.FAR_BAND()))
    pad.caution(cautions.quantityVaries(name, cautions.FAR_BAND(), share));
  if (!k) return pad.step(say`${{ name }}, more than planned`, 'Q = m − p', { m, p }, m.minus(p)) as Measure;
  const [most, least] = [p.times(ONE().plus(k)), p.times(ONE().minus(k))];
  if (m.greaterThan(most)) {
    return pad.step(
      say`${{ name }}, beyond the band`,
      'Q = m − p × (1 + k)',
      { m, p, k },
      m.minus(most),
    ) as Measure;
  }
  if (m.lessThan(least)) {
    return pad.step(
      say`${{ name }}, below the band`,
      'Q = m − p × (1 − k)',
      { m, p, k },
      m.minus(least),
    ) as Measure;
  }
  return m.minus(m) as Measure;
}

function change(given: Change, path: string, pad: Pad): ChangeFigures {
  const { name, amount, price, planned, measured } = given;
  if (amount) {
    if (price || planned || measured) return refuse(path, faults.giveOneOf(['amount', 'measured']));
    return { name, amount: toCents(amount) };
  }
  const missing = (['planned', 'measured', 'price'] as const).find((key) => !given[key]);
  if (missing || !price)
    return refuse(
      `${path}.${missing ?? 'price'}`,
      faults.missing(missing ?? 'price', ['"20 yd3"', '"15 m3"']),
    );
  const Q = varied(given, path, pad) as Measure;
  sameDimension(Q, price.per.dimension, `${path}.price.per`);
  const { amount: p, per: u } = price;
  const A = toCents(costOf(Q, price));
  return {
    name,
    quantity: Q,
    amount: pad.step(say`${{ name }}, rounded half-up`, 'A = Q × p ÷ u', { Q, p, u }, A),
  };
}

/** What each change adds. */
export const changesOf = ({ changes }: Account, pad: Pad): readonly ChangeFigures[] =>
  (changes ?? []).map((one, i) => change(one, `changes[${i}]`, pad));

/** The one line of a name. */
export function lineNamed<T extends { readonly name: string }>(
  lines: readonly T[],
  name: string,
  path: string,
): T {
  const [found, other] = lines.filter((line) => line.name === name);
  if (other) return refuse(path, twoLines(name));
  return found ?? refuse(path, noLine(name, lines));
}

const noMore = (share: Ratio, path: string): Ratio =>
  share.greaterThan(ONE()) ? refuse(path, pastWhole()) : share;

interface Work {
  readonly lines: readonly Costed[];
  readonly contract: Money;
  readonly nothing: Money;
}

/** The share of the work that is done, each line by what it costs. */
function shareDone(
  done: NonNullable<NonNullable<Account['progress']>['lines']>,
  { lines, nothing }: Work,
  pad: Pad,
): Ratio {
  const seen = new Set<string>();
  const parts = done.map(({ line, complete }, i) => {
    const path = `progress.lines[${i}]`;
    if (seen.has(line)) refuse(`${path}.line`, twoLines(line));
    seen.add(line);
    return lineNamed(lines, line, `${path}.line`).amount.times(noMore(complete, `${path}.complete`));
  });
  const all = sumOf(
    lines.map(({ amount }) => amount),
    nothing,
  );
  if (all.sign() <= 0) return refuse('progress.lines', faults.notPositive('the cost of the lines'));
  const E = sumOf(parts, nothing);
  return pad.step('share of the work that is done', 'e = E ÷ L', { E, L: all }, E.over(all));
}

function doneToDate(progress: NonNullable<Account['progress']>, work: Work, pad: Pad): Money {
  const { complete, lines, amount } = progress;
  if ([complete, lines, amount].filter((way) => way !== undefined).length !== 1) {
    return refuse('progress', faults.giveOneOf(['complete', 'lines', 'amount']));
  }
  if (amount) return toCents(amount);
  const e = complete ? noMore(complete, 'progress.complete') : shareDone(lines ?? [], work, pad);
  const { contract: C } = work;
  return pad.step('work done to date, rounded half-up', 'W = C × e', { C, e }, toCents(C.times(e)));
}

/** What is due now. */
export function payment(
  { progress, retainage: r }: Account,
  work: Work,
  pad: Pad,
): PaymentFigures | undefined {
  if (!progress) return undefined;
  const { contract: C, nothing } = work;
  const W = doneToDate(progress, work, pad);
  const R = r ? pad.step('retainage, rounded half-up', 'R = W × r', { W, r }, toCents(W.times(r))) : nothing;
  const G = progress.paid ? toCents(progress.paid) : nothing;
  const due = pad.step('due now', 'N = W − R − G', { W, R, G }, W.minus(R).minus(G));
  if (due.sign() < 0) pad.caution(cautions.overpaid(W.minus(R), G));
  if (W.greaterThan(C)) pad.caution(cautions.overBilled(C, W));
  const balance = pad.step(
    'left of the contract after that',
    'B = C − G − N',
    { C, G, N: due },
    C.minus(G).minus(due),
  );
  return { done: W, retained: R, paid: G, due, balance };
}

/** The fields of the account. */
export const accountFields = () => ({
  changes: maybe(
    list(
      fields(
        {
          name: label('name'),
          planned: maybe(measureField('planned', false, 'not-negative')),
          measured: maybe(measureField('measured', false, 'not-negative')),
          price: maybe(priceField('price')),
          band: maybe(shareField('band', BAND)),
          amount: maybe(moneyField('amount', 'any')),
        },
        oneOf(['planned', 'measured', 'price'], ['amount']),
      ),
      1,
      200,
    ),
  ),
  retainage: maybe(shareField('retainage', RETAINAGE)),
  progress: maybe(
    fields(
      {
        complete: maybe(shareField('complete')),
        lines: maybe(list(fields({ line: label('line'), complete: shareField('complete') }), 1, 300)),
        amount: maybe(moneyField('amount')),
        paid: maybe(moneyField('paid')),
      },
      oneOf(['complete'], ['lines'], ['amount']),
    ) as Field<NonNullable<Account['progress']>>,
  ),
});
