/**
 * The search for the plan of least saw length.
 *
 * A plan is a path along each axis: from anchor to anchor (an edge, a corner, a column, a fixed
 * joint), with a number of equal panels in between. What the panels cost is a sum over pairs of
 * steps, one of each path. So for a given path along x the best path along y is a shortest path;
 * the paths along x are looked at in order of the least that they can come to (A*), and the search
 * ends when nothing left can be better. When the work allowed runs out, the least that any plan left
 * can come to is the bound, and the difference is the gap.
 */
import { compareCosts, Heap } from './heap';
import { BROKEN, HAIR, weighed } from './rules';
import type { Axis, Gap, Space } from './space';
import type { LinePlace, Step } from './steps';

/** The lines of a plan along each axis. */
interface Lines {
  readonly x: readonly LinePlace[];
  readonly y: readonly LinePlace[];
}

/** What the search found. */
export interface Found extends Lines {
  /** Broken rules and length together, as the search weighs them. */
  readonly cost: number;
  /** No plan of the kind searched costs less than this. */
  readonly bound: number;
  /** No plan of the kind searched has less length than this, whatever rules it breaks. */
  readonly leastLength: number;
  readonly exact: boolean;
}

/** Steps along an axis, by the anchor that they start from. */
interface Graph {
  readonly axis: Axis;
  readonly steps: readonly Step[];
  readonly from: readonly (readonly number[])[];
  readonly nodes: number;
}

function graphOf(axis: Axis, steps: readonly Step[], nodes: number): Graph {
  const from: number[][] = Array.from({ length: nodes }, () => []);
  steps.forEach((step, i) => {
    (from[step.from] as number[]).push(i);
  });
  return { axis, steps, from, nodes };
}

interface Path {
  readonly cost: number;
  readonly steps: readonly number[];
}

/** Least cost from each anchor to the last, with something added to each step. */
function toEnd(graph: Graph, added: ArrayLike<number> | undefined, best?: Int32Array): Float64Array {
  const dist = new Float64Array(graph.nodes).fill(Number.POSITIVE_INFINITY);
  dist[graph.nodes - 1] = 0;
  for (let node = graph.nodes - 2; node >= 0; node -= 1) {
    for (const s of graph.from[node] as readonly number[]) {
      const step = graph.steps[s] as Step;
      const cost = step.cost + (added ? (added[s] as number) : 0) + (dist[step.to] as number);
      if (cost < (dist[node] as number)) {
        dist[node] = cost;
        if (best) best[node] = s;
      }
    }
  }
  return dist;
}

function shortest(graph: Graph, added: ArrayLike<number> | undefined): Path {
  const best = new Int32Array(graph.nodes).fill(-1);
  const dist = toEnd(graph, added, best);
  const steps: number[] = [];
  let node = 0;
  while (node < graph.nodes - 1 && (best[node] as number) >= 0) {
    const s = best[node] as number;
    steps.push(s);
    node = (graph.steps[s] as Step).to;
  }
  return { cost: dist[0] as number, steps };
}

/** How much work a search may do, counted in cells looked at and steps weighed. */
const WORK_LIMIT = 4_000_000;

/** With fewer pairs of gaps than this their costs are kept in a table, otherwise in a map. */
const TABLE_LIMIT = 4_000_000;

/** What pairs of gaps cost, looked up once each. */
export class Cells {
  readonly #space: Space;
  readonly #places = new Map<Gap, number>();
  readonly #across: number;
  readonly #table: Float64Array | undefined;
  readonly #map = new Map<number, number>();
  looked = 0;

  constructor(space: Space, steps: StepsBoth) {
    this.#space = space;
    const across = this.#number(steps.y);
    this.#across = Math.max(1, across);
    const size = this.#number(steps.x) * this.#across;
    this.#table = size <= TABLE_LIMIT ? new Float64Array(size).fill(Number.NaN) : undefined;
  }

  #number(steps: readonly Step[]): number {
    let count = 0;
    for (const { gaps } of steps) {
      for (const { gap } of gaps) {
        if (this.#places.has(gap)) continue;
        this.#places.set(gap, count);
        count += 1;
      }
    }
    return count;
  }

  placeOf(gap: Gap): number {
    return this.#places.get(gap) as number;
  }

  cost(x: Gap, y: Gap, px: number, py: number): number {
    const key = px * this.#across + py;
    const known = this.#table ? (this.#table[key] as number) : (this.#map.get(key) ?? Number.NaN);
    if (!Number.isNaN(known)) return known;
    const cost = this.#space.cost(x, y);
    this.looked += this.#space.effort;
    if (this.#table) this.#table[key] = cost;
    else this.#map.set(key, cost);
    return cost;
  }
}

/** A step's gaps with their places in the table. */
interface Placed {
  readonly gap: Gap;
  readonly place: number;
  readonly times: number;
}

/** Both graphs and what their steps cost together, filled in as it is asked for. */
class Board {
  weighed = 0;
  readonly #cells: Cells;
  readonly #weight: number;
  readonly #before: number;
  readonly #placed: { x: readonly (readonly Placed[])[]; y: readonly (readonly Placed[])[] };
  readonly #rows: { x: (Float64Array | undefined)[]; y: (Float64Array | undefined)[] };

  constructor(
    cells: Cells,
    weight: number,
    readonly x: Graph,
    readonly y: Graph,
  ) {
    this.#cells = cells;
    this.#weight = weight;
    this.#before = cells.looked;
    const placed = ({ steps }: Graph): Placed[][] =>
      steps.map(({ gaps }) =>
        gaps.map(({ gap, times }) => ({ gap, times, place: this.#cells.placeOf(gap) })),
      );
    this.#placed = { x: placed(x), y: placed(y) };
    this.#rows = { x: new Array(x.steps.length), y: new Array(y.steps.length) };
  }

  /** Work done so far. */
  get work(): number {
    return this.weighed + 4 * (this.#cells.looked - this.#before);
  }

  other(graph: Graph): Graph {
    return graph.axis === 'x' ? this.y : this.x;
  }

  #together(mine: readonly Placed[], theirs: readonly Placed[], axis: Axis): number {
    const [xs, ys] = axis === 'x' ? [mine, theirs] : [theirs, mine];
    let sum = 0;
    for (const g of xs) {
      for (const h of ys) {
        const cell = this.#cells.cost(g.gap, h.gap, g.place, h.place);
        sum += weighed(cell, this.#weight) * g.times * h.times;
        if (sum === Number.POSITIVE_INFINITY) return sum;
      }
    }
    this.weighed += xs.length * ys.length;
    return sum;
  }

  /** What a step costs together with each step of the other axis. */
  row(graph: Graph, s: number): Float64Array {
    const rows = this.#rows[graph.axis];
    const known = rows[s];
    if (known) return known;
    const mine = this.#placed[graph.axis][s] as readonly Placed[];
    const others = this.#placed[this.other(graph).axis];
    const row = new Float64Array(others.length);
    for (let i = 0; i < row.length; i += 1) {
      row[i] = this.#together(mine, others[i] as readonly Placed[], graph.axis);
    }
    rows[s] = row;
    this.weighed += others.length;
    return row;
  }

  /** The sum of the rows of a path. */
  rowsOf(graph: Graph, path: readonly number[]): Float64Array {
    const sum = new Float64Array(this.other(graph).steps.length);
    for (const s of path) addInto(sum, this.row(graph, s));
    return sum;
  }
}

function addInto(sum: Float64Array, row: Float64Array): void {
  for (let i = 0; i < sum.length; i += 1) sum[i] = (sum[i] as number) + (row[i] as number);
}

const ownCost = (graph: Graph, path: readonly number[]): number =>
  path.reduce((sum, s) => sum + (graph.steps[s] as Step).cost, 0);

interface Pair {
  readonly cost: number;
  /** Path along the axis enumerated, and along the other. */
  readonly mine: readonly number[];
  readonly theirs: readonly number[];
}

/** Fix one axis and take the best other, in turn, until nothing gets shorter. */
function alternate(board: Board, start: Graph, first: readonly number[]): Pair {
  let graph = start;
  let mine = first;
  let best: Pair = { cost: Number.POSITIVE_INFINITY, mine, theirs: [] };
  for (let turn = 0; turn < 12; turn += 1) {
    const other = board.other(graph);
    const path = shortest(other, board.rowsOf(graph, mine));
    const cost = ownCost(graph, mine) + path.cost;
    if (cost >= best.cost - HAIR * HAIR || board.work > WORK_LIMIT) break;
    best = graph === start ? { cost, mine, theirs: path.steps } : { cost, mine: path.steps, theirs: mine };
    graph = other;
    mine = path.steps;
  }
  return best;
}

/** How many paths lead from the first anchor to the last, as far as it matters. */
function pathCount(graph: Graph): number {
  const count = new Float64Array(graph.nodes);
  count[graph.nodes - 1] = 1;
  for (let node = graph.nodes - 2; node >= 0; node -= 1) {
    for (const s of graph.from[node] as readonly number[])
      count[node] = (count[node] as number) + (count[(graph.steps[s] as Step).to] as number);
  }
  return count[0] as number;
}

/** A path begun, and the least that it can come to. */
interface Begun {
  readonly least: number;
  readonly node: number;
  readonly own: number;
  readonly last: number;
  readonly before: Begun | undefined;
  readonly rows: Float64Array;
  /** True once the other axis has been reckoned with for this very beginning. */
  readonly weighed: boolean;
}

function stepsOf(begun: Begun): number[] {
  const steps: number[] = [];
  for (let b: Begun | undefined = begun; b && b.last >= 0; b = b.before) steps.push(b.last);
  return steps.reverse();
}

/** Two plans within this are the same length, in metres: a twentieth of a millimetre. */
const SAME = 5e-5;

class Enumeration {
  readonly #queue = new Heap<Begun>((b) => b.least);
  readonly #end: Float64Array;
  readonly #other: Graph;

  constructor(
    readonly board: Board,
    readonly graph: Graph,
    public best: Pair,
  ) {
    this.#end = toEnd(graph, undefined);
    this.#other = board.other(graph);
    const rows = new Float64Array(this.#other.steps.length);
    const least = (this.#end[0] as number) + shortest(this.#other, undefined).cost;
    this.#queue.push({ least, node: 0, own: 0, last: -1, before: undefined, rows, weighed: true });
  }

  /** Look at beginnings in order; returns the bound. */
  run(): number {
    for (let begun = this.#queue.pop(); begun; begun = this.#queue.pop()) {
      if (begun.least >= this.best.cost - SAME) return this.best.cost;
      // No plan left keeps every rule; the search for the best of the others weighs them differently.
      if (begun.least >= BROKEN && this.best.cost >= BROKEN) return begun.least;
      if (this.board.work > WORK_LIMIT) return begun.least;
      if (!begun.weighed) this.#weigh(begun);
      else this.#goOn(begun);
    }
    return this.best.cost;
  }

  #weigh(begun: Begun): void {
    const rows = begun.rows.slice();
    addInto(rows, this.board.row(this.graph, begun.last));
    this.board.weighed += 4 * rows.length;
    const path = shortest(this.#other, rows);
    const least = begun.own + (this.#end[begun.node] as number) + path.cost;
    if (begun.node < this.graph.nodes - 1) {
      if (least < this.best.cost - SAME) this.#queue.push({ ...begun, rows, least, weighed: true });
    } else if (least < this.best.cost) {
      this.best = { cost: least, mine: stepsOf(begun), theirs: path.steps };
    }
  }

  #goOn(begun: Begun): void {
    for (const s of this.graph.from[begun.node] as readonly number[]) {
      const step = this.graph.steps[s] as Step;
      const own = begun.own + step.cost;
      const ahead = own + (this.#end[step.to] as number);
      const least = Math.max(begun.least, ahead);
      if (least >= this.best.cost - SAME) continue;
      this.#queue.push({
        least,
        node: step.to,
        own,
        last: s,
        before: begun,
        rows: begun.rows,
        weighed: false,
      });
    }
  }
}

const linesOf = (graph: Graph, path: readonly number[]): LinePlace[] =>
  path.flatMap((s) => (graph.steps[s] as Step).lines);

/** Steps along both axes. */
type StepsBoth = Readonly<Record<Axis, readonly Step[]>>;

/** What is searched. */
export interface Searched {
  readonly space: Space;
  readonly steps: StepsBoth;
  /** Some steps were left out because there are too many: what is found is never called exact. */
  readonly trimmed: boolean;
  readonly cells: Cells;
}

/**
 * The plan of least cost of a space.
 *
 * @param weight - how much sawing a broken rule weighs as much as, in metres
 */
export function search({ space, steps, trimmed, cells }: Searched, weight: number): Found {
  const x = graphOf('x', steps.x, space.anchors('x').length);
  const y = graphOf('y', steps.y, space.anchors('y').length);
  const board = new Board(cells, weight, x, y);
  const graph = pathCount(x) <= pathCount(y) ? x : y;
  const other = board.other(graph);
  const one = alternate(board, graph, shortest(graph, undefined).steps);
  const two = alternate(board, other, shortest(other, undefined).steps);
  const turned: Pair = { cost: two.cost, mine: two.theirs, theirs: two.mine };
  const enumeration = new Enumeration(board, graph, compareCosts(one.cost, turned.cost) <= 0 ? one : turned);
  const bound = enumeration.run();
  const { mine, theirs, cost } = enumeration.best;
  const [px, py] = graph.axis === 'x' ? [mine, theirs] : [theirs, mine];
  return {
    x: linesOf(x, px),
    y: linesOf(y, py),
    cost,
    bound: trimmed ? 0 : Math.min(bound, cost),
    leastLength: trimmed
      ? space.leastLength()
      : Math.max(space.leastLength(), shortest(x, undefined).cost + shortest(y, undefined).cost),
    exact: !trimmed && bound >= cost - SAME,
  };
}
