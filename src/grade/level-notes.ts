/**
 * Level notes: readings reduced to elevations, with the check sums of a level book.
 *
 * - `level`: height of instrument = elevation + backsight; elevation = height of instrument −
 *   foresight. The sum of backsights less the sum of foresights at turning points equals the rise
 *   from the first point to the last.
 * - `laser`: so far above or below the bench mark; the elevations sum up to the bench mark times
 *   their number, plus the ups, less the downs.
 * - `water level`: water stands equally high at both ends, so the height of the water above a point
 *   is read as a rod is.
 * - `string line`: the string is straight between two points of known elevation, and each reading is
 *   taped down from it.
 */
import type { LengthInput } from '../outline/outline';
import * as sharedFaults from '../quantity/faults';
import { paired } from '../quantity/paired';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import {
  type Field,
  fields,
  kinds,
  label,
  list,
  maybe,
  quantity,
  wholeNumber,
  word,
} from '../reckoning/fields';
import type { Ordinary } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { all, given, oneOf } from '../reckoning/together';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import * as faults from './faults';
import { small } from './marks';
import {
  BENCH_ELEVATION,
  CLOSURE,
  LASER_OFFSET,
  ROD_READING,
  STRING_DROP,
  STRING_LENGTH,
  WATER_HEIGHT,
} from './note-ranges';
import { CBM_LEVELLING, NAVY_GRADES } from './sources';

/** A point whose elevation is known. */
export interface BenchMarkInput {
  /** What the point is called. */
  readonly name: string;
  /** Its known elevation. */
  readonly elevation: LengthInput;
}

/** One line of a level book. */
export interface LevelRowInput {
  /** Name of the point that the rod stands on; a point may be met again. */
  readonly point: string;
  /** Rod reading on a point of known elevation, looking back. */
  readonly backsight?: LengthInput;
  /** Rod reading on a new point. A point with a foresight and a backsight is a turning point. */
  readonly foresight?: LengthInput;
}

/** Notes of a level with a rod. */
export interface LevelNotesByRodInput {
  /** Always `level`. */
  readonly kind: 'level';
  /** Left out, the height of the first instrument must be given. */
  readonly benchMark?: BenchMarkInput;
  /** Elevation of the first line of sight, in place of a bench mark. */
  readonly heightOfInstrument?: LengthInput;
  /** Lines of the book, in the order read. */
  readonly rows: readonly LevelRowInput[];
  /** Known elevation of the last point, to close on. */
  readonly closesOn?: LengthInput;
  /** Misclosure that is allowed; by default 1/8 in. */
  readonly allowed?: LengthInput;
}

/** Readings of a laser on a rod set to zero at the bench mark. */
export interface LevelNotesByLaserInput {
  /** Always `laser`. */
  readonly kind: 'laser';
  /** Where the rod was set to zero; left out, `no-datum` names the points that hang on nothing. */
  readonly benchMark?: BenchMarkInput;
  /** One reading for each point, either `up` or `down`. */
  readonly rows: readonly {
    /** Name of the point; no two alike. */
    readonly point: string;
    /** How far the point lies above the bench mark. */
    readonly up?: LengthInput;
    /** How far the point lies below the bench mark. */
    readonly down?: LengthInput;
  }[];
}

/** Readings of a water level: height of the water above each point. */
export interface LevelNotesByWaterInput {
  /** Always `water level`. */
  readonly kind: 'water-level';
  /** The known point; left out, `no-datum` names the points that hang on nothing. */
  readonly benchMark?: BenchMarkInput;
  /** Height of the water above the bench mark. */
  readonly atBenchMark: LengthInput;
  /** One reading for each point. */
  readonly rows: readonly {
    /** Name of the point; no two alike. */
    readonly point: string;
    /** Height of the water above the point. */
    readonly height: LengthInput;
  }[];
}

/** Readings taped down from a string line. */
export interface LevelNotesByStringInput {
  /** Always `string line`. */
  readonly kind: 'string-line';
  /** Start of the string and its elevation; left out, `no-datum` is thrown. */
  readonly from?: BenchMarkInput;
  /** End of the string and its elevation; left out, `no-datum` is thrown. */
  readonly to?: BenchMarkInput;
  /** Length of the string between the two. */
  readonly length: LengthInput;
  /** One reading for each point. */
  readonly rows: readonly {
    /** Name of the point; no two alike. */
    readonly point: string;
    /** How far along the string from `from`. */
    readonly at: LengthInput;
    /** How far the point lies below the string, as taped. */
    readonly down: LengthInput;
  }[];
}

/** Input of {@link levelNotes}. */
export type LevelNotesInput =
  | LevelNotesByRodInput
  | LevelNotesByLaserInput
  | LevelNotesByWaterInput
  | LevelNotesByStringInput;

/** A point with its elevation. */
export interface LeveledPoint {
  /** Name of the point. */
  readonly point: string;
  /** Its elevation, in feet or meters. */
  readonly elevation: Quantity<'length'>;
  /** Height of the instrument or water level that it was read from. */
  readonly readFrom?: Quantity<'length'>;
}

/** Figures of {@link levelNotes}. */
export interface LevelNotesFigures {
  /** Points in the order read; of a level book the bench mark first. */
  readonly points: readonly LeveledPoint[];
  /** The elevations by name, for other calculations. */
  readonly elevations: { readonly [point: string]: Quantity<'length'> };
  /** What the check sum of the readings comes to. */
  readonly checkSum: Quantity<'length'>;
  /** What it must equal. */
  readonly checkAgainst: Quantity<'length'>;
  /** All backsights of a level book together. */
  readonly sumOfBacksights?: Quantity<'length'>;
  /** At turning points and the last point. */
  readonly sumOfForesights?: Quantity<'length'>;
  /** Found less known, where the notes close on a known elevation. */
  readonly misclosure?: Quantity<'length'>;
  /** `does not close` where the misclosure is more than allowed. */
  readonly verdict: 'sums agree' | 'does not close';
}

type Length = Quantity<'length'>;

interface Mark {
  readonly name: string;
  readonly elevation: Length;
}

interface RodNotes {
  readonly kind: 'level';
  readonly benchMark: Mark | undefined;
  readonly heightOfInstrument: Length | undefined;
  readonly rows: readonly {
    readonly point: string;
    readonly backsight: Length | undefined;
    readonly foresight: Length | undefined;
  }[];
  readonly closesOn: Length | undefined;
  readonly allowed: Length | undefined;
}

interface LaserNotes {
  readonly kind: 'laser';
  readonly benchMark: Mark | undefined;
  readonly rows: readonly {
    readonly point: string;
    readonly up: Length | undefined;
    readonly down: Length | undefined;
  }[];
}

interface WaterNotes {
  readonly kind: 'water-level';
  readonly benchMark: Mark | undefined;
  readonly atBenchMark: Length;
  readonly rows: readonly { readonly point: string; readonly height: Length }[];
}

interface StringNotes {
  readonly kind: 'string-line';
  readonly from: Mark | undefined;
  readonly to: Mark | undefined;
  readonly length: Length;
  readonly rows: readonly { readonly point: string; readonly at: Length; readonly down: Length }[];
}

type Parsed = RodNotes | LaserNotes | WaterNotes | StringNotes;

const ROW_LIMIT = 5000;
const ALLOWED = /*#__PURE__*/ paired('length', '1/8 in', '3 mm');

/** Elevations are spoken of in feet or meters, whatever the readings were in. */
const asElevation = (l: Length): Length => l.in(systemOfQuantity(l) === 'metric' ? 'm' : 'ft');

const total = (values: readonly Length[], like: Length): Length =>
  asElevation(values.reduce((sum, v) => sum.plus(v), like.minus(like)));

function byName(points: readonly LeveledPoint[]): { [point: string]: Length } {
  return Object.fromEntries(points.map(({ point, elevation }) => [point, elevation]));
}

function hanging(rows: readonly { readonly point: string }[]): never {
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

function byRod(notes: RodNotes, pad: Pad): LevelNotesFigures {
  const { benchMark, heightOfInstrument, rows, closesOn } = notes;
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
  const closing =
    closesOn && pad.step('misclosure', 'm = z − k', { z: end, k: closesOn }, small(end.minus(closesOn)));
  return {
    points: at.points,
    elevations: byName(at.points),
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
function summed(
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

function byLaser({ benchMark, rows }: LaserNotes, pad: Pad): LevelNotesFigures {
  if (!benchMark) return hanging(rows);
  const k = asElevation(benchMark.elevation);
  const points = rows.map(({ point, up, down }, i) => {
    if ((up === undefined) === (down === undefined))
      refuse(`rows[${i}]`, sharedFaults.giveOneOf(['up', 'down']));
    const elevation = up
      ? pad.step(say`elevation of ${{ point }}`, 'E = k + u', { k, u: up }, k.plus(up))
      : pad.step(
          say`elevation of ${{ point }}`,
          'E = k − d',
          { k, d: down as Length },
          k.minus(down as Length),
        );
    return { point, elevation };
  });
  const ups = total(
    rows.flatMap(({ up }) => (up ? [up] : [])),
    k,
  );
  const downs = total(
    rows.flatMap(({ down }) => (down ? [down] : [])),
    k,
  );
  return summed(points, k, ups.minus(downs), pad);
}

function byWater({ benchMark, atBenchMark: a, rows }: WaterNotes, pad: Pad): LevelNotesFigures {
  if (!benchMark) return hanging(rows);
  const E = asElevation(benchMark.elevation);
  const H = pad.step('elevation of the water', 'H = E + a', { E, a }, E.plus(a));
  const points = rows.map(({ point, height: w }) => ({
    point,
    elevation: pad.step(say`elevation of ${{ point }}`, 'E = H − w', { H, w }, H.minus(w)),
    readFrom: H,
  }));
  return summed(
    points,
    H,
    total(
      rows.map(({ height }) => height),
      H,
    ).negated(),
    pad,
  );
}

function byString({ from, to, length: L, rows }: StringNotes, pad: Pad): LevelNotesFigures {
  if (!from || !to) return hanging(rows);
  const [p, q] = [asElevation(from.elevation), asElevation(to.elevation)];
  const strings = rows.map(({ at, point }) =>
    pad.step(
      say`string at ${{ point }}`,
      'h = p + (q − p) × s ÷ L',
      { p, q, s: at, L },
      p.plus(q.minus(p).times(at.over(L))),
    ),
  );
  const points = rows.map(({ point, down: d }, i) => {
    const h = strings[i] as Length;
    return {
      point,
      elevation: pad.step(say`elevation of ${{ point }}`, 'E = h − d', { h, d }, h.minus(d)),
      readFrom: h,
    };
  });
  const [s, d] = [
    total(strings, p),
    total(
      rows.map(({ down }) => down),
      p,
    ),
  ];
  const checkSum = pad.step('check sum', 'c = s − d', { s, d }, asElevation(s.minus(d)));
  const against = total(
    points.map(({ elevation }) => elevation),
    p,
  );
  return { points, elevations: byName(points), checkSum, checkAgainst: against, verdict: 'sums agree' };
}

function refuseSamePoints(rows: readonly { readonly point: string }[]): void {
  const seen = new Set<string>();
  rows.forEach(({ point }, i) => {
    if (seen.has(point)) refuse(`rows[${i}].point`, faults.repeatedName(point));
    seen.add(point);
  });
}

function reckon(notes: Parsed, pad: Pad): LevelNotesFigures {
  switch (notes.kind) {
    case 'level':
      return byRod(notes, pad);
    case 'laser':
      refuseSamePoints(notes.rows);
      return byLaser(notes, pad);
    case 'water-level':
      refuseSamePoints(notes.rows);
      return byWater(notes, pad);
    case 'string-line':
      refuseSamePoints(notes.rows);
      return byString(notes, pad);
  }
}

const mark = (): Field<Mark | undefined> =>
  maybe(fields({ name: label('name'), elevation: quantity('length', 'elevation', 'any', BENCH_ELEVATION) }));

const any = (what: string, ordinary: Ordinary): Field<Length> => quantity('length', what, 'any', ordinary);

/**
 * Readings of a rod, laser, water level or string line to elevations, with the check sums of a level book.
 *
 * @param input - readings of a level, laser, water level or string line, and the elevation they hang on
 * @returns elevations by point, the check sum and what it must equal, and the misclosure
 * @throws {InputError} `no-datum` with the names of points that hang on no elevation; `give-one-of`;
 * `repeated-name` (a level book may meet a point again); readings that cannot be read
 * @source closed form; signs as in NAVEDTRA 14081 and Carpenters and Builders Math
 * @example
 * ```ts
 * import { levelNotes } from 'flatwork-reckoner';
 *
 * const { figures } = levelNotes({
 *   kind: 'level',
 *   benchMark: { name: 'BM', elevation: '100 ft' },
 *   rows: [
 *     { point: 'BM', backsight: '4.25 ft' },
 *     { point: 'door', foresight: '3.9 ft' },
 *     { point: 'walk', foresight: '4.5 ft' },
 *   ],
 * });
 * figures.elevations['door']?.format(); // '100.35 ft'
 * figures.checkSum.format(); // '-0.25 ft'
 * ```
 */
export const levelNotes: Calculation<LevelNotesInput, LevelNotesFigures> = /*#__PURE__*/ define({
  id: 'level-notes',
  title: 'Level notes',
  version: 1,
  sources: [CLOSED_FORM, NAVY_GRADES, CBM_LEVELLING],
  input: () =>
    kinds('kind', [
      fields(
        {
          kind: word('level'),
          benchMark: mark(),
          heightOfInstrument: maybe(any('heightOfInstrument', BENCH_ELEVATION)),
          rows: list(
            fields({
              point: label('point'),
              backsight: maybe(any('backsight', ROD_READING)),
              foresight: maybe(any('foresight', ROD_READING)),
            }),
            1,
            ROW_LIMIT,
          ),
          closesOn: maybe(any('closesOn', BENCH_ELEVATION)),
          allowed: maybe(quantity('length', 'allowed', 'not-negative', CLOSURE)),
        },
        oneOf(['benchMark'], ['heightOfInstrument']),
      ) as Field<Parsed>,
      fields(
        {
          kind: word('laser'),
          benchMark: mark(),
          rows: list(
            fields(
              {
                point: label('point'),
                up: maybe(quantity('length', 'up', 'not-negative', LASER_OFFSET)),
                down: maybe(quantity('length', 'down', 'not-negative', LASER_OFFSET)),
              },
              oneOf(['up'], ['down']),
            ),
            1,
            ROW_LIMIT,
          ),
        },
        all(given('benchMark')),
      ) as Field<Parsed>,
      fields(
        {
          kind: word('water-level'),
          benchMark: mark(),
          atBenchMark: any('atBenchMark', WATER_HEIGHT),
          rows: list(fields({ point: label('point'), height: any('height', WATER_HEIGHT) }), 1, ROW_LIMIT),
        },
        all(given('benchMark')),
      ) as Field<Parsed>,
      fields(
        {
          kind: word('string-line'),
          from: mark(),
          to: mark(),
          length: quantity('length', 'length', 'positive', STRING_LENGTH),
          rows: list(
            fields({ point: label('point'), at: any('at', STRING_LENGTH), down: any('down', STRING_DROP) }),
            1,
            ROW_LIMIT,
          ),
        },
        all(given('from', 'to')),
      ) as Field<Parsed>,
    ]),
  reckon,
});
