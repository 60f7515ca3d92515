/**
 * The search for slips: each is tried, those that give what was claimed are kept, and they are ranked by how well they
 * explain every claim and by how common they are. Two together are tried where one alone explains too little.
 */

import { claimSlips } from './claim-slips';
import type { Graph } from './graph';
import { type HandOn, handsFor } from './hands';
import type { Leaf, Places } from './input-places';
import { habits, leafSlips } from './leaf-slips';
import { type Explained, explained, explainedByHand, type Margin, margins } from './likeness';
import { partSlips } from './part-slips';
import { siOf } from './scale';
import { byHand, type Predicted, predicted, type Scene, told } from './scene';
import type { Edit, Slip } from './slip';
import { stepSlips } from './step-slips';

/** Slips that explain at least one claim together, with how well. */
export interface Candidate {
  readonly slips: readonly Slip[];
  readonly edits: readonly Edit[];
  readonly values: Predicted;
  readonly explained: Explained;
  /** How common they are. */
  readonly weight: number;
  readonly score: number;
  /** Where the same slip would give the same. */
  readonly elsewhere?: readonly Slip[];
}

/** Values to be reckoned in all: a slip reckons each step once. */
const REPLAYED = 60_000;

const notIdle =
  (idle: ReadonlySet<Leaf>) =>
  (leaf: Leaf): boolean =>
    !idle.has(leaf);

const MOST_LEAVES = 60;

/** All slips, the common ones first: the budget may not last for all. */
function slipsFor(scene: Scene, places: Places): Slip[] {
  const leaves = places.leaves.slice(0, MOST_LEAVES).filter(notIdle(scene.idle));
  const ofLeaves = leaves.flatMap((leaf) => leafSlips(leaf, places.leaves));
  const all = [
    ...ofLeaves,
    ...habits(ofLeaves),
    ...partSlips(scene.input, places),
    ...stepSlips(scene.graph, new Set(scene.nodes)),
    ...claimSlips(scene),
  ];
  return all.sort((a, b) => b.weight - a.weight);
}

/** A slip that changes nothing claimed explains nothing. */
interface Tried {
  readonly slip: Slip;
  readonly values: Predicted;
}

function tryAll(scene: Scene, slips: readonly Slip[]): Tried[] {
  const most = Math.max(300, Math.floor(REPLAYED / Math.max(1, scene.graph.length)));
  return slips.slice(0, most).flatMap((slip) => {
    const values = predicted(scene, slip.edits);
    return values?.some((one, i) => one !== scene.base[i]) ? [{ slip, values }] : [];
  });
}

const candidate = (
  slips: readonly Slip[],
  values: Predicted,
  weight: number,
  scene: Scene,
  own: readonly Margin[],
): Candidate => {
  const how = explained(values, scene.claims, own);
  const edits = slips.flatMap((one) => one.edits);
  // A number that was written wrongly was written: nothing is rounded on the way from there.
  const digits = edits.some((one) => (one.on === 'claim' || one.on === 'outcome') && one.twist.digits);
  const share = digits && !how.exact ? 0.2 : 1;
  return { slips, edits, values, explained: how, weight, score: weight * share * how.quality };
};

const byScore = (a: Candidate, b: Candidate): number => b.score - a.score;

/** How much rarer two slips are than one. */
const TWO = 0.002;
const FIRST = 90;
const SECOND = 260;
const PAIRS = 160;

/** By how much a slip changes a claim, as a logarithm; nothing where it turns its sign. */
const logRatio = (value: number, base: number): number => Math.log(value / base);

/** Two of different changes, which together come near the claim that none explains. */
function* pairsNear(tried: readonly Tried[], scene: Scene, at: number): Generator<readonly [Tried, Tried]> {
  const base = scene.base[at] as number;
  const wanted = logRatio((scene.claims[at] as { si: number }).si, base);
  const half =
    (scene.claims[at] as { half: number; si: number }).half /
    Math.abs((scene.claims[at] as { si: number }).si);
  const room = 0.004 + half;
  const logs = tried.map(({ values }) => logRatio(values[at] as number, base));
  for (let i = 0; i < Math.min(FIRST, tried.length); i += 1)
    for (let j = i + 1; j < Math.min(SECOND, tried.length); j += 1) {
      const sum = (logs[i] as number) + (logs[j] as number);
      if (Math.abs(sum - wanted) <= room && logs[i] !== 0 && logs[j] !== 0)
        yield [tried[i] as Tried, tried[j] as Tried];
    }
}

/** Two slips at one place are one slip of another kind. */
const apart = (a: Slip, b: Slip): boolean =>
  !(a.input !== undefined && a.input === b.input) &&
  !(a.step !== undefined && a.step === b.step) &&
  !(a.figure !== undefined && a.figure === b.figure);

function pairs(tried: readonly Tried[], scene: Scene, own: readonly Margin[], at: number): Candidate[] {
  const found: { a: Slip; b: Slip; weight: number }[] = [];
  for (const [a, b] of pairsNear(tried, scene, at))
    if (apart(a.slip, b.slip))
      found.push({ a: a.slip, b: b.slip, weight: a.slip.weight * b.slip.weight * TWO });
  found.sort((a, b) => b.weight - a.weight);
  return found.slice(0, PAIRS).flatMap(({ a, b, weight }) => {
    const values = predicted(scene, [...a.edits, ...b.edits]);
    const made = values && candidate([a, b], values, weight, scene, own);
    return made?.explained.all ? [made] : [];
  });
}

/**
 * Two of which each gives some of the claims and leaves the others alone, and all are given by both together.
 */
function besides(singles: readonly Candidate[], scene: Scene, own: readonly Margin[]): Candidate[] {
  const some = singles.filter(({ explained: { all, which } }) => !all && which.length > 0).slice(0, FIRST);
  const given = (one: Candidate, other: Candidate): boolean =>
    scene.claims.every((_, i) => one.explained.which.includes(i) || other.explained.which.includes(i));
  return some
    .flatMap((one, i) =>
      some.slice(i + 1).flatMap((other) => {
        const [a, b] = [one.slips[0] as Slip, other.slips[0] as Slip];
        return given(one, other) && apart(a, b) ? [{ a, b, weight: a.weight * b.weight * TWO }] : [];
      }),
    )
    .sort((a, b) => b.weight - a.weight)
    .slice(0, PAIRS / 4)
    .flatMap(({ a, b, weight }) => {
      const values = predicted(scene, [...a.edits, ...b.edits]);
      const made = values && candidate([a, b], values, weight, scene, own);
      return made?.explained.all ? [made] : [];
    });
}

/** The first claim that differs and is not explained by the best. */
function unexplained(best: Candidate | undefined, differing: readonly number[]): number | undefined {
  return differing.find((i) => !best?.explained.which.includes(i)) ?? differing[0];
}

/** Where a slip shows, in one text. */
const placeOf = ({ input, step, figure }: Slip): string => `${input ?? ''}|${step ?? ''}|${figure ?? ''}`;

const codesOf = ({ slips }: Candidate): string => slips.map(({ code }) => code).join(' + ');
const placesOf = ({ slips }: Candidate): string => slips.map(placeOf).join(' + ');
const valuesOf = ({ values }: Candidate): string => values.map((one) => one.toPrecision(9)).join(' ');

/** So many are told. */
const TOLD = 8;
/** Some more are reckoned, since some may explain less than it seemed. */
const SPARE = 4;

/** So many are reckoned by the calculation itself before they are told. */
const MOST_VERIFIED = 20;

/**
 * Those that hold and are told apart: of one kind at one place the best, of what gives the same at one place the
 * likeliest, and what is of the same kind and gives the same at other places as one.
 */
function distinct(
  candidates: readonly Candidate[],
  most: number,
  verify: (one: Candidate) => Candidate | undefined,
): Candidate[] {
  const seen = new Set<string>();
  const first = new Map<string, Candidate & { readonly elsewhere: Slip[] }>();
  let left = MOST_VERIFIED;
  const put = (one: Candidate, key: string): boolean => {
    const known = first.get(key);
    if (known) known.elsewhere.push(...one.slips);
    if (known || first.size >= most || left === 0) return known !== undefined;
    left -= 1;
    const held = verify(one);
    if (held) first.set(key, { ...held, elsewhere: [] });
    return held !== undefined;
  };
  for (const one of candidates) {
    const [codes, places, values] = [codesOf(one), placesOf(one), valuesOf(one)];
    const keys = [`${codes} ${places}`, `${values} ${places}`];
    if (keys.some((key) => seen.has(key)) || !put(one, `${codes} ${values}`)) continue;
    for (const key of keys) seen.add(key);
  }
  return [...first.values()];
}

/** So many of the best are looked at with rounding on the way. */
const BY_HAND = 40;

/** Values to be reckoned for that. */
const BY_HAND_REPLAYED = 40_000;

/** The best, as somebody would have them who rounds on the way, where that gives more of what was claimed. */
function rounder(scene: Scene): (best: readonly Candidate[]) => Candidate[] {
  const made = new Map<Graph, HandOn[]>();
  const handsOn = (graph: Graph): HandOn[] => {
    const known = made.get(graph) ?? handsFor(graph, scene.claims);
    made.set(graph, known);
    return known;
  };
  const hands = handsOn(scene.graph);
  const most = Math.floor(BY_HAND_REPLAYED / Math.max(1, hands.length * scene.graph.length));
  const rounded = (one: Candidate): Candidate => {
    let found = one;
    hands.forEach((hand, i) => {
      const values = byHand(scene, one.edits, (graph) => handsOn(graph)[i] ?? hand);
      const how = values && explainedByHand(values, scene.claims, hand.weight);
      if (how && one.weight * how.quality > found.score)
        found = { ...one, explained: how, score: one.weight * how.quality };
    });
    return found;
  };
  return (best) =>
    best.map((one, n) =>
      n >= Math.min(BY_HAND, most) || (one.explained.all && one.explained.exact) ? one : rounded(one),
    );
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));

/** What was found by the steps must hold in the calculation itself: what that tells is what counts. */
function verified(one: Candidate, scene: Scene, own: readonly Margin[]): Candidate | undefined {
  const all = told(scene, one.edits);
  if (!all) return undefined;
  const values = all.map((q) => (q ? siOf(q) : Number.NaN));
  if (values.every((value, i) => near(value, one.values[i] as number))) return one;
  return candidate(one.slips, values, one.weight, scene, own);
}

/**
 * Slips that explain what was claimed, the likeliest first.
 *
 * @param differing - the claims that need explaining, by their place in the list
 */
export function search(
  scene: Scene,
  places: Places,
  differing: readonly number[],
): { found: Candidate[]; tried: number } {
  const own = margins(scene);
  const slips = slipsFor(scene, places);
  const tried = tryAll(scene, slips);
  const explains = (one: Candidate): boolean => one.explained.which.some((i) => differing.includes(i));
  const rounding = rounder(scene);
  const singles = tried
    .map(({ slip, values }) => candidate([slip], values, slip.weight, scene, own))
    .sort(byScore);
  const near = rounding(singles.slice(0, BY_HAND))
    .concat(singles.slice(BY_HAND))
    .filter(explains)
    .sort(byScore);
  const best = near[0];
  const at = unexplained(best, differing);
  const more = best?.explained.all || at === undefined ? [] : pairs(tried, scene, own, at);
  const beside = best?.explained.all ? [] : besides(near, scene, own);
  const ranked = [...near, ...rounding([...more, ...beside].sort(byScore))].sort(byScore);
  const found = distinct(ranked, TOLD + SPARE, (one) => verified(one, scene, own))
    .filter(explains)
    .sort(byScore)
    .slice(0, TOLD);
  return { found, tried: tried.length };
}
