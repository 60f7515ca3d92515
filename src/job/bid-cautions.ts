/** What to watch out for in a bid. The contract, the tax office and the local law decide. */
import { constant, ratio } from '../quantity/make';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import type { Money, Ratio, Time } from './bid-money';
import * as sources from './bid-sources';

/** Beyond this a unit price is looked at again, in contracts that follow the federal clause. */
export const FAR_BAND = constant(() => ratio('15%'));

/** More is rarely kept back. */
export const USUAL_RETAINAGE = constant(() => ratio('10%'));

/** A total that spreads more than this asks for a reserve. */
export const WIDE_SPREAD = constant(() => ratio('5%'));

export const noPrice = (name: string): Caution => ({
  code: 'no-price',
  severity: 'stop',
  ...say`${{ name }} has no price: nothing of it is in the total. Ask for one before the bid goes out, or leave the line out on purpose`,
  source: COMMON_PRACTICE,
});

export const nothingKnown = (name: string): Caution => ({
  code: 'no-price',
  severity: 'stop',
  ...say`nothing is known yet of what ${{ name }} comes to: nothing of it is in the total. Settle how much of it there is and what it costs before the bid goes out, or leave the line out on purpose`,
  source: COMMON_PRACTICE,
});

export const zeroPrice = (name: string): Caution => ({
  code: 'zero-price',
  severity: 'warning',
  ...say`${{ name }} is priced at nothing. Is it given away on purpose, or is its price still to come?`,
  source: COMMON_PRACTICE,
});

export const minimumCharge = (name: string, limit: Money, actual: Money): Caution => ({
  code: 'minimum-charge',
  severity: 'note',
  ...say`${{ name }} comes to ${{ actual }}, below the minimum charge: ${{ limit }} are charged`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const jobMinimum = (limit: Money, actual: Money): Caution => ({
  code: 'minimum-charge',
  severity: 'note',
  ...say`the job comes to ${{ actual }}, below the minimum charge: ${{ limit }} are charged, and what is more is profit`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const extensionDiffers = (name: string, limit: Money, actual: Money): Caution => ({
  code: 'extension-differs',
  severity: 'warning',
  ...say`${{ name }} comes to ${{ limit }}, and ${{ actual }} is written: look for a misplaced point, a wrong unit or a wrong quantity. Which of the two binds is for the contract; most have the unit price govern`,
  limit,
  actual,
  source: sources.FAR_MISTAKES,
});

export const marginAsMarkup = (limit: Money, actual: Money): Caution => ({
  code: 'margin-as-markup',
  severity: 'warning',
  ...say`the profit is written as ${{ actual }}: that is the share taken of the cost, a markup. As a margin, a share of the price, it is ${{ limit }}`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const markupAsMargin = (limit: Money, actual: Money): Caution => ({
  code: 'margin-as-markup',
  severity: 'warning',
  ...say`the profit is written as ${{ actual }}: that is the share taken of the price, a margin. As a markup, a share of the cost, it is ${{ limit }}`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const profitDiffers = (limit: Money, actual: Money): Caution => ({
  code: 'profit-differs',
  severity: 'warning',
  ...say`the profit comes to ${{ limit }}, and ${{ actual }} is written: reckon it again before the bid goes out`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const belowCost = (limit: Money, actual: Money): Caution => ({
  code: 'below-cost',
  severity: 'stop',
  ...say`the price of ${{ actual }} is less than the ${{ limit }} that the work costs with its overhead: every bit of it is done at a loss`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const taxLaw: Caution = {
  code: 'tax-law',
  severity: 'note',
  always: true,
  says: 'what is taxed, at what rate and who pays it is for the local law, and often differs for work on a building: ask the tax office or an accountant',
  source: COMMON_PRACTICE,
};

export const taxWithoutRate = (name: string): Caution => ({
  code: 'tax-without-rate',
  severity: 'warning',
  ...say`tax is due on ${{ name }}, and no rate of it is given: none is in the total. Give taxRate of the line, or tax of the bid`,
  source: COMMON_PRACTICE,
});

export const laborTaxed: Caution = {
  code: 'labor-taxed',
  severity: 'note',
  says: 'tax on purchases is put on labor: wages are no purchase, and in many places labor on a building is not taxed. Make sure that the local law wants it',
  source: COMMON_PRACTICE,
};

export const noContingency = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'no-contingency',
  severity: 'warning',
  ...say`the total spreads by ${{ actual }} of itself, and nothing is set aside for it: settle what is uncertain, or add a contingency, or name in the bid what it does not cover`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const highRetainage = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'high-retainage',
  severity: 'note',
  ...say`${{ actual }} of each payment are kept back, and more than ${{ limit }} is rare: many places have a limit by law. Read the contract, and reckon with the wait`,
  limit,
  actual,
  source: sources.FAR_RETAINAGE,
});

export const overpaid = (limit: Money, actual: Money): Caution => ({
  code: 'overpaid',
  severity: 'warning',
  ...say`${{ actual }} were paid, and no more than ${{ limit }} are earned after retainage: nothing is due, and the difference belongs to the customer until more is done`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const overBilled = (limit: Money, actual: Money): Caution => ({
  code: 'over-billed',
  severity: 'warning',
  ...say`${{ actual }} of work is billed, and the contract with its changes comes to ${{ limit }}: have the change in writing before it is billed`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const quantityVaries = (name: string, limit: Ratio, actual: Ratio): Caution => ({
  code: 'quantity-varies',
  severity: 'note',
  ...say`${{ name }} differs from the plan by ${{ actual }}: past ${{ limit }} many contracts have its unit price agreed anew. Read yours, and have the change in writing`,
  limit,
  actual,
  source: sources.FAR_QUANTITY,
});

export const pricesLapse = (limit: Time, actual: Time): Caution => ({
  code: 'prices-lapse',
  severity: 'warning',
  ...say`prices are held for ${{ limit }}, and the work starts in ${{ actual }}: ask the suppliers again, or bid it with the price of that day`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});
