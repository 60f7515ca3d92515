/**
 * Limits that the trade has in round numbers of both unit systems.
 *
 * The two are not quite equal: 5 ft is 1.524 m, and a metric rule says 1.5 m. One value must get one
 * answer in whatever unit it was typed, and a nominal size the same in both systems: what has to be done
 * from a limit on is due from the lesser of both, and what may not exceed a limit may reach the greater.
 */
import { constant, length } from '../quantity/make';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';

type Length = Quantity<'length'>;

/** One limit as each unit system has it. */
export interface Paired {
  readonly customary: () => Length;
  readonly metric: () => Length;
}

/** A limit in feet or inches and in metric. */
export const paired = (customary: string, metric: string): Paired => ({
  customary: constant(() => length(customary)),
  metric: constant(() => length(metric)),
});

const inFamily = ({ customary, metric }: Paired, actual: Length): [own: Length, other: Length] =>
  systemOfQuantity(actual) === 'metric' ? [metric(), customary()] : [customary(), metric()];

/** For what holds from a limit on: the limit that a value reaches, of its own family where it does. */
export function reached(pair: Paired, actual: Length): Length | undefined {
  return inFamily(pair, actual).find((limit) => !actual.lessThan(limit));
}

/** For what holds above a limit, which is itself allowed under either name: the limit that a value exceeds. */
export function exceeded(pair: Paired, actual: Length): Length | undefined {
  const limits = inFamily(pair, actual);
  return limits.every((limit) => actual.greaterThan(limit)) ? limits[0] : undefined;
}
