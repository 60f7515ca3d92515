/**
 * Plain SVG: elements, escaping, and the document around a drawing.
 *
 * No external resources, no scripts, no fonts to load. Each drawing has a title and a description
 * for those who do not see it, and scales with its frame. Legible in black and white: kinds are told
 * apart by line pattern, and a legend says which is which.
 */

/** Attributes of an element; numbers are written to three places. */
export type Attributes = Readonly<Record<string, string | number>>;

const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    // Characters that XML does not allow at all.
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, ' ');

/** A number as SVG wants it: at most three places, no trailing zeros, no minus zero. */
export const coordinate = (n: number): string => String(Number(n.toFixed(3)) + 0);

/** One element with its children, which are SVG already. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? coordinate(value) : escaped(value)}"`)
    .join('');
  return children.length > 0 ? `<${name}${written}>${children.join('')}</${name}>` : `<${name}${written}/>`;
}

/** A text element; the text is escaped. */
export const label = (x: number, y: number, text: string, attributes: Attributes = {}): string =>
  element('text', { x, y, fill: '#000', ...attributes }, escaped(text));

/** What is drawn with which pattern, for the legend. */
export interface LegendEntry {
  readonly text: string;
  /** Attributes of the sample line. */
  readonly line: Attributes;
}

/** A point of the plan in meters, y up. */
export interface PlanPoint {
  readonly x: number;
  readonly y: number;
}

/** From the plan in meters, y up, to the page in millimeters, y down. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly x: (meters: number) => number;
  readonly y: (meters: number) => number;
  /** Page millimeters per meter. */
  readonly scale: number;
}

const MARGIN = 22;
const PLAN_SIZE = 180;

/** A frame that fits these points on a page about 220 mm wide. */
export function frameFor(given: readonly PlanPoint[]): Frame {
  const points = given.length > 0 ? given : [{ x: 0, y: 0 }];
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
  }
  const scale = PLAN_SIZE / Math.max(x1 - x0, y1 - y0, 1e-9);
  return {
    width: (x1 - x0) * scale + 2 * MARGIN,
    height: (y1 - y0) * scale + 2 * MARGIN,
    x: (m) => MARGIN + (m - x0) * scale,
    y: (m) => MARGIN + (y1 - m) * scale,
    scale,
  };
}

/** A closed path through the corners. */
export const ringPath = (frame: Frame, ring: readonly PlanPoint[]): string =>
  `${ring.map((p, i) => `${i === 0 ? 'M' : 'L'}${coordinate(frame.x(p.x))} ${coordinate(frame.y(p.y))}`).join('')}Z`;

/** A straight line between two points of the plan. */
export const line = (frame: Frame, a: PlanPoint, b: PlanPoint, attributes: Attributes): string =>
  element('line', { x1: frame.x(a.x), y1: frame.y(a.y), x2: frame.x(b.x), y2: frame.y(b.y), ...attributes });

const TICK = 1.5;

/**
 * A dimension line beside the side from a to b, on its right-hand side as one walks from a to b, with a
 * slanted tick at each end.
 */
export function dimension(frame: Frame, a: PlanPoint, b: PlanPoint, text: string, away = 6): string {
  const [ax, ay, bx, by] = [frame.x(a.x), frame.y(a.y), frame.x(b.x), frame.y(b.y)];
  const long = Math.hypot(bx - ax, by - ay) || 1;
  const [ux, uy] = [(bx - ax) / long, (by - ay) / long];
  const [ox, oy] = [-uy * away, ux * away];
  const thin = { stroke: '#000', 'stroke-width': 0.25 };
  const tick = (x: number, y: number): string =>
    element('line', {
      x1: x - TICK * (ux + uy),
      y1: y - TICK * (uy - ux),
      x2: x + TICK * (ux + uy),
      y2: y + TICK * (uy - ux),
      ...thin,
    });
  const degrees = (Math.atan2(uy, ux) * 180) / Math.PI;
  const turned = degrees >= 90 || degrees < -90 ? degrees + 180 : degrees;
  const [mx, my] = [(ax + bx) / 2 + ox, (ay + by) / 2 + oy];
  return element(
    'g',
    { class: 'dimension' },
    element('line', { x1: ax + ox, y1: ay + oy, x2: bx + ox, y2: by + oy, ...thin }),
    tick(ax + ox, ay + oy),
    tick(bx + ox, by + oy),
    label(mx, my - 1, text, {
      'text-anchor': 'middle',
      transform: `rotate(${coordinate(turned)} ${coordinate(mx)} ${coordinate(my)})`,
    }),
  );
}

const LEGEND_ROW = 6;

function legendRows(entries: readonly LegendEntry[], top: number): string[] {
  return entries.map(({ text, line: sample }, i) => {
    const y = top + LEGEND_ROW * (i + 0.5);
    return element(
      'g',
      { class: 'legend' },
      element('line', { x1: MARGIN, y1: y, x2: MARGIN + 18, y2: y, ...sample }),
      label(MARGIN + 22, y + 1.2, text),
    );
  });
}

/** The parts of a drawing. */
export interface DrawingParts {
  readonly title: string;
  /** What it shows, in a sentence, for those who do not see it. */
  readonly description: string;
  readonly frame: Frame;
  readonly body: readonly string[];
  readonly legend?: readonly LegendEntry[];
}

/** The whole document, as text. */
export function document({ title, description, frame, body, legend = [] }: DrawingParts): string {
  const height = frame.height + LEGEND_ROW * legend.length + (legend.length > 0 ? LEGEND_ROW : 0);
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${coordinate(frame.width)} ${coordinate(height)}`,
      role: 'img',
      'aria-label': title,
      'font-family': 'sans-serif',
      'font-size': 3.5,
      fill: 'none',
    },
    element('title', {}, escaped(title)),
    element('desc', {}, escaped(description)),
    element('rect', { x: 0, y: 0, width: frame.width, height, fill: '#fff' }),
    element('g', { fill: '#000' }, label(MARGIN, 8, title, { 'font-weight': 'bold' })),
    ...body,
    element('g', { fill: '#000' }, ...legendRows(legend, frame.height)),
  );
}
