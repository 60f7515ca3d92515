/** Joint plans against exhaustive search, an independent verifier, and closed forms. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type JointLayoutFigures,
  type JointLayoutInput,
  jointLayout,
  length,
  slabVolume,
} from '../../src/index';
import { runs } from '../support/effort';
import { bestOfAll } from '../support/joints/exhaustive';
import { type Asked, faultsOf } from '../support/joints/verifier';
import { between, inputOf, ringsOf, stream, type Xy, yard } from '../support/joints/yards';

const feet = (n: number): string => `${n} ft`;

const planOf = (shape: object, asked: Asked, more: Partial<JointLayoutInput> = {}): JointLayoutFigures =>
  jointLayout({
    ...(shape as Pick<JointLayoutInput, 'outline'>),
    thickness: '5 in',
    spacing: feet(asked.spacing),
    minimumSide: feet(asked.leastSide),
    longestRatio: `${asked.ratio}:1`,
    ...more,
  }).figures;

/** Plans that pass an opening by are looked at in passed-by.test.ts. */
const passesBy = ({ givesWay }: JointLayoutFigures): boolean =>
  givesWay.some(({ rule }) => rule === 'opening passed by');

const rectangle = (l: number, w: number): object => ({
  outline: { shape: 'rectangle', length: `${l} in`, width: `${w} in` },
});

/** Sides of the panels when a side is divided evenly in sixteenths, rounded up. */
function shares(side: number, n: number): [least: number, most: number] {
  const cuts = Array.from({ length: n + 1 }, (_, k) => Math.ceil((k * side) / n));
  const each = cuts.slice(1).map((c, i) => c - (cuts[i] as number));
  return [Math.min(...each), Math.max(...each)];
}

/** Least length of joints of a rectangle over all numbers of panels each way; in sixteenths. */
function leastOfRectangle(l: number, w: number, asked: Asked): number {
  const [S, m] = [asked.spacing * 192, asked.leastSide * 192];
  let best = Infinity;
  for (let a = 1; a <= 60; a += 1) {
    const [la, ha] = shares(l, a);
    if (ha > S || la < m) continue;
    for (let b = 1; b <= 60; b += 1) {
      const [lb, hb] = shares(w, b);
      if (hb > S || lb < m || ha > asked.ratio * lb || hb > asked.ratio * la) continue;
      best = Math.min(best, (a - 1) * w + (b - 1) * l);
    }
  }
  return best;
}

describe('the shortest plan', () => {
  it('is that of all numbers of panels each way, for 2,000 random rectangles', () => {
    // Checked against: trying every pair of numbers of panels.
    const next = stream(5);
    let compared = 0;
    while (compared < runs(2000)) {
      const [l, w] = [between(next, 48, 720), between(next, 48, 480)];
      const asked = {
        spacing: between(next, 5, 16),
        leastSide: 2,
        ratio: [1.25, 1.5, 2][between(next, 0, 2)] as number,
      };
      const least = leastOfRectangle(16 * l, 16 * w, asked);
      if (least === Infinity) continue;
      compared += 1;
      const { contraction, search, givesWay } = planOf(rectangle(l, w), asked);
      const told = {
        length: Math.round(contraction.toNumber('in') * 16),
        kind: search.kind,
        ways: givesWay.length,
      };
      expect(told, `${l} by ${w}, ${JSON.stringify(asked)}`).toEqual({
        length: least,
        kind: 'exact',
        ways: 0,
      });
    }
  });

  it('is never longer than the best with lines on any whole foot, even or not', () => {
    // Checked against: trying every set of whole-foot lines each way.
    const next = stream(6);
    for (let i = 0; i < runs(60); i += 1) {
      const [l, w] = [between(next, 4, 11), between(next, 4, 11)];
      const asked = { spacing: between(next, 4, 6), leastSide: 2, ratio: 1.5 };
      const best = leastOnFeet(l, w, asked);
      if (best === Infinity) continue;
      const { contraction } = planOf(rectangle(12 * l, 12 * w), asked);
      expect(contraction.toNumber('ft'), `${l} by ${w}`).toBeLessThanOrEqual(best + 1e-9);
    }
  });

  it('is the exhaustive optimum for 300 random orthogonal outlines, openings among them', () => {
    // Checked against: trying every plan of the kind, judged by flooding (test/support/joints/exhaustive.ts).
    const next = stream(7);
    let compared = 0;
    while (compared < runs(300)) {
      const slab = yard(next, between(next, 2, 3), 11, 13, 0.3);
      const asked = { spacing: between(next, 5, 9), leastSide: 2, ratio: 1.5 };
      const best = bestOfAll(ringsOf(slab), asked, 60_000);
      if (!best) continue;
      compared += 1;
      const figures = planOf(inputOf(slab), asked);
      const told = {
        broken: figures.givesWay.length,
        length: Math.round(figures.contraction.toNumber('in') * 16),
      };
      expect(told, JSON.stringify([slab, asked])).toEqual(best);
      expect(figures.search.kind).toBe('exact');
    }
  });
});

describe('the size up to which the search is exact', () => {
  it('is 16 corners at least, openings counted, for 300 random yards', () => {
    const next = stream(14);
    let counted = 0;
    while (counted < runs(300)) {
      const slab = yard(next, between(next, 2, 5), 12, 24, 0.4);
      const corners = slab.ring.length + 4 * slab.openings.length;
      if (corners < 10 || corners > 16) continue;
      const plan = planOf(inputOf(slab), { spacing: between(next, 8, 14), leastSide: 2, ratio: 1.5 });
      if (passesBy(plan)) continue;
      counted += 1;
      expect(plan.search.kind, JSON.stringify(slab)).toBe('exact');
    }
  });
});

/** Least length over all sets of whole-foot lines each way. */
function leastOnFeet(l: number, w: number, asked: Asked): number {
  const kinds = (side: number): [count: number, least: number, most: number][] => {
    const found = new Map<string, [number, number, number]>();
    for (let mask = 0; mask < 1 << (side - 1); mask += 1) {
      const cuts = [
        0,
        ...Array.from({ length: side - 1 }, (_, k) => k + 1).filter((k) => mask & (1 << (k - 1))),
        side,
      ];
      const each = cuts.slice(1).map((c, i) => c - (cuts[i] as number));
      const kind: [number, number, number] = [each.length, Math.min(...each), Math.max(...each)];
      if (kind[2] <= asked.spacing && kind[1] >= asked.leastSide) found.set(kind.join(), kind);
    }
    return [...found.values()];
  };
  let best = Infinity;
  for (const [a, la, ha] of kinds(l)) {
    for (const [b, lb, hb] of kinds(w)) {
      if (ha <= asked.ratio * lb && hb <= asked.ratio * la) best = Math.min(best, (a - 1) * w + (b - 1) * l);
    }
  }
  return best;
}

describe('every plan passes the verifier', () => {
  it('for 4,400 random orthogonal outlines', () => {
    // Checked against: cutting the slab into cells and flooding them (test/support/joints/verifier.ts).
    const next = stream(8);
    let passed = 0;
    for (let i = 0; i < runs(4400); i += 1) {
      const slab = yard(next, between(next, 1, 4), 14, 20, 0.4);
      const asked = { spacing: between(next, 6, 15), leastSide: 2, ratio: [1.25, 1.5, 2][i % 3] as number };
      const figures = planOf(inputOf(slab), asked);
      if (passesBy(figures)) passed += 1;
      else expect(faultsOf(ringsOf(slab), figures, asked), JSON.stringify([slab, asked])).toEqual([]);
    }
    // Where joints to every corner would cut up the slab, and seldom otherwise.
    expect(passed).toBeLessThan(runs(4400) / 20);
  });

  it('for 300 random round slabs, some with an opening in the middle', () => {
    // Checked against: the area and the arcs of a circle.
    const next = stream(9);
    for (let i = 0; i < runs(300); i += 1) {
      const diameter = between(next, 60, 800);
      const hole = i % 3 === 0 ? between(next, 12, Math.floor(diameter / 3)) : 0;
      const asked = { spacing: between(next, 6, 16), leastSide: 2, ratio: 1.5 };
      const openings = [{ shape: 'circle', at: { x: '0 in', y: '0 in' }, diameter: `${hole} in` }];
      const figures = planOf(
        { outline: { shape: 'circle', diameter: `${diameter} in` }, ...(hole > 0 ? { openings } : {}) },
        asked,
      );
      expect(roundFaults(figures, diameter / 2, hole / 2, asked)).toEqual([]);
    }
  });
});

function roundFaults(figures: JointLayoutFigures, R: number, hole: number, asked: Asked): string[] {
  const found: string[] = [];
  const near = (a: number, b: number, what: string): void => {
    if (Math.abs(a - b) > 1e-6 * Math.max(1, Math.abs(b))) found.push(`${what}: ${a} is not ${b}`);
  };
  const panels = figures.panels.map((p) => p.area.toNumber('in2'));
  near(
    panels.reduce((sum, a) => sum + a, 0),
    Math.PI * (R * R - hole * hole),
    'area',
  );
  near(figures.area.toNumber('in2'), Math.PI * (R * R - hole * hole), 'area told');
  const circles = figures.joints.filter((j) => j.shape === 'circle').map((j) => j.from.x.toNumber('in'));
  const spokes = figures.joints.filter((j) => j.shape === 'straight');
  const radii = [hole, ...circles, R];
  for (const s of spokes) {
    const [a, b] = [s.from, s.to].map((p) => Math.hypot(p.x.toNumber('in'), p.y.toNumber('in'))) as [
      number,
      number,
    ];
    near(b, R, 'a radial joint ends at the edge');
    if (!radii.some((r) => Math.abs(r - a) < 1e-6)) found.push(`a radial joint starts at ${a}`);
    near(s.length.toNumber('in'), b - a, 'length of a radial joint');
  }
  radii.slice(1).forEach((outer, i) => {
    const inner = radii[i] as number;
    const across = spokes.filter(
      (s) => Math.hypot(s.from.x.toNumber('in'), s.from.y.toNumber('in')) <= inner + 1e-6,
    ).length;
    if (i === 0 && hole === 0 && across > 0 && across < 4)
      found.push(`${across} radial joints meet in the middle`);
    const whole = across === 0 ? 2 * outer : outer - inner;
    if (whole > asked.spacing * 12 + 1e-6) found.push(`ring ${inner} to ${outer} is too wide`);
    const chord = across > 2 ? 2 * outer * Math.sin(Math.PI / across) : 2 * outer;
    if (chord > asked.spacing * 12 + 1e-6) found.push(`ring ${inner} to ${outer} has too few joints`);
  });
  const length =
    circles.reduce((sum, r) => sum + 2 * Math.PI * r, 0) +
    spokes.reduce((sum, s) => sum + s.length.toNumber('in'), 0);
  near(figures.contraction.toNumber('in'), length, 'length');
  return found;
}

describe('panels tile the slab', () => {
  it('with exactly the area of the outline less the openings', () => {
    const next = stream(11);
    for (let i = 0; i < runs(200); i += 1) {
      const slab = yard(next, between(next, 1, 4), 14, 24, 0.4);
      const figures = planOf(inputOf(slab), { spacing: 9, leastSide: 2, ratio: 1.5 });
      const [first, ...rest] = figures.panels.map((p) => p.area);
      const sum = rest.reduce((a, b) => a.plus(b), first as (typeof figures)['area']);
      expect(sum.equals(figures.area)).toBe(true);
      // Checked against: slab-volume's own surveyor's formula, at 1 ft of thickness.
      const { outline } = inputOf(slab) as { outline: JointLayoutInput['outline'] };
      const gross = slabVolume({ outline, thickness: '1 ft' }).figures.volume.toNumber('ft3');
      const out = slab.openings.reduce((a, [, , l, w]) => a + l * w, 0);
      expect(figures.area.toNumber('ft2')).toBe(Math.round(gross) - out);
    }
  });
});

describe('a large floor', () => {
  const columns = Array.from({ length: 40 }, (_, i) => ({
    shape: 'circle' as const,
    at: { x: feet(27.5 + (i % 8) * 35), y: feet(40 + Math.floor(i / 8) * 55) },
    diameter: '2 ft',
  }));
  const input: JointLayoutInput = {
    outline: { shape: 'rectangle', length: '300 ft', width: '300 ft' },
    openings: columns,
    columns: columns.map((_, i) => i + 1),
    thickness: '6 in',
    spacing: '15 ft',
  };

  it('of 300 ft by 300 ft with 40 columns has a joint both ways through every column', () => {
    const { figures } = jointLayout(input);
    expect(figures.givesWay).toEqual([]);
    for (const { at } of columns) {
      for (const axis of ['x', 'y'] as const) {
        const met = figures.joints.some(
          (j) => j.from[axis].equals(length(at[axis])) && j.to[axis].equals(length(at[axis])),
        );
        expect(met).toBe(true);
      }
    }
  });

  it('with columns anywhere says what gives way and by how much it may be longer', () => {
    const next = stream(12);
    const anywhere = columns.map((c, i) => ({
      ...c,
      at: {
        x: feet(12 + (i % 8) * 35 + between(next, 0, 28)),
        y: feet(12 + Math.floor(i / 8) * 55 + between(next, 0, 40)),
      },
    }));
    const { columns: _unused, ...rest } = input;
    const { figures } = jointLayout({ ...rest, openings: anywhere });
    expect(['exact', 'bounded']).toContain(figures.search.kind);
    const whole = figures.joints.reduce((sum, j) => sum.plus(j.length), length('0 ft').plus(length('0 ft')));
    expect(whole.minus(figures.search.gap).compareTo(figures.search.leastLength)).toBe(0);
  });
});

describe('what holds for every plan', () => {
  const sides = fc.tuple(fc.integer({ min: 48, max: 600 }), fc.integer({ min: 48, max: 600 }));

  it('turning the slab by a quarter changes neither length nor panels', () => {
    fc.assert(
      fc.property(sides, ([l, w]) => {
        const asked = { spacing: 11, leastSide: 2, ratio: 1.5 };
        const [a, b] = [planOf(rectangle(l, w), asked), planOf(rectangle(w, l), asked)];
        expect(a.contraction.compareTo(b.contraction)).toBe(0);
      }),
      { numRuns: runs(100) },
    );
  });

  it('a closer spacing never shortens the plan', () => {
    fc.assert(
      fc.property(sides, fc.integer({ min: 6, max: 14 }), ([l, w], s) => {
        const plan = (spacing: number): JointLayoutFigures =>
          planOf(rectangle(l, w), { spacing, leastSide: 2, ratio: 1.5 });
        const [close, wide] = [plan(s), plan(s + 2)];
        if (close.givesWay.length + wide.givesWay.length > 0) return;
        expect(close.contraction.lessThan(wide.contraction)).toBe(false);
      }),
      { numRuns: runs(100) },
    );
  });

  it('moving the slab moves the plan', () => {
    const next = stream(13);
    for (let i = 0; i < runs(50); i += 1) {
      const slab = yard(next, 3, 12, 20, 0);
      const asked = { spacing: 9, leastSide: 2, ratio: 1.5 };
      const moved = { ...slab, ring: slab.ring.map(([x, y]): Xy => [x + 7, y - 90]) };
      const [a, b] = [planOf(inputOf(slab), asked), planOf(inputOf(moved), asked)];
      expect(b.contraction.compareTo(a.contraction)).toBe(0);
      expect(b.joints.map((j) => j.from.x.minus(length('7 ft')).format())).toEqual(
        a.joints.map((j) => j.from.x.format()),
      );
    }
  });

  it('every contraction joint is sawn once, whichever the order', () => {
    for (const sawOrder of ['consecutive', 'reverse'] as const) {
      const { figures } = jointLayout({
        outline: { shape: 'rectangle', length: '60 ft', width: '45 ft' },
        thickness: '5 in',
        spacing: '12 ft',
        sawOrder,
        sawRate: { length: '300 ft', in: '1 h' },
        depthPerPass: '1 in',
      });
      const order = figures.sawing?.order.map((n) => n.toNumber('each')) ?? [];
      expect([...order].sort((a, b) => a - b)).toEqual(figures.joints.map((j) => j.number.toNumber('each')));
      expect(figures.sawing?.passes.format()).toBe('2 each');
      const travel = figures.contraction.plus(figures.contraction);
      expect(figures.sawing?.travel.compareTo(travel)).toBe(0);
      expect(figures.sawing?.time?.toNumber('h')).toBeCloseTo(travel.toNumber('ft') / 300, 9);
    }
  });

  it('too much work is refused, not begun', () => {
    const code = (input: object): string | undefined => {
      const attempt = jointLayout.attempt({ thickness: '5 in', spacing: '10 ft', ...input } as never);
      return attempt.ok ? undefined : attempt.error.issues[0]?.code;
    };
    const thin = { shape: 'rectangle', length: '1000000 ft', width: '0.001 ft' };
    expect(code({ outline: thin })).toBe('too-many');
    expect(code({ outline: { shape: 'circle', diameter: '3000 ft' } })).toBe('too-many');
    const yard = { shape: 'rectangle', length: '60 ft', width: '40 ft' };
    expect(code({ outline: yard, depthPerPass: '0.001 in' })).toBe('too-many');
    expect(code({ outline: yard, minimumSide: '0.001 in' })).toBeUndefined();
    expect(code({ outline: yard, module: '0.01 in' })).toBeUndefined();
    expect(code({ outline: yard, columns: [1] })).toBe('not-a-count');
  });

  it('openings of more corners than are cut to are refused before anything is placed', () => {
    const of = (opening: object): string | undefined => {
      const outline = { shape: 'rectangle', length: '120 ft', width: '60 ft' };
      const input = { outline, openings: [opening], thickness: '5 in', spacing: '12 ft' };
      const attempt = jointLayout.attempt(input as never);
      return attempt.ok ? undefined : attempt.error.issues[0]?.sentence;
    };
    const star = (corners: number): object => ({
      shape: 'polygon',
      points: Array.from({ length: corners }, (_, i) => {
        const [angle, radius] = [(2 * Math.PI * i) / corners, i % 2 ? 15 : 20];
        return { x: `${60 + radius * Math.cos(angle)} ft`, y: `${30 + radius * Math.sin(angle)} ft` };
      }),
    });
    expect(of(star(16))).toBeUndefined();
    expect(of(star(400))).toMatch(/two directions, in corners and openings, may have at most 640/);
    expect(of(star(6_002))).toMatch(/in corners of its openings may have at most 6000/);
  });

  it('a fine staircase is planned whatever its number of corners', () => {
    const steps = 80;
    const corners = Array.from({ length: steps }, (_, i) => [
      { x: `${160 - 2 * i} ft`, y: `${i + 1} ft` },
      { x: `${158 - 2 * i} ft`, y: `${i + 1} ft` },
    ]).flat();
    const points = [{ x: '0 ft', y: '0 ft' }, { x: '160 ft', y: '0 ft' }, ...corners];
    const { figures } = jointLayout({
      outline: { shape: 'polygon', points },
      thickness: '5 in',
      spacing: '12 ft',
    });
    // The sum of an arithmetic series: 2 ft of 1 ft, 2 ft and so on up to 80 ft.
    expect(figures.area.toNumber('ft2')).toBeCloseTo(steps * (steps + 1), 6);
    expect(figures.givesWay.filter(({ rule }) => rule === 'corner not met')).toEqual([]);
  });

  it('nothing but InputError comes of odd input', () => {
    fc.assert(
      fc.property(fc.anything(), fc.anything(), (spacing, outline) => {
        expect(jointLayout.attempt({ outline, spacing, thickness: '4 in' } as never).ok).toBe(false);
      }),
      { numRuns: runs(300) },
    );
  });
});

describe('neighbors and fixed lines', () => {
  const outline = { shape: 'rectangle', length: '30 ft', width: '20 ft' } as const;

  it('a joint of the neighboring slab goes on', () => {
    const { figures } = jointLayout({
      outline,
      thickness: '5 in',
      spacing: '12 ft',
      continued: [{ x: '13 ft', y: '0 ft' }],
    });
    expect(figures.joints.some((j) => j.from.x.format() === '13 ft' && j.to.x.format() === '13 ft')).toBe(
      true,
    );
  });

  it('a joint that comes up to any side goes on square to it', () => {
    const along = (continued: { x: string; y: string }, axis: 'x' | 'y'): boolean =>
      jointLayout({
        outline,
        thickness: '5 in',
        spacing: '12 ft',
        continued: [continued],
      }).figures.joints.some(({ from, to }) =>
        [from, to].every((end) => end[axis].format() === continued[axis]),
      );
    expect(along({ x: '13 ft', y: '20 ft' }, 'x')).toBe(true);
    expect(along({ x: '0 ft', y: '9 ft' }, 'y')).toBe(true);
    expect(along({ x: '30 ft', y: '9 ft' }, 'y')).toBe(true);
  });

  it('a fixed direction turns the joints', () => {
    const { figures } = jointLayout({ outline, thickness: '5 in', spacing: '12 ft', direction: '45 deg' });
    for (const { from, to } of figures.joints) {
      const [dx, dy] = [to.x.minus(from.x).abs().toNumber('in'), to.y.minus(from.y).abs().toNumber('in')];
      expect(dx).toBeCloseTo(dy, 9);
    }
  });

  it('a slab that is turned gets the joints of the slab that is not', () => {
    // Checked against: a 3-4-5 turn of the same rectangle, exact in decimals.
    const turn = ([x, y]: Xy): object => ({ x: feet(0.8 * x - 0.6 * y), y: feet(0.6 * x + 0.8 * y) });
    const corners: Xy[] = [
      [0, 0],
      [30, 0],
      [30, 20],
      [0, 20],
    ];
    const turned = planOf(
      { outline: { shape: 'polygon', points: corners.map(turn) } },
      { spacing: 12, leastSide: 2, ratio: 1.5 },
    );
    const plain = planOf({ outline }, { spacing: 12, leastSide: 2, ratio: 1.5 });
    expect(turned.contraction.compareTo(plain.contraction)).toBe(0);
    expect(turned.area.compareTo(plain.area)).toBe(0);
    expect(turned.panels.length).toBe(plain.panels.length);
  });

  it('a triangle, a taper and a slab with a slanted inside corner are tiled', () => {
    const asked = { spacing: 12, leastSide: 2, ratio: 1.5 };
    const area = (shape: object): number => planOf({ outline: shape }, asked).area.toNumber('ft2');
    expect(area({ shape: 'triangle', sides: ['30 ft', '40 ft', '50 ft'] })).toBeCloseTo(600, 9);
    expect(area({ shape: 'trapezoid', parallel: ['40 ft', '20 ft'], height: '30 ft' })).toBeCloseTo(900, 9);
    const chevron: Xy[] = [
      [0, 0],
      [40, 0],
      [30, 20],
      [40, 40],
      [0, 40],
    ];
    expect(
      area({ shape: 'polygon', points: chevron.map(([x, y]) => ({ x: feet(x), y: feet(y) })) }),
    ).toBeCloseTo(1400, 9);
  });
});
