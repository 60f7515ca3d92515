/** The plan of drainage: well formed, complete, and bounded. */
import { describe, expect, it } from 'vitest';
import { type SurfacePlanInput, surfacePlan } from '../../src/drawing/surface-plan';
import { InputError } from '../../src/index';

const yard: SurfacePlanInput = {
  surface: {
    table: {
      unit: 'ft',
      rows: [
        [0, 0, 100],
        [14, 0, 99.95],
        [28, 0, 100],
        [0, 9, 99.9],
        [28, 9, 99.75],
        [0, 18, 99.6],
        [14, 18, 99.7],
        [28, 18, 99.5],
        [14, 9, 99.5],
        [8, 5, 100.05],
        [20, 13, 99.7],
        [6, 13, 99.6],
        [22, 4, 99.9],
      ],
    },
    lines: [
      { kind: 'building', name: 'bakery wall', along: ['row 1', 'row 3'] },
      { kind: 'curb', name: 'bin curb', along: ['row 1', 'row 4'] },
      { kind: 'driveway', name: 'drive', along: ['row 6', 'row 8'] },
    ],
  },
  stakes: [{ name: 'S1', x: '28 ft', y: '18 ft', mark: 'down 2 1/4 in' }],
};

/** Every start tag has its end: a stack is enough for SVG without comments or text sections. */
function unbalanced(svg: string): string[] {
  const open: string[] = [];
  for (const [, end, name, self] of svg.matchAll(/<(\/?)([a-z]+)[^>]*?(\/?)>/g)) {
    if (end) expect(open.pop()).toBe(name);
    else if (!self && name) open.push(name);
  }
  return open;
}

describe('surface-plan', () => {
  const svg = surfacePlan(yard, { title: 'Delivery slab of the bakery <east> & yard' });

  it('is well formed, in black and white, and asks for nothing from outside', () => {
    expect(unbalanced(svg)).toEqual([]);
    expect(svg).toContain('bakery &lt;east&gt; &amp; yard');
    const colors = new Set([...svg.matchAll(/(?:fill|stroke)="(#[0-9a-f]+)"/g)].map(([, c]) => c));
    expect([...colors].sort()).toEqual(['#000', '#fff']);
    expect(svg).not.toMatch(/href|<script|<image|@import|url\(/);
    expect(svg).not.toContain('NaN');
  });

  it('shows contours, falls, ponds, slopes that run back and stakes, each in the legend', () => {
    for (const part of ['contour', 'fall', 'pond', 'runs-back', 'stake', 'building', 'curb']) {
      expect(svg, part).toContain(`class="${part}"`);
    }
    for (const text of [
      'contour, every 0.05 ft',
      'way that water runs',
      'water stands here',
      'runs to the building',
    ]) {
      expect(svg, text).toContain(text);
    }
    expect(svg).toContain('1-3/16 in deep');
    expect(svg).toContain('S1: down 2 1/4 in');
  });

  it('leaves out of the legend what is not there', () => {
    const plain = surfacePlan({
      surface: {
        table: {
          unit: 'm',
          rows: [
            [0, 0, 1],
            [5, 0, 1],
            [0, 5, 0.9],
          ],
        },
      },
    });
    expect(plain).not.toContain('water stands here');
    expect(plain).not.toContain('curb');
  });

  it('refuses too many contours, and throws nothing but its own error', () => {
    const codes = (input: unknown): string => {
      try {
        surfacePlan(input as SurfacePlanInput);
        return 'drawn';
      } catch (error) {
        return error instanceof InputError ? (error.issues[0]?.code ?? '') : 'other';
      }
    };
    expect(codes({ ...yard, interval: '0.001 in' })).toBe('too-many');
    expect(codes({ surface: { spots: [] } })).toBe('few-spots');
    expect(codes(undefined)).toBe('missing');
    expect(codes({ ...yard, stakes: 3 })).toBe('wrong-type');
  });
});
