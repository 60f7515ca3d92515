/** What can be wrong with a bid, in words. */
import { fault, named, quoted } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../reckoning/words';

export const ambiguousMeasure = (what: string): Fault =>
  fault('ambiguous', say`${{ what }} may be a length or a volume; write ft, or yd3 for cubic yards`);

export const notMeasured = (what: string): Fault =>
  fault('wrong-dimension', say`${{ what }} must be a count, length, area, volume, mass or time`);

export const dayAndHours = (): Fault =>
  fault(
    'ambiguous',
    'a day beside hours may be a shift of 8 h or the 24 h of the clock; write all times of a line in hours, or all in days',
  );

export const notUsed = (what: string, without: string): Fault =>
  fault('give-one-of', say`${{ what }} is of no use without ${{ without }}; give both or neither`);

export const notBetween = (what: string): Fault =>
  fault('out-of-order', say`${{ what }}: low must not be above the likely amount, nor that above high`);

export const noLine = (name: string, lines: readonly { readonly name: string }[]): Fault =>
  fault(
    'unknown-name',
    say`no line of the bid is named ${{ name: quoted(name) }}; its lines: ${{ names: named(lines.map((line) => line.name)) }}`,
  );

export const twoLines = (name: string): Fault =>
  fault(
    'repeated-name',
    say`several lines of the bid are named ${{ name: quoted(name) }}; give each a name of its own`,
  );

export const wholeMargin = (): Fault =>
  fault(
    'outside-range',
    'a margin is a part of the price and must be less than 100%; a share of the cost is a markup',
  );

export const pastWhole = (): Fault => fault('outside-range', 'complete must not be more than 100%');

export const noOption = (name: string): Fault =>
  fault(
    'unknown-name',
    say`no line has the option ${{ name: quoted(name) }}, and it replaces none; write its name as the lines have it`,
  );

export const twoOptions = (name: string): Fault =>
  fault('repeated-name', say`${{ name: quoted(name) }} is listed twice; put into one what belongs to it`);

export const nothingPriced = (): Fault =>
  fault('not-served', 'nothing has a price or an amount, and so there is no total; price one line at least');

export const pastContract = (): Fault =>
  fault('outside-range', 'the payments together must not be more than the price');

export const twoPrices = (name: string): Fault =>
  fault(
    'repeated-name',
    say`two prices fit ${{ name: quoted(name) }} alike; leave one out, or say of which size each is`,
  );

export const noPrices = (): Fault =>
  fault('missing', 'this job carries no prices; give prices, with items and lines');
