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
