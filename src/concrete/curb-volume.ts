/**
 * Curb, or curb and gutter, by the corners of its section: `V = A × L`.
 *
 * On a curve the section's centroid describes the arc (the rule of Pappus and Guldin):
 * `V = A × 2 × π × (R + c) × f`, where f is the share of a full turn, R the radius to the line x = 0
 * of the section and c how far its centroid lies outside that line, x growing away from the centre of
 * the curve; it is R − c where x grows towards the centre.
 *
 * Source: geometry.
 */

import { measure } from '../geometry/measure';
import type { Outline, PointInput } from '../geometry/outline';
import { type Corner, checkSimple, cornersOf, doubleArea } from '../geometry/polygon';
import { ZERO } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { angle, constant, length } from '../quantity/make';
import { type Quantity, type QuantityInput, quantityOf, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, type Field, fields, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { total } from '../reckoning/whole';
import { TWO, timesPi } from './solids';

/** Where the centre of a curve lies, looking along the section with x to the right. */
export type CurveCentre = 'left' | 'right';

/** A stretch along a curve. */
export interface CurbCurveInput {
  /** Radius to the line x = 0 of the section. */
  readonly radius: QuantityInput<'length'>;
  /** How far it turns, at most 360 deg. */
  readonly turn: QuantityInput<'angle'>;
  /** Where the centre lies: `left` when x grows away from it. */
  readonly centre: CurveCentre;
}

/** Input of {@link curbVolume}. Give straight lengths, curves or both. */
export interface CurbVolumeInput {
  /** Corners of the section in order: x across, y up. */
  readonly section: readonly PointInput[];
  /** Straight length in all. */
  readonly length?: QuantityInput<'length'>;
  /** Stretches along curves. */
  readonly curves?: readonly CurbCurveInput[];
}

/** Figures of {@link curbVolume}. */
export interface CurbVolumeFigures {
  /** Concrete in place. */
  readonly volume: Quantity<'volume'>;
  /** Area of the section. */
  readonly sectionArea: Quantity<'area'>;
  /** For each 100 ft of straight curb, or each 10 m where the section is metric. */
  readonly volumePerStretch: Quantity<'volume'>;
  /** Girth of the section. */
  readonly girth: Quantity<'length'>;
  /** From x = 0 to the centroid of the section, where there are curves. */
  readonly centroid?: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;

interface Curve {
  readonly radius: Length;
  readonly turn: Quantity<'angle'>;
  readonly centre: CurveCentre;
}

type Section = Extract<Outline, { shape: 'polygon' }>['points'];

interface Parsed {
  readonly section: Section;
  readonly length: Length | undefined;
  readonly curves: readonly Curve[] | undefined;
}

const CORNERS = 500;
const FULL = constant(() => angle('360 deg'));
const HUNDRED_FEET = constant(() => length('100 ft'));
const TEN_METRES = constant(() => length('10 m'));

/** x of the centroid: exact but for one division. */
function centroidOf(section: Section): Length {
  const corners = cornersOf(section);
  let sum = ZERO;
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] as Corner;
    sum = sum.plus(a.x.plus(b.x).times(a.x.times(b.y).minus(b.x.times(a.y))));
  });
  const x = sum.div(doubleArea(corners).times(3));
  return quantityOf('length', x, systemOfQuantity((section[0] as Section[number]).x));
}

function curved(
  { radius: R, turn: w, centre }: Curve,
  [A, c]: readonly [Area, Length],
  i: number,
  pad: Pad,
): Volume {
  const out = centre === 'left';
  const r = out ? R.plus(c) : R.minus(c);
  const path = `curves[${i}]`;
  if (w.greaterThan(FULL())) refuse(`${path}.turn`, faults.doesNotFit('turn', '360 deg'));
  if (r.sign() <= 0) refuse(`${path}.radius`, faults.doesNotFit('the section', 'the radius'));
  const f = w.over(FULL());
  return pad.step(
    `along curve ${i + 1}`,
    `V = A × 2 × π × (R ${out ? '+' : '−'} c) × f`,
    { A, R, c, f },
    timesPi(A.times(r).times(TWO())).times(f),
  );
}

function reckon({ section, length: l, curves }: Parsed, pad: Pad): CurbVolumeFigures {
  if (!l && !curves?.length) return refuse('length', faults.missing('length', '"40 ft", or curves'));
  checkSimple(cornersOf(section), 'section');
  const { area: A, perimeter } = measure({ shape: 'polygon', points: section }, pad, 'section');
  const c = curves?.length ? centroidOf(section) : undefined;
  const bends = c ? (curves ?? []).map((curve, i) => curved(curve, [A, c], i, pad)) : [];
  const straight = l ? [pad.step('straight', 'V = A × l', { A, l }, A.times(l))] : [];
  const s = systemOfQuantity(A) === 'metric' ? TEN_METRES() : HUNDRED_FEET();
  const volumePerStretch = pad.step(`for each ${s.format()}`, 'P = A × s', { A, s }, A.times(s));
  pad.caution(cautions.alkali);
  return {
    volume: total('volume', 'V', [...straight, ...bends], pad),
    sectionArea: A,
    volumePerStretch,
    girth: perimeter as Length,
    ...(c ? { centroid: c } : {}),
  };
}

function door(): Field<Parsed> {
  const along = quantity('length', 'x', 'any');
  const up = quantity('length', 'y', 'any');
  const curve = fields({
    radius: quantity('length', 'radius'),
    turn: quantity('angle', 'turn'),
    centre: choice<CurveCentre>('centre', ['left', 'right']),
  });
  return fields({
    section: list(fields({ x: along, y: up }), 3, CORNERS),
    length: maybe(quantity('length', 'length')),
    curves: maybe(list(curve, 0, 200)),
  });
}

/**
 * Concrete for a curb, or a curb and gutter, by the corners of its section.
 *
 * @param input - the section, its straight length and its curves
 * @returns volume, section area, volume for each 100 ft, girth
 * @throws {InputError} for a section that crosses itself or encloses nothing; `does-not-fit` for a curve
 * tighter than the section; `missing` length
 * @source geometry
 * @example
 * ```ts
 * import { curbVolume } from 'flatwork-reckoner';
 *
 * const { figures } = curbVolume({
 *   section: [
 *     { x: '0 in', y: '0 in' },
 *     { x: '6 in', y: '0 in' },
 *     { x: '6 in', y: '18 in' },
 *     { x: '0 in', y: '18 in' },
 *   ],
 *   length: '60 ft',
 * });
 * figures.volume.format('ft3'); // '45 ft3'
 * ```
 */
export const curbVolume: Calculation<CurbVolumeInput, CurbVolumeFigures> = /*#__PURE__*/ define({
  id: 'curb-volume',
  title: 'Volume of curb and gutter',
  version: 1,
  sources: [CLOSED_FORM],
  input: door,
  reckon,
});
