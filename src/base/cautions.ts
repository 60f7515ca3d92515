/**
 * Cautions about earth and base.
 *
 * They inform; the rules that apply, the competent person on the site, the plans and a licensed engineer
 * decide.
 */
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/parts';
import type { Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as sources from './sources';

type Length = Quantity<'length'>;
type Ratio = Quantity<'ratio'>;
type Density = Quantity<'density'>;
type Volume = Quantity<'volume'>;

export const buriedUtilities: Caution = {
  code: 'buried-utilities',
  severity: 'warning',
  says: 'have buried lines located and marked before you dig; in the United States call 811',
  source: sources.COMMON_PRACTICE,
  always: true,
};

export const spoilAtEdge = (): Caution => ({
  code: 'spoil-at-edge',
  severity: 'note',
  ...say`keep spoil, materials and machines at least ${{ back: paired('length', '2 ft', '0.6 m') }} back from the edge of the cut`,
  source: sources.EXCAVATION_RULES,
  always: true,
});

export const trenchExit = (limit: Length, actual: Length): Caution => ({
  code: 'trench-exit',
  severity: 'warning',
  ...say`a trench about ${{ limit }} deep or more needs a ladder or a ramp close to everyone in it, and the air may need testing; check the rules that apply`,
  limit,
  actual,
  source: sources.EXCAVATION_RULES,
});

export const trenchDepth = (limit: Length, actual: Length): Caution => ({
  code: 'trench-depth',
  severity: 'stop',
  ...say`from about ${{ limit }} of depth on nobody may enter unless the sides are sloped, shored or shielded as a competent person says; shallower cuts cave in too`,
  limit,
  actual,
  source: sources.EXCAVATION_RULES,
});

export const slopeByClass = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'slope-by-soil',
  severity: 'warning',
  says: 'sides steeper than 1-1/2:1 stand only in soil that a competent person has classed and found firm enough; clay that is soft, wet, fissured or dug before, and sand, need a flatter slope or shoring',
  limit,
  actual,
  source: sources.EXCAVATION_RULES,
});

export const engineeredExcavation = (limit: Length, actual: Length): Caution => ({
  code: 'engineered-excavation',
  severity: 'stop',
  ...say`an excavation deeper than ${{ limit }} must be protected as a licensed engineer designs, sloped or not`,
  limit,
  actual,
  source: sources.EXCAVATION_RULES,
});

export const waterInCut: Caution = {
  code: 'water-in-cut',
  severity: 'warning',
  says: 'water brings the sides down and turns the bottom to mud: keep everyone out until it is pumped from a sump and a competent person has looked at the sides, dig out what has softened, and place neither base nor concrete in water',
  source: sources.EXCAVATION_RULES,
};

export const depthUnknown = (): Caution => ({
  code: 'depth-unknown',
  severity: 'warning',
  ...say`sections given by area do not say how deep the cut is: give their depth. From about ${{ depth: paired('length', '5 ft', '1.5 m') }} on the sides must be protected before anyone enters`,
  source: sources.EXCAVATION_RULES,
});

export const endAreasDiffer = (stretches: readonly string[], limit: Ratio, actual: Ratio): Caution => ({
  code: 'end-areas-differ',
  severity: 'note',
  ...say`average end areas and the prismoidal formula differ noticeably (${{ stretches }}); the prismoidal volume is used there, so agree on the method before earth is paid for by volume`,
  limit,
  actual,
  source: sources.CLOSED_FORM,
});

export const runsOut = (stretches: readonly string[], limit: Volume, actual: Volume): Caution => ({
  code: 'runs-out-to-nothing',
  severity: 'note',
  ...say`by average end area, ${{ stretches }} come to ${{ actual }}: right for a wedge that keeps its width, but half as much again as a pyramid, ${{ limit }}. Say runOut: wedge or pyramid, or give the area halfway`,
  limit,
  actual,
  source: sources.END_AREA_TEXT,
});

export const fillNeedsShrink: Caution = {
  code: 'fill-needs-shrink',
  severity: 'note',
  says: 'cut is measured in the bank and fill compacted in place, and fill takes more than its own volume of the bank: the two sums must not be set off against each other. Give shrink to see what is left over or lacking',
  source: sources.NAVY_EARTH,
};

export const fillInLifts: Caution = {
  code: 'fill-in-lifts',
  severity: 'note',
  says: 'strip sod and topsoil first, place fill in thin lifts and compact each lift; what is dumped and graded settles under the slab for years',
  source: sources.COMMON_PRACTICE,
  always: true,
};

export const deepFill = (limit: Length, actual: Length): Caution => ({
  code: 'deep-fill',
  severity: 'warning',
  ...say`fill under a slab deeper than ${{ limit }} is beyond what is usually allowed without approval, ${{ earth: paired('length', '8 in', '200 mm') }} of earth and ${{ gravel: paired('length', '24 in', '600 mm') }} of clean sand or gravel; ask the building official or a licensed engineer, and have its compaction tested`,
  limit,
  actual,
  source: sources.FILL_UNDER_SLABS,
});

export const wetBase: Caution = {
  code: 'loose-and-compacted',
  severity: 'note',
  says: 'suppliers sell by weight as delivered: water in the material is paid for, and the same load fills less once compacted',
  source: sources.COMMON_PRACTICE,
  always: true,
};

export const wheelLoads: Caution = {
  code: 'wheel-loads',
  severity: 'warning',
  says: 'keep loaded trucks off base that is freshly placed, wet or thin: they rut it and push the forms out of line; recompact and check grade after any traffic',
  source: sources.COMMON_PRACTICE,
  always: true,
};

export const looseNotLighter = (limit: Density, actual: Density): Caution => ({
  code: 'loose-not-lighter',
  severity: 'warning',
  says: 'loose material must be lighter than compacted; check both densities',
  limit,
  actual,
  source: sources.CLOSED_FORM,
});

export const oddShrinkage = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'loose-and-compacted-apart',
  severity: 'warning',
  ...say`the loose density and the compacted one make a loss of ${{ actual }} in compaction, where an eighth to a third is met with: one of them may be of another material or in another unit. The weight does not depend on it, the loose volume and the loads do`,
  limit,
  actual,
  source: sources.BAKER_ROLLING,
});

export const thickLift = (tool: string, limit: Length, actual: Length, source: Source): Caution => ({
  code: 'thick-lift',
  severity: 'warning',
  ...say`lifts of ${{ actual }} as spread are thicker than the ${{ limit }} that is published for a ${{ tool }}: the lower part stays loose and settles. Spread thinner lifts, or bring a heavier machine`,
  limit,
  actual,
  source,
});

/** Damp comes through where strips part. */
export const shortRetarderLap = (limit: Length, actual: Length): Caution => ({
  code: 'short-lap',
  severity: 'warning',
  ...say`strips that lap ${{ actual }} part when they are walked on, and damp comes up between: lap ${{ limit }} at least, and tape it`,
  limit,
  actual,
  source: sources.IRC_RETARDER,
});

export const retarderCare: Caution = {
  code: 'retarder-care',
  severity: 'note',
  says: 'lay the strips lapped like shingles in the way of the pour, tape laps and around every pipe, and patch tears before the truck comes. On a sheet all bleed water comes up: it takes longer before the finish, and the slab curls more, so cure it well. Patios, walks, drives and unheated garages need none',
  source: sources.COMMON_PRACTICE,
  always: true,
};
