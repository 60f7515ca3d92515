/** What is given to check a surface: spots, lines, sills, inflows and what the slopes must be; read at the door. */
import type { PointInput } from '../outline/outline';
import { paired } from '../quantity/paired';
import type { QuantityInput } from '../quantity/quantity';
import { choice, fields, label, list, maybe, quantity } from '../reckoning/fields';
import type { Read } from '../reckoning/read';
import { anyOf, given } from '../reckoning/together';
import { GRADE_USES, type GradeUse } from './limits';
import { lines as lineFields, place, type SurfaceLineInput } from './lines';
import * as ordinary from './ordinary';
import { SPOT_KEYS, type SpotsInput, spotFields } from './spots';

/** A sill or threshold that the surface must stay below. */
export interface SillInput {
  /** What the sill is called. */
  readonly name: string;
  /** The spot below it, or a point of the surface. */
  readonly at: string | PointInput;
  /** Elevation of the sill, on the datum of the spots. */
  readonly elevation: QuantityInput<'length'>;
}

/** A downspout or other inflow. */
export interface InflowInput {
  /** What the inflow is called. */
  readonly name: string;
  /** The spot where it comes down, or a point of the surface. */
  readonly at: string | PointInput;
  /** How much it brings; see the calculation `runoff`. */
  readonly flow?: QuantityInput<'volume-rate'>;
}

/** Input of the drainage check of a surface. */
export interface SurfaceDrainageInput extends SpotsInput {
  /** Walls, thresholds, curbs, drains and open edges. */
  readonly lines?: readonly SurfaceLineInput[];
  /** Corners of the slab in order, where it is not everything between the spots. */
  readonly outline?: readonly (string | PointInput)[];
  /** What the surface is used as; decides the least slope where none is given. */
  readonly use?: GradeUse;
  /** Least slope away from a building within `zone`; goes before that of `use`. */
  readonly minimum?: QuantityInput<'slope'>;
  /** Least slope beyond `zone`; by default 1%. */
  readonly minimumBeyond?: QuantityInput<'slope'>;
  /**
   * Least fall along a valley, where two facets drain into the side between them, and along a curb; by
   * default 0.3% on paving and 0.5% on ground, or 2% on ground within `zone` of a building that the valley
   * keeps water from.
   */
  readonly minimumValley?: QuantityInput<'slope'>;
  /** The most that the surface may slope in any direction; goes before that of `use`. */
  readonly maximum?: QuantityInput<'slope'>;
  /** How far from a building `minimum` applies; by default 10 ft. */
  readonly zone?: QuantityInput<'length'>;
  /** How near a spot must be to a line to lie on it; by default 1/2 in. */
  readonly nearLine?: QuantityInput<'length'>;
  /** Ponds up to this depth do not change the verdict; by default 1/8 in. */
  readonly pondDepth?: QuantityInput<'length'>;
  /** Sills whose clearance over the surface is wanted; none by default. */
  readonly sills?: readonly SillInput[];
  /** Downspouts and the like, to be followed down the surface; none by default. */
  readonly inflows?: readonly InflowInput[];
}

/** The input, read. */
export type ParsedSurface = Read<SurfaceDrainageInput>;

export const OUTLINE_LIMIT = 500;

const PLACE_LIMIT = 100;

export const ZONE = /*#__PURE__*/ paired('length', '10 ft', '3 m');

/** The schema of a surface. */
export const surfaceFields = () =>
  fields(
    {
      ...spotFields(),
      lines: maybe(lineFields()),
      outline: maybe(list(place('each corner'), 3, OUTLINE_LIMIT)),
      use: maybe(choice('use', GRADE_USES)),
      minimum: maybe(quantity('slope', 'minimum', 'not-negative', ordinary.LEAST_FALL)),
      minimumBeyond: maybe(quantity('slope', 'minimumBeyond', 'not-negative', ordinary.LEAST_FALL)),
      minimumValley: maybe(quantity('slope', 'minimumValley', 'not-negative', ordinary.LEAST_FALL)),
      maximum: maybe(quantity('slope', 'maximum', 'positive', ordinary.MOST_FALL)),
      zone: maybe(quantity('length', 'zone', 'positive', ordinary.ZONE)),
      nearLine: maybe(quantity('length', 'nearLine', 'positive', ordinary.NEAR_LINE)),
      pondDepth: maybe(quantity('length', 'pondDepth', 'not-negative', ordinary.POND_DEPTH)),
      sills: maybe(
        list(
          fields({
            name: label('name'),
            at: place('at'),
            elevation: quantity('length', 'elevation', 'any', ordinary.ELEVATION),
          }),
          0,
          PLACE_LIMIT,
        ),
      ),
      inflows: maybe(
        list(
          fields({
            name: label('name'),
            at: place('at'),
            flow: maybe(quantity('volume-rate', 'flow', 'not-negative', ordinary.INFLOW)),
          }),
          0,
          PLACE_LIMIT,
        ),
      ),
    },
    anyOf(...SPOT_KEYS.map((name) => given(name))),
  );
