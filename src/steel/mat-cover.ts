/**
 * Whether bars have the concrete around them that they need: at edges, above and below.
 *
 * A slab on ground is often too thin for the cover against earth below its bars and that in the weather above
 * them. Bars of an only mat therefore do as well between the middle of the slab and its upper third.
 */
import * as faults from '../quantity/faults';
import { inSystem } from '../quantity/like-unit';
import { constant, length } from '../quantity/make';
import { Paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { diameterOf } from './bars';
import { EARTH_COVER, type Exposure, faceCoverFor } from './cover';
import { belowMiddle, bottomCover, earthCover, earthEdge, edgeCover, noRoom, topCover } from './mat-cautions';
import type { ParsedMat, ParsedRegion } from './rebar-fields';

type Length = Quantity<'length'>;

const TWO = constant(() => wholeNumber(2));
/** What bars may lie off their place; City of Austin, Item 406S.8, prints 1/4 in for the cover. */
const TOLERANCE = constant(() => length('1/4 in'));

const thickest = (mats: readonly ParsedMat[]): Length =>
  mats
    .flatMap((m) => [diameterOf(m.bar), diameterOf(m.barAcross ?? m.bar)])
    .reduce((a, b) => (a.lessThan(b) ? b : a));

const exposureOf = ({ exposure }: ParsedRegion): Exposure => exposure ?? 'weather';

/** Cover at the edges: formed ones bear the weather, others lie against earth; where it is not told, both may be there. */
export function heedEdges(input: ParsedRegion, cover: Length, pad: Pad): void {
  const formed = faceCoverFor(thickest(input.mats), exposureOf(input));
  const earth = EARTH_COVER;
  const { edges } = input;
  if (edges === 'ground' && earth.undercutBy(cover)) pad.caution(earthCover(earth.like(cover), cover));
  else if (formed.undercutBy(cover)) pad.caution(edgeCover(formed.like(cover), cover));
  else if (!edges && earth.undercutBy(cover)) pad.caution(earthEdge(earth.like(cover), cover));
}

/** Two bars cross in a mat. */
const layersOf = ({ bar, barAcross }: ParsedMat): Length =>
  diameterOf(bar).plus(diameterOf(barAcross ?? bar));

/** Concrete above and below the mats, as far as it is known. */
interface Around {
  readonly above?: Length;
  readonly below?: Length;
}

function checkFit({ mats, thickness }: ParsedRegion): void {
  let left = thickness;
  mats.forEach((mat, i) => {
    if (!mat.faceCover || !left || !thickness) return;
    const path = `mats[${i}].faceCover`;
    left = left.minus(mat.faceCover).minus(layersOf(mat));
    if (left.sign() < 0) refuse(path, faults.doesNotFit('the cover and the bars', 'the thickness'));
  });
}

/** The other side of an only mat is known from the thickness. */
function around({ mats, thickness }: ParsedRegion): Around {
  const [only, second] = mats;
  if (only?.faceCover && !second && thickness) {
    const other = thickness.minus(only.faceCover).minus(layersOf(only));
    return only.layer === 'top'
      ? { above: only.faceCover, below: other }
      : { above: other, below: only.faceCover };
  }
  const of = (layer: ParsedMat['layer']): Length | undefined =>
    mats.find((m) => m.layer === layer)?.faceCover;
  const [above, below] = [of('top'), of('bottom')];
  return { ...(above ? { above } : {}), ...(below ? { below } : {}) };
}

/**
 * The thinnest slab in which mats have their cover wherever they are held: an only one at the middle with the cover
 * of its top on both sides, two with that against the ground below.
 */
function leastThickness(mats: readonly ParsedMat[], exposure: Exposure): Paired<'length'> {
  const steel = mats.map(layersOf).reduce((a, b) => a.plus(b));
  const top = faceCoverFor(thickest(mats), exposure);
  const below = mats.length > 1 ? EARTH_COVER : top;
  const within = (system: System): Length =>
    inSystem(top.as(system).plus(below.as(system)).plus(steel), system);
  return new Paired(() => ({ customary: within('customary'), metric: within('metric') }));
}

/** Where it is not said how high the mats are held, there must be a height that would do. */
function heedRoom({ mats, thickness, exposure }: ParsedRegion, pad: Pad): void {
  if (!thickness || mats.some(({ faceCover }) => faceCover)) return;
  const least = leastThickness(mats, exposure ?? 'weather').undercutBy(thickness);
  if (least) pad.caution(noRoom(least, thickness));
}

/** Cover above and below the mats. */
export function heedFaces(input: ParsedRegion, pad: Pad): void {
  checkFit(input);
  heedRoom(input, pad);
  const { above, below } = around(input);
  const exposure = exposureOf(input);
  const top = faceCoverFor(thickest(input.mats), exposure);
  if (above && top.undercutBy(above)) pad.caution(topCover(top.like(above), above, exposure === 'inside'));
  if (below && EARTH_COVER.undercutBy(below)) heedBelow(input, below, top.like(below), pad);
}

/**
 * Less than 3 in below. An only mat may also lie at the middle of the slab or higher; where it lies lower, more
 * cover is asked for, or the middle where the slab has no room for that.
 */
function heedBelow({ mats, thickness }: ParsedRegion, below: Length, top: Length, pad: Pad): void {
  const earth = EARTH_COVER.like(below);
  const steel = mats.map(layersOf).reduce((a, b) => a.plus(b));
  if (!thickness || mats.length > 1) {
    pad.caution(bottomCover(earth, below));
    return;
  }
  const half = thickness.over(TWO());
  const middle = below.plus(steel.over(TWO()));
  if (!middle.plus(TOLERANCE()).lessThan(half)) return;
  const thin = thickness.lessThan(earth.plus(steel).plus(top));
  pad.caution(thin ? belowMiddle(half, middle) : bottomCover(earth, below));
}
