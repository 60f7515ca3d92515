/** The drainage check of surfaces: closed forms, a second method, and what must hold for every site. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drainageCheck, InputError, type SurfaceDrainageInput } from '../../src/index';
import { drawer } from '../support/draw';
import { disagreement } from '../support/working';
import { fineGridFlood, type Row } from './fine-grid';

const SIDE = 4;

/** Scattered spots on a square, its corners and sides among them; coordinates to the millimeter. */
function site(
  seed: number,
  inside: number,
  height: (x: number, y: number, draw: () => number) => number,
): Row[] {
  const draw = drawer(seed);
  const mm = (v: number): number => Math.round(v * 1000) / 1000;
  const at: [number, number][] = [];
  for (const s of [0, 1, 2, 3]) at.push([s, 0], [SIDE, s], [SIDE - s, SIDE], [0, SIDE - s]);
  for (let i = 0; i < inside; i += 1) at.push([mm(0.2 + draw() * 3.6), mm(0.2 + draw() * 3.6)]);
  return at.map(([x, y]) => [x, y, mm(height(x, y, draw))] as const);
}

const bowl = (x: number, y: number, draw: () => number): number =>
  0.02 * (Math.hypot(x - 2, y - 2) - 2) + 0.03 * draw();

const input = (rows: readonly Row[], more: Partial<SurfaceDrainageInput> = {}): SurfaceDrainageInput => ({
  table: { unit: 'm', rows: rows as [number, number, number][] },
  ...more,
});

const codes = (given: SurfaceDrainageInput): string[] => {
  const attempt = drainageCheck.attempt(given);
  return attempt.ok ? [] : attempt.error.issues.map(({ code }) => code);
};

const says = (given: SurfaceDrainageInput): string => {
  try {
    drainageCheck(given);
    return '';
  } catch (error) {
    return error instanceof InputError ? error.message : 'something else was thrown';
  }
};

describe('ponds', () => {
  // Second method: columns of a fine grid, flooded cell by cell, within its stated error.
  it('have the volume that a fine grid flooded cell by cell has', () => {
    let compared = 0;
    for (let seed = 1; seed <= 50; seed += 1) {
      const rows = site(seed, 12 + (seed % 30), bowl);
      const walled = seed % 2 === 0;
      const lines = walled
        ? [
            {
              kind: 'curb' as const,
              name: 'curb',
              along: [
                { x: '0 m', y: '0 m' },
                { x: '4 m', y: '0 m' },
              ],
            },
          ]
        : [];
      const { figures } = drainageCheck(input(rows, { lines }));
      const open = walled ? ['north', 'east', 'west'] : ['north', 'east', 'west', 'south'];
      const grid = fineGridFlood(rows, SIDE, 200, open);
      const volume = figures.pondVolume.toNumber('m3');
      expect(Math.abs(volume - grid.volume), `site ${seed}`).toBeLessThanOrEqual(grid.error);
      if (grid.error < volume / 10) compared += 1;
    }
    // Most sites must be told apart from one another by far more than the error.
    expect(compared).toBeGreaterThan(35);
  });

  // Closed form: an upturned pyramid holds a third of base area times depth.
  it('of an upturned pyramid hold a third of base times depth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 40 }), (depth, half) => {
        const z = (d: number): number => d / 1000;
        const rows: Row[] = [
          [0, 0, 1],
          [2 * half, 0, 1],
          [2 * half, 2 * half, 1],
          [0, 2 * half, 1],
          [half, half, 1 - z(depth)],
        ];
        const { figures } = drainageCheck(input(rows));
        const exact = (4 * half * half * depth) / 3000;
        expect(figures.pondVolume.toNumber('m3')).toBeCloseTo(exact, 9);
        expect(figures.ponds[0]?.depth.toNumber('mm')).toBeCloseTo(depth, 9);
        expect(figures.ponds[0]?.outline[0]?.length).toBe(4);
      }),
      { numRuns: 40 },
    );
  });

  // Closed form: an upturned cone of n sides holds n/2 × r² × sin(2π/n) × depth/3, toward πr²d/3.
  it.each([6, 12, 48, 96])('of an upturned cone of %i sides come to its closed form', (n) => {
    const [r, depth] = [5, 0.12];
    const mm = (v: number): number => Math.round(v * 1000) / 1000;
    const rim = Array.from({ length: n }, (_, i): Row => {
      const angle = (2 * Math.PI * i) / n;
      return [mm(r * Math.cos(angle)), mm(r * Math.sin(angle)), 1];
    });
    const { figures } = drainageCheck(input([...rim, [0, 0, 1 - depth]]));
    const volume = figures.pondVolume.toNumber('m3');
    const polygon = (n / 2) * r * r * Math.sin((2 * Math.PI) / n) * (depth / 3);
    expect(Math.abs(volume / polygon - 1)).toBeLessThan(2e-4);
    expect(Math.abs(volume / ((Math.PI * r * r * depth) / 3) - 1)).toBeLessThan(7 / n ** 2);
    expect(figures.longestPath.length.toNumber('m')).toBeGreaterThan(r - 0.002);
  });

  // Closed form: two troughs beside a hump, closed at the ends by curbs, each ½ × width × depth × length.
  it('of a humped slab are two prisms of known volume', () => {
    const across = [
      [0, 1],
      [2, 0.98],
      [4, 1],
      [6, 0.97],
      [8, 1],
    ] as const;
    const rows: Row[] = across.flatMap(
      ([x, z]) =>
        [
          [x, 0, z],
          [x, 5, z],
        ] as Row[],
    );
    const ends = [0, 5].map((y) => ({
      kind: 'curb' as const,
      name: `curb ${y}`,
      along: [
        { x: '0 m', y: `${y} m` },
        { x: '8 m', y: `${y} m` },
      ],
    }));
    const { figures } = drainageCheck(input(rows, { lines: ends }));
    expect(figures.ponds.map(({ volume }) => volume.format('m3', { places: 4 }))).toEqual([
      '0.3000 m3',
      '0.2000 m3',
    ]);
    expect(figures.ponds.map(({ area }) => area.format('m2'))).toEqual(['20 m2', '20 m2']);
    expect(figures.verdict).toBe('ponding');
  });

  it('never get less when a spot outside them is raised', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.integer({ min: 1, max: 60 }),
        fc.nat(),
        (seed, up, pick) => {
          const rows = site(seed, 25, bowl);
          const before = drainageCheck(input(rows)).figures;
          const low = new Set(before.lowSpots.map(({ spot }) => spot));
          const dry = rows.map((_, i) => i).filter((i) => !low.has(`row ${i + 1}`));
          const raised = dry[pick % dry.length] as number;
          const after = drainageCheck(
            input(
              rows.map(([x, y, z], i) => [
                x,
                y,
                i === raised ? Math.round((z + up / 1000) * 1000) / 1000 : z,
              ]),
            ),
          ).figures;
          const still = new Map(after.lowSpots.map(({ spot, below }) => [spot, below]));
          for (const { spot, below } of before.lowSpots) {
            expect(still.has(spot), spot).toBe(true);
            expect(still.get(spot)?.lessThan(below)).toBe(false);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('do not depend on where the site lies or in which unit it is written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const rows = site(seed, 15, bowl);
        const here = drainageCheck(input(rows)).figures;
        const moved = drainageCheck({
          table: {
            unit: 'mm',
            rows: rows.map(
              ([x, y, z]) =>
                [x * 1000 + 5e6, y * 1000 - 7e6, z * 1000 + 1e5].map(Math.round) as unknown as [
                  number,
                  number,
                  number,
                ],
            ),
          },
        }).figures;
        expect(moved.pondVolume.compareTo(here.pondVolume)).toBe(0);
        expect(moved.ponds.map(({ lowest, spillsOver }) => [lowest, spillsOver])).toEqual(
          here.ponds.map(({ lowest, spillsOver }) => [lowest, spillsOver]),
        );
        expect(moved.steepest.compareTo(here.steepest)).toBe(0);
      }),
      { numRuns: 40 },
    );
  });

  // Second method: the area within the water's edge by the surveyor's formula.
  it('cover the area that their outline encloses', () => {
    for (let seed = 100; seed < 130; seed += 1) {
      for (const { outline, area } of drainageCheck(input(site(seed, 30, bowl))).figures.ponds) {
        const twice = outline
          .flatMap((ring) => ring.map((p, i) => [p, ring[(i + 1) % ring.length] ?? p] as const))
          .map(([p, q]) => p.x.toNumber('m') * q.y.toNumber('m') - q.x.toNumber('m') * p.y.toNumber('m'))
          .reduce((a, b) => a + b, 0);
        expect(Math.abs(twice) / 2).toBeCloseTo(area.toNumber('m2'), 9);
      }
    }
  });

  it('empty through a drain at their lowest spot', () => {
    const rows = site(7, 20, bowl);
    const { figures } = drainageCheck(input(rows));
    const lowest = figures.ponds[0]?.lowest ?? '';
    const drained = drainageCheck(
      input(rows, { lines: [{ kind: 'drain', name: 'gully', along: [lowest] }] }),
    ).figures;
    expect(drained.pondVolume.lessThan(figures.pondVolume)).toBe(true);
  });
});

describe('facets and paths', () => {
  // Closed form: on a plane every facet has the slope √(p² + q²), nothing stands, and nothing is short.
  it('of a plane have the hypotenuse of both slopes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.integer({ min: -50, max: 50 }),
        fc.integer({ min: -50, max: 50 }),
        (seed, p, q) => {
          const draw = drawer(seed);
          const at = site(seed, 10, () => 0).map(([x, y]) => [x, y] as const);
          void draw;
          const rows = at.map(([x, y]) => [x, y, Math.round(1e6 - x * 1000 * p - y * 1000 * q) / 1e6] as Row);
          const { figures, working } = drainageCheck(input(rows));
          const exact = Math.hypot(p, q) / 10;
          expect(figures.steepest.toNumber('%')).toBeCloseTo(exact, 6);
          expect(figures.flattest.toNumber('%')).toBeCloseTo(exact, 6);
          expect(figures.pondCount.format()).toBe('0 each');
          for (const step of working) expect(disagreement(step)).toBeLessThan(6e-3);
        },
      ),
      { numRuns: 60 },
    );
  });

  // Closed form: on a plane that falls (3, 4) the way from the high corner leaves after 5/4 of the side.
  it('of a plane follow its fall to the side', () => {
    const rows = site(3, 30, () => 0).map(([x, y]) => [x, y, 10 - 0.03 * x - 0.04 * y] as const);
    const exact = rows.map(([x, y, z]) => [x, y, Number(z.toFixed(6))] as const);
    const { figures } = drainageCheck(input(exact));
    expect(figures.longestPath.length.toNumber('m')).toBeCloseTo(5, 4);
    const [first, last] = [figures.longestPath.points[0], figures.longestPath.points.at(-1)];
    expect([first?.x.toNumber('m'), first?.y.toNumber('m')]).toEqual([0, 0]);
    expect(last?.x.toNumber('m')).toBeCloseTo(3, 3);
    expect(last?.y.toNumber('m')).toBeCloseTo(4, 3);
  });

  const wall = [
    {
      kind: 'building' as const,
      name: 'bakery',
      along: [
        { x: '0 m', y: '0 m' },
        { x: '4 m', y: '0 m' },
      ],
    },
  ];
  const plane = (seed: number, p: number, q: number): Row[] =>
    site(seed, 25, () => 0).map(([x, y]) => [x, y, Number((10 - p * x - q * y).toFixed(6))] as const);

  // Closed forms on planes: what reaches a wall along y = 0 is the part upstream of it.
  it.each([
    ['straight to the wall', 0, -0.02, 16],
    ['straight away', 0, 0.02, 0],
    ['along the wall', 0.02, 0, 0],
    ['aslant to the wall, half of the yard', 0.02, -0.02, 8],
    ['aslant, away', -0.02, 0.02, 0],
  ])('water that runs %s', (_, p, q, area) => {
    for (const seed of [11, 12, 13]) {
      const { figures } = drainageCheck(input(plane(seed, p, q), { lines: wall }));
      const reached = figures.reaches.reduce((sum, r) => sum + r.area.toNumber('m2'), 0);
      // Through-flow that splits within a facet is shared by the facet's own areas: good to a twelfth.
      expect(Math.abs(reached - area)).toBeLessThanOrEqual(area === 8 ? 16 / 12 : 1e-4);
      expect(figures.verdict === 'runs to the building').toBe(area > 0);
      if (area > 0) expect(figures.reaches[0]?.line).toBe('bakery');
    }
  });

  it('tells the angle between the fall and the way off the wall', () => {
    const { figures } = drainageCheck(input(plane(5, 0.02, 0.02), { lines: wall }));
    for (const { angleToWall, away } of figures.facetList) {
      expect(angleToWall?.toNumber('deg')).toBeCloseTo(45, 3);
      expect(away?.toNumber('%')).toBeCloseTo(2, 3);
    }
  });

  it('follows a downspout to where it leaves', () => {
    const { figures, cautions } = drainageCheck(
      input(plane(5, 0, -0.02), {
        lines: wall,
        inflows: [{ name: 'downspout', at: { x: '2 m', y: '3 m' }, flow: '2 gal/min' }],
      }),
    );
    expect(figures.inflows[0]?.reaches).toBe('bakery');
    expect(cautions.map(({ code }) => code)).toContain('water-reaches-building');
    const away = drainageCheck(
      input(plane(5, 0, 0.02), {
        lines: [
          ...wall,
          {
            kind: 'lawn',
            name: 'lawn',
            along: [
              { x: '0 m', y: '4 m' },
              { x: '4 m', y: '4 m' },
            ],
          },
        ],
        inflows: [{ name: 'downspout', at: { x: '2 m', y: '1 m' } }],
      }),
    ).figures.inflows[0];
    expect(away?.leavesOver).toBe('lawn');
    expect(away?.reaches).toBe(undefined);
    expect(away?.length.toNumber('m')).toBeCloseTo(3, 3);
  });

  it('measures the clearance below a sill on the plane between spots', () => {
    const { figures } = drainageCheck(
      input(plane(5, 0, 0.02), {
        lines: wall,
        sills: [{ name: 'door', at: { x: '1.5 m', y: '0.001 m' }, elevation: '10.1 m' }],
      }),
    );
    expect(figures.sills[0]?.clearance.toNumber('mm')).toBeCloseTo(100.02, 3);
  });

  it('takes sills and spouts on the very side of the surface, and refuses those off it', () => {
    for (const [x, y] of [
      [1.5, 0],
      [4, 2.5],
      [2.5, 4],
      [0, 0.5],
    ] as const) {
      const at = { x: `${x} m`, y: `${y} m` };
      const { figures } = drainageCheck(
        input(plane(5, 0, 0.02), {
          sills: [{ name: 'door', at, elevation: '11 m' }],
          inflows: [{ name: 'spout', at }],
        }),
      );
      expect(figures.sills[0]?.clearance.toNumber('mm')).toBeCloseTo(1000 + 20 * y, 3);
      expect(figures.inflows[0]?.length.toNumber('m')).toBeCloseTo(4 - y, 3);
    }
    const off = { x: '-1 m', y: '2 m' };
    expect(codes(input(plane(5, 0, 0.02), { inflows: [{ name: 'spout', at: off }] }))).toEqual([
      'outside-surface',
    ]);
    expect(says(input(plane(5, 0, 0.02), { inflows: [{ name: 'spout', at: off }] }))).toContain('"spout"');
  });

  it('leaves out what lies inside a building that is given as a ring', () => {
    const at = (x: number, y: number): { x: string; y: string } => ({ x: `${x} m`, y: `${y} m` });
    const rows: Row[] = [
      [0, 0, 0],
      [6, 0, 0],
      [6, 6, 0],
      [0, 6, 0],
      [2, 2, 0.1],
      [4, 2, 0.1],
      [4, 4, 0.1],
      [2, 4, 0.1],
    ];
    const ring = {
      kind: 'building' as const,
      name: 'hut',
      along: [at(2, 2), at(4, 2), at(4, 4), at(2, 4), at(2, 2)],
    };
    const { figures } = drainageCheck(input(rows, { lines: [ring] }));
    // Four cells of four corners around the building, each with a middle of its own.
    expect(figures.facets.format()).toBe('16 each');
    expect(figures.verdict).toBe('drains');
  });
});

describe('what cannot be', () => {
  const three: Row[] = [
    [0, 0, 1],
    [1, 0, 1],
    [0, 1, 1],
  ];
  it('names fewer than three spots', () => {
    expect(codes(input(three.slice(0, 2)))).toEqual(['few-spots']);
    expect(says(input(three.slice(0, 2)))).toContain('"row 1", "row 2"');
    expect(codes({ spots: [] })).toEqual(['few-spots']);
  });
  it('names spots on one line', () => {
    const line: Row[] = [
      [0, 0, 1],
      [1, 1, 1],
      [2, 2, 1],
    ];
    expect(codes(input(line))).toEqual(['collinear-spots']);
    expect(says(input(line))).toContain('"row 3"');
  });
  it('names two spots at one place with different elevations', () => {
    const twice: Row[] = [...three, [1, 0, 1.2]];
    expect(codes(input(twice))).toEqual(['conflicting-spots']);
    expect(says(input(twice))).toContain('"row 2" and "row 4"');
    expect(codes(input([...three, [1, 0, 1]]))).toEqual([]);
  });
  it('names rod readings without a datum', () => {
    const spots = [
      { name: 'A', x: '0 m', y: '0 m', rod: '1 m' },
      { name: 'B', x: '1 m', y: '0 m', elevation: '1 m' },
      { name: 'C', x: '0 m', y: '1 m', rod: '1.1 m' },
    ];
    expect(codes({ spots })).toEqual(['no-datum']);
    expect(says({ spots })).toContain('"A", "C"');
    expect(codes({ spots, heightOfInstrument: '2 m' })).toEqual([]);
  });
  it('is refused or reckoned on small whole-number sites with lines at random', () => {
    const kinds = ['building', 'curb', 'drain', 'driveway', 'threshold'] as const;
    for (let seed = 1; seed <= 300; seed += 1) {
      const draw = drawer(seed * 7919);
      const int = (n: number): number => Math.floor(draw() * n);
      const [count, span] = [3 + int(12), 2 + int(5)];
      const rows = Array.from({ length: count }, () => [int(span), int(span), int(3) / 10] as const);
      const somewhere = (): string | { x: string; y: string } =>
        int(2) ? `row ${1 + int(count)}` : { x: `${int(span)} m`, y: `${int(span)} m` };
      const lines = Array.from({ length: int(4) }, (_, i) => ({
        kind: kinds[int(5)] ?? 'curb',
        name: `line ${i}`,
        along: Array.from({ length: 1 + int(4) }, somewhere),
      }));
      const attempt = drainageCheck.attempt(
        input(rows, { lines, inflows: [{ name: 'spout', at: somewhere() }] }),
      );
      if (!attempt.ok) expect(attempt.error).toBeInstanceOf(InputError);
      else expect(JSON.stringify(attempt.result)).not.toContain('NaN');
    }
  });

  it('throws nothing but its own error, whatever comes in', () => {
    fc.assert(
      fc.property(
        fc.anything(),
        fc.constantFrom('spots', 'table', 'grid', 'forms', 'lines', 'sills', 'inflows'),
        (junk, key) => {
          expect(() =>
            drainageCheck.attempt({ table: { unit: 'm', rows: three }, [key]: junk }),
          ).not.toThrow();
        },
      ),
      { numRuns: 400 },
    );
  });
});
