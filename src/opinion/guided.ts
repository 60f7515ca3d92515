/**
 * Values whose effect on the figures only the calculation itself tells: a count of bars, a board that is sold in
 * lengths, a limit that governs. Running it for every slip of every such value would take too long, and is not needed:
 * most figures only rise or only fall with a value, so that a claim is enclosed between two runs, and only slips
 * between these may give it.
 */
import type { Leaf } from './input-places';
import { siOf } from './scale';
import { type Predicted, predicted, resultWith, type Sample, type Scene } from './scene';
import type { Edit, Slip } from './slip';

/** The one claim that slips are looked for by. */
export interface Aim {
  readonly at: number;
  readonly si: number;
  /** By how much a figure may be off and still be rounded to the claim. */
  readonly room: number;
}

type OnInput = Extract<Edit, { on: 'input' }>;

/** Slips of one value that put the same in its place. */
export interface Instead {
  readonly x: number;
  readonly slips: readonly Slip[];
}

/** The one edit of a slip of a value. */
export function editOf({
  edits,
}: Slip): (OnInput & { readonly leaf: Leaf; readonly si: number }) | undefined {
  const [one] = edits;
  if (edits.length !== 1 || one?.on !== 'input' || one.leaf === undefined || one.si === undefined)
    return undefined;
  return one as OnInput & { leaf: Leaf; si: number };
}

export function insteadOf(slips: readonly Slip[]): Instead[] {
  const byValue = new Map<number, Slip[]>();
  for (const slip of slips) {
    const x = editOf(slip)?.si as number;
    const known = byValue.get(x);
    if (known) known.push(slip);
    else byValue.set(x, [slip]);
  }
  return [...byValue].map(([x, all]) => ({ x, slips: all })).sort((a, b) => a.x - b.x);
}

/** Run the calculation with a value once for all slips that put it in. */
export function sampleOf(scene: Scene, { x, slips }: Instead): Sample | undefined {
  const [first] = slips as [Slip];
  const edit = first.edits[0] as Edit;
  if (scene.budget.spent) return undefined;
  const result = resultWith(scene, [edit]);
  for (const { edits } of slips) scene.runs.set(edits[0] as Edit, result);
  const figures = result && predicted(scene, [edit]);
  return figures && { x, figures };
}

/** Runs for one value. */
const MOST = 12;
/** How far out it is tried, as shares of all slips that lie there. */
const OUTWARD = [0.9, 0.5, 0.5, 0.5, 0.5] as const;
/** Of slips that give the same, so many are run: the common ones. */
const ALIKE = 4;

/** What is known of one value, and what is still to be tried. */
class Enclosing {
  private readonly known: Sample[];
  private left: Instead[];
  private runs = 0;

  constructor(
    private readonly scene: Scene,
    private readonly aim: Aim,
    leaf: Leaf,
    slips: readonly Slip[],
  ) {
    const own: Sample = { x: siOf(leaf.quantity), figures: scene.base };
    this.known = [own, ...(scene.samples.get(leaf) ?? [])].sort((a, b) => a.x - b.x);
    this.left = insteadOf(slips);
  }

  private y({ figures }: Sample): number {
    return figures[this.aim.at] as number;
  }

  private isHit(one: Sample): boolean {
    return Math.abs(this.y(one) - this.aim.si) <= this.aim.room;
  }

  /** Whether a claim lies between two runs. */
  private between(a: Sample, b: Sample): boolean {
    const { si, room } = this.aim;
    const [p, q] = [this.y(a), this.y(b)];
    return Math.min(p, q) - room <= si && si <= Math.max(p, q) + room;
  }

  /** Run it with one of those that are left; false where nothing more may be run. */
  private put(one: Instead): boolean {
    this.left = this.left.filter((other) => other !== one);
    if (this.runs >= MOST || this.scene.budget.spent) return false;
    this.runs += 1;
    const sample = sampleOf(this.scene, one);
    if (sample) {
      const at = this.known.findIndex(({ x }) => x > sample.x);
      this.known.splice(at < 0 ? this.known.length : at, 0, sample);
    }
    return true;
  }

  /** A value beyond the claim on either side, so that the claim lies between two runs. */
  private widen(): void {
    for (const side of ['least', 'most'] as const) if (!this.leadsAway(side)) this.outward(side);
  }

  private end(side: 'least' | 'most'): Sample {
    return this.known.at(side === 'most' ? -1 : 0) as Sample;
  }

  /** How far a figure goes towards the claim from what it is: one is all the way. */
  private gone(one: Sample): number {
    const own = this.scene.base[this.aim.at] as number;
    return (this.y(one) - own) / (this.aim.si - own);
  }

  /** Whether the figure moves away from the claim on a side, as far as is known. */
  private leadsAway(side: 'least' | 'most'): boolean {
    const other = this.end(side === 'most' ? 'least' : 'most');
    return this.gone(this.end(side)) < 0 || (this.gone(this.end(side)) === 0 && this.gone(other) > 0);
  }

  /** Those that lie beyond all that are known, and not as far as one that was refused. */
  private beyond(side: 'least' | 'most', refused: number | undefined): Instead[] {
    const { x: end } = this.end(side);
    const sign = side === 'most' ? 1 : -1;
    const some = this.left.filter(
      ({ x }) => sign * (x - end) > 0 && (refused === undefined || sign * (refused - x) > 0),
    );
    return side === 'most' ? some : some.reverse();
  }

  /** Run values on one side until one goes past the claim: far out first, and nearer where that is refused. */
  private outward(side: 'least' | 'most'): void {
    let refused: number | undefined;
    for (const share of OUTWARD) {
      const end = this.end(side);
      if (this.gone(end) >= 1) return;
      const some = this.beyond(side, refused);
      const one = some[Math.round((some.length - 1) * share)];
      if (!one || !this.put(one)) return;
      if (this.end(side) === end) refused = one.x;
      else if (this.gone(this.end(side)) <= 0) return;
    }
  }

  /** A pair of runs between which the claim and some slips lie. */
  private gap(): { readonly a: Sample; readonly b: Sample; readonly inside: Instead[] } | undefined {
    for (let i = 0; i + 1 < this.known.length; i += 1) {
      const [a, b] = [this.known[i] as Sample, this.known[i + 1] as Sample];
      if (!this.between(a, b)) continue;
      const inside = this.left.filter(({ x }) => x > a.x && x < b.x);
      if (inside.length > 0) return { a, b, inside };
    }
    return undefined;
  }

  /** The slip that comes nearest to the claim on a straight line between two runs. */
  private nearest(a: Sample, b: Sample, inside: readonly Instead[]): Instead {
    const [p, q] = [this.y(a), this.y(b)];
    const share = p === q ? 0.5 : Math.min(1, Math.max(0, (this.aim.si - p) / (q - p)));
    const goal = a.x + share * (b.x - a.x);
    return inside.reduce((best, one) => (Math.abs(one.x - goal) < Math.abs(best.x - goal) ? one : best));
  }

  run(): void {
    this.widen();
    for (let gap = this.gap(); gap; gap = this.gap()) {
      const { a, b, inside } = gap;
      if (this.isHit(a) && this.isHit(b)) this.alike(inside);
      else if (!this.put(this.nearest(a, b, inside))) return;
    }
  }

  /** All of these give the claim, if those about them do. */
  private alike(inside: readonly Instead[]): void {
    const weight = ({ slips }: Instead): number => Math.max(...slips.map((slip) => slip.weight));
    const best = [...inside].sort((a, b) => weight(b) - weight(a)).slice(0, ALIKE);
    for (const one of best) if (!this.put(one)) break;
    this.left = this.left.filter((one) => !inside.includes(one));
  }
}

/** Slips of a value that the steps tell by a guess: those that come near are run. */
const GUESSED = 4;
const GUESS = 0.7;

function guessed(scene: Scene, { at, si }: Aim, slips: readonly Slip[]): void {
  const off = (values: Predicted | undefined): number => Math.abs((values?.[at] ?? Number.NaN) / si - 1);
  insteadOf(slips)
    .map((one) => ({ one, off: off(predicted(scene, (one.slips[0] as Slip).edits)) }))
    .filter((one) => one.off <= GUESS)
    .sort((a, b) => a.off - b.off)
    .slice(0, GUESSED)
    .forEach(({ one }) => {
      sampleOf(scene, one);
    });
}

/** Slips of all values that are not followed in proportion. */
export function unsettled(scene: Scene, slips: readonly Slip[]): Map<Leaf, Slip[]> {
  const byLeaf = new Map<Leaf, Slip[]>();
  for (const slip of slips) {
    const leaf = editOf(slip)?.leaf;
    if (!leaf || scene.settled.has(leaf)) continue;
    const known = byLeaf.get(leaf);
    if (known) known.push(slip);
    else byLeaf.set(leaf, [slip]);
  }
  return byLeaf;
}

/** Run what may give the claim, of all values that are not followed in proportion. */
export function guidedRuns(scene: Scene, slips: readonly Slip[], aim: Aim): void {
  const byLeaf = unsettled(scene, slips);
  // What is felt a little off is felt far off: it comes first.
  const isFelt = (leaf: Leaf): boolean =>
    scene.samples.get(leaf)?.some(({ figures }) => figures[aim.at] !== scene.base[aim.at]) ?? true;
  const leaves = [...byLeaf].sort(([a], [b]) => Number(isFelt(b)) - Number(isFelt(a)));
  for (const [leaf, own] of leaves) {
    if (scene.followed.has(leaf)) guessed(scene, aim, own);
    else new Enclosing(scene, aim, leaf, own).run();
  }
}
