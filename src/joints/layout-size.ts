/** How much a slab asks of the search: panels, lines, corners, and openings by what they count as in corners. */
import type { Opening } from '../outline/region';
import { withinLimit } from '../reckoning/limits';
import { OPENING_CORNERS, panelLimit, SIDE_BY_SIDE, SLANTED_CORNERS, SQUARE_CORNERS } from './layout/most';
import type { Limits } from './layout/rules';
import { ringArea, type Site } from './layout/site';
import { isSmall } from './layout/spared';
import type { LayoutParsed } from './layout-input';

/** What an opening counts as at least, in corners: a round one over the least side, and any beside a slanted outline. */
const AS_CORNERS = 4;
const AS_ROUND = 10;
const AS_SMALL_ROUND = 8;
const AS_SLANTED = 2;

/** The corners that an opening is given with, or by its number of sides. */
function givenCorners(opening: Opening): number {
  if (opening.shape === 'polygon') return opening.points.length;
  return opening.shape === 'regular' ? opening.sides.toNumber('each') : 0;
}

/** Above this many corners an opening with slanted sides takes so much longer for each. */
const FEW_CORNERS = 20;
const AS_ONE_OF_MANY = 6;

const weighedCorners = ({ corners, cornered }: Site['openings'][number]): number =>
  corners.length + (cornered ? 0 : (AS_ONE_OF_MANY - 1) * Math.max(0, corners.length - FEW_CORNERS));

/** Before anything is placed: an arc becomes two sides or more, an opening counts as two corners or more. */
export function checkCount({ outline, openings = [] }: LayoutParsed): void {
  withinLimit(SQUARE_CORNERS, AS_SLANTED * openings.length, 'openings');
  withinLimit(
    OPENING_CORNERS,
    openings.reduce((sum, opening) => sum + givenCorners(opening), 0),
    'openings',
  );
  if (outline.shape !== 'curved') return;
  const sides = outline.points.reduce((sum, p) => sum + (p.rise || p.radius ? 2 : 1), 0);
  if (sides > outline.points.length)
    withinLimit(SLANTED_CORNERS, sides + AS_SLANTED * openings.length, 'outline');
}

export function checkSize(site: Site, limits: Limits): void {
  const panels = ringArea(site.ring).toNumber() / limits.spacing ** 2;
  withinLimit(panelLimit(site), Math.floor(panels), 'spacing');
  for (const axis of ['x', 'y'] as const) {
    const ends = site.ring.map((c) => c[axis].toNumber());
    const lines = (Math.max(...ends) - Math.min(...ends)) / limits.spacing;
    withinLimit(SIDE_BY_SIDE, Math.floor(lines), 'spacing');
  }
  const least = (opening: Site['openings'][number]): number => {
    const { ring, bothWays } = opening;
    const ends = ring.map(({ x }) => x.toNumber());
    const parts = !bothWays && Math.max(...ends) - Math.min(...ends) > limits.leastSide;
    if (!site.orthogonal) return parts ? AS_CORNERS : AS_SLANTED;
    if (!parts || ring.length <= 2 * AS_ROUND) return AS_CORNERS;
    return isSmall(opening, limits) ? AS_SMALL_ROUND : AS_ROUND;
  };
  const inOpenings = site.openings.reduce((sum, o) => sum + Math.max(least(o), weighedCorners(o)), 0);
  withinLimit(site.orthogonal ? SQUARE_CORNERS : SLANTED_CORNERS, site.ring.length + inOpenings, 'outline');
}
