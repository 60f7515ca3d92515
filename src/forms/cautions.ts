/** Cautions about forms: what to watch out for, why, and by which source. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE, OSHA_BARS } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';
import { FORM_DEPTH, FORM_PRESSURE, STAKES_APART } from './sources';

type Length = Quantity<'length'>;

export const engineeredForms: Caution = {
  code: 'engineered-forms',
  severity: 'warning',
  always: true,
  says: 'forms that burst kill: this is the pressure, and no design. Walls, columns and anything higher than a person are formed by a design of a licensed engineer or by the tables of who makes the forms; watch ties and braces through the pour',
  source: FORM_PRESSURE,
};

export const overFormPressure = (
  limit: Quantity<'pressure'>,
  actual: Quantity<'pressure'>,
  rate: Quantity<'speed'> | undefined,
): Caution => ({
  code: 'over-form-pressure',
  severity: 'stop',
  ...say`the concrete presses with ${{ actual }}, and the forms are made for ${{ limit }}: ${rate ? say`place no faster than ${{ rate }}` : say`no rate of placing keeps it below that in one lift; place in lifts, or have stronger forms made`}`,
  limit,
  actual,
  source: FORM_PRESSURE,
});

export const fullHeadGoverns = (why: Words): Caution => ({
  code: 'full-head',
  severity: 'note',
  ...say`the forms must stand the full head: ${why}`,
  source: FORM_PRESSURE,
});

export const coldConcretePresses = (
  limit: Quantity<'temperature'>,
  actual: Quantity<'temperature'>,
): Caution => ({
  code: 'cold-concrete-presses',
  severity: 'warning',
  ...say`concrete of ${{ actual }} stiffens slowly and presses longer: below ${{ limit }} no equation is tabled, so the full head is taken. Warmer concrete presses less`,
  limit,
  actual,
  source: FORM_PRESSURE,
});

export const lowForms = (limit: Length, actual: Length, lacks: Length): Caution => ({
  code: 'low-forms',
  severity: 'warning',
  ...say`the boards stand ${{ actual }} high, and the concrete is ${{ limit }}: set flat on the base they make it ${{ lacks }} too thin. Pack them up and fill below, or grade the base ${{ lacks }} below their lower edge`,
  limit,
  actual,
  source: FORM_DEPTH,
});

export const lowRisers = (limit: Length, actual: Length, lacks: Length): Caution => ({
  code: 'low-forms',
  severity: 'warning',
  ...say`the riser boards are ${{ actual }} high, and a riser is ${{ limit }}: the concrete of the step slumps out below them. Take a wider board ripped to the riser, or nail a strip of ${{ lacks }} along its lower edge`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const ripRisers = (limit: Length, actual: Length, over: Length): Caution => ({
  code: 'rip-risers',
  severity: 'note',
  ...say`rip ${{ over }} off the riser boards: a riser is ${{ limit }}, and boards ${{ actual }} high stand in the concrete of the tread below. Bevel their lower edge, so that the trowel gets under it`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const tightCurve = (limit: Length, actual: Length): Caution => ({
  code: 'tight-curve',
  severity: 'warning',
  ...say`a radius of ${{ actual }} is tighter than the ${{ limit }} that this thickness bends to: it breaks, or pulls its stakes out. Use thinner layers, or saw kerfs into its back`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** The same around an opening, where there is a form that is round already. */
export const tightOpening = (limit: Length, actual: Length): Caution => ({
  ...tightCurve(limit, actual),
  ...say`a round opening of a radius of ${{ actual }} is tighter than the ${{ limit }} that this thickness bends to: set a form tube and name the opening in filledOpenings, or use thinner layers, or saw kerfs into its back`,
});

export const bentBoards: Caution = {
  code: 'bent-boards-spring',
  severity: 'note',
  says: 'a bent board is a spring: fasten it from one end on, stake by stake, and stand inside the curve and clear of its end when it is let go',
  source: COMMON_PRACTICE,
};

export const kerfsClose = (limit: Length, actual: Length): Caution => ({
  code: 'kerfs-too-close',
  severity: 'warning',
  ...say`kerfs ${{ actual }} apart are closer than ${{ limit }}: what stands between them breaks out. Use thin layers, or a thinner board`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const farStakes = (limit: Length, actual: Length): Caution => ({
  code: 'stakes-far-apart',
  severity: 'warning',
  ...say`stakes ${{ actual }} apart are farther than the ${{ limit }} that such boards bear: the edge bows and the forms lean. Set more of them`,
  limit,
  actual,
  source: STAKES_APART,
});

export const shortStakes = (limit: Length, actual: Length): Caution => ({
  code: 'short-stakes',
  severity: 'warning',
  ...say`stakes of ${{ actual }} are shorter than the ${{ limit }} that the form and the ground ask: they lean out under the concrete. Take longer ones`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const gapUnderForms = (limit: Length, actual: Length): Caution => ({
  code: 'gap-under-forms',
  severity: 'warning',
  ...say`where the ground is lowest the boards stand ${{ actual }} over it, more than ${{ limit }}: base and concrete run out below. Close it with another board or with earth tamped against their outside before the base goes in, and compact the deeper base in lifts`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const unbracedForms = (limit: Length, actual: Length): Caution => ({
  code: 'unbraced-forms',
  severity: 'warning',
  ...say`forms of ${{ actual }} without braces: above ${{ limit }} each stake wants a brace to a second stake behind it`,
  limit,
  actual,
  source: STAKES_APART,
});

export const formsNeedDesign = (limit: Length, actual: Length, checked: boolean): Caution => ({
  code: 'forms-need-design',
  severity: checked ? 'warning' : 'stop',
  ...say`concrete ${{ actual }} high presses harder than boards and stakes are trusted with, ${{ limit }}: forms that give way bury people. ${checked ? say`Keep to the rate that the pressure was reckoned for, and have ties and braces designed by a licensed engineer` : say`Reckon the pressure of the concrete first, and have forms, ties and braces designed by a licensed engineer`}`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const wallForms: Caution = {
  code: 'wall-forms',
  severity: 'warning',
  says: 'forms of walls, columns and anything that carries a load are designed by a licensed engineer or by the tables of who makes them, tied through and braced; this counts boards and stakes only. Watch them through the pour',
  source: FORM_PRESSURE,
};

export const bareStakes: Caution = {
  code: 'bare-stakes',
  severity: 'warning',
  says: 'who trips falls onto steel stakes: drive them below the top of the boards, or put caps or guards on them that stop a fall',
  source: OSHA_BARS,
};

export const fluidTooHigh = (limit: Length, actual: Length, rate: Quantity<'speed'>): Caution => ({
  code: 'lift-too-high',
  severity: 'stop',
  ...say`at that rise ${{ actual }} of concrete stand fluid, and who makes the forms allows ${{ limit }}: forms burst. Place no faster than ${{ rate }}, round by round, and let each lift stiffen`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});
