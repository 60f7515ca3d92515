/**
 * The sizes that things of the trade usually have, in order: who slips from one, slips to another of them, most often
 * to the next. Common practice.
 */
import { Decimal } from '../quantity/decimal';
import { numberShown, unitShown } from '../quantity/quantity';
import type { Unit } from '../quantity/units';
import type { Leaf } from './input-places';

/** Of what, by the last name of the place, in which unit. */
interface Usual {
  readonly of: RegExp;
  readonly unit: string;
  readonly sizes: readonly string[];
  /** How common it is to take the next, where it is more than usual. */
  readonly next?: number;
}

const listed = (text: string): string[] => text.split(' ');

/** Many order whole yards wherever the plant would sell quarters. */
const WHOLE = 5;

const USUAL: readonly Usual[] = [
  { of: /^bag$/, unit: 'lb', sizes: listed('40 50 60 80 90') },
  { of: /^bag$/, unit: 'kg', sizes: listed('20 25 30 35 40') },
  { of: /spacing$/i, unit: 'in', sizes: listed('4 6 8 9 10 12 14 15 16 18 20 24 30 36 48') },
  {
    of: /spacing$/i,
    unit: 'mm',
    sizes: listed('100 125 150 175 200 225 250 300 350 400 450 500 600 750 900 1200'),
  },
  { of: /spacing$/i, unit: 'ft', sizes: listed('1 2 3 4 5 6 8 10 12 15 20') },
  { of: /^(?:thickness|depth|height)$/, unit: 'in', sizes: listed('3 3.5 4 4.5 5 5.5 6 7 8 9 10 12') },
  {
    of: /^(?:thickness|depth|height)$/,
    unit: 'mm',
    sizes: listed('75 90 100 110 120 125 130 140 150 175 180 200 225 250 300'),
  },
  { of: /^(?:stock|pieceLength)$/, unit: 'ft', sizes: listed('8 10 12 14 15 16 18 20') },
  { of: /^(?:stock|pieceLength)$/, unit: 'm', sizes: listed('2.4 3 3.6 4.2 4.8 5.4 6') },
  // ASTM A615, and its soft metric sizes.
  { of: /^unitWeight$/, unit: 'lb/ft', sizes: listed('0.376 0.668 1.043 1.502 2.044 2.67 3.4 4.303 5.313') },
  {
    of: /^unitWeight$/,
    unit: 'kg/m',
    sizes: listed('0.222 0.395 0.617 0.888 1.578 2.466 3.853 6.313 9.865'),
  },
  // Wires 6 in apart; mesh of the A and of the SL series.
  { of: /^meshWeight$/, unit: 'lb/ft2', sizes: listed('0.21 0.29 0.42 0.58') },
  { of: /^meshWeight$/, unit: 'kg/m2', sizes: listed('1.54 2.22 3.02 3.95 6.17') },
  { of: /^meshWeight$/, unit: 'kg/m2', sizes: listed('2.22 2.81 3.56 4.56 5.56') },
  { of: /^truckCapacity$/, unit: 'yd3', sizes: listed('7 8 9 10 11 12') },
  { of: /^truckCapacity$/, unit: 'm3', sizes: listed('4 5 6 7 8 9') },
  { of: /^increment$/, unit: 'yd3', sizes: listed('0.25 0.5 1'), next: WHOLE },
  { of: /^increment$/, unit: 'm3', sizes: listed('0.1 0.2 0.25 0.5 1'), next: WHOLE },
  { of: /^container$/, unit: 'fl oz', sizes: listed('10.1 10.3 20 28 29 30') },
  { of: /^container$/, unit: 'mL', sizes: listed('290 300 310 400 600 825') },
  { of: /^container$/, unit: 'gal', sizes: listed('1 2 5 55') },
  { of: /^container$/, unit: 'L', sizes: listed('1 5 10 20 25 200') },
  { of: /^allowance$|^waste$/, unit: '%', sizes: listed('3 5 7 8 10 12 15 20') },
];

/** Another usual size, with how common it is to take it. */
export interface OtherSize {
  readonly number: Decimal;
  readonly unit: Unit;
  readonly weight: number;
}

/** The next one is taken more often than one farther off, as is the next of the most usual. */
const NEXT = 2;
const FARTHER = 0.6;
/** Of slabs, and of what plants sell by. */
const MOST_USUAL: Readonly<Record<string, readonly string[]>> = {
  in: ['4', '5', '6', '8', '10', '12'],
  mm: ['75', '100', '125', '150', '200', '250', '300'],
  yd3: ['0.25', '1'],
  m3: ['0.25', '0.5', '1'],
};

/** Whether two are next to each other among the most usual sizes. */
function areNext(unit: string, a: string, b: string): boolean {
  const all = MOST_USUAL[unit] ?? [];
  const [i, j] = [all.indexOf(a), all.indexOf(b)];
  return i >= 0 && j >= 0 && Math.abs(i - j) === 1;
}

/** The usual sizes that a value of the input is taken for; none where it is no usual size itself. */
export function* otherSizes({ name, quantity }: Pick<Leaf, 'name' | 'quantity'>): Generator<OtherSize> {
  const unit = unitShown(quantity);
  const own = numberShown(quantity);
  // A weight is reckoned with more digits than its table has.
  const isSize = (size: string): boolean =>
    (name.endsWith('Weight') ? own.toDecimalPlaces(new Decimal(size).decimalPlaces()) : own).equals(size);
  const placeIn = ({ sizes }: Usual): number => sizes.findIndex(isSize);
  const usual = USUAL.find((one) => one.unit === unit.id && one.of.test(name) && placeIn(one) >= 0);
  if (!usual) return;
  const at = placeIn(usual);
  for (const [i, size] of usual.sizes.entries()) {
    const steps = Math.abs(i - at);
    const isNext = steps === 1 || areNext(unit.id, usual.sizes[at] as string, size);
    if (steps > 0) yield { number: new Decimal(size), unit, weight: isNext ? (usual.next ?? NEXT) : FARTHER };
  }
}
