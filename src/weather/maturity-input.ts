/** Readings of the concrete and broken cylinders: as they are written, and as they are read. */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { Difference, Temperature } from './degrees';

type Time = Quantity<'time'>;
type Strength = Quantity<'pressure'>;
type TemperatureTime = Quantity<'temperature-time'>;

/** One reading of the temperature in the concrete. */
export interface ReadingInput {
  /** How long after placing. */
  readonly at: QuantityInput<'time'>;
  /** In the concrete, where it is coldest. */
  readonly temperature: QuantityInput<'temperature'>;
}

/** A specimen of the same mix: its maturity when it was broken, and its strength. */
export interface CalibrationInput {
  /** Its temperature-time factor, to the same datum; or its `age`. */
  readonly maturity?: QuantityInput<'temperature-time'>;
  /** Its equivalent age, to the same reference. */
  readonly age?: QuantityInput<'time'>;
  /** What it broke at. */
  readonly strength: QuantityInput<'pressure'>;
}

/** Input of {@link maturity}. */
export interface MaturityInput {
  /** Readings in order of time from placing on, at any intervals; the first no later than `gap`. */
  readonly history: readonly ReadingInput[];
  /** How warm the concrete was as placed, where the first reading is later; by default as it was first read. */
  readonly atPlacing?: QuantityInput<'temperature'>;
  /** The longest time between readings that is bridged; by default 6 h. */
  readonly gap?: QuantityInput<'time'>;
  /** The temperature at which strength stops growing; by default 14 degF (-10 degC). */
  readonly datum?: QuantityInput<'temperature'>;
  /** Activation energy over the gas constant, in degrees; by default 9000 degF (5000 degC). */
  readonly activation?: QuantityInput<'temperature-difference'>;
  /** The temperature that the equivalent age is for; by default 68 degF (20 degC). */
  readonly reference?: QuantityInput<'temperature'>;
  /** Specimens of the mix from the weakest on, all by their maturity or all by their equivalent age. */
  readonly calibration?: readonly CalibrationInput[];
  /** The strength that is waited for; goes with `calibration`. */
  readonly wanted?: QuantityInput<'pressure'>;
}

export interface Reading {
  readonly at: Time;
  readonly temperature: Temperature;
}

interface Specimen {
  readonly maturity: TemperatureTime | undefined;
  readonly age: Time | undefined;
  readonly strength: Strength;
}

export interface MaturityParsed {
  readonly history: readonly Reading[];
  readonly atPlacing: Temperature | undefined;
  readonly gap: Time | undefined;
  readonly datum: Temperature | undefined;
  readonly activation: Difference | undefined;
  readonly reference: Temperature | undefined;
  readonly calibration: readonly Specimen[] | undefined;
  readonly wanted: Strength | undefined;
}
