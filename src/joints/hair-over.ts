/**
 * A rectangle that is a hair longer than whole spacings, as 6.1 m at 3 m: the spacing is kept, which takes a row of
 * panels more. Nobody draws joints to the inch, so it is worth asking whether they may be that little farther apart.
 */
import { Decimal } from '../quantity/decimal';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { justOverSpacing } from './cautions';
import type { LaidJoint } from './layout/plan';
import type { Site } from './layout/site';
import { MOST_TIMES } from './layout/wide-panels';
import type { LayoutParsed } from './layout-input';
import type { Writer } from './layout-told';
import { type Rules, STEP } from './panel-rules';
import { plain } from './round-slab';

type Length = Quantity<'length'>;

/** So much farther apart, and so much of a spacing over, is a hair: common practice. */
const APART = '1.03';
const OVER = '0.1';

/** One of two sides, and how many rows of panels part it and the other. */
interface Rows {
  readonly side: Decimal;
  readonly rows: number;
  readonly other: Decimal;
}

/** Both ways of a rectangle with nothing in it, whose joints run along its sides. */
function rowsOf({ ring, orthogonal, openings }: Site, joints: readonly LaidJoint[]): Rows[] {
  if (ring.length !== 4 || !orthogonal || openings.length > 0) return [];
  const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
  const sides = [xs, ys].map((at) => Decimal.max(...at).minus(Decimal.min(...at))) as [Decimal, Decimal];
  const families = [...new Set(joints.map(({ family }) => family))];
  const counts = families.map((name) => {
    const own = joints.filter(({ family }) => family === name);
    return { rows: new Set(own.map(({ run }) => run)).size + 1, length: own[0]?.length ?? sides[0] };
  });
  return counts.flatMap(({ rows, length }, i) => {
    // Joints as long as one side part the other; in a square each family parts a side of its own.
    const along = sides[0].equals(sides[1]) ? i : sides.findIndex((side) => side.equals(length));
    const across = (counts[1 - i]?.rows ?? 1) as number;
    const [side, beside] = [sides[1 - along], sides[along]];
    return side && beside ? [{ side, rows, other: beside.div(across) }] : [];
  });
}

/** Joints that far apart would take a row less and still make panels that may be. */
function fartherApart(
  { side, rows, other }: Rows,
  { spacing, longestRatio }: Rules,
  thickness: Length,
): Decimal | undefined {
  const apart = side.div(rows - 1);
  const [s, most] = [canonicalValue(spacing), canonicalValue(thickness).times(MOST_TIMES)];
  const ratio = Decimal.max(apart, other).div(Decimal.min(apart, other));
  const over = side.minus(s.times(rows - 1));
  const isOver = over.greaterThan(0) && !over.greaterThan(s.times(OVER));
  const isHair = isOver && !apart.greaterThan(s.times(APART)) && !apart.greaterThan(most);
  return isHair && !ratio.greaterThan(canonicalValue(longestRatio)) ? apart : undefined;
}

/** Says so where one side is a hair longer than whole spacings. */
export function heedHair(
  input: LayoutParsed,
  { site, joints, write }: { site: Site; joints: readonly LaidJoint[]; write: Writer },
  rules: Rules,
  pad: Pad,
): void {
  if (!plain(input)) return;
  for (const one of rowsOf(site, joints)) {
    const apart = fartherApart(one, rules, input.thickness);
    if (!apart) continue;
    const [side, step] = [write.length(one.side), STEP.like(input.thickness)];
    const few = wholeNumber(one.rows - 1);
    pad.caution(
      justOverSpacing([few, wholeNumber(one.rows)], [side, rules.spacing], write.length(apart).upTo(step)),
    );
    return;
  }
}
