/**
 * Layers in the ground that reach from under one element to under the next: gravel with its margin, a pit with its
 * working room. Where several elements have one, it is bought and dug once, as deep as the deepest.
 *
 * Widened outlines are clipped as they lie on the site, the deepest first: each layer keeps what none before it covers,
 * so that all together are what they cover, each place as deep as the deepest there. Of a pit with sloping sides its
 * bottom counts, straight up: what slopes is left in both, since where two slopes meet depends on both of them.
 */
import type { BaseTonnageFigures } from '../base/base-figures';
import type { ExcavationFigures } from '../base/excavation';
import { coveredArea } from '../geometry/clip';
import { movedRing, turnedRing } from '../geometry/offset';
import { type Corner, doubleArea } from '../geometry/polygon';
import { type Decimal, ZERO } from '../quantity/decimal';
import { constant, ratio } from '../quantity/make';
import { canonicalValue, type Quantity, quantityOf } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import type { System } from '../quantity/units';
import type { Pad } from '../reckoning/pad';
import { type Saying, say } from '../reckoning/words';
import type { Element } from './document';
import { clipped, nearPairs, type Placed, placed, ringsAt } from './overlaps';
import type { WorkedElement, WorkedPart } from './work';

type Area = Quantity<'area'>;
type Length = Quantity<'length'>;
type Ratio = Quantity<'ratio'>;

/** Parts that lay or dig a layer. */
type Earthwork = 'base' | 'excavation';

/** A layer under an element, as it lies on the site. */
interface Layer {
  readonly element: Element;
  readonly rings: readonly Corner[][];
  readonly depth: Length;
  /** All of it, as its calculation has it. */
  readonly area: Area;
}

/** What of the layer of an element others have as well. */
interface Twice extends Pick<Layer, 'element' | 'area'> {
  readonly covered: Area;
}

/** The share of something that an element still takes, with what it is reckoned from. */
export interface Kept {
  readonly element: Element;
  readonly part: Earthwork;
  readonly item: 'base' | 'haul-away' | 'fill';
  /** Its sides slope. */
  readonly sloped: boolean;
  readonly share: Ratio;
  readonly formula: string;
  readonly values: Readonly<Record<string, Quantity>>;
}

const NONE = constant(() => ratio('0:1'));
const ALL = constant(() => ratio('1:1'));

const lengthIn = ({ input }: WorkedPart, name: string): Decimal => {
  const q = readQuantity(input[name], 'length', name);
  return isFaulty(q) ? ZERO : canonicalValue(q);
};

/** Rings widened by as much, openings narrowed; one that closes is none. */
const widened = (rings: readonly Corner[][], by: Decimal): Corner[][] =>
  by.isZero()
    ? [...rings]
    : rings.flatMap((ring, i) => {
        const turned = turnedRing(ring);
        const moved = turned && movedRing(turned, i === 0 ? by : by.negated());
        return moved ? [moved] : [];
      });

const areaOf = (rings: readonly Corner[][], system: System): Area =>
  quantityOf(
    'area',
    rings.reduce((sum, ring, i) => {
      const area = doubleArea(ring).abs().div(2);
      return i === 0 ? area : sum.minus(area);
    }, ZERO),
    system,
  );

/** What a part goes by, as it lies on the site: its outline widened, or all of the element where it has an area alone. */
function ringsUnder({ element }: WorkedElement, { input }: WorkedPart, by: Decimal): Corner[][] | undefined {
  const { outline } = input;
  if (outline === undefined) return ringsAt(element);
  const rings = ringsAt({ ...element, outline, openings: undefined } as Element);
  const wide = rings && widened(rings, by);
  return wide?.[0] && wide;
}

const partOf = ({ parts }: WorkedElement, name: Earthwork): WorkedPart | undefined =>
  parts.find(({ part }) => part === name);

function gravel(worked: WorkedElement, system: System): Layer[] {
  const part = partOf(worked, 'base');
  if (!part) return [];
  const { area, depth } = part.result.figures as BaseTonnageFigures;
  const trim = lengthIn(part, 'edgeTrim');
  const rings = ringsUnder(worked, part, lengthIn(part, 'margin').plus(trim));
  if (!rings) return [];
  // What is trimmed away again is in no area that is told.
  const all = trim.isZero() ? area : areaOf(rings, system);
  return [{ element: worked.element, depth, rings, area: all }];
}

/** How deep a pit goes, with the soil that is replaced. */
function depthsOf({ input }: WorkedPart): { depth: Length; replaced: Length | undefined } | undefined {
  const depth = readQuantity(input['depth'], 'length', 'depth');
  if (isFaulty(depth)) return undefined;
  const { depth: given } = (input['replacement'] ?? {}) as { depth?: unknown };
  const replaced = readQuantity(given, 'length', 'depth');
  return isFaulty(replaced) ? { depth, replaced: undefined } : { depth: depth.plus(replaced), replaced };
}

function pit(worked: WorkedElement): Layer[] {
  const part = partOf(worked, 'excavation');
  const depths = part?.input['kind'] === 'pit' ? depthsOf(part) : undefined;
  const { bottomArea } = (part?.result.figures ?? {}) as ExcavationFigures;
  if (!part || !depths || !bottomArea) return [];
  const rings = ringsUnder(worked, part, lengthIn(part, 'margin'));
  return rings ? [{ element: worked.element, depth: depths.depth, area: bottomArea, rings }] : [];
}

const onEachOther = (a: Element, b: Element): boolean => a.standsOn === b.name || b.standsOn === a.name;

/** The deepest first; of those alike the one from which no concrete is taken, where two overlap. */
function inOrder(layers: readonly Layer[]): Layer[] {
  const later = ({ element }: Layer): number => (element.thickness === undefined ? 0 : 1);
  return [...layers].sort((a, b) => b.depth.compareTo(a.depth) || later(a) - later(b));
}

/** What of each layer those before it cover. */
function coveredIn(layers: readonly Layer[], system: System): Twice[] {
  const from = layers[0]?.rings[0]?.[0];
  if (!from) return [];
  const ordered = inOrder(layers);
  const all = ordered.map(({ element, rings }) => placed(element, rings, from));
  const before = new Map<Placed, Placed[]>();
  for (const [a, b] of nearPairs(all)) {
    if (onEachOther(a.element, b.element)) continue;
    before.set(b, [...(before.get(b) ?? []), a]);
  }
  return all.flatMap((own, i) => {
    const regions = (before.get(own) ?? []).map(({ region }) => region);
    const covered = clipped(coveredArea(own.region, regions), system);
    const { element, area } = ordered[i] as Layer;
    return covered ? [{ element, area, covered }] : [];
  });
}

/** Of several alike, the one that lies there. */
function keptShare(
  formula: string,
  part: Ratio,
  values: Kept['values'],
  { count }: Element,
): Pick<Kept, 'share' | 'formula' | 'values'> {
  const share = ALL().minus(count ? part.over(count) : part);
  return {
    share: share.sign() < 0 ? NONE() : share,
    formula: `k = max(0, 1 − ${formula}${count ? ' ÷ n' : ''})`,
    values: count ? { ...values, n: count } : values,
  };
}

const keptGravel = ({ element, area: W, covered: X }: Twice): Kept => ({
  element,
  part: 'base',
  item: 'base',
  sloped: false,
  ...keptShare('X ÷ W', X.over(W), { X, W }, element),
});

function isSloped({ input }: WorkedPart): boolean {
  const slope = readQuantity(input['sideSlope'], 'ratio', 'sideSlope');
  return !isFaulty(slope) && slope.sign() > 0;
}

function keptDig({ element, covered: X }: Twice, part: WorkedPart): Kept[] {
  const { bankVolume: V, replacement } = part.result.figures as ExcavationFigures;
  const depths = depthsOf(part);
  if (!depths) return [];
  const { depth: D, replaced: u } = depths;
  const of = (item: Kept['item'], d: Length, all: Quantity<'volume'>, symbol: string): Kept => ({
    element,
    part: 'excavation',
    item,
    sloped: isSloped(part),
    ...keptShare(`X × ${symbol} ÷ V`, X.times(d).over(all), { X, [symbol]: d, V: all }, element),
  });
  return [
    of('haul-away', D, V, 'D'),
    ...(replacement && u ? [of('fill', u, replacement.compacted, 'u')] : []),
  ];
}

/** What each element keeps of its gravel and of what is dug for it, where others have some of it too. */
export function keptOf(elements: readonly WorkedElement[], system: System): Kept[] {
  const digs = coveredIn(elements.flatMap(pit), system);
  const bases = coveredIn(
    elements.flatMap((each) => gravel(each, system)),
    system,
  );
  const partsOf = new Map(elements.map((each) => [each.element, partOf(each, 'excavation')]));
  const dug = digs.flatMap((twice) => {
    const part = partsOf.get(twice.element);
    return part ? keptDig(twice, part) : [];
  });
  return [...dug, ...bases.map(keptGravel)];
}

function nameOf({ element: { name }, item, sloped }: Kept): Saying {
  if (item === 'base') return say`${{ name }}, share of its gravel that no other element has`;
  if (item === 'fill') return say`${{ name }}, share of its fill that no other element has`;
  return sloped
    ? say`${{ name }}, share of what is dug for it that no other element has, slopes of the sides left in both`
    : say`${{ name }}, share of what is dug for it that no other element has`;
}

/** Tell it as steps of the working. */
export function noteKept(kept: readonly Kept[], pad: Pad): void {
  for (const one of kept) pad.step(nameOf(one), one.formula, one.values, one.share);
}
