/**
 * A joint plan for a slab of any outline, openings included.
 *
 * The rules: no panel wider than the spacing either way; none longer for its width than the ratio; none
 * narrower than the least side; every re-entrant corner, column and opening met by a joint; joints run
 * straight through from edge to edge, in line across openings and changes of width, so that none ends at
 * the middle of another panel. Among the plans that keep them, the one of least saw length.
 *
 * Outlines of straight sides get straight joints in two directions: each line either runs through a
 * corner, an opening, a fixed joint, or divides evenly what lies between two such lines. For outlines
 * with sides along two directions the search is exact among all plans of that kind as long as it ends
 * within its allowance of work; else the best plan found is given with the gap to the least that any
 * could come to. Round slabs get circles and radial joints, tapering ones a fan where that is better.
 * Where no plan keeps every rule, the one is given for which length of joints is least, each broken rule
 * weighing as much as sawing two sides of the largest panel allowed, with a list of what gives way.
 *
 * The search works in binary numbers; positions, lengths and areas are then reckoned from the outline
 * and whole steps of setting out in exact decimals. The bound and the gap of an unfinished search are
 * binary, stated to 0.1 mm.
 */
import type { Outline, PointInput } from '../outline/outline';
import { type Opening, type RegionInput, regionFields } from '../outline/region';
import { Decimal, ZERO } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { angle, constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import type { System } from '../quantity/units';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as sharedCautions from '../reckoning/cautions';
import { choice, type Field, fields, list, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import { withinLimit } from '../reckoning/limits';
import { SLAB_THICKNESS } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, EARLY_ENTRY_DEPTH, IRREGULAR_SLABS, SILICA_RULE } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import * as faults from './faults';
import { assumeLeastDepth, JOINT_METHODS, type JointMethod, workedDepth } from './joint-depth';
import { type FoundGrid, findGrid, type Setting } from './layout/grid-plan';
import { type IsolationLine, isolationLengths } from './layout/isolation';
import {
  brokenIn,
  type Laid,
  type LaidJoint,
  laidBack,
  layFan,
  layRound,
  layStraight,
  lengthOf,
} from './layout/laid';
import { missedCorners } from './layout/missed';
import {
  DOWELS,
  OPENING_CORNERS,
  PANELS,
  PASSES,
  panelLimit,
  SIDE_BY_SIDE,
  SLANTED_CORNERS,
  SQUARE_CORNERS,
  SQUARE_PANELS,
} from './layout/most';
import type { RoundSite } from './layout/round-plan';
import { BROKEN, type Limits, softened } from './layout/rules';
import type { SawOrder } from './layout/saw-order';
import { WORK_LIMIT } from './layout/search';
import { KINK } from './layout/sides';
import { type FixedType, ringArea, type Site, sitesOf } from './layout/site';
import { isSmall, passedBy } from './layout/spared';
import { type Draft, draftDeck, draftStrip } from './layout/strip';
import {
  type BackerRod,
  type IsolationBoard,
  type Sawing,
  type Sealant,
  type TakeOffInput,
  takeOff,
} from './layout/take-off';
import { heedWidePanels } from './layout/wide-panels';
import {
  BAR_SPACING,
  JOINT_DEPTH_RANGE,
  JOINT_SPACING,
  JOINT_WIDTH,
  LEAST_SIDE,
  LONGEST_RATIO,
  MODULE,
  SAW_RATE_LENGTH,
  SAW_RATE_TIME,
} from './ordinary';
import { JOINT_DEPTH, TAPER_WIDTH } from './sources';

/** What the slab is kept apart from. */
export type Neighbor = 'building' | 'column' | 'curb' | 'existing-slab' | 'steps' | 'wall';

/** A line along one side of the outline where the slab is kept apart from something. */
export interface IsolationInput {
  /** What stands there; it changes no figure. */
  readonly against: Neighbor;
  /** Where the line begins, on a side of the outline. */
  readonly from: PointInput;
  /** Where it ends, on the same side. */
  readonly to: PointInput;
}

/** A joint that must be where it is, from edge to edge (or to an opening). */
export interface FixedJointInput {
  /** What kind of joint it is. */
  readonly type: 'contraction' | 'construction' | 'isolation';
  /** One end, on an edge of the slab or of an opening. */
  readonly from: PointInput;
  /** The other end, on an edge as well. */
  readonly to: PointInput;
}

/** Input of {@link jointLayout}. Joints of a rectangle, L or polygon are placed as its corners are. */
export interface JointLayoutInput extends RegionInput {
  /** Thickness of the slab. */
  readonly thickness: QuantityInput<'length'>;
  /** The farthest apart that joints may be, from the plans or from `jointSpacing`; at least 1 ft. */
  readonly spacing: QuantityInput<'length'>;
  /** How long a panel may be for its width; by default 1.5 to 1. */
  readonly longestRatio?: QuantityInput<'ratio'>;
  /** Narrower panels are slivers; by default 2 ft, or half the spacing where that is less. */
  readonly minimumSide?: QuantityInput<'length'>;
  /** Openings that hold a column, by number from 1: joints are led through them both ways. */
  readonly columns?: readonly number[];
  /** Which way the joints run, from the x axis; by default along the longest side. */
  readonly direction?: QuantityInput<'angle'>;
  /** Joints fall on whole multiples of this from the corner of the slab, as for stamps or pavers. */
  readonly module?: QuantityInput<'length'>;
  /** Joints that must be where they are; none by default. */
  readonly fixed?: readonly FixedJointInput[];
  /** Points on the outline where joints of the neighboring slab end and must go on. */
  readonly continued?: readonly PointInput[];
  /** Sides, or parts of sides, with an isolation joint. Openings always have one. */
  readonly isolation?: readonly IsolationInput[];
  /** In a round slab joints may start at the middle of another panel; by default not if avoidable. */
  readonly tees?: 'allowed' | 'avoided';
  /** How the contraction joints are made; by default with a conventional saw. */
  readonly method?: 'conventional-saw' | 'early-entry-saw' | 'hand-groover' | 'preformed-strip';
  /** Depth of the contraction joints; by default by thickness and method. */
  readonly depth?: QuantityInput<'length'>;
  /** How deep the saw goes in one pass; by default the whole depth. */
  readonly depthPerPass?: QuantityInput<'length'>;
  /** How far the saw gets in a given time, cutting. */
  readonly sawRate?: SawRateInput;
  /** Joints are sawn one after another from the end the plan counts from; `reverse` where placing began at the other. */
  readonly sawOrder?: 'consecutive' | 'reverse';
  /** Thickness of the isolation board; by default 1/2 in. */
  readonly boardThickness?: QuantityInput<'length'>;
  /** Sealant is reckoned where its width and depth are given. */
  readonly sealant?: SealantInput;
  /** Dowels at construction joints, center to center; none by default. */
  readonly dowelSpacing?: QuantityInput<'length'>;
}

/** A length cut in a time. */
export interface SawRateInput {
  /** How far the blade gets in that time. */
  readonly length: QuantityInput<'length'>;
  /** How long it takes for that. */
  readonly in: QuantityInput<'time'>;
}

/** Sealant in the top of the joints. */
export interface SealantInput {
  /** Width of the bead, across the joint. */
  readonly width: QuantityInput<'length'>;
  /** Depth of the bead, down from the surface. */
  readonly depth: QuantityInput<'length'>;
  /** Which joints are sealed; by default all. */
  readonly joints?: 'all' | 'isolation' | 'sawn';
}

/** A place in plan. */
export interface Place {
  /** Along x, in the coordinates of the outline. */
  readonly x: Quantity<'length'>;
  /** Along y, in the coordinates of the outline. */
  readonly y: Quantity<'length'>;
}

/** A joint of the plan. */
export interface PlanJoint {
  /** From 1, in the order of the list. */
  readonly number: Quantity<'count'>;
  /** What kind of joint it is. */
  readonly type: 'contraction' | 'construction' | 'isolation';
  /** Of a circle `from` and `to` are one point on it; an arc runs counterclockwise about its center. */
  readonly shape: 'straight' | 'circle' | 'arc';
  /** Where it begins. */
  readonly from: Place;
  /** Where it ends. */
  readonly to: Place;
  /** The middle of a circle or an arc. */
  readonly center?: Place;
  /** From end to end, along the arc where it is one; once around for a circle. */
  readonly length: Quantity<'length'>;
  /** Contraction joints as cut; construction and isolation joints through the slab. */
  readonly depth: Quantity<'length'>;
}

/** A panel of the plan. */
export interface Panel {
  /** From 1, in the order of the list. */
  readonly number: Quantity<'count'>;
  /** The middle of the panel over all. */
  readonly at: Place;
  /** Over all in the direction of the joints; from circle to circle in a round slab. */
  readonly along: Quantity<'length'>;
  /** Over all across; mean width in a round or tapering slab. */
  readonly across: Quantity<'length'>;
  /** Openings taken out. */
  readonly area: Quantity<'area'>;
  /** Longer over shorter side, each over all. */
  readonly ratio: Quantity<'ratio'>;
}

/** A rule that could not be kept, and where. */
export interface GivenWay {
  /** The rule that gives way. */
  readonly rule:
    | 'sliver'
    | 'panel shape'
    | 'sharp corner'
    | 'corner not met'
    | 'opening passed by'
    | 'joint ends at a joint'
    | 'module';
  /** Which panel, where it is one. */
  readonly panel?: Quantity<'count'>;
  /** Which opening, by its place in `openings` from 1, where joints pass it by. */
  readonly opening?: Quantity<'count'>;
  /** The inside corner that no joint meets, or the middle of the opening. */
  readonly at?: Place;
  /** Shorter side of a sliver, ratio of a panel too long, else how many joints or corners break the rule. */
  readonly actual?: Quantity<'length'> | Quantity<'ratio'> | Quantity<'count'>;
  /** What the rule asks of a panel: least side, longest ratio, or sharpest corner. */
  readonly limit?: Quantity<'length'> | Quantity<'ratio'> | Quantity<'angle'>;
}

/** How sure it is that no shorter plan of the kind exists. */
export interface SearchNote {
  /** `exact`: none exists. `bounded`: none is shorter than `leastLength`. */
  readonly kind: 'exact' | 'bounded';
  /** All joints together: no plan of the kind comes to less. The length of this plan when exact. */
  readonly leastLength: Quantity<'length'>;
  /** What this plan has beyond the least length; none when exact. */
  readonly gap: Quantity<'length'>;
}

/** Figures of {@link jointLayout}. */
export interface JointLayoutFigures {
  /**
   * How the joints run: straight two ways; arcs and radial joints; a fan over a taper; across a strip; from an
   * opening outwards.
   */
  readonly pattern: 'straight' | 'round' | 'fan' | 'strip' | 'deck';
  /** How many panels. */
  readonly panelCount: Quantity<'count'>;
  /** Area of the slab, openings taken out: the sum of the panels. */
  readonly area: Quantity<'area'>;
  /** Contraction joints in all. */
  readonly contraction: Quantity<'length'>;
  /** Construction joints in all. */
  readonly construction: Quantity<'length'>;
  /** Isolation joints in all: openings, sides and fixed joints. */
  readonly isolation: Quantity<'length'>;
  /** Depth of the contraction joints. */
  readonly depth: Quantity<'length'>;
  /** Every joint in the slab with its place; isolation along sides and openings is not among them. */
  readonly joints: readonly PlanJoint[];
  /** Every panel with its place and size. */
  readonly panels: readonly Panel[];
  /** Rules that this plan does not keep, and where; empty when it keeps all. */
  readonly givesWay: readonly GivenWay[];
  /** How sure it is that this is the shortest plan of its kind. */
  readonly search: SearchNote;
  /** When the contraction joints are sawn. */
  readonly sawing?: Sawing;
  /** Board for all isolation joints; of no length where there are none. */
  readonly isolationBoard: IsolationBoard;
  /** Rod for the isolation joints, where they are sealed. */
  readonly backerRod?: BackerRod;
  /** Sealant for the joints that are sealed, where its width and depth are given. */
  readonly sealant?: Sealant;
  /** Dowels at construction joints, when their spacing is given. */
  readonly dowels?: Quantity<'count'>;
}

type Length = Quantity<'length'>;

interface Parsed extends Omit<TakeOffInput, 'thickness'> {
  readonly outline: Outline;
  readonly openings: readonly Opening[] | undefined;
  readonly thickness: Length;
  readonly spacing: Length;
  readonly longestRatio: Quantity<'ratio'> | undefined;
  readonly minimumSide: Length | undefined;
  readonly columns: readonly Quantity<'count'>[] | undefined;
  readonly direction: Quantity<'angle'> | undefined;
  readonly module: Length | undefined;
  readonly fixed: readonly { type: FixedType; from: PlaceRead; to: PlaceRead }[] | undefined;
  readonly continued: readonly PlaceRead[] | undefined;
  readonly isolation: readonly IsolationLine[] | undefined;
  readonly tees: 'allowed' | 'avoided' | undefined;
  readonly method: JointMethod | undefined;
  readonly depth: Length | undefined;
  readonly sawOrder: SawOrder | undefined;
}

type PlaceRead = Place;

const LEAST_SPACING = /*#__PURE__*/ paired('length', '1 ft', '0.3 m');
const SLIVER = /*#__PURE__*/ paired('length', '2 ft', '0.6 m');
const RATIO = constant(() => ratio('1.5:1'));
const SHARPEST = constant(() => angle('60 deg'));
const LEAST_RATIO = constant(() => ratio('1:1'));
const STEP = /*#__PURE__*/ paired('length', '1/16 in', '1 mm');
/** What an opening counts as at least, in corners: a round one over the least side, and any beside a slanted outline. */
const AS_CORNERS = 4;
const AS_ROUND = 10;
const AS_SMALL_ROUND = 6;
const AS_SLANTED = 2;
const FIXED_LIMIT = 200;

/** Limits read and checked, with their defaults listed. */
interface Rules {
  readonly spacing: Length;
  readonly leastSide: Length;
  readonly longestRatio: Quantity<'ratio'>;
}

function leastSideOf({ minimumSide, spacing }: Parsed, pad: Pad): Length {
  if (minimumSide) {
    if (!minimumSide.lessThan(spacing))
      refuse('minimumSide', sharedFaults.doesNotFit('minimumSide', 'spacing'));
    return minimumSide;
  }
  const half = spacing.over(wholeNumber(2));
  const least = half.lessThan(SLIVER.like(half)) ? half : SLIVER.like(half);
  pad.assume({
    name: 'minimumSide',
    value: { reckoned: least },
    because: say`narrower panels break off; ${{ sliver: SLIVER }}, or half the spacing where that is less`,
    override: 'Give minimumSide',
    source: TAPER_WIDTH,
  });
  return least;
}

function ratioOf({ longestRatio }: Parsed, pad: Pad): Quantity<'ratio'> {
  if (longestRatio) {
    if (longestRatio.lessThan(LEAST_RATIO()))
      refuse('longestRatio', faults.belowLeast('longestRatio', '1:1'));
    return longestRatio;
  }
  pad.assume({
    name: 'longestRatio',
    value: RATIO(),
    because: 'longer panels tend to crack across',
    override: 'Give longestRatio; published limits run from 1.25:1 to 2:1',
    source: IRREGULAR_SLABS,
  });
  return RATIO();
}

/** The spacing as it can be set out: whole steps, or whole modules. */
function spacingOf({ spacing, module, thickness }: Parsed): Length {
  const tooClose = LEAST_SPACING.undercutBy(spacing);
  if (tooClose) refuse('spacing', faults.belowLeast('spacing', tooClose.format()));
  if (module?.greaterThan(spacing)) refuse('module', sharedFaults.doesNotFit('module', 'spacing'));
  // Marks are a sixteenth or a millimeter apart: to be over by less than one is no reason for a row more.
  return module ? spacing.downTo(module) : spacing.upTo(STEP.like(thickness));
}

function rulesOf(input: Parsed, pad: Pad): Rules {
  const spacing = spacingOf(input);
  return { spacing, longestRatio: ratioOf(input, pad), leastSide: leastSideOf(input, pad) };
}

const limitsOf = ({ spacing, leastSide, longestRatio }: Rules): Limits => ({
  spacing: spacing.toNumber('m'),
  leastSide: leastSide.toNumber('m'),
  ratio: longestRatio.toNumber(':1'),
  weight: BROKEN,
});

/** A round opening in the very middle of a round slab, and nothing else that stands in the way. */
function middleHole({ openings = [] }: Parsed): Decimal | undefined {
  if (openings.length === 0) return new Decimal(0);
  const [opening] = openings;
  if (openings.length > 1 || opening?.shape !== 'circle') return undefined;
  const centered = opening.at.x.sign() === 0 && opening.at.y.sign() === 0;
  return centered ? canonicalValue(opening.diameter).div(2) : undefined;
}

const plain = (input: Parsed): boolean =>
  !input.fixed?.length && !input.continued?.length && !input.module && !input.direction;

/** Radii of a round slab with nothing in it, and the slice that it is. */
type Round = Pick<RoundSite, 'radius' | 'hole' | 'slice'>;

const WHOLE_TURN = 360;

function roundOf(input: Parsed): Round | undefined {
  const { outline } = input;
  const half = (d: Length): Decimal => canonicalValue(d).div(2);
  switch (outline.shape) {
    case 'circle': {
      const hole = middleHole(input);
      return hole && { radius: half(outline.diameter), hole, slice: undefined };
    }
    case 'ring': {
      if (input.openings?.length) return undefined;
      return { radius: half(outline.outerDiameter), hole: half(outline.innerDiameter), slice: undefined };
    }
    case 'sector': {
      if (input.openings?.length) return undefined;
      const hole = outline.innerRadius ? canonicalValue(outline.innerRadius) : ZERO;
      const slice = canonicalValue(outline.angle);
      const whole = slice.equals(WHOLE_TURN);
      return { radius: canonicalValue(outline.radius), hole, slice: whole ? undefined : slice };
    }
    default:
      return undefined;
  }
}

function roundLaid(input: Parsed, limits: Limits, step: Decimal): Laid | undefined {
  const round = plain(input) ? roundOf(input) : undefined;
  if (!round || round.hole.greaterThanOrEqualTo(round.radius)) return undefined;
  return layRound({ ...round, step, tees: input.tees === 'allowed' }, limits);
}

/** The corners that an opening is given with, or by its number of sides. */
function givenCorners(opening: Opening): number {
  if (opening.shape === 'polygon') return opening.points.length;
  return opening.shape === 'regular' ? opening.sides.toNumber('each') : 0;
}

/** Above this many corners an opening with slanted sides takes so much longer for each. */
const FEW_CORNERS = 20;
const AS_ONE_OF_MANY = 6;

const weighedCorners = ({ corners, cornered }: Site['openings'][number]): number =>
  corners.length + (cornered ? 0 : (AS_ONE_OF_MANY - 1) * Math.max(0, corners.length - FEW_CORNERS));

/** Before anything is placed: an arc becomes two sides or more, an opening counts as two corners or more. */
function checkCount({ outline, openings = [] }: Parsed): void {
  withinLimit(SQUARE_CORNERS, AS_SLANTED * openings.length, 'openings');
  withinLimit(
    OPENING_CORNERS,
    openings.reduce((sum, opening) => sum + givenCorners(opening), 0),
    'openings',
  );
  if (outline.shape !== 'curved') return;
  const sides = outline.points.reduce((sum, p) => sum + (p.rise || p.radius ? 2 : 1), 0);
  if (sides > outline.points.length)
    withinLimit(SLANTED_CORNERS, sides + AS_SLANTED * openings.length, 'outline');
}

function checkSize(site: Site, limits: Limits): void {
  const panels = ringArea(site.ring).toNumber() / limits.spacing ** 2;
  withinLimit(panelLimit(site), Math.floor(panels), 'spacing');
  for (const axis of ['x', 'y'] as const) {
    const ends = site.ring.map((c) => c[axis].toNumber());
    const lines = (Math.max(...ends) - Math.min(...ends)) / limits.spacing;
    withinLimit(SIDE_BY_SIDE, Math.floor(lines), 'spacing');
  }
  const least = (opening: Site['openings'][number]): number => {
    const { ring, bothWays } = opening;
    const ends = ring.map(({ x }) => x.toNumber());
    const parts = !bothWays && Math.max(...ends) - Math.min(...ends) > limits.leastSide;
    if (!site.orthogonal) return parts ? AS_CORNERS : AS_SLANTED;
    if (!parts || ring.length <= 2 * AS_ROUND) return AS_CORNERS;
    return isSmall(opening, limits) ? AS_SMALL_ROUND : AS_ROUND;
  };
  const inOpenings = site.openings.reduce((sum, o) => sum + Math.max(least(o), weighedCorners(o)), 0);
  withinLimit(site.orthogonal ? SQUARE_CORNERS : SLANTED_CORNERS, site.ring.length + inOpenings, 'outline');
}

/** The tip of a slice of more than half a circle is an inside corner. */
function withApex(laid: Laid, { outline }: Parsed): Laid {
  const inside =
    outline.shape === 'sector' && !outline.innerRadius && canonicalValue(outline.angle).greaterThan(APEX);
  if (!inside || canonicalValue(outline.angle).equals(WHOLE_TURN)) return laid;
  const met = laid.joints.some((j) => j.shape === 'straight' && j.from.x.isZero() && j.from.y.isZero());
  return met ? laid : { ...laid, missed: [{ x: ZERO, y: ZERO }], exact: false };
}

/** Half a turn and a kink, in degrees. */
const APEX = 180 + KINK;

/** A plan and the slab as it lies for it. */
interface Choice {
  readonly laid: Laid;
  readonly site: Site;
}

/** Keeping every rule comes before length; else each broken rule weighs as a length of sawing. */
function bestOf(choices: readonly Choice[], limits: Limits): Choice {
  const { weight } = softened(limits);
  const weighed = choices.map((choice) => {
    const broken = brokenIn(choice.laid);
    return { choice, broken, cost: lengthOf(choice.laid).toNumber() + weight * broken };
  });
  const better = (a: (typeof weighed)[number], b: (typeof weighed)[number]): boolean =>
    (a.broken === 0) === (b.broken === 0) ? a.cost < b.cost - AS_LONG : a.broken === 0;
  return weighed.reduce((best, next) => (better(next, best) ? next : best)).choice;
}

/** Plans within this are as long as each other, in meters. */
const AS_LONG = 1e-6;

function placeSites(input: Parsed, rules: Rules): Site[] {
  const count = input.openings?.length ?? 0;
  const columns = (input.columns ?? []).map((n, i) => {
    const number = n.toNumber('each');
    if (number > count) refuse(`columns[${i}]`, sharedFaults.notACount('a column', 1, Math.max(1, count)));
    return number - 1;
  });
  const placed = {
    outline: input.outline,
    openings: input.openings,
    columns: new Set(columns),
    direction: input.direction,
    fixed: input.fixed ?? [],
    continued: input.continued ?? [],
    leastSide: canonicalValue(rules.leastSide),
  };
  return sitesOf(placed, input.module !== undefined);
}

/** The plan, and the area that its panels must come to. */
interface Planned {
  readonly laid: Laid;
  readonly area: Decimal;
  readonly site: Site;
}

function plan(input: Parsed, rules: Rules): Planned {
  const limits = limitsOf(rules);
  checkCount(input);
  const sites = placeSites(input, rules);
  const [first] = sites as [Site];
  checkSize(first, limits);
  const step = canonicalValue(STEP.like(input.thickness));
  const round = roundLaid(input, limits, step);
  const { laid, site } = round
    ? { laid: withApex(round, input), site: first }
    : laidOn(input, sites, limits, step);
  const area = laid.panels.reduce((sum, p) => sum.plus(p.area), new Decimal(0));
  return { laid, area, site };
}

function laidOn(input: Parsed, sites: readonly Site[], limits: Limits, step: Decimal): Choice {
  const module = input.module && canonicalValue(input.module);
  const setting = { step, module, share: 1 / sites.length };
  const [first] = sites as [Site];
  const choices =
    sites.length > 1
      ? likelier(foundFrom(sites, limits, setting)).map((found) => choiceOf(found.site, layStraight(found)))
      : choicesFor(input, first, limits, setting);
  const { laid, site } = bestOf(choices, limits);
  const missed = laid.missed?.map((c) => site.pose.out(c));
  const passed = laid.passedBy?.map((o) => ({ ...o, at: site.pose.out(o.at) }));
  const left = { ...(missed ? { missed } : {}), ...(passed ? { passedBy: passed } : {}) };
  return { laid: { ...laidBack(laid, site), ...left }, site };
}

/** Plans from each corner, or from the first ones where those take all the work allowed. */
function foundFrom(sites: readonly Site[], limits: Limits, setting: Setting): FoundGrid[] {
  const plans: FoundGrid[] = [];
  let work = 0;
  for (const site of sites) {
    if (work > WORK_LIMIT) break;
    const plan = findGrid(site, limits, setting);
    work += plan.found.work;
    plans.push(plan);
  }
  return plans;
}

function choiceOf(site: Site, laid: Laid): Choice {
  const [missed, passed] = [missedCorners(site, laid), passedBy(site, laid)];
  const whole = missed.length + passed.length === 0;
  return { site, laid: whole ? laid : { ...laid, missed, passedBy: passed, exact: false } };
}

/** Above this many panels in all only one of several plans is laid out in exact decimals. */
const FEW_PANELS = 1_000;

/** Of the plans from each corner all, or where that is too much the first of those that cost least. */
function likelier(plans: readonly FoundGrid[]): readonly FoundGrid[] {
  const panels = plans.reduce((sum, { cells }) => sum + cells, 0);
  if (panels <= FEW_PANELS) return plans;
  const better = (a: FoundGrid, b: FoundGrid): boolean =>
    a.softened === b.softened ? a.found.cost < b.found.cost - AS_LONG : b.softened;
  return [plans.reduce((best, next) => (better(next, best) ? next : best))];
}

/** Strips this many times as long as wide are cut across and not otherwise. */
const SLIM = 2;

/** Joints reckoned in binary numbers may turn out longer by this part, and more, in exact ones. */
const NEARLY = 0.02;

/** Straight joints that weigh this many times as much are not laid out. */
const SURELY = 1.1;

/** False for a plan that cannot be better than another, whatever it comes to in exact decimals. */
function mayBeat({ broken, sawn }: Draft, { laid }: Choice, limits: Limits): boolean {
  const { weight } = softened(limits);
  const others = brokenIn(laid);
  if (broken > 0 && others === 0) return false;
  const cost = sawn * (1 - NEARLY) + weight * broken;
  return broken === 0 || cost <= lengthOf(laid).toNumber() + weight * others;
}

/** True for a large plan that straight joints, which break rules too, fall far behind. */
function isSurer(
  { broken, sawn }: Draft,
  { found, cells, softened: soft }: FoundGrid,
  limits: Limits,
): boolean {
  return cells > FEW_PANELS && soft && SURELY * (sawn + softened(limits).weight * broken) < found.cost;
}

/** Plans of every kind that the slab may have. */
function choicesFor(input: Parsed, site: Site, limits: Limits, setting: Setting): Choice[] {
  const free = plain(input) && !site.orthogonal;
  const bare = free && site.openings.length === 0;
  const strip = bare ? draftStrip(site, limits) : undefined;
  if (strip && strip.slim >= SLIM && strip.broken === 0) {
    const laid = strip.lay();
    if (brokenIn(laid) === 0) return [choiceOf(site, laid)];
  }
  const deck = plain(input) && !site.openings.some((o) => o.cornered) ? draftDeck(site, limits) : undefined;
  if (deck?.broken === 0) {
    const choice = choiceOf(site, deck.lay());
    if (brokenIn(choice.laid) === 0) return [choice];
  }
  const fan = bare ? layFan(site.ring, limits) : undefined;
  const found = findGrid(site, limits, setting);
  const [surer] = [strip, deck].flatMap((draft) => (draft && isSurer(draft, found, limits) ? [draft] : []));
  if (surer) return [choiceOf(site, surer.lay())];
  const straight = choiceOf(found.site, layStraight(found));
  const laidOf = (draft: Draft | undefined): Choice[] =>
    draft && mayBeat(draft, straight, limits) ? [choiceOf(site, draft.lay())] : [];
  return [straight, ...laidOf(strip), ...(fan ? [choiceOf(site, fan)] : []), ...laidOf(deck)];
}

/** Writes figures in the family of units of the input. */
class Writer {
  constructor(readonly system: System) {}

  length = (d: Decimal): Length => quantityOf('length', d, this.system);

  place = ({ x, y }: { x: Decimal; y: Decimal }): Place => ({ x: this.length(x), y: this.length(y) });

  joint = (joint: LaidJoint, number: number, depth: Length): PlanJoint => ({
    number: wholeNumber(number),
    type: joint.type,
    shape: joint.shape,
    from: this.place(joint.from),
    to: this.place(joint.to),
    ...(joint.center ? { center: this.place(joint.center) } : {}),
    length: this.length(joint.length),
    depth,
  });

  panel = ({ at, along, across, widest, area }: Laid['panels'][number], number: number): Panel => {
    const [a, b] = [this.length(along), this.length(widest ?? across)];
    return {
      number: wholeNumber(number),
      at: this.place(at),
      along: a,
      across: this.length(across),
      area: quantityOf('area', area, this.system),
      ratio: a.lessThan(b) ? b.over(a) : a.over(b),
    };
  };
}

function givenWay(laid: Laid, panels: readonly Panel[], rules: Rules, write: Writer): GivenWay[] {
  const list: GivenWay[] = laid.panels.flatMap(({ broken }, i) =>
    broken.map((rule): GivenWay => {
      const { number, along, across, ratio: actual } = panels[i] as Panel;
      const shorter = along.lessThan(across) ? along : across;
      if (rule === 'sharp corner') return { rule, panel: number, limit: SHARPEST() };
      return rule === 'sliver'
        ? { rule, panel: number, actual: shorter, limit: rules.leastSide }
        : { rule, panel: number, actual, limit: rules.longestRatio };
    }),
  );
  for (const at of laid.missed ?? []) list.push({ rule: 'corner not met', at: write.place(at) });
  for (const { index, at, corners } of laid.passedBy ?? []) {
    list.push({
      rule: 'opening passed by',
      opening: wholeNumber(index + 1),
      at: write.place(at),
      ...(corners > 0 ? { actual: wholeNumber(corners) } : {}),
    });
  }
  if (laid.tees > 0) list.push({ rule: 'joint ends at a joint', actual: wholeNumber(laid.tees) });
  if (laid.offModule > 0) list.push({ rule: 'module', actual: wholeNumber(laid.offModule) });
  return list;
}

function searchNote(laid: Laid, write: Writer): SearchNote {
  const whole = lengthOf(laid);
  const bound = Decimal.min(whole, new Decimal(laid.leastLength.toFixed(4)));
  const least = laid.exact ? whole : bound;
  return {
    kind: laid.exact ? 'exact' : 'bounded',
    leastLength: write.length(least),
    gap: write.length(whole.minus(least)),
  };
}

function depthOf(input: Parsed, method: JointMethod, pad: Pad): Length {
  if (!input.depth) {
    const depth = workedDepth(method, input.thickness, pad);
    assumeLeastDepth(depth, pad);
    return depth;
  }
  if (!input.depth.lessThan(input.thickness)) refuse('depth', sharedFaults.doesNotFit('depth', 'thickness'));
  return input.depth;
}

function methodOf({ method }: Parsed, pad: Pad): JointMethod {
  if (method) return method;
  pad.assume({
    name: 'method',
    value: 'conventional-saw',
    because: 'the usual way for slabs of this kind',
    override: 'Give method',
    source: COMMON_PRACTICE,
  });
  return 'conventional-saw';
}

function totalOf(laid: Laid, type: FixedType): Decimal {
  return laid.joints.filter((j) => j.type === type).reduce((sum, j) => sum.plus(j.length), new Decimal(0));
}

/** Above this many joints their sum is not written out. */
const WRITTEN_OUT = 12;

function workedTotal(laid: Laid, write: Writer, pad: Pad): Length {
  const total = write.length(totalOf(laid, 'contraction'));
  const cuts = laid.joints.filter((j) => j.type === 'contraction');
  if (cuts.length === 0 || cuts.length > WRITTEN_OUT) return total;
  const values = Object.fromEntries(cuts.map((j, i) => [`c${i + 1}`, write.length(j.length)]));
  return pad.step('contraction joints in all', `C = ${Object.keys(values).join(' + ')}`, values, total);
}

function heed(input: Parsed, ways: readonly GivenWay[], site: Site, sawn: boolean, pad: Pad): void {
  if (ways.length > 0) pad.caution(cautions.rulesGiveWay(wholeNumber(0), wholeNumber(ways.length)));
  const passed = ways.filter(({ rule }) => rule === 'opening passed by').length;
  if (passed > 0) pad.caution(cautions.openingsPassedBy(wholeNumber(0), wholeNumber(passed)));
  const square = (input.openings ?? []).some((o, i) => {
    const placed = site.openings[i];
    return o.shape === 'rectangle' && placed?.cornered === false && !placed.spared;
  });
  if (square) pad.caution(cautions.squareBoxOut);
  if (sawn) pad.caution(sharedCautions.silica);
}

function reckon(input: Parsed, pad: Pad): JointLayoutFigures {
  const rules = rulesOf(input, pad);
  const method = methodOf(input, pad);
  const { laid, area, site } = plan(input, rules);
  const edges = isolationLengths(input.outline, input.isolation ?? []);
  const depth = depthOf(input, method, pad);
  const write = new Writer(systemOfQuantity(input.thickness));
  const joints = laid.joints.map((joint, i) =>
    write.joint(joint, i + 1, joint.type === 'contraction' ? depth : input.thickness),
  );
  const panels = laid.panels.map((p, i) => write.panel(p, i + 1));
  const contraction = workedTotal(laid, write, pad);
  const openings = site.openings.reduce((sum, o) => sum.plus(o.perimeter), new Decimal(0));
  const isolation = write.length(totalOf(laid, 'isolation').plus(edges).plus(openings));
  const givesWay = givenWay(laid, panels, rules, write);
  const sawn = method.endsWith('saw') && contraction.sign() > 0;
  const taken = takeOff(input, { laid, contraction, isolation, depth, sawn, order: input.sawOrder }, pad);
  heedWidePanels(panels, input.thickness, pad);
  heed(input, givesWay, site, sawn, pad);
  return {
    pattern: laid.pattern,
    panelCount: wholeNumber(panels.length),
    area: quantityOf('area', area, write.system),
    contraction,
    construction: write.length(totalOf(laid, 'construction')),
    isolation,
    depth,
    joints,
    panels,
    givesWay,
    search: searchNote(laid, write),
    ...taken,
  };
}

const point = (): Field<Place> =>
  fields({ x: quantity('length', 'x', 'any'), y: quantity('length', 'y', 'any') });

const FIXED_TYPES: readonly FixedType[] = ['contraction', 'construction', 'isolation'];
const NEIGHBORS: readonly Neighbor[] = ['building', 'column', 'curb', 'existing-slab', 'steps', 'wall'];
const SEALED = ['all', 'isolation', 'sawn'] as const;

/**
 * A joint plan for a slab: where each joint runs, the panels, and what it takes to cut and fill them.
 *
 * Cracks may still come: published texts expect up to 3% of panels to crack though every rule is kept.
 * The plans, the local code and the engineer govern.
 *
 * @param input - outline with openings, thickness, spacing; fixed joints, isolation, module, direction,
 * limits and ways of cutting where they are known
 * @returns joints with their ends, lengths and depths; panels with size, area and ratio; totals by type;
 * what gives way where no plan keeps every rule; how sure the search is; sawing, board, rod, sealant, dowels
 * @throws {InputError} `below-least` for a spacing under 1 ft; `off-edge` for an isolation line that is not
 * on a side; `off-slab`, `ends-inside`, `joint-not-square` and `joints-conflict` for fixed joints;
 * `does-not-fit`, `too-many`; and as outlines and quantities do
 * @source rules for irregular slabs: Concrete Construction; least width: McGraw-Hill's Highway Engineering
 * Handbook; depth as `jointSpacing`
 * @example
 * ```ts
 * import { jointLayout } from 'flatwork-reckoner';
 *
 * const { figures } = jointLayout({
 *   outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
 *   thickness: '5 in',
 *   spacing: '12 ft 6 in',
 * });
 * figures.panelCount.format(); // '6 each'
 * figures.contraction.format(); // '64 ft'
 * figures.search.kind; // 'exact'
 * ```
 */
export const jointLayout: Calculation<JointLayoutInput, JointLayoutFigures> = /*#__PURE__*/ define({
  id: 'joint-layout',
  title: 'Joint layout',
  version: 1,
  limits: [
    PANELS,
    SQUARE_PANELS,
    SIDE_BY_SIDE,
    SQUARE_CORNERS,
    SLANTED_CORNERS,
    OPENING_CORNERS,
    PASSES,
    DOWELS,
  ],
  sources: [IRREGULAR_SLABS, TAPER_WIDTH, JOINT_DEPTH, EARLY_ENTRY_DEPTH, SILICA_RULE],
  input: () =>
    fields({
      ...regionFields(),
      thickness: quantity('length', 'thickness', 'positive', SLAB_THICKNESS),
      spacing: quantity('length', 'spacing', 'positive', JOINT_SPACING),
      longestRatio: maybe(quantity('ratio', 'longestRatio', 'positive', LONGEST_RATIO)),
      minimumSide: maybe(quantity('length', 'minimumSide', 'positive', LEAST_SIDE)),
      columns: maybe(list(whole('a column', 1, 1000), 0, 1000)),
      direction: maybe(quantity('angle', 'direction', 'any')),
      module: maybe(quantity('length', 'module', 'positive', MODULE)),
      fixed: maybe(
        list(fields({ type: choice('type', FIXED_TYPES), from: point(), to: point() }), 0, FIXED_LIMIT),
      ),
      continued: maybe(list(point(), 0, FIXED_LIMIT)),
      isolation: maybe(
        list(fields({ against: choice('against', NEIGHBORS), from: point(), to: point() }), 0, FIXED_LIMIT),
      ),
      tees: maybe(choice('tees', ['allowed', 'avoided'] as const)),
      method: maybe(choice('method', JOINT_METHODS)),
      depth: maybe(quantity('length', 'depth', 'positive', JOINT_DEPTH_RANGE)),
      depthPerPass: maybe(quantity('length', 'depthPerPass', 'positive', JOINT_DEPTH_RANGE)),
      sawRate: maybe(
        fields({
          length: quantity('length', 'length', 'positive', SAW_RATE_LENGTH),
          in: quantity('time', 'in', 'positive', SAW_RATE_TIME),
        }),
      ),
      sawOrder: maybe(choice('sawOrder', ['consecutive', 'reverse'] as const)),
      boardThickness: maybe(quantity('length', 'boardThickness', 'positive', JOINT_WIDTH)),
      sealant: maybe(
        fields({
          width: quantity('length', 'width', 'positive', JOINT_WIDTH),
          depth: quantity('length', 'depth', 'positive', JOINT_WIDTH),
          joints: maybe(choice('joints', SEALED)),
        }),
      ),
      dowelSpacing: maybe(quantity('length', 'dowelSpacing', 'positive', BAR_SPACING)),
    }),
  reckon,
  takes: ({ isolationBoard, backerRod, depth }, { thickness }) => [
    { item: 'saw-cut', from: 'contraction', of: { depth } },
    {
      item: 'isolation-board',
      from: 'isolationBoard.length',
      of: { thickness: isolationBoard.thickness, height: thickness },
    },
    { item: 'backer-rod', from: 'backerRod.length', of: { diameter: backerRod?.diameter } },
    { item: 'sealant', from: 'sealant.volume' },
    { item: 'dowel', from: 'dowels' },
  ],
});
