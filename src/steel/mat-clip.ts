/**
 * Lines of bar clipped to an outline: where a straight line is inside a region and at least the cover
 * away from its boundary.
 *
 * The part of a line that is nearer to a side than the cover is one stretch, where the line crosses
 * the side widened by the cover with round ends. Taking these stretches from what is inside leaves
 * what a bar may fill; no outline has to be shrunk. Binary numbers in meters: the error is below a
 * thousandth of a millimeter, and lengths are rounded down to whole cutting steps afterward.
 */
import type { Corner } from '../geometry/polygon';
import type { Rings } from '../outline/region';
import { Numbers, type Stretch, Stretches } from './stretches';

/** A point in meters. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A direction in plan and its normal. */
export interface Direction {
  readonly cos: number;
  readonly sin: number;
}

/** A direction from degrees; quarter turns are exact. */
export function directionOf(degrees: number): Direction {
  const quarter = degrees / 90;
  if (Number.isInteger(quarter)) {
    const at = ((quarter % 4) + 4) % 4;
    return { cos: [1, 0, -1, 0][at] as number, sin: [0, 1, 0, -1][at] as number };
  }
  const angle = (degrees * Math.PI) / 180;
  return { cos: Math.cos(angle), sin: Math.sin(angle) };
}

/** Room for the last digits of a binary number, in meters. */
export const FUZZ = 1e-7;

/** A line on the very boundary is neither in nor out, so a cover of nothing is taken as this. */
export const LEAST_COVER = 1e-6;

export const alongOf = ({ cos, sin }: Direction, { x, y }: Spot): number => x * cos + y * sin;
export const acrossOf = ({ cos, sin }: Direction, { x, y }: Spot): number => y * cos - x * sin;
export const spotAt = ({ cos, sin }: Direction, u: number, v: number): Spot => ({
  x: u * cos - v * sin,
  y: u * sin + v * cos,
});

/** The rings in plain meters: the outer one counterclockwise, openings clockwise, so the slab is on the left. */
export function spotsOf({ outer, openings }: Rings): Spot[][] {
  const plain = (ring: Rings['outer']): Spot[] =>
    ring.map(({ x, y }) => ({ x: x.toNumber(), y: y.toNumber() }));
  return [plain(outer), ...openings.map((ring) => plain(ring).reverse())];
}

/** Spots laid out from the first corner put back to where that corner stands. */
export function backTo(origin: Corner): (spots: readonly Spot[]) => Spot[] {
  const [dx, dy] = [origin.x.toNumber(), origin.y.toNumber()];
  return (spots) => spots.map(({ x, y }) => ({ x: x + dx, y: y + dy }));
}

/** Half the chord of a disc of radius r at distance d from its center; negative when there is none. */
const halfChord = (r: number, d: number): number => (Math.abs(d) < r ? Math.sqrt(r * r - d * d) : -1);

/** The part of `low ≤ at + slope × u ≤ high`; it ends before it begins where there is none. */
function band(at: number, slope: number, low: number, high: number): Stretch {
  if (slope === 0) return at >= low && at <= high ? EVERYWHERE : NOWHERE;
  const [a, b] = [(low - at) / slope, (high - at) / slope];
  return a < b ? [a, b] : [b, a];
}

const EVERYWHERE: Stretch = [-Infinity, Infinity];
const NOWHERE: Stretch = [Infinity, -Infinity];

/** Where the line across at `v` is nearer than `r` to a side; it ends before it begins where it is not. */
function nearSide(u0: number, v0: number, u1: number, v1: number, v: number, r: number): Stretch {
  let [from, to] = NOWHERE;
  const [a, b] = [halfChord(r, v - v0), halfChord(r, v - v1)];
  if (a >= 0) [from, to] = [u0 - a, u0 + a];
  if (b >= 0) [from, to] = [Math.min(from, u1 - b), Math.max(to, u1 + b)];
  const long = Math.hypot(u1 - u0, v1 - v0);
  const [cu, cv] = [(u1 - u0) / long, (v1 - v0) / long];
  // Beside the side: within r square to it, and between its ends along it.
  const beside = band(u0 * cv + (v - v0) * cu, -cv, -r, r);
  const between = band(-u0 * cu + (v - v0) * cv, cu, 0, long);
  const [low, high] = [Math.max(beside[0], between[0]), Math.min(beside[1], between[1])];
  return low < high ? [Math.min(from, low), Math.max(to, high)] : [from, to];
}

/**
 * What is left of a line by the sides beside it.
 *
 * One of these serves line after line. Each side is taken into account by itself, in any order.
 */
export class Clearing {
  private readonly crossings = new Numbers();
  private readonly near = new Stretches();
  private v = 0;
  private r = 0;

  /**
   * Begin with the line at `v`.
   *
   * @param cover - in meters, greater than zero
   */
  begin(v: number, cover: number): void {
    this.v = v;
    this.r = cover - FUZZ;
    this.crossings.clear();
    this.near.clear();
  }

  /** Take a side into account, in the coordinates of the direction of the line. */
  side(u0: number, v0: number, u1: number, v1: number): void {
    this.cross(crossingAt(u0, v0, u1, v1, this.v));
    this.keepFrom(u0, v0, u1, v1);
  }

  /** The line passes from out to in here, or from in to out; a number that is none is no place. */
  cross(u: number): void {
    if (!Number.isNaN(u)) this.crossings.add(u);
  }

  /** No bar comes nearer than the cover to this side. */
  keepFrom(u0: number, v0: number, u1: number, v1: number): void {
    const [from, to] = nearSide(u0, v0, u1, v1, this.v, this.r);
    if (from < to) this.near.add(from, to);
  }

  /** Where a bar may lie, in rising order: inside, less what is too near. */
  left(): Stretch[] {
    const away = this.near.joined(0);
    const crossings = this.crossings.sorted();
    const left: Stretch[] = [];
    let k = 0;
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      let [at, to] = [crossings[i] as number, crossings[i + 1] as number];
      while (k < away.length && (away[k] as Stretch)[1] <= at) k += 1;
      // The last one taken here may reach into the next stretch, so it is looked at again.
      for (let n = k; n < away.length && (away[n] as Stretch)[0] < to; n += 1) {
        const [a, b] = away[n] as Stretch;
        if (a > at) left.push([at, a]);
        [at, k] = [Math.max(at, b), n];
      }
      if (at < to) left.push([at, to]);
    }
    return left;
  }
}

/** Where a side crosses the line at `v`; no number where it does not. */
export const crossingAt = (u0: number, v0: number, u1: number, v1: number, v: number): number =>
  v0 > v !== v1 > v ? u0 + ((v - v0) * (u1 - u0)) / (v1 - v0) : Number.NaN;
