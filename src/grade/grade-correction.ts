/**
 * What to raise or lower, while the concrete is wet, so that water runs away.
 *
 * The spots are triangulated. Within `zone` of a building every facet must fall away from it by the
 * minimum; along each fall given one spot must lie so much above another; no spot may come nearer
 * to a sill than its freeboard, move farther than allowed, or leave less than the least thickness.
 * All of that is linear in the elevations. Made least is the concrete: each spot carries a third of
 * the facets around it, `V = Σ A ÷ 3 × move`.
 *
 * A linear programme finds which conditions bind; the moves are solved again exactly from those.
 * Beyond `zone` only the falls given are asked for: that a facet falls at all, no matter where to,
 * is not linear. Look at `after`, the check of the corrected surface.
 */
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant, length } from '../quantity/make';
import { canonicalValue, type Quantity, type QuantityInput, quantityOf } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, fields, label, list, maybe, quantity } from '../reckoning/fields';
import { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE, IRC_DRAINAGE, MCGRAW_PATIO } from '../reckoning/source';
import { type Condition, conflictAmong, type Equation, exactly, leastOf, type Weights } from './least';
import { limitOf } from './limits';
import {
  ASTRIDE,
  awayFrom,
  lines as lineFields,
  middleOf,
  nearestToFacet,
  type Piece,
  type PlacedLine,
  type SurfaceLineInput,
} from './lines';
import { small, toMark } from './marks';
import { rate } from './shapes';
import { type ExactSpot, metresAs, type SpotInput, spotFields, surveyOf } from './spots';
import { checkSurface, type ParsedSurface, type SurfaceDrainageFigures } from './surface-check';
import { type Site, siteOf } from './terrain';

/** A fall that must be there from one spot to another. */
export interface SpotFallInput {
  /** Name of the upper spot. */
  readonly from: string;
  /** Name of the lower spot. */
  readonly to: string;
  /** Least slope down from `from` to `to`. */
  readonly least: QuantityInput<'slope'>;
}

/** A sill or threshold above a spot. */
export interface SpotSillInput {
  /** What the sill is called. */
  readonly name: string;
  /** Name of the spot below it. */
  readonly at: string;
  /** Elevation of the sill, on the datum of the spots. */
  readonly elevation: QuantityInput<'length'>;
}

/** How thick the slab is at a spot. */
export interface SpotThicknessInput {
  /** Name of the spot. */
  readonly spot: string;
  /** Thickness there before the correction. */
  readonly thickness: QuantityInput<'length'>;
}

/** Input of {@link gradeCorrection}. */
export interface GradeCorrectionInput {
  /** The spots as read, with names. */
  readonly spots: readonly SpotInput[];
  /** Elevation of the line of sight, for spots with rod readings. */
  readonly heightOfInstrument?: QuantityInput<'length'>;
  /** Lines of the building; see the drainage check. */
  readonly lines?: readonly SurfaceLineInput[];
  /** Falls that must be there besides those away from a building; none by default. */
  readonly falls?: readonly SpotFallInput[];
  /** Least slope away from a building within `zone`; by default 2%. */
  readonly minimum?: QuantityInput<'slope'>;
  /** By default 10 ft. */
  readonly zone?: QuantityInput<'length'>;
  /** What may be done; by default `raise`. */
  readonly how?: 'raise' | 'lower' | 'either';
  /** Names of spots that may be moved; by default all. */
  readonly movable?: readonly string[];
  /** The farthest that any spot may be moved. */
  readonly farthest?: QuantityInput<'length'>;
  /** Sills that the surface must stay below by `freeboard`; none by default. */
  readonly sills?: readonly SpotSillInput[];
  /** How far the surface must stay below sills; by default 1 in. */
  readonly freeboard?: QuantityInput<'length'>;
  /** Thickness at spots; with `leastThickness` it limits how far they may be lowered. */
  readonly thicknesses?: readonly SpotThicknessInput[];
  /** What must be left where the surface is lowered. */
  readonly leastThickness?: QuantityInput<'length'>;
}

/** What to do at one spot. */
export interface SpotMoveFigure {
  /** Name of the spot. */
  readonly spot: string;
  /** Elevation afterwards, exact. */
  readonly elevation: Quantity<'length'>;
  /** How far up it goes; left out where it goes down. */
  readonly raise?: Quantity<'length'>;
  /** How far down it goes; left out where it goes up. */
  readonly lower?: Quantity<'length'>;
  /** The move to the nearest 1/16 in or mm. */
  readonly mark: Quantity<'length'>;
  /** Thickness afterwards, where it was given. */
  readonly thickness?: Quantity<'length'>;
}

/** A sill after the correction. */
export interface SillAfterFigure {
  /** Name of the sill. */
  readonly name: string;
  /** How far the corrected surface lies below it; negative when above. */
  readonly freeboard: Quantity<'length'>;
}

/** Figures of {@link gradeCorrection}. */
export interface GradeCorrectionFigures {
  /** Whether any spot is to be moved. */
  readonly verdict: 'nothing to correct' | 'correct these spots';
  /** Spots to be moved, and no others. */
  readonly moves: readonly SpotMoveFigure[];
  /** Concrete to be added, in place. */
  readonly concrete: Quantity<'volume'>;
  /** Concrete to be struck off. */
  readonly struckOff: Quantity<'volume'>;
  /** Each sill after the correction, in the order given. */
  readonly sills: readonly SillAfterFigure[];
  /** What the correction is decided by. */
  readonly binding: readonly string[];
  /** The check of the corrected surface. */
  readonly after: {
    /** The gravest that is still found. */
    readonly verdict: SurfaceDrainageFigures['verdict'];
    /** How many facets still run to a building within the zone. */
    readonly reverse: Quantity<'count'>;
    /** How many facets still fall less than required. */
    readonly short: Quantity<'count'>;
    /** How many ponds are left, however shallow. */
    readonly pondCount: Quantity<'count'>;
    /** Volume of the ponds left. */
    readonly pondVolume: Quantity<'volume'>;
  };
}

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;
type How = 'raise' | 'lower' | 'either';

interface Parsed extends Pick<ParsedSurface, 'spots' | 'heightOfInstrument' | 'lines'> {
  readonly falls:
    | readonly { readonly from: string; readonly to: string; readonly least: Slope }[]
    | undefined;
  readonly minimum: Slope | undefined;
  readonly zone: Length | undefined;
  readonly how: How | undefined;
  readonly movable: readonly string[] | undefined;
  readonly farthest: Length | undefined;
  readonly sills:
    | readonly { readonly name: string; readonly at: string; readonly elevation: Length }[]
    | undefined;
  readonly freeboard: Length | undefined;
  readonly thicknesses: readonly { readonly spot: string; readonly thickness: Length }[] | undefined;
  readonly leastThickness: Length | undefined;
}

const SPOTS = 60;
const ZONE = constant(() => length('10 ft'));
const FREEBOARD = constant(() => length('1 in'));
const NEAR = constant(() => length('1/2 in'));
const MOVED = 1e-7;
/** How near to binding counts as binding: the loosest that leads to an exact solution is taken. */
const BINDS = [1e-6, 1e-7, 1e-8, 1e-9];
/** Strays of 60 digits, in metres. */
const STRAY = new Decimal('1e-30');
const ROUNDED = 9;
const NIL = new Decimal(0);
const ONE = new Decimal(1);

/** A condition on elevations: `Σ weight × elevation ≥ least`. */
interface Need {
  readonly name: string;
  readonly spots: readonly number[];
  readonly weights: readonly Decimal[];
  readonly least: Decimal;
}

/** Everything that the correction is sought from. */
interface Job {
  readonly site: Site;
  readonly how: How;
  readonly movable: readonly number[];
  readonly needs: readonly Need[];
  /** Farthest raise and lowering at each spot, where bounded. */
  readonly roomUp: ReadonlyMap<number, Decimal>;
  readonly roomDown: ReadonlyMap<number, Decimal>;
}

function settle<T extends Quantity | string>(
  pad: Pad,
  name: string,
  given: T | undefined,
  usual: T,
  because: string,
  source = COMMON_PRACTICE,
): T {
  if (given !== undefined) return given;
  const value = typeof usual === 'string' ? usual : usual.format();
  pad.assume({ name, value, because, override: `Give ${name}`, source });
  return usual;
}

const facetCorners = ({ terrain: { tin } }: Site, t: number): [number, number, number] =>
  [tin.corner[3 * t], tin.corner[3 * t + 1], tin.corner[3 * t + 2]] as [number, number, number];

/** How the fall of a facet along a way depends on the elevations of its corners. */
function fallWeights(
  [a, b, c]: readonly [ExactSpot, ExactSpot, ExactSpot],
  way: { x: Decimal; y: Decimal },
): Decimal[] {
  const [bx, by, cx, cy] = [b.x.minus(a.x), b.y.minus(a.y), c.x.minus(a.x), c.y.minus(a.y)];
  const turn = bx.times(cy).minus(by.times(cx));
  // Fall = ((by·cz − bz·cy)·wx + (bz·cx − bx·cz)·wy) ÷ turn, with bz and cz counted from a.
  const onB = cx.times(way.y).minus(cy.times(way.x)).div(turn);
  const onC = by.times(way.x).minus(bx.times(way.y)).div(turn);
  return [onB.plus(onC).neg(), onB, onC];
}

/** The same condition on spots alone: the middle of a cell is the mean of the spots around it. */
function onSpots(
  { survey, terrain: { tin } }: Site,
  corners: readonly number[],
  weights: readonly Decimal[],
): Pick<Need, 'spots' | 'weights'> {
  const bySpot = new Map<number, Decimal>();
  const add = (v: number, weight: Decimal): void => {
    bySpot.set(v, (bySpot.get(v) ?? NIL).plus(weight));
  };
  corners.forEach((v, k) => {
    const weight = weights[k] as Decimal;
    const ring = tin.rings[v - survey.count];
    if (!ring) add(v, weight);
    else for (const u of ring) add(u, weight.div(ring.length));
  });
  return { spots: [...bySpot.keys()], weights: [...bySpot.values()] };
}

function facetNeeds(site: Site, minimum: Slope, zone: Length): Need[] {
  const { survey, terrain, walls, lines } = site;
  if (walls.length === 0) return [];
  const needs: Need[] = [];
  for (let t = 0; t < terrain.tin.facets; t += 1) {
    const spots = facetCorners(site, t);
    const exact = spots.map(survey.exact) as [ExactSpot, ExactSpot, ExactSpot];
    const middle = middleOf(exact);
    const { piece, distance } = nearestToFacet(walls, terrain.tin, t);
    if (distance > zone.toNumber('m') || distance < ASTRIDE) continue;
    const wall = walls[piece] as Piece;
    const way = awayFrom(wall, middle.x, middle.y);
    const long = Decimal.hypot(way.x, way.y);
    const unit = { x: way.x.div(long), y: way.y.div(long) };
    needs.push({
      name: `${spots.map(survey.name).join(', ')} away from ${(lines[wall.line] as PlacedLine).name}`,
      ...onSpots(site, spots, fallWeights(exact, unit)),
      least: rate(minimum),
    });
  }
  return needs;
}

/** Spots read twice at one place move together: for each, the one that stands for both. */
function standIns({ survey, terrain }: Site): number[] {
  const places = new Map<string, number>();
  const key = (v: number): string => `${survey.x[v]} ${survey.y[v]}`;
  for (const v of terrain.tin.corner) places.set(key(v), v);
  return Array.from({ length: survey.count }, (_, v) => places.get(key(v)) ?? v);
}

function spotNamed(site: Site, name: string, path: string): number {
  const spot = site.survey.find(name);
  if (spot !== undefined) return standIns(site)[spot] ?? spot;
  const known = Array.from({ length: Math.min(site.survey.count, SPOTS) }, (_, i) => site.survey.name(i));
  return refuse(path, faults.unknownName(name, known));
}

function fallNeeds(site: Site, falls: NonNullable<Parsed['falls']>): Need[] {
  return falls.map(({ from, to, least }, i) => {
    const [a, b] = [spotNamed(site, from, `falls[${i}].from`), spotNamed(site, to, `falls[${i}].to`)];
    if (a === b) refuse(`falls[${i}].to`, faults.repeatedPoint(1));
    const [p, q] = [site.survey.exact(a), site.survey.exact(b)];
    const long = Decimal.hypot(q.x.minus(p.x), q.y.minus(p.y));
    return {
      name: `${from} to ${to}`,
      spots: [a, b],
      weights: [ONE, ONE.neg()],
      least: rate(least).times(long),
    };
  });
}

function sillNeeds(site: Site, sills: NonNullable<Parsed['sills']>, freeboard: Length): Need[] {
  return sills.map(({ name, at, elevation }, i) => ({
    name: `sill ${name}`,
    spots: [spotNamed(site, at, `sills[${i}].at`)],
    weights: [ONE.neg()],
    least: canonicalValue(freeboard).minus(canonicalValue(elevation)),
  }));
}

function rooms(site: Site, input: Parsed): Pick<Job, 'roomUp' | 'roomDown'> {
  const [roomUp, roomDown] = [new Map<number, Decimal>(), new Map<number, Decimal>()];
  const { farthest, leastThickness } = input;
  if (farthest) {
    for (let v = 0; v < site.survey.count; v += 1) {
      roomUp.set(v, canonicalValue(farthest));
      roomDown.set(v, canonicalValue(farthest));
    }
  }
  (input.thicknesses ?? []).forEach(({ spot, thickness }, i) => {
    const v = spotNamed(site, spot, `thicknesses[${i}].spot`);
    if (!leastThickness) return;
    const left = Decimal.max(canonicalValue(thickness).minus(canonicalValue(leastThickness)), 0);
    roomDown.set(v, Decimal.min(left, roomDown.get(v) ?? left));
  });
  return { roomUp, roomDown };
}

/** Conditions in binary numbers, on raises `r` and lowerings `l`. */
function conditionsOf(job: Job): { conditions: Condition[]; names: string[] } {
  const { survey } = job.site;
  const names: string[] = [];
  const conditions: Condition[] = [];
  const movable = new Set(job.movable);
  for (const { name, spots, weights, least } of job.needs) {
    const moved: Record<string, number> = {};
    spots.forEach((v, k) => {
      if (!movable.has(v)) return;
      const weight = (weights[k] as Decimal).toNumber();
      if (job.how !== 'lower') moved[`r${v}`] = weight;
      if (job.how !== 'raise') moved[`l${v}`] = -weight;
    });
    names.push(name);
    conditions.push({ weights: moved, least: lackOf(job, { name, spots, weights, least }).toNumber() });
  }
  for (const v of job.movable) {
    const [up, down] = [job.roomUp.get(v), job.roomDown.get(v)];
    if (up && job.how !== 'lower') {
      names.push(`room at ${survey.name(v)}`);
      conditions.push({ weights: { [`r${v}`]: 1 }, most: up.toNumber() });
    }
    if (down && job.how !== 'raise') {
      names.push(`room at ${survey.name(v)}`);
      conditions.push({ weights: { [`l${v}`]: 1 }, most: down.toNumber() });
    }
  }
  return { conditions, names };
}

/** How much of a need is missing as the spots lie now. */
function lackOf({ site }: Job, { spots, weights, least }: Need): Decimal {
  const now = spots.reduce(
    (sum, v, k) => sum.plus((weights[k] as Decimal).times(site.survey.exact(v).z)),
    NIL,
  );
  return least.minus(now);
}

/** A third of the plan area of the facets around each spot. */
function sharesOf(site: Site): Decimal[] {
  const shares = Array.from({ length: site.survey.count }, () => NIL);
  for (let t = 0; t < site.terrain.tin.facets; t += 1) {
    const spots = facetCorners(site, t);
    const [a, b, c] = spots.map(site.survey.exact) as [ExactSpot, ExactSpot, ExactSpot];
    const twice = b.x
      .minus(a.x)
      .times(c.y.minus(a.y))
      .minus(b.y.minus(a.y).times(c.x.minus(a.x)))
      .abs();
    const third = twice.div(6);
    const { spots: around, weights } = onSpots(site, spots, [third, third, third]);
    around.forEach((v, k) => {
      shares[v] = (shares[v] as Decimal).plus(weights[k] as Decimal);
    });
  }
  return shares;
}

function aimOf(job: Job, shares: readonly Decimal[]): Weights {
  const aim: Record<string, number> = {};
  for (const v of job.movable) {
    const share = Math.max((shares[v] as Decimal).toNumber(), MOVED);
    if (job.how !== 'lower') aim[`r${v}`] = share;
    if (job.how !== 'raise') aim[`l${v}`] = share;
  }
  return aim;
}

interface Correction {
  /** Moves by spot, upwards; only those that move. */
  readonly moves: ReadonlyMap<number, Decimal>;
  readonly binding: readonly string[];
}

type Named = Equation & { readonly name: string };

/** The conditions that bind, to within `near`, as equations in the moves. */
function bindingAt(job: Job, rough: ReadonlyMap<number, number>, near: number): Named[] {
  const moved = [...rough.keys()];
  const place = new Map(moved.map((v, k) => [v, k]));
  const equations: Named[] = [];
  for (const need of job.needs) {
    const lack = lackOf(job, need);
    const weights = moved.map(() => NIL);
    let given = 0;
    need.spots.forEach((v, k) => {
      const at = place.get(v);
      if (at === undefined) return;
      weights[at] = (weights[at] as Decimal).plus(need.weights[k] as Decimal);
      given += (need.weights[k] as Decimal).toNumber() * (rough.get(v) as number);
    });
    if (Math.abs(given - lack.toNumber()) < near && weights.some((w) => !w.isZero())) {
      equations.push({ name: need.name, weights, equals: lack });
    }
  }
  for (const v of moved) {
    const move = rough.get(v) as number;
    const room = move > 0 ? job.roomUp.get(v) : job.roomDown.get(v)?.neg();
    if (!room || Math.abs(room.toNumber() - move) >= near) continue;
    const weights = moved.map((u) => (u === v ? ONE : NIL));
    equations.push({ name: `room at ${job.site.survey.name(v)}`, weights, equals: room });
  }
  return equations;
}

/** True when these moves meet every need, exactly. */
function meetsAll(job: Job, moves: ReadonlyMap<number, Decimal>): boolean {
  return job.needs.every((need) => {
    const given = need.spots.reduce(
      (sum, v, k) => sum.plus((need.weights[k] as Decimal).times(moves.get(v) ?? NIL)),
      NIL,
    );
    return given.plus(STRAY).greaterThanOrEqualTo(lackOf(job, need));
  });
}

/** Moves solved exactly from the conditions that bind. */
function exactMoves(job: Job, rough: ReadonlyMap<number, number>): Correction {
  const moved = [...rough.keys()];
  const names = (equations: readonly Named[]): string[] => [...new Set(equations.map(({ name }) => name))];
  for (const near of BINDS) {
    const equations = bindingAt(job, rough, near);
    const exact = exactly(equations, moved.length);
    if (!exact) continue;
    const moves = new Map(moved.map((v, k) => [v, exact[k] as Decimal]));
    if (meetsAll(job, moves)) return { moves, binding: names(equations) };
  }
  // Where too little binds to tell, the search's own figure is given to a billionth of a metre.
  const moves = new Map(moved.map((v) => [v, new Decimal(rough.get(v) ?? 0).toDecimalPlaces(ROUNDED)]));
  return { moves, binding: names(bindingAt(job, rough, BINDS[0] as number)) };
}

function correct(job: Job, shares: readonly Decimal[]): Correction {
  const { conditions, names } = conditionsOf(job);
  const free: ReadonlySet<string> = new Set();
  const solved = leastOf({ conditions, free, aims: [aimOf(job, shares)] });
  if (!solved) {
    const clash = conflictAmong(conditions, free);
    return refuse('', faults.noSolution([...new Set(clash.map((i) => names[i] as string))]));
  }
  const rough = new Map<number, number>();
  for (const v of job.movable) {
    const move = (solved.get(`r${v}`) ?? 0) - (solved.get(`l${v}`) ?? 0);
    if (Math.abs(move) > MOVED) rough.set(v, move);
  }
  return exactMoves(job, rough);
}

function jobOf(input: Parsed, pad: Pad): Job {
  const minimum = settle(
    pad,
    'minimum',
    input.minimum,
    limitOf('paved-by-building').least as Slope,
    'paving within 10 ft of a building',
    IRC_DRAINAGE,
  );
  const zone = settle(
    pad,
    'zone',
    input.zone,
    ZONE(),
    'the code asks for the fall within 10 ft',
    IRC_DRAINAGE,
  );
  const how = settle<How>(
    pad,
    'how',
    input.how,
    'raise',
    'fresh concrete is added more easily than taken away',
  );
  const survey = surveyOf({ ...input, table: undefined, grid: undefined, forms: undefined });
  const site = siteOf(survey, { lines: input.lines ?? [], outline: undefined, near: NEAR().toNumber('m') });
  const freeboard = input.sills
    ? settle(
        pad,
        'freeboard',
        input.freeboard,
        FREEBOARD(),
        'the surface stays at least 1 in below sills',
        MCGRAW_PATIO,
      )
    : FREEBOARD();
  const needs = [
    ...facetNeeds(site, minimum, zone),
    ...fallNeeds(site, input.falls ?? []),
    ...sillNeeds(site, input.sills ?? [], freeboard),
  ];
  if (needs.length === 0) refuse('', faults.giveOneOf(['lines of a building', 'falls']));
  const movable = input.movable
    ? [...new Set(input.movable.map((name, i) => spotNamed(site, name, `movable[${i}]`)))]
    : [...new Set(site.terrain.tin.corner)].filter((v) => v < site.survey.count).sort((a, b) => a - b);
  return { site, how, movable, needs, ...rooms(site, input) };
}

function moveFigure(job: Job, v: number, move: Decimal, input: Parsed, pad: Pad): SpotMoveFigure {
  const { survey } = job.site;
  const spot = survey.name(v);
  const z = metresAs(survey.exact(v).z, survey.system);
  const m = small(metresAs(move, survey.system));
  const elevation = pad.step(`elevation of ${spot} afterwards`, 'w = z + m', { z, m }, z.plus(m));
  const before = input.thicknesses?.find((t) => t.spot === spot)?.thickness;
  return {
    spot,
    elevation,
    [move.isNegative() ? 'lower' : 'raise']: m.abs(),
    mark: toMark(m.abs()),
    ...(before ? { thickness: small(before.plus(m)) } : {}),
  };
}

/** The corrected surface, checked as any other. */
function afterwards(
  job: Job,
  moves: ReadonlyMap<number, Decimal>,
  input: Parsed,
): GradeCorrectionFigures['after'] {
  const { survey } = job.site;
  const standIn = standIns(job.site);
  const spots = (input.spots ?? []).map((spot, i) => ({
    ...spot,
    rod: undefined,
    elevation: metresAs(survey.exact(i).z.plus(moves.get(standIn[i] ?? i) ?? NIL), survey.system),
  }));
  const none = undefined;
  const figures = checkSurface(
    {
      spots,
      lines: input.lines,
      minimum: input.minimum,
      zone: input.zone,
      table: none,
      grid: none,
      forms: none,
      heightOfInstrument: none,
      outline: none,
      use: none,
      minimumBeyond: none,
      maximum: none,
      nearLine: none,
      pondDepth: none,
      sills: none,
      inflows: none,
    },
    new Pad(),
  );
  const { verdict, reverse, short, pondCount, pondVolume } = figures;
  return { verdict, reverse, short, pondCount, pondVolume };
}

function reckon(input: Parsed, pad: Pad): GradeCorrectionFigures {
  if ((input.spots?.length ?? 0) > SPOTS) refuse('spots', faults.tooMany('the spots to correct', SPOTS));
  const job = jobOf(input, pad);
  const { survey } = job.site;
  const shares = sharesOf(job.site);
  const { moves, binding } = correct(job, shares);
  const volume = (keep: (move: Decimal) => boolean): Quantity<'volume'> => {
    const parts = [...moves].filter(([, move]) => keep(move));
    const total = parts.reduce((sum, [v, move]) => sum.plus((shares[v] as Decimal).times(move.abs())), NIL);
    const q = quantityOf('volume', total, survey.system);
    return survey.system === 'metric' ? q : q.in('ft3');
  };
  const sills = (input.sills ?? []).map(({ name, at, elevation }, i) => {
    const v = spotNamed(job.site, at, `sills[${i}].at`);
    const surface = metresAs(survey.exact(v).z.plus(moves.get(v) ?? NIL), survey.system);
    return { name, freeboard: small(elevation.minus(surface)) };
  });
  for (const { freeboard } of sills) {
    if (freeboard.lessThan(FREEBOARD())) pad.caution(cautions.lowThreshold(FREEBOARD(), freeboard));
  }
  if (moves.size > 0) pad.caution(cautions.alkali);
  return {
    verdict: moves.size === 0 ? 'nothing to correct' : 'correct these spots',
    moves: [...moves].map(([v, move]) => moveFigure(job, v, move, input, pad)),
    concrete: volume((move) => !move.isNegative()),
    struckOff: volume((move) => move.isNegative()),
    sills,
    binding,
    after: afterwards(job, moves, input),
  };
}

/**
 * The least raise or lowering at each spot so that water runs away, and the concrete it takes.
 *
 * @param input - spots as read, the lines of the building or the falls wanted, and what may be moved
 * @returns moves by spot, concrete, thickness and freeboard afterwards, and the check of the result
 * @throws {InputError} `no-solution` with the names of what cannot be met together; `give-one-of`
 * where neither a building nor a fall is given; `too-many` above 60 spots; and as the drainage check
 * @source closed form; 2% as in IRC 2006 R401.3 as quoted
 * @example
 * ```ts
 * import { gradeCorrection } from 'flatwork-reckoner';
 *
 * const { figures } = gradeCorrection({
 *   spots: [
 *     { name: 'A', x: '0 ft', y: '0 ft', elevation: '100 ft' },
 *     { name: 'B', x: '10 ft', y: '0 ft', elevation: '99.9 ft' },
 *     { name: 'C', x: '0 ft', y: '10 ft', elevation: '99.8 ft' },
 *     { name: 'D', x: '10 ft', y: '10 ft', elevation: '99.8 ft' },
 *   ],
 *   lines: [{ kind: 'building', name: 'wall', along: ['A', 'B'] }],
 * });
 * figures.moves[0]?.spot; // 'B'
 * figures.moves[0]?.raise?.format(); // '1.2 in'
 * ```
 */
export const gradeCorrection: Calculation<GradeCorrectionInput, GradeCorrectionFigures> =
  /*#__PURE__*/ define({
    id: 'grade-correction',
    title: 'Correction of grades while placing',
    version: 1,
    sources: [CLOSED_FORM, IRC_DRAINAGE],
    input: () => {
      const { spots, heightOfInstrument } = spotFields();
      return fields({
        spots,
        heightOfInstrument,
        lines: maybe(lineFields()),
        falls: maybe(
          list(
            fields({ from: label('from'), to: label('to'), least: quantity('slope', 'least', 'any') }),
            1,
            SPOTS,
          ),
        ),
        minimum: maybe(quantity('slope', 'minimum', 'not-negative')),
        zone: maybe(quantity('length', 'zone')),
        how: maybe(choice('how', ['raise', 'lower', 'either'] as const)),
        movable: maybe(list(label('each spot'), 1, SPOTS)),
        farthest: maybe(quantity('length', 'farthest')),
        sills: maybe(
          list(
            fields({
              name: label('name'),
              at: label('at'),
              elevation: quantity('length', 'elevation', 'any'),
            }),
            1,
            SPOTS,
          ),
        ),
        freeboard: maybe(quantity('length', 'freeboard', 'not-negative')),
        thicknesses: maybe(
          list(fields({ spot: label('spot'), thickness: quantity('length', 'thickness') }), 1, SPOTS),
        ),
        leastThickness: maybe(quantity('length', 'leastThickness')),
      });
    },
    reckon,
  });
