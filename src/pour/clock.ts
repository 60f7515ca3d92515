/**
 * A time of day, as people write it: `9:00`, `14:30`, `9 am`, `2:30 pm`, or hours since midnight as `14 h`.
 *
 * Read into a time since midnight, up to the midnight that ends the day (`24:00`). A 12-hour time runs
 * from 12 through 11: `12 am` is midnight, `12 pm` is noon, and `13 pm` is refused.
 */

import { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { fault } from '../quantity/faults';
import type { Fault, IssueCode } from '../quantity/input-error';
import { constant, time } from '../quantity/make';
import { newQuantity, type Quantity } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { unitOf } from '../quantity/units';
import { say } from '../quantity/words';
import * as faults from '../reckoning/faults';
import { type Field, quantitySchema, reading } from '../reckoning/fields';

/** A length of text that any time of day fits into, so that the pattern is tried on little. */
const LONGEST = 16;
const MINUTES = 60;
const NOON = 12;
const MIDNIGHT = 24;
const CLOCK = /^(\d{1,2})(?::(\d{2}))?\s*(a\.?m\.?|p\.?m\.?|h)?$/i;

const DAY = constant(() => time('24 h'));

const notATime = (what: string, hint: string): Fault =>
  fault(
    'unreadable-quantity',
    say`${{ what }} is no time of day${{ hint }}; write it as in "9:00", "2:30 pm" or "14 h"`,
  );

const bareNumber = (what: string): Fault =>
  fault('missing-unit', say`${{ what }} needs am, pm or a unit; write it as in "9:00", "2:30 pm" or "14 h"`);

const sinceMidnight = (minutes: number): Quantity<'time'> =>
  newQuantity('time', new Decimal(minutes).times(MINUTES), unitOf('time', 'h') as never);

/** Hours by the 24-hour clock of an hour with `am` or `pm` behind it. */
function hourOf(hour: number, half: string): number | undefined {
  if (half === 'h' || half === '') return hour <= MIDNIGHT ? hour : undefined;
  if (hour < 1 || hour > NOON) return undefined;
  return (hour % NOON) + (half.startsWith('p') ? NOON : 0);
}

/** The time in a text with a colon, `am` or `pm`; `undefined` where it has neither. */
function fromClock(text: string, what: string): Quantity<'time'> | Fault | undefined {
  const [found, hours, minutes, half] = CLOCK.exec(text) ?? [];
  const behind = (half ?? '').toLowerCase();
  if (found === undefined || (minutes === undefined && !/^[ap]/.test(behind))) return undefined;
  const [h, m] = [hourOf(Number(hours), behind), Number(minutes ?? 0)];
  if (h === undefined) {
    return notATime(what, /^[ap]/.test(behind) ? ', since hours with am or pm run from 1 to 12' : '');
  }
  if (m >= MINUTES || h * MINUTES + m > MIDNIGHT * MINUTES) return notATime(what, '');
  return sinceMidnight(h * MINUTES + m);
}

const tidied = (text: string): string =>
  text
    .normalize('NFKC')
    .replace(/\s*:\s*/, ':')
    .trim();

/** What reading it as hours since midnight may come to; its example would be no time of day. */
const UNREAD: readonly IssueCode[] = ['ambiguous', 'missing-unit', 'unknown-unit', 'unreadable-quantity'];

/** The time in a short text as it is typed; `undefined` where it may be hours since midnight. */
function fromText(typed: string, what: string): Quantity<'time'> | Fault | undefined {
  const text = tidied(typed);
  if (text === '') return sharedFaults.missing(what, '"9:00"');
  const told = fromClock(text, what);
  if (told) return told;
  if (/[:]|[ap]\.?m\.?$/i.test(text)) return notATime(what, '');
  return /^\d+(?:\.\d+)?$/.test(text) ? bareNumber(what) : undefined;
}

function read(input: unknown, what: string): Quantity<'time'> | Fault {
  if (input === undefined || input === null) return sharedFaults.missing(what, '"9:00"');
  if (typeof input === 'number' || typeof input === 'bigint') return bareNumber(what);
  const told = typeof input === 'string' && input.length <= LONGEST ? fromText(input, what) : undefined;
  if (told) return told;
  const q = readQuantity(input, 'time', what);
  if (isFaulty(q)) return UNREAD.includes(q.code) ? notATime(what, '') : q;
  if (q.sign() < 0) return faults.negative(what);
  return q.greaterThan(DAY()) ? sharedFaults.doesNotFit(what, '24 h') : q;
}

/** A field for a time of day, read into the time since midnight. */
export function clock(what: string): Field<Quantity<'time'>> {
  return reading(
    (input) => read(input, what),
    (defs) => quantitySchema(defs, 'time', 'clock'),
  );
}

/** Minutes since midnight as a clock shows them: `14:30`. */
export function clockOf(minutesSince: number): string {
  const minutes = Math.round(minutesSince) % (MIDNIGHT * MINUTES);
  return `${Math.floor(minutes / MINUTES)}:${String(minutes % MINUTES).padStart(2, '0')}`;
}

/** A time since midnight as a clock shows it: `14:30`, to the nearest minute. */
export const clockText = (sinceMidnightOf: Quantity<'time'>): string =>
  clockOf(sinceMidnightOf.toNumber('min'));
