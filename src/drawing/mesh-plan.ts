/** Plan of mesh in sheets or from rolls. */
import * as faults from '../quantity/faults';
import { readInput, refuse } from '../reckoning/calculation';
import { systemOfInput } from '../reckoning/system';
import { say } from '../reckoning/words';
import {
  type MeshPlace,
  type MeshRegionInput,
  type MeshSheet,
  meshPlacesOf,
  meshRegionInput,
} from '../steel/mesh-region';
import type { PlanPoint } from './frame';
import { lineSample, textSample } from './legend';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { drawSlab, overAll, sheetFor, slabOf } from './region-plan';
import type { Sheet } from './sheet';

/** More pieces than this cannot be told apart on a page. */
const DRAWN_LIMIT = 5000;
/** More lengths than this are told on the piece, or not at all. */
const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

const PIECE = { stroke: 'ink', 'stroke-width': 0.8, 'stroke-dasharray': '4 2' } as const;

/** Pieces by their length as it is told, longest first. */
function byLength(sheet: Sheet, places: readonly MeshPlace[]): Map<string, MeshPlace[]> {
  const groups = new Map<string, MeshPlace[]>();
  for (const piece of [...places].sort((a, b) => b.length - a.length)) {
    const text = sheet.length(sheet.meters(piece.length));
    const there = groups.get(text);
    if (there) there.push(piece);
    else groups.set(text, [piece]);
  }
  return groups;
}

/** A letter in the middle of every piece, for its length. */
function nameLengths(
  sheet: Sheet,
  groups: ReadonlyMap<string, readonly MeshPlace[]>,
  near: (point: PlanPoint) => PlanPoint,
): void {
  [...groups].forEach(([length, pieces], i) => {
    const letter = LETTERS[i] ?? '';
    for (const { corners } of letter ? pieces : []) {
      const [a, c] = [corners[0] as PlanPoint, corners[2] as PlanPoint].map((p) => sheet.frame.at(near(p)));
      if (!a || !c) continue;
      const boxes = [0.5, 0.35, 0.65].map((share) =>
        sheet.boxOf(letter, { x: a.x + (c.x - a.x) * share, y: a.y + (c.y - a.y) * share }),
      );
      sheet.place(letter, boxes, { class: 'piece' });
    }
    const count = pieces.length;
    const text = sheet.text(say`pieces of ${{ length: [length] }}: ${{ count }}`);
    if (letter) sheet.explain({ text, sample: textSample(letter) });
    else sheet.note(text);
  });
}

/**
 * Plan of the mesh that `meshLayout` lays over an outline, as SVG text.
 *
 * @param input - the same as for `meshLayout` over an outline
 * @param options - heading, units, language, size and colors
 * @returns an SVG document; overlapping edges are laps, and each piece has a letter for its length
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
export function meshPlan(input: MeshRegionInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const read = readInput(meshRegionInput(), input);
  const { places, sideLap, endLap }: MeshSheet = meshPlacesOf(read);
  if (places.length > DRAWN_LIMIT) refuse('outline', faults.tooMany('a drawing in pieces', DRAWN_LIMIT));
  const slab = slabOf(read);
  const all = [...slab.points, ...places.flatMap((p) => p.corners.map(slab.near))];
  const sheet = sheetFor(style, 'Mesh plan', systemOfInput(read).system, all);
  drawSlab(sheet, slab);
  for (const { corners } of places) sheet.line(corners.map(slab.near), { ...PIECE, class: 'mesh' }, true);
  overAll(sheet, slab.points);
  sheet.explain({ text: sheet.text('piece of mesh'), sample: lineSample(PIECE) });
  nameLengths(sheet, byLength(sheet, places), slab.near);
  const [side, end] = [[sheet.sized(sideLap)], [sheet.sized(endLap)]];
  sheet.note(sheet.text(say`laps: ${{ side }} at the sides, ${{ end }} end to end`));
  const pieces = places.length;
  return sheet.finish(sheet.text(say`Pieces of mesh: ${{ pieces }}. Where two overlap is a lap.`));
}
