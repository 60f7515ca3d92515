/** Weather: drying of the surface, concrete hot and cold, maturity and strength. */
export type {
  Bleeding,
  ChangedDrying,
  DryingChange,
  DryingLimit,
  DryingMeasure,
  EvaporationRateFigures,
} from './drying-figures';
export { type EvaporationRateInput, evaporationRate } from './evaporation-rate';
export {
  type FreshConcreteTemperatureFigures,
  freshConcreteTemperature,
  type IngredientHeat,
} from './fresh-concrete-temperature';
export type { AggregateInput, FreshConcreteTemperatureInput, IceInput, IngredientInput } from './fresh-mix';
export { type MaturityFigures, maturity } from './maturity';
export type { CalibrationInput, MaturityInput, ReadingInput } from './maturity-input';
export { placingLimits } from './placing-limits';
export type {
  HotLimit,
  PlacingLimitsFigures,
  ProtectionRule,
  PublishedProtection,
  WeatherMeasure,
} from './placing-limits-figures';
export type { ForecastInput, PlacingLimitsInput, Protection } from './placing-limits-input';
export type { PublishedTime, PublishedUse } from './published-times';
export type { WantedStrength } from './strength-curve';
export {
  type CementKind,
  type SlabUse,
  type StrengthAtAge,
  type StrengthGainFigures,
  type StrengthGainInput,
  strengthGain,
  type TimeForUse,
  type UseInput,
} from './strength-gain';
export type { WantedTemperature } from './wanted-temperature';
