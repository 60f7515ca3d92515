/** Boards to buy for the pieces of all edges, and strips for layered curves. */
import * as sharedFaults from '../quantity/faults';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import { withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { carried, timesDown } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { cutFrom } from '../steel/bar-cutting';
import { notProved } from '../steel/cautions';
import type { BarCuttingFigures } from '../steel/cutting-figures';
import { countOf, type Edge, type Piece } from './boarding';
import type { BoardCut, FormMaterialsFigures, LayeredCurves } from './form-figures';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** An edge with its pieces. */
export interface Boarded {
  readonly edge: Edge;
  readonly pieces: readonly Piece[];
}

/** All pieces, `times` for each edge, as a cut list. */
function cutList(boarded: readonly Boarded[], times: number): { length: Length; count: Count }[] {
  return boarded.flatMap(({ edge, pieces }) =>
    pieces.map(({ length, count }) => ({ length, count: wholeNumber(count * edge.count * times) })),
  );
}

const countIn = (pieces: readonly { readonly count: Count }[]): number =>
  pieces.reduce((n, { count }) => n + canonicalValue(count).toNumber(), 0);

/** Where the edge stands that takes the most pieces. */
function mostOf(boarded: readonly Boarded[]): string {
  const size = ({ edge, pieces }: Boarded): number => countOf(pieces) * edge.count;
  return boarded.reduce((most, each) => (size(each) > size(most) ? each : most)).edge.path;
}

type Bought = Pick<
  FormMaterialsFigures,
  'boards' | 'order' | 'lengthBought' | 'lengthLost' | 'waste' | 'plan' | 'proved'
>;

/** What all boards come to. */
export const BOARDS = /*#__PURE__*/ carried('boards');

/** Several ways are planned, and strips beside them: what a cutting list may take alone, in parts. */
export const EFFORT = 1e7;

/** Nothing to buy: all curves are layered. */
function nothing(like: Length): Bought {
  const none = like.minus(like);
  return {
    boards: wholeNumber(0),
    order: [],
    lengthBought: none,
    lengthLost: none,
    waste: none.over(like).in('%'),
    plan: [],
    proved: true,
  };
}

/** One way to board all edges, and what is cut from what. */
export interface Boarding {
  readonly boarded: readonly Boarded[];
  readonly cut?: BarCuttingFigures;
}

/** A plan for one way to board all edges; none where there is nothing to buy. */
export function planned(
  boarded: readonly Boarded[],
  sawn: readonly Boarded[],
  courses: number,
  stock: readonly Length[],
  kerf: Length,
  effort: number,
): Boarding {
  if (sawn.length === 0) return { boarded };
  const pieces = cutList(sawn, courses);
  withinLimit(BOARDS, countIn(pieces), mostOf(sawn));
  const list = { pieces, stock: stock.map((length) => ({ length, price: undefined })) };
  return { boarded, cut: cutFrom(list, kerf, stock.length > 1 ? 'least-length' : 'fewest-bars', effort) };
}

/** The boards to buy. */
export function bought(cut: BarCuttingFigures | undefined, like: Length, pad: Pad): Bought {
  if (!cut) return nothing(like);
  const values: Record<string, Quantity> = {};
  const terms = cut.order.map(({ length: l, bars }, i) => {
    values[`n${i + 1}`] = bars;
    values[`S${i + 1}`] = l;
    return `n${i + 1} × S${i + 1}`;
  });
  const B = pad.step('boards end to end', `B = ${terms.join(' + ')}`, values, cut.lengthBought);
  pad.step('waste', 'W = X ÷ B', { X: cut.lengthLost, B }, cut.waste);
  if (!cut.proved) pad.caution(notProved(cut.lowerBound, cut.reached));
  const plan: BoardCut[] = cut.plan.map(({ stock: s, bars, cuts, drop }) => ({
    stock: s,
    boards: bars,
    cuts,
    drop,
  }));
  return {
    boards: cut.bars,
    order: cut.order.map(({ length, bars }) => ({ length, boards: bars })),
    lengthBought: cut.lengthBought,
    lengthLost: cut.lengthLost,
    waste: cut.waste,
    plan,
    proved: cut.proved,
  };
}

/** Strips for curves in layers, ripped from sheets along their length. */
export function layered(
  boarded: readonly Boarded[],
  layers: Count,
  strip: { readonly height: Length; readonly sheet: { readonly length: Length; readonly width: Length } },
  kerf: Length,
  pad: Pad,
): LayeredCurves {
  const { height: h, sheet } = strip;
  const pieces = cutList(boarded, canonicalValue(layers).toNumber());
  withinLimit(BOARDS, countIn(pieces), mostOf(boarded));
  if (sheet.width.lessThan(h)) refuse('curves.sheet.width', sharedFaults.doesNotFit('height', 'sheet.width'));
  const list = { pieces, stock: [{ length: sheet.length, price: undefined }] };
  const cut = cutFrom(list, kerf, 'fewest-bars', EFFORT);
  const rows = timesDown(sheet.width.plus(kerf), h.plus(kerf));
  const n = cut.bars;
  const r = wholeNumber(rows);
  const strips = canonicalValue(n).toNumber();
  const even = strips % rows === 0;
  const sheets = pad.step(
    say`sheets, ${{ rows }} strips from each`,
    even ? 'm = n ÷ r' : 'm = ceil(n ÷ r)',
    { n, r },
    wholeNumber(Math.ceil(strips / rows)),
  );
  return { layers, strips: n, sheets };
}
