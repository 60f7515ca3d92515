/**
 * The pressure of fresh concrete on forms, by the two equations of ACI 347 and by the full head.
 *
 * Walls that rise slower than 7 ft/h in placements to 14 ft, and columns: `p = K × G × (a + b × (R ÷ r) ÷ (T ÷ t))`,
 * with 150 psf and 9,000 psf for a rise of 1 ft/h at 1 °F above 0 °F. Other walls to 15 ft/h:
 * `p = K × G × (a + (c + d × (R ÷ r)) ÷ (T ÷ t))`, with 43,400 and 2,800 psf: at 7 ft/h both say the same. Never less
 * than 600 psf × K, never more than the full head `w × h`, which is all there is above 15 ft/h or 7 in of slump. In
 * metric jobs the same constants are written in kPa, m/h and °C; the metric edition rounds them to 7.2, 785, 1156
 * and 244.
 */

import { Decimal } from '../quantity/decimal';
import { pressure, temperature } from '../quantity/make';
import { numberOf, pure } from '../quantity/numbers';
import { Paired, paired } from '../quantity/paired';
import { canonicalValue, newQuantity, type Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { type Unit, unitOf } from '../quantity/units';
import type { Pad } from '../reckoning/pad';
import { above, ONE_DEGREE, type Temperature } from '../weather/degrees';

type Pressure = Quantity<'pressure'>;
type Speed = Quantity<'speed'>;
type Ratio = Quantity<'ratio'>;

/** So many psf for each `1 ft/h`, or `1 m/h`, of the one; and for each degree over in the other. */
function constantOf(psf: string, perSpeed: boolean, perDegree: boolean): Paired<'pressure'> {
  return new Paired(() => {
    const customary = pressure(`${psf} psf`);
    let n = canonicalValue(customary);
    if (perSpeed) n = n.div('0.3048');
    // Degrees stand below the line: one of Celsius is 1.8 of Fahrenheit.
    if (perDegree) n = n.div('1.8');
    return { customary, metric: newQuantity('pressure', n, unitOf('pressure', 'kPa') as Unit) };
  });
}

const A = constantOf('150', false, false);
const B = constantOf('9000', true, true);
const C = constantOf('43400', false, true);
const D = constantOf('2800', true, true);
/** The least that forms are made for. */
export const LEAST = /*#__PURE__*/ constantOf('600', false, false);

const ONE_RISE = paired('speed', '1 ft/h', '1 m/h');
const ZERO = new Paired(() => ({
  customary: temperature('0 degF'),
  metric: newQuantity('temperature', new Decimal(0), unitOf('temperature', 'degC') as Unit),
}));

/** Where the equations pass into each other, and where they end. */
export const SLOW = /*#__PURE__*/ paired('speed', '7 ft/h', '2.1 m/h');
export const FAST = /*#__PURE__*/ paired('speed', '15 ft/h', '4.5 m/h');
export const LOW = /*#__PURE__*/ paired('length', '14 ft', '4.2 m');

/** What the concrete is, as the equations have it. */
export interface Fresh {
  /** By its density. */
  readonly unitWeight: Ratio;
  /** By its cement and admixtures. */
  readonly chemistry: Ratio;
  readonly temperature: Temperature;
}

/** Which of the equations speaks for a placement. */
export type Equation = 'slow' | 'fast' | 'full head';

interface Symbols {
  readonly K: Ratio;
  readonly G: Ratio;
  readonly a: Pressure;
  readonly T: Temperature;
  readonly z: Temperature;
  readonly t: Quantity<'temperature-difference'>;
  readonly r: Speed;
}

function symbols({ unitWeight: K, chemistry: G, temperature: T }: Fresh, system: System): Symbols {
  return {
    K,
    G,
    a: A.as(system),
    T: T.in(system === 'metric' ? 'degC' : 'degF'),
    z: ZERO.as(system),
    t: ONE_DEGREE.as(system),
    r: ONE_RISE.as(system),
  };
}

/** Degrees above 0 °F, as a number of the system's degrees. */
const warmth = ({ T, z, t }: Symbols): Decimal => numberOf(above(z, T).over(t));

/** The pressure of an equation at a rise, before least and most. */
export function pressureAt(equation: 'slow' | 'fast', R: Speed, fresh: Fresh, pad: Pad): Pressure {
  const s = symbols(fresh, pad.system);
  const { K, G, a, r } = s;
  const heat = warmth(s);
  const rise = numberOf(R.over(r));
  if (equation === 'slow') {
    const b = B.as(pad.system);
    const p = a
      .plus(b.times(pure(rise.div(heat))))
      .times(K)
      .times(G);
    return pad.step(
      'pressure by the equation',
      'p = K × G × (a + b × (R ÷ r) ÷ ((T − z) ÷ t))',
      { ...s, b, R },
      p,
    );
  }
  const [c, d] = [C.as(pad.system), D.as(pad.system)];
  const p = a
    .plus(c.plus(d.times(pure(rise))).times(pure(new Decimal(1).div(heat))))
    .times(K)
    .times(G);
  return pad.step(
    'pressure by the equation for fast placing',
    'p = K × G × (a + (c + d × (R ÷ r)) ÷ ((T − z) ÷ t))',
    { ...s, c, d, R },
    p,
  );
}

/** The rise at which an equation comes to a pressure; below nothing where it never does. */
export function riseAt(equation: 'slow' | 'fast', P: Pressure, fresh: Fresh, pad: Pad): Speed {
  const s = symbols(fresh, pad.system);
  const { K, G, a, r } = s;
  const heat = pure(warmth(s));
  const bare = P.over(K).over(G).minus(a).times(heat);
  if (equation === 'slow') {
    const b = B.as(pad.system);
    return pad.step(
      'rise that brings that pressure',
      'R = r × (P ÷ K ÷ G − a) × ((T − z) ÷ t) ÷ b',
      { ...s, b, P },
      r.times(bare.over(b)),
    );
  }
  const [c, d] = [C.as(pad.system), D.as(pad.system)];
  return pad.step(
    'rise that brings that pressure, placing fast',
    'R = r × ((P ÷ K ÷ G − a) × ((T − z) ÷ t) − c) ÷ d',
    { ...s, c, d, P },
    r.times(bare.minus(c).over(d)),
  );
}

const ONE_WEIGHT = paired('mass-per-area', '1 lb/ft2', '1 kg/m2');
/** What a weight of one on a surface of one presses with: standard gravity. */
const ONE_PRESS = new Paired(() => ({
  customary: pressure('1 psf'),
  metric: pressure('0.00980665 kPa'),
}));

/** The full head: as if the concrete were a fluid to the top. */
export function headOf(w: Quantity<'density'>, h: Quantity<'length'>, pad: Pad): Pressure {
  const [m, q] = [ONE_WEIGHT.as(pad.system), ONE_PRESS.as(pad.system)];
  return pad.step('full head', 'f = q × (w × h ÷ m)', { q, w, h, m }, q.times(w.times(h).over(m)));
}

/** How high a fluid of that density stands to press so. */
export function depthOf(P: Pressure, w: Quantity<'density'>, pad: Pad): Quantity<'length'> {
  const [m, q] = [ONE_WEIGHT.as(pad.system), ONE_PRESS.as(pad.system)];
  const y = m
    .times(P.over(q))
    .over(w)
    .in(pad.system === 'metric' ? 'm' : 'ft');
  return pad.step('depth of full head', 'y = m × (P ÷ q) ÷ w', { m, P, q, w }, y);
}
