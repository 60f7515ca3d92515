/** Dimension lines: beside a side, with a slanted tick at each end and the length on the line. */
import type { PlanPoint } from './frame';
import type { Box, PagePoint } from './room';
import type { Sheet } from './sheet';
import { pathThrough } from './svg';

const TICK = 3;
const THIN = { stroke: 'ink', 'stroke-width': 0.6 } as const;
/** From the line to the middle of its text, by the height of the text. */
const OFF = 0.72;
/** Longer for its line than this a text would seem to belong to more than it. */
const LONGEST = 1.5;

/** A line on the page, in numbers. */
interface Run {
  readonly from: PagePoint;
  readonly to: PagePoint;
  readonly long: number;
  /** Along the line, and square to it away from the slab. */
  readonly u: PagePoint;
  readonly out: PagePoint;
}

function runOf(a: PagePoint, b: PagePoint, away: number): Run {
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const u = { x: (b.x - a.x) / long, y: (b.y - a.y) / long };
  const out = { x: -u.y, y: u.x };
  const beside = ({ x, y }: PagePoint): PagePoint => ({ x: x + out.x * away, y: y + out.y * away });
  return { from: beside(a), to: beside(b), long, u, out };
}

/** Never upside down. */
function turnOf({ u }: Run): number {
  const degrees = (Math.atan2(u.y, u.x) * 180) / Math.PI;
  const turned = degrees >= 89.99 ? degrees - 180 : degrees < -90.01 ? degrees + 180 : degrees;
  return Math.abs(turned) < 0.01 ? 0 : turned;
}

/** Nearer to the side than this, by the height of the text, a text on the inner side would lie over the side. */
const INNER = 1.3;

/** Where the text of a line may stand: on its middle, off the middle, and on its inner side where there is room. */
function boxesAlong(sheet: Sheet, run: Run, text: string, away: number): Box[] {
  const { from, to, u, out } = run;
  const turn = turnOf(run);
  const box = sheet.boxOf(text, from, turn);
  if (box.width > run.long * LONGEST) return [boxOutwards(box, run)];
  const at = (share: number, off: number): Box => ({
    ...box,
    x: from.x + (to.x - from.x) * share + out.x * off * sheet.size,
    y: from.y + (to.y - from.y) * share + out.y * off * sheet.size,
  });
  const slack = Math.max(0, run.long - box.width) / 2 / run.long;
  const shares = [0.5, 0.5 - slack / 2, 0.5 + slack / 2, 0.5 - slack, 0.5 + slack];
  const beyond = (box.width / 2 + 4) / Math.hypot(u.x * run.long, u.y * run.long);
  return [
    ...shares.map((share) => at(share, OFF)),
    ...(away < INNER * sheet.size ? [] : shares.map((share) => at(share, -OFF))),
    at(0.5, 2 * OFF + 0.6),
    ...(run.long < box.width ? [at(1 + beyond, 0), at(-beyond, 0)] : []),
  ];
}

/** On a short line the text stands square to it, outwards. */
function boxOutwards(box: Box, { from, to, out }: Run): Box {
  const off = box.width / 2 + 3;
  const turn = box.turn > 0 ? box.turn - 90 : box.turn + 90;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const at = { x: middle.x + out.x * off, y: middle.y + out.y * off };
  return { ...box, ...at, turn: turn === 90 ? -90 : turn };
}

/** How a dimension line is put. */
export interface DimensionOptions {
  /** From the side to the line, in pixels. */
  readonly away?: number;
  /** What the key says where the text has no room. */
  readonly keyed?: string;
}

/**
 * A dimension line beside the side from a to b, on its right-hand side as one walks from a to b. Where its text has
 * no room a number stands there, and the text in the key.
 */
export function dimension(
  sheet: Sheet,
  a: PlanPoint,
  b: PlanPoint,
  text: string,
  { away = sheet.size * 0.6, keyed = text }: DimensionOptions = {},
): void {
  const run = runOf(sheet.frame.at(a), sheet.frame.at(b), away);
  const { from, to, u } = run;
  const tick = ({ x, y }: PagePoint): string => {
    const [dx, dy] = [TICK * (u.x + u.y), TICK * (u.y - u.x)];
    return pathThrough([
      { x: x - dx, y: y - dy },
      { x: x + dx, y: y + dy },
    ]);
  };
  sheet.room.draw(from, to);
  sheet.draw('path', { d: pathThrough([from, to]) + tick(from) + tick(to), ...THIN, class: 'dimension' });
  if (sheet.place(text, boxesAlong(sheet, run, text, away))) return;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  sheet.number(keyed, middle);
}
