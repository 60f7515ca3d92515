/**
 * What published rules ask of risers and treads, as data.
 *
 * The limits differ from place to place and year to year: the local code decides.
 */
import { constant, length } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { ABA_STAIRS, BOCA_STAIRS, CC_STEPS, IRC_STAIRS, type Source } from '../reckoning/source';

/** Whose rules the steps must meet. */
export type StepRules = 'dwelling' | 'accessible' | 'public';

/** Limits of risers and treads. */
export interface StepLimits {
  readonly highest: () => Quantity<'length'>;
  readonly lowest: () => Quantity<'length'>;
  readonly narrowest: () => Quantity<'length'>;
  readonly because: string;
  readonly source: Source;
  /** Where the lowest riser comes from, when it is another source. */
  readonly lowestSource: Source;
}

const inches = (text: string): (() => Quantity<'length'>) => constant(() => length(text));

/** The limits, by rules. */
export const STEP_LIMITS: Record<StepRules, StepLimits> = {
  dwelling: {
    highest: inches('7-3/4 in'),
    lowest: inches('4 in'),
    narrowest: inches('10 in'),
    because: 'steps of a dwelling: risers up to 7-3/4 in, treads from 10 in; below 4 in by practice only',
    source: IRC_STAIRS,
    lowestSource: CC_STEPS,
  },
  accessible: {
    highest: inches('7 in'),
    lowest: inches('4 in'),
    narrowest: inches('11 in'),
    because: 'steps on an accessible way out: risers of 4 in to 7 in, treads from 11 in',
    source: ABA_STAIRS,
    lowestSource: ABA_STAIRS,
  },
  public: {
    highest: inches('7 in'),
    lowest: inches('4 in'),
    narrowest: inches('11 in'),
    because: 'steps of other buildings: risers of 4 in to 7 in, treads from 11 in',
    source: BOCA_STAIRS,
    lowestSource: BOCA_STAIRS,
  },
};
