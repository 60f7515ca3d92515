/** Flights of steps as they are given, and as they were read. */
import type { LengthInput } from '../outline/outline';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { StepRules } from '../steps/rules';
import type { StepCore, StepCoreInput } from './step-cores';
import type { WingWall, WingWallInput } from './wing-walls';

type Angle = Quantity<'angle'>;
type Count = Quantity<'count'>;
type Length = Quantity<'length'>;

/** What all steps have. */
export interface StepParts {
  /** How many risers, a plain whole number. */
  readonly risers: number;
  /** Height of each riser, from nosing to nosing. */
  readonly rise: LengthInput;
  /** Boxes inside that are not concrete: an existing footing, a void, a rubble core. */
  readonly cores?: readonly StepCoreInput[];
  /** Walls beside the flight, cast with it. */
  readonly wingWalls?: readonly WingWallInput[];
  /** Whose rules the steps must meet; those of dwellings by default. */
  readonly rules?: StepRules;
  /** How far it is down beside the top, where the ground there is lower than before the first riser. */
  readonly sideDrop?: LengthInput;
  /** How deep the ground freezes, as the local building department says; `0 in` where it does not. */
  readonly frostDepth?: LengthInput;
  /** How deep what the steps stand on is founded below the ground. */
  readonly founded?: LengthInput;
}

/** A landing part of the way up, as wide as the flight. */
export interface MidLandingInput {
  /** After how many risers, counted from the ground. */
  readonly after: number;
  /** Front to back, in place of a tread. */
  readonly depth: LengthInput;
}

/** A straight flight. */
export interface StraightStepsInput extends StepParts {
  /** `straight`, or left out. */
  readonly kind?: 'straight';
  /** Depth of each tread, front to back. */
  readonly tread: LengthInput;
  /** Width of the flight, side to side. */
  readonly width: LengthInput;
  /** Depth of the landing at the top, front to back; left out when the top tread is one like the others. */
  readonly landingDepth?: LengthInput;
  /** Landings part of the way up, in order. */
  readonly landings?: readonly MidLandingInput[];
  /**
   * Concrete below the inner corners, square to the slope, where the flight lies on a bank; without it the steps are
   * solid down to level ground. A landing at the top is as thick.
   */
  readonly waist?: LengthInput;
  /** Slope of the treads, down to the front; level by default. */
  readonly wash?: QuantityInput<'slope'>;
  /** How far each riser leans back from its nosing; upright by default. */
  readonly nosing?: LengthInput;
  /** How many of the two sides are formed: 0 between walls, 1 against a wall, 2 (default) free. */
  readonly openSides?: number;
}

/** Steps that go around one or two corners: treads at the front and at the sides. */
export interface WraparoundStepsInput extends StepParts {
  /** Always `wraparound`. */
  readonly kind: 'wraparound';
  /** Depth of each tread, at the front and at the sides. */
  readonly tread: LengthInput;
  /** Side to side at the top. */
  readonly topWidth: LengthInput;
  /** Front to back at the top. */
  readonly topDepth: LengthInput;
  /** Whether there are treads at one side, the other being against a wall, or at both. */
  readonly sides: 'one' | 'both';
}

/** Round steps: sectors about one center, the treads outside the top. */
export interface RoundStepsInput extends StepParts {
  /** Always `round`. */
  readonly kind: 'round';
  /** Depth of each tread. */
  readonly tread: LengthInput;
  /** Radius of the top, to its nosing. */
  readonly topRadius: LengthInput;
  /** Radius of what they stand around, such as a round wall; none by default. */
  readonly innerRadius?: LengthInput;
  /** How far they turn, `180 deg` against a straight wall. */
  readonly turn: QuantityInput<'angle'>;
}

/** A winding flight: each tread a sector of a ring, turned on from the one before. */
export interface WindingStepsInput extends StepParts {
  /** Always `winding`. */
  readonly kind: 'winding';
  /** Radius of the inner side. */
  readonly innerRadius: LengthInput;
  /** Radius of the outer side. */
  readonly outerRadius: LengthInput;
  /** How far each tread turns. */
  readonly turnEach: QuantityInput<'angle'>;
}

/** Input of {@link stepVolume}: straight unless `plan` says otherwise. */
export type StepVolumeInput = StraightStepsInput | WraparoundStepsInput | RoundStepsInput | WindingStepsInput;

interface Parts {
  readonly risers: Count;
  readonly rise: Length;
  readonly cores: readonly StepCore[] | undefined;
  readonly wingWalls: readonly WingWall[] | undefined;
  readonly rules: StepRules | undefined;
  readonly sideDrop: Length | undefined;
  readonly frostDepth: Length | undefined;
  readonly founded: Length | undefined;
}

interface MidLanding {
  readonly after: Count;
  readonly depth: Length;
}

export interface Straight extends Parts {
  readonly kind: 'straight' | undefined;
  readonly tread: Length;
  readonly width: Length;
  readonly landingDepth: Length | undefined;
  readonly landings: readonly MidLanding[] | undefined;
  readonly waist: Length | undefined;
  readonly wash: Quantity<'slope'> | undefined;
  readonly nosing: Length | undefined;
  readonly openSides: Count | undefined;
}

export interface Wraparound extends Parts {
  readonly kind: 'wraparound';
  readonly tread: Length;
  readonly topWidth: Length;
  readonly topDepth: Length;
  readonly sides: 'one' | 'both';
}

export interface Round extends Parts {
  readonly kind: 'round';
  readonly tread: Length;
  readonly topRadius: Length;
  readonly innerRadius: Length | undefined;
  readonly turn: Angle;
}

export interface Winding extends Parts {
  readonly kind: 'winding';
  readonly innerRadius: Length;
  readonly outerRadius: Length;
  readonly turnEach: Angle;
}

export type Parsed = Straight | Wraparound | Round | Winding;
