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

import { type Rings, regionFields, ringsOf } from '../outline/region';
import { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { bareRatio } from '../reckoning/bare-ratio';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as sharedCautions from '../reckoning/cautions';
import { choice, fields, list, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import { SLAB_OR_TOPPING } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, EARLY_ENTRY_DEPTH, IRREGULAR_SLABS, SILICA_RULE } from '../reckoning/source';
import type { TakeNote } from '../reckoning/takes';
import * as cautions from './cautions';
import { type FewerJoints, fewerFigures, fewerJoints, withoutStrips } from './fewer-joints';
import { heedHair } from './hair-over';
import { assumeLeastDepth, heedDepth, JOINT_METHODS, type JointMethod, workedDepth } from './joint-depth';
import { LONGEST } from './layout/eased';
import { isolationLengths } from './layout/isolation';
import {
  DOWELS,
  OPENING_CORNERS,
  PANELS,
  PASSES,
  SIDE_BY_SIDE,
  SLANTED_CORNERS,
  SQUARE_CORNERS,
  SQUARE_PANELS,
} from './layout/most';
import type { Laid } from './layout/plan';
import { type Site, sitesOf } from './layout/site';
import { takeOff } from './layout/take-off';
import { heedWidePanels } from './layout/wide-panels';
import { laidOn } from './layout-choice';
import type { GivenWay, JointLayoutFigures } from './layout-figures';
import {
  FIXED_LIMIT,
  FIXED_TYPES,
  type JointLayoutInput,
  type LayoutParsed,
  NEIGHBORS,
  point,
  SEALED,
} from './layout-input';
import { checkCount, checkSize } from './layout-size';
import { givenWay, searchNote, totalOf, Writer, workedTotal } from './layout-told';
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
import { limitsOf, type Rules, rulesOf, STEP } from './panel-rules';
import { roundLaid, withApex } from './round-slab';
import { JOINT_DEPTH, TAPER_WIDTH } from './sources';

type Length = Quantity<'length'>;

/** How the rings of a slab are come by. */
type RingsOf = (input: LayoutParsed) => Rings;

function placeSites(input: LayoutParsed, rules: Rules, rings: RingsOf): Site[] {
  const count = input.openings?.length ?? 0;
  const columns = (input.columns ?? []).map((n, i) => {
    const number = n.toNumber('each');
    if (number > count) refuse(`columns[${i}]`, sharedFaults.notACount('a column', 1, Math.max(1, count)));
    return number - 1;
  });
  const placed = {
    outline: input.outline,
    openings: input.openings,
    rings: rings(input),
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
  /** The plan of the same slab by another ratio. */
  readonly byRatio: (longestRatio: Rules['longestRatio']) => Laid;
}

export function plan(input: LayoutParsed, rules: Rules, rings: RingsOf = ringsOf): Planned {
  const limits = limitsOf(rules);
  checkCount(input);
  const sites = placeSites(input, rules, rings);
  const [first] = sites as [Site];
  checkSize(first, limits);
  const step = canonicalValue(STEP.like(input.thickness));
  const round = roundLaid(input, limits, step);
  const { laid, site } = round
    ? { laid: withApex(round, input), site: first }
    : laidOn(input, sites, limits, step);
  const area = laid.panels.reduce((sum, p) => sum.plus(p.area), new Decimal(0));
  const byRatio = (longestRatio: Rules['longestRatio']): Laid =>
    laidOn(input, sites, limitsOf({ ...rules, longestRatio, given: true }), step).laid;
  return { laid, area, site, byRatio };
}

function depthOf(input: LayoutParsed, method: JointMethod, pad: Pad): Length {
  if (!input.depth) {
    const depth = workedDepth(method, input.thickness, pad);
    assumeLeastDepth(depth, pad);
    return depth;
  }
  if (!input.depth.lessThan(input.thickness)) refuse('depth', sharedFaults.doesNotFit('depth', 'thickness'));
  heedDepth(input.depth, method, input.thickness, pad);
  return input.depth;
}

function methodOf({ method }: LayoutParsed, pad: Pad): JointMethod {
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

/** The longest of the panels, where nothing but the ratio gives way and no farther than handbooks have it. */
function longestIn(ways: readonly GivenWay[]): Quantity<'ratio'> | undefined {
  const shapes = ways.flatMap(({ rule, actual }) =>
    rule === 'panel shape' ? [actual as Quantity<'ratio'>] : [],
  );
  const [first, ...rest] = shapes.length === ways.length ? shapes : [];
  const longest = first && rest.reduce((a, b) => (b.greaterThan(a) ? b : a), first);
  return longest && longest.toNumber(':1') <= LONGEST ? longest : undefined;
}

/** Tells that rules give way: since none keeps them all, or since that would cut up the slab. */
function heedBroken(
  { kept, panels }: Laid,
  ways: readonly GivenWay[],
  { longestRatio }: Rules,
  write: Writer,
  pad: Pad,
): void {
  const [none, broken] = [wholeNumber(0), wholeNumber(ways.length)];
  if (ways.length === 0) return;
  if (!kept) {
    pad.caution(cautions.rulesGiveWay(none, broken));
    return;
  }
  const length = write.length(new Decimal(kept.length.toFixed(4)));
  const spared = { panels: wholeNumber(panels.length), others: wholeNumber(kept.cells), length };
  const longest = longestIn(ways);
  pad.caution(
    longest ? cautions.ratioEased(longestRatio, longest, spared) : cautions.rulesEased(none, broken, spared),
  );
}

function heed(
  input: LayoutParsed,
  ways: readonly GivenWay[],
  { laid, site }: Planned,
  rules: Rules,
  sawn: boolean,
  write: Writer,
  pad: Pad,
): void {
  const others = ways.filter(({ rule }) => rule !== 'opening passed by');
  const passed = ways.length - others.length;
  // What is passed by has a caution of its own, and may be so though joints could meet it.
  heedBroken(laid, others, rules, write, pad);
  if (passed > 0) pad.caution(cautions.openingsPassedBy(wholeNumber(0), wholeNumber(passed)));
  const square = (input.openings ?? []).some((o, i) => {
    const placed = site.openings[i];
    return o.shape === 'rectangle' && placed?.cornered === false && !placed.spared;
  });
  if (square) pad.caution(cautions.squareBoxOut);
  if (sawn) pad.caution(sharedCautions.silica);
}

/** Thinner than this it is a topping. */
const TOPPING = /*#__PURE__*/ paired('length', '3 in', '75 mm');

function heedTopping(thickness: Length, pad: Pad): void {
  const limit = TOPPING.undercutBy(thickness);
  if (limit) pad.caution(cautions.toppingJoints(limit, thickness));
}

/** Tighter arcs no saw on wheels follows: common practice. */
const TIGHT = /*#__PURE__*/ paired('length', '10 ft', '3 m');

function heedCurves({ joints }: Laid, write: Writer, pad: Pad): void {
  const radii = joints.flatMap(({ type, center, from }) =>
    center && type === 'contraction' ? [Decimal.hypot(from.x.minus(center.x), from.y.minus(center.y))] : [],
  );
  if (radii.length === 0) return;
  const tightest = write.length(Decimal.min(...radii));
  const limit = TIGHT.undercutBy(tightest);
  if (limit) pad.caution(cautions.curvedCut(limit, tightest));
}

/** Where nobody speaks of a wall or another slab beside it, none is taken to be there. */
function assumeNoIsolation({ isolation }: LayoutParsed, pad: Pad): void {
  if (isolation) return;
  pad.assume({
    name: 'isolation',
    value: 'none',
    because: 'no side is said to lie against a wall, steps or another slab',
    override: 'Give isolation: the sides that do, for a board that lets the slab move',
    source: COMMON_PRACTICE,
  });
}

/** Tells of fewer panels: by a longer ratio, or else without the strips that cut up the slab. */
function heedMany(
  input: LayoutParsed,
  planned: ReturnType<typeof plan>,
  rules: ReturnType<typeof rulesOf>,
  fewer: FewerJoints | undefined,
  contraction: Quantity<'length'>,
  pad: Pad,
): void {
  const many = [wholeNumber(planned.laid.panels.length), contraction] as const;
  if (fewer) {
    pad.caution(cautions.manyPanels(rules.longestRatio, many, fewer));
    return;
  }
  const whole = withoutStrips(input, planned, limitsOf(rules));
  if (whole) pad.caution(cautions.cutUpByStrips(rules.longestRatio, many, whole));
}

function reckon(input: LayoutParsed, pad: Pad, rings?: RingsOf): JointLayoutFigures {
  const rules = rulesOf(input, pad);
  const method = methodOf(input, pad);
  const planned = plan(input, rules, rings);
  const { laid, area, site } = planned;
  const edges = isolationLengths(input.outline, input.isolation ?? []);
  assumeNoIsolation(input, pad);
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
  heedHair(input, { site, joints: laid.joints, write }, rules, pad);
  heedTopping(input.thickness, pad);
  if (method.endsWith('saw')) heedCurves(laid, write, pad);
  const found = fewerJoints(input, planned, limitsOf(rules));
  const fewer = found && fewerFigures(found, write);
  heedMany(input, planned, rules, fewer, contraction, pad);
  heed(input, givesWay, planned, rules, sawn, write, pad);
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
    ...(fewer && { fewer }),
    ...taken,
  };
}

/** What control joints take by how they are made: cuts of a saw, strips that stay in, or a groover alone. */
function jointTakes(method: JointMethod | undefined, depth: Quantity<'length'>): TakeNote[] {
  if (method === 'hand-groover') return [];
  const item = method === 'preformed-strip' ? 'joint-strip' : 'saw-cut';
  return [{ item, from: 'contraction', of: { depth } }];
}

/** The calculation, with a way to come by the rings of the slab. */
const layoutWith = (rings?: RingsOf): Calculation<JointLayoutInput, JointLayoutFigures> =>
  define({
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
        thickness: quantity('length', 'thickness', 'positive', SLAB_OR_TOPPING),
        spacing: quantity('length', 'spacing', 'positive', JOINT_SPACING),
        longestRatio: maybe(bareRatio('longestRatio', 'positive', LONGEST_RATIO)),
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
    reckon: (input, pad) => reckon(input, pad, rings),
    takes: ({ isolationBoard, backerRod, depth }, { thickness, method }) => [
      ...jointTakes(method, depth),
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
export const jointLayout: Calculation<JointLayoutInput, JointLayoutFigures> = /*#__PURE__*/ layoutWith();

/** What a plan is drawn of: the slab as it was read, its rings, and the plan. */
interface DrawnLayout {
  readonly read: LayoutParsed;
  readonly rings: Rings;
  readonly figures: JointLayoutFigures;
  readonly system: System;
}

/**
 * A joint plan and the slab that it is for, which is read and placed once for both.
 *
 * @throws {InputError} as `jointLayout` does
 */
export function layoutToDraw(input: JointLayoutInput): DrawnLayout {
  const placed: Pick<DrawnLayout, 'read' | 'rings'>[] = [];
  const { figures, system } = layoutWith((read) => {
    const rings = ringsOf(read);
    placed.push({ read, rings });
    return rings;
  })(input);
  return { ...(placed[0] as (typeof placed)[number]), figures, system };
}
