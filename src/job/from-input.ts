/** Where in the take-off of a job a line of its prices has its quantity from, as it is written. */
import { choice, type Field, fields, label, list, maybe } from '../reckoning/fields';
import type { Read } from '../reckoning/read';
import type { TakeItem } from '../reckoning/takes';
import { all, needs, oneOf } from '../reckoning/together';
import { ITEMS } from './item-names';
import { sizes } from './item-price';
import { ELEMENT_PARTS, type ElementPart } from './part-inputs';

/**
 * Where in the take-off a quantity comes from: what is bought of an item, or a figure of a part, of all elements or of
 * some.
 */
export interface TakeoffQuantityInput {
  /** An item of the purchase list, or `concrete` for what is in place. */
  readonly item?: TakeItem;
  /** Of which size or make; by default of every one. */
  readonly of?: Readonly<Record<string, string>>;
  /** A part of the elements: `slab`, `forms`. */
  readonly part?: ElementPart;
  /** A figure of that part: `area`, `weight`; one within another as `layered.area`. */
  readonly figure?: string;
  /** The elements that it is of; by default all. */
  readonly elements?: readonly string[];
}

/** Where a quantity comes from, read. */
export type TakeoffQuantity = Read<TakeoffQuantityInput>;

const PARTS = /*#__PURE__*/ Object.keys(ELEMENT_PARTS) as readonly ElementPart[];

const MOST_NAMED = 200;

/** The field of where a quantity comes from. */
export const takeoffQuantity = (): Field<TakeoffQuantity> =>
  fields(
    {
      item: maybe(choice<TakeItem>('item', ITEMS)),
      of: maybe(sizes()),
      part: maybe(choice<ElementPart>('part', PARTS)),
      figure: maybe(label('figure')),
      elements: maybe(list(label('elements'), 1, MOST_NAMED)),
    },
    all(oneOf(['item'], ['part']), needs('part', 'figure'), needs('figure', 'part'), needs('of', 'item')),
  ) as Field<TakeoffQuantity>;
