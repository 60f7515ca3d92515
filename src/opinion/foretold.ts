/**
 * What slips of a value would give, as far as the steps tell, where all of it takes a run of the calculation.
 *
 * A count of bars or a plan of sheets is felt in what no step shows, so that the steps tell some of the claims and miss
 * others. That is no proof, and enough to choose by: what comes nearest to the claims, and is common, is run first.
 */
import type { ReadClaim } from './claims';
import { type Instead, insteadOf, sampleOf, unsettled } from './guided';
import type { Leaf } from './input-places';
import { isWritten } from './likeness';
import type { Response } from './response';
import { byReplay, type Predicted, type Scene } from './scene';
import type { Slip } from './slip';

/** So many are run, those that promise most. */
const MOST = 14;
/** The share of what may still be run that is kept for parts left out and the like. */
const KEPT = 0.5;
/** Where one gives every claim as written, what promises so much less is not run. */
const LESS = 0.3;

/** Rounding on the way brings a figure so near, and a plan that the steps do not show changes it by so much. */
const NEAR = 0.03;
const ABOUT = 0.12;

/** What it is worth that the steps give a claim, come near, come about there, or do not. */
const WORTH = { near: 0.3, about: 0.05, unseen: 0.03, not: 0.002 } as const;

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

function promiseOf(scene: Scene, values: Predicted): number {
  return scene.claims.reduce((promise, claim, i) => {
    const value = values[i] as number;
    if (isWritten(value, claim)) return promise;
    if (scene.nodes[i] === undefined) return promise * WORTH.unseen;
    const off = Math.abs(value - claim.si) / Math.abs(claim.si);
    return promise * (off <= NEAR ? WORTH.near : off <= ABOUT ? WORTH.about : WORTH.not);
  }, 1);
}

interface Promising {
  readonly one: Instead;
  readonly promise: number;
}

function promising(scene: Scene, leaf: Leaf, slips: readonly Slip[]): Promising[] {
  const response = scene.guesses.get(leaf) ?? direct(scene, leaf);
  const own = { ...scene, followed: new Map([[leaf, response]]) };
  const onward = { base: scene.gives, starts: new Set<number>() };
  const nothing = promiseOf(scene, scene.base);
  return insteadOf(slips).flatMap((one) => {
    const [first] = one.slips as [Slip];
    const share = promiseOf(scene, byReplay(own, first.edits, scene.graph, scene.base, onward).values);
    const weight = Math.max(...one.slips.map((slip) => slip.weight));
    return share > nothing ? [{ one, promise: share * weight }] : [];
  });
}

/** Run what promises most: so much is run of a heavy calculation that what is likely must come before what is common. */
export function runForetold(scene: Scene, slips: readonly Slip[]): void {
  const all = [...unsettled(scene, slips)].flatMap(([leaf, own]) => promising(scene, leaf, own));
  let least = 0;
  const kept = scene.budget.left * KEPT;
  for (const { one, promise } of all.sort((a, b) => b.promise - a.promise).slice(0, MOST)) {
    if (promise < least || scene.budget.left <= kept) break;
    const figures = sampleOf(scene, one)?.figures;
    if (figures?.every((value, i) => isWritten(value, scene.claims[i] as ReadClaim)))
      least = Math.max(least, LESS * promise);
  }
}
