/** Level notes by rod: heights of the instrument from backsights, elevations from foresights, and how well they close. */

import * as sharedFaults from '../quantity/faults';
import { paired } from '../quantity/paired';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import * as faults from './faults';
import type { LeveledPoint, LevelNotesFigures } from './level-notes-figures';
import type { RodNotes } from './level-notes-input';
import { small } from './marks';

type Length = Quantity<'length'>;

const ALLOWED = /*#__PURE__*/ paired('length', '1/8 in', '3 mm');

/** Elevations are spoken of in feet or meters, whatever the readings were in. */
export const asElevation = (l: Length): Length => l.in(systemOfQuantity(l) === 'metric' ? 'm' : 'ft');

export const total = (values: readonly Length[], like: Length): Length =>
  asElevation(values.reduce((sum, v) => sum.plus(v), like.minus(like)));

export function byName(points: readonly LeveledPoint[]): { [point: string]: Length } {
  return Object.fromEntries(points.map(({ point, elevation }) => [point, elevation]));
}

export function hanging(rows: readonly { readonly point: string }[]): never {
  return refuse('benchMark', faults.noDatum(rows.map(({ point }) => point)));
}

/** Where the reduction of a level book stands. */
interface Standing {
  instrument: Length | undefined;
  elevation: Length | undefined;
  readonly points: LeveledPoint[];
  readonly backsights: Length[];
  readonly foresights: Length[];
}

function foresightRow(at: Standing, point: string, F: Length, pad: Pad): void {
  const H = at.instrument;
  if (!H) hanging([{ point }]);
  at.elevation = pad.step(say`elevation of ${{ point }}`, 'E = H − F', { H, F }, asElevation(H.minus(F)));
  at.points.push({ point, elevation: at.elevation, readFrom: H });
}

function rowOfRod(at: Standing, row: RodNotes['rows'][number], last: boolean, i: number, pad: Pad): void {
  const { point, backsight: B, foresight: F } = row;
  if (!B && !F)
    refuse(
      `rows[${i}]`,
      sharedFaults.missing('a reading', ['{ foresight: "4.5 ft" }', '{ foresight: "1.37 m" }']),
    );
  if (F) foresightRow(at, point, F, pad);
  if (F && (B || last)) at.foresights.push(F);
  if (!B) return;
  const E = at.elevation;
  if (!E) hanging([{ point }]);
  at.instrument = pad.step(
    say`height of instrument at ${{ point }}`,
    'H = E + B',
    { E, B },
    asElevation(E.plus(B)),
  );
  at.backsights.push(B);
}

/** What the circuit closes on: as given, or the bench mark itself where the last reading stands on it again. */
function closedOn({ benchMark, rows, closesOn }: RodNotes, pad: Pad): Length | undefined {
  if (closesOn || !benchMark) return closesOn;
  const last = rows.at(-1);
  if (!last?.foresight || last.point !== benchMark.name) return undefined;
  pad.assume({
    name: 'closesOn',
    value: { reckoned: benchMark.elevation },
    because: 'the last reading is on the bench mark again',
    override: 'Give closesOn',
    source: CLOSED_FORM,
  });
  return benchMark.elevation;
}

export function byRod(notes: RodNotes, pad: Pad): LevelNotesFigures {
  const { benchMark, heightOfInstrument, rows } = notes;
  if (!benchMark && !heightOfInstrument) hanging(rows);
  if (benchMark && heightOfInstrument)
    refuse('', sharedFaults.giveOneOf(['benchMark', 'heightOfInstrument']));
  const start = asElevation((benchMark?.elevation ?? heightOfInstrument) as Length);
  const at: Standing = {
    instrument: heightOfInstrument && start,
    elevation: benchMark && start,
    points: benchMark ? [{ point: benchMark.name, elevation: start }] : [],
    backsights: [],
    foresights: [],
  };
  rows.forEach((row, i) => {
    rowOfRod(at, row, i === rows.length - 1, i, pad);
  });
  const [b, f] = [total(at.backsights, start), total(at.foresights, start)];
  const checkSum = pad.step('check sum', 'c = b − f', { b, f }, asElevation(b.minus(f)));
  const end = at.points.at(-1)?.elevation ?? start;
  const closesOn = closedOn(notes, pad);
  const closing =
    closesOn && pad.step('misclosure', 'm = z − k', { z: end, k: closesOn }, small(end.minus(closesOn)));
  return {
    points: at.points,
    // A bench mark keeps the elevation that it is known by, however a circuit comes back to it.
    elevations: { ...byName(at.points), ...(benchMark ? { [benchMark.name]: start } : {}) },
    checkSum,
    checkAgainst: asElevation(end.minus(start)),
    sumOfBacksights: b,
    sumOfForesights: f,
    ...(closing ? { misclosure: closing } : {}),
    verdict: closes(notes, closing, pad) ? 'sums agree' : 'does not close',
  };
}

function closes({ allowed }: RodNotes, found: Length | undefined, pad: Pad): boolean {
  if (!found) return true;
  if (!allowed) {
    pad.assume({
      name: 'allowed',
      value: ALLOWED,
      because: 'flatwork is set so closely',
      override: 'Give allowed',
      source: COMMON_PRACTICE,
    });
  }
  const limit = allowed ?? ALLOWED.as(pad.system);
  if (!found.abs().greaterThan(limit)) return true;
  pad.caution(cautions.misclosure(limit, found));
  return false;
}

/** Check of readings that all hang on one elevation: their sum against the sum of elevations. */
export function summed(
  points: readonly LeveledPoint[],
  hung: Length,
  readings: Length,
  pad: Pad,
): LevelNotesFigures {
  const n = wholeNumber(points.length);
  const against = total(
    points.map(({ elevation }) => elevation),
    hung,
  );
  const checkSum = pad.step(
    'check sum',
    'c = n × h + r',
    { n, h: hung, r: readings },
    hung.times(n).plus(readings),
  );
  return { points, elevations: byName(points), checkSum, checkAgainst: against, verdict: 'sums agree' };
}
