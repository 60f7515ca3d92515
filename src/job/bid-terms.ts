/** What is put on the cost of the lines: overhead, profit, contingency and tax, as they are written. */
import * as faults from '../quantity/faults';
import type { QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, kinds, list, maybe, word } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import { oneOf } from '../reckoning/together';
import { wholeMargin } from './bid-faults';
import { COST_KINDS, type CostKind } from './bid-lines';
import {
  hourlyField,
  moneyField,
  ONE,
  type PriceInput,
  type Ratio,
  sameDimension,
  shareField,
} from './bid-money';
import { CONTINGENCY, OVERHEAD, PROFIT, TAX_RATE } from './bid-ordinary';

/** Overhead: a markup on the cost, a margin of the cost with it, so much for each hour of labor, or a lump sum. */
export interface OverheadInput {
  /** Share of the cost. */
  readonly markup?: QuantityInput<'ratio'>;
  /** The kinds of cost that the markup is on; by default all of it. */
  readonly on?: readonly CostKind[];
  /** Share of the cost with overhead in it. */
  readonly margin?: QuantityInput<'ratio'>;
  /** For hours of labor: `20 USD` for `1 h`. */
  readonly hourly?: PriceInput;
  /** A lump sum. */
  readonly amount?: QuantityInput<'money'>;
}

/** Profit: a markup on the cost, a margin of the price, a lump sum, or what a given price leaves. */
export interface ProfitInput {
  /** Share of the cost. */
  readonly markup?: QuantityInput<'ratio'>;
  /** Share of the price. */
  readonly margin?: QuantityInput<'ratio'>;
  /** A lump sum. */
  readonly amount?: QuantityInput<'money'>;
  /** The price it is sold at, before tax on it. */
  readonly price?: QuantityInput<'money'>;
  /** The profit that somebody wrote, to be checked. */
  readonly stated?: QuantityInput<'money'>;
}

/** For what may still turn up: a share of the cost or a lump sum. */
export interface ContingencyInput {
  /** Share of the cost. */
  readonly share?: QuantityInput<'ratio'>;
  /** A lump sum. */
  readonly amount?: QuantityInput<'money'>;
}

/** Tax that the contractor pays on what is bought. */
export interface PurchaseTaxInput {
  /** Which tax. */
  readonly kind: 'on-purchases';
  /** Its rate. */
  readonly rate: QuantityInput<'ratio'>;
  /** The kinds of cost that it is due on, as the local law has it. */
  readonly on: readonly CostKind[];
  /** Whether the tax of each line is rounded, or that of all lines of a rate at once. */
  readonly rounded?: 'each-line' | 'once';
}

/** Tax that the customer pays on the whole price. */
export interface PriceTaxInput {
  /** Which tax. */
  readonly kind: 'on-price';
  /** Its rate. */
  readonly rate: QuantityInput<'ratio'>;
}

/** What is put on the cost of the lines. */
export interface TermsInput {
  /** Overhead; none where it is left out. */
  readonly overhead?: OverheadInput;
  /** Profit; none where it is left out. */
  readonly profit?: ProfitInput;
  /** Contingency; none where it is left out. */
  readonly contingency?: ContingencyInput;
  /** Tax; none where it is left out. */
  readonly tax?: PurchaseTaxInput | PriceTaxInput;
  /** The least that the whole job is done for, before tax on the price. */
  readonly minimumCharge?: QuantityInput<'money'>;
}

export type Terms = Read<TermsInput>;

const OVERHEADS = ['markup', 'margin', 'hourly', 'amount'] as const;
const PROFITS = ['markup', 'margin', 'amount', 'price'] as const;

function oneWay(given: object | undefined, ways: readonly string[], path: string): void {
  if (!given) return;
  const said = ways.filter((way) => (given as Record<string, unknown>)[way] !== undefined);
  if (said.length !== 1) refuse(path, faults.giveOneOf(ways));
}

/** Refuse terms that say two things, or nothing. */
export function checkTerms(terms: Terms): void {
  const { overhead, profit, contingency } = terms;
  oneWay(overhead, OVERHEADS, 'overhead');
  oneWay(profit, PROFITS, 'profit');
  oneWay(contingency, ['share', 'amount'], 'contingency');
  if (overhead?.on && !overhead.markup) refuse('overhead.on', faults.giveOneOf(['overhead.markup']));
  if (overhead?.hourly) sameDimension(overhead.hourly.per, 'time', 'overhead.hourly.per');
  for (const [path, margin] of [
    ['overhead.margin', overhead?.margin],
    ['profit.margin', profit?.margin],
  ] as const) {
    if (margin && !margin.lessThan(ONE())) refuse(path, wholeMargin());
  }
}

/** Say which way tax is rounded, where it is not said. */
export function assumeRounding(
  lines: readonly { readonly taxRate: Ratio | undefined }[],
  { tax }: Terms,
  pad: Pad,
): void {
  if (tax?.kind !== 'on-purchases' || tax.rounded) return;
  if (lines.filter(({ taxRate }) => taxRate).length < 2) return;
  pad.assume({
    name: 'tax.rounded',
    value: 'each-line',
    because: 'each line shows the tax that is due on it',
    override: 'Give once, where tax is due on the sum of the lines',
    source: COMMON_PRACTICE,
  });
}

const costKinds = (what: string): Field<CostKind[]> =>
  list(choice<CostKind>(what, COST_KINDS), 1, COST_KINDS.length);

/** The fields of the terms. */
export const termsFields = () => ({
  overhead: maybe(
    fields(
      {
        markup: maybe(shareField('markup', OVERHEAD)),
        on: maybe(costKinds('on')),
        margin: maybe(shareField('margin', OVERHEAD)),
        hourly: maybe(hourlyField('hourly')),
        amount: maybe(moneyField('amount')),
      },
      oneOf(...OVERHEADS.map((way) => [way])),
    ),
  ),
  profit: maybe(
    fields(
      {
        markup: maybe(shareField('markup', PROFIT)),
        margin: maybe(shareField('margin', PROFIT)),
        amount: maybe(moneyField('amount')),
        price: maybe(moneyField('price')),
        stated: maybe(moneyField('stated', 'any')),
      },
      oneOf(...PROFITS.map((way) => [way])),
    ),
  ),
  contingency: maybe(
    fields(
      { share: maybe(shareField('share', CONTINGENCY)), amount: maybe(moneyField('amount')) },
      oneOf(['share'], ['amount']),
    ),
  ),
  tax: maybe(
    kinds<Field<NonNullable<Terms['tax']>>>('kind', [
      fields({
        kind: word('on-purchases'),
        rate: shareField('rate', TAX_RATE),
        on: costKinds('on'),
        rounded: maybe(choice('rounded', ['each-line', 'once'] as const)),
      }),
      fields({ kind: word('on-price'), rate: shareField('rate', TAX_RATE) }),
    ]),
  ),
  minimumCharge: maybe(moneyField('minimumCharge')),
});
