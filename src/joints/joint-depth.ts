/**
 * How deep a contraction joint is cut or formed, by the way it is made.
 *
 * Sawn with a conventional saw, tooled or formed: a quarter of the thickness, as Concrete Construction
 * answers. That no joint is shallower than 1 in is common practice (the question to that answer has it, and a
 * guide specification for walks). With an early-entry saw: 1 in in slabs up to 9 in thick, and a fifth of the
 * thickness above, the deeper of the fifth to sixth that L&M's Concrete News reports. That a tooled or
 * preformed joint is as deep as a sawn one is common practice, written down from memory.
 */
import { greaterOf } from '../quantity/greater';
import { constant, ratio } from '../quantity/make';
import { lesserOfPair, paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, EARLY_ENTRY_DEPTH, type Source } from '../reckoning/source';
import { cutTooDeep, shallowCut } from './cautions';
import { nominallyAtMost } from './nominal';
import { JOINT_DEPTH, LEAST_JOINT_DEPTH } from './sources';

/** How a contraction joint is made. */
export type JointMethod = 'conventional-saw' | 'early-entry-saw' | 'hand-groover' | 'preformed-strip';

/** All the ways, in the order they are shown. */
export const JOINT_METHODS: readonly JointMethod[] = [
  'conventional-saw',
  'early-entry-saw',
  'hand-groover',
  'preformed-strip',
];

type Length = Quantity<'length'>;

/** The least depth of any contraction joint. */
const LEAST_DEPTH = /*#__PURE__*/ paired('length', '1 in', '25 mm');
const EARLY_UP_TO = 9;

/** One way of cutting or forming a joint and its depth. */
export interface DepthBy {
  readonly depth: Length;
  readonly formula: string;
  readonly source: Source;
}

/** The depth by one way of cutting or forming a joint. */
export function depthBy(method: JointMethod, t: Length, c: Length = LEAST_DEPTH.like(t)): DepthBy {
  if (method === 'early-entry-saw') {
    const thick = !nominallyAtMost(t, EARLY_UP_TO);
    return {
      depth: thick ? greaterOf(t.over(wholeNumber(5)), c) : c,
      formula: thick ? 'k = max(t ÷ 5, c)' : 'k = c',
      source: EARLY_ENTRY_DEPTH,
    };
  }
  const quarter = t.over(wholeNumber(4));
  const byThickness = method === 'conventional-saw' ? JOINT_DEPTH : COMMON_PRACTICE;
  return {
    depth: greaterOf(quarter, c),
    formula: 'k = max(t ÷ 4, c)',
    source: quarter.lessThan(c) ? LEAST_JOINT_DEPTH : byThickness,
  };
}

/** The depth with its step of working. */
export function workedDepth(method: JointMethod, t: Length, pad: Pad): Length {
  const { depth, formula } = depthBy(method, t);
  const c = LEAST_DEPTH.like(t);
  const what = method === 'conventional-saw' ? 'depth of a sawn joint' : `depth of a joint, ${method}`;
  return pad.step(what, formula, formula.includes('t') ? { t, c } : { c }, depth);
}

const NEARLY = constant(() => ratio('105%'));

/** Heed a depth that was given: a joint that is too shallow does not draw the crack, and one too deep lets panels drop. */
export function heedDepth(k: Length, method: JointMethod, t: Length, pad: Pad): void {
  const due = depthBy(method, t, lesserOfPair(LEAST_DEPTH)).depth;
  const half = t.over(wholeNumber(2));
  if (k.times(NEARLY()).lessThan(due)) {
    const { depth, source } = depthBy(method, t);
    pad.caution(shallowCut(depth, k, source));
  } else if (k.greaterThan(half)) pad.caution(cutTooDeep(half, k));
}

/** A depth that is the least of any joint, and not by the thickness, is a default: 1 in, or 25 mm. */
export function assumeLeastDepth(depth: Length, pad: Pad): void {
  if (depth.compareTo(LEAST_DEPTH.like(depth)) !== 0) return;
  pad.assume({
    name: 'depth',
    value: LEAST_DEPTH,
    because: 'no joint is cut or formed less deep',
    override: 'Give depth from the plans',
    source: LEAST_JOINT_DEPTH,
  });
}
