/**
 * What of the working follows each value of an input: found from a few runs with another value in its place.
 */
import { Decimal } from '../quantity/decimal';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import type { ReadClaim } from './claims';
import { runsWorth } from './effort';
import { graphOf, IN_BINARY, replayed, stepOf } from './graph';
import type { AnyCalculation, Leaf, Places } from './input-places';
import { isSettled, type Response, responseOf, type Seen } from './response';
import { siOf } from './scale';
import {
  type AnyResult,
  byReplay,
  graphAt,
  type Predicted,
  readOff,
  rerun,
  type Sample,
  type Scene,
} from './scene';
import type { Edit } from './slip';

/** So many times a value, or for what is counted so many more. */
function other({ quantity, plain }: Leaf, times: string, more: number): { value: unknown; si: number } {
  const value = canonicalValue(quantity);
  if (plain) return { value: value.toNumber() + more, si: value.toNumber() + more };
  const moved = value.isZero() ? new Decimal('0.01').times(more) : value.times(times);
  const instead = newQuantity(quantity.dimension, moved, unitShown(quantity));
  return { value: instead, si: siOf(instead) };
}

/** More values than this are a table: none of them is tried alone. */
const MOST_LEAVES = 60;

/** The run with another value. */
function seen(scene: Scene, leaf: Leaf, times: string, more: number): Seen | undefined {
  const { value, si } = other(leaf, times, more);
  const edits: readonly Edit[] = [{ on: 'input', path: leaf.path, value, leaf, si }];
  const result = rerun(scene, edits);
  return result && { x: si, graph: graphAt(scene, result, edits), figures: readOff(scene, result.figures) };
}

const same = (a: Predicted, b: Predicted): boolean => a.every((one, i) => one === b[i]);

interface Probed {
  readonly followed: Map<Leaf, Response>;
  readonly settled: Set<Leaf>;
  readonly guesses: Map<Leaf, Response>;
  readonly samples: Map<Leaf, Sample[]>;
}

const CLOSE = 1e-6;

/** Whether the steps tell what the calculation itself has told. */
function holdsAt(scene: Scene, leaf: Leaf, response: Response, { x, figures }: Seen): boolean {
  const edit: Edit = { on: 'input', path: leaf.path, value: undefined, leaf, si: x };
  const own = { ...scene, followed: new Map([[leaf, response]]) };
  const onward = { base: scene.gives, starts: new Set<number>() };
  const { values: steps } = byReplay(own, [edit], scene.graph, scene.base, onward);
  return figures.every((one, i) => {
    const step = steps[i] as number;
    return Math.abs(one - step) <= CLOSE * Math.max(Math.abs(one), Math.abs(step));
  });
}

/** A run a little off tells what a value is felt in, and all of it where that is in proportion. */
const NEAR = ['1.0078125', 1] as const;
/** Others tell how it is felt elsewhere: farther off, and on the other side. */
const FAR = ['2', 2] as const;
const HALF = ['0.5', -1] as const;

const isOutcomeOf =
  ({ nodes }: Scene) =>
  (i: number): boolean =>
    nodes[i] !== undefined;

const baseOf = (scene: Scene, leaf: Leaf): Seen => ({
  x: siOf(leaf.quantity),
  graph: scene.graph,
  figures: scene.base,
});

/** Whether the steps take counts that none of them gave: pieces of a plan, boards of a cutting list. */
const mayJump = ({ graph, isInput }: Scene): boolean =>
  graph.some(({ tree, takes }) =>
    takes.some(
      ({ quantity, from }) =>
        (!tree || from === undefined) && quantity.dimension === 'count' && !isInput(quantity),
    ),
  );

/** What is felt in proportion; what is felt otherwise is given back. */
function probeNear(
  scene: Scene,
  leaf: Leaf,
  { followed, settled, guesses, samples }: Probed,
): Seen | undefined {
  const near = seen(scene, leaf, ...NEAR);
  if (!near) return undefined;
  samples.set(leaf, [near]);
  const base = baseOf(scene, leaf);
  const response = responseOf(base, near, undefined, isOutcomeOf(scene));
  if (response) guesses.set(leaf, response);
  if (same(near.figures, scene.base)) return undefined;
  if (!response || !isSettled(response, base, near)) return near;
  if (!holdsAt(scene, leaf, response, near)) return undefined;
  if (mayJump(scene)) {
    // Far off, another count may be needed.
    const far = seen(scene, leaf, ...FAR);
    if (far) samples.set(leaf, [near, far]);
    if (far && !holdsAt(scene, leaf, response, far)) return undefined;
  }
  followed.set(leaf, response);
  settled.add(leaf);
  return undefined;
}

/** What is felt otherwise: a curve through two runs, if a third on the other side lies on it. */
function probeFar(scene: Scene, leaf: Leaf, near: Seen, { followed, guesses, samples }: Probed): void {
  const [far, half] = [seen(scene, leaf, ...FAR), seen(scene, leaf, ...HALF)];
  const some = [near, far, half].flatMap((one) => one ?? []);
  samples.set(leaf, some);
  const response = responseOf(baseOf(scene, leaf), near, far ?? half, isOutcomeOf(scene));
  if (response) guesses.set(leaf, response);
  if (response && some.every((one) => holdsAt(scene, leaf, response, one))) followed.set(leaf, response);
}

/** The share of what may be run that is kept for what the steps do not tell. */
const KEPT = 0.5;

/** The scene with what follows each value of the input. */
export function probed(scene: Scene, { leaves }: Places): Scene {
  const found: Probed = { followed: new Map(), settled: new Set(), guesses: new Map(), samples: new Map() };
  const kept = scene.budget.runs * KEPT;
  const otherwise: (readonly [Leaf, Seen])[] = [];
  for (const leaf of leaves.slice(0, MOST_LEAVES)) {
    if (scene.budget.runs <= kept) break;
    const near = probeNear(scene, leaf, found);
    if (near) otherwise.push([leaf, near]);
  }
  for (const [leaf, near] of otherwise) {
    if (scene.budget.runs <= kept) break;
    probeFar(scene, leaf, near, found);
  }
  return { ...scene, ...found };
}

/** Runs of a search, at least and at most. */
const LEAST_RUNS = 40;
const MOST_RUNS = 160;
/** A search stops long before where a slip is found: it may take more where none is. */
const WORTH = 270;

/** The scene of a result, before anything was tried. */
export function sceneOf(
  calculation: AnyCalculation,
  input: unknown,
  result: AnyResult,
  places: Places,
  claims: readonly ReadClaim[],
): Scene {
  const own = new Set(places.leaves.map(({ quantity }) => quantity));
  const isInput = (q: Quantity): boolean => own.has(q);
  const graph = graphOf(result.working, isInput);
  const nodes = claims.map(({ reckoned }) => stepOf(reckoned, graph));
  const base = claims.map(({ reckoned }) => siOf(reckoned));
  const budget = { runs: Math.min(MOST_RUNS, runsWorth(input, result, LEAST_RUNS, WORTH)) };
  return {
    calculation,
    input,
    result,
    graph,
    isInput,
    claims,
    nodes,
    base,
    gives: replayed(graph, {}, IN_BINARY),
    followed: new Map(),
    settled: new Set(),
    guesses: new Map(),
    samples: new Map(),
    budget,
    worth: budget.runs,
    runs: new WeakMap(),
    graphs: new WeakMap(),
  };
}
