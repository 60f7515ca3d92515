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
import * as sharedFaults from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { type Field, fields, kinds, label, list, maybe, quantity, word } from '../reckoning/fields';
import type { Ordinary } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { all, given, oneOf } from '../reckoning/together';
import { say } from '../reckoning/words';
import * as faults from './faults';
import type { LevelNotesFigures } from './level-notes-figures';
import type {
  LaserNotes,
  LevelNotesInput,
  Mark,
  NotesParsed,
  StringNotes,
  WaterNotes,
} from './level-notes-input';
import {
  BENCH_ELEVATION,
  CLOSURE,
  LASER_OFFSET,
  ROD_READING,
  STRING_DROP,
  STRING_LENGTH,
  WATER_HEIGHT,
} from './note-ranges';
import { asElevation, byName, byRod, hanging, summed, total } from './rod-notes';
import { CBM_LEVELLING, NAVY_GRADES } from './sources';

type Length = Quantity<'length'>;

const ROW_LIMIT = 5000;

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

function reckon(notes: NotesParsed, pad: Pad): LevelNotesFigures {
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
      ) as Field<NotesParsed>,
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
      ) as Field<NotesParsed>,
      fields(
        {
          kind: word('water-level'),
          benchMark: mark(),
          atBenchMark: any('atBenchMark', WATER_HEIGHT),
          rows: list(fields({ point: label('point'), height: any('height', WATER_HEIGHT) }), 1, ROW_LIMIT),
        },
        all(given('benchMark')),
      ) as Field<NotesParsed>,
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
      ) as Field<NotesParsed>,
    ]),
  reckon,
});
