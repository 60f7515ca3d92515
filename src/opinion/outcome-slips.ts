/** What was reckoned, and then written down wrongly: in another unit, with a digit wrong, of another size. */
import { type Decimal, ROUND_HALF_UP } from '../quantity/decimal';
import { numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { type Unit, unitOf } from '../quantity/units';
import { say, type Words } from '../reckoning/words';
import { miswritten, WEIGHTS } from './digit-slips';
import { siOf, siOfUnit } from './scale';
import type { SlipCode, Twist } from './slip';
import { exactText } from './twist';
import { misnamed } from './unit-slips';

/** A twist with its name. */
export interface Twisted {
  readonly code: SlipCode;
  readonly weight: number;
  readonly twist: Twist;
  readonly how: () => Words;
}

/** The unit whose number is written: feet and inches are written in feet when they are digits. */
export const unitWritten = (q: Quantity): Unit => {
  const unit = unitShown(q);
  return unit.form === 'feet-inches' ? (unitOf('length', 'ft') as Unit) : unit;
};

function* unitTwists(q: Quantity): Generator<Twisted> {
  const own = unitWritten(q);
  if (own.offset) return;
  const unit = siOfUnit(own);
  for (const { code, times, as, weight } of misnamed(own))
    yield {
      code,
      weight,
      twist: { unit, times },
      how: () => (HOW[code] ?? underName)(own.id, as),
    };
}

type Told = (own: string, other: string | undefined) => Words;

const underName: Told = (own, other) =>
  other
    ? say`is the number of ${{ unit: other }} under the name of ${{ own }}`
    : say`was not turned into ${{ own }} as it should be`;

/** What goes wrong in turning one unit into another. */
const HOW: Partial<Record<SlipCode, Told>> = {
  'divided-by-9': (own) =>
    say`was divided by 9 to turn it into ${{ own }}, which is the factor of another unit`,
  'divided-by-3': (own) => say`was divided by 3 to turn it into ${{ own }}, which is the factor of a length`,
  'wrong-gallon': () => say`is in gallons of the other kind, US for imperial or the reverse`,
  'converted-twice': (own) => say`was turned into ${{ own }} twice`,
  'wrong-factor': (own) => say`was divided by 25 to turn it into ${{ own }}, and not by 27`,
  'linear-factor': (own) => say`was turned into ${{ own }} by the factor of a length`,
};

function* sizeTwists(unit: number): Generator<Twisted> {
  yield { code: 'doubled', weight: 8, twist: { unit, times: ['2', '1'] }, how: () => say`was doubled` };
  yield { code: 'halved', weight: 8, twist: { unit, times: ['1', '2'] }, how: () => say`was halved` };
}

/** A moved point leaves all digits as they are, however many of them are then written. */
const POINTS = [
  ['10', '1', 1],
  ['1', '10', 1],
  ['100', '1', 3],
  ['1', '100', 3],
  ['1000', '1', 3],
  ['1', '1000', 3],
] as const;

function* pointTwists(unit: number): Generator<Twisted> {
  for (const [top, bottom, rarer] of POINTS)
    yield {
      code: 'point-moved',
      weight: WEIGHTS.point / rarer,
      twist: { unit, times: [top, bottom] },
      how: () => say`was written with its point in the wrong place`,
    };
}

/** What follows the point of a number, as so many of the smaller unit. */
const behindPoint = (text: string, digits: number): number => {
  const [, decimals = ''] = text.split('.');
  return Number(`${decimals.slice(0, digits).padEnd(digits, '0')}.${decimals.slice(digits)}`);
};

const wholeOf = (text: string): number => Math.trunc(Number(text));

/** So fine that nothing is lost of it. */
const FINE_PLACES = 9;
const fine = (n: number): string => n.toFixed(FINE_PLACES).replace(/\.?0+$/, '');

/** Tenths of a foot read as inches: 5.46 ft as 5 ft 4.6 in. */
const tenthsRead = (text: string): string | undefined =>
  text.includes('.') ? fine(wholeOf(text) + behindPoint(text, 1) / 12) : undefined;

/** Inches behind the point: 5 ft 4-1/2 in as 5.45 ft. */
function inchesWritten(text: string): string | undefined {
  const inches = Number(((Number(text) - wholeOf(text)) * 12).toFixed(4));
  return inches === 0 ? undefined : fine(wholeOf(text) + inches / (inches < 10 ? 10 : 100));
}

/** Hundredths of an hour read as minutes, and minutes written as hundredths. */
const hundredthsRead = (text: string): string | undefined => {
  const minutes = behindPoint(text, 2);
  return minutes > 0 && minutes < 60 ? fine(wholeOf(text) + minutes / 60) : undefined;
};
const minutesWritten = (text: string): string | undefined => {
  const minutes = (Number(text) - wholeOf(text)) * 60;
  return minutes > 0 ? fine(wholeOf(text) + minutes / 100) : undefined;
};

const digitwise = (
  code: SlipCode,
  weight: number,
  unit: Unit,
  places: number,
  slip: (text: string) => string | undefined,
  how: () => Words,
): Twisted => ({ code, weight, twist: { unit: siOfUnit(unit), digits: { places, slip } }, how });

/** Feet with tenths and with inches taken for each other, and hours with hundredths and with minutes. */
function* mixedTwists(q: Quantity): Generator<Twisted> {
  const own = unitShown(q);
  if (q.dimension === 'length' && own.system === 'customary') {
    const ft = unitOf('length', 'ft') as Unit;
    const read = (): Words => say`was read with its tenths of a foot as inches`;
    const wrote = (): Words => say`was written with its inches as tenths of a foot`;
    for (const places of [2, 1]) yield digitwise('tenths-as-inches', 6, ft, places, tenthsRead, read);
    yield digitwise('inches-as-tenths', 6, ft, FINE_PLACES, inchesWritten, wrote);
  }
  if (q.dimension !== 'time' || (own.id !== 'h' && own.id !== 'min')) return;
  const hour = unitOf('time', 'h') as Unit;
  const read = (): Words => say`was read with its hundredths of an hour as minutes`;
  const wrote = (): Words => say`was written with its minutes as hundredths of an hour`;
  yield digitwise('minutes-as-decimals', 8, hour, 2, hundredthsRead, read);
  yield digitwise('minutes-as-decimals', 8, hour, FINE_PLACES, minutesWritten, wrote);
}

/** The zeros of the two scales are 32 degrees of Fahrenheit apart: no difference is turned so. */
const ZEROS = 32 / 1.8;

/** A difference of degrees, turned as a point on the scale. */
function* intervalTwists(q: Quantity, unit: number): Generator<Twisted> {
  const si = siOf(q);
  if (q.dimension !== 'temperature-difference' || si === 0) return;
  for (const instead of [si - ZEROS, si + ZEROS])
    yield {
      code: 'degree-interval',
      weight: 10,
      twist: { unit, times: [String(instead), String(si)] },
      how: () => say`was turned into the other scale as a point on it, and not as a difference`,
    };
}

/** One in 48 written as 48%: what a slope is one in, under the name of a percentage. */
function* oneInTwists(q: Quantity, unit: Unit): Generator<Twisted> {
  const si = siOf(q);
  if (q.dimension !== 'slope' || unit.form !== 'percent' || si <= 0) return;
  yield {
    code: 'slope-unit',
    weight: 8,
    twist: { unit: siOfUnit(unit), times: [String(1 / (100 * si)), String(si)] },
    how: () => say`is what the slope is one in, and no percentage`,
  };
}

/** Numbers of more places than anyone writes are written with two. */
const usualPlaces = (n: Decimal): number => Math.min(n.decimalPlaces(), n.abs().lessThan(1) ? 3 : 2);

/** A number with its unit, without zeros that nobody writes. */
function told(text: string, unit: Unit): string {
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return unit.form === 'to-one' ? short : unit.form === 'percent' ? `${short}%` : `${short} ${unit.id}`;
}

/** Decimal places of a number with so many digits that count. */
const placesFor = (n: Decimal, digits: number): number =>
  digits - 1 - Math.floor(Math.log10(n.toNumber()) + 1e-12);

/** With how many places an outcome may have stood on the page: as many as are usual, or with so many digits. */
function* placesWritten(n: Decimal, places: number | undefined): Generator<number> {
  if (places !== undefined) yield places;
  const usual = Math.min(n.decimalPlaces(), usualPlaces(n));
  yield Math.min(usual, n.toDecimalPlaces(usual, ROUND_HALF_UP).decimalPlaces());
  if (n.isZero()) return;
  for (const digits of [3, 4]) yield Math.min(placesFor(n, digits), n.decimalPlaces());
}

function* digitTwists(q: Quantity, places: number | undefined): Generator<Twisted> {
  const unit = unitWritten(q);
  if (unit.form === 'one-in' || unit.offset) return;
  const n = (unit === unitShown(q) ? numberShown(q) : numberShown(q.in('ft' as never))).abs();
  const si = siOfUnit(unit);
  const seen = new Set<string>();
  for (const decimals of placesWritten(n, places)) {
    const text = exactText(n, decimals);
    for (const one of miswritten(text, true)) {
      const key = `${one.code} ${Number(one.text)}`;
      if (one.code === 'point-moved' || seen.has(key)) continue;
      seen.add(key);
      yield {
        code: one.code,
        weight: one.weight,
        twist: { unit: si, digits: { places: decimals, slip: one.again } },
        how: () => say`was written as ${{ written: told(one.text, unit) }}`,
      };
    }
  }
}

/**
 * What may have become of an outcome when it was written down.
 *
 * @param places - decimal places it was written with at last, where that is known
 */
export function outcomeTwists(q: Quantity, places: number | undefined): Twisted[] {
  if (q.dimension === 'temperature') return [...digitTwists(q, places)];
  const unit = siOfUnit(unitWritten(q));
  return [
    ...unitTwists(q),
    ...sizeTwists(unit),
    ...pointTwists(unit),
    ...mixedTwists(q),
    ...intervalTwists(q, unit),
    ...oneInTwists(q, unitWritten(q)),
    ...digitTwists(q, places),
  ];
}
