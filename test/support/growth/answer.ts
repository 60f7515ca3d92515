/** Reckons or draws, and says how it went. */
import { calculations as catalog } from '../../../src/catalog/all';
import {
  dayTimeline,
  jointPlan,
  matPlan,
  matSection,
  meshPlan,
  outlinePlan,
  surfacePlan,
  thicknessPlan,
  truckTimeline,
} from '../../../src/drawing/index';
import { InputError } from '../../../src/index';

export interface Answer {
  /** Why it was refused. */
  readonly refused?: { readonly codes: readonly string[]; readonly text: string };
}

const DRAWINGS: Readonly<Record<string, (input: never) => string>> = {
  'drawing/joint-plan': jointPlan,
  'drawing/mat-plan': matPlan,
  'drawing/mesh-plan': meshPlan,
  'drawing/mat-section': matSection,
  'drawing/outline-plan': outlinePlan,
  'drawing/surface-plan': surfacePlan,
  'drawing/thickness-plan': thicknessPlan,
  'drawing/day-timeline': dayTimeline,
  'drawing/truck-timeline': truckTimeline,
};

const refusal = (error: InputError): Answer => ({
  refused: { codes: error.issues.map(({ code }) => code), text: error.issues[0]?.sentence ?? '' },
});

/** Whatever is thrown beside a refusal is thrown on. */
export function answer(of: string, input: unknown): Answer {
  const draw = DRAWINGS[of];
  if (!draw) {
    const attempt = catalog.find(({ id }) => id === of)?.attempt(input);
    if (!attempt) throw new Error(`no calculation ${of}`);
    return attempt.ok ? {} : refusal(attempt.error);
  }
  try {
    draw(input as never);
    return {};
  } catch (error) {
    if (error instanceof InputError) return refusal(error);
    throw error;
  }
}

/** A whole number that is too large is told the most. */
const WHOLE = /^\S.* must be a whole number from \d+ to \d+$/;

/** Whether a refusal says how much is taken. */
export const namesTheMost = ({ refused }: Answer): boolean =>
  refused !== undefined &&
  (refused.codes.includes('too-many') || (refused.codes.includes('not-a-count') && WHOLE.test(refused.text)));
