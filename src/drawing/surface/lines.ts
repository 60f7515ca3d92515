/** Lines of a surface (walls, curbs, drains, open edges) with their names, and its outer edge. */
import { nextEdge, type Tin } from '../../geometry/tin';
import type { Site } from '../../grade/terrain';
import type { PlanPoint } from '../frame';
import type { Box, PagePoint } from '../room';
import type { Sheet } from '../sheet';
import type { Attributes } from '../svg';
import { cornerOf, pieceOf } from './facets';
import { STROKES } from './strokes';

function strokeFor(kind: string): Attributes {
  if (kind === 'building' || kind === 'threshold') return STROKES.building;
  if (kind === 'curb') return STROKES.curb;
  return kind === 'drain' ? STROKES.drain : STROKES.open;
}

export function drawLines(sheet: Sheet, { lines }: Site): void {
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

export function nameLines(sheet: Sheet, { lines }: Site): void {
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

export function outside(sheet: Sheet, tin: Tin): void {
  const pieces: string[] = [];
  for (let e = 0; e < tin.corner.length; e += 1) {
    if (tin.twin[e] !== -1) continue;
    const [a, b] = [cornerOf(tin, tin.corner[e] as number), cornerOf(tin, tin.corner[nextEdge(e)] as number)];
    pieces.push(pieceOf(sheet, a, b));
  }
  sheet.draw('path', { d: pieces.join(''), ...STROKES.outside, class: 'outside' });
}
