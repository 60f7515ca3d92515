/** Cautions about joints: what to heed, why, and by which source. */
import type { Quantity } from '../quantity/quantity';
import { clockText } from '../reckoning/clock';
import type { Caution } from '../reckoning/result';
import {
  ACI_SAW_TIMES,
  COMMON_PRACTICE,
  MCGRAW_JOINTS,
  NAVY_REINFORCED,
  PCA_JOINTS,
  SLAB_LENGTH_RATIO,
} from '../reckoning/source';
import { say } from '../reckoning/words';
import * as sources from './sources';

type Length = Quantity<'length'>;
type Time = Quantity<'time'>;

export const tryACut: Caution = {
  code: 'try-a-cut',
  severity: 'warning',
  says: 'the hours are guides: make a trial cut. Edges that ravel mean too early; a crack that runs ahead of the blade means too late. Where a crack has formed near a line, leave that cut out',
  always: true,
  source: ACI_SAW_TIMES,
};

/** By the clock, since midnight of any day. */
export interface Due {
  readonly from: Time;
  readonly to: Time;
}

export const sawAtNight = ({ from, to }: Due, limit: Time, actual: Time): Caution => ({
  code: 'saw-at-night',
  severity: 'warning',
  ...say`the cuts are due between ${{ from: clockText(from) }} and ${{ to: clockText(to) }}, and too little of that is working time; the next morning is too late. Keep a crew with proper lights for those hours, or place earlier, or cut a morning placement the same day with an early-entry saw`,
  limit,
  actual,
  source: sources.UFGS_SAWING,
});

export const mostlyAfterHours = (limit: Time, actual: Time): Caution => ({
  code: 'mostly-after-hours',
  severity: 'note',
  ...say`only ${{ actual }} of the ${{ limit }} in which the cuts are due are working time: see that the cutting fits, or arrange for people and lights to stay`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const littleSlack = (limit: Time, actual: Time): Caution => ({
  code: 'little-slack',
  severity: 'note',
  ...say`the cutting takes ${{ actual }} and fits only if the concrete is ready early: ready in the middle of its hours, ${{ limit }} of working time are left. Have a second saw or a late crew at hand`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const sawTooSlow = (limit: Time, actual: Time): Caution => ({
  code: 'saw-too-slow',
  severity: 'stop',
  ...say`the cutting takes ${{ actual }} and the window is open for ${{ limit }}, night included: joints cut late crack beside the cut. Bring more saws, or place less at a time`,
  limit,
  actual,
  source: ACI_SAW_TIMES,
});

export const lateToSet = (limit: Time, actual: Time): Caution => ({
  code: 'late-to-set',
  severity: 'warning',
  ...say`the concrete may be ready as late as ${{ actual }} after placing, though by the weather the cuts should be done ${{ limit }} after placing: watch the slab from then on, cut as soon as a trial cut holds, and ask the supplier about the mix`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const slumpOutOfTable = (limit: Length, actual: Length): Caution => ({
  code: 'slump-out-of-table',
  severity: 'warning',
  ...say`the slump is above the ${{ limit }} that the spacing table goes to; wetter concrete shrinks more, so joint closer`,
  limit,
  actual,
  source: PCA_JOINTS,
});

export const openingsPassedBy = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'openings-passed-by',
  severity: 'warning',
  ...say`a joint from every small opening would cut the slab into strips and slivers, so the joints keep the spacing and pass ${{ actual }} of them by; they are listed. Set isolation board all around each, full depth, and lay diagonal bars across its corners as the engineer directs; one boxed out round, or turned so that its points lie on joints, needs fewer`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const thicknessOutOfTable = (from: Length, to: Length, limit: Length, actual: Length): Caution => ({
  code: 'thickness-out-of-table',
  severity: 'note',
  ...say`the thickness is outside the published table, which runs from ${{ from }} to ${{ to }}; the same multiple of the thickness is used`,
  limit,
  actual,
  source: PCA_JOINTS,
});

export const reinforcedJoints: Caution = {
  code: 'reinforced-slab',
  severity: 'note',
  says: 'steel holds cracks closed but does not prevent them; wider spacing in a reinforced slab is for the engineer to allow',
  source: NAVY_REINFORCED,
};

export const deepCut = (limit: Length, actual: Length): Caution => ({
  code: 'cut-too-deep',
  severity: 'stop',
  says: 'the joint would go through more than half of the slab; the slab is too thin for a sawn joint',
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const wideStrip = (limit: Quantity<'ratio'>, actual: Quantity<'ratio'>): Caution => ({
  code: 'wide-strip',
  severity: 'warning',
  ...say`panels would be wider than ${{ limit }} of their length and tend to crack across: joint along the strip too`,
  limit,
  actual,
  source: MCGRAW_JOINTS,
});

export const longForStiffness = (limit: Quantity<'ratio'>, actual: Quantity<'ratio'>): Caution => ({
  code: 'long-for-stiffness',
  severity: 'warning',
  says: 'the panel is longer than 5 times the radius of relative stiffness; curling stresses then tend to crack it across. Joint closer',
  limit,
  actual,
  source: SLAB_LENGTH_RATIO,
});

export const overOtherCaps = (limit: Length, actual: Length): Caution => ({
  code: 'over-other-caps',
  severity: 'note',
  ...say`several published sources stop at 15 ft (4.5 m) for slabs this thick, though the rules applied allow ${{ actual }}; joint at 15 ft (4.5 m) unless the engineer says otherwise`,
  limit,
  actual,
  source: sources.JOINT_LAYOUT_RULES,
});
