/** Floor 1: exact quantities with units. What the rest of the library may use of it. */
export type { Dimension } from './dimensions';
export type { FormatOptions } from './format';
export { InputError, type Issue, type IssueCode } from './input-error';
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
  money,
  pressure,
  ratio,
  slope,
  speed,
  temperature,
  temperatureDifference,
  time,
  volume,
  volumeRate,
} from './make';
export { Quantity, type QuantityInput, type QuantityJson } from './quantity';
