/**
 * One calculation on one input, ready to be tried with slips: what each claimed figure would be.
 *
 * Where a figure is the outcome of a printed step, a slip is tried by reckoning the steps again, which costs a hundredth
 * of the calculation. What of the steps follows a value of the input is found once for each value, from one or two runs
 * with another. All else is tried by the calculation itself, so long as the budget lasts.
 */
import type { Decimal } from '../quantity/decimal';
import { type Quantity, unitShown } from '../quantity/quantity';
import type { PartsKnown } from '../reckoning/part-working';
import type { FigureSet, Result } from '../reckoning/result';
import type { Budget } from './budget';
import type { ReadClaim } from './claims';
import { figureAt } from './figure-places';
import { type Change, type Graph, type Onward, replay, replayExactly } from './graph';
import { type AnyCalculation, COORDINATE, type Leaf, withValue } from './input-places';
import type { Curve, Response } from './response';
import { exactSiOf, fromSi, siOf } from './scale';
import type { Edit, OtherFigure, Twist } from './slip';
import { twisted, twistedExactly } from './twist';
import { runWhole, type Whole, wholeGraph, wholeOf } from './whole-working';

/** Results with other figures have them elsewhere. */
export type AnyResult = Result<FigureSet>;

/** What the claimed figures would be, in SI units; not a number where there is none. */
export type Predicted = readonly number[];

/** What the claimed figures are with another value in one place of the input. */
export interface Sample {
  readonly x: number;
  readonly figures: Predicted;
}

/** What is the same for all slips that are tried. */
export interface Scene {
  readonly calculation: AnyCalculation;
  readonly input: unknown;
  readonly result: AnyResult;
  readonly graph: Graph;
  /** The steps of the graph with the parts that they are of. */
  readonly whole: Whole;
  /** The parts that the claimed figures come from. */
  readonly lookedAt: ReadonlySet<string>;
  /** Plain counts of the input. */
  readonly counts: ReadonlySet<number>;
  /** Tells a value that is the very one of the input. */
  readonly isInput: (q: Quantity) => boolean;
  readonly claims: readonly ReadClaim[];
  /** The step whose outcome each claimed figure is. */
  readonly nodes: readonly (number | undefined)[];
  readonly base: Predicted;
  /** All outcomes, as the steps give them. */
  readonly gives: readonly number[];
  /** Values whose slips the steps alone tell, with what follows them there; one that was doubted is taken out again. */
  readonly followed: Map<Leaf, Response>;
  /** Of these, values that are felt in proportion only: nothing about them is a guess. */
  readonly settled: Set<Leaf>;
  /** What follows other values, as far as a few runs tell: some of it is felt in what no step shows. */
  readonly guesses: Map<Leaf, Response>;
  /** Values that are assumed and that the steps take; they are followed too. */
  readonly assumed: readonly Leaf[];
  /** What the claimed figures were with other values in a place. */
  readonly samples: Map<Leaf, Sample[]>;
  /** Parts of the whole that were reckoned. */
  readonly known: PartsKnown;
  /** What may still be run. */
  readonly budget: Budget;
  /** What may be run to see that what was found holds. */
  readonly last: Budget;
  /** What was run with an edit; nothing where that was refused. */
  readonly runs: Map<Edit, AnyResult | undefined>;
  /** What was run with several. */
  readonly together: (readonly [edits: readonly Edit[], result: AnyResult | undefined])[];
  readonly graphs: Map<AnyResult, Graph>;
}

type EditOn<K extends Edit['on']> = Extract<Edit, { on: K }>;
export const editsOn = <K extends Edit['on']>(on: K, edits: readonly Edit[]): EditOn<K>[] =>
  edits.filter((one): one is EditOn<K> => one.on === on);

const withEdits = (input: unknown, edits: readonly Edit[]): unknown =>
  editsOn('input', edits).reduce((whole, { path, value }) => withValue(whole, path, value), input);

/** Run the calculation with the edits to its input; `undefined` where it refuses, or where no more may be run. */
export function rerun(
  scene: Pick<Scene, 'calculation' | 'input' | 'result' | 'budget' | 'known'>,
  edits: readonly Edit[],
): AnyResult | undefined {
  return scene.budget.run(() => {
    const input = withEdits(scene.input, edits);
    const run = (): AnyResult | undefined => {
      const outcome = scene.calculation.attempt(input, { system: scene.result.system });
      return outcome.ok ? outcome.result : undefined;
    };
    return runWhole(run, (result) => result, scene.known);
  });
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
  /** Corners that are moved the same way add up in what they enclose. */
  readonly adds: boolean;
}

const movedOf = (scene: Scene, edits: readonly Edit[]): Moved[] =>
  editsOn('input', edits).map(({ leaf, si }) => ({
    response: scene.followed.get(leaf as Leaf) as Response,
    x: si as number,
    adds: COORDINATE.test((leaf as Leaf).name),
  }));

interface Along extends Pick<Moved, 'x' | 'adds'> {
  readonly curve: Curve | undefined;
}

/** What becomes of a value that follows several: each alone, one after the other. */
function following(base: number, curves: readonly Along[]): number {
  let value = base;
  for (const { curve, x, adds } of curves) {
    if (!curve) continue;
    const alone = curve(x);
    value = !adds && base > 0 && alone > 0 && value > 0 ? (value * alone) / base : value + alone - base;
  }
  return value;
}

/** The change of the steps by edits, in binary numbers, with the steps that it begins at. */
export function changed(
  scene: Scene,
  graph: Graph,
  edits: readonly Edit[],
): { change: Change<number>; starts: Set<number> } {
  const own = changeOf(edits, twisted);
  const moved = movedOf(scene, edits);
  const starts = new Set(edits.flatMap((one) => ('step' in one ? [one.step] : [])));
  for (const { response } of moved) for (const step of response.starts) starts.add(step);
  if (moved.length === 0) return { change: own, starts };
  const by = (of: (response: Response) => Curve | undefined): Along[] =>
    moved.map(({ response, x, adds }) => ({ curve: of(response), x, adds }));
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

export const readOff = (scene: Pick<Scene, 'claims'>, figures: object): number[] =>
  scene.claims.map(({ path, reckoned }) => {
    const q = figureAt(figures, path);
    return q && q.dimension === reckoned.dimension ? siOf(q) : NAN;
  });

const changesSteps = (edits: readonly Edit[]): boolean =>
  edits.some(({ on }) => on === 'step' || on === 'outcome');

/** Whether every edit of the input is of a value that the steps alone tell, and of which no run tells more. */
export const isFollowed = (scene: Scene, edits: readonly Edit[]): boolean =>
  editsOn('input', edits).every(
    (one) =>
      one.leaf !== undefined && one.si !== undefined && scene.followed.has(one.leaf) && !scene.runs.has(one),
  );

/** What another figure comes to, where it stands in the place of one. */
type Other<T> = (of: OtherFigure) => T;

export function byClaims<T>(
  scene: Scene,
  edits: readonly Edit[],
  values: readonly T[],
  twist: Slipped<T>,
  other: Other<T>,
): T[] {
  const own = editsOn('claim', edits);
  if (own.length === 0) return [...values];
  return values.map((value, i) =>
    own
      .filter(({ figure }) => figure === scene.claims[i]?.figure)
      .reduce((now, one) => (one.twist.of ? other(one.twist.of) : twist(now, one.twist)), value),
  );
}

/** Another figure, as much more or less as the steps have it than without any slip: cents may be rounded otherwise there. */
export const otherIn =
  ({ gives: base }: Scene, gives: readonly number[]): Other<number> =>
  ({ step, si, scale }) => {
    const own = step === undefined ? 0 : (base[step] as number);
    return own === 0 ? si * scale : (si * scale * (gives[step as number] ?? NAN)) / own;
  };

/** The same as a run has it. */
const otherOf =
  ({ figures }: AnyResult): Other<number> =>
  ({ path, scale }) => {
    const q = figureAt(figures, path);
    return q ? siOf(q) * scale : NAN;
  };

/** What is told of the claimed figures, and of others. */
interface Told {
  readonly values: number[];
  readonly other: Other<number>;
}

/** What the steps tell of the claimed figures; those that are no outcome follow the input, or stay as they are. */
export function byReplay(
  scene: Scene,
  edits: readonly Edit[],
  graph: Graph,
  base: Predicted,
  onward?: Onward<number>,
): Told {
  const { change, starts } = changed(scene, graph, edits);
  const gives =
    starts.size === 0 && onward ? onward.base : replay(graph, change, onward && { ...onward, starts });
  const moved = movedOf(scene, edits);
  const values = scene.nodes.map((node, i) =>
    node === undefined
      ? following(
          base[i] as number,
          moved.map(({ response, x, adds }) => ({ curve: response.figures.get(i), x, adds })),
        )
      : // A run with other steps may have fewer of them.
        (gives[node] ?? NAN),
  );
  return { values, other: otherIn(scene, gives) };
}

/** Steps of another run are those of this one only where they read the same. */
export function sameSteps(a: Graph, b: Graph, edits: readonly Edit[]): boolean {
  // Where there are more or fewer, a step of one number is not the same in both.
  if (a.length !== b.length) return false;
  return edits.every((one) => {
    if (one.on !== 'step' && one.on !== 'outcome') return true;
    return a[one.step]?.step.formula === b[one.step]?.step.formula;
  });
}

/** Edits of the input alone: a run with them is kept. */
const inputsOf = (edits: readonly Edit[]): readonly Edit[] => edits.filter(({ on }) => on === 'input');
export const othersOf = (edits: readonly Edit[]): readonly Edit[] => edits.filter(({ on }) => on !== 'input');

/** The result with edits to the input, once. */
export function resultWith(scene: Scene, edits: readonly Edit[]): AnyResult | undefined {
  const inputs = inputsOf(edits);
  const [first] = inputs;
  const alone = inputs.length === 1 ? first : undefined;
  if (alone && scene.runs.has(alone)) return scene.runs.get(alone);
  const same = scene.together.find(
    ([own]) => own.length === inputs.length && own.every((one, i) => one === inputs[i]),
  );
  if (same) return same[1];
  const may = !scene.budget.spent;
  const result = rerun(scene, inputs);
  if (may && alone) scene.runs.set(alone, result);
  else if (may) scene.together.push([inputs, result]);
  return result;
}

/** The steps of another run of the same input, with other values in some places, once. */
export function graphAt(scene: Scene, result: AnyResult, edits: readonly Edit[]): Graph {
  const known = scene.graphs.get(result);
  if (known) return known;
  const instead = new Set<unknown>(editsOn('input', edits).map(({ value }) => value));
  const graph = wholeGraph(wholeOf(result, scene.lookedAt), (q) => scene.isInput(q) || instead.has(q));
  scene.graphs.set(result, graph);
  return graph;
}

/** What a run tells, with steps of its own that go wrong. */
function byRun(scene: Scene, edits: readonly Edit[]): Told | undefined {
  const result = resultWith(scene, edits);
  if (!result) return undefined;
  const values = readOff(scene, result.figures);
  if (!changesSteps(edits)) return { values, other: otherOf(result) };
  const graph = graphAt(scene, result, edits);
  if (!sameSteps(graph, scene.graph, edits)) return undefined;
  return byReplay(scene, othersOf(edits), graph, values);
}

/** What the claimed figures would be with these slips; `undefined` where that cannot be told. */
export function predicted(scene: Scene, edits: readonly Edit[]): Predicted | undefined {
  const toInput = edits.some(({ on }) => on === 'input');
  const onward = { base: scene.gives, starts: new Set<number>() };
  const found =
    toInput && !isFollowed(scene, edits)
      ? byRun(scene, edits)
      : toInput || changesSteps(edits)
        ? byReplay(scene, edits, scene.graph, scene.base, onward)
        : { values: [...scene.base], other: otherIn(scene, scene.gives) };
  return found && byClaims(scene, edits, found.values, twisted, found.other);
}

/** The same exactly, as quantities: by the calculation itself wherever the input is changed. */
export function told(scene: Scene, edits: readonly Edit[]): (Quantity | undefined)[] | undefined {
  const { claims, nodes } = scene;
  const toInput = edits.some(({ on }) => on === 'input');
  const result = toInput ? resultWith({ ...scene, budget: scene.last }, edits) : scene.result;
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
  const other = ({ path, step, scale }: OtherFigure): Decimal | undefined => {
    const q = figureAt(result.figures, path);
    const own = gives && step !== undefined ? gives[step] : q && exactSiOf(q);
    return own?.times(scale);
  };
  return byClaims(scene, edits, values, (value, t) => value && twistedExactly(value, t), other).map(
    (si, i) => {
      const like = claims[i]?.claimed;
      return si && like && si.isFinite() ? fromSi(like.dimension, si, unitShown(like)) : undefined;
    },
  );
}
