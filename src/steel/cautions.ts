/**
 * Cautions of bars, laps, least steel, placement, dowels and ties, one each.
 *
 * A caution informs; the plans, the local code and a licensed engineer decide.
 */
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import * as sources from '../reckoning/source';
import { COMMON_PRACTICE, OSHA_BARS, type Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import { CENTER_TO_THIRD } from './mat-sources';
import { ACI_318_COVER, FROST_APRON, TIE_AND_DOWEL, TIE_OR_FLOAT, TIE_STEEL, WIRE_SUPPORTS } from './sources';

type Length = Quantity<'length'>;

export const heavyLift = (limit: Quantity<'mass'>, actual: Quantity<'mass'>): Caution => ({
  code: 'heavy-lift',
  severity: 'warning',
  ...say`the bundle weighs ${{ actual }}, more than the ${{ limit }} that one person should lift: carry fewer bars at a time or share the load, and lift whole bundles with rigging rated for them, with nobody beneath`,
  limit,
  actual,
  source: sources.LIFTING_GUIDE,
});

export const lapsGoverned: Caution = {
  code: 'laps-governed-by-plans',
  severity: 'note',
  says: 'the laps on the plans and the word of the engineer govern; this is what a rule comes to',
  source: COMMON_PRACTICE,
  always: true,
};

export const fewDiameters = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'short-lap',
  severity: 'warning',
  ...say`${{ actual }} diameters is less than the ${{ limit }} that laps have at least by the rule; take the lap from the plans or ask the engineer`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const steelGoverned: Caution = {
  code: 'steel-governed-by-plans',
  severity: 'note',
  says: 'steel does not keep a slab from cracking but holds the cracks tight; the plans, the local code and the engineer govern',
  source: COMMON_PRACTICE,
  always: true,
};

export const steelOnGround: Caution = {
  code: 'steel-on-ground',
  severity: 'stop',
  says: 'steel that lies on the ground does nothing and rusts: set it on chairs or blocks before the pour, and do not count on pulling it up',
  source: COMMON_PRACTICE,
};

export const supportsFarApart = (limit: Length, actual: Length): Caution => ({
  code: 'supports-far-apart',
  severity: 'warning',
  ...say`supports farther apart than ${{ limit }} let this steel sag to the ground under foot; set more of them`,
  limit,
  actual,
  source: WIRE_SUPPORTS,
});

export const littleTopCover = (limit: Length, actual: Length, inside: boolean): Caution => ({
  code: 'little-top-cover',
  severity: 'warning',
  ...say`less than ${{ limit }} of concrete above steel ${inside ? say`inside a building` : say`in the weather`} lets it rust and crack the surface; set it lower or thicken the slab, as the plans and the engineer say`,
  limit,
  actual,
  source: ACI_318_COVER,
});

export const littleBottomCover = (limit: Length, actual: Length): Caution => ({
  code: 'little-bottom-cover',
  severity: 'warning',
  ...say`less than ${{ limit }} of concrete below steel that is cast against the ground lets it rust; use higher chairs, as the plans and the engineer say`,
  limit,
  actual,
  source: ACI_318_COVER,
});

/** Where the slab has no room for the cover against earth and the cover above together. */
export const belowMiddle = (limit: Length, actual: Length): Caution => ({
  code: 'bars-too-low',
  severity: 'warning',
  ...say`bars in a slab too thin for ${{ earth: paired('length', '3 in', '75 mm') }} of concrete below them belong from the middle to the upper third: raise them until their middle is no deeper than ${{ limit }}`,
  limit,
  actual,
  source: CENTER_TO_THIRD,
});

export const meshTooLow = (limit: Length, actual: Length): Caution => ({
  code: 'mesh-too-low',
  severity: 'warning',
  ...say`mesh deeper than ${{ limit }} below the surface does little against cracks: use higher chairs`,
  limit,
  actual,
  source: WIRE_SUPPORTS,
});

export const tieOff = (limit: Length, actual: Length): Caution => ({
  code: 'tie-off',
  severity: 'warning',
  ...say`anyone tying steel ${{ limit }} or more above a lower level must be protected from falling`,
  limit,
  actual,
  source: OSHA_BARS,
});

export const dowelOutOfTable = (limit: Length, actual: Length, source: Source): Caution => ({
  code: 'dowel-out-of-table',
  severity: 'warning',
  ...say`the slab is outside the table, which ends at ${{ limit }}; the nearest row is used, so ask the engineer`,
  limit,
  actual,
  source,
});

export const dowelsAligned: Caution = {
  code: 'dowels-aligned',
  severity: 'warning',
  says: 'dowels must lie level, square to the joint and free to slide on one side, or they lock the joint and the slab cracks',
  source: COMMON_PRACTICE,
  always: true,
};

export const tiesBonded: Caution = {
  code: 'ties-bonded',
  severity: 'note',
  says: 'ties are deformed bars, clean and bonded on both sides at the middle of the slab: they keep the joint shut and carry no movement',
  source: TIE_AND_DOWEL,
  always: true,
};

export const tiedAndIsolated: Caution = {
  code: 'tied-and-isolated',
  severity: 'stop',
  says: 'ties hold together what an isolation joint keeps apart: leave out the ties and let the slab float, or leave out the filler and tie it',
  source: TIE_OR_FLOAT,
};

export const tiedToWall: Caution = {
  code: 'tied-to-wall',
  severity: 'stop',
  says: 'a slab that is tied to a wall cannot shrink or settle and cracks: put isolation material against the wall and let the slab float, unless the engineer has drawn the ties',
  source: TIE_OR_FLOAT,
};

export const tiedGroundMoves: Caution = {
  code: 'tied-ground-moves',
  severity: 'warning',
  says: 'what is tied moves together: frost or loose backfill under the new slab lifts or breaks the edge that it is tied to. Tie only where it bears on the footing or on ground that is drained and compacted; else isolate it',
  source: FROST_APRON,
};

export const tiesTooFew = (limit: Length, actual: Length): Caution => ({
  code: 'ties-too-far-apart',
  severity: 'warning',
  ...say`to drag this slab over its base ties of this size may be at most ${{ limit }} apart: space them closer or take larger ones`,
  limit,
  actual,
  source: TIE_STEEL,
});

export const impalement: Caution = {
  code: 'impalement',
  severity: 'warning',
  says: 'bars that stand up must be capped or bent over so that nobody falls on them',
  source: sources.OSHA_BARS,
};

export const notProved = (limit: Quantity, actual: Quantity): Caution => ({
  code: 'not-proved-best',
  severity: 'note',
  ...say`the plan is not proved the best: none for these pieces can come to less than ${{ limit }}`,
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

export const lowFiberDosage = (limit: Quantity<'density'>, actual: Quantity<'density'>): Caution => ({
  code: 'low-fiber-dosage',
  severity: 'warning',
  ...say`less than ${{ limit }}, the least that is published for these fibers in a slab on ground`,
  limit,
  actual,
  source: sources.ACI_FIBER,
});

export const fibersNotBars: Caution = {
  code: 'fibers-not-bars',
  severity: 'note',
  says: 'fibers replace neither joints nor bars that the plans ask for: joint at the same spacing and cut in time; the engineer decides on anything else',
  always: true,
  source: sources.COMMON_PRACTICE,
};
