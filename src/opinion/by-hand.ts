/** How somebody who rounds on the way comes to the claimed figures, with slips or without. */
import type { Quantity } from '../quantity/quantity';
import type { ReadClaim } from './claims';
import { type Graph, replayed } from './graph';
import type { HandOn } from './hands';
import { isWritten } from './likeness';
import {
  byClaims,
  changed,
  editsOn,
  graphAt,
  isFollowed,
  otherIn,
  othersOf,
  type Predicted,
  predicted,
  readOff,
  resultWith,
  type Scene,
  sameSteps,
} from './scene';
import type { Edit, Twist } from './slip';
import { twisted } from './twist';

type Rounded = (si: number) => number;

/**
 * A number that goes wrong when it is written down. What goes wrong in its digits was written with so many of them: a
 * hand that keeps fewer rounds what it then reads there.
 */
function miswrittenBy(rounded: Rounded, si: number, twist: Twist): number {
  if (twist.down !== undefined) return twisted(rounded(si), twist);
  if (!twist.digits) return rounded(twisted(si, twist));
  const kept = rounded(si);
  const half = (twist.unit * 10 ** -twist.digits.places) / 2;
  return Math.abs(kept - si) <= half ? twisted(kept, twist) : rounded(twisted(si, twist));
}

/** A page as a hand that rounds has it without any slip: outcomes as they are kept, and as they were before. */
interface Page {
  readonly gives: readonly number[];
  readonly raw: readonly number[];
}

const pages = new WeakMap<HandOn, Page>();

/** Reckoned once for each hand: what a slip is not felt in stays as it was. */
function pageOf(graph: Graph, hand: HandOn): Page {
  const known = pages.get(hand);
  if (known) return known;
  const raw: number[] = [];
  const outcome = (i: number, si: number): number => {
    raw[i] = si;
    return (hand.outcomes[i] as Rounded)(si);
  };
  const page = { gives: replayed<number>(graph, { outcome }, hand.numbers), raw };
  pages.set(hand, page);
  return page;
}

/** How somebody who rounds on the way would come to the claimed figures with these slips. */
export function byHand(
  scene: Scene,
  edits: readonly Edit[],
  handOn: (graph: Graph) => HandOn,
): Predicted | undefined {
  const followed = isFollowed(scene, edits);
  const result = followed ? scene.result : resultWith(scene, edits);
  if (!result) return undefined;
  const graph = followed ? scene.graph : graphAt(scene, result, edits);
  const own = followed ? edits : othersOf(edits);
  if (graph !== scene.graph && !sameSteps(graph, scene.graph, own)) return undefined;
  const hand = handOn(graph);
  const { numbers, taken, outcomes } = hand;
  const page = pageOf(graph, hand);
  const steps = own.filter(({ on }) => on !== 'outcome' && on !== 'claim');
  const { change, starts } = changed(scene, graph, steps);
  const twists = new Map(editsOn('outcome', own).map((one) => [one.step, one.twist] as const));
  const roundedBy = (i: number): Rounded => outcomes[i] as Rounded;
  /** Before they were rounded: what was written down for them goes wrong there. */
  const raw = [...page.raw];
  for (const step of twists.keys()) starts.add(step);
  const gives =
    starts.size === 0
      ? page.gives
      : replayed<number>(
          graph,
          {
            ...change,
            taken: (i, symbol) => {
              const to = change.taken?.(i, symbol);
              return to === undefined
                ? undefined
                : taken(graph[i]?.bySymbol.get(symbol)?.quantity as Quantity, to);
            },
            outcome: (i, si) => {
              raw[i] = change.outcome ? change.outcome(i, si) : si;
              const twist = twists.get(i);
              return twist
                ? miswrittenBy(roundedBy(i), raw[i] as number, twist)
                : roundedBy(i)(raw[i] as number);
            },
          },
          numbers,
          { base: page.gives, starts },
        );
  const base = followed ? (predicted(scene, steps) as Predicted) : readOff(scene, result.figures);
  const ofClaims = editsOn('claim', own);
  return scene.nodes.map((node, i) => {
    if (node === undefined)
      return byClaims(scene, ofClaims, base, twisted, otherIn(scene, gives))[i] as number;
    const claim = scene.claims[i] as ReadClaim;
    const kept = gives[node] ?? Number.NaN;
    const wrong = ofClaims.find(({ figure }) => figure === claim.figure)?.twist;
    if (!wrong) return kept;
    if (wrong.of) return otherIn(scene, gives)(wrong.of);
    // What goes wrong at last goes wrong with the number as it stood there, or as it was before.
    const last = twisted(kept, wrong);
    return isWritten(last, claim) ? last : miswrittenBy(roundedBy(node), raw[node] as number, wrong);
  });
}
