/** The functions that make quantities, one for each dimension. */
import type { Dimension } from './dimensions';
import { fail } from './input-error';
import type { Quantity, QuantityInput } from './quantity';
import { isFaulty, readQuantity } from './read-quantity';

/** A constant made when first asked for, so that importing the library costs nothing. */
/* @__NO_SIDE_EFFECTS__ */
export function constant<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

function make<D extends Dimension>(d: D, input: QuantityInput<D>): Quantity<D> {
  const q = readQuantity(input, d, `the ${d.replaceAll('-', ' ')}`);
  return isFaulty(q) ? fail(q) : q;
}

/**
 * Read a length: `12 ft 6 1/2 in`, `12' 6-1/2"`, `100 mm`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { length } from 'flatwork-reckoner';
 *
 * length(`12' 6-1/2"`).format('in'); // '150.5 in'
 * ```
 */
export function length(input: QuantityInput<'length'>): Quantity<'length'> {
  return make('length', input);
}

/**
 * Read an area: `504 ft2`, `56 sq yd`, `46.8 m2`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { area } from 'flatwork-reckoner';
 *
 * area('504 sq ft').format('m2'); // '46.82 m2'
 * ```
 */
export function area(input: QuantityInput<'area'>): Quantity<'area'> {
  return make('area', input);
}

/**
 * Read a volume: `6 yd3`, `6 cubic yards`, `4.5 m3`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { volume } from 'flatwork-reckoner';
 *
 * volume('6 cubic yards').format('m3'); // '4.59 m3'
 * ```
 */
export function volume(input: QuantityInput<'volume'>): Quantity<'volume'> {
  return make('volume', input);
}

/**
 * Read a mass: `50 lb`, `12 ton` (short tons of 2,000 lb), `12 tonne`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { mass } from 'flatwork-reckoner';
 *
 * mass('2000 lb').format('ton'); // '1.00 ton'
 * ```
 */
export function mass(input: QuantityInput<'mass'>): Quantity<'mass'> {
  return make('mass', input);
}

/**
 * Read a density: `150 pcf`, `4050 lb/yd3`, `2400 kg/m3`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { density } from 'flatwork-reckoner';
 *
 * density('150 pcf').format('lb/yd3'); // '4050 lb/yd3'
 * ```
 */
export function density(input: QuantityInput<'density'>): Quantity<'density'> {
  return make('density', input);
}

/**
 * Read a mass per length: `0.668 lb/ft`, `0.994 kg/m`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { massPerLength } from 'flatwork-reckoner';
 *
 * massPerLength('0.668 lb/ft').format('kg/m'); // '0.994 kg/m'
 * ```
 */
export function massPerLength(input: QuantityInput<'mass-per-length'>): Quantity<'mass-per-length'> {
  return make('mass-per-length', input);
}

/**
 * Read a mass per area: `0.21 lb/ft2`, `110 lb/yd2`, `1.03 kg/m2`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { massPerArea } from 'flatwork-reckoner';
 *
 * massPerArea('0.21 lb/ft2').format('lb/yd2'); // '1.89 lb/yd2'
 * ```
 */
export function massPerArea(input: QuantityInput<'mass-per-area'>): Quantity<'mass-per-area'> {
  return make('mass-per-area', input);
}

/**
 * Read a slope: `1/4 in/ft`, `2%`, `1:48`, `20 mm/m`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { slope } from 'flatwork-reckoner';
 *
 * slope('1:48').format('in/ft'); // '0.25 in/ft'
 * ```
 */
export function slope(input: QuantityInput<'slope'>): Quantity<'slope'> {
  return make('slope', input);
}

/**
 * Read an angle in degrees: `2.5 deg`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { angle } from 'flatwork-reckoner';
 *
 * angle('2.5 deg').format(); // '2.5 deg'
 * ```
 */
export function angle(input: QuantityInput<'angle'>): Quantity<'angle'> {
  return make('angle', input);
}

/**
 * Read a time: `90 min`, `1 h 30 min`, `7 day`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { time } from 'flatwork-reckoner';
 *
 * time('1 h 30 min').format('min'); // '90 min'
 * ```
 */
export function time(input: QuantityInput<'time'>): Quantity<'time'> {
  return make('time', input);
}

/**
 * Read a temperature: `55 degF`, `13 degC`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { temperature } from 'flatwork-reckoner';
 *
 * temperature('55 degF').format('degC'); // '12.8 degC'
 * ```
 */
export function temperature(input: QuantityInput<'temperature'>): Quantity<'temperature'> {
  return make('temperature', input);
}

/**
 * Read a difference of temperatures: `25 degF`, `14 degC`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { temperatureDifference } from 'flatwork-reckoner';
 *
 * temperatureDifference('25 degF').format('degC'); // '13.9 degC'
 * ```
 */
export function temperatureDifference(
  input: QuantityInput<'temperature-difference'>,
): Quantity<'temperature-difference'> {
  return make('temperature-difference', input);
}

/**
 * Read a temperature over a time, as maturity is told: `2500 degF-h`, `1400 degC-h`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { temperatureTime } from 'flatwork-reckoner';
 *
 * temperatureTime('2520 degF-h').format('degC-h'); // '1400 degC-h'
 * ```
 */
export function temperatureTime(input: QuantityInput<'temperature-time'>): Quantity<'temperature-time'> {
  return make('temperature-time', input);
}

/**
 * Read a speed: `10 mph`, `16 km/h`, `4.5 m/s`, `15 ft/s`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { speed } from 'flatwork-reckoner';
 *
 * speed('10 mph').format('m/s'); // '4.47 m/s'
 * ```
 */
export function speed(input: QuantityInput<'speed'>): Quantity<'speed'> {
  return make('speed', input);
}

/**
 * Read a force: `800 lbf`, `4.5 kN`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { force } from 'flatwork-reckoner';
 *
 * force('1 kip').format('kN'); // '4.448 kN'
 * ```
 */
export function force(input: QuantityInput<'force'>): Quantity<'force'> {
  return make('force', input);
}

/**
 * Read a pressure or strength: `4000 psi`, `28 MPa`, `150 psf`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { pressure } from 'flatwork-reckoner';
 *
 * pressure('4000 psi').format('MPa'); // '27.58 MPa'
 * ```
 */
export function pressure(input: QuantityInput<'pressure'>): Quantity<'pressure'> {
  return make('pressure', input);
}

/**
 * Read a volume per time: `20 yd3/h`, `15 m3/h`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { volumeRate } from 'flatwork-reckoner';
 *
 * volumeRate('20 yd3/h').format('m3/h'); // '15.29 m3/h'
 * ```
 */
export function volumeRate(input: QuantityInput<'volume-rate'>): Quantity<'volume-rate'> {
  return make('volume-rate', input);
}

/**
 * Read an evaporation rate: `0.2 lb/ft2/h`, `1 kg/m2/h`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { evaporation } from 'flatwork-reckoner';
 *
 * evaporation('0.2 lb/ft2/h').format('kg/m2/h'); // '0.976 kg/m2/h'
 * ```
 */
export function evaporation(input: QuantityInput<'evaporation'>): Quantity<'evaporation'> {
  return make('evaporation', input);
}

/**
 * Read a ratio: `10%`, `1.5:1`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { ratio } from 'flatwork-reckoner';
 *
 * ratio('10%').format(':1'); // '0.1:1'
 * ```
 */
export function ratio(input: QuantityInput<'ratio'>): Quantity<'ratio'> {
  return make('ratio', input);
}

/**
 * Read a count of things: `12 each`.
 *
 * @param input - text with a unit, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { count } from 'flatwork-reckoner';
 *
 * count('12 ea').format(); // '12 each'
 * ```
 */
export function count(input: QuantityInput<'count'>): Quantity<'count'> {
  return make('count', input);
}
