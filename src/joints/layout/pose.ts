/**
 * How a slab is laid down to be planned, so that the plan is the same however it was drawn.
 *
 * The slab is moved to the origin, turned so that joints run along x and y, and then turned by quarters and
 * mirrored to the one of its eight poses whose corners come first in order. A plan found there and laid
 * back does not depend on survey coordinates, on the first corner, on quarter turns or on mirroring.
 */
import type { Corner } from '../../geometry/polygon';
import { Decimal, PI, ZERO } from '../../quantity/decimal';
import { isStraight, type Turn, turnedIn, turnedOut } from './exact';

/** One of the eight ways to lay down a slab whose joints run along x and y. */
interface Quarter {
  readonly swap: boolean;
  readonly flipX: boolean;
  readonly flipY: boolean;
}

const BOTH = [false, true];

/** All eight, that which changes nothing first. */
const QUARTERS: readonly Quarter[] = BOTH.flatMap((swap) =>
  BOTH.flatMap((flipY) => BOTH.map((flipX) => ({ swap, flipX, flipY }))),
);

/** A pose: there, and back again. */
export class Pose {
  constructor(
    readonly origin: Corner,
    readonly turn: Turn,
    readonly quarter: Quarter,
    readonly shift: Corner = { x: ZERO, y: ZERO },
  ) {}

  /** A point of the input as it lies in the pose. */
  in({ x, y }: Corner): Corner {
    const moved = { x: x.minus(this.origin.x), y: y.minus(this.origin.y) };
    const t = isStraight(this.turn) ? moved : turnedIn(moved, this.turn);
    const { swap, flipX, flipY } = this.quarter;
    const [u, v] = swap ? [t.y, t.x] : [t.x, t.y];
    return { x: (flipX ? u.neg() : u).minus(this.shift.x), y: (flipY ? v.neg() : v).minus(this.shift.y) };
  }

  /** Back to where joints run along x and y, but turned and mirrored as the input is. */
  upright({ x, y }: Corner): Corner {
    const [p, q] = [x.plus(this.shift.x), y.plus(this.shift.y)];
    const { swap, flipX, flipY } = this.quarter;
    const [u, v] = [flipX ? p.neg() : p, flipY ? q.neg() : q];
    return swap ? { x: v, y: u } : { x: u, y: v };
  }

  /** Back to the plane of the input. */
  out(c: Corner): Corner {
    const t = this.upright(c);
    const moved = isStraight(this.turn) ? t : turnedOut(t, this.turn);
    return { x: moved.x.plus(this.origin.x), y: moved.y.plus(this.origin.y) };
  }

  /** True where the slab lies face down. */
  get mirrored(): boolean {
    const { swap, flipX, flipY } = this.quarter;
    return [swap, flipX, flipY].filter(Boolean).length % 2 === 1;
  }

  /** A direction of the input, in radians, as it lies in the pose. */
  angleIn(angle: Decimal): Decimal {
    const { swap, flipX, flipY } = this.quarter;
    let a = isStraight(this.turn) ? angle : angle.minus(Decimal.atan2(this.turn.sin, this.turn.cos));
    if (swap) a = PI.div(2).minus(a);
    if (flipX) a = PI.minus(a);
    return flipY ? a.neg() : a;
  }

  /** The same pose with the slab moved so that its lowest corner each way is nought. */
  settled(points: readonly Corner[]): Pose {
    const laid = points.map((p) => this.in(p));
    const shift = {
      x: Decimal.min(...laid.map((c) => c.x)).plus(this.shift.x),
      y: Decimal.min(...laid.map((c) => c.y)).plus(this.shift.y),
    };
    return new Pose(this.origin, this.turn, this.quarter, shift);
  }
}

/** Coordinates are compared in parts that no measure is a multiple of, so that rounding cannot tip them. */
const GRAIN = 1.2345678e-6;

type Placed = readonly (readonly [number, number])[];

/** The corners in order, as they lie in a pose. */
function signature(points: Placed, { swap, flipX, flipY }: Quarter): number[] {
  const laid = points.map(([x, y]): [number, number] => {
    const [u, v] = swap ? [y, x] : [x, y];
    return [flipX ? -u : u, flipY ? -v : v];
  });
  const [x0, y0] = [Math.min(...laid.map((p) => p[0])), Math.min(...laid.map((p) => p[1]))];
  const grains = laid.map(([x, y]) => [Math.round((x - x0) / GRAIN), Math.round((y - y0) / GRAIN)] as const);
  return grains.sort((p, q) => p[0] - q[0] || p[1] - q[1]).flat();
}

function before(a: readonly number[], b: readonly number[]): boolean {
  const i = a.findIndex((n, k) => n !== b[k]);
  return i >= 0 && (a[i] as number) < (b[i] as number);
}

/**
 * The pose that a slab is planned in.
 *
 * @param turns - the ways that joints may run; where several do, they are as good as each other
 * @param outline - the corners of the outline
 * @param others - whatever else tells two poses apart: openings, fixed joints
 */
export function poseOf(turns: readonly Turn[], outline: readonly Corner[], others: readonly Corner[]): Pose {
  const origin = outline[0] as Corner;
  const spots = [...outline, ...others].map(({ x, y }): [number, number] => [
    x.minus(origin.x).toNumber(),
    y.minus(origin.y).toNumber(),
  ]);
  let best: { pose: Pose; signature: number[] } | undefined;
  for (const turn of turns) {
    const [cos, sin] = [turn.cos.toNumber(), turn.sin.toNumber()];
    const laid = spots.map(([x, y]): [number, number] => [x * cos + y * sin, y * cos - x * sin]);
    for (const quarter of QUARTERS) {
      const found = signature(laid, quarter);
      if (best && !before(found, best.signature)) continue;
      best = { pose: new Pose(origin, turn, quarter), signature: found };
    }
  }
  return (best as { pose: Pose }).pose.settled(outline);
}

/** The four poses of a pattern that may start at any corner of the slab. */
export const startsOf = (pose: Pose, outline: readonly Corner[]): Pose[] =>
  BOTH.flatMap((flipY) =>
    BOTH.map((flipX) => {
      const { quarter } = pose;
      const next = { ...quarter, flipX: quarter.flipX !== flipX, flipY: quarter.flipY !== flipY };
      return new Pose(pose.origin, pose.turn, next).settled(outline);
    }),
  );
