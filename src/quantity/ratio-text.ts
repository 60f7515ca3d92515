/**
 * One number to another: `1:48` and `1 in 60` as a slope, `1.5:1` as a ratio, a fall over its run as
 * it is measured: `6 in in 10 ft`, `20 mm over 3 m`; and an amount on as many as bags and sheets name: `5 lb per 1000 ft2`.
 */
import { Decimal, ZERO } from './decimal';
import type { Dimension } from './dimensions';
import * as faults from './faults';
import type { Fault } from './input-error';
import { plainNumber } from './plain-number';
import { isFault, type Reading } from './reading';
import * as textFaults from './text-faults';
import { type Unit, unitOf } from './units';

const ONE_TO = /^1 ?: ?(\d[\d,]*(?:\.\d*)?)$/;
const TO_ONE = /^(\d[\d,]*(?:\.\d*)?|\.\d+) ?: ?1$/;

/** `1 in 60`: two bare numbers, so that the word between them is no unit. */
const ONE_IN = /^(\d[\d,.]*) in (\d[\d,.]*)$/i;

/** `4:12`, `48:1`: up to across, or across to up. */
const COLON = /^(\d+(?:\.\d+)?) ?: ?(\d+(?:\.\d+)?)$/;

/** A length, and what it falls over: one word between two lengths, or a length and its own unit: `0.02 ft/ft`. */
const FALL = /^([\d.].*?(?<![a-z])([a-z'"]+)) ?(?: in | over | per |\/) ?(\d.*[a-z'"]|\2)$/i;

/** `1 in 10 ft`: an inch, or one of ten. */
const HALF_NAMED = /^(\d[\d ./-]*) in (\d+(?:\.\d+)?) ?([a-z']+)$/i;

/** `5 lb per 1000 ft2`: an amount of one unit on a number of another. */
const ON_MANY = /^(.+[a-z]) ?(?: per |\/) ?(\d[\d,]*(?:\.\d+)?) ?([a-z].*)$/i;

/** Seed and straw go by the acre or the hectare, a ton of 2,000 lb on one and a tonne on the other. */
const onLand = (text: string): string =>
  text
    .replace(/( ?\btons?)?(?: per |\/)acre$/i, (_, ton) => (ton ? ' lb/21.78 ft2' : '/43560 ft2'))
    .replace(/( ?\bt(?:onnes?)?)?(?: per |\/)ha$/i, (_, ton) => (ton ? ' kg/10 m2' : '/10000 m2'));

/** Such an amount by its share of one unit; nothing where the two units make none. */
function onMany(text: string, what: string, read: (text: string) => Reading | Fault): Reading | undefined {
  const [, amount, many, of] = ON_MANY.exec(onLand(text)) ?? [];
  if (many === undefined) return undefined;
  const reading = read(`${amount}/${of}`);
  const number = plainNumber(many, what);
  if (isFault(reading) || !(number instanceof Decimal) || number.isZero()) return undefined;
  return { value: reading.value.div(number), unit: reading.unit };
}

/** Both readings of one number to another: as many to one, or as one to as many. */
function eitherWay(text: string, what: string): Fault | undefined {
  const [, a, b] = COLON.exec(text.replace(ONE_IN, '$1:$2')) ?? [];
  if (a === undefined || b === undefined || !Number(a) || !Number(b)) return undefined;
  const [one, other] = [Number(a) / Number(b), Number(b) / Number(a)].map((n) => +(100 * n).toPrecision(4));
  return textFaults.twoWays(what, text, `${one}%`, `${other}%`);
}

function oneTo(number: string, what: string, d: 'slope' | 'ratio'): Reading | Fault {
  const value = plainNumber(number, what);
  if (!(value instanceof Decimal)) return value as Fault;
  if (d === 'ratio') return { value, unit: unitOf('ratio', ':1') as Unit };
  const unit = unitOf('slope', '1:n') as Unit;
  return value.isZero() ? faults.notPositive(what) : { value: unit.factor.div(value), unit };
}

/** A fall over a run, each read as a length; shown as percent, since neither length is the whole of it. */
function fallOver(
  text: string,
  what: string,
  lengthOf: (text: string) => Reading | Fault,
): Reading | Fault | undefined {
  const [, fall, , run] = FALL.exec(text) ?? [];
  if (fall === undefined || run === undefined) return undefined;
  const [down, along] = [lengthOf(fall), lengthOf(/^\d/.test(run) ? run : `1 ${run}`)];
  if (isFault(down) || isFault(along)) return undefined;
  if (along.value.isZero()) return faults.notPositive(what);
  const unit = unitOf('slope', '%') as Unit;
  return { value: down.value.times(unit.factor).times(100).div(along.value), unit };
}

function slopeText(
  text: string,
  what: string,
  lengthOf: (text: string) => Reading | Fault,
): Reading | Fault | undefined {
  if (/^level$/i.test(text)) return { value: ZERO, unit: unitOf('slope', '1:n') as Unit };
  const to = ONE_TO.exec(text.replace(ONE_IN, '$1:$2'))?.[1];
  if (to !== undefined) return oneTo(to, what, 'slope');
  const [, rise, run, unit] = HALF_NAMED.exec(text) ?? [];
  if (rise !== undefined)
    return textFaults.twoWays(what, text, `${rise} in in ${run} ${unit}`, `${rise}:${run}`);
  return eitherWay(text, what) ?? fallOver(text, what, lengthOf);
}

/**
 * What is written as one number to another, or on so many; `undefined` where it is neither.
 *
 * @param read - reads a part, such as the lengths of a fall and its run
 */
export function readRatio(
  text: string,
  what: string,
  d: Dimension,
  read: (text: string, d: Dimension) => Reading | Fault,
): Reading | Fault | undefined {
  if (d === 'slope') return slopeText(text, what, (part) => read(part, 'length'));
  if (d !== 'ratio') return onMany(text, what, (part) => read(part, d));
  const to = TO_ONE.exec(text)?.[1];
  return to === undefined ? eitherWay(text, what) : oneTo(to, what, 'ratio');
}
