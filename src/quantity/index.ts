/** Floor 1: exact quantities with units. What the rest of the library may use of it. */
export type { Dimension, Divisor, Multiplier, Product, Quotient, Scalar } from './dimensions';
export type { FormatOptions } from './format';
export { InputError, type InputErrorJson, type Issue, type IssueCode } from './input-error';
export {
  angle,
  area,
  count,
  density,
  evaporation,
  force,
  length,
  mass,
  massPerArea,
  massPerLength,
  pressure,
  ratio,
  slope,
  speed,
  temperature,
  temperatureDifference,
  temperatureTime,
  time,
  volume,
  volumeRate,
} from './make';
export { money } from './money';
export type { QuantityPart } from './parts';
export { Quantity, type QuantityData, type QuantityInput, type QuantityPair } from './quantity';
export { type System, type UnitId, type UnitIds, unitsOf } from './units';
