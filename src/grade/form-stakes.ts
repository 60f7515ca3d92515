/** What to mark at each stake, and what the cuts and fills come to. */
import { ZERO } from '../quantity/decimal';
import { canonicalValue, type Quantity, quantityOf } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import { small, toMark } from './marks';
import type { Elevation } from './shapes';
import type { ParsedStake } from './sought-plane';
import { metersAs } from './spots';

type Length = Quantity<'length'>;
type Volume = Quantity<'volume'>;

/** What to mark at a stake. */
export interface StakeFigure {
  /** Name of the stake. */
  readonly name: string;
  /** Elevation of the form, exact. */
  readonly elevation: Quantity<'length'>;
  /** How far the form lies below the stake's top. */
  readonly down?: Quantity<'length'>;
  /** How far it lies above the stake's top, where the stake is too short. */
  readonly up?: Quantity<'length'>;
  /** `down` or `up` to the nearest 1/16 in or mm. */
  readonly mark?: Quantity<'length'>;
  /** How far the ground is to come down. */
  readonly cut?: Quantity<'length'>;
  /** How far the ground is to come up. */
  readonly fill?: Quantity<'length'>;
}

/** What to mark at one stake. */
export function stakeFigure(stake: ParsedStake, elevation: Elevation, system: System, pad: Pad): StakeFigure {
  const { name, top: t, ground } = stake;
  const e = metersAs(elevation(canonicalValue(stake.x), canonicalValue(stake.y)), system);
  const below =
    t && pad.step(say`form below the top of stake ${{ name }}`, 'd = t − e', { t, e }, small(t.minus(e)));
  const over = ground && small(e.minus(ground));
  const down = below && below.sign() >= 0;
  return {
    name,
    elevation: e,
    ...(below ? { [down ? 'down' : 'up']: below.abs(), mark: toMark(below.abs()) } : {}),
    ...(over ? { [over.sign() < 0 ? 'cut' : 'fill']: over.abs() } : {}),
  };
}

/** The sum of all cuts or fills. */
export const sumOf = (stakes: readonly StakeFigure[], key: 'cut' | 'fill', system: System): Length =>
  stakes.reduce((total, s) => (s[key] ? total.plus(s[key]) : total), small(metersAs(ZERO, system)));

/** Cut and fill by volume, where stakes stand for areas. */
export function volumesOf(
  given: readonly ParsedStake[],
  stakes: readonly StakeFigure[],
  system: System,
): { readonly fillVolume?: Volume; readonly cutVolume?: Volume } {
  if (!given.some(({ area }) => area)) return {};
  const total = (key: 'cut' | 'fill'): Volume => {
    const parts = given.flatMap(({ area }, i) => {
      const height = stakes[i]?.[key];
      return area && height ? [area.times(height)] : [];
    });
    return parts.reduce((a, b) => a.plus(b), quantityOf('volume', ZERO, system));
  };
  return { fillVolume: total('fill'), cutVolume: total('cut') };
}
