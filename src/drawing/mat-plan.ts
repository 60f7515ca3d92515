/**
 * Plan of mats of bars.
 *
 * Pieces that lap are drawn a little beside each other, so that each lap shows as two lines. Every mark is
 * written once, at a bar that carries it. Kinds are told apart by line pattern; size, spacing, cover and lap of each
 * mat stand in the legend.
 */
import * as faults from '../quantity/faults';
import { readInput, refuse } from '../reckoning/calculation';
import { Pad } from '../reckoning/pad';
import { systemOfInput } from '../reckoning/system';
import { type Saying, say, type Words } from '../reckoning/words';
import type { AnyBarSize } from '../steel/bars';
import { type Ground, groundOf } from '../steel/mat-ground';
import { type ParsedMat, type ParsedRegion, regionInput } from '../steel/rebar-fields';
import { type BarPlace, placesOf } from '../steel/rebar-region';
import type { RebarRegionInput } from '../steel/rebar-types';
import type { PlanPoint } from './frame';
import { lineSample } from './legend';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { drawSlab, overAll, sheetFor, slabOf } from './region-plan';
import type { Box, PagePoint } from './room';
import type { Sheet } from './sheet';
import type { Attributes } from './svg';

/** More bars than this cannot be told apart on a page. */
const DRAWN_LIMIT = 5000;
/** Marks are looked for at so many bars. */
const TRIED = 12;
/** Longer bar lists are printed by themselves. */
const LISTED = 24;

/** Line patterns; none relies on color. */
const PATTERNS: Record<string, Attributes> = {
  'bottom along': { stroke: 'ink', 'stroke-width': 0.9 },
  'bottom across': { stroke: 'ink', 'stroke-width': 0.5, 'stroke-opacity': 0.75 },
  'top along': { stroke: 'ink', 'stroke-width': 0.9, 'stroke-dasharray': '6 2' },
  'top across': { stroke: 'ink', 'stroke-width': 0.5, 'stroke-opacity': 0.75, 'stroke-dasharray': '6 2' },
  edge: { stroke: 'ink', 'stroke-width': 1, 'stroke-dasharray': '9 2 2 2' },
  corner: { stroke: 'ink', 'stroke-width': 1.7 },
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

const ends = ({ path }: BarPlace): [PlanPoint, PlanPoint] => [path[0] as PlanPoint, path.at(-1) as PlanPoint];

const ASIDE = 1.3;
const NEAR = 1e-4;

/** True when a bar begins on the line of the bar before it, within it: the two lap. */
function laps(before: BarPlace | undefined, bar: BarPlace): boolean {
  if (!before || before.use !== bar.use || before.layer !== bar.layer) return false;
  const [a, b] = ends(before);
  const [start] = ends(bar);
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const [ux, uy] = [(b.x - a.x) / long, (b.y - a.y) / long];
  const along = (start.x - a.x) * ux + (start.y - a.y) * uy;
  const aside = Math.abs((start.y - a.y) * ux - (start.x - a.x) * uy);
  return aside < NEAR && along > 0 && along < long;
}

type OnPage = (bar: BarPlace) => PagePoint[];

function drawBars(sheet: Sheet, places: readonly BarPlace[], onPage: OnPage): void {
  let shifted = false;
  places.forEach((bar, i) => {
    shifted = laps(places[i - 1], bar) ? !shifted : false;
    const points = onPage(bar);
    const [a, b] = [points[0] as PagePoint, points.at(-1) as PagePoint];
    const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const off = shifted ? ASIDE / long : 0;
    const aside = points.map(({ x, y }) => ({ x: x - off * (b.y - a.y), y: y + off * (b.x - a.x) }));
    sheet.pageLine(aside, { ...PATTERNS[kindOf(bar)], fill: 'none', class: 'bar' });
  });
}

/** Boxes along a bar, just beside its line. */
function boxesBeside(sheet: Sheet, text: string, points: readonly PagePoint[]): Box[] {
  const [a, b] = [points[0] as PagePoint, points.at(-1) as PagePoint];
  const steep = Math.abs(b.y - a.y) > Math.abs(b.x - a.x);
  const box = sheet.boxOf(text, a, steep ? -90 : 0);
  const off = 0.7 * sheet.size;
  return [0.5, 0.3, 0.7, 0.15, 0.85].flatMap((share) =>
    [-1, 1].map((side) => ({
      ...box,
      x: a.x + (b.x - a.x) * share + (steep ? side * off : 0),
      y: a.y + (b.y - a.y) * share + (steep ? 0 : side * off),
    })),
  );
}

/** Bars by their mark, in order. */
function marked(places: readonly BarPlace[]): Map<string, BarPlace[]> {
  const byMark = new Map<string, BarPlace[]>();
  for (const bar of places) {
    const there = byMark.get(bar.mark);
    if (there) there.push(bar);
    else byMark.set(bar.mark, [bar]);
  }
  return byMark;
}

/** Each mark once, at one of the bars that carry it. */
function drawMarks(sheet: Sheet, byMark: ReadonlyMap<string, readonly BarPlace[]>, onPage: OnPage): void {
  for (const [mark, bars] of byMark) {
    const step = Math.max(1, Math.floor(bars.length / TRIED));
    const some = bars.filter((_, i) => i % step === 0).slice(0, TRIED);
    const boxes = some.flatMap((bar) => boxesBeside(sheet, mark, onPage(bar)));
    if (sheet.place(mark, boxes, { class: 'mark' })) continue;
    const points = onPage(bars[0] as BarPlace);
    const [a, b] = [points[0] as PagePoint, points.at(-1) as PagePoint];
    sheet.label(mark, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, { class: 'mark' });
  }
}

const pathLength = (path: BarPlace['path']): number =>
  path.slice(1).reduce((sum, p, i) => {
    const before = path[i] as PlanPoint;
    return sum + Math.hypot(p.x - before.x, p.y - before.y);
  }, 0);

/** The bar list, where it is short. */
function listBars(sheet: Sheet, byMark: ReadonlyMap<string, readonly BarPlace[]>): void {
  if (byMark.size > LISTED) {
    sheet.note(sheet.text('the length of each mark stands on the bar list'));
    return;
  }
  const sorted = [...byMark].sort(([a], [b]) => Number(a > b) - Number(a < b));
  const rows = sorted.map(([mark, bars]) => {
    const first = bars[0] as BarPlace;
    const [count, bar] = [bars.length, [first.bar]];
    const length = [sheet.length(sheet.meters(pathLength(first.path)))];
    return sheet.text(say`${{ mark: [mark] }}: ${{ count }} of ${{ bar }}, ${{ length }}`);
  });
  sheet.list(rows);
}

/** `#4 @ 18 in` or `12 lines of #4`. */
function barsOf(
  sheet: Sheet,
  bar: AnyBarSize,
  spacing: ParsedMat['spacing'],
  lines: ParsedMat['lines'],
): string {
  if (spacing) return `${bar} @ ${sheet.sized(spacing)}`;
  return sheet.text(say`${{ lines: lines ? sheet.quantity(lines) : '' }} lines of ${{ bar: [bar] }}`);
}

function wordsOfBars(sheet: Sheet, mat: ParsedMat): Words {
  const along = barsOf(sheet, mat.bar, mat.spacing, mat.lines);
  const bar = mat.barAcross ?? mat.bar;
  const alike = !mat.spacingAcross && !mat.linesAcross;
  const across = alike
    ? barsOf(sheet, bar, mat.spacing, mat.lines)
    : barsOf(sheet, bar, mat.spacingAcross, mat.linesAcross);
  return along === across
    ? say`${{ bars: [along] }} both ways`
    : say`${{ along: [along] }} along, ${{ across: [across] }} across`;
}

/** A mat as it is called for: `bottom mat: #4 @ 18 in both ways, 3 in cover, lap 24 in`. */
function callOut(sheet: Sheet, mat: ParsedMat, { cover, laps: lapOf }: Ground): string {
  const sizes = [...new Set([mat.bar, mat.barAcross ?? mat.bar])];
  const told = sizes.map((size) => sheet.sized(lapOf.get(size) ?? cover));
  const lap = [[...new Set(told)].join(' / ')];
  const layer: Saying = mat.layer === 'bottom' ? 'bottom mat' : 'top mat';
  const bars = sheet.text(wordsOfBars(sheet, mat));
  const all = { layer, bars: [bars], cover: [sheet.sized(cover)], lap };
  const text = sheet.text({ says: '{layer}: {bars}, {cover} cover at the edges, lap {lap}', params: all });
  if (!mat.faceCover) return text;
  const face = [sheet.sized(mat.faceCover)];
  const from = mat.layer === 'bottom' ? say`${{ face }} cover from below` : say`${{ face }} cover from above`;
  return `${text}, ${sheet.text(from)}`;
}

/**
 * Plan of the mats of bars that `rebarLayout` lays over an outline, as SVG text.
 *
 * @param input - the same as for `rebarLayout` over an outline
 * @param options - heading, units, language, size and colors
 * @returns an SVG document, with marks, laps, what each mat is called for, and a legend
 * @throws {InputError} as `rebarLayout` does; `too-many` above 5,000 bars
 * @example
 * ```ts
 * import { matPlan } from 'flatwork-reckoner/drawing';
 *
 * const svg = matPlan({
 *   outline: { shape: 'L', length: '28 ft', width: '18 ft', notchLength: '8 ft', notchWidth: '6 ft' },
 *   mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in' }],
 * });
 * svg.includes('#4 @ 18 in both ways'); // true
 * ```
 */
export function matPlan(input: RebarRegionInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const read: ParsedRegion = readInput(regionInput(), input);
  const { places } = placesOf(read);
  if (places.length > DRAWN_LIMIT) refuse('mats', faults.tooMany('a drawing in bars', DRAWN_LIMIT));
  const slab = slabOf(read);
  const sheet = sheetFor(style, 'Mat plan', systemOfInput(read).system, slab.points);
  const ground = groundOf(read, new Pad(systemOfInput(read).system));
  const onPage: OnPage = ({ path }) => path.map((p) => sheet.frame.at(slab.near(p)));
  drawSlab(sheet, slab);
  drawBars(sheet, places, onPage);
  overAll(sheet, slab.points);
  const byMark = marked(places);
  drawMarks(sheet, byMark, onPage);
  for (const kind of new Set(places.map(kindOf))) {
    sheet.explain({ text: sheet.text(NAMES[kind] ?? kind), sample: lineSample(PATTERNS[kind] ?? {}) });
  }
  for (const mat of read.mats) sheet.callOut(callOut(sheet, mat, ground));
  listBars(sheet, byMark);
  const [bars, marks] = [places.length, byMark.size];
  return sheet.finish(
    sheet.text(
      say`Bars: ${{ bars }}, of so many marks: ${{ marks }}. A lap shows as two lines side by side.`,
    ),
  );
}
