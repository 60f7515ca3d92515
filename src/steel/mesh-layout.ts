/**
 * Welded wire mesh in sheets or from rolls, with laps. Any outline: see `mesh-region`.
 *
 * A rectangle is read into an outline that is covered to its edges, with strips along its length:
 * `n = ceil((W − l) ÷ (w − l))` of them with side lap `l`.
 */

import { angle, constant, length } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, readInput } from '../reckoning/calculation';
import { choice, eitherBy, type Field, fields, maybe, quantity } from '../reckoning/fields';
import { withinTimes } from '../reckoning/limits';
import { PLAN_LENGTH } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import type { Result } from '../reckoning/result';
import { NEAR_LINES } from './mat';
import { CUT_TO, MESH_LAP, SHEET_LENGTH, SHEET_WIDTH, SUPPORTS_APART } from './mat-ordinary';
import { WIRE_SUPPORTS_BY_SIZE } from './mat-sources';
import { NEAR_STRIPS } from './mesh-cover';
import {
  CORNER_LIMIT,
  LENGTH_LIMIT,
  type MeshPlace,
  type MeshRegionFigures,
  type MeshRegionInput,
  meshPlacesOf,
  meshRegionInput,
  type ParsedMeshRegion,
  PIECE_LIMIT,
  reckonMeshRegion,
  SUPPORT_LIMIT,
} from './mesh-region';
import { unknownStyle } from './mesh-style';
import { PEARSON_MESH, WIRE_SUPPORTS, WRI_STYLES } from './sources';
import { styleField, type WireStyle, writeMetricStyle, writeStyle } from './wire';

/** Input of {@link meshLayout} for a rectangle. */
export interface MeshLayoutInput {
  /** Length to be covered, with the edge cover taken off already. */
  readonly length: QuantityInput<'length'>;
  /** Width to be covered. */
  readonly width: QuantityInput<'length'>;
  /** Whether the mesh comes in sheets or rolls. */
  readonly form: 'sheets' | 'rolls';
  /** Length of a sheet or a roll; it is laid along `length`. */
  readonly pieceLength: QuantityInput<'length'>;
  /** Width of a sheet or a roll. */
  readonly pieceWidth: QuantityInput<'length'>;
  /** Overlap of neighboring strips; by default one square, 6 in or 150 mm where no style is given. */
  readonly sideLap?: QuantityInput<'length'>;
  /** Overlap end to end; by default one square, or the side lap where that is given. */
  readonly endLap?: QuantityInput<'length'>;
  /** Pieces are cut to a multiple of this; by default 1 in, or 10 mm. */
  readonly cutTo?: QuantityInput<'length'>;
  /** Style, where the weight is wanted: any designation. */
  readonly style?: string;
  /** Between chairs or blocks, both ways; by default 3 ft, or 0.9 m, or 2 ft, or 0.6 m, under light wire. */
  readonly supports?: QuantityInput<'length'>;
}

/** Figures of {@link meshLayout} for a rectangle: those over an outline, and what laps take. */
export interface MeshLayoutFigures extends MeshRegionFigures {
  /** Area covered. */
  readonly area: Quantity<'area'>;
  /** What one side lap takes of the width of a piece, over what is left: the extra that laps cost. */
  readonly lapAllowance: Quantity<'ratio'>;
}

type Length = Quantity<'length'>;

interface ParsedRectangle {
  readonly length: Length;
  readonly width: Length;
  readonly form: 'sheets' | 'rolls';
  readonly pieceLength: Length;
  readonly pieceWidth: Length;
  readonly sideLap: Length | undefined;
  readonly endLap: Length | undefined;
  readonly cutTo: Length | undefined;
  readonly style: WireStyle | undefined;
  readonly supports: Length | undefined;
}

const NOTHING = constant(() => length('0 in'));
const ALONG = constant(() => angle('0 deg'));

/** The same mesh over an outline. */
function asRegion(input: ParsedRectangle): ParsedMeshRegion {
  const { length: long, width, ...mesh } = input;
  return {
    ...mesh,
    outline: { shape: 'rectangle', length: long, width },
    openings: undefined,
    edge: NOTHING(),
    angle: ALONG(),
  };
}

function reckonRectangle(input: ParsedRectangle, pad: Pad): MeshLayoutFigures {
  const { length: L, width: W, pieceLength: s, pieceWidth: w } = input;
  withinTimes(PIECE_LIMIT, L.over(s), 'pieceLength');
  withinTimes(PIECE_LIMIT, W.over(w), 'pieceLength');
  const { sideLap: l, ...figures } = reckonMeshRegion(asRegion(input), pad);
  if (W.greaterThan(w)) pad.step('strips', 'n = ceil((W − l) ÷ (w − l))', { W, l, w }, figures.strips);
  else pad.step('strips', 'n = 1', {}, figures.strips);
  const lapAllowance = pad.step(
    'extra for side laps',
    'x = l ÷ (w − l)',
    { l, w },
    l.over(w.minus(l)).in('%'),
  );
  const area = pad.step('area to cover', 'A = L × W', { L, W }, L.times(W));
  return { ...figures, sideLap: l, area, lapAllowance };
}

const rectangleInput = (): Field<ParsedRectangle> =>
  fields({
    length: quantity('length', 'length', 'positive', PLAN_LENGTH),
    width: quantity('length', 'width', 'positive', PLAN_LENGTH),
    form: choice('form', ['sheets', 'rolls'] as const),
    pieceLength: quantity('length', 'pieceLength', 'positive', SHEET_LENGTH),
    pieceWidth: quantity('length', 'pieceWidth', 'positive', SHEET_WIDTH),
    sideLap: maybe(quantity('length', 'sideLap', 'not-negative', MESH_LAP)),
    endLap: maybe(quantity('length', 'endLap', 'not-negative', MESH_LAP)),
    cutTo: maybe(quantity('length', 'cutTo', 'positive', CUT_TO)),
    style: maybe(styleField(unknownStyle)),
    supports: maybe(quantity('length', 'supports', 'positive', SUPPORTS_APART)),
  });

/** What goes into {@link meshLayout}: a rectangle by its sides, or an outline. */
export type MeshInput = MeshLayoutInput | MeshRegionInput;

/** Figures of either kind of input: what only a rectangle has is there after `'area' in figures`. */
export type MeshFigures = MeshLayoutFigures | MeshRegionFigures;

/** {@link meshLayout}: one calculation with two kinds of input, each with its figures. */
export interface MeshLayout extends Calculation<MeshInput, MeshFigures> {
  /** Reckon mesh over a rectangle. */
  (input: MeshLayoutInput): Result<MeshLayoutFigures>;
  /** Reckon mesh over an outline. */
  (input: MeshRegionInput): Result<MeshRegionFigures>;
  /** Reckon either kind of input. */
  (input: MeshInput): Result<MeshFigures>;
}

/**
 * Welded wire mesh over a rectangle by its sides, or over any outline with openings.
 *
 * Cutoffs are used again; over an outline the strips are tried both ways.
 *
 * @param input - the rectangle or the outline, the sheets or rolls, the laps
 * @returns pieces to buy, strips, areas and weight; over an outline also what is laid
 * @throws {InputError} `does-not-fit` for laps or edges too large; `too-many` pieces; the codes of an outline;
 * `unknown-designation` for a style; lengths that cannot be read or are not greater than zero
 * @source laps: Estimating in Building Construction, 7th ed., page 102; weights: table I of the wire
 * numbering article in Concrete Construction, October 1975
 * @example
 * ```ts
 * import { meshLayout } from 'flatwork-reckoner';
 *
 * const { figures } = meshLayout({
 *   length: '27 ft 6 in',
 *   width: '17 ft 6 in',
 *   form: 'rolls',
 *   pieceLength: '150 ft',
 *   pieceWidth: '5 ft',
 *   style: '6x6-W1.4xW1.4',
 * });
 * figures.strips.format(); // '4 each'
 * figures.pieces.format(); // '1 each'
 *
 * const ell = meshLayout({
 *   outline: { shape: 'L', length: '28 ft', width: '18 ft', notchLength: '8 ft', notchWidth: '6 ft' },
 *   form: 'sheets',
 *   pieceLength: '10 ft',
 *   pieceWidth: '5 ft',
 * });
 * ell.figures.pieces.format(); // '11 each'
 * ```
 */
export const meshLayout: MeshLayout = /*#__PURE__*/ define<
  MeshInput,
  ParsedRectangle | ParsedMeshRegion,
  MeshFigures
>({
  id: 'mesh-layout',
  title: 'Welded wire mesh',
  version: 2,
  limits: [CORNER_LIMIT, PIECE_LIMIT, LENGTH_LIMIT, SUPPORT_LIMIT, NEAR_STRIPS, NEAR_LINES],
  sources: [PEARSON_MESH, WRI_STYLES, WIRE_SUPPORTS, WIRE_SUPPORTS_BY_SIZE],
  input: () => eitherBy<ParsedRectangle | ParsedMeshRegion>('outline', meshRegionInput(), rectangleInput()),
  reckon: (input, pad) => ('outline' in input ? reckonMeshRegion(input, pad) : reckonRectangle(input, pad)),
  takes: (_, { style, form, pieceLength, pieceWidth }) => [
    {
      item: 'mesh',
      from: 'pieces',
      of: {
        style: style && (style.fabric ?? (style.metric ? writeMetricStyle(style) : writeStyle(style))),
        form,
        pieceLength,
        pieceWidth,
      },
    },
    { item: 'bar-support', from: 'supports' },
  ],
}) as unknown as MeshLayout;

/**
 * Where the pieces of mesh of `meshLayout` lie, for drawing and for checking: plain meters, not figures.
 *
 * @param input - the same as for `meshLayout` over an outline
 * @returns each piece laid, by its four corners
 * @throws {InputError} as `meshLayout` does
 * @example
 * ```ts
 * import { meshPlaces } from 'flatwork-reckoner';
 *
 * const places = meshPlaces({
 *   outline: { shape: 'rectangle', length: '10 ft', width: '8 ft' },
 *   form: 'sheets',
 *   pieceLength: '10 ft',
 *   pieceWidth: '5 ft',
 * });
 * places.length; // 2
 * ```
 */
export function meshPlaces(input: MeshRegionInput): readonly MeshPlace[] {
  return meshPlacesOf(readInput(meshRegionInput(), input)).places;
}
