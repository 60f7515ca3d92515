/** Falls and form heights on a site plan: arrows with their slope, and elevations at stakes and corners. */
import type { Corner } from '../geometry/polygon';
import type { ReckonedJob } from '../job/job-takeoff';
import { say } from '../reckoning/words';
import { arrowPath } from './arrow';
import { extentOf, type PlanPoint } from './frame';
import type { Box, PagePoint } from './room';
import type { Sheet } from './sheet';
import { type Fall, type Height, levelsOf, pageWay } from './site-levels';
import type { Placed } from './site-plan';

type Spot = (corner: Corner) => PlanPoint;

/** The corners of one on the plan. */
type Facet = readonly PlanPoint[];

/** What levels are drawn with. */
interface Ground {
  readonly job: ReckonedJob;
  readonly spot: Spot;
}

const meanOf = (points: readonly PagePoint[]): PagePoint => ({
  x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
  y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
});

const ARROW = { stroke: 'ink', 'stroke-width': 1.1, 'stroke-linecap': 'round' } as const;
const HEAD = 0.7;
/** An arrow is so long, by the height of the text, where there is room. */
const LONG = 4.5;
/** Where in the extent of an element an arrow may lie, by shares of it from the middle. */
const PLACES = [0, -0.28, 0.28];

/** An element on the page: how far it reaches, its middle, and how long an arrow in it is. */
function spaceOf(sheet: Sheet, ring: readonly PlanPoint[], u: PagePoint) {
  const { from, to } = extentOf(ring);
  const [low, high] = [sheet.frame.at(from), sheet.frame.at(to)];
  const [wide, tall] = [Math.abs(high.x - low.x), Math.abs(high.y - low.y)];
  const middle = { x: (low.x + high.x) / 2, y: (low.y + high.y) / 2 };
  const reach = Math.abs(u.x) * wide + Math.abs(u.y) * tall;
  return { wide, tall, middle, long: Math.min(LONG * sheet.size, 0.5 * reach) };
}

/** Free places for an arrow within an element, its room given away. */
function arrowBox(sheet: Sheet, ring: readonly PlanPoint[], u: PagePoint): Box | undefined {
  const { wide, tall, middle, long: width } = spaceOf(sheet, ring, u);
  const turn = (Math.atan2(u.y, u.x) * 180) / Math.PI;
  const boxes = PLACES.flatMap((along) =>
    PLACES.map((across) => ({
      x: middle.x + across * wide,
      y: middle.y + along * tall,
      width,
      height: sheet.size,
      turn,
    })),
  );
  return sheet.room.choose(boxes.slice(1).concat(boxes.slice(0, 1)));
}

/** How far from the middle of the free play of a box it may lie, the middle last: names stand there. */
const PLAY = [-0.5, 0.5, -0.9, 0.9, 0];

/** Where an arrow and its slope stand as one. */
interface Told {
  readonly arrow: PagePoint;
  readonly half: number;
  readonly text: Box;
}

/** How an arrow and its slope lie as one: beside each other, or above one that runs across; or the other way round. */
function togetherOf(sheet: Sheet, u: PagePoint, text: string, long: number, side: 1 | -1 = 1) {
  const { width: w, height: h } = sheet.boxOf(text, { x: 0, y: 0 });
  const [aw, ah] = [Math.abs(u.x) * long + sheet.size, Math.abs(u.y) * long + sheet.size];
  const gap = sheet.size * 0.3;
  const beside = ah > aw;
  const width = beside ? aw + gap + w : Math.max(aw, w);
  const height = beside ? Math.max(ah, h) : ah + gap + h;
  /** From the middle of both to that of the arrow, and to that of the text. */
  const arrow = beside ? { x: (side * (aw - width)) / 2, y: 0 } : { x: 0, y: (side * (height - ah)) / 2 };
  const words = beside ? { x: (side * (width - w)) / 2, y: 0 } : { x: 0, y: (side * (h - height)) / 2 };
  const told = ({ x, y }: Box): Told => ({
    arrow: { x: x + arrow.x, y: y + arrow.y },
    half: long / 2,
    text: { x: x + words.x, y: y + words.y, width: w, height: h, turn: 0 },
  });
  return { width, height, arrow, told };
}

/** An arrow with its slope, where both lie within the element. */
function arrowWithText(
  sheet: Sheet,
  ring: readonly PlanPoint[],
  u: PagePoint,
  text: string,
): Told | undefined {
  const { wide, tall, middle, long } = spaceOf(sheet, ring, u);
  const { width, height, told } = togetherOf(sheet, u, text, long);
  const [playX, playY] = [(wide - width) / 2, (tall - height) / 2];
  if (playX < 0 || playY < 0) return undefined;
  const boxes = PLAY.flatMap((down) =>
    PLAY.map((along) => ({
      x: middle.x + along * playX,
      y: middle.y + down * playY,
      width,
      height,
      turn: 0,
    })),
  );
  const box = sheet.room.choose(boxes);
  return box && told(box);
}

/** How far from the middle of a facet toward its corners the middle of an arrow may lie. */
const TOWARD = [0, 0.2, 0.35];

/** An arrow in one of the facets of a piece, its slope beside it. */
function arrowInFacet(sheet: Sheet, facets: readonly Facet[], u: PagePoint, text: string): Told | undefined {
  for (const facet of facets) {
    const corners = facet.map((corner) => sheet.frame.at(corner));
    const middle = meanOf(corners);
    const { long } = spaceOf(sheet, facet, u);
    const sides = ([1, -1] as const).map((side) => togetherOf(sheet, u, text, long, side));
    const places = TOWARD.flatMap((share) =>
      corners.flatMap((corner) =>
        sides.map(({ width, height, arrow, told }) => {
          const x = middle.x + share * (corner.x - middle.x) - arrow.x;
          const y = middle.y + share * (corner.y - middle.y) - arrow.y;
          return { box: { x, y, width, height, turn: 0 }, told };
        }),
      ),
    );
    const box = sheet.room.choose(places.map((place) => place.box));
    if (box) return places.find((place) => place.box === box)?.told(box);
  }
  return undefined;
}

const drawArrow = (sheet: Sheet, at: PagePoint, u: PagePoint, half: number): void =>
  sheet.draw('path', { d: arrowPath(at, u, half, HEAD * sheet.size), ...ARROW, class: 'fall' });

function drawTold(sheet: Sheet, { arrow, half, text: box }: Told, u: PagePoint, text: string): true {
  drawArrow(sheet, arrow, u, half);
  sheet.write(text, box, { class: 'slope' });
  return true;
}

function drawFall(sheet: Sheet, { slope, way, within }: Fall, outer: readonly Corner[], spot: Spot): boolean {
  if (!way) return false;
  const u = pageWay(way);
  const text = sheet.quantity(slope);
  if (within) {
    const facets = within.map((facet) => facet.map(spot));
    const inside = arrowInFacet(sheet, facets, u, text);
    return inside !== undefined && drawTold(sheet, inside, u, text);
  }
  const ring = outer.map(spot);
  const both = arrowWithText(sheet, ring, u, text);
  if (both) return drawTold(sheet, both, u, text);
  const box = arrowBox(sheet, ring, u);
  if (!box) return false;
  const { x, y, width } = box;
  drawArrow(sheet, { x, y }, u, width / 2);
  sheet.label(text, { x, y }, { gap: sheet.size * 0.7, class: 'slope', prefer: [0, 180] });
  return true;
}

/** A height as it is set: on its datum, and from the top of the stake. */
function heightText(sheet: Sheet, { elevation, mark }: Height): string {
  const height = sheet.length(elevation);
  if (!mark) return height;
  const by = sheet.sized(mark.by);
  return sheet.text(
    mark.way === 'down' ? say`${{ height }}, ${{ by }} down` : say`${{ height }}, ${{ by }} up`,
  );
}

function drawHeights(sheet: Sheet, heights: readonly Height[], told: Set<string>, ground: Ground): void {
  for (const height of heights) {
    const at = sheet.frame.at(ground.spot(height.at));
    const text = heightText(sheet, height);
    const key = `${Math.round(at.x)} ${Math.round(at.y)} ${text}`;
    // Two elements that meet at a corner at one height tell it once.
    if (told.has(key)) continue;
    told.add(key);
    sheet.dot(at, 2, { class: 'height' });
    sheet.label(text, at, { gap: 4, class: 'height' });
  }
}

const arrowSample = (size: number) => (x: number, y: number, width: number) =>
  [['path', { d: arrowPath({ x, y }, { x: 1, y: 0 }, width / 2, HEAD * size), ...ARROW }]] as const;

/** Every fall and every height that the job tells of its elements. */
export function drawLevels(sheet: Sheet, placed: readonly Placed[], ground: Ground): void {
  const levels = placed.map(({ element, rings: [outer = []] }) => {
    const own = ground.job.parts.filter((part) => part.element === element.name);
    return { element, outer, ...levelsOf(element, own, outer, ground.job.takeoff.system) };
  });
  let arrows = 0;
  for (const { element, outer, falls } of levels) {
    for (const fall of falls) {
      if (drawFall(sheet, fall, outer, ground.spot)) arrows += 1;
      // A piece too small for an arrow is told by those around it.
      else if (!fall.within) {
        const [name, slope] = [sheet.name(element.name), sheet.quantity(fall.slope)];
        sheet.note(sheet.text(say`${{ name }} falls ${{ slope }}; nothing says which way`));
      }
    }
  }
  const told = new Set<string>();
  for (const { heights } of levels) drawHeights(sheet, heights, told, ground);
  sheet.explain(
    arrows > 0 && { text: sheet.text('way that water runs, and its slope'), sample: arrowSample(sheet.size) },
    told.size > 0 && {
      text: sheet.text(
        levels.some(({ heights }) => heights.some(({ mark }) => mark))
          ? 'height of the form where the fall is even; down or up from the top of its stake'
          : 'height of the form where the fall is even',
      ),
      sample: (x, y) => [['circle', { cx: x, cy: y, r: 2, fill: 'ink' }]],
    },
  );
}
