/**
 * What water does that is added to the drum: slump, and strength.
 *
 * A gallon in a cubic yard, or 5 L in a cubic meter, raises the slump by about an inch, 25 mm, and costs 150 to 200 psi,
 * 1 to 1.4 MPa; where the air it brings is counted too, up to 400 psi. It goes into what is left in the drum, not into
 * what was batched.
 */
import { nearest } from '../quantity/nearest';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';

type Volume = Quantity<'volume'>;

const DOSE = paired('volume', '1 gal', '5 L');
const IN_EACH = paired('volume', '1 yd3', '1 m3');
const SLUMP = paired('length', '1 in', '25 mm');
/** To the nearest of this a slump is read off the cone and told. */
const READ_TO = paired('length', '1/4 in', '5 mm');
const LOSS = [paired('pressure', '150 psi', '1 MPa'), paired('pressure', '400 psi', '2.8 MPa')] as const;

/** What an addition of water does. */
export interface WaterEffect {
  /** The slump after it, where the slump is known, to the nearest 1/4 in or 5 mm that a slump is read to. */
  readonly slump?: Quantity<'length'>;
  /** Strength lost, the lower end. */
  readonly leastLoss: Quantity<'pressure'>;
  /** Strength lost, the upper end. */
  readonly mostLoss: Quantity<'pressure'>;
}

function readOff(m: Quantity<'length'>, pad: Pad): Quantity<'length'> {
  const q = READ_TO.as(pad.system);
  return pad.step('as a slump is read', 'M = floor(m ÷ q + 1 ÷ 2) × q', { m, q }, nearest(m, q));
}

/** What water does to the concrete that is left in the drum. */
export function effectOf(
  water: Volume,
  left: Volume,
  slump: Quantity<'length'> | undefined,
  pad: Pad,
): WaterEffect {
  const [D, E, k] = [DOSE, IN_EACH, SLUMP].map((pair) => pair.as(pad.system)) as [
    Volume,
    Volume,
    Quantity<'length'>,
  ];
  const values = { a: water, l: left };
  const r = pad.step('water for the concrete left', 'r = a ÷ l', values, water.over(left));
  const u = pad.step('the dose that the effects are told for', 'u = D ÷ E', { D, E }, D.over(E));
  const n = pad.step('doses', 'n = r ÷ u', { r, u }, r.over(u));
  const [p, q] = LOSS.map((pair) => pair.as(pad.system)) as [Quantity<'pressure'>, Quantity<'pressure'>];
  const after =
    slump &&
    readOff(pad.step('slump after', 'm = s + n × k', { s: slump, n, k }, slump.plus(k.times(n))), pad);
  return {
    ...(after ? { slump: after } : {}),
    leastLoss: pad.step('strength lost, at least', 'f = n × p', { n, p }, p.times(n)),
    mostLoss: pad.step('strength lost, at most', 'g = n × q', { n, q }, q.times(n)),
  };
}

/** Water that brings a slump to another; nothing of it where it is there. */
export function roomBySlump(
  left: Volume,
  slump: Quantity<'length'>,
  most: Quantity<'length'>,
  pad: Pad,
): Volume {
  const [D, E, k] = [DOSE, IN_EACH, SLUMP].map((pair) => pair.as(pad.system)) as [
    Volume,
    Volume,
    Quantity<'length'>,
  ];
  const room = D.times(most.minus(slump).over(k)).times(left.over(E));
  if (room.sign() <= 0) return room.minus(room);
  return pad.step(
    'water to the slump that was ordered',
    'S = D × ((o − s) ÷ k) × (l ÷ E)',
    { D, o: most, s: slump, k, l: left, E },
    room,
  );
}
