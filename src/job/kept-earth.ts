/**
 * Earth of the digs that is kept and filled in along the edges: it is neither hauled away nor bought.
 *
 * Both are measured loose: what is dug as it swells, `L = V × (1 + w)`, and what is filled in before it is tamped, `F = G ×
 * (1 + s)`, so that one is set off against the other. What the digs lack is bought. Of a dig that does not say its swell
 * nobody knows how much loose earth it gives, so that nothing is set off.
 */
import { lesserOf } from '../quantity/greater';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import type { Purchase, PurchaseShare } from './purchases';
import * as cautions from './takeoff-cautions';

type Volume = Quantity<'volume'>;

/** What is kept, and what of it the digs do not give. */
export interface KeptEarth {
  readonly kept: Volume;
  readonly lacks: Volume;
}

const isKept = ({ item, of }: Purchase): boolean => item === 'fill' && of['kept'] !== undefined;

const isLoose = ({ item, of }: Purchase): boolean => item === 'haul-away' && of['measured'] === 'loose';

/** A line of which so much is left, each element with its share of that. */
function leftOf<P extends Purchase>(line: P, left: Volume): P[] {
  if (left.sign() <= 0) return [];
  const share = left.over(line.quantity as Volume);
  const by: PurchaseShare[] = line.by.map(({ element, quantity }) => ({
    element,
    quantity: (quantity as Volume).times(share),
  }));
  return [{ ...line, quantity: left, by }];
}

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
  const dug = lines.find(isLoose)?.quantity as Volume | undefined;
  const kept = dug ? lesserOf(fill, dug) : fill.minus(fill);
  const lacks = fill.minus(kept);
  return {
    lines: lines.flatMap((line) => {
      if (isKept(line)) return leftOf({ ...line, of: {} }, lacks);
      return isLoose(line) ? leftOf(line, (line.quantity as Volume).minus(kept)) : [line];
    }),
    earth: { kept, lacks },
  };
}

/** What to do about it. */
export function earthCautions(earth: KeptEarth | undefined): Caution[] {
  if (!earth) return [];
  const { kept, lacks } = earth;
  return [
    ...(kept.sign() > 0 ? [cautions.earthKept(kept)] : []),
    ...(lacks.sign() > 0 ? [cautions.keptEarthShort(lacks)] : []),
  ];
}
