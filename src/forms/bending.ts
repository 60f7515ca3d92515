/**
 * Forms around curves: boards that are bent, boards with saw kerfs, and thin layers.
 *
 * A board `t` thick bent to a radius `R` is strained by `t ÷ (2 × R)` at its faces; half a percent is what dry softwood
 * and hardboard take, so that `R` is no less than 100 × `t`. Kerfs `k` wide close by as much as the outer arc of a board
 * is longer than its inner one, `t × L ÷ R`: `n = ceil(t × L ÷ (R × k))`, which are `L ÷ n` apart. Layers `t` thick make
 * up the board in `n = ceil(T ÷ t)`.
 */

import { small } from '../grade/marks';
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Field, fields, kinds, maybe, quantity, whole, wholeNumber, word } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import { timesUp } from '../reckoning/whole';
import { say } from '../reckoning/words';
import type { Edge } from './boarding';
import * as cautions from './cautions';
import { BEND, LAYER, SAW_KERF, SHEET } from './ordinary';

/** Boards bent as they are. */
export interface BentInput {
  /** Always `bent`. */
  readonly kind: 'bent';
  /** The least radius for a board's thickness; by default 100 times. */
  readonly bend?: QuantityInput<'ratio'>;
}

/** Boards with saw cuts across their backs. */
export interface KerfedInput {
  /** Always `kerfed`. */
  readonly kind: 'kerfed';
  /** Width of a saw cut. */
  readonly width: QuantityInput<'length'>;
}

/** Strips of plywood or hardboard, in layers. */
export interface LayersInput {
  /** Always `layers`. */
  readonly kind: 'layers';
  /** Thickness of a layer. */
  readonly thickness: QuantityInput<'length'>;
  /** How many layers; by default as many as are as thick as the boards. */
  readonly layers?: number;
  /** The sheet that strips are cut from, along its length. */
  readonly sheet: {
    /** Its length. */
    readonly length: QuantityInput<'length'>;
    /** Its width. */
    readonly width: QuantityInput<'length'>;
  };
  /** The least radius for a layer's thickness; by default 100 times. */
  readonly bend?: QuantityInput<'ratio'>;
}

/** How curves are formed. */
export type CurvesInput = BentInput | KerfedInput | LayersInput;

/** How curves are formed, read. */
export type Curves = Read<CurvesInput>;

type Length = Quantity<'length'>;

/** Kerfs in the boards of an edge. */
export interface Kerfed {
  /** Saw cuts in the boards of the edge. */
  readonly kerfs?: Quantity<'count'>;
  /** How far apart they are. */
  readonly kerfSpacing?: Quantity<'length'>;
}

const PLIANT = constant(() => ratio('100:1'));
/** Closer than this, what stands between two kerfs breaks out. */
const LAND = paired('length', '1/2 in', '12 mm');
/** No edge has more. */
export const MOST_KERFS: Limit = { of: 'the saw kerfs of one edge', most: 20_000 };

/** How curves are read. */
export const curves = (): Field<Curves> =>
  kinds('kind', [
    fields({ kind: word('bent'), bend: maybe(quantity('ratio', 'bend', 'positive', BEND)) }),
    fields({ kind: word('kerfed'), width: quantity('length', 'width', 'positive', SAW_KERF) }),
    fields({
      kind: word('layers'),
      thickness: quantity('length', 'thickness', 'positive', LAYER),
      layers: maybe(whole('layers', 1, 20)),
      sheet: fields({
        length: quantity('length', 'length', 'positive', SHEET),
        width: quantity('length', 'width', 'positive', SHEET),
      }),
      bend: maybe(quantity('ratio', 'bend', 'positive', BEND)),
    }),
  ]) as Field<Curves>;

/** The least radius that a board or a layer of that thickness is bent to. */
export function leastRadius(t: Length, given: Quantity<'ratio'> | undefined, pad: Pad): Length {
  const c = given ?? PLIANT();
  if (!given) {
    pad.assume({
      name: 'curves.bend',
      value: c,
      because:
        'dry softwood, plywood and hardboard break when their faces are strained by more than about 0.5%',
      override: 'Give curves.bend, by a trial with the boards at hand',
      source: COMMON_PRACTICE,
    });
  }
  return pad.step('least radius', 'R = c × t', { c, t }, c.times(t));
}

/** The tightest of the curves. */
export const tightest = (edges: readonly Edge[]): Length | undefined =>
  edges.reduce<Length | undefined>(
    (most, { radius }) => (radius && (!most || radius.lessThan(most)) ? radius : most),
    undefined,
  );

/** Whether what is bent goes around the tightest curve. */
export function heedRadius(edges: readonly Edge[], least: Length, pad: Pad): void {
  const r = tightest(edges);
  if (!r?.lessThan(least)) return;
  const isOpening = edges.some(({ radius, path }) => radius === r && path === 'openings');
  const limit = least.in(r.shownIn ?? r.unit);
  pad.caution((isOpening ? cautions.tightOpening : cautions.tightCurve)(limit, r));
}

/** The kerfs of an edge. */
export function kerfsOf(edge: Edge, t: Length, k: Length, pad: Pad): Kerfed {
  const { length: L, radius: R, name, path } = edge;
  if (!R) return {};
  const D = pad.step(
    say`outer arc longer than the inner one, ${{ name }}`,
    'D = t × L ÷ R',
    { t, L, R },
    small(t.times(L).over(R)),
  );
  withinTimes(MOST_KERFS, D.over(k), path);
  const count = timesUp(D, k);
  const even = k.times(wholeNumber(count)).compareTo(D) === 0;
  const n = pad.step(
    say`saw kerfs, ${{ name }}`,
    even ? 'n = D ÷ k' : 'n = ceil(D ÷ k)',
    { D, k },
    wholeNumber(count),
  );
  const kerfSpacing = pad.step(say`kerfs apart, ${{ name }}`, 's = L ÷ n', { L, n }, small(L.over(n)));
  const limit = LAND.undercutBy(kerfSpacing);
  if (limit) pad.caution(cautions.kerfsClose(limit, kerfSpacing));
  return { kerfs: n, kerfSpacing };
}

/** How many layers of a thickness make up a board. */
export function layersFor(
  T: Length,
  t: Length,
  given: Quantity<'count'> | undefined,
  pad: Pad,
): Quantity<'count'> {
  if (given) return given;
  const n = wholeNumber(timesUp(T, t));
  pad.assume({
    name: 'curves.layers',
    value: { reckoned: n },
    because: say`so many of ${{ t }} are as thick as the boards`,
    override: 'Give curves.layers',
    source: COMMON_PRACTICE,
  });
  return n;
}
