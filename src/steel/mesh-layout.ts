/**
 * Welded wire mesh over a rectangle, in sheets or from rolls, with laps.
 *
 * Strips side by side: `n = ceil((W − l) ÷ (w − l))` with side lap `l`. Along a strip of sheets:
 * `k = ceil((L − e) ÷ (s − e))` with end lap `e`. From rolls, every strip is run in one line and a
 * new roll is lapped on where one ends. Offcuts are not used again here.
 */
import * as faults from '../quantity/faults';
import { constant, length, massPerArea, ratio } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { PEARSON_MESH, WRI_STYLES } from '../reckoning/source';

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

/** Pounds per 100 ft2 with the edge wires, as published. */
const WEIGHTS: Record<MeshStyle, string> = {
  '6x6-W1.4xW1.4': '21',
  '6x6-W2.0xW2.0': '29',
  '6x6-W2.9xW2.9': '42',
  '6x6-W4.0xW4.0': '58',
  '4x4-W1.4xW1.4': '31',
  '4x4-W2.0xW2.0': '43',
  '4x4-W2.9xW2.9': '62',
  '4x4-W4.0xW4.0': '85',
  '6x6-W5.5xW5.5': '80',
};

/** Input of {@link meshLayout}. */
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

/** Figures of {@link meshLayout}. */
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
const SIDE_LAP = constant(() => length('6 in'));
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

function laps(input: Parsed, pad: Pad): { side: Length; end: Length } {
  const side = input.sideLap ?? SIDE_LAP();
  if (!input.sideLap) {
    pad.assume({
      name: 'sideLap',
      value: side.format(),
      because: 'one square of 6 in mesh',
      override: 'Give sideLap from the plans',
      source: PEARSON_MESH,
    });
  }
  if (!input.endLap) {
    pad.assume({
      name: 'endLap',
      value: side.format(),
      because: 'the same as the side lap',
      override: 'Give endLap from the plans',
      source: PEARSON_MESH,
    });
  }
  const end = input.endLap ?? side;
  if (!side.lessThan(input.pieceWidth)) refuse('sideLap', faults.doesNotFit('the side lap', 'pieceWidth'));
  if (!end.lessThan(input.pieceLength)) refuse('endLap', faults.doesNotFit('the end lap', 'pieceLength'));
  return { side, end };
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

function weigh(style: MeshStyle, bought: Quantity<'area'>, pad: Pad): Quantity<'mass'> {
  const u = massPerArea(`${WEIGHTS[style]} lb/ft2`).times(ratio('1%'));
  return pad.step('weight', 'M = B × u', { B: bought, u }, bought.times(u));
}

function reckon(input: Parsed, pad: Pad): MeshLayoutFigures {
  const { length: L, width: W, pieceLength: s, pieceWidth: w, style } = input;
  const { side: l, end: e } = laps(input, pad);
  const n = inRow(W, w, l);
  pad.step('strips', W.greaterThan(w) ? 'n = ceil((W − l) ÷ (w − l))' : 'n = 1', { W, l, w }, n);
  const p = input.form === 'sheets' ? sheets(input, n, e, pad) : rolls(input, n, e, pad);
  const pieceArea = pad.step('area of a piece', 'a = s × w', { s, w }, s.times(w));
  const B = pad.step('area bought', 'B = p × a', { p, a: pieceArea }, pieceArea.times(p));
  const allowance = pad.step('extra for side laps', 'x = l ÷ (w − l)', { l, w }, l.over(w.minus(l)).in('%'));
  pad.caution(cautions.meshOnGround);
  return {
    pieces: p,
    strips: n,
    area: L.times(W),
    areaBought: B,
    pieceArea,
    lapAllowance: allowance,
    ...(style ? { weight: weigh(style, B, pad) } : {}),
  };
}

/**
 * Welded wire mesh over a rectangle.
 *
 * @param input - the rectangle, the sheets or rolls, the laps
 * @returns pieces to buy, strips, areas and weight
 * @throws {InputError} `does-not-fit` for laps too large; `too-many` pieces; lengths that cannot be
 * read or are not greater than zero
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
 * ```
 */
export const meshLayout: Calculation<MeshLayoutInput, MeshLayoutFigures> = /*#__PURE__*/ define({
  id: 'mesh-layout',
  title: 'Welded wire mesh',
  version: 1,
  sources: [PEARSON_MESH, WRI_STYLES],
  input: () =>
    fields({
      length: quantity('length', 'length'),
      width: quantity('length', 'width'),
      form: choice('form', ['sheets', 'rolls'] as const),
      pieceLength: quantity('length', 'pieceLength'),
      pieceWidth: quantity('length', 'pieceWidth'),
      sideLap: maybe(quantity('length', 'sideLap', 'not-negative')),
      endLap: maybe(quantity('length', 'endLap', 'not-negative')),
      style: maybe(choice('style', Object.keys(WEIGHTS) as MeshStyle[])),
    }),
  reckon,
});
