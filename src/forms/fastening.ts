/** Nails or screws, and release, by what is formed: `n = stakes × a + cleats × b + braces × c`, and `V = A ÷ C × B`. */

import { readTheLabel } from '../finish/cautions';
import { CONTAINER, COVERED, MEASURE } from '../finish/ordinary';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { choice, type Field, fields, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import { wholeUnits } from '../reckoning/whole';

/** What holds the boards. */
export interface FastenersInput {
  /** What they are. */
  readonly kind: 'double-headed-nails' | 'screws';
  /** How many go through a stake into each board; by default 2. */
  readonly perStake?: number;
  /** How many go into a cleat over a joint; by default 8. */
  readonly perCleat?: number;
  /** How many go into a brace, at both its ends; by default 4. */
  readonly perBrace?: number;
  /** How many are in a box, where boxes are wanted. */
  readonly box?: number;
}

/** Release on the faces of the boards. */
export interface ReleaseInput {
  /** The area that a measure of it covers, by its data sheet. */
  readonly covers: QuantityInput<'area'>;
  /** That measure: 1 gal, 1 L. */
  readonly measure: QuantityInput<'volume'>;
  /** What one container holds, where containers are wanted. */
  readonly container?: QuantityInput<'volume'>;
}

type Count = Quantity<'count'>;

/** What is held. */
export interface Held {
  readonly stakes: Count;
  readonly courses: Count;
  readonly cleats: Count;
  readonly braces: Count;
}

/** Nails or screws. */
export interface Fastened {
  /** How many. */
  readonly fasteners: Quantity<'count'>;
  /** Whole boxes of them. */
  readonly boxes?: Quantity<'count'>;
}

/** So much release. */
export interface Released {
  /** In one go. */
  readonly volume: Quantity<'volume'>;
  /** Whole containers. */
  readonly containers?: Quantity<'count'>;
}

const USUAL = { perStake: 2, perCleat: 8, perBrace: 4 } as const;
const FASTENERS: Limit = { of: 'the nails or screws of one job', most: 10_000_000 };

/** How fasteners are read. */
export const fastenersField = (): Field<Read<FastenersInput>> =>
  fields({
    kind: choice('kind', ['double-headed-nails', 'screws'] as const),
    perStake: maybe(whole('perStake', 1, 20)),
    perCleat: maybe(whole('perCleat', 1, 50)),
    perBrace: maybe(whole('perBrace', 1, 50)),
    box: maybe(whole('box', 1, 100_000)),
  });

/** How release is read. */
export const releaseField = (): Field<Read<ReleaseInput>> =>
  fields({
    covers: quantity('area', 'covers', 'positive', COVERED),
    measure: quantity('volume', 'measure', 'positive', MEASURE),
    container: maybe(quantity('volume', 'container', 'positive', CONTAINER)),
  });

function usual(given: Read<FastenersInput>, name: keyof typeof USUAL, because: string, pad: Pad): Count {
  const told = given[name];
  if (told) return told;
  const n = wholeNumber(USUAL[name]);
  pad.assume({
    name: `fasteners.${name}`,
    value: n,
    because,
    override: `Give fasteners.${name}`,
    source: COMMON_PRACTICE,
  });
  return n;
}

/** How many nails or screws hold it all. */
export function fastened(
  given: Read<FastenersInput>,
  { stakes: k, courses: c, cleats: x, braces: z }: Held,
  pad: Pad,
): Fastened {
  const a = usual(given, 'perStake', 'two keep a board from turning', pad);
  const b = x.sign() > 0 ? usual(given, 'perCleat', 'four into each board end', pad) : wholeNumber(0);
  const d = z.sign() > 0 ? usual(given, 'perBrace', 'two at each end', pad) : wholeNumber(0);
  const each = (n: Count): number => n.toNumber('each');
  const sum = each(k) * each(c) * each(a) + each(x) * each(b) + each(z) * each(d);
  withinLimit(FASTENERS, sum, 'fasteners');
  const n = pad.step(
    'nails or screws',
    'n = k × c × a + x × b + z × d',
    { k, c, a, x, b, z, d },
    wholeNumber(sum),
  );
  const { box } = given;
  if (!box) return { fasteners: n };
  const boxes = wholeNumber(Math.ceil(sum / each(box)));
  const even = sum % each(box) === 0;
  return {
    fasteners: n,
    boxes: pad.step('boxes', even ? 'm = n ÷ u' : 'm = ceil(n ÷ u)', { n, u: box }, boxes),
  };
}

/** Release on the faces. */
export function released(given: Read<ReleaseInput>, A: Quantity<'area'>, pad: Pad): Released {
  const { covers: C, measure: B, container } = given;
  const V = pad.step('release', 'V = B × (A ÷ C)', { B, A, C }, B.times(A.over(C)));
  pad.caution(readTheLabel);
  if (!container) return { volume: V };
  return {
    volume: V,
    containers: wholeUnits('containers of release', V, container, 'release.container', pad),
  };
}
