/** Footings thinner than the 6 in that building codes have at least: the load of a wall breaks them along its face. */

import { lesserOf } from '../quantity/greater';
import { constant, length } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { thinFooting } from './cautions';
import { names } from './frost';

type Length = Quantity<'length'>;

/** 150 mm is a footing of 6 in. */
const LEAST = constant(() => length('150 mm'));
const SHOWN = /*#__PURE__*/ paired('length', '6 in', '150 mm');

/** Says which footings are thinner. */
export function heedThinFootings(
  footings: readonly { readonly name: string; readonly depth: Length | undefined }[],
  pad: Pad,
): void {
  const thin = footings.flatMap(({ name, depth }) => (depth?.lessThan(LEAST()) ? [{ name, depth }] : []));
  const [first, ...others] = thin;
  if (!first) return;
  const actual = others.reduce((least, { depth }) => lesserOf(least, depth), first.depth);
  pad.caution(thinFooting(names(thin), SHOWN.as(pad.system), actual));
}
