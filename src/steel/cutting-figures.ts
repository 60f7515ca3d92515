/** What a cutting plan tells: what to buy, and what to cut from each bar. */
import type { Quantity } from '../quantity/quantity';
import type { CuttingAim } from './cutting-input';

/** Bars of one length to buy. */
export interface StockOrder {
  /** Length of a bar as bought. */
  readonly length: Quantity<'length'>;
  /** How many to buy. */
  readonly bars: Quantity<'count'>;
  /** What they cost, where prices are given. */
  readonly cost?: Quantity<'money'>;
}

/** Pieces of one length cut from a bar, or drops of one length. */
export interface Cut {
  /** Length of each piece or drop. */
  readonly length: Quantity<'length'>;
  /** How many: out of one bar in a plan, in all where drops are kept. */
  readonly count: Quantity<'count'>;
}

/** Bars that are cut alike. */
export interface CutBars {
  /** Length of the bars as bought. */
  readonly stock: Quantity<'length'>;
  /** How many bars are cut this way. */
  readonly bars: Quantity<'count'>;
  /** What is cut from each of them, longest first. */
  readonly cuts: readonly Cut[];
  /** What is left of each, after the kerfs. */
  readonly drop: Quantity<'length'>;
}

/** The value of a length in the proof, as part of what the plan keeps low. */
export interface LengthValue {
  /** Length of the piece. */
  readonly length: Quantity<'length'>;
  /** In bars, in meters, or in units of money. */
  readonly value: Quantity<'ratio'>;
}

/** Figures of {@link barCutting}. */
export interface BarCuttingFigures {
  /** Bars to buy. */
  readonly bars: Quantity<'count'>;
  /** The same by stock length. */
  readonly order: readonly StockOrder[];
  /** What they cost, where prices are given. */
  readonly cost?: Quantity<'money'>;
  /** The bars to buy end to end. */
  readonly lengthBought: Quantity<'length'>;
  /** The pieces end to end. */
  readonly lengthUsed: Quantity<'length'>;
  /** Drops that are kept, end to end; nothing where `keepFrom` is left out. */
  readonly lengthKept: Quantity<'length'>;
  /** Kerfs and drops that are not kept. */
  readonly lengthLost: Quantity<'length'>;
  /** Lost over bought. */
  readonly waste: Quantity<'ratio'>;
  /** Drops that are kept, longest first. */
  readonly kept: readonly Cut[];
  /** How to cut, bar by bar. */
  readonly plan: readonly CutBars[];
  /** What the plan keeps low, given or by default. */
  readonly aim: CuttingAim;
  /** What the plan comes to in what it keeps low. */
  readonly reached: Quantity;
  /** No plan whatever comes to less than this. */
  readonly lowerBound: Quantity;
  /** `reached` less `lowerBound`: nothing when the plan is proved the best. */
  readonly gap: Quantity;
  /** True when no better plan exists. */
  readonly proved: boolean;
  /** What longest-first fitting alone would come to. */
  readonly firstFit: Quantity;
  /** The proof, a value of each length: no bar holds more value than it costs, and all pieces come to the bound. */
  readonly lengthValues: readonly LengthValue[];
}
