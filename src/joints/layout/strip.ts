/**
 * Slabs that are cut across: strips of any shape, and decks around one opening.
 *
 * A strip has two straight ends, and two long sides that stay about as far apart; a deck has one opening
 * with corners, or a round one, and nothing else in it. What is found as a ladder in binary numbers is laid
 * out in exact decimals, arcs as arcs.
 */
import { type Corner, doubleArea } from '../../geometry/polygon';
import { Decimal, ZERO } from '../../quantity/decimal';
import { withinLimit } from '../../reckoning/limits';
import { Chain } from './chain';
import { partWay } from './fan-plan';
import { type Ladder, ladderOf, type Rails, type Rung, Work } from './ladder';
import { PANELS } from './most';
import type { Spot } from './orthogonal';
import type { Along, Laid, LaidJoint, LaidPanel } from './plan';
import type { Limits, PanelRule } from './rules';
import { KINK, type Piece, pieceOf, reversed, turnBetween } from './sides';
import type { Site } from './site';
import { directionAt } from './unit-circle';

const MOST_ENDS = 12;
const MOST_PIECES = 240;
const SAMPLES = 12;

/** How a strip may look: how far its ends and its width may differ from its mean width. */
const WIDTHS = { least: 0.6, most: 1.7 };
/** Shorter pieces of slab are as good as square. */
const LEAST_LENGTH = 1.2;

/** Corners at the end of a strip turn by about a right angle. */
const square = (turn: number): boolean => turn > 45 && turn < 135;

function endSides(pieces: readonly Piece[]): number[] {
  const n = pieces.length;
  return pieces.flatMap((piece, i) => {
    const [before, after] = [pieces[(i + n - 1) % n] as Piece, pieces[(i + 1) % n] as Piece];
    const end = !piece.bow && square(turnBetween(before, piece)) && square(turnBetween(piece, after));
    return end ? [i] : [];
  });
}

function widthsBetween(a: Chain, b: Chain): number[] {
  return Array.from({ length: SAMPLES + 1 }, (_, k) => {
    const part = k / SAMPLES;
    return [b.nearest(a.at(a.length * part)).far, a.nearest(b.at(b.length * part)).far];
  }).flat();
}

interface Strip {
  readonly rails: Rails;
  /** How many times as long as wide. */
  readonly slim: number;
  /** The same strip from its other end. */
  readonly back?: () => Rails | undefined;
}

/** The strip between two ends, if it is one. */
function stripBetween(pieces: readonly Piece[], i: number, j: number): Strip | undefined {
  const n = pieces.length;
  const run = (from: number, to: number): Piece[] =>
    Array.from({ length: (to - from - 1 + n) % n }, (_, k) => pieces[(from + 1 + k) % n] as Piece);
  const [first, second] = [run(i, j), run(j, i)];
  if (first.length === 0 || second.length === 0) return undefined;
  const a = new Chain(first);
  const b = new Chain(second.reverse().map(({ side }) => pieceOf(reversed(side))));
  const widths = widthsBetween(a, b);
  const mean = widths.reduce((sum, w) => sum + w, 0) / widths.length;
  const all = [...widths, (pieces[i] as Piece).length, (pieces[j] as Piece).length];
  const even = all.every((w) => w >= WIDTHS.least * mean && w <= WIDTHS.most * mean);
  const slim = (a.length + b.length) / 2 / mean;
  return even && slim >= LEAST_LENGTH
    ? { rails: { a, b, closed: false, left: 1, work: new Work() }, slim }
    : undefined;
}

/** The outline as a strip, the longest for its width where it is one in several ways. */
function stripOf(site: Site): Strip | undefined {
  if (site.openings.length > 0 || site.sides.length > MOST_PIECES) return undefined;
  const pieces = site.sides.map(pieceOf);
  const ends = endSides(pieces);
  if (ends.length > MOST_ENDS) return undefined;
  let best: Strip | undefined;
  ends.forEach((i, k) => {
    for (const j of ends.slice(k + 1)) {
      const strip = stripBetween(pieces, i, j);
      if (!strip || (best && strip.slim <= best.slim + 1e-9)) continue;
      best = { ...strip, back: () => stripBetween(pieces, j, i)?.rails };
    }
  });
  return best;
}

/** The better of both ways along a strip: from which end it is divided means nothing. */
function bothWays({ rails, back }: Strip, limits: Limits): Ladder | undefined {
  const there = ladderOf(rails, limits);
  const other = back?.();
  const again = other && ladderOf(other, limits);
  return there && again ? (again.cost < there.cost - 1e-6 ? again : there) : (there ?? again);
}

/** The deck around the one opening of a slab. */
function deckOf(site: Site): Rails | undefined {
  const [opening, ...others] = site.openings;
  if (!opening || others.length > 0 || opening.bothWays) return undefined;
  if (site.sides.length + opening.sides.length > MOST_PIECES) return undefined;
  const a = new Chain(opening.sides.map(pieceOf), true);
  const b = new Chain(site.sides.map(pieceOf), true);
  return { a, b, closed: true, left: -1, work: new Work() };
}

/** Numbers of cuts around a round opening beyond the fewest that are looked at, and ways to turn them. */
const MORE_CUTS = 6;
const TURNS = 4;

/** Cuts from the middle of a round opening outwards, evenly turned. */
function spokesAround({ a, b }: Rails, center: Spot, count: number, turn: number): Rung[] | undefined {
  const rungs = Array.from({ length: count }, (_, k): Rung | undefined => {
    const angle = (2 * Math.PI * (k + turn)) / count;
    const way = { x: Math.cos(angle), y: Math.sin(angle) };
    const [from, to] = [a.hit(center, way), b.hit(center, way)];
    return from && to ? { a: from.s, b: to.s } : undefined;
  });
  return rungs.every((r) => r !== undefined) ? (rungs as Rung[]) : undefined;
}

/** Cuts around an opening without corners: every number and turn of even ones. */
function aroundRound(site: Site, rails: Rails, limits: Limits): Ladder | undefined {
  const { x, y } = (site.openings[0] as Site['openings'][number]).center;
  const center = { x: x.toNumber(), y: y.toNumber() };
  let best: Ladder | undefined;
  const fewest = Math.max(3, Math.floor(rails.a.length / limits.spacing));
  for (let n = fewest; n <= fewest + MORE_CUTS; n += 1) {
    for (let turn = 0; turn < TURNS; turn += 1) {
      const seeds = spokesAround(rails, center, n, turn / TURNS);
      const made = seeds && ladderOf(rails, limits, seeds);
      if (made && (!best || made.cost < best.cost - 1e-6)) best = made;
    }
  }
  return best;
}

/** A run of an edge: its corners, and what its arcs have beyond their chords. */
interface Path {
  readonly corners: Corner[];
  /** Twice the area between arcs and chords, to the left of the run taken off. */
  readonly bows: Decimal;
}

const bowArea = (radius: Decimal, turn: Decimal): Decimal =>
  radius.times(radius).times(turn.minus(directionAt(turn).y));

/** The run of a chain from one place to a later one. */
function pathAlong(chain: Chain, from: number, to: number): Path {
  const stops = [from];
  const knees = chain.closed
    ? chain.starts.slice(0, -1).flatMap((s) => [s, s + chain.length, s + 2 * chain.length])
    : chain.starts;
  for (const s of [...knees].sort((p, q) => p - q)) if (s > from + 1e-9 && s < to - 1e-9) stops.push(s);
  stops.push(to);
  let bows = ZERO;
  for (let k = 0; k + 1 < stops.length; k += 1) {
    const [s, t] = [stops[k] as number, stops[k + 1] as number];
    const { side, length } = chain.pieceAt((s + t) / 2);
    if (!side.bow || t - s < 1e-12) continue;
    const turn = side.bow.turn.times(new Decimal((t - s) / length));
    bows = bows.plus(bowArea(side.bow.radius, turn));
  }
  return { corners: stops.map((s) => chain.exact(s)), bows };
}

/** The arc that a line along the strip follows between two rungs. */
interface BandArc {
  readonly center: Corner;
  readonly radius: Decimal;
  /** Counterclockwise if positive. */
  readonly turn: Decimal;
}

class Drawn {
  private readonly a: readonly Corner[];
  private readonly b: readonly Corner[];
  private readonly edges = new Map<string, Path>();
  private readonly ownAcross: Decimal[] = [];

  constructor(readonly ladder: Ladder) {
    const { rails, rungs } = ladder;
    this.a = rungs.map((r) => rails.a.exact(r.a));
    this.b = rungs.map((r) => rails.b.exact(r.b));
  }

  /** The place on a rung so many bands from chain a. */
  at(rung: number, band: number): Corner {
    return partWay(this.a[rung] as Corner, this.b[rung] as Corner, band, this.ladder.bands);
  }

  /** The length of a rung from one band to the next. */
  across(rung: number): Decimal {
    const known = this.ownAcross[rung];
    if (known) return known;
    const whole = distance(this.a[rung] as Corner, this.b[rung] as Corner);
    const across = whole.div(this.ladder.bands).toDecimalPlaces(DIGITS);
    this.ownAcross[rung] = across;
    return across;
  }

  /** Concentric arcs on both sides between a rung and the next. */
  arc(rung: number, band: number): BandArc | undefined {
    const { rails, rungs, bands } = this.ladder;
    const [r, t] = [rungs[rung] as Rung, rungs[rung + 1] as Rung];
    const [p, q] = [rails.a.pieceAt((r.a + t.a) / 2), rails.b.pieceAt((r.b + t.b) / 2)];
    const [bow, other] = [p.side.bow, q.side.bow];
    if (!bow || !other || !p.bow || !q.bow) return undefined;
    const off = Math.hypot(p.bow.c.x - q.bow.c.x, p.bow.c.y - q.bow.c.y);
    const whole = [r, t].every((s) => onPiece(rails.a, p, s.a) && onPiece(rails.b, q, s.b));
    if (off > 1e-9 || !whole) return undefined;
    const radius = bow.radius.plus(other.radius.minus(bow.radius).times(band).div(bands));
    return { center: bow.center, radius, turn: bow.turn.times(new Decimal((t.a - r.a) / p.length)) };
  }

  /** One side of a panel, from a rung to the next; two panels share it. */
  edge(rung: number, band: number): Path {
    const key = `${rung} ${band}`;
    const path = this.edges.get(key) ?? this.ownEdge(rung, band);
    this.edges.set(key, path);
    return path;
  }

  private ownEdge(rung: number, band: number): Path {
    const { rails, rungs, bands } = this.ladder;
    const [r, t] = [rungs[rung] as Rung, rungs[rung + 1] as Rung];
    if (band === 0) return pathAlong(rails.a, r.a, t.a);
    if (band === bands) return pathAlong(rails.b, r.b, t.b);
    const arc = this.arc(rung, band);
    return {
      corners: [this.at(rung, band), this.at(rung + 1, band)],
      bows: arc ? bowArea(arc.radius, arc.turn) : ZERO,
    };
  }
}

/** True where a place is on a piece, its ends included. */
function onPiece(chain: Chain, piece: Piece, s: number): boolean {
  const small = 1e-7;
  return chain.pieceAt(s + small) === piece || chain.pieceAt(s - small) === piece;
}

/** Twice the area of a panel. */
function doublePanel(near: Path, far: Path): Decimal {
  const ring = [...near.corners, ...[...far.corners].reverse()];
  return doubleArea(ring).plus(near.bows).minus(far.bows).abs();
}

/** Lengths to this many digits after the point, in meters: what rounding leaves beyond them is no length. */
const DIGITS = 24;

const distance = (a: Corner, b: Corner): Decimal =>
  Decimal.hypot(b.x.minus(a.x), b.y.minus(a.y)).toDecimalPlaces(DIGITS);

function panelAt(drawn: Drawn, k: number, j: number, broken: readonly PanelRule[]): LaidPanel {
  const { rails, rungs } = drawn.ladder;
  const [near, far] = [drawn.edge(k, j), drawn.edge(k, j + 1)];
  const [p, q, u, v] = [drawn.at(k, j), drawn.at(k, j + 1), drawn.at(k + 1, j), drawn.at(k + 1, j + 1)];
  const across = drawn
    .across(k)
    .plus(drawn.across(k + 1))
    .div(2);
  const along = distance(partWay(p, q, 1, 2), partWay(u, v, 1, 2));
  const [r, t] = [rungs[k] as Rung, rungs[k + 1] as Rung];
  const half = [rails.a.exact((r.a + t.a) / 2), rails.b.exact((r.b + t.b) / 2)] as const;
  const at = partWay(half[0], half[1], 2 * j + 1, 2 * drawn.ladder.bands);
  return { at, along, across, area: doublePanel(near, far).div(2), broken };
}

const straight = (from: Corner, to: Corner, family: string, place: number): LaidJoint => ({
  type: 'contraction',
  shape: 'straight',
  from,
  to,
  length: distance(from, to),
  run: `${family}${place}`,
  family,
  place: new Decimal(place),
});

/** A line along the strip between two rungs. */
function bandJoint(drawn: Drawn, k: number, j: number): LaidJoint {
  const [from, to] = [drawn.at(k, j), drawn.at(k + 1, j)];
  const joint = straight(from, to, 'circle', j);
  const arc = drawn.arc(k, j);
  if (!arc) return joint;
  const ends = arc.turn.isNegative() ? { from: to, to: from } : { from, to };
  return { ...joint, ...ends, shape: 'arc', center: arc.center, length: arc.radius.times(arc.turn.abs()) };
}

/** Each corner of an opening needs a cut of its own, no shorter than from there to the outside. */
function cornersApart({ a, b }: Rails): number {
  return a.pieces.reduce((sum, piece, i) => {
    const before = a.pieces[(i + a.pieces.length - 1) % a.pieces.length] as Piece;
    return Math.abs(turnBetween(before, piece)) > KINK + 1e-6 ? sum + b.nearest(piece.a).far : sum;
  }, 0);
}

/** Places on the edges are looked for in binary numbers, and told to 0.1 mm. */
const ON_EDGE = 4;

/** The strip lies to the left of chain a. */
const alongOf = ({ a, b }: Rung): Along => ({
  left: new Decimal(b.toFixed(ON_EDGE)),
  right: new Decimal(a.toFixed(ON_EDGE)),
});

function laidOut(ladder: Ladder, pattern: 'strip' | 'deck'): Laid {
  const drawn = new Drawn(ladder);
  const { rungs, bands, rails } = ladder;
  const [first, last] = rails.closed ? [0, rungs.length - 1] : [1, rungs.length - 1];
  const joints: LaidJoint[] = [];
  for (let k = first; k < last; k += 1) {
    const cut = straight(drawn.at(k, 0), drawn.at(k, bands), 'spoke', k);
    joints.push(pattern === 'strip' ? { ...cut, along: alongOf(rungs[k] as Rung) } : cut);
  }
  for (let j = 1; j < bands; j += 1) {
    for (let k = 0; k + 1 < rungs.length; k += 1) joints.push(bandJoint(drawn, k, j));
  }
  const panels = ladder.broken.flatMap((list, k) => list.map((broken, j) => panelAt(drawn, k, j, broken)));
  const length = joints.reduce((sum, j) => sum.plus(j.length), ZERO).toNumber();
  return {
    pattern,
    joints,
    panels,
    tees: 0,
    offModule: 0,
    exact: pattern === 'strip' && !rails.work.spent,
    leastLength: pattern === 'strip' ? (rails.work.spent ? 0 : length) : cornersApart(rails),
  };
}

const panelCount = ({ rungs, bands }: Ladder): number => (rungs.length - 1) * bands;

/** A plan in binary numbers: it is laid out in exact decimals where it may be the best. */
export interface Draft {
  /** How many rules its panels break. */
  readonly broken: number;
  /** Length of its joints. */
  readonly sawn: number;
  readonly lay: () => Laid;
}

function draftOf(ladder: Ladder, limits: Limits, pattern: 'strip' | 'deck'): Draft {
  const broken = ladder.broken.flat(2).length;
  return { broken, sawn: ladder.cost - broken * limits.weight, lay: () => laidOut(ladder, pattern) };
}

/**
 * Cuts across a strip, where the outline is one.
 *
 * @throws {InputError} `too-many` for more panels than are laid out
 */
export function draftStrip(site: Site, limits: Limits): (Draft & { readonly slim: number }) | undefined {
  const strip = stripOf(site);
  const ladder = strip && bothWays(strip, limits);
  if (ladder) withinLimit(PANELS, panelCount(ladder), 'spacing');
  return ladder && { ...draftOf(ladder, limits, 'strip'), slim: strip.slim };
}

/** Cuts around the opening of a slab, from its edge to the outside. */
export function draftDeck(site: Site, limits: Limits): Draft | undefined {
  const rails = deckOf(site);
  if (!rails) return undefined;
  const round = (site.openings[0] as Site['openings'][number]).corners.length === 0;
  const ladder = round ? aroundRound(site, rails, limits) : ladderOf(rails, limits);
  if (ladder && panelCount(ladder) > PANELS.most) return undefined;
  return ladder && draftOf(ladder, limits, 'deck');
}
