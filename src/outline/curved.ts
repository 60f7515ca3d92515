/** The edges of an outline given by corners and curves, as chords with what is known of each. */

import { arcOver, type Edge } from '../geometry/arc';
import * as faults from '../geometry/faults';
import type { Corner } from '../geometry/polygon';
import { Decimal, ZERO } from '../quantity/decimal';
import { repeatedPoint } from '../quantity/faults';
import { canonicalValue } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { CurvedPoint } from './outline';

function riseOf(point: CurvedPoint, chord: Decimal, path: string): Decimal {
  const { rise, radius } = point;
  if (rise && radius) refuse(path, faults.oneCurve());
  if (rise) return canonicalValue(rise);
  if (!radius) return ZERO;
  const r = canonicalValue(radius);
  const half = chord.div(2);
  const square = r.times(r).minus(half.times(half));
  if (square.isNegative()) refuse(`${path}.radius`, faults.arcTooTight());
  const rest = r.abs().minus(square.sqrt());
  return r.isNegative() ? rest.neg() : rest;
}

/** An outline is asked for its edges several times; their roots and angles are slow. */
const edgesKnown = new WeakMap<readonly CurvedPoint[], Edge[]>();

/** The edges of a curved outline. */
export function edgesOf(points: readonly CurvedPoint[], corners: readonly Corner[], path: string): Edge[] {
  const known = edgesKnown.get(points);
  if (known) return known;
  const edges = points.map((point, i) => {
    const from = corners[i] as Corner;
    const to = corners[(i + 1) % corners.length] as Corner;
    const chord = Decimal.hypot(to.x.minus(from.x), to.y.minus(from.y));
    if (chord.isZero()) refuse(path, repeatedPoint(i + 1));
    const rise = riseOf(point, chord, `${path}[${i}]`);
    return { from, to, chord, rise, arc: arcOver(chord, rise) };
  });
  edgesKnown.set(points, edges);
  return edges;
}
