/**
 * Every caution, in one place: its code, how grave it is, what it says and where it comes from.
 *
 * A caution informs; the plans, the local code and a licensed engineer decide.
 */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from './result';
import type { Source } from './source';
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
  always: true,
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
  source: sources.OSHA_BARS,
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

export const trenchExit = (limit: Length, actual: Length): Caution => ({
  code: 'trench-exit',
  severity: 'warning',
  sentence: `a trench ${limit.format()} deep or more needs a ladder or a ramp close to everyone in it, and the air may need testing; check the rules that apply`,
  limit,
  actual,
  source: sources.EXCAVATION_RULES,
});

export const trenchDepth = (limit: Length, actual: Length): Caution => ({
  code: 'trench-depth',
  severity: 'stop',
  sentence: `from ${limit.format()} of depth on nobody may enter unless the sides are sloped, shored or shielded as a competent person says; shallower cuts cave in too`,
  limit,
  actual,
  source: sources.EXCAVATION_RULES,
});

export const engineeredExcavation = (limit: Length, actual: Length): Caution => ({
  code: 'engineered-excavation',
  severity: 'stop',
  sentence: `an excavation deeper than ${limit.format()} must be protected as a licensed engineer designs`,
  limit,
  actual,
  source: sources.EXCAVATION_RULES,
});

export const spoilAtEdge: Caution = {
  code: 'spoil-at-edge',
  severity: 'note',
  sentence: 'keep spoil, materials and machines at least 2 ft back from the edge of the cut',
  source: sources.EXCAVATION_RULES,
};

export const endAreasDiffer = (limit: Quantity<'ratio'>, actual: Quantity<'ratio'>): Caution => ({
  code: 'end-areas-differ',
  severity: 'note',
  sentence:
    'average end areas and the prismoidal formula differ noticeably here; the prismoidal volume is used, so agree on the method before earth is paid for by volume',
  limit,
  actual,
  source: sources.CLOSED_FORM,
});

export const wheelLoads: Caution = {
  code: 'wheel-loads',
  severity: 'warning',
  sentence:
    'keep loaded trucks off base that is freshly placed, wet or thin: they rut it and push the forms out of line; recompact and check grade after any traffic',
  source: sources.COMMON_PRACTICE,
};

export const liftingBags = (limit: Quantity<'mass'>, actual: Quantity<'mass'>): Caution => ({
  code: 'lifting-bags',
  severity: 'warning',
  sentence: `a bag heavier than ${limit.format()} is more than one person should lift again and again; lift it in pairs, or buy smaller bags`,
  limit,
  actual,
  source: sources.LIFTING_GUIDE,
});

export const belowMinimumLoad = (limit: Quantity<'volume'>, actual: Quantity<'volume'>): Caution => ({
  code: 'below-minimum-load',
  severity: 'note',
  sentence: 'a load is below the least that the supplier carries without a charge; ask what it costs',
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const thinOverCore = (limit: Length, actual: Length): Caution => ({
  code: 'thin-over-core',
  severity: 'warning',
  sentence: `less than ${limit.format()} of concrete lies over the core; it may break through. The plans and the engineer govern`,
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const outOfSquare = (limit: Length, actual: Length): Caution => ({
  code: 'out-of-square',
  severity: 'warning',
  sentence:
    'the diagonals differ by more than the tolerance: slide a side until they are equal, then brace the forms',
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const sidesAndDiagonals = (limit: Length, actual: Length): Caution => ({
  code: 'sides-and-diagonals',
  severity: 'warning',
  sentence:
    'sides and diagonals do not belong to one figure with opposite sides equal: measure all four sides and both diagonals again',
  limit,
  actual,
  source: sources.CLOSED_FORM,
});

export const largeAllowance = (limit: Quantity<'ratio'>, actual: Quantity<'ratio'>): Caution => ({
  code: 'large-allowance',
  severity: 'warning',
  sentence: `an allowance above ${limit.format()} is far from the published 5% to 10%; it is the share added on top, so a factor of 1.08 is 8%`,
  limit,
  actual,
  source: sources.WASTE_TEXTS,
});

export const lowRiser = (limit: Length, actual: Length): Caution => ({
  code: 'riser-too-low',
  severity: 'warning',
  sentence: `a riser lower than ${limit.format()} is easily overlooked; people trip on it. Check the local code`,
  limit,
  actual,
  source: sources.CC_STEPS,
});

export const noStepLayout: Caution = {
  code: 'no-layout',
  severity: 'stop',
  sentence:
    'no number of equal risers meets these rules; change the total rise, ramp it, or ask the local building official',
  source: sources.CLOSED_FORM,
};

export const shortLanding = (limit: Length, actual: Length): Caution => ({
  code: 'landing-too-short',
  severity: 'warning',
  sentence: `a landing at a door is usually at least ${limit.format()} deep in the way of travel, and no narrower than the door; check the local code`,
  limit,
  actual,
  source: sources.MCGRAW_STEPS,
});

export const doorOverSteps = (limit: Length, actual: Length): Caution => ({
  code: 'door-swings-over-steps',
  severity: 'warning',
  sentence:
    'the door swings out farther than the landing leaves room to stand: whoever opens it is pushed down the steps. Make the landing deeper or hang the door inwards',
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const highThreshold = (limit: Length, actual: Length): Caution => ({
  code: 'threshold-too-high',
  severity: 'warning',
  sentence: `the drop from threshold to landing is more than ${limit.format()}, which is commonly the most at a door that must serve as a way out; check the local code`,
  limit,
  actual,
  source: sources.IRC_DOORS,
});

export const lowThreshold = (limit: Length, actual: Length): Caution => ({
  code: 'little-freeboard',
  severity: 'warning',
  sentence: `the surface is less than ${limit.format()} below the sill or threshold: rain and snow get in. Lower the surface; check the local code and the door's own instructions`,
  limit,
  actual,
  source: sources.MCGRAW_STEPS,
});

export const steepTreads = (limit: Slope, actual: Slope): Caution => ({
  code: 'treads-too-steep',
  severity: 'warning',
  sentence: `treads and landings steeper than ${limit.format()} are usually not allowed; feet slide off them. Check the local code`,
  limit,
  actual,
  source: sources.CC_STEPS,
});

export const levelTreads = (limit: Slope, actual: Slope): Caution => ({
  code: 'treads-hold-water',
  severity: 'warning',
  sentence: `outdoor treads pitched less than ${limit.format()} hold water, which freezes`,
  limit,
  actual,
  source: sources.PCA_DRAINAGE,
});

export const unevenRisers = (limit: Length, actual: Length): Caution => ({
  code: 'uneven-risers',
  severity: 'warning',
  sentence: `risers of one flight may differ by at most ${limit.format()}; people trip on the odd one. Correct the forms before the pour`,
  limit,
  actual,
  source: sources.CC_STEP_TOLERANCE,
});

export const frostUnderSteps = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'frost-depth',
  severity: 'note',
  sentence:
    'steps of three risers or more are usually founded below the frost line, so that they do not heave away from the door; the local building department gives the depth',
  limit,
  actual,
  source: sources.MCGRAW_STEPS,
});

export const fallNotMet = (name: string, limit: Slope, actual: Slope): Caution => ({
  code: 'fall-not-met',
  severity: 'warning',
  sentence: `along ${name} the forms do not fall as asked; correct the grades before any concrete is placed`,
  limit,
  actual,
  source: sources.CLOSED_FORM,
});

export const misclosure = (limit: Length, actual: Length): Caution => ({
  code: 'misclosure',
  severity: 'warning',
  sentence: `the levels do not close within ${limit.format()}: read the points again before anything is set from them`,
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const guessedCoefficient: Caution = {
  code: 'runoff-coefficient',
  severity: 'note',
  sentence:
    'published runoff coefficients differ (concrete 0.80 to 0.95), and the rainfall is set by the local code; the drainage authority governs',
  source: sources.HERPICC_RUNOFF,
};

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

export const longForStiffness = (limit: Quantity<'ratio'>, actual: Quantity<'ratio'>): Caution => ({
  code: 'long-for-stiffness',
  severity: 'warning',
  sentence:
    'the panel is longer than 5 times the radius of relative stiffness; curling stresses then tend to crack it across. Joint closer',
  limit,
  actual,
  source: sources.SLAB_LENGTH_RATIO,
});

export const notProved = (limit: Quantity, actual: Quantity): Caution => ({
  code: 'not-proved-best',
  severity: 'note',
  sentence: `the plan is not proved the best: none can come to less than ${limit.format()}`,
  limit,
  actual,
  source: sources.CLOSED_FORM,
});

export const heavyLift = (actual: Quantity<'mass'>): Caution => ({
  code: 'heavy-lift',
  severity: 'warning',
  sentence: `the bundle weighs ${actual.format()}: lift it with tackle rated for more than that, with nobody beneath`,
  source: sources.COMMON_PRACTICE,
});

export const lapsGoverned: Caution = {
  code: 'laps-governed-by-plans',
  severity: 'note',
  sentence: 'the laps on the plans and the word of the engineer govern; this is what a rule comes to',
  source: sources.COMMON_PRACTICE,
};

export const noLapOfLargeBars: Caution = {
  code: 'large-bars-not-lapped',
  severity: 'warning',
  sentence: 'bars #14 and #18 are not lapped in tension; they are coupled or welded as the engineer says',
  source: { ...sources.COMMON_PRACTICE, title: 'Laps of #14 and #18, as ACI 318 is commonly quoted' },
};

export const steelGoverned: Caution = {
  code: 'steel-governed-by-plans',
  severity: 'note',
  sentence:
    'steel does not keep a slab from cracking but holds the cracks tight; the plans, the local code and the engineer govern',
  source: sources.COMMON_PRACTICE,
};

export const dowelOutOfTable = (limit: Length, actual: Length, source: Source): Caution => ({
  code: 'dowel-out-of-table',
  severity: 'warning',
  sentence: `the slab is outside the table, which ends at ${limit.format('in')}; the nearest row is used, so ask the engineer`,
  limit,
  actual,
  source,
});

export const dowelsAligned: Caution = {
  code: 'dowels-aligned',
  severity: 'warning',
  sentence:
    'dowels must lie level, square to the joint and free to slide on one side, or they lock the joint and the slab cracks',
  source: sources.COMMON_PRACTICE,
};

export const drillDust: Caution = {
  code: 'silica-dust',
  severity: 'warning',
  sentence:
    'drilling concrete releases respirable silica; drill with extraction, blow no dust about, and follow the dust rules that apply',
  source: sources.COMMON_PRACTICE,
};

export const lowFibreDosage = (limit: Quantity<'density'>, actual: Quantity<'density'>): Caution => ({
  code: 'low-fibre-dosage',
  severity: 'warning',
  sentence: `less than ${limit.format()}, the least that is published for these fibres in a slab on ground`,
  limit,
  actual,
  source: sources.ACI_FIBRE,
});

export const fibresNotBars: Caution = {
  code: 'fibres-not-bars',
  severity: 'note',
  sentence: 'fibres do not replace bars that the plans ask for; the engineer decides',
  source: sources.COMMON_PRACTICE,
};

export const steelOnGround: Caution = {
  code: 'steel-on-ground',
  severity: 'stop',
  sentence:
    'steel that lies on the ground does nothing and rusts: set it on chairs or blocks before the pour, and do not count on pulling it up',
  source: sources.COMMON_PRACTICE,
};

export const supportsFarApart = (limit: Length, actual: Length): Caution => ({
  code: 'supports-far-apart',
  severity: 'warning',
  sentence: `supports farther apart than ${limit.format()} let the steel sag to the ground under foot`,
  limit,
  actual,
  source: sources.WIRE_SUPPORTS,
});

export const littleTopCover = (limit: Length, actual: Length): Caution => ({
  code: 'little-top-cover',
  severity: 'warning',
  sentence: `less than ${limit.format()} of concrete above the steel of a slab in the weather lets it rust and crack the surface; the plans and the engineer govern`,
  limit,
  actual,
  source: sources.ACI_318_COVER,
});

export const littleBottomCover = (limit: Length, actual: Length): Caution => ({
  code: 'little-bottom-cover',
  severity: 'warning',
  sentence: `less than ${limit.format()} of concrete below bars that are cast against earth lets them rust; the plans and the engineer govern`,
  limit,
  actual,
  source: sources.ACI_318_COVER,
});

export const meshTooLow = (limit: Length, actual: Length): Caution => ({
  code: 'mesh-too-low',
  severity: 'warning',
  sentence: `mesh lower than ${limit.format()} below the surface does little against cracks`,
  limit,
  actual,
  source: sources.WIRE_SUPPORTS,
});

export const tieOff = (limit: Length, actual: Length): Caution => ({
  code: 'tie-off',
  severity: 'warning',
  sentence: `who ties steel ${limit.format()} or more above a lower level must be protected from falling`,
  limit,
  actual,
  source: sources.OSHA_BARS,
});

export const closeBars = (limit: Length, actual: Length): Caution => ({
  code: 'bars-too-close',
  severity: 'warning',
  sentence: `less than ${limit.format('in')} clear between bars keeps the stone out; the plans and the engineer govern`,
  limit,
  actual,
  source: sources.CLEAR_SPACING,
});

export const lapsBeside = (actual: Quantity<'count'>): Caution => ({
  code: 'laps-in-line',
  severity: 'warning',
  sentence:
    'some laps lie beside a lap of the next line, since the stock is short for its lap; buy longer bars or ask the engineer',
  limit: actual.minus(actual),
  actual,
  source: sources.STAGGER_RULE,
});

export const wideStrip = (limit: Quantity<'ratio'>, actual: Quantity<'ratio'>): Caution => ({
  code: 'wide-strip',
  severity: 'warning',
  sentence: `panels would be wider than ${limit.format()} of their length and tend to crack across: joint along the strip too`,
  limit,
  actual,
  source: sources.MCGRAW_JOINTS,
});

export const deepCut = (limit: Length, actual: Length): Caution => ({
  code: 'cut-too-deep',
  severity: 'stop',
  sentence: 'the joint would go through more than half of the slab; the slab is too thin for a sawn joint',
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const heavyLap: Caution = {
  code: 'heavy-bar-lap',
  severity: 'warning',
  sentence: 'bars of #14 and #18 are usually not lapped but coupled or welded; the engineer decides',
  source: sources.COMMON_PRACTICE,
};

export const rollsSpring: Caution = {
  code: 'rolls-spring-back',
  severity: 'warning',
  sentence:
    'mesh in rolls springs back when it is cut or let go: weight both ends down, stand clear, and mind the cut wires',
  source: sources.COMMON_PRACTICE,
};
