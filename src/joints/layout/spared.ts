/**
 * Openings that the joints may pass by.
 *
 * Straight joints run from edge to edge, so that in a yard with many pits a joint from every corner of every
 * one makes thousands of strips and slivers, which crack more than the corners would. The joints then keep
 * the spacing and meet only those of the small openings that lie on their way; the corners of the others
 * take isolation board all around and bars across, as is common practice.
 */
import { boxOf } from './as-cut';
import type { Mark } from './marks';
import { jointMeets } from './missed';
import { spot } from './orthogonal';
import type { Laid, LaidJoint, PassedBy } from './plan';
import { HAIR, type Limits } from './rules';
import type { Site } from './site';
import { acrossOf } from './space';

type Opening = Site['openings'][number];

/** An opening no wider than half the spacing either way may be passed by, a circle drawn as a polygon included. */
const SMALL = 0.505;

/** With so few openings each is worth a joint of its own, unless it is this small and that cuts up the whole slab. */
const FEW = 4;
const SMALLER = 0.255;

/** To meet few openings cuts up the slab where it makes so many times as many panels, and so many more. */
const CUT_UP = 3;
const MORE = 5;

/** Where it makes so many times as many panels as the spacing asks for to meet all openings, small ones may be passed by. */
export const FAR_MORE = 1.5;

/** True for an opening that joints may pass by, of at most this part of the spacing either way. */
const isWithin = ({ ring, bothWays }: Opening, limits: Limits, part: number): boolean => {
  const { lo, hi } = boxOf(ring);
  const most = part * limits.spacing + HAIR;
  return !bothWays && hi.x - lo.x <= most && hi.y - lo.y <= most;
};

/** True for an opening that may be passed by where there are many. */
export const isSmall = (opening: Opening, limits: Limits): boolean => isWithin(opening, limits, SMALL);

/** The slab with its small openings to be passed by; nothing where it has none. */
export function sparing(site: Site, limits: Limits): Site | undefined {
  const small = site.openings.filter((o) => isSmall(o, limits)).length;
  const part = small > FEW ? SMALL : SMALLER;
  const openings = site.openings.map((o) =>
    isWithin(o, limits, part) ? { ...o, cornered: false, spared: true } : o,
  );
  return openings.some(({ spared }) => spared) ? { ...site, openings } : undefined;
}

/** Whether so many openings may be passed by that not each of them is worth a joint of its own. */
export const areMany = ({ openings }: Site): boolean => openings.filter(({ spared }) => spared).length > FEW;

/** True where to meet the openings makes so many more panels that they are better passed by. */
export const cutsUp = (panels: number, others: number): boolean =>
  panels >= CUT_UP * others && panels >= others + MORE;

/** What the middle of an opening weighs, in corners. */
const AS_CORNERS = 4;

/** The points of an opening that joints are to meet: its corners, or the middle of one without. */
export function marksOf({ corners, center, spared }: Opening): Mark[] {
  const whole = corners.length === 0;
  const weight = spared ? { spared: whole ? AS_CORNERS : 1 } : {};
  return (whole ? [center] : corners).map((c) => ({ ...spot(c), ...weight }));
}

/** Points within this along an axis lie on one line, in meters. */
const ON_LINE = 1e-9;

/** Numbers values, those alike with one number. */
function numbered(values: readonly number[]): number[] {
  const order = values.map((_, i) => i).sort((a, b) => (values[a] as number) - (values[b] as number));
  const numbers = new Array<number>(values.length).fill(0);
  let [number, before] = [-1, Number.NEGATIVE_INFINITY];
  for (const i of order) {
    const value = values[i] as number;
    if (value > before + ON_LINE) number += 1;
    before = value;
    numbers[i] = number;
  }
  return numbers;
}

/**
 * The fewest lines that meet all marks: as many as marks can be picked of which no two lie on one line
 * (König's theorem).
 */
export function fewestLines(marks: readonly Mark[]): number {
  const [xs, ys] = [numbered(marks.map((m) => m.x)), numbered(marks.map((m) => m.y))];
  const on = new Map<number, number[]>();
  xs.forEach((x, i) => {
    on.set(x, [...(on.get(x) ?? []), ys[i] as number]);
  });
  const taken = new Map<number, number>();
  const place = (x: number, seen: Set<number>): boolean =>
    (on.get(x) ?? []).some((y) => {
      if (seen.has(y)) return false;
      seen.add(y);
      const other = taken.get(y);
      if (other !== undefined && !place(other, seen)) return false;
      taken.set(y, x);
      return true;
    });
  let lines = 0;
  for (const x of on.keys()) if (place(x, new Set())) lines += 1;
  return lines;
}

/** True where to meet all openings makes far more panels than the spacing asks for, whatever the plan. */
export function wouldCrowd(site: Site, limits: Limits): boolean {
  const { lo, hi } = boxOf(site.ring);
  const [columns, rows] = (['x', 'y'] as const).map((axis) =>
    Math.ceil((hi[axis] - lo[axis]) / limits.spacing - HAIR),
  ) as [number, number];
  const lines = fewestLines(site.openings.filter((o) => !o.bothWays).flatMap(marksOf));
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k <= lines; k += 1)
    least = Math.min(least, Math.max(columns, k + 1) * Math.max(rows, lines - k + 1));
  return least > FAR_MORE * columns * rows;
}

/** How far from the middle of an opening a joint that is led through it may run, in parts of its size. */
const THROUGH = 0.25;

function ledThrough(opening: Opening, joints: readonly LaidJoint[]): boolean {
  const { lo, hi } = boxOf(opening.ring);
  const center = spot(opening.center);
  return joints.some(({ shape, family, from, to }) => {
    if (shape !== 'straight' || (family !== 'x' && family !== 'y')) return false;
    const across = acrossOf(family);
    const [at, a, b] = [spot(from)[family], spot(from)[across], spot(to)[across]];
    return (
      Math.abs(at - center[family]) <= THROUGH * (hi[family] - lo[family]) &&
      Math.min(a, b) <= hi[across] + ON_LINE &&
      Math.max(a, b) >= lo[across] - ON_LINE
    );
  });
}

/** Which openings the joints of a plan pass by; plan and openings as they lie in the pose. */
export function passedBy(site: Site, laid: Laid): PassedBy[] {
  const meets = jointMeets(laid);
  return site.openings.flatMap((opening, index) => {
    if (!opening.spared) return [];
    const corners = opening.corners.filter((c) => !meets(c)).length;
    const unmet = opening.corners.length > 0 ? corners > 0 : !ledThrough(opening, laid.joints);
    return unmet ? [{ index, at: opening.center, corners }] : [];
  });
}
