/**
 * What lies inside a flight and is not concrete: an existing footing, a void, a rubble core.
 *
 * A core is a box against the back of the flight. In a straight flight the concrete left over it and
 * before it is worked out: above its front edge, and from its front to the riser beside its top. All cores
 * stand against the back, so together they may be no wider than it.
 */

import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, list, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { coresOverlap } from './faults';
import { CORE_SIDE } from './ordinary';

/** What a core is. */
export type CoreKind = 'footing' | 'void' | 'rubble';

/** A box inside the flight, against its back, on the ground. */
export interface StepCoreInput {
  /** What it is. */
  readonly kind: CoreKind;
  /** From the back toward the front. */
  readonly length: QuantityInput<'length'>;
  /** Side to side. */
  readonly width: QuantityInput<'length'>;
  /** From the ground up. */
  readonly height: QuantityInput<'length'>;
}

type Length = Quantity<'length'>;
type Volume = Quantity<'volume'>;

/** A core, read. */
export interface StepCore {
  readonly kind: CoreKind;
  readonly length: Length;
  readonly width: Length;
  readonly height: Length;
}

/** The straight flight around the cores. */
export interface Around {
  readonly rise: Length;
  /** Depth of the tread behind each riser, from the ground up. */
  readonly treads: readonly Length[];
  readonly width: Length;
  readonly run: Length;
  readonly nosing: Length | undefined;
}

const LEAST_COVER = /*#__PURE__*/ paired('length', '4 in', '100 mm');
const ONE = constant(() => ratio('1:1'));

/** The schema of the cores. */
export const coresField = (): Field<StepCore[]> =>
  list(
    fields({
      kind: choice<CoreKind>('kind', ['footing', 'void', 'rubble']),
      length: quantity('length', 'length', 'positive', CORE_SIDE),
      width: quantity('length', 'width', 'positive', CORE_SIDE),
      height: quantity('length', 'height', 'positive', CORE_SIDE),
    }),
    0,
    50,
  );

/** How far back each riser stands from the first. */
function frontsOf(treads: readonly Length[]): Length[] {
  const [first] = treads as [Length, ...Length[]];
  const fronts = [first.minus(first)];
  treads.slice(0, -1).forEach((tread, i) => {
    fronts.push((fronts[i] as Length).plus(tread));
  });
  return fronts;
}

/**
 * Refuse cores that cannot stand beside each other: all are against the back.
 *
 * @param across - side to side at the back, where that is known
 * @throws {InputError} `does-not-fit`
 */
export function checkSideBySide(cores: readonly StepCore[], across: Length | undefined): void {
  if (!across || cores.length < 2) return;
  const wide = cores.map(({ width }) => width).reduce((sum, w) => sum.plus(w));
  if (wide.greaterThan(across)) refuse('cores', coresOverlap());
}

/** Concrete over the front edge of a core, or before its front, whichever is less. */
function coverOf(core: StepCore, around: Around, i: number, pad: Pad): Length {
  const { rise: r, treads, width: w, run: R, nosing } = around;
  const { length: l, height: h } = core;
  const path = `cores[${i}]`;
  if (core.width.greaterThan(w)) refuse(`${path}.width`, faults.doesNotFit('width', 'that of the flight'));
  const x = R.minus(l);
  if (x.sign() <= 0) refuse(`${path}.length`, faults.doesNotFit('length', 'the run of the flight'));
  const fronts = frontsOf(treads);
  const k = wholeNumber(fronts.filter((front) => !front.greaterThan(x)).length);
  const j = Math.round(h.over(r).upTo(ONE()).toNumber(':1'));
  const before = x.minus(fronts[j - 1] as Length);
  const front = nosing ? before.minus(nosing) : before;
  const above = r.times(k).minus(h);
  if (above.sign() <= 0) refuse(`${path}.height`, faults.doesNotFit('height', 'the steps over the core'));
  if (front.sign() <= 0) refuse(`${path}.length`, faults.doesNotFit('length', 'the steps before the core'));
  pad.step(say`concrete over core ${{ n: i + 1 }}, under step k`, 'c = k × r − h', { k, r, h }, above);
  return front.lessThan(above) ? front : above;
}

/** The cores out of a flight: their volume, and the least concrete around them where that is known. */
export function coresOut(
  gross: Volume,
  cores: readonly StepCore[],
  around: Around | undefined,
  pad: Pad,
): { net: Volume; core: Volume; cover: Length | undefined } {
  const volumes = cores.map(({ kind, length: l, width: w, height: h }, i) =>
    pad.step(say`core ${{ n: i + 1 }}, ${{ kind }}`, 'K = l × w × h', { l, w, h }, l.times(w).times(h)),
  );
  const core = total('cores', 'K', volumes, pad);
  const net = gross.minus(core);
  if (net.sign() <= 0) refuse('cores', faults.doesNotFit('the cores together', 'the flight'));
  pad.step('volume without the cores', 'C = V − K', { V: gross, K: core }, net);
  if (!around) return { net, core, cover: undefined };
  const covers = cores.map((c, i) => coverOf(c, around, i, pad));
  const cover = covers.reduce((least, c) => (c.lessThan(least) ? c : least));
  const least = LEAST_COVER.undercutBy(cover);
  if (least) {
    pad.caution(cautions.thinOverCore(least, cover));
  }
  return { net, core, cover };
}
