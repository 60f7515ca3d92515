/** What a bid is made of, as it is written, and how many options it may have. */
import type { QuantityInput } from '../quantity/quantity';
import { choice, type Field, fields, label, list, maybe, quantity } from '../reckoning/fields';
import type { Limit } from '../reckoning/limits';
import type { Read } from '../reckoning/read';
import { type BidLineInput, line } from './bid-lines';
import { type AccountInput, accountFields } from './bid-progress';
import type { Distribution } from './bid-range';
import { type TermsInput, termsFields } from './bid-terms';

/** What the customer may have besides or instead: its lines say so by their `option`. */
export interface OptionInput {
  /** What it is called in the bid. */
  readonly name: string;
  /** Names of the lines of the base bid that fall away with it: so it is an alternate. */
  readonly replaces?: readonly string[];
}

/** Input of the bid of a job. */
export interface JobBidInput extends TermsInput, AccountInput {
  /** The lines of the base bid, and those of options. */
  readonly lines: readonly BidLineInput[];
  /** Options that take something away; others need no more than the `option` of their lines. */
  readonly options?: readonly OptionInput[];
  /** How low, likely and high of a line are spread; by default as network planning has it. */
  readonly distribution?: Distribution;
  /** The area of the work, for the price of each unit of it. */
  readonly area?: QuantityInput<'area'>;
  /** How long the suppliers hold their prices. */
  readonly pricesHeld?: QuantityInput<'time'>;
  /** When the work starts, from the day of the bid. */
  readonly startsIn?: QuantityInput<'time'>;
}

/** A bid that has been read. */
export type Bid = Read<JobBidInput>;

/** Lines of a bid at most. */
export const MOST_LINES = 300;

export const OPTIONS: Limit = { of: 'options', most: 40 };

const option = () => fields({ name: label('name'), replaces: maybe(list(label('replaces'), 1, MOST_LINES)) });

/** All of a bid but its lines. */
export const besideLines = () => ({
  options: maybe(list(option(), 1, OPTIONS.most)),
  ...termsFields(),
  ...accountFields(),
  distribution: maybe(choice<Distribution>('distribution', ['pert', 'triangular'])),
  area: maybe(quantity('area', 'area')),
  pricesHeld: maybe(quantity('time', 'pricesHeld')),
  startsIn: maybe(quantity('time', 'startsIn', 'not-negative')),
});

/** The fields of a bid. */
export const door = (): Field<Bid> => fields({ lines: list(line(), 1, MOST_LINES), ...besideLines() });
