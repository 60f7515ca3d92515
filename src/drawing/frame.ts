/** From the plan in meters, y up, to the page in pixels, y down. */
import type { Bounds, PagePoint } from './room';

/** A point of the plan in meters, y up. */
export interface PlanPoint {
  readonly x: number;
  readonly y: number;
}

/** Where a plan lies on its page. */
export interface Frame {
  /** Room for the plan and what is written around it. */
  readonly bounds: Bounds;
  /** From the plan to the page. */
  readonly at: (point: PlanPoint) => PagePoint;
  /** Pixels per meter. */
  readonly scale: number;
}

/** Room beside the plan, in pixels. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Taller plans than this, by their width, are drawn smaller. */
const TALLEST = 1.5;

/** Least and greatest x and y. */
export function extentOf(points: readonly PlanPoint[]): { from: PlanPoint; to: PlanPoint } {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
  }
  return points.length > 0
    ? { from: { x: x0, y: y0 }, to: { x: x1, y: y1 } }
    : { from: { x: 0, y: 0 }, to: { x: 0, y: 0 } };
}

/**
 * A frame in which these points fill the width, or less where they are tall.
 *
 * @param top - where on the page it begins
 * @param least - how high the plan is at least, so that there is room beside narrow strips
 */
export function frameFor(
  points: readonly PlanPoint[],
  width: number,
  margins: Margins,
  top: number,
  least: number,
): Frame {
  const { from, to } = extentOf(points);
  const [wide, high] = [Math.max(to.x - from.x, 1e-9), Math.max(to.y - from.y, 1e-9)];
  const across = Math.max(width - margins.left - margins.right, width / 4);
  const scale = Math.min(across / wide, (TALLEST * across) / high);
  const height = Math.max(high * scale, least);
  const left = margins.left + (across - wide * scale) / 2;
  const head = top + margins.top + (height - high * scale) / 2;
  return {
    bounds: { left: 2, right: width - 2, top, bottom: top + margins.top + height + margins.bottom },
    at: ({ x, y }) => ({ x: left + (x - from.x) * scale, y: head + (to.y - y) * scale }),
    scale,
  };
}
