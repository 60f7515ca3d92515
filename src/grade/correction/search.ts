/**
 * Which needs make a surface drain.
 *
 * Within the zone of a wall every facet must fall away from it; that is known beforehand and linear.
 * Elsewhere water may run any way as long as it gets off, which is not. So the least correction is
 * sought with what is known, the surface it makes is looked at as the drainage check does, and what is
 * at fault there becomes a need: a facet that is too flat must fall, a pond must lose its rim. For which
 * way, there are a few answers: as it lies, off the wall, to the nearest way out, or from spot to spot
 * along the way that water would spill. Each is followed to its end, and the cheapest that drains is
 * taken. It is the least for the needs it ends with; another way that none of these finds may be less.
 */
import { nextEdge } from '../../geometry/tin';
import { Decimal, ZERO } from '../../quantity/decimal';
import { say } from '../../reckoning/words';
import { reachOf } from '../flow';
import { type Held, valleysHeld } from '../held';
import { faultyFacets } from '../judged';
import { awayFall, middleOf } from '../lines';
import { pondsFound } from '../pond-figures';
import type { FoundPond } from '../ponds';
import { lowerEnd, NO_FALL } from '../runs';
import { rate } from '../shapes';
import type { Site } from '../terrain';
import { isFlat } from '../valleys';
import type { Looker } from './corrected';
import {
  downNeed,
  exactCorners,
  facetNeed,
  facetSpots,
  type Need,
  offWallNeed,
  unitWay,
  type Way,
  wayOffWall,
} from './needs';
import { type Job, lackOf, type Moves, solve, solveRoughly } from './program';

/** A side that water gathers along and that is too flat to take it on. */
interface FlatValley {
  readonly from: number;
  readonly to: number;
  /** What it must fall, per meter. */
  readonly least: Decimal;
}

/** What is at fault with a surface. */
interface Faulty {
  readonly facets: readonly number[];
  /** 1 for facets that the zone of a wall reaches into: they must fall straight off it. */
  readonly zoned: Uint8Array;
  readonly reaching: readonly number[];
  readonly ponds: readonly FoundPond[];
  readonly valleys: readonly FlatValley[];
}

const TRIFLE = 1e-6;
const ROUNDS = 8;

/** The end that water gets off by; where a level side could send it either way, the names decide. */
function wayAlong({ terrain, sides, survey }: Site, e: number, p: number, q: number): number {
  const level = Math.abs((terrain.tin.z[p] as number) - (terrain.tin.z[q] as number)) <= NO_FALL;
  if (!level || sides.outlet[p] !== sides.outlet[q]) {
    return level ? (sides.outlet[p] ? p : q) : lowerEnd(terrain, e);
  }
  return survey.name(p) < survey.name(q) ? q : p;
}

/** Valleys that do not fall as they must, with the way that their water gets off. */
function flatValleys(site: Site, held: Held): FlatValley[] {
  const { tin, ponds } = site.terrain;
  return valleysHeld(site, held)
    .filter(isFlat)
    .filter(({ from, to }) => {
      // A valley that ends in a pond is told of with the pond, which may send its water the other way.
      return ponds.pondOf[from] === -1 && ponds.pondOf[to] === -1;
    })
    .map(({ edge, least }) => {
      const [p, q] = [tin.corner[edge] as number, tin.corner[nextEdge(edge)] as number];
      const to = wayAlong(site, edge, p, q);
      return { from: to === p ? q : p, to, least: new Decimal(least) };
    });
}

function lookAt(site: Site, held: Held): Faulty {
  const { reverse, short, zoned } = faultyFacets(site, held);
  const reaching: number[] = [];
  if (site.walls.length > 0) {
    const { share } = reachOf(site.terrain);
    for (let t = 0; t < site.terrain.tin.facets; t += 1) if ((share[t] as number) > TRIFLE) reaching.push(t);
  }
  return {
    facets: [...reverse, ...short],
    zoned,
    reaching,
    ponds: pondsFound(site),
    valleys: flatValleys(site, held),
  };
}

const isSound = ({ facets, reaching, ponds, valleys }: Faulty): boolean =>
  facets.length + reaching.length + ponds.length + valleys.length === 0;

/** The way a facet falls as it lies, by Cramer's rule. */
function ownWay(site: Site, t: number): Way | undefined {
  const [a, b, c] = exactCorners(site, t);
  const [bx, by, bz] = [b.x.minus(a.x), b.y.minus(a.y), b.z.minus(a.z)];
  const [cx, cy, cz] = [c.x.minus(a.x), c.y.minus(a.y), c.z.minus(a.z)];
  const turn = bx.times(cy).minus(by.times(cx));
  const fall = {
    x: by.times(cz).minus(bz.times(cy)).div(turn),
    y: bz.times(cx).minus(bx.times(cz)).div(turn),
  };
  if (fall.x.abs().plus(fall.y.abs()).lessThan(TRIFLE)) return undefined;
  const off = wayOffWall(site, t)?.way;
  const back = off && fall.x.times(off.x).plus(fall.y.times(off.y)).lessThan(0);
  return back ? undefined : unitWay(fall);
}

const NEARLY = /*#__PURE__*/ new Decimal('1.000001');

/** To the nearest spot where water leaves; between several as near, to their mean. */
function outWay(site: Site, t: number): Way | undefined {
  const { sides, survey } = site;
  const middle = middleOf(exactCorners(site, t));
  const ways: { readonly way: Way; readonly far: Decimal }[] = [];
  sides.outlet.forEach((is, v) => {
    if (!is) return;
    const at = survey.exact(v);
    const way = { x: at.x.minus(middle.x), y: at.y.minus(middle.y) };
    ways.push({ way, far: Decimal.hypot(way.x, way.y) });
  });
  if (ways.length === 0) return undefined;
  const least = Decimal.min(...ways.map(({ far }) => far)).times(NEARLY);
  const near = ways.filter(({ far }) => far.lessThanOrEqualTo(least));
  const sum = (pick: (way: Way) => Decimal): Decimal => near.reduce((s, { way }) => s.plus(pick(way)), ZERO);
  return unitWay({ x: sum((w) => w.x), y: sum((w) => w.y) });
}

/** What every strategy works with. */
interface Ground {
  readonly site: Site;
  /** What must be fallen off a wall within its zone, and what anywhere else. */
  readonly minimum: Decimal;
  readonly beyond: Decimal;
}

const asks = ({ site, beyond }: Ground, t: number, way: Way | undefined): Need[] =>
  way ? [facetNeed(site, t, way, beyond, say`water off ${{ spots: facetSpots(site, t) }}`)] : [];

type WayOf = (site: Site, t: number) => Way | undefined;

const offWall: WayOf = (site, t) => wayOffWall(site, t)?.way;

/** Each spot of a pond, and all below its rim, must lie over the next on the way out. */
function chains({ site, beyond }: Ground, now: Site, ponds: readonly FoundPond[]): Need[] {
  const { toward } = now.terrain.flood;
  const { survey } = site;
  const needs = new Map<number, Need>();
  for (const { spots, spill } of ponds) {
    for (const start of [...spots, spill]) {
      let v = start;
      for (let to = toward[v] as number; to !== -1 && !needs.has(v); to = toward[v] as number) {
        const [first, second] = [survey.name(v), survey.name(to)];
        needs.set(v, downNeed(site, v, to, beyond, say`water from ${{ first }} to ${{ second }}`));
        v = to;
      }
    }
  }
  return [...needs.values()];
}

/** Each valley that is too flat must fall the way that its water gets off. */
const valleyNeeds = ({ site }: Ground, valleys: readonly FlatValley[]): Need[] =>
  valleys.map(({ from, to, least }) => {
    const [first, second] = [from, to].map((v) => site.survey.name(v)) as [string, string];
    return downNeed(site, from, to, least, say`the valley from ${{ first }} to ${{ second }}`);
  });

type Strategy = (ground: Ground, now: Site, faulty: Faulty) => Need[];

const facetsBy =
  (flat: readonly WayOf[], pond: readonly WayOf[]): Strategy =>
  (ground, _, faulty) => {
    const first = (ways: readonly WayOf[], t: number): Way | undefined => {
      for (const way of ways) {
        const found = way(ground.site, t);
        if (found) return found;
      }
      return undefined;
    };
    const { site, minimum } = ground;
    const needed = (t: number): Need[] | Need => {
      // The zone reaches into more facets than have their middle in it.
      const off = faulty.zoned[t] === 1 ? offWallNeed(site, t, minimum) : undefined;
      return off ?? asks(ground, t, first(flat, t));
    };
    return [
      ...faulty.facets.flatMap(needed),
      ...faulty.reaching.flatMap((t) => asks(ground, t, first([offWall, outWay], t))),
      ...faulty.ponds.flatMap(({ facets }) => facets.flatMap((t) => asks(ground, t, first(pond, t)))),
    ];
  };

const STRATEGIES: readonly Strategy[] = [
  facetsBy([ownWay, offWall, outWay], [offWall, outWay]),
  facetsBy([offWall, outWay], [offWall, outWay]),
  facetsBy([outWay, ownWay], [outWay]),
  (ground, now, faulty) => [
    ...facetsBy([ownWay, offWall, outWay], [])(ground, now, faulty),
    ...chains(ground, now, faulty.ponds),
  ],
];

/** Needs by their keys. */
type Needs = Map<string, Need>;

/** What fell away from a wall goes on doing so. */
const OFF_WALL = facetsBy([offWall], []);

/** Where a strategy ended. */
interface Ending {
  readonly strategy: Strategy;
  readonly needs: Needs;
  readonly volume: number;
  /** Whether any of the surface falls back toward a wall that did not before. */
  readonly turned: boolean;
}

/** Facets that fall back toward the nearest wall as moved, and not as they lie: a swale dug across the slab. */
function turnedBack(was: Site, now: Site): number[] {
  const isBack = ({ walls, terrain: { tin } }: Site, t: number): boolean =>
    (awayFall(walls, tin, t) ?? 0) < -NO_FALL;
  const facets = Array.from({ length: now.terrain.tin.facets }, (_, t) => t);
  return facets.filter((t) => isBack(now, t) && !isBack(was, t));
}

/** Add what a strategy makes of the faults of a surface; true where that is anything new. */
function added(
  job: Job,
  { held }: Looker,
  strategy: Strategy,
  now: Site,
  faulty: Faulty,
  needs: Needs,
): boolean {
  const minimum = rate(held.minimum);
  const beyond = job.site.walls.length > 0 ? rate(held.beyond) : minimum;
  const ground = { site: job.site, minimum, beyond };
  const before = needs.size;
  for (const need of [...strategy(ground, now, faulty), ...valleyNeeds(ground, faulty.valleys)]) {
    needs.set(need.key, need);
  }
  return needs.size > before;
}

/** Follow a strategy until the surface is sound, and on until none of it falls back that did not: where each ended. */
function follow(job: Job, looker: Looker, base: readonly Need[], strategy: Strategy): Ending[] {
  const needs = new Map(base.map((need) => [need.key, need]));
  const endings: Ending[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const found = solveRoughly(job, [...needs.values()]);
    if (!found) break;
    const now = looker.site(found.moves);
    const faulty = lookAt(now, looker.held);
    const back = isSound(faulty) ? turnedBack(job.site, now) : undefined;
    if (back && (!back[0] || !endings[0]))
      endings.push({ strategy, needs: new Map(needs), volume: found.volume, turned: back.length > 0 });
    if (back?.length === 0) break;
    const [next, faults] = back ? [OFF_WALL, { ...faulty, facets: back }] : [strategy, faulty];
    if (!added(job, looker, next, now, faults, needs)) break;
  }
  return endings;
}

/** What the search came to. */
export interface Found {
  readonly moves: Moves;
  /** The needs that the moves are least for. */
  readonly needs: readonly Need[];
  /** Whether the surface drains after them. */
  readonly drains: boolean;
}

/** As the verdict of the check: ponds too shallow for it do not count. */
function drains({ site, held }: Looker, moves: Moves): boolean {
  const { facets, reaching, ponds, valleys } = lookAt(site(moves), held);
  const shallow = held.pondDepth.toNumber('m');
  return (
    facets.length + reaching.length + valleys.length === 0 && ponds.every(({ depth }) => depth <= shallow)
  );
}

/** Leaving the forms alone, or leaving no swale across, may take so many times the concrete. */
const WORTH = 2;

const pricedAt = ({ volume, turned }: Ending): number => (turned ? volume * WORTH : volume);

/** The exact moves of an ending: of several that move as little another one may be taken, which has faults of its own. */
function exactly(job: Job, looker: Looker, { strategy, needs }: Ending): Found | undefined {
  for (let round = 0; round < ROUNDS; round += 1) {
    const asked = [...needs.values()];
    const moves = solve(job, asked);
    if (!moves) return undefined;
    if (drains(looker, moves)) return { moves, needs: asked, drains: true };
    const now = looker.site(moves);
    if (!added(job, looker, strategy, now, lookAt(now, looker.held), needs)) return undefined;
  }
  return undefined;
}

/** Seek with the spots of one job. */
function seekWith(job: Job, looker: Looker, base: readonly Need[], all: boolean): Found | undefined {
  const plain = solve(job, base);
  if (!plain) return undefined;
  if (drains(looker, plain)) return { moves: plain, needs: base, drains: true };
  const endings = all ? STRATEGIES.flatMap((strategy) => follow(job, looker, base, strategy)) : [];
  for (const ending of endings.sort((a, b) => pricedAt(a) - pricedAt(b))) {
    const found = exactly(job, looker, ending);
    if (found) return found;
  }
  return { moves: plain, needs: base, drains: false };
}

const volumeOf = ({ shares }: Job, moves: Moves): Decimal =>
  [...moves].reduce((sum, [v, move]) => sum.plus((shares[v] as Decimal).times(move.abs())), ZERO);

/** True when the check finds nothing at fault as it is, and no valley is too flat. */
const isRight = (looker: Looker): boolean =>
  looker.check(new Map()).figures.verdict === 'drains' &&
  flatValleys(looker.site(new Map()), looker.held).length === 0;

/** Strays of 60 digits, in meters. */
const STRAY = /*#__PURE__*/ new Decimal('1e-30');

/** How to seek. */
export interface Seeking {
  readonly job: Job;
  readonly looker: Looker;
  /** Needs known beforehand. */
  readonly base: readonly Need[];
  /** Whether all of the surface must drain, not only what is asked. */
  readonly whole: boolean;
  /** Spots at forms that are set to grade: left alone where that is worth it. */
  readonly forms: ReadonlySet<number>;
}

/**
 * Seek the least correction after which the surface drains; where none is found, the least that meets
 * what is asked, and `undefined` where nothing does. Forms that are set stay where what lies between
 * them can be put right with no more than twice the concrete.
 */
export function seek({ job, looker, base, whole, forms }: Seeking): Found | undefined {
  // What falls back within the zone may be caught before the wall: the check knows, the needs do not.
  const asked = base.filter(({ zone }) => !zone);
  const met = asked.every((need) => !lackOf(job, need).greaterThan(STRAY));
  if (whole && met && isRight(looker)) return { moves: new Map(), needs: asked, drains: true };
  const inner = job.movable.filter((v) => !forms.has(v));
  const within =
    inner.length < job.movable.length ? seekWith({ ...job, movable: inner }, looker, base, whole) : undefined;
  if (within?.drains && within.moves.size === 0) return within;
  const found = seekWith(job, looker, base, whole);
  if (!within?.drains || !found) return found;
  const most = volumeOf(job, found.moves).times(WORTH);
  return !found.drains || volumeOf(job, within.moves).lessThanOrEqualTo(most) ? within : found;
}

/** The outside spots of a surface: those that lie at the forms. */
export function spotsAtForms({ terrain: { tin } }: Site): ReadonlySet<number> {
  const outside = new Set<number>();
  for (let e = 0; e < tin.corner.length; e += 1) {
    if (tin.twin[e] !== -1) continue;
    outside.add(tin.corner[e] as number).add(tin.corner[nextEdge(e)] as number);
  }
  return outside;
}
