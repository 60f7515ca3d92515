/** Laps of mesh, given or usual, checked against the pieces. */
import * as faults from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { lengthPair, namedLike } from './common';
import { PEARSON_MESH } from './sources';
import type { WireStyle } from './wire';

type Length = Quantity<'length'>;

interface Laps {
  readonly pieceLength: Length;
  readonly pieceWidth: Length;
  readonly sideLap: Length | undefined;
  readonly endLap: Length | undefined;
  readonly style: WireStyle | undefined;
}

/** One square of the mesh that is sold most. */
const USUAL_SQUARE = /*#__PURE__*/ lengthPair('6 in', '150 mm');

/** Side and end lap. */
export function meshLaps(input: Laps, pad: Pad): { side: Length; end: Length } {
  const { style, pieceLength } = input;
  // Strips lap by the squares between wires along them, ends by those between wires across.
  const square = style?.along.spacing ?? namedLike(USUAL_SQUARE(), pieceLength);
  const side = input.sideLap ?? square;
  if (!input.sideLap) {
    pad.assume({
      name: 'sideLap',
      value: side,
      because: style ? 'one square of the mesh' : 'one square of the mesh that is sold most',
      override: 'Give sideLap from the plans',
      source: PEARSON_MESH,
    });
  }
  const end = input.endLap ?? (input.sideLap ? side : (style?.across.spacing ?? side));
  if (!input.endLap) {
    pad.assume({
      name: 'endLap',
      value: end,
      because: input.sideLap || !style ? 'the same as the side lap' : 'one square of the mesh',
      override: 'Give endLap from the plans',
      source: PEARSON_MESH,
    });
  }
  if (!side.lessThan(input.pieceWidth)) refuse('sideLap', faults.doesNotFit('the side lap', 'pieceWidth'));
  if (!end.lessThan(input.pieceLength)) refuse('endLap', faults.doesNotFit('the end lap', 'pieceLength'));
  return { side, end };
}
