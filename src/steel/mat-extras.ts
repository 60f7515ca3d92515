/** Bars around a mat: dowels along a side, and bars in steps cast with the slab. */
import { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { constant } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import type { Alike } from './bar-list';
import { diameterOf } from './bars';
import { metersLike } from './common';
import * as faults from './faults';
import type { Ground } from './mat-ground';
import type { ParsedRegion, ParsedSteps } from './rebar-fields';
import type { BarMark, MarkUse } from './rebar-types';

type Length = Quantity<'length'>;

/** Bars side by side along one side. */
export const SIDE_LIMIT: Limit = { of: 'the side in bars', most: 100_000 };
const ONE = constant(() => wholeNumber(1));
const TWO = constant(() => wholeNumber(2));

/** Bars at most a spacing apart over a run less its ends. */
export function countAlong(run: Length, spacing: Length, end: Length, path: string): number {
  const room = run.minus(end.times(TWO()));
  if (room.sign() < 0) return refuse(path, sharedFaults.doesNotFit('twice the end distance', 'the side'));
  withinTimes(SIDE_LIMIT, room.over(spacing), path);
  return Math.round(room.upTo(spacing).over(spacing).toNumber(':1')) + 1;
}

/** A bar that has no lap must come out of one stock length. */
export function checkStock(piece: Length, stock: Length, path: string): void {
  if (!piece.greaterThan(stock)) return;
  refuse(
    path,
    faults.stockTooShort(`a bar of ${piece.format()} that has no lap`, 'give a longer stockLength'),
  );
}

/** Bars into what the slab is cast against. */
export function dowelGroups(input: ParsedRegion, { rings, stock, cover }: Ground): Alike[] {
  return (input.dowels ?? []).map((dowel, i): Alike => {
    const path = `dowels[${i}]`;
    const n = dowel.side.toNumber('each');
    const [a, b] = [rings.outer[n - 1], rings.outer[n % rings.outer.length]];
    if (!a || !b) return refuse(`${path}.side`, sharedFaults.notACount('side', 1, rings.outer.length));
    const run = metersLike(Decimal.hypot(b.x.minus(a.x), b.y.minus(a.y)), cover);
    if (!diameterOf(dowel.bar).lessThan(dowel.spacing)) {
      refuse(`${path}.spacing`, sharedFaults.doesNotFit('the bar', 'its spacing'));
    }
    const end = dowel.endDistance ?? dowel.spacing.over(TWO());
    const count = countAlong(run, dowel.spacing, end, `${path}.spacing`);
    checkStock(dowel.length, stock, `${path}.length`);
    return { layer: undefined, use: 'dowel', bar: dowel.bar, shape: 'straight', length: dowel.length, count };
  });
}

/** Bars in steps that are cast with the slab. */
export function stepGroups(
  steps: ParsedSteps | undefined,
  { cover, stock, laps }: Ground,
  pad: Pad,
): Alike[] {
  if (!steps) return [];
  const { bar, width, risers } = steps;
  const long = width.minus(cover.times(TWO()));
  if (long.sign() <= 0)
    return refuse('steps.width', sharedFaults.doesNotFit('twice the cover', 'the width of the steps'));
  checkStock(long, stock, 'steps.width');
  const n = risers.toNumber('each');
  const alike = (use: MarkUse, shape: BarMark['shape'], l: Length, count: number): Alike[] =>
    count > 0 ? [{ layer: undefined, use, bar, shape, length: l, count }] : [];
  const treads = steps.treadBars ?? ONE();
  if (!steps.treadBars) {
    pad.assume({
      name: 'steps.treadBars',
      value: treads,
      because: 'one bar along each tread besides the one at its nosing',
      override: 'Give steps.treadBars from the plans',
      source: COMMON_PRACTICE,
    });
  }
  const leg = steps.starterLeg ?? (laps.get(bar) as Length);
  const spacing = steps.starterSpacing;
  const starters = spacing ? countAlong(width, spacing, cover, 'steps.starterSpacing') : 0;
  checkStock(leg.times(TWO()), stock, 'steps.starterLeg');
  return [
    ...alike('nosing', 'straight', long, n),
    ...alike('tread', 'straight', long, n * treads.toNumber('each')),
    ...alike('starter', 'one-bend', leg.times(TWO()), starters),
  ];
}
