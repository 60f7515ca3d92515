/**
 * Every caution, in one place: its code, how grave it is, what it says and where it comes from.
 *
 * A caution informs; the plans, the local code and a licensed engineer decide.
 */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from './result';
import * as sources from './source';
import { say } from './words';

type Length = Quantity<'length'>;

export const thinSlab = (limit: Length, actual: Length): Caution => ({
  code: 'thin-slab',
  severity: 'warning',
  ...say`the slab is thinner than the ${{ limit }} that a slab on ground is usually required to have; follow the plans and the local code`,
  limit,
  actual,
  source: sources.IRC_SLAB_THICKNESS,
});

export const steepRiser = (limit: Length, actual: Length): Caution => ({
  code: 'riser-too-high',
  severity: 'warning',
  ...say`a riser higher than ${{ limit }} is not allowed in most dwellings; people trip on it. Check the local code`,
  limit,
  actual,
  source: sources.IRC_STAIRS,
});

export const narrowTread = (limit: Length, actual: Length): Caution => ({
  code: 'tread-too-narrow',
  severity: 'warning',
  ...say`a tread narrower than ${{ limit }} is not allowed in most dwellings; people miss it. Check the local code`,
  limit,
  actual,
  source: sources.IRC_STAIRS,
});

export const handrail = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'handrail',
  severity: 'warning',
  says: 'a flight of four or more risers usually needs a handrail; plan its anchors before the pour and check the local code',
  limit,
  actual,
  source: sources.IRC_HANDRAIL,
});

export const silica: Caution = {
  code: 'silica-dust',
  severity: 'warning',
  says: 'sawing, drilling or grinding hardened concrete dry releases respirable silica; work wet or with extraction and follow the dust rules that apply',
  always: true,
  source: sources.SILICA_RULE,
};

export const impalement: Caution = {
  code: 'impalement',
  severity: 'warning',
  says: 'bars that stand up must be capped or bent over so that nobody falls on them',
  source: sources.OSHA_BARS,
};

export const alkali: Caution = {
  code: 'alkaline-burns',
  severity: 'warning',
  always: true,
  says: 'wet concrete burns skin and eyes: wear gloves, boots and eye protection, and wash it off at once',
  source: sources.COMMON_PRACTICE,
};

export const buriedUtilities: Caution = {
  code: 'buried-utilities',
  severity: 'warning',
  always: true,
  says: 'have buried lines located and marked before digging',
  source: sources.COMMON_PRACTICE,
};

export const lowRiser = (limit: Length, actual: Length): Caution => ({
  code: 'riser-too-low',
  severity: 'warning',
  ...say`a riser lower than ${{ limit }} is easily overlooked; people trip on it. Check the local code`,
  limit,
  actual,
  source: sources.CC_STEPS,
});

export const lowThreshold = (limit: Length, actual: Length): Caution => ({
  code: 'little-freeboard',
  severity: 'warning',
  ...say`the surface is less than ${{ limit }} below the sill or threshold: rain and snow get in. Lower the surface; check the local code and the door's own instructions`,
  limit,
  actual,
  source: sources.MCGRAW_STEPS,
});

export const misclosure = (limit: Length, actual: Length): Caution => ({
  code: 'misclosure',
  severity: 'warning',
  ...say`the levels do not close within ${{ limit }}: read the points again before anything is set from them`,
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const guessedCoefficient: Caution = {
  code: 'runoff-coefficient',
  severity: 'note',
  says: 'published runoff coefficients differ (concrete 0.80 to 0.95), and the rainfall is set by the local code; the drainage authority governs',
  source: sources.HERPICC_RUNOFF,
};

export const rulesGiveWay = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'rule-gives-way',
  severity: 'warning',
  says: 'no plan of this kind keeps every rule; those that give way are listed. Cracks are likelier there: change the outline or an edge, or ask the engineer',
  limit,
  actual,
  source: sources.IRREGULAR_SLABS,
});

export const squareBoxOut: Caution = {
  code: 'square-box-out',
  severity: 'note',
  says: 'a small opening set square to the joints leaves corners that no joint meets; box it out round, or turned so that its points lie on the joints',
  source: sources.COMMON_PRACTICE,
};

export const notProved = (limit: Quantity, actual: Quantity): Caution => ({
  code: 'not-proved-best',
  severity: 'note',
  ...say`the plan is not proved the best: none can come to less than ${{ limit }}`,
  limit,
  actual,
  source: sources.CLOSED_FORM,
});

export const noLapOfLargeBars: Caution = {
  code: 'large-bars-not-lapped',
  severity: 'warning',
  says: 'bars #14 and #18 are not lapped in tension; they are coupled or welded as the engineer says',
  source: { ...sources.COMMON_PRACTICE, title: 'Laps of #14 and #18, as ACI 318 is commonly quoted' },
};

export const lowFibreDosage = (limit: Quantity<'density'>, actual: Quantity<'density'>): Caution => ({
  code: 'low-fibre-dosage',
  severity: 'warning',
  ...say`less than ${{ limit }}, the least that is published for these fibres in a slab on ground`,
  limit,
  actual,
  source: sources.ACI_FIBRE,
});

export const fibresNotBars: Caution = {
  code: 'fibres-not-bars',
  severity: 'note',
  says: 'fibres do not replace bars that the plans ask for; the engineer decides',
  always: true,
  source: sources.COMMON_PRACTICE,
};
