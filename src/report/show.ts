/** Quantities in the units and the marks of numbers of who reads. */
import { inSystem } from '../quantity/like-unit';
import { length } from '../quantity/make';
import { partsOfText } from '../quantity/parts';
import { numberShown, type Quantity, unitShown } from '../quantity/quantity';
import type { System, UnitId } from '../quantity/units';
import { durationText } from './duration';

/** A language: from an English sentence or word, as it stands in the data, to the same in that language. */
export type Language = { readonly [english: string]: string };

/** How a result is to be shown. */
export interface View {
  /** Show every quantity in the units of this family; by default each as it was given or is usual for it. */
  readonly system?: System;
  /** A language tag for the marks of numbers, such as `de-DE`; by default they are written as `1234.5`. */
  readonly locale?: string;
  /** Words of another language. */
  readonly language?: Language;
  /**
   * Lengths in feet and inches with fractions, as on a tape, or in feet and tenths, as on a rod; by default each as it
   * was given or is usual for it. A sheet that is given its input takes it from there.
   */
  readonly feet?: 'fractions' | 'tenths';
  /** Times of day by 12 hours or by 24; on a sheet by default as goes with the units. */
  readonly hours?: 12 | 24;
}

/** How figures are shown side by side: small volumes in one unit with those beside them. */
export interface SideBySide extends View {
  readonly volumes?: 'as-given';
}

/** Feet as on a tape, where there are feet. */
export const onTape = (metric: boolean): Pick<View, 'feet'> => (metric ? {} : { feet: 'fractions' });

/** A quantity in the units of the view. */
export const viewed = (q: Quantity, { system }: View): Quantity => (system ? inSystem(q, system) : q);

/** Below these a volume is told in the smaller unit. */
const SMALL_VOLUMES: Readonly<Record<string, { readonly below: number; readonly unit: UnitId<'volume'> }>> = {
  yd3: { below: 1, unit: 'ft3' },
  m3: { below: 0.1, unit: 'L' },
  gal: { below: 1, unit: 'fl oz' },
  L: { below: 1, unit: 'mL' },
};

/** Quarters are what plants sell by: they stay as they are ordered. */
const QUARTERS = 4;

/** A volume in a unit that leaves it a number before the point. */
export function largeEnough(q: Quantity): Quantity {
  const small = SMALL_VOLUMES[unitShown(q).id];
  if (q.dimension !== 'volume' || !small || q.sign() === 0) return q;
  const amount = Math.abs(numberShown(q).toNumber());
  return amount < small.below && !Number.isInteger(amount * QUARTERS)
    ? (q as Quantity<'volume'>).in(small.unit)
    : q;
}

const SMALL_UNITS: ReadonlySet<string> = new Set(Object.values(SMALL_VOLUMES).map(({ unit }) => unit));

/** Whether a volume is in a unit that small ones are told in. */
export const isInSmallUnit = (q: Quantity): boolean => SMALL_UNITS.has(unitShown(q).id);

const SIXTEENTHS = 16;

/** Less than this many inches is told in decimals where no fraction of a tape says the same. */
const FINE = 1;

/** Less than this many inches, not even the fine end of a tape tells apart. */
const FINEST = '0.125';

/** Less than an inch, in thirty-seconds, as the first foot of a tape has them. */
const fine = (q: Quantity<'length'>): string | undefined =>
  numberShown(q).abs().lessThan(FINEST) ? undefined : q.format('ft-in', { denominator: 32 });

/** Inches in sixteenths, where they lie on one or a tape is all that they are measured with. */
function inFractions(q: Quantity<'length'>): string | undefined {
  const unit = unitShown(q).id;
  if (unit === 'ft') return q.format('ft-in');
  if (unit !== 'in') return undefined;
  const inches = numberShown(q);
  if (inches.isInteger()) return undefined;
  const onTape = inches.times(SIXTEENTHS).isInteger();
  if (!onTape && inches.abs().lessThan(FINE)) return fine(q);
  const sixteenths = Math.round(inches.abs().times(SIXTEENTHS).toNumber());
  const [whole, rest] = [Math.floor(sixteenths / SIXTEENTHS), sixteenths % SIXTEENTHS];
  const sign = q.sign() < 0 ? '-' : '';
  if (rest === 0) return `${sign}${whole} in`;
  const fraction = length(`${rest}/16 in`).format('ft-in');
  return `${sign}${whole > 0 ? `${whole}-` : ''}${fraction}`;
}

/** Inches that lie on a sixteenth exactly, as fractions, where the view has them: for what must come out when worked. */
export function exactFraction(q: Quantity, { feet }: View): string | undefined {
  if (feet !== 'fractions' || unitShown(q).id !== 'in') return undefined;
  return numberShown(q).times(SIXTEENTHS).isInteger() ? inFractions(q as Quantity<'length'>) : undefined;
}

/** A length as the view has feet. */
function lengthText(q: Quantity<'length'>, { feet }: View): string | undefined {
  if (feet === 'fractions') return inFractions(q);
  if (feet === 'tenths' && unitShown(q).form === 'feet-inches') return q.format('ft');
  return undefined;
}

/** More decimals than inches are written with, as of a third of a bore: nobody finds those on a tape. */
const MOST_DECIMALS = 4;

function endlessInches(given: Quantity, view: View): string | undefined {
  if (given.dimension !== 'length' || view.feet !== undefined) return undefined;
  const q = viewed(given, view);
  const endless = unitShown(q).id === 'in' && numberShown(q).decimalPlaces() > MOST_DECIMALS;
  return endless ? inFractions(q as Quantity<'length'>) : undefined;
}

/** A quantity as it is read on a site: counts and factors bare, small amounts in small units, times as they are told. */
export const shownText = (q: Quantity, view: View): string =>
  (q.dimension === 'time' ? durationText(q, view) : endlessInches(q, view)) ?? numberText(q, view);

/** The same with a time as one number, for what is worked out with it. */
export function numberText(given: Quantity, view: SideBySide): string {
  const own = viewed(given, view);
  const q = view.volumes ? own : largeEnough(own);
  const text =
    (q.dimension === 'length' ? lengthText(q as Quantity<'length'>, view) : undefined) ?? q.format();
  if (q.dimension === 'count') return text.replace(/ each$/, '');
  return unitShown(q).form === 'to-one' ? text.replace(/:1$/, '') : text;
}

/** Text of a quantity with the marks of the locale. */
export const localized = (text: string, { locale }: View): string =>
  locale === undefined
    ? text
    : partsOfText(text, locale)
        .map(({ value }) => value)
        .join('');
