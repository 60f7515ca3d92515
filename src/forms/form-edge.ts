/** One edge of the forms: its stakes, what to mark at them, and its kerfs. */

import { toMark } from '../grade/marks';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { timesUp } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { type Curves, kerfsOf } from './bending';
import { countSteps, jointsOf, type Piece } from './boarding';
import type { BoardSize } from './boards';
import type { Boarded } from './form-boards';
import type { FormedEdge, StakeMark } from './form-figures';
import type { Spacings } from './staking';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** No job has more. */
export const MARKS: Limit = { of: 'the marks at the stakes of one edge', most: 1_000 };

/** What all edges have in common. */
export interface Job {
  readonly size: BoardSize;
  readonly spacings: Spacings;
  readonly riser: boolean;
  readonly curves: Curves | undefined;
}

/** The stakes of one edge: at both ends of each board; under a riser, which side forms hold, only between. */
function stakesAlong({ edge, pieces }: Boarded, { spacings, riser }: Job, pad: Pad): Count {
  const spacing = edge.radius ? spacings.curved : spacings.straight;
  const what = riser ? 'supports under' : 'stakes behind';
  return countSteps(what, edge, pieces, { spacing, more: riser ? -1 : 1 }, pad);
}

/** Where the stakes of a board stand, from its start. */
function* placesOf(pieces: readonly Piece[], s: Length): Generator<Length> {
  let start: Length | undefined;
  for (const { length: p, count } of pieces) {
    const n = timesUp(p, s);
    for (let board = 0; board < count; board += 1) {
      const from: Length = start ?? p.minus(p);
      // The end of one board is the start of the next.
      for (let i = start ? 1 : 0; i <= n; i += 1) {
        yield i === n ? from.plus(p) : from.plus(p.times(wholeNumber(i)).over(wholeNumber(n)));
      }
      start = from.plus(p);
    }
  }
}

function marksOf({ edge, pieces }: Boarded, s: Length, pad: Pad): StakeMark[] {
  const { fall: f, length: L, name, path } = edge;
  if (!f) return [];
  const marks: StakeMark[] = [];
  for (const at of placesOf(pieces, s)) {
    withinLimit(MARKS, marks.length + 1, path);
    const down = f
      .times(at)
      .over(L)
      .in(pad.system === 'metric' ? 'mm' : 'in');
    marks.push({ at, down, mark: toMark(down) });
  }
  const i = Math.min(1, marks.length - 1);
  const { at: x, down } = marks[i] as StakeMark;
  pad.step(say`fall to the second stake of ${{ name }}`, 'd = f × x ÷ L', { f, x, L }, down);
  return marks;
}

/** What is told of one edge. */
export function edgeFigure(boarded: Boarded, job: Job, pad: Pad): FormedEdge {
  const { edge, pieces } = boarded;
  const { name, length, count, radius, fall } = edge;
  const s = radius ? job.spacings.curved : job.spacings.straight;
  const kerfed =
    job.curves?.kind === 'kerfed' ? kerfsOf(edge, job.size.thickness, job.curves.width, pad) : {};
  return {
    name,
    length,
    count: wholeNumber(count),
    ...(radius ? { radius } : {}),
    pieces: pieces.map((p) => ({ length: p.length, count: wholeNumber(p.count) })),
    joints: wholeNumber(jointsOf(edge, pieces)),
    stakes: stakesAlong(boarded, job, pad),
    ...kerfed,
    ...(fall ? { marks: marksOf(boarded, s, pad) } : {}),
  };
}
