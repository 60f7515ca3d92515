/**
 * Does water run away from the building over a whole surface?
 *
 * Each facet between three spots is a plane; its fall along x and y follows from the three by
 * Cramer's rule, and its slope is the hypotenuse of both. Where any of it lies within `zone` of a
 * building, the part of the fall that leads straight away from the nearest wall must reach the minimum;
 * beyond, the slope itself must reach `minimumBeyond`. A facet that falls back may do so where a
 * valley that falls, or a drain, lies between it and the building and none of its water gets past. Valleys must fall by
 * themselves, see `valleys.ts`. Ponds fill to the spot they spill over; their volume is
 * the sum over facets of the prisms under water, in closed form.
 *
 * Elevations, slopes, depths and volumes are exact. Which way water runs is searched in binary
 * numbers: a fall below 0.000 000 001 counts as none, and shares and paths carry that error.
 */

import { edgeBefore, nextEdge } from '../geometry/tin';
import type { PointInput } from '../outline/outline';
import { angleTo, Decimal, PI } from '../quantity/decimal';
import { constant, length, slope } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import type { System } from '../quantity/units';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, label, list, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, PCA_DRAINAGE, type Source } from '../reckoning/source';
import { anyOf, given } from '../reckoning/together';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { type FallingBack, fallingBack, isCaught, TRIFLE } from './falling-back';
import * as faults from './faults';
import {
  type FlowPath,
  NO_FALL,
  pathFromPoint,
  pathFromSpot,
  type Reach,
  reachOf,
  roughLengths,
} from './flow';
import { GRADE_USES, type GradeUse, isAccessible, isGround, limitOf } from './limits';
import {
  ASTRIDE,
  awayFall,
  awayFrom,
  lines as lineFields,
  locate,
  middleOf,
  nearestToFacet,
  type ParsedLine,
  type Piece,
  type Place,
  type PlacedLine,
  place,
  reachesInto,
  type SurfaceLineInput,
} from './lines';
import { small } from './marks';
import * as ordinary from './ordinary';
import { type FoundPond, type ShorePoint, shoreOf } from './ponds';
import { GIVEN, GRADING_STANDARDS, GUTTER_LEAST, IRC_DRAINAGE } from './sources';
import {
  type ExactSpot,
  metersAs,
  type ParsedSpots,
  SPOT_KEYS,
  type SpotsInput,
  spotFields,
  surveyOf,
} from './spots';
import { type Site, siteOf } from './terrain';
import { type FoundValley, isFlat, valleysOf } from './valleys';

/** A sill or threshold that the surface must stay below. */
export interface SillInput {
  /** What the sill is called. */
  readonly name: string;
  /** The spot below it, or a point of the surface. */
  readonly at: string | PointInput;
  /** Elevation of the sill, on the datum of the spots. */
  readonly elevation: QuantityInput<'length'>;
}

/** A downspout or other inflow. */
export interface InflowInput {
  /** What the inflow is called. */
  readonly name: string;
  /** The spot where it comes down, or a point of the surface. */
  readonly at: string | PointInput;
  /** How much it brings; see the calculation `runoff`. */
  readonly flow?: QuantityInput<'volume-rate'>;
}

/** Input of the drainage check of a surface. */
export interface SurfaceDrainageInput extends SpotsInput {
  /** Walls, thresholds, curbs, drains and open edges. */
  readonly lines?: readonly SurfaceLineInput[];
  /** Corners of the slab in order, where it is not everything between the spots. */
  readonly outline?: readonly (string | PointInput)[];
  /** What the surface is used as; decides the least slope where none is given. */
  readonly use?: GradeUse;
  /** Least slope away from a building within `zone`; goes before that of `use`. */
  readonly minimum?: QuantityInput<'slope'>;
  /** Least slope beyond `zone`; by default 1%. */
  readonly minimumBeyond?: QuantityInput<'slope'>;
  /**
   * Least fall along a valley, where two facets drain into the side between them, and along a curb; by
   * default 0.3% on paving and 0.5% on ground, or 2% on ground within `zone` of a building that the valley
   * keeps water from.
   */
  readonly minimumValley?: QuantityInput<'slope'>;
  /** The most that the surface may slope in any direction; goes before that of `use`. */
  readonly maximum?: QuantityInput<'slope'>;
  /** How far from a building `minimum` applies; by default 10 ft. */
  readonly zone?: QuantityInput<'length'>;
  /** How near a spot must be to a line to lie on it; by default 1/2 in. */
  readonly nearLine?: QuantityInput<'length'>;
  /** Ponds up to this depth do not change the verdict; by default 1/8 in. */
  readonly pondDepth?: QuantityInput<'length'>;
  /** Sills whose freeboard over the surface is wanted; none by default. */
  readonly sills?: readonly SillInput[];
  /** Downspouts and the like, to be followed down the surface; none by default. */
  readonly inflows?: readonly InflowInput[];
}

/** A point in plan. */
export interface PlanPointFigure {
  /** How far along, as the spots are measured. */
  readonly x: Quantity<'length'>;
  /** How far across, as the spots are measured. */
  readonly y: Quantity<'length'>;
}

/** One facet of the surface. */
export interface FacetFigure {
  /** Names of its three spots. */
  readonly spots: readonly string[];
  /** Slope along the steepest way down: the hypotenuse of the falls along x and y. */
  readonly slope: Quantity<'slope'>;
  /** Fall along x; negative when it rises. */
  readonly alongX: Quantity<'slope'>;
  /** Fall along y; negative when it rises. */
  readonly alongY: Quantity<'slope'>;
  /** Direction of the fall from the x axis, counterclockwise from 0 to 360 degrees; left out when level. */
  readonly direction?: Quantity<'angle'>;
  /** The building line nearest to its middle. */
  readonly nearest?: string;
  /** Slope straight away from that line; negative when it runs to it. */
  readonly away?: Quantity<'slope'>;
  /** Angle between the fall and the way straight off that line: 0 away, 180 to the wall. */
  readonly angleToWall?: Quantity<'angle'>;
  /** What is at fault with it, or `drains`; one both too steep and otherwise at fault is listed twice. */
  readonly verdict: 'drains' | 'too flat' | 'runs to the building' | 'too steep';
}

/** A valley: the side that two facets drain into, or the foot of a curb. */
export interface ValleyFigure {
  /** Its higher end. */
  readonly from: string;
  /** Its lower end. */
  readonly to: string;
  /** Fall along it. */
  readonly fall: Quantity<'slope'>;
  /** The least that it must fall. */
  readonly required: Quantity<'slope'>;
  /** Length in plan. */
  readonly length: Quantity<'length'>;
  /** The curb that it runs along, where it does. */
  readonly curb?: string;
  /** Whether it falls as it must. */
  readonly verdict: 'drains' | 'too flat';
}

/** What of the surface falls back toward a building. */
export interface FallsBackFigure {
  /** The building line nearest to it. */
  readonly line: string;
  /** Plan area that falls back. */
  readonly area: Quantity<'area'>;
  /** Part of it whose water gets to a building. */
  readonly reaching: Quantity<'area'>;
  /** Part of it whose water stands on the way, in a valley too flat or a pond. */
  readonly standing: Quantity<'area'>;
  /** Part of it that a valley or a drain catches before the building. */
  readonly caught: Quantity<'area'>;
}

/** Water that stands. */
export interface PondFigure {
  /** Its deepest spot. */
  readonly lowest: string;
  /** The spot that it spills over. */
  readonly spillsOver: string;
  /** Elevation that it fills to. */
  readonly level: Quantity<'length'>;
  /** Depth at its deepest spot. */
  readonly depth: Quantity<'length'>;
  /** Water that it holds when full. */
  readonly volume: Quantity<'volume'>;
  /** Plan area under water. */
  readonly area: Quantity<'area'>;
  /** The water's edge, one ring or more. */
  readonly outline: readonly (readonly PlanPointFigure[])[];
  /** Building lines that it stands against. */
  readonly against: readonly string[];
}

/** A spot from which water would have to climb. */
export interface LowSpotFigure {
  /** Name of the spot. */
  readonly spot: string;
  /** How far it lies below the spot that water must get over. */
  readonly below: Quantity<'length'>;
  /** The spot downstream that is higher. */
  readonly downstream: string;
}

/** Water that reaches a building line. */
export interface ReachFigure {
  /** Name of the building line. */
  readonly line: string;
  /** Spots of the facets that it comes from, highest first; at most 50. */
  readonly from: readonly string[];
  /**
   * Plan area whose rain gets there, to six figures. That holds only where water from above is not
   * divided within a facet. A facet that drains over two sides divides it by its own areas, not by
   * where it comes in, and a facet whose water reaches two lines counts for one; then it is an estimate.
   */
  readonly area: Quantity<'area'>;
}

/** The way that water takes from one place. */
export interface PathFigure {
  /** The spot where it starts, or the inflow where that is at no spot. */
  readonly from: string;
  /** The line it leaves over, the drain it enters, or `open edge`. */
  readonly leavesOver: string;
  /** Length in plan, good to 0.01 mm. */
  readonly length: Quantity<'length'>;
  /** The first building line that it meets. */
  readonly reaches?: string;
  /** Points in plan, good to 0.01 mm; at most 100. */
  readonly points: readonly PlanPointFigure[];
}

/** A sill over the surface. */
export interface SillFigure {
  /** Name of the sill. */
  readonly name: string;
  /** How far the surface lies below it. */
  readonly freeboard: Quantity<'length'>;
}

/** Where an inflow goes. */
export interface InflowFigure extends PathFigure {
  /** Name of the inflow. */
  readonly name: string;
  /** How much it brings, as given. */
  readonly flow?: Quantity<'volume-rate'>;
}

/** Figures of the drainage check of a surface. */
export interface SurfaceDrainageFigures {
  /** The gravest that was found. */
  readonly verdict: 'drains' | 'too flat' | 'water stands' | 'runs to the building';
  /** How many spots were given, those off the slab too. */
  readonly spots: Quantity<'count'>;
  /** How many facets the surface has. */
  readonly facets: Quantity<'count'>;
  /** Least slope away from a building. */
  readonly required: Quantity<'slope'>;
  /** Least slope elsewhere. */
  readonly requiredBeyond: Quantity<'slope'>;
  /** Slope of the steepest facet. */
  readonly steepest: Quantity<'slope'>;
  /** Slope of the flattest facet. */
  readonly flattest: Quantity<'slope'>;
  /** How many facets run to a building within the zone, but for those behind a valley or drain that takes it. */
  readonly reverse: Quantity<'count'>;
  /** How many facets fall less than required. */
  readonly short: Quantity<'count'>;
  /** Facets at fault, the worst first, at most 100; then the others where there are no more than 100 in all. */
  readonly facetList: readonly FacetFigure[];
  /** How many valleys there are: sides that two facets drain into, and feet of curbs. */
  readonly valleys: Quantity<'count'>;
  /** How many of them fall less than they must. */
  readonly flatValleys: Quantity<'count'>;
  /** The valley that lacks most of the fall it must have, or has least to spare; left out where there is none. */
  readonly worstValley?: ValleyFigure;
  /** Valleys, the worst first, at most 100. */
  readonly valleyList: readonly ValleyFigure[];
  /** Plan area that falls back toward a building, near or far. */
  readonly areaBack: Quantity<'area'>;
  /** That area by building line. */
  readonly fallsBack: readonly FallsBackFigure[];
  /** How many ponds there are, however shallow. */
  readonly pondCount: Quantity<'count'>;
  /** Ponds, the largest first, at most 100. */
  readonly ponds: readonly PondFigure[];
  /** Volume of the ponds listed. */
  readonly pondVolume: Quantity<'volume'>;
  /** Spots lower than a spot downstream of them, the lowest first, at most 100. */
  readonly lowSpots: readonly LowSpotFigure[];
  /** The longest way found that water takes from a spot. */
  readonly longestPath: PathFigure;
  /** Water that reaches a building, by line. */
  readonly reaches: readonly ReachFigure[];
  /** Each sill checked, in the order given. */
  readonly sills: readonly SillFigure[];
  /** Where each inflow goes, in the order given. */
  readonly inflows: readonly InflowFigure[];
}

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

/** The input, read. */
export interface ParsedSurface extends ParsedSpots {
  readonly lines: readonly ParsedLine[] | undefined;
  readonly outline: readonly Place[] | undefined;
  readonly use: GradeUse | undefined;
  readonly minimum: Slope | undefined;
  readonly minimumBeyond: Slope | undefined;
  readonly minimumValley?: Slope | undefined;
  readonly maximum: Slope | undefined;
  readonly zone: Length | undefined;
  readonly nearLine: Length | undefined;
  readonly pondDepth: Length | undefined;
  readonly sills:
    | readonly { readonly name: string; readonly at: Place; readonly elevation: Length }[]
    | undefined;
  readonly inflows:
    | readonly {
        readonly name: string;
        readonly at: Place;
        readonly flow: Quantity<'volume-rate'> | undefined;
      }[]
    | undefined;
}

const LISTED = 100;
const NAMED = 50;
const INCHES_PER_FOOT = 12;
const HALF_TURN = 180;
const OUTLINE_LIMIT = 500;
const PLACE_LIMIT = 100;
const ZONE = constant(() => length('10 ft'));
const NEAR = constant(() => length('1/2 in'));
const SHALLOW = constant(() => length('1/8 in'));
const HELD = 40;
/** In square meters, by definition. */
const SQUARE_FOOT = 0.09290304;
const BEYOND = constant(() => slope('1%'));
const GUTTER = constant(() => slope('0.3%'));
const GRASS_VALLEY = constant(() => slope('0.5%'));
const SWALE = constant(() => slope('2%'));
/** What gutters are better given than the least. */
const GOOD_GUTTER = constant(() => slope('1%'));
const RAMP_RISE = constant(() => length('30 in'));
const HANDRAIL_RISE = constant(() => length('6 in'));
const FREEBOARD = constant(() => length('1 in'));
/** Ponds shallower than this, in meters, come from binary rounding. */
const NO_DEPTH = 1e-7;

/** The schema of a surface. */
export const surfaceFields = (): Field<ParsedSurface> =>
  fields(
    {
      ...spotFields(),
      lines: maybe(lineFields()),
      outline: maybe(list(place('each corner'), 3, OUTLINE_LIMIT)),
      use: maybe(choice('use', GRADE_USES)),
      minimum: maybe(quantity('slope', 'minimum', 'not-negative', ordinary.LEAST_FALL)),
      minimumBeyond: maybe(quantity('slope', 'minimumBeyond', 'not-negative', ordinary.LEAST_FALL)),
      minimumValley: maybe(quantity('slope', 'minimumValley', 'not-negative', ordinary.LEAST_FALL)),
      maximum: maybe(quantity('slope', 'maximum', 'positive', ordinary.MOST_FALL)),
      zone: maybe(quantity('length', 'zone', 'positive', ordinary.ZONE)),
      nearLine: maybe(quantity('length', 'nearLine', 'positive', ordinary.NEAR_LINE)),
      pondDepth: maybe(quantity('length', 'pondDepth', 'not-negative', ordinary.POND_DEPTH)),
      sills: maybe(
        list(
          fields({
            name: label('name'),
            at: place('at'),
            elevation: quantity('length', 'elevation', 'any', ordinary.ELEVATION),
          }),
          0,
          PLACE_LIMIT,
        ),
      ),
      inflows: maybe(
        list(
          fields({
            name: label('name'),
            at: place('at'),
            flow: maybe(quantity('volume-rate', 'flow', 'not-negative', ordinary.INFLOW)),
          }),
          0,
          PLACE_LIMIT,
        ),
      ),
    },
    anyOf(...SPOT_KEYS.map((name) => given(name))),
  );

/** The limits that this surface is held to, and where each comes from. */
export interface Held {
  readonly minimum: Slope;
  readonly beyond: Slope;
  readonly valley: Slope;
  /** What a valley must fall that keeps water from a building near by. */
  readonly swale: Slope;
  readonly maximum: Slope | undefined;
  readonly zone: Length;
  readonly near: Length;
  readonly pondDepth: Length;
  readonly use: GradeUse;
  readonly sources: Readonly<
    Record<'minimum' | 'beyond' | 'valley' | 'swale' | 'maximum' | 'pondDepth', Source>
  >;
}

/** Every valley of a surface, with the least fall that it is held to. */
export function valleysHeld(site: Site, held: Held): FoundValley[] {
  const limits = {
    least: perMeter(held.valley),
    swale: perMeter(held.swale),
    zone: held.zone.toNumber('m'),
  };
  return valleysOf(site, limits, held.pondDepth.toNumber('m'));
}

function assumed<T extends Quantity>(
  pad: Pad,
  name: string,
  given: T | undefined,
  usual: () => T,
  because: string,
  source = COMMON_PRACTICE,
): T {
  if (given) return given;
  const value = usual();
  pad.assume({ name, value: value, because, override: say`Give ${{ name }}`, source });
  return value;
}

/** The least that drains, where a use has a published most only. */
function leastOf(use: GradeUse): {
  readonly least: Slope;
  readonly because: string;
  readonly source: Source;
} {
  const { least, because, source } = limitOf(use);
  if (least) return { least, because, source };
  return { least: BEYOND(), because: 'the least for outdoor slabs', source: PCA_DRAINAGE };
}

const valleyOf = (use: GradeUse): Slope => (isGround(use) ? GRASS_VALLEY() : GUTTER());
const valleySource = (use: GradeUse): Source => (isGround(use) ? GRADING_STANDARDS : GUTTER_LEAST);

function assumedValley(use: GradeUse, pad: Pad): Slope {
  const least = valleyOf(use);
  pad.assume({
    name: 'minimumValley',
    ...(isGround(use)
      ? {
          value: say`${{ least }}, and ${{ swale: SWALE() }} by a building`,
          because:
            'the least along a grassed swale; the code asks for more where it keeps water off a building',
        }
      : { value: least, because: 'the least along a paved gutter' }),
    override: 'Give minimumValley',
    source: valleySource(use),
  });
  return least;
}

/** The default in the units of the input: 10 ft and 3 m are not the same, so only the showing changes. */
const shownFor = (system: System, usual: () => Length): (() => Length) =>
  system === 'metric' ? () => usual().in('mm') : usual;

function heldTo(input: ParsedSurface, system: System, pad: Pad): Held {
  const use = input.use ?? 'paved-by-building';
  const limit = limitOf(use);
  const least = leastOf(use);
  const minimum = assumed(pad, 'minimum', input.minimum, () => least.least, least.because, least.source);
  const beyond = assumed(
    pad,
    'minimumBeyond',
    input.minimumBeyond,
    () => (minimum.lessThan(BEYOND()) ? minimum : BEYOND()),
    'the least for outdoor slabs',
    PCA_DRAINAGE,
  );
  const valley = input.minimumValley ?? assumedValley(use, pad);
  return {
    use,
    minimum,
    beyond,
    valley,
    swale: input.minimumValley ?? (isGround(use) ? SWALE() : valley),
    maximum: input.maximum ?? limit.most,
    zone: assumed(pad, 'zone', input.zone, ZONE, 'the code asks for the fall within 10 ft', IRC_DRAINAGE),
    near: assumed(
      pad,
      'nearLine',
      input.nearLine,
      shownFor(system, NEAR),
      'spots are seldom placed nearer than that',
    ),
    pondDepth: assumed(
      pad,
      'pondDepth',
      input.pondDepth,
      shownFor(system, SHALLOW),
      'water that shallow dries off by itself',
    ),
    sources: {
      minimum: input.minimum ? GIVEN : least.source,
      beyond: input.minimumBeyond ? GIVEN : PCA_DRAINAGE,
      valley: input.minimumValley ? GIVEN : valleySource(use),
      swale: input.minimumValley ? GIVEN : IRC_DRAINAGE,
      maximum: input.maximum ? GIVEN : (limit.mostSource ?? limit.source),
      pondDepth: input.pondDepth ? GIVEN : COMMON_PRACTICE,
    },
  };
}

/** Facets, judged in binary numbers: which list each belongs to and how bad it is. */
interface Judged {
  readonly reverse: number[];
  readonly short: number[];
  readonly steep: number[];
  readonly steepest: number;
  readonly flattest: number;
  /** How far each facet is below what is required; higher is worse. */
  readonly lack: Float64Array;
  /** 1 for facets with a part within the zone of a building that must fall straight away from it. */
  readonly zoned: Uint8Array;
  readonly valleys: readonly FoundValley[];
  readonly back: FallingBack;
  readonly reach: Reach | undefined;
}

const perMeter = (s: Slope): number => s.toNumber('mm/m') / 1000;

/** Fall of each facet per meter. */
function fallsOf({ terrain: { tin } }: Site): Float64Array {
  const falls = new Float64Array(tin.facets);
  for (let t = 0; t < tin.facets; t += 1) {
    falls[t] = Math.sqrt((tin.fallX[t] as number) ** 2 + (tin.fallY[t] as number) ** 2);
  }
  return falls;
}

function extremes(falls: Float64Array): { readonly steepest: number; readonly flattest: number } {
  let [steepest, flattest] = [0, 0];
  for (let t = 1; t < falls.length; t += 1) {
    if ((falls[t] as number) > (falls[steepest] as number)) steepest = t;
    if ((falls[t] as number) < (falls[flattest] as number)) flattest = t;
  }
  return { steepest, flattest };
}

/** Which facets have any part within the zone of a building, and how each falls away from it. */
function zonedFacets(site: Site, zone: number): { zoned: Uint8Array; away: Float64Array } {
  const { tin } = site.terrain;
  const [zoned, away] = [new Uint8Array(tin.facets), new Float64Array(tin.facets)];
  for (let t = 0; t < tin.facets && site.walls.length > 0; t += 1) {
    const off = awayFall(site.walls, tin, t);
    if (off === undefined) continue;
    away[t] = off;
    const { piece, distance } = nearestToFacet(site.walls, tin, t);
    // One that falls back counts by its middle: the zone may just touch what drains to a low spot beyond.
    const within = off < -NO_FALL ? distance <= zone : reachesInto(site.walls[piece] as Piece, tin, t, zone);
    if (within) zoned[t] = 1;
  }
  return { zoned, away };
}

function steeperThan(falls: Float64Array, maximum: Slope | undefined): number[] {
  const most = maximum ? perMeter(maximum) + NO_FALL : Number.POSITIVE_INFINITY;
  return Array.from(falls, (_, t) => t).filter((t) => (falls[t] as number) > most);
}

function judge(site: Site, held: Held): Judged {
  const [minimum, beyond, zone] = [perMeter(held.minimum), perMeter(held.beyond), held.zone.toNumber('m')];
  const walled = site.walls.length > 0;
  const falls = fallsOf(site);
  const deep = held.pondDepth.toNumber('m');
  const valleys = valleysHeld(site, held);
  const back = fallingBack(site, valleys, perMeter(held.valley), deep);
  const reach = walled ? reachOf(site.terrain) : undefined;
  const { zoned, away } = zonedFacets(site, zone);
  const lack = new Float64Array(falls.length);
  const [reverse, short]: [number[], number[]] = [[], []];
  for (let t = 0; t < falls.length; t += 1) {
    const off = away[t] as number;
    // Beyond the zone, or where a valley or drain takes the water, the slope itself counts.
    const byWall = zoned[t] === 1 && !isCaught(back, reach, t, off < -NO_FALL);
    if (!byWall) zoned[t] = 0;
    const least = byWall || !walled ? minimum : beyond;
    lack[t] = least - (byWall ? off : (falls[t] as number));
    if (byWall && off < -NO_FALL) reverse.push(t);
    else if ((lack[t] as number) > NO_FALL) short.push(t);
  }
  const steep = steeperThan(falls, held.maximum);
  return { reverse, short, steep, ...extremes(falls), lack, zoned, valleys, back, reach };
}

const cornersOf = ({ terrain: { tin } }: Site, t: number): [number, number, number] =>
  [tin.corner[3 * t], tin.corner[3 * t + 1], tin.corner[3 * t + 2]] as [number, number, number];

/** Fall along x and y, exact, by Cramer's rule on the three spots. */
function exactFall(spots: readonly ExactSpot[]): { readonly x: Decimal; readonly y: Decimal } {
  const [a, b, c] = spots as readonly [ExactSpot, ExactSpot, ExactSpot];
  const [bx, by, bz] = [b.x.minus(a.x), b.y.minus(a.y), b.z.minus(a.z)];
  const [cx, cy, cz] = [c.x.minus(a.x), c.y.minus(a.y), c.z.minus(a.z)];
  const cross = bx.times(cy).minus(by.times(cx));
  return {
    x: by.times(cz).minus(bz.times(cy)).div(cross),
    y: bz.times(cx).minus(bx.times(cz)).div(cross),
  };
}

const slopeOfFall = (fall: Decimal, system: System): Slope =>
  quantityOf('slope', fall.times(INCHES_PER_FOOT), system).in('%');

const degrees = (radians: Decimal): Quantity<'angle'> =>
  // Two digits fewer than the angle was taken to, so that 45 degrees are 45.
  quantityOf('angle', radians.times(HALF_TURN).div(PI).toSignificantDigits(22), 'customary');

function wallFigures(
  site: Site,
  t: number,
  spots: readonly ExactSpot[],
  fall: { x: Decimal; y: Decimal },
): Partial<FacetFigure> {
  const middle = middleOf(spots);
  const { piece, distance } = nearestToFacet(site.walls, site.terrain.tin, t);
  if (piece === -1 || distance < ASTRIDE) return {};
  const wall = site.walls[piece] as Piece;
  const way = awayFrom(wall, middle.x, middle.y);
  const along = fall.x.times(way.x).plus(fall.y.times(way.y));
  const square = fall.x.times(way.y).minus(fall.y.times(way.x));
  const away = along.div(Decimal.hypot(way.x, way.y));
  const level = fall.x.isZero() && fall.y.isZero();
  return {
    nearest: (site.lines[wall.line] as PlacedLine).name,
    away: slopeOfFall(away, site.survey.system),
    ...(level ? {} : { angleToWall: degrees(angleTo(square.abs(), along)) }),
  };
}

function facetFigure(site: Site, t: number, verdict: FacetFigure['verdict']): FacetFigure {
  const { survey } = site;
  const corners = cornersOf(site, t);
  const spots = corners.map(survey.exact);
  const fall = exactFall(spots);
  const level = fall.x.isZero() && fall.y.isZero();
  const turn = angleTo(fall.y, fall.x);
  const around = turn.isNegative() ? turn.plus(PI.times(2)) : turn;
  return {
    spots: corners.map(survey.name),
    slope: slopeOfFall(Decimal.hypot(fall.x, fall.y), survey.system),
    alongX: slopeOfFall(fall.x, survey.system),
    alongY: slopeOfFall(fall.y, survey.system),
    ...(level ? {} : { direction: degrees(around) }),
    ...wallFigures(site, t, spots, fall),
    verdict,
  };
}

function facetList(site: Site, { reverse, short, steep, lack }: Judged): FacetFigure[] {
  const worst = (list: readonly number[]): number[] =>
    [...list].sort((a, b) => (lack[b] as number) - (lack[a] as number)).slice(0, LISTED);
  const at: [number, FacetFigure['verdict']][] = [
    ...worst(reverse).map((t): [number, FacetFigure['verdict']] => [t, 'runs to the building']),
    ...worst(short).map((t): [number, FacetFigure['verdict']] => [t, 'too flat']),
    ...steep.slice(0, LISTED).map((t): [number, FacetFigure['verdict']] => [t, 'too steep']),
  ];
  const { facets } = site.terrain.tin;
  if (facets <= LISTED) {
    const seen = new Set(at.map(([t]) => t));
    for (let t = 0; t < facets; t += 1) if (!seen.has(t)) at.push([t, 'drains']);
  }
  return at.slice(0, LISTED).map(([t, verdict]) => facetFigure(site, t, verdict));
}

/** Twice the plan area of a facet. */
function doubleAreaOf([a, b, c]: readonly [ExactSpot, ExactSpot, ExactSpot]): Decimal {
  return b.x
    .minus(a.x)
    .times(c.y.minus(a.y))
    .minus(b.y.minus(a.y).times(c.x.minus(a.x)))
    .abs();
}

/** Water over one facet: its plan area and volume, in closed form. */
export function wetPart(
  spots: readonly [ExactSpot, ExactSpot, ExactSpot],
  level: Decimal,
): { readonly area: Decimal; readonly volume: Decimal } {
  const whole = doubleAreaOf(spots).div(2);
  const depths = spots.map(({ z }) => level.minus(z)).sort((a, b) => b.comparedTo(a)) as [
    Decimal,
    Decimal,
    Decimal,
  ];
  const [deep, mid, shallow] = depths;
  if (!shallow.isNegative()) return { area: whole, volume: whole.times(deep.plus(mid).plus(shallow)).div(3) };
  if (deep.lessThanOrEqualTo(0)) return { area: new Decimal(0), volume: new Decimal(0) };
  if (mid.lessThanOrEqualTo(0)) {
    // One spot under water: the wet corner is a smaller pyramid.
    const share = deep.times(deep).div(deep.minus(mid).times(deep.minus(shallow)));
    return { area: whole.times(share), volume: whole.times(share).times(deep).div(3) };
  }
  // One spot above water: all of it, less the dry corner.
  const share = shallow.times(shallow).div(deep.minus(shallow).times(mid.minus(shallow)));
  const sum = deep.plus(mid).plus(shallow).minus(share.times(shallow));
  return { area: whole.times(new Decimal(1).minus(share)), volume: whole.times(sum).div(3) };
}

const areaAs = (value: Decimal, system: System): Quantity<'area'> => quantityOf('area', value, system);

const volumeAs = (value: Decimal, system: System): Quantity<'volume'> => {
  const volume = quantityOf('volume', value, system);
  return system === 'metric' ? volume : volume.in('ft3');
};

function shorePoint(site: Site, point: ShorePoint, level: Decimal): PlanPointFigure {
  const { survey } = site;
  const a = survey.exact(point[0]);
  if (point.length === 1) return { x: metersAs(a.x, survey.system), y: metersAs(a.y, survey.system) };
  const b = survey.exact(point[1]);
  const share = (from: Decimal, to: Decimal): Decimal =>
    from.plus(to.minus(from).times(a.z.minus(level)).div(a.z.minus(b.z)));
  return {
    x: metersAs(share(a.x, b.x), survey.system),
    y: metersAs(share(a.y, b.y), survey.system),
  };
}

function pondFigure(site: Site, pond: FoundPond): PondFigure {
  const { survey, terrain, sides, lines } = site;
  const level = survey.exact(pond.spill).z;
  let [area, volume] = [new Decimal(0), new Decimal(0)];
  for (const t of pond.facets) {
    const spots = cornersOf(site, t).map(survey.exact) as [ExactSpot, ExactSpot, ExactSpot];
    const wet = wetPart(spots, level);
    area = area.plus(wet.area);
    volume = volume.plus(wet.volume);
  }
  const rings = shoreOf(terrain.tin, pond, terrain.tin.z[pond.spill] as number);
  const against = new Set(
    pond.spots.flatMap((v) => ((sides.dry[v] as number) > 0 ? [(sides.dry[v] as number) - 1] : [])),
  );
  return {
    lowest: survey.name(pond.lowest),
    spillsOver: survey.name(pond.spill),
    level: metersAs(level, survey.system),
    depth: small(metersAs(level.minus(survey.exact(pond.lowest).z), survey.system)),
    volume: volumeAs(volume, survey.system),
    area: areaAs(area, survey.system),
    outline: rings.map((ring) => ring.slice(0, OUTLINE_LIMIT).map((p) => shorePoint(site, p, level))),
    against: [...against].map((line) => (lines[line] as PlacedLine).name),
  };
}

/** Ponds deeper than binary rounding, the largest first. */
export function pondsFound(site: Site): FoundPond[] {
  return site.terrain.ponds.ponds
    .filter(({ depth }) => depth > NO_DEPTH)
    .sort((a, b) => b.depth * b.facets.length - a.depth * a.facets.length);
}

function lowSpots(site: Site, ponds: readonly FoundPond[]): LowSpotFigure[] {
  const { survey, terrain } = site;
  const low = ponds
    .slice(0, LISTED)
    .flatMap(({ spots, spill }) =>
      spots
        .filter((v) => v < survey.count)
        .slice(0, LISTED)
        .map((v) => ({ v, spill })),
    )
    .sort((a, b) => {
      const below = (s: { v: number; spill: number }): number =>
        (terrain.tin.z[s.spill] as number) - (terrain.tin.z[s.v] as number);
      return below(b) - below(a);
    });
  return low.slice(0, LISTED).map(({ v, spill }) => ({
    spot: survey.name(v),
    below: small(metersAs(survey.exact(spill).z.minus(survey.exact(v).z), survey.system)),
    downstream: survey.name(spill),
  }));
}

/** Binary meters to five places: what a path is good to. */
const found = (meters: number): Decimal => new Decimal(meters.toFixed(5));

const POINTS = 100;

function leavesOver(site: Site, { leavesBy }: FlowPath): string {
  const { sides, lines, terrain } = site;
  const named = (line: number | undefined): string | undefined => (line ? lines[line - 1]?.name : undefined);
  if (leavesBy.edge !== -1) return named(sides.along[leavesBy.edge]) ?? 'open edge';
  if (leavesBy.spot === -1) return 'open edge';
  const drain = named(sides.drain[leavesBy.spot]);
  if (drain) return drain;
  const { spoke } = terrain;
  for (let i = spoke.from[leavesBy.spot] as number; i < (spoke.from[leavesBy.spot + 1] as number); i += 1) {
    // The sides that begin at the spot, and those that end there.
    for (const e of [spoke.edges[i] as number, edgeBefore(spoke.edges[i] as number)]) {
      if (sides.wall[e] === 0 && (sides.along[e] as number) > 0) return named(sides.along[e]) ?? 'open edge';
    }
  }
  return 'open edge';
}

function pathFigure(site: Site, from: string, path: FlowPath): PathFigure {
  const { survey, lines } = site;
  const origin = survey.exact(0);
  const step = Math.max(1, Math.ceil(path.points.length / POINTS));
  const shown = path.points.filter((_, i) => i % step === 0 || i === path.points.length - 1);
  const reaches = lines[path.reaches]?.name;
  return {
    from,
    leavesOver: leavesOver(site, path),
    length: metersAs(found(path.length), survey.system),
    ...(reaches === undefined ? {} : { reaches }),
    points: shown.map(([x, y]) => ({
      x: metersAs(origin.x.plus(found(x)), survey.system),
      y: metersAs(origin.y.plus(found(y)), survey.system),
    })),
  };
}

const CANDIDATES = 32;

/** The longest way of any spot: the likeliest by the net are followed over the facets. */
function longestPath(site: Site): PathFigure {
  const rough = roughLengths(site.terrain);
  const best: number[] = [];
  for (const v of site.terrain.flood.order) {
    if (v >= site.survey.count) continue;
    const last = best[CANDIDATES - 1];
    if (last !== undefined && (rough[v] as number) <= (rough[last] as number)) continue;
    best.push(v);
    best.sort((a, b) => (rough[b] as number) - (rough[a] as number));
    if (best.length > CANDIDATES) best.pop();
  }
  let [from, path] = [best[0] as number, pathFromSpot(site.terrain, best[0] as number)];
  for (const v of best.slice(1)) {
    const other = pathFromSpot(site.terrain, v);
    if (other.length > path.length) [from, path] = [v, other];
  }
  return pathFigure(site, site.survey.name(from), path);
}

interface Arriving {
  area: number;
  readonly spots: Set<number>;
}

/** Water that reaches a building: by line, the area and where it comes from. */
function reachFigures(site: Site, reach: Reach): ReachFigure[] {
  const { survey, terrain } = site;
  const { tin } = terrain;
  const by = new Map<number, Arriving>();
  for (let t = 0; t < tin.facets; t += 1) {
    const [share, line] = [reach.share[t] as number, reach.line[t] as number];
    if (share <= TRIFLE || line === -1) continue;
    const [a, b, c] = cornersOf(site, t);
    const [ax, ay] = [tin.x[a] as number, tin.y[a] as number];
    const cross =
      ((tin.x[b] as number) - ax) * ((tin.y[c] as number) - ay) -
      ((tin.y[b] as number) - ay) * ((tin.x[c] as number) - ax);
    const arriving = by.get(line) ?? { area: 0, spots: new Set() };
    arriving.area += (share * Math.abs(cross)) / 2;
    for (const v of [a, b, c]) arriving.spots.add(v);
    by.set(line, arriving);
  }
  return [...by].map(([line, { area, spots }]) => ({
    line: (site.lines[line] as PlacedLine).name,
    from: [...spots]
      .filter((v) => v < survey.count)
      .sort((a, b) => (tin.z[b] as number) - (tin.z[a] as number))
      .slice(0, NAMED)
      .map(survey.name),
    area: sixFigures(area, survey.system),
  }));
}

/** Points this near outside a facet, as a share of it, still lie on it: sills stand on its very side. */
const ON_SIDE = 1e-9;

/** The facet that a point lies on, its sides included; -1 for none. */
function facetAt(site: Site, x: number, y: number): number {
  const { corner, facets, turn, x: xs, y: ys } = site.terrain.tin;
  const side = (p: number, q: number): number =>
    turn *
    (((xs[p] as number) - x) * ((ys[q] as number) - y) - ((ys[p] as number) - y) * ((xs[q] as number) - x));
  for (let t = 0; t < facets; t += 1) {
    const a = corner[3 * t] as number;
    const b = corner[3 * t + 1] as number;
    const c = corner[3 * t + 2] as number;
    const [u, v, w] = [side(a, b), side(b, c), side(c, a)];
    if (Math.min(u, v, w) >= -ON_SIDE * (u + v + w)) return t;
  }
  return -1;
}

/** The spot itself, or the one that stands for it where it was read twice; -1 off the surface. */
function onSurface({ terrain: { tin, spoke } }: Site, v: number): number {
  if ((spoke.from[v] as number) < (spoke.from[v + 1] as number)) return v;
  return tin.corner.find((u) => tin.x[u] === tin.x[v] && tin.y[u] === tin.y[v]) ?? -1;
}

/** Elevation of the surface at a place, exact. */
function elevationAt(site: Site, at: Place, path: string, name: string): Decimal {
  const spot = locate(site.survey, at, path);
  if (spot.spot !== undefined) return site.survey.exact(spot.spot).z;
  const t = facetAt(site, spot.x, spot.y);
  if (t === -1) return refuse(path, faults.outsideSurface(name));
  const spots = cornersOf(site, t).map(site.survey.exact);
  const fall = exactFall(spots);
  const a = spots[0] as ExactSpot;
  return a.z.minus(fall.x.times(spot.exact.x.minus(a.x))).minus(fall.y.times(spot.exact.y.minus(a.y)));
}

function sillFigures(site: Site, sills: NonNullable<ParsedSurface['sills']>, pad: Pad): SillFigure[] {
  return sills.map(({ name, at, elevation }, i) => {
    const z = elevationAt(site, at, `sills[${i}].at`, name);
    const e = elevation;
    const surface = metersAs(z, systemOfQuantity(e));
    const freeboard = pad.step(
      'freeboard below a sill',
      'b = e − z',
      { e, z: surface },
      small(e.minus(surface)),
    );
    if (freeboard.lessThan(FREEBOARD())) pad.caution(cautions.lowThreshold(FREEBOARD(), freeboard));
    return { name, freeboard };
  });
}

function inflowFigures(site: Site, inflows: NonNullable<ParsedSurface['inflows']>): InflowFigure[] {
  return inflows.map(({ name, at, flow }, i) => {
    const path = `inflows[${i}].at`;
    const spot = locate(site.survey, at, path);
    const named = spot.spot === undefined ? -1 : onSurface(site, spot.spot);
    const facet = spot.spot === undefined ? facetAt(site, spot.x, spot.y) : -1;
    if (named === -1 && facet === -1) refuse(path, faults.outsideSurface(name));
    const way =
      named === -1 ? pathFromPoint(site.terrain, facet, spot.x, spot.y) : pathFromSpot(site.terrain, named);
    const from = named === -1 ? name : site.survey.name(named);
    return { ...pathFigure(site, from, way), name, ...(flow ? { flow } : {}) };
  });
}

/** Where the middle of a half-edge lies, to break ties alike in whatever order the spots came. */
function placeOfEdge({ terrain: { tin } }: Site, e: number): number {
  const [p, q] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
  return (tin.x[p] as number) + (tin.x[q] as number);
}

/** The worst first: those that lack most, then those with least to spare, then the longest. */
function worstValleys(site: Site, valleys: readonly FoundValley[]): FoundValley[] {
  const spare = ({ fall, least }: FoundValley): number => Math.round((fall - least) / NO_FALL);
  return [...valleys].sort(
    (a, b) => spare(a) - spare(b) || placeOfEdge(site, a.edge) - placeOfEdge(site, b.edge),
  );
}

function valleyFigure(site: Site, valley: FoundValley, held: Held): ValleyFigure {
  const { survey, lines } = site;
  const [p, q] = [survey.exact(valley.from), survey.exact(valley.to)];
  const long = Decimal.hypot(q.x.minus(p.x), q.y.minus(p.y));
  const curb = lines[valley.curb - 1]?.name;
  return {
    from: survey.name(valley.from),
    to: survey.name(valley.to),
    fall: slopeOfFall(p.z.minus(q.z).div(long), survey.system),
    required: valley.bySwaleRule ? held.swale : held.valley,
    length: metersAs(long.toSignificantDigits(HELD), survey.system),
    ...(curb === undefined ? {} : { curb }),
    verdict: isFlat(valley) ? 'too flat' : 'drains',
  };
}

/** Plan area of a facet, in binary numbers. */
function areaOf({ terrain: { tin } }: Site, t: number): number {
  const [a, b, c] = [tin.corner[3 * t], tin.corner[3 * t + 1], tin.corner[3 * t + 2]] as [
    number,
    number,
    number,
  ];
  const [ax, ay] = [tin.x[a] as number, tin.y[a] as number];
  const cross =
    ((tin.x[b] as number) - ax) * ((tin.y[c] as number) - ay) -
    ((tin.y[b] as number) - ay) * ((tin.x[c] as number) - ax);
  return Math.abs(cross) / 2;
}

/** Six figures are what a binary sum of facets is good to. */
function sixFigures(squareMeters: number, system: System): Quantity<'area'> {
  const unit = system === 'metric' ? 1 : SQUARE_FOOT;
  const area = areaAs(new Decimal((squareMeters / unit).toPrecision(6)).times(unit), system);
  return system === 'metric' ? area : area.in('ft2');
}

/** What falls back, by the building line nearest to it, in the order of the lines. */
function backFigures(site: Site, { back, reach }: Judged): FallsBackFigure[] {
  const { system } = site.survey;
  return site.lines.flatMap(({ name }, i) => {
    const facets = back.facets.filter((t) => back.line[t] === i + 1);
    if (facets.length === 0) return [];
    const sum = (share: (t: number) => number): Quantity<'area'> =>
      sixFigures(
        facets.reduce((total, t) => total + share(t) * areaOf(site, t), 0),
        system,
      );
    return [
      {
        line: name,
        area: sum(() => 1),
        reaching: sum((t) => reach?.share[t] ?? 0),
        standing: sum((t) => back.stands[t] as number),
        caught: sum((t) => back.caught[t] as number),
      },
    ];
  });
}

function heedWater(figures: SurfaceDrainageFigures, held: Held, pad: Pad): void {
  for (const { line, from } of figures.reaches) {
    pad.caution(cautions.waterReaches(line, from[0] ?? 'the surface'));
  }
  for (const { reaches, name } of figures.inflows) {
    if (reaches !== undefined) pad.caution(cautions.waterReaches(reaches, name));
  }
  const pond = figures.ponds.find(({ depth }) => depth.greaterThan(held.pondDepth));
  if (pond) pad.caution(cautions.ponding(held.pondDepth, pond.depth, held.sources.pondDepth));
}

const whereOf = ({ from, to, curb }: ValleyFigure): string =>
  `${curb === undefined ? '' : `along ${curb} `}from ${from} to ${to}`;

/** A valley too flat; or one that falls enough, but less than gutters are better given. */
function heedValleys({ verdict, valleyList: list }: SurfaceDrainageFigures, held: Held, pad: Pad): void {
  const worst = list[0];
  if (!worst) return;
  const bySwale = worst.required === held.swale && held.swale !== held.valley;
  const source = bySwale ? held.sources.swale : held.sources.valley;
  if (worst.verdict === 'too flat') {
    pad.caution(cautions.flatValley(whereOf(worst), worst.required, worst.fall, source));
    return;
  }
  const flattest = list.reduce((a, b) => (b.fall.lessThan(a.fall) ? b : a));
  const good = GOOD_GUTTER();
  // Where something graver is wrong, a gutter that might be better is not worth reading.
  if (verdict !== 'drains' || source === GIVEN || isGround(held.use)) return;
  if (!flattest.fall.lessThan(good)) return;
  pad.caution(cautions.nearlyLevelValley(whereOf(flattest), good, flattest.fall, GRADING_STANDARDS));
}

const byLack = (list: readonly number[], lack: Float64Array): number | undefined =>
  list.reduce<number | undefined>(
    (worst, t) => (worst === undefined || (lack[t] as number) > (lack[worst] as number) ? t : worst),
    undefined,
  );

function heedSlopes(site: Site, judged: Judged, held: Held, pad: Pad): void {
  const reverse = byLack(judged.reverse, judged.lack);
  if (reverse !== undefined) {
    const { away } = facetFigure(site, reverse, 'runs to the building');
    if (away) pad.caution(cautions.runsToBuilding(held.minimum, away, held.sources.minimum));
  }
  const short = byLack(judged.short, judged.lack);
  if (short !== undefined) {
    const { away, slope: whole } = facetFigure(site, short, 'too flat');
    const near = judged.zoned[short] === 1;
    const limit = near || site.walls.length === 0 ? 'minimum' : 'beyond';
    pad.caution(cautions.tooFlat(held[limit], near && away ? away : whole, held.sources[limit]));
  }
  const [steep] = judged.steep;
  if (steep !== undefined && held.maximum) {
    const { slope: whole } = facetFigure(site, judged.steepest, 'too steep');
    pad.caution(cautions.tooSteep(held.maximum, whole, held.sources.maximum, isAccessible(held.use)));
  }
}

/** What falls back and is not met by a stop already: caught, standing on the way or running off. */
function heedBack(figures: SurfaceDrainageFigures, pad: Pad): void {
  if (figures.reverse.sign() > 0 || figures.reaches.length > 0) return;
  for (const { line, area, standing, caught } of figures.fallsBack) {
    const end = caught.sign() > 0 ? 'caught' : 'leaves';
    pad.caution(cautions.fallsBack(area, line, standing.sign() > 0 ? 'stands' : end));
  }
}

/** A ramp is one run unless its landings are checked apart. */
function heedRamp(site: Site, held: Held, pad: Pad): void {
  if (held.use !== 'accessible-ramp') return;
  const { tin } = site.terrain;
  const heights = [...new Set(tin.corner)].map((v) => tin.z[v] as number);
  const lowest = heights.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const highest = heights.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const rise = small(metersAs(found(highest - lowest), site.survey.system));
  if (rise.greaterThan(RAMP_RISE())) pad.caution(cautions.longRamp(RAMP_RISE(), rise, 'stop'));
  if (rise.greaterThan(HANDRAIL_RISE())) pad.caution(cautions.rampHandrails(HANDRAIL_RISE(), rise));
}

function heed(figures: SurfaceDrainageFigures, site: Site, judged: Judged, held: Held, pad: Pad): void {
  heedSlopes(site, judged, held, pad);
  heedValleys(figures, held, pad);
  heedBack(figures, pad);
  heedRamp(site, held, pad);
  heedWater(figures, held, pad);
  if (site.walls.length === 0) pad.caution(cautions.noBuildingLine);
  for (const { name } of site.missed) pad.caution(cautions.lineOffSurface(name));
  if (site.sides.shut) pad.caution(cautions.noOutlet);
}

function verdictOf(
  figures: Omit<SurfaceDrainageFigures, 'verdict'>,
  pondDepth: Length,
  shut: boolean,
): SurfaceDrainageFigures['verdict'] {
  const inflow = figures.inflows.some(({ reaches }) => reaches !== undefined);
  if (figures.reverse.sign() > 0 || figures.reaches.length > 0 || inflow) return 'runs to the building';
  if (shut || figures.ponds.some(({ depth }) => depth.greaterThan(pondDepth))) return 'water stands';
  return figures.short.sign() > 0 || figures.flatValleys.sign() > 0 ? 'too flat' : 'drains';
}

function work({ facetList: list, ponds, worstValley }: SurfaceDrainageFigures, pad: Pad): void {
  const worst = list[0];
  if (worst) {
    const { alongX: X, alongY: Y, slope: S } = worst;
    pad.step(say`slope of the facet ${{ spots: worst.spots }}`, 'S = hypot(X, Y)', { X, Y }, S);
  }
  if (worstValley) {
    const { from, to, fall: s, length: l } = worstValley;
    pad.step(
      say`fall along the valley from ${{ from }} to ${{ to }}`,
      'f = s × l',
      { s, l },
      small(s.times(l)),
    );
  }
  const pond = ponds[0];
  if (pond) {
    const { level: l, depth: d } = pond;
    pad.step(say`elevation of the low spot ${{ spot: pond.lowest }}`, 'z = l − d', { l, d }, l.minus(d));
  }
}

const volumeSum = (ponds: readonly PondFigure[], system: System): Quantity<'volume'> =>
  ponds.reduce((sum, { volume }) => sum.plus(volume), volumeAs(new Decimal(0), system));

/** Build the site of a surface and what it is held to. */
export function readSite(input: ParsedSurface, pad: Pad): { readonly site: Site; readonly held: Held } {
  const survey = surveyOf(input);
  const held = heldTo(input, survey.system, pad);
  const near = canonicalValue(held.near).toNumber();
  return { held, site: siteOf(survey, { lines: input.lines ?? [], outline: input.outline, near }) };
}

/** The facets at fault, by number. */
export const faultyFacets = (site: Site, held: Held): Pick<Judged, 'reverse' | 'short'> => judge(site, held);

/** Check a surface. */
export function checkSurface(input: ParsedSurface, pad: Pad): SurfaceDrainageFigures {
  const { site, held } = readSite(input, pad);
  const { survey, terrain } = site;
  const judged = judge(site, held);
  const ponds = pondsFound(site);
  const listed = ponds.slice(0, LISTED).map((pond) => pondFigure(site, pond));
  const valleyList = worstValleys(site, judged.valleys)
    .slice(0, LISTED)
    .map((valley) => valleyFigure(site, valley, held));
  const back = backFigures(site, judged);
  const parts = {
    spots: wholeNumber(survey.count),
    facets: wholeNumber(terrain.tin.facets),
    required: held.minimum,
    requiredBeyond: held.beyond,
    steepest: facetFigure(site, judged.steepest, 'drains').slope,
    flattest: facetFigure(site, judged.flattest, 'drains').slope,
    reverse: wholeNumber(judged.reverse.length),
    short: wholeNumber(judged.short.length),
    facetList: facetList(site, judged),
    valleys: wholeNumber(judged.valleys.length),
    flatValleys: wholeNumber(judged.valleys.filter(isFlat).length),
    ...(valleyList[0] ? { worstValley: valleyList[0] } : {}),
    valleyList,
    areaBack: back.reduce((sum, { area }) => sum.plus(area), sixFigures(0, survey.system)),
    fallsBack: back,
    pondCount: wholeNumber(ponds.length),
    ponds: listed,
    pondVolume: volumeSum(listed, survey.system),
    lowSpots: lowSpots(site, ponds),
    longestPath: longestPath(site),
    reaches: judged.reach ? reachFigures(site, judged.reach) : [],
    sills: sillFigures(site, input.sills ?? [], pad),
    inflows: inflowFigures(site, input.inflows ?? []),
  };
  const figures: SurfaceDrainageFigures = {
    verdict: verdictOf(parts, held.pondDepth, site.sides.shut),
    ...parts,
  };
  work(figures, pad);
  heed(figures, site, judged, held, pad);
  return figures;
}
