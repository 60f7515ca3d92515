/** Inside corners, of the outline and of openings, that no joint of a plan meets. */
import type { Corner } from '../../geometry/polygon';
import type { Laid } from './plan';
import { insideCorners, type Site } from './site';

/** A joint within this of a corner meets it, in meters. */
const MET = 1e-6;

interface Line {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

function meets({ ax, ay, bx, by }: Line, x: number, y: number): boolean {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const part = square > 0 ? Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square)) : 0;
  return Math.hypot(ax + part * dx - x, ay + part * dy - y) <= MET;
}

/** Tells whether a corner is met by a straight joint of a plan; both as they lie in the pose. */
export function jointMeets(laid: Laid): (corner: Corner) => boolean {
  const lines = laid.joints
    .filter((j) => j.shape === 'straight')
    .map(({ from, to }) => ({
      ax: from.x.toNumber(),
      ay: from.y.toNumber(),
      bx: to.x.toNumber(),
      by: to.y.toNumber(),
    }));
  return (c) => {
    const [x, y] = [c.x.toNumber(), c.y.toNumber()];
    return lines.some((line) => meets(line, x, y));
  };
}

/** The corners that are not met; plan and corners as they lie in the pose. */
export function missedCorners(site: Site, laid: Laid): Corner[] {
  const openings = site.openings.filter((o) => !o.spared);
  const corners = [...insideCorners(site.edge), ...openings.flatMap((o) => o.corners)];
  if (corners.length === 0) return [];
  const isMet = jointMeets(laid);
  return corners.filter((c) => !isMet(c));
}
