/** What a mix is made of and how warm each part is: as it is written, and as it is read. */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { Difference, Temperature } from './degrees';

type Mass = Quantity<'mass'>;

/** An ingredient by its weight and temperature; weights of a batch, or for a cubic yard or meter. */
export interface IngredientInput {
  /** How much of it. */
  readonly mass: QuantityInput<'mass'>;
  /** How warm it is. */
  readonly temperature: QuantityInput<'temperature'>;
}

/** Sand or stone. */
export interface AggregateInput {
  /** What it is called. */
  readonly name?: string;
  /** Weight dry. */
  readonly mass: QuantityInput<'mass'>;
  /** Water in and on it, over its dry weight. */
  readonly moisture: QuantityInput<'ratio'>;
  /** How warm it is; below freezing its water is ice. */
  readonly temperature: QuantityInput<'temperature'>;
}

/** Ice put in with the water. */
export interface IceInput {
  /** How much of it. */
  readonly mass: QuantityInput<'mass'>;
  /** How cold it is; by default at freezing, melting. */
  readonly temperature?: QuantityInput<'temperature'>;
}

/** Input of {@link freshConcreteTemperature}. */
export interface FreshConcreteTemperatureInput {
  /** Cement, with fly ash and the like. */
  readonly cement: IngredientInput;
  /** Sand and stone. */
  readonly aggregates: readonly AggregateInput[];
  /** Water put in, besides that in the aggregates. */
  readonly water: IngredientInput;
  /** Ice put in besides the water. */
  readonly ice?: IceInput;
  /** What mixing and the way to the slab add; below zero where it cools. Found by measuring a load; by default none. */
  readonly change?: QuantityInput<'temperature-difference'>;
  /** The temperature that is wanted at the slab. */
  readonly wanted?: QuantityInput<'temperature'>;
}

export interface Part {
  readonly mass: Mass;
  readonly temperature: Temperature;
}

export interface Aggregate extends Part {
  readonly name: string | undefined;
  readonly moisture: Quantity<'ratio'>;
}

export interface FreshParsed {
  readonly cement: Part;
  readonly aggregates: readonly Aggregate[];
  readonly water: Part;
  readonly ice: { readonly mass: Mass; readonly temperature: Temperature | undefined } | undefined;
  readonly change: Difference | undefined;
  readonly wanted: Temperature | undefined;
}

export const MOST_AGGREGATES = 12;
