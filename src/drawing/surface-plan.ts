/**
 * Plan of a surface that water runs on: contours, fall arrows with their slope, ponds, slopes that run back, lines
 * with their names, and stakes. Black and white; the legend explains every sign.
 */
import { nextEdge, type Tin } from '../geometry/tin';
import { readSite } from '../grade/held';
import { faultyFacets } from '../grade/judged';
import { pondsFound } from '../grade/pond-figures';
import { type ShorePoint, shoreOf } from '../grade/ponds';
import { metersAs } from '../grade/spots';
import { type ParsedSurface, type SurfaceDrainageInput, surfaceFields } from '../grade/surface-input';
import type { Site } from '../grade/terrain';
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { canonicalValue, type Quantity, type QuantityInput, quantityOf } from '../quantity/quantity';
import { readInput, refuse } from '../reckoning/calculation';
import { type Field, fields, list, maybe, label as nameField, quantity } from '../reckoning/fields';
import { Pad } from '../reckoning/pad';
import { systemOfInput } from '../reckoning/system';
import { say } from '../reckoning/words';
import { arrowPath } from './arrow';
import { extentOf, type PlanPoint } from './frame';
import { hatch } from './hatch';
import { lineSample, type Sample } from './legend';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { sheetFor } from './region-plan';
import type { Box, PagePoint } from './room';
import type { Sheet } from './sheet';
import { type Attributes, pathThrough } from './svg';

/** A mark to be shown at a stake, as `formGrades` gives it. */
export interface StakeMarkInput {
  /** Name of the stake, written beside it. */
  readonly name: string;
  /** How far along the stake stands. */
  readonly x: QuantityInput<'length'>;
  /** How far across the stake stands. */
  readonly y: QuantityInput<'length'>;
  /** What is written beside it, for example `down 2-1/4 in`. */
  readonly mark?: string;
}

/** Input of {@link surfacePlan}. */
export interface SurfacePlanInput {
  /** The surface, as the drainage check takes it. */
  readonly surface: SurfaceDrainageInput;
  /** Height between contours; by default chosen so that there are about a dozen. */
  readonly interval?: QuantityInput<'length'>;
  /** Stakes to be shown; none by default. */
  readonly stakes?: readonly StakeMarkInput[];
}

type Length = Quantity<'length'>;

interface Stake {
  readonly name: string;
  readonly x: Length;
  readonly y: Length;
  readonly mark: string | undefined;
}

interface ParsedPlan {
  readonly surface: ParsedSurface;
  readonly interval: Length | undefined;
  readonly stakes: readonly Stake[] | undefined;
}

const FACET_LIMIT = 20_000;
const CONTOUR_LIMIT = 200;
const CONTOURS = 12;
const HEAVY_EVERY = 5;
const SPOT_TEXTS = 120;
const STAKE_LIMIT = 1000;

const thin = (width: number, dashes?: string): Attributes => ({
  stroke: 'ink',
  'stroke-width': width,
  ...(dashes ? { 'stroke-dasharray': dashes } : {}),
});

const STROKES = {
  contour: thin(0.4),
  heavy: thin(0.9),
  arrow: thin(0.9),
  shore: thin(1, '5 2'),
  building: thin(3),
  curb: thin(1.6, '1.6 1.6'),
  open: thin(1.2, '10 4'),
  drain: thin(2.6, '1 2.4'),
  outside: thin(0.7),
  hatch: thin(0.5),
};

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

/** A piece of a line, on the page. */
function pieceOf(sheet: Sheet, a: PlanPoint, b: PlanPoint): string {
  const [p, q] = [sheet.frame.at(a), sheet.frame.at(b)];
  sheet.room.draw(p, q);
  return pathThrough([p, q]);
}

function contourOf(tin: Tin, sheet: Sheet, level: number): string {
  const pieces: string[] = [];
  for (let t = 0; t < tin.facets; t += 1) {
    const cuts = [3 * t, 3 * t + 1, 3 * t + 2].flatMap((e) => {
      const at = crossing(tin, tin.corner[e] as number, tin.corner[nextEdge(e)] as number, level);
      return at ? [at] : [];
    });
    const [a, b] = cuts;
    if (!a || !b) continue;
    pieces.push(pieceOf(sheet, a, b));
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
function contourLevels(
  sheet: Sheet,
  { survey, terrain }: Site,
  interval: Length | undefined,
): { levels: Decimal[]; step: Decimal } {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const v of terrain.tin.corner) {
    low = Math.min(low, terrain.tin.z[v] as number);
    high = Math.max(high, terrain.tin.z[v] as number);
  }
  const unit = sheet.system === 'metric' ? new Decimal(1) : new Decimal('0.3048');
  const rough = Math.max((high - low) / CONTOURS / unit.toNumber(), 1e-6);
  const step = interval ? canonicalValue(interval) : unit.times(new Decimal(roundStep(rough).toPrecision(3)));
  const base = survey.exact(0).z;
  const first = base.plus(low).div(step).ceil();
  const last = base.plus(high).div(step).floor();
  const count = last.minus(first).toNumber() + 1;
  if (count > CONTOUR_LIMIT) refuse('interval', faults.tooMany('contours', CONTOUR_LIMIT));
  return { step, levels: Array.from({ length: Math.max(count, 0) }, (_, i) => first.plus(i).times(step)) };
}

/** Elevations are read off a rod in decimal feet, or in meters. */
const UNITS = { customary: 'ft', metric: 'm' } as const;

const elevationText = (sheet: Sheet, z: Decimal): string => {
  const places = sheet.system === 'metric' ? 3 : 2;
  return sheet.marks(metersAs(z, sheet.system).format(UNITS[sheet.system], { places }));
};

/** The same without its unit, which the legend gives. */
const spotText = (sheet: Sheet, z: Decimal): string => elevationText(sheet, z).replace(/\s\p{L}+$/u, '');

function contours(sheet: Sheet, site: Site, interval: Length | undefined): string {
  const { tin } = site.terrain;
  const base = site.survey.exact(0).z;
  const { levels, step } = contourLevels(sheet, site, interval);
  for (const level of levels) {
    // A hair above, so that a contour never runs along a level side.
    const d = contourOf(tin, sheet, level.minus(base).toNumber() + 1e-9);
    const heavy = level.div(step).round().mod(HEAVY_EVERY).isZero();
    if (d !== '') sheet.draw('path', { d, ...(heavy ? STROKES.heavy : STROKES.contour), class: 'contour' });
  }
  return elevationText(sheet, step);
}

/** Half an arrow, and what must be free around it, by the height of the text. */
const ARROW = { half: 0.85, apart: 3.4 };
const HEAD = 0.42;

interface Fall {
  readonly at: PagePoint;
  readonly u: PagePoint;
  readonly slope: number;
}

/** Falls of the largest facets, none near another. */
function falls(sheet: Sheet, { tin }: Site['terrain']): Fall[] {
  const facets = Array.from({ length: tin.facets }, (_, t) => {
    const [a, b, c] = facetRing(tin, t) as [PlanPoint, PlanPoint, PlanPoint];
    const area = Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y));
    return { t, area, middle: { x: (a.x + b.x + c.x) / 3, y: (a.y + b.y + c.y) / 3 } };
  });
  facets.sort((a, b) => b.area - a.area || a.t - b.t);
  const apart = ARROW.apart * sheet.size;
  const taken = new Set<string>();
  const field = ({ x, y }: PagePoint, i = 0, j = 0): string =>
    `${Math.floor(x / apart) + i},${Math.floor(y / apart) + j}`;
  const found: Fall[] = [];
  for (const { t, middle } of facets) {
    const [fx, fy] = [tin.fallX[t] as number, tin.fallY[t] as number];
    const slope = Math.hypot(fx, fy);
    const at = sheet.frame.at(middle);
    if (slope < 1e-9 || taken.has(field(at))) continue;
    taken.add(field(at));
    const near = found.some(({ at: other }) => Math.hypot(other.x - at.x, other.y - at.y) < apart);
    if (!near) found.push({ at, u: { x: fx / slope, y: -fy / slope }, slope });
  }
  return found;
}

const slopeText = (sheet: Sheet, slope: number): string => {
  const exact = quantityOf('slope', new Decimal(slope.toFixed(9)), sheet.system);
  return sheet.marks(exact.format('%', { places: 1 }));
};

function drawFalls(sheet: Sheet, all: readonly Fall[]): void {
  const half = ARROW.half * sheet.size;
  for (const { at, u } of all) {
    const tail = { x: at.x - u.x * half, y: at.y - u.y * half };
    sheet.room.draw(tail, { x: at.x + u.x * half, y: at.y + u.y * half });
    sheet.draw('path', { d: arrowPath(at, u, half, HEAD * sheet.size), ...STROKES.arrow, class: 'fall' });
  }
}

function nameFalls(sheet: Sheet, all: readonly Fall[]): void {
  for (const { at, slope } of all) {
    sheet.label(slopeText(sheet, slope), at, { gap: sheet.size * 0.5, mayMove: false, class: 'slope' });
  }
}

function shorePlace(tin: Tin, point: ShorePoint, level: number): PlanPoint {
  if (point.length === 1) return cornerOf(tin, point[0]);
  return crossing(tin, point[0], point[1], level) ?? cornerOf(tin, point[0]);
}

interface Pond {
  readonly at: PagePoint;
  readonly depth: Decimal;
}

function drawPonds(sheet: Sheet, site: Site): Pond[] {
  const { survey, terrain } = site;
  return pondsFound(site).map((pond) => {
    const level = terrain.tin.z[pond.spill] as number;
    const rings = shoreOf(terrain.tin, pond, level).map((ring) =>
      ring.map((p) => sheet.frame.at(shorePlace(terrain.tin, p, level))),
    );
    const d = rings.map((ring) => `${pathThrough(ring)}Z`).join('');
    sheet.draw('path', { d: hatch(rings, { turn: 0, apart: 4, dash: 6 }), ...STROKES.hatch, class: 'water' });
    sheet.draw('path', { d, ...STROKES.shore, class: 'pond' });
    const depth = survey.exact(pond.spill).z.minus(survey.exact(pond.lowest).z);
    return { at: sheet.frame.at(cornerOf(terrain.tin, pond.lowest)), depth };
  });
}

function namePonds(sheet: Sheet, ponds: readonly Pond[]): void {
  for (const { at, depth } of ponds) {
    const text = sheet.sized(quantityOf('length', depth, sheet.system));
    sheet.label(sheet.text(say`${{ depth: [text] }} deep`), at, { class: 'depth', prefer: [90, -90] });
  }
}

/** Where the surface runs to a building. */
function drawBack(sheet: Sheet, tin: Tin, facets: readonly number[]): void {
  if (facets.length === 0) return;
  const rings = facets.map((t) => facetRing(tin, t).map(sheet.frame.at));
  sheet.draw('path', { d: hatch(rings, { turn: 45, apart: 5 }), ...STROKES.hatch, class: 'runs-back' });
  sheet.draw('path', { d: hatch(rings, { turn: -45, apart: 5 }), ...STROKES.hatch, class: 'runs-back' });
}

function strokeFor(kind: string): Attributes {
  if (kind === 'building' || kind === 'threshold') return STROKES.building;
  if (kind === 'curb') return STROKES.curb;
  return kind === 'drain' ? STROKES.drain : STROKES.open;
}

function drawLines(sheet: Sheet, { lines }: Site): void {
  for (const { kind, points } of lines) {
    const [first] = points;
    if (!first) continue;
    if (points.length > 1) {
      sheet.line(points, { ...strokeFor(kind), class: kind });
      continue;
    }
    const { x, y } = sheet.frame.at(first);
    sheet.draw('circle', { cx: x, cy: y, r: 4, stroke: 'ink', 'stroke-width': 1.2, class: kind });
  }
}

/** Along the longest leg of a line, to both sides of it, upright where the leg is. */
function boxesAlong(sheet: Sheet, text: string, points: readonly PlanPoint[]): Box[] {
  const legs = points
    .slice(1)
    .map((p, i): [PagePoint, PagePoint] => [sheet.frame.at(points[i] as PlanPoint), sheet.frame.at(p)]);
  const long = ([a, b]: [PagePoint, PagePoint]): number => Math.hypot(b.x - a.x, b.y - a.y);
  const [leg] = legs.sort((a, b) => long(b) - long(a));
  if (!leg) return [];
  const [a, b] = leg;
  const steep = Math.abs(b.y - a.y) > Math.abs(b.x - a.x);
  const box = sheet.boxOf(text, a, steep ? -90 : 0);
  const [nx, ny] = [-(b.y - a.y) / (long(leg) || 1), (b.x - a.x) / (long(leg) || 1)];
  // Off the plan first: there is less to cover there.
  const { left, right, top, bottom } = sheet.frame.bounds;
  const outwards = nx * (a.x - (left + right) / 2) + ny * (a.y - (top + bottom) / 2) > 0 ? 1 : -1;
  return [1, 1.9].flatMap((off) =>
    [outwards, -outwards].flatMap((side) =>
      [0.5, 0.3, 0.7, 0.15, 0.85].map((share) => ({
        ...box,
        x: a.x + (b.x - a.x) * share + nx * side * off * sheet.size,
        y: a.y + (b.y - a.y) * share + ny * side * off * sheet.size,
      })),
    ),
  );
}

function nameLines(sheet: Sheet, { lines }: Site): void {
  for (const { name: given, points } of lines) {
    const name = sheet.name(given);
    const [first] = points;
    if (!first || name === '') continue;
    if (sheet.place(name, boxesAlong(sheet, name, points), { class: 'line-name', 'font-style': 'italic' }))
      continue;
    const second = points[1] ?? first;
    const middle = sheet.frame.at({ x: (first.x + second.x) / 2, y: (first.y + second.y) / 2 });
    sheet.label(name, middle, { gap: 6, class: 'line-name' });
  }
}

function outside(sheet: Sheet, tin: Tin): void {
  const pieces: string[] = [];
  for (let e = 0; e < tin.corner.length; e += 1) {
    if (tin.twin[e] !== -1) continue;
    const [a, b] = [cornerOf(tin, tin.corner[e] as number), cornerOf(tin, tin.corner[nextEdge(e)] as number)];
    pieces.push(pieceOf(sheet, a, b));
  }
  sheet.draw('path', { d: pieces.join(''), ...STROKES.outside, class: 'outside' });
}

const spotsOf = (sheet: Sheet, { survey }: Site): PagePoint[] =>
  survey.count > SPOT_TEXTS
    ? []
    : Array.from({ length: survey.count }, (_, i) =>
        sheet.frame.at({ x: survey.x[i] as number, y: survey.y[i] as number }),
      );

/** Where a stake stands on the plan, from the first spot. */
function stakePlace({ survey }: Site, { x, y }: Stake): PlanPoint {
  const origin = survey.exact(0);
  return {
    x: canonicalValue(x).minus(origin.x).toNumber(),
    y: canonicalValue(y).minus(origin.y).toNumber(),
  };
}

const ARM = 3.6;

const cross = ({ x, y }: PagePoint): string =>
  pathThrough([
    { x: x - ARM, y: y - ARM },
    { x: x + ARM, y: y + ARM },
  ]) +
  pathThrough([
    { x: x - ARM, y: y + ARM },
    { x: x + ARM, y: y - ARM },
  ]);

function stakeMarks(sheet: Sheet, site: Site, stakes: readonly Stake[]): void {
  const at = stakes.map((stake) => sheet.frame.at(stakePlace(site, stake)));
  for (const place of at) {
    sheet.room.take({ ...place, width: 2 * ARM, height: 2 * ARM, turn: 0 });
    sheet.draw('path', { d: cross(place), stroke: 'ink', 'stroke-width': 1.1, class: 'stake' });
  }
  stakes.forEach(({ name, mark }, i) => {
    const text = sheet.name(mark ? `${name}: ${mark}` : name);
    sheet.label(text, at[i] as PagePoint, { gap: 5, class: 'stake-mark' });
  });
}

const sampled =
  (make: (at: PagePoint, size: number) => Attributes): Sample =>
  (x, y, width) => [['path', make({ x, y }, width)]];

const swatch = (x: number, y: number, width: number): PagePoint[] => [
  { x: x - width / 2, y: y - 6 },
  { x: x + width / 2, y: y - 6 },
  { x: x + width / 2, y: y + 6 },
  { x: x - width / 2, y: y + 6 },
];

const hatched = (turns: readonly number[], apart: number, dash?: number): Sample =>
  sampled(({ x, y }, width) => ({
    d: turns.map((turn) => hatch([swatch(x, y, width)], { turn, apart, ...(dash ? { dash } : {}) })).join(''),
    ...STROKES.hatch,
  }));

/** What the drawing shows, so that the legend explains that and no more. */
interface Shown {
  readonly step: string;
  readonly falls: boolean;
  readonly ponds: boolean;
  readonly back: boolean;
  readonly stakes: boolean;
  readonly spots: boolean;
}

function explainLines(sheet: Sheet, site: Site): void {
  const kinds = new Set<string>(site.lines.map(({ kind }) => kind));
  const line = (shown: boolean, text: string, attributes: Attributes): void =>
    sheet.explain(shown && { text: sheet.text(text), sample: lineSample(attributes) });
  line(kinds.has('building') || kinds.has('threshold'), 'building, to stay dry', STROKES.building);
  line(kinds.has('curb'), 'curb', STROKES.curb);
  line(kinds.has('drain'), 'drain; a point drain is a ring', STROKES.drain);
  const open = kinds.has('driveway') || kinds.has('walk') || kinds.has('lawn');
  line(open, 'open edge', STROKES.open);
}

function explain(sheet: Sheet, site: Site, { step, ...has }: Shown): void {
  const unit = UNITS[sheet.system];
  const arrow = sampled(({ x, y }, width) => ({
    d: arrowPath({ x, y }, { x: 1, y: 0 }, width / 2, HEAD * sheet.size),
    ...STROKES.arrow,
  }));
  sheet.explain(
    {
      text: sheet.text(say`contour, every ${{ step: [step] }}; each fifth heavy`),
      sample: lineSample(STROKES.heavy),
    },
    has.falls && { text: sheet.text('way that water runs, and its slope'), sample: arrow },
    has.stakes && {
      text: sheet.text('stake, with its mark'),
      sample: sampled((at) => ({ d: cross(at), stroke: 'ink', 'stroke-width': 1.1 })),
    },
    has.spots && {
      text: sheet.text(say`spot, with its elevation in ${{ unit: [unit] }}`),
      sample: (x, y) => [['circle', { cx: x, cy: y, r: 1.8, fill: 'ink' }]],
    },
    has.ponds && { text: sheet.text('water stands here'), sample: hatched([0], 4, 6) },
    has.back && { text: sheet.text('runs to the building'), sample: hatched([45, -45], 5) },
  );
  explainLines(sheet, site);
}

/** Stakes farther off than half the plan would make the rest small. */
function stakesNear(site: Site, spots: readonly PlanPoint[], stakes: readonly Stake[]): Stake[] {
  const { from, to } = extentOf(spots);
  const far = Math.max(to.x - from.x, to.y - from.y) / 2;
  return stakes.filter((stake) => {
    const { x, y } = stakePlace(site, stake);
    return x >= from.x - far && x <= to.x + far && y >= from.y - far && y <= to.y + far;
  });
}

function drawSurface(sheet: Sheet, site: Site, back: readonly number[], interval: Length | undefined) {
  const { tin } = site.terrain;
  outside(sheet, tin);
  drawBack(sheet, tin, back);
  const ponds = drawPonds(sheet, site);
  const step = contours(sheet, site, interval);
  const arrows = falls(sheet, site.terrain);
  drawFalls(sheet, arrows);
  drawLines(sheet, site);
  return { ponds, step, arrows };
}

/**
 * Draw the plan of a surface as SVG: contours, fall arrows, ponds, slopes that run back, stakes.
 *
 * @param input - the surface as the drainage check takes it, the contour interval and stakes
 * @param options - heading, units, language, size and colors
 * @returns the SVG document as text, without scripts or outside resources
 * @throws {InputError} as the drainage check does; `too-many` above 20,000 facets or 200 contours
 */
export function surfacePlan(input: SurfacePlanInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const { surface, interval, stakes: given = [] } = readInput<ParsedPlan>(planFields(), input);
  const { site, held } = readSite(surface, new Pad(systemOfInput(surface).system));
  const { tin } = site.terrain;
  if (tin.facets > FACET_LIMIT) refuse('surface', faults.tooMany('the facets of a drawing', FACET_LIMIT));
  const corners = [...new Set(tin.corner)].map((v) => cornerOf(tin, v));
  const stakes = stakesNear(site, corners, given);
  const all = [...corners, ...stakes.map((stake) => stakePlace(site, stake))];
  const sheet = sheetFor(style, 'Drainage plan', site.survey.system, all);
  const back = faultyFacets(site, held).reverse;
  const { ponds, step, arrows } = drawSurface(sheet, site, back, interval);
  const spots = spotsOf(sheet, site);
  for (const spot of spots) sheet.dot(spot, 1.6, { class: 'spot' });
  nameLines(sheet, site);
  stakeMarks(sheet, site, stakes);
  namePonds(sheet, ponds);
  nameFalls(sheet, arrows);
  spots.forEach((spot, i) => {
    sheet.label(spotText(sheet, site.survey.exact(i).z), spot, { class: 'elevation' });
  });
  const has = { falls: arrows.length > 0, ponds: ponds.length > 0, back: back.length > 0 };
  explain(sheet, site, { step, ...has, stakes: stakes.length > 0, spots: spots.length > 0 });
  const off = given.length - stakes.length;
  if (off > 0) sheet.note(sheet.text(say`stakes far off the plan: ${{ off }}`));
  const counts = { spots: site.survey.count, ponds: ponds.length, back: back.length };
  return sheet.finish(
    sheet.text({
      says: 'Spots: {spots}. Ponds: {ponds}. Facets that run to a building: {back}.',
      params: counts,
    }),
  );
}

const planFields = () =>
  fields({
    surface: surfaceFields() as Field<ParsedSurface>,
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
  });
