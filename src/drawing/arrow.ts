/** Arrows: the way that water runs. */
import type { PagePoint } from './room';
import { pathThrough } from './svg';

/** An arrow through a point of the page; the direction has length 1. */
export function arrowPath({ x, y }: PagePoint, u: PagePoint, half: number, head: number): string {
  const tip = { x: x + u.x * half, y: y + u.y * half };
  const barb = (side: number): PagePoint => ({
    x: tip.x - head * (u.x * 0.9 + side * u.y * 0.45),
    y: tip.y - head * (u.y * 0.9 - side * u.x * 0.45),
  });
  const tail = { x: x - u.x * half, y: y - u.y * half };
  return pathThrough([tail, tip]) + pathThrough([barb(1), tip, barb(-1)]);
}
