/** Laps of mesh, given or usual, checked against the pieces. */
import * as faults from '../quantity/faults';
import { constant, length } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { PEARSON_MESH } from '../reckoning/source';

type Length = Quantity<'length'>;

interface Laps {
  readonly pieceLength: Length;
  readonly pieceWidth: Length;
  readonly sideLap: Length | undefined;
  readonly endLap: Length | undefined;
}

const SIDE_LAP = constant(() => length('6 in'));

/** Side and end lap. */
export function meshLaps(input: Laps, pad: Pad): { side: Length; end: Length } {
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
