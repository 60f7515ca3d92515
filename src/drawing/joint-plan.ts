/**
 * A joint plan as SVG: outline, openings, joints by type, panel numbers, dimensions and a legend.
 *
 * Types are told apart by line pattern, so that the plan reads in black and white. Drawn to scale in binary
 * numbers; the dimensions are those of the figures.
 */
import type { Corner } from '../geometry/polygon';
import {
  type JointLayoutFigures,
  type JointLayoutInput,
  jointLayout,
  type PlanJoint,
} from '../joints/joint-layout';
import { regionFields, ringsOf } from '../outline/region';
import { Decimal, ZERO } from '../quantity/decimal';
import { length } from '../quantity/make';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import { readInput } from '../reckoning/calculation';
import { fields } from '../reckoning/fields';
import { plainCopy } from '../reckoning/plain';
import {
  type Attributes,
  coordinate,
  dimension,
  document,
  element,
  type Frame,
  frameFor,
  type LegendEntry,
  label,
  line,
  type PlanPoint,
  ringPath,
} from './svg';

/** How a joint plan is headed. */
export interface JointPlanOptions {
  /** By default `Joint plan`. */
  readonly title?: string;
}

type Length = Quantity<'length'>;

const EDGE: Attributes = { stroke: '#000', 'stroke-width': 0.9, 'stroke-linejoin': 'round' };
const PATTERNS: Record<PlanJoint['type'], Attributes> = {
  contraction: { stroke: '#000', 'stroke-width': 0.35, 'stroke-dasharray': '4 1.6' },
  construction: { stroke: '#000', 'stroke-width': 0.6, 'stroke-dasharray': '8 1.2 1.2 1.2' },
  isolation: {
    stroke: '#000',
    'stroke-width': 0.8,
    'stroke-dasharray': '0.8 1.2',
    'stroke-linecap': 'square',
  },
};

const NAMES: Record<PlanJoint['type'], string> = {
  contraction: 'contraction joint',
  construction: 'construction joint, through the slab',
  isolation: 'isolation joint, with board',
};

type Axis = 'x' | 'y';

/** The edges of the slab, and where along each axis it begins and ends. */
interface Slab {
  readonly outer: readonly Corner[];
  readonly openings: readonly (readonly Corner[])[];
  readonly ends: Readonly<Record<Axis, readonly [Decimal, Decimal]>>;
}

/** Reckoned from the lowest corner of the slab, so that the drawing is the same at survey coordinates. */
class Sheet {
  constructor(readonly slab: Slab) {}

  spot = ({ x, y }: Corner): PlanPoint => ({
    x: x.minus(this.slab.ends.x[0]).toNumber(),
    y: y.minus(this.slab.ends.y[0]).toNumber(),
  });

  at = ({ x, y }: { readonly x: Length; readonly y: Length }): PlanPoint =>
    this.spot({ x: canonicalValue(x), y: canonicalValue(y) });
}

/** The slab of an input that has been found good already. */
function slabOf({ outline, openings }: JointLayoutInput): Slab {
  const region = readInput(fields(regionFields()), { outline, ...(openings ? { openings } : {}) });
  const rings = ringsOf(region);
  const endsOf = (axis: Axis): [Decimal, Decimal] => {
    const all = rings.outer.map((c) => c[axis]);
    return [Decimal.min(...all), Decimal.max(...all)];
  };
  return { ...rings, ends: { x: endsOf('x'), y: endsOf('y') } };
}

function jointShape(frame: Frame, { at, spot }: Sheet, joint: PlanJoint): string {
  const pattern = { ...PATTERNS[joint.type], class: joint.type };
  if (joint.shape === 'straight') return line(frame, at(joint.from), at(joint.to), pattern);
  const center = joint.center ? at(joint.center) : spot({ x: ZERO, y: ZERO });
  const [a, b] = [at(joint.from), at(joint.to)];
  const r = Math.hypot(a.x - center.x, a.y - center.y);
  const radius = r * frame.scale;
  if (joint.shape === 'circle')
    return element('circle', { cx: frame.x(center.x), cy: frame.y(center.y), r: radius, ...pattern });
  const large = joint.length.toNumber('m') > Math.PI * r ? 1 : 0;
  const end = (p: PlanPoint): string => `${coordinate(frame.x(p.x))} ${coordinate(frame.y(p.y))}`;
  const size = coordinate(radius);
  // Counterclockwise with y up is a sweep of nought on the page.
  return element('path', { d: `M${end(a)}A${size} ${size} 0 ${large} 0 ${end(b)}`, ...pattern });
}

const SMALLEST_TEXT = 1.2;
const LARGEST_TEXT = 3.5;

function panelNumbers(frame: Frame, { at }: Sheet, { panels }: JointLayoutFigures): string[] {
  return panels.flatMap(({ at: middle, along, across, number }) => {
    const short = Math.min(along.toNumber('m'), across.toNumber('m')) * frame.scale;
    const size = Math.min(LARGEST_TEXT, short * 0.4);
    if (size < SMALLEST_TEXT) return [];
    const { x, y } = at(middle);
    const text = number.format().replace(' each', '');
    const style = { 'text-anchor': 'middle', 'font-size': size, class: 'panel' };
    return [label(frame.x(x), frame.y(y) + size / 3, text, style)];
  });
}

const shown = (l: Length): string => (systemOfQuantity(l) === 'metric' ? l.format('m') : l.format('ft-in'));

/** Equal neighbors are dimensioned together: `3 at 9 ft 4 in`. */
interface Stretch {
  readonly from: Length;
  to: Length;
  readonly each: Length;
  times: number;
}

/** Lengths nearer to each other than this, in meters, differ by the rounding of the last digits. */
const ALIKE = 1e-9;

function stretches(stops: readonly Length[]): Stretch[] {
  const list: Stretch[] = [];
  stops.slice(1).forEach((to, i) => {
    const from = stops[i] as Length;
    const each = to.minus(from);
    const last = list.at(-1);
    if (last && Math.abs(last.each.minus(each).toNumber('m')) < ALIKE) {
      last.to = to;
      last.times += 1;
    } else if (each.toNumber('m') > ALIKE) list.push({ from, to, each, times: 1 });
  });
  return list;
}

const stretchText = ({ each, times }: Stretch): string =>
  times > 1 ? `${times} at ${shown(each)}` : shown(each);

/** Where upright (or level) joints stand, between the ends of the slab. */
function stops(figures: JointLayoutFigures, axis: Axis, ends: readonly [Decimal, Decimal]): Length[] {
  const other = axis === 'x' ? 'y' : 'x';
  const apart = (j: PlanJoint, along: Axis): number =>
    Math.abs(j.to[along].minus(j.from[along]).toNumber('m'));
  const found = figures.joints
    .filter((j) => j.shape === 'straight' && apart(j, axis) < ALIKE && apart(j, other) > ALIKE)
    .map((j) => j.from[axis]);
  const system = systemOfQuantity(figures.depth);
  const all = [...found, ...ends.map((end) => quantityOf('length', end, system))];
  return all.sort((a, b) => a.compareTo(b));
}

const AWAY = { near: 5, far: 12 };

/** Shorter stretches than this on the page, in millimeters, have no room for their text. */
const ROOM = 7;

function dimensions(frame: Frame, { slab, spot }: Sheet, figures: JointLayoutFigures): string[] {
  const { ends } = slab;
  const drawn: string[] = [];
  const chain = (axis: Axis): void => {
    const all = stops(figures, axis, ends[axis]);
    const point = (l: Length): PlanPoint =>
      spot(axis === 'x' ? { x: canonicalValue(l), y: ends.y[0] } : { x: ends.x[0], y: canonicalValue(l) });
    const put = (from: Length, to: Length, text: string, away: number): void => {
      const [a, b] = axis === 'x' ? [point(from), point(to)] : [point(to), point(from)];
      drawn.push(dimension(frame, a, b, text, away));
    };
    const [first, last] = [all[0], all.at(-1)];
    if (!first || !last) return;
    put(first, last, shown(last.minus(first)), AWAY.far);
    const crooked = figures.pattern !== 'straight' && !(figures.pattern === 'fan' && axis === 'y');
    if (crooked || all.length < 3) return;
    for (const stretch of stretches(all)) {
      const long = stretch.to.minus(stretch.from).toNumber('m') * frame.scale;
      if (long >= ROOM) put(stretch.from, stretch.to, stretchText(stretch), AWAY.near);
    }
  };
  chain('x');
  chain('y');
  return drawn;
}

function legendFor(figures: JointLayoutFigures, isolated: boolean): LegendEntry[] {
  const types = (['contraction', 'construction', 'isolation'] as const).filter(
    (type) => figures.joints.some((j) => j.type === type) || (type === 'isolation' && isolated),
  );
  const depth = shown(figures.depth);
  return [
    { text: 'edge of the slab', line: EDGE },
    ...types.map((type) => ({
      text: type === 'contraction' ? `${NAMES[type]}, ${depth} deep` : NAMES[type],
      line: PATTERNS[type],
    })),
  ];
}

function describedBy(figures: JointLayoutFigures): string {
  const { panelCount, contraction, construction, isolation } = figures;
  const panels = panelCount.format().replace(' each', '');
  return `A slab in ${panels} panels with ${shown(contraction)} of contraction joints, ${shown(construction)} of construction joints and ${shown(isolation)} of isolation joints.`;
}

/**
 * Draw the joint plan of a slab.
 *
 * @param input - as for `jointLayout`
 * @param options - the title
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
export function jointPlan(input: JointLayoutInput, options: JointPlanOptions = {}): string {
  const { figures } = jointLayout(input);
  const slab = slabOf(input);
  const sheet = new Sheet(slab);
  const outer = slab.outer.map(sheet.spot);
  const openings = slab.openings.map((ring) => ring.map(sheet.spot));
  const frame = frameFor(outer);
  const sides = (plainCopy(input) as JointLayoutInput).isolation ?? [];
  const isolated = openings.length > 0 || sides.length > 0;
  const side = ({ from, to }: (typeof sides)[number]): string => {
    const [a, b] = [from, to].map(({ x, y }) => sheet.at({ x: length(x), y: length(y) })) as [
      PlanPoint,
      PlanPoint,
    ];
    // White under the pattern, so that the edge does not fill its gaps.
    const bare = { stroke: '#fff', 'stroke-width': 1.4 };
    return line(frame, a, b, bare) + line(frame, a, b, { ...PATTERNS.isolation, class: 'isolation' });
  };
  return document({
    title: options.title ?? 'Joint plan',
    description: describedBy(figures),
    frame,
    body: [
      element('path', { d: ringPath(frame, outer), ...EDGE, class: 'edge' }),
      ...openings.map((ring) =>
        element('path', { d: ringPath(frame, ring), ...PATTERNS.isolation, class: 'isolation' }),
      ),
      ...sides.map(side),
      ...figures.joints.map((joint) => jointShape(frame, sheet, joint)),
      ...panelNumbers(frame, sheet, figures),
      ...dimensions(frame, sheet, figures),
    ],
    legend: legendFor(figures, isolated),
  });
}
