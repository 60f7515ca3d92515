/** What a crew lays openings and curves out from, in words: sizes and offsets from the base line. */

import type { Corner } from '../geometry/polygon';
import type { Outline, Point } from '../outline/outline';
import type { Opening } from '../outline/region';
import { Decimal } from '../quantity/decimal';
import { canonicalValue, quantityOf } from '../quantity/quantity';
import { say } from '../reckoning/words';
import { type BaseLine, curvedEdges, offsetText } from './base-line';
import type { PlanPoint } from './frame';
import type { Sheet } from './sheet';

const placed = ({ x, y }: Point): Corner => ({ x: canonicalValue(x), y: canonicalValue(y) });

/** More corners than these are found in the figures, not on the plan. */
const CORNERS = 12;

const cornerList = (sheet: Sheet, base: BaseLine, ring: readonly Corner[]): string => {
  const told = ring.slice(0, CORNERS).map((corner) => offsetText(sheet, base, corner));
  return [...told, ...(ring.length > CORNERS ? ['…'] : [])].join(', ');
};

/** Size and place of an opening. */
export function openingText(sheet: Sheet, base: BaseLine, opening: Opening, ring: readonly Corner[]): string {
  switch (opening.shape) {
    case 'circle': {
      const [diameter, center] = [
        sheet.length(opening.diameter),
        offsetText(sheet, base, placed(opening.at)),
      ];
      return sheet.text(say`round opening, ${{ diameter }} across, center ${{ center }}`);
    }
    case 'rectangle': {
      const size = `${sheet.length(opening.length)} × ${sheet.length(opening.width)}`;
      const square = base.along.x.isZero() || base.along.y.isZero();
      if (!square) {
        const corners = cornerList(sheet, base, ring);
        return sheet.text(say`opening ${{ size }}, corners ${{ corners }}`);
      }
      const [from, to] = [ring[0] as Corner, ring[2] as Corner].map((c) => offsetText(sheet, base, c)) as [
        string,
        string,
      ];
      return sheet.text(say`opening ${{ size }}, from ${{ from }} to ${{ to }}`);
    }
    case 'regular': {
      const [sides, side] = [sheet.quantity(opening.sides), sheet.length(opening.side)];
      const center = offsetText(sheet, base, placed(opening.at));
      const corner = offsetText(sheet, base, ring[0] as Corner);
      return sheet.text(
        say`opening with ${{ sides }} sides of ${{ side }}, center ${{ center }}, a corner ${{ corner }}`,
      );
    }
    case 'polygon': {
      const corners = cornerList(sheet, base, ring);
      return sheet.text(say`opening, corners ${{ corners }}`);
    }
  }
}

/** Number the openings on the plan; the key says how large each is and where. */
export function showOpenings(
  sheet: Sheet,
  base: BaseLine,
  { openings = [] }: { readonly openings: readonly Opening[] | undefined },
  rings: readonly (readonly Corner[])[],
  spot: (corner: Corner) => PlanPoint,
): void {
  openings.forEach((opening, i) => {
    const ring = rings[i] as readonly Corner[];
    const points = ring.map((corner) => sheet.frame.at(spot(corner)));
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
    const within = Math.min(right - left, bottom - top) > 1.6 * sheet.size;
    const half = Math.max(right - left, bottom - top) / 2;
    const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
    sheet.number(
      openingText(sheet, base, opening, ring),
      middle,
      within ? 0 : Math.min(half, 2 * sheet.size),
    );
  });
}

/** A curve of the edge: a point of the plan on it, and how it is laid out. */
interface Curve {
  readonly on: Corner;
  readonly text: string;
}

const length = (sheet: Sheet, meters: Decimal): string =>
  sheet.length(quantityOf('length', meters, sheet.system));

function edgeCurves(sheet: Sheet, base: BaseLine, outline: Extract<Outline, { shape: 'curved' }>): Curve[] {
  return curvedEdges(outline).flatMap(({ from, to, arc, rise }) => {
    if (!arc) return [];
    const [dx, dy] = [to.x.minus(from.x), to.y.minus(from.y)];
    const chord = Decimal.hypot(dx, dy);
    const [ux, uy] = [dx.div(chord), dy.div(chord)];
    const middle = { x: from.x.plus(to.x).div(2), y: from.y.plus(to.y).div(2) };
    /** Outwards from the chord: the slab lies on the left of it. */
    const out = (n: Decimal): Corner => ({ x: middle.x.plus(uy.times(n)), y: middle.y.minus(ux.times(n)) });
    const deep = arc.radius.minus(rise.abs());
    const center = offsetText(sheet, base, out(rise.isNegative() ? deep : deep.neg()));
    const quarter = arc.radius.times(arc.radius).minus(chord.times(chord).div(16)).sqrt().minus(deep);
    const words = {
      radius: length(sheet, arc.radius),
      center,
      chord: length(sheet, chord),
      rise: length(sheet, rise.abs()),
      quarter: length(sheet, quarter),
    };
    return [{ on: out(rise), text: sheet.text(arcWords(rise.isNegative(), words)) }];
  });
}

interface ArcSizes {
  readonly radius: string;
  readonly center: string;
  readonly chord: string;
  readonly rise: string;
  readonly quarter: string;
}

function arcWords(cutsIn: boolean, { radius, center, chord, rise, quarter }: ArcSizes) {
  const sizes = say`radius ${{ radius }}, center ${{ center }}; chord ${{ chord }}, rise ${{ rise }} in the middle and ${{ quarter }} at the quarters`;
  return cutsIn ? say`arc that cuts in: ${sizes}` : say`arc: ${sizes}`;
}

/** Half-way around an arc about the origin. */
const halfWay = (radius: Decimal, degrees: number): Corner => {
  const angle = (degrees * Math.PI) / 360;
  return { x: radius.times(Math.cos(angle)), y: radius.times(Math.sin(angle)) };
};

function roundCurves(sheet: Sheet, outline: Outline): Curve[] {
  const about = (radius: Decimal, degrees: number): Curve => ({
    on: halfWay(radius, degrees),
    text: sheet.text(say`arc: radius ${{ radius: length(sheet, radius) }} about the center C`),
  });
  if (outline.shape === 'circle') return [about(canonicalValue(outline.diameter).div(2), 60)];
  if (outline.shape === 'ring') {
    return [outline.outerDiameter, outline.innerDiameter].map((d) => about(canonicalValue(d).div(2), 60));
  }
  if (outline.shape !== 'sector') return [];
  const turn = outline.angle.toNumber('deg');
  const radii = [outline.radius, ...(outline.innerRadius ? [outline.innerRadius] : [])];
  return radii.map((radius) => about(canonicalValue(radius), turn));
}

/** Number the curves of the edge; the key says how each is laid out. */
export function showCurves(
  sheet: Sheet,
  base: BaseLine,
  outline: Outline,
  spot: (corner: Corner) => PlanPoint,
): void {
  const curves = outline.shape === 'curved' ? edgeCurves(sheet, base, outline) : roundCurves(sheet, outline);
  for (const { on, text } of curves) sheet.number(text, sheet.frame.at(spot(on)), 2);
}
