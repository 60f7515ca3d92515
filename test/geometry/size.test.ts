/** Many parts together may be no more than one outline may: otherwise parts would be a way around its limits. */
import { describe, expect, it } from 'vitest';
import { InputError, slabVolume } from '../../src/index';
import { OUTLINE_LIMITS } from '../../src/outline/size';

const times = <T>(n: number, make: (i: number) => T): T[] => Array.from({ length: n }, (_, i) => make(i));

const onCircle = (n: number, i: number): { x: string; y: string } => ({
  x: `${(20 * Math.cos((2 * Math.PI * i) / n)).toFixed(6)} m`,
  y: `${(20 * Math.sin((2 * Math.PI * i) / n)).toFixed(6)} m`,
});

/** One part with so many corners of its kind. */
const PARTS = {
  polygon: (n: number) => ({ shape: 'polygon', points: times(n, (i) => onCircle(n, i)) }),
  walk: (n: number) => ({ shape: 'walk', legs: times(n, () => ({ length: '1 m', turn: `${360 / n} deg` })) }),
  curved: (n: number) => ({
    shape: 'curved',
    points: times(n, (i) => ({ ...onCircle(n, i), rise: '10 mm' })),
  }),
  offsets: (n: number) => ({
    shape: 'offsets',
    spacing: '1 m',
    rule: 'trapezoidal',
    offsets: times(n, () => '2 m'),
  }),
} as const;

const SLAB = { shape: 'rectangle', length: '4 m', width: '3 m' };

function codesOf(outline: object): string[] {
  try {
    slabVolume({ outline, thickness: '100 mm' } as never);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} at ${path}`);
    throw error;
  }
  return [];
}

describe.each([
  ['walk', 160, 4],
  ['curved', 60, 4],
  ['offsets', 300, 4],
] as const)('parts of %s', (shape, corners, parts) => {
  const combined = (n: number): object => ({
    shape: 'combined',
    parts: times(n, () => ({ shape: 'combined', parts: [PARTS[shape](corners)] })),
  });

  it('are taken up to what one outline may have, and refused beyond', () => {
    expect(codesOf(PARTS[shape](corners))).toEqual([]);
    expect(codesOf(combined(parts - 1))).toEqual([]);
    expect(codesOf(combined(parts))).toEqual(['too-many at outline']);
  });
});

it('counts parts within parts', () => {
  const within = (n: number): object => ({ shape: 'combined', parts: times(n, () => SLAB) });
  const outline = (n: number): object => ({ shape: 'combined', parts: times(n, () => within(99)) });
  expect(codesOf(outline(9))).toEqual([]);
  expect(codesOf(outline(25))).toEqual(['too-many at outline']);
});

it('counts the corners of all openings together', () => {
  const at = (i: number): object => ({ x: `${4 + 8 * i} m`, y: '4 m' });
  const openings = (n: number): object[] =>
    times(n, (i) => ({ shape: 'regular', at: at(i), sides: 360, side: '10 mm' }));
  const take = (n: number): boolean =>
    slabVolume.attempt({
      outline: { shape: 'rectangle', length: '300 m', width: '8 m' },
      thickness: '100 mm',
      openings: openings(n) as never,
    }).ok;
  expect([take(3), take(34)]).toEqual([true, false]);
});

it('is limited by what is published as the limit', () => {
  const [limit] = OUTLINE_LIMITS;
  // Each plain part counts 5, and so does every list of parts.
  const rectangles = (n: number): object => ({ shape: 'combined', parts: times(n, () => SLAB) });
  const most = ((limit?.most ?? 0) - 10) / 5;
  const whole = (n: number): object => ({
    shape: 'combined',
    parts: [...times(Math.floor(n / 100), () => rectangles(100)), ...(n % 100 ? [rectangles(n % 100)] : [])],
  });
  // Of 100 and one list, 505: as many lists as there are take 5 each from the rest.
  const lists = Math.ceil(most / 101);
  expect(codesOf(whole(most - lists))).toEqual([]);
  expect(codesOf(whole(most - lists + 2))).toEqual(['too-many at outline']);
});
