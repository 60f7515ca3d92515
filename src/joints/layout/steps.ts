/**
 * The steps that a path of lines is made of: from one anchor to a later one, with equal panels in
 * between.
 *
 * Lines between two anchors are set out from the first in whole steps of the tape (or of the module)
 * so that every distance is a finite decimal: the k-th of n lies `ceil(k × L ÷ (n × step))` steps
 * along. No panel is then wider than the even share rounded up to a step.
 */
import { HAIR, type Limits } from './rules';
import { type Anchor, type Axis, acrossOf, type Gap, type Space } from './space';

/** Where a line runs: so many steps beyond an anchor. */
export interface LinePlace {
  readonly at: number;
  readonly anchor: number;
  readonly steps: number;
}

/** Gaps that cost the same. */
interface GapClass {
  readonly gap: Gap;
  times: number;
}

/** From one anchor to a later one. */
export interface Step {
  readonly from: number;
  readonly to: number;
  readonly gaps: readonly GapClass[];
  /** The lines within, and the one on `to` unless the slab ends there. */
  readonly lines: readonly LinePlace[];
  /** Sawn length of those lines. */
  readonly cost: number;
}

/** How lines are set out. */
export interface SettingOut {
  /** In meters. */
  readonly step: number;
  /** Steps are counted from the first anchor, as a pattern of tiles is, and not from the last line. */
  readonly fromStart: boolean;
  /** The part of the work allowed that falls to this plan. */
  readonly share: number;
}

/** All steps of an axis. */
export interface Steps {
  readonly steps: readonly Step[];
  readonly trimmed: boolean;
}

/** With more kinds of gaps than this along an axis only the likelier steps are kept. */
const GAP_LIMIT = 8000;

/** Above this many lines placed all numbers of panels are too many to try. */
const LINES_LIMIT = 40_000;

/** Of steps over many anchors: panels beyond the fewest, and how far a step may reach, in spacings. */
const LIKELY = 2;
const REACH = 2.5;

/** Of steps over very many: more kinds of gaps than this, and only the fewest panels over short reaches. */
const FEW_GAPS = 4000;
const SHORT_REACH = 1.6;

/** The effort of a cell, as spaces state it, of an outline with some twenty slanted sides. */
const FEW_CORNERS = 60;

/** What is known of an axis: steps are made several times over while they are picked. */
interface Known {
  /** Lengths of lines. */
  readonly lengths: Map<number, number>;
  /** Gaps by the two numbers of their keys. */
  readonly gaps: Map<number, Map<number, Gap>>;
}

const knownIn = /*#__PURE__*/ new WeakMap<Space, Readonly<Record<Axis, Known>>>();

const nothingKnown = (): Known => ({ lengths: new Map(), gaps: new Map() });

class Maker {
  private readonly known: Known;
  private readonly anchors: readonly Anchor[];
  made = 0;
  /** Lines placed so far. */
  placed = 0;

  constructor(
    readonly space: Space,
    readonly axis: Axis,
    readonly limits: Limits,
    readonly out: SettingOut,
  ) {
    this.anchors = space.anchors(axis);
    const known = knownIn.get(space) ?? { x: nothingKnown(), y: nothingKnown() };
    knownIn.set(space, known);
    this.known = known[axis];
  }

  private length(at: number): number {
    const { lengths } = this.known;
    let known = lengths.get(at);
    if (known === undefined) {
      known = this.space.lineLength(this.axis, at);
      lengths.set(at, known);
    }
    return known;
  }

  /** One gap stands for all with its key. */
  private ownGap(lo: number, hi: number): Gap {
    const gap = this.space.gap(this.axis, lo, hi);
    const [a, b] = gap.key;
    const { gaps } = this.known;
    const alike = gaps.get(a) ?? new Map<number, Gap>();
    gaps.set(a, alike);
    const known = alike.get(b);
    if (known) return known;
    alike.set(b, gap);
    return gap;
  }

  /** The lines strictly between two anchors that make n panels, or fewer where two fall together. */
  private ownBetween(i: number, j: number, n: number): LinePlace[] {
    const [a, b] = [(this.anchors[i] as Anchor).at, (this.anchors[j] as Anchor).at];
    const { step, fromStart } = this.out;
    const base = fromStart ? 0 : i;
    const origin = (this.anchors[base] as Anchor).at;
    const places: LinePlace[] = [];
    let before = a;
    for (let k = 1; k < n; k += 1) {
      const steps = Math.ceil((a - origin + (k * (b - a)) / n) / step - HAIR);
      const at = origin + steps * step;
      if (at > before + HAIR && at < b - HAIR) {
        places.push({ at, anchor: base, steps });
        before = at;
      }
    }
    return places;
  }

  private tooWide(gap: Gap): boolean {
    const limit = this.limits.spacing + HAIR;
    return gap.hi - gap.lo > limit && this.space.widest(this.axis, gap) > limit;
  }

  private ownStep(i: number, j: number, n: number): Step | undefined {
    const inner = this.ownBetween(i, j, n);
    const end = (this.anchors[j] as Anchor).at;
    const stops = [(this.anchors[i] as Anchor).at, ...inner.map(({ at }) => at), end];
    const classes = new Map<Gap, GapClass>();
    for (let k = 1; k < stops.length; k += 1) {
      const gap = this.ownGap(stops[k - 1] as number, stops[k] as number);
      if (this.tooWide(gap)) return undefined;
      const known = classes.get(gap);
      if (known) known.times += 1;
      else classes.set(gap, { gap, times: 1 });
    }
    const gaps = [...classes.values()];
    const last = j === this.anchors.length - 1;
    const lines = last ? inner : [...inner, { at: end, anchor: j, steps: 0 }];
    this.placed += lines.length;
    const cost = lines.reduce((sum, { at }) => sum + this.length(at), 0);
    this.made += gaps.length;
    return { from: i, to: j, gaps, lines, cost };
  }

  /** The fewest panels, and the most before they are slivers. */
  private numbers(i: number, j: number): [number, number] {
    const [a, b] = [(this.anchors[i] as Anchor).at, (this.anchors[j] as Anchor).at];
    const whole = b - a;
    const { spacing, leastSide } = this.limits;
    const even = Math.max(1, Math.ceil(whole / spacing - HAIR));
    const across = even > 1 && this.space.widest(this.axis, this.space.gap(this.axis, a, b)) >= whole - HAIR;
    const fewest = across ? even : 1;
    return [fewest, Math.max(fewest, Math.floor(whole / leastSide + HAIR))];
  }

  /** How many lines all steps between two anchors would have, or nearly. */
  linesBetween(i: number, j: number): number {
    const [fewest, most] = this.numbers(i, j);
    return ((most - fewest + 1) * (most + fewest)) / 2;
  }

  /** All steps between two anchors. */
  between(i: number, j: number, more: number): Step[] {
    const [fewest, most] = this.numbers(i, j);
    const last = Math.min(most, fewest + more);
    const all = more === Number.POSITIVE_INFINITY;
    const steps: Step[] = [];
    for (let n = fewest; n <= last && (!all || this.placed <= LINES_LIMIT * this.out.share); n += 1) {
      const step = this.ownStep(i, j, n);
      if (step) steps.push(step);
    }
    return steps.length > 0 ? steps : this.anyStep(i, j, last);
  }

  /** Where setting out in whole steps made every number of panels too wide: more panels. */
  private anyStep(i: number, j: number, after: number): Step[] {
    const whole = (this.anchors[j] as Anchor).at - (this.anchors[i] as Anchor).at;
    const finest = Math.ceil(whole / this.out.step) + 1;
    for (let n = after + 1; n <= finest && n <= after + 64; n += 1) {
      const step = this.ownStep(i, j, n);
      if (step) return [step];
    }
    return [];
  }
}

function reachable(anchors: readonly Anchor[], i: number): number {
  let j = i + 1;
  while (j < anchors.length - 1 && !(anchors[j] as Anchor).must) j += 1;
  return j;
}

/** How steps are picked. */
interface Pick {
  /** How many panels more than the fewest are tried. */
  readonly more: number;
  /** How far a step may reach, in spacings. */
  readonly reach: number;
  /** With more kinds of gaps than this the next picking is made. */
  readonly most: number;
}

const ALL: Pick = { more: Number.POSITIVE_INFINITY, reach: Number.POSITIVE_INFINITY, most: GAP_LIMIT };
const PICKS: readonly Pick[] = [
  ALL,
  { more: LIKELY, reach: Number.POSITIVE_INFINITY, most: GAP_LIMIT / 2 },
  { more: LIKELY, reach: REACH, most: FEW_GAPS },
];
/** Of the fewest panels each, over reaches so short that one plan can be weighed within the work allowed. */
const SHORTER = [SHORT_REACH, 1.2, 0.9, 0.6, 0.4, 0.2];
const LAST_PICK: Pick = { more: 0, reach: 0, most: Number.POSITIVE_INFINITY };

/** The work of weighing one plan, as spaces state that of a cell. */
const WEIGHED_LIMIT = 40_000_000;

/** True where lines would be placed in vain: all steps are too many. */
function tooMany(maker: Maker, anchors: readonly Anchor[], limit: number): boolean {
  let lines = 0;
  for (let i = 0; i < anchors.length - 1; i += 1) {
    const far = reachable(anchors, i);
    for (let j = i + 1; j <= far; j += 1) {
      lines += maker.linesBetween(i, j);
      if (lines > limit) return true;
    }
  }
  return false;
}

/** The steps of a picking, or nothing when there are too many. */
function stepsOf(maker: Maker, anchors: readonly Anchor[], { more, reach, most }: Pick): Step[] | undefined {
  const steps: Step[] = [];
  const mostLines = LINES_LIMIT * maker.out.share;
  if (more === Number.POSITIVE_INFINITY && tooMany(maker, anchors, mostLines)) return undefined;
  for (let i = 0; i < anchors.length - 1; i += 1) {
    const far = reachable(anchors, i);
    const limit = (anchors[i] as Anchor).at + reach * maker.limits.spacing;
    // However short the reach: even panels from one end, or line that must be, to the next.
    const even = (j: number): boolean => j === far && (i === 0 || (anchors[i] as Anchor).must);
    for (let j = i + 1; j <= far; j += 1) {
      if (j > i + 1 && (anchors[j] as Anchor).at > limit && !even(j)) continue;
      steps.push(...maker.between(i, j, more));
      const all = more === Number.POSITIVE_INFINITY;
      if (maker.made > most || (all && maker.placed > mostLines)) return undefined;
    }
  }
  return steps;
}

/** All steps along an axis, or the likelier ones where there are too many. */
export function stepsAlong(space: Space, axis: Axis, limits: Limits, out: SettingOut): Steps {
  const anchors = space.anchors(axis);
  // What a gap costs takes as long as the outline has corners: with many, fewer gaps are looked at.
  const fewer = Math.max(1, space.effort / FEW_CORNERS) / out.share;
  const make = (pick: Pick): Step[] | undefined =>
    stepsOf(new Maker(space, axis, limits, out), anchors, { ...pick, most: pick.most / fewer });
  for (const pick of PICKS) {
    const steps = make(pick);
    if (steps) return { steps, trimmed: pick !== ALL };
  }
  // A plan has a line at most anchors of the other axis, and is weighed with every kind of gap.
  const most = WEIGHED_LIMIT / (space.effort * space.anchors(acrossOf(axis)).length);
  for (const reach of SHORTER) {
    const steps = stepsOf(new Maker(space, axis, limits, out), anchors, { more: 0, reach, most });
    if (steps) return { steps, trimmed: true };
  }
  return { steps: make(LAST_PICK) ?? [], trimmed: true };
}

/** Above this many kinds of gaps not even all steps are made to choose from. */
const MADE_LIMIT = 16_000;

/** Least length from the first anchor to each, or from each to the last. */
function leastTo(steps: readonly Step[], nodes: number, back: boolean): Float64Array {
  const least = new Float64Array(nodes).fill(Number.POSITIVE_INFINITY);
  least[back ? nodes - 1 : 0] = 0;
  const ordered = [...steps].sort((a, b) => (back ? b.from - a.from : a.from - b.from));
  for (const { from, to, cost } of ordered) {
    const [here, there] = back ? [from, to] : [to, from];
    least[here] = Math.min(least[here] as number, (least[there] as number) + cost);
  }
  return least;
}

/** All steps of an axis with the least length of a whole path through each. */
interface Weighted {
  readonly steps: readonly Step[];
  readonly through: Float64Array;
  readonly least: number;
}

function weightedSteps(space: Space, axis: Axis, limits: Limits, out: SettingOut): Weighted | undefined {
  const anchors = space.anchors(axis);
  const steps = stepsOf(new Maker(space, axis, limits, out), anchors, {
    ...ALL,
    most: MADE_LIMIT * out.share,
  });
  if (!steps) return undefined;
  const [ahead, behind] = [leastTo(steps, anchors.length, true), leastTo(steps, anchors.length, false)];
  const through = Float64Array.from(
    steps,
    ({ from, to, cost }) => (behind[from] as number) + cost + (ahead[to] as number),
  );
  return { steps, through, least: ahead[0] as number };
}

/** More than the room that the search leaves between plans of one length. */
const ROOM = 1e-3;

/**
 * The steps that any plan of no more than a given length can be made of, both ways.
 *
 * A step is left out when the shortest path through it, and the shortest along the other axis, already
 * come to more. `undefined` when too many are left.
 */
export function stepsWithin(
  space: Space,
  limits: Limits,
  out: SettingOut,
  most: number,
): Readonly<Record<Axis, readonly Step[]>> | undefined {
  const x = weightedSteps(space, 'x', limits, out);
  const y = x && weightedSteps(space, 'y', limits, out);
  if (!x || !y) return undefined;
  const kept = (mine: Weighted, other: Weighted): Step[] =>
    mine.steps.filter((_, i) => (mine.through[i] as number) + other.least <= most + ROOM);
  const [kx, ky] = [kept(x, y), kept(y, x)];
  const gaps = [...kx, ...ky].reduce((sum, step) => sum + step.gaps.length, 0);
  return gaps <= 2 * GAP_LIMIT * out.share ? { x: kx, y: ky } : undefined;
}
