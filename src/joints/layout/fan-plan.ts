/**
 * Joints of a tapering slab with two parallel sides: a fan of joints that divide both parallel sides
 * evenly, and joints along the parallel sides across them.
 *
 * No joint meets a slanted side at a sharp angle, as straight joints in two directions would. Every
 * number of panels each way is looked at.
 */
import type { Corner } from '../../geometry/polygon';
import { Decimal } from '../../quantity/decimal';
import { same } from './exact';
import { spot } from './orthogonal';
import { BROKEN, brokenBy, HAIR, type Limits, softened } from './rules';

/** A tapering slab: corners along one parallel side, then back along the other. */
export interface Taper {
  readonly near: readonly [Corner, Corner];
  readonly far: readonly [Corner, Corner];
  readonly nearLength: Decimal;
  readonly farLength: Decimal;
  readonly height: Decimal;
}

const parallel = (a: Corner, b: Corner, c: Corner, d: Corner): boolean => {
  const cross = b.x
    .minus(a.x)
    .times(d.y.minus(c.y))
    .minus(b.y.minus(a.y).times(d.x.minus(c.x)));
  return same(cross, new Decimal(0));
};

const lengthOf = (a: Corner, b: Corner): Decimal => Decimal.hypot(b.x.minus(a.x), b.y.minus(a.y));

/** The taper that a ring of four corners is, if it is one. */
export function taperOf(ring: readonly Corner[]): Taper | undefined {
  if (ring.length !== 4) return undefined;
  for (let i = 0; i < 2; i += 1) {
    const [a, b, c, d] = [0, 1, 2, 3].map((k) => ring[(i + k) % 4] as Corner) as [
      Corner,
      Corner,
      Corner,
      Corner,
    ];
    if (!parallel(a, b, d, c) || parallel(b, c, a, d)) continue;
    const [nearLength, farLength] = [lengthOf(a, b), lengthOf(d, c)];
    const cross = b.x
      .minus(a.x)
      .times(d.y.minus(a.y))
      .minus(b.y.minus(a.y).times(d.x.minus(a.x)));
    return { near: [a, b], far: [d, c], nearLength, farLength, height: cross.abs().div(nearLength) };
  }
  return undefined;
}

/** How many panels across and along a fan has. */
export interface FanPlan {
  readonly across: number;
  readonly along: number;
  readonly cost: number;
}

/** Most panels looked at each way. */
const MOST = 400;

/** The point a part of the way between two corners. */
export function partWay(a: Corner, b: Corner, part: number, of: number): Corner {
  if (part === 0) return a;
  if (part === of) return b;
  const at = (from: Decimal, to: Decimal): Decimal => from.plus(to.minus(from).times(part).div(of));
  return { x: at(a.x, b.x), y: at(a.y, b.y) };
}

/** Length of the joints between the parallel sides. */
function fanLength(taper: Taper, n: number): number {
  const [a, b] = [spot(taper.near[0]), spot(taper.near[1])];
  const [d, c] = [spot(taper.far[0]), spot(taper.far[1])];
  const at = (from: number, to: number, part: number): number => from + (to - from) * part;
  let sum = 0;
  for (let k = 1; k < n; k += 1) {
    const dx = at(a.x, b.x, k / n) - at(d.x, c.x, k / n);
    sum += Math.hypot(dx, at(a.y, b.y, k / n) - at(d.y, c.y, k / n));
  }
  return sum;
}

/** What the rows of a fan cost: the joints between them and the rules that they break. */
function rowsCost(taper: Taper, n: number, m: number, limits: Limits): number {
  const [a, b] = [taper.nearLength.toNumber(), taper.farLength.toNumber()];
  const high = taper.height.toNumber() / m;
  if (high > limits.spacing + HAIR) return Number.POSITIVE_INFINITY;
  let cost = 0;
  for (let j = 0; j < m; j += 1) {
    if (j > 0) cost += a + ((b - a) * j) / m;
    const mean = (a + ((b - a) * (j + 0.5)) / m) / n;
    cost += n * limits.weight * brokenBy(mean, high, limits).length;
  }
  return cost;
}

function bestFan(taper: Taper, limits: Limits): FanPlan | undefined {
  const widest = Decimal.max(taper.nearLength, taper.farLength).toNumber();
  const height = taper.height.toNumber();
  const fewest = (side: number): number => Math.max(1, Math.ceil(side / limits.spacing - HAIR));
  const most = (side: number): number =>
    Math.min(MOST, Math.max(fewest(side), Math.floor(side / limits.leastSide)));
  let best: FanPlan | undefined;
  for (let n = fewest(widest); n <= most(widest); n += 1) {
    if (best && (n - 1) * height >= best.cost) break;
    const fan = fanLength(taper, n);
    const narrowest = Decimal.min(taper.nearLength, taper.farLength).toNumber();
    for (let m = fewest(height); m <= most(height); m += 1) {
      if (best && fan + (m - 1) * narrowest >= best.cost) break;
      const cost = fan + rowsCost(taper, n, m, limits);
      if (cost < (best?.cost ?? Number.POSITIVE_INFINITY) - HAIR) best = { across: n, along: m, cost };
    }
  }
  return best;
}

/** The fan of least saw length. */
export function fanPlan(taper: Taper, limits: Limits): FanPlan | undefined {
  const best = bestFan(taper, limits);
  return best && best.cost >= BROKEN ? bestFan(taper, softened(limits)) : best;
}
