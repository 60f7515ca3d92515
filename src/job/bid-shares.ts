/**
 * The price of a bid shared out for a customer: by its lines, by the elements of the job, or by groups of lines.
 *
 * A share of the price is the share of the cost: `p = S × c ÷ C`, to the cent, so that the shares sum to the price and
 * tell nothing of the cost. A line belongs to the elements that it says, or to the one that its name has. What belongs
 * to no element or group is spread over all of them.
 */
import { Decimal, ZERO } from '../quantity/decimal';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { apportioned } from './apportion';
import { noLine } from './bid-faults';
import type { JobBidFigures, LineFigures } from './job-bid';
import type { ReckonedJob } from './job-takeoff';

type Money = Quantity<'money'>;

/** Lines of the bid that a customer sees as one. */
export interface PriceGroup {
  /** What they are together. */
  readonly name: string;
  /** Names of lines of the base bid. */
  readonly lines: readonly string[];
}

/** How a price is shown: as a total, by lines, by elements of the job, or by groups of lines. */
export type PriceShown = 'total' | 'lines' | 'elements' | readonly PriceGroup[];

/** A part of the price. */
export interface PriceShare {
  /** What it is for. */
  readonly name: string;
  /** Its part of the price, before tax on it. */
  readonly price: Money;
}

/** What each of several names weighs in a line. */
type Weights = ReadonlyMap<string, Decimal>;

const baseLines = ({ lines }: JobBidFigures): LineFigures[] =>
  lines.filter(({ option }) => option === undefined);

/** The elements that a line says it is for, with what each takes of it. */
const ofLine = ({ elements = [] }: LineFigures): Weights => {
  const weights = new Map<string, Decimal>();
  for (const { element, quantity } of elements) {
    const own = quantity ? canonicalValue(quantity) : new Decimal(1);
    weights.set(element, (weights.get(element) ?? ZERO).plus(own));
  }
  return weights;
};

/** A line that names one element alone belongs to it. */
function ofName({ name }: LineFigures, elements: readonly string[]): Weights {
  const within = elements.filter((element) => name.toLowerCase().includes(element.toLowerCase()));
  // Of "pad" and "bin pad" the longer is meant.
  const [longest, other] = within.sort((a, b) => b.length - a.length);
  const isOne =
    longest !== undefined && (other === undefined || longest.toLowerCase().includes(other.toLowerCase()));
  return new Map(isOne ? [[longest, new Decimal(1)]] : []);
}

function byElement(line: LineFigures, job: ReckonedJob | undefined): Weights {
  const said = ofLine(line);
  const names = job?.takeoff.figures.elements.map(({ name }) => name) ?? [];
  return said.size > 0 ? said : ofName(line, names);
}

function byGroup({ name }: LineFigures, groups: readonly PriceGroup[]): Weights {
  const found = groups.find(({ lines }) => lines.includes(name));
  return new Map(found ? [[found.name, new Decimal(1)]] : []);
}

/** What each name comes to of the cost, what belongs to none of them left out. */
function costs(
  lines: readonly LineFigures[],
  weightsOf: (line: LineFigures) => Weights,
): ReadonlyMap<string, Decimal> {
  const sums = new Map<string, Decimal>();
  for (const line of lines) {
    const weights = weightsOf(line);
    const all = [...weights.values()].reduce((sum, w) => sum.plus(w), ZERO);
    if (!all.greaterThan(0)) continue;
    const amount = canonicalValue(line.amount);
    for (const [name, w] of weights) sums.set(name, (sums.get(name) ?? ZERO).plus(amount.times(w).div(all)));
  }
  return sums;
}

/** Names of lines that the bid does not have are refused. */
function checkGroups(groups: readonly PriceGroup[], lines: readonly LineFigures[]): void {
  groups.forEach((group, i) => {
    group.lines.forEach((name, j) => {
      if (!lines.some((line) => line.name === name)) refuse(`prices[${i}].lines[${j}]`, noLine(name, lines));
    });
  });
}

function named(
  bid: JobBidFigures,
  shown: PriceShown,
  job: ReckonedJob | undefined,
): ReadonlyMap<string, Decimal> {
  const lines = baseLines(bid);
  if (shown === 'total') return new Map();
  if (shown === 'lines') return costs(lines, ({ name }) => new Map([[name, new Decimal(1)]]));
  if (shown === 'elements') return costs(lines, (line) => byElement(line, job));
  checkGroups(shown, lines);
  return costs(lines, (line) => byGroup(line, shown));
}

/**
 * The price in parts that sum to it, each with its name; none where it is shown as a total, or where the cost comes to
 * nothing that could be shared.
 *
 * @throws {InputError} `unknown-name` for a line that the bid does not have
 */
export function priceShares(bid: JobBidFigures, shown: PriceShown, job?: ReckonedJob): PriceShare[] {
  const byName = named(bid, shown, job);
  const shares = apportioned(bid.price, [...byName.values()]) ?? [];
  const names = [...byName.keys()];
  return shares.map((price, i) => ({ name: names[i] as string, price }));
}
