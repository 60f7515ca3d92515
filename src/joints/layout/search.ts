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
import { effort } from '../../quantity/effort';
import { compareCosts, Heap } from '../../solve/heap';
import { BROKEN, HAIR, weighed } from './rules';
import { type Axis, acrossOf, type Gap, type Space } from './space';
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
  /** Work done. */
  readonly work: number;
}

/** Steps along an axis, by the anchor that they start from. */
interface Graph {
  readonly axis: Axis;
  readonly steps: readonly Step[];
  readonly from: readonly (readonly number[])[];
  readonly nodes: number;
  /** Where each step ends, and what it costs by itself. */
  readonly to: Int32Array;
  readonly costs: Float64Array;
}

function graphOf(axis: Axis, steps: readonly Step[], nodes: number): Graph {
  const from: number[][] = Array.from({ length: nodes }, () => []);
  steps.forEach((step, i) => {
    (from[step.from] as number[]).push(i);
  });
  const to = Int32Array.from(steps, (step) => step.to);
  const costs = Float64Array.from(steps, (step) => step.cost);
  return { axis, steps, from, nodes, to, costs };
}

interface Path {
  readonly cost: number;
  readonly steps: readonly number[];
}

/** Least cost from each anchor to the last, with something added to each step. */
function toEnd(graph: Graph, added: ArrayLike<number> | undefined, best?: Int32Array): Float64Array {
  const { nodes, from, to, costs } = graph;
  const dist = new Float64Array(nodes).fill(Number.POSITIVE_INFINITY);
  dist[nodes - 1] = 0;
  for (let node = nodes - 2; node >= 0; node -= 1) {
    let least = Number.POSITIVE_INFINITY;
    for (const s of from[node] as readonly number[]) {
      const cost =
        (costs[s] as number) + (added ? (added[s] as number) : 0) + (dist[to[s] as number] as number);
      if (cost >= least) continue;
      least = cost;
      if (best) best[node] = s;
    }
    dist[node] = least;
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

/** How much work a search may do, counted in cells looked at and numbers added up: some tenths of a second. */
export const WORK_LIMIT = 8_000_000;

/** What a step is beside adding two numbers, in the search for a shortest path. */
const STEP = 4;

/** The steps of an axis by the numbers of their gaps, end to end. */
interface Strung {
  readonly gaps: readonly Gap[];
  /** Where the gaps of each step begin in the two lists, and where the last ends. */
  readonly starts: Int32Array;
  readonly places: Int32Array;
  readonly times: Float64Array;
}

function strung(steps: readonly Step[]): Strung {
  const numbers = new Map<Gap, number>();
  const gaps: Gap[] = [];
  const starts = new Int32Array(steps.length + 1);
  const all = steps.reduce((sum, step) => sum + step.gaps.length, 0);
  const [places, times] = [new Int32Array(all), new Float64Array(all)];
  let k = 0;
  steps.forEach((step, i) => {
    for (const { gap, times: n } of step.gaps) {
      let place = numbers.get(gap);
      if (place === undefined) {
        place = gaps.length;
        numbers.set(gap, place);
        gaps.push(gap);
      }
      places[k] = place;
      times[k] = n;
      k += 1;
    }
    starts[i + 1] = k;
  });
  return { gaps, starts, places, times };
}

/** What pairs of gaps cost: for a gap of one axis with every gap of the other, reckoned once each. */
export class Cells {
  private readonly ownSpace: Space;
  readonly strung: Readonly<Record<Axis, Strung>>;
  private readonly columns: Record<Axis, (Float64Array | undefined)[]>;

  constructor(space: Space, steps: StepsBoth) {
    this.ownSpace = space;
    this.strung = { x: strung(steps.x), y: strung(steps.y) };
    this.columns = {
      x: new Array(this.strung.x.gaps.length),
      y: new Array(this.strung.y.gaps.length),
    };
  }

  /** Work done so far. */
  get work(): number {
    return this.ownSpace.work;
  }

  /** What a gap costs with every gap of the other axis, without the weight of broken rules. */
  column(axis: Axis, place: number): Float64Array {
    const known = this.columns[axis][place];
    if (known) return known;
    const gap = this.strung[axis].gaps[place] as Gap;
    const others = this.strung[acrossOf(axis)].gaps;
    const column = new Float64Array(others.length);
    this.ownSpace.costs(axis, gap, others, column);
    this.columns[axis][place] = column;
    return column;
  }
}

/** Both graphs and what their steps cost together, filled in as it is asked for. */
class Board {
  private readonly ownCells: Cells;
  private readonly weight: number;
  private readonly most: number;
  private readonly ownBefore: number;
  private readonly ownRows: { x: (Float64Array | undefined)[]; y: (Float64Array | undefined)[] };
  private added = 0;

  constructor(
    cells: Cells,
    weight: number,
    share: number,
    readonly x: Graph,
    readonly y: Graph,
  ) {
    this.ownCells = cells;
    this.weight = weight;
    this.most = WORK_LIMIT * share;
    this.ownBefore = cells.work;
    this.ownRows = { x: new Array(x.steps.length), y: new Array(y.steps.length) };
  }

  /** Work done so far. */
  get work(): number {
    return this.added + this.ownCells.work - this.ownBefore;
  }

  /** True once the work allowed is done. */
  get spent(): boolean {
    return this.work > this.most;
  }

  /** Note work done elsewhere. */
  add(work: number): void {
    this.added += work;
  }

  other(graph: Graph): Graph {
    return graph.axis === 'x' ? this.y : this.x;
  }

  /** Add to `sum` what the gaps of a step cost with every gap of the other axis. */
  private gather(sum: Float64Array, axis: Axis, s: number): void {
    const { starts, places, times } = this.ownCells.strung[axis];
    for (let k = starts[s] as number; k < (starts[s + 1] as number); k += 1) {
      const column = this.ownCells.column(axis, places[k] as number);
      const n = times[k] as number;
      for (let i = 0; i < sum.length; i += 1) {
        sum[i] = (sum[i] as number) + weighed(column[i] as number, this.weight) * n;
      }
      this.added += sum.length;
    }
  }

  /** What steps of one axis cost together with each step of the other. */
  private together(graph: Graph, steps: readonly number[]): Float64Array {
    const other = this.ownCells.strung[this.other(graph).axis];
    const { starts, places, times } = other;
    const gaps = new Float64Array(other.gaps.length);
    for (const s of steps) this.gather(gaps, graph.axis, s);
    const row = new Float64Array(starts.length - 1);
    for (let i = 0; i < row.length; i += 1) {
      let sum = 0;
      for (let k = starts[i] as number; k < (starts[i + 1] as number); k += 1) {
        sum += (gaps[places[k] as number] as number) * (times[k] as number);
      }
      row[i] = sum;
    }
    this.added += places.length + row.length;
    return row;
  }

  /** What a step costs together with each step of the other axis. */
  row(graph: Graph, s: number): Float64Array {
    const rows = this.ownRows[graph.axis];
    const known = rows[s];
    if (known) return known;
    const row = this.together(graph, [s]);
    rows[s] = row;
    return row;
  }

  /** What a path costs together with each step of the other axis. */
  rowsOf(graph: Graph, path: readonly number[]): Float64Array {
    return this.together(graph, path);
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
    if (cost >= best.cost - HAIR * HAIR) break;
    best = graph === start ? { cost, mine, theirs: path.steps } : { cost, mine: path.steps, theirs: mine };
    if (board.spent) break;
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

/** Two plans within this are the same length, in meters: a twentieth of a millimeter. */
const SAME = 5e-5;

class Enumeration {
  private readonly queue = new Heap<Begun>((b) => b.least);
  private readonly end: Float64Array;
  private readonly ownOther: Graph;

  constructor(
    readonly board: Board,
    readonly graph: Graph,
    public best: Pair,
  ) {
    this.end = toEnd(graph, undefined);
    this.ownOther = board.other(graph);
    const rows = new Float64Array(this.ownOther.steps.length);
    const least = (this.end[0] as number) + shortest(this.ownOther, undefined).cost;
    this.queue.push({ least, node: 0, own: 0, last: -1, before: undefined, rows, weighed: true });
  }

  /** Look at beginnings in order; returns the bound. */
  run(): number {
    for (let begun = this.queue.pop(); begun; begun = this.queue.pop()) {
      if (begun.least >= this.best.cost - SAME) return this.best.cost;
      // No plan left keeps every rule; the search for the best of the others weighs them differently.
      if (begun.least >= BROKEN && this.best.cost >= BROKEN) return begun.least;
      if (this.board.spent) return begun.least;
      if (!begun.weighed) this.weigh(begun);
      else this.goOn(begun);
    }
    return this.best.cost;
  }

  private weigh(begun: Begun): void {
    const rows = begun.rows.slice();
    addInto(rows, this.board.row(this.graph, begun.last));
    this.board.add(STEP * rows.length);
    const path = shortest(this.ownOther, rows);
    const least = begun.own + (this.end[begun.node] as number) + path.cost;
    if (begun.node < this.graph.nodes - 1) {
      if (least < this.best.cost - SAME) this.queue.push({ ...begun, rows, least, weighed: true });
    } else if (least < this.best.cost) {
      this.best = { cost: least, mine: stepsOf(begun), theirs: path.steps };
    }
  }

  private goOn(begun: Begun): void {
    for (const s of this.graph.from[begun.node] as readonly number[]) {
      const step = this.graph.steps[s] as Step;
      const own = begun.own + step.cost;
      const ahead = own + (this.end[step.to] as number);
      const least = Math.max(begun.least, ahead);
      if (least >= this.best.cost - SAME) continue;
      this.queue.push({
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
  /** The part of the work allowed that falls to this search: slabs are planned in several poses. */
  readonly share: number;
}

/**
 * The plan of least cost of a space.
 *
 * @param weight - how much sawing a broken rule weighs as much as, in meters
 */
export function search({ space, steps, trimmed, cells, share }: Searched, weight: number): Found {
  const x = graphOf('x', steps.x, space.anchors('x').length);
  const y = graphOf('y', steps.y, space.anchors('y').length);
  const board = new Board(cells, weight, share, x, y);
  const graph = pathCount(x) <= pathCount(y) ? x : y;
  const other = board.other(graph);
  const one = alternate(board, graph, shortest(graph, undefined).steps);
  const enough = board.spent && one.cost < Number.POSITIVE_INFINITY;
  const two = enough ? undefined : alternate(board, other, shortest(other, undefined).steps);
  const turned = two && { cost: two.cost, mine: two.theirs, theirs: two.mine };
  const first = turned && compareCosts(turned.cost, one.cost) < 0 ? turned : one;
  const enumeration = new Enumeration(board, graph, first);
  const bound = enumeration.run();
  effort.spent += board.work;
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
    work: board.work,
  };
}
