/** Cautions about joints: what to watch out for, why, and by which source. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE, IRREGULAR_SLABS, type Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import type { FewerJoints } from './fewer-joints';
import * as sources from './sources';
import { MCGRAW_JOINTS, NAVY_REINFORCED, PCA_JOINTS, SLAB_LENGTH_RATIO } from './sources';

type Length = Quantity<'length'>;

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
  ...say`joints from every small opening would cut up the slab into strips and slivers, so they keep their spacing and openings are passed by: ${{ actual }}, as listed. Set isolation board all around each, full depth, and lay bars diagonally beside it, across its corners where it has any, as the engineer directs; one boxed out round, or moved or turned so that joints meet it, needs fewer`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const manyPanels = (
  ratio: Quantity<'ratio'>,
  [actual, length]: readonly [Quantity<'count'>, Length],
  { longestRatio, panelCount, contraction }: FewerJoints,
): Caution => ({
  code: 'many-panels',
  severity: 'note',
  ...say`to keep every panel no longer than ${{ ratio }} times its width takes ${{ actual }} panels and ${{ length }} of joints. ${{ limit: panelCount }} panels and ${{ other: contraction }} would do if a few were up to ${{ longer: longestRatio }} times as long as wide, which handbooks allow: give longestRatio ${{ longer: longestRatio }} for that plan, and look where its long panels lie`,
  limit: panelCount,
  actual,
  source: sources.TAPER_WIDTH,
});

export const justOverSpacing = (
  [limit, actual]: readonly [Quantity<'count'>, Quantity<'count'>],
  [side, spacing]: readonly [Length, Length],
  apart: Length,
): Caution => ({
  code: 'just-over-spacing',
  severity: 'note',
  ...say`${{ side }} is a hair more than whole spacings of ${{ spacing }}, which takes ${{ actual }} rows of panels. With joints ${{ apart }} apart ${{ limit }} would do: give that as the spacing where who drew the joints agrees`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const curvedCut = (limit: Length, actual: Length): Caution => ({
  code: 'curved-cut',
  severity: 'note',
  ...say`a saw runs straight and follows no joint of a radius of ${{ actual }}, below ${{ limit }}: form that joint with a groover or a strip while the concrete is fresh, and saw the straight ones`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** No slab on ground is so thin: what is, is bonded to one. */
export const toppingJoints = (limit: Length, actual: Length): Caution => ({
  code: 'thin-slab',
  severity: 'warning',
  ...say`${{ actual }} is no slab on ground: a topping bonded to a slab is jointed over every joint of that slab, in line with it and through its full depth, whatever the spacing; what is not bonded so thin curls and breaks`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const cutUpByStrips = (
  ratio: Quantity<'ratio'>,
  [actual, length]: readonly [Quantity<'count'>, Length],
  limit: Quantity<'count'>,
): Caution => ({
  code: 'strips-cut-up',
  severity: 'note',
  ...say`to keep every panel no longer than ${{ ratio }} times its width takes ${{ actual }} panels and ${{ length }} of joints; ${{ limit }} would do but for narrow strips beside a corner. Before so much is cut, see whether that corner can be moved, its strip be a slab of its own, or the corner be passed by with bars across it, as the engineer directs`,
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

/** No slab on ground is so thin: what is, is bonded to one. */
export const toppingOutOfTable = (from: Length, to: Length, limit: Length, actual: Length): Caution => ({
  ...thicknessOutOfTable(from, to, limit, actual),
  severity: 'warning',
  ...say`${{ actual }} is no slab on ground, and the table runs from ${{ from }} to ${{ to }}: a topping bonded to a slab is jointed over every joint of that slab, in line with it and through its full depth, whatever the spacing; what is not bonded so thin curls and breaks`,
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

export const shallowCut = (limit: Length, actual: Length, source: Source): Caution => ({
  code: 'shallow-cut',
  severity: 'warning',
  ...say`a joint of ${{ actual }} is shallower than ${{ limit }}: the slab cracks beside it as well as below it. Make it that deep, in time`,
  limit,
  actual,
  source,
});

export const cutTooDeep = (limit: Length, actual: Length): Caution => ({
  code: 'cut-too-deep',
  severity: 'warning',
  ...say`a joint of ${{ actual }} goes through more than half of the slab, ${{ limit }}: what is left does not carry across it, and steel may be cut`,
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

/** Panels of a good shape, and still wider than the slab bears between joints. */
export const wideForSpacing = (limit: Length, actual: Length): Caution => ({
  code: 'wide-strip',
  severity: 'note',
  ...say`the strip is ${{ actual }} wide and joints may be ${{ limit }} apart, which holds both ways: a joint along its middle, with those across closer by the shape of the panels, or a thicker slab, keeps it from cracking lengthwise`,
  limit,
  actual,
  source: COMMON_PRACTICE,
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
  ...say`several published sources stop at ${{ limit }} for slabs this thick, though the rules applied allow ${{ actual }}; joint at ${{ limit }} unless the engineer says otherwise`,
  limit,
  actual,
  source: sources.JOINT_LAYOUT_RULES,
});

export const widePanels = (limit: Length, actual: Length, times: Quantity<'ratio'>): Caution => ({
  code: 'wide-panels',
  severity: 'warning',
  ...say`panels ${{ actual }} long are ${{ times }} times the thickness, and plain slabs are jointed at 24 to 36 times, here ${{ limit }} at most: they crack where nobody cut. Joint closer, or have the engineer give the steel that is to hold the cracks`,
  limit,
  actual,
  source: sources.ACI_302_JOINTS,
});

export const rulesGiveWay = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'rule-gives-way',
  severity: 'warning',
  says: 'no plan of this kind keeps every rule; those that give way are listed. Cracks are likelier there: change the outline or an edge, or ask the engineer',
  limit,
  actual,
  source: IRREGULAR_SLABS,
});

/** What a plan with broken rules has, and one without would take. */
interface Spared {
  readonly panels: Quantity<'count'>;
  readonly others: Quantity<'count'>;
  readonly length: Length;
}

/** Told in place of the above where every rule can be kept, in far more panels. */
export const rulesEased = (
  limit: Quantity<'count'>,
  actual: Quantity<'count'>,
  { panels, others, length }: Spared,
): Caution => ({
  code: 'rule-gives-way',
  severity: 'warning',
  ...say`to keep every rule would take ${{ others }} panels and ${{ length }} of joints. This plan has ${{ panels }}, and the rules that give way are listed: cracks are likelier there, so lay bars in those panels and across those corners as the engineer directs, make a strip a slab of its own, or change the outline. Who wants every panel of good shape gives longestRatio`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** Nothing gives way but the ratio, and no farther than handbooks have it. */
export const ratioEased = (
  limit: Quantity<'ratio'>,
  actual: Quantity<'ratio'>,
  { panels, others, length }: Spared,
): Caution => ({
  code: 'many-panels',
  severity: 'note',
  ...say`a few panels, as listed, are up to ${{ actual }} times as long as wide, which handbooks allow: to keep all within ${{ limit }} times would take ${{ others }} panels and ${{ length }} of joints, where this plan has ${{ panels }}. For that plan give longestRatio ${{ limit }}`,
  limit,
  actual,
  source: sources.TAPER_WIDTH,
});

export const squareBoxOut: Caution = {
  code: 'square-box-out',
  severity: 'note',
  says: 'a small opening set square to the joints leaves corners that no joint meets; box it out round, or turned so that its points lie on the joints',
  source: COMMON_PRACTICE,
};
