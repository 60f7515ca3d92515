/** What a mat of bars is laid by where the plans do not say: cover, stock length, lap, supports. */

import { greaterOf } from '../quantity/greater';
import { constant } from '../quantity/make';
import { type Paired, paired } from '../quantity/paired';
import { Quantity, systemOfQuantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { type AnyBarSize, diameterOf } from './bars';
import { EARTH_COVER } from './cover';
import { barSupportsFarApart, shortLap } from './mat-cautions';
import { ACI_318_COVER, VCC_LAP } from './sources';

type Length = Quantity<'length'>;

/** Bars farther apart do little. */
export const WIDE = /*#__PURE__*/ paired('length', '18 in', '450 mm');
const STOCK = /*#__PURE__*/ paired('length', '20 ft', '6 m');
const LEAST_LAP = /*#__PURE__*/ paired('length', '12 in', '300 mm');
const LAP_DIAMETERS = constant(() => wholeNumber(40));
/** Bars across corners that cracks start from. */
export const CORNER_LENGTH = /*#__PURE__*/ paired('length', '4 ft', '1.2 m');
/** Under #4 and thinner, and under thicker bars. */
const NEAR_SUPPORTS = /*#__PURE__*/ paired('length', '3 ft', '0.9 m');
const FAR_SUPPORTS = /*#__PURE__*/ paired('length', '4 ft', '1.2 m');
/** #4 is 12.7 mm. */
const THIN_BAR = /*#__PURE__*/ paired('length', '0.5 in', '13 mm');

/** The first length within an input, which says in what units the job is written. */
export function firstLength(input: unknown): Length | undefined {
  if (input instanceof Quantity) return input.dimension === 'length' ? (input as Length) : undefined;
  if (typeof input !== 'object' || input === null) return undefined;
  for (const value of Object.values(input)) {
    const found = firstLength(value);
    if (found) return found;
  }
  return undefined;
}

/** Cover at the edges, given or usual. */
export function coverOf(given: Length | undefined, like: Length, pad: Pad): Length {
  if (given) return given;
  pad.assume({
    name: 'cover',
    value: EARTH_COVER,
    because: 'concrete cast against the ground',
    override: 'Give cover from the plans',
    source: ACI_318_COVER,
  });
  return EARTH_COVER.like(like);
}

/** Stock length, given or usual. */
export function stockOf(given: Length | undefined, like: Length, pad: Pad): Length {
  if (given) return given;
  pad.assume({
    name: 'stockLength',
    value: STOCK,
    because: 'a stock length of bar that most yards carry',
    override: 'Give stockLength as your yard sells it',
    source: { kind: 'common-practice', title: 'Stock lengths of bar', fromMemory: true },
  });
  return STOCK.like(like);
}

/** Lap, given or usual; a short one is cautioned about. */
export function lapOf(given: Length | undefined, bar: AnyBarSize, like: Length, pad: Pad): Length {
  const [d, c] = [diameterOf(bar), LEAST_LAP.like(like)];
  const usual = greaterOf(d.times(LAP_DIAMETERS()), c).in(systemOfQuantity(like) === 'metric' ? 'mm' : 'in');
  if (given) {
    if (given.lessThan(usual)) pad.caution(shortLap(usual, given));
    return given;
  }
  pad.step('lap', 'l = max(40 × d, c)', { d, c }, usual);
  pad.assume({
    name: 'lap',
    value: { reckoned: usual },
    because: say`40 bar diameters, at least ${{ least: LEAST_LAP }}`,
    override: 'Give lap from the plans; the engineer governs',
    source: VCC_LAP,
  });
  return usual;
}

/** How far apart chairs hold bars of a size that people step on: some 75 diameters. */
export const supportsFor = (bar: AnyBarSize): Paired<'length'> =>
  THIN_BAR.exceededBy(diameterOf(bar)) ? FAR_SUPPORTS : NEAR_SUPPORTS;

/** Distance between supports, given or usual; too great a one is cautioned about. */
export function supportsOf(given: Length | undefined, bar: AnyBarSize, like: Length, pad: Pad): Length {
  const usual = supportsFor(bar);
  if (given) {
    const limit = usual.like(given);
    if (usual.exceededBy(given)) pad.caution(barSupportsFarApart(limit, given));
    return given;
  }
  pad.assume({
    name: 'supports',
    value: usual,
    because: 'chairs that hold bars of this size when people walk on them',
    override: 'Give supports',
    source: COMMON_PRACTICE,
  });
  return usual.like(like);
}
