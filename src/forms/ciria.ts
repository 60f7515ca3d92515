/**
 * The pressure of fresh concrete on forms by CIRIA report 108, which British practice goes by.
 *
 * `P = D × (C₁ × √R + C₂ × K × √(H − C₁ × √R))` with `K = (36 ÷ (T + 16))^1.5`, R in m/h, H in m and T in °C; `C₁` is 1
 * for walls and 1.5 for columns, `C₂` 0.3, 0.45 or 0.6 by cement and admixtures. What stands in the bracket is the
 * depth of concrete that presses as a fluid; where it comes to the height of the pour, the full head counts. From memory.
 */
import { Decimal, ZERO } from '../quantity/decimal';
import { length, ratio, speed, temperature } from '../quantity/make';
import { numberOf, pure } from '../quantity/numbers';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { ONE_DEGREE, type Temperature, above as warmer } from '../weather/degrees';

type Length = Quantity<'length'>;
type Speed = Quantity<'speed'>;
type Ratio = Quantity<'ratio'>;

/** What the concrete is and where it is placed. */
export interface Placed {
  readonly kind: 'wall' | 'column';
  readonly cement: 'plain' | 'retarded' | 'blended' | 'blended-retarded';
  readonly height: Length;
  readonly temperature: Temperature;
}

const C2: Record<Placed['cement'], string> = {
  plain: '0.3:1',
  retarded: '0.45:1',
  blended: '0.45:1',
  'blended-retarded': '0.6:1',
};
const c1 = ({ kind }: Placed): Ratio => ratio(kind === 'column' ? '1.5:1' : '1:1');

/** How much stiffer in the cold. */
function stiffness({ temperature: T, cement }: Placed, pad: Pad): { readonly K: Ratio; readonly E: Ratio } {
  const [k, g, z, t] = [ratio('36:1'), ratio('16:1'), temperature('0 degC'), ONE_DEGREE.as('metric')];
  const x = new Decimal(36).div(numberOf(warmer(z, T.in('degC')).over(t)).plus(16));
  const K = pad.step(
    'temperature coefficient',
    'K = k ÷ ((T − z) ÷ t + g) × √(k ÷ ((T − z) ÷ t + g))',
    { k, g, T: T.in('degC'), z, t },
    pure(x.times(x.sqrt())),
  );
  return { K, E: ratio(C2[cement]) };
}

/** The depth of concrete that presses as a fluid; at most the height. */
export function fluidDepth(R: Speed, placed: Placed, pad: Pad): Length {
  const [n, r] = [length('1 m'), speed('1 m/h')];
  const { height: H } = placed;
  const C = c1(placed);
  const { K, E } = stiffness(placed, pad);
  const above = numberOf(C).times(numberOf(R.over(r)).sqrt());
  const under = numberOf(H.over(n)).minus(above);
  if (under.lessThanOrEqualTo(ZERO)) return H;
  const y = above.plus(numberOf(E).times(numberOf(K)).times(under.sqrt()));
  const outcome = n.times(pure(y)).in(pad.system === 'metric' ? 'm' : 'ft');
  const depth = pad.step(
    'depth of concrete that presses as a fluid',
    'y = n × (C × √(R ÷ r) + E × K × √(H ÷ n − C × √(R ÷ r)))',
    { n, C, R, r, E, K, H },
    outcome,
  );
  return depth.greaterThan(H) ? H : depth;
}

/** The rise at which the depth comes to so much; `undefined` where any does, or none. */
export function riseForDepth(Y: Length, placed: Placed, pad: Pad): Speed | undefined {
  const [n, r] = [length('1 m'), speed('1 m/h')];
  const { height: H } = placed;
  if (!Y.lessThan(H)) return undefined;
  const C = c1(placed);
  const { K, E } = stiffness(placed, pad);
  const b = numberOf(E).times(numberOf(K));
  const [d, h] = [numberOf(Y.over(n)), numberOf(H.over(n))];
  const root = b.times(b).plus(h.minus(d).times(4)).sqrt();
  const above = d.minus(b.times(root.plus(b)).div(2));
  if (above.lessThanOrEqualTo(ZERO)) return undefined;
  const a = above.div(numberOf(C));
  const fastest = r.times(pure(a.times(a))).in(pad.system === 'metric' ? 'm/h' : 'ft/h');
  return pad.step(
    'rise that brings that pressure',
    'R = r × ((Y ÷ n − E × K × (E × K + √((E × K)² + 4 × (H ÷ n − Y ÷ n))) ÷ 2) ÷ C)²',
    { r, Y, n, E, K, H, C },
    fastest,
  );
}
