/**
 * An amount of money shared out by weights, to the cent: each share is its part of the amount, cut down to the smallest
 * coin, and the coins that are left go to those that lost most by it. So the shares always sum to the amount.
 */
import { Decimal, ZERO } from '../quantity/decimal';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';

type Money = Quantity<'money'>;

/** A share in coins, and what was cut off it. */
interface Cut {
  readonly coins: Decimal;
  readonly lost: Decimal;
  readonly at: number;
}

const byLoss = (a: Decimal, b: Decimal): number => (a.equals(b) ? 0 : a.lessThan(b) ? -1 : 1);

/**
 * Shares of an amount, one for each weight, in their order; nothing where the weights come to nothing.
 *
 * @param amount - what is shared out, in whole coins
 * @param weights - what each counts for; below zero for a credit
 */
export function apportioned(amount: Money, weights: readonly Decimal[]): Money[] | undefined {
  const all = weights.reduce((sum, w) => sum.plus(w), ZERO);
  if (!all.greaterThan(0)) return undefined;
  const unit = unitShown(amount);
  const coin = new Decimal(`1e-${unit.places}`);
  const total = canonicalValue(amount).div(coin).floor();
  const cuts = weights.map((w, at): Cut => {
    const share = total.times(w).div(all);
    const coins = share.floor();
    return { coins, lost: share.minus(coins), at };
  });
  const given = cuts.reduce((sum, { coins }) => sum.plus(coins), ZERO);
  const left = total.minus(given).toNumber();
  const most = [...cuts].sort((a, b) => byLoss(b.lost, a.lost) || a.at - b.at).slice(0, left);
  const more = new Set(most.map(({ at }) => at));
  return cuts.map(({ coins, at }) =>
    newQuantity('money', (more.has(at) ? coins.plus(1) : coins).times(coin), unit),
  );
}
