/** Weather: drying of the surface, concrete hot and cold, maturity and strength. */
export {
  type Bleeding,
  type ChangedDrying,
  type DryingChange,
  type DryingLimit,
  type DryingMeasure,
  type EvaporationRateFigures,
  type EvaporationRateInput,
  evaporationRate,
} from './evaporation-rate';
export {
  type AggregateInput,
  type FreshConcreteTemperatureFigures,
  type FreshConcreteTemperatureInput,
  freshConcreteTemperature,
  type IceInput,
  type IngredientHeat,
  type IngredientInput,
  type WantedTemperature,
} from './fresh-concrete-temperature';
export {
  type CalibrationInput,
  type MaturityFigures,
  type MaturityInput,
  maturity,
  type ReadingInput,
  type WantedStrength,
} from './maturity';
export {
  type ForecastInput,
  type HotLimit,
  type PlacingLimitsFigures,
  type PlacingLimitsInput,
  type Protection,
  type ProtectionRule,
  type PublishedProtection,
  placingLimits,
  type WeatherMeasure,
} from './placing-limits';
export {
  type CementKind,
  type PublishedTime,
  type SlabUse,
  type StrengthAtAge,
  type StrengthGainFigures,
  type StrengthGainInput,
  strengthGain,
  type TimeForUse,
  type UseInput,
} from './strength-gain';
