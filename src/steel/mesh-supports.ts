/**
 * How far apart chairs hold mesh, by its wire: thin wire sags under foot.
 *
 * Published for all mesh: 2 ft to 6 ft. By wire, as the Wire Reinforcement Institute is commonly quoted: to 3 ft
 * under wire below W4, to 4 ft under W4 to W8, to 6 ft under W9 and larger at 12 in and more.
 */

import { area, constant, length } from '../quantity/make';
import { type Paired, paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import type { Caution } from '../reckoning/result';
import { say } from '../reckoning/words';
import { WIRE_SUPPORTS_BY_SIZE } from './mat-sources';
import type { WireStyle } from './wire';

type Length = Quantity<'length'>;

const LIGHT = /*#__PURE__*/ paired('length', '3 ft', '0.9 m');
const MEDIUM = /*#__PURE__*/ paired('length', '4 ft', '1.2 m');
const HEAVY = /*#__PURE__*/ paired('length', '6 ft', '1.8 m');
const NEAR = /*#__PURE__*/ paired('length', '2 ft', '0.6 m');
/** W4 is 4 hundredths of a square inch; stock wire is made a hair below. */
const MEDIUM_WIRE = constant(() => area('0.039 in2'));
const HEAVY_WIRE = constant(() => area('0.09 in2'));
const WIDE = constant(() => length('300 mm'));

const thinner = ({ along, across }: WireStyle): Quantity<'area'> =>
  along.wire.lessThan(across.wire) ? along.wire : across.wire;

/** The most that supports may be apart under mesh of a style; under mesh of any style without one. */
export function meshSupportsFor(style: WireStyle | undefined): Paired<'length'> {
  if (!style) return HEAVY;
  const wire = thinner(style);
  if (wire.lessThan(MEDIUM_WIRE())) return LIGHT;
  const open = !style.along.spacing.lessThan(WIDE()) && !style.across.spacing.lessThan(WIDE());
  return open && !wire.lessThan(HEAVY_WIRE()) ? HEAVY : MEDIUM;
}

const meshSupportsFarApart = (limit: Length, actual: Length): Caution => ({
  code: 'supports-far-apart',
  severity: 'warning',
  ...say`supports farther apart than ${{ limit }} let mesh of this wire sag to the ground under foot; set more chairs`,
  limit,
  actual,
  source: WIRE_SUPPORTS_BY_SIZE,
});

/** Distance between supports, given or usual; too great a one is cautioned about. */
export function meshSupportsOf(
  given: Length | undefined,
  style: WireStyle | undefined,
  like: Length,
  pad: Pad,
): Length {
  const most = meshSupportsFor(style);
  if (given) {
    if (most.exceededBy(given)) pad.caution(meshSupportsFarApart(most.like(given), given));
    return given;
  }
  const light = style !== undefined && most === LIGHT;
  const apart = light ? NEAR : LIGHT;
  pad.assume({
    name: 'supports',
    value: apart,
    because: light ? 'chairs under wire below W4' : 'chairs that hold mesh when people walk on it',
    override: 'Give supports',
    source: WIRE_SUPPORTS_BY_SIZE,
  });
  return apart.like(like);
}
