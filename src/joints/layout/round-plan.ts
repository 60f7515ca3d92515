/**
 * Joints of a round slab: circles about the centre, and radial joints between them.
 *
 * A disc in the middle (or a round opening there) keeps the radial joints from meeting at a point,
 * where the tips would break off; only a slab small enough for two joints crossing at right angles is
 * cut into quarters. Rings are of equal width. A ring has as many panels as the one within it, or
 * twice as many: then new joints start at a joint, which is a rule that gives way unless it is allowed.
 * All plans of this kind are looked at, with the disc growing by whole steps of setting out.
 */
import { Decimal, ONE, PI, ZERO } from '../../quantity/decimal';
import { BROKEN, brokenBy, HAIR, type Limits, type PanelRule, softened } from './rules';

/** A ring of panels between two circles. */
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

/** A round slab. */
export interface RoundSite {
  readonly radius: Decimal;
  /** Radius of the round opening in the middle; zero when there is none. */
  readonly hole: Decimal;
  readonly step: Decimal;
  /** Joints may start at a joint. */
  readonly tees: boolean;
}

/** A joint that starts at a joint weighs a quarter of a panel that breaks a rule. */
const TEE = 0.25;

/** How many sizes of the disc are tried. */
const DISCS = 40;
const MOST_PANELS = 512;

/** Cost of one ring of n panels, with the radial joints in it but without its circles. */
function ringCost(inner: number, outer: number, n: number, limits: Limits): number {
  const chord = n < 3 ? 2 * outer : 2 * outer * Math.sin(Math.PI / n);
  if (chord > limits.spacing + HAIR || outer - inner > limits.spacing + HAIR) return Number.POSITIVE_INFINITY;
  const mean = (Math.PI * (inner + outer)) / n;
  return n * (outer - inner) + n * limits.weight * brokenBy(outer - inner, mean, limits).length;
}

interface Candidate {
  readonly cost: number;
  readonly counts: readonly number[];
}

const none: Candidate = { cost: Number.POSITIVE_INFINITY, counts: [] };

type States = ReadonlyMap<number, Candidate>;

/** The best ways to one more ring, by the number of panels in it. */
function oneMore(
  states: States,
  inner: number,
  outer: number,
  limits: Limits,
  tee: number,
  first: boolean,
): States {
  const next = new Map<number, Candidate>();
  for (const [count, state] of states) {
    for (const m of first ? [count] : [count, 2 * count]) {
      if (m > MOST_PANELS) continue;
      const cost = state.cost + ringCost(inner, outer, m, limits) + (m - count) * tee;
      const known = next.get(m)?.cost ?? Number.POSITIVE_INFINITY;
      if (cost < known) next.set(m, { cost, counts: [...state.counts, m] });
    }
  }
  return next;
}

/** The best numbers of panels of rings between radii, from `n` in the first. */
function countsFor(r: readonly number[], n: number, limits: Limits, tees: boolean): Candidate {
  const tee = tees ? 0 : TEE * limits.weight;
  let states: States = new Map([[n, { cost: 0, counts: [] }]]);
  for (let i = 0; i + 1 < r.length; i += 1) {
    states = oneMore(states, r[i] as number, r[i + 1] as number, limits, tee, i === 0);
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

/** Length of the circles that are sawn: all but the outer edge and the edge of an opening. */
function circles(radii: readonly number[], opening: boolean): number {
  return radii.slice(opening ? 1 : 0, -1).reduce((sum, r) => sum + 2 * Math.PI * r, 0);
}

function tryRings(site: RoundSite, r0: Decimal, limits: Limits, best: Best): void {
  const [R, start] = [site.radius.toNumber(), r0.toNumber()];
  const opening = site.hole.greaterThan(0);
  const disc = opening ? 0 : limits.weight * brokenBy(2 * start, 2 * start, limits).length;
  const fewest = Math.max(1, Math.ceil((R - start) / limits.spacing - HAIR));
  for (let k = fewest; k <= fewest + 4; k += 1) {
    const radii = radiiOf(start, R, k);
    const around = circles(radii, opening) + disc;
    if (around >= best.cost) continue;
    const most = Math.min(
      MOST_PANELS,
      Math.max(4, Math.ceil((2 * Math.PI * (radii[1] as number)) / limits.leastSide)),
    );
    for (let n = 3; n <= most && around + n * (R - start) < best.cost; n += 1) {
      const { cost, counts } = countsFor(radii, n, limits, site.tees);
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

function quarters(site: RoundSite, limits: Limits): RoundPlan | undefined {
  const R = site.radius.toNumber();
  if (site.hole.greaterThan(0) || ringCost(0, R, 4, limits) === Number.POSITIVE_INFINITY) return undefined;
  return { rings: [ringOf(ZERO, site.radius, 4, limits)], tees: 0 };
}

function ringOf(inner: Decimal, outer: Decimal, panels: number, limits: Limits): Ring {
  const [a, b] = [inner.toNumber(), outer.toNumber()];
  const mean = panels === 1 ? 2 * b : (Math.PI * (a + b)) / panels;
  return { inner, outer, panels, broken: brokenBy(panels === 1 ? 2 * b : b - a, mean, limits) };
}

function planOf(site: RoundSite, { r0, k, counts }: Best, limits: Limits): RoundPlan {
  const width = site.radius.minus(r0);
  const radii = Array.from({ length: k + 1 }, (_, i) => r0.plus(width.times(i).div(k)));
  const rings = counts.map((n, i) => ringOf(radii[i] as Decimal, radii[i + 1] as Decimal, n, limits));
  const tees = counts.reduce((sum, n, i) => sum + (i > 0 ? n - (counts[i - 1] as number) : 0), 0);
  return { rings: site.hole.greaterThan(0) ? rings : [ringOf(ZERO, r0, 1, limits), ...rings], tees };
}

function bestRound(site: RoundSite, limits: Limits): { plan: RoundPlan; cost: number } {
  const best: Best = { cost: Number.POSITIVE_INFINITY, r0: site.hole, k: 0, counts: [] };
  const four = quarters(site, limits);
  if (four) best.cost = ringCost(0, site.radius.toNumber(), 4, limits);
  for (const r0 of discs(site, limits)) tryRings(site, r0, limits, best);
  const plan = best.counts.length > 0 || !four ? planOf(site, best, limits) : four;
  return { plan, cost: best.cost };
}

/** The plan of least saw length for a round slab. */
export function roundPlan(site: RoundSite, limits: Limits): RoundPlan {
  const opening = site.hole.greaterThan(0);
  if (!opening && 2 * site.radius.toNumber() <= limits.spacing + HAIR) {
    return { rings: [ringOf(ZERO, site.radius, 1, limits)], tees: 0 };
  }
  const { plan, cost } = bestRound(site, limits);
  return cost < TEE * BROKEN ? plan : bestRound(site, softened(limits)).plan;
}

/** Area of one panel of a ring. */
export const ringPanelArea = ({ inner, outer, panels }: Ring): Decimal =>
  PI.times(outer.times(outer).minus(inner.times(inner))).div(panels);

/** Mean width of a panel of a ring, measured around. */
export const ringPanelWidth = ({ inner, outer, panels }: Ring): Decimal =>
  panels === 1 ? outer.times(2) : PI.times(inner.plus(outer)).div(panels);

interface Way {
  readonly x: Decimal;
  readonly y: Decimal;
}

const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));

/** Directions are slow to reckon to 60 digits and come up again and again. */
const ways = new Map<string, Way>();
const WAYS_KEPT = 2000;

/** A direction from the centre: a part of a full turn. */
export function towards(part: number, of: number): Way {
  const by = common(of, part);
  const [p, n] = [part / by, of / by];
  if (p === 0) return { x: ONE, y: ZERO };
  const known = ways.get(`${p}/${n}`);
  if (known) return known;
  const angle = PI.times(2).times(p).div(n);
  const way = { x: Decimal.cos(angle), y: Decimal.sin(angle) };
  if (ways.size < WAYS_KEPT) ways.set(`${p}/${n}`, way);
  return way;
}
