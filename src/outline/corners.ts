/** Corners as they are typed, in meters. */

import type { Corner } from '../geometry/polygon';
import { canonicalValue } from '../quantity/quantity';
import type { Point } from './outline';

/** The corners in meters. */
export const cornersOf = (points: readonly Point[]): Corner[] =>
  points.map(({ x, y }) => ({ x: canonicalValue(x), y: canonicalValue(y) }));
