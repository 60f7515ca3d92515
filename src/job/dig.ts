/**
 * Whether a slab and its gravel fill what is dug for them: where they do not, the slab lies above the ground beside it or
 * below it, and nobody sees that in the figures of either.
 */
import type { BaseTonnageFigures } from '../base/base-figures';
import type { ExcavationFigures } from '../base/excavation';
import type { SlabVolumeFigures } from '../concrete/slab-volume';
import { constant, length, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Caution } from '../reckoning/result';
import { concreteOf, sumOf } from './fill';
import * as cautions from './takeoff-cautions';
import type { WorkedElement, WorkedPart } from './work';

type Length = Quantity<'length'>;

/** Nobody digs closer than that. */
const CLOSE = constant(() => length('15 mm'));
/** Slabs are set an inch or two above the ground beside them, so that no water runs onto them. */
const PROUD = paired('length', '2 1/2 in', '60 mm');

/** A length that a part was given; nothing where it was not, or cannot be read. */
export function given(part: WorkedPart | undefined, name: string): Length | undefined {
  const read = readQuantity(part?.input[name], 'length', name);
  return isFaulty(read) ? undefined : read;
}

/** How a pit is out of step with the slab and the gravel that go into it. */
function outOfStep({ index, parts }: WorkedElement): Caution[] {
  const of = (name: string) => parts.find(({ part }) => part === name);
  const [pit, base] = [of('excavation'), of('base')];
  const [dug, slab] = [given(pit, 'depth'), given(of('slab'), 'thickness')];
  if (pit?.input['kind'] !== 'pit' || !base || !dug || !slab) return [];
  const fills = slab.plus((base.result.figures as BaseTonnageFigures).depth);
  const over = dug.minus(fills);
  const proud = over.negated();
  if (!over.greaterThan(CLOSE()) && !PROUD.exceededBy(proud)) return [];
  const told =
    over.sign() > 0 ? cautions.dugTooDeep(dug, fills, over) : cautions.dugTooShallow(dug, fills, proud);
  return [{ ...told, input: `elements[${index}].excavation.depth` }];
}

/** What of a slab lies below its underside, where its pit is dug flat. */
function belowPit({ element: { count }, parts }: WorkedElement): Quantity<'volume'> | undefined {
  const of = (name: string) => parts.find(({ part }) => part === name);
  if (of('excavation')?.input['kind'] !== 'pit') return undefined;
  const { edgeVolume, beamVolume } = (of('slab')?.result.figures ?? {}) as Partial<SlabVolumeFigures>;
  const below = sumOf([edgeVolume, beamVolume].flatMap((volume) => (volume ? [volume] : [])));
  return count ? below?.times(count) : below;
}

const ONE = constant(() => wholeNumber(1));

/** Trenches in which nothing of their own is poured: those of thickened edges and beams. */
const bareTrench = ({ element: { count = ONE() }, parts }: WorkedElement): Quantity<'volume'>[] =>
  concreteOf(parts.map(({ result }) => result))
    ? []
    : parts.flatMap(({ part, input, result }) =>
        part === 'excavation' && input['kind'] === 'trench'
          ? [(result.figures as ExcavationFigures).bankVolume.times(count)]
          : [],
      );

/** Trenches are measured between each other's corners, so that they come to a little less than what is poured. */
const NEARLY = constant(() => ratio('90%'));

/** Edges and beams that no pit is dug for, and no trench beside it. */
function notDug(elements: readonly WorkedElement[]): Caution[] {
  const below = elements.map((element) => [element, belowPit(element)] as const);
  const poured = sumOf(below.flatMap(([, volume]) => (volume ? [volume] : [])));
  const trenches = sumOf(elements.flatMap(bareTrench));
  if (!poured || (trenches && !trenches.lessThan(poured.times(NEARLY())))) return [];
  return below.flatMap(([{ index }, volume]) =>
    volume ? [{ ...cautions.edgeNotDug(volume), input: `elements[${index}].slab` }] : [],
  );
}

/** What to watch out for where a pit is deeper than what goes into it, less deep, or flat where that is not. */
export const digCautions = (elements: readonly WorkedElement[]): Caution[] => [
  ...elements.flatMap(outOfStep),
  ...notDug(elements),
];
