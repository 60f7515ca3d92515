/**
 * Gravel that lies under two elements at once, as deep as the thinner layer, is bought once: it is taken off the
 * element that the concrete is taken off.
 */
import type { BaseTonnageFigures } from '../base/base-figures';
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Element } from './document';
import type { Overlap } from './overlaps';
import type { WorkedElement } from './work';

/** The share of its gravel that an element still takes, for those that take less than all. */
export type GravelKept = ReadonlyMap<Element, Quantity<'ratio'>>;

const baseOf = ({ parts }: WorkedElement): BaseTonnageFigures | undefined =>
  parts.find(({ part }) => part === 'base')?.result.figures as BaseTonnageFigures | undefined;

const NOTHING = constant(() => ratio('0:1'));
const ALL = constant(() => ratio('1:1'));

/** The share of the layer of one that the other has as well. */
function shareOf(
  area: Quantity<'area'>,
  own: BaseTonnageFigures,
  other: BaseTonnageFigures,
): Quantity<'ratio'> {
  const depth = other.depth.lessThan(own.depth) ? other.depth : own.depth;
  return area.times(depth).over(own.area.times(own.depth));
}

/** What each element keeps of its gravel. */
export function gravelKept(elements: readonly WorkedElement[], overlaps: readonly Overlap[]): GravelKept {
  const kept = new Map<Element, Quantity<'ratio'>>();
  const bases = new Map(elements.map((each) => [each.element, baseOf(each)]));
  for (const { first, second, area, stands, less } of overlaps) {
    const [own, other] = [bases.get(less), bases.get(less === first ? second : first)];
    if (stands || !own || !other) continue;
    const share = shareOf(area, own, other);
    const left = (kept.get(less) ?? ALL()).minus(less.count ? share.over(less.count) : share);
    kept.set(less, left.sign() < 0 ? NOTHING() : left);
  }
  return kept;
}
