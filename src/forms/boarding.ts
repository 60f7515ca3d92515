/**
 * How edges are boarded: whole boards end to end and one piece, so that there are as few joints as there can be.
 *
 * An edge of length `L` takes `n = ceil(L ÷ S)` boards of the longest stock `S`. The last three of them may be of any
 * stock lengths that reach; `boarding-ways.ts` looks for those by which all edges together buy the least. A last piece
 * shorter than a board that can be held is made longer at the cost of the one before it.
 */

import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { timesUp } from '../reckoning/whole';
import { say } from '../reckoning/words';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** An edge to be formed. */
export interface Edge {
  readonly name: string;
  /** Where its length stands in the input. */
  readonly path: string;
  readonly length: Length;
  readonly count: number;
  readonly radius?: Length | undefined;
  readonly closed?: true;
  /** A side of an opening, whose boards are nailed together at its corners. */
  readonly boxed?: true;
  readonly fall?: Length | undefined;
}

/** Pieces of one length, so many for an edge. */
export interface Piece {
  readonly length: Length;
  readonly count: number;
}

/** No edge has more. */
export const MOST_BOARDS: Limit = { of: 'the boards of one edge', most: 2_000 };

/** Some boards end to end, the longest first. */
interface Laid {
  readonly boards: readonly Length[];
  readonly length: Length;
}

/** Boards end to end, by how many there are of them: one, two or three, the shortest together first. */
export type Choices = readonly (readonly Laid[])[];

/** The last boards of an edge are chosen among all stock lengths, those before them are the longest. */
const CHOSEN = 3;

/** All ways to lay one, two and three boards end to end. */
export function choicesOf(stock: readonly Length[]): Choices {
  const longestFirst = [...stock].sort((a, b) => b.compareTo(a));
  let laid: Laid[] = longestFirst.map((length) => ({ boards: [length], length }));
  const all = [laid];
  for (let n = 2; n <= CHOSEN; n += 1) {
    laid = laid.flatMap(({ boards, length }) =>
      longestFirst
        .filter((next) => !next.greaterThan(boards.at(-1) as Length))
        .map((next) => ({ boards: [...boards, next], length: length.plus(next) })),
    );
    all.push(laid);
  }
  return all.map((ways) => [...ways].sort((a, b) => a.length.compareTo(b.length)));
}

/** The boards of an edge that come to the least; each number up is the next longer choice. */
export const LEAST_WAY = 0;

/** The longest boards. */
export const LONGEST_WAY = Infinity;

/**
 * The pieces of an edge, the longest first: whole boards, and one cut, or two where one would be too short.
 *
 * @param way - which of the choices that reach, counted from the one that comes to the least
 */
export function piecesOf({ length: L, path }: Edge, choices: Choices, least: Length, way: number): Piece[] {
  const S = choices[0]?.at(-1)?.length as Length;
  withinTimes(MOST_BOARDS, L.over(S), path);
  const n = timesUp(L, S);
  const chosen = Math.min(n, CHOSEN);
  const before = n - chosen;
  const rest = L.minus(S.times(wholeNumber(before)));
  const ways = choices[chosen - 1] as readonly Laid[];
  const first = ways.findIndex((laid) => !laid.length.lessThan(rest));
  const at = first < 0 ? ways.length - 1 : Math.min(first + way, ways.length - 1);
  const { boards, length } = ways[at] as Laid;
  const over = length.minus(rest);
  const last = (boards.at(-1) as Length).minus(over);
  return gathered([
    ...(before > 0 ? [{ length: S, count: before }] : []),
    ...boards.slice(0, -2).map((board) => ({ length: board, count: 1 })),
    ...lastTwo(boards.at(-2), last, least),
  ]);
}

function lastTwo(previous: Length | undefined, last: Length, least: Length): Piece[] {
  if (!previous) return [{ length: last, count: 1 }];
  const both = previous.plus(last);
  const half = both.over(wholeNumber(2));
  const enough = least.lessThan(half) ? least : half;
  const end = last.lessThan(enough) ? enough : last;
  return [
    { length: both.minus(end), count: 1 },
    { length: end, count: 1 },
  ];
}

/** Equal pieces in a row together. */
function gathered(pieces: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  for (const piece of pieces) {
    const before = out.at(-1);
    if (before?.length.compareTo(piece.length) === 0) {
      out[out.length - 1] = { length: before.length, count: before.count + piece.count };
    } else out.push(piece);
  }
  return out;
}

/** How many pieces. */
export const countOf = (pieces: readonly Piece[]): number => pieces.reduce((n, { count }) => n + count, 0);

/** Joints along an edge: one fewer than boards, but where it closes on itself. */
export const jointsOf = ({ closed }: Edge, pieces: readonly Piece[]): number =>
  countOf(pieces) - (closed ? 0 : 1);

/**
 * A step that adds up something of each piece: `k = n1 × (ceil(p1 ÷ s) + 1) + …`; one less along an opening, at a corner
 * of which one stake holds both boards.
 *
 * @param of - what is counted for a piece of that length, in symbols and as a number
 */
export function countSteps(
  what: string,
  { name, boxed }: Edge,
  pieces: readonly Piece[],
  of: { readonly spacing: Length; readonly more: 1 | -1 },
  pad: Pad,
): Count {
  const { spacing: s, more } = of;
  const values: Record<string, Quantity> = { s };
  let sum = boxed ? -1 : 0;
  const terms = pieces.map(({ length: p, count }, i) => {
    const [n, l] = [`n${i + 1}`, `p${i + 1}`];
    values[n] = wholeNumber(count);
    values[l] = p;
    const times = timesUp(p, s);
    sum += count * (times + more);
    // What comes out even is printed without the ceiling, which a rounded digit would tip.
    const even = s.times(wholeNumber(times)).compareTo(p) === 0;
    return `${n} × (${even ? `${l} ÷ s` : `ceil(${l} ÷ s)`} ${more === 1 ? '+' : '−'} 1)`;
  });
  return pad.step(
    say`${{ what }} ${{ name }}`,
    `k = ${terms.join(' + ')}${boxed ? ' − 1' : ''}`,
    values,
    wholeNumber(sum),
  );
}
