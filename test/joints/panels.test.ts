/**
 * Panels as they are once cut, against a clipping library: what openings leave of a cell, what its pieces measure and
 * which rules they break; that a search reckons with the very length that is sawn; and what is told of long panels.
 */
import MinimumDiameter from 'jsts/org/locationtech/jts/algorithm/MinimumDiameter.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import { difference } from 'polyclip-ts';
import { describe, expect, it } from 'vitest';
import { type JointLayoutInput, jointLayout } from '../../src/index';
import { layoutToDraw } from '../../src/joints/joint-layout';
import { boxOf, panelsOf } from '../../src/joints/layout/as-cut';
import { findGrid, layGrid } from '../../src/joints/layout/grid-plan';
import { panelLimit } from '../../src/joints/layout/most';
import { sitesOf } from '../../src/joints/layout/site';
import { heedWidePanels } from '../../src/joints/layout/wide-panels';
import { Decimal } from '../../src/quantity/decimal';
import { length } from '../../src/quantity/make';
import { Pad } from '../../src/reckoning/pad';
import { runs } from '../support/effort';
import { slabOf } from '../support/joints/slabs';
import { CELLS, corners, drawn, isRing, type Pair, starAround } from '../support/joints/stars';
import { between, stream } from '../support/joints/yards';

const LIMITS = { spacing: 9, leastSide: 0.6, ratio: 1.5, weight: 1e6, strict: false };

const factory = new GeometryFactory();

function narrowest(ring: readonly Pair[]): number {
  const closed = [...ring, ring[0] as Pair].map(([x, y]) => new Coordinate(x, y));
  const measured = new MinimumDiameter(factory.createPolygon(closed as never) as never);
  return (measured as unknown as { getLength(): number }).getLength();
}

const signed = (ring: readonly Pair[]): number =>
  ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] as Pair;
    return sum + (x * v - u * y) / 2;
  }, 0);
const area = (ring: readonly Pair[]): number => Math.abs(signed(ring));

const inside = (ring: readonly Pair[], [x, y]: Pair): boolean =>
  ring.filter(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length] as Pair;
    return ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay);
  }).length %
    2 ===
  1;

interface Piece {
  readonly ring: Pair[];
  readonly holes: Pair[][];
  readonly area: number;
}

const piecesOf = (cell: Pair[], holes: Pair[][]): Piece[] =>
  (difference([cell], ...holes.map((hole) => [hole])) as Pair[][][])
    .map(([outer, ...rest]) => {
      const [ring, ...inner] = [outer as Pair[], ...rest].map((r) => r.slice(0, -1)) as [Pair[], ...Pair[][]];
      return { ring, holes: inner, area: inner.reduce((sum, hole) => sum - area(hole), area(ring)) };
    })
    .filter((piece) => piece.area > 1e-6)
    .sort((a, b) => a.area - b.area);

const over = (ring: readonly Pair[], k: 0 | 1): number =>
  Math.max(...ring.map((p) => p[k])) - Math.min(...ring.map((p) => p[k]));

describe('what openings leave of a cell', () => {
  const next = drawn(81);

  it('is as large as a clipping library says, piece by piece, and breaks what the pieces break', () => {
    let [pieces, parted] = [0, 0];
    for (let k = 0; k < runs(600); k += 1) {
      const cell = CELLS[k % CELLS.length] as Pair[];
      const left = starAround(next, [next() * 1.9, next() * 3], 0.3 + 1.8 * next(), 0);
      const right = starAround(next, [2.1 + next() * 1.9, next() * 3], 0.3 + 1.8 * next(), 0);
      const stars = [left, right].filter(
        (ring, i) => isRing(ring) && ring.every(([x]) => (i === 0 ? x < 1.99 : x > 2.01)),
      );
      const holes = stars.map((ring) => {
        const large = Math.max(over(ring, 0), over(ring, 1)) > LIMITS.leastSide;
        return { ring: corners(ring), large, box: boxOf(corners(ring)), own: ring };
      });
      const large = holes.filter((hole) => hole.large).map(({ own }) => own);
      const small = holes.filter((hole) => !hole.large).map(({ own }) => own);
      const what = JSON.stringify({ cell, stars });
      const told = [...panelsOf(corners(cell), holes, LIMITS, { x: [], y: [] })].sort((a, b) =>
        a.area.comparedTo(b.area),
      );
      const whole = piecesOf(cell, stars).reduce((sum, piece) => sum + piece.area, 0);
      expect(
        told.reduce((sum, p) => sum + p.area.toNumber(), 0),
        what,
      ).toBeCloseTo(whole, 8);
      for (const { at } of told) {
        const spot: Pair = [at.x.toNumber(), at.y.toNumber()];
        expect(inside(cell, spot), what).toBe(true);
        expect(
          stars.some((ring) => inside(ring, spot)),
          what,
        ).toBe(false);
      }
      const expected = piecesOf(cell, large);
      expect(told.length, what).toBe(expected.length);
      if (expected.length > 1) parted += 1;
      // The order of pieces is plain where no small opening takes from one of them.
      if (small.length > 0) continue;
      told.forEach((panel, i) => {
        const piece = expected[i] as Piece;
        const [w, h] = [over(piece.ring, 0), over(piece.ring, 1)];
        expect(
          [panel.along.toNumber(), panel.across.toNumber()].map((n) => n.toFixed(7)),
          what,
        ).toEqual([w, h].map((n) => n.toFixed(7)));
        const sliver =
          Math.min(w, h, narrowest(piece.ring)) < LIMITS.leastSide ||
          2 * piece.area < Math.max(w, h) * LIMITS.leastSide;
        expect(panel.broken.includes('sliver'), what).toBe(sliver);
        expect(panel.broken.includes('panel shape'), what).toBe(
          Math.max(w, h) > LIMITS.ratio * Math.min(w, h),
        );
        pieces += 1;
      });
    }
    expect(pieces).toBeGreaterThan(runs(300));
    expect(parted).toBeGreaterThan(runs(30));
  });

  it('has a corner that is too sharp where a joint meets an edge at less than 60 degrees', () => {
    const sharp = (top: number, lines: { x: number[]; y: number[] }): boolean =>
      panelsOf(
        corners([
          [0, 0],
          [3, 0],
          [3, 2],
          [top, 2],
        ]),
        [],
        LIMITS,
        lines,
      ).some(({ broken }) => broken.includes('sharp corner'));
    // 60 degrees lie at 2 / tan 60 = 1.1547 from the corner.
    expect(sharp(1.16, { x: [], y: [0] })).toBe(true);
    expect(sharp(1.15, { x: [], y: [0] })).toBe(false);
    // Between two edges it is the shape of the slab, and nobody's fault.
    expect(sharp(1.16, { x: [], y: [] })).toBe(false);
    expect(sharp(1.16, { x: [3], y: [] })).toBe(false);
    expect(sharp(1.16, { x: [], y: [2] })).toBe(false);
  });
});

/** Straight plans of a slab as they are found and as they are laid out; none of one that is refused for its size. */
function gridsOf(input: JointLayoutInput) {
  if (!jointLayout.attempt(input).ok) return [];
  const { read, rings } = layoutToDraw(input);
  const { outline, openings, spacing } = read;
  const columns = new Set((read.columns ?? []).map((n) => n.toNumber('each') - 1));
  const placed = { outline, openings, rings, columns, direction: undefined, fixed: [], continued: [] };
  const limits = { ...LIMITS, spacing: spacing.toNumber('m') };
  const setting = { step: new Decimal('0.0015875'), module: undefined, share: 1 };
  return sitesOf({ ...placed, leastSide: new Decimal(LIMITS.leastSide) }, false).map((site) => {
    const found = findGrid(site, limits, setting);
    return { found, laid: layGrid(found) };
  });
}

describe('the length that the search reckons with', () => {
  it('is the length that is sawn, where every rule is kept', () => {
    const next = stream(82);
    let compared = 0;
    for (let i = 0; i < runs(60); i += 1) {
      const spacing = `${between(next, 7, 13)} ft`;
      const input = { ...slabOf(next, i).input, thickness: '4 in', spacing };
      for (const { found, laid } of gridsOf(input)) {
        if (found.softened || laid.panels.some(({ broken }) => broken.length > 0)) continue;
        const long = ({ from, to }: (typeof laid.joints)[number]): number =>
          Decimal.hypot(to.x.minus(from.x), to.y.minus(from.y)).toNumber();
        const sawn = laid.joints.reduce((sum, joint) => sum + long(joint), 0);
        compared += 1;
        expect(Math.abs(found.found.cost - sawn), JSON.stringify(input)).toBeLessThan(1e-5);
      }
    }
    expect(compared).toBeGreaterThan(runs(10));
  });
});

describe('panels that are long for their thickness', () => {
  const told = (sides: readonly (readonly [string, string])[], thickness: string): string[] => {
    const pad = new Pad('customary');
    const panels = sides.map(([along, across]) => ({ along: length(along), across: length(across) }));
    heedWidePanels(panels, length(thickness), pad);
    return pad.cautions.map(({ code, actual, limit }) => `${code} ${limit?.format()} ${actual?.format()}`);
  };
  it('are told of by the longest side of all, wherever it stands', () => {
    // Plain slabs are jointed at 36 times the thickness at most: 12 ft in a slab of 4 in.
    const long = ['wide-panels 12 ft 13 ft'];
    expect(
      told(
        [
          ['13 ft', '10 ft'],
          ['9 ft', '8 ft'],
        ],
        '4 in',
      ),
    ).toEqual(long);
    expect(
      told(
        [
          ['9 ft', '8 ft'],
          ['10 ft', '13 ft'],
          ['10 ft', '9 ft'],
        ],
        '4 in',
      ),
    ).toEqual(long);
    expect(
      told(
        [
          ['9 ft', '8 ft'],
          ['10 ft', '13 ft'],
        ],
        '4 in',
      ),
    ).toEqual(long);
    expect(told([['12 ft', '12 ft']], '4 in')).toEqual([]);
    // A sixtieth more is the same size under its other name.
    expect(told([['12.2 ft', '12 ft']], '4 in')).toEqual([]);
    expect(told([['12.201 ft', '12 ft']], '4 in')).toHaveLength(1);
    expect(told([], '4 in')).toEqual([]);
  });
});

describe('a ratio that is given up', () => {
  it('is told with the shorter side of a sliver, whichever way it lies', () => {
    for (const [l, w] of [
      ['40 ft', '1 ft'],
      ['1 ft', '40 ft'],
    ] as const) {
      const { givesWay } = jointLayout({
        outline: { shape: 'rectangle', length: l, width: w },
        thickness: '4 in',
        spacing: '8 ft',
        minimumSide: '2 ft',
      }).figures;
      const slivers = givesWay.filter(({ rule }) => rule === 'sliver');
      expect(slivers.length).toBeGreaterThan(0);
      for (const { actual, limit } of slivers)
        expect([actual?.format(), limit?.format()]).toEqual(['1 ft', '2 ft']);
    }
  });
});

describe('how many panels a slab may have', () => {
  it('is more where every one is a rectangle', () => {
    const most = (orthogonal: boolean, edge: number, ...cornered: boolean[]): number =>
      panelLimit({
        orthogonal,
        ring: [1, 2, 3, 4],
        edge: Array.from({ length: edge }),
        openings: cornered.map((one) => ({ cornered: one })),
      }).most;
    const more = most(true, 4);
    expect(more).toBeGreaterThan(most(false, 4));
    expect(most(true, 4, true, true)).toBe(more);
    // Slanted sides, a side that is off by what a tape is, a round opening among others.
    for (const fewer of [
      most(false, 4, true),
      most(true, 5),
      most(true, 4, true, false),
      most(true, 4, false),
    ])
      expect(fewer).toBe(most(false, 4));
  });
});
