/** A cut list and what can be bought: as it is written, and as it is read. */
import * as sharedFaults from '../quantity/faults';
import { readMoney } from '../quantity/money';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { isFaulty } from '../quantity/read-quantity';
import { type Field, quantitySchema, reading } from '../reckoning/fields';

type Length = Quantity<'length'>;

/** Pieces of one length. */
export interface PieceInput {
  /** Length of each piece as cut. */
  readonly length: QuantityInput<'length'>;
  /** How many. */
  readonly count: number;
}

/** A length that bars are sold in. */
export interface StockInput {
  /** Length of a bar as bought. */
  readonly length: QuantityInput<'length'>;
  /** Price of one bar; for all stock lengths or for none. */
  readonly price?: QuantityInput<'money'>;
}

/** What a cutting plan is to keep low. */
export type CuttingAim = 'fewest-bars' | 'least-length' | 'least-cost';

/** Input of {@link barCutting}. */
export interface BarCuttingInput {
  /** The cut list. */
  readonly pieces: readonly PieceInput[];
  /** The lengths that can be bought. */
  readonly stock: readonly StockInput[];
  /** Lost in each cut; by default nothing, as with a shear. */
  readonly kerf?: QuantityInput<'length'>;
  /** Drops at least this long are kept; by default all are scrap. */
  readonly keepFrom?: QuantityInput<'length'>;
  /** By default the cost where prices are given, else the bars, or the length with several stocks. */
  readonly aim?: CuttingAim;
}

export interface CuttingParsed {
  readonly pieces: readonly { readonly length: Length; readonly count: Quantity<'count'> }[];
  readonly stock: readonly { readonly length: Length; readonly price: Quantity<'money'> | undefined }[];
  readonly kerf: Length | undefined;
  readonly keepFrom: Length | undefined;
  readonly aim: CuttingAim | undefined;
}

/** What is cut from what, read. */
export type CutList = Pick<CuttingParsed, 'pieces' | 'stock'> & Partial<Pick<CuttingParsed, 'keepFrom'>>;

export const price = (): Field<Quantity<'money'>> =>
  reading(
    (input) => {
      const found = readMoney(input, 'price');
      return isFaulty(found) || found.sign() > 0 ? found : sharedFaults.notPositive('price');
    },
    (defs) => quantitySchema(defs, 'money'),
  );
