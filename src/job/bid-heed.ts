/** What a bid as a whole is held to. */
import type { Pad } from '../reckoning/pad';
import type { Base } from './bid-base';
import * as cautions from './bid-cautions';
import type { Bid } from './bid-input';
import { type Money, ONE, toCents } from './bid-money';
import { type Costed, markupOf, type Priced, priced, silent } from './bid-price';

/** A profit that is written beside the terms, held to what it comes to and to the other way of reading it. */
function heedStated({ profit: terms }: Bid, { profit, breakEven: B }: Priced, pad: Pad): void {
  const { stated, markup, margin } = terms ?? {};
  if (!stated || toCents(stated).compareTo(profit) === 0) return;
  const other = margin ?? (markup?.lessThan(ONE()) ? markupOf(markup) : undefined);
  if (other && toCents(B.times(other)).compareTo(toCents(stated)) === 0) {
    pad.caution(margin ? cautions.marginAsMarkup(profit, stated) : cautions.markupAsMargin(profit, stated));
  } else pad.caution(cautions.profitDiffers(profit, stated));
}

function heedTax({ tax }: Bid, lines: readonly Costed[], pad: Pad): void {
  const taxed = lines.filter(({ taxRate }) => taxRate && taxRate.sign() > 0);
  if (tax || taxed.length > 0) pad.caution(cautions.taxLaw);
  if (taxed.some(({ kind }) => kind === 'labor')) pad.caution(cautions.laborTaxed);
}

/** Everything that the whole bid asks to look at again. */
export function heed(base: Base): void {
  const { input, price, lines, pad } = base;
  const { retainage, pricesHeld, startsIn } = input;
  heedStated(input, price, pad);
  heedTax(input, [...lines, ...base.optional], pad);
  if (isLeast(base)) pad.caution(cautions.jobMinimum(price.price, bare(base)));
  if (price.price.lessThan(price.breakEven)) pad.caution(cautions.belowCost(price.breakEven, price.price));
  if (retainage?.greaterThan(cautions.USUAL_RETAINAGE())) {
    pad.caution(cautions.highRetainage(cautions.USUAL_RETAINAGE(), retainage));
  }
  if (pricesHeld && startsIn?.greaterThan(pricesHeld))
    pad.caution(cautions.pricesLapse(pricesHeld, startsIn));
}

/** Whether the least charge is what is charged. */
export const isLeast = (base: Base): boolean =>
  base.input.minimumCharge !== undefined && bare(base).lessThan(base.price.price);

/** The price without a least charge. */
const bare = ({ input, lines, nothing }: Base): Money =>
  priced(lines, { ...input, minimumCharge: undefined }, nothing, silent).price;
