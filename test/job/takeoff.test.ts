/** Take-offs of made jobs: sums of their parts, overlaps by closed forms, one cutting plan, edits. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { JobElementInput, JobInput } from '../../src/job/document';
import { jobTakeoff, reckonJob } from '../../src/job/job-takeoff';
import type { RebarFigures } from '../../src/steel/rebar-layout';
import { runs } from '../support/effort';

const inches = (n: number): string => `${n} in`;

interface Box {
  readonly x: number;
  readonly y: number;
  readonly l: number;
  readonly w: number;
  readonly t: number;
}

/** Whole inches, so that closed forms are exact in binary numbers too. */
const box: fc.Arbitrary<Box> = fc.record({
  x: fc.integer({ min: 0, max: 600 }),
  y: fc.integer({ min: 0, max: 600 }),
  l: fc.integer({ min: 24, max: 360 }),
  w: fc.integer({ min: 24, max: 360 }),
  t: fc.integer({ min: 4, max: 12 }),
});

const slab = ({ x, y, l, w, t }: Box, i: number, more: Partial<JobElementInput> = {}): JobElementInput => ({
  name: `slab ${i + 1}`,
  outline: { shape: 'rectangle', length: inches(l), width: inches(w) },
  at: { x: inches(x), y: inches(y) },
  thickness: inches(t),
  slab: true,
  ...more,
});

const side = (a: number, la: number, b: number, lb: number): number =>
  Math.max(0, Math.min(a + la, b + lb) - Math.max(a, b));

const common = (a: Box, b: Box): number => side(a.x, a.l, b.x, b.l) * side(a.y, a.w, b.y, b.w);

/** Earth under widened boxes as deep as the deepest at each place, with nothing of the library. */
function squareBySquare(all: readonly (Box & { readonly m: number })[]): number {
  const depth = new Map<string, number>();
  for (const { x, y, l, w, t, m } of all)
    for (let u = x - m; u < x + l + m; u += 1)
      for (let v = y - m; v < y + w + m; v += 1) {
        const at = `${u} ${v}`;
        depth.set(at, Math.max(t, depth.get(at) ?? 0));
      }
  return [...depth.values()].reduce((earth, deep) => earth + deep, 0);
}

const CUBIC_INCHES = 46_656;
const inCubicInches = (job: JobInput): number =>
  (jobTakeoff(job).figures.concrete?.toNumber('yd3') ?? 0) * CUBIC_INCHES;

describe('the take-off of a job', () => {
  it('adds up its elements, whatever their order', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(box, fc.integer({ min: 1, max: 5 })), { minLength: 1, maxLength: 8 }),
        (all) => {
          const elements = all.map(([b, count], i) => {
            const { at: _, ...element } = slab(b, i);
            return { ...element, count };
          });
          const sum = all.reduce((v, [{ l, w, t }, count]) => v + l * w * t * count, 0);
          expect(inCubicInches({ version: 1, elements })).toBeCloseTo(sum, 3);
          expect(inCubicInches({ version: 1, elements: [...elements].reverse() })).toBeCloseTo(sum, 3);
        },
      ),
      { numRuns: runs(1000) },
    );
  });

  it('finds what two slabs have in common, and counts it once', () => {
    fc.assert(
      fc.property(box, box, (a, b) => {
        const { figures, cautions } = jobTakeoff({ version: 1, elements: [slab(a, 0), slab(b, 1)] });
        const area = common(a, b);
        const once = a.l * a.w * a.t + b.l * b.w * b.t - area * Math.min(a.t, b.t);
        expect((figures.concrete?.toNumber('yd3') ?? 0) * CUBIC_INCHES).toBeCloseTo(once, 2);
        expect(figures.overlaps.map((o) => Math.round(o.area.toNumber('in2')))).toEqual(
          area > 0 ? [area] : [],
        );
        expect(cautions.some(({ code }) => code === 'elements-overlap')).toBe(area > 0);
      }),
      { numRuns: runs(600) },
    );
  });

  it('invents no overlap between slabs that share edges, however they are turned', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 4 }),
        fc.integer({ min: 30, max: 240 }),
        fc.integer({ min: 0, max: 359 }),
        (n, s, degrees) => {
          const angle = (degrees * Math.PI) / 180;
          const elements = Array.from({ length: n * n }, (_, k): JobElementInput => {
            const [u, v] = [(k % n) * s, Math.floor(k / n) * s];
            const x = u * Math.cos(angle) - v * Math.sin(angle);
            const y = u * Math.sin(angle) + v * Math.cos(angle);
            return {
              ...slab({ x: 0, y: 0, l: s, w: s, t: 4 }, k),
              at: { x: `${x.toFixed(9)} in`, y: `${y.toFixed(9)} in` },
              turned: `${degrees} deg`,
            };
          });
          expect(jobTakeoff({ version: 1, elements }).figures.overlaps).toEqual([]);
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it('lays gravel once under widened slabs, each place as deep as the deepest there', () => {
    const small = fc.record({
      x: fc.integer({ min: 0, max: 20 }),
      y: fc.integer({ min: 0, max: 20 }),
      l: fc.integer({ min: 2, max: 12 }),
      w: fc.integer({ min: 2, max: 12 }),
      t: fc.integer({ min: 3, max: 8 }),
      m: fc.integer({ min: 0, max: 2 }),
    });
    for (const [unit, length] of [
      ['ft', 'in'],
      ['m', 'cm'],
    ] as const) {
      const of = (job: JobInput, item: string): number =>
        jobTakeoff(job)
          .figures.purchases.find((line) => line.item === item)
          ?.quantity.toNumber(item === 'base' ? 'kg' : 'm3') ?? 0;
      fc.assert(
        fc.property(fc.array(small, { minLength: 1, maxLength: 5 }), (all) => {
          const elements = all.map(({ x, y, l, w, t, m }, i): JobElementInput => {
            const outline = { shape: 'rectangle', length: `${l} ${unit}`, width: `${w} ${unit}` } as const;
            const layer = { depth: `${t} ${length}`, margin: `${m} ${unit}` };
            const base = { ...layer, compactedDensity: '1000 kg/m3' };
            const at = { x: `${x} ${unit}`, y: `${y} ${unit}` };
            return { name: `${i}`, outline, at, base, excavation: layer };
          });
          const union = squareBySquare(all);
          const sum = all.reduce((earth, { l, w, t, m }) => earth + (l + 2 * m) * (w + 2 * m) * t, 0);
          const each = unit === 'm' ? 0.01 : 0.3048 ** 2 * 0.0254;
          for (const order of [elements, [...elements].reverse()]) {
            const job: JobInput = { version: 1, elements: order };
            expect(of(job, 'base') / 1000 / each).toBeCloseTo(union, 5);
            expect(of(job, 'haul-away') / each).toBeCloseTo(union, 5);
          }
          expect(union).toBeLessThanOrEqual(sum);
        }),
        { numRuns: runs(150) },
      );
    }
  });

  it('neither loses nor invents gravel of turned and round slabs', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            x: fc.integer({ min: 0, max: 15 }),
            y: fc.integer({ min: 0, max: 15 }),
            d: fc.integer({ min: 3, max: 12 }),
            turned: fc.integer({ min: 0, max: 359 }),
            shape: fc.constantFrom('circle', 'rectangle'),
          }),
          { minLength: 2, maxLength: 4 },
        ),
        fc.integer({ min: 0, max: 3 }),
        (all, m) => {
          const element = ({ x, y, d, turned, shape }: (typeof all)[number], i: number): JobElementInput => ({
            name: `${i}`,
            outline: (shape === 'circle'
              ? { shape, diameter: `${d} m` }
              : { shape, length: `${d} m`, width: `${d / 2} m` }) as NonNullable<JobElementInput['outline']>,
            at: { x: `${x} m`, y: `${y} m` },
            turned: `${turned} deg`,
            base: { depth: '1 m', margin: `${m * 100} mm`, compactedDensity: '1000 kg/m3' },
          });
          const weigh = (elements: JobElementInput[]): number =>
            jobTakeoff({ version: 1, elements }).figures.purchases[0]?.quantity.toNumber('tonne') ?? 0;
          const elements = all.map(element);
          const each = elements.map((one) => weigh([one]));
          const together = weigh(elements);
          // Round ones are clipped as polygons, whose corners stand out by a hair where they are widened.
          expect(together).toBeLessThanOrEqual(each.reduce((a, b) => a + b, 0) + 1e-6);
          expect(together).toBeGreaterThanOrEqual(Math.max(...each) * (1 - 1e-4));
        },
      ),
      { numRuns: runs(100) },
    );
  });

  it('cuts the bars of all elements by a plan that never takes more than they would each for themselves', () => {
    fc.assert(
      fc.property(fc.array(box, { minLength: 2, maxLength: 4 }), (boxes) => {
        const elements = boxes.map((b, i) => {
          const { at: _, ...element } = slab(b, i, { bars: { bar: '#4', spacing: '18 in', cover: '2 in' } });
          return element;
        });
        const { takeoff, parts } = reckonJob({ version: 1, elements });
        const alone = parts
          .filter(({ part }) => part === 'bars')
          .reduce((n, { result }) => n + (result.figures as RebarFigures).barsToBuy.toNumber('each'), 0);
        const bought = takeoff.figures.purchases
          .filter(({ item }) => item === 'bar')
          .reduce((n, { quantity }) => n + (quantity as RebarFigures['barsToBuy']).toNumber('each'), 0);
        expect(bought).toBeLessThanOrEqual(alone);
        expect(bought).toBeGreaterThan(0);
      }),
      { numRuns: runs(30) },
    );
  });

  it('reckons after an edit what it would reckon afresh, and only that part again', () => {
    const elements = [0, 1, 2].map((i) =>
      slab({ x: 400 * i, y: 0, l: 240, w: 120, t: 4 }, i, {
        base: { depth: '4 in', compactedDensity: '135 pcf' },
      }),
    );
    const before = reckonJob({ version: 1, elements });
    const edited: JobInput = {
      version: 1,
      elements: elements.map((e, i) => (i === 1 ? { ...e, thickness: '5 in' } : e)),
    };
    const after = reckonJob(edited, { from: before });
    expect(after.takeoff).toEqual(reckonJob(edited).takeoff);
    const again = after.parts.filter(({ result }, i) => result !== before.parts[i]?.result);
    expect(again.map(({ element, part }) => [element, part])).toEqual([['slab 2', 'slab']]);
  });

  it('calls a fault by its place in the document', () => {
    const element = slab({ x: 0, y: 0, l: 240, w: 120, t: 4 }, 0);
    const fault = (job: JobInput): string => {
      const attempt = jobTakeoff.attempt(job);
      return attempt.ok ? '' : attempt.error.issues.map(({ code, path }) => `${code} ${path}`).join(', ');
    };
    const bars = { bar: '#4', spacing: '18' };
    expect(fault({ version: 1, elements: [{ ...element, thickness: '4' }] })).toBe(
      'missing-unit elements[0].thickness',
    );
    expect(fault({ version: 1, elements: [{ ...element, bars }] as never })).toBe(
      'missing-unit elements[0].bars.spacing',
    );
    expect(fault({ version: 1, shared: { bars }, elements: [{ ...element, bars: true }] } as never)).toBe(
      'missing-unit shared.bars.spacing',
    );
    const outline = { shape: 'rectangle', length: '20 ft', width: '10' };
    expect(
      fault({
        version: 1,
        elements: [{ ...element, outline, slab: false, bars: { ...bars, spacing: '18 in' } }],
      } as never),
    ).toBe('missing-unit elements[0].outline.width');
    expect(
      fault({
        version: 1,
        order: { increment: '0.25 yd3', truckCapacity: '9' },
        shared: { allowance: '5%' },
        elements: [element],
      }),
    ).toBe('missing-unit order.truckCapacity');
  });

  it('says where an allowance is missing, and gives the rest', () => {
    const { figures } = jobTakeoff({
      version: 1,
      order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
      elements: [slab({ x: 0, y: 0, l: 240, w: 120, t: 4 }, 0)],
    });
    expect(figures.missing).toEqual([{ part: 'order', at: 'elements[0].allowance' }]);
    expect(figures.mixes[0]?.order).toBeUndefined();
    expect(figures.concrete?.format('ft3')).toBe('66.67 ft3');
  });

  it('makes mats of bars for any outline', () => {
    const { takeoff } = reckonJob({
      version: 1,
      elements: [
        {
          name: 'pad',
          outline: { shape: 'L', length: '12 ft', width: '8 ft', notchLength: '3 ft', notchWidth: '2 ft' },
          thickness: '6 in',
          bars: { bar: '#4', spacing: '12 in', cover: '3 in' },
        },
      ],
    });
    expect(takeoff.figures.missing).toEqual([]);
    expect(takeoff.figures.purchases[0]?.item).toBe('bar');
  });
});

describe('a pit under a base', () => {
  const SLAB = {
    name: 'slab',
    outline: { shape: 'rectangle', length: '10 ft', width: '8 ft' },
    base: { depth: '6 in', compactedDensity: '135 pcf', margin: '6 in' },
  } as const;
  const DUG = { depth: '10 in', swell: '25%' } as const;
  const areaOf = (element: JobElementInput, shared: JobInput['shared'] = {}): string | undefined => {
    const { parts } = reckonJob({ version: 1, shared, elements: [element] });
    const pit = parts.find(({ part }) => part === 'excavation');
    return (
      pit?.result.figures as { bottomArea?: { format: () => string } } | undefined
    )?.bottomArea?.format();
  };

  it('is dug as wide as that, unless it says its own margin or there is no base', () => {
    expect(areaOf({ ...SLAB, excavation: DUG })).toBe('99 ft2');
    expect(areaOf({ ...SLAB, excavation: { ...DUG, margin: '12 in' } })).toBe('120 ft2');
    expect(areaOf({ ...SLAB, excavation: { ...DUG, margin: '0 in' } })).toBe('80 ft2');
    expect(areaOf({ ...SLAB, excavation: DUG, base: false })).toBe('80 ft2');
    expect(areaOf({ ...SLAB, base: {}, excavation: DUG }, { base: SLAB.base })).toBe('99 ft2');
  });
});

describe('what is no JSON', () => {
  it('is refused by its part, and never taken for what was reckoned before', () => {
    const element = slab({ x: 0, y: 0, l: 240, w: 120, t: 4 }, 0);
    const before = reckonJob({ version: 1, elements: [element] });
    for (const odd of [10n, Symbol('x'), () => 1, Number.NaN, Number.POSITIVE_INFINITY]) {
      const job = { version: 1, elements: [{ ...element, slab: { baseTolerance: odd } }] } as never;
      expect(jobTakeoff.attempt(job).ok).toBe(false);
      expect(() => reckonJob(job, { from: before })).toThrow('baseTolerance');
    }
  });
});

describe('places in the document', () => {
  it('are told for what is missing and for cautions of the whole job', () => {
    const bars = { bar: '#4', spacing: '12 in' } as const;
    const { figures } = jobTakeoff({ version: 1, elements: [{ name: 'pad', bars }] });
    expect(figures.missing.map(({ at }) => at)).toEqual([
      'elements[0].bars.length',
      'elements[0].bars.width',
    ]);
    const { cautions } = jobTakeoff({
      version: 1,
      shared: { allowance: '5%' },
      order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
      elements: [slab({ x: 0, y: 0, l: 324, w: 324, t: 4 }, 0)],
    });
    expect(cautions.flatMap(({ input }) => (input === undefined ? [] : [input]))).not.toContain('order.');
  });

  it('tell which version of the document to write', () => {
    const attempt = jobTakeoff.attempt({ elements: [] } as never);
    expect(attempt.ok ? '' : attempt.error.message).toContain('version is missing; write it, for example 1');
  });
});

describe('a job with its parts', () => {
  it('has the take-off that the calculation gives, doubts and all', () => {
    const job: JobInput = {
      version: 1,
      elements: [slab({ x: 0, y: 0, l: 240, w: 120, t: 4 }, 0, { allowance: '400%' })],
    };
    const { takeoff } = reckonJob(job);
    expect(takeoff).toEqual(jobTakeoff(job));
    expect(takeoff.cautions.map(({ code }) => code)).toContain('unusual');
  });
});

describe('concrete that two elements would count twice', () => {
  const lying = (unit: 'ft' | 'm', thickness: string): JobInput => {
    const outline = { shape: 'rectangle', length: `6 ${unit}`, width: `3 ${unit}` } as const;
    const at = (x: number) => ({ x: `${x} ${unit}`, y: `0 ${unit}` });
    return {
      version: 1,
      elements: [
        { name: 'yard', outline, at: at(0), thickness, slab: true },
        { name: 'walk', outline, at: at(4), thickness, slab: true },
      ],
    };
  };

  it('is told in the unit that concrete is ordered in', () => {
    // 2 ft by 3 ft by 6 in are 3 ft3, a ninth of a cubic yard; 2 m by 3 m by 150 mm are 0.9 m3.
    const told = (job: JobInput) => jobTakeoff(job).figures.overlaps[0]?.countedOnce?.format();
    expect(told(lying('ft', '6 in'))).toBe('0.11 yd3');
    expect(told(lying('m', '150 mm'))).toBe('0.90 m3');
  });
});
