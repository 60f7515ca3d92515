/**
 * The elevation of the form at each stake, and how far to mark it from the stake's top or the ground.
 *
 * Either the surface is given in closed form (see `shapes.ts`), or a plane is sought that passes
 * through the fixed points, keeps to the bounds and has every required fall, with the least fill
 * over the ground at the stakes; among those the one with the least cut, then the flattest. That is
 * a linear programme in the three numbers of the plane; its solution is solved again exactly from
 * the conditions that bind. Where no plane meets all, those in conflict are named.
 */

import type { PointInput } from '../geometry/outline';
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant, length } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import type { System } from '../quantity/units';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, fields, label, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE, NAVY_GRADES } from '../reckoning/source';
import { type Condition, conflictAmong, type Equation, exactly, leastOf, type Weights } from './least';
import { small, toMark } from './marks';
import {
  type Elevation,
  type FixedPoint,
  type FixedPointInput,
  type FormSurface,
  type FormSurfaceInput,
  fixedPoint,
  formSurface,
  onPlane,
  type Plane,
  rate,
  shapeOf,
} from './shapes';
import { slopeBetween } from './slope';
import { metresAs, planPoint } from './spots';

/** A stake at the forms. */
export interface StakeInput {
  /** What the stake is called; no two alike. */
  readonly name: string;
  /** How far along the stake stands. */
  readonly x: QuantityInput<'length'>;
  /** How far across the stake stands. */
  readonly y: QuantityInput<'length'>;
  /** Elevation of the stake's top; the mark is measured from there. */
  readonly top?: QuantityInput<'length'>;
  /** Elevation of the ground or base, for cut, fill and the least fill. */
  readonly ground?: QuantityInput<'length'>;
  /** Plan area that the stake stands for, for volumes. */
  readonly area?: QuantityInput<'area'>;
}

/** A fall that is required between two points. */
export interface RequiredFallInput {
  /** What the fall is called where it is not met. */
  readonly name: string;
  /** The upper end. */
  readonly from: PointInput;
  /** The lower end. */
  readonly to: PointInput;
  /** Least slope down from `from` to `to`; no least by default. */
  readonly least?: QuantityInput<'slope'>;
  /** Most slope down from `from` to `to`; no most by default. */
  readonly most?: QuantityInput<'slope'>;
}

/** A bound on the elevation at a point: below a sill, above a pipe. */
export interface ElevationBoundInput {
  /** What the bound is called where it binds or conflicts. */
  readonly name: string;
  /** How far along the point lies. */
  readonly x: QuantityInput<'length'>;
  /** How far across the point lies. */
  readonly y: QuantityInput<'length'>;
  /** Lowest that the plane may lie there; no least by default. */
  readonly least?: QuantityInput<'length'>;
  /** Highest that the plane may lie there; no most by default. */
  readonly most?: QuantityInput<'length'>;
}

/** A rectangle of forms, to be squared by its diagonals. */
export interface FormSquareInput {
  /** One side of the forms. */
  readonly length: QuantityInput<'length'>;
  /** The other side, square to it. */
  readonly width: QuantityInput<'length'>;
  /** The two diagonals as measured. */
  readonly measured?: readonly [QuantityInput<'length'>, QuantityInput<'length'>];
  /** How far outside the forms the batter boards stand. */
  readonly batterBoards?: QuantityInput<'length'>;
}

/** Input of {@link formGrades}. */
export interface FormGradesInput {
  /** The surface, where its shape is settled; otherwise a plane is sought. */
  readonly surface?: FormSurfaceInput;
  /** Points that the sought plane must pass through. */
  readonly fixed?: readonly FixedPointInput[];
  /** Bounds that the sought plane must keep to; not with `surface`. */
  readonly bounds?: readonly ElevationBoundInput[];
  /** Falls to be met by the sought plane, or checked on the surface given. */
  readonly falls?: readonly RequiredFallInput[];
  /** `none` where the sought plane may nowhere lie below the ground; by default `allowed`. */
  readonly cut?: 'allowed' | 'none';
  /** Stakes to be marked, and the ground that fill is least over. */
  readonly stakes: readonly StakeInput[];
  /** The rectangle of forms, where its diagonals are wanted. */
  readonly square?: FormSquareInput;
}

/** What to mark at a stake. */
export interface StakeFigure {
  /** Name of the stake. */
  readonly name: string;
  /** Elevation of the form, exact. */
  readonly elevation: Quantity<'length'>;
  /** How far the form lies below the stake's top. */
  readonly down?: Quantity<'length'>;
  /** How far it lies above the stake's top, where the stake is too short. */
  readonly up?: Quantity<'length'>;
  /** `down` or `up` to the nearest 1/16 in or mm. */
  readonly mark?: Quantity<'length'>;
  /** How far the ground is to come down. */
  readonly cut?: Quantity<'length'>;
  /** How far the ground is to come up. */
  readonly fill?: Quantity<'length'>;
}

/** A fall, checked. */
export interface FallFigure {
  /** Name of the fall. */
  readonly name: string;
  /** Slope from the upper end to the lower; negative when it rises. */
  readonly slope: Quantity<'slope'>;
  /** The slope against the least and the most asked for. */
  readonly verdict: 'met' | 'too flat' | 'too steep';
}

/** Figures of {@link formGrades}. */
export interface FormGradesFigures {
  /** `falls not met` where any fall is too flat or too steep. */
  readonly verdict: 'all falls met' | 'falls not met';
  /** What to mark at each stake, in the order given. */
  readonly stakes: readonly StakeFigure[];
  /** Each fall checked, in the order given. */
  readonly falls: readonly FallFigure[];
  /** Fall of a plane along x; negative when it rises. Left out for surfaces that are no plane. */
  readonly alongX?: Quantity<'slope'>;
  /** Fall of a plane along y; negative when it rises. Left out for surfaces that are no plane. */
  readonly alongY?: Quantity<'slope'>;
  /** Steepest slope of a plane: the hypotenuse of both. */
  readonly steepest?: Quantity<'slope'>;
  /** Sum of the fills at the stakes. */
  readonly fillHeights: Quantity<'length'>;
  /** Sum of the cuts at the stakes. */
  readonly cutHeights: Quantity<'length'>;
  /** Fill times the area of each stake, where areas are given. */
  readonly fillVolume?: Quantity<'volume'>;
  /** Cut times the area of each stake, where areas are given. */
  readonly cutVolume?: Quantity<'volume'>;
  /** What decides the sought plane: the conditions that bind. */
  readonly binding: readonly string[];
  /** Diagonal of the rectangle: both must come to this. */
  readonly diagonal?: Quantity<'length'>;
  /** Diagonal between batter-board corners. */
  readonly boardDiagonal?: Quantity<'length'>;
  /** Difference of the diagonals measured. */
  readonly outOfSquare?: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

interface ParsedPoint {
  readonly x: Length;
  readonly y: Length;
}

interface ParsedStake extends ParsedPoint {
  readonly name: string;
  readonly top: Length | undefined;
  readonly ground: Length | undefined;
  readonly area: Quantity<'area'> | undefined;
}

interface ParsedFall {
  readonly name: string;
  readonly from: ParsedPoint;
  readonly to: ParsedPoint;
  readonly least: Slope | undefined;
  readonly most: Slope | undefined;
}

interface ParsedBound extends ParsedPoint {
  readonly name: string;
  readonly least: Length | undefined;
  readonly most: Length | undefined;
}

interface Parsed {
  readonly surface: FormSurface | undefined;
  readonly fixed: readonly FixedPoint[] | undefined;
  readonly bounds: readonly ParsedBound[] | undefined;
  readonly falls: readonly ParsedFall[] | undefined;
  readonly cut: 'allowed' | 'none' | undefined;
  readonly stakes: readonly ParsedStake[];
  readonly square:
    | {
        readonly length: Length;
        readonly width: Length;
        readonly measured: readonly Length[] | undefined;
        readonly batterBoards: Length | undefined;
      }
    | undefined;
}

const STAKE_LIMIT = 1000;
const SOUGHT_STAKES = 150;
const CONDITION_LIMIT = 60;
/** How near to binding counts as binding, in metres: the loosest that leads to an exact solution is taken. */
const BINDS = [1e-6, 1e-7, 1e-8, 1e-9];
/** Strays of 60 digits, in metres. */
const STRAY = new Decimal('1e-30');
const ZERO_LENGTH = constant(() => length('0 in'));
const SQUARE_ROOM = constant(() => length('1/8 in'));

/** One condition of the sought plane `z = h + b × x + c × y`, from the first stake. */
interface PlaneCondition {
  readonly name: string;
  readonly weights: readonly [h: Decimal, b: Decimal, c: Decimal];
  readonly least: Decimal | undefined;
  readonly most: Decimal | undefined;
}

const ONE = new Decimal(1);
const NIL = new Decimal(0);

/** Everything is counted from the first stake, so that binary numbers lose nothing. */
interface Origin {
  readonly x: Decimal;
  readonly y: Decimal;
  readonly z: Decimal;
}

const overPoint = (p: ParsedPoint, o: Origin): [Decimal, Decimal, Decimal] => [
  ONE,
  canonicalValue(p.x).minus(o.x),
  canonicalValue(p.y).minus(o.y),
];

function fallCondition({ name, from, to, least, most }: ParsedFall, i: number): PlaneCondition {
  const [dx, dy] = [
    canonicalValue(to.x).minus(canonicalValue(from.x)),
    canonicalValue(to.y).minus(canonicalValue(from.y)),
  ];
  const long = Decimal.hypot(dx, dy);
  if (long.isZero()) refuse(`falls[${i}].to`, faults.repeatedPoint(1));
  return {
    name,
    weights: [NIL, dx.neg(), dy.neg()],
    least: least && rate(least).times(long),
    most: most && rate(most).times(long),
  };
}

function conditionsOf({ fixed = [], bounds = [], falls = [] }: Parsed, o: Origin): PlaneCondition[] {
  const all = [
    ...fixed.map((f): PlaneCondition => {
      const z = canonicalValue(f.elevation).minus(o.z);
      return { name: f.name, weights: overPoint(f, o), least: z, most: z };
    }),
    ...bounds.map(
      (b): PlaneCondition => ({
        name: b.name,
        weights: overPoint(b, o),
        least: b.least && canonicalValue(b.least).minus(o.z),
        most: b.most && canonicalValue(b.most).minus(o.z),
      }),
    ),
    ...falls.map(fallCondition),
  ];
  if (all.length > CONDITION_LIMIT) refuse('', faults.tooMany('the conditions of a plane', CONDITION_LIMIT));
  if (all.length === 0) refuse('', faults.giveOneOf(['surface', 'fixed points with falls']));
  return all;
}

const binary = ([h, b, c]: readonly Decimal[]): Weights => ({
  h: (h as Decimal).toNumber(),
  b: (b as Decimal).toNumber(),
  c: (c as Decimal).toNumber(),
});

const toCondition = ({ weights, least, most }: PlaneCondition): Condition => ({
  weights: binary(weights),
  ...(least ? { least: least.toNumber() } : {}),
  ...(most ? { most: most.toNumber() } : {}),
});

interface GroundStake {
  readonly weights: readonly [Decimal, Decimal, Decimal];
  readonly ground: Decimal;
  readonly area: number;
}

const FREE = new Set(['h', 'b', 'c']);

/** Fill and cut at each stake as variables of their own, and the flatness of the plane. */
function programme(
  conditions: readonly PlaneCondition[],
  stakes: readonly GroundStake[],
  noCut: boolean,
): {
  conditions: Condition[];
  aims: Weights[];
} {
  const made = conditions.map(toCondition);
  const [fill, cut]: [Record<string, number>, Record<string, number>] = [{}, {}];
  stakes.forEach(({ weights, ground, area }, i) => {
    const above = binary(weights);
    const below = binary(weights.map((w) => w.neg()));
    made.push({ weights: { ...below, [`f${i}`]: 1 }, least: -ground.toNumber() });
    made.push(
      noCut
        ? { weights: above, least: ground.toNumber() }
        : { weights: { ...above, [`d${i}`]: 1 }, least: ground.toNumber() },
    );
    fill[`f${i}`] = area;
    if (!noCut) cut[`d${i}`] = area;
  });
  for (const k of ['b', 'c']) {
    made.push({ weights: { [k]: 1, [`s${k}`]: 1 }, least: 0 });
    made.push({ weights: { [k]: -1, [`s${k}`]: 1 }, least: 0 });
  }
  const aims = [fill, cut].filter((aim) => Object.keys(aim).length > 0);
  return { conditions: made, aims: [...aims, { sb: 1, sc: 1 }] };
}

interface Binding extends Equation {
  readonly name: string;
  readonly fixed: boolean;
}

const dot = (weights: readonly Decimal[], values: readonly Decimal[]): Decimal =>
  weights.reduce((sum, w, k) => sum.plus(w.times(values[k] as Decimal)), NIL);

/** The conditions that hold as equations at the solution found, those that must hold first. */
function bindingAt(
  conditions: readonly PlaneCondition[],
  stakes: readonly GroundStake[],
  names: readonly string[],
  at: readonly Decimal[],
  room: number,
): Binding[] {
  const near = (a: Decimal, b: Decimal): boolean => a.minus(b).abs().lessThan(room);
  const found = conditions.flatMap(({ name, weights, least, most }): Binding[] => {
    const value = dot(weights, at);
    return [least, most].flatMap((bound) =>
      bound && near(value, bound) ? [{ name, weights, equals: bound, fixed: least === most }] : [],
    );
  });
  const touching = stakes.flatMap(({ weights, ground }, i): Binding[] =>
    near(dot(weights, at), ground)
      ? [{ name: `ground at ${names[i]}`, weights, equals: ground, fixed: false }]
      : [],
  );
  const level = [1, 2].map(
    (k): Binding => ({
      name: k === 1 ? 'level along x' : 'level along y',
      weights: [NIL, k === 1 ? ONE : NIL, k === 2 ? ONE : NIL],
      equals: NIL,
      fixed: false,
    }),
  );
  return [
    ...found.filter((b) => b.fixed),
    ...found.filter((b) => !b.fixed),
    ...touching,
    ...level.filter((b) => near(dot(b.weights, at), NIL)),
  ];
}

const ROUNDED = 9;
const STEADY = 30;

interface Sought {
  readonly plane: Plane;
  readonly binding: readonly string[];
}

function groundStakes(stakes: readonly ParsedStake[], o: Origin): { made: GroundStake[]; names: string[] } {
  const used = stakes.filter(({ ground }) => ground !== undefined);
  if (used.length > SOUGHT_STAKES) refuse('stakes', faults.tooMany('stakes with ground', SOUGHT_STAKES));
  const made = used.map(
    (s): GroundStake => ({
      weights: overPoint(s, o),
      ground: canonicalValue(s.ground as Length).minus(o.z),
      area: s.area ? canonicalValue(s.area).toNumber() : 1,
    }),
  );
  return { made, names: used.map(({ name }) => name) };
}

/** True when the plane meets every condition, exactly, and lies nowhere below these stakes. */
function meetsAll(
  conditions: readonly PlaneCondition[],
  above: readonly GroundStake[],
  plane: readonly Decimal[],
): boolean {
  const reaches = (value: Decimal, least: Decimal): boolean => value.plus(STRAY).greaterThanOrEqualTo(least);
  return (
    conditions.every(({ weights, least, most }) => {
      const value = dot(weights, plane);
      return (!least || reaches(value, least)) && (!most || reaches(most, value));
    }) && above.every(({ weights, ground }) => reaches(dot(weights, plane), ground))
  );
}

/** The plane with the least fill that meets every condition. */
function seek(input: Parsed): Sought {
  const first = input.stakes[0] as ParsedStake;
  const level =
    input.fixed?.[0]?.elevation ?? first.ground ?? input.bounds?.[0]?.most ?? input.bounds?.[0]?.least;
  const o: Origin = {
    x: canonicalValue(first.x),
    y: canonicalValue(first.y),
    z: level ? canonicalValue(level) : NIL,
  };
  const conditions = conditionsOf(input, o);
  const { made, names } = groundStakes(input.stakes, o);
  const lp = programme(conditions, made, input.cut === 'none');
  const solved = leastOf({ ...lp, free: FREE });
  if (!solved)
    return refuse('', faults.conflictingGrades(conflictNames(conditions, made, names, input.cut === 'none')));
  const found = ['h', 'b', 'c'].map((k) => new Decimal(solved.get(k) ?? 0));
  const tried = BINDS.map((room) => bindingAt(conditions, made, names, found, room));
  const met = tried
    .map((binding) => ({ binding, exact: exactly(binding, 3) }))
    .find(({ exact }) => exact && meetsAll(conditions, input.cut === 'none' ? made : [], exact));
  const binding = met?.binding ?? tried[0] ?? [];
  // Where the conditions leave the plane some play, it is rounded to a billionth of a metre.
  const [h, b, c] = (met?.exact ?? found.map((v) => v.toDecimalPlaces(ROUNDED))) as [
    Decimal,
    Decimal,
    Decimal,
  ];
  return {
    plane: { at: { x: o.x, y: o.y, z: o.z.plus(h) }, p: b.neg(), q: c.neg() },
    binding: [...new Set(binding.map(({ name }) => name))],
  };
}

function conflictNames(
  conditions: readonly PlaneCondition[],
  stakes: readonly GroundStake[],
  names: readonly string[],
  noCut: boolean,
): string[] {
  const all = conditions.map(toCondition);
  const labels = conditions.map(({ name }) => name);
  if (noCut) {
    stakes.forEach(({ weights, ground }, i) => {
      all.push({ weights: binary(weights), least: ground.toNumber() });
      labels.push(`ground at ${names[i]}`);
    });
  }
  const clash = conflictAmong(all, FREE);
  return [...new Set(clash.map((i) => labels[i] as string))];
}

function refuseSameStakes(stakes: readonly ParsedStake[]): void {
  const seen = new Set<string>();
  stakes.forEach(({ name }, i) => {
    if (seen.has(name)) refuse(`stakes[${i}].name`, faults.repeatedName(name));
    seen.add(name);
  });
}

function stakeFigure(stake: ParsedStake, elevation: Elevation, system: System, pad: Pad): StakeFigure {
  const { name, top: t, ground } = stake;
  const e = metresAs(elevation(canonicalValue(stake.x), canonicalValue(stake.y)), system);
  const below =
    t && pad.step(`form below the top of stake ${name}`, 'd = t − e', { t, e }, small(t.minus(e)));
  const over = ground && small(e.minus(ground));
  const down = below && below.sign() >= 0;
  return {
    name,
    elevation: e,
    ...(below ? { [down ? 'down' : 'up']: below.abs(), mark: toMark(below.abs()) } : {}),
    ...(over ? { [over.sign() < 0 ? 'cut' : 'fill']: over.abs() } : {}),
  };
}

function fallFigures(
  falls: readonly ParsedFall[],
  elevation: Elevation,
  system: System,
  pad: Pad,
): FallFigure[] {
  const at = (p: ParsedPoint): Length =>
    metresAs(elevation(canonicalValue(p.x), canonicalValue(p.y)), system);
  return falls.map(({ name, from, to, least, most }, i) => {
    const [dx, dy] = [to.x.minus(from.x), to.y.minus(from.y)];
    const long = Decimal.hypot(canonicalValue(dx), canonicalValue(dy));
    if (long.isZero()) refuse(`falls[${i}].to`, faults.repeatedPoint(1));
    const [u, v, d] = [at(from), at(to), metresAs(long, system)];
    const raw = slopeBetween(u.minus(v), d);
    // Strays of the elimination would make a level fall a hair less than level.
    const steady = quantityOf('slope', canonicalValue(raw).toDecimalPlaces(STEADY), systemOfQuantity(d));
    const slope = pad.step(`fall along ${name}`, 's = (u − v) ÷ d', { u, v, d }, steady.in('%'));
    const flat = least && slope.lessThan(least);
    const steep = most && slope.greaterThan(most);
    if (flat) pad.caution(cautions.fallNotMet(name, least, slope));
    if (steep) pad.caution(cautions.fallNotMet(name, most, slope));
    return { name, slope, verdict: flat ? 'too flat' : steep ? 'too steep' : 'met' };
  });
}

const perRun = (fall: Decimal, system: System): Slope => quantityOf('slope', fall.times(12), system).in('%');

function planeFigures({ p, q }: Plane, system: System, pad: Pad): Partial<FormGradesFigures> {
  const [X, Y] = [perRun(p, system), perRun(q, system)];
  const steepest = perRun(Decimal.hypot(p, q), system);
  pad.step('steepest slope', 'S = hypot(X, Y)', { X, Y }, steepest);
  return { alongX: X, alongY: Y, steepest };
}

function squareFigures(square: NonNullable<Parsed['square']>, pad: Pad): Partial<FormGradesFigures> {
  const { length: L, width: W, measured, batterBoards: k } = square;
  const across = (a: Length, b: Length): Length =>
    metresAs(Decimal.hypot(canonicalValue(a), canonicalValue(b)), systemOfQuantity(L)).in(
      systemOfQuantity(L) === 'metric' ? 'm' : 'ft-in',
    );
  const diagonal = pad.step('diagonal', 'D = hypot(L, W)', { L, W }, across(L, W));
  const boards = k && across(L.plus(k).plus(k), W.plus(k).plus(k));
  if (k && boards)
    pad.step('diagonal between batter boards', 'D = hypot(L + k + k, W + k + k)', { L, W, k }, boards);
  const [a, b] = measured ?? [];
  if (!a || !b) return { diagonal, ...(boards ? { boardDiagonal: boards } : {}) };
  const off = pad.step('difference of the diagonals', 'o = abs(a − b)', { a, b }, small(a.minus(b).abs()));
  if (off.greaterThan(SQUARE_ROOM())) pad.caution(cautions.outOfSquare(SQUARE_ROOM(), off));
  return { diagonal, ...(boards ? { boardDiagonal: boards } : {}), outOfSquare: off };
}

const sum = (stakes: readonly StakeFigure[], key: 'cut' | 'fill'): Length =>
  stakes.reduce((total, s) => total.plus(s[key] ?? ZERO_LENGTH()), small(ZERO_LENGTH()));

function volumes(input: Parsed, stakes: readonly StakeFigure[]): Partial<FormGradesFigures> {
  if (!input.stakes.some(({ area }) => area)) return {};
  const total = (key: 'cut' | 'fill'): Quantity<'volume'> => {
    const parts = input.stakes.flatMap(({ area }, i) => {
      const height = stakes[i]?.[key];
      return area && height ? [area.times(height)] : [];
    });
    const none = quantityOf('volume', NIL, systemOfQuantity(input.stakes[0]?.x as Length));
    return parts.reduce((a, b) => a.plus(b), none);
  };
  return { fillVolume: total('fill'), cutVolume: total('cut') };
}

function settled(
  input: Parsed,
  pad: Pad,
): { elevation: Elevation; plane?: Plane; binding: readonly string[] } {
  if (input.surface) {
    if (input.fixed || input.bounds || input.cut) {
      refuse('', faults.giveOneOf(['surface', 'fixed points, bounds and cut of a plane to be sought']));
    }
    return { ...shapeOf(input.surface), binding: [] };
  }
  if (!input.cut) {
    pad.assume({
      name: 'cut',
      value: 'allowed',
      because: 'the forms may lie below the ground as it is',
      override: 'Give cut: none',
      source: COMMON_PRACTICE,
    });
  }
  const { plane, binding } = seek(input);
  return { elevation: onPlane(plane), plane, binding };
}

function systemFor(input: Parsed): System {
  const like =
    input.stakes[0]?.top ?? input.stakes[0]?.ground ?? input.fixed?.[0]?.elevation ?? input.stakes[0]?.x;
  return like ? systemOfQuantity(like) : 'customary';
}

function reckon(input: Parsed, pad: Pad): FormGradesFigures {
  refuseSameStakes(input.stakes);
  const system = systemFor(input);
  const { elevation, plane, binding } = settled(input, pad);
  const stakes = input.stakes.map((stake) => stakeFigure(stake, elevation, system, pad));
  const falls = fallFigures(input.falls ?? [], elevation, system, pad);
  return {
    verdict: falls.every(({ verdict }) => verdict === 'met') ? 'all falls met' : 'falls not met',
    stakes,
    falls,
    ...(plane ? planeFigures(plane, system, pad) : {}),
    fillHeights: sum(stakes, 'fill'),
    cutHeights: sum(stakes, 'cut'),
    ...volumes(input, stakes),
    binding,
    ...(input.square ? squareFigures(input.square, pad) : {}),
  };
}

/**
 * Form elevations at stakes, for a surface given or for the plane with the least fill.
 *
 * @param input - stakes, and a surface; or fixed points, bounds and falls that a plane must meet
 * @returns for each stake the elevation, the mark from its top, cut and fill; the falls checked
 * @throws {InputError} `conflicting-grades` with the names of the conditions that no plane meets
 * together; `collinear-spots` for three fixed points on a line or a quad that is bent inwards;
 * `repeated-name`, `repeated-point`, `too-many`; quantities that cannot be read
 * @source closed forms; cut and fill signs as in NAVEDTRA 14081
 * @example
 * ```ts
 * import { formGrades } from 'flatwork-reckoner';
 *
 * const { figures } = formGrades({
 *   fixed: [{ name: 'threshold', x: '0 ft', y: '0 ft', elevation: '100 ft' }],
 *   falls: [
 *     { name: 'away', from: { x: '0 ft', y: '0 ft' }, to: { x: '0 ft', y: '10 ft' }, least: '2%' },
 *   ],
 *   stakes: [{ name: 'A', x: '0 ft', y: '12 ft', top: '100 ft 6 in' }],
 * });
 * figures.stakes[0]?.elevation.format(); // '99.76 ft'
 * figures.stakes[0]?.mark?.format(); // '8.875 in'
 * ```
 */
export const formGrades: Calculation<FormGradesInput, FormGradesFigures> = /*#__PURE__*/ define({
  id: 'form-grades',
  title: 'Elevations of forms at stakes',
  version: 1,
  sources: [CLOSED_FORM, NAVY_GRADES],
  input: () =>
    fields({
      surface: formSurface(),
      fixed: maybe(list(fixedPoint(), 1, CONDITION_LIMIT)),
      bounds: maybe(
        list(
          fields({
            name: label('name'),
            x: quantity('length', 'x', 'any'),
            y: quantity('length', 'y', 'any'),
            least: maybe(quantity('length', 'least', 'any')),
            most: maybe(quantity('length', 'most', 'any')),
          }),
          1,
          CONDITION_LIMIT,
        ),
      ),
      falls: maybe(
        list(
          fields({
            name: label('name'),
            from: planPoint(),
            to: planPoint(),
            least: maybe(quantity('slope', 'least', 'any')),
            most: maybe(quantity('slope', 'most', 'any')),
          }),
          1,
          CONDITION_LIMIT,
        ),
      ),
      cut: maybe(choice('cut', ['allowed', 'none'] as const)),
      stakes: list(
        fields({
          name: label('name'),
          x: quantity('length', 'x', 'any'),
          y: quantity('length', 'y', 'any'),
          top: maybe(quantity('length', 'top', 'any')),
          ground: maybe(quantity('length', 'ground', 'any')),
          area: maybe(quantity('area', 'area')),
        }),
        1,
        STAKE_LIMIT,
      ),
      square: maybe(
        fields({
          length: quantity('length', 'length'),
          width: quantity('length', 'width'),
          measured: maybe(list(quantity('length', 'each diagonal'), 2, 2)),
          batterBoards: maybe(quantity('length', 'batterBoards')),
        }),
      ),
    }),
  reckon,
});
