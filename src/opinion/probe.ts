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

/** Far enough that what goes by steps, a table or a count, takes another. */
const FAR = [
  ['2', 2],
  ['0.5', -1],
] as const;

interface Probed {
  readonly followed: Map<Leaf, Response>;
  readonly settled: Set<Leaf>;
  readonly idle: Set<Leaf>;
  readonly samples: Map<Leaf, Sample[]>;
}

const CLOSE = 1e-6;

/** Whether the steps tell what the calculation itself has told. */
function holdsAt(scene: Scene, leaf: Leaf, response: Response, { x, figures }: Seen): boolean {
  const edit: Edit = { on: 'input', path: leaf.path, value: undefined, leaf, si: x };
  const own = { ...scene, followed: new Map([[leaf, response]]) };
  const steps = byReplay(own, [edit], scene.graph, scene.base, { base: scene.gives, starts: new Set() });
  return figures.every((one, i) => {
    const step = steps[i] as number;
    return Math.abs(one - step) <= CLOSE * Math.max(Math.abs(one), Math.abs(step));
  });
}

/** What follows one value. */
function probeOne(scene: Scene, leaf: Leaf, { followed, settled, idle, samples }: Probed): void {
  const near = seen(scene, leaf, '1.0078125', 1);
  if (!near) return;
  samples.set(leaf, [near]);
  const base: Seen = { x: siOf(leaf.quantity), graph: scene.graph, figures: scene.base };
  const isOutcome = (i: number): boolean => scene.nodes[i] !== undefined;
  const first = responseOf(base, near, undefined, isOutcome);
  const still = same(near.figures, scene.base);
  const put = (response: Response | undefined): void => {
    if (response && holdsAt(scene, leaf, response, near)) followed.set(leaf, response);
  };
  if (first && !still && isSettled(first, base, near)) {
    put(first);
    if (followed.has(leaf)) settled.add(leaf);
    return;
  }
  const [far, half] = FAR.map(([times, more], i) =>
    i === 0 || still ? seen(scene, leaf, times, more) : undefined,
  );
  samples.set(
    leaf,
    [near, far, half].flatMap((one) => one ?? []),
  );
  if (still) {
    if ([far, half].every((one) => !one || same(one.figures, scene.base))) idle.add(leaf);
    return;
  }
  if (first) put(responseOf(base, near, far ?? half, isOutcome));
}

/** The scene with what follows each value of the input. */
export function probed(scene: Scene, { leaves }: Places): Scene {
  const probed: Probed = { followed: new Map(), settled: new Set(), idle: new Set(), samples: new Map() };
  // Half of what may be run is kept for parts left out and for values that the steps do not tell.
  const kept = scene.budget.runs / 2;
  for (const leaf of leaves.slice(0, MOST_LEAVES)) {
    if (scene.budget.runs <= kept) break;
    probeOne(scene, leaf, probed);
  }
  return { ...scene, ...probed };
}

/** Runs of a search, at least and at most. */
const LEAST_RUNS = 24;
const MOST_RUNS = 160;

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
  const budget = { runs: runsWorth(input, result, LEAST_RUNS, MOST_RUNS) };
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
    idle: new Set(),
    samples: new Map(),
    budget,
    runs: new WeakMap(),
    graphs: new WeakMap(),
  };
}
