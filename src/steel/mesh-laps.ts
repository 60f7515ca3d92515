/** Laps of mesh, given or usual, checked against the pieces. */

import * as faults from '../quantity/faults';
import { lesserOf } from '../quantity/greater';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { shortMeshLap } from './mat-cautions';
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
const USUAL_SQUARE = /*#__PURE__*/ paired('length', '6 in', '150 mm');

/** A twentieth of a square may lack: 150 mm is the lap of 6 in squares too. */
const [MOST_OF, WHOLE] = [19, 20];
/** Squares of structural fabric are longer one way than anybody laps. */
const LONGEST_SQUARE = /*#__PURE__*/ paired('length', '12 in', '300 mm');

/** A given lap that holds no square of the mesh, where pieces lie beside or behind each other. */
export function heedMeshLaps(
  { style, sideLap, endLap }: Laps,
  lapped: { readonly side: boolean; readonly end: boolean },
  pad: Pad,
): void {
  if (!style) return;
  const end = endLap ?? sideLap;
  const laps = [
    ...(lapped.side && sideLap ? [{ lap: sideLap, square: style.along.spacing }] : []),
    ...(lapped.end && end ? [{ lap: end, square: style.across.spacing }] : []),
  ].map(({ lap, square }) => ({ lap, square: lesserOf(square, LONGEST_SQUARE.like(square)) }));
  const short = laps.filter(({ lap, square }) =>
    lap.times(wholeNumber(WHOLE)).lessThan(square.times(wholeNumber(MOST_OF))),
  );
  const worst = short.reduce<(typeof short)[number] | undefined>(
    (one, other) => (one && !other.lap.lessThan(one.lap) ? one : other),
    undefined,
  );
  if (worst) pad.caution(shortMeshLap(worst.square, worst.lap));
}

/** Side and end lap. */
export function meshLaps(input: Laps, pad: Pad): { side: Length; end: Length } {
  const { style, pieceLength } = input;
  // Strips lap by the squares between wires along them, ends by those between wires across.
  const square = style?.along.spacing ?? USUAL_SQUARE.like(pieceLength);
  const side = input.sideLap ?? square;
  if (!input.sideLap) {
    pad.assume({
      name: 'sideLap',
      value: { reckoned: side },
      because: style ? 'one square of the mesh' : 'one square of the mesh that is sold most',
      override: 'Give sideLap from the plans',
      source: PEARSON_MESH,
    });
  }
  const end = input.endLap ?? (input.sideLap ? side : (style?.across.spacing ?? side));
  if (!input.endLap) {
    pad.assume({
      name: 'endLap',
      value: { reckoned: end },
      because: input.sideLap || !style ? 'the same as the side lap' : 'one square of the mesh',
      override: 'Give endLap from the plans',
      source: PEARSON_MESH,
    });
  }
  if (!side.lessThan(input.pieceWidth)) refuse('sideLap', faults.doesNotFit('the side lap', 'pieceWidth'));
  if (!end.lessThan(input.pieceLength)) refuse('endLap', faults.doesNotFit('the end lap', 'pieceLength'));
  return { side, end };
}
