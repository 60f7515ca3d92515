/**
 * One calculation on one input, ready to be tried with slips: what each claimed figure would be.
 *
 * Where a figure is the outcome of a printed step, a slip is tried by reckoning the steps again, which costs a hundredth
 * of the calculation. What of the steps follows a value of the input is found once for each value, from one or two runs
 * with another. All else is tried by the calculation itself, so long as the budget lasts.
 */
import { Decimal } from '../quantity/decimal';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import type { FigureSet, Result } from '../reckoning/result';
import type { ReadClaim } from './claims';
import { runsWorth } from './effort';
import { figureAt } from './figure-places';
import {
  type Change,
  type Graph,
  graphOf,
  IN_BINARY,
  type Onward,
  replay,
  replayExactly,
  replayed,
  stepOf,
} from './graph';
import type { HandOn } from './hands';
import { type AnyCalculation, type Leaf, type Places, withValue } from './input-places';
import { type Curve, isSettled, type Response, responseOf, type Seen } from './response';
import { exactSiOf, fromSi, siOf } from './scale';
import type { Edit, Twist } from './slip';
import { twisted, twistedExactly } from './twist';

/** Results with other figures have them elsewhere. */
type AnyResult = Result<FigureSet>;

/** What the claimed figures would be, in SI units; not a number where there is none. */
export type Predicted = readonly number[];

/** What is the same for all slips that are tried. */
export interface Scene {
  readonly calculation: AnyCalculation;
  readonly input: unknown;
  readonly result: AnyResult;
  readonly graph: Graph;
  /** Tells a value that is the very one of the input. */
  readonly isInput: (q: Quantity) => boolean;
  readonly claims: readonly ReadClaim[];
  /** The step whose outcome each claimed figure is. */
  readonly nodes: readonly (number | undefined)[];
  readonly base: Predicted;
  /** All outcomes, as the steps give them. */
  readonly gives: readonly number[];
  /** Values whose slips the steps alone tell, with what follows them there. */
  readonly followed: ReadonlyMap<Leaf, Response>;
  /** Values that no claimed figure depends on. */
  readonly idle: ReadonlySet<Leaf>;
  /** What may still be run. */
  readonly budget: { runs: number };
  /** The steps of what was run with an edit. */
  readonly runs: WeakMap<Edit, AnyResult>;
  readonly graphs: WeakMap<AnyResult, Graph>;
}

type EditOn<K extends Edit['on']> = Extract<Edit, { on: K }>;
const editsOn = <K extends Edit['on']>(on: K, edits: readonly Edit[]): EditOn<K>[] =>
  edits.filter((one): one is EditOn<K> => one.on === on);

const withEdits = (input: unknown, edits: readonly Edit[]): unknown =>
  editsOn('input', edits).reduce((whole, { path, value }) => withValue(whole, path, value), input);

/** Run the calculation with the edits to its input; `undefined` where it refuses, or where no more may be run. */
export function rerun(
  scene: Pick<Scene, 'calculation' | 'input' | 'result' | 'budget'>,
  edits: readonly Edit[],
): AnyResult | undefined {
  if (scene.budget.runs <= 0) return undefined;
  scene.budget.runs -= 1;
  const outcome = scene.calculation.attempt(withEdits(scene.input, edits), { system: scene.result.system });
  return outcome.ok ? outcome.result : undefined;
}

type Slipped<T> = (gives: T, t: Twist) => T;

function changeOf<T>(edits: readonly Edit[], twist: Slipped<T>): Change<T> {
  const trees = new Map(editsOn('step', edits).map((one) => [one.step, one.tree] as const));
  const outcomes = new Map(editsOn('outcome', edits).map((one) => [one.step, one.twist] as const));
  return {
    ...(trees.size > 0 ? { tree: (i: number) => trees.get(i) } : {}),
    ...(outcomes.size > 0
      ? {
          outcome: (i: number, gives: T) =>
            outcomes.has(i) ? twist(gives, outcomes.get(i) as Twist) : gives,
        }
      : {}),
  };
}

/** A value of the input with what stands in its place. */
interface Moved {
  readonly response: Response;
  readonly x: number;
}

const movedOf = (scene: Scene, edits: readonly Edit[]): Moved[] =>
  editsOn('input', edits).map(({ leaf, si }) => ({
    response: scene.followed.get(leaf as Leaf) as Response,
    x: si as number,
  }));

/** What becomes of a value that follows several: each alone, one after the other. */
function following(base: number, curves: readonly { curve: Curve | undefined; x: number }[]): number {
  let value = base;
  for (const { curve, x } of curves) {
    if (!curve) continue;
    const alone = curve(x);
    value = base > 0 && alone > 0 && value > 0 ? (value * alone) / base : value + alone - base;
  }
  return value;
}

/** The change of the steps by edits, in binary numbers, with the steps that it begins at. */
function changed(
  scene: Scene,
  graph: Graph,
  edits: readonly Edit[],
): { change: Change<number>; starts: Set<number> } {
  const own = changeOf(edits, twisted);
  const moved = movedOf(scene, edits);
  const starts = new Set(edits.flatMap((one) => ('step' in one ? [one.step] : [])));
  for (const { response } of moved) for (const step of response.starts) starts.add(step);
  if (moved.length === 0) return { change: own, starts };
  const by = (of: (response: Response) => Curve | undefined): { curve: Curve | undefined; x: number }[] =>
    moved.map(({ response, x }) => ({ curve: of(response), x }));
  const given = moved.some(({ response }) => response.given.size > 0);
  return {
    change: {
      ...own,
      taken: (i, symbol) => {
        const place = `${i} ${symbol}`;
        if (!moved.some(({ response }) => response.taken.has(place))) return undefined;
        return following(
          graph[i]?.bySymbol.get(symbol)?.si as number,
          by(({ taken }) => taken.get(place)),
        );
      },
      ...(given
        ? {
            outcome: (i, gives) => {
              const to = graph[i]?.tree
                ? gives
                : following(
                    gives,
                    by((response) => response.given.get(i)),
                  );
              return own.outcome ? own.outcome(i, to) : to;
            },
          }
        : {}),
    },
    starts,
  };
}

const exactChange = (edits: readonly Edit[]): Change<Decimal> => changeOf(edits, twistedExactly);

const NAN = Number.NaN;

const readOff = (scene: Pick<Scene, 'claims'>, figures: object): number[] =>
  scene.claims.map(({ path, reckoned }) => {
    const q = figureAt(figures, path);
    return q && q.dimension === reckoned.dimension ? siOf(q) : NAN;
  });

const changesSteps = (edits: readonly Edit[]): boolean =>
  edits.some(({ on }) => on === 'step' || on === 'outcome');

/** Whether every edit of the input is of a value that the steps alone tell. */
const isFollowed = (scene: Scene, edits: readonly Edit[]): boolean =>
  editsOn('input', edits).every(
    ({ leaf, si }) => leaf !== undefined && si !== undefined && scene.followed.has(leaf),
  );

function byClaims<T>(scene: Scene, edits: readonly Edit[], values: readonly T[], twist: Slipped<T>): T[] {
  const own = editsOn('claim', edits);
  if (own.length === 0) return [...values];
  return values.map((value, i) =>
    own
      .filter(({ figure }) => figure === scene.claims[i]?.figure)
      .reduce((now, one) => twist(now, one.twist), value),
  );
}

/** What the steps tell of the claimed figures; those that are no outcome follow the input, or stay as they are. */
function byReplay(
  scene: Scene,
  edits: readonly Edit[],
  graph: Graph,
  base: Predicted,
  onward?: Onward<number>,
): number[] {
  const { change, starts } = changed(scene, graph, edits);
  const gives =
    starts.size === 0 && onward ? onward.base : replay(graph, change, onward && { ...onward, starts });
  const moved = movedOf(scene, edits);
  return scene.nodes.map((node, i) =>
    node === undefined
      ? following(
          base[i] as number,
          moved.map(({ response, x }) => ({ curve: response.figures.get(i), x })),
        )
      : // A run with other steps may have fewer of them.
        (gives[node] ?? NAN),
  );
}

/** Steps of another run are those of this one only where they read the same. */
function sameSteps(a: Graph, b: Graph, edits: readonly Edit[]): boolean {
  // Where there are more or fewer, a step of one number is not the same in both.
  if (a.length !== b.length) return false;
  return edits.every((one) => {
    if (one.on !== 'step' && one.on !== 'outcome') return true;
    return a[one.step]?.step.formula === b[one.step]?.step.formula;
  });
}

/** Edits of the input alone: a run with them is kept. */
const inputsOf = (edits: readonly Edit[]): readonly Edit[] => edits.filter(({ on }) => on === 'input');
const othersOf = (edits: readonly Edit[]): readonly Edit[] => edits.filter(({ on }) => on !== 'input');

/** The result with edits to the input, once. */
function resultWith(scene: Scene, edits: readonly Edit[]): AnyResult | undefined {
  const inputs = inputsOf(edits);
  const [first] = inputs;
  const known = first && inputs.length === 1 ? scene.runs.get(first) : undefined;
  if (known) return known;
  const result = rerun(scene, inputs);
  if (result && first && inputs.length === 1) scene.runs.set(first, result);
  return result;
}

/** The steps of another run of the same input, with other values in some places, once. */
function graphAt(scene: Scene, result: AnyResult, edits: readonly Edit[]): Graph {
  const known = scene.graphs.get(result);
  if (known) return known;
  const instead = new Set<unknown>(editsOn('input', edits).map(({ value }) => value));
  const graph = graphOf(result.working, (q) => scene.isInput(q) || instead.has(q));
  scene.graphs.set(result, graph);
  return graph;
}

/** What a run tells, with steps of its own that go wrong. */
function byRun(scene: Scene, edits: readonly Edit[]): number[] | undefined {
  const result = resultWith(scene, edits);
  if (!result) return undefined;
  const values = readOff(scene, result.figures);
  if (!changesSteps(edits)) return values;
  const graph = graphAt(scene, result, edits);
  if (!sameSteps(graph, scene.graph, edits)) return undefined;
  return byReplay(scene, othersOf(edits), graph, values);
}

/** What the claimed figures would be with these slips; `undefined` where that cannot be told. */
export function predicted(scene: Scene, edits: readonly Edit[]): Predicted | undefined {
  const toInput = edits.some(({ on }) => on === 'input');
  const onward = { base: scene.gives, starts: new Set<number>() };
  const values =
    toInput && !isFollowed(scene, edits)
      ? byRun(scene, edits)
      : toInput || changesSteps(edits)
        ? byReplay(scene, edits, scene.graph, scene.base, onward)
        : [...scene.base];
  return values && byClaims(scene, edits, values, twisted);
}

/** How somebody who rounds on the way would come to the claimed figures with these slips. */
export function byHand(
  scene: Scene,
  edits: readonly Edit[],
  hand: (graph: Graph) => HandOn,
): Predicted | undefined {
  const followed = isFollowed(scene, edits);
  const result = followed ? scene.result : resultWith(scene, edits);
  if (!result) return undefined;
  const graph = followed ? scene.graph : graphAt(scene, result, edits);
  const own = followed ? edits : othersOf(edits);
  if (graph !== scene.graph && !sameSteps(graph, scene.graph, own)) return undefined;
  const { numbers, taken, outcomes } = hand(graph);
  const { change } = changed(scene, graph, own);
  const rounded = (i: number, si: number): number => (outcomes[i] as (si: number) => number)(si);
  const twists = new Map(editsOn('outcome', own).map((one) => [one.step, one.twist] as const));
  const gives = replayed<number>(
    graph,
    {
      ...change,
      taken: (i, symbol) => {
        const to = change.taken?.(i, symbol);
        return to === undefined ? undefined : taken(graph[i]?.bySymbol.get(symbol)?.quantity as Quantity, to);
      },
      outcome: (i, si) => {
        const twist = twists.get(i);
        // A digit goes wrong in what was written; all else goes wrong before.
        if (twist?.digits) return twisted(rounded(i, si), twist);
        return rounded(i, change.outcome ? change.outcome(i, si) : si);
      },
    },
    numbers,
  );
  const base = followed ? (predicted(scene, edits) as Predicted) : readOff(scene, result.figures);
  const values = scene.nodes.map((node, i) =>
    node === undefined ? (base[i] as number) : (gives[node] ?? NAN),
  );
  return byClaims(scene, edits, values, twisted);
}

/** The same exactly, as quantities: by the calculation itself wherever the input is changed. */
export function told(scene: Scene, edits: readonly Edit[]): (Quantity | undefined)[] | undefined {
  const { claims, nodes } = scene;
  const toInput = edits.some(({ on }) => on === 'input');
  const result = toInput ? resultWith({ ...scene, budget: { runs: 1 } }, edits) : scene.result;
  if (!result) return undefined;
  const graph = result === scene.result ? scene.graph : graphAt(scene, result, edits);
  const figures = claims.map(({ path }) => figureAt(result.figures, path));
  const gives =
    changesSteps(edits) && sameSteps(graph, scene.graph, edits)
      ? replayExactly(graph, exactChange(othersOf(edits)))
      : undefined;
  const values = figures.map((q, i) => {
    const node = nodes[i];
    return gives && node !== undefined ? gives[node] : q && exactSiOf(q);
  });
  return byClaims(scene, edits, values, (value, t) => value && twistedExactly(value, t)).map((si, i) => {
    const like = claims[i]?.reckoned;
    return si && like && si.isFinite() ? fromSi(like.dimension, si, unitShown(like)) : undefined;
  });
}

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
  readonly idle: Set<Leaf>;
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
function probeOne(scene: Scene, leaf: Leaf, { followed, idle }: Probed): void {
  const near = seen(scene, leaf, '1.0078125', 1);
  if (!near) return;
  const base: Seen = { x: siOf(leaf.quantity), graph: scene.graph, figures: scene.base };
  const isOutcome = (i: number): boolean => scene.nodes[i] !== undefined;
  const first = responseOf(base, near, undefined, isOutcome);
  const still = same(near.figures, scene.base);
  const put = (response: Response | undefined): void => {
    if (response && holdsAt(scene, leaf, response, near)) followed.set(leaf, response);
  };
  if (first && !still && isSettled(first, base, near)) {
    put(first);
    return;
  }
  const [far, half] = FAR.map(([times, more], i) =>
    i === 0 || still ? seen(scene, leaf, times, more) : undefined,
  );
  if (still) {
    if ([far, half].every((one) => !one || same(one.figures, scene.base))) idle.add(leaf);
    return;
  }
  if (first) put(responseOf(base, near, far ?? half, isOutcome));
}

/** Try each value of the input. */
function probe(scene: Scene, leaves: readonly Leaf[]): Probed {
  const probed: Probed = { followed: new Map(), idle: new Set() };
  // Half of what may be run is kept for parts left out and for values that the steps do not tell.
  const kept = scene.budget.runs / 2;
  for (const leaf of leaves.slice(0, MOST_LEAVES)) {
    if (scene.budget.runs <= kept) break;
    probeOne(scene, leaf, probed);
  }
  return probed;
}

/** Runs of a search, at least and at most. */
const LEAST_RUNS = 24;
const MOST_RUNS = 160;

/** Make a scene ready. */
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
  const scene: Scene = {
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
    idle: new Set(),
    budget,
    runs: new WeakMap(),
    graphs: new WeakMap(),
  };
  return { ...scene, ...probe(scene, places.leaves) };
}
