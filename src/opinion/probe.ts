/**
 * What of the working follows each value of an input: found from a few runs with another value in its place.
 */
import { Decimal } from '../quantity/decimal';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import type { PartsKnown } from '../reckoning/part-working';
import { assumedValues } from './assumed-values';
import { Budget } from './budget';
import type { ReadClaim } from './claims';
import { runsWorth } from './effort';
import { IN_BINARY, replayed } from './graph';
import { type AnyCalculation, COORDINATE, type Leaf, type Places } from './input-places';
import { isSettled, type Response, responseOf, type Seen } from './response';
import { siOf } from './scale';
import { type AnyResult, byReplay, graphAt, type Predicted, readOff, rerun, type Scene } from './scene';
import type { Edit } from './slip';
import { partsFor, stepIn, wholeGraph, wholeOf } from './whole-working';

/**
 * From where places are told: the least of all. A corner at 500,000 ft on a grid is moved by a share of the slab, not by
 * miles, which would make a slab of miles.
 */
function originsOf(leaves: readonly Leaf[]): Map<Leaf, Decimal> {
  const least = new Map<string, Decimal>();
  const places = leaves.filter(
    ({ name, quantity }) => COORDINATE.test(name) && quantity.dimension === 'length',
  );
  for (const { name, quantity } of places) {
    const value = canonicalValue(quantity);
    const known = least.get(name);
    if (!known || value.lessThan(known)) least.set(name, value);
  }
  return new Map(places.map((leaf) => [leaf, least.get(leaf.name) as Decimal]));
}

/** So many times a value, or for what is counted so many more. */
function other(
  leaf: Leaf,
  origin: Decimal | undefined,
  times: string,
  more: number,
): { value: unknown; si: number } {
  const { quantity, plain } = leaf;
  const value = canonicalValue(quantity);
  if (plain) return { value: value.toNumber() + more, si: value.toNumber() + more };
  const size = origin ? value.minus(origin) : value;
  const moved = size.isZero()
    ? value.plus(new Decimal('0.01').times(more))
    : value.plus(size.times(times).minus(size));
  const instead = newQuantity(quantity.dimension, moved, unitShown(quantity));
  return { value: instead, si: siOf(instead) };
}

/** More values than this are a table: none of them is tried alone. */
const MOST_LEAVES = 60;

/** The run with another value. */
function seen(
  scene: Scene,
  leaf: Leaf,
  { origins }: Probed,
  ...[times, more]: readonly [string, number]
): Seen | undefined {
  const { value, si } = other(leaf, origins.get(leaf), times, more);
  const edits: readonly Edit[] = [{ on: 'input', path: leaf.path, value, leaf, si }];
  const result = rerun(scene, edits);
  return result && { x: si, graph: graphAt(scene, result, edits), figures: readOff(scene, result.figures) };
}

const same = (a: Predicted, b: Predicted): boolean => a.every((one, i) => one === b[i]);

interface Probed extends Pick<Scene, 'followed' | 'settled' | 'guesses' | 'samples'> {
  readonly origins: ReadonlyMap<Leaf, Decimal>;
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
const AWAY = ['1.4', 3] as const;

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
const mayJump = ({ graph, isInput, counts }: Scene): boolean =>
  graph.some(({ tree, takes }) =>
    takes.some(
      ({ quantity, from, si }) =>
        (!tree || from === undefined) &&
        quantity.dimension === 'count' &&
        !isInput(quantity) &&
        // A count of the input is read anew wherever it is taken.
        !(tree && counts.has(si)),
    ),
  );

/** A count may stay as it is a little off, and be another far off: what follows it is guessed from there. */
function probeUnfelt(scene: Scene, leaf: Leaf, probes: Probed): void {
  for (const [times, more] of [FAR, HALF]) {
    const far = seen(scene, leaf, probes, times, more);
    if (!far) continue;
    probes.samples.get(leaf)?.push(far);
    if (same(far.figures, scene.base)) continue;
    const response = responseOf(baseOf(scene, leaf), far, undefined, isOutcomeOf(scene));
    if (response) probes.guesses.set(leaf, response);
    return;
  }
}

/** Far off on either side another count may be needed. */
const holdsFar = (scene: Scene, leaf: Leaf, response: Response, probes: Probed): boolean =>
  [FAR, HALF].every(([times, more]) => {
    const far = seen(scene, leaf, probes, times, more);
    if (far) probes.samples.get(leaf)?.push(far);
    return !far || holdsAt(scene, leaf, response, far);
  });

/** What is felt in proportion is settled; of what is felt otherwise, or not at all, more must be run. */
function probeNear(scene: Scene, leaf: Leaf, probes: Probed): Seen | 'unfelt' | undefined {
  const { followed, settled, guesses, samples } = probes;
  const near = seen(scene, leaf, probes, ...NEAR);
  if (!near) return undefined;
  samples.set(leaf, [near]);
  const base = baseOf(scene, leaf);
  const response = responseOf(base, near, undefined, isOutcomeOf(scene));
  if (response) guesses.set(leaf, response);
  const unfelt = same(near.figures, scene.base);
  // What is felt in the steps may be rounded away in the end: how it is felt farther off, they tell as well.
  const isTold = unfelt && response !== undefined && response.starts.length > 0;
  if (isTold && isSettled(response, base, near) && holdsFar(scene, leaf, response, probes)) {
    followed.set(leaf, response);
    settled.add(leaf);
    return undefined;
  }
  if (unfelt) return 'unfelt';
  if (!response || !isSettled(response, base, near)) return near;
  if (!holdsAt(scene, leaf, response, near)) return undefined;
  if (mayJump(scene) && !holdsFar(scene, leaf, response, probes)) return undefined;
  followed.set(leaf, response);
  settled.add(leaf);
  return undefined;
}

/** Runs that a curve goes through, and one more that proves it. */
const PROVED = 3;

/** What is felt otherwise: a curve through two runs, if a third that it was not made of lies on it. */
function probeFar(scene: Scene, leaf: Leaf, near: Seen, probes: Probed): void {
  const { followed, guesses, samples } = probes;
  const some = [near];
  // One side may be refused.
  for (const [times, more] of [FAR, HALF, AWAY]) {
    const one = some.length < PROVED ? seen(scene, leaf, probes, times, more) : undefined;
    if (one) some.push(one);
  }
  samples.set(leaf, some);
  const response = responseOf(baseOf(scene, leaf), near, some[1], isOutcomeOf(scene));
  if (response) guesses.set(leaf, response);
  const isProved = some.length === PROVED;
  if (response && isProved && some.every((one) => holdsAt(scene, leaf, response, one)))
    followed.set(leaf, response);
}

/** The share of what may be run that is kept for what the steps do not tell. */
const KEPT = 0.5;

function each<T>(all: readonly T[], more: () => boolean, one: (of: T) => void): void {
  for (const of of all) {
    if (!more()) return;
    one(of);
  }
}

/** The scene with what follows each value of the input. */
export function probed(scene: Scene, { leaves }: Places): Scene {
  const found: Probed = {
    origins: originsOf(leaves),
    followed: new Map(),
    settled: new Set(),
    guesses: new Map(),
    samples: new Map(),
  };
  const kept = scene.budget.left * KEPT;
  const otherwise: (readonly [Leaf, Seen])[] = [];
  const unfelt: Leaf[] = [];
  for (const leaf of leaves.slice(0, MOST_LEAVES)) {
    if (scene.budget.left <= kept) break;
    const near = probeNear(scene, leaf, found);
    if (near === 'unfelt') unfelt.push(leaf);
    else if (near) otherwise.push([leaf, near]);
  }
  const more = (): boolean => scene.budget.left > kept;
  // A little off, all values come before one of them is moved far.
  if (mayJump(scene)) each(unfelt, more, (leaf) => probeUnfelt(scene, leaf, found));
  each(otherwise, more, ([leaf, near]) => probeFar(scene, leaf, near, found));
  const assumed = assumedValues(scene);
  for (const [leaf, response] of assumed) found.followed.set(leaf, response);
  return { ...scene, ...found, assumed: [...assumed.keys()] };
}

/** Whether the steps take what stands in a table: a size that goes with another far off. */
const mayStep = ({ graph }: Scene): boolean =>
  graph.some(({ takes }) =>
    takes.some(({ quantity: q, from, given }) => from === undefined && !given && q.dimension !== 'ratio'),
  );

/**
 * Values that are felt in proportion a little off, and otherwise far off, as where another size of a table goes with
 * them: they are followed no more.
 */
export function doubted(scene: Scene): ReadonlySet<Leaf> {
  const found = new Set<Leaf>();
  if (mayJump(scene) || !mayStep(scene)) return found;
  for (const leaf of scene.settled) {
    const response = scene.followed.get(leaf);
    if (scene.budget.spent || !response) break;
    if (!holdsFar(scene, leaf, response, { ...scene, origins: originsOf([leaf]) })) found.add(leaf);
  }
  for (const leaf of found) {
    scene.settled.delete(leaf);
    scene.followed.delete(leaf);
  }
  return found;
}

/** Runs of a search, at least and at most. */
const LEAST_RUNS = 40;
const MOST_RUNS = 160;
/** A search stops long before where a slip is found: it may take more where none is. */
const WORTH = 270;
/** Cells that all of them may take: some heavy ones take as many in one run. */
const WORK = 6_000_000;
/** What may be run to see that what was found holds, and the share of the work that it may take. */
const LAST_RUNS = 24;
const LAST_WORK = 0.4;

/** The scene of a result, before anything was tried. */
export function sceneOf(
  calculation: AnyCalculation,
  input: unknown,
  result: AnyResult,
  places: Places,
  claims: readonly ReadClaim[],
  known: PartsKnown = new Map(),
): Scene {
  const own = new Set(places.leaves.map(({ quantity }) => quantity));
  const isInput = (q: Quantity): boolean => own.has(q);
  const all = wholeOf(result);
  const graphOfAll = wholeGraph(all, isInput);
  const lookedAt = partsFor(
    graphOfAll,
    all,
    claims.map(({ reckoned }) => stepIn(reckoned, graphOfAll, all)),
  );
  const whole = all.parts ? wholeOf(result, lookedAt) : all;
  const graph = all.parts ? wholeGraph(whole, isInput) : graphOfAll;
  const nodes = claims.map(({ reckoned }) => stepIn(reckoned, graph, whole));
  const base = claims.map(({ reckoned }) => siOf(reckoned));
  const runs = Math.min(MOST_RUNS, runsWorth(input, result, LEAST_RUNS, WORTH));
  return {
    calculation,
    input,
    result,
    graph,
    whole,
    lookedAt,
    counts: new Set(places.leaves.filter(({ plain }) => plain).map(({ quantity }) => siOf(quantity))),
    isInput,
    claims,
    nodes,
    base,
    gives: replayed(graph, {}, IN_BINARY),
    followed: new Map(),
    settled: new Set(),
    guesses: new Map(),
    assumed: [],
    samples: new Map(),
    known,
    budget: new Budget(runs, WORK),
    last: new Budget(LAST_RUNS, WORK * LAST_WORK),
    runs: new Map(),
    together: [],
    graphs: new Map(),
  };
}
