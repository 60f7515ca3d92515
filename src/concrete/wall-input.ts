/** Walls as they are taped, with their openings and pilasters: as written, and as read. */

import type { LengthInput } from '../outline/outline';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Field, fields, kinds, list, maybe, quantity, whole, word } from '../reckoning/fields';
import type { Ordinary } from '../reckoning/ordinary';
import type { Read } from '../reckoning/read';
import { all, allOrNone, oneOf } from '../reckoning/together';
import {
  FOAM,
  LEAST_OPENING,
  PILASTER,
  SILL,
  WALL_HEIGHT,
  WALL_LENGTH,
  WALL_OPENING,
  WALL_THICKNESS,
  WEB_SHARE,
} from './ordinary';
import { type PlateAnchorsInput, plateAnchors } from './plate-anchors';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;

type Count = Quantity<'count'>;
type Ratio = Quantity<'ratio'>;

/** An opening through a wall: by width and height, by its diameter, or by sides alike. */
export interface WallOpeningInput {
  /** Along the wall. */
  readonly width?: LengthInput;
  /** Up the wall. */
  readonly height?: LengthInput;
  /** Across a round one, in place of width and height. */
  readonly diameter?: LengthInput;
  /** How many sides one with sides alike has, in place of width and height. */
  readonly sides?: number;
  /** How long each of them is. */
  readonly side?: LengthInput;
  /** From the foot of the wall to the opening; halfway up by default, and of no matter unless the wall tapers. */
  readonly sill?: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** A pilaster cast with the wall. */
export interface PilasterInput {
  /** Along the wall. */
  readonly width: LengthInput;
  /** How far it stands out from the wall. */
  readonly projection: LengthInput;
  /** Height; that of the wall by default. */
  readonly height?: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** What all walls may have. */
export interface WallParts {
  /** Top to bottom. */
  readonly height: LengthInput;
  /** Thickness, at the foot where the wall tapers; in insulated forms that of the core, or overall with `foam`. */
  readonly thickness: LengthInput;
  /** Thickness at the top; as at the foot by default. */
  readonly topThickness?: LengthInput;
  /** Openings through it. */
  readonly openings?: readonly WallOpeningInput[];
  /** Pilasters on it. */
  readonly pilasters?: readonly PilasterInput[];
  /** How thick each of the two panels of insulated forms is: with it all sizes are those over the panels. */
  readonly foam?: LengthInput;
  /** Share of the core that the webs of insulated forms take up; none by default. */
  readonly webShare?: QuantityInput<'ratio'>;
  /** How many walls alike; one by default. */
  readonly count?: number;
}

/** A straight wall. */
export interface StraightWallInput extends WallParts {
  /** Always `straight`. */
  readonly kind: 'straight';
  /** Along it. */
  readonly length: LengthInput;
  /** Height at the far end, where the top falls or rises evenly, as that of a wing wall; as `height` by default. */
  readonly endHeight?: LengthInput;
}

/** Around a rectangle, by the outside; corners are counted once. */
export interface LoopWallInput extends WallParts {
  /** Always `loop`. */
  readonly kind: 'loop';
  /** Outside length. */
  readonly outerLength: LengthInput;
  /** Outside width. */
  readonly outerWidth: LengthInput;
}

/** Around a circle, by the outside. */
export interface RingWallInput extends WallParts {
  /** Always `ring`. */
  readonly kind: 'ring';
  /** Across the outside. */
  readonly outerDiameter: LengthInput;
}

/** One wall, or several alike. */
export type WallInput = StraightWallInput | LoopWallInput | RingWallInput;

/** Input of {@link wallVolume}. */
export interface WallVolumeInput {
  /** The walls. */
  readonly walls: readonly WallInput[];
  /** Openings smaller than this are not deducted; all are by default. */
  readonly deductFrom?: QuantityInput<'area'>;
  /** The bolts of a plate on top of them, where they carry one; `{}` for those that are usual. */
  readonly anchors?: PlateAnchorsInput;
}

export interface Opening {
  readonly width: Length | undefined;
  readonly height: Length | undefined;
  readonly diameter: Length | undefined;
  readonly sides: Count | undefined;
  readonly side: Length | undefined;
  readonly sill: Length | undefined;
  readonly count: Count | undefined;
}

interface Pilaster {
  readonly width: Length;
  readonly projection: Length;
  readonly height: Length | undefined;
  readonly count: Count | undefined;
}

interface Parts {
  readonly height: Length;
  readonly thickness: Length;
  readonly topThickness: Length | undefined;
  readonly openings: readonly Opening[] | undefined;
  readonly pilasters: readonly Pilaster[] | undefined;
  readonly foam: Length | undefined;
  readonly webShare: Ratio | undefined;
  readonly count: Count | undefined;
}

export type Wall = Parts &
  (
    | { readonly kind: 'straight'; readonly length: Length; readonly endHeight: Length | undefined }
    | { readonly kind: 'loop'; readonly outerLength: Length; readonly outerWidth: Length }
    | { readonly kind: 'ring'; readonly outerDiameter: Length }
  );

export interface WallParsed {
  readonly walls: readonly Wall[];
  readonly deductFrom: Area | undefined;
  readonly anchors: Read<PlateAnchorsInput> | undefined;
}

export function door(): Field<WallParsed> {
  const l = (what: string, ordinary: Ordinary): Field<Length> =>
    quantity('length', what, 'positive', ordinary);
  const count = maybe(whole('count', 1, 10_000));
  const opening = fields(
    {
      width: maybe(l('width', WALL_OPENING)),
      height: maybe(l('height', WALL_OPENING)),
      diameter: maybe(l('diameter', WALL_OPENING)),
      sides: maybe(whole('sides', 3, 360)),
      side: maybe(l('side', WALL_OPENING)),
      sill: maybe(quantity('length', 'sill', 'not-negative', SILL)),
      count,
    },
    all(
      oneOf(['width', 'height'], ['diameter'], ['sides', 'side']),
      allOrNone('width', 'height'),
      allOrNone('sides', 'side'),
    ),
  );
  const pilaster = fields({
    width: l('width', PILASTER),
    projection: l('projection', PILASTER),
    height: maybe(l('height', WALL_HEIGHT)),
    count,
  });
  const parts = {
    height: l('height', WALL_HEIGHT),
    thickness: l('thickness', WALL_THICKNESS),
    topThickness: maybe(l('topThickness', WALL_THICKNESS)),
    openings: maybe(list(opening, 0, 500)),
    pilasters: maybe(list(pilaster, 0, 500)),
    foam: maybe(l('foam', FOAM)),
    webShare: maybe(quantity('ratio', 'webShare', 'not-negative', WEB_SHARE)),
    count,
  };
  const wall = kinds('kind', [
    fields({
      kind: word('straight'),
      length: l('length', WALL_LENGTH),
      endHeight: maybe(quantity('length', 'endHeight', 'not-negative', WALL_HEIGHT)),
      ...parts,
    }),
    fields({
      kind: word('loop'),
      outerLength: l('outerLength', WALL_LENGTH),
      outerWidth: l('outerWidth', WALL_LENGTH),
      ...parts,
    }),
    fields({ kind: word('ring'), outerDiameter: l('outerDiameter', WALL_LENGTH), ...parts }),
  ]);
  return fields({
    walls: list(wall, 1, 200),
    deductFrom: maybe(quantity('area', 'deductFrom', 'positive', LEAST_OPENING)),
    anchors: maybe(plateAnchors()),
  });
}
