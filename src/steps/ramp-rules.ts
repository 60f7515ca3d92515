/**
 * How steep, high and long a run of a ramp may be, and how long its landings are, by the rules that are published for it.
 *
 * The slope is the most that a finished ramp may have anywhere: what is laid out to it has no room for what forms and
 * finishing are off.
 */

import { constant, length, slope } from '../quantity/make';
import { type Paired, paired, sameInBoth } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Source } from '../reckoning/source';
import { LEAST_LANDING, type StepRules } from './rules';
import * as sources from './sources';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

/** Whose limits a ramp is held to. */
export type RampRules =
  | 'ada'
  | 'dwelling'
  | 'approved-document-m'
  | 'din-18040'
  | 'as-1428'
  | 'nbc'
  | 'service';

/** A slope with what one run at it may rise, or how long it may be on the level. */
export interface RampStretch {
  readonly slope: Slope;
  readonly rise?: Paired<'length'>;
  readonly run?: Paired<'length'>;
  /** So flat that it is a walk, which needs no handrails. */
  readonly walk?: true;
}

/** The limits of one set of rules. */
export interface RampLimits {
  /** From the steepest on. */
  readonly stretches: readonly RampStretch[];
  /** Landing at the foot and at the top. */
  readonly end?: Paired<'length'>;
  /** Landing between two runs. */
  readonly between?: Paired<'length'>;
  /** Landing at which a ramp turns back, where it must be longer. */
  readonly turn?: Paired<'length'>;
  /** Clear width. */
  readonly width?: Paired<'length'>;
  /** Across, of runs and of landings in any direction. */
  readonly across?: Slope;
  /** Handrails on both sides of runs that rise more; of every run where it is nothing. */
  readonly railsAbove?: Paired<'length'>;
  /** Whose guard stands at open sides. */
  readonly guards: StepRules;
  readonly source: Source;
}

const same = (text: string): Paired<'length'> => sameInBoth(length(text));

/**
 * Between the slopes that are named a run may be longer by a meter for each meter that it is longer to rise by one:
 * both tables interpolate so, and whole slopes of theirs are listed.
 */
const everyMeter = (from: number, to: number, run: number): readonly RampStretch[] =>
  Array.from({ length: to - from + 1 }, (_, i) => ({
    slope: slope(`1:${from + i}`),
    run: same(`${run + i} m`),
  }));

const LIMITS: Readonly<Record<RampRules, () => RampLimits>> = {
  ada: constant(() => ({
    stretches: [
      { slope: slope('1:12'), rise: paired('length', '30 in', '760 mm') },
      { slope: slope('1:20'), walk: true },
    ],
    end: paired('length', '60 in', '1525 mm'),
    between: paired('length', '60 in', '1525 mm'),
    width: paired('length', '36 in', '915 mm'),
    across: slope('1:48'),
    railsAbove: paired('length', '6 in', '150 mm'),
    guards: 'public',
    source: sources.ADA_RAMP_RUNS,
  })),
  dwelling: constant(() => ({
    stretches: [{ slope: slope('1:12') }],
    end: LEAST_LANDING,
    between: LEAST_LANDING,
    guards: 'dwelling',
    source: sources.IRC_RAMPS,
  })),
  'approved-document-m': constant(() => ({
    stretches: everyMeter(12, 20, 2),
    end: same('1.2 m'),
    between: same('1.5 m'),
    width: same('1.5 m'),
    across: slope('1:40'),
    railsAbove: same('0 m'),
    guards: 'approved-document-k-general',
    source: sources.ADM_RAMPS,
  })),
  'din-18040': constant(() => ({
    stretches: [{ slope: slope('6%'), run: same('6 m') }],
    end: same('1.5 m'),
    between: same('1.5 m'),
    width: same('1.2 m'),
    across: slope('0%'),
    railsAbove: same('0 m'),
    guards: 'din-18065',
    source: sources.DIN_RAMPS,
  })),
  'as-1428': constant(() => ({
    stretches: [
      ...everyMeter(14, 19, 9),
      { slope: slope('1:20'), run: same('15 m'), walk: true },
      { slope: slope('1:33'), run: same('25 m'), walk: true },
    ],
    end: same('1.2 m'),
    between: same('1.2 m'),
    turn: same('1.54 m'),
    width: same('1 m'),
    across: slope('1:40'),
    railsAbove: same('0 m'),
    guards: 'ncc',
    source: sources.AS_RAMPS,
  })),
  nbc: constant(() => ({
    stretches: [
      { slope: slope('1:12'), run: same('9 m') },
      { slope: slope('1:20'), walk: true },
    ],
    end: same('1.5 m'),
    between: same('1.2 m'),
    turn: same('1.5 m'),
    width: same('870 mm'),
    across: slope('1:50'),
    railsAbove: same('0 m'),
    guards: 'nbc',
    source: sources.NBC,
  })),
  service: constant(() => ({
    stretches: [{ slope: slope('1:8') }],
    guards: 'public',
    source: sources.COMMON_PRACTICE,
  })),
};

/** Every set of rules, for fields. */
export const RAMP_RULES: readonly RampRules[] = /*#__PURE__*/ Object.keys(LIMITS) as RampRules[];

/** The limits of a set of rules. */
export const rampLimits = (rules: RampRules): RampLimits => LIMITS[rules]();

/** What one run at a slope may rise at most: of a length, the rise over it. */
export const mostRise = ({ rise, run }: RampStretch, s: Slope, like: Length): Length | undefined =>
  rise ? rise.like(like) : run?.like(like).times(s);
