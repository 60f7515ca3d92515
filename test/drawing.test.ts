/// <reference lib="dom" />
/**
 * Plans as a browser sees them: rendered in Chromium, compared by their elements and where they stand,
 * not by pixels.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { outlinePlan, thicknessPlan } from '../src/drawing/index';
import { InputError } from '../src/index';
import { NO_BROWSER, START, startBrowser } from './support/drawing/browser';

const ELL = { shape: 'L', length: '20 ft', width: '16 ft', notchLength: '8 ft', notchWidth: '6 ft' } as const;
const OPENINGS = [
  { shape: 'rectangle', at: { x: '3 ft', y: '3 ft' }, length: '2 ft', width: '2 ft' },
  { shape: 'circle', at: { x: '14 ft', y: '5 ft' }, diameter: '1 ft 6 in' },
] as const;
const PROBES = [
  { x: '1 ft', y: '5 ft', depth: '4 in' },
  { x: '15 ft', y: '3 ft', depth: '6 in' },
  { x: '3 ft', y: '15 ft', depth: '5 1/4 in' },
  { x: '10 ft', y: '6 ft', depth: '7 in' },
] as const;

describe('plans as text', () => {
  const all = [
    outlinePlan({ outline: ELL, openings: OPENINGS }, { title: 'Bin pad <&">' }),
    outlinePlan({ outline: { shape: 'ring', outerDiameter: '3 m', innerDiameter: '1 m' } }),
    thicknessPlan({ outline: ELL, probes: PROBES }),
  ];

  it('need nothing from outside and run nothing', () => {
    for (const svg of all) {
      expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(
        /href|url\(|http|<script|<style|<image|on[a-z]+=/,
      );
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(svg).toMatch(/<title id="[\w-]+">.+<\/title><desc id="[\w-]+">.+<\/desc>/);
    }
    expect(all[0]).toContain('Bin pad &lt;&amp;&quot;&gt;');
  });

  it('refuse what calculations refuse', () => {
    expect(() => outlinePlan({ outline: { shape: 'rectangle', length: '4', width: '4 ft' } })).toThrow(
      InputError,
    );
    expect(() => outlinePlan({ outline: { shape: 'combined', parts: [ELL] } })).toThrow(
      'no place in the plan',
    );
    expect(() =>
      outlinePlan({
        outline: ELL,
        openings: [{ shape: 'circle', at: { x: '0 ft', y: '0 ft' }, diameter: '1 ft' }],
      }),
    ).toThrow('wholly inside');
    const twice = [OPENINGS[0], { ...OPENINGS[0], at: { x: '4 ft', y: '4 ft' } }];
    expect(() => outlinePlan({ outline: ELL, openings: twice })).toThrow('openings 1 and 2 meet');
    const within = [
      OPENINGS[0],
      { ...OPENINGS[0], at: { x: '3 ft 6 in', y: '3 ft 6 in' }, length: '1 ft', width: '1 ft' },
    ];
    expect(() => outlinePlan({ outline: ELL, openings: within })).toThrow('openings 1 and 2 meet');
    expect(() => thicknessPlan({ outline: ELL, probes: [] })).toThrow(InputError);
  });
});

// Without a browser on the machine these are skipped, but not in CI, which installs one.
describe.skipIf(NO_BROWSER)('plans in a browser', () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await startBrowser();
    page = await browser.newPage();
  }, START);

  afterAll(() => browser?.close());

  /** Boxes of elements, in the units of the drawing. */
  async function boxes(
    svg: string,
    selector: string,
  ): Promise<{ x: number; y: number; width: number; height: number }[]> {
    await page.setContent(svg);
    return page.evaluate(
      (s) =>
        Array.from(document.querySelectorAll<SVGGraphicsElement>(s)).map((e) => {
          const { x, y, width, height } = e.getBBox();
          return { x, y, width, height };
        }),
      selector,
    );
  }

  it('show the outline to scale, with a dimension on every side', async () => {
    const svg = outlinePlan({ outline: ELL, openings: OPENINGS }, { title: 'Bin pad' });
    const [outline] = await boxes(svg, 'path.outline');
    expect((outline?.width ?? 0) / (outline?.height ?? 1)).toBeCloseTo(20 / 16, 3);
    expect(await boxes(svg, 'path.dimension')).toHaveLength(6);
    const texts = await page.evaluate(() =>
      Array.from(document.querySelectorAll('text')).map((t) => t.textContent),
    );
    expect(texts).toEqual([
      'Bin pad',
      '1',
      '2',
      '20 ft',
      '10 ft',
      '8 ft',
      '6 ft',
      '12 ft',
      '16 ft',
      'A',
      'B',
      '1',
      'opening 2 ft × 2 ft, from (3 ft; 3 ft) to (5 ft; 5 ft)',
      '2',
      'round opening, 1 ft 6 in across, center (14 ft; 5 ft)',
      'in brackets: from A along the line to B, then square in',
      'from that line',
    ]);
    const inside = await page.evaluate(() => {
      const path = document.querySelector<SVGPathElement>('path.outline');
      const svgElement = document.querySelector<SVGSVGElement>('svg');
      if (!path || !svgElement) return [];
      // Fractions of the bounding box of the outline: middle of the opening, beside it, the notch.
      const { x, y, width, height } = path.getBBox();
      return [
        [4 / 20, 12 / 16],
        [8 / 20, 8 / 16],
        [18 / 20, 2 / 16],
        [14 / 20, 11 / 16],
      ].map(([fx, fy]) => {
        const point = svgElement.createSVGPoint();
        [point.x, point.y] = [x + (fx ?? 0) * width, y + (fy ?? 0) * height];
        return path.isPointInFill(point);
      });
    });
    expect(inside).toEqual([false, true, false, false]);
  });

  it('keep every element within the frame, at any size', async () => {
    // Texts are turned, and looked at by their turned boxes, in the test of labels.
    for (const svg of [
      outlinePlan({ outline: ELL, openings: OPENINGS }),
      thicknessPlan({ outline: ELL, probes: PROBES }),
    ]) {
      const [, , width = 0, height = 0] =
        /viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(svg)?.slice(1).map(Number) ?? [];
      for (const b of await boxes(svg, 'line, path, circle, rect')) {
        expect(
          b.x >= -0.01 && b.y >= -0.01 && b.x + b.width <= width + 0.01 && b.y + b.height <= height + 0.01,
        ).toBe(true);
      }
    }
  });

  it('show probes and lines of equal depth, with a legend', async () => {
    const svg = thicknessPlan({ outline: ELL, probes: PROBES }, { title: 'Depth' });
    expect(await boxes(svg, 'circle.probe')).toHaveLength(4);
    // From 4 in to 7 in every 1/4 in: eleven lines between.
    const levels = await boxes(svg, 'path.level');
    expect(levels).toHaveLength(11);
    expect(levels.filter((b) => b.width > 1 || b.height > 1).length).toBe(levels.length);
    expect(await boxes(svg, 'g.legend')).toHaveLength(3);
    const [named] = await page.evaluate(() => [document.querySelector('svg')?.getAttribute('role')]);
    expect(named).toBe('img');
  });
});
