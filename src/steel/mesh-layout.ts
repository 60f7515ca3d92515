/**
 * Welded wire mesh in sheets or from rolls, with laps. Any outline: see `mesh-region`.
 *
 * Over a rectangle:
 * Strips side by side: `n = ceil((W − l) ÷ (w − l))` with side lap `l`. Along a strip of sheets:
 * `k = ceil((L − e) ÷ (s − e))` with end lap `e`. From rolls, every strip is run in one line and a
 * new roll is lapped on where one ends. Offcuts are not used again here.
 */
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, eitherBy, type Field, fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { PEARSON_MESH, WRI_STYLES } from '../reckoning/source';
import { throughDoor } from './common';
import { meshLaps } from './mesh-laps';
import {
  type MeshPlace,
  type MeshRegionFigures,
  type MeshRegionInput,
  meshPlacesOf,
  meshRegionInput,
  type ParsedMeshRegion,
  reckonMeshRegion,
} from './mesh-region';
import { STOCK_STYLES, stockWeight } from './wire';

/** Styles with a published weight. */
export type MeshStyle =
  | '6x6-W1.4xW1.4'
  | '6x6-W2.0xW2.0'
  | '6x6-W2.9xW2.9'
  | '6x6-W4.0xW4.0'
  | '4x4-W1.4xW1.4'
  | '4x4-W2.0xW2.0'
  | '4x4-W2.9xW2.9'
  | '4x4-W4.0xW4.0'
  | '6x6-W5.5xW5.5';

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
  /** Overlap of neighbouring strips; by default 6 in. */
  readonly sideLap?: QuantityInput<'length'>;
  /** Overlap end to end; by default the side lap. */
  readonly endLap?: QuantityInput<'length'>;
  /** Style, where the weight is wanted. */
  readonly style?: MeshStyle;
}

/** Figures of {@link meshLayout} for a rectangle. */
export interface MeshLayoutFigures {
  /** Whole sheets or rolls to buy. */
  readonly pieces: Quantity<'count'>;
  /** Strips side by side. */
  readonly strips: Quantity<'count'>;
  /** Area covered. */
  readonly area: Quantity<'area'>;
  /** Area bought. */
  readonly areaBought: Quantity<'area'>;
  /** Area of one piece. */
  readonly pieceArea: Quantity<'area'>;
  /** What one side lap takes of the width of a piece, over what is left: the extra that laps cost. */
  readonly lapAllowance: Quantity<'ratio'>;
  /** Weight of what is bought. */
  readonly weight?: Quantity<'mass'>;
}

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

interface Parsed {
  readonly length: Length;
  readonly width: Length;
  readonly form: 'sheets' | 'rolls';
  readonly pieceLength: Length;
  readonly pieceWidth: Length;
  readonly sideLap: Length | undefined;
  readonly endLap: Length | undefined;
  readonly style: MeshStyle | undefined;
}

const PIECE_LIMIT = 100_000;
const ONE = constant(() => wholeNumber(1));

function ceilOver(a: Length, b: Length): Count {
  if (a.over(b).greaterThan(ratio(`${PIECE_LIMIT}:1`))) {
    refuse('pieceLength', faults.tooMany('the mesh in pieces', PIECE_LIMIT));
  }
  return wholeNumber(Math.round(a.upTo(b).over(b).toNumber(':1')));
}

/** Pieces in a row that cover a distance with laps; one when a piece is long enough. */
function inRow(distance: Length, piece: Length, lap: Length): Count {
  return distance.greaterThan(piece) ? ceilOver(distance.minus(lap), piece.minus(lap)) : ONE();
}

function sheets(input: Parsed, n: Count, e: Length, pad: Pad): Count {
  const { length: L, pieceLength: s } = input;
  const k = inRow(L, s, e);
  pad.step('sheets in a strip', L.greaterThan(s) ? 'k = ceil((L − e) ÷ (s − e))' : 'k = 1', { L, e, s }, k);
  return pad.step('sheets', 'p = n × k', { n, k }, n.times(k));
}

function rolls(input: Parsed, n: Count, e: Length, pad: Pad): Count {
  const { length: L, pieceLength: s } = input;
  const run = pad.step('strips in one line', 'R = n × L', { n, L }, L.times(n));
  const p = inRow(run, s, e);
  const formula = run.greaterThan(s) ? 'p = ceil((R − e) ÷ (s − e))' : 'p = 1';
  return pad.step('rolls', formula, { R: run, e, s }, p);
}

function weigh(style: MeshStyle, bought: Quantity<'area'>, pad: Pad): Quantity<'mass'> | undefined {
  const u = stockWeight(style);
  return u && pad.step('weight', 'M = B × u', { B: bought, u }, bought.times(u));
}

function reckonRectangle(input: Parsed, pad: Pad): MeshLayoutFigures {
  const { length: L, width: W, pieceLength: s, pieceWidth: w, style } = input;
  const { side: l, end: e } = meshLaps(input, pad);
  const n = inRow(W, w, l);
  pad.step('strips', W.greaterThan(w) ? 'n = ceil((W − l) ÷ (w − l))' : 'n = 1', { W, l, w }, n);
  const p = input.form === 'sheets' ? sheets(input, n, e, pad) : rolls(input, n, e, pad);
  const pieceArea = pad.step('area of a piece', 'a = s × w', { s, w }, s.times(w));
  const B = pad.step('area bought', 'B = p × a', { p, a: pieceArea }, pieceArea.times(p));
  const allowance = pad.step('extra for side laps', 'x = l ÷ (w − l)', { l, w }, l.over(w.minus(l)).in('%'));
  pad.caution(cautions.meshOnGround);
  if (input.form === 'rolls') pad.caution(cautions.rollsSpring);
  const weight = style ? weigh(style, B, pad) : undefined;
  return {
    pieces: p,
    strips: n,
    area: L.times(W),
    areaBought: B,
    pieceArea,
    lapAllowance: allowance,
    ...(weight ? { weight } : {}),
  };
}

const rectangleInput = (): Field<Parsed> =>
  fields({
    length: quantity('length', 'length'),
    width: quantity('length', 'width'),
    form: choice('form', ['sheets', 'rolls'] as const),
    pieceLength: quantity('length', 'pieceLength'),
    pieceWidth: quantity('length', 'pieceWidth'),
    sideLap: maybe(quantity('length', 'sideLap', 'not-negative')),
    endLap: maybe(quantity('length', 'endLap', 'not-negative')),
    style: maybe(choice('style', STOCK_STYLES as readonly MeshStyle[])),
  });

/** {@link meshLayout}: one calculation with two kinds of input, each with its figures. */
export type MeshLayout = Calculation<MeshLayoutInput, MeshLayoutFigures> &
  Calculation<MeshRegionInput, MeshRegionFigures>;

/**
 * Welded wire mesh over a rectangle by its sides, or over any outline with openings.
 *
 * Over an outline the strips are tried both ways and offcuts are used again.
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
  MeshLayoutInput,
  Parsed | ParsedMeshRegion,
  MeshLayoutFigures | MeshRegionFigures
>({
  id: 'mesh-layout',
  title: 'Welded wire mesh',
  version: 1,
  sources: [PEARSON_MESH, WRI_STYLES],
  input: () => eitherBy<Parsed | ParsedMeshRegion>('outline', meshRegionInput(), rectangleInput()),
  reckon: (input, pad) => ('outline' in input ? reckonMeshRegion(input, pad) : reckonRectangle(input, pad)),
}) as unknown as MeshLayout;

/**
 * Where the pieces of mesh of `meshLayout` lie, for drawing and for checking: plain metres, not figures.
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
  return throughDoor(input, meshRegionInput, meshPlacesOf).places;
}
