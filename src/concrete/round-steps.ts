/** Flights that turn: wraparound around two corners, round, and winding about a center. */

import * as faults from '../quantity/faults';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { timesPi } from './solids';
import { type Flight, ONE, shareOfTurn, sums, TWO } from './step-flight';
import type { Round, Winding, Wraparound } from './step-inputs';

export function wraparound(input: Wraparound, pad: Pad): Flight {
  const { risers: n, rise: r, tread: t, topWidth: w, topDepth: D, sides } = input;
  const c = sides === 'both' ? TWO() : ONE();
  const [first, second] = sums(n);
  const plans = D.times(w)
    .times(n)
    .plus(D.times(c).plus(w).times(t.times(first)))
    .plus(t.times(t).times(second.times(c)));
  const volume = pad.step(
    'volume',
    'V = r × (n × D × w + (c × D + w) × t × n × (n − 1) ÷ 2 + c × t² × n × (n − 1) × (2 × n − 1) ÷ 6)',
    { r, n, D, w, c, t },
    plans.times(r),
  );
  const spread = t.times(n.minus(ONE()));
  const run = pad.step('total run', 'L = D + (n − 1) × t', { D, n, t }, D.plus(spread));
  const footprint = pad.step(
    'footprint',
    'A = L × (w + c × (n − 1) × t)',
    { L: run, w, c, n, t },
    run.times(w.plus(spread.times(c))),
  );
  const faces = w
    .plus(D.times(c))
    .times(n)
    .plus(t.times(n.times(n.minus(ONE()))).times(c));
  const formed = pad.step(
    'risers to form',
    'F = r × (n × (w + c × D) + c × t × n × (n − 1))',
    { r, n, w, c, D, t },
    r.times(faces),
  );
  return { volume, run, footprint, formed, tread: t, across: w.plus(spread.times(c)) };
}

export function round(input: Round, pad: Pad): Flight {
  const { risers: n, rise: r, tread: t, topRadius: R, innerRadius } = input;
  const q = innerRadius ?? R.minus(R);
  if (!q.lessThan(R)) refuse('innerRadius', faults.doesNotFit('innerRadius', 'topRadius'));
  const f = shareOfTurn(input.turn, input.turn, 'turn', pad);
  const [first, second] = sums(n);
  const squares = R.times(R)
    .minus(q.times(q))
    .times(n)
    .plus(R.times(t).times(first.times(TWO())))
    .plus(t.times(t).times(second));
  const volume = pad.step(
    'volume',
    'V = π × f × r × (n × (R² − q²) + R × t × n × (n − 1) + t² × n × (n − 1) × (2 × n − 1) ÷ 6)',
    { f, r, n, R, q, t },
    timesPi(r.times(squares).times(f)),
  );
  const o = pad.step(
    'radius of the lowest nosing',
    'o = R + (n − 1) × t',
    { R, n, t },
    R.plus(t.times(n.minus(ONE()))),
  );
  const footprint = pad.step(
    'footprint',
    'A = π × f × (o² − q²)',
    { f, o, q },
    timesPi(o.times(o).minus(q.times(q)).times(f)),
  );
  const arcs = R.times(n).plus(t.times(first));
  const formed = pad.step(
    'risers to form',
    'F = 2 × π × f × r × (n × R + t × n × (n − 1) ÷ 2)',
    { f, r, n, R, t },
    timesPi(r.times(arcs).times(f).times(TWO())),
  );
  return { volume, run: o.minus(q), footprint, formed, tread: t };
}

export function winding(input: Winding, pad: Pad): Flight {
  const { risers: n, rise: r, innerRadius: q, outerRadius: o, turnEach } = input;
  if (!q.lessThan(o)) refuse('innerRadius', faults.doesNotFit('innerRadius', 'outerRadius'));
  const f = shareOfTurn(turnEach, turnEach.times(n), 'turnEach', pad);
  const steps = n.times(n.plus(ONE())).over(TWO());
  const A = pad.step(
    'one tread',
    'A = π × f × (o² − q²)',
    { f, o, q },
    timesPi(o.times(o).minus(q.times(q)).times(f)),
  );
  const volume = pad.step('volume', 'V = A × r × n × (n + 1) ÷ 2', { A, r, n }, A.times(r.times(steps)));
  const footprint = pad.step('footprint', 'B = n × A', { n, A }, A.times(n));
  const t = pad.step(
    'tread along the middle',
    't = π × f × (o + q)',
    { f, o, q },
    timesPi(o.plus(q)).times(f),
  );
  const run = pad.step('run along the middle', 'L = n × t', { n, t }, t.times(n));
  const formed = pad.step(
    'risers and both curved sides to form',
    'F = n × r × (o − q) + r × n × (n + 1) × t',
    { n, r, o, q, t },
    r.times(o.minus(q)).times(n).plus(r.times(steps).times(t).times(TWO())),
  );
  return { volume, run, footprint, formed, tread: t };
}
