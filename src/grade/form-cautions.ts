/** Cautions about the grades of forms. */
import { type Paired, paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { CLOSED_FORM, type Source } from '../reckoning/source';
import { NO_WORDS, say, type Words } from '../reckoning/words';
import { IRC_FILL } from './form-sources';

/** The deepest that clean fill under a slab may be without approval. */
export const FILL: Paired<'length'> = /*#__PURE__*/ paired('length', '24 in', '610 mm');

type Slope = Quantity<'slope'>;
type Length = Quantity<'length'>;

export const fallNotMet = (name: string, limit: Slope, actual: Slope): Caution => ({
  code: 'fall-not-met',
  severity: 'warning',
  ...say`along ${{ name }} the forms do not fall as asked; correct the grades before any concrete is placed`,
  limit,
  actual,
  source: CLOSED_FORM,
});

export const steepForms = (
  limit: Slope,
  actual: Slope,
  names: readonly Words[],
  source: Source,
  onFoot: boolean,
): Caution => ({
  code: 'forms-too-steep',
  severity: 'warning',
  ...say`the forms would fall ${{ actual }}, more than ${{ limit }}${
    names.length > 0 ? say`, because of ${{ names }}` : NO_WORDS
  }: ${onFoot ? say`break the slab into steps` : say`make the run longer`}, change what is fixed, or get the slope approved by whoever answers for the plans`,
  limit,
  actual,
  source,
});

export const deepFill = (limit: Length, actual: Length, stake: string): Caution => ({
  code: 'deep-fill',
  severity: 'warning',
  ...say`at stake ${{ stake }} the form stands ${{ actual }} over the ground: fill under a slab deeper than ${{ limit }} of clean sand or gravel, or a third of that in earth, needs approval. Compact it in lifts, or ask for another design; the local code and the engineer decide`,
  limit,
  actual,
  source: IRC_FILL,
});
