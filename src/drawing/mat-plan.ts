/**
 * Plans of mats of bars and of mesh, and a section through the mats.
 *
 * Pieces that lap are drawn a little beside each other, so that each lap shows as two lines. Every mark is
 * written once, at the first bar that carries it. Kinds are told apart by line pattern.
 */
import * as faults from '../quantity/faults';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { readInput, refuse } from '../reckoning/calculation';
import { type AnyBarSize, diameterOf } from '../steel/bars';
import { type MeshRegionInput, type MeshSheet, meshPlacesOf, meshRegionInput } from '../steel/mesh-region';
import { type ParsedRegion, regionInput } from '../steel/rebar-fields';
import { type BarPlace, type MatSheet, placesOf } from '../steel/rebar-region';
import type { RebarRegionInput } from '../steel/rebar-types';
import {
  type Attributes,
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

/** More bars than this cannot be told apart on a page. */
const DRAWN_LIMIT = 5000;
const MARKS_LIMIT = 200;

const OUTLINE: Attributes = { stroke: '#000', 'stroke-width': 0.6, fill: '#f4f4f4', 'fill-rule': 'evenodd' };

/** Line patterns; none relies on color. */
const PATTERNS: Record<string, Attributes> = {
  'bottom along': { stroke: '#000', 'stroke-width': 0.3 },
  'bottom across': { stroke: '#444', 'stroke-width': 0.2 },
  'top along': { stroke: '#000', 'stroke-width': 0.3, 'stroke-dasharray': '3 1' },
  'top across': { stroke: '#444', 'stroke-width': 0.2, 'stroke-dasharray': '3 1' },
  edge: { stroke: '#000', 'stroke-width': 0.4, 'stroke-dasharray': '5 1 1 1' },
  corner: { stroke: '#000', 'stroke-width': 0.7 },
};

const NAMES: Record<string, string> = {
  'bottom along': 'bottom mat, along',
  'bottom across': 'bottom mat, across',
  'top along': 'top mat, along',
  'top across': 'top mat, across',
  edge: 'edge bars',
  corner: 'bars across corners',
};

const kindOf = ({ layer, use }: BarPlace): string =>
  use === 'edge' || use === 'corner' ? use : `${layer} ${use}`;

const pageSpots = (frame: Frame, path: readonly PlanPoint[], aside: number): string => {
  const [a, b] = [path[0] as PlanPoint, path.at(-1) as PlanPoint];
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const [dx, dy] = [(aside * (b.y - a.y)) / long, (aside * (b.x - a.x)) / long];
  return path.map(({ x, y }) => `${(frame.x(x) + dx).toFixed(3)},${(frame.y(y) + dy).toFixed(3)}`).join(' ');
};

const ASIDE = 0.5;

const NEAR = 1e-4;

/** True when a bar begins on the line of the bar before it, within it: the two lap. */
function laps(before: BarPlace | undefined, bar: BarPlace): boolean {
  if (!before || before.use !== bar.use || before.layer !== bar.layer) return false;
  const [a, b] = [before.path[0] as PlanPoint, before.path.at(-1) as PlanPoint];
  const start = bar.path[0] as PlanPoint;
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const [ux, uy] = [(b.x - a.x) / long, (b.y - a.y) / long];
  const along = (start.x - a.x) * ux + (start.y - a.y) * uy;
  const aside = Math.abs((start.y - a.y) * ux - (start.x - a.x) * uy);
  return aside < NEAR && along > 0 && along < long;
}

function drawBars(frame: Frame, places: readonly BarPlace[]): string[] {
  let shifted = false;
  return places.map((bar, i) => {
    shifted = laps(places[i - 1], bar) ? !shifted : false;
    const points = pageSpots(frame, bar.path, shifted ? ASIDE : 0);
    return element('polyline', { points, ...PATTERNS[kindOf(bar)] });
  });
}

/** Each mark once, beside the middle of the first bar that carries it. */
function drawMarks(frame: Frame, places: readonly BarPlace[]): string[] {
  const seen = new Set<string>();
  return places.flatMap(({ mark, path }) => {
    if (seen.has(mark) || seen.size >= MARKS_LIMIT) return [];
    seen.add(mark);
    const [a, b] = [path[0] as PlanPoint, path.at(-1) as PlanPoint];
    // Off the middle by turns, so that marks of neighboring lines do not cover each other.
    const t = 0.3 + 0.1 * (seen.size % 5);
    const [x, y] = [frame.x(a.x + (b.x - a.x) * t), frame.y(a.y + (b.y - a.y) * t)];
    return [
      label(x, y - 0.5, mark, {
        'font-size': 2.2,
        stroke: '#fff',
        'stroke-width': 0.5,
        'paint-order': 'stroke',
      }),
    ];
  });
}

function rings(frame: Frame, all: readonly (readonly PlanPoint[])[]): string {
  return element('path', { d: all.map((ring) => ringPath(frame, ring)).join(''), ...OUTLINE });
}

const metersText = (meters: number): string => `${Number(meters.toFixed(3))} m`;

function overall(frame: Frame, outer: readonly PlanPoint[]): string[] {
  const [xs, ys] = [outer.map((p) => p.x), outer.map((p) => p.y)];
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return [
    dimension(frame, { x: x0, y: y0 }, { x: x1, y: y0 }, metersText(x1 - x0)),
    dimension(frame, { x: x1, y: y0 }, { x: x1, y: y1 }, metersText(y1 - y0)),
  ];
}

/**
 * Plan of the mats of bars that `rebarLayout` lays over an outline, as SVG text.
 *
 * @param input - the same as for `rebarLayout` over an outline
 * @returns an SVG document, in black and white, with marks, laps and a legend
 * @throws {InputError} as `rebarLayout` does; `too-many` above 5,000 bars
 * @example
 * ```ts
 * import { matPlan } from 'flatwork-reckoner/drawing';
 *
 * const svg = matPlan({
 *   outline: { shape: 'L', length: '28 ft', width: '18 ft', notchLength: '8 ft', notchWidth: '6 ft' },
 *   mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in' }],
 * });
 * svg.slice(0, 4); // '<svg'
 * ```
 */
export function matPlan(input: RebarRegionInput): string {
  const { places, rings: all }: MatSheet = placesOf(readInput(regionInput(), input));
  if (places.length > DRAWN_LIMIT) refuse('mats', faults.tooMany('a drawing in bars', DRAWN_LIMIT));
  const frame = frameFor(all[0] ?? []);
  const kinds = [...new Set(places.map(kindOf))];
  return document({
    title: 'Mat plan',
    description: `Plan of ${places.length} bars in ${new Set(places.map((p) => p.mark)).size} marks. Laps show as two lines beside each other.`,
    frame,
    body: [
      rings(frame, all),
      element('g', { fill: 'none' }, ...drawBars(frame, places)),
      element('g', {}, ...drawMarks(frame, places)),
      ...overall(frame, all[0] ?? []),
    ],
    legend: kinds.map((kind): LegendEntry => ({ text: NAMES[kind] ?? kind, line: PATTERNS[kind] ?? {} })),
  });
}

/**
 * Plan of the mesh that `meshLayout` lays over an outline, as SVG text.
 *
 * @param input - the same as for `meshLayout` over an outline
 * @returns an SVG document; overlapping edges are laps, and each piece has its length
 * @throws {InputError} as `meshLayout` does; `too-many` above 5,000 pieces
 * @example
 * ```ts
 * import { meshPlan } from 'flatwork-reckoner/drawing';
 *
 * const svg = meshPlan({
 *   outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
 *   form: 'sheets',
 *   pieceLength: '10 ft',
 *   pieceWidth: '5 ft',
 * });
 * svg.slice(0, 4); // '<svg'
 * ```
 */
export function meshPlan(input: MeshRegionInput): string {
  const { places, rings: all }: MeshSheet = meshPlacesOf(readInput(meshRegionInput(), input));
  if (places.length > DRAWN_LIMIT) refuse('outline', faults.tooMany('a drawing in pieces', DRAWN_LIMIT));
  const frame = frameFor([...(all[0] ?? []), ...places.flatMap((p) => p.corners)]);
  const drawn = places.flatMap(({ corners, length }) => {
    const [a, c] = [corners[0] as PlanPoint, corners[2] as PlanPoint];
    const [x, y] = [frame.x((a.x + c.x) / 2), frame.y((a.y + c.y) / 2)];
    return [
      element('path', { d: ringPath(frame, corners), ...SHEET }),
      label(x, y, metersText(length), { 'text-anchor': 'middle', 'font-size': 2.5 }),
    ];
  });
  return document({
    title: 'Mesh plan',
    description: `Plan of ${places.length} pieces of mesh. Where two overlap is a lap.`,
    frame,
    body: [rings(frame, all), element('g', { fill: 'none' }, ...drawn), ...overall(frame, all[0] ?? [])],
    legend: [{ text: 'piece of mesh, with its length', line: SHEET }],
  });
}

const SHEET: Attributes = { stroke: '#000', 'stroke-width': 0.3, 'stroke-dasharray': '2 1' };

/** A layer of the section: how high its middle is above the ground, in meters, and its bar. */
interface Layer {
  readonly height: number;
  readonly bar: AnyBarSize;
  /** Bars that run across the section are cut and show as dots. */
  readonly cut: boolean;
  readonly spacing: number;
}

const meters = (q: Quantity<'length'>): number => canonicalValue(q).toNumber();

/** The two layers of a mat: the bars along lie nearer to the face. */
function layersOf(mat: ParsedRegion['mats'][number], thickness: number): Layer[] {
  const outer = meters(diameterOf(mat.bar));
  const inner = meters(diameterOf(mat.barAcross ?? mat.bar));
  const cover = mat.faceCover ? meters(mat.faceCover) : (thickness - outer - inner) / 2;
  const up = (depth: number): number => (mat.layer === 'bottom' ? depth : thickness - depth);
  const spacing = meters(mat.spacingAcross ?? mat.spacing ?? FALLBACK_SPACING(mat));
  return [
    { height: up(cover + outer / 2), bar: mat.bar, cut: false, spacing },
    { height: up(cover + outer + inner / 2), bar: mat.barAcross ?? mat.bar, cut: true, spacing },
  ];
}

/** Where only a number of lines is given the section shows bars 24 diameters apart. */
const FALLBACK_SPACING = (mat: ParsedRegion['mats'][number]): Quantity<'length'> => {
  const d = diameterOf(mat.bar);
  return Array.from({ length: 23 }).reduce<Quantity<'length'>>((sum) => sum.plus(d), d);
};

function drawLayer(frame: Frame, { height, bar, cut, spacing }: Layer, wide: number): string[] {
  const d = meters(diameterOf(bar));
  if (!cut) {
    const at = { 'stroke-width': Math.max(0.3, d * frame.scale), stroke: '#000' };
    return [line(frame, { x: 0.02 * wide, y: height }, { x: 0.98 * wide, y: height }, at)];
  }
  const count = Math.min(40, Math.max(1, Math.floor((wide * 0.9) / spacing)));
  return Array.from({ length: count }, (_, i) =>
    element('circle', {
      cx: frame.x(wide * 0.05 + (i + 0.5) * Math.min(spacing, (wide * 0.9) / count)),
      cy: frame.y(height),
      r: Math.max(0.4, (d * frame.scale) / 2),
      fill: '#000',
    }),
  );
}

/** A chair under the lowest layer, drawn as a triangle on the ground. */
function chair(frame: Frame, at: number, top: number): string {
  const half = top / 2;
  const corners = [
    { x: at - half, y: 0 },
    { x: at, y: top },
    { x: at + half, y: 0 },
  ];
  return element('path', { d: ringPath(frame, corners), stroke: '#000', 'stroke-width': 0.3 });
}

const SECTION_WIDTHS = 6;

function section(input: ParsedRegion): string {
  const { thickness } = input;
  if (!thickness) return refuse('thickness', faults.missing('thickness', faults.exampleOf('length')));
  const t = meters(thickness);
  const wide = t * SECTION_WIDTHS;
  const box = [
    { x: 0, y: 0 },
    { x: wide, y: 0 },
    { x: wide, y: t },
    { x: 0, y: t },
  ];
  const frame = frameFor(box);
  const layers = input.mats.flatMap((mat) => layersOf(mat, t));
  const lowest = layers.reduce((a, b) => (b.height < a.height ? b : a));
  const under = lowest.height - meters(diameterOf(lowest.bar)) / 2;
  const covers = input.mats.flatMap(({ layer, faceCover }) => {
    if (!faceCover) return [];
    const c = meters(faceCover);
    const [from, to] = layer === 'bottom' ? [0, c] : [t - c, t];
    return [dimension(frame, { x: 0, y: to }, { x: 0, y: from }, faceCover.format(), 8)];
  });
  return document({
    title: 'Section through the mats',
    description: `Section of a slab of ${thickness.format()} with ${input.mats.length} mat${input.mats.length > 1 ? 's' : ''} on chairs.`,
    frame,
    body: [
      element('path', { d: ringPath(frame, box), ...OUTLINE }),
      ...[0.25, 0.75].map((share) => chair(frame, wide * share, Math.max(under, t * 0.02))),
      ...layers.flatMap((layer) => drawLayer(frame, layer, wide)),
      dimension(frame, { x: wide, y: 0 }, { x: wide, y: t }, thickness.format()),
      ...covers,
    ],
    legend: [
      { text: 'bars along; dots are bars across', line: { stroke: '#000', 'stroke-width': 0.8 } },
      { text: 'triangles are chairs or blocks', line: { stroke: '#000', 'stroke-width': 0.3 } },
    ],
  });
}

/**
 * Section through a slab with its mats on chairs, as SVG text.
 *
 * @param input - the same as for `rebarLayout` over an outline, with `thickness`; a mat without `faceCover`
 * is drawn in the middle
 * @returns an SVG document
 * @throws {InputError} `missing` without a thickness, and as `rebarLayout` does for what cannot be read
 * @example
 * ```ts
 * import { matSection } from 'flatwork-reckoner/drawing';
 *
 * const svg = matSection({
 *   outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
 *   mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in', faceCover: '2 in' }],
 *   thickness: '6 in',
 * });
 * svg.slice(0, 4); // '<svg'
 * ```
 */
export function matSection(input: RebarRegionInput): string {
  return section(readInput(regionInput(), input));
}
