/// <reference lib="dom" />
/** Texts on plans as a browser sets them: large enough to read, on the page, and none on another. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { randoms } from '../steel/outlines';
import { NO_BROWSER, START, startBrowser } from '../support/drawing/browser';
import { randomPlans, randomSites } from '../support/drawing/random-plans';
import { runs } from '../support/effort';

const PLANS = runs(200);
const SITES = runs(30);
const AT_ONCE = 20;

interface Found {
  readonly plan: number;
  readonly what: string;
}

/** What is wrong with the texts of every plan on the page; runs in the browser. */
function faultsOnPage(): Found[] {
  interface Piece {
    readonly text: string;
    readonly corners: readonly { readonly x: number; readonly y: number }[];
    readonly round: boolean;
    readonly numbered: boolean;
  }
  const apart = (a: Piece, b: Piece): boolean =>
    [a, b].some(({ corners }) =>
      [0, 1].some((i) => {
        const [p, q] = [corners[i], corners[i + 1]];
        if (!p || !q) return true;
        const long = Math.hypot(q.x - p.x, q.y - p.y) || 1;
        const [ux, uy] = [(q.x - p.x) / long, (q.y - p.y) / long];
        const shadow = (piece: Piece): [number, number] => {
          const all = piece.corners.map(({ x, y }) => x * ux + y * uy);
          return [Math.min(...all), Math.max(...all)];
        };
        const [[a0, a1], [b0, b1]] = [shadow(a), shadow(b)];
        return a1 <= b0 + 0.3 || b1 <= a0 + 0.3;
      }),
    );
  const found: Found[] = [];
  document.querySelectorAll('svg').forEach((svg, plan) => {
    const page = svg.getBoundingClientRect();
    const pieces = Array.from(svg.querySelectorAll<SVGGraphicsElement>('text, rect.number')).map(
      (e): Piece => {
        const { x, y, width, height } = e.getBBox();
        const matrix = e.getScreenCTM() as DOMMatrix;
        const corners = [
          [x, y],
          [x + width, y],
          [x + width, y + height],
          [x, y + height],
        ].map(([px = 0, py = 0]) => new DOMPoint(px, py).matrixTransform(matrix));
        if (e.tagName === 'text') {
          const size = Number.parseFloat(getComputedStyle(e).fontSize) * Math.hypot(matrix.a, matrix.b);
          const shown = page.width < 400 ? 11 : 10;
          if (size < shown - 0.01) found.push({ plan, what: `${e.textContent} is ${size} px high` });
        }
        const numbered = e.classList.contains('number');
        return { text: e.textContent ?? '', corners, round: e.tagName === 'rect', numbered };
      },
    );
    const isOff = ({ x, y }: { x: number; y: number }): boolean =>
      x < page.left - 0.5 || y < page.top - 0.5 || x > page.right + 0.5 || y > page.bottom + 0.5;
    /** The number within its own circle. */
    const within = (a: Piece, b: Piece): boolean => a.numbered && b.numbered && a.round !== b.round;
    pieces.forEach((a, i) => {
      if (a.corners.some(isOff)) found.push({ plan, what: `${a.text} runs off the page` });
      for (const b of pieces.slice(i + 1)) {
        if (!within(a, b) && !apart(a, b)) found.push({ plan, what: `"${a.text}" lies on "${b.text}"` });
      }
    });
  });
  return found;
}

describe.skipIf(NO_BROWSER)('texts of random plans in a browser', () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await startBrowser();
    page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  }, START);

  afterAll(() => browser?.close());

  it('are found to lie on each other where they do', async () => {
    const text = (x: number, word: string): string => `<text x="${x}" y="20" font-size="12">${word}</text>`;
    const all = text(10, 'one') + text(20, 'two') + text(370, 'three') + text(100, 'four');
    const small = '<text x="200" y="20" font-size="9">five</text>';
    await page.setContent(
      `<body style="margin:0"><div style="width:390px"><svg viewBox="0 0 390 40">${all}${small}</svg></div>`,
    );
    const faults = await page.evaluate(faultsOnPage);
    expect(faults.map(({ what }) => what)).toEqual([
      'five is 9 px high',
      '"one" lies on "two"',
      'three runs off the page',
    ]);
  });

  it.each([
    [PLANS, 'plans', randomPlans],
    [SITES, 'site plans', randomSites],
  ] as const)('can be read and do not lie on each other, on %i %s', async (count, _what, make) => {
    const plans = make(count, randoms(20_261_127));
    for (let from = 0; from < plans.length; from += AT_ONCE) {
      const some = plans.slice(from, from + AT_ONCE);
      const body = some.map((svg) => {
        const [, width = '390'] = /viewBox="0 0 (\S+)/.exec(svg) ?? [];
        return `<div style="width:${width}px">${svg}</div>`;
      });
      await page.setContent(`<body style="margin:0">${body.join('')}`);
      const faults = await page.evaluate(faultsOnPage);
      expect(faults.map(({ plan, what }) => `plan ${from + plan}: ${what}`)).toEqual([]);
    }
  });
});
