/**
 * Slump as it is ordered: the most, a target, or a class of EN 206; and whether a load comes with it.
 *
 * What a load may be off is that of ASTM C94 for the most and for a target, and that of EN 206 for a single test of a
 * class, 10 mm below and 20 mm above; both from memory. A cone is 300 mm high, which ends the highest class.
 */
import { inSystem } from '../quantity/like-unit';
import { length } from '../quantity/make';
import { greaterOfPair, type Paired, paired, sameInBoth } from '../quantity/paired';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import { SLUMP_TOLERANCE } from './sources';

type Length = Quantity<'length'>;

/** A class of consistence by slump, as EN 206 has it. */
export type SlumpClass = 'S1' | 'S2' | 'S3' | 'S4' | 'S5';

const BOUNDS: Record<SlumpClass, readonly [least: number, most: number]> = {
  S1: [10, 40],
  S2: [50, 90],
  S3: [100, 150],
  S4: [160, 210],
  S5: [220, 300],
};

/** Every class, for fields. */
export const SLUMP_CLASSES = /*#__PURE__*/ Object.keys(BOUNDS) as readonly SlumpClass[];

const mm = (n: number): Length => length(`${n} mm`);

/** From where to where the slumps of a class go. */
export const slumpsOf = (name: SlumpClass, system: System): readonly [least: Length, most: Length] =>
  BOUNDS[name].map((n) => inSystem(mm(n), system)) as [Length, Length];

const STIFF = /*#__PURE__*/ paired('length', '2 in', '50 mm');
const MEDIUM = /*#__PURE__*/ paired('length', '3 in', '75 mm');
const WET = /*#__PURE__*/ paired('length', '4 in', '100 mm');
const NONE = /*#__PURE__*/ paired('length', '0 in', '0 mm');
const HALF = /*#__PURE__*/ paired('length', '1/2 in', '15 mm');
const ONE = /*#__PURE__*/ paired('length', '1 in', '25 mm');
const ONE_AND_HALF = /*#__PURE__*/ paired('length', '1-1/2 in', '40 mm');
const TWO_AND_HALF = /*#__PURE__*/ paired('length', '2-1/2 in', '65 mm');

/** What was ordered of the slump; that of a class is its highest. */
export interface SlumpOrder {
  readonly slump: Length | undefined;
  readonly slumpIs: 'most' | 'target' | undefined;
  readonly slumpClass: SlumpClass | undefined;
}

type Off = Paired<'length'>;

/** So much stiffer, and so much wetter, a load may come that was ordered by a number. */
function offOf(slump: Length, isTarget: boolean): readonly [below: Off, above: Off] {
  if (!isTarget) return [MEDIUM.exceededBy(slump) ? TWO_AND_HALF : ONE_AND_HALF, NONE];
  const off = WET.exceededBy(slump) ? ONE_AND_HALF : STIFF.exceededBy(slump) ? ONE : HALF;
  return [off, off];
}

/** Whether a load has the slump that was ordered. */
export function heedSlump(
  slump: Length,
  { slump: ordered, slumpIs, slumpClass }: SlumpOrder,
  pad: Pad,
): void {
  if (!ordered) return;
  if (!slumpIs && !slumpClass && slump.greaterThan(ordered)) {
    pad.assume({
      name: 'ordered.slumpIs',
      value: 'most',
      because: 'what is on an order is taken to be the most that may come',
      override: 'Give slumpIs as target where more may come too, or the slumpClass',
      source: SLUMP_TOLERANCE,
    });
  }
  const [below, above] = slumpClass
    ? ([10, 20].map((n) => sameInBoth(mm(n))) as [Off, Off])
    : offOf(ordered, slumpIs === 'target');
  const least = slumpClass ? slumpsOf(slumpClass, systemOfQuantity(slump))[0] : ordered;
  if (slump.greaterThan(ordered.plus(greaterOfPair(above)))) {
    pad.caution(cautions.highSlump('delivered', ordered.plus(above.like(ordered)), slump));
  } else if (slump.lessThan(least.minus(greaterOfPair(below)))) {
    const limit = least.minus(below.like(least));
    pad.caution(
      slumpClass
        ? cautions.lowSlumpOfClass(limit, slump, slumpClass)
        : cautions.lowSlump(limit, slump, ordered),
    );
  }
}
