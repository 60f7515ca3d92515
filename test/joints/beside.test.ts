/**
 * What is left of a cell beside openings, against a clipping library: cells and openings drawn on a coarse grid, so
 * that corners lie on edges, edges on edges and openings touch from inside, and drawn freely.
 */
import { difference } from 'polyclip-ts';
import { describe, expect, it } from 'vitest';
import { doubleArea } from '../../src/geometry/polygon';
import { piecesBeside } from '../../src/joints/layout/beside';
import { runs } from '../support/effort';
import { BOX, CELLS, corners, drawn, isRing, type Pair, pairs, starAround } from '../support/joints/stars';

const opening = (ring: readonly Pair[]) => ({ ring: corners(ring), spots: ring.map(([x, y]) => ({ x, y })) });

const SPECK = 1e-9;

const areasOf = (pieces: readonly (readonly (readonly Pair[])[])[]): number[] =>
  pieces
    .map(([outer, ...holes]) => {
      const area = (ring: readonly Pair[]): number => Math.abs(doubleArea(corners(ring)).toNumber()) / 2;
      return area(outer as Pair[]) - holes.reduce((sum, hole) => sum + area(hole), 0);
    })
    .filter((area) => area > SPECK)
    .sort((a, b) => a - b);

describe('the pieces of a cell beside openings', () => {
  it('are those of a clipping library, for random openings on a grid and off it', () => {
    const next = drawn(20261127);
    let [tried, certain] = [0, 0];
    for (let k = 0; k < runs(3000); k += 1) {
      const cell = CELLS[Math.floor(next() * CELLS.length)] as Pair[];
      const grid = [0, 0.5, 1][Math.floor(next() * 3)] as number;
      // Two at most, left and right of a line, so that they do not meet.
      const left = starAround(next, [next() * 1.9, next() * 3], 0.2 + 2 * next(), grid);
      const right = starAround(next, [2.1 + next() * 1.9, next() * 3], 0.2 + 2 * next(), grid);
      const holes = [left, right].filter(
        (ring, i) => isRing(ring) && ring.every(([x]) => (i === 0 ? x < 1.99 : x > 2.01)),
      );
      if (holes.length === 0) continue;
      tried += 1;
      const expected = areasOf(difference([cell], ...holes.map((hole) => [hole])) as Pair[][][]);
      const pieces = piecesBeside(corners(cell), holes.map(opening));
      if (!pieces) continue;
      const found = areasOf(pieces.map((piece) => piece.map(pairs)));
      // A cell that is wholly covered is never asked about.
      if (expected.length === 0) continue;
      certain += 1;
      const say = JSON.stringify({ cell, holes });
      expect(found.length, say).toBe(expected.length);
      found.forEach((area, i) => {
        expect(Math.abs(area - (expected[i] as number)), say).toBeLessThan(1e-8);
      });
    }
    expect(tried).toBeGreaterThan(runs(600));
    expect(certain / tried).toBeGreaterThan(0.9);
  });

  it('keep an opening wholly inside as a hole of the piece around it', () => {
    const inside: Pair[] = [
      [2.5, 1],
      [3, 1],
      [3, 2],
    ];
    const across: Pair[] = [
      [1, -1],
      [2, -1],
      [2, 4],
      [1, 4],
    ];
    const pieces = piecesBeside(corners(BOX), [opening(inside), opening(across)]);
    expect(areasOf((pieces ?? []).map((piece) => piece.map(pairs)))).toEqual([3, 5.75]);
    expect(pieces?.filter((piece) => piece.length === 2)).toHaveLength(1);
  });
});
