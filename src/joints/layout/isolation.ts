/** Isolation joints along the sides of a slab. */

import type { Corner } from '../../geometry/polygon';
import type { Outline, Point } from '../../outline/outline';
import { ringOf } from '../../outline/ring';
import { Decimal, ZERO } from '../../quantity/decimal';
import { canonicalValue } from '../../quantity/quantity';
import { refuse } from '../../reckoning/calculation';
import * as faults from '../faults';
import { onSide } from './site';

/** A part of a side that is kept apart from something. */
export interface IsolationLine {
  readonly against: string;
  readonly from: Point;
  readonly to: Point;
}

interface Stretch {
  readonly side: number;
  /** How far along the side, in meters. */
  readonly from: Decimal;
  readonly to: Decimal;
}

const cornerOf = ({ x, y }: Point): Corner => ({ x: canonicalValue(x), y: canonicalValue(y) });

const distance = (a: Corner, b: Corner): Decimal => Decimal.hypot(b.x.minus(a.x), b.y.minus(a.y));

function stretchOf(line: IsolationLine, ring: readonly Corner[], path: string): Stretch {
  const [from, to] = [cornerOf(line.from), cornerOf(line.to)];
  for (let side = 0; side < ring.length; side += 1) {
    const [a, b] = [ring[side] as Corner, ring[(side + 1) % ring.length] as Corner];
    if (!onSide(from, a, b) || !onSide(to, a, b)) continue;
    const [p, q] = [distance(a, from), distance(a, to)];
    return { side, from: Decimal.min(p, q), to: Decimal.max(p, q) };
  }
  return refuse(path, faults.offEdge());
}

/**
 * Length of the isolation joints along the sides, in meters.
 *
 * @throws {InputError} `off-edge` for a line that is not on one side, `joints-conflict` for two that overlap
 */
export function isolationLengths(outline: Outline, lines: readonly IsolationLine[]): Decimal {
  if (lines.length === 0) return ZERO;
  const ring = ringOf(outline);
  const stretches = lines.map((line, i) => stretchOf(line, ring, `isolation[${i}]`));
  stretches.forEach((a, i) => {
    const other = stretches
      .slice(0, i)
      .findIndex((b) => a.side === b.side && a.from.lessThan(b.to) && b.from.lessThan(a.to));
    if (other >= 0) refuse(`isolation[${i}]`, faults.jointsConflict(`isolation[${other}]`));
  });
  return stretches.reduce((sum, { from, to }) => sum.plus(to.minus(from)), ZERO);
}
