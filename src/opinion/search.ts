/**
 * The search for slips: each is tried, those that give what was claimed are kept, and they are ranked by how well they
 * explain every claim and by how common they are. Two together are tried where one alone explains too little.
 */

import { isRecord } from '../reckoning/record';
import { assumedSlips } from './assumed-values';
import { byScore, type Candidate, candidate, LIKELY, RARER, type Tried } from './candidate';
import { claimSlips } from './claim-slips';
import type { ReadClaim } from './claims';
import { figuresIn, pathOf } from './figure-places';
import { runForetold } from './foretold';
import { type Aim, guidedRuns } from './guided';
import { digitsOf } from './hands';
import { type Leaf, type Places, valueAt } from './input-places';
import { lapSlips } from './lap-slips';
import { exchanges, habits, leafSlips } from './leaf-slips';
import { type Margin, margins } from './likeness';
import { pairsOf } from './pairs';
import { partSlips } from './part-slips';
import { doubted } from './probe';
import { rounder } from './rounder';
import { isStepped } from './rounding';
import { STRAY, siOf } from './scale';
import { isFollowed, predicted, resultWith, type Scene, told } from './scene';
import type { Slip, SlipCode } from './slip';
import { stepSlips } from './step-slips';

/** Values to be reckoned in all: a slip reckons each step once. */
const REPLAYED = 60_000;

const MOST_LEAVES = 60;

/** The common ones first: the budget may not last for all. */
const byWeight = (a: Slip, b: Slip): number => b.weight - a.weight;

/** All slips. */
function slipsFor(scene: Scene, places: Places): Slip[] {
  const leaves = places.leaves.slice(0, MOST_LEAVES);
  const ofLeaves = leaves.flatMap((leaf) => leafSlips(leaf, places.others ?? places.leaves));
  const all = [
    ...ofLeaves,
    ...habits(ofLeaves),
    ...exchanges(leaves),
    ...assumedSlips(scene),
    ...partSlips(scene.input, places).filter((one) => !shiftsRows(one, scene)),
    ...lapSlips(scene, places),
    ...ofParts(stepSlips(scene.graph, new Set(scene.nodes), figuresIn(scene.result.figures)), scene),
    ...claimSlips(scene, places),
  ];
  return all.sort(byWeight);
}

/** Where rows of a list are claimed by their place, one more or less puts another in it, which explains nothing. */
const shiftsRows = ({ edits: [first] }: Slip, { claims }: Scene): boolean => {
  if (first?.on !== 'input' || first.leaf !== undefined) return false;
  const { path, value } = first;
  const isList = Array.isArray(value) || typeof path.at(-1) === 'number';
  return isList && claims.some((claim) => claim.path[0] === path[0] && /^\d+$/.test(String(claim.path[1])));
};

/** A slip in a step of a part is rarer than one that shows in the whole: there are many of them. */
const OF_PART = 0.8;
/** What may as well be wrong with a value that goes into it is told of that. */
const WRITTEN_IN_PART = 0.4;
const AS_WELL: ReadonlySet<SlipCode> = /*#__PURE__*/ new Set(['doubled', 'halved', 'point-moved']);

/** A slip in a step of a part shows where the part stands. */
const ofParts = (slips: readonly Slip[], { whole: { parts } }: Scene): readonly Slip[] =>
  parts
    ? slips.map((one) => {
        const at = parts[one.step ?? -1];
        if (at === undefined) return one;
        const share = AS_WELL.has(one.code) ? WRITTEN_IN_PART : OF_PART;
        return { ...one, weight: one.weight * share, input: one.input ?? at };
      })
    : slips;

/** Whether it takes a run of the calculation to tell what a slip gives. */
const takesRun = (scene: Scene, { edits }: Slip): boolean =>
  edits.some(({ on }) => on === 'input') &&
  !isFollowed(scene, edits) &&
  !edits.some((one) => scene.runs.has(one));

/** What the steps come to in binary numbers is off the exact figure by a stray that no slip made. */
const isStray = (a: number, b: number): boolean => Math.abs(a - b) <= STRAY * Math.abs(b);

function tryAll(scene: Scene, slips: readonly Slip[]): Tried[] {
  const most = Math.max(300, Math.floor(REPLAYED / Math.max(1, scene.graph.length)));
  return slips.slice(0, most).flatMap((slip) => {
    const values = predicted(scene, slip.edits);
    return values?.some((one, i) => !isStray(one, scene.base[i] as number)) ? [{ slip, values }] : [];
  });
}

/** Within this share of a claim, what is rounded on the way may give it. */
const ROOM = 0.03;

const aimAt = ({ claims }: Scene, at: number): Aim => {
  const { si, half } = claims[at] as Scene['claims'][number];
  return { at, si, room: ROOM * Math.abs(si) + half };
};

/** Where nothing explains it all, so many more figures are looked at, with a share more of runs for each. */
const MORE_AIMS = 2;
const MORE_RUNS = 0.2;

/** The share of what may be run that is for parts left out and the like. */
const FOR_PARTS = 0.75;

/** Slips of values that are so common are run whatever they give: not every figure only rises or only falls. */
const COMMON = 12;
/** What is put on is felt in every order, and there are few of it. */
const ALLOWANCE = /^allowance-/;
/** Of a count there are but two that are one off. */
const COUNTED = 8;

/** What is rounded to whole steps, or stands in no printed step, may stay as it is a little off. */
const mayHide = ({ claims, nodes, graph }: Scene): boolean =>
  claims.some(({ reckoned }, i) => {
    const node = graph[nodes[i] ?? -1];
    return node === undefined || reckoned.dimension === 'count' || isStepped(node.step);
  });

/** Whether a value was felt in any claim where it was tried; what was not tried, or a little off only, may be. */
function isFelt(scene: Scene, leaf: Leaf | undefined): boolean {
  const some = leaf && scene.samples.get(leaf);
  if (!some || some.some(({ figures }) => figures.some((one, i) => one !== scene.base[i]))) return true;
  return some.length === 1 && mayHide(scene);
}

/** What the calculation itself must tell: parts and choices, and of single values what may give the claim. */
function runSome(scene: Scene, slips: readonly Slip[], aim: Aim): void {
  const kept = scene.budget.left * (1 - FOR_PARTS);
  for (const slip of slips) {
    if (scene.budget.left <= kept) break;
    const [edit, ...more] = slip.edits;
    if (edit?.on !== 'input' || more.length > 0) continue;
    const least = slip.code === 'one-off-count' ? COUNTED : COMMON;
    const isCommon =
      (slip.weight >= least || ALLOWANCE.test(slip.code)) &&
      takesRun(scene, slip) &&
      isFelt(scene, edit.leaf);
    if (edit.leaf === undefined || isCommon) resultWith(scene, slip.edits);
  }
  guidedRuns(scene, slips, aim);
}

/** The first claim that differs and is not explained by the best. */
function unexplained(best: Candidate | undefined, differing: readonly number[]): number | undefined {
  return differing.find((i) => !best?.explained.which.includes(i)) ?? differing[0];
}

/** Where a slip shows, in one text. */
const placeOf = ({ input, step, figure, beside }: Slip): string =>
  `${input ?? ''}|${step ?? ''}|${figure ?? ''}${beside ? '+' : ''}`;

/** Two slips are the same two whichever was found first. */
const together = (texts: string[]): string => texts.sort().join(' + ');
const codesOf = ({ slips }: Candidate): string => together(slips.map(({ code }) => code));
const placesOf = ({ slips }: Candidate): string => together(slips.map(placeOf));
const valuesOf = ({ values }: Candidate): string => values.map((one) => one.toPrecision(9)).join(' ');

/** So many are told. */
const TOLD = 8;
/** Some more are reckoned, since some may explain less than it seemed. */
const SPARE = 4;

/** So many are reckoned by the calculation itself before they are told. */
const MOST_VERIFIED = 20;

/** Something was left out. */
const OMITTED: ReadonlySet<SlipCode> = /*#__PURE__*/ new Set([
  'allowance-missed',
  'part-left-out',
  'opening-left-out',
  'notch-left-out',
  'laps-left-out',
  'term-left-out',
  'other-figure',
]);
/** Something was made so small that it is as good as left out. */
const VANISHED: ReadonlySet<SlipCode> = /*#__PURE__*/ new Set([
  'point-moved',
  'percent-misplaced',
  'wrong-unit',
  'inches-as-tenths',
  'digit-dropped',
  'digit-off',
  'other-choice',
  'factor-left-out',
  'factor-twice',
  'multiplied-for-divided',
]);
const AS_GOOD = 0.011;

/** Whether next to nothing is left of a value. */
function isVanishing({ edits: [first] }: Slip): boolean {
  if (first?.on !== 'input' || !first.leaf || first.si === undefined) return false;
  return Math.abs(first.si) <= AS_GOOD * Math.abs(siOf(first.leaf.quantity));
}

/** Whether two say of one thing that it was left out, or as good as left out. */
function isOneOmission(known: Candidate, one: Candidate, { base, claims }: Scene): boolean {
  const [[a, ...many], [b, ...more]] = [known.slips, one.slips];
  const hasCounts = claims.some(({ reckoned }) => reckoned.dimension === 'count');
  if (!a || !b || many.length + more.length > 0 || !OMITTED.has(a.code)) return false;
  if (OMITTED.has(b.code)) return valuesOf(known) === valuesOf(one);
  return (
    VANISHED.has(b.code) &&
    (!hasCounts || isVanishing(b)) &&
    one.values.every((value, i) => {
      const [left, right] = [known.values[i] as number, base[i] as number];
      return Math.abs(value - left) <= AS_GOOD * Math.abs(left - right);
    })
  );
}

/**
 * Those that hold and are told apart: of one kind at one place the best, of what gives the same at one place the
 * likeliest, and what is of the same kind and gives the same at other places as one.
 */
function distinct(
  candidates: readonly Candidate[],
  most: number,
  scene: Scene,
  verify: (one: Candidate) => Candidate | undefined,
): Candidate[] {
  const seen = new Set<string>();
  const first = new Map<string, Candidate & { readonly elsewhere: Slip[] }>();
  let left = MOST_VERIFIED;
  /** What is of a kind and gives the same is one with what is known; false where it is not. */
  const joined = (one: Candidate): boolean => {
    const known = first.get(`${codesOf(one)} ${valuesOf(one)}`);
    known?.elsewhere.push(...one.slips);
    return known !== undefined;
  };
  /** What was left out is told once, in whatever words: as a share of nothing, as a term, as another figure. */
  const told = (one: Candidate): boolean => {
    const known = [...first.values()].find((each) => isOneOmission(each, one, scene));
    const [slip] = one.slips;
    if (known && slip && OMITTED.has(slip.code) && slip.figure === undefined)
      known.elsewhere.push(...one.slips);
    return known !== undefined;
  };
  const put = (one: Candidate): boolean => {
    if (joined(one) || told(one)) return true;
    if (first.size >= most || left === 0) return false;
    left -= 1;
    const held = verify(one);
    // What it really gives may be what another gives.
    if (held && !(held.values !== one.values && joined(held)))
      first.set(`${codesOf(held)} ${valuesOf(held)}`, { ...held, elsewhere: [] });
    return held !== undefined;
  };
  for (const one of candidates) {
    const [codes, places, values] = [codesOf(one), placesOf(one), valuesOf(one)];
    const keys = [`${codes} ${places}`, `${values} ${places}`];
    if (keys.some((key) => seen.has(key)) || !put(one)) continue;
    for (const key of keys) seen.add(key);
  }
  return [...first.values()];
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));

/** What was found by the steps must hold in the calculation itself: what that tells is what counts. */
function verified(one: Candidate, scene: Scene, own: readonly Margin[]): Candidate | undefined {
  const all = told(scene, one.edits);
  if (!all) return undefined;
  const values = all.map((q) => (q ? siOf(q) : Number.NaN));
  if (values.every((value, i) => near(value, one.values[i] as number))) return { ...one, would: all };
  return { ...candidate(one.slips, values, one.weight, scene, own), would: all };
}

/**
 * Where nothing is found, a common slip that comes this near is better than none: who doubles a figure and reads 1-7/8
 * as 1.87 says 3.74.
 */
const ABOUT = 0.005;
/** How common a slip must be for that: something rare comes near anything. */
const COMMON_ENOUGH = 8;
/** What such a slip is worth beside one that gives the figure. */
const BARELY = 0.05;

function roughly(tried: readonly Tried[], scene: Scene, own: readonly Margin[]): Candidate[] {
  const wide = own.map(({ below, above }, i) => {
    const more = scene.claims[i]?.reckoned.dimension === 'count' ? 0 : ABOUT;
    return { below: below + more, above: above + more };
  });
  return tried
    .filter(({ slip }) => slip.weight >= COMMON_ENOUGH)
    .map(({ slip, values }) => candidate([slip], values, slip.weight * BARELY, scene, wide))
    .sort(byScore);
}

const isLikely = (best: Candidate | undefined): boolean =>
  best?.explained.all === true && best.score >= LIKELY;

/**
 * Several figures that are off, or so many digits of one, are given as written by nothing that is not what happened;
 * by what is rare more of them.
 */
const SEVERAL = 2;
const MORE = 3;
const PRECISE = 5;

/** Whether a slip gives so much, just as it was written, that nothing else needs a run. */
function isPlain(best: Candidate | undefined, { claims }: Scene, differing: readonly number[]): boolean {
  if (!best?.explained.all || !best.explained.exact) return false;
  const given = differing.filter((i) => best.explained.which.includes(i));
  const digits = given.map((i) => digitsOf(claims[i] as ReadClaim));
  return given.length >= (isLikely(best) ? SEVERAL : MORE) || Math.max(0, ...digits) >= PRECISE;
}

/** Where one gives so much just as it was written, what comes near it only is told no more. */
function sharp(
  ranked: readonly Candidate[],
  verify: (one: Candidate) => Candidate | undefined,
  scene: Scene,
  differing: readonly number[],
): readonly Candidate[] {
  const [lead] = ranked;
  return lead && isPlain(verify(lead), scene, differing)
    ? ranked.filter(({ explained: { exact } }) => exact)
    : ranked;
}

/** How common a slip must be to be told among the first three, beside those that are known. */
function barOf(near: readonly Candidate[]): number {
  const [best] = near;
  if (!isLikely(best)) return 0;
  const apart = new Set<string>();
  // They stand in the order of their scores.
  const third = near.find((one) => apart.add(valuesOf(one)).size === 3)?.score ?? 0;
  return Math.max(third, (best as Candidate).score * RARER);
}

const leafOf = ({ edits: [first] }: Slip): Leaf | undefined =>
  first?.on === 'input' ? first.leaf : undefined;

const FORGOTTEN = /^elements\[\d+\]\.\w+\.\w+$/;

/** An element of a job or a line of a bid, left out or taken twice. */
function isOfNamed(slip: Slip, { input, whole }: Scene): boolean {
  // Of a job, what a part may do without, as the margin of its base.
  if (whole.parts && isOfPart(slip) && FORGOTTEN.test(slip.input ?? '')) return true;
  const path = (isOfPart(slip) && pathOf(slip.input ?? '')) || [];
  const item = path.length === 2 && typeof path[1] === 'number' ? valueAt(input, path) : undefined;
  return isRecord(item) && typeof item['name'] === 'string';
}

/** So many parts are run where something was found that gives everything. */
const MOST_PARTS = 12;

const isOfPart = ({ edits: [first, ...more] }: Slip): boolean =>
  first?.on === 'input' && first.leaf === undefined && more.length === 0;

/** What is left out or taken twice may give as much, and be commoner than what was found. */
function runParts(scene: Scene, slips: readonly Slip[], best: Candidate): Slip[] {
  const parts = slips.filter((one) => isOfPart(one) && one.weight >= best.weight).slice(0, MOST_PARTS);
  for (const { edits } of parts) resultWith(scene, edits);
  return parts;
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
  const aim = aimAt(scene, differing[0] as number);
  const explains = (one: Candidate): boolean => one.explained.which.some((i) => differing.includes(i));
  const rounding = rounder(scene);
  const made = new Map<Tried, Candidate>();
  /** What a slip explains is reckoned once, however often more are put beside it. */
  const madeOf = (one: Tried): Candidate => {
    const known = made.get(one) ?? candidate([one.slip], one.values, one.slip.weight, scene, own);
    made.set(one, known);
    return known;
  };
  const singlesOf = (some: readonly Tried[]): Candidate[] =>
    rounding(some.map(madeOf)).filter(explains).sort(byScore);
  const bySteps = slips.filter((one) => !takesRun(scene, one));
  let tried = tryAll(scene, bySteps);
  let near = singlesOf(tried);
  const tryMore = (more: readonly Slip[]): void => {
    const now = tryAll(scene, more);
    if (now.length === 0) return;
    tried = [...tried, ...now].sort((a, b) => byWeight(a.slip, b.slip));
    near = singlesOf(tried);
  };
  const known = new Set(bySteps);
  const untried = (some: readonly Slip[]): Slip[] =>
    some.filter((one) => !known.has(one) && !takesRun(scene, one));
  const tryRun = (some: readonly Slip[]): void => {
    const now = untried(some);
    for (const one of now) known.add(one);
    tryMore(now);
  };
  // What a whole is the sum of is forgotten, or counted twice, first of all.
  const named = slips.filter((one) => isOfNamed(one, scene)).slice(0, MOST_PARTS);
  for (const { edits } of named) resultWith(scene, edits);
  tryRun(named);
  // What the steps tell costs little: of what takes a run only that is looked at which may be told before it.
  const bar = barOf(near);
  runForetold(
    scene,
    slips.filter((one) => one.weight > bar && !known.has(one)),
  );
  tryRun(slips);
  const least = barOf(near);
  if (!isPlain(near[0], scene, differing)) {
    const more = slips.filter((one) => one.weight > least || known.has(one));
    runSome(scene, more, aim);
    tryRun(more);
  } else tryRun(runParts(scene, slips, near[0] as Candidate));
  const isFound = (): boolean => isLikely(near[0]) || isPlain(near[0], scene, differing);
  if (!isFound()) tryMore(slips.filter((one) => takesRun(scene, one)));
  const doubts = isFound() ? undefined : doubted(scene);
  if (doubts && doubts.size > 0) {
    const own = slips.filter((one) => doubts.has(leafOf(one) as Leaf));
    tried = tried.filter(({ slip }) => !doubts.has(leafOf(slip) as Leaf));
    runForetold(scene, own);
    guidedRuns(scene, own, aim);
    tryMore(own.filter((one) => !takesRun(scene, one)));
  }
  // What explains all of it may be felt in another figure than the one that was looked at first.
  for (const i of isFound() ? [] : differing.slice(1, 1 + MORE_AIMS)) {
    scene.budget.more(MORE_RUNS);
    guidedRuns(scene, slips, aimAt(scene, i));
    const before = new Set(tried.map(({ slip }) => slip));
    tryMore(slips.filter((one) => one.edits.some((edit) => scene.runs.has(edit)) && !before.has(one)));
    if (isFound()) break;
  }
  const best = near[0];
  const at = unexplained(best, differing);
  const two =
    best?.explained.all || at === undefined
      ? []
      : pairsOf({ tried, singles: near, differing, at, scene, own });
  const ranked = [...near, ...rounding(two.sort(byScore))].sort(byScore);
  const verify = (one: Candidate): Candidate | undefined => verified(one, scene, own);
  const held = (some: readonly Candidate[]): Candidate[] =>
    distinct(some, TOLD + SPARE, scene, verify)
      .filter(explains)
      .sort(byScore)
      .slice(0, TOLD);
  const sure = held(sharp(ranked, verify, scene, differing));
  const found = sure.length > 0 ? sure : held(roughly(tried, scene, own).filter(explains));
  return { found, tried: tried.length };
}
