/**
 * Earth of the digs that is kept and filled in along the edges: it is neither hauled away nor bought.
 *
 * Both are measured loose: what is dug as it swells, `L = V × (1 + w)`, and what is filled in before it is tamped, `F = G ×
 * (1 + s)`, so that one is set off against the other. What the digs lack is bought. Of a dig that does not say its swell
 * nobody knows how much loose earth it gives, so that nothing is set off.
 */
import { lesserOf } from '../quantity/greater';
import type { Quantity } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { isRecord } from '../reckoning/record';
import type { Caution } from '../reckoning/result';
import type { Raw } from './document';
import type { Purchase, PurchaseShare } from './purchases';
import * as cautions from './takeoff-cautions';
import type { Bench, WorkedElement, WorkedPart } from './work';

type Volume = Quantity<'volume'>;

/** What is kept, and what of it the digs do not give. */
export interface KeptEarth {
  readonly kept: Volume;
  readonly lacks: Volume;
  /** What each element keeps of its dig: all alike, as nobody knows which is dug first. */
  readonly by: readonly PurchaseShare[];
}

const isKept = ({ item, of }: Purchase): boolean => item === 'fill' && of['kept'] !== undefined;

const isLoose = ({ item, of }: Purchase): boolean => item === 'haul-away' && of['measured'] === 'loose';

/** So much of a line, as each element has it. */
function shared({ by, quantity }: Purchase, part: Volume): PurchaseShare[] {
  if (quantity.sign() === 0) return [];
  const share = part.over(quantity as Volume);
  return by.map((own) => ({ element: own.element, quantity: (own.quantity as Volume).times(share) }));
}

/** A line of which so much is left, each element with its share of that. */
const leftOf = <P extends Purchase>(line: P, left: Volume): P[] =>
  left.sign() > 0 ? [{ ...line, quantity: left, by: shared(line, left) }] : [];

/**
 * The lines with what is kept taken off what is hauled away; what the digs lack is fill like any other.
 *
 * @param lines - of a kind as one
 */
export function keepEarth<P extends Purchase>(
  lines: readonly P[],
): { readonly lines: P[]; readonly earth?: KeptEarth } {
  const wanted = lines.find(isKept);
  if (!wanted) return { lines: [...lines] };
  const fill = wanted.quantity as Volume;
  const loose = lines.find(isLoose);
  const dug = loose?.quantity as Volume | undefined;
  const kept = dug ? lesserOf(fill, dug) : fill.minus(fill);
  const lacks = fill.minus(kept);
  return {
    lines: lines.flatMap((line) => {
      if (isKept(line)) return leftOf({ ...line, of: {} }, lacks);
      return isLoose(line) ? leftOf(line, (line.quantity as Volume).minus(kept)) : [line];
    }),
    earth: { kept, lacks, by: loose ? shared(loose, kept) : [] },
  };
}

/** A dig told what of it stays, so that no truck is counted for that. */
function toldStays(dig: WorkedPart, own: Quantity, bench: Bench): WorkedPart {
  const haul = dig.input['haul'] as Raw;
  const said = readQuantity(haul['stays'], 'volume', 'stays');
  const stays = isFaulty(said) ? own : said.plus(own as Volume);
  const { element, part, id, input, place } = dig;
  return bench.reckon({ element, part, id }, { ...input, haul: { ...haul, stays } }, place) ?? dig;
}

/** Elements whose digs say what trucks take it away, told what of them stays. */
export const stayingTold = (
  elements: readonly WorkedElement[],
  earth: KeptEarth | undefined,
  bench: Bench,
): WorkedElement[] =>
  elements.map((worked) => {
    const { name, count } = worked.element;
    const all = earth?.by.find(({ element }) => element === name)?.quantity as Volume | undefined;
    const own = all && count ? all.over(count) : all;
    const isTold = ({ part, input }: WorkedPart): boolean => part === 'excavation' && isRecord(input['haul']);
    if (!own || own.sign() <= 0) return worked;
    return { ...worked, parts: worked.parts.map((one) => (isTold(one) ? toldStays(one, own, bench) : one)) };
  });

/** What to do about it. */
export function earthCautions(earth: KeptEarth | undefined): Caution[] {
  if (!earth) return [];
  const { kept, lacks } = earth;
  return [
    ...(kept.sign() > 0 ? [cautions.earthKept(kept)] : []),
    ...(lacks.sign() > 0 ? [cautions.keptEarthShort(lacks)] : []),
  ];
}
