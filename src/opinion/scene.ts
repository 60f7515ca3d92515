/**
 * One calculation on one input, ready to be tried with slips: what each claimed figure would be.
 *
 * Where a figure is the outcome of a printed step, and a value of the input enters by the printed steps alone, a slip
 * is tried by reckoning the steps again, which costs a hundredth of the calculation. Whether it enters by them alone is
 * tried once for each value: the calculation and the steps must say the same of a value near it. All else is tried by
 * the calculation itself, so long as the budget lasts.
 */
import { Decimal } from '../quantity/decimal';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import type { FigureSet, Result } from '../reckoning/result';
import type { ReadClaim } from './claims';
import { runsWorth } from './effort';
import { figureAt } from './figure-places';
import { type Change, type Graph, graphOf, replay, replayExactly, stepOf } from './graph';
import { type AnyCalculation, type Leaf, type Places, withValue } from './input-places';
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
  readonly claims: readonly ReadClaim[];
  /** The step whose outcome each claimed figure is. */
  readonly nodes: readonly (number | undefined)[];
  readonly base: Predicted;
  /** Values whose slips the steps alone tell. */
  readonly followed: ReadonlySet<Leaf>;
  /** Values that no claimed figure depends on. */
  readonly idle: ReadonlySet<Leaf>;
  /** What may still be run. */
  readonly budget: { runs: number };
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

function changeOf<T>(
  edits: readonly Edit[],
  value: (one: EditOn<'input'>) => T,
  twist: (gives: T, t: Twist) => T,
): Change<T> {
  const leaves = new Map(editsOn('input', edits).map((one) => [one.leaf?.quantity, value(one)] as const));
  const trees = new Map(editsOn('step', edits).map((one) => [one.step, one.tree] as const));
  const outcomes = new Map(editsOn('outcome', edits).map((one) => [one.step, one.twist] as const));
  return {
    ...(leaves.size > 0 ? { leaf: (q: Quantity) => leaves.get(q) } : {}),
    ...(trees.size > 0 ? { tree: (i: number) => trees.get(i) } : {}),
    ...(outcomes.size > 0
      ? {
          outcome: (i: number, gives: T) =>
            outcomes.has(i) ? twist(gives, outcomes.get(i) as Twist) : gives,
        }
      : {}),
  };
}

const binaryChange = (edits: readonly Edit[]): Change<number> =>
  changeOf(edits, ({ si }) => si as number, twisted);

const exactChange = (edits: readonly Edit[]): Change<Decimal> =>
  changeOf(
    edits,
    ({ value }) => (typeof value === 'number' ? new Decimal(value) : exactSiOf(value as Quantity)),
    twistedExactly,
  );

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

function byClaims<T>(
  scene: Scene,
  edits: readonly Edit[],
  values: readonly T[],
  twist: (value: T, t: Twist) => T,
): T[] {
  const own = editsOn('claim', edits);
  if (own.length === 0) return [...values];
  return values.map((value, i) =>
    own
      .filter(({ figure }) => figure === scene.claims[i]?.figure)
      .reduce((now, one) => twist(now, one.twist), value),
  );
}

/** What the steps tell of the claimed figures; those that are no outcome stay as they are. */
function byReplay(scene: Scene, edits: readonly Edit[], graph: Graph, base: Predicted): number[] {
  const gives = replay(graph, binaryChange(edits));
  return scene.nodes.map((node, i) => (node === undefined ? (base[i] as number) : (gives[node] as number)));
}

/** Steps of another run are those of this one only where they read the same. */
function sameSteps(a: Graph, b: Graph, edits: readonly Edit[]): boolean {
  return edits.every((one) => {
    if (one.on !== 'step' && one.on !== 'outcome') return true;
    return a[one.step]?.step.formula === b[one.step]?.step.formula;
  });
}

/** What a run tells, with steps of its own that go wrong. */
function byRun(scene: Scene, edits: readonly Edit[]): number[] | undefined {
  const result = rerun(scene, edits);
  if (!result) return undefined;
  const values = readOff(scene, result.figures);
  if (!changesSteps(edits)) return values;
  const graph = graphOf(result.working, () => false);
  if (!sameSteps(graph, scene.graph, edits)) return undefined;
  const stepsOnly = edits.filter(({ on }) => on === 'step' || on === 'outcome');
  return byReplay(scene, stepsOnly, graph, values);
}

/** What the claimed figures would be with these slips; `undefined` where that cannot be told. */
export function predicted(scene: Scene, edits: readonly Edit[]): Predicted | undefined {
  const toInput = edits.some(({ on }) => on === 'input');
  const values =
    toInput && !isFollowed(scene, edits)
      ? byRun(scene, edits)
      : toInput || changesSteps(edits)
        ? byReplay(scene, edits, scene.graph, scene.base)
        : [...scene.base];
  return values && byClaims(scene, edits, values, twisted);
}

/** The same exactly, as quantities: by the calculation itself wherever the input is changed. */
export function told(scene: Scene, edits: readonly Edit[]): (Quantity | undefined)[] | undefined {
  const { claims, nodes } = scene;
  const inputs = editsOn('input', edits);
  const result = inputs.length > 0 ? rerun({ ...scene, budget: { runs: 1 } }, edits) : scene.result;
  if (!result) return undefined;
  const graph = result === scene.result ? scene.graph : graphOf(result.working, () => false);
  const figures = claims.map(({ path }) => figureAt(result.figures, path));
  const gives =
    changesSteps(edits) && sameSteps(graph, scene.graph, edits)
      ? replayExactly(graph, exactChange(edits.filter(({ on }) => on !== 'input')))
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

/** A value near the one that stands there: what is counted, by one more. */
function near({ quantity, plain }: Leaf): { value: unknown; si: number } {
  const value = canonicalValue(quantity);
  if (plain) return { value: value.toNumber() + 1, si: value.toNumber() + 1 };
  const moved = value.isZero() ? new Decimal('0.01') : value.times('1.0078125');
  const other = newQuantity(quantity.dimension, moved, unitShown(quantity));
  return { value: other, si: siOf(other) };
}

const CLOSE = 1e-7;
export const alike = (a: number, b: number): boolean =>
  Math.abs(a - b) <= CLOSE * Math.max(Math.abs(a), Math.abs(b));

/** More values than this are a table: none of them is tried alone. */
const MOST_LEAVES = 60;

/** Try each value of the input once. */
function probe(scene: Scene, leaves: readonly Leaf[]): { followed: Set<Leaf>; idle: Set<Leaf> } {
  const followed = new Set<Leaf>();
  const idle = new Set<Leaf>();
  // Half of what may be run is kept for parts left out and for values that the steps do not tell.
  const kept = scene.budget.runs / 2;
  for (const leaf of leaves.slice(0, MOST_LEAVES)) {
    if (scene.budget.runs <= kept) break;
    const { value, si } = near(leaf);
    const edit: Edit = { on: 'input', path: leaf.path, value, leaf, si };
    const result = rerun(scene, [edit]);
    if (!result) continue;
    const run = readOff(scene, result.figures);
    if (run.every((one, i) => one === scene.base[i])) idle.add(leaf);
    const steps = byReplay(scene, [edit], scene.graph, scene.base);
    if (run.every((one, i) => alike(one, steps[i] as number))) followed.add(leaf);
  }
  return { followed, idle };
}

/** Runs of a search, at least and at most. */
const LEAST_RUNS = 12;
const MOST_RUNS = 110;

/** Make a scene ready. */
export function sceneOf(
  calculation: AnyCalculation,
  input: unknown,
  result: AnyResult,
  places: Places,
  claims: readonly ReadClaim[],
): Scene {
  const own = new Set(places.leaves.map(({ quantity }) => quantity));
  const graph = graphOf(result.working, (q) => own.has(q));
  const nodes = claims.map(({ reckoned }) => stepOf(reckoned, graph));
  const base = claims.map(({ reckoned }) => siOf(reckoned));
  const budget = { runs: runsWorth(input, result, LEAST_RUNS, MOST_RUNS) };
  const none = new Set<Leaf>();
  const scene: Scene = {
    calculation,
    input,
    result,
    graph,
    claims,
    nodes,
    base,
    followed: none,
    idle: none,
    budget,
  };
  return { ...scene, ...probe(scene, places.leaves) };
}
