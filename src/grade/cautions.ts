/** Cautions about where water runs, about slopes for feet and wheels, and about flatness. */
import { paired } from '../quantity/paired';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import * as sources from '../reckoning/source';
import { CLOSED_FORM, COMMON_PRACTICE, type Source } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';
import { ADA_RAMPS, ADA_WALKS, IRC_DRAINAGE, RAMP_HANDRAILS, RAMP_RUNS } from './sources';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

export const runsToBuilding = (limit: Slope, actual: Slope, source: Source = IRC_DRAINAGE): Caution => ({
  code: 'runs-to-building',
  severity: 'stop',
  says: 'the surface falls toward the building: water will run to the wall or the door. Correct the grade before any concrete is placed',
  limit,
  actual,
  source,
});

export const tooFlat = (limit: Slope, actual: Slope, source: Source): Caution => ({
  code: 'too-flat',
  severity: 'warning',
  ...say`the surface falls less than the required ${{ limit }}: water will stand. Correct the grade before any concrete is placed`,
  limit,
  actual,
  source,
});

export const flatValley = (where: string, limit: Slope, actual: Slope, source: Source): Caution => ({
  code: 'valley-too-flat',
  severity: 'warning',
  ...say`the valley ${{ where }} falls ${{ actual }} along its length, less than ${{ limit }}: the water shed into it will stand there. Give it a fall to an open edge or a drain before any concrete is placed`,
  limit,
  actual,
  source,
});

export const nearlyLevelValley = (where: string, limit: Slope, actual: Slope, source: Source): Caution => ({
  code: 'valley-nearly-level',
  severity: 'note',
  ...say`the valley ${{ where }} falls ${{ actual }} along its length; ${{ limit }} and more is what gutters are better given, since hand finishing leaves low spots in a flatter one`,
  limit,
  actual,
  source,
});

/** What becomes of water that falls back toward a building. */
export type BackEnd = 'caught' | 'stands' | 'leaves';

const ENDS: Record<BackEnd, Words> = {
  caught: say`a valley or drain that takes it away catches it before it gets there; keep that open and clear`,
  stands: say`only a valley too flat to drain, or a low spot, lies between, and runs over toward the building in a heavy rain. Give it a fall to an open edge or a drain, or turn the slope away`,
  leaves: say`it runs off over an open edge on the way; see that it is led on from there`,
};

export const fallsBack = (area: Quantity<'area'>, line: string, end: BackEnd): Caution => ({
  code: 'falls-back',
  severity: end === 'stands' ? 'warning' : 'note',
  ...say`${{ area }} of the surface falls back toward ${{ line }}: ${ENDS[end]}`,
  limit: area.minus(area),
  actual: area,
  source: IRC_DRAINAGE,
});

export const waterReaches = (line: string, from: string): Caution => ({
  code: 'water-reaches-building',
  severity: 'stop',
  ...say`water from ${{ from }} runs to ${{ line }}. Correct the grade, or catch the water before it gets there, before any concrete is placed`,
  source: IRC_DRAINAGE,
});

export const ponding = (limit: Length, actual: Length, source: Source = COMMON_PRACTICE): Caution => ({
  code: 'water-stands',
  severity: 'warning',
  ...say`water stands deeper than ${{ limit }}: it stains, freezes and softens the base. Raise the low spot or cut it an outlet`,
  limit,
  actual,
  source,
});

export const noBuildingLine: Caution = {
  code: 'no-building-line',
  severity: 'note',
  says: 'no line of a building is given, so only the fall itself is checked, not whether it leads away from a wall',
  source: CLOSED_FORM,
};

export const lineOffSurface = (line: string): Caution => ({
  code: 'line-off-surface',
  severity: 'warning',
  ...say`no side of the surface lies along ${{ line }}, so water that reaches it is not seen; take spots along that line`,
  source: CLOSED_FORM,
});

export const noOutlet: Caution = {
  code: 'no-outlet',
  severity: 'stop',
  says: 'walls or curbs hold the water in on every side; it leaves only over the lowest of them',
  source: CLOSED_FORM,
};

/** Where people with wheels must get along, steeper than allowed is no matter of taste. */
export const tooSteep = (limit: Slope, actual: Slope, source: Source, accessible: boolean): Caution => ({
  code: 'too-steep',
  severity: accessible ? 'stop' : 'warning',
  ...say`steeper than ${{ limit }}, the most that is allowed here; the plans and the local code govern`,
  limit,
  actual,
  source,
});

export const steeperThanRamp = (limit: Slope, actual: Slope, walked: boolean): Caution => ({
  code: 'steeper-than-ramp',
  severity: walked ? 'stop' : 'warning',
  ...say`steeper than ${{ limit }}, the most a new accessible ramp may have; people slip on it when it is icy. Check the local code`,
  limit,
  actual,
  source: ADA_RAMPS,
});

/** A limit as a job of the other unit system reads it. */
const inFamily = (limit: Length, actual: Length): Length =>
  systemOfQuantity(actual) === 'metric' ? limit.in('mm') : limit;

export const longRamp = (limit: Length, actual: Length, severity: 'note' | 'stop'): Caution => ({
  code: 'ramp-needs-landing',
  severity,
  ...say`it rises more than ${{ limit: inFamily(limit, actual) }} in one run: where people walk or wheel on it, a ramp so high needs a level landing on the way and one at each end, each at least ${{ landing: paired('length', '60 in', '1525 mm') }} long. Check the local code`,
  limit: inFamily(limit, actual),
  actual,
  source: RAMP_RUNS,
});

export const rampHandrails = (limit: Length, actual: Length): Caution => ({
  code: 'ramp-handrails',
  severity: 'warning',
  ...say`a ramp that rises more than ${{ limit: inFamily(limit, actual) }} needs handrails on both sides; plan their anchors before the pour and check the local code`,
  limit: inFamily(limit, actual),
  actual,
  source: RAMP_HANDRAILS,
});

export const notFlat = (limit: Length, actual: Length, source: Source): Caution => ({
  code: 'gap-too-wide',
  severity: 'warning',
  ...say`the gap under the straightedge is wider than ${{ limit }}; correct the surface while it is wet, and follow the plans`,
  limit,
  actual,
  source,
});

/** Two readings that a gap is told between are not there where the edge lies on one bump. */
export const rocks = (limit: Length, actual: Length, source: Source): Caution => ({
  code: 'gap-too-wide',
  severity: 'warning',
  ...say`the straightedge rocks on a bump ${{ actual }} above its ends, more than ${{ limit }}: cut it down while it is wet; where a ridge is meant, lay the edge on one side of it`,
  limit,
  actual,
  source,
});

export const steepAcross = (limit: Slope, actual: Slope): Caution => ({
  code: 'cross-slope-too-steep',
  severity: 'warning',
  ...say`the cross slope is steeper than ${{ limit }}, the most for an accessible route; check the local code`,
  limit,
  actual,
  source: ADA_WALKS,
});

export const steepAlong = (limit: Slope, actual: Slope): Caution => ({
  code: 'walk-is-a-ramp',
  severity: 'note',
  ...say`steeper along than ${{ limit }}: an accessible route so steep is a ramp, with a ramp's rules; check the local code`,
  limit,
  actual,
  source: ADA_WALKS,
});

export const lowThreshold = (limit: Length, actual: Length): Caution => ({
  code: 'little-sill-clearance',
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

export const outOfSquare = (limit: Length, actual: Length): Caution => ({
  code: 'out-of-square',
  severity: 'warning',
  says: 'the diagonals differ by more than the tolerance: slide a side until they are equal, then brace the forms',
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const sidesAndDiagonals = (limit: Length, actual: Length): Caution => ({
  code: 'sides-and-diagonals',
  severity: 'warning',
  says: 'sides and diagonals do not belong to one figure with opposite sides equal: measure all four sides and both diagonals again',
  limit,
  actual,
  source: CLOSED_FORM,
});
