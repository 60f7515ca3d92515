/** The rules that panels are held to, read and checked, with their defaults listed. */
import * as sharedFaults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { IRREGULAR_SLABS } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as faults from './faults';
import { BROKEN, type Limits } from './layout/rules';
import type { LayoutParsed } from './layout-input';
import { TAPER_WIDTH } from './sources';

type Length = Quantity<'length'>;

const LEAST_SPACING = /*#__PURE__*/ paired('length', '1 ft', '0.3 m');
const SLIVER = /*#__PURE__*/ paired('length', '2 ft', '0.6 m');
const RATIO = constant(() => ratio('1.5:1'));

const LEAST_RATIO = constant(() => ratio('1:1'));
export const STEP = /*#__PURE__*/ paired('length', '1/16 in', '1 mm');

/** Limits read and checked, with their defaults listed. */
export interface Rules {
  readonly spacing: Length;
  readonly leastSide: Length;
  readonly longestRatio: Quantity<'ratio'>;
  /** Whether the ratio or the least side is given. */
  readonly given: boolean;
}

function leastSideOf({ minimumSide, spacing }: LayoutParsed, pad: Pad): Length {
  if (minimumSide) {
    if (!minimumSide.lessThan(spacing))
      refuse('minimumSide', sharedFaults.doesNotFit('minimumSide', 'spacing'));
    return minimumSide;
  }
  const half = spacing.over(wholeNumber(2));
  const least = half.lessThan(SLIVER.like(half)) ? half : SLIVER.like(half);
  pad.assume({
    name: 'minimumSide',
    value: { reckoned: least },
    because: say`narrower panels break off; ${{ sliver: SLIVER }}, or half the spacing where that is less`,
    override: 'Give minimumSide',
    source: TAPER_WIDTH,
  });
  return least;
}

function ratioOf({ longestRatio }: LayoutParsed, pad: Pad): Quantity<'ratio'> {
  if (longestRatio) {
    if (longestRatio.lessThan(LEAST_RATIO()))
      refuse('longestRatio', faults.belowLeast('longestRatio', '1:1'));
    return longestRatio;
  }
  pad.assume({
    name: 'longestRatio',
    value: RATIO(),
    because: 'longer panels tend to crack across',
    override: 'Give longestRatio; published limits run from 1.25:1 to 2:1',
    source: IRREGULAR_SLABS,
  });
  return RATIO();
}

/** The spacing as it can be set out: whole steps, or whole modules. */
function spacingOf({ spacing, module, thickness }: LayoutParsed): Length {
  const tooClose = LEAST_SPACING.undercutBy(spacing);
  if (tooClose) refuse('spacing', faults.belowLeast('spacing', tooClose.format()));
  if (module?.greaterThan(spacing)) refuse('module', sharedFaults.doesNotFit('module', 'spacing'));
  // Marks are a sixteenth or a millimeter apart: to be over by less than one is no reason for a row more.
  return module ? spacing.downTo(module) : spacing.upTo(STEP.like(thickness));
}

export function rulesOf(input: LayoutParsed, pad: Pad): Rules {
  const spacing = spacingOf(input);
  const given = input.longestRatio !== undefined || input.minimumSide !== undefined;
  return { spacing, longestRatio: ratioOf(input, pad), leastSide: leastSideOf(input, pad), given };
}

export const limitsOf = ({ spacing, leastSide, longestRatio, given }: Rules): Limits => ({
  spacing: spacing.toNumber('m'),
  leastSide: leastSide.toNumber('m'),
  ratio: longestRatio.toNumber(':1'),
  weight: BROKEN,
  strict: given,
});
