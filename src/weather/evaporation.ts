/** The rate at which water leaves fresh concrete, by one equation of temperatures or by pressures of vapor. */

import { Decimal } from '../quantity/decimal';
import { numberOf, pure } from '../quantity/numbers';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { Pad } from '../reckoning/pad';
import { above, type Difference, ONE_DEGREE, type Temperature } from './degrees';
import type { EvaporationRateFigures } from './drying-figures';
import { saturation } from './vapor';

type Drying = Quantity<'evaporation'>;
type Speed = Quantity<'speed'>;
type Ratio = Quantity<'ratio'>;

/** What the drying is made of. */
export interface Conditions {
  readonly concrete: Temperature;
  readonly air: Temperature;
  readonly humidity: Ratio;
  /** Near the surface. */
  readonly wind: Speed;
}

/** The constants of both equations, as each unit system prints them. */
interface Constants {
  readonly zero: string;
  readonly speed: string;
  readonly unit: string;
  readonly still: string;
  readonly perSpeed: string;
  readonly vapor: string;
  readonly pressure: string;
  readonly vaporPerSpeed: string;
}

const CONSTANTS: Readonly<Record<System, Constants>> = {
  customary: {
    zero: '0 degF',
    speed: '1 mph',
    unit: '0.000001 lb/ft2/h',
    still: '1:1',
    perSpeed: '0.4:1',
    vapor: '0.44 lb/ft2/h',
    pressure: '1 psi',
    vaporPerSpeed: '0.096:1',
  },
  metric: {
    zero: '-18 degC',
    speed: '1 km/h',
    unit: '0.000005 kg/m2/h',
    still: '4:1',
    perSpeed: '1:1',
    vapor: '0.315 kg/m2/h',
    pressure: '1 kPa',
    vaporPerSpeed: '0.06:1',
  },
};

const pairedBy = <D extends 'speed' | 'evaporation' | 'ratio' | 'pressure' | 'temperature'>(
  dimension: D,
  name: keyof Constants,
) => paired(dimension, CONSTANTS.customary[name], CONSTANTS.metric[name]);

const ZERO = /*#__PURE__*/ pairedBy('temperature', 'zero');
const ONE_SPEED = /*#__PURE__*/ pairedBy('speed', 'speed');
const UNIT = /*#__PURE__*/ pairedBy('evaporation', 'unit');
const STILL = /*#__PURE__*/ pairedBy('ratio', 'still');
const PER_SPEED = /*#__PURE__*/ pairedBy('ratio', 'perSpeed');
const VAPOR = /*#__PURE__*/ pairedBy('evaporation', 'vapor');
const ONE_PRESSURE = /*#__PURE__*/ pairedBy('pressure', 'pressure');
const VAPOR_PER_SPEED = /*#__PURE__*/ pairedBy('ratio', 'vaporPerSpeed');
const VAPOR_STILL = '0.253';
const POWER = '2.5';

/** To the power of 2.5, by a root, which costs a tenth of a power. */
function raisedTo(d: Difference, u: Difference): Decimal {
  const n = numberOf(d.over(u));
  return n.times(n).times(n.sqrt());
}

/** No drying at all, below which a measure wets the surface and does no more good. */
const NO_DRYING = /*#__PURE__*/ paired('evaporation', '0 lb/ft2/h', '0 kg/m2/h');

/** The one equation; what is taken against drying brings it to nothing at most. */
export function byOneEquation(
  what: string,
  { concrete, air, humidity: r, wind: V }: Conditions,
  pad: Pad,
  measure = false,
): Drying {
  const z = ZERO.as(pad.system);
  const [C, A] = [above(z, concrete), above(z, air)];
  const [u, v, e] = [ONE_DEGREE.as(pad.system), ONE_SPEED.as(pad.system), UNIT.as(pad.system)];
  const [s, k] = [STILL.as(pad.system), PER_SPEED.as(pad.system)];
  const drive = raisedTo(C, u).minus(raisedTo(A, u).times(numberOf(r)));
  const wind = numberOf(s).plus(numberOf(V.over(v)).times(numberOf(k)));
  const E = e.times(pure(drive.times(wind)));
  const formula = `e × (((T − z) ÷ u)^${POWER} − r × ((A − z) ÷ u)^${POWER}) × (s + k × V ÷ v)`;
  const values = { e, T: concrete, A: air, z, u, r, s, k, V, v };
  if (!measure || E.sign() >= 0) return pad.step(what, `E = ${formula}`, values, E);
  const o = NO_DRYING.as(pad.system);
  return pad.step(what, `E = max(${formula}, o)`, { ...values, o }, o);
}

type ByPressures = Pick<EvaporationRateFigures, 'vaporAtSurface' | 'vaporInAir' | 'byVaporPressure'>;

/** By the pressures of vapor at the surface and in the air. */
export function byPressures({ concrete, air, humidity: r, wind: V }: Conditions, pad: Pad): ByPressures {
  const e = saturation('vapor at the surface', concrete, pad);
  const m = saturation('vapor in the air, were it saturated', air, pad);
  const a = pad.step('vapor in the air', 'a = r × m', { r, m }, m.times(r));
  const [c, p, v] = [VAPOR, ONE_PRESSURE, ONE_SPEED].map((pair) => pair.as(pad.system)) as [
    Drying,
    Quantity<'pressure'>,
    Speed,
  ];
  const k = VAPOR_PER_SPEED.as(pad.system);
  const wind = new Decimal(VAPOR_STILL).plus(numberOf(k).times(numberOf(V.over(v))));
  const drive = numberOf(e.minus(a).over(p));
  const byVaporPressure = pad.step(
    'drying by the pressures of vapor',
    `W = c × ((e − a) ÷ p) × (${VAPOR_STILL} + k × V ÷ v)`,
    { c, e, a, p, k, V, v },
    c.times(pure(drive.times(wind))),
  );
  return { vaporAtSurface: e, vaporInAir: a, byVaporPressure };
}
