/** What is given to check a surface: spots, lines, sills, inflows and what the slopes must be; read at the door. */
import type { PointInput } from '../outline/outline';
import { constant, length } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { choice, type Field, fields, label, list, maybe, quantity } from '../reckoning/fields';
import { anyOf, given } from '../reckoning/together';
import { GRADE_USES, type GradeUse } from './limits';
import { lines as lineFields, type ParsedLine, type Place, place, type SurfaceLineInput } from './lines';
import * as ordinary from './ordinary';
import { type ParsedSpots, SPOT_KEYS, type SpotsInput, spotFields } from './spots';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

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
export interface ParsedSurface extends ParsedSpots {
  readonly lines: readonly ParsedLine[] | undefined;
  readonly outline: readonly Place[] | undefined;
  readonly use: GradeUse | undefined;
  readonly minimum: Slope | undefined;
  readonly minimumBeyond: Slope | undefined;
  readonly minimumValley?: Slope | undefined;
  readonly maximum: Slope | undefined;
  readonly zone: Length | undefined;
  readonly nearLine: Length | undefined;
  readonly pondDepth: Length | undefined;
  readonly sills:
    | readonly { readonly name: string; readonly at: Place; readonly elevation: Length }[]
    | undefined;
  readonly inflows:
    | readonly {
        readonly name: string;
        readonly at: Place;
        readonly flow: Quantity<'volume-rate'> | undefined;
      }[]
    | undefined;
}

export const OUTLINE_LIMIT = 500;

const PLACE_LIMIT = 100;

export const ZONE = constant(() => length('10 ft'));

/** The schema of a surface. */
export const surfaceFields = (): Field<ParsedSurface> =>
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
