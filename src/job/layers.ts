/**
 * Layers in the ground that reach from under one element to under the next: gravel with its margin, a pit with its
 * working room. Where several elements have one, it is bought and dug once, as deep as the deepest.
 *
 * Widened outlines are clipped as they lie on the site, the deepest first: each layer keeps what none before it covers,
 * so that all together are what they cover, each place as deep as the deepest there. Of a pit with sloping sides its
 * bottom counts, straight up: what slopes is left in both, since where two slopes meet depends on both of them. So is soil
 * that is replaced below.
 */
import type { BaseTonnageFigures } from '../base/base-figures';
import type { ExcavationFigures } from '../base/excavation';
import { coveredArea } from '../geometry/clip';
import { movedRing, turnedRing } from '../geometry/offset';
import { type Corner, doubleArea } from '../geometry/polygon';
import type { Decimal } from '../quantity/decimal';
import { pure } from '../quantity/numbers';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { given } from './dig';
import type { Element } from './document';
import { clipped, nearPairs, placed, ringsAt } from './overlaps';
import type { WorkedElement, WorkedPart } from './work';

/** A layer under an element, as it lies on the site. */
interface Layer {
  readonly part: WorkedPart;
  readonly element: Element;
  readonly rings: readonly Corner[][];
  readonly depth: Quantity<'length'>;
  readonly volume: Quantity<'volume'>;
}

/** The share that an element keeps of what a part takes, for those that take less than all. */
export type Kept = ReadonlyMap<WorkedPart, Quantity<'ratio'>>;

const onEachOther = (a: Element, b: Element): boolean => a.standsOn === b.name || b.standsOn === a.name;

/** What a part goes by: its outline, or all of the element where it has an area alone. */
function planOf(element: Element, { input: { outline, openings } }: WorkedPart): Element {
  return outline === undefined ? element : ({ ...element, outline, openings } as Element);
}

/**
 * A plan that reaches beyond its outline by a margin. Openings stay as they are; the hole of a ring, which comes last,
 * closes from all around.
 */
function ringsUnder(plan: Element, margin: Quantity<'length'> | undefined): Corner[][] {
  const rings = ringsAt(plan) ?? [];
  if (!margin?.sign()) return rings;
  const fixed = (plan.openings as readonly unknown[] | undefined)?.length ?? 0;
  return rings.map((ring, i) => {
    if (i > 0 && i <= fixed) return ring;
    const turned = turnedRing(ring);
    const by = canonicalValue(i === 0 ? margin : margin.negated());
    return (turned && movedRing(turned, by)) ?? ring;
  });
}

/** Twice the area within rings, of which the first is the outer one. */
const twiceWithin = ([outer = [], ...holes]: readonly Corner[][]): Decimal =>
  holes.reduce((rest, hole) => rest.minus(doubleArea(hole).abs()), doubleArea(outer).abs());

/** A layer where it lies. Gravel that is placed beyond its margin and cut off again is bought too. */
function lyingLayer(part: WorkedPart, element: Element): Layer[] {
  const layer = layerOf(part);
  if (!layer) return [];
  const plan = planOf(element, part);
  const [margin, trim] = [given(part, 'margin'), part.part === 'base' ? given(part, 'edgeTrim') : undefined];
  const rings = ringsUnder(plan, margin);
  if (!trim?.sign() || rings.length === 0) return [{ part, element, rings, ...layer }];
  const wider = ringsUnder(plan, margin ? margin.plus(trim) : trim);
  const share = pure(twiceWithin(wider).div(twiceWithin(rings)));
  return [{ part, element, rings: wider, depth: layer.depth, volume: layer.volume.times(share) }];
}

/** How deep a layer is and all of it, as its calculation has it. */
function layerOf(part: WorkedPart): Pick<Layer, 'depth' | 'volume'> | undefined {
  const { figures } = part.result;
  if (part.part === 'base') {
    const { depth, compactedVolume } = figures as BaseTonnageFigures;
    return { depth, volume: compactedVolume };
  }
  const depth = given(part, 'depth');
  const { bankVolume } = figures as ExcavationFigures;
  return depth && part.input['kind'] === 'pit' ? { depth, volume: bankVolume } : undefined;
}

/** What is left of a layer less what those before it cover. */
function leftOf({ element: { count }, depth, volume }: Layer, covered: Quantity<'area'>): Quantity<'ratio'> {
  // Of several alike, the one that lies there.
  const all = count ? volume.times(count) : volume;
  const left = all.minus(covered.times(depth));
  return (left.sign() < 0 ? left.minus(left) : left).over(all);
}

/** What each part keeps of the gravel and of what is dug, where others have some of it too. */
export function keptOf(elements: readonly WorkedElement[], system: System): Kept {
  const kept = new Map<WorkedPart, Quantity<'ratio'>>();
  for (const name of ['base', 'excavation']) {
    const layers = elements.flatMap(({ element, parts }) =>
      parts.filter(({ part }) => part === name).flatMap((part) => lyingLayer(part, element)),
    );
    const lying = layers.filter(({ rings }) => rings[0]).sort((a, b) => b.depth.compareTo(a.depth));
    const from = lying[0]?.rings[0]?.[0] as Corner;
    const all = lying.map((layer) => ({ ...layer, ...placed(layer.element, layer.rings, from) }));
    const near = nearPairs(all);
    for (const own of all) {
      const before = near.filter(([a, b]) => b === own && !onEachOther(a.element, b.element));
      const others = before.map(([{ region }]) => region);
      const covered = clipped(coveredArea(own.region, others), system);
      if (covered) kept.set(own.part, leftOf(own, covered));
    }
  }
  return kept;
}
