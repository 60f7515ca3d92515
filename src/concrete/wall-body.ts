/** The body of a wall before anything is taken out: its plan, how thick and how high it stands. */
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { say } from '../reckoning/words';
import { FOUR, prismoid, TWO, timesPi } from './solids';
import type { Opening, Wall } from './wall-input';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;

export interface Place {
  readonly name: string;
  readonly path: string;
}

export const ONE = constant(() => wholeNumber(1));
export const WHOLE = constant(() => ratio('1:1'));

/** Plan area at a thickness, and the two faces for each unit of height. */
interface Plan {
  readonly formula: string;
  readonly values: Readonly<Record<string, Length>>;
  readonly area: (t: Length) => Area;
  readonly faces: (t: Length) => Length;
}

function planOf(wall: Wall): Plan {
  switch (wall.kind) {
    case 'straight': {
      const l = wall.length;
      return { formula: 'l × t', values: { l }, area: (t) => l.times(t), faces: () => l.times(TWO()) };
    }
    case 'loop': {
      const { outerLength: l, outerWidth: b } = wall;
      return {
        formula: '2 × l × t + 2 × (b − 2 × t) × t',
        values: { l, b },
        area: (t) => l.plus(b).minus(t.times(TWO())).times(t).times(TWO()),
        faces: (t) => l.plus(b).minus(t.times(TWO())).times(FOUR()),
      };
    }
    case 'ring': {
      const D = wall.outerDiameter;
      return {
        formula: 'π × t × (D − t)',
        values: { D },
        area: (t) => timesPi(t.times(D.minus(t))),
        faces: (t) => timesPi(D.minus(t)).times(TWO()),
      };
    }
  }
}

const thicker = (a: Length, b: Length): Length => (b.greaterThan(a) ? b : a);

export function checkThickness(wall: Wall, { path }: Place): void {
  const twice = thicker(wall.thickness, wall.topThickness ?? wall.thickness).times(TWO());
  const across = wall.kind === 'loop' ? [wall.outerLength, wall.outerWidth] : [];
  if (wall.kind === 'ring') across.push(wall.outerDiameter);
  if (across.some((l) => !twice.lessThan(l))) {
    refuse(`${path}.thickness`, faults.doesNotFit('twice the thickness', 'what the wall goes around'));
  }
}

/** Half of both ends, where the top falls or rises along the wall. */
function meanHeight(wall: Wall, name: string, pad: Pad): Length {
  const h = wall.height;
  const e = wall.kind === 'straight' ? wall.endHeight : undefined;
  if (!e) return h;
  return pad.step(say`${{ name }}, mean height`, 'm = (h + e) ÷ 2', { h, e }, h.plus(e).over(TWO()));
}

/** Gross volume, plan area at the foot, and both faces in elevation. */
export function grossOf(wall: Wall, { name }: Place, pad: Pad): { gross: Volume; foot: Area; faces: Area } {
  const { thickness: t, topThickness: top } = wall;
  const h = meanHeight(wall, name, pad);
  const { formula, values, area, faces } = planOf(wall);
  const plan = (what: string, symbol: string, at: Length): Area =>
    pad.step(
      say`${{ name }}, plan area ${{ what }}`,
      `${symbol} = ${formula}`,
      { ...values, t: at },
      area(at),
    );
  const A = plan('at the foot', 'A', t);
  if (!top) {
    const gross = pad.step(say`${{ name }}, gross volume`, 'V = A × h', { A, h }, A.times(h));
    return { gross, foot: A, faces: faces(t).times(h) };
  }
  const mean = t.plus(top).over(TWO());
  const [M, B] = [plan('halfway up', 'M', mean), plan('at the top', 'B', top)];
  const gross = prismoid(h, A, M, B);
  pad.step(say`${{ name }}, gross volume`, 'V = h × (A + 4 × M + B) ÷ 6', { h, A, M, B }, gross);
  return { gross, foot: A, faces: faces(mean).times(h) };
}

/** Thickness at the middle of an opening. */
export function thicknessAt(wall: Wall, opening: Opening, high: Length, pad: Pad): Length {
  const { height: H, thickness: t, topThickness: b } = wall;
  if (!b) return t;
  if (!opening.sill) {
    pad.assume({
      name: 'sill',
      value: 'halfway up',
      because: 'the thickness of a tapered wall depends on where the opening is',
      override: 'Give sill, from the foot of the wall to the opening',
      source: CLOSED_FORM,
    });
    return t.plus(b).over(TWO());
  }
  const m = opening.sill.plus(high.over(TWO()));
  return pad.step(
    'thickness at the middle of the opening',
    'c = t + (b − t) × m ÷ H',
    { t, b, m, H },
    t.plus(b.minus(t).times(m.over(H))),
  );
}
