/** Quantities in the units and the marks of numbers of who reads. */
import type { Dimension } from '../quantity/dimensions';
import { partsOfText } from '../quantity/parts';
import { type Quantity, unitShown } from '../quantity/quantity';
import { type System, type UnitId, unitOf, usualUnit } from '../quantity/units';

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
}

/** Smaller than this they are given in the small unit of the family, as on drawings. */
const SMALL_METRIC = 1;

/** Units of one family that are told as one of the other: those that a dimension's usual unit does not fit. */
const LIKE: Readonly<Record<string, readonly [customary: string, metric: string]>> = {
  in: ['in', 'mm'],
  mm: ['in', 'mm'],
  cm: ['in', 'cm'],
  in2: ['in2', 'mm2'],
  mm2: ['in2', 'mm2'],
  cm2: ['in2', 'cm2'],
  gal: ['gal', 'L'],
  L: ['gal', 'L'],
  ton: ['ton', 'tonne'],
  tonne: ['ton', 'tonne'],
  'lb/yd3': ['lb/yd3', 'kg/m3'],
  kip: ['kip', 'kN'],
  kN: ['kip', 'kN'],
  psf: ['psf', 'kPa'],
  ksf: ['ksf', 'kPa'],
  kPa: ['psf', 'kPa'],
  'in/h': ['in/h', 'mm/h'],
  'mm/h': ['in/h', 'mm/h'],
  'gal/min': ['gal/min', 'L/s'],
  'L/s': ['gal/min', 'L/s'],
  'ft3/s': ['ft3/s', 'L/s'],
};

/** The unit of a family that says the same in the trade. */
function likeUnit(q: Quantity, system: System): UnitId {
  const unit = unitShown(q);
  if (unit.form === 'money' || unit.system === undefined || unit.system === system) return unit.id;
  const like = LIKE[unit.id]?.[system === 'customary' ? 0 : 1];
  if (like && unitOf(q.dimension, like)) return like;
  if (
    q.dimension === 'length' &&
    system === 'metric' &&
    Math.abs((q as Quantity<'length'>).toNumber('m')) < SMALL_METRIC
  )
    return 'mm';
  return usualUnit(q.dimension as Exclude<Dimension, 'money'>, system).id;
}

/** A quantity in the units of the view. */
export const viewed = (q: Quantity, { system }: View): Quantity => (system ? q.in(likeUnit(q, system)) : q);

/** Text of a quantity with the marks of the locale. */
export const localized = (text: string, { locale }: View): string =>
  locale === undefined
    ? text
    : partsOfText(text, locale)
        .map(({ value }) => value)
        .join('');
