/** A flight to be laid out: as it is written, and as it is read. */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { StepRules } from './rules';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

/** The door at the top. */
export interface StepDoorInput {
  /** Which way the door swings: `in` over the floor, `out` over the landing. */
  readonly swing: 'in' | 'out';
  /** Width of the door leaf. */
  readonly width: QuantityInput<'length'>;
  /** How far the landing at the door lies below the top of the threshold; taken off a rise to the sill. */
  readonly threshold?: QuantityInput<'length'>;
}

/** Input of {@link stepLayout}. */
export interface StepLayoutInput {
  /** From the ground at the foot up to the door sill or to the landing, as `riseTo` says. */
  readonly totalRise: QuantityInput<'length'>;
  /**
   * What `totalRise` is measured to: the top of the door's threshold (`sill`), or the landing at the door.
   * By default the sill where a threshold is given, the landing otherwise.
   */
  readonly riseTo?: 'sill' | 'landing';
  /** Whose limits; by default those of a dwelling. */
  readonly rules?: StepRules;
  /** How many risers, where that is settled; otherwise every number the rules allow is tried. */
  readonly risers?: number;
  /** Depth of each tread, nosing to nosing. */
  readonly tread?: QuantityInput<'length'>;
  /** Level length for the treads, first to last nosing, to be shared out; goes in place of `tread`. */
  readonly totalRun?: QuantityInput<'length'>;
  /** Depth of the landing at the top, along the way of travel. */
  readonly landing?: QuantityInput<'length'>;
  /** Slope of treads and landing toward the foot; by default 2%. `0%` for level ones. */
  readonly pitch?: QuantityInput<'slope'>;
  /**
   * From the landing down to the lowest ground within 36 in of its open sides, where that falls away lower
   * than the foot of the steps.
   */
  readonly sideDrop?: QuantityInput<'length'>;
  /** The door at the top, where there is one to be checked. */
  readonly door?: StepDoorInput;
  /** Riser heights as formed or built, from the foot up, to be checked for being alike. */
  readonly measured?: readonly QuantityInput<'length'>[];
}

export interface StepLayoutParsed {
  readonly totalRise: Length;
  readonly riseTo: 'sill' | 'landing' | undefined;
  readonly sideDrop: Length | undefined;
  readonly rules: StepRules | undefined;
  readonly risers: Quantity<'count'> | undefined;
  readonly tread: Length | undefined;
  readonly totalRun: Length | undefined;
  readonly landing: Length | undefined;
  readonly pitch: Slope | undefined;
  readonly door:
    | { readonly swing: 'in' | 'out'; readonly width: Length; readonly threshold: Length | undefined }
    | undefined;
  readonly measured: readonly Length[] | undefined;
}
