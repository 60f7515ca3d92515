/**
 * The point where a sum of kinked costs is least.
 *
 * Each row measures `v = Σ weight × unknown` against its level and costs so much for every unit that
 * `v` lies below it and so much for every unit above. Costs are lists: the first of two points is
 * better whose total is less at the first place where they differ. What must hold costs at the first
 * place and all else after it, so that a point which breaks as little as can be comes first; a linear
 * program is the case where nothing is broken.
 *
 * Method: from a corner where as many rows meet their levels as there are unknowns, move along an edge
 * that leads down, over kinks as long as it does, to the next corner. The search is made in binary
 * numbers; from the corner it ends at the same steps are gone through in exact decimals, until the
 * multipliers of the rows that meet there prove that no edge leads down. (The bounded dual simplex with
 * long steps, seen from the primal; Bland's rule once it has turned about for long.)
 */
import { Decimal } from '../quantity/decimal';
import { type Arithmetic, BINARY, EXACT } from './arithmetic';

/** Costs of one unit, the gravest first; all of one length. */
export type Cost = readonly Decimal[];

/** One row: what it measures, its level, and what it costs to be off. */
export interface Row {
  /** Places of the unknowns that it takes. */
  readonly at: readonly number[];
  /** How much of each. */
  readonly weights: readonly Decimal[];
  readonly level: Decimal;
  readonly below: Cost;
  readonly above: Cost;
}

/** A sum of kinked costs. */
export interface Kinks {
  /** How many unknowns. */
  readonly unknowns: number;
  readonly rows: readonly Row[];
}

/** What the proof says of a row at the least: on its level, on one side or the other, or either. */
export type Stands = 'on' | 'above' | 'below' | 'free';

/** The least, proved. */
export interface Least {
  /** The unknowns. */
  readonly values: readonly Decimal[];
  /** The total, by place. */
  readonly total: Cost;
  /** For each row where every point that is as good stands to it. */
  readonly stands: readonly Stands[];
  /** Rows that take part in the proof that the first place cannot be less. */
  readonly heavy: readonly number[];
  /** Whether no other point is as good. */
  readonly only: boolean;
}

interface Quick<T> {
  readonly at: readonly number[];
  readonly weights: readonly T[];
  readonly level: T;
  readonly below: readonly T[];
  readonly above: readonly T[];
}

type Side = -1 | 1;

interface Break<T> {
  readonly row: number;
  readonly at: T;
  readonly weight: T;
}

/** Where a search stands. */
interface Corner {
  readonly meeting: readonly number[];
  readonly sides: readonly Side[];
}

class Descent<T> {
  readonly meeting: number[];
  readonly sides: Side[];
  /** The edge along which one row of the corner rises by one while the others keep their level. */
  private readonly edges: T[][];
  private ownPoint: T[] = [];
  private readonly among: Uint8Array;
  private readonly places: number;

  constructor(
    private readonly sum: Arithmetic<T>,
    private readonly rows: readonly Quick<T>[],
    private readonly unknowns: number,
    start: Corner,
  ) {
    this.meeting = Array.from({ length: unknowns }, (_, i) => rows.length - unknowns + i);
    this.sides = [...start.sides];
    this.among = new Uint8Array(rows.length);
    this.places = rows[0]?.below.length ?? 0;
    this.edges = Array.from({ length: unknowns }, (_, i) =>
      Array.from({ length: unknowns }, (__, j) => (i === j ? sum.one : sum.zero)),
    );
    this.gather(start.meeting);
    this.settlePoint();
    this.settleSides();
  }

  /** Bring the rows given together, one after the other; one that hangs on others is left out. */
  private gather(wanted: readonly number[]): void {
    const { sum } = this;
    const open = new Set(this.meeting.keys());
    for (const row of wanted) {
      let [best, most] = [-1, sum.zero];
      for (const j of open) {
        const w = this.rise(row, j);
        const size = sum.order(w, sum.zero) < 0 ? sum.less(sum.zero, w, sum.one) : w;
        if (sum.sign(size) > 0 && sum.order(size, most) > 0) [best, most] = [j, size];
      }
      if (best === -1) continue;
      this.exchange(best, row);
      open.delete(best);
    }
    for (const row of this.meeting) this.among[row] = 1;
  }

  /** How much a row rises along an edge. */
  private rise(row: number, j: number): T {
    const { sum } = this;
    const { at, weights } = this.rows[row] as Quick<T>;
    const edge = this.edges[j] as T[];
    let total = sum.zero;
    for (let i = 0; i < at.length; i += 1) {
      total = sum.plus(total, sum.times(weights[i] as T, edge[at[i] as number] as T));
    }
    return total;
  }

  private exchange(j: number, row: number): void {
    const { sum } = this;
    const rises = this.edges.map((_, i) => this.rise(row, i));
    const edge = (this.edges[j] as T[]).map((e) => sum.over(e, rises[j] as T));
    this.edges[j] = edge;
    this.edges.forEach((other, i) => {
      const rise = rises[i] as T;
      if (i === j || sum.order(rise, sum.zero) === 0) return;
      for (let k = 0; k < other.length; k += 1) other[k] = sum.less(other[k] as T, rise, edge[k] as T);
    });
    this.meeting[j] = row;
  }

  private settlePoint(): void {
    const { sum } = this;
    this.ownPoint = Array.from({ length: this.unknowns }, () => sum.zero);
    this.meeting.forEach((row, j) => {
      const { level } = this.rows[row] as Quick<T>;
      const edge = this.edges[j] as T[];
      for (let i = 0; i < edge.length; i += 1) {
        this.ownPoint[i] = sum.plus(this.ownPoint[i] as T, sum.times(level, edge[i] as T));
      }
    });
  }

  /** How far a row lies over its level. */
  private over(row: number): T {
    const { sum } = this;
    const { at, weights, level } = this.rows[row] as Quick<T>;
    let total = sum.less(sum.zero, level, sum.one);
    for (let i = 0; i < at.length; i += 1) {
      total = sum.plus(total, sum.times(weights[i] as T, this.ownPoint[at[i] as number] as T));
    }
    return total;
  }

  private settleSides(): void {
    for (let row = 0; row < this.rows.length; row += 1) {
      if (this.among[row]) continue;
      const sign = this.sum.sign(this.over(row));
      if (sign !== 0) this.sides[row] = sign;
    }
  }

  /** The cost of moving each unknown by one, from all rows that do not meet here. */
  private pull(): T[][] {
    const pull = Array.from({ length: this.unknowns }, () =>
      Array.from({ length: this.places }, () => this.sum.zero),
    );
    this.rows.forEach((_, row) => {
      if (!this.among[row]) this.addPull(pull, row);
    });
    return pull;
  }

  private addPull(pull: readonly T[][], row: number): void {
    const { sum } = this;
    const { at, weights, below, above } = this.rows[row] as Quick<T>;
    const up = (this.sides[row] as Side) > 0;
    (up ? above : below).forEach((c, p) => {
      if (sum.order(c, sum.zero) === 0) return;
      const cost = up ? c : sum.less(sum.zero, c, sum.one);
      at.forEach((v, i) => {
        const on = pull[v] as T[];
        on[p] = sum.plus(on[p] as T, sum.times(cost, weights[i] as T));
      });
    });
  }

  private along(pull: readonly T[][], j: number): T[] {
    const { sum } = this;
    const edge = this.edges[j] as T[];
    const total = Array.from({ length: this.places }, () => sum.zero);
    for (let i = 0; i < edge.length; i += 1) {
      const e = edge[i] as T;
      if (sum.order(e, sum.zero) === 0) continue;
      const on = pull[i] as T[];
      for (let p = 0; p < total.length; p += 1) total[p] = sum.plus(total[p] as T, sum.times(on[p] as T, e));
    }
    return total;
  }

  /** Sign of a list of costs: that of its first place that is not nothing. */
  private signOf(cost: readonly T[]): -1 | 0 | 1 {
    for (const c of cost) {
      const sign = this.sum.sign(c);
      if (sign !== 0) return sign;
    }
    return 0;
  }

  /** What it costs to go up and down an edge, by one. */
  private rates(pull: readonly T[][], j: number): readonly [up: T[], down: T[]] {
    const { sum } = this;
    const { below, above } = this.rows[this.meeting[j] as number] as Quick<T>;
    const along = this.along(pull, j);
    return [
      along.map((c, p) => sum.plus(c, above[p] as T)),
      along.map((c, p) => sum.less(below[p] as T, c, sum.one)),
    ];
  }

  private lessThan(a: readonly T[], b: readonly T[]): boolean {
    return this.signOf(a.map((c, p) => this.sum.less(c, b[p] as T, this.sum.one))) < 0;
  }

  /** The edge that leads down most, or the first that does. */
  private choose(first: boolean): { readonly j: number; readonly way: Side; readonly rate: T[] } | undefined {
    const pull = this.pull();
    let best: { readonly j: number; readonly way: Side; readonly rate: T[] } | undefined;
    for (let j = 0; j < this.unknowns; j += 1) {
      const [up, down] = this.rates(pull, j);
      for (const [way, rate] of [
        [1, up],
        [-1, down],
      ] as const) {
        if (this.signOf(rate) >= 0) continue;
        const better = first
          ? !best || (this.meeting[j] as number) < (this.meeting[best.j] as number)
          : !best || this.lessThan(rate, best.rate);
        if (better) best = { j, way, rate };
      }
    }
    return best;
  }

  /** Kinks along an edge, the nearest first. */
  private breaks(j: number, way: Side): Break<T>[] {
    const { sum } = this;
    const found: Break<T>[] = [];
    for (let row = 0; row < this.rows.length; row += 1) {
      if (this.among[row]) continue;
      const rise = this.rise(row, j);
      const heading = sum.sign(rise) * way;
      if (heading === 0 || heading === (this.sides[row] as Side)) continue;
      const over = this.over(row);
      const far = sum.over(over, rise);
      const at = way > 0 ? sum.less(sum.zero, far, sum.one) : far;
      found.push({
        row,
        // A stray on the wrong side of its level is no way back.
        at: sum.order(at, sum.zero) < 0 ? sum.zero : at,
        weight: sum.sign(rise) < 0 ? sum.less(sum.zero, rise, sum.one) : rise,
      });
    }
    return found.sort((a, b) => sum.order(a.at, b.at) || a.row - b.row);
  }

  /** One step down; false when no edge leads down. */
  step(first: boolean): boolean {
    const chosen = this.choose(first);
    if (!chosen) return false;
    const { sum } = this;
    const { j, way } = chosen;
    let rate = chosen.rate;
    let entering: number | undefined;
    for (const { row, weight } of this.breaks(j, way)) {
      const { below, above } = this.rows[row] as Quick<T>;
      rate = rate.map((c, p) => sum.plus(c, sum.times(weight, sum.plus(below[p] as T, above[p] as T))));
      if (this.signOf(rate) >= 0) {
        entering = row;
        break;
      }
      this.sides[row] = -(this.sides[row] as Side) as Side;
    }
    if (entering === undefined) return false;
    const leaving = this.meeting[j] as number;
    this.sides[leaving] = way;
    this.among[leaving] = 0;
    this.among[entering] = 1;
    this.exchange(j, entering);
    this.settlePoint();
    this.settleSides();
    return true;
  }

  /** Go down to the end; false where the steps allowed did not do. */
  run(steps: number): boolean {
    for (let k = 0; k < steps; k += 1) if (!this.step(k > steps / 2)) return true;
    return false;
  }

  get point(): readonly T[] {
    return this.ownPoint;
  }

  /** What each row bears: the multiplier of the proof. */
  bears(): readonly (readonly T[])[] {
    const { sum } = this;
    const borne = this.rows.map(({ below, above }, row) =>
      (this.sides[row] as Side) > 0 ? [...above] : below.map((c) => sum.less(sum.zero, c, sum.one)),
    );
    const pull = this.pull();
    this.meeting.forEach((row, j) => {
      borne[row] = this.along(pull, j).map((c) => sum.less(sum.zero, c, sum.one));
    });
    return borne;
  }

  /** How a row stands, by what it bears: strictly between its costs it is on its level. */
  stands(row: number, borne: readonly T[]): Stands {
    const { sum } = this;
    const { below, above } = this.rows[row] as Quick<T>;
    const room = this.signOf(above.map((c, p) => sum.less(c, borne[p] as T, sum.one))) > 0;
    const floor = this.signOf(below.map((c, p) => sum.plus(c, borne[p] as T))) > 0;
    if (room && floor) return 'on';
    if (room) return 'below';
    return floor ? 'above' : 'free';
  }
}

const quick = <T>(sum: Arithmetic<T>, { at, weights, level, below, above }: Row): Quick<T> => ({
  at,
  weights: weights.map(sum.of),
  level: sum.of(level),
  below: below.map(sum.of),
  above: above.map(sum.of),
});

const NIL = /*#__PURE__*/ new Decimal(0);
const ONE = /*#__PURE__*/ new Decimal(1);
/** The last of 60 digits are strays of the elimination; no input has so many. */
const STEADY_PLACES = 45;
/** Steps in binary numbers, for each unknown and row. */
const STEPS = 20;

/** Unknowns that no row decides stay at nothing: a row of no cost pins each. */
const pins = (unknowns: number, places: number): Row[] =>
  Array.from({ length: unknowns }, (_, i) => {
    const none = Array.from({ length: places }, () => NIL);
    return { at: [i], weights: [ONE], level: NIL, below: none, above: none };
  });

function totalOf(rows: readonly Row[], values: readonly Decimal[], places: number): Decimal[] {
  const total = Array.from({ length: places }, () => NIL);
  for (const { at, weights, level, below, above } of rows) {
    const over = at.reduce(
      (s, v, i) => s.plus((weights[i] as Decimal).times(values[v] as Decimal)),
      level.neg(),
    );
    if (EXACT.sign(over) === 0) continue;
    const cost = over.isNegative() ? below : above;
    cost.forEach((c, p) => {
      total[p] = (total[p] as Decimal).plus(over.abs().times(c));
    });
  }
  return total;
}

/** The least in binary numbers: enough to look at, not to report. */
export function rough({ unknowns, rows }: Kinks): {
  readonly values: readonly number[];
  readonly total: readonly number[];
} {
  const places = rows[0]?.below.length ?? 1;
  const all = [...rows, ...pins(unknowns, places)];
  const binary = all.map((row) => quick(BINARY, row));
  const search = new Descent(BINARY, binary, unknowns, { meeting: [], sides: all.map((): Side => 1) });
  search.run(STEPS * (unknowns + rows.length));
  const values = [...search.point];
  const total = Array.from({ length: places }, () => 0);
  for (const { at, weights, level, below, above } of binary) {
    const over = at.reduce((s, v, i) => s + (weights[i] as number) * (values[v] as number), -level);
    (over < 0 ? below : above).forEach((c, p) => {
      total[p] = (total[p] as number) + Math.abs(over) * c;
    });
  }
  return { values, total };
}

/**
 * Find the least, exactly.
 *
 * @param kinks - rows whose weights are not all nothing
 * @returns the least with its proof; `undefined` only where the bounded search did not end
 */
export function leastOf({ unknowns, rows }: Kinks): Least | undefined {
  const places = rows[0]?.below.length ?? 1;
  const all = [...rows, ...pins(unknowns, places)];
  const sides = all.map((): Side => 1);
  const binary = all.map((row) => quick(BINARY, row));
  const rough = new Descent(BINARY, binary, unknowns, { meeting: [], sides });
  rough.run(STEPS * (unknowns + rows.length));
  const exact = new Descent(
    EXACT,
    all.map((row) => quick(EXACT, row)),
    unknowns,
    { meeting: rough.meeting, sides: rough.sides },
  );
  if (!exact.run(STEPS * (unknowns + rows.length))) return undefined;
  const values = exact.point.map((v) => v.toDecimalPlaces(STEADY_PLACES));
  const bears = exact.bears();
  const stands = rows.map((_, row) => exact.stands(row, bears[row] as readonly Decimal[]));
  return {
    values,
    total: totalOf(rows, values, places),
    stands,
    heavy: [...rows.keys()].filter((row) => EXACT.sign((bears[row] as readonly Decimal[])[0] ?? NIL) !== 0),
    // A pin has no stand: what it holds may be anything.
    only: exact.meeting.every((row) => stands[row] === 'on'),
  };
}
