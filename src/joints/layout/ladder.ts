/**
 * Cuts across a strip: from one long side to the other, or around an opening from its edge to the outside.
 *
 * A ladder has two chains of sides that run the same way, and rungs from one to the other. Some rungs must
 * be: one at each inside corner, square to each side where the strip bends by more than 60 degrees and
 * in the bisector where it bends less. Between those the rungs are spaced evenly along the center line
 * and square to it; along concentric arcs they are radial. Where the strip is wider than the spacing, lines
 * along it divide every rung evenly.
 *
 * The spacing is measured straight along the center line of a strip, with its longer edge at most a quarter
 * over; around an opening along the longer edge. All numbers of panels between two rungs that must be
 * are looked at.
 */
import { leastWidth } from './as-cut';
import type { Chain } from './chain';
import type { Spot } from './orthogonal';
import { EDGE_OVER } from './round-plan';
import { brokenWedge, HAIR, type Limits, type PanelRule, SHARP } from './rules';
import { KINK, turnBetween } from './sides';

/** The two chains. An inside corner turns away from the strip. */
export interface Rails {
  readonly a: Chain;
  readonly b: Chain;
  /** All the way around an opening, which is chain a. */
  readonly closed: boolean;
  /** 1 where the strip lies to the left of chain a, else -1; of b it is the other way. */
  readonly left: 1 | -1;
  readonly work: Work;
}

/** How many panels may be looked at: a walk of the most joints, or a large pool, takes half of it. */
const MOST_LOOKED = 40_000;

/** How many cuts may be placed in all, and between two that must be. */
const MOST_PLACED = 130_000;
const MOST_BETWEEN = 60_000;

/** After this many numbers of panels that do not fit, large ones grow by a 64th at a time. */
const EACH = 32;

/** The work done on a strip or a deck, counted in panels looked at and in cuts placed. */
export class Work {
  private done = 0;
  private placed = 0;
  private ownLeft = false;

  /** Some panels were not looked at: there may be a shorter plan. */
  get spent(): boolean {
    return this.ownLeft || this.done > MOST_LOOKED;
  }

  /** How far on the next number of panels is, after so many that do not fit. */
  onFrom(panels: number, failed: number): number {
    if (failed < EACH) return 1;
    const on = 1 + Math.floor(panels / 64);
    if (on > 1) this.ownLeft = true;
    return on;
  }

  /** True while there is work left to place cuts, `between` of them so far between the same two. */
  place(cuts: number, between: number): boolean {
    this.placed += cuts;
    const more = this.placed <= MOST_PLACED && between <= MOST_BETWEEN;
    if (!more) this.ownLeft = true;
    return more;
  }

  /** True while there is work left. */
  take(panels: number): boolean {
    this.done += panels;
    return this.done <= MOST_LOOKED;
  }
}

/** A cut, by the length along each chain; around an opening lengths go on past the beginning. */
export interface Rung {
  readonly a: number;
  readonly b: number;
}

/** A finished ladder. */
export interface Ladder {
  readonly rails: Rails;
  /** From end to end; around an opening the first comes again as the last. */
  readonly rungs: readonly Rung[];
  /** Panels side by side along each rung. */
  readonly bands: number;
  readonly cost: number;
  /** Rules broken by the panels between two neighboring rungs, band by band. */
  readonly broken: readonly (readonly (readonly PanelRule[])[])[];
}

const RADIANS = Math.PI / 180;

const minus = (p: Spot, q: Spot): Spot => ({ x: p.x - q.x, y: p.y - q.y });
const long = (p: Spot): number => Math.hypot(p.x, p.y);
const apart = (p: Spot, q: Spot): number => long(minus(p, q));
const middle = (p: Spot, q: Spot): Spot => ({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 });

const partWay = (p: Spot, q: Spot, part: number): Spot => ({
  x: p.x + (q.x - p.x) * part,
  y: p.y + (q.y - p.y) * part,
});

/** The angle between two ways, from 0 to half a turn. */
const angleBetween = (u: Spot, v: Spot): number =>
  Math.abs(Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y));

/** A joint between two sides of a chain. */
interface Knee {
  readonly s: number;
  readonly at: Spot;
  /** Degrees that the chain turns away from the strip: an inside corner where it is more than a kink. */
  readonly away: number;
  /** Square to the side before, to the side after, and between: into the strip. */
  readonly square: readonly [Spot, Spot];
  readonly inwards: Spot;
}

const squareTo = (way: Spot, left: number): Spot => ({ x: -way.y * left, y: way.x * left });

function knees(chain: Chain, left: number): Knee[] {
  const { pieces, starts, closed } = chain;
  return pieces.flatMap((after, i): Knee[] => {
    if (i === 0 && !closed) return [];
    const before = pieces[(i + pieces.length - 1) % pieces.length] as typeof after;
    const s = starts[i] as number;
    const turn = turnBetween(before, after);
    const [u, v] = [chain.way(s - 1e-9 * chain.length), chain.way(s + 1e-9 * chain.length)];
    const sum = { x: u.x + v.x, y: u.y + v.y };
    const size = long(sum) || 1;
    const inwards = squareTo({ x: sum.x / size, y: sum.y / size }, left);
    return [{ s, at: after.a, away: -turn * left, square: [squareTo(u, left), squareTo(v, left)], inwards }];
  });
}

const isInside = (knee: Knee): boolean => knee.away > KINK + 1e-9;

/** Knees that lie this far off the bisector are still met by a cut along it. */
const MITRE = 25 * RADIANS;

/** A bend of more than this is cut square to both of its sides. */
const SHARP_BEND = 60;

/** Where the cuts from an inside corner end on the other chain. */
function ends(knee: Knee, other: Chain, corners: readonly Knee[], closed: boolean): number[] {
  const ray = (d: Spot): number | undefined => other.hit(knee.at, d)?.s;
  const along = other.hit(knee.at, knee.inwards);
  if (!along) return [];
  if (!closed && knee.away > SHARP_BEND + 1e-9) return knee.square.flatMap((d) => ray(d) ?? []);
  const near = corners
    .filter(({ at }) => apart(at, knee.at) <= 1.6 * along.far)
    .filter(({ at }) => angleBetween(minus(at, knee.at), knee.inwards) <= MITRE)
    .sort((p, q) => apart(p.at, knee.at) - apart(q.at, knee.at));
  // Another inside corner before one that sticks out: one cut meets both.
  const best = near.find(isInside) ?? near.find(({ away }) => away < -KINK && away > -SHARP_BEND - 1e-9);
  if (best) return [best.s];
  const foot = other.nearest(knee.at);
  const toward = minus(other.at(foot.s), knee.at);
  const cone = (knee.away / 2) * RADIANS;
  return [angleBetween(toward, knee.inwards) <= cone ? foot.s : along.s];
}

/** The cuts that must be, in no order. */
function mustRungs({ a, b, closed, left }: Rails): Rung[] {
  const [ka, kb] = [knees(a, left), knees(b, -left)];
  const fromA = ka.filter(isInside).flatMap((k) => ends(k, b, kb, closed).map((s) => ({ a: k.s, b: s })));
  const fromB = kb.filter(isInside).flatMap((k) => ends(k, a, ka, closed).map((s) => ({ a: s, b: k.s })));
  return [...fromA, ...fromB];
}

/** Where the chains have other knees: matched places that the center line passes between. */
function softRungs({ a, b, left }: Rails): Rung[] {
  const fromA = knees(a, left).map(({ s, at }) => ({ a: s, b: b.nearest(at).s }));
  const fromB = knees(b, -left).map(({ s, at }) => ({ a: a.nearest(at).s, b: s }));
  return [...fromA, ...fromB];
}

const ahead = (s: number, from: number, around: number): number => {
  const past = (((s - from) % around) + around) % around;
  // A hair short of the beginning is the beginning.
  return past > around - 1e-7 ? 0 : past;
};

/** Lengths counted on from a first rung, so that they grow. */
function countedFrom(first: Rung, rung: Rung, { a, b, closed }: Rails): Rung {
  if (!closed) return rung;
  return { a: first.a + ahead(rung.a, first.a, a.length), b: first.b + ahead(rung.b, first.b, b.length) };
}

const SAME = 1e-6;

/** Rungs in order, each once; `undefined` where two cross. */
function inOrder(rungs: readonly Rung[]): Rung[] | undefined {
  const sorted = [...rungs].sort((p, q) => p.a + p.b - q.a - q.b);
  const once = sorted.filter((r, i) => {
    const before = sorted[i - 1];
    return !before || r.a - before.a > SAME || r.b - before.b > SAME;
  });
  const crossed = once.some((r, i) => {
    const before = once[i - 1];
    return before !== undefined && (r.a < before.a - SAME || r.b < before.b - SAME);
  });
  return crossed ? undefined : once;
}

/** Between two rungs that must be, with the matched places between them. */
type Section = readonly Rung[];

function sections(rails: Rails, hard: readonly Rung[]): Section[] {
  const first = hard[0] as Rung;
  const soft = softRungs(rails)
    .map((r) => countedFrom(first, r, rails))
    .sort((p, q) => p.a + p.b - q.a - q.b);
  return hard.slice(1).map((end, i) => {
    const knots = [hard[i] as Rung];
    for (const r of soft) {
      const last = knots.at(-1) as Rung;
      const after = r.a > last.a + SAME && r.b > last.b + SAME;
      if (after && r.a < end.a - SAME && r.b < end.b - SAME) knots.push(r);
    }
    return [...knots, end];
  });
}

const spans = (section: Section): number[] =>
  section.slice(1).map((r, i) => (r.a - (section[i] as Rung).a + r.b - (section[i] as Rung).b) / 2);

/** The same place counted on to be near another. */
const near = (s: number, to: number, chain: Chain): number =>
  chain.closed ? s + Math.round((to - s) / chain.length) * chain.length : s;

/** The rung square to the center line where both sides are straight. */
function squareRung({ a, b }: Rails, even: Rung): Rung {
  const [p, q] = [a.at(even.a), b.at(even.b)];
  const [u, v] = [a.way(even.a), b.way(even.b)];
  const sum = { x: u.x + v.x, y: u.y + v.y };
  const size = long(sum);
  if (size < 0.1) return even;
  const across = { x: -sum.y / size, y: sum.x / size };
  const m = middle(p, q);
  const [onA, onB] = [a.hit(m, across, true), b.hit(m, across, true)];
  if (!onA || !onB) return even;
  return { a: near(onA.s, even.a, a), b: near(onB.s, even.b, b) };
}

function rungAt(
  rails: Rails,
  section: Section,
  lengths: readonly number[],
  u: number,
  squared: boolean,
): Rung {
  let [k, left] = [0, u];
  while (k < lengths.length - 1 && left > (lengths[k] as number)) {
    left -= lengths[k] as number;
    k += 1;
  }
  const [from, to] = [section[k] as Rung, section[k + 1] as Rung];
  const part = (lengths[k] as number) > 0 ? left / (lengths[k] as number) : 0;
  const even = { a: from.a + (to.a - from.a) * part, b: from.b + (to.b - from.b) * part };
  const bent = rails.a.pieceAt(even.a).bow || rails.b.pieceAt(even.b).bow;
  if (bent || !squared) return even;
  const square = squareRung(rails, even);
  const [first, last] = [section[0] as Rung, section.at(-1) as Rung];
  const within = square.a >= first.a && square.a <= last.a && square.b >= first.b && square.b <= last.b;
  return within ? square : even;
}

/** The farthest that two places on a run of a chain are apart: at its ends and knees. */
function extent(chain: Chain, from: number, to: number): number {
  const spots = [chain.at(from), chain.at(to)];
  for (const start of chain.starts) {
    const s = near(start, (from + to) / 2, chain);
    if (s > from + SAME && s < to - SAME) spots.push(chain.at(s));
  }
  let most = 0;
  for (const p of spots) for (const q of spots) most = Math.max(most, apart(p, q));
  return most;
}

/** How sharp a rung meets a chain on the side before it (-1) or after it (1). */
function sharpAt(chain: Chain, s: number, toward: Spot, side: 1 | -1): boolean {
  const way = chain.way(s + side * 1e-9 * chain.length);
  return angleBetween({ x: way.x * side, y: way.y * side }, toward) < SHARP - 1e-6;
}

function sharp({ a, b }: Rails, rung: Rung, side: 1 | -1): boolean {
  const [p, q] = [a.at(rung.a), b.at(rung.b)];
  return sharpAt(a, rung.a, minus(q, p), side) || sharpAt(b, rung.b, minus(p, q), side);
}

/** What the panels between two neighboring rungs break, band by band; `undefined` where they are too large. */
function judged(
  rails: Rails,
  [r, t]: readonly [Rung, Rung],
  bands: number,
  limits: Limits,
  cut: readonly [boolean, boolean],
): PanelRule[][] | undefined {
  const { a, b, closed } = rails;
  if (!rails.work.take(bands)) return undefined;
  const [p, q, u, v] = [a.at(r.a), b.at(r.b), a.at(t.a), b.at(t.b)];
  const [w0, w1] = [apart(p, q) / bands, apart(u, v) / bands];
  if (Math.max(w0, w1) > limits.spacing + HAIR) return undefined;
  const [onA, onB] = [extent(a, r.a, t.a), extent(b, r.b, t.b)];
  const most = closed ? limits.spacing : EDGE_OVER * limits.spacing;
  if (Math.max(onA, onB) > most + HAIR) return undefined;
  const blunt = !((cut[0] && sharp(rails, r, 1)) || (cut[1] && sharp(rails, t, -1)));
  const list = Array.from({ length: bands }, (_, j): PanelRule[] | undefined => {
    const at = (part: number): [Spot, Spot] => [partWay(p, q, part / bands), partWay(u, v, part / bands)];
    const along = apart(...at(j + 0.5));
    if (along > limits.spacing + HAIR) return undefined;
    const [near, far] = [at(j), at(j + 1)];
    const chords = [j === 0 ? onA : apart(...near), j === bands - 1 ? onB : apart(...far)] as const;
    const widest = closed ? Math.max(...chords) : along;
    const broken = bandBroken([near, far], (w0 + w1) / 2, along, widest, limits);
    return blunt ? broken : [...broken, 'sharp corner'];
  });
  return list.every((rules) => rules !== undefined) ? list : undefined;
}

/** What a panel breaks that lies between two chords. */
function bandBroken(
  [near, far]: readonly [readonly [Spot, Spot], readonly [Spot, Spot]],
  deep: number,
  along: number,
  widest: number,
  limits: Limits,
): PanelRule[] {
  const mean = (apart(...near) + apart(...far)) / 2;
  const broken = brokenWedge(deep, Math.max(mean, along), widest, limits);
  const narrow = leastWidth([near[0], near[1], far[1], far[0]]) < limits.leastSide - HAIR;
  return narrow && !broken.includes('sliver') ? ['sliver', ...broken] : broken;
}

/** Numbers of panels looked at between two rungs beyond the fewest. */
const MORE = 6;

interface Filled {
  readonly rungs: readonly Rung[];
  readonly broken: readonly PanelRule[][][];
  readonly cost: number;
}

/** Which ends of the strip are edges and no cuts. */
interface Ends {
  readonly first: boolean;
  readonly last: boolean;
}

const rungLength = ({ a, b }: Rails, r: Rung): number => apart(a.at(r.a), b.at(r.b));

/** Rungs spread over a section: square to the center line, or evenly along both chains where those cross. */
function spread(rails: Rails, section: Section, n: number): Rung[] {
  const lengths = spans(section);
  const whole = lengths.reduce((sum, l) => sum + l, 0);
  const made = (square: boolean): Rung[] => [
    section[0] as Rung,
    ...Array.from({ length: n - 1 }, (_, k) =>
      rungAt(rails, section, lengths, (whole * (k + 1)) / n, square),
    ),
    section.at(-1) as Rung,
  ];
  const rungs = made(true);
  const crossed = rungs.slice(1).some((r, i) => r.a < (rungs[i] as Rung).a || r.b < (rungs[i] as Rung).b);
  return crossed ? made(false) : rungs;
}

function filledWith(
  rails: Rails,
  section: Section,
  n: number,
  bands: number,
  limits: Limits,
  edge: Ends,
): Filled | undefined {
  const rungs = spread(rails, section, n);
  const broken: PanelRule[][][] = [];
  for (let k = 0; k < n; k += 1) {
    const cut = [!(edge.first && k === 0), !(edge.last && k === n - 1)] as const;
    const rules = judged(rails, [rungs[k] as Rung, rungs[k + 1] as Rung], bands, limits, cut);
    if (!rules) return undefined;
    broken.push(rules);
  }
  const rules = broken.flat(2).length;
  const sawn = rungs.slice(1, -1).reduce((sum, r) => sum + rungLength(rails, r), 0);
  return { rungs, broken, cost: sawn + rules * limits.weight };
}

/**
 * The best number of panels between two rungs that must be. All numbers are
 * tried; only after many that do not fit some are left out.
 */
function filled(
  rails: Rails,
  section: Section,
  bands: number,
  limits: Limits,
  edge: Ends,
): Filled | undefined {
  const [first, last] = [section[0] as Rung, section.at(-1) as Rung];
  // The panel in the corner of a bend is not divided.
  if (last.a - first.a < SAME || last.b - first.b < SAME)
    return filledWith(rails, section, 1, bands, limits, edge);
  const whole = spans(section).reduce((sum, l) => sum + l, 0);
  const fewest = Math.max(1, Math.floor(whole / limits.spacing - 0.01));
  let best: Filled | undefined;
  let [found, placed] = [0, 0];
  for (
    let n = fewest;
    found < MORE && n < fewest * 4 + 12;
    n += rails.work.onFrom(n, found > 0 ? 0 : n - fewest)
  ) {
    // Placing the cuts takes work as well, also where they come to nothing.
    placed += n;
    if (!rails.work.place(n, placed)) break;
    const made = filledWith(rails, section, n, bands, limits, edge);
    if (!made) continue;
    found += 1;
    if (!best || made.cost < best.cost - HAIR) best = made;
    if (made.broken.flat(2).length === 0) break;
  }
  return best;
}

function withBands(rails: Rails, all: readonly Section[], bands: number, limits: Limits): Ladder | undefined {
  const rungs: Rung[] = [(all[0] as Section)[0] as Rung];
  const broken: PanelRule[][][] = [];
  let cost = 0;
  for (const [i, section] of all.entries()) {
    const edge = { first: !rails.closed && i === 0, last: !rails.closed && i === all.length - 1 };
    const made = filled(rails, section, bands, limits, edge);
    if (!made) return undefined;
    cost += made.cost + (edge.last ? 0 : rungLength(rails, made.rungs.at(-1) as Rung));
    rungs.push(...made.rungs.slice(1));
    broken.push(...made.broken);
  }
  const along = rungs.slice(1).reduce((sum, t, i) => {
    const [p, q] = [rungs[i] as Rung, t];
    return sum + apart(middleOf(rails, p), middleOf(rails, q));
  }, 0);
  return { rails, rungs, bands, broken, cost: cost + (bands - 1) * along };
}

const middleOf = ({ a, b }: Rails, r: Rung): Spot => middle(a.at(r.a), b.at(r.b));

/** True where a rung runs through anything but the strip. */
function blocked({ a, b }: Rails, r: Rung): boolean {
  const [p, q] = [a.at(r.a), b.at(r.b)];
  const size = apart(p, q);
  if (size < SAME) return true;
  const way = { x: (q.x - p.x) / size, y: (q.y - p.y) / size };
  const from = { x: p.x + way.x * SAME, y: p.y + way.y * SAME };
  return [a, b].some((chain) => {
    const hit = chain.hit(from, way);
    return hit !== undefined && hit.far < size - 3 * SAME;
  });
}

/** Bands beyond the fewest that are looked at. */
const MORE_BANDS = 1;

/**
 * The best ladder between two chains.
 *
 * @param seeds - cuts that must be besides those at inside corners; around an opening there must be a cut
 */
export function ladderOf(rails: Rails, limits: Limits, seeds: readonly Rung[] = []): Ladder | undefined {
  const must = [...mustRungs(rails), ...seeds];
  const ends: Rung[] = rails.closed
    ? []
    : [
        { a: 0, b: 0 },
        { a: rails.a.length, b: rails.b.length },
      ];
  const [first] = rails.closed ? must : ends;
  if (!first || must.some((r) => blocked(rails, r))) return undefined;
  const counted = must.map((r) => countedFrom(first, r, rails));
  const around = { a: first.a + rails.a.length, b: first.b + rails.b.length };
  const hard = inOrder(rails.closed ? [...counted, around] : [...ends, ...counted]);
  if (!hard || hard.length < 2) return undefined;
  const all = sections(rails, hard);
  const widest = Math.max(...hard.map((r) => rungLength(rails, r)));
  const fewest = Math.max(1, Math.ceil(widest / limits.spacing - HAIR));
  let best: Ladder | undefined;
  for (let bands = fewest; bands <= fewest + MORE_BANDS; bands += 1) {
    const made = withBands(rails, all, bands, limits);
    if (made && (!best || made.cost < best.cost - HAIR)) best = made;
  }
  return best?.rungs.slice(1, -1).some((r) => blocked(rails, r)) ? undefined : best;
}
