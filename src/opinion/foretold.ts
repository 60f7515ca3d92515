/**
 * What slips of a value would give, as far as the steps and the runs so far tell, where all of it takes a run of the
 * calculation.
 *
 * A count of bars or a plan of sheets is felt in what no step shows, so that the steps tell some of the claims and miss
 * others; of these the runs with other values tell about where they lie. That is no proof, and enough to choose by: what
 * comes nearest to the claims, and is common, is run first, and each run tells more of where to look.
 */
import { guessAt, inOrder } from './between';
import type { ReadClaim } from './claims';
import { type Instead, insteadOf, sampleOf, unsettled } from './guided';
import type { Leaf } from './input-places';
import { isWritten } from './likeness';
import type { Response } from './response';
import { siOf } from './scale';
import { byReplay, type Predicted, type Sample, type Scene } from './scene';
import type { Slip } from './slip';

/** So many are run, those that promise most. */
const MOST = 20;
/** The share of what may still be run that is kept for parts left out and the like. */
const KEPT = 0.4;
/** Where one gives every claim as written, what promises so much less is not run. */
const LESS = 0.3;

/** Rounding on the way brings a figure so near, and a plan that the steps do not show changes it by so much. */
const NEAR = 0.03;
const ABOUT = 0.12;

/** What it is worth that the steps give a claim, come near, come about there, or do not; a right one may well stay so. */
const WORTH = { near: 0.3, about: 0.05, unseen: 0.03, not: 0.002, right: 0.5 } as const;

/** What takes the very value of the input follows it, where no run has told more. */
function direct({ graph }: Scene, { quantity }: Leaf): Response {
  const places = graph.flatMap(({ takes }, i) =>
    takes.flatMap((one) => (one.quantity === quantity ? [[i, one.symbol] as const] : [])),
  );
  return {
    taken: new Map(places.map(([i, symbol]) => [`${i} ${symbol}`, (x: number) => x])),
    given: new Map(),
    figures: new Map(),
    starts: places.map(([i]) => i),
  };
}

/** What it is worth that a figure comes out as it does by the steps. */
function worthBySteps(value: number, claim: ReadClaim): number {
  if (isWritten(value, claim)) return 1;
  const off = Math.abs(value - claim.si) / Math.abs(claim.si);
  return off <= NEAR ? WORTH.near : off <= ABOUT ? WORTH.about : WORTH.not;
}

/** The same by the runs with other values; nothing where they do not tell. */
function worthByRuns(known: readonly Sample[], x: number, claim: ReadClaim, i: number): number | undefined {
  const guess = guessAt(known, x, i);
  if (!guess || claim.si <= 0) return undefined;
  const off = Math.abs(Math.log(guess.value / claim.si)) / guess.within;
  return WORTH.not + WORTH.near * Math.exp((-off * off) / 2);
}

interface Promising {
  readonly leaf: Leaf;
  readonly one: Instead;
  readonly promise: number;
}

/** What is known of one value. */
interface Trying {
  readonly leaf: Leaf;
  left: Instead[];
  known: Sample[];
  /** What each that is left promises by the steps. */
  readonly bySteps: ReadonlyMap<Instead, Predicted>;
}

function trying(scene: Scene, leaf: Leaf, slips: readonly Slip[]): Trying {
  const response = scene.guesses.get(leaf) ?? direct(scene, leaf);
  const own = { ...scene, followed: new Map([[leaf, response]]) };
  const onward = { base: scene.gives, starts: new Set<number>() };
  const left = insteadOf(slips);
  const values = ({ slips: [first] }: Instead): Predicted =>
    byReplay(own, (first as Slip).edits, scene.graph, scene.base, onward).values;
  return {
    leaf,
    left,
    known: inOrder(siOf(leaf.quantity), scene.base, scene.samples.get(leaf) ?? []),
    bySteps: new Map(left.map((one) => [one, values(one)])),
  };
}

const wordsOf = (path: string): string[] =>
  path
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^a-z]+/)
    .map((word) => word.replace(/s$/, ''))
    .filter((word) => word.length > 2);

/** A figure is more likely felt in what has its name: stakes in their spacing. */
const OF_ITS_NAME = 2;

function kinship({ at }: Leaf, claims: readonly ReadClaim[]): number {
  const own = new Set(wordsOf(at));
  return claims.some(({ figure }) => wordsOf(figure).some((word) => own.has(word))) ? OF_ITS_NAME : 1;
}

/** What is left of a value and promises more than that nothing went wrong with it. */
function promising(scene: Scene, { leaf, left, known, bySteps }: Trying): Promising[] {
  const { claims, nodes, base } = scene;
  const right = claims.map((claim, i) => isWritten(base[i] as number, claim));
  const product = (of: readonly number[]): number => of.reduce((promise, one) => promise * one, 1);
  const nothing = product(right.map((one) => (one ? 1 : WORTH.not)));
  const kin = kinship(leaf, claims);
  const worthOf = (claim: ReadClaim, i: number, x: number, step: number): number => {
    const byRuns = worthByRuns(known, x, claim, i) ?? 0;
    // Where the steps are others then, they tell nothing.
    if (nodes[i] !== undefined && scene.guesses.has(leaf)) return Math.max(byRuns, worthBySteps(step, claim));
    return byRuns || (right[i] ? WORTH.right : WORTH.unseen);
  };
  return left.flatMap((one) => {
    const values = bySteps.get(one) as Predicted;
    const share = product(claims.map((claim, i) => worthOf(claim, i, one.x, values[i] as number)));
    const weight = Math.max(...one.slips.map((slip) => slip.weight));
    return share > nothing ? [{ leaf, one, promise: share * weight * kin }] : [];
  });
}

const best = (all: readonly Promising[]): Promising | undefined =>
  all.reduce<Promising | undefined>(
    (most, one) => (one.promise > (most?.promise ?? 0) ? one : most),
    undefined,
  );

/** Run what promises most: so much is run of a heavy calculation that what is likely must come before what is common. */
export function runForetold(scene: Scene, slips: readonly Slip[]): void {
  const all = new Map([...unsettled(scene, slips)].map(([leaf, own]) => [leaf, trying(scene, leaf, own)]));
  const promises = new Map([...all].map(([leaf, one]) => [leaf, promising(scene, one)]));
  const kept = scene.budget.left * KEPT;
  let least = 0;
  for (let runs = 0; runs < MOST && scene.budget.left > kept; runs += 1) {
    const next = best([...promises.values()].flat());
    if (!next || next.promise < least) break;
    const own = all.get(next.leaf) as Trying;
    own.left = own.left.filter((one) => one !== next.one);
    const sample = sampleOf(scene, next.one);
    if (sample) own.known = [...own.known, sample].sort((a, b) => a.x - b.x);
    promises.set(next.leaf, promising(scene, own));
    if (sample?.figures.every((value, i) => isWritten(value, scene.claims[i] as ReadClaim)))
      least = Math.max(least, LESS * next.promise);
  }
}
