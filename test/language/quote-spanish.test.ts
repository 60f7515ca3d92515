/** Nothing on a customer's quote in Spanish is left in English but the names that somebody gave. */
import { describe, expect, it } from 'vitest';
import { bidOfJob, type JobInput, jobBid } from '../../src/job/index';
import { spanish } from '../../src/language/spanish/index';
import {
  type Language,
  type Quote,
  quoteCsv,
  quoteHtml,
  quoteMarkdown,
  quoteText,
} from '../../src/report/index';

/** Every part that a quote tells of, on elements that overlap, of several alike, and partly known. */
const yard = (metric: boolean): JobInput => {
  const l = (feet: number): string => (metric ? `${feet * 0.3} m` : `${feet} ft`);
  const s = (inches: number): string => (metric ? `${inches * 25} mm` : `${inches} in`);
  const outline = { shape: 'rectangle', length: l(28), width: l(18) };
  const density = metric ? '2200 kg/m3' : '135 pcf';
  return {
    version: 1,
    shared: { allowance: '8%', base: { depth: s(4), compactedDensity: density } },
    order: { increment: metric ? '0.5 m3' : '0.25 yd3', truckCapacity: metric ? '7 m3' : '9 yd3' },
    elements: [
      {
        name: 'a',
        outline,
        at: { x: l(0), y: l(0) },
        thickness: s(6),
        excavation: { depth: s(10), swell: '25%', haul: { truckVolume: metric ? '8 m3' : '10 yd3' } },
        base: true,
        retarder: { rollWidth: l(20), rollLength: l(100), lap: s(6) },
        slab: true,
        bars: { bar: metric ? '12 mm' : '#4', spacing: s(18), cover: s(3) },
        dowels: { joint: l(18), placing: 'drilled' },
        fall: { atBuilding: l(100), away: l(99.5), distance: l(18) },
        joints: {
          spacing: l(12),
          isolation: [{ against: 'building', from: { x: l(0), y: l(0) }, to: { x: l(28), y: l(0) } }],
        },
        finish: {
          allowance: '10%',
          liquids: [
            {
              kind: 'sealer',
              covers: metric ? '8 m2' : '200 ft2',
              measure: metric ? '1 L' : '1 gal',
              coats: 1,
            },
          ],
        },
        backfill: {
          gap: { length: l(60), width: s(6), depth: s(6), looser: '20%' },
          topsoil: { area: metric ? '10 m2' : '100 ft2', depth: s(4), settles: '15%' },
          seed: {
            area: metric ? '10 m2' : '100 ft2',
            rate: metric ? '0.03 kg/m2' : '0.005 lb/ft2',
            purity: '96%',
            germination: '88%',
          },
        },
      },
      {
        name: 'b',
        count: 2,
        outline: { shape: 'circle', diameter: l(9) },
        at: { x: l(26), y: l(10) },
        thickness: s(4),
        slab: true,
        mesh: { form: 'sheets', pieceLength: l(10), pieceWidth: l(5) },
        fibers: { dosage: metric ? '0.9 kg/m3' : '1.5 lb/yd3' },
      },
      { name: 'c', steps: { risers: 2, rise: s(7), tread: s(11), width: l(5), landingDepth: l(4) } },
      { name: 'd', walls: { walls: [{ kind: 'straight', length: l(20), height: l(3), thickness: s(8) }] } },
      { name: 'e', piers: { piers: [{ kind: 'round', diameter: s(12), height: l(4), count: 3 }] } },
      { name: 'f', footings: { footings: [{ kind: 'strip', length: l(30), width: s(16), depth: s(8) }] } },
      { name: 'g', outline: { shape: 'rectangle', length: l(14), width: l(4) }, slab: true },
    ],
    prices: {
      items: [
        { item: 'ready-mix', price: { amount: '168 USD', per: metric ? '1 m3' : '1 yd3' } },
        { item: 'bar', price: { amount: '11 USD', per: '1 each' } },
      ],
      lines: [
        { kind: 'labor', name: '§', hours: '26 h', wage: { amount: '38 USD', per: '1 h' } },
        { kind: 'material', name: '§§', option: '§o', amount: '300 USD' },
        { kind: 'material', name: '§§§', option: '§p', amount: '200 USD' },
      ],
      options: [{ name: '§q', replaces: ['§'] }],
      profit: { markup: '20%' },
    },
  } as unknown as JobInput;
};

const TAXES = [
  undefined,
  { kind: 'on-price', rate: '7%' },
  { kind: 'on-purchases', rate: '7%', on: ['material'] },
] as const;

const TERMS: readonly Partial<Quote>[] = [
  { prices: 'elements', stands: '30 §', from: ['§'], to: ['§'], site: '§', number: '7' },
  { prices: 'lines', payments: [{ when: '§', share: '20%' }], retainage: '5%' },
  { prices: 'total', retainage: '5%' },
  { payments: [{ when: '§', share: '20%' }, { when: '§' }] },
];

function* quotes(): Generator<Quote> {
  for (const metric of [false, true]) {
    const document = yard(metric);
    for (const tax of TAXES) {
      const prices = { ...document.prices, ...(tax ? { tax } : {}) };
      const { bid, job } = bidOfJob({ ...document, prices } as JobInput);
      for (const terms of TERMS) yield { ...terms, bid, job };
      yield { ...TERMS[0], bid };
    }
  }
  const change = {
    name: '§',
    planned: '20 yd3',
    measured: '22.4 yd3',
    price: { amount: '190 USD', per: '1 yd3' },
  };
  const base = { lines: [{ kind: 'subcontract', name: '§', amount: '9500 USD' }] } as const;
  const later = {
    ...base,
    changes: [change],
    retainage: '10%',
    progress: { complete: '60%', paid: '2000 USD' },
  } as const;
  yield { bid: jobBid(base) };
  yield { bid: jobBid(later) };
  const bare = yard(false);
  const [, second] = bare.elements;
  const { bid, job } = bidOfJob({
    ...bare,
    elements: [
      { ...second, backfill: { gap: { length: '9 ft', width: '6 in', depth: '6 in', looser: '20%' } } },
    ],
  } as never);
  yield { bid, job };
}

/** Spanish that notes what it lacks. */
const noting = (lacking: Set<string>): Language =>
  new Proxy(spanish as Record<string, string>, {
    getOwnPropertyDescriptor: (target, key) => {
      const own = String(key).replace(/\{\w+\}/g, '');
      if (!Object.hasOwn(target, key) && /[A-Za-z]{2}/.test(own)) lacking.add(String(key));
      return Reflect.getOwnPropertyDescriptor(target, key);
    },
  });

/** Names of units, bars and currencies, which are the same in all languages. */
const NAMES = /^(?:§*\w?|USD|#\d|[\d.]+ (?:mm|m|in|ft))$/;

describe('a quote in Spanish', () => {
  const all = [...quotes()];

  it('has every text that a quote asks for', () => {
    const lacking = new Set<string>();
    const view = { language: noting(lacking), lang: 'es-US', locale: 'es-US' } as const;
    for (const quote of all) quoteHtml('§', quote, view);
    expect([...lacking].filter((text) => !NAMES.test(text))).toEqual([]);
  });

  it('shows no English word in any of its forms', () => {
    const english =
      /\b(?:the|of|and|is|are|for|with|that|this|or|be|from|not|more|than|less|which|where|each|it|by|only|if|then|what|who|price|when|pay|work|name|date|sign|gravel|bars?|concrete|joints?|slab|thick)\b/i;
    for (const quote of all) {
      const view = { language: spanish, lang: 'es-US' } as const;
      const html = quoteHtml('§', quote, view).replace(/<style>[\s\S]*<\/style>|<[^>]*>/g, ' | ');
      for (const text of [
        html,
        quoteText('§', quote, view),
        quoteMarkdown('§', quote, view),
        quoteCsv(quote, view),
      ])
        expect(text.split(/[|\n]/).filter((line) => english.test(line))).toEqual([]);
    }
  });

  it('is in English as it was without a language', () => {
    expect(quoteText('§', all[0] as Quote)).toMatch(/PRICE|Price/);
  });
});
