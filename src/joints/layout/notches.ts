/**
 * Small notches that the joints may pass by.
 *
 * Joints are planned as if the notch were filled, and panels and joints then cut from the edge as it is. The corner
 * that no joint meets takes bars across it.
 */
import type { Corner } from '../../geometry/polygon';
import { same } from './exact';
import { HAIR, type Limits } from './rules';
import type { Site } from './site';

/** A notch no larger than this part of the spacing either way may be passed by. */
const SMALL = 0.25;

const across = (a: Corner, b: Corner): number =>
  Math.abs(a.x.minus(b.x).toNumber()) + Math.abs(a.y.minus(b.y).toNumber());

/** True where a ring of sides along x and y, counterclockwise, turns to the right at the second corner. */
const isInside = (a: Corner, b: Corner, c: Corner): boolean =>
  b.x
    .minus(a.x)
    .times(c.y.minus(b.y))
    .minus(b.y.minus(a.y).times(c.x.minus(b.x)))
    .isNegative();

/** The ring with the first small notch filled that a corner was cut out by; nothing where there is none. */
function withOneFilled(ring: readonly Corner[], most: number): Corner[] | undefined {
  const n = ring.length;
  const at = (i: number): Corner => ring[(i + n) % n] as Corner;
  for (let i = 0; i < n && n > 4; i += 1) {
    const [before, a, b, c, after] = [at(i - 2), at(i - 1), at(i), at(i + 1), at(i + 2)];
    const small = across(a, b) <= most && across(b, c) <= most;
    if (!small || !isInside(a, b, c) || isInside(before, a, b) || isInside(b, c, after)) continue;
    const corner = same(a.x, b.x) ? { x: c.x, y: a.y } : { x: a.x, y: c.y };
    const gone = [i - 1, i, i + 1].map((k) => (k + n) % n);
    return ring.flatMap((p, k) => (k === (i + n) % n ? [corner] : gone.includes(k) ? [] : [p]));
  }
  return undefined;
}

/** The slab with its small notches to be passed by, and how many; nothing where it has none. */
export function filled(
  site: Site,
  limits: Limits,
): { readonly site: Site; readonly passed: number } | undefined {
  const bound = site.fixed.length + site.continued.length > 0;
  if (!site.orthogonal || bound) return undefined;
  const most = SMALL * limits.spacing + HAIR;
  let [ring, passed] = [site.ring, 0];
  for (let next = withOneFilled(ring, most); next; next = withOneFilled(ring, most)) {
    [ring, passed] = [next, passed + 1];
  }
  return passed > 0 ? { site: { ...site, ring, filled: true }, passed } : undefined;
}
