/**
 * Whether what stands in the ground reaches below frost.
 *
 * Ground that freezes under concrete lifts it. How deep it freezes is for the local building department to
 * say, so it is never assumed: where it is not given, that is noted once. Nothing is said of what stands
 * inside a heated building, nor where the depth is given as nothing.
 *
 * Source: International Residential Code R403.1.4, as summarized (see `sources.ts`).
 */

import type { LengthInput } from '../outline/outline';
import { constant, length } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { type Field, maybe, quantity, yesOrNo } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import * as cautions from './cautions';
import { FROST_DEPTH, UNDERSIDE } from './ordinary';

type Length = Quantity<'length'>;

/** How a body stands in the ground. */
export interface FoundedInput {
  /** How deep its underside lies below the ground outside. */
  readonly founded?: LengthInput;
  /** True inside a heated building, where frost does not reach. */
  readonly indoors?: boolean;
}

/** How a body stands in the ground, read. */
export interface Founded {
  readonly founded: Length | undefined;
  readonly indoors: boolean | undefined;
}

/** The fields of {@link Founded}, to be spread into the schema of a body. */
export const foundedFields = (): {
  founded: Field<Length | undefined>;
  indoors: Field<boolean | undefined>;
} => ({
  founded: maybe(quantity('length', 'founded', 'not-negative', UNDERSIDE)),
  indoors: maybe(yesOrNo('indoors')),
});

/** The schema of the depth of frost. */
export const frostField = (): Field<Length | undefined> =>
  maybe(quantity('length', 'frostDepth', 'not-negative', FROST_DEPTH));

/** A body by its name, with its depth where that is known. */
export interface Standing extends Founded {
  readonly name: string;
  /** It cannot reach deeper than this: its height, where its underside is not given. */
  readonly atMost?: Length;
}

/** Below both it is shallow, so that the nominal sizes of either system are not. */
const LEAST = /*#__PURE__*/ paired('length', '12 in', '300 mm');

/** Names of bodies, the first five of many. */
export const names = (bodies: readonly { readonly name: string }[]): string => {
  const all = bodies.map(({ name }) => name);
  return all.length > 5 ? `${all.slice(0, 5).join(', ')} and ${all.length - 5} more` : all.join(', ');
};

const depthOf = (body: Standing): Length => (body.founded ?? body.atMost) as Length;

const shallowest = (bodies: readonly Standing[]): Length =>
  bodies.map(depthOf).reduce((least, depth) => (depth.lessThan(least) ? depth : least));

/** Deeper than the ground freezes anywhere that flatwork is placed. */
const ANY_FROST = constant(() => length('10 ft'));

function beyondAnyFrost(body: Standing): boolean {
  const depth = body.founded ?? body.atMost;
  return depth !== undefined && !depth.lessThan(ANY_FROST());
}

function assumeAllInGround(bodies: readonly Standing[], pad: Pad): void {
  if (bodies.every(({ founded }) => founded)) return;
  pad.assume({
    name: 'founded',
    value: 'as deep as high',
    because: 'all of the height is taken to be in the ground',
    override: 'Give founded: how deep the underside lies below the ground',
    source: COMMON_PRACTICE,
  });
}

/** Caution about bodies above frost, or too close to the ground. */
export function heedFrost(all: readonly Standing[], frost: Length | undefined, pad: Pad): void {
  const outside = all.filter(({ indoors }) => !indoors);
  const known = outside.filter((body) => body.founded ?? body.atMost);
  const above = frost ? known.filter((body) => depthOf(body).lessThan(frost)) : [];
  const unknown = outside.filter((body) => (frost ? !known.includes(body) : !beyondAnyFrost(body)));
  if (frost && known.length > 0) assumeAllInGround(known, pad);
  if (frost && above.length > 0) pad.caution(cautions.aboveFrost(names(above), frost, shallowest(above)));
  if (unknown.length > 0 && frost?.sign() !== 0) pad.caution(cautions.unknownFrost(names(unknown), frost));
  const shallow = known.filter(
    (body) => !above.includes(body) && LEAST.undercutBy(depthOf(body)) !== undefined,
  );
  if (shallow.length > 0) {
    const actual = shallowest(shallow);
    pad.caution(cautions.shallowFooting(names(shallow), LEAST.like(actual), actual));
  }
}
