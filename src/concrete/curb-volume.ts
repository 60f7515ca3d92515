/**
 * Curb, or curb and gutter, by the corners of its section: `V = A × L`.
 *
 * On a curve the section's centroid describes the arc (the rule of Pappus and Guldin):
 * `V = A × 2 × π × (R + c) × f`, where f is the share of a full turn, R the radius to the line x = 0
 * of the section and c how far its centroid lies outside that line, x growing away from the center of
 * the curve; it is R − c where x grows toward the center.
 *
 * A drop leads, over a wing at each end, every corner of the section to its own corner of a lowered one:
 * the area changes as a square of the length at most, so the prismoidal formula is exact.
 *
 * Source: geometry.
 */

import { type Corner, checkSimple, doubleArea } from '../geometry/polygon';
import { cornersOf } from '../outline/corners';
import { polygon } from '../outline/measure';
import type { Outline, PointInput } from '../outline/outline';
import { ZERO } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { angle, constant, length } from '../quantity/make';
import { type Quantity, type QuantityInput, quantityOf, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, type Field, fields, list, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { all, anyOf, filled, given, where } from '../reckoning/together';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { dropsTooLong, otherCorners } from './faults';
import { CURB_LENGTH, CURB_PLACE, CURB_RADIUS, CURB_WING, TURN } from './ordinary';
import { prismoid, TWO, timesPi } from './solids';

/** Where the center of a curve lies, looking along the section with x to the right. */
export type CurveCenter = 'left' | 'right';

/** A stretch along a curve. */
export interface CurbCurveInput {
  /** Radius to the line x = 0 of the section. */
  readonly radius: QuantityInput<'length'>;
  /** How far it turns, at most 360 deg. */
  readonly turn: QuantityInput<'angle'>;
  /** Where the center lies: `left` when x grows away from it. */
  readonly center: CurveCenter;
}

/** A drop for a driveway or a curb ramp: lower over its length, with a wing at each end. */
export interface CurbDropInput {
  /** Corners of the lowered section, as many as those of the curb and in the same order. */
  readonly section: readonly PointInput[];
  /** How long the lowered section runs, without its wings. */
  readonly length: QuantityInput<'length'>;
  /** Over how far each wing leads from the full section to the lowered one. */
  readonly wing: QuantityInput<'length'>;
  /** How many drops alike; one by default. */
  readonly count?: number;
}

/** Input of {@link curbVolume}. Give straight lengths, curves or both. */
export interface CurbVolumeInput {
  /** Corners of the section in order: x across, y up. */
  readonly section: readonly PointInput[];
  /** Straight length in all, drops and wings counted in. */
  readonly length?: QuantityInput<'length'>;
  /** Drops within the straight length. */
  readonly drops?: readonly CurbDropInput[];
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
  readonly center: CurveCenter;
}

type Section = Extract<Outline, { shape: 'polygon' }>['points'];

interface Drop {
  readonly section: Section;
  readonly length: Length;
  readonly wing: Length;
  readonly count: Quantity<'count'> | undefined;
}

interface Parsed {
  readonly section: Section;
  readonly length: Length | undefined;
  readonly drops: readonly Drop[] | undefined;
  readonly curves: readonly Curve[] | undefined;
}

const CORNERS = 500;
/** The section is reckoned once for the curb, and for each drop its own and that halfway along a wing. */
const IN_SECTIONS: Limit = { of: 'the sections of all drops, in corners,', most: 10_000 };
const FULL = constant(() => angle('360 deg'));
const HUNDRED_FEET = constant(() => length('100 ft'));
const TEN_METERS = constant(() => length('10 m'));

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
  { radius: R, turn: w, center }: Curve,
  [A, c]: readonly [Area, Length],
  i: number,
  pad: Pad,
): Volume {
  const out = center === 'left';
  const r = out ? R.plus(c) : R.minus(c);
  const path = `curves[${i}]`;
  if (w.greaterThan(FULL())) refuse(`${path}.turn`, faults.doesNotFit('turn', '360 deg'));
  if (r.sign() <= 0) refuse(`${path}.radius`, faults.doesNotFit('the section', 'the radius'));
  const f = w.over(FULL());
  return pad.step(
    say`along curve ${{ n: i + 1 }}`,
    `V = A × 2 × π × (R ${out ? '+' : '−'} c) × f`,
    { A, R, c, f },
    timesPi(A.times(r).times(TWO())).times(f),
  );
}

/** The section halfway along a wing: every corner halfway to its own. */
const between = (a: Section, b: Section): Section =>
  a.map(({ x, y }, i) => {
    const other = b[i] as Section[number];
    return { x: x.plus(other.x).over(TWO()), y: y.plus(other.y).over(TWO()) };
  });

/** Measured as an outline is, though it stands upright. */
const measured = (points: Section, path: string, pad: Pad) =>
  polygon({ points }, pad, path, 'area of the section');

/** A section of a drop: its own, or that halfway along a wing. */
function areaOf(section: Section, path: string, pad: Pad): Area {
  checkSimple(cornersOf(section), path);
  return measured(section, path, pad).area;
}

/** The lowered lengths with both wings of each, and how much of the curb they take. */
function dropsOf(
  section: Section,
  A: Area,
  drops: readonly Drop[],
  pad: Pad,
): { parts: Volume[]; taken: Length[] } {
  const taken: Length[] = [];
  const parts = drops.map(({ section: low, length: d, wing: w, count }, i) => {
    const path = `drops[${i}].section`;
    if (low.length !== section.length) refuse(path, otherCorners(section.length));
    const n = count ?? wholeNumber(1);
    const B = areaOf(low, path, pad);
    const M = areaOf(between(section, low), path, pad);
    taken.push(
      pad.step(
        say`taken up by drop ${{ n: i + 1 }}`,
        'k = n × (d + 2 × w)',
        { n, d, w },
        d.plus(w.times(TWO())).times(n),
      ),
    );
    const one = B.times(d).plus(prismoid(w, A, M, B).times(TWO()));
    return pad.step(
      say`drop ${{ n: i + 1 }} with both wings`,
      'V = n × (B × d + w × (A + 4 × M + B) ÷ 3)',
      { n, A, B, M, d, w },
      one.times(n),
    );
  });
  return { parts, taken };
}

/** The straight curb at full height, and its drops. */
function straightOf(section: Section, A: Area, l: Length, drops: readonly Drop[], pad: Pad): Volume[] {
  const { parts, taken } = dropsOf(section, A, drops, pad);
  if (parts.length === 0) return [pad.step('straight', 'V = A × l', { A, l }, A.times(l))];
  const k = total('taken up by drops', 'k', taken, pad);
  const full = l.minus(k);
  if (full.sign() < 0) refuse('drops', dropsTooLong());
  return [pad.step('straight at full height', 'V = A × (l − k)', { A, l, k }, A.times(full)), ...parts];
}

function reckon({ section, length: l, drops, curves }: Parsed, pad: Pad): CurbVolumeFigures {
  if (drops?.length && !l)
    return refuse(
      'length',
      faults.missing('length', ['"120 ft", drops counted in', '"36 m", drops counted in']),
    );
  if (!l && !curves?.length)
    return refuse('length', faults.missing('length', ['"40 ft", or curves', '"12 m", or curves']));
  withinLimit(
    IN_SECTIONS,
    (drops ?? []).reduce((sum, drop) => sum + drop.section.length, 0),
    'drops',
  );
  checkSimple(cornersOf(section), 'section');
  const { area: A, perimeter } = measured(section, 'section', pad);
  const c = curves?.length ? centroidOf(section) : undefined;
  const bends = c ? (curves ?? []).map((curve, i) => curved(curve, [A, c], i, pad)) : [];
  const straight = l ? straightOf(section, A, l, drops ?? [], pad) : [];
  const s = systemOfQuantity(A) === 'metric' ? TEN_METERS() : HUNDRED_FEET();
  const volumePerStretch = pad.step(say`for each ${{ s }}`, 'P = A × s', { A, s }, A.times(s));
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
  const along = quantity('length', 'x', 'any', CURB_PLACE);
  const up = quantity('length', 'y', 'any', CURB_PLACE);
  const section = list(fields({ x: along, y: up }), 3, CORNERS);
  const drop = fields({
    section,
    length: quantity('length', 'length', 'not-negative', CURB_LENGTH),
    wing: quantity('length', 'wing', 'not-negative', CURB_WING),
    count: maybe(whole('count', 1, 1000)),
  });
  const curve = fields({
    radius: quantity('length', 'radius', 'positive', CURB_RADIUS),
    turn: quantity('angle', 'turn', 'positive', TURN),
    center: choice<CurveCenter>('center', ['left', 'right']),
  });
  return fields(
    {
      section,
      length: maybe(quantity('length', 'length', 'positive', CURB_LENGTH)),
      drops: maybe(list(drop, 0, 100)),
      curves: maybe(list(curve, 0, 200)),
    },
    all(anyOf(given('length'), filled('curves')), where(filled('drops'), given('length'))),
  );
}

/**
 * Concrete for a curb, or a curb and gutter, by the corners of its section, with drops for drives.
 *
 * @param input - the section, its straight length with drops, and its curves
 * @returns volume, section area, volume for each 100 ft, girth
 * @throws {InputError} for a section that crosses itself or encloses nothing; `does-not-fit` for a curve
 * tighter than the section and for drops longer than the curb; `wrong-count` for a drop with other corners;
 * `missing` length
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
  title: 'Curb and gutter volume',
  version: 1,
  sources: [CLOSED_FORM],
  limits: [IN_SECTIONS],
  input: door,
  reckon,
  takes: () => [{ item: 'concrete', from: 'volume' }],
});
