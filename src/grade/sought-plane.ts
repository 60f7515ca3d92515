/**
 * The plane of forms with the least fill that keeps what is asked of it.
 *
 * `z = h + b × x + c × y`, counted from the first stake. Fixed points, bounds and falls must hold. Of
 * the planes that do, the one with the least fill over the ground at the stakes; where steepness buys no
 * fill, the flattest of them, by `b² + c²`, which turns with the site as the slope does; and of planes
 * that differ in height alone the one with the least cut.
 *
 * Fill may buy any steepness, so there is a most. It is a circle in `b` and `c`: tangents are laid to it
 * where the plane would pass it, until it does not. Where what must hold is steeper than the most, the
 * flattest plane that holds is taken, and the one who asks is told.
 */

import { Decimal, ONE, ZERO } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { type Limit, withinLimit } from '../reckoning/limits';
import { distinct, say, type Words } from '../reckoning/words';
import { conflictAmong } from '../solve/conflict';
import { type Cost, type Kinks, type Least, leastOf, type Row } from '../solve/kinks';
import { smallestOf } from '../solve/smallest';
import * as faults from './faults';
import { type FixedPoint, type Plane, rate } from './shapes';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

/** A point in plan, read. */
export interface ParsedPoint {
  readonly x: Length;
  readonly y: Length;
}

/** A stake, read. */
export interface ParsedStake extends ParsedPoint {
  readonly name: string;
  readonly top: Length | undefined;
  readonly ground: Length | undefined;
  readonly area: Quantity<'area'> | undefined;
}

/** A required fall, read. */
export interface ParsedFall {
  readonly name: string;
  readonly from: ParsedPoint;
  readonly to: ParsedPoint;
  readonly minimum: Slope | undefined;
  readonly maximum: Slope | undefined;
}

/** A bound on the elevation at a point, read. */
export interface ParsedBound extends ParsedPoint {
  readonly name: string;
  readonly minimum: Length | undefined;
  readonly maximum: Length | undefined;
}

/** What is asked of the plane. */
export interface Asked {
  readonly fixed: readonly FixedPoint[];
  readonly bounds: readonly ParsedBound[];
  readonly falls: readonly ParsedFall[];
  readonly stakes: readonly ParsedStake[];
  readonly noCut: boolean;
  readonly most: Slope;
}

/** The plane found. */
export interface SoughtPlane {
  readonly plane: Plane;
  /** What the plane touches. */
  readonly binding: readonly Words[];
  /** Whether what must hold is steeper than the most. */
  readonly steeper: boolean;
}

export const SOUGHT_STAKES: Limit = { of: 'the stakes with ground', most: 150 };
export const CONDITIONS: Limit = { of: 'the conditions of a plane', most: 60 };
const UNKNOWNS = 3;
const FLAT: readonly Decimal[] = [ZERO, ONE, ONE];
const FREE: Cost = [ZERO, ZERO, ZERO];
const HARD: Cost = [ONE, ZERO, ZERO];
const TANGENTS = 30;
/** Strays of 60 digits, in meters. */
const STRAY = /*#__PURE__*/ new Decimal('1e-30');
/** A slope that passes the most by less, as a share of it, is brought back along the way to the flattest. */
const NEARLY = /*#__PURE__*/ new Decimal('1e-9');

type Weights = readonly [h: Decimal, b: Decimal, c: Decimal];

/** One condition that must hold. */
interface Condition {
  readonly name: string;
  readonly weights: Weights;
  readonly least: Decimal | undefined;
  readonly most: Decimal | undefined;
  readonly fixed: boolean;
}

/** Everything is counted from the first stake, so that binary numbers lose nothing. */
interface Origin {
  readonly x: Decimal;
  readonly y: Decimal;
  readonly z: Decimal;
}

interface GroundStake {
  readonly name: string;
  readonly weights: Weights;
  readonly ground: Decimal;
  readonly area: Decimal;
}

const overPoint = (p: ParsedPoint, o: Origin): Weights => [
  ONE,
  canonicalValue(p.x).minus(o.x),
  canonicalValue(p.y).minus(o.y),
];

function fallCondition({ name, from, to, minimum: least, maximum: most }: ParsedFall, i: number): Condition {
  const dx = canonicalValue(to.x).minus(canonicalValue(from.x));
  const dy = canonicalValue(to.y).minus(canonicalValue(from.y));
  const long = Decimal.hypot(dx, dy);
  if (long.isZero()) refuse(`falls[${i}].to`, sharedFaults.repeatedPoint(1));
  return {
    name,
    weights: [ZERO, dx.neg(), dy.neg()],
    least: least && rate(least).times(long),
    most: most && rate(most).times(long),
    fixed: false,
  };
}

function conditionsOf({ fixed, bounds, falls }: Asked, o: Origin): Condition[] {
  const onDatum = (z: Length | undefined): Decimal | undefined => z && canonicalValue(z).minus(o.z);
  const all = [
    ...fixed.map((f): Condition => {
      const z = onDatum(f.elevation);
      return { name: f.name, weights: overPoint(f, o), least: z, most: z, fixed: true };
    }),
    ...bounds.map((b): Condition => {
      const weights = overPoint(b, o);
      return { name: b.name, weights, least: onDatum(b.minimum), most: onDatum(b.maximum), fixed: false };
    }),
    ...falls.map(fallCondition),
  ];
  withinLimit(CONDITIONS, all.length, '');
  return all;
}

function groundStakes(stakes: readonly ParsedStake[], o: Origin): GroundStake[] {
  const used = stakes.flatMap((s) => (s.ground ? [{ ...s, ground: s.ground }] : []));
  withinLimit(SOUGHT_STAKES, used.length, 'stakes');
  return used.map((s) => ({
    name: s.name,
    weights: overPoint(s, o),
    ground: canonicalValue(s.ground).minus(o.z),
    area: s.area ? canonicalValue(s.area) : ONE,
  }));
}

const ALL = [0, 1, 2];

function row(weights: Weights, level: Decimal, below: Cost, above: Cost): Row {
  const at = ALL.filter((i) => !(weights[i] as Decimal).isZero());
  return { at, weights: at.map((i) => weights[i] as Decimal), level, below, above };
}

/** What must hold, as rows; one that weighs nothing at all is no row. */
const hardRows = (conditions: readonly Condition[]): Row[] =>
  conditions.flatMap(({ weights, least, most }) => [
    ...(least ? [row(weights, least, HARD, FREE)] : []),
    ...(most ? [row(weights, most, FREE, HARD)] : []),
  ]);

/** Fill over the ground at a stake, and cut below it where that counts. */
const groundRow = (stake: GroundStake, noCut: boolean, cut: Decimal): Row =>
  row(stake.weights, stake.ground, noCut ? HARD : [ZERO, ZERO, cut], [ZERO, stake.area, ZERO]);

/** Everything sought from. */
interface Problem {
  readonly conditions: readonly Condition[];
  readonly stakes: readonly GroundStake[];
  readonly noCut: boolean;
  readonly most: Decimal;
}

function conflictNames({ conditions, stakes, noCut }: Problem): string[] {
  const rows: Row[] = [];
  const names: string[] = [];
  for (const condition of conditions) {
    for (const hard of hardRows([condition])) {
      rows.push(hard);
      names.push(condition.name);
    }
  }
  for (const stake of noCut ? stakes : []) {
    rows.push(row(stake.weights, stake.ground, HARD, FREE));
    names.push(`ground at ${stake.name}`);
  }
  return [...new Set(conflictAmong(UNKNOWNS, rows).map((k) => names[k] as string))];
}

type Values = readonly [h: Decimal, b: Decimal, c: Decimal];

interface Found {
  readonly least: Least;
  readonly values: Values;
}

/** The least, and of all that are as good the flattest. */
function flattest(rows: readonly Row[]): Found | undefined {
  const kinks: Kinks = { unknowns: UNKNOWNS, rows };
  const least = leastOf(kinks);
  if (!least || !(least.total[0] as Decimal).isZero()) return undefined;
  return { least, values: smallestOf(kinks, least, FLAT) as unknown as Values };
}

const steepness = ([, b, c]: Values): Decimal => Decimal.hypot(b, c);

/** A plane between two: as much of the second as keeps to the most. */
function between(flat: Values, steep: Values, most: Decimal): Values {
  const [db, dc] = [steep[1].minus(flat[1]), steep[2].minus(flat[2])];
  // |flat + t × (steep − flat)|² = most², the larger root; a hair less, so that it is never passed.
  const p = db.times(db).plus(dc.times(dc));
  const q = flat[1].times(db).plus(flat[2].times(dc));
  const r = flat[1].times(flat[1]).plus(flat[2].times(flat[2])).minus(most.times(most));
  const root = Decimal.max(q.times(q).minus(p.times(r)), 0).sqrt();
  const share = Decimal.min(
    Decimal.max(root.minus(q).div(p).toDecimalPlaces(STEADY, Decimal.ROUND_DOWN), 0),
    1,
  );
  const mix = (k: 0 | 1 | 2): Decimal => flat[k].plus(steep[k].minus(flat[k]).times(share));
  return [mix(0), mix(1), mix(2)];
}

const STEADY = 30;

/** The least fill within the most: tangents are laid to its circle where the plane would pass it. */
function withinMost(rows: readonly Row[], first: Values, flat: Values, most: Decimal): Values {
  const laid: Row[] = [];
  let values = first;
  for (let k = 0; k < TANGENTS; k += 1) {
    const steep = steepness(values);
    if (steep.lessThanOrEqualTo(most)) return values;
    if (steep.lessThanOrEqualTo(most.times(NEARLY.plus(1)))) break;
    laid.push(row([ZERO, values[1].div(steep), values[2].div(steep)], most, FREE, HARD));
    const next = flattest([...rows, ...laid]);
    if (!next) return flat;
    values = next.values;
  }
  return between(flat, values, most);
}

/** The least fill, then the least cut, with the slopes along x and y settled. */
function atHeight({ conditions, stakes, noCut }: Problem, [, b, c]: Values): Values | undefined {
  const rows = [...hardRows(conditions), ...stakes.map((s) => groundRow(s, noCut, s.area))];
  const held = [row([ZERO, ONE, ZERO], b, HARD, HARD), row([ZERO, ZERO, ONE], c, HARD, HARD)];
  return flattest([...rows, ...held])?.values;
}

/** Where nothing but bounds decides how high the plane lies: the lowest that they leave, else the highest. */
function withHeight({ conditions, stakes }: Problem, [h, b, c]: Values): Values {
  if (stakes.length > 0) return [h, b, c];
  const reach = (bound: Decimal, weights: Weights): Decimal =>
    bound.minus(weights[1].times(b)).minus(weights[2].times(c));
  const over = conditions.filter(({ weights }) => !weights[0].isZero());
  const lows = over.flatMap(({ least, weights }) => (least ? [reach(least, weights)] : []));
  const highs = over.flatMap(({ most, weights }) => (most ? [reach(most, weights)] : []));
  return [lows.length > 0 ? Decimal.max(...lows) : Decimal.min(...highs), b, c];
}

/** The slopes along x and y, and whether what must hold is steeper than the most. */
function seekSlopes(problem: Problem): { readonly values: Values; readonly steeper: boolean } {
  const { conditions, stakes, noCut, most } = problem;
  const hard = hardRows(conditions);
  const rows = [...hard, ...stakes.map((s) => groundRow(s, noCut, ZERO))];
  const found = flattest(rows);
  if (!found) return refuse('', faults.conflictingGrades(conflictNames(problem)));
  const within = most.plus(STRAY);
  if (steepness(found.values).lessThanOrEqualTo(within)) return { values: found.values, steeper: false };
  const must = noCut ? [...hard, ...stakes.map((s) => row(s.weights, s.ground, HARD, FREE))] : hard;
  const flat = flattest(must)?.values ?? found.values;
  if (steepness(flat).greaterThan(within)) return { values: flat, steeper: true };
  const low = atHeight(problem, flat) ?? flat;
  return { values: withinMost(rows, found.values, low, most), steeper: false };
}

function seek(problem: Problem): { readonly values: Values; readonly steeper: boolean } {
  const { values, steeper } = seekSlopes(problem);
  return { values: atHeight(problem, values) ?? values, steeper };
}

const dot = (weights: Weights, [h, b, c]: Values): Decimal =>
  weights[0].times(h).plus(weights[1].times(b)).plus(weights[2].times(c));

/** What the plane touches, what must hold first. */
function bindingOf({ conditions, stakes, most }: Problem, values: Values): Words[] {
  const touches = (weights: Weights, level: Decimal | undefined): boolean =>
    level !== undefined && dot(weights, values).minus(level).abs().lessThan(STRAY);
  const met = conditions.filter(
    ({ weights, least, most: high }) => touches(weights, least) || touches(weights, high),
  );
  const level = [values[1].abs().lessThan(STRAY), values[2].abs().lessThan(STRAY)];
  const steepest = steepness(values).minus(most).abs().lessThan(most.times(NEARLY));
  return [
    ...met.filter(({ fixed }) => fixed).map(({ name }) => say`${{ name }}`),
    ...met.filter(({ fixed }) => !fixed).map(({ name }) => say`${{ name }}`),
    ...stakes.filter((s) => touches(s.weights, s.ground)).map(({ name }) => say`ground at ${{ name }}`),
    ...(level[0] ? [say`level along x`] : []),
    ...(level[1] ? [say`level along y`] : []),
    ...(steepest ? [say`the most slope`] : []),
  ];
}

const floating = (): Fault =>
  fault(
    'no-datum',
    'no elevation is given that the plane could hang on; fix a point, bound one, or give the ground at a stake',
  );

/** A plane without any elevation floats. */
function datumOf({ fixed, bounds, stakes }: Asked): Length {
  const level =
    fixed[0]?.elevation ??
    stakes.find(({ ground }) => ground)?.ground ??
    bounds.map((b) => b.maximum ?? b.minimum).find((z) => z !== undefined);
  return level ?? refuse('fixed', floating());
}

/**
 * Seek the plane.
 *
 * @throws {InputError} `conflicting-grades` with the names that no plane meets together; `no-datum`
 * where nothing has an elevation; `repeated-point`, `too-many`
 */
export function soughtPlane(asked: Asked): SoughtPlane {
  const first = asked.stakes[0] as ParsedStake;
  const [x, y] = [canonicalValue(first.x), canonicalValue(first.y)];
  if (asked.fixed.length + asked.bounds.length + asked.falls.length === 0) {
    refuse('', sharedFaults.giveOneOf(['surface', 'fixed points with falls']));
  }
  const o: Origin = { x, y, z: canonicalValue(datumOf(asked)) };
  const problem: Problem = {
    conditions: conditionsOf(asked, o),
    stakes: groundStakes(asked.stakes, o),
    noCut: asked.noCut,
    most: rate(asked.most),
  };
  const { values, steeper } = seek(problem);
  const [h, b, c] = withHeight(problem, values);
  return {
    plane: { at: { x: o.x, y: o.y, z: o.z.plus(h) }, p: b.neg(), q: c.neg() },
    binding: distinct(bindingOf(problem, [h, b, c])),
    steeper,
  };
}
