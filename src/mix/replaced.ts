/**
 * How much of the cement may be fly ash, slag or silica fume where the concrete is salted: ACI 318, exposure F3, from
 * memory. More of it scales under deicers; alone and in sum.
 */
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { say, type Words } from '../reckoning/words';
import * as cautions from './cautions';

type Ratio = Quantity<'ratio'>;

/** Shares of all that counts as cement. */
export interface Replaced {
  readonly flyAsh: Ratio | undefined;
  readonly slag: Ratio | undefined;
  readonly silicaFume: Ratio | undefined;
}

const NOTHING = constant(() => ratio('0%'));

/** Whether a mix for salted concrete keeps what may replace cement; the first that is passed is told. */
export function heedReplaced({ flyAsh: f, slag: s, silicaFume: m }: Replaced, pad: Pad): boolean {
  const sum = (...shares: (Ratio | undefined)[]): Ratio =>
    shares.reduce<Ratio>((all, share) => (share ? all.plus(share) : all), NOTHING());
  const limits: readonly (readonly [what: Words, share: Ratio, most: string])[] = [
    [say`fly ash`, sum(f), '25%'],
    [say`slag`, sum(s), '50%'],
    [say`silica fume`, sum(m), '10%'],
    [say`fly ash and silica fume`, sum(f, m), '35%'],
    [say`fly ash, slag and silica fume`, sum(f, s, m), '50%'],
  ];
  const over = limits.find(([, share, most]) => share.greaterThan(ratio(most)));
  if (over) pad.caution(cautions.muchReplaced(over[0], ratio(over[2]), over[1]));
  return !over;
}
