/**
 * Cut and fill of a grid of spot depths, both in sums of their own.
 *
 * Where all four corners of a cell are cut, or all are filled, its volume is the mean of the corners
 * times its area; corners are counted as often as such cells meet there (four-corner method). A cell that
 * the grade crosses is laid in facets over each of its two diagonals, and the mean of both is taken: what
 * lies above the grade is cut, what lies below is fill, and the one less the other is again the mean of the
 * four corners. Turning or mirroring the grid changes nothing.
 *
 * Over a facet of area T with heights p above and q, r below the grade, the part above is
 * `T ÷ 3 × p³ ÷ ((p − q) × (p − r))`. Source: geometry.
 */
import { Decimal, ZERO } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant } from '../quantity/make';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;
type Rows = readonly (readonly Length[])[];

/** A cell that is not dug. */
export interface LeftOut {
  readonly row: Quantity<'count'>;
  readonly column: Quantity<'count'>;
}

/** A grid, read. */
export interface GridSpots {
  readonly across: Length;
  readonly along: Length;
  readonly depths: Rows | undefined;
  readonly levels: Rows | undefined;
  readonly grade: Length | undefined;
  readonly leaveOut: readonly LeftOut[] | undefined;
}

/** What a grid comes to. */
export interface GridCut {
  readonly volume: Volume;
  readonly fill?: Volume;
  readonly deepest: Length;
  readonly highest: Length;
}

/** Cells that are laid in facets, each of them over both diagonals. */
export const CROSSED_CELLS: Limit = { of: 'the grid in cells that the grade crosses', most: 10_000 };

const TWO = constant(() => wholeNumber(2));
const THREE = constant(() => wholeNumber(3));
const FOUR = constant(() => wholeNumber(4));

/** Depths at the corners of a grid, in rows of equal length; below zero where the ground is filled. */
function gridDepths({ depths, levels, grade }: GridSpots): Rows {
  if ((depths === undefined) === (levels === undefined)) {
    return refuse('', faults.giveOneOf(['depths', 'levels']));
  }
  if (levels && !grade)
    return refuse(
      'grade',
      faults.missing('grade', ['"98.5 ft", the level to dig to', '"30.05 m", the level to dig to']),
    );
  const rows = depths ?? (levels ?? []).map((row) => row.map((level) => level.minus(grade as Length)));
  const name = depths ? 'depths' : 'levels';
  const width = rows[0]?.length;
  rows.forEach((row, i) => {
    if (row.length !== width) {
      refuse(`${name}[${i}]`, faults.wrongType('each row', `as long as the first, with ${width} values`));
    }
  });
  return rows;
}

/** What happens in a cell. */
type Cell = 'cut' | 'fill' | 'crossed' | 'left';

/** The corners of a cell, going around it. */
const around = (rows: Rows, i: number, j: number): [Length, Length, Length, Length] => {
  const at = (a: number, b: number): Length => (rows[a] as readonly Length[])[b] as Length;
  return [at(i, j), at(i, j + 1), at(i + 1, j + 1), at(i + 1, j)];
};

function kindOf(corners: readonly Length[]): Cell {
  const low = corners.some((h) => h.sign() < 0);
  if (!low) return 'cut';
  return corners.some((h) => h.sign() > 0) ? 'crossed' : 'fill';
}

/** What happens in each cell, row by row. */
function cellsOf(rows: Rows, leftOut: readonly LeftOut[]): Cell[][] {
  const columns = (rows[0] as readonly Length[]).length - 1;
  const cells = Array.from({ length: rows.length - 1 }, (_, i) =>
    Array.from({ length: columns }, (_, j) => kindOf(around(rows, i, j))),
  );
  for (const [i, { row, column }] of leftOut.entries()) {
    const line = cells[row.toNumber('each')];
    const at = column.toNumber('each');
    if (line?.[at] === undefined) {
      const last = (rows.length - 1) * columns - 1;
      return refuse(`leaveOut[${i}]`, faults.notACount('the cell, counted from zero,', 0, last));
    }
    line[at] = 'left';
  }
  return cells;
}

type Sums = readonly [Length, Length, Length, Length];

/** Sums of the corners where one, two, three and four cells of a kind meet. */
function cornerSums(rows: Rows, cells: readonly (readonly Cell[])[], kind: Cell, none: Length): Sums {
  const sums = [none, none, none, none];
  rows.forEach((row, i) => {
    row.forEach((depth, j) => {
      const met = [cells[i - 1]?.[j - 1], cells[i - 1]?.[j], cells[i]?.[j - 1], cells[i]?.[j]];
      const times = met.filter((cell) => cell === kind).length;
      if (times > 0) sums[times - 1] = (sums[times - 1] as Length).plus(depth.abs());
    });
  });
  return sums as unknown as Sums;
}

/** Mean height of what lies above zero over a facet. */
function aboveFacet(heights: readonly Decimal[]): Decimal {
  const [p, q, r] = [...heights].sort((a, b) => b.comparedTo(a)) as [Decimal, Decimal, Decimal];
  const mean = p.plus(q).plus(r).div(3);
  if (r.gte(0)) return mean;
  if (p.lte(0)) return ZERO;
  if (q.lte(0)) return p.pow(3).div(p.minus(q).times(p.minus(r)).times(3));
  return mean.plus(
    r
      .abs()
      .pow(3)
      .div(p.minus(r).times(q.minus(r)).times(3)),
  );
}

/** Mean height of what lies above zero over a cell: the mean of both ways to lay it in facets. */
function aboveCell([a, b, c, d]: readonly [Decimal, Decimal, Decimal, Decimal]): Decimal {
  const facets = [
    [a, b, c],
    [a, c, d],
    [a, b, d],
    [b, c, d],
  ];
  return facets.reduce((sum, facet) => sum.plus(aboveFacet(facet)), ZERO).div(4);
}

/** Sums of the mean cut and the mean fill over the cells that the grade crosses. */
function crossed(rows: Rows, cells: readonly (readonly Cell[])[], none: Length): { X: Length; Y: Length } {
  let [up, down] = [ZERO, ZERO];
  cells.forEach((line, i) => {
    line.forEach((cell, j) => {
      if (cell !== 'crossed') return;
      const corners = around(rows, i, j).map(canonicalValue) as [Decimal, Decimal, Decimal, Decimal];
      const above = aboveCell(corners);
      up = up.plus(above);
      down = down.plus(above).minus(Decimal.sum(...corners).div(4));
    });
  });
  const asLength = (value: Decimal): Length => newQuantity('length', value, unitShown(none));
  return { X: asLength(up), Y: asLength(down) };
}

/** Deepest cut and highest fill at the corners of cells that are worked. */
function extremes(rows: Rows, cells: readonly (readonly Cell[])[], none: Length): [Length, Length] {
  let [deepest, highest] = [none, none];
  cells.forEach((line, i) => {
    line.forEach((cell, j) => {
      if (cell === 'left') return;
      for (const depth of around(rows, i, j)) {
        if (depth.greaterThan(deepest)) deepest = depth;
        if (depth.negated().greaterThan(highest)) highest = depth.negated();
      }
    });
  });
  return [deepest, highest];
}

interface Side {
  readonly what: string;
  readonly symbol: 'V' | 'F';
  readonly sums: Sums;
  /** Sum of the mean heights in cells that are crossed; left out where there is none. */
  readonly crossed: Length | undefined;
}

function sideVolume({ what, symbol, sums, crossed: X }: Side, A: Area, pad: Pad): Volume {
  const [S1, S2, S3, S4] = sums;
  const weighted = S1.plus(S2.times(TWO())).plus(S3.times(THREE())).plus(S4.times(FOUR()));
  const whole = weighted.times(A).over(FOUR());
  const formula = `${symbol} = A × (S1 + 2 × S2 + 3 × S3 + 4 × S4) ÷ 4`;
  const words = `${what}, S1 to S4 being the sums of the depths where one to four cells meet`;
  if (!X) return pad.step(words, formula, { A, S1, S2, S3, S4 }, whole);
  return pad.step(
    say`${{ words }}, and X the sum of the mean heights in cells that the grade crosses`,
    `${formula} + A × X`,
    { A, S1, S2, S3, S4, X },
    whole.plus(X.times(A)),
  );
}

/**
 * Cut, and fill where there is any.
 *
 * @throws {InputError} `give-one-of` and `missing` for levels, grade and depths; `wrong-type` for rows of
 * unequal length; `not-a-count` and `too-few` for cells left out; `too-many` cells that the grade crosses
 */
export function gridCut(input: GridSpots, pad: Pad): GridCut {
  const rows = gridDepths(input);
  const first = (rows[0] as readonly Length[])[0] as Length;
  const none = first.minus(first);
  const cells = cellsOf(rows, input.leaveOut ?? []);
  const all = cells.flat();
  withinLimit(
    CROSSED_CELLS,
    all.filter((cell) => cell === 'crossed').length,
    input.depths ? 'depths' : 'levels',
  );
  const kinds = new Set(all);
  if (kinds.size === 1 && kinds.has('left')) {
    refuse('leaveOut', faults.tooFew('the grid, apart from cells left out,', 1));
  }
  const { across: a, along: b } = input;
  const A = pad.step('area of a cell', 'A = a × b', { a, b }, a.times(b));
  const { X, Y } = crossed(rows, cells, none);
  const some = kinds.has('crossed');
  const sums = (kind: Cell): Sums => cornerSums(rows, cells, kind, none);
  const cut: Side = { what: 'bank volume', symbol: 'V', sums: sums('cut'), crossed: some ? X : undefined };
  const volume = sideVolume(cut, A, pad);
  const [deepest, highest] = extremes(rows, cells, none);
  if (!some && !kinds.has('fill')) return { volume, deepest, highest };
  const filled: Side = { what: 'fill', symbol: 'F', sums: sums('fill'), crossed: some ? Y : undefined };
  return { volume, fill: sideVolume(filled, A, pad), deepest, highest };
}
