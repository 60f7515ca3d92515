/** Quantities in the units and the marks of numbers of who reads. */
import { inSystem } from '../quantity/like-unit';
import { partsOfText } from '../quantity/parts';
import type { Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';

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

/** A quantity in the units of the view. */
export const viewed = (q: Quantity, { system }: View): Quantity => (system ? inSystem(q, system) : q);

/** Text of a quantity with the marks of the locale. */
export const localized = (text: string, { locale }: View): string =>
  locale === undefined
    ? text
    : partsOfText(text, locale)
        .map(({ value }) => value)
        .join('');
