/** What openings take out of a wall and pilasters add to it. */

import { Decimal, PI } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { openingInWing } from './faults';
import { circleArea, regularArea, TWO } from './solids';
import { ONE, type Place, thicknessAt } from './wall-body';
import type { Opening, Wall } from './wall-input';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;

/** An opening as a shape: its area, how high it is, and the formula of its area. */
interface OpeningShape {
  readonly area: Area;
  readonly high: Length;
  readonly formula: string;
  readonly values: Readonly<Record<string, Quantity>>;
}

function shapeOf(
  { width: w, height: h, diameter: D, sides: k, side: s }: Opening,
  path: string,
): OpeningShape {
  const ways = [w ?? h, D, k ?? s].filter((way) => way !== undefined);
  if (ways.length > 1) refuse(path, faults.giveOneOf(['width and height', 'diameter', 'sides and side']));
  if (D) return { area: circleArea(D), high: D, formula: 'π × D² ÷ 4', values: { D } };
  if (k ?? s) {
    if (!k) return refuse(`${path}.sides`, faults.missing('sides', '6'));
    if (!s) return refuse(`${path}.side`, faults.missing('side', ['"12 in"', '"300 mm"']));
    // Standing on one side it is at most as high as it is wide over its corners.
    const across = quantityOf(
      'length',
      canonicalValue(s).div(Decimal.sin(PI.div(canonicalValue(k)))),
      systemOfQuantity(s),
    );
    return {
      area: regularArea(k, s),
      high: across,
      formula: 'k × s² ÷ (4 × tan(π ÷ k))',
      values: { k, s },
    };
  }
  if (!w)
    return refuse(`${path}.width`, faults.missing('width', ['"3 ft", or diameter', '"0.9 m", or diameter']));
  if (!h) return refuse(`${path}.height`, faults.missing('height', ['"4 ft"', '"1.2 m"']));
  return { area: w.times(h), high: h, formula: 'w × h', values: { w, h } };
}

export interface Deducted {
  readonly volume: Volume | undefined;
  readonly area: Area | undefined;
}

export function openingsOf(wall: Wall, { name, path }: Place, least: Area | undefined, pad: Pad): Deducted {
  const volumes: Volume[] = [];
  const areas: Area[] = [];
  const end = wall.kind === 'straight' ? wall.endHeight : undefined;
  const lowest = end?.lessThan(wall.height) ? end : wall.height;
  if (end && wall.topThickness && wall.openings?.length) refuse(`${path}.openings`, openingInWing());
  (wall.openings ?? []).forEach((opening, i) => {
    const { sill, count } = opening;
    const shape = shapeOf(opening, `${path}.openings[${i}]`);
    if ((sill ? sill.plus(shape.high) : shape.high).greaterThan(lowest)) {
      refuse(`${path}.openings[${i}].height`, faults.doesNotFit('the opening with its sill', 'height'));
    }
    if (least && shape.area.lessThan(least)) return;
    const n = count ?? ONE();
    const t = thicknessAt(wall, opening, shape.high, pad);
    const A = pad.step(
      say`${{ name }}, opening ${{ n: i + 1 }}`,
      `O = n × ${shape.formula}`,
      { n, ...shape.values },
      shape.area.times(n),
    );
    areas.push(A);
    volumes.push(pad.step(say`${{ name }}, out of the wall`, 'V = O × t', { O: A, t }, A.times(t)));
  });
  if (areas.length === 0) return { volume: undefined, area: undefined };
  return {
    volume: total(`${name}, openings`, 'V', volumes, pad),
    area: total(`${name}, area of openings`, 'O', areas, pad),
  };
}

export function pilastersOf(wall: Wall, { name }: Place, pad: Pad): { volumes: Volume[]; sides: Area[] } {
  const sides: Area[] = [];
  const volumes = (wall.pilasters ?? []).map(({ width: w, projection: p, height, count }, i) => {
    const [h, n] = [height ?? wall.height, count ?? ONE()];
    sides.push(p.times(h).times(n).times(TWO()));
    const volume = w.times(p).times(h).times(n);
    return pad.step(say`${{ name }}, pilaster ${{ n: i + 1 }}`, 'P = n × w × p × h', { n, w, p, h }, volume);
  });
  return { volumes, sides };
}
