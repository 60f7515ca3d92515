/** The base bid: its lines with their tax, and what they are priced at. */
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import * as cautions from './bid-cautions';
import { extend } from './bid-extend';
import type { Bid } from './bid-input';
import type { Line } from './bid-lines';
import { type Money, toCents } from './bid-money';
import { type Costed, isOnce, type Priced, taxRateOf } from './bid-price';

/** What options, alternates, ranges and payments start from. */
export interface Base {
  readonly input: Bid;
  /** The lines of the base bid. */
  readonly lines: readonly Costed[];
  /** Those of options. */
  readonly optional: readonly Costed[];
  readonly price: Priced;
  readonly nothing: Money;
  readonly pad: Pad;
}

/** Extend a line and put its tax beside it. */
function costed(line: Line, path: string, input: Bid, nothing: Money, pad: Pad): Costed {
  const found = extend(line, path, nothing, pad);
  const taxRate = taxRateOf(line, found.kind, input);
  if (line.taxable && !taxRate && !input.tax) pad.caution(cautions.taxWithoutRate(line.name));
  if (!taxRate || isOnce(input)) return { ...found, option: line.option, taxRate, tax: undefined };
  const { amount: A } = found;
  const tax = pad.step(
    say`tax on ${{ name: line.name }}, rounded half-up`,
    'V = A × r',
    { A, r: taxRate },
    toCents(A.times(taxRate)),
  );
  return { ...found, option: line.option, taxRate, tax };
}

/** All lines, those of options too. */
export const costedAll = (input: Bid, nothing: Money, pad: Pad): Costed[] =>
  input.lines.map((line, i) => costed(line, `lines[${i}]`, input, nothing, pad));
