/** Prices, options and payments as a customer reads them; what it costs the contractor is in none of them. */
import { apportioned } from '../job/apportion';
import { type PriceShare, type PriceShown, priceShares } from '../job/bid-shares';
import type { JobBidFigures } from '../job/job-bid';
import type { ReckonedJob } from '../job/job-takeoff';
import { payStages } from '../job/pay-stages';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import type { ResultParts } from '../reckoning/parts';
import { say } from '../reckoning/words';
import type { Piece } from './chapters';
import { lineName } from './line-name';
import { capital } from './lines';
import type { ReadTerms } from './quote-input';
import { quantityText, type View, wordsText, wordText } from './view';

type Bid = ResultParts<JobBidFigures>;
type Money = Quantity<'money'>;

const told = (words: string, view: View): string => capital(wordText(words, view));

const CURRENCY = /\s*([A-Z]{3})$/;

/** An amount in a table whose head names the currency. */
const bare = (amount: Money, view: View): string => quantityText(amount, view).replace(CURRENCY, '');

/** What the amounts of a table are, and in which currency. */
function captionOf(words: string, amount: Money, view: View): string {
  const [, currency = ''] = CURRENCY.exec(quantityText(amount, view)) ?? [];
  return `${wordText(words, view)}, ${currency}`;
}

/** The rate of the tax on the price, as the bid was reckoned with it. */
function rateOf({ figures, working }: Bid): Quantity | undefined {
  const { priceTax } = figures;
  const step = working.find(
    ({ values, gives }) => values['r'] && values['S'] && priceTax && gives.equals(priceTax),
  );
  return step?.values['r'];
}

function taxLabel(bid: Bid, view: View): string {
  const rate = rateOf(bid);
  return rate ? wordsText(say`Tax, ${{ rate }}`, view) : told('tax', view);
}

/** Parts of the price in a table, each with its tax where there is one on the price, and their sum. */
function sharesPiece(bid: Bid, shares: readonly PriceShare[], view: View): Piece {
  const { price, priceTax, total } = bid.figures;
  const taxes =
    priceTax &&
    apportioned(
      priceTax,
      shares.map((share) => canonicalValue(share.price)),
    );
  const cells = (name: string, amount: Money, tax: Money | undefined): string[] => [
    name,
    bare(amount, view),
    ...(tax ? [bare(tax, view), bare(amount.plus(tax), view)] : []),
  ];
  const rows = shares.map((share, i) => cells(share.name, share.price, taxes?.[i]));
  const sum = taxes ? cells(told('total', view), price, priceTax) : [told('total', view), bare(total, view)];
  const head = [
    told('for', view),
    told('price', view),
    ...(taxes ? [taxLabel(bid, view), told('total', view)] : []),
  ];
  return {
    kind: 'table',
    caption: captionOf('Prices', total, view),
    head,
    rows: [...rows, sum],
    money: true,
    sum: true,
  };
}

function totalPiece(bid: Bid, view: View): Piece {
  const { price, priceTax, total } = bid.figures;
  const whole: [string, string] = [told('total', view), quantityText(total, view)];
  if (!priceTax) return { kind: 'pairs', pairs: [whole] };
  const before: [string, string] = [told('price before tax', view), quantityText(price, view)];
  return { kind: 'pairs', pairs: [before, [taxLabel(bid, view), quantityText(priceTax, view)], whole] };
}

/** What the customer should know of tax, without the amount that the contractor pays. */
function taxText({ figures: { priceTax, purchaseTax } }: Bid): string {
  if (priceTax) return '';
  return purchaseTax
    ? 'Tax on what we buy for the work is in the price. None is added to it.'
    : 'No tax is added to this price.';
}

/** The name of a line in the language of the page. */
function nameIn(name: string, view: View): string {
  const words = lineName(name);
  return typeof words === 'string' ? words : wordsText(words, view);
}

/** The price as it is to be shown. */
export function pricePieces(bid: Bid, shown: PriceShown, job: ReckonedJob | undefined, view: View): Piece[] {
  const shares = priceShares(bid.figures, shown, job);
  if (shares.length === 0)
    return [totalPiece(bid, view), { kind: 'text', text: wordText(taxText(bid), view) }];
  const together = 'These are parts of one price. What is left out, or done by itself, is priced anew.';
  const sentences = [taxText(bid), together].filter(Boolean).map((text) => wordText(text, view));
  const own =
    shown === 'lines' ? shares.map((share) => ({ ...share, name: nameIn(share.name, view) })) : shares;
  return [sharesPiece(bid, own, view), { kind: 'text', text: sentences.join(' ') }];
}

/** Options and alternates, each with what it changes and a box to tick. */
export function optionPieces({ figures }: Bid, notes: ReadTerms['options'], view: View): Piece[] {
  const rows = (figures.options ?? []).map(({ name, difference, total }) => {
    const means = notes?.find((note) => note.name === name)?.means;
    const adds = bare(difference.abs(), view);
    const change = difference.sign() < 0 ? say`less ${{ adds }}` : say`plus ${{ adds }}`;
    return [
      '☐',
      means === undefined ? name : `${name}: ${means}`,
      wordsText(change, view),
      bare(total, view),
    ];
  });
  const head = ['yes', 'option', 'changes the price by', 'total with it'].map((word) => told(word, view));
  return [
    {
      kind: 'table',
      caption: captionOf(
        figures.priceTax ? 'Each by itself, with tax' : 'Each by itself',
        figures.total,
        view,
      ),
      head,
      rows,
    },
    {
      kind: 'text',
      text:
        rows.length > 1
          ? wordText('Two or more of them together are priced anew before you sign.', view)
          : '',
    },
  ];
}

/** When the price is paid, and what is kept back. */
export function paymentPieces(
  { figures }: Bid,
  { payments = [], retainage }: ReadTerms,
  view: View,
): Piece[] {
  const stages = payStages(payments, figures.contract ?? figures.total, retainage);
  const keeps = stages.some(({ kept }) => kept.sign() > 0);
  const money = (...amounts: readonly Money[]): string[] => amounts.map((amount) => bare(amount, view));
  const rows = stages.map(({ when, amount, kept, due }) => [
    when ?? told('the rest, when the work is done', view),
    ...(keeps ? money(amount, kept, due) : money(due)),
  ]);
  const [first, ...others] = stages;
  if (first && keeps) {
    const kept = others.reduce<Money>((sum, stage) => sum.plus(stage.kept), first.kept);
    rows.push([told('what was kept back, when the work is accepted', view), '', '', ...money(kept)]);
  }
  const head = keeps ? ['when', 'for', 'kept back', 'to pay'] : ['when', 'to pay'];
  return [
    {
      kind: 'table',
      caption: captionOf('Payments', figures.total, view),
      head: head.map((word) => told(word, view)),
      rows,
      money: true,
    },
    {
      kind: 'text',
      text:
        !keeps && retainage && stages.length === 0
          ? wordsText(say`${{ retainage }} of each payment are kept back until the work is accepted.`, view)
          : '',
    },
  ];
}

/** Changes since the award, and what was paid. */
export function accountPieces({ figures }: Bid, view: View): Piece[] {
  const { changes = [], contract, payment } = figures;
  const rows = changes.map(({ name, quantity, amount }) => [
    name,
    quantity ? quantityText(quantity, view) : '',
    bare(amount, view),
  ]);
  const pairs: [string, Money][] = [
    ...(contract && changes.length > 0 ? [['contract with its changes', contract] as [string, Money]] : []),
    ...(payment
      ? ([
          ['work done to date', payment.done],
          ['kept back of that', payment.retained],
          ['paid before', payment.paid],
          ['due now', payment.due],
          ['left to pay after that', payment.balance],
        ] as [string, Money][])
      : []),
  ];
  return [
    {
      kind: 'table',
      caption: captionOf('Changes agreed since', figures.total, view),
      head: ['change', 'quantity', 'adds'].map((word) => told(word, view)),
      rows,
      money: true,
    },
    { kind: 'pairs', pairs: pairs.map(([label, amount]) => [told(label, view), quantityText(amount, view)]) },
  ];
}
