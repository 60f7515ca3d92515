/**
 * Two slips together, where one explains too little.
 *
 * Most slips act as a factor on a claim: the factor of two is the product. So two that meet near what was claimed are
 * looked up among the results of single slips, and only the likeliest are reckoned. Where one slip explains some of the
 * claims already, the second is looked for on top of it, for it may act on what the first has changed.
 */
import { Budget } from './budget';
import { type Candidate, candidate, type Tried } from './candidate';
import { digitsOf } from './hands';
import type { Margin } from './likeness';
import { predicted, type Scene } from './scene';
import type { Slip } from './slip';

/** What two slips are looked for in. */
export interface Wanted {
  /** Single slips with what they give, the common ones first. */
  readonly tried: readonly Tried[];
  /** The same as they explain the claims, the likeliest first. */
  readonly singles: readonly Candidate[];
  /** Claims that need explaining. */
  readonly differing: readonly number[];
  /** The one that none explains. */
  readonly at: number;
  readonly scene: Scene;
  readonly own: readonly Margin[];
}

/** How much rarer two slips are than one. */
const TWO = 0.002;
/** Single slips that are put together: beyond them they are too rare in twos. */
const FIRST = 700;
/** Pairs that are reckoned. */
const PAIRS = 160;

/** Two slips at one place are one slip of another kind. */
const apart = (a: Slip, b: Slip): boolean =>
  !(a.input !== undefined && a.input === b.input) &&
  !(a.step !== undefined && a.step === b.step) &&
  !(a.figure !== undefined && a.figure === b.figure);

/**
 * How common two must be together to be told. One figure is given by some pair of rare slips whatever it is, which
 * explains nothing; several figures are not.
 */
const LEAST = { one: 8, several: 0.3 } as const;

const mayBeTold = ({ differing }: Wanted, a: Slip, b: Slip): boolean =>
  a.weight * b.weight >= (differing.length > 1 ? LEAST.several : LEAST.one);

const pairOf = (wanted: Wanted, a: Slip, b: Slip): Candidate[] => {
  if (!mayBeTold(wanted, a, b)) return [];
  const { scene, own } = wanted;
  const values = predicted(scene, [...a.edits, ...b.edits]);
  const made = values && candidate([a, b], values, a.weight * b.weight * TWO, scene, own);
  return made ? [made] : [];
};

/** By how much a claim may be off that two slips give, as they are put together and rounded. */
const roomOf = ({ claims }: Scene): number[] =>
  claims.map((claim) => (digitsOf(claim) > 2 ? 0.006 : 0.03) + claim.half / Math.abs(claim.si));

interface Near {
  readonly a: Slip;
  readonly b: Slip;
  readonly weight: number;
}

/** Results of single slips as logarithms of their factors, in the order of those of one claim. */
function tableOf({ tried, at, scene: { base } }: Wanted): { slip: Slip; logs: number[] }[] {
  return tried
    .slice(0, FIRST)
    .map(({ slip, values }) => ({ slip, logs: values.map((one, i) => Math.log(one / (base[i] as number))) }))
    .filter(({ logs }) => Number.isFinite(logs[at]))
    .sort((a, b) => (a.logs[at] as number) - (b.logs[at] as number));
}

/** The first of a table at or above a logarithm. */
function firstFrom(table: readonly { logs: number[] }[], at: number, least: number): number {
  let [low, high] = [0, table.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((table[middle]?.logs[at] as number) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Two whose factors come near every claim. */
function meeting(wanted: Wanted): Near[] {
  const { at, scene } = wanted;
  const table = tableOf(wanted);
  const goal = scene.claims.map(({ si }, i) => Math.log(si / (scene.base[i] as number)));
  const room = roomOf(scene);
  const found: Near[] = [];
  const fits = (x: readonly number[], y: readonly number[]): boolean =>
    goal.every(
      (one, i) =>
        !Number.isFinite(one) || Math.abs((x[i] as number) + (y[i] as number) - one) <= (room[i] as number),
    );
  table.forEach(({ slip: a, logs: x }, n) => {
    const rest = (goal[at] as number) - (x[at] as number);
    const least = rest - (room[at] as number);
    for (let m = Math.max(n + 1, firstFrom(table, at, least)); m < table.length; m += 1) {
      const { slip: b, logs: y } = table[m] as { slip: Slip; logs: number[] };
      if ((y[at] as number) > rest + (room[at] as number)) break;
      if (fits(x, y) && apart(a, b)) found.push({ a, b, weight: a.weight * b.weight });
    }
  });
  return found.sort((p, q) => q.weight - p.weight).slice(0, PAIRS);
}

/** Slips on top of which a second is looked for. */
const PARTLY = 6;
/** Values to be reckoned for that. */
const REPLAYED = 30_000;

/** A second slip on top of one that explains some of the claims and not all. */
function onTop(wanted: Wanted): Candidate[] {
  const { singles, tried, differing } = wanted;
  const partly = singles
    .filter(({ explained: { which, all } }) => !all && which.some((i) => differing.includes(i)))
    .slice(0, PARTLY);
  const most = Math.floor(REPLAYED / (PARTLY * Math.max(1, wanted.scene.graph.length)));
  // None of them may cost a run of the calculation: there are too many.
  const still: Wanted = { ...wanted, scene: { ...wanted.scene, budget: new Budget(0, 0) } };
  const found = partly.flatMap(({ slips }) =>
    tried.slice(0, Math.max(100, most)).flatMap(({ slip }) => {
      const [first] = slips;
      return first && apart(first, slip) ? pairOf(still, first, slip) : [];
    }),
  );
  return found.filter(({ explained }) => explained.all);
}

/** Two of which each gives some of the claims and leaves the others alone, and all are given by both together. */
function besides(wanted: Wanted): Candidate[] {
  const { singles, scene } = wanted;
  const some = singles.filter(({ explained: { all, which } }) => !all && which.length > 0).slice(0, 90);
  const given = (one: Candidate, other: Candidate): boolean =>
    scene.claims.every((_, i) => one.explained.which.includes(i) || other.explained.which.includes(i));
  return some
    .flatMap((one, i) =>
      some.slice(i + 1).flatMap((other): Near[] => {
        const [a, b] = [one.slips[0] as Slip, other.slips[0] as Slip];
        return given(one, other) && apart(a, b) ? [{ a, b, weight: a.weight * b.weight }] : [];
      }),
    )
    .sort((a, b) => b.weight - a.weight)
    .slice(0, PAIRS / 4)
    .flatMap(({ a, b }) => pairOf(wanted, a, b));
}

/** Pairs that explain all claims, or come so near that rounding on the way may tell. */
export function pairsOf(wanted: Wanted): Candidate[] {
  return [
    ...meeting(wanted).flatMap(({ a, b }) => pairOf(wanted, a, b)),
    ...besides(wanted),
    ...onTop(wanted),
  ];
}
