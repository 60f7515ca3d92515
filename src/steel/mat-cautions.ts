/**
 * Cautions of mats of bars and of mesh, one function each.
 *
 * A caution informs; the plans, the local code and a licensed engineer decide.
 */
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { CENTER_TO_THIRD } from './mat-sources';
import { ACI_318_COVER, CLEAR_SPACING, PEARSON_MESH, STAGGER_RULE, VCC_LAP } from './sources';

type Length = Quantity<'length'>;

/** A face that is formed or finished. */
export const edgeCover = (limit: Length, actual: Length): Caution => ({
  code: 'little-cover',
  severity: 'warning',
  ...say`less than ${{ limit }} of cover at an edge lets these bars rust and split the concrete; the plans and the engineer govern`,
  limit,
  actual,
  source: ACI_318_COVER,
});

/** Enough against a form, not against earth. */
export const earthEdge = (limit: Length, actual: Length): Caution => ({
  code: 'little-cover',
  severity: 'note',
  ...say`${{ actual }} of cover is enough at an edge that is formed; one that is cast against the ground needs ${{ limit }}`,
  limit,
  actual,
  source: ACI_318_COVER,
});

/** A footing in its trench. */
export const earthCover = (limit: Length, actual: Length): Caution => ({
  code: 'little-cover',
  severity: 'warning',
  ...say`less than ${{ limit }} of cover in concrete that is cast against the ground lets the bars rust; the plans and the engineer govern`,
  limit,
  actual,
  source: ACI_318_COVER,
});

export const topCover = (limit: Length, actual: Length, inside: boolean): Caution => ({
  code: 'little-top-cover',
  severity: 'warning',
  ...say`less than ${{ limit }} of concrete above these bars ${inside ? say`inside a building` : say`in the weather`} lets them rust and crack the surface; set them lower or thicken the slab, as the plans and the engineer say`,
  limit,
  actual,
  source: ACI_318_COVER,
});

export const bottomCover = (limit: Length, actual: Length): Caution => ({
  code: 'little-bottom-cover',
  severity: 'warning',
  ...say`less than ${{ limit }} of concrete below bars that are cast against the ground lets them rust; use higher chairs, as the plans and the engineer say`,
  limit,
  actual,
  source: ACI_318_COVER,
});

/** Where no height would do. */
export const noRoom = (limit: Length, actual: Length): Caution => ({
  code: 'little-cover',
  severity: 'warning',
  ...say`the slab has no room for these bars: with the usual cover above and below it is ${{ limit }} thick at least; take thinner bars or a thicker slab, as the plans and the engineer say`,
  limit,
  actual,
  source: ACI_318_COVER,
});

/** Where the slab is too thin for the cover against earth and the cover above together. */
export const belowMiddle = (limit: Length, actual: Length): Caution => ({
  code: 'little-bottom-cover',
  severity: 'warning',
  ...say`the slab is too thin for the usual cover below the bars; hold their middle at half the depth, ${{ limit }} up, or a little higher, not at ${{ actual }}`,
  limit,
  actual,
  source: CENTER_TO_THIRD,
});

export const wideSpacing = (limit: Length, actual: Length): Caution => ({
  code: 'wide-spacing',
  severity: 'note',
  ...say`bars farther apart than ${{ limit }} do little against cracks; the plans and the engineer govern`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const closeBars = (limit: Length, actual: Length): Caution => ({
  code: 'bars-too-close',
  severity: 'warning',
  ...say`less than ${{ limit }} clear between bars keeps the stone out; space them wider or ask the engineer for fewer and larger bars`,
  limit,
  actual,
  source: CLEAR_SPACING,
});

export const shortLap = (limit: Length, actual: Length): Caution => ({
  code: 'short-lap',
  severity: 'warning',
  ...say`the lap is shorter than ${{ limit }}, which 40 bar diameters, at least ${{ least: paired('length', '12 in', '300 mm') }}, come to; the plans and the engineer govern`,
  limit,
  actual,
  source: VCC_LAP,
});

export const lapsBeside = (actual: Quantity<'count'>): Caution => ({
  code: 'laps-in-line',
  severity: 'warning',
  says: 'some laps lie beside a lap of the next line, since the stock is short for its lap; buy longer bars or ask the engineer',
  limit: actual.minus(actual),
  actual,
  source: STAGGER_RULE,
});

export const barSupportsFarApart = (limit: Length, actual: Length): Caution => ({
  code: 'supports-far-apart',
  severity: 'warning',
  ...say`supports farther apart than ${{ limit }} let bars of this size sag to the ground under foot; set more chairs`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** The lap of mesh is that of its wires: one square, so that wires across lie behind each other. */
export const shortMeshLap = (limit: Length, actual: Length): Caution => ({
  code: 'short-lap',
  severity: 'warning',
  ...say`mesh that laps ${{ actual }} is not joined: the last wire of one piece has to lie beyond the first of the next, which takes a square, ${{ limit }}, at least; the plans and the engineer govern`,
  limit,
  actual,
  source: PEARSON_MESH,
});

/** Mesh is worth only as much as what holds it up. */
export const meshOnGround: Caution = {
  code: 'mesh-height',
  severity: 'note',
  says: 'mesh works only where it ends up in the slab: set it on chairs, not on the ground to be pulled up later',
  source: COMMON_PRACTICE,
  always: true,
};

export const rollsSpring: Caution = {
  code: 'rolls-spring-back',
  severity: 'warning',
  says: 'mesh in rolls springs back when it is cut or let go: weight both ends down, stand clear, and mind the cut wires',
  source: COMMON_PRACTICE,
  always: true,
};
