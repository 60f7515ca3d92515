/** What was reckoned, and then written down wrongly: in another unit, with a digit wrong, of another size. */
import type { Decimal } from '../quantity/decimal';
import { numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { type Unit, unitOf } from '../quantity/units';
import { say, type Words } from '../reckoning/words';
import { miswritten } from './digit-slips';
import { siOfUnit } from './scale';
import type { SlipCode, Twist } from './slip';
import { misnamed } from './unit-slips';

/** A twist with its name. */
export interface Twisted {
  readonly code: SlipCode;
  readonly weight: number;
  readonly twist: Twist;
  readonly how: Words;
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
        ? say`is the number of ${{ other: as }} under the name of ${{ own: own.id }}`
        : say`was not turned into ${{ own: own.id }} as it should be`,
    };
}

function* sizeTwists(unit: number): Generator<Twisted> {
  yield { code: 'doubled', weight: 8, twist: { unit, times: ['2', '1'] }, how: say`was doubled` };
  yield { code: 'halved', weight: 8, twist: { unit, times: ['1', '2'] }, how: say`was halved` };
}

/** Numbers of more places than anyone writes are written with two. */
const usualPlaces = (n: Decimal): number => Math.min(n.decimalPlaces(), n.abs().lessThan(1) ? 3 : 2);

function* digitTwists(q: Quantity, places: number | undefined): Generator<Twisted> {
  const unit = unitWritten(q);
  if (unit.form === 'one-in' || unit.offset) return;
  const n = unit === unitShown(q) ? numberShown(q) : numberShown(q.in('ft' as never));
  const written = n.abs().toDecimalPlaces(places ?? usualPlaces(n), 4);
  const decimals = places ?? written.decimalPlaces();
  const text = written.toFixed(decimals);
  for (const one of miswritten(text, true)) {
    // By its place among all that may become of this text: so the same slip is found for another number of the search.
    yield {
      code: one.code,
      weight: one.weight,
      twist: {
        unit: siOfUnit(unit),
        digits: { places: decimals, slip: (now) => (now === text ? one.text : undefined) },
      },
      how: say`was written as ${{ written: `${one.text} ${unit.id}` }}`,
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
  return [...unitTwists(q), ...sizeTwists(siOfUnit(unitWritten(q))), ...digitTwists(q, places)];
}
