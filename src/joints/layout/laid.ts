/** A plan of any pattern, brought to one form: joints and panels in the plane of the input. */
import type { Corner } from '../../geometry/polygon';
import { Decimal, ZERO } from '../../quantity/decimal';
import { leastWidth } from './as-cut';
import { same } from './exact';
import { type FanPlan, fanPlan, partWay, type Taper, taperOf } from './fan-plan';
import { type FoundGrid, type GridPlan, layGrid } from './grid-plan';
import { spot } from './orthogonal';
import type { Laid, LaidJoint, LaidPanel } from './plan';
import {
  arcLength,
  type Ring,
  type RoundPlan,
  type RoundSite,
  ringPanelArea,
  ringPanelChord,
  ringPanelWidth,
  roundPlan,
  toward,
} from './round-plan';
import { brokenBy, HAIR, type Limits, type PanelRule, softened } from './rules';
import { ringArea, type Site } from './site';
import { type Axis, acrossOf } from './space';

const middleOf = (ring: readonly Corner[]): Corner => {
  const xs = ring.map((c) => c.x);
  const ys = ring.map((c) => c.y);
  return {
    x: Decimal.min(...xs)
      .plus(Decimal.max(...xs))
      .div(2),
    y: Decimal.min(...ys)
      .plus(Decimal.max(...ys))
      .div(2),
  };
};

const distance = (a: Corner, b: Corner): Decimal =>
  a.x.equals(b.x)
    ? b.y.minus(a.y).abs()
    : a.y.equals(b.y)
      ? b.x.minus(a.x).abs()
      : Decimal.hypot(b.x.minus(a.x), b.y.minus(a.y));

/** Plans within this are the same length, in meters. */
const SAME = 1e-3;

/** Straight joints as they lie in the pose. */
function fromGrid(plan: GridPlan, limits: Limits): Laid {
  const joints = plan.joints.map(({ type, from, to }): LaidJoint => {
    const axis = from.x.equals(to.x) ? 'x' : 'y';
    return {
      type,
      shape: 'straight',
      from,
      to,
      length: distance(from, to),
      run: `${axis}${from[axis].toFixed()}`,
      family: axis,
      place: from[axis],
    };
  });
  const { panels } = plan;
  const { bound, leastLength, cost, exact } = plan.found;
  const broken = panels.reduce((sum, p) => sum + p.broken.length, 0);
  const keepsAll = broken === 0;
  const sawn = joints.reduce((sum, j) => sum + j.length.toNumber(), 0);
  const weighs = sawn + softened(limits).weight * broken;
  return {
    pattern: 'straight',
    joints,
    panels,
    tees: 0,
    offModule: plan.offModule.length,
    // Where openings leave pieces that break rules which no cell did, there may be better plans.
    exact: exact && (plan.softened ? weighs <= cost + SAME : keepsAll),
    // With rules broken the bound weighs those too, so only the plain least length can be told.
    leastLength: keepsAll && !plan.softened ? Math.max(bound, leastLength) : leastLength,
  };
}

const byPlace = (a: Decimal, b: Decimal): number => (same(a, b) ? 0 : a.comparedTo(b));

/** Places farther apart than this are told apart in binary numbers, in parts of what they come to. */
const CLEAR = 1e-12;

/** The order of places along both axes, the first one first. */
function byPlaces(a: Corner, b: Corner, first: Axis): number {
  const [p, q] = [spot(a), spot(b)];
  const along = (axis: Axis): number => {
    const off = p[axis] - q[axis];
    return Math.abs(off) > CLEAR * (1 + Math.abs(p[axis])) ? off : byPlace(a[axis], b[axis]);
  };
  return along(first) || along(acrossOf(first));
}

/** A joint laid back into the plane of the input: from left to right, or up. */
function jointOut(joint: LaidJoint, { pose }: Site): LaidJoint {
  const [a, b] = [pose.upright(joint.from), pose.upright(joint.to)];
  const backwards = joint.shape === 'straight' ? byPlaces(a, b, 'x') > 0 : pose.mirrored;
  const [from, to] = backwards ? [joint.to, joint.from] : [joint.from, joint.to];
  const axis = joint.family === 'x' || joint.family === 'y';
  const family = axis && pose.quarter.swap ? (joint.family === 'x' ? 'y' : 'x') : joint.family;
  return {
    ...joint,
    from: pose.out(from),
    to: pose.out(to),
    ...(joint.center ? { center: pose.out(joint.center) } : {}),
    ...(joint.along && pose.mirrored ? { along: { left: joint.along.right, right: joint.along.left } } : {}),
    family,
    place: axis ? a[family as 'x' | 'y'] : joint.place,
  };
}

/** A plan laid back into the plane of the input: joints family by family in order, panels row by row. */
export function laidBack(laid: Laid, site: Site): Laid {
  const { pose } = site;
  const grid = laid.pattern === 'straight';
  const order = (a: LaidJoint, b: LaidJoint): number =>
    a.family.localeCompare(b.family) || byPlace(a.place, b.place) || byPlaces(a.from, b.from, 'x');
  const joints = laid.joints.map((j) => jointOut(j, site));
  const panels = laid.panels.map((p) => {
    const sides = pose.quarter.swap && grid ? { along: p.across, across: p.along } : {};
    return { panel: { ...p, ...sides, at: pose.out(p.at) }, up: pose.upright(p.at) };
  });
  if (grid) {
    joints.sort(order);
    panels.sort((a, b) => byPlaces(a.up, b.up, 'y'));
  }
  return { ...laid, joints, panels: panels.map(({ panel }) => panel) };
}

const scaled = (way: Corner, r: Decimal): Corner => ({ x: way.x.times(r), y: way.y.times(r) });

const CENTER: Corner = { x: ZERO, y: ZERO };

/** A joint along an arc: a whole circle, or from one straight edge of a slice to the other. */
function arcJoint(site: RoundSite, r: Decimal): LaidJoint {
  return {
    type: 'contraction',
    shape: site.slice ? 'arc' : 'circle',
    from: { x: r, y: ZERO },
    to: site.slice ? scaled(toward(site, 1, 1), r) : { x: r, y: ZERO },
    center: CENTER,
    length: arcLength(site, r),
    run: `r${r.toFixed()}`,
    family: 'circle',
    place: r,
  };
}

/** The radial joint on one spoke, from the innermost ring that has it out to the edge. */
function spokes(rings: readonly Ring[], site: RoundSite): LaidJoint[] {
  const finest = Math.max(...rings.map((ring) => ring.panels));
  const outer = (rings.at(-1) as Ring).outer;
  const joints: LaidJoint[] = [];
  for (let k = site.slice ? 1 : 0; k < finest; k += 1) {
    const first = rings.find((ring) => ring.panels > 1 && (k * ring.panels) % finest === 0);
    if (!first) continue;
    const way = toward(site, k, finest);
    const across = site.slice && first.inner.greaterThan(0) && first.inner.equals(site.hole);
    const along = (r: Decimal): Decimal => arcLength(site, r).times(k).div(finest);
    joints.push({
      type: 'contraction',
      shape: 'straight',
      from: scaled(way, first.inner),
      to: scaled(way, outer),
      length: outer.minus(first.inner),
      ...(across ? { along: { left: along(first.inner), right: along(outer) } } : {}),
      run: `spoke${k}`,
      family: 'spoke',
      place: new Decimal(k),
    });
  }
  return joints;
}

function ringPanels(ring: Ring, site: RoundSite): LaidPanel[] {
  const disc = ring.panels === 1 && ring.inner.isZero() && !site.slice;
  const middle = disc ? ZERO : ring.inner.plus(ring.outer).div(2);
  return Array.from({ length: ring.panels }, (_, k) => ({
    at: disc ? CENTER : scaled(toward(site, 2 * k + 1, 2 * ring.panels), middle),
    along: disc ? ring.outer.times(2) : ring.outer.minus(ring.inner),
    across: ringPanelWidth(site, ring),
    widest: ringPanelChord(site, ring),
    area: ringPanelArea(site, ring),
    broken: ring.broken,
  }));
}

function fromRound({ rings, tees }: RoundPlan, site: RoundSite): Laid {
  const joints = [...rings.slice(0, -1).map((ring) => arcJoint(site, ring.outer)), ...spokes(rings, site)];
  const panels = rings.flatMap((ring) => ringPanels(ring, site));
  const leastLength = joints.reduce((sum, j) => sum.plus(j.length), ZERO).toNumber();
  return {
    pattern: 'round',
    joints,
    panels,
    tees: site.tees ? 0 : tees,
    offModule: 0,
    exact: true,
    leastLength,
  };
}

/** The corners of the panels of a fan, row by row. */
function fanCorners(taper: Taper, { across, along }: FanPlan): Corner[][] {
  return Array.from({ length: along + 1 }, (_, j) =>
    Array.from({ length: across + 1 }, (_unused, k) =>
      partWay(partWay(...taper.near, k, across), partWay(...taper.far, k, across), j, along),
    ),
  );
}

function fanPanel(corners: readonly Corner[][], j: number, k: number, limits: Limits): LaidPanel {
  const near = corners[j] as Corner[];
  const far = corners[j + 1] as Corner[];
  const ring = [near[k], near[k + 1], far[k + 1], far[k]] as Corner[];
  const [a, b, c, d] = ring as [Corner, Corner, Corner, Corner];
  const across = distance(a, b).plus(distance(d, c)).div(2);
  const area = ringArea(ring);
  const along = area.div(across);
  const broken = brokenBy(across.toNumber(), along.toNumber(), limits);
  // Its mean measures may do where the panel itself, leaning, is narrow.
  const narrow = leastWidth(ring.map(spot)) < limits.leastSide - HAIR;
  const rules: readonly PanelRule[] = narrow && !broken.includes('sliver') ? ['sliver', ...broken] : broken;
  return { at: middleOf(ring), along, across, area, broken: rules };
}

function fromFan(taper: Taper, plan: FanPlan, limits: Limits): Laid {
  const corners = fanCorners(taper, plan);
  const joint = (from: Corner, to: Corner, family: string, place: number): LaidJoint => ({
    type: 'contraction',
    shape: 'straight',
    from,
    to,
    length: distance(from, to),
    run: `${family}${place}`,
    family,
    place: new Decimal(place),
  });
  const first = corners[0] as Corner[];
  const last = corners.at(-1) as Corner[];
  const joints: LaidJoint[] = [];
  for (let k = 1; k < plan.across; k += 1)
    joints.push(joint(first[k] as Corner, last[k] as Corner, 'fan', k));
  for (let j = 1; j < plan.along; j += 1) {
    const row = corners[j] as Corner[];
    joints.push(joint(row[0] as Corner, row.at(-1) as Corner, 'row', j));
  }
  const panels: LaidPanel[] = [];
  for (let j = 0; j < plan.along; j += 1) {
    for (let k = 0; k < plan.across; k += 1) panels.push(fanPanel(corners, j, k, limits));
  }
  const leastLength = joints.reduce((sum, j) => sum.plus(j.length), ZERO).toNumber();
  return { pattern: 'fan', joints, panels, tees: 0, offModule: 0, exact: true, leastLength };
}

/** Straight joints in two directions. */
export const layStraight = (found: FoundGrid): Laid => ({
  ...fromGrid(layGrid(found), found.limits),
  ...(found.kept && { kept: found.kept }),
});

/** Circles and radial joints. */
export const layRound = (site: RoundSite, limits: Limits): Laid => fromRound(roundPlan(site, limits), site);

/** A fan between two parallel sides, where the ring is such a taper. */
export function layFan(ring: readonly Corner[], limits: Limits): Laid | undefined {
  const taper = taperOf(ring);
  const plan = taper && fanPlan(taper, limits);
  return taper && plan ? fromFan(taper, plan, limits) : undefined;
}

/** A missed inside corner weighs as much as several panels that break a rule: it cracks for certain. */
const MISSED = 3;

/** How many rules a plan breaks in all, as they weigh. */
export const brokenIn = (laid: Laid): number =>
  laid.panels.reduce((sum, p) => sum + p.broken.length, 0) + laid.tees + MISSED * (laid.missed?.length ?? 0);

/** Length of all joints. */
export const lengthOf = (laid: Laid): Decimal => laid.joints.reduce((sum, j) => sum.plus(j.length), ZERO);
