/**
 * Units by their definitions, as fractions of SI units: 1 in = 0.0254 m, 1 lb = 0.453 592 37 kg, 1 US gallon =
 * 231 in3, standard gravity 9.806 65 m/s2, an acre of 43,560 ft2.
 */
import { Rational } from './rational';

const r = Rational.parse;
const [IN, FT, YD] = [r('0.0254'), r('0.3048'), r('0.9144')] as const;
const LB = r('0.45359237');
const LBF = LB.times(r('9.80665'));
const cube = (a: Rational): Rational => a.times(a).times(a);
const HOUR = Rational.of(3600);
const GALLON = cube(IN).times(231);

export type Kind =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'density'
  | 'mass-per-length'
  | 'mass-per-area'
  | 'slope'
  | 'angle'
  | 'time'
  | 'speed'
  | 'force'
  | 'pressure'
  | 'volume-rate'
  | 'ratio'
  | 'count';

/** Each unit in SI; slopes and ratios as plain numbers, angles in degrees. */
export const UNITS: Readonly<Record<Kind, Readonly<Record<string, Rational>>>> = {
  length: {
    in: IN,
    ft: FT,
    yd: YD,
    mi: FT.times(5280),
    mm: r('0.001'),
    cm: r('0.01'),
    m: r('1'),
    km: r('1000'),
  },
  area: {
    in2: IN.squared(),
    ft2: FT.squared(),
    yd2: YD.squared(),
    acre: FT.squared().times(43_560),
    mm2: r('0.000001'),
    cm2: r('0.0001'),
    m2: r('1'),
  },
  volume: {
    in3: cube(IN),
    ft3: cube(FT),
    yd3: cube(YD),
    gal: GALLON,
    qt: GALLON.over(4),
    'fl oz': GALLON.over(128),
    cm3: r('0.000001'),
    mL: r('0.000001'),
    L: r('0.001'),
    m3: r('1'),
  },
  mass: {
    oz: LB.over(16),
    lb: LB,
    ton: LB.times(2000),
    longton: LB.times(2240),
    g: r('0.001'),
    kg: r('1'),
    tonne: r('1000'),
  },
  density: {
    pcf: LB.over(cube(FT)),
    'lb/yd3': LB.over(cube(YD)),
    'ton/yd3': LB.times(2000).over(cube(YD)),
    'kg/m3': r('1'),
  },
  'mass-per-length': { 'lb/ft': LB.over(FT), 'kg/m': r('1') },
  'mass-per-area': {
    'lb/ft2': LB.over(FT.squared()),
    'lb/yd2': LB.over(YD.squared()),
    'kg/m2': r('1'),
    'oz/yd2': LB.over(16).over(YD.squared()),
    'g/m2': r('0.001'),
  },
  slope: { 'in/ft': Rational.of(1, 12), '%': r('0.01'), 'mm/m': r('0.001') },
  angle: { deg: r('1') },
  time: { s: r('1'), min: r('60'), h: HOUR, day: HOUR.times(24) },
  speed: {
    mph: FT.times(5280).over(HOUR),
    'ft/s': FT,
    'km/h': r('1000').over(HOUR),
    'm/s': r('1'),
    'in/h': IN.over(HOUR),
    'mm/h': r('0.001').over(HOUR),
    'ft/h': FT.over(HOUR),
    'm/h': r('1').over(HOUR),
  },
  force: { lbf: LBF, kip: LBF.times(1000), N: r('1'), kN: r('1000') },
  pressure: {
    psi: LBF.over(IN.squared()),
    ksi: LBF.times(1000).over(IN.squared()),
    psf: LBF.over(FT.squared()),
    ksf: LBF.times(1000).over(FT.squared()),
    kPa: r('1000'),
    MPa: r('1000000'),
  },
  'volume-rate': {
    'yd3/h': cube(YD).over(HOUR),
    'm3/h': r('1').over(HOUR),
    'gal/min': GALLON.over(60),
    'L/s': r('0.001'),
    'ft3/s': cube(FT),
  },
  ratio: { '%': r('0.01'), ':1': r('1') },
  count: { each: r('1') },
};

/** A figure of the library, or any other exact pair, in SI. */
export function inSi(value: string, unit: string, kind: Kind): Rational {
  const factor = UNITS[kind][unit];
  if (!factor) throw new RangeError(`no unit ${unit} of ${kind}`);
  return Rational.parse(value).times(factor);
}
