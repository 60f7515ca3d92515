/**
 * When the price is paid: a share or an amount at each stage, rounded half-up to the cent, the rest at the last, and what
 * is kept back of each until the work is accepted. The stages always sum to the contract.
 */
import { toCents } from '../quantity/cents';
import * as faults from '../quantity/faults';
import { canonicalValue, type Quantity, type QuantityInput, unitShown } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { type Field, fields, label, maybe } from '../reckoning/fields';
import type { Read } from '../reckoning/read';
import { notBoth } from '../reckoning/together';
import { pastContract } from './bid-faults';
import { moneyField, type Ratio, shareField } from './bid-money';

type Money = Quantity<'money'>;

/** One payment of the price. Without a share or an amount it is all that is left. */
export interface PayStageInput {
  /** When it is due: `on signing`, `when the concrete is placed`. */
  readonly when: string;
  /** Share of the price. */
  readonly share?: QuantityInput<'ratio'>;
  /** An amount. */
  readonly amount?: QuantityInput<'money'>;
}

/** A payment, reckoned. */
export interface PayStage {
  /** When it is due; left out for the rest that no stage was named for. */
  readonly when?: string;
  /** Its part of the price. */
  readonly amount: Money;
  /** Kept back of it. */
  readonly kept: Money;
  /** Paid then. */
  readonly due: Money;
}

/** The field of a stage. */
export const stageField = (): Field<Read<PayStageInput>> =>
  fields(
    { when: label('when'), share: maybe(shareField('share')), amount: maybe(moneyField('amount')) },
    notBoth('share', 'amount'),
  );

/** What a stage asks for; nothing where it takes the rest. */
function askedBy({ share, amount }: Read<PayStageInput>, contract: Money, path: string): Money | undefined {
  if (share && amount) refuse(path, faults.giveOneOf(['share', 'amount']));
  if (share) return toCents(contract.times(share));
  if (!amount) return undefined;
  const [own, other] = [unitShown(contract).id, unitShown(amount).id];
  if (own !== other) refuse(`${path}.amount`, faults.currencyMismatch(other, own));
  return toCents(amount);
}

/**
 * The stages with their amounts, and the rest.
 *
 * @throws {InputError} `outside-range` where they ask for more than the contract, `give-one-of` where two take the rest,
 * `currency-mismatch`
 */
export function payStages(
  stages: readonly Read<PayStageInput>[],
  contract: Money,
  retainage: Ratio | undefined,
): PayStage[] {
  if (stages.length === 0) return [];
  const asked = stages.map((stage, i) => askedBy(stage, contract, `payments[${i}]`));
  if (asked.filter((amount) => amount === undefined).length > 1)
    refuse('payments', faults.giveOneOf(['share', 'amount']));
  const rest = asked.reduce<Money>((left, amount) => (amount ? left.minus(amount) : left), contract);
  if (canonicalValue(rest).lessThan(0)) refuse('payments', pastContract());
  const stage = (when: string | undefined, amount: Money): PayStage => {
    const kept = retainage ? toCents(amount.times(retainage)) : amount.minus(amount);
    return { ...(when === undefined ? {} : { when }), amount, kept, due: amount.minus(kept) };
  };
  const named = stages.map(({ when }, i) => stage(when, asked[i] ?? rest));
  return asked.includes(undefined) || rest.sign() === 0 ? named : [...named, stage(undefined, rest)];
}
