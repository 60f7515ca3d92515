/** In how many layers a base is placed, by what compacts it. */
import { length } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, ORONO_LIFTS, type Source } from '../reckoning/source';
import { wholeUnits } from '../reckoning/whole';

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

/** The thickest lift, in inches, in the state that the rule speaks of. */
type Rule = readonly [inches: number, state: 'loose' | 'compacted', source: Source];

const RULES: Record<Compactor, Rule> = {
  'hand-tamper': [3, 'loose', COMMON_PRACTICE],
  plate: [4, 'loose', ORONO_LIFTS],
  'power-tamper': [4, 'loose', ORONO_LIFTS],
  'vibratory-roller': [10, 'compacted', ORONO_LIFTS],
};

/** Names of the compactors. */
export const COMPACTORS = /*#__PURE__*/ Object.keys(RULES) as Compactor[];

/** The thickest lift as spread: given, or that of the rule for the compactor. */
function thickest(
  given: Length | undefined,
  compactor: Compactor | undefined,
  grow: Quantity<'ratio'>,
  pad: Pad,
) {
  if (given) return given;
  const [inches, state, source] = RULES[compactor as Compactor];
  const most = length(`${inches} in`);
  pad.assume({
    name: 'looseLift',
    value: `${most.format()} ${state}`,
    because: `the thickest lift for a ${(compactor as Compactor).replace('-', ' ')}`,
    override: 'Give looseLift, the thickness of a lift as spread',
    source,
  });
  return state === 'loose' ? most : most.times(grow);
}

/** Lifts of equal thickness, none thicker than what the compactor can do. */
export function liftsOf(
  d: Length,
  grow: Quantity<'ratio'>,
  { compactor, looseLift }: { compactor: Compactor | undefined; looseLift: Length | undefined },
  pad: Pad,
): LiftFigures | undefined {
  if (!compactor && !looseLift) return undefined;
  const t = thickest(looseLift, compactor, grow, pad);
  const loose = pad.step('depth as spread', 'u = d × g', { d, g: grow }, d.times(grow));
  const n = wholeUnits('lifts', loose, t, 'looseLift', pad);
  return {
    count: n,
    compacted: pad.step('each lift compacted', 'c = d ÷ n', { d, n }, d.over(n)),
    loose: pad.step('each lift as spread', 'l = u ÷ n', { u: loose, n }, loose.over(n)),
  };
}
