/** In how many layers a base is placed, by what compacts it. */
import { constant, mass } from '../quantity/make';
import { Paired, paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { Pad } from '../reckoning/pad';
import type { Source } from '../reckoning/source';
import { wholeUnits } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { COMMON_PRACTICE, GEORGE_LIFTS, MARYLAND_LIFTS, OHIO_LIFTS, ORONO_LIFTS } from './sources';

/** What compacts the base. */
export type Compactor = 'hand-tamper' | 'plate' | 'power-tamper' | 'vibratory-roller';

/** The layers. */
export interface LiftFigures {
  /** How many. */
  readonly count: Quantity<'count'>;
  /** Each of them once compacted. */
  readonly compacted: Quantity<'length'>;
  /** Each of them as spread, before compaction. */
  readonly loose: Quantity<'length'>;
}

type Length = Quantity<'length'>;

/** A lift under both of its names, 4 in or 100 mm, in the state that the rule speaks of. */
interface Lift {
  readonly thickness: Paired<'length'>;
  readonly state: 'loose' | 'compacted';
  readonly source: Source;
}

/** What a compactor is trusted with by default, and the most that is published for it. */
interface Rule {
  readonly usual: Lift;
  readonly most: Lift;
}

const lift = (inches: number, state: Lift['state'], source: Source): Lift => ({
  thickness: paired('length', `${inches} in`, `${inches * 25} mm`),
  state,
  source,
});

const RULES: Record<Compactor, Rule> = /*#__PURE__*/ (() => ({
  'hand-tamper': { usual: lift(3, 'loose', COMMON_PRACTICE), most: lift(4, 'loose', GEORGE_LIFTS) },
  plate: { usual: lift(4, 'loose', ORONO_LIFTS), most: lift(6, 'loose', MARYLAND_LIFTS) },
  'power-tamper': { usual: lift(4, 'loose', ORONO_LIFTS), most: lift(6, 'loose', GEORGE_LIFTS) },
  'vibratory-roller': {
    usual: lift(4, 'compacted', OHIO_LIFTS),
    most: lift(12, 'compacted', ORONO_LIFTS),
  },
}))();

/** Names of the compactors. */
export const COMPACTORS = /*#__PURE__*/ Object.keys(RULES) as Compactor[];

const HEAVY = constant(() => mass('12 ton'));
const MIDDLING = constant(() => mass('10 ton'));

/** Vibratory rollers by their weight, as one state has them; without it the lightest. */
function byMass(m: Quantity<'mass'>): Lift {
  if (m.greaterThan(HEAVY())) return lift(8, 'compacted', OHIO_LIFTS);
  return lift(m.lessThan(MIDDLING()) ? 4 : 6, 'compacted', OHIO_LIFTS);
}

/** A lift as spread; what a rule has as compacted is thicker before. */
const asSpread = ({ thickness, state }: Lift, grow: Quantity<'ratio'>): Paired<'length'> => {
  const spread = (system: System): Length =>
    state === 'loose' ? thickness.as(system) : thickness.as(system).times(grow);
  return new Paired(() => ({ customary: spread('customary'), metric: spread('metric') }));
};

/** What the lifts depend on. */
export interface LiftInput {
  readonly compactor: Compactor | undefined;
  readonly rollerMass: Quantity<'mass'> | undefined;
  readonly looseLift: Length | undefined;
}

/** A lift that was given, against the most that is published for the compactor. */
function heedGiven(given: Length, compactor: Compactor, grow: Quantity<'ratio'>, pad: Pad): void {
  const { most } = RULES[compactor];
  const limit = asSpread(most, grow).exceededBy(given);
  if (limit) pad.caution(cautions.thickLift(compactor.replace('-', ' '), limit, given, most.source));
}

/** The thickest lift as spread: given, or that of the rule for the compactor. */
function thickest(d: Length, input: LiftInput, grow: Quantity<'ratio'>, pad: Pad): Length {
  const { looseLift: given, compactor, rollerMass } = input;
  if (given) {
    if (compactor) heedGiven(given, compactor, grow, pad);
    return given;
  }
  const { usual, most } = RULES[compactor as Compactor];
  const taken = rollerMass && compactor === 'vibratory-roller' ? byMass(rollerMass) : usual;
  const roller = compactor === 'vibratory-roller' && !rollerMass ? ' of unknown weight' : '';
  pad.assume({
    name: 'looseLift',
    value: say`${{ lift: taken.thickness }} ${{ state: taken.state }}`,
    because: say`the thickest lift for a ${{ compactor: (compactor as Compactor).replace('-', ' ') }}${{ roller }}, on the careful side; up to ${{ most: most.thickness }} ${{ mostState: most.state }} is published`,
    override: roller
      ? 'Give rollerMass, or looseLift as spread'
      : 'Give looseLift, the thickness of a lift as spread',
    source: taken.source,
  });
  return asSpread(taken, grow).like(d);
}

/** Lifts of equal thickness, none thicker than what the compactor can do. */
export function liftsOf(
  d: Length,
  grow: Quantity<'ratio'>,
  input: LiftInput,
  pad: Pad,
): LiftFigures | undefined {
  if (!input.compactor && !input.looseLift) return undefined;
  const t = thickest(d, input, grow, pad);
  const loose = pad.step('depth as spread', 'u = d × g', { d, g: grow }, d.times(grow));
  const n = wholeUnits('lifts', loose, t, 'looseLift', pad);
  return {
    count: n,
    compacted: pad.step('each lift compacted', 'c = d ÷ n', { d, n }, d.over(n)),
    loose: pad.step('each lift as spread', 'l = u ÷ n', { u: loose, n }, loose.over(n)),
  };
}
