/** Edges with their arcs, places along them, poses of a slab, and joints that are fixed or keep a slab apart. */
import { describe, expect, it } from 'vitest';
import { InputError, type JointLayoutInput, jointLayout } from '../../src/index';
import { Chain } from '../../src/joints/layout/chain';
import { poseOf, startsOf } from '../../src/joints/layout/pose';
import {
  circleSides,
  exactOn,
  pieceOf,
  type Side,
  straightSides,
  turnBetween,
  wayOn,
} from '../../src/joints/layout/sides';
import { Decimal } from '../../src/quantity/decimal';
import { runs } from '../support/effort';
import { corners, drawn, isRing, type Pair, pairs, starAround } from '../support/joints/stars';

type Spot = { readonly x: number; readonly y: number };

const apart = (p: Spot, q: Spot): number => Math.hypot(p.x - q.x, p.y - q.y);

/** An arc from a point about a center, counterclockwise if the turn is positive. */
function arcSide(cx: number, cy: number, r: number, start: number, turn: number): Side {
  const on = (angle: number) => ({
    x: new Decimal(cx + r * Math.cos(angle)),
    y: new Decimal(cy + r * Math.sin(angle)),
  });
  const [center, radius] = [{ x: new Decimal(cx), y: new Decimal(cy) }, new Decimal(r)];
  const bow = { center, radius, start: new Decimal(start), turn: new Decimal(turn) };
  return { from: on(start), to: on(start + turn), bow };
}

describe('a chain of sides', () => {
  const next = drawn(71);
  const chains = Array.from({ length: runs(60) }, (): { chain: Chain; sides: Side[] } => {
    const kind = next();
    if (kind < 0.3) {
      const sides = circleSides({ x: new Decimal(1), y: new Decimal(2) }, new Decimal(3));
      return { sides, chain: new Chain(sides.map(pieceOf), true) };
    }
    if (kind < 0.6) {
      const turn = (next() < 0.5 ? -1 : 1) * (0.5 + 4 * next());
      const sides = [arcSide(0, 0, 4, 6 * next(), turn)];
      return { sides, chain: new Chain(sides.map(pieceOf)) };
    }
    const ring = starAround(next, [3, -2], 5, 0);
    const sides = straightSides(
      corners(
        isRing(ring)
          ? ring
          : [
              [0, 0],
              [5, 0],
              [2, 4],
            ],
      ),
    );
    return { sides, chain: new Chain(sides.map(pieceOf), true) };
  });
  const places = (chain: Chain, count: number): number[] =>
    Array.from({ length: count + 1 }, (_, k) => (chain.length * k) / count);

  it('is as long as its sides, and goes along them at even pace', () => {
    for (const { chain } of chains) {
      const spots = places(chain, 2000).map((s) => chain.at(s));
      const walked = spots.slice(1).reduce((sum, p, i) => sum + apart(p, spots[i] as Spot), 0);
      expect(walked / chain.length).toBeCloseTo(1, 2);
    }
  });

  it('runs the way that neighboring places tell, exactly as in binary numbers, and on around', () => {
    const inner = chains.flatMap(({ chain }) =>
      places(chain, 37)
        .slice(1, -1)
        .map((s) => ({ chain, s, step: 1e-6 * chain.length })),
    );
    // Not at corners.
    const smooth = inner.filter(({ chain, s, step }) =>
      chain.starts.every((start) => Math.abs(start - s) > 2 * step),
    );
    for (const { chain, s, step } of smooth) {
      const [p, q] = [chain.at(s - step), chain.at(s + step)];
      const long = apart(p, q);
      expect(apart(chain.way(s), { x: (q.x - p.x) / long, y: (q.y - p.y) / long })).toBeLessThan(1e-4);
      const exact = chain.exact(s);
      expect(apart({ x: exact.x.toNumber(), y: exact.y.toNumber() }, chain.at(s))).toBeLessThan(1e-9);
      const rounds = chain.closed ? [2, -1] : [];
      for (const n of rounds) expect(apart(chain.at(s + n * chain.length), chain.at(s))).toBeLessThan(1e-9);
    }
  });

  it('has its nearest place where no other of many is nearer', () => {
    for (const { chain } of chains)
      for (let k = 0; k < 8; k += 1) {
        const p = { x: 12 * next() - 4, y: 12 * next() - 6 };
        const { s, far } = chain.nearest(p);
        expect(apart(chain.at(s), p)).toBeCloseTo(far, 9);
        const least = Math.min(...places(chain, 400).map((t) => apart(chain.at(t), p)));
        expect(far).toBeLessThanOrEqual(least + 1e-9);
        expect(far).toBeGreaterThan(least - chain.length / 400);
      }
  });

  it('is met by a ray where it first crosses it', () => {
    for (const { chain } of chains)
      for (let k = 0; k < 8; k += 1) {
        const [p, angle] = [{ x: 10 * next() - 3, y: 10 * next() - 5 }, 2 * Math.PI * next()];
        const d = { x: Math.cos(angle), y: Math.sin(angle) };
        const spots = places(chain, 600).map((s) => chain.at(s));
        const off = spots.map((q) => d.x * (q.y - p.y) - d.y * (q.x - p.x));
        const along = spots.map((q) => d.x * (q.x - p.x) + d.y * (q.y - p.y));
        const crossings = off.flatMap((o, i) => {
          const before = off[i - 1];
          return before !== undefined && o * before < 0
            ? [((along[i] as number) + (along[i - 1] as number)) / 2]
            : [];
        });
        const ahead = crossings.filter((far) => far > 0);
        const hit = chain.hit(p, d);
        const room = (2 * chain.length) / 600;
        if (ahead.length === 0) continue;
        expect(Math.abs((hit?.far ?? Number.NaN) - Math.min(...ahead))).toBeLessThan(room);
        const at = chain.at(hit?.s ?? 0);
        expect(apart(at, { x: p.x + d.x * (hit?.far ?? 0), y: p.y + d.y * (hit?.far ?? 0) })).toBeLessThan(
          1e-6,
        );
        const both = chain.hit(p, d, true);
        expect(Math.abs((both?.far ?? Number.NaN) - Math.min(...crossings.map(Math.abs)))).toBeLessThan(room);
      }
    const wall = new Chain(
      straightSides(
        corners([
          [2, -1],
          [2, 1],
          [3, 0],
        ]),
      ).map(pieceOf),
      true,
    );
    expect(wall.hit({ x: 0, y: 0 }, { x: 1, y: 0 })?.far).toBeCloseTo(2, 12);
    expect(wall.hit({ x: 2, y: 0 }, { x: 1, y: 0 })?.far).toBeCloseTo(1, 12);
    expect(wall.hit({ x: 0, y: 0 }, { x: -1, y: 0 })).toBeUndefined();
    expect(wall.hit({ x: 2.25, y: 0 }, { x: 1, y: 0 }, true)?.far).toBeCloseTo(0.25, 12);
  });

  it('turns from one side to the next as their directions do', () => {
    for (const { chain } of chains)
      chain.pieces.forEach((after, i) => {
        const before = chain.pieces[(i + chain.pieces.length - 1) % chain.pieces.length] as typeof after;
        const [u, v] = [wayOn(before, 1), wayOn(after, 0)];
        const turn = turnBetween(before, after);
        const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
        expect(apart({ x: u.x * c - u.y * s, y: u.x * s + u.y * c }, v)).toBeLessThan(1e-9);
        expect(exactOn(after, 0)).toBe(after.side.from);
        expect(exactOn(after, 1)).toBe(after.side.to);
      });
  });
});

describe('the pose of a slab', () => {
  const next = drawn(72);
  const quarter = ([x, y]: Pair): Pair => [-y, x];
  const mirror = ([x, y]: Pair): Pair => [-x, y];
  const straight = { cos: new Decimal(1), sin: new Decimal(0) };
  const turned = { cos: new Decimal('0.8'), sin: new Decimal('0.6') };

  it('is the same however it was drawn, with its lowest corner each way at nought', () => {
    for (let k = 0; k < runs(40); k += 1) {
      const ring = starAround(next, [3, -2], 5, 0.5);
      const told = (list: readonly Pair[]): string[] => {
        const pose = poseOf([straight], corners(list), []);
        const laid = pairs(corners(list).map((c) => pose.in(c)));
        for (const i of [0, 1] as const) expect(Math.min(...laid.map((p) => p[i]))).toBeCloseTo(0, 12);
        return laid.map((p) => p.join()).sort();
      };
      let list = ring.map(([x, y]): Pair => [x + 7, y - 3]);
      const plain = told(list);
      for (let i = 0; i < 8; i += 1) {
        list = i === 3 ? list.map(mirror) : list.map(quarter);
        expect(told(list)).toEqual(plain);
      }
    }
  });

  it('lays every point back, and directions with it', () => {
    for (let k = 0; k < runs(40); k += 1) {
      const ring = starAround(next, [3, -2], 5, 0.5);
      for (const turn of [straight, turned]) {
        const pose = poseOf([turn], corners(ring), []);
        for (const each of [pose, ...startsOf(pose, corners(ring))]) {
          for (const c of corners(ring)) {
            const back = each.out(each.in(c));
            expect(back.x.minus(c.x).abs().plus(back.y.minus(c.y).abs()).lessThan('1e-40')).toBe(true);
          }
          const angle = new Decimal(6 * next());
          const way = { x: Decimal.cos(angle), y: Decimal.sin(angle) };
          const [from, to] = [each.in({ x: new Decimal(0), y: new Decimal(0) }), each.in(way)];
          const there = each.angleIn(angle);
          expect(to.x.minus(from.x).toNumber()).toBeCloseTo(Decimal.cos(there).toNumber(), 12);
          expect(to.y.minus(from.y).toNumber()).toBeCloseTo(Decimal.sin(there).toNumber(), 12);
          // Face down where a left turn becomes a right one.
          const left = each.in({ x: way.y.neg(), y: way.x });
          const cross = to.x
            .minus(from.x)
            .times(left.y.minus(from.y))
            .minus(to.y.minus(from.y).times(left.x.minus(from.x)));
          expect(each.mirrored).toBe(cross.isNegative());
        }
      }
    }
  });

  it('for a pattern from a corner puts each of the four corners of a rectangle first', () => {
    const box = corners([
      [1, 2],
      [5, 2],
      [5, 4],
      [1, 4],
    ]);
    const first = startsOf(poseOf([straight], box, []), box).map((pose) => {
      const origin = pose.out({ x: new Decimal(0), y: new Decimal(0) });
      return `${origin.x} ${origin.y}`;
    });
    expect(first.sort()).toEqual(['1 2', '1 4', '5 2', '5 4']);
  });
});

const YARD = {
  outline: { shape: 'rectangle', length: '30 ft', width: '20 ft' },
  thickness: '4 in',
  spacing: '10 ft',
} as const;

const at = (x: number, y: number) => ({ x: `${x} ft`, y: `${y} ft` });
const line = (from: readonly [number, number], to: readonly [number, number]) => ({
  against: 'wall' as const,
  from: at(...from),
  to: at(...to),
});

function outcome(more: Partial<JointLayoutInput>): string {
  try {
    return jointLayout({ ...YARD, ...more }).figures.isolation.format('ft');
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map(({ code, path }) => `${code} ${path}`).join();
  }
}

describe('isolation along the sides', () => {
  it.each([
    ['one side', [line([0, 0], [30, 0])], '30 ft'],
    ['two that meet at a corner', [line([0, 0], [30, 0]), line([30, 0], [30, 20])], '50 ft'],
    ['two parts of a side that touch', [line([0, 0], [12, 0]), line([12, 0], [30, 0])], '30 ft'],
    ['parts written backwards', [line([12, 0], [0, 0]), line([30, 0], [13, 0])], '29 ft'],
    ['the same stretch on opposite sides', [line([5, 0], [25, 0]), line([5, 20], [25, 20])], '40 ft'],
    ['two that overlap', [line([0, 0], [12, 0]), line([11, 0], [30, 0])], 'joints-conflict isolation[1]'],
    ['one within the other', [line([0, 0], [30, 0]), line([10, 0], [20, 0])], 'joints-conflict isolation[1]'],
    [
      'the third on the first',
      [line([0, 0], [9, 0]), line([9, 0], [30, 0]), line([8, 0], [0, 0])],
      'joints-conflict isolation[2]',
    ],
    ['around a corner', [line([0, 5], [5, 0])], 'off-edge isolation[0]'],
    ['beyond the end of a side', [line([20, 0], [31, 0])], 'off-edge isolation[0]'],
    ['off the side', [line([0, 1], [30, 1])], 'off-edge isolation[0]'],
  ] as const)('comes to the sum of its lines or is refused: %s', (_, isolation, expected) => {
    expect(outcome({ isolation })).toBe(expected);
  });

  it('is assumed to be none where nothing is said', () => {
    const names = (more: Partial<JointLayoutInput>): string[] =>
      jointLayout({ ...YARD, ...more }).assumed.map(({ name }) => name);
    expect(names({})).toContain('isolation');
    expect(names({ isolation: [] })).not.toContain('isolation');
    expect(names({ isolation: [line([0, 0], [30, 0])] })).not.toContain('isolation');
    expect(names({ method: 'hand-groover' })).not.toContain('method');
    expect(names({ minimumSide: '2 ft', longestRatio: '1.5:1' })).not.toContain('longestRatio');
  });
});

describe('fixed joints', () => {
  type End = readonly [x: number, y: number];
  const fixed = (
    list: readonly (readonly [End, End] | readonly [End, End, 'contraction' | 'construction'])[],
  ) =>
    outcome({
      fixed: list.map(([from, to, type = 'construction']) => ({ type, from: at(...from), to: at(...to) })),
    });
  it.each([
    [
      'across',
      [
        [
          [15, 0],
          [15, 20],
        ],
      ],
      '0 ft',
    ],
    [
      'along, written backwards',
      [
        [
          [30, 8],
          [0, 8],
        ],
      ],
      '0 ft',
    ],
    [
      'two that cross',
      [
        [
          [15, 0],
          [15, 20],
        ],
        [
          [0, 8],
          [30, 8],
        ],
      ],
      '0 ft',
    ],
    [
      'two parts of one line',
      [
        [
          [15, 0],
          [15, 20],
        ],
        [
          [15, 0],
          [15, 20],
        ],
      ],
      '0 ft',
    ],
    [
      'two kinds in one place',
      [
        [
          [15, 0],
          [15, 20],
        ],
        [[15, 0], [15, 20], 'contraction'],
      ],
      'joints-conflict fixed[1]',
    ],
    [
      'two nearer than the least side',
      [
        [
          [15, 0],
          [15, 20],
        ],
        [
          [16.9, 0],
          [16.9, 20],
        ],
      ],
      'joints-conflict fixed[1]',
    ],
    [
      'two just as far apart',
      [
        [
          [15, 0],
          [15, 20],
        ],
        [
          [17, 0],
          [17, 20],
        ],
      ],
      '0 ft',
    ],
    [
      'aslant',
      [
        [
          [10, 0],
          [15, 20],
        ],
      ],
      'joint-not-square fixed[0]',
    ],
    [
      'of no length',
      [
        [
          [15, 0],
          [15, 0],
        ],
      ],
      'joint-not-square fixed[0]',
    ],
    [
      'that ends within',
      [
        [
          [15, 0],
          [15, 12],
        ],
      ],
      'ends-inside fixed[0]',
    ],
    [
      'that goes on beyond',
      [
        [
          [15, 0],
          [15, 21],
        ],
      ],
      'off-slab fixed[0]',
    ],
    [
      'beside the slab',
      [
        [
          [31, 0],
          [31, 20],
        ],
      ],
      'off-slab fixed[0]',
    ],
    [
      'along an edge',
      [
        [
          [0, 0],
          [0, 20],
        ],
      ],
      'off-slab fixed[0]',
    ],
  ] as const)('are taken or refused: %s', (_, list, expected) => {
    expect(fixed(list)).toBe(expected);
  });

  it('lie where they were asked for, with their kind over their length', () => {
    const { joints, construction } = jointLayout({
      ...YARD,
      fixed: [{ type: 'construction', from: at(12, 20), to: at(12, 0) }],
    }).figures;
    const own = joints.filter(({ type }) => type === 'construction');
    expect(own.map(({ from, to }) => [from.x, to.x, from.y, to.y].map((q) => q.toNumber('ft')))).toEqual([
      [12, 12, 0, 20],
    ]);
    expect(construction.toNumber('ft')).toBe(20);
  });

  it('of a neighbor go on from where they end', () => {
    const plan = (x: number, y: number) =>
      jointLayout({ ...YARD, continued: [at(x, y)] }).figures.joints.some(({ from, to }) => {
        const [a, b, c, d] = [from.x, to.x, from.y, to.y].map((q) => q.toNumber('ft'));
        return x > 0 && x < 30 ? a === x && b === x : c === y && d === y;
      });
    for (const [x, y] of [
      [13, 0],
      [13, 20],
      [0, 7],
      [30, 7],
    ] as const)
      expect(plan(x, y)).toBe(true);
    expect(outcome({ continued: [at(13, 1)] })).toBe('off-edge continued[0]');
  });
});

describe('what a plan takes', () => {
  it('is worked out with a value for each symbol of each formula', () => {
    const { working, figures } = jointLayout({
      ...YARD,
      isolation: [line([0, 0], [30, 0])],
      sealant: { width: '1/2 in', depth: '1/2 in' },
      depthPerPass: '1/2 in',
      sawRate: { length: '100 ft', in: '1 h' },
    });
    for (const { formula, values } of working) {
      const [, expression = ''] = formula.split(' = ');
      const symbols = expression.replace(/\b(min|max|ceil|floor|abs)\b/g, '').match(/[A-Za-z]\w*/g) ?? [];
      for (const symbol of symbols) expect(Object.keys(values), formula).toContain(symbol);
    }
    // 30 ft of board 4 in high; two passes of 4 joints: 2 of 20 ft and 1 of 30 ft.
    expect(figures.isolationBoard.area.toNumber('ft2')).toBeCloseTo(10, 9);
    expect(figures.contraction.toNumber('ft')).toBe(70);
    expect(figures.sawing?.travel.toNumber('ft')).toBe(140);
    expect(figures.sawing?.time?.toNumber('h')).toBeCloseTo(1.4, 9);
    // Half an inch square, over 70 and 30 ft: a gallon is 231 cubic inches.
    expect(figures.sealant?.volume.toNumber('gal')).toBeCloseTo((0.25 * 1200) / 231, 9);
    expect(figures.backerRod?.diameter.toNumber('in')).toBeCloseTo(0.625, 9);
  });
});

describe('a side that was taped a little off the straight', () => {
  it('is planned as straight, and its joints and panels reach the edge as it is', () => {
    // 3/8 in off in its middle, within what a tape is off; half an inch and more is an edge of its own.
    const bulge = 0.03;
    const { figures } = jointLayout({
      ...YARD,
      outline: { shape: 'polygon', points: [at(0, 0), at(15, -bulge), at(30, 0), at(30, 20), at(0, 20)] },
    });
    const ends = figures.joints
      .filter(({ from, to }) => from.x.compareTo(to.x) === 0)
      .map(({ from, to, length }) => [from.x, from.y, to.y, length].map((q) => q.toNumber('ft')));
    expect(ends.map(([x]) => x)).toEqual([10, 20]);
    // A third of the side out the edge is two thirds of the bulge off.
    for (const [, from, to, long] of ends) {
      expect(from).toBeCloseTo((-bulge * 2) / 3, 9);
      expect(to).toBe(20);
      expect(long).toBeCloseTo(20 + (bulge * 2) / 3, 9);
    }
    expect(figures.panelCount.toNumber('each')).toBe(6);
    expect(figures.area.toNumber('ft2')).toBeCloseTo(600 + (30 * bulge) / 2, 9);
    expect(figures.givesWay).toEqual([]);
  });
});
