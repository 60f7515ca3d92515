/**
 * Joints of a round slab: arcs about the center, and radial joints between them. The slab is a circle, a
 * ring, or a slice of either.
 *
 * In a whole circle a disc in the middle (or a round opening there) keeps the radial joints from meeting
 * at a point, where the tips would break off; only a slab small enough for two joints crossing at right
 * angles is cut into quarters, and a slice into wedges of 60 degrees and more. Rings are of equal width, and
 * as few as the spacing allows where there is an opening: a strip no wider than the spacing is cut across
 * only. A ring has as many panels as the one within it, or twice as many: then new joints start at a
 * joint, which is a rule that gives way unless it is allowed. All plans of this kind are looked at, with
 * the disc growing by whole steps of setting out.
 *
 * The spacing is measured straight from joint to joint: at the outer edge, so that the edge itself is up
 * to 5% longer; in a slice of a ring, which is a strip along an arc, on its center line, with the outer
 * edge at most a quarter over the spacing.
 */
import { Decimal, ONE, PI, ZERO } from '../../quantity/decimal';
import { BROKEN, brokenWedge, HAIR, type Limits, type PanelRule, softened } from './rules';
import { directionAt } from './unit-circle';

/** A ring of panels between two arcs. */
export interface Ring {
  readonly inner: Decimal;
  readonly outer: Decimal;
  /** Panels in the ring; 1 for a disc that is not divided. */
  readonly panels: number;
  readonly broken: readonly PanelRule[];
}

/** A plan for a round slab. */
export interface RoundPlan {
  readonly rings: readonly Ring[];
  /** Radial joints that start at a joint. */
  readonly tees: number;
}

/** A round slab, or a slice of one. */
export interface RoundSite {
  readonly radius: Decimal;
  /** Radius of the round opening in the middle; zero when there is none. */
  readonly hole: Decimal;
  readonly step: Decimal;
  /** Joints may start at a joint. */
  readonly tees: boolean;
  /** Degrees of the slice; `undefined` all the way around. */
  readonly slice: Decimal | undefined;
}

/** A joint that starts at a joint weighs a quarter of a panel that breaks a rule. */
const TEE = 0.25;

/** How many sizes of the disc are tried. */
const DISCS = 40;
const MOST_PANELS = 512;

/** How far the outer edge of a panel of a curved strip may be over the spacing. */
export const EDGE_OVER = 1.25;

/** The sharpest tip that wedges may meet in, in radians: 60 degrees. */
const SHARPEST = Math.PI / 3;

const DEGREES = Math.PI / 180;

/** The turn of the slab in radians. */
const turnOf = ({ slice }: RoundSite): number => (slice ? slice.toNumber() * DEGREES : 2 * Math.PI);

/** Straight across from joint to joint. */
const chordOf = (radius: number, angle: number): number =>
  angle >= Math.PI ? 2 * radius : 2 * radius * Math.sin(angle / 2);

/** The straight width of a panel where it is widest, and at the middle. */
interface Widths {
  readonly outer: number;
  readonly mean: number;
}

function widthsOf(inner: number, outer: number, angle: number): Widths {
  return { outer: chordOf(outer, angle), mean: (angle * (inner + outer)) / 2 };
}

function tooWide(site: RoundSite, inner: number, outer: number, angle: number, { spacing }: Limits): boolean {
  const edge = chordOf(outer, angle);
  if (!site.slice || site.hole.isZero()) return edge > spacing + HAIR;
  const middle = chordOf((inner + outer) / 2, angle);
  return middle > spacing + HAIR || edge > EDGE_OVER * spacing + HAIR;
}

/** How many radial joints part n panels. */
const jointsFor = (site: RoundSite, n: number): number => (site.slice ? n - 1 : n === 1 ? 0 : n);

/** Cost of one ring of n panels, with the radial joints in it but without its arcs. */
function ringCost(site: RoundSite, inner: number, outer: number, n: number, limits: Limits): number {
  const angle = turnOf(site) / n;
  const wide = outer - inner > limits.spacing + HAIR;
  if (wide || tooWide(site, inner, outer, angle, limits)) return Number.POSITIVE_INFINITY;
  const { outer: widest, mean } = widthsOf(inner, outer, angle);
  const broken = brokenWedge(outer - inner, mean, widest, limits).length;
  return jointsFor(site, n) * (outer - inner) + n * limits.weight * broken;
}

interface Candidate {
  readonly cost: number;
  readonly counts: readonly number[];
}

const none: Candidate = { cost: Number.POSITIVE_INFINITY, counts: [] };

type States = ReadonlyMap<number, Candidate>;

/** Two radii, and what is asked of the ring between them. */
interface Band {
  readonly inner: number;
  readonly outer: number;
  readonly first: boolean;
}

/** The best ways to one more ring, by the number of panels in it. */
function oneMore(site: RoundSite, states: States, band: Band, limits: Limits): States {
  const tee = site.tees ? 0 : TEE * limits.weight;
  const next = new Map<number, Candidate>();
  for (const [count, state] of states) {
    for (const m of band.first ? [count] : [count, 2 * count]) {
      if (m > MOST_PANELS) continue;
      const cost = state.cost + ringCost(site, band.inner, band.outer, m, limits) + (m - count) * tee;
      const known = next.get(m)?.cost ?? Number.POSITIVE_INFINITY;
      if (cost < known) next.set(m, { cost, counts: [...state.counts, m] });
    }
  }
  return next;
}

/** The best numbers of panels of rings between radii, from `n` in the first. */
function countsFor(site: RoundSite, r: readonly number[], n: number, limits: Limits): Candidate {
  let states: States = new Map([[n, { cost: 0, counts: [] }]]);
  for (let i = 0; i + 1 < r.length; i += 1) {
    const band = { inner: r[i] as number, outer: r[i + 1] as number, first: i === 0 };
    states = oneMore(site, states, band, limits);
  }
  return [...states.values()].reduce((a, b) => (b.cost < a.cost ? b : a), none);
}

const radiiOf = (r0: number, R: number, k: number): number[] =>
  Array.from({ length: k + 1 }, (_, i) => r0 + ((R - r0) * i) / k);

interface Best {
  cost: number;
  r0: Decimal;
  k: number;
  counts: readonly number[];
}

/** Length of the arcs that are sawn: all but the outer edge and the edge of an opening. */
function arcsWithin(site: RoundSite, radii: readonly number[]): number {
  const sawn = radii.slice(site.hole.greaterThan(0) ? 1 : 0, -1);
  return sawn.reduce((sum, r) => sum + turnOf(site) * r, 0);
}

/** What the undivided piece in the middle costs; infinite where it is too wide. */
function discCost(site: RoundSite, r: number, limits: Limits): number {
  if (site.hole.greaterThan(0)) return 0;
  return limits.weight * discBroken(site, r, limits).length;
}

function discBroken(site: RoundSite, r: number, limits: Limits): PanelRule[] {
  const across = chordOf(r, turnOf(site));
  const deep = turnOf(site) > Math.PI ? 2 * r : r;
  return brokenWedge(deep, site.slice ? across / 2 : across, across, limits);
}

function tryRings(site: RoundSite, r0: Decimal, limits: Limits, best: Best): void {
  const [R, start] = [site.radius.toNumber(), r0.toNumber()];
  const opening = site.hole.greaterThan(0);
  const disc = discCost(site, start, limits);
  const fewest = Math.max(1, Math.ceil((R - start) / limits.spacing - HAIR));
  const turn = turnOf(site);
  for (let k = fewest; k <= fewest + (opening ? 0 : 4); k += 1) {
    const radii = radiiOf(start, R, k);
    const around = arcsWithin(site, radii) + disc;
    if (around >= best.cost) continue;
    const finest = Math.ceil((turn * (radii[1] as number)) / limits.leastSide);
    const most = Math.min(MOST_PANELS, Math.max(4, finest));
    const least = site.slice ? 1 : 3;
    for (let n = least; n <= most && around + jointsFor(site, n) * (R - start) < best.cost; n += 1) {
      const { cost, counts } = countsFor(site, radii, n, limits);
      if (cost + around < best.cost - HAIR) Object.assign(best, { cost: cost + around, r0, k, counts });
    }
  }
}

function discs(site: RoundSite, limits: Limits): Decimal[] {
  if (site.hole.greaterThan(0)) return [site.hole];
  const most = Decimal.min(new Decimal(limits.spacing).div(2), site.radius.times('0.9'));
  const steps = most.div(site.step).floor();
  return Array.from({ length: DISCS }, (_, i) =>
    steps
      .times(i + 1)
      .div(DISCS)
      .ceil()
      .times(site.step),
  ).filter((r) => r.greaterThan(0));
}

/** Numbers of wedges that may meet in the middle: quarters of a circle, blunt wedges of a slice. */
function wedgeCounts(site: RoundSite): number[] {
  if (site.hole.greaterThan(0)) return [];
  if (!site.slice) return [4];
  const most = Math.floor(turnOf(site) / SHARPEST + HAIR);
  return Array.from({ length: Math.max(1, most) }, (_, i) => i + 1);
}

interface Costed {
  readonly plan: RoundPlan;
  readonly cost: number;
}

function wedges(site: RoundSite, limits: Limits): Costed | undefined {
  let best: Costed | undefined;
  for (const n of wedgeCounts(site)) {
    const cost = ringCost(site, 0, site.radius.toNumber(), n, limits);
    if (cost === Number.POSITIVE_INFINITY || (best && best.cost <= cost)) continue;
    best = { plan: { rings: [ringOf(site, ZERO, site.radius, n, limits)], tees: 0 }, cost };
  }
  return best;
}

function ringOf(site: RoundSite, inner: Decimal, outer: Decimal, panels: number, limits: Limits): Ring {
  const [a, b] = [inner.toNumber(), outer.toNumber()];
  const angle = turnOf(site) / panels;
  const { outer: widest, mean } = widthsOf(a, b, angle);
  const broken =
    panels === 1 && inner.isZero() ? discBroken(site, b, limits) : brokenWedge(b - a, mean, widest, limits);
  return { inner, outer, panels, broken };
}

function planOf(site: RoundSite, { r0, k, counts }: Best, limits: Limits): RoundPlan {
  const width = site.radius.minus(r0);
  const radii = Array.from({ length: k + 1 }, (_, i) => r0.plus(width.times(i).div(k)));
  const rings = counts.map((n, i) => ringOf(site, radii[i] as Decimal, radii[i + 1] as Decimal, n, limits));
  const tees = counts.reduce((sum, n, i) => sum + (i > 0 ? n - (counts[i - 1] as number) : 0), 0);
  return { rings: site.hole.greaterThan(0) ? rings : [ringOf(site, ZERO, r0, 1, limits), ...rings], tees };
}

function bestRound(site: RoundSite, limits: Limits): Costed {
  const whole = wedges(site, limits);
  const cost = whole?.cost ?? Number.POSITIVE_INFINITY;
  const best: Best = { cost, r0: site.hole, k: 0, counts: [] };
  for (const r0 of discs(site, limits)) tryRings(site, r0, limits, best);
  if (whole && best.counts.length === 0) return whole;
  return { plan: planOf(site, best, limits), cost: best.cost };
}

/** The plan of least saw length for a round slab, or a slice of one. */
export function roundPlan(site: RoundSite, limits: Limits): RoundPlan {
  const opening = site.hole.greaterThan(0);
  if (!opening && !site.slice && 2 * site.radius.toNumber() <= limits.spacing + HAIR) {
    return { rings: [ringOf(site, ZERO, site.radius, 1, limits)], tees: 0 };
  }
  const { plan, cost } = bestRound(site, limits);
  return cost < TEE * BROKEN ? plan : bestRound(site, softened(limits)).plan;
}

/** The part of a whole turn that the slab is. */
const shareOf = ({ slice }: RoundSite): Decimal => (slice ? slice.div(360) : ONE);

/** Area of one panel of a ring. */
export const ringPanelArea = (site: RoundSite, { inner, outer, panels }: Ring): Decimal =>
  PI.times(outer.times(outer).minus(inner.times(inner)))
    .times(shareOf(site))
    .div(panels);

/** Mean width of a panel of a ring, measured around. */
export const ringPanelWidth = (site: RoundSite, { inner, outer, panels }: Ring): Decimal =>
  panels === 1 && !site.slice ? outer.times(2) : PI.times(inner.plus(outer)).times(shareOf(site)).div(panels);

/** A panel of a ring straight across its outer edge. */
export function ringPanelChord(site: RoundSite, { outer, panels }: Ring): Decimal {
  const angle = PI.times(2).times(shareOf(site)).div(panels);
  const half = Decimal.min(angle, PI).div(2);
  return outer.times(2).times(directionAt(half).y);
}

/** Length of the arc at a radius. */
export const arcLength = (site: RoundSite, r: Decimal): Decimal => PI.times(2).times(r).times(shareOf(site));

interface Way {
  readonly x: Decimal;
  readonly y: Decimal;
}

const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));

/** Directions are slow to reckon to 60 digits and come up again and again. */
const ways = new Map<string, Way>();
const WAYS_KEPT = 2000;

/** A direction from the center: a part of the turn of the slab. */
export function toward(site: RoundSite, part: number, of: number): Way {
  const by = common(of, part);
  const [p, n] = [part / by, of / by];
  if (p === 0) return { x: ONE, y: ZERO };
  const key = `${site.slice ?? 'all'} ${p}/${n}`;
  const known = ways.get(key);
  if (known) return known;
  const angle = PI.times(2).times(shareOf(site)).times(p).div(n);
  const way = directionAt(angle);
  if (ways.size < WAYS_KEPT) ways.set(key, way);
  return way;
}
