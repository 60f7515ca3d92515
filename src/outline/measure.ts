/** Area and perimeter of an outline, with the working. */

import { arcOf, type Edge } from '../geometry/arc';
import * as ringFaults from '../geometry/faults';
import { type Corner, checkSimple, doubleArea, perimeterOf } from '../geometry/polygon';
import { Decimal, PI } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { cornersOf } from './corners';
import { edgesOf } from './curved';
import * as faults from './faults';
import { partWithoutEdge } from './faults';
import { checkFits } from './fits';
import type { Outline, OutlineOf, Point } from './outline';
import { tapedCorners, walkAround } from './place';
import { ringOf } from './ring';

type Length = Quantity<'length'>;

/** What a plan outline measures. */
export interface Measured {
  readonly area: Quantity<'area'>;
  /** Once around, openings too; left out where the outline does not fix it. */
  readonly perimeter?: Length;
  /** How far from its start a walk ended. */
  readonly closingError?: Length;
}

const scaled = <D extends 'length' | 'area'>(q: Quantity<D>, by: Decimal | number): Quantity<D> =>
  quantityOf(q.dimension, canonicalValue(q).times(by), systemOfQuantity(q));

const halved = (area: Quantity<'area'>): Quantity<'area'> => area.over(wholeNumber(2));

function rectangle({ length, width }: OutlineOf<'rectangle'>, pad: Pad): Measured {
  const area = length.times(width);
  pad.step('plan area', 'A = L × W', { L: length, W: width }, area);
  return { area, perimeter: scaled(length.plus(width), 2) };
}

function circle({ diameter }: OutlineOf<'circle'>, pad: Pad): Measured {
  const area = scaled(diameter.times(diameter), PI.div(4));
  pad.step('plan area', 'A = π × D² ÷ 4', { D: diameter }, area);
  return { area, perimeter: scaled(diameter, PI) };
}

function triangle({ sides }: OutlineOf<'triangle'>, pad: Pad, path: string): Measured {
  const [a, b, c] = sides as [Length, Length, Length];
  const perimeter = a.plus(b).plus(c);
  // Sixteen times the square of the area, by Heron: one root and one division in all.
  const factors = [a.plus(b).minus(c), b.plus(c).minus(a), c.plus(a).minus(b)];
  if (factors.some((f) => f.sign() <= 0)) refuse(`${path}.sides`, faults.noSuchTriangle());
  const product = [perimeter, ...factors].reduce((p, f) => p.times(canonicalValue(f)), new Decimal(1));
  const area = quantityOf('area', product.sqrt().div(4), systemOfQuantity(a));
  pad.step(
    'plan area',
    'A = √((a + b + c) × (a + b − c) × (b + c − a) × (c + a − b)) ÷ 4',
    { a, b, c },
    area,
  );
  return { area, perimeter };
}

/** Two parallel sides and the height fix the area but not the slant sides: no perimeter. */
function trapezoid({ parallel, height }: OutlineOf<'trapezoid'>, pad: Pad): Measured {
  const [a, b] = parallel as [Length, Length];
  const area = halved(a.plus(b).times(height));
  pad.step('plan area', 'A = (a + b) × h ÷ 2', { a, b, h: height }, area);
  return { area };
}

function notched(outline: OutlineOf<'L'> | OutlineOf<'U'>, pad: Pad): Measured {
  const { length, width, notchLength, notchWidth } = outline;
  const area = length.times(width).minus(notchLength.times(notchWidth));
  pad.step('plan area', 'A = L × W − l × w', { L: length, W: width, l: notchLength, w: notchWidth }, area);
  const around = scaled(length.plus(width), 2);
  return { area, perimeter: outline.shape === 'U' ? around.plus(scaled(notchWidth, 2)) : around };
}

function ring({ outerDiameter: D, innerDiameter: d }: OutlineOf<'ring'>, pad: Pad): Measured {
  const area = scaled(D.times(D).minus(d.times(d)), PI.div(4));
  pad.step('plan area', 'A = π × (D² − d²) ÷ 4', { D, d }, area);
  return { area, perimeter: scaled(D.plus(d), PI) };
}

const FULL_TURN = 360;

function sector({ radius: r, angle: a, innerRadius: q }: OutlineOf<'sector'>, pad: Pad): Measured {
  const share = canonicalValue(a).times(PI).div(FULL_TURN);
  const squares = q ? r.times(r).minus(q.times(q)) : r.times(r);
  const area = scaled(squares, share);
  const formula = q ? 'A = π × (r² − q²) × a ÷ (360 deg)' : 'A = π × r² × a ÷ (360 deg)';
  pad.step('plan area', formula, { r, a, ...(q ? { q } : {}) }, area);
  const arcs = scaled(q ? r.plus(q) : r, share.times(2));
  return { area, perimeter: arcs.plus(scaled(q ? r.minus(q) : r, 2)) };
}

/** Area of a regular polygon by the square of its side: a tangent is slow to take, so kept. */
const unitAreas = new Map<number, Decimal>();

function unitArea(sides: Decimal): Decimal {
  const n = sides.toNumber();
  const known = unitAreas.get(n) ?? sides.div(Decimal.tan(PI.div(sides)).times(4));
  unitAreas.set(n, known);
  return known;
}

function regular({ sides: n, side: s }: OutlineOf<'regular'>, pad: Pad): Measured {
  const area = scaled(s.times(s), unitArea(canonicalValue(n)));
  pad.step('plan area', 'A = n × s² ÷ (4 × tan(π ÷ n))', { n, s }, area);
  return { area, perimeter: s.times(n) };
}

/** Above this many corners the sum is not written out in full. */
const WRITTEN_OUT = 12;

function shoelace(
  points: readonly Point[],
  pad: Pad,
  area: Quantity<'area'>,
  counterclockwise: boolean,
  what = 'plan area',
): void {
  if (points.length > WRITTEN_OUT) {
    const S = scaled(area, 2);
    pad.step(
      say`${{ what }}, S being the sum of x₁ × y₂ − x₂ × y₁ around ${{ corners: points.length }} corners`,
      'A = S ÷ 2',
      { S },
      area,
    );
    return;
  }
  const values: Record<string, Length> = {};
  const order = counterclockwise ? points : [...points].reverse();
  const terms = order.map((p, i) => {
    const next = ((i + 1) % order.length) + 1;
    values[`x${i + 1}`] = p.x;
    values[`y${i + 1}`] = p.y;
    return `x${i + 1} × y${next} − x${next} × y${i + 1}`;
  });
  pad.step(what, `A = (${terms.join(' + ')}) ÷ 2`, values, area);
}

/**
 * A polygon by its corners.
 *
 * @param what - what its area is called; the plan area of an outline
 */
export function polygon(
  { points }: Pick<OutlineOf<'polygon'>, 'points'>,
  pad: Pad,
  path: string,
  what?: string,
): Measured {
  const corners = cornersOf(points);
  const double = checkSimple(corners, `${path}.points`);
  const system = systemOfQuantity((points[0] as Point).x);
  const area = quantityOf('area', double.abs().div(2), system);
  shoelace(points, pad, area, double.isPositive(), what);
  return { area, perimeter: quantityOf('length', perimeterOf(corners), system) };
}

/** The corners, shown as quantities. */
const pointsOf = (corners: readonly Corner[], system: System): Point[] =>
  corners.map(({ x, y }) => ({ x: quantityOf('length', x, system), y: quantityOf('length', y, system) }));

/** The part of the triangle with these sides: a taped outline is a fan of triangles. */
function taped(outline: OutlineOf<'taped'>, pad: Pad, path: string): Measured {
  const { sides, diagonals } = outline;
  tapedCorners(outline, path);
  const rays = [sides[0], ...diagonals, sides.at(-1)] as Length[];
  const areas = rays.slice(1).map((near, k) => {
    const part = triangle(
      { shape: 'triangle', sides: [rays[k] as Length, sides[k + 1] as Length, near] },
      pad,
      path,
    );
    return part.area;
  });
  const area = areas.reduce((sum, part) => sum.plus(part));
  const values = Object.fromEntries(areas.map((part, k) => [`a${k + 1}`, part]));
  if (areas.length > 1) pad.step('plan area', `A = ${Object.keys(values).join(' + ')}`, values, area);
  return { area, perimeter: sides.reduce((sum, side) => sum.plus(side)) };
}

function walk(outline: OutlineOf<'walk'>, pad: Pad, path: string): Measured {
  const first = outline.legs[0]?.length as Length;
  const system = systemOfQuantity(first);
  const { corners, closingError } = walkAround(outline, path);
  if (!outline.closingLimit) {
    pad.assume({
      name: 'closingLimit',
      value: '1% of the way around',
      because: 'as close as a tape and a square get',
      override: 'Give closingLimit',
      source: COMMON_PRACTICE,
    });
  }
  const ring = polygon({ points: pointsOf(corners, system) }, pad, path);
  const perimeter = outline.legs.reduce((sum, leg) => sum.plus(leg.length), first.minus(first));
  return { area: ring.area, perimeter, closingError };
}

/** Area between chord and arc, with its step; positive where the outline swells. */
function segment(edge: Edge, number: number, pad: Pad, system: System): Quantity<'area'> {
  const arc = arcOf(edge);
  const q = (l: Decimal): Length => quantityOf('length', l, system);
  const [c, h] = [q(edge.chord), q(edge.rise.abs())];
  const r = pad.step(
    say`radius of edge ${{ number }}`,
    'r = (c² + 4 × h²) ÷ (8 × h)',
    { c, h },
    q(arc.radius),
  );
  const area = quantityOf('area', arc.area, system);
  const t = '4 × atan(2 × h ÷ c)';
  pad.step(
    say`between chord and arc of edge ${{ number }}`,
    `K = r² × (${t} − sin(${t})) ÷ 2`,
    { r, h, c },
    area,
  );
  return edge.rise.isNegative() ? area.negated() : area;
}

function curved({ points }: OutlineOf<'curved'>, pad: Pad, path: string): Measured {
  const corners = cornersOf(points);
  const edges = edgesOf(points, corners, `${path}.points`);
  const system = systemOfQuantity((points[0] as Point).x);
  // Two corners make a lens or a half moon; from three on, the chords must be a ring.
  if (corners.length > 2) checkSimple(corners, `${path}.points`);
  const double = doubleArea(corners);
  const chords = quantityOf('area', double.abs().div(2), system);
  if (corners.length > 2) shoelace(points, pad, chords, double.isPositive());
  const bent = edges.flatMap((edge, i) => (edge.rise.isZero() ? [] : [segment(edge, i + 1, pad, system)]));
  const area = bent.reduce((sum, part) => sum.plus(part), chords);
  if (area.sign() <= 0) refuse(`${path}.points`, ringFaults.zeroArea());
  // Arcs may cross where their chords do not.
  if (bent.length > 0) ringOf({ shape: 'curved', points }, path);
  const values: Record<string, Quantity> = { C: chords };
  bent.forEach((part, i) => {
    values[`K${i + 1}`] = part;
  });
  if (bent.length > 0) pad.step('plan area, curved', `A = ${Object.keys(values).join(' + ')}`, values, area);
  const around = edges.reduce((sum, { arc, chord }) => sum.plus(arc ? arc.length : chord), new Decimal(0));
  return { area, perimeter: quantityOf('length', around, system) };
}

const TERMS_WRITTEN_OUT = 24;

function offsets({ spacing: d, offsets: y, rule }: OutlineOf<'offsets'>, pad: Pad, path: string): Measured {
  if (rule === 'simpson' && y.length % 2 === 0) refuse(`${path}.offsets`, faults.oddStrips());
  const last = y.length - 1;
  // Weights of the ordinates, twice over for the trapezoidal rule so that all are whole.
  const inner = (i: number): number => (rule === 'trapezoidal' ? 2 : i % 2 === 1 ? 4 : 2);
  const weights = y.map((_, i) => (i === 0 || i === last ? 1 : inner(i)));
  const sum = y.reduce(
    (s, o, i) => s.plus(scaled(o, weights[i] as number)),
    (y[0] as Length).minus(y[0] as Length),
  );
  const parts = rule === 'trapezoidal' ? 2 : 3;
  const area = d.times(sum).over(wholeNumber(parts));
  if (area.sign() === 0) refuse(`${path}.offsets`, ringFaults.zeroArea());
  const name = rule === 'trapezoidal' ? 'plan area by the trapezoidal rule' : "plan area by Simpson's rule";
  if (y.length > TERMS_WRITTEN_OUT) {
    pad.step(
      say`${{ name }}, S being the weighted sum of ${{ offsets: y.length }} offsets`,
      `A = d × S ÷ ${parts}`,
      { d, S: sum },
      area,
    );
    return { area };
  }
  const values: Record<string, Length> = { d };
  const terms = y.map((o, i) => {
    values[`y${i + 1}`] = o;
    return weights[i] === 1 ? `y${i + 1}` : `${weights[i]} × y${i + 1}`;
  });
  pad.step(name, `A = d × (${terms.join(' + ')}) ÷ ${parts}`, values, area);
  return { area };
}

/** Around all of it: what parts share lies inside, or is edge of neither. */
function aroundParts(
  edges: readonly (Length | undefined)[],
  shared: Length | undefined,
  pad: Pad,
  path: string,
): Length | undefined {
  if (!shared) return undefined;
  const known = edges.filter((edge) => edge !== undefined);
  if (known.length < edges.length) {
    refuse(`${path}.shared`, partWithoutEdge());
  }
  const P = known.reduce((sum, edge) => sum.plus(edge));
  const around = P.minus(scaled(shared, 2));
  if (around.sign() <= 0)
    refuse(`${path}.shared`, sharedFaults.doesNotFit('shared', 'half of what goes around the parts'));
  return pad.step('once around, P being the sum around the parts', 'U = P − 2 × s', { P, s: shared }, around);
}

function combined(outline: OutlineOf<'combined'>, pad: Pad, path: string): Measured {
  const { parts, shared } = outline;
  const added = parts.map((part, i) => measure(part, pad, `${path}.parts[${i}]`));
  const cut = (outline.less ?? []).map((part, i) => measure(part, pad, `${path}.less[${i}]`));
  const whole = added.map(({ area }) => area).reduce((sum, a) => sum.plus(a));
  const area = cut.reduce((rest, a) => rest.minus(a.area), whole);
  if (area.sign() <= 0)
    refuse(`${path}.less`, sharedFaults.doesNotFit('what is cut out', 'what it is cut from'));
  const values: Record<string, Quantity> = {};
  const terms = [
    ...added.map((a, i) => ['+', `a${i + 1}`, a.area] as const),
    ...cut.map((a, i) => ['−', `b${i + 1}`, a.area] as const),
  ];
  for (const [, name, a] of terms) values[name] = a;
  const formula = terms.map(([sign, name], i) => (i === 0 ? name : `${sign} ${name}`)).join(' ');
  pad.step('plan area together', `A = ${formula}`, values, area);
  const edges = [...added, ...cut].map((part) => part.perimeter);
  const perimeter = aroundParts(edges, shared, pad, path);
  return { area, ...(perimeter ? { perimeter } : {}) };
}

/**
 * Area and, where it is known, perimeter of an outline.
 *
 * @param path - where the outline stands in the input, for errors
 * @throws {InputError} `no-such-triangle`, `does-not-fit`, `repeated-point`, `zero-area`,
 * `self-crossing`, `wrong-count`, `does-not-close`, `give-one-of`, `perimeter-unknown`, `too-many`
 */
export function measure(outline: Outline, pad: Pad, path = 'outline'): Measured {
  checkFits(outline, path);
  switch (outline.shape) {
    case 'rectangle':
      return rectangle(outline, pad);
    case 'circle':
      return circle(outline, pad);
    case 'ring':
      return ring(outline, pad);
    case 'sector':
      return sector(outline, pad);
    case 'triangle':
      return triangle(outline, pad, path);
    case 'trapezoid':
      return trapezoid(outline, pad);
    case 'L':
    case 'U':
      return notched(outline, pad);
    case 'regular':
      return regular(outline, pad);
    case 'polygon':
      return polygon(outline, pad, path);
    case 'taped':
      return taped(outline, pad, path);
    case 'walk':
      return walk(outline, pad, path);
    case 'curved':
      return curved(outline, pad, path);
    case 'offsets':
      return offsets(outline, pad, path);
    case 'area':
      return { area: outline.area };
    case 'combined':
      return combined(outline, pad, path);
  }
}
