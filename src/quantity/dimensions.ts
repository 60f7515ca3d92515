/**
 * The closed list of dimensions and what multiplies with what.
 *
 * Each dimension is kept in one canonical unit, chosen so that both the customary and the metric
 * units of the trade are finite decimals in it. For length, area, volume, mass, time and force that
 * is the SI unit. For the others the SI unit would not do (1 lb/ft3 has no finite form in kg/m3),
 * so a mixed unit is used, such as kg/yd3.
 */
import { Decimal } from './decimal';

/** What a quantity measures. The list is closed. */
export type Dimension =
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
  | 'temperature'
  | 'temperature-difference'
  | 'temperature-time'
  | 'speed'
  | 'force'
  | 'pressure'
  | 'volume-rate'
  | 'evaporation'
  | 'ratio'
  | 'count'
  | 'money';

/** Canonical value of one SI unit, per dimension. */
export const CANONICAL_PER_SI: Record<Dimension, string> = {
  length: '1', // m
  area: '1', // m2
  volume: '1', // m3
  mass: '1', // kg
  density: '0.764554857984', // kg/yd3
  'mass-per-length': '0.3048', // kg/ft
  'mass-per-area': '0.83612736', // kg/yd2
  slope: '12', // in/ft
  angle: '1', // degree: never mixed with SI radians in a product
  time: '1', // s
  temperature: '1', // degF: a point on a scale, never multiplied
  'temperature-difference': '1.8', // F degrees
  'temperature-time': '0.0005', // F degrees × h
  speed: '3600', // m/h
  force: '1', // N
  pressure: '0.09290304', // N/ft2
  'volume-rate': '3600', // m3/h
  evaporation: '334.450944', // kg/ft2/h
  ratio: '1',
  count: '1',
  money: '1', // in its own currency
};

/** True for the name of a dimension. */
export const isDimension = (x: unknown): x is Dimension =>
  typeof x === 'string' && Object.hasOwn(CANONICAL_PER_SI, x);

/** `[a, b, c]`: a × b = c. The only products there are, besides those with a ratio or a count. */
const PRODUCTS = [
  ['length', 'length', 'area'],
  ['length', 'area', 'volume'],
  ['length', 'slope', 'length'],
  ['length', 'mass-per-length', 'mass'],
  ['length', 'mass-per-area', 'mass-per-length'],
  ['length', 'density', 'mass-per-area'],
  ['area', 'mass-per-area', 'mass'],
  ['area', 'density', 'mass-per-length'],
  ['area', 'speed', 'volume-rate'],
  ['area', 'pressure', 'force'],
  ['volume', 'density', 'mass'],
  ['time', 'temperature-difference', 'temperature-time'],
  ['time', 'speed', 'length'],
  ['time', 'volume-rate', 'volume'],
  ['time', 'evaporation', 'mass-per-area'],
] as const satisfies readonly (readonly [Dimension, Dimension, Dimension])[];

type Triple = (typeof PRODUCTS)[number];

/** Dimensions that scale anything without changing what it is. */
export type Scalar = 'ratio' | 'count';

/** Dimensions that may not be scaled or multiplied: points on a scale. */
type Point = 'temperature';

/** The dimension of a product; `never` where there is none. */
export type Product<A extends Dimension, B extends Dimension> = A extends Point
  ? never
  : B extends Point
    ? never
    : [A, B] extends [Scalar, Scalar]
      ? 'ratio' extends A
        ? B
        : A
      : B extends Scalar
        ? A
        : A extends Scalar
          ? B
          : Extract<Triple, readonly [A, B, Dimension]>[2] | Extract<Triple, readonly [B, A, Dimension]>[2];

/** The dimension of a quotient; `never` where there is none. */
export type Quotient<C extends Dimension, B extends Dimension> = C extends Point
  ? never
  : C extends B
    ? 'ratio'
    : B extends Scalar
      ? C
      : Extract<Triple, readonly [Dimension, B, C]>[0] | Extract<Triple, readonly [B, Dimension, C]>[1];

/** The dimensions that may stand on the right of `a.times(b)`. */
export type Multiplier<A extends Dimension> = {
  [B in Dimension]: [Product<A, B>] extends [never] ? never : B;
}[Dimension];

/** The dimensions that may stand on the right of `c.over(b)`. */
export type Divisor<C extends Dimension> = {
  [B in Dimension]: [Quotient<C, B>] extends [never] ? never : B;
}[Dimension];

/**
 * What comes out, and the factor between the plain product of canonical values and the result:
 * a product is divided by it, the numerator of a quotient is multiplied by it. Multiply first,
 * divide once: either way one rounding at most. Left out where it is one.
 */
export interface Rule {
  readonly dimension: Dimension;
  readonly factor: Decimal | undefined;
}

type Table = Partial<Record<Dimension, Partial<Record<Dimension, Rule>>>>;

interface Rules {
  readonly products: Table;
  readonly quotients: Table;
}

let built: Rules | undefined;

function put(table: Table, a: Dimension, b: Dimension, rule: Rule): void {
  table[a] = { ...table[a], [b]: rule };
}

/** Built at first use, so that importing the library costs nothing. */
function rules(): Rules {
  if (built) return built;
  const products: Table = {};
  const quotients: Table = {};
  const per = (d: Dimension): Decimal => new Decimal(CANONICAL_PER_SI[d]);
  for (const [a, b, c] of PRODUCTS) {
    // SI: c = a × b. Canonical: c = a × b ÷ factor, with factor = per(a) × per(b) ÷ per(c).
    const exact = per(a).times(per(b)).div(per(c));
    const factor = exact.equals(1) ? undefined : exact;
    put(products, a, b, { dimension: c, factor });
    put(products, b, a, { dimension: c, factor });
    put(quotients, c, b, { dimension: a, factor });
    put(quotients, c, a, { dimension: b, factor });
  }
  built = { products, quotients };
  return built;
}

/** The product rule for two dimensions that are not scalars, or `undefined`. */
export function productRule(a: Dimension, b: Dimension): Rule | undefined {
  return (built ?? rules()).products[a]?.[b];
}

/** The quotient rule for two different dimensions, or `undefined`. */
export function quotientRule(c: Dimension, b: Dimension): Rule | undefined {
  return (built ?? rules()).quotients[c]?.[b];
}

/** True for ratio and count. */
export function isScalar(d: Dimension): d is Scalar {
  return d === 'ratio' || d === 'count';
}
