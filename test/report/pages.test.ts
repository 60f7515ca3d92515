/// <reference lib="dom" />
/** Pages of a job in a real browser: nothing loaded, nothing wrong, readable on a phone, and whole on paper. */

import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { slabVolume } from '../../src/concrete/slab-volume';
import { outlinePlan, sitePlan } from '../../src/drawing/index';
import type { JobInput } from '../../src/job/document';
import { jobBid } from '../../src/job/job-bid';
import { reckonJob } from '../../src/job/job-takeoff';
import { estimateCheck } from '../../src/opinion/estimate-check';
import {
  checkHtml,
  type JobPage,
  jobHtml,
  type PageView,
  type Quote,
  quoteHtml,
} from '../../src/report/index';
import { NO_BROWSER, START, startBrowser } from '../support/drawing/browser';

const PAGES: readonly JobPage[] = ['crew', 'yard', 'calculation'];

/** Those and the pages that are made of a job with something beside it. */
type AnyPage = JobPage | 'customer' | 'check';
const ALL: readonly AnyPage[] = [...PAGES, 'customer', 'check'];

const yard = (name: string): JobInput => ({
  version: 1,
  shared: { allowance: '8%', base: { depth: '4 in', compactedDensity: '135 pcf' } },
  order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
  elements: [
    {
      name,
      outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
      at: { x: '0 ft', y: '0 ft' },
      thickness: '6 in',
      slab: true,
      base: { margin: '6 in' },
      bars: { bar: '#4', spacing: '18 in', cover: '3 in' },
      spacing: { aggregateSize: '3/4 in', slump: '4 in' },
      joints: true,
      fall: { atBuilding: `100' 0"`, away: `99' 11"`, distance: "18'" },
    },
    {
      name: 'bin pad',
      outline: { shape: 'rectangle', length: '12 ft', width: '8 ft' },
      at: { x: '26 ft', y: '10 ft' },
      thickness: '4 in',
      slab: true,
      base: true,
    },
    { name: 'ramp', outline: { shape: 'rectangle', length: '14 ft', width: '4 ft' }, slab: true },
  ],
});

const job = reckonJob(yard('delivery slab'));
const pictures = [
  {
    title: 'Delivery slab',
    svg: outlinePlan({ outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' } }),
  },
];

const bid = jobBid({
  lines: [
    { kind: 'material', name: 'concrete', amount: '2163 USD' },
    { kind: 'labor', name: 'place and finish the delivery slab', amount: '3536 USD' },
    { kind: 'material', name: 'dye', option: 'Colored', amount: '300 USD' },
    { kind: 'labor', name: 'seal', option: 'Sealer', amount: '210 USD' },
  ],
  tax: { kind: 'on-price', rate: '7%' },
  profit: { markup: '20%' },
});

const quote: Quote = {
  bid,
  job,
  from: ['Harbor Flatwork', '12 Mill Lane', '555-0142'],
  to: ['The Corner Bakery'],
  site: '3 High Street, rear yard',
  stands: '30 June',
  prices: 'lines',
  retainage: '5%',
  payments: [
    { when: 'on signing', share: '20%' },
    { when: 'when the concrete is placed', share: '50%' },
  ],
};

const slab = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;
const checked = estimateCheck(slabVolume, slab, [
  { figure: 'volume', claimed: '7.47 yd3', line: '28 x 18 x 0.4 / 27' },
  { figure: 'area', claimed: '504 ft2' },
]);

function htmlOf(page: AnyPage, view: PageView = {}): string {
  if (page === 'customer') return quoteHtml('Rear yard', quote, view);
  if (page === 'check')
    return checkHtml('Invoice of 3 June', checked, { ...view, input: slab, claimedBy: 'the supplier' });
  return jobHtml('Rear yard', job, page, view);
}

/** Letters of other scripts, marks that turn text around, quotes, tags and a very long word, within a label's bound. */
const HOSTILE = [
  `<script>alert(1)</script>`,
  `"><img src=x onerror=alert(1)>`,
  `\u202Etxet denruter\u202C`,
  `مخبز الزاوية`,
  `' & " ]]> --> {{x}}`,
  'W'.repeat(60),
];

describe('pages of a job', () => {
  it('keep hostile names to their own text', () => {
    for (const name of HOSTILE) {
      for (const page of PAGES) {
        const html = jobHtml(name.repeat(200), reckonJob(yard(name)), page, { job: name, date: name });
        expect(html).not.toMatch(/<script|<img src=x/i);
        expect(html).not.toContain('\u202E');
      }
    }
  });

  it('say what is to be bought, what is missing, and the cautions that matter', () => {
    const [crew = '', order = '', all = ''] = PAGES.map((page) => jobHtml('Rear yard', job, page));
    for (const html of [crew, order]) {
      expect(html).toContain('<bdi>ramp: slab</bdi></th><td><bdi>thickness</bdi>');
      expect(html).not.toContain('elements[2]');
    }
    expect(all).toContain('elements[2].thickness');
    expect(order).toContain('Ready-mixed concrete');
    expect(order).not.toContain('How it was figured');
    expect(order).not.toContain('Joints to saw');
    expect(all).toContain('Joints to saw');
    expect(all).toContain('How it was figured');
    expect(crew).toContain('lie over each other');
    expect(crew.length).toBeLessThan(all.length);
  });

  it('tell the yard of loads alike at once, and of bags without an order', () => {
    const slab = {
      outline: { shape: 'rectangle', length: '40 ft', width: '27 ft' },
      thickness: '6 in',
      slab: true,
    } as const;
    const elements = [{ name: 'Slab', allowance: '5%', ...slab }];
    const order = { increment: '0.25 yd3', truckCapacity: '9 yd3' } as const;
    // 20 yd3 and 5% on it: 21 yd3, two full trucks and 3 yd3.
    const trucked = jobHtml('Yard', reckonJob({ version: 1, order, elements }), 'yard');
    expect(trucked.replace(/<[^>]+>/g, '')).toContain('2 × 9.00 yd3 + 3.00 yd3');
    const bagged = jobHtml('Yard', reckonJob({ version: 1, bags: { bag: '80 lb' }, elements }), 'yard');
    expect(bagged).toContain('945');
    expect(bagged).not.toContain('yd3');
  });

  it('name the mix whose order a caution speaks of', () => {
    const pad = (name: string, length: string, allowance: string) => ({
      name,
      outline: { shape: 'rectangle', length, width: '18 ft' } as const,
      thickness: '5 in',
      mix: `mix of the ${name}`,
      slab: true,
      allowance,
    });
    const job = reckonJob({
      version: 1,
      shared: { pour: 'slab' },
      order: { increment: '0.25 yd3', truckCapacity: '9 yd3', minimumLoad: '3 yd3' },
      mixes: [{ name: 'mix of the drive' }, { name: 'mix of the pad' }],
      elements: [pad('drive', '30 ft', '2%'), pad('pad', '4 ft', '12%')],
    });
    const said = jobHtml('Rear yard', job, 'crew').replace(/<[^>]*>/g, '');
    expect(said).toContain('Warning, mix of the drive 2% is little');
    expect(said).toContain('Note, mix of the pad a load is below the least');
  });
});

/** With `SCREENSHOTS=<folder>` every page is kept as a picture, to be looked at. */
async function kept(tab: Page, name: string): Promise<void> {
  const folder = process.env['SCREENSHOTS'];
  if (!folder) return;
  mkdirSync(folder, { recursive: true });
  await tab.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
}

/** Lines of text that lie over each other, and how many lines there are; runs in the page. */
function overlapsSeen(): { lines: number; pairs: string[] } {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const seen: { text: string; box: DOMRect }[] = [];
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of Array.from(range.getClientRects())) seen.push({ text: node.textContent ?? '', box });
  }
  const sorted = seen.filter(({ box }) => box.width > 0).sort((a, b) => a.box.top - b.box.top);
  const pairs = sorted.flatMap((a, i) =>
    sorted
      .slice(i + 1)
      .filter(({ box }) => {
        const down = Math.min(a.box.bottom, box.bottom) - Math.max(a.box.top, box.top);
        const across = Math.min(a.box.right, box.right) - Math.max(a.box.left, box.left);
        // Boxes of lines are higher than what is written in them.
        return across > 1 && down > Math.min(a.box.height, box.height) * 0.3;
      })
      .map(({ text }) => `${a.text} / ${text}`),
  );
  return { lines: sorted.length, pairs };
}

describe.skipIf(NO_BROWSER)('pages of a job in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startBrowser();
  }, START);
  afterAll(() => browser.close());

  it.each(ALL)(
    '%s: no error, no request, no fault of access, nothing beside the screen of a phone',
    async (page) => {
      for (const width of [390, 816]) {
        const tab = await browser.newPage({ viewport: { width, height: 844 } });
        const wrong: string[] = [];
        tab.on('console', (message) => wrong.push(message.text()));
        tab.on('pageerror', (error) => wrong.push(error.message));
        tab.on('request', (request) => {
          if (!/^data:/.test(request.url()) && request.url() !== 'about:blank') wrong.push(request.url());
        });
        await tab.setContent(htmlOf(page, { pictures }));
        await kept(tab, `${page}-${width}`);
        expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        const pictured = await tab.evaluate(() => document.images[0]?.naturalWidth ?? 0);
        if (page !== 'check') expect(pictured).toBeGreaterThan(0);
        const overlapping = await tab.evaluate(overlapsSeen);
        expect(overlapping.lines).toBeGreaterThan(10);
        expect(overlapping.pairs).toEqual([]);
        expect(wrong).toEqual([]);
        await tab.evaluate(axe.source);
        const found = await tab.evaluate(async () => {
          const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
          return violations.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0]?.html}`);
        });
        expect(found.filter((text) => /^(serious|critical)/.test(text))).toEqual([]);
        await tab.close();
      }
    },
    START,
  );

  it(
    'shows on a phone the plan that was drawn for one: whole, no text below 9 pixels, none over another',
    async () => {
      const tab = await browser.newPage({ viewport: { width: 390, height: 844 } });
      const [wide, narrow] = [sitePlan(job, { width: 660 }), sitePlan(job, { width: 358 })];
      const picture = { title: 'The yard', svg: wide, phone: narrow };
      await tab.setContent(jobHtml('Rear yard', job, 'crew', { pictures: [picture] }));
      const shown = await tab.evaluate(() => {
        const image = document.images[0];
        return { source: image?.currentSrc ?? '', width: image?.getBoundingClientRect().width ?? 0 };
      });
      expect(decodeURIComponent(shown.source.slice(shown.source.indexOf(',') + 1))).toBe(narrow);
      expect(shown.width).toBeLessThanOrEqual(358);
      // The same drawing at the width at which it is shown, with its texts laid open.
      await tab.setContent(`<body style="margin:0"><div style="width:${shown.width}px">${narrow}</div>`);
      const heights = await tab.evaluate(() =>
        Array.from(document.querySelectorAll('text'), (text) => text.getBoundingClientRect().height),
      );
      expect(heights.length).toBeGreaterThan(4);
      expect(Math.min(...heights)).toBeGreaterThanOrEqual(9);
      expect((await tab.evaluate(overlapsSeen)).pairs).toEqual([]);
      await tab.setViewportSize({ width: 816, height: 900 });
      await tab.setContent(jobHtml('Rear yard', job, 'crew', { pictures: [picture] }));
      const source = await tab.evaluate(() => document.images[0]?.currentSrc ?? '');
      expect(decodeURIComponent(source.slice(source.indexOf(',') + 1))).toBe(wide);
      await tab.close();
    },
    START,
  );

  it.each([
    ['letter', 'crew', 4],
    ['a4', 'crew', 4],
    ['letter', 'yard', 1],
    ['a4', 'yard', 1],
    ['letter', 'customer', 3],
    ['a4', 'customer', 3],
    ['letter', 'check', 1],
    ['a4', 'check', 1],
  ] as const)(
    '%s paper: the page for the %s prints on %i at most',
    async (paper, page, most) => {
      const tab = await browser.newPage();
      await tab.setContent(htmlOf(page, { paper, pictures }));
      const pdf = (await tab.pdf({ preferCSSPageSize: true })).toString('latin1');
      const [, width] = /\/MediaBox \[0 0 ([\d.]+)/.exec(pdf) ?? [];
      expect(Math.round(Number(width))).toBe(paper === 'letter' ? 612 : 595);
      const printed = pdf.match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;
      expect(printed).toBeGreaterThan(0);
      expect(printed).toBeLessThanOrEqual(most);
      await tab.close();
    },
    START,
  );
});
