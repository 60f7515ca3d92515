/** Footings as they are taped: strips, loops, pads, with slopes or steps: as written, and as read. */

import type { LengthInput } from '../outline/outline';
import type { Quantity } from '../quantity/quantity';
import { type Field, fields, kinds, list, maybe, quantity, whole, word } from '../reckoning/fields';
import type { Ordinary } from '../reckoning/ordinary';
import { type Founded, type FoundedInput, foundedFields, frostField } from './frost';
import {
  FOOTING_DEPTH,
  FOOTING_LENGTH,
  FOOTING_STEP,
  FOOTING_WIDTH,
  PAD_EDGE,
  PAD_SIDE,
  PAD_TOP,
} from './ordinary';

type Length = Quantity<'length'>;

type Count = Quantity<'count'>;

/** Steps along a strip on sloping ground. */
export interface FootingStepsInput {
  /** How many. */
  readonly count: number;
  /** Height of each. */
  readonly height: LengthInput;
  /** How far the upper strip laps over the lower one. */
  readonly lap: LengthInput;
}

/** A straight run, measured along its centerline. */
export interface StripFootingInput extends FoundedInput {
  /** Always `strip`. */
  readonly kind: 'strip';
  /** Along the centerline, in all. */
  readonly length: LengthInput;
  /** Across. */
  readonly width: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
  /** Steps on sloping ground. */
  readonly steps?: FootingStepsInput;
}

/** Around a rectangle, by the outside; corners are counted once. */
export interface LoopFootingInput extends FoundedInput {
  /** Always `loop`. */
  readonly kind: 'loop';
  /** Outside length. */
  readonly outerLength: LengthInput;
  /** Outside width. */
  readonly outerWidth: LengthInput;
  /** Across the strip. */
  readonly width: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
}

/** A straight run whose section is a trapezoid. */
export interface TaperedStripFootingInput extends FoundedInput {
  /** Always `tapered-strip`. */
  readonly kind: 'tapered-strip';
  /** Along the centerline, in all. */
  readonly length: LengthInput;
  /** Across the bottom. */
  readonly bottomWidth: LengthInput;
  /** Across the top. */
  readonly topWidth: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
}

/** A box under a post. */
export interface PadFootingInput extends FoundedInput {
  /** Always `pad`. */
  readonly kind: 'pad';
  /** One side. */
  readonly length: LengthInput;
  /** The other side. */
  readonly width: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** A box with a sloping top that narrows to a rectangle. */
export interface TaperedPadFootingInput extends FoundedInput {
  /** Always `tapered-pad`. */
  readonly kind: 'tapered-pad';
  /** One side at the bottom. */
  readonly length: LengthInput;
  /** The other side at the bottom. */
  readonly width: LengthInput;
  /** Height of the upright edge; may be zero. */
  readonly edge: LengthInput;
  /** Side of the top along `length`. */
  readonly topLength: LengthInput;
  /** Side of the top along `width`. */
  readonly topWidth: LengthInput;
  /** Height of the sloping part. */
  readonly taper: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** One block of a stepped pad. */
export interface TierInput {
  /** One side. */
  readonly length: LengthInput;
  /** The other side. */
  readonly width: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
}

/** Blocks on top of each other, the lowest first. */
export interface SteppedPadFootingInput extends FoundedInput {
  /** Always `stepped-pad`. */
  readonly kind: 'stepped-pad';
  /** The blocks, each within the one below. */
  readonly tiers: readonly TierInput[];
  /** How many alike; one by default. */
  readonly count?: number;
}

/** One footing, or several alike. */
export type FootingInput =
  | StripFootingInput
  | LoopFootingInput
  | TaperedStripFootingInput
  | PadFootingInput
  | TaperedPadFootingInput
  | SteppedPadFootingInput;

/** Input of {@link footingVolume}. */
export interface FootingVolumeInput {
  /** The footings. */
  readonly footings: readonly FootingInput[];
  /** How deep the ground freezes, as the local building department says; `0 in` where it does not. */
  readonly frostDepth?: LengthInput;
}

export interface Tier {
  readonly length: Length;
  readonly width: Length;
  readonly depth: Length;
}

export type Footing = Founded & Form;

export interface FootingParsed {
  readonly footings: readonly Footing[];
  readonly frostDepth: Length | undefined;
}

type Form =
  | (Tier & {
      readonly kind: 'strip';
      readonly steps: { readonly count: Count; readonly height: Length; readonly lap: Length } | undefined;
    })
  | {
      readonly kind: 'loop';
      readonly outerLength: Length;
      readonly outerWidth: Length;
      readonly width: Length;
      readonly depth: Length;
    }
  | {
      readonly kind: 'tapered-strip';
      readonly length: Length;
      readonly bottomWidth: Length;
      readonly topWidth: Length;
      readonly depth: Length;
    }
  | (Tier & { readonly kind: 'pad'; readonly count: Count | undefined })
  | {
      readonly kind: 'tapered-pad';
      readonly length: Length;
      readonly width: Length;
      readonly edge: Length;
      readonly topLength: Length;
      readonly topWidth: Length;
      readonly taper: Length;
      readonly count: Count | undefined;
    }
  | { readonly kind: 'stepped-pad'; readonly tiers: readonly Tier[]; readonly count: Count | undefined };

const MOST_FOOTINGS = 500;
const MOST_ALIKE = 100_000;

export function door(): Field<FootingParsed> {
  const l = (what: string, ordinary: Ordinary): Field<Length> =>
    quantity('length', what, 'positive', ordinary);
  const count = maybe(whole('count', 1, MOST_ALIKE));
  const ground = foundedFields();
  const depth = l('depth', FOOTING_DEPTH);
  const pad = { length: l('length', PAD_SIDE), width: l('width', PAD_SIDE), depth };
  const steps = fields({
    count: whole('count', 1, 1000),
    height: l('height', FOOTING_STEP),
    lap: l('lap', PAD_SIDE),
  });
  const footing = kinds('kind', [
    fields({
      kind: word('strip'),
      length: l('length', FOOTING_LENGTH),
      width: l('width', FOOTING_WIDTH),
      depth,
      steps: maybe(steps),
      ...ground,
    }),
    fields({
      kind: word('loop'),
      outerLength: l('outerLength', FOOTING_LENGTH),
      outerWidth: l('outerWidth', FOOTING_LENGTH),
      width: l('width', FOOTING_WIDTH),
      depth,
      ...ground,
    }),
    fields({
      kind: word('tapered-strip'),
      length: l('length', FOOTING_LENGTH),
      bottomWidth: l('bottomWidth', FOOTING_WIDTH),
      topWidth: l('topWidth', FOOTING_WIDTH),
      depth,
      ...ground,
    }),
    fields({ kind: word('pad'), ...pad, count, ...ground }),
    fields({
      kind: word('tapered-pad'),
      length: l('length', PAD_SIDE),
      width: l('width', PAD_SIDE),
      edge: quantity('length', 'edge', 'not-negative', PAD_EDGE),
      topLength: l('topLength', PAD_TOP),
      topWidth: l('topWidth', PAD_TOP),
      taper: l('taper', FOOTING_DEPTH),
      count,
      ...ground,
    }),
    fields({ kind: word('stepped-pad'), tiers: list(fields(pad), 2, 20), count, ...ground }),
  ]);
  return fields({ footings: list(footing, 1, MOST_FOOTINGS), frostDepth: frostField() });
}
