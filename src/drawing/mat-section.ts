/** Section through a slab with its mats on chairs. */
import * as faults from '../quantity/faults';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { readInput, refuse } from '../reckoning/calculation';
import { systemOfInput } from '../reckoning/system';
import { say } from '../reckoning/words';
import { type AnyBarSize, diameterOf } from '../steel/bars';
import { type ParsedMat, type ParsedRegion, regionInput } from '../steel/rebar-fields';
import type { RebarRegionInput } from '../steel/rebar-types';
import { dimension } from './dimension-line';
import { lineSample } from './legend';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { EDGE, GROUND, sheetFor } from './region-plan';
import type { Sheet } from './sheet';

/** A layer of the section: how high its middle is above the ground, in meters, and its bar. */
interface Layer {
  readonly height: number;
  readonly bar: AnyBarSize;
  /** Bars that run across the section are cut and show as dots. */
  readonly cut: boolean;
  readonly spacing: number;
}

const meters = (q: Quantity<'length'>): number => canonicalValue(q).toNumber();

/** Where only a number of lines is given the section shows bars 24 diameters apart. */
const APART = 24;

/** The two layers of a mat: the bars along lie nearer to the face. */
function layersOf(mat: ParsedMat, thickness: number): Layer[] {
  const outer = meters(diameterOf(mat.bar));
  const inner = meters(diameterOf(mat.barAcross ?? mat.bar));
  const cover = mat.faceCover ? meters(mat.faceCover) : (thickness - outer - inner) / 2;
  const up = (depth: number): number => (mat.layer === 'bottom' ? depth : thickness - depth);
  const given = mat.spacingAcross ?? mat.spacing;
  const spacing = given ? meters(given) : APART * outer;
  return [
    { height: up(cover + outer / 2), bar: mat.bar, cut: false, spacing },
    { height: up(cover + outer + inner / 2), bar: mat.barAcross ?? mat.bar, cut: true, spacing },
  ];
}

function drawLayer(sheet: Sheet, { height, bar, cut, spacing }: Layer, wide: number): void {
  const d = meters(diameterOf(bar));
  const { scale, at } = sheet.frame;
  if (!cut) {
    const stroke = { 'stroke-width': Math.max(0.6, d * scale), stroke: 'ink', class: 'bar' };
    sheet.line(
      [
        { x: 0.02 * wide, y: height },
        { x: 0.98 * wide, y: height },
      ],
      stroke,
    );
    return;
  }
  const count = Math.min(40, Math.max(1, Math.floor((wide * 0.9) / spacing)));
  const apart = Math.min(spacing, (wide * 0.9) / count);
  for (let i = 0; i < count; i += 1) {
    const { x, y } = at({ x: wide * 0.05 + (i + 0.5) * apart, y: height });
    sheet.draw('circle', { cx: x, cy: y, r: Math.max(0.8, (d * scale) / 2), fill: 'ink', class: 'bar' });
  }
}

const CHAIR = { stroke: 'ink', 'stroke-width': 0.7 } as const;

/** A chair under the lowest layer, drawn as a triangle on the ground. */
function chair(sheet: Sheet, at: number, top: number): void {
  const half = top / 2;
  const corners = [
    { x: at - half, y: 0 },
    { x: at, y: top },
    { x: at + half, y: 0 },
  ];
  sheet.line(corners, { ...CHAIR, class: 'chair' }, true);
}

/** At least and at most so many times as wide as high; between these wide enough for three bars across. */
const SHAPE = { least: 5, most: 8, bars: 3.4 };

/** How wide the section is, in meters. */
function widthOf({ mats }: ParsedRegion, t: number): number {
  const apart = Math.max(...mats.flatMap((mat) => layersOf(mat, t).map(({ spacing }) => spacing)));
  return Math.min(Math.max(SHAPE.least * t, SHAPE.bars * apart), SHAPE.most * t);
}

function drawAll(sheet: Sheet, read: ParsedRegion, thickness: Quantity<'length'>): void {
  const { mats } = read;
  const t = meters(thickness);
  const wide = widthOf(read, t);
  sheet.shape([boxOf(t, wide)], { ...GROUND, ...EDGE, class: 'outline' });
  const layers = mats.flatMap((mat) => layersOf(mat, t));
  const lowest = layers.reduce((a, b) => (b.height < a.height ? b : a));
  const under = lowest.height - meters(diameterOf(lowest.bar)) / 2;
  for (const share of [0.25, 0.75]) chair(sheet, wide * share, Math.max(under, t * 0.02));
  for (const layer of layers) drawLayer(sheet, layer, wide);
  dimension(sheet, { x: wide, y: 0 }, { x: wide, y: t }, sheet.sized(thickness));
  for (const { layer, faceCover } of mats) {
    if (!faceCover) continue;
    const c = meters(faceCover);
    const [from, to] = layer === 'bottom' ? [0, c] : [t - c, t];
    dimension(sheet, { x: 0, y: to }, { x: 0, y: from }, sheet.sized(faceCover));
  }
}

const boxOf = (t: number, wide: number) => [
  { x: 0, y: 0 },
  { x: wide, y: 0 },
  { x: wide, y: t },
  { x: 0, y: t },
];

/** What each layer is, from the face inwards. */
function explain(sheet: Sheet, { mats }: ParsedRegion): void {
  sheet.explain({
    text: sheet.text('bars along; dots are bars across'),
    sample: lineSample({ stroke: 'ink', 'stroke-width': 1.8 }),
  });
  sheet.explain({
    text: sheet.text('chair or block'),
    sample: (x, y) => [['path', { d: `M${x - 6} ${y + 4}L${x} ${y - 5}L${x + 6} ${y + 4}Z`, ...CHAIR }]],
  });
  for (const { layer, bar, barAcross, faceCover } of mats) {
    const [along, across] = [[bar], [barAcross ?? bar]];
    const mat = layer === 'bottom' ? 'bottom mat' : 'top mat';
    const bars = { mat, along, across };
    sheet.note(sheet.text({ says: '{mat}: {along} along, {across} across', params: bars }));
    if (!faceCover) {
      sheet.note(
        sheet.text({ says: '{mat}: no cover is given, so it is drawn in the middle', params: { mat } }),
      );
    }
  }
}

/**
 * Section through a slab with its mats on chairs, as SVG text.
 *
 * @param input - the same as for `rebarLayout` over an outline, with `thickness`; a mat without `faceCover`
 * is drawn in the middle
 * @param options - heading, units, language, size and colors
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
export function matSection(input: RebarRegionInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const read: ParsedRegion = readInput(regionInput(), input);
  const { thickness } = read;
  if (!thickness) return refuse('thickness', faults.missing('thickness', faults.exampleOf('length')));
  const margins = { left: 4, right: 3, top: 1, bottom: 1 };
  const t = meters(thickness);
  const corners = boxOf(t, widthOf(read, t));
  const sheet = sheetFor(style, 'Section through the mats', systemOfInput(read).system, corners, margins);
  drawAll(sheet, read, thickness);
  explain(sheet, read);
  const [thick, mats] = [sheet.sized(thickness), read.mats.length];
  return sheet.finish(sheet.text(say`Section of a slab ${{ thick }} thick. Mats on chairs: ${{ mats }}.`));
}
