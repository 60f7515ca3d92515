/** What laps by the standards of Europe, Canada and Australia are told by. */

import type { QuantityInput } from '../quantity/quantity';
import type { BarName } from './bars';

/** What laps by each of these standards are told by. */
export interface StandardLapParts {
  /** The bars that are lapped, both of one size. */
  readonly bar: BarName;
  /** Strength of the concrete, by its cylinder: `25 MPa`, or the class `C25/30`. */
  readonly strength: QuantityInput<'pressure'>;
  /** Center to center of the bars. */
  readonly spacing?: QuantityInput<'length'>;
}

/** A lap by EN 1992-1-1, Eurocode 2. */
export interface EurocodeLapInput extends StandardLapParts {
  /** Eurocode 2. */
  readonly kind: 'eurocode-2';
  /** Cover to the face of the bar; without it, or without spacing, nothing is taken off for them. */
  readonly cover?: QuantityInput<'length'>;
  /** Stress in the bar under the design load; by default all that steel of 500 MPa may carry. */
  readonly stress?: QuantityInput<'pressure'>;
  /** Poor where more than 250 mm of concrete lies below the bar and it is near the top; by default good. */
  readonly bond?: 'good' | 'poor';
  /** What share of the bars is lapped in one place, at most; by default more than half. */
  readonly lapped?: 'quarter' | 'third' | 'half' | 'more';
}

/** A lap by CSA A23.3, as in Canada. */
export interface CsaLapInput extends StandardLapParts {
  /** CSA A23.3. */
  readonly kind: 'csa-a23-3';
  /** Yield strength of the bar; by default 400 MPa. */
  readonly yieldStrength?: QuantityInput<'pressure'>;
  /** More than 300 mm of concrete is placed below the bar; by default not. */
  readonly topBar?: boolean;
  /** The bar is epoxy coated; by default not. */
  readonly epoxy?: boolean;
  /** Lightweight concrete; by default not. */
  readonly lightweight?: boolean;
  /** Class of the lap; by default B. */
  readonly lapClass?: 'A' | 'B';
}

/** A lap by AS 3600, as in Australia. */
export interface AustralianLapInput extends StandardLapParts {
  /** AS 3600. */
  readonly kind: 'as-3600';
  /** Cover to the face of the bar; without it, or without spacing, nothing is taken off for them. */
  readonly cover?: QuantityInput<'length'>;
  /** Yield strength of the bar; by default 500 MPa. */
  readonly yieldStrength?: QuantityInput<'pressure'>;
  /** More than 300 mm of concrete is placed below the bar; by default not. */
  readonly topBar?: boolean;
}
