/**
 * Plan of a surface that water runs on: contours, fall arrows, ponds, slopes that run back, lines
 * and stakes. Black and white; the legend explains every sign.
 */
import { nextEdge, type Tin } from '../geometry/tin';
import { type ShorePoint, shoreOf } from '../grade/ponds';
import { metersAs } from '../grade/spots';
import {
  faultyFacets,
  type ParsedSurface,
  pondsFound,
  readSite,
  type SurfaceDrainageInput,
  surfaceFields,
} from '../grade/surface-check';
import type { Site } from '../grade/terrain';
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { define, refuse } from '../reckoning/calculation';
import { type Field, fields, list, maybe, label as nameField, quantity } from '../reckoning/fields';
import { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import {
  coordinate,
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

/** A mark to be shown at a stake, as `formGrades` gives it. */
export interface StakeMarkInput {
  /** Name of the stake, written beside it. */
  readonly name: string;
  /** How far along the stake stands. */
  readonly x: QuantityInput<'length'>;
  /** How far across the stake stands. */
  readonly y: QuantityInput<'length'>;
  /** What is written beside it, for example `down 2 1/4 in`. */
  readonly mark?: string;
}

/** Input of {@link surfacePlan}. */
export interface SurfacePlanInput {
  /** The surface, as the drainage check takes it. */
  readonly surface: SurfaceDrainageInput;
  /** Heading; by default `Plan of drainage`. */
  readonly title?: string;
  /** Height between contours; by default chosen so that there are about a dozen. */
  readonly interval?: QuantityInput<'length'>;
  /** Stakes to be shown; none by default. */
  readonly stakes?: readonly StakeMarkInput[];
}

type Length = Quantity<'length'>;

interface ParsedPlan {
  readonly surface: ParsedSurface;
  readonly title: string | undefined;
  readonly interval: Length | undefined;
  readonly stakes:
    | readonly {
        readonly name: string;
        readonly x: Length;
        readonly y: Length;
        readonly mark: string | undefined;
      }[]
    | undefined;
}

const FACET_LIMIT = 20_000;
const CONTOUR_LIMIT = 200;
const CONTOURS = 12;
const HEAVY_EVERY = 5;
const ARROWS = 300;
const SPOT_TEXTS = 120;
const STAKE_LIMIT = 1000;

const WATER = 'url(#standing-water)';
const BACK = 'url(#runs-back)';
const HEAD = 'url(#arrow-head)';

const STROKES = {
  contour: { stroke: '#000', 'stroke-width': 0.15 },
  heavy: { stroke: '#000', 'stroke-width': 0.35 },
  arrow: { stroke: '#000', 'stroke-width': 0.3, 'marker-end': HEAD },
  shore: { stroke: '#000', 'stroke-width': 0.4, 'stroke-dasharray': '2 0.8' },
  building: { stroke: '#000', 'stroke-width': 1.4 },
  curb: { stroke: '#000', 'stroke-width': 0.7, 'stroke-dasharray': '0.7 0.7' },
  open: { stroke: '#000', 'stroke-width': 0.5, 'stroke-dasharray': '4 1.5' },
  drain: { stroke: '#000', 'stroke-width': 1.2, 'stroke-dasharray': '0.4 1' },
  outside: { stroke: '#000', 'stroke-width': 0.25 },
  none: { stroke: 'none' },
} as const;

/** Patterns and the head of the arrows, all of our own. */
const definitions = (): string =>
  element(
    'defs',
    {},
    element(
      'pattern',
      { id: 'standing-water', width: 3, height: 1.6, patternUnits: 'userSpaceOnUse' },
      element('path', { d: 'M0 0.8H2', stroke: '#000', 'stroke-width': 0.2 }),
    ),
    element(
      'pattern',
      {
        id: 'runs-back',
        width: 2,
        height: 2,
        patternUnits: 'userSpaceOnUse',
        patternTransform: 'rotate(45)',
      },
      element('path', { d: 'M0 0V2M0 0H2', stroke: '#000', 'stroke-width': 0.15 }),
    ),
    element(
      'marker',
      {
        id: 'arrow-head',
        viewBox: '0 0 4 4',
        refX: 4,
        refY: 2,
        markerWidth: 5,
        markerHeight: 5,
        orient: 'auto',
      },
      element('path', { d: 'M0 0.4L4 2L0 3.6', stroke: '#000', 'stroke-width': 0.6 }),
    ),
  );

/** Text that stays legible over lines: a white rim around it. */
const HALO = { stroke: '#fff', 'stroke-width': 0.7, 'paint-order': 'stroke' } as const;

/** Text beside a place on the page, on the side away from the middle of the drawing. */
function outwardLabel(frame: Frame, x: number, y: number, text: string, off: number, size: number): string {
  const [dx, dy] = [x - frame.width / 2, y - frame.height / 2];
  const sideways = Math.abs(dx) / frame.width > Math.abs(dy) / frame.height;
  const anchor = sideways ? (dx > 0 ? 'end' : 'start') : 'middle';
  const px = sideways ? x - Math.sign(dx) * 1.5 : x;
  const py = sideways ? y : y + (dy > 0 ? off + size * 0.7 : -off);
  return label(px, py, text, { 'font-size': size, 'text-anchor': anchor, ...HALO });
}

const cornerOf = ({ x, y }: Tin, v: number): PlanPoint => ({ x: x[v] as number, y: y[v] as number });

const facetRing = (tin: Tin, t: number): PlanPoint[] =>
  [0, 1, 2].map((k) => cornerOf(tin, tin.corner[3 * t + k] as number));

/** Where a level crosses the side from p to q. */
function crossing(tin: Tin, p: number, q: number, level: number): PlanPoint | undefined {
  const [a, b] = [(tin.z[p] as number) - level, (tin.z[q] as number) - level];
  if (a < 0 === b < 0) return undefined;
  const s = a / (a - b);
  const [from, to] = [cornerOf(tin, p), cornerOf(tin, q)];
  return { x: from.x + s * (to.x - from.x), y: from.y + s * (to.y - from.y) };
}

function contourOf(tin: Tin, frame: Frame, level: number): string {
  const pieces: string[] = [];
  for (let t = 0; t < tin.facets; t += 1) {
    const cuts = [3 * t, 3 * t + 1, 3 * t + 2].flatMap((e) => {
      const at = crossing(tin, tin.corner[e] as number, tin.corner[nextEdge(e)] as number, level);
      return at ? [at] : [];
    });
    const [a, b] = cuts;
    if (!a || !b) continue;
    pieces.push(
      `M${coordinate(frame.x(a.x))} ${coordinate(frame.y(a.y))}L${coordinate(frame.x(b.x))} ${coordinate(frame.y(b.y))}`,
    );
  }
  return pieces.join('');
}

/** Steps that people count in: 1, 2 or 5 times a power of ten of the unit. */
function roundStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((k) => k * power >= rough) ?? 10;
  return step * power;
}

/** Heights of the contours in meters, and the step, both in whole steps of the datum. */
function contourLevels(site: Site, interval: Length | undefined): { levels: Decimal[]; step: Decimal } {
  const { survey, terrain } = site;
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const v of terrain.tin.corner) {
    low = Math.min(low, terrain.tin.z[v] as number);
    high = Math.max(high, terrain.tin.z[v] as number);
  }
  const unit = survey.system === 'metric' ? new Decimal(1) : new Decimal('0.3048');
  const rough = Math.max((high - low) / CONTOURS / unit.toNumber(), 1e-6);
  const step = interval ? canonicalValue(interval) : unit.times(new Decimal(roundStep(rough).toPrecision(3)));
  const base = survey.exact(0).z;
  const first = base.plus(low).div(step).ceil();
  const last = base.plus(high).div(step).floor();
  const count = last.minus(first).toNumber() + 1;
  if (count > CONTOUR_LIMIT) refuse('interval', faults.tooMany('contours', CONTOUR_LIMIT));
  return { step, levels: Array.from({ length: Math.max(count, 0) }, (_, i) => first.plus(i).times(step)) };
}

const elevationText = (site: Site, z: Decimal): string =>
  metersAs(z, site.survey.system).format(undefined, { places: site.survey.system === 'metric' ? 3 : 2 });

function contours(site: Site, frame: Frame, interval: Length | undefined): { drawn: string[]; step: string } {
  const { tin } = site.terrain;
  const base = site.survey.exact(0).z;
  const { levels, step } = contourLevels(site, interval);
  const drawn = levels.flatMap((level) => {
    // A hair above, so that a contour never runs along a level side.
    const d = contourOf(tin, frame, level.minus(base).toNumber() + 1e-9);
    const heavy = level.div(step).round().mod(HEAVY_EVERY).isZero();
    if (d === '') return [];
    return [element('path', { d, ...(heavy ? STROKES.heavy : STROKES.contour), class: 'contour' })];
  });
  return { drawn, step: elevationText(site, step) };
}

const ARROW_LENGTH = 5;

function arrows(site: Site, frame: Frame): string[] {
  const { tin } = site.terrain;
  const every = Math.max(1, Math.ceil(tin.facets / ARROWS));
  const drawn: string[] = [];
  for (let t = 0; t < tin.facets; t += every) {
    const [fx, fy] = [tin.fallX[t] as number, tin.fallY[t] as number];
    const fall = Math.hypot(fx, fy);
    if (fall < 1e-9) continue;
    const ring = facetRing(tin, t);
    const x = ring.reduce((s, p) => s + p.x, 0) / 3;
    const y = ring.reduce((s, p) => s + p.y, 0) / 3;
    const half = ARROW_LENGTH / 2 / frame.scale;
    const [ux, uy] = [(fx / fall) * half, (fy / fall) * half];
    drawn.push(
      line(frame, { x: x - ux, y: y - uy }, { x: x + ux, y: y + uy }, { ...STROKES.arrow, class: 'fall' }),
    );
  }
  return drawn;
}

function shorePlace(tin: Tin, point: ShorePoint, level: number): PlanPoint {
  if (point.length === 1) return cornerOf(tin, point[0]);
  return crossing(tin, point[0], point[1], level) ?? cornerOf(tin, point[0]);
}

function ponds(site: Site, frame: Frame): string[] {
  const { survey, terrain } = site;
  return pondsFound(site).flatMap((pond) => {
    const level = terrain.tin.z[pond.spill] as number;
    const rings = shoreOf(terrain.tin, pond, level).map((ring) =>
      ring.map((p) => shorePlace(terrain.tin, p, level)),
    );
    const d = rings.map((ring) => ringPath(frame, ring)).join('');
    const at = cornerOf(terrain.tin, pond.lowest);
    const depth = metersAs(survey.exact(pond.spill).z.minus(survey.exact(pond.lowest).z), survey.system);
    const text = depth.format(survey.system === 'metric' ? 'mm' : 'in', {
      places: survey.system === 'metric' ? 0 : 2,
    });
    return [
      element('path', { d, fill: WATER, 'fill-rule': 'evenodd', ...STROKES.shore, class: 'pond' }),
      label(frame.x(at.x) + 1, frame.y(at.y) + 3.2, `${text} deep`, { 'font-size': 2.8, ...HALO }),
    ];
  });
}

function lineMarks(site: Site, frame: Frame): string[] {
  return site.lines.flatMap(({ kind, name, points }) => {
    const strokes = strokeFor(kind);
    const [first] = points;
    if (!first) return [];
    const d = points.map(
      (p, i) => `${i === 0 ? 'M' : 'L'}${coordinate(frame.x(p.x))} ${coordinate(frame.y(p.y))}`,
    );
    const drawn =
      points.length === 1
        ? element('circle', {
            cx: frame.x(first.x),
            cy: frame.y(first.y),
            r: 1.6,
            stroke: '#000',
            'stroke-width': 0.5,
          })
        : element('path', { d: d.join(''), ...strokes, class: kind });
    const half = Math.max(0, Math.floor((points.length - 2) / 2));
    const [a, b] = [points[half] ?? first, points[half + 1] ?? points[half] ?? first];
    const [x, y] = [frame.x((a.x + b.x) / 2), frame.y((a.y + b.y) / 2)];
    return [drawn, outwardLabel(frame, x, y, name, 2, 3.5)];
  });
}

function strokeFor(kind: string): (typeof STROKES)[keyof typeof STROKES] {
  if (kind === 'building' || kind === 'threshold') return STROKES.building;
  if (kind === 'curb') return STROKES.curb;
  return kind === 'drain' ? STROKES.drain : STROKES.open;
}

function outside(tin: Tin, frame: Frame): string {
  const pieces: string[] = [];
  for (let e = 0; e < tin.corner.length; e += 1) {
    if (tin.twin[e] !== -1) continue;
    const [a, b] = [cornerOf(tin, tin.corner[e] as number), cornerOf(tin, tin.corner[nextEdge(e)] as number)];
    pieces.push(
      `M${coordinate(frame.x(a.x))} ${coordinate(frame.y(a.y))}L${coordinate(frame.x(b.x))} ${coordinate(frame.y(b.y))}`,
    );
  }
  return element('path', { d: pieces.join(''), ...STROKES.outside, class: 'outside' });
}

function spotTexts(site: Site, frame: Frame): string[] {
  const { survey } = site;
  if (survey.count > SPOT_TEXTS) return [];
  return Array.from({ length: survey.count }, (_, i) => {
    const [x, y] = [frame.x(survey.x[i] as number), frame.y(survey.y[i] as number)];
    return (
      element('circle', { cx: x, cy: y, r: 0.4, fill: '#000' }) +
      label(x + 0.8, y - 0.6, elevationText(site, survey.exact(i).z), { 'font-size': 2.2, ...HALO })
    );
  });
}

/** Stakes stand along the outside: their text goes above or below, in from the left or right. */
function stakeLabel(frame: Frame, x: number, y: number, text: string): string {
  const anchor = x > frame.width / 2 ? 'end' : 'start';
  const py = y > frame.height / 2 ? y + 5.5 : y - 4;
  return label(x, py, text, { 'font-size': 2.8, 'text-anchor': anchor, ...HALO });
}

function stakeMarks(site: Site, frame: Frame, stakes: NonNullable<ParsedPlan['stakes']>): string[] {
  const origin = site.survey.exact(0);
  return stakes.map(({ name, x, y, mark }) => {
    const px = frame.x(canonicalValue(x).minus(origin.x).toNumber());
    const py = frame.y(canonicalValue(y).minus(origin.y).toNumber());
    const arm = 1.4;
    const d = `M${coordinate(px - arm)} ${coordinate(py - arm)}L${coordinate(px + arm)} ${coordinate(py + arm)}M${coordinate(px - arm)} ${coordinate(py + arm)}L${coordinate(px + arm)} ${coordinate(py - arm)}`;
    return (
      element('path', { d, stroke: '#000', 'stroke-width': 0.4, class: 'stake' }) +
      stakeLabel(frame, px, py, mark ? `${name}: ${mark}` : name)
    );
  });
}

/** What the drawing shows, so that the legend explains that and no more. */
interface Shown {
  readonly ponds: boolean;
  readonly back: boolean;
  readonly stakes: boolean;
  readonly spots: boolean;
}

function legend(site: Site, step: string, has: Shown): LegendEntry[] {
  const kinds = new Set(site.lines.map(({ kind }) => kind));
  const dry = kinds.has('building') || kinds.has('threshold');
  const open = kinds.has('driveway') || kinds.has('walk') || kinds.has('lawn');
  return [
    { text: `contour, every ${step}; each fifth heavy`, line: STROKES.heavy },
    { text: 'way that water runs', line: STROKES.arrow },
    ...(has.stakes ? [{ text: 'a cross is a stake, with its mark', line: STROKES.none }] : []),
    ...(has.spots ? [{ text: 'a dot is a spot, with its elevation', line: STROKES.none }] : []),
    ...(has.ponds ? [{ text: 'water stands here', line: { stroke: WATER, 'stroke-width': 4.5 } }] : []),
    ...(has.back ? [{ text: 'runs to the building', line: { stroke: BACK, 'stroke-width': 4.5 } }] : []),
    ...(dry ? [{ text: 'building, to stay dry', line: STROKES.building }] : []),
    ...(kinds.has('curb') ? [{ text: 'curb', line: STROKES.curb }] : []),
    ...(kinds.has('drain') ? [{ text: 'drain; a point drain is a ring', line: STROKES.drain }] : []),
    ...(open ? [{ text: 'open edge', line: STROKES.open }] : []),
  ];
}

function draw({ surface, title, interval, stakes = [] }: ParsedPlan): string {
  const { site, held } = readSite(surface, new Pad());
  const { tin } = site.terrain;
  if (tin.facets > FACET_LIMIT) refuse('surface', faults.tooMany('the facets of a drawing', FACET_LIMIT));
  const used = new Set(tin.corner);
  const frame = frameFor([...used].map((v) => cornerOf(tin, v)));
  const back = faultyFacets(site, held).reverse;
  const heights = contours(site, frame, interval);
  const water = ponds(site, frame);
  const hatched = back.map((t) =>
    element('path', { d: ringPath(frame, facetRing(tin, t)), fill: BACK, class: 'runs-back' }),
  );
  return document({
    title: title ?? 'Plan of drainage',
    description: `${tin.facets} facets over ${site.survey.count} spots; ${water.length / 2} ponds; ${back.length} facets run to a building`,
    frame,
    body: [
      definitions(),
      outside(tin, frame),
      ...hatched,
      ...water,
      ...heights.drawn,
      ...arrows(site, frame),
      ...lineMarks(site, frame),
      ...spotTexts(site, frame),
      ...stakeMarks(site, frame, stakes),
    ],
    legend: legend(site, heights.step, {
      ponds: water.length > 0,
      back: back.length > 0,
      stakes: stakes.length > 0,
      spots: site.survey.count <= SPOT_TEXTS,
    }),
  });
}

/** The door of the drawing is that of a calculation: plain copies, coded errors. */
const plan = /*#__PURE__*/ define<SurfacePlanInput, ParsedPlan, { readonly svg: string }>({
  id: 'surface-plan',
  title: 'Plan of drainage',
  version: 1,
  sources: [CLOSED_FORM],
  input: () =>
    fields({
      surface: surfaceFields() as Field<ParsedSurface>,
      title: maybe(nameField('title')),
      interval: maybe(quantity('length', 'interval')),
      stakes: maybe(
        list(
          fields({
            name: nameField('name'),
            x: quantity('length', 'x', 'any'),
            y: quantity('length', 'y', 'any'),
            mark: maybe(nameField('mark')),
          }),
          0,
          STAKE_LIMIT,
        ),
      ),
    }),
  reckon: (input) => ({ svg: draw(input) }),
});

/**
 * Draw the plan of a surface as SVG: contours, fall arrows, ponds, slopes that run back, stakes.
 *
 * @param input - the surface as the drainage check takes it, a title, the contour interval and stakes
 * @returns the SVG document as text, without scripts or outside resources
 * @throws {InputError} as the drainage check does; `too-many` above 20,000 facets or 200 contours
 */
export const surfacePlan = (input: SurfacePlanInput): string => plan(input).figures.svg;
