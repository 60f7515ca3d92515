/**
 * A joint plan as SVG: outline, openings, joints by type, panel numbers, dimensions, what stands beside the slab, and
 * where every line is cut.
 *
 * Types are told apart by line pattern, so that the plan reads in black and white. Drawn to scale in binary
 * numbers; the dimensions are those of the figures.
 */
import type { Corner } from '../geometry/polygon';
import { insidePlanRing } from '../geometry/tin';
import { layoutToDraw } from '../joints/joint-layout';
import type { JointLayoutFigures, PlanJoint } from '../joints/layout-figures';
import type { JointLayoutInput, LayoutParsed, Place } from '../joints/layout-input';
import { Decimal } from '../quantity/decimal';
import { canonicalValue, type Quantity, quantityOf } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import { say } from '../reckoning/words';
import { type BaseLine, baseLineOf, showBaseLine } from './base-line';
import { showCuts } from './cuts';
import { dimension } from './dimension-line';
import type { PlanPoint } from './frame';
import { lineSample, textSample } from './legend';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { EDGE, GROUND, type Slab, sheetFor, slabOf } from './region-plan';
import { showCurves, showOpenings } from './setting-out';
import type { Sheet } from './sheet';
import { type Attributes, coordinate } from './svg';

type Length = Quantity<'length'>;

const PATTERNS: Record<PlanJoint['type'], Attributes> = {
  contraction: { stroke: 'ink', 'stroke-width': 0.9, 'stroke-dasharray': '7 3' },
  construction: { stroke: 'ink', 'stroke-width': 1.4, 'stroke-dasharray': '14 3 2.5 3' },
  isolation: { stroke: 'ink', 'stroke-width': 2, 'stroke-dasharray': '2 3' },
};

const NAMES: Record<PlanJoint['type'], string> = {
  contraction: 'contraction joint',
  construction: 'construction joint, through the slab',
  isolation: 'isolation joint, with board',
};

type Axis = 'x' | 'y';

/** What is drawn of a plan, and with what. */
interface Drawing {
  readonly sheet: Sheet;
  readonly slab: Slab;
  readonly figures: JointLayoutFigures;
  readonly at: (place: Place) => PlanPoint;
}

const cornerAt = ({ x, y }: Place): Corner => ({ x: canonicalValue(x), y: canonicalValue(y) });

function drawJoint({ sheet, at }: Drawing, joint: PlanJoint): void {
  const pattern = { ...PATTERNS[joint.type], class: joint.type };
  const [a, b] = [at(joint.from), at(joint.to)];
  if (joint.shape === 'straight' || !joint.center) {
    sheet.line([a, b], pattern);
    return;
  }
  const center = at(joint.center);
  const r = Math.hypot(a.x - center.x, a.y - center.y);
  if (joint.shape === 'circle') {
    sheet.circle(center, r, pattern);
    return;
  }
  const large = joint.length.toNumber('m') > Math.PI * r ? 1 : 0;
  const end = (p: PlanPoint): string => {
    const { x, y } = sheet.frame.at(p);
    return `${coordinate(x)} ${coordinate(y)}`;
  };
  const size = coordinate(r * sheet.frame.scale);
  // Counterclockwise with y up is a sweep of nought on the page.
  sheet.draw('path', { d: `M${end(a)}A${size} ${size} 0 ${large} 0 ${end(b)}`, ...pattern });
}

/** Places within a panel where its number may stand, from the middle outwards. */
const WITHIN = [
  [0, 0],
  [0.25, 0],
  [-0.25, 0],
  [0, 0.25],
  [0, -0.25],
  [0.25, 0.25],
  [-0.25, -0.25],
] as const;

function numberPanels({ sheet, figures, at }: Drawing): void {
  let without = 0;
  for (const { at: middle, along, across, number } of figures.panels) {
    const text = sheet.quantity(number);
    const [l, w] = [along, across].map((side) => side.toNumber('m') * sheet.frame.scale) as [number, number];
    const { x, y } = sheet.frame.at(at(middle));
    const box = sheet.boxOf(text, { x, y });
    const fits = Math.min(l, w) >= sheet.size && Math.max(l, w) >= box.width;
    const boxes = WITHIN.map(([i, j]) => ({ ...box, x: x + i * l, y: y + j * w }));
    if (!fits || !sheet.place(text, boxes, { class: 'panel' })) without += 1;
  }
  if (without > 0) {
    sheet.note(sheet.text(say`panels too small for their numbers here: ${{ without }}`));
  }
}

/** Equal neighbors are dimensioned together: `3 at 9 ft 4 in`. */
interface Stretch {
  readonly from: Length;
  to: Length;
  /** The first of them. */
  readonly each: Length;
  times: number;
  /** False where some differ from the first by the rounding to whole marks. */
  exact: boolean;
}

/** Lengths nearer to each other than this, in meters, differ by the rounding of the last digits. */
const ALIKE = 1e-9;
/** Panels of one width differ by up to a mark of the tape, 1/16 in or 1 mm, where lines are set out to whole marks. */
const MARK = 0.0016;

function stretches(stops: readonly Length[]): Stretch[] {
  const list: Stretch[] = [];
  stops.slice(1).forEach((to, i) => {
    const from = stops[i] as Length;
    const each = to.minus(from);
    const last = list.at(-1);
    const off = last ? Math.abs(last.each.minus(each).toNumber('m')) : 0;
    if (last && off < MARK) {
      last.to = to;
      last.times += 1;
      last.exact &&= off < ALIKE;
    } else if (each.toNumber('m') > ALIKE) list.push({ from, to, each, times: 1, exact: true });
  });
  return list;
}

/** `3 at 9 ft 4 in`, or about so; where each line is cut stands below. */
function stretchText(sheet: Sheet, { from, to, each, times, exact }: Stretch): string {
  if (times === 1) return sheet.length(each);
  if (exact) return sheet.text(say`${{ times }} at ${{ each: sheet.length(each) }}`);
  const mean = sheet.length(to.minus(from).over(wholeNumber(times)));
  return sheet.text(say`${{ times }} at about ${{ each: mean }}`);
}

/** Where upright (or level) joints stand, between the ends of the slab. */
function stops({ figures, sheet }: Drawing, axis: Axis, ends: readonly Decimal[]): Length[] {
  const other = axis === 'x' ? 'y' : 'x';
  const apart = (j: PlanJoint, along: Axis): number =>
    Math.abs(j.to[along].minus(j.from[along]).toNumber('m'));
  const found = figures.joints
    .filter((j) => j.shape === 'straight' && apart(j, axis) < ALIKE && apart(j, other) > ALIKE)
    .map((j) => j.from[axis]);
  const all = [...found, ...ends.map((end) => quantityOf('length', end, sheet.system))];
  return all.sort((a, b) => a.compareTo(b));
}

/** From the slab to the inner and the outer line of dimensions, by the height of the text. */
const AWAY = { near: 0.6, far: 2.3 };

function chain(drawing: Drawing, axis: Axis): void {
  const { sheet, slab, figures } = drawing;
  const ends = (of: Axis): [Decimal, Decimal] => {
    const all = slab.outer.map((corner) => corner[of]);
    return [Decimal.min(...all), Decimal.max(...all)];
  };
  const all = stops(drawing, axis, ends(axis));
  const low = { x: ends('x')[0], y: ends('y')[0] };
  const point = (l: Length): PlanPoint => slab.spot({ ...low, [axis]: canonicalValue(l) });
  const put = (from: Length, to: Length, text: string, off: number): void => {
    const [a, b] = axis === 'x' ? [point(from), point(to)] : [point(to), point(from)];
    dimension(sheet, a, b, text, { away: off * sheet.size });
  };
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last) return;
  const crooked = figures.pattern !== 'straight' && !(figures.pattern === 'fan' && axis === 'y');
  const lone = crooked || all.length < 3;
  put(first, last, sheet.length(last.minus(first)), lone ? AWAY.near : AWAY.far);
  if (lone) return;
  for (const stretch of stretches(all)) put(stretch.from, stretch.to, stretchText(sheet, stretch), AWAY.near);
}

type Beside = NonNullable<LayoutParsed['isolation']>[number];

/** An isolation joint along a side, and what stands there. */
function drawSide({ sheet, slab, at }: Drawing, { against, from, to }: Beside): void {
  const ends = [from, to].map(at) as [PlanPoint, PlanPoint];
  // Bare under the pattern, so that the edge does not fill its gaps.
  sheet.line(ends, { stroke: 'paper', 'stroke-width': 2.6 });
  sheet.line(ends, { ...PATTERNS.isolation, class: 'isolation' });
  const [a, b] = ends.map(sheet.frame.at) as [PlanPoint, PlanPoint];
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const n = { x: -(b.y - a.y) / long, y: (b.x - a.x) / long };
  const ring = slab.points.map(sheet.frame.at);
  const out = insidePlanRing((a.x + b.x) / 2 + n.x, (a.y + b.y) / 2 + n.y, ring) ? -1 : 1;
  const level = Math.abs(b.x - a.x) >= Math.abs(b.y - a.y);
  const text = sheet.text(against);
  const box = sheet.boxOf(text, a, level ? 0 : -90);
  const boxes = [1, 2.2, 3.6].flatMap((off) =>
    [0.5, 0.3, 0.7, 0.15, 0.85].flatMap((share) =>
      [out, -out].map((side) => ({
        ...box,
        x: a.x + (b.x - a.x) * share + n.x * side * off * sheet.size,
        y: a.y + (b.y - a.y) * share + n.y * side * off * sheet.size,
      })),
    ),
  );
  if (sheet.place(text, boxes, { class: 'beside', 'font-style': 'italic' })) return;
  sheet.number(text, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, 2);
}

function explain({ sheet, figures }: Drawing, isolated: boolean): void {
  const types = (['contraction', 'construction', 'isolation'] as const).filter(
    (type) => figures.joints.some((j) => j.type === type) || (type === 'isolation' && isolated),
  );
  const depth = sheet.sized(figures.depth);
  sheet.explain({ text: sheet.text('edge of the slab'), sample: lineSample(EDGE) });
  for (const type of types) {
    const words = type === 'contraction' ? say`contraction joint, ${{ depth }} deep` : NAMES[type];
    sheet.explain({ text: sheet.text(words), sample: lineSample(PATTERNS[type]) });
  }
  if (figures.panels.length > 1) {
    sheet.explain({ text: sheet.text('number of a panel'), sample: textSample('1') });
  }
}

function describe({ sheet, figures }: Drawing): string {
  const [panels, contraction, construction, isolation] = [
    sheet.quantity(figures.panelCount),
    ...[figures.contraction, figures.construction, figures.isolation].map(sheet.length),
  ] as [string, string, string, string];
  return sheet.text(
    say`Panels: ${{ panels }}. Contraction joints: ${{ contraction }}. Construction joints: ${{ construction }}. Isolation joints: ${{ isolation }}.`,
  );
}

function drawAll(drawing: Drawing, base: BaseLine, sides: readonly Beside[]): void {
  const { sheet, slab, figures } = drawing;
  sheet.shape([slab.points, ...slab.holes], GROUND);
  sheet.shape([slab.points], { ...EDGE, class: 'edge' });
  for (const ring of slab.holes) sheet.shape([ring], { ...PATTERNS.isolation, class: 'isolation' });
  for (const joint of figures.joints) drawJoint(drawing, joint);
  for (const side of sides) drawSide(drawing, side);
  chain(drawing, 'x');
  chain(drawing, 'y');
  showBaseLine(sheet, base, slab.spot);
  if (figures.panels.length > 1) numberPanels(drawing);
}

/**
 * Draw the joint plan of a slab.
 *
 * @param input - as for `jointLayout`
 * @param options - heading, units, language, size and colors
 * @returns an SVG document as text: no scripts, no outside resources, its own title and description
 * @throws {InputError} as `jointLayout` does
 * @example
 * ```ts
 * import { jointPlan } from 'flatwork-reckoner/drawing';
 *
 * const svg = jointPlan({
 *   outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
 *   thickness: '5 in',
 *   spacing: '12 ft 6 in',
 * });
 * svg.startsWith('<svg'); // true
 * ```
 */
export function jointPlan(input: JointLayoutInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const { read, rings, figures, system } = layoutToDraw(input);
  const slab = slabOf(read, rings);
  const chained = figures.pattern === 'straight' || figures.pattern === 'fan' ? 4 : 2.4;
  const margins = { left: chained, bottom: chained, right: 2.3, top: 2.3 };
  const sheet = sheetFor(style, 'Joint plan', system, slab.points, margins);
  const drawing: Drawing = { sheet, slab, figures, at: (place) => slab.spot(cornerAt(place)) };
  const base = baseLineOf(read.outline, slab.outer);
  const sides = read.isolation ?? [];
  drawAll(drawing, base, sides);
  showOpenings(sheet, base, read, slab.openings, slab.spot);
  showCurves(sheet, base, read.outline, slab.spot);
  showCuts(sheet, base, figures.joints, drawing.at);
  explain(drawing, slab.openings.length > 0 || sides.length > 0);
  return sheet.finish(describe(drawing));
}
