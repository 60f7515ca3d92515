/**
 * Slips in the hand of somebody who rounds on the way, where that gives more of what was claimed. Rounding moves a figure
 * a little only: what is farther off is not looked at.
 */
import { byHand } from './by-hand';
import { type Candidate, LIKELY, RARER } from './candidate';
import type { ReadClaim } from './claims';
import type { Graph } from './graph';
import { digitsOf, type HandOn, handsFor } from './hands';
import { explainedByHand, isWritten, ROUNDED } from './likeness';
import type { Scene } from './scene';
import type { Slip } from './slip';

/** So many are looked at, those that come nearest first. */
const MOST = 40;
/** Values to be reckoned for that. */
const REPLAYED = 40_000;

/** How far rounding on the way may move a figure: more where two digits are kept. */
const reachOf = (claim: ReadClaim): number =>
  (digitsOf(claim) > 2 ? 0.05 : 0.1) * Math.abs(claim.si) + claim.half;

/** A claim that rounding may still give, and one that it cannot. */
const MAY = 0.3;
const CANNOT = 0.001;

interface Promising {
  readonly at: number;
  readonly promise: number;
}

/** What rounding may do for a slip; nothing where every claim is given already, or no other can be. */
function promiseOf(
  { values, weight, explained }: Candidate,
  claims: readonly ReadClaim[],
  reach: readonly number[],
): number {
  if (explained.all && explained.exact) return 0;
  let promise = weight;
  let may = false;
  claims.forEach((claim, i) => {
    const value = values[i] as number;
    if (isWritten(value, claim)) return;
    const within = Math.abs(value - claim.si) <= (reach[i] as number);
    may ||= within;
    promise *= within ? MAY : CANNOT;
  });
  return may ? promise : 0;
}

/** How common a slip must be for its rounding to be looked at, beside what gives every claim as it is. */
const leastOf = (all: readonly Candidate[]): number =>
  all.reduce(
    (least, { explained, score }) =>
      explained.all && score >= LIKELY ? Math.max(least, (RARER * score) / ROUNDED) : least,
    0,
  );

/** The best as somebody would have them who rounds on the way; the others as they are. */
export function rounder(scene: Scene): (all: readonly Candidate[]) => Candidate[] {
  const { claims } = scene;
  const made = new Map<Graph, HandOn[]>();
  const handsOn = (graph: Graph): HandOn[] => {
    const known = made.get(graph) ?? handsFor(graph, claims);
    made.set(graph, known);
    return known;
  };
  const hands = handsOn(scene.graph);
  const most = Math.min(MOST, Math.floor(REPLAYED / Math.max(1, hands.length * scene.graph.length)));
  const reach = claims.map(reachOf);
  const known = new WeakMap<Slip, Candidate>();
  /** A slip is rounded once, however often it is looked at. */
  const rounded = (one: Candidate): Candidate => {
    const [only, ...more] = one.slips;
    const before = only && more.length === 0 ? known.get(only) : undefined;
    if (before && before.values === one.values) return before;
    const found = byHands(one);
    if (only && more.length === 0) known.set(only, found);
    return found;
  };
  const byHands = (one: Candidate): Candidate => {
    let found = one;
    hands.forEach((hand, i) => {
      // No more than this can come of it.
      if (one.weight * ROUNDED * hand.weight <= found.score) return;
      const values = byHand(scene, one.edits, (graph) => handsOn(graph)[i] ?? hand);
      const how = values && explainedByHand(values, one.values, scene, hand.weight);
      if (how && one.weight * how.quality > found.score)
        found = { ...one, explained: how, score: one.weight * how.quality };
    });
    return found;
  };
  return (all) => {
    const least = leastOf(all);
    const chosen = all
      .map(
        (one, at): Promising => ({
          at,
          promise: one.weight < least ? 0 : promiseOf(one, claims, reach),
        }),
      )
      .filter(({ promise }) => promise > 0)
      .sort((a, b) => b.promise - a.promise)
      .slice(0, most);
    const out = [...all];
    for (const { at } of chosen) out[at] = rounded(all[at] as Candidate);
    return out;
  };
}
