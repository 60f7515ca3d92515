/**
 * Every caution, in one place: its code, how grave it is, what it says and where it comes from.
 *
 * A caution informs; the plans, the local code and a licensed engineer decide.
 */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from './result';
import * as sources from './source';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

export const thinSlab = (limit: Length, actual: Length): Caution => ({
  code: 'thin-slab',
  severity: 'warning',
  sentence: `the slab is thinner than the ${limit.format()} that a slab on ground is usually required to have; follow the plans and the local code`,
  limit,
  actual,
  source: sources.IRC_SLAB_THICKNESS,
});

export const steepRiser = (limit: Length, actual: Length): Caution => ({
  code: 'riser-too-high',
  severity: 'warning',
  sentence: `a riser higher than ${limit.format()} is not allowed in most dwellings; people trip on it. Check the local code`,
  limit,
  actual,
  source: sources.IRC_STAIRS,
});

export const narrowTread = (limit: Length, actual: Length): Caution => ({
  code: 'tread-too-narrow',
  severity: 'warning',
  sentence: `a tread narrower than ${limit.format()} is not allowed in most dwellings; people miss it. Check the local code`,
  limit,
  actual,
  source: sources.IRC_STAIRS,
});

export const handrail = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'handrail',
  severity: 'warning',
  sentence:
    'a flight of four or more risers usually needs a handrail; plan its anchors before the pour and check the local code',
  limit,
  actual,
  source: sources.IRC_HANDRAIL,
});

export const runsToBuilding = (limit: Slope, actual: Slope): Caution => ({
  code: 'runs-to-building',
  severity: 'stop',
  sentence:
    'the surface falls towards the building: water will run to the wall or the door. Correct the grade before any concrete is placed',
  limit,
  actual,
  source: sources.IRC_DRAINAGE,
});

export const tooFlat = (limit: Slope, actual: Slope): Caution => ({
  code: 'too-flat',
  severity: 'warning',
  sentence: `the surface falls less than the required ${limit.format()}: water will stand. Correct the grade before any concrete is placed`,
  limit,
  actual,
  source: sources.PCA_DRAINAGE,
});

export const steeperThanRamp = (limit: Slope, actual: Slope): Caution => ({
  code: 'steeper-than-ramp',
  severity: 'warning',
  sentence: `steeper than ${limit.format()}, the most a new accessible ramp may have; people slip on it when it is icy. Check the local code`,
  limit,
  actual,
  source: sources.ADA_RAMPS,
});

export const longPanel = (limit: Quantity<'ratio'>, actual: Quantity<'ratio'>): Caution => ({
  code: 'long-panel',
  severity: 'warning',
  sentence: `panels longer than ${limit.format()} tend to crack across the middle; joint the slab into squarer panels`,
  limit,
  actual,
  source: sources.MCGRAW_JOINTS,
});

export const slumpOutOfTable = (limit: Length, actual: Length): Caution => ({
  code: 'slump-out-of-table',
  severity: 'warning',
  sentence: `the slump is above the ${limit.format()} that the spacing table goes to; wetter concrete shrinks more, so joint closer`,
  limit,
  actual,
  source: sources.PCA_JOINTS,
});

export const thicknessOutOfTable = (limit: Length, actual: Length): Caution => ({
  code: 'thickness-out-of-table',
  severity: 'note',
  sentence: `the thickness is outside the published table, which runs from 4 in to 10 in; the same multiple of the thickness is used`,
  limit,
  actual,
  source: sources.PCA_JOINTS,
});

export const silica: Caution = {
  code: 'silica-dust',
  severity: 'warning',
  sentence:
    'sawing hardened concrete dry releases respirable silica; saw wet or with extraction and follow the dust rules that apply',
  source: sources.SILICA_RULE,
};

export const steelCover = (limit: Length, actual: Length): Caution => ({
  code: 'little-cover',
  severity: 'warning',
  sentence: `less than ${limit.format()} of cover at an edge cast against earth lets the bars rust; the plans and the engineer govern`,
  limit,
  actual,
  source: sources.ACI_318_COVER,
});

export const wideSpacing = (limit: Length, actual: Length): Caution => ({
  code: 'wide-spacing',
  severity: 'note',
  sentence: `bars farther apart than ${limit.format()} do little against cracks; the plans and the engineer govern`,
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const shortLap = (limit: Length, actual: Length): Caution => ({
  code: 'short-lap',
  severity: 'warning',
  sentence: `the lap is shorter than ${limit.format()}, the larger of 40 bar diameters and 12 in; the plans and the engineer govern`,
  limit,
  actual,
  source: sources.VCC_LAP,
});

export const impalement: Caution = {
  code: 'impalement',
  severity: 'warning',
  sentence: 'bars that stand up must be capped or bent over so that nobody falls on them',
  source: sources.COMMON_PRACTICE,
};

export const meshOnGround: Caution = {
  code: 'mesh-height',
  severity: 'note',
  sentence:
    'mesh works only where it ends up in the slab: set it on chairs, not on the ground to be pulled up later',
  source: sources.COMMON_PRACTICE,
};

export const noAllowance: Caution = {
  code: 'no-allowance',
  severity: 'warning',
  sentence: 'nothing is allowed for waste, spillage and an uneven base; published texts add 5% to 10%',
  source: sources.WASTE_TEXTS,
};

export const smallLastLoad = (limit: Quantity<'volume'>, actual: Quantity<'volume'>): Caution => ({
  code: 'small-last-load',
  severity: 'note',
  sentence:
    'the last load is less than a quarter of a truck; most suppliers charge more for it, so ask, or split the order evenly',
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const alkali: Caution = {
  code: 'alkaline-burns',
  severity: 'warning',
  sentence:
    'wet concrete burns skin and eyes: wear gloves, boots and eye protection, and wash it off at once',
  source: sources.COMMON_PRACTICE,
};

export const wetBase: Caution = {
  code: 'loose-and-compacted',
  severity: 'note',
  sentence:
    'suppliers sell by weight as delivered: water in the material is paid for, and the same load fills less once compacted',
  source: sources.COMMON_PRACTICE,
};

export const buriedUtilities: Caution = {
  code: 'buried-utilities',
  severity: 'warning',
  sentence: 'have buried lines located and marked before digging',
  source: sources.COMMON_PRACTICE,
};

export const looseNotLighter = (limit: Quantity<'density'>, actual: Quantity<'density'>): Caution => ({
  code: 'loose-not-lighter',
  severity: 'warning',
  sentence: 'loose material is not lighter than compacted here, which cannot be; check the two densities',
  limit,
  actual,
  source: sources.CLOSED_FORM,
});

export const reinforcedJoints: Caution = {
  code: 'reinforced-slab',
  severity: 'note',
  sentence:
    'steel holds cracks closed but does not prevent them; wider spacing in a reinforced slab is for the engineer to allow',
  source: sources.NAVY_REINFORCED,
};

export const rulesGiveWay = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'rule-gives-way',
  severity: 'warning',
  sentence:
    'no plan of this kind keeps every rule; those that give way are listed. Cracks are likelier there: change the outline or an edge, or ask the engineer',
  limit,
  actual,
  source: sources.IRREGULAR_SLABS,
});

export const squareBoxOut: Caution = {
  code: 'square-box-out',
  severity: 'note',
  sentence:
    'a small opening set square to the joints leaves corners that no joint meets; box it out round, or turned so that its points lie on the joints',
  source: sources.COMMON_PRACTICE,
};

export const sawAtNight = (limit: Quantity<'time'>, actual: Quantity<'time'>): Caution => ({
  code: 'saw-at-night',
  severity: 'stop',
  sentence:
    'the time for sawing falls outside working hours: cracks do not wait for the morning. Place earlier, keep a crew and light for the night, or use an early-entry saw',
  limit,
  actual,
  source: sources.ACI_SAW_TIMES,
});

export const sawTooSlow = (limit: Quantity<'time'>, actual: Quantity<'time'>): Caution => ({
  code: 'saw-too-slow',
  severity: 'stop',
  sentence: 'the cutting takes longer than the window is open; bring more saws or place less at a time',
  limit,
  actual,
  source: sources.ACI_SAW_TIMES,
});

export const rawEdges: Caution = {
  code: 'try-a-cut',
  severity: 'warning',
  sentence:
    'the ranges are guides: make a trial cut. Edges that ravel mean too early; a crack that runs ahead of the blade means too late',
  source: sources.ACI_SAW_TIMES,
};

export const longForStiffness = (limit: Quantity<'ratio'>, actual: Quantity<'ratio'>): Caution => ({
  code: 'long-for-stiffness',
  severity: 'warning',
  sentence:
    'the panel is longer than 5 times the radius of relative stiffness; curling stresses then tend to crack it across. Joint closer',
  limit,
  actual,
  source: sources.SLAB_LENGTH_RATIO,
});
