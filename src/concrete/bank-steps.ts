/**
 * Straight flights on a bank: concrete of one thickness under the inner corners, and a triangle on it for each tread.
 *
 * `V = w × (m × t × r ÷ 2 + e × m × √(t² + r²))` for `m` treads, both ends upright. A landing at the top is as thick as
 * what lies under the steps; the slope goes on below it until it meets its underside.
 */

import { lesserOf } from '../quantity/greater';
import { hypotenuse } from '../quantity/hypotenuse';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { ONE, TWO } from './step-flight';
import type { Straight } from './step-inputs';

type Length = Quantity<'length'>;
type Volume = Quantity<'volume'>;

/** A landing at the top, and the wedge where the slope runs on below it. */
function withTop(V: Volume, input: Straight, e: Length, d: Length, pad: Pad): Volume {
  const { rise: r, tread: t, width: w } = input;
  const long = hypotenuse(t, r);
  const h = pad.step(
    'drop from the underside of the landing to the slope, at its front',
    'h = r + e × √(t² + r²) ÷ t − e',
    { r, e, t },
    r.plus(e.times(long.over(t))).minus(e),
  );
  const x = pad.step(
    'how far the slope runs on below the landing',
    'x = min(h × t ÷ r, d)',
    { h, t, r, d },
    lesserOf(h.times(t.over(r)), d),
  );
  const side = d
    .times(e)
    .plus(x.times(h))
    .minus(x.times(x).times(r.over(t)).over(TWO()));
  return pad.step(
    'volume with the landing',
    'U = V + w × (d × e + x × h − x² × r ÷ (2 × t))',
    { V, w, d, e, x, h, r, t },
    V.plus(w.times(side)),
  );
}

/** The flight, before its wash and its nosings. */
export function onBank(input: Straight, e: Length, pad: Pad): Volume {
  const { risers: n, rise: r, tread: t, width: w, landingDepth: d } = input;
  const m = d ? pad.step('treads below the landing', 'm = n − 1', { n }, n.minus(ONE())) : n;
  const S = pad.step('slope under the treads', 'S = m × √(t² + r²)', { m, t, r }, hypotenuse(t, r).times(m));
  const side = t.times(r).times(m).over(TWO()).plus(e.times(S));
  const V = pad.step('volume', 'V = w × (m × t × r ÷ 2 + e × S)', { w, m, t, r, e, S }, w.times(side));
  return d ? withTop(V, input, e, d, pad) : V;
}
