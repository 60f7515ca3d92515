/**
 * Low, likely and high: the mean and spread of lines by three points, and of their sum.
 *
 * By the beta rule of network planning (PERT) the mean is `(a + 4 m + b) ÷ 6` and the spread `(b − a) ÷ 6`; of a
 * triangular distribution they are `(a + m + b) ÷ 3` and `√((a² + m² + b² − a m − a b − m b) ÷ 18)`. Means add; the
 * spreads of lines that do not depend on each other add as squares.
 */
import { Decimal } from '../quantity/decimal';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import { notBetween } from './bid-faults';
import { type Money, type Ratio, sumOf, toCents } from './bid-money';
import { type Costed, weightOf } from './bid-price';
import type { Terms } from './bid-terms';

/** How the three points of a line are spread. */
export type Distribution = 'pert' | 'triangular';

/** What a bid may come to. */
export interface BidRange {
  /** How the points of a line were spread. */
  readonly distribution: Distribution;
  /** Everything at its least. */
  readonly low: Quantity<'money'>;
  /** As it is bid. */
  readonly likely: Quantity<'money'>;
  /** Everything at its most. */
  readonly high: Quantity<'money'>;
  /** The mean of what it comes to. */
  readonly mean: Quantity<'money'>;
  /** How far that spreads: one standard deviation, the lines independent of each other. */
  readonly spread: Quantity<'money'>;
  /** The mean less one spread. */
  readonly probableLow: Quantity<'money'>;
  /** The mean and one spread; two jobs of three end between both. */
  readonly probableHigh: Quantity<'money'>;
}

/** The range of one line. */
export interface LineRange {
  /** Its least. */
  readonly low: Quantity<'money'>;
  /** Its most. */
  readonly high: Quantity<'money'>;
  /** Its mean. */
  readonly mean: Quantity<'money'>;
  /** One standard deviation of it. */
  readonly spread: Quantity<'money'>;
}

const made = (value: Decimal, like: Money): Money => newQuantity('money', value, unitShown(like));

type Points = readonly [a: Money, m: Money, b: Money];

function byPert([a, m, b]: Points, name: string, pad: Pad): readonly [Money, Money] {
  const [A, M, B] = [a, m, b].map(canonicalValue) as [Decimal, Decimal, Decimal];
  const mean = made(A.plus(M.times(4)).plus(B).div(6), a);
  const spread = made(B.minus(A).div(6), a);
  return [
    pad.step(say`${{ name }}, mean of low, likely and high`, 'x = (a + 4 × m + b) ÷ 6', { a, m, b }, mean),
    pad.step(say`${{ name }}, spread`, 's = (b − a) ÷ 6', { a, b }, spread),
  ];
}

function byTriangle([a, m, b]: Points, name: string, pad: Pad): readonly [Money, Money] {
  const [A, M, B] = [a, m, b].map(canonicalValue) as [Decimal, Decimal, Decimal];
  const mean = made(A.plus(M).plus(B).div(3), a);
  // The same as its usual form, without the difference of large squares.
  const [p, q] = [M.minus(A), B.minus(M)];
  const spread = made(p.times(p).plus(p.times(q)).plus(q.times(q)).div(18).sqrt(), a);
  return [
    pad.step(say`${{ name }}, mean of low, likely and high`, 'x = (a + m + b) ÷ 3', { a, m, b }, mean),
    pad.step(
      say`${{ name }}, spread`,
      's = √(((m − a) × (b − a) + (b − m) × (b − m)) ÷ 18)',
      { a, m, b },
      spread,
    ),
  ];
}

/** The range of a line that has one. */
export function rangeOf(
  line: { readonly name: string; readonly low: Money | undefined; readonly high: Money | undefined },
  likely: Money,
  distribution: Distribution,
  path: string,
  pad: Pad,
): LineRange | undefined {
  if (!line.low && !line.high) return undefined;
  const [low, high] = [toCents(line.low ?? likely), toCents(line.high ?? likely)];
  if (low.greaterThan(likely) || high.lessThan(likely)) return refuse(path, notBetween(line.name));
  const spreadBy = distribution === 'pert' ? byPert : byTriangle;
  const [mean, spread] = spreadBy([low, likely, high], line.name, pad);
  return { low, high, mean, spread };
}

/** A line with its range, where it has one. */
export interface Ranged {
  readonly line: Costed;
  readonly range: LineRange | undefined;
}

const isRanged = (one: Ranged): one is Ranged & { readonly range: LineRange } => one.range !== undefined;

interface Weighed {
  readonly weight: Ratio;
  readonly shift: Money;
  readonly spread: Money;
}

/** What a line moves and spreads of the total. */
function weighed({ line, range }: Ranged & { readonly range: LineRange }, terms: Terms): Weighed {
  const weight = weightOf(line, terms);
  return { weight, shift: range.mean.minus(line.amount).times(weight), spread: range.spread.times(weight) };
}

const rootOfSquares = (spreads: readonly Money[], like: Money): Money =>
  made(
    spreads
      .map(canonicalValue)
      .reduce((sum, s) => sum.plus(s.times(s)), new Decimal(0))
      .sqrt(),
    like,
  );

/** The range of the total: of the three totals, and by the means and spreads of the lines. */
export function bidRange(
  all: readonly Ranged[],
  terms: Terms,
  [low, likely, high]: Points,
  distribution: Distribution,
  pad: Pad,
): BidRange | undefined {
  const ranged = all.filter(isRanged);
  if (ranged.length === 0) return undefined;
  const parts = ranged.map((one) => weighed(one, terms));
  const x = sumOf(
    parts.map(({ shift }) => shift),
    likely,
  );
  const s = rootOfSquares(
    parts.map(({ spread }) => spread),
    likely,
  );
  note(ranged, parts, { likely, x, s }, pad);
  return {
    distribution,
    low,
    likely,
    high,
    mean: toCents(x),
    spread: toCents(s),
    probableLow: toCents(x.minus(s)),
    probableHigh: toCents(x.plus(s)),
  };
}

const numbered = <T>(symbol: string, values: readonly T[]): Record<string, T> =>
  Object.fromEntries(values.map((value, i) => [`${symbol}${i + 1}`, value]));

function note(
  ranged: readonly (Ranged & { readonly range: LineRange })[],
  parts: readonly Weighed[],
  { likely, x, s }: { readonly likely: Money; readonly x: Money; readonly s: Money },
  pad: Pad,
): void {
  ranged.forEach(({ line, range }, i) => {
    const { weight: w } = parts[i] as Weighed;
    const { spread: own } = range;
    pad.step(say`${{ name: line.name }}, its spread of the total`, 'z = s × w', { s: own, w }, own.times(w));
  });
  const shifts = numbered(
    'd',
    parts.map(({ shift }) => shift),
  );
  pad.step('mean of the total', `X = F + ${Object.keys(shifts).join(' + ')}`, { F: likely, ...shifts }, x);
  const spreads = numbered(
    'z',
    parts.map(({ spread }) => spread),
  );
  const squares = Object.keys(spreads).map((z) => `${z} × ${z}`);
  pad.step('spread of the total', `Z = √(${squares.join(' + ')})`, spreads, s);
}
