/** Slips that may explain what was claimed, with how well they do and how common they are. */
import type { Quantity } from '../quantity/quantity';
import { type Explained, explained, type Margin } from './likeness';
import type { Predicted, Scene } from './scene';
import type { Edit, Slip } from './slip';

/** Slips that explain at least one claim together, with how well. */
export interface Candidate {
  readonly slips: readonly Slip[];
  readonly edits: readonly Edit[];
  readonly values: Predicted;
  readonly explained: Explained;
  /** How common they are. */
  readonly weight: number;
  readonly score: number;
  /** What each claimed figure would be, once that was reckoned by the calculation itself. */
  readonly would?: readonly (Quantity | undefined)[];
  /** Where the same slip would give the same. */
  readonly elsewhere?: readonly Slip[];
}

/** A score from which on nothing more is run: what is common, and gives every claim. */
export const LIKELY = 0.5;
/** What is so much rarer than such a one is not looked for where that takes runs, or rounding on the way. */
export const RARER = 0.03;

/** A slip that changes nothing claimed explains nothing. */
export interface Tried {
  readonly slip: Slip;
  readonly values: Predicted;
}

export const candidate = (
  slips: readonly Slip[],
  values: Predicted,
  weight: number,
  scene: Scene,
  own: readonly Margin[],
): Candidate => {
  const how = explained(values, scene, own);
  const edits = slips.flatMap((one) => one.edits);
  // A number that was written wrongly was written: nothing is rounded on the way from there.
  const digits = edits.some((one) => (one.on === 'claim' || one.on === 'outcome') && one.twist.digits);
  const share = digits && !how.exact ? 0.2 : 1;
  return { slips, edits, values, explained: how, weight, score: weight * share * how.quality };
};

/** The likeliest first. */
export const byScore = (a: Candidate, b: Candidate): number => b.score - a.score;
