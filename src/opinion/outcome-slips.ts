/** What was reckoned, and then written down wrongly: in another unit, with a digit wrong, of another size. */
import type { Decimal } from '../quantity/decimal';
import { numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { type Unit, unitOf } from '../quantity/units';
import { say, type Words } from '../reckoning/words';
import { miswritten, WEIGHTS } from './digit-slips';
import { siOf, siOfUnit } from './scale';
import type { SlipCode, Twist } from './slip';
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
      how: as
        ? () => say`is the number of ${{ other: as }} under the name of ${{ own: own.id }}`
        : () => say`was not turned into ${{ own: own.id }} as it should be`,
    };
}

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

/** Numbers of more places than anyone writes are written with two. */
const usualPlaces = (n: Decimal): number => Math.min(n.decimalPlaces(), n.abs().lessThan(1) ? 3 : 2);

/** A number with its unit, without zeros that nobody writes. */
function told(text: string, unit: Unit): string {
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return unit.form === 'to-one' ? short : unit.form === 'percent' ? `${short}%` : `${short} ${unit.id}`;
}

function* digitTwists(q: Quantity, places: number | undefined): Generator<Twisted> {
  const unit = unitWritten(q);
  if (unit.form === 'one-in' || unit.offset) return;
  const n = unit === unitShown(q) ? numberShown(q) : numberShown(q.in('ft' as never));
  const written = n.abs().toDecimalPlaces(places ?? usualPlaces(n), 4);
  const decimals = places ?? written.decimalPlaces();
  const text = written.toFixed(decimals);
  for (const one of miswritten(text, true)) {
    if (one.code === 'point-moved') continue;
    // By its place among all that may become of this text: so the same slip is found for another number of the search.
    yield {
      code: one.code,
      weight: one.weight,
      twist: {
        unit: siOfUnit(unit),
        digits: { places: decimals, slip: (now) => (now === text ? one.text : undefined) },
      },
      how: () => say`was written as ${{ written: told(one.text, unit) }}`,
    };
  }
}

/**
 * What may have become of an outcome when it was written down.
 *
 * @param places - decimal places it was written with, where that is known
 */
export function outcomeTwists(q: Quantity, places: number | undefined): Twisted[] {
  if (q.dimension === 'temperature') return [...digitTwists(q, places)];
  const unit = siOfUnit(unitWritten(q));
  return [
    ...unitTwists(q),
    ...sizeTwists(unit),
    ...pointTwists(unit),
    ...intervalTwists(q, unit),
    ...digitTwists(q, places),
  ];
}
