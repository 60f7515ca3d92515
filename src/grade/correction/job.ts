/** The input of a correction made into a job: the site, what is held, the rooms and the needs known beforehand. */

import { Decimal } from '../../quantity/decimal';
import * as sharedFaults from '../../quantity/faults';
import { constant, length } from '../../quantity/make';
import { type Paired, paired } from '../../quantity/paired';
import { canonicalValue, type Quantity } from '../../quantity/quantity';
import { refuse } from '../../reckoning/calculation';
import { type Limit, withinLimit } from '../../reckoning/limits';
import type { Pad } from '../../reckoning/pad';
import { COMMON_PRACTICE, IRC_SLAB_THICKNESS } from '../../reckoning/source';
import { distinct, type Saying, say, type Words } from '../../reckoning/words';
import * as faults from '../faults';
import { assumedLength } from '../held';
import { limitOf } from '../limits';
import { distanceTo, type ParsedLine, staysDry } from '../lines';
import { rate } from '../shapes';
import { IRC_DRAINAGE, MCGRAW_PATIO } from '../sources';
import { type ParsedSpots, SPOT_KEYS, type Survey, surveyOf } from '../spots';
import { ZONE } from '../surface-input';
import { type Site, siteOf } from '../terrain';
import { standIns } from './corrected';
import { downNeed, type Need, zoneNeeds } from './needs';
import { atSpot, type How, type Job, lackOf, type Moves, type Room, sharesOf } from './program';
import { STRIKE_OFF } from './sources';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

/** The input, read. */
export interface ParsedCorrection extends ParsedSpots {
  readonly lines: readonly ParsedLine[] | undefined;
  readonly falls:
    | readonly { readonly from: string; readonly to: string; readonly minimum: Slope }[]
    | undefined;
  readonly minimum: Slope | undefined;
  readonly zone: Length | undefined;
  readonly how: How | undefined;
  readonly movable: readonly string[] | undefined;
  readonly farthest: Length | undefined;
  readonly sills:
    | readonly { readonly name: string; readonly at: string; readonly elevation: Length }[]
    | undefined;
  readonly sillClearance: Length | undefined;
  readonly thicknesses: readonly { readonly spot: string; readonly thickness: Length }[] | undefined;
  readonly minimumThickness: Length | undefined;
}

/** The job, and what it was read from. */
export interface CorrectionJob extends Job {
  readonly survey: Survey;
  /** What the surface is held to. */
  readonly asked: { readonly lines: readonly ParsedLine[]; readonly minimum: Slope; readonly zone: Length };
  readonly needs: readonly Need[];
  /** The building line that a spot lies at. */
  readonly atWall: ReadonlyMap<number, string>;
  readonly thickness: ReadonlyMap<number, Length>;
  readonly leastThickness: Length | undefined;
  readonly find: (name: string, path: string) => number;
}

/** The most spots that are corrected at once. */
export const SPOTS = 50;
export const CORRECTED: Limit = { of: 'spots corrected at once', most: SPOTS };
export const SILL_CLEARANCE: Paired<'length'> = /*#__PURE__*/ paired('length', '1 in', '25 mm');
const THINNEST = /*#__PURE__*/ paired('length', '3.5 in', '89 mm');
/** How near a spot must be to a line to lie on it. */
export const NEAR = constant(() => length('1/2 in'));

/** Take what is given, or assume what is usual and say so. */
function settle<T extends Slope | string>(
  pad: Pad,
  name: string,
  given: T | undefined,
  usual: T,
  because: Saying,
  source = COMMON_PRACTICE,
): T {
  if (given !== undefined) return given;
  pad.assume({ name, value: usual, because, override: say`Give ${{ name }}`, source });
  return usual;
}

function finder(site: Site): (name: string, path: string) => number {
  const standIn = standIns(site);
  return (name, path) => {
    const spot = site.survey.find(name);
    if (spot !== undefined) return standIn[spot] ?? spot;
    const known = Array.from({ length: Math.min(site.survey.count, SPOTS) }, (_, i) => site.survey.name(i));
    return refuse(path, faults.unknownName(name, known));
  };
}

/** The building line that each spot lies at, thresholds before walls. */
function wallsAt(site: Site): Map<number, string> {
  const near = NEAR().toNumber('m');
  const at = new Map<number, string>();
  const thresholdsFirst = [...site.walls].sort(
    (a, b) =>
      Number(site.lines[b.line]?.kind === 'threshold') - Number(site.lines[a.line]?.kind === 'threshold'),
  );
  for (let v = 0; v < site.survey.count; v += 1) {
    const [x, y] = [site.survey.x[v] as number, site.survey.y[v] as number];
    const wall = thresholdsFirst.find((piece) => distanceTo(piece, x, y) <= near);
    const name = wall && site.lines[wall.line]?.name;
    if (name !== undefined) at.set(v, name);
  }
  return at;
}

/** Why each spot stays that is not to be moved. */
function heldSpots(site: Site, atWall: ReadonlyMap<number, string>, chosen: readonly number[] | undefined) {
  const held = new Map<number, Words>();
  const may = new Set(chosen);
  for (let v = 0; v < site.survey.count; v += 1) {
    if (may.has(v)) continue;
    const drain = site.lines[(site.sides.drain[v] as number) - 1]?.name;
    const wall = atWall.get(v);
    if (wall !== undefined) held.set(v, say`fixed at ${{ name: wall }}`);
    else if (drain !== undefined) held.set(v, say`fixed at the drain ${{ name: drain }}`);
    else if (chosen) held.set(v, say`not to be moved`);
  }
  return held;
}

function sillNeeds(input: ParsedCorrection, find: CorrectionJob['find'], clearance: Length): Need[] {
  return (input.sills ?? []).map(({ name, at, elevation }, i) => ({
    name: say`${{ clearance }} below the sill ${{ name }}`,
    key: `sill ${i}`,
    spots: [find(at, `sills[${i}].at`)],
    weights: [new Decimal(-1)],
    least: canonicalValue(clearance).minus(canonicalValue(elevation)),
  }));
}

function fallNeeds(site: Site, input: ParsedCorrection, find: CorrectionJob['find']): Need[] {
  return (input.falls ?? []).map(({ from, to, minimum: least }, i) => {
    const [a, b] = [find(from, `falls[${i}].from`), find(to, `falls[${i}].to`)];
    if (a === b) refuse(`falls[${i}].to`, sharedFaults.repeatedPoint(1));
    return downNeed(site, a, b, rate(least), say`${{ first: from }} to ${{ second: to }} at ${{ least }}`);
  });
}

interface Rooms {
  readonly up: ReadonlyMap<number, readonly Room[]>;
  readonly down: ReadonlyMap<number, readonly Room[]>;
}

function rooms(
  { survey }: Site,
  farthest: Length | undefined,
  thickness: ReadonlyMap<number, Length>,
  least: Length | undefined,
): Rooms {
  const far: Room[] = farthest ? [{ name: say`the farthest move`, room: canonicalValue(farthest) }] : [];
  const spots = Array.from({ length: survey.count }, (_, v) => v);
  const thin = (v: number): Room[] => {
    const t = thickness.get(v);
    if (!t || !least) return [];
    const left = Decimal.max(canonicalValue(t).minus(canonicalValue(least)), 0);
    return [{ name: say`the least thickness`, room: left }];
  };
  return {
    up: new Map(spots.map((v) => [v, far])),
    down: new Map(spots.map((v) => [v, [...far, ...thin(v)]])),
  };
}

function thicknessesOf(input: ParsedCorrection, find: CorrectionJob['find']): Map<number, Length> {
  return new Map(
    (input.thicknesses ?? []).map(({ spot, thickness }, i) => [
      find(spot, `thicknesses[${i}].spot`),
      thickness,
    ]),
  );
}

function settled(input: ParsedCorrection, pad: Pad) {
  const walled = input.lines?.some(({ kind }) => staysDry(kind)) ?? false;
  const paved = limitOf(walled ? 'paved-by-building' : 'slab-outdoors', pad.system);
  return {
    minimum: settle(pad, 'minimum', input.minimum, paved.least as Slope, paved.because, paved.source),
    zone: assumedLength(
      pad,
      'zone',
      input.zone,
      ZONE,
      say`the code asks for the fall within ${{ zone: ZONE }}`,
      IRC_DRAINAGE,
    ),
    how: settle<How>(
      pad,
      'how',
      input.how,
      'either',
      'high spots are struck off and low ones filled, whichever moves less concrete',
      STRIKE_OFF,
    ),
    clearance: input.sills
      ? assumedLength(
          pad,
          'sillClearance',
          input.sillClearance,
          SILL_CLEARANCE,
          say`the surface stays at least ${{ clearance: SILL_CLEARANCE }} below sills`,
          MCGRAW_PATIO,
        )
      : SILL_CLEARANCE.as(pad.system),
    leastThickness: input.thicknesses
      ? assumedLength(
          pad,
          'minimumThickness',
          input.minimumThickness,
          THINNEST,
          'the least that a slab on ground usually must have; the plans may ask for more',
          IRC_SLAB_THICKNESS,
        )
      : input.minimumThickness,
  };
}

/** Make the job. @throws {InputError} `give-one-of`, `unknown-name`, `repeated-point`, and as the surface does */
export function jobOf(input: ParsedCorrection, pad: Pad): CorrectionJob {
  const { minimum, zone, how, clearance, leastThickness } = settled(input, pad);
  const survey = surveyOf(input, pad.system);
  withinLimit(CORRECTED, survey.count, SPOT_KEYS.find((name) => input[name]) ?? '');
  const near = NEAR().toNumber('m');
  const site = siteOf(survey, { lines: input.lines ?? [], outline: undefined, near });
  const find = finder(site);
  if (!input.lines?.length && !input.falls) {
    refuse('', sharedFaults.giveOneOf(['lines of a building', 'falls']));
  }
  const needs = [
    ...zoneNeeds(site, rate(minimum), zone.toNumber('m')),
    ...fallNeeds(site, input, find),
    ...sillNeeds(input, find, clearance),
  ];
  const chosen = input.movable?.map((name, i) => find(name, `movable[${i}]`));
  const atWall = wallsAt(site);
  const held = heldSpots(site, atWall, chosen);
  const onSurface = [...new Set(site.terrain.tin.corner)].filter((v) => v < survey.count);
  const thickness = thicknessesOf(input, find);
  return {
    site,
    survey,
    asked: { lines: input.lines ?? [], minimum, zone },
    how,
    needs,
    held,
    atWall,
    thickness,
    leastThickness,
    find,
    shares: sharesOf(site),
    movable: onSurface.filter((v) => !held.has(v)).sort((a, b) => a - b),
    ...rooms(site, input.farthest, thickness, leastThickness),
  };
}

const STRAY = /*#__PURE__*/ new Decimal('1e-20');

/** The needs and rooms that the moves just meet, among those that moved spots take part in. */
export function bindingNames(job: Job, needs: readonly Need[], moves: Moves): Words[] {
  const tight = needs.filter((need) => {
    if (!need.spots.some((v) => moves.has(v))) return false;
    const given = need.spots.reduce(
      (sum, v, k) => sum.plus((need.weights[k] as Decimal).times(moves.get(v) ?? 0)),
      lackOf(job, need).neg(),
    );
    return given.abs().lessThan(STRAY);
  });
  const full = [...moves].flatMap(([v, move]) =>
    ((move.isNegative() ? job.down : job.up).get(v) ?? [])
      .filter(({ room }) => room.minus(move.abs()).abs().lessThan(STRAY))
      .map(({ name }) => atSpot(name, job.site.survey.name(v))),
  );
  return distinct([...tight.map(({ name }) => name), ...full]);
}
