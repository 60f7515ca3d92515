/** A plan of straight joints in two directions: from the site to panels and joints in exact decimals. */
import type { Corner } from '../../geometry/polygon';
import { Decimal } from '../../quantity/decimal';
import { withinLimit } from '../../reckoning/limits';
import { type Box, boxOf, type CutPanel, type Hole, panelsOf } from './as-cut';
import { eased, fewestOf } from './eased';
import { commonPart, runsBeside, runsLess, runsWithin, same, split } from './exact';
import { GeneralSpace } from './general';
import { panelLimit } from './most';
import { OrthogonalSpace, piecesIn, type Spot, spot } from './orthogonal';
import type { Laid } from './plan';
import { BROKEN, HAIR, type Limits, softened as softer } from './rules';
import { Cells, type Found, type Searched, search } from './search';
import { type FixedType, ringArea, type Site } from './site';
import { type Axis, acrossOf, type Gap, type Space } from './space';
import { areMany, cutsUp, FAR_MORE, marksOf, sparing, wouldCrowd } from './spared';
import { type LinePlace, type SettingOut, stepsAlong, stepsWithin } from './steps';

/** A straight joint, in the turned plane. */
interface StraightJoint {
  readonly type: FixedType;
  readonly from: Corner;
  readonly to: Corner;
}

/** A finished plan. */
export interface GridPlan {
  readonly joints: readonly StraightJoint[];
  readonly panels: readonly CutPanel[];
  readonly found: Found;
  /** No plan keeps every rule: the search weighed broken ones. */
  readonly softened: boolean;
  /** Lines that do not fall on the module. */
  readonly offModule: readonly { readonly axis: Axis; readonly at: Decimal }[];
}

/** How the lines are set out. */
export interface Setting {
  readonly step: Decimal;
  readonly module: Decimal | undefined;
  /** The part of the work allowed that falls to this plan, of several for one slab. */
  readonly share: number;
}

/** The exact coordinates that anchors stand for. */
function exactStops(site: Site, axis: Axis): Decimal[] {
  const all = [
    ...site.ring.map((c) => c[axis]),
    ...site.openings.flatMap((o) => [...(o.cornered ? o.ring : o.corners), o.center].map((c) => c[axis])),
    ...site.fixed.filter((f) => f.axis === axis).map((f) => f.at),
    ...site.continued.filter((f) => f.axis === axis).map((f) => f.at),
  ];
  return all.sort((a, b) => a.comparedTo(b));
}

/** Fixed lines, those that go on from a neighbor, and the center lines of columns. */
function mustLines(site: Site, axis: Axis): number[] {
  const lines = [...site.fixed, ...site.continued].filter((f) => f.axis === axis).map((f) => f.at);
  const columns = site.openings.filter((o) => o.bothWays).map((o) => o.center[axis]);
  return [...lines, ...columns].map((d) => d.toNumber());
}

/** In how many lists sides are kept. */
const LISTS = 64;

/** The sides of a ring by where they lie along an axis: lines are many, and each meets few of them. */
class SidesAt {
  private readonly lists: readonly (readonly number[])[];

  constructor(
    readonly ring: readonly Spot[],
    readonly axis: Axis,
    readonly lo: number,
    readonly hi: number,
  ) {
    const lists = Array.from({ length: LISTS }, (): number[] => []);
    ring.forEach((a, i) => {
      const ends = [this.listOf(a[axis]), this.listOf((ring[(i + 1) % ring.length] as Spot)[axis])];
      for (let k = Math.min(...ends); k <= Math.max(...ends); k += 1) (lists[k] as number[]).push(i);
    });
    this.lists = lists;
  }

  private listOf(at: number): number {
    const part = Math.floor((LISTS * (at - this.lo)) / (this.hi - this.lo));
    return Math.min(LISTS - 1, Math.max(0, part));
  }

  /** How far a line runs through the ring. */
  run(at: number): number {
    const { ring, axis } = this;
    const across = acrossOf(axis);
    const crossings: number[] = [];
    for (const i of this.lists[this.listOf(at)] as readonly number[]) {
      const [a, b] = [ring[i] as Spot, ring[(i + 1) % ring.length] as Spot];
      if (a[axis] > at !== b[axis] > at)
        crossings.push(a[across] + ((b[across] - a[across]) * (at - a[axis])) / (b[axis] - a[axis]));
    }
    const [first, second] = crossings as [number, number];
    // Most openings are round.
    if (crossings.length === 2) return Math.abs(second - first);
    crossings.sort((p, q) => p - q);
    return crossings.reduce((sum, v, k) => sum + (k % 2 === 0 ? -v : v), 0);
  }
}

/** How far a line runs along the sides of a ring. */
function runBeside(ring: readonly Spot[], axis: Axis, at: number): number {
  const across = axis === 'x' ? 'y' : 'x';
  return ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] as Spot;
    const along = Math.abs(a[axis] - at) <= HAIR && Math.abs(b[axis] - at) <= HAIR;
    return along ? sum + Math.abs(b[across] - a[across]) : sum;
  }, 0);
}

/** Length of slab missing along a line where openings lie in its way or beside it. */
function leftOutBy(site: Site): (axis: Axis, at: number) => number {
  const openings = site.openings
    .filter((o) => !o.cornered)
    .map((o) => {
      const { lo, hi, ring } = boxOf(o.ring);
      const sides = (axis: Axis): SidesAt => new SidesAt(ring, axis, lo[axis], hi[axis]);
      return { lo, hi, ring, sides: { x: sides('x'), y: sides('y') } };
    });
  return (axis, at) => {
    let sum = 0;
    for (const { lo, hi, ring, sides } of openings) {
      if (at < lo[axis] - HAIR || at > hi[axis] + HAIR) continue;
      const within = at > lo[axis] + HAIR && at < hi[axis] - HAIR;
      sum += within ? sides[axis].run(at) : runBeside(ring, axis, at);
    }
    return sum;
  };
}

/** Twice the sides of the box around each opening: no more than two lines each way pass through it. */
function passedOver(site: Site): number {
  return site.openings
    .filter((o) => !o.cornered)
    .map((o) => boxOf(o.ring))
    .reduce((sum, { lo, hi }) => sum + 2 * (hi.x - lo.x) + 2 * (hi.y - lo.y), 0);
}

/** The slab as the search sees it. */
function spaceOf(site: Site, limits: Limits): Space & { raster?: OrthogonalSpace['raster'] } {
  const led = site.openings.filter((o) => !o.cornered && !o.bothWays);
  // Each corner of an opening that is not in the raster; the middle of one that has none.
  const marks = led.flatMap(marksOf);
  const common = {
    marks,
    fixed: { x: mustLines(site, 'x'), y: mustLines(site, 'y') },
    leftOut: leftOutBy(site),
    passedOver: passedOver(site),
  };
  const cornered = site.openings.filter((o) => o.cornered).map((o) => o.ring);
  return site.orthogonal
    ? new OrthogonalSpace({ ...common, rings: [site.ring, ...cornered].map((r) => r.map(spot)) }, limits)
    : new GeneralSpace({ ...common, ring: site.ring.map(spot) }, limits);
}

/** A line in exact decimals, with its binary place for looking things up. */
interface ExactLine {
  readonly at: number;
  readonly exact: Decimal;
}

class Exact {
  private readonly stops: Record<Axis, readonly Decimal[]>;

  constructor(
    readonly site: Site,
    readonly space: Space,
    readonly setting: Setting,
  ) {
    this.stops = { x: exactStops(site, 'x'), y: exactStops(site, 'y') };
  }

  /** The exact coordinate that lies within a hair of a binary one. */
  stop(axis: Axis, at: number): Decimal {
    const stops = this.stops[axis];
    let [lo, hi] = [0, stops.length - 1];
    while (lo < hi) {
      const mid = (lo + hi) >> 1;
      if ((stops[mid] as Decimal).toNumber() < at - HAIR) lo = mid + 1;
      else hi = mid;
    }
    return stops[lo] as Decimal;
  }

  line(axis: Axis, place: LinePlace): ExactLine {
    const anchor = this.stop(axis, (this.space.anchors(axis)[place.anchor] as { at: number }).at);
    return {
      at: place.at,
      exact: anchor.plus((this.setting.module ?? this.setting.step).times(place.steps)),
    };
  }

  /** The two ends of the slab. */
  ends(axis: Axis): [ExactLine, ExactLine] {
    const anchors = this.space.anchors(axis);
    const end = (at: number): ExactLine => ({ at, exact: this.stop(axis, at) });
    return [end((anchors[0] as { at: number }).at), end((anchors.at(-1) as { at: number }).at)];
  }
}

interface ExactGap {
  readonly gap: Gap;
  readonly lo: Decimal;
  readonly hi: Decimal;
}

function gapsOf(exact: Exact, axis: Axis, lines: readonly ExactLine[]): ExactGap[] {
  const [first, last] = exact.ends(axis);
  const all = [first, ...lines, last];
  return all.slice(1).map((line, i) => {
    const before = all[i] as ExactLine;
    return { gap: exact.space.gap(axis, before.at, line.at), lo: before.exact, hi: line.exact };
  });
}

const box = (x0: Decimal, x1: Decimal, y0: Decimal, y1: Decimal): Corner[] => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** Rectangles of slab between the lines. */
function orthogonalRings(space: OrthogonalSpace, exact: Exact, gx: ExactGap[], gy: ExactGap[]): Corner[][] {
  const { raster } = space;
  const bound = (
    axis: Axis,
    stops: readonly number[],
    g: ExactGap,
    from: number,
    to: number,
  ): [Decimal, Decimal] => {
    const [a, b] = [stops[from] as number, stops[to + 1] as number];
    return [
      a > g.gap.lo + HAIR ? exact.stop(axis, a) : g.lo,
      b < g.gap.hi - HAIR ? exact.stop(axis, b) : g.hi,
    ];
  };
  return gy.flatMap((y) =>
    gx.flatMap((x) => {
      const block = { i0: x.gap.first, i1: x.gap.last, j0: y.gap.first, j1: y.gap.last };
      return (piecesIn(raster, block) ?? []).map((p) => {
        const [x0, x1] = bound('x', raster.xs, x, p.i0, p.i1);
        const [y0, y1] = bound('y', raster.ys, y, p.j0, p.j1);
        return box(x0, x1, y0, y1);
      });
    }),
  );
}

/** A part of the outline with its box, to see in passing whether a line can cut it. */
interface Part {
  readonly ring: Corner[];
  readonly box: Box;
}

const partOf = (ring: Corner[]): Part => ({ ring, box: boxOf(ring) });

/** A part cut along lines in order: along the middle one first, so that each piece is cut few times. */
function cutAlong(part: Part, axis: Axis, lines: readonly ExactLine[]): Part[] {
  const met = lines.filter(({ at }) => at >= part.box.lo[axis] - HAIR && at <= part.box.hi[axis] + HAIR);
  const half = met.length >> 1;
  const line = met[half];
  if (!line) return [part];
  const others = [...met.slice(0, half), ...met.slice(half + 1)];
  return split(part.ring, axis, line.exact).flatMap((ring) => cutAlong(partOf(ring), axis, others));
}

/** The outline cut along every line. */
const cutRings = (ring: readonly Corner[], xs: readonly ExactLine[], ys: readonly ExactLine[]): Corner[][] =>
  cutAlong(partOf([...ring]), 'y', ys)
    .flatMap((part) => cutAlong(part, 'x', xs))
    .map((part) => part.ring);

/** More than any tape noise, in meters. */
const BEYOND = new Decimal('0.05');

/** A rectangle of the planned slab as cut from the edge as it is: let out where it is no joint. */
function asEdged(
  site: Site,
  ring: readonly Corner[],
  lines: Readonly<Record<Axis, readonly ExactLine[]>>,
): Corner[] {
  if (site.edge.length === site.ring.length) return [...ring];
  const [lo, , hi] = ring as [Corner, Corner, Corner, Corner];
  const isLine = (axis: Axis, v: Decimal): boolean => lines[axis].some((line) => same(line.exact, v));
  const x0 = isLine('x', lo.x) ? lo.x : lo.x.minus(BEYOND);
  const x1 = isLine('x', hi.x) ? hi.x : hi.x.plus(BEYOND);
  const y0 = isLine('y', lo.y) ? lo.y : lo.y.minus(BEYOND);
  const y1 = isLine('y', hi.y) ? hi.y : hi.y.plus(BEYOND);
  return commonPart(site.edge, box(x0, x1, y0, y1));
}

/** A run of a joint brought to the edge as it is, where that is off by tape noise. */
function toEdge(
  site: Site,
  axis: Axis,
  at: Decimal,
  runs: readonly [Decimal, Decimal][],
): [Decimal, Decimal][] {
  if (site.edge.length === site.ring.length) return [...runs];
  const true_ = runsWithin(site.edge, axis, at).flat();
  const near = (v: Decimal): Decimal => true_.find((t) => t.minus(v).abs().lessThan(BEYOND)) ?? v;
  return runs.map(([from, to]): [Decimal, Decimal] => [near(from), near(to)]);
}

/** What a piece of a line is, by the fixed joint that it lies along. */
function typeOf(site: Site, axis: Axis, at: Decimal, from: Decimal, to: Decimal): FixedType {
  const along = site.fixed.find(
    (f) => f.axis === axis && same(f.at, at) && f.from.lessThan(to) && f.to.greaterThan(from),
  );
  return along?.type ?? 'contraction';
}

/** The joints along one line: where it runs through slab and not along an edge or through an opening. */
function jointsAlong(exact: Exact, axis: Axis, line: ExactLine, over: readonly Hole[]): StraightJoint[] {
  const { site, space } = exact;
  const runs =
    space instanceof OrthogonalSpace
      ? rasterRuns(space, exact, axis, line)
      : runsWithin(site.ring, axis, line.exact);
  const edged = site.filled
    ? runsLess(runs, runsLess(runs, runsWithin(site.edge, axis, line.exact)))
    : toEdge(site, axis, line.exact, runs);
  const holes = over
    .filter(({ box }) => box.lo[axis] < line.at + HAIR && box.hi[axis] > line.at - HAIR)
    .flatMap(({ ring }) => [...runsWithin(ring, axis, line.exact), ...runsBeside(ring, axis, line.exact)]);
  const point = (v: Decimal): Corner => (axis === 'x' ? { x: line.exact, y: v } : { x: v, y: line.exact });
  return runsLess(edged, holes).map(([from, to]) => ({
    type: typeOf(site, axis, line.exact, from, to),
    from: point(from),
    to: point(to),
  }));
}

function rasterRuns(space: OrthogonalSpace, exact: Exact, axis: Axis, line: ExactLine): [Decimal, Decimal][] {
  const other: Axis = axis === 'x' ? 'y' : 'x';
  return space
    .runs(axis, line.at)
    .map(([from, to]): [Decimal, Decimal] => [exact.stop(other, from), exact.stop(other, to)]);
}

function offModule(exact: Exact, axis: Axis, lines: readonly ExactLine[]): GridPlan['offModule'] {
  const { module } = exact.setting;
  if (!module) return [];
  const start = exact.ends(axis)[0].exact;
  return lines
    .filter(({ exact: at }) => {
      const times = at.minus(start).div(module);
      return !times.minus(times.round()).abs().lessThan('1e-30');
    })
    .map(({ exact: at }) => ({ axis, at }));
}

const settingOut = (setting: Setting): SettingOut => ({
  step: (setting.module ?? setting.step).toNumber(),
  fromStart: setting.module !== undefined,
  share: setting.share,
});

function toSearch(space: Space, limits: Limits, out: SettingOut): Searched {
  const x = stepsAlong(space, 'x', limits, out);
  const y = stepsAlong(space, 'y', limits, out);
  const steps = { x: x.steps, y: y.steps };
  return { space, steps, trimmed: x.trimmed || y.trimmed, cells: new Cells(space, steps), share: out.share };
}

/** First for a plan that keeps every rule; where there is none, for the best of those that do not. */
function findPlan(
  space: Space,
  limits: Limits,
  out: SettingOut,
  rigid: boolean,
): Pick<FoundGrid, 'found' | 'softened'> {
  const searched = toSearch(space, limits, out);
  if (!rigid) return { found: search(searched, softer(limits).weight), softened: true };
  const found = search(searched, limits.weight);
  if (found.cost < BROKEN) {
    return { found: searched.trimmed ? refined(space, limits, out, found) : found, softened: false };
  }
  const best = search(searched, softer(limits).weight);
  // Only exact when it is certain as well that none keeps every rule.
  const exact = best.exact && found.bound >= BROKEN;
  return { found: { ...best, exact, work: found.work + best.work }, softened: true };
}

/** Search again among all steps that could make a plan no longer than the one found. */
function refined(space: Space, limits: Limits, out: SettingOut, found: Found): Found {
  const steps = stepsWithin(space, limits, out, found.cost);
  if (!steps) return found;
  const cells = new Cells(space, steps);
  const again = search({ space, steps, trimmed: false, cells, share: out.share }, limits.weight);
  const better = again.cost <= found.cost ? again : { ...found, leastLength: again.leastLength };
  return { ...better, work: found.work + again.work };
}

/** How many cells of a plan have slab in them: as many panels it has at least. */
function cellCount(space: Space, found: Found): number {
  const gaps = (axis: Axis): Gap[] => {
    const anchors = space.anchors(axis).map(({ at }) => at);
    const stops = [anchors[0] as number, ...found[axis].map(({ at }) => at), anchors.at(-1) as number];
    return stops.slice(1).map((hi, i) => space.gap(axis, stops[i] as number, hi));
  };
  const [xs, ys] = [gaps('x'), gaps('y')];
  return xs.reduce((sum, x) => sum + ys.filter((y) => space.filled(x, y)).length, 0);
}

/** Where the joints run, in binary numbers, for a slab as it lies. */
export interface FoundGrid {
  readonly site: Site;
  readonly limits: Limits;
  readonly setting: Setting;
  readonly space: Space;
  readonly found: Found;
  /** No plan keeps every rule, or none that is worth it: the search weighed broken ones. */
  readonly softened: boolean;
  /** Cells with slab in them. */
  readonly cells: number;
  /** The plan that keeps every rule, where it cuts up the slab so much that this one is better. */
  readonly kept?: Laid['kept'];
}

function foundOn(site: Site, limits: Limits, setting: Setting, weighing = false): FoundGrid {
  const space = spaceOf(site, limits);
  const rigid = !weighing && !site.openings.some(({ spared }) => spared);
  const { found, softened } = findPlan(space, limits, settingOut(setting), rigid);
  return { site, limits, setting, space, found, softened, cells: cellCount(space, found) };
}

/** True for a plan that breaks rules in far more panels than the spacing asks for. */
function isCrowded({ site, limits, softened, cells }: FoundGrid): boolean {
  const fewest = ringArea(site.ring).toNumber() / limits.spacing ** 2;
  return cells > panelLimit(site).most || (softened && cells > FAR_MORE * fewest);
}

/** True for the plan that passes the small openings by, where that is the better. */
function isBetter(other: FoundGrid, plan: FoundGrid): boolean {
  if (plan.softened || areMany(other.site))
    return other.found.cost < plan.found.cost || plan.cells > panelLimit(plan.site).most;
  return cutsUp(plan.cells, other.cells);
}

const easedOn = (plan: FoundGrid): FoundGrid =>
  eased(plan, {
    find: (ratio, weighing, site = plan.site) =>
      foundOn(site, { ...plan.limits, ratio }, plan.setting, weighing),
    lay: layGrid,
  });

/** The plan that meets every opening, or where that crowds or cuts up the slab, one that may pass by the small ones. */
function likeliest(site: Site, limits: Limits, setting: Setting): FoundGrid {
  const spared = sparing(site, limits);
  const many = spared !== undefined && areMany(spared);
  if (many && wouldCrowd(site, limits)) return foundOn(spared, limits, setting);
  const plan = foundOn(site, limits, setting);
  if (!spared || !(isCrowded(plan) || (!many && cutsUp(plan.cells, fewestOf(site, limits)))))
    return easedOn(plan);
  const other = foundOn(spared, limits, setting);
  return isBetter(other, plan) ? other : easedOn(plan);
}

/**
 * Find the plan of least saw length.
 *
 * @throws {InputError} `too-many` for more panels than are laid out
 */
export function findGrid(site: Site, limits: Limits, setting: Setting): FoundGrid {
  const plan = likeliest(site, limits, setting);
  withinLimit(panelLimit(site), plan.cells, 'spacing');
  return plan;
}

/** Lay a plan out in exact decimals. */
export function layGrid({ site, limits, setting, space, found, softened }: FoundGrid): GridPlan {
  const exact = new Exact(site, space, setting);
  const lines = {
    x: found.x.map((place) => exact.line('x', place)),
    y: found.y.map((place) => exact.line('y', place)),
  };
  const holes = holesOf(site, limits);
  const orthogonal = space instanceof OrthogonalSpace;
  const rings = orthogonal
    ? orthogonalRings(space, exact, gapsOf(exact, 'x', lines.x), gapsOf(exact, 'y', lines.y)).map((ring) =>
        asEdged(site, ring, lines),
      )
    : cutRings(site.ring, lines.x, lines.y);
  const at = { x: lines.x.map((l) => l.at), y: lines.y.map((l) => l.at) };
  return {
    joints: [
      ...lines.x.flatMap((line) => jointsAlong(exact, 'x', line, holes)),
      ...lines.y.flatMap((line) => jointsAlong(exact, 'y', line, holes)),
    ],
    panels: rings.flatMap((ring) => panelsOf(ring, holes, limits, orthogonal ? undefined : at)),
    found,
    softened,
    offModule: [...offModule(exact, 'x', lines.x), ...offModule(exact, 'y', lines.y)],
  };
}

function holesOf(site: Site, { leastSide }: Limits): Hole[] {
  return site.openings
    .filter((o) => !o.cornered)
    .map(({ ring, bothWays }) => {
      const box = boxOf(ring);
      const large = !bothWays && Math.max(box.hi.x - box.lo.x, box.hi.y - box.lo.y) > leastSide + HAIR;
      return { ring, box, large };
    });
}
