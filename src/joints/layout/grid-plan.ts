/** A plan of straight joints in two directions: from the site to panels and joints in exact decimals. */
import { type Corner, doubleArea } from '../../geometry/polygon';
import { Decimal, ZERO } from '../../quantity/decimal';
import { commonPart, runsLess, runsWithin, same, split } from './exact';
import { GeneralSpace, wedged } from './general';
import { OrthogonalSpace, piecesIn, type Spot } from './orthogonal';
import { BROKEN, brokenBy, HAIR, type Limits, type PanelRule, softened } from './rules';
import { Cells, type Found, type Searched, search } from './search';
import { type FixedType, ringArea, type Site } from './site';
import type { Axis, Gap, Space } from './space';
import { type LinePlace, type SettingOut, stepsAlong, stepsWithin } from './steps';

/** A straight joint, in the turned plane. */
interface StraightJoint {
  readonly type: FixedType;
  readonly from: Corner;
  readonly to: Corner;
}

/** A panel, in the turned plane. */
interface PlanPanel {
  readonly ring: readonly Corner[];
  /** Over all along x and y. */
  readonly along: Decimal;
  readonly across: Decimal;
  readonly area: Decimal;
  readonly broken: readonly PanelRule[];
}

/** A finished plan. */
export interface GridPlan {
  readonly joints: readonly StraightJoint[];
  readonly panels: readonly PlanPanel[];
  readonly found: Found;
  /** Lines that do not fall on the module. */
  readonly offModule: readonly { readonly axis: Axis; readonly at: Decimal }[];
}

/** How the lines are set out. */
export interface Setting {
  readonly step: Decimal;
  readonly module: Decimal | undefined;
}

const spot = ({ x, y }: Corner): Spot => ({ x: x.toNumber(), y: y.toNumber() });

/** The exact coordinates that anchors stand for. */
function exactStops(site: Site, axis: Axis): Decimal[] {
  const all = [
    ...site.ring.map((c) => c[axis]),
    ...site.openings.flatMap((o) => (o.cornered ? o.ring.map((c) => c[axis]) : [o.centre[axis]])),
    ...site.fixed.filter((f) => f.axis === axis).map((f) => f.at),
    ...site.continued.filter((f) => f.axis === axis).map((f) => f.at),
  ];
  return all.sort((a, b) => a.comparedTo(b));
}

/** Fixed lines, those that go on from a neighbour, and the centre lines of columns. */
function mustLines(site: Site, axis: Axis): number[] {
  const lines = [...site.fixed, ...site.continued].filter((f) => f.axis === axis).map((f) => f.at);
  const columns = site.openings.filter((o) => o.bothWays).map((o) => o.centre[axis]);
  return [...lines, ...columns].map((d) => d.toNumber());
}

interface Box {
  readonly lo: Spot;
  readonly hi: Spot;
  readonly ring: readonly Spot[];
}

function boxOf(ring: readonly Corner[]): Box {
  const spots = ring.map(spot);
  const xs = spots.map((s) => s.x);
  const ys = spots.map((s) => s.y);
  return {
    lo: { x: Math.min(...xs), y: Math.min(...ys) },
    hi: { x: Math.max(...xs), y: Math.max(...ys) },
    ring: spots,
  };
}

function runOf(ring: readonly Spot[], axis: Axis, at: number): number {
  const across = axis === 'x' ? 'y' : 'x';
  const crossings: number[] = [];
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as Spot;
    if (a[axis] > at !== b[axis] > at)
      crossings.push(a[across] + ((b[across] - a[across]) * (at - a[axis])) / (b[axis] - a[axis]));
  });
  crossings.sort((p, q) => p - q);
  return crossings.reduce((sum, v, k) => sum + (k % 2 === 0 ? -v : v), 0);
}

/** Length of slab missing along a line where openings lie in its way. */
function leftOutBy(site: Site): (axis: Axis, at: number) => number {
  const boxes = site.openings.filter((o) => !o.cornered).map((o) => boxOf(o.ring));
  return (axis, at) => {
    let sum = 0;
    for (const { lo, hi, ring } of boxes) if (lo[axis] < at && hi[axis] > at) sum += runOf(ring, axis, at);
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
  const through = site.openings.filter((o) => !o.cornered && !o.bothWays).map((o) => spot(o.centre));
  const common = {
    marks: through,
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
  readonly #stops: Record<Axis, readonly Decimal[]>;

  constructor(
    readonly site: Site,
    readonly space: Space,
    readonly setting: Setting,
  ) {
    this.#stops = { x: exactStops(site, 'x'), y: exactStops(site, 'y') };
  }

  /** The exact coordinate that lies within a hair of a binary one. */
  stop(axis: Axis, at: number): Decimal {
    const stops = this.#stops[axis];
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

/** Openings that joints are led through, with boxes to look them up by. */
interface Hole {
  readonly ring: readonly Corner[];
  readonly box: Box;
}

function areaLess(ring: readonly Corner[], holes: readonly Hole[]): Decimal {
  const box = boxOf(ring);
  let double = doubleArea(ring);
  for (const hole of holes) {
    const apart =
      hole.box.lo.x >= box.hi.x ||
      hole.box.hi.x <= box.lo.x ||
      hole.box.lo.y >= box.hi.y ||
      hole.box.hi.y <= box.lo.y;
    if (!apart) double = double.minus(doubleArea(commonPart(hole.ring, ring)));
  }
  return double.div(2);
}

function panelOf(ring: readonly Corner[], limits: Limits, holes: readonly Hole[]): PlanPanel | undefined {
  const xs = ring.map((c) => c.x);
  const ys = ring.map((c) => c.y);
  const along = Decimal.max(...xs).minus(Decimal.min(...xs));
  const across = Decimal.max(...ys).minus(Decimal.min(...ys));
  const area = areaLess(ring, holes);
  if (same(area, ZERO)) return undefined;
  const [w, h] = [along.toNumber(), across.toNumber()];
  const broken = brokenBy(w, h, limits);
  if (!broken.includes('sliver') && wedged(ringArea(ring).toNumber(), w, h, limits.leastSide)) {
    broken.unshift('sliver');
  }
  return { ring, along, across, area, broken };
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

/** The outline cut along every line. */
function cutRings(ring: readonly Corner[], xs: readonly ExactLine[], ys: readonly ExactLine[]): Corner[][] {
  let parts = [partOf([...ring])];
  const cutAlong = (axis: Axis, line: ExactLine): void => {
    parts = parts.flatMap((part) => {
      const missed = line.at < part.box.lo[axis] - HAIR || line.at > part.box.hi[axis] + HAIR;
      return missed ? [part] : split(part.ring, axis, line.exact).map(partOf);
    });
  };
  for (const line of ys) cutAlong('y', line);
  for (const line of xs) cutAlong('x', line);
  return parts.map((part) => part.ring);
}

/** What a piece of a line is, by the fixed joint that it lies along. */
function typeOf(site: Site, axis: Axis, at: Decimal, from: Decimal, to: Decimal): FixedType {
  const along = site.fixed.find(
    (f) => f.axis === axis && same(f.at, at) && f.from.lessThan(to) && f.to.greaterThan(from),
  );
  return along?.type ?? 'contraction';
}

/** The joints along one line: where it runs through slab and not along an edge or through an opening. */
function jointsAlong(site: Site, space: Space, exact: Exact, axis: Axis, line: ExactLine): StraightJoint[] {
  const runs =
    space instanceof OrthogonalSpace
      ? rasterRuns(space, exact, axis, line)
      : runsWithin(site.ring, axis, line.exact);
  const holes = site.openings.filter((o) => !o.cornered).flatMap((o) => runsWithin(o.ring, axis, line.exact));
  const point = (v: Decimal): Corner => (axis === 'x' ? { x: line.exact, y: v } : { x: v, y: line.exact });
  return runsLess(runs, holes).map(([from, to]) => ({
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
});

function toSearch(space: Space, limits: Limits, out: SettingOut): Searched {
  const x = stepsAlong(space, 'x', limits, out);
  const y = stepsAlong(space, 'y', limits, out);
  const steps = { x: x.steps, y: y.steps };
  return { space, steps, trimmed: x.trimmed || y.trimmed, cells: new Cells(space, steps) };
}

/** First for a plan that keeps every rule; where there is none, for the best of those that do not. */
function findPlan(space: Space, limits: Limits, out: SettingOut): Found {
  const searched = toSearch(space, limits, out);
  const found = search(searched, limits.weight);
  if (found.cost < BROKEN) return searched.trimmed ? refined(space, limits, out, found) : found;
  const best = search(searched, softened(limits).weight);
  // Only exact when it is certain as well that none keeps every rule.
  return { ...best, exact: best.exact && found.bound >= BROKEN };
}

/** Search again among all steps that could make a plan no longer than the one found. */
function refined(space: Space, limits: Limits, out: SettingOut, found: Found): Found {
  const steps = stepsWithin(space, limits, out, found.cost);
  if (!steps) return found;
  const again = search({ space, steps, trimmed: false, cells: new Cells(space, steps) }, limits.weight);
  return again.cost <= found.cost ? again : { ...found, leastLength: again.leastLength };
}

/** Find the plan of least saw length and lay it out in exact decimals. */
export function gridPlan(site: Site, limits: Limits, setting: Setting): GridPlan {
  const space = spaceOf(site, limits);
  const found = findPlan(space, limits, settingOut(setting));
  const exact = new Exact(site, space, setting);
  const lines = {
    x: found.x.map((place) => exact.line('x', place)),
    y: found.y.map((place) => exact.line('y', place)),
  };
  const holes = site.openings.filter((o) => !o.cornered).map((o) => ({ ring: o.ring, box: boxOf(o.ring) }));
  const rings =
    space instanceof OrthogonalSpace
      ? orthogonalRings(space, exact, gapsOf(exact, 'x', lines.x), gapsOf(exact, 'y', lines.y))
      : cutRings(site.ring, lines.x, lines.y);
  return {
    joints: [
      ...lines.x.flatMap((line) => jointsAlong(site, space, exact, 'x', line)),
      ...lines.y.flatMap((line) => jointsAlong(site, space, exact, 'y', line)),
    ],
    panels: rings.flatMap((ring) => panelOf(ring, limits, holes) ?? []),
    found,
    offModule: [...offModule(exact, 'x', lines.x), ...offModule(exact, 'y', lines.y)],
  };
}
