/** A customer's quote: nothing of what the work costs, every price to the cent, and what a customer must know. */
import { describe, expect, it } from 'vitest';
import { bidOfJob, jobBid } from '../../src/index';
import type { JobBidInput } from '../../src/job/bid-input';
import type { JobInput } from '../../src/job/document';
import type { JobBidFigures } from '../../src/job/job-bid';
import { reckonJob } from '../../src/job/job-takeoff';
import { pricedPurchases } from '../../src/job/priced';
import { spanish } from '../../src/language/spanish/index';
import { InputError } from '../../src/quantity/input-error';
import { isQuantity } from '../../src/quantity/quantity';
import { type Quote, quoteCsv, quoteHtml, quoteMarkdown, quoteText } from '../../src/report/index';
import { randoms } from '../steel/outlines';
import { runs } from '../support/effort';

const yard: JobInput = {
  version: 1,
  shared: { allowance: '8%', base: { depth: '4 in', compactedDensity: '135 pcf' } },
  order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
  elements: [
    {
      name: 'delivery slab',
      outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
      at: { x: '0 ft', y: '0 ft' },
      thickness: '6 in',
      slab: true,
      base: true,
      fall: { atBuilding: `100' 0"`, away: `99' 7"`, distance: "18'" },
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
};
const job = reckonJob(yard);
const { lines: bought } = pricedPurchases(job, [
  { item: 'ready-mix', price: { amount: '168 USD', per: '1 yd3' } },
  { item: 'base', price: { amount: '31 USD', per: '1 ton' } },
]);

const bidOf = (more: Partial<JobBidInput> = {}) =>
  jobBid({
    lines: [
      ...bought,
      {
        kind: 'labor',
        name: 'place and finish the bin pad',
        hours: '6 h',
        wage: { amount: '38 USD', per: '1 h' },
      },
      { kind: 'labor', name: 'place and finish', hours: '26 h', wage: { amount: '38 USD', per: '1 h' } },
      { kind: 'material', name: 'dye', option: 'Colored', amount: '300 USD' },
    ],
    contingency: { share: '5%' },
    overhead: { markup: '12%' },
    profit: { margin: '15%' },
    ...more,
  });

const every = (quote: Quote): string[] => [
  quoteHtml('Rear yard', quote),
  quoteText('Rear yard', quote),
  quoteMarkdown('Rear yard', quote),
  quoteCsv(quote),
];

/** Words that no customer is to read. */
const TELLTALE =
  /\b(?:costs?|markup|margin|contingency|overhead|profit|break-even|wages?|hours|discount|allowance)\b/i;

function randomBid(random: () => number) {
  const amount = (most: number): string => `${(1 + random() * most).toFixed(2)} USD`;
  const share = (most: number): string => `${(1 + random() * most).toFixed(3)}%`;
  const either = <T>(one: T, other: T): T => (random() < 0.5 ? one : other);
  return jobBid({
    lines: [
      { kind: 'material', name: 'concrete', amount: amount(5000) },
      { kind: 'labor', name: 'crew', hours: '31.7 h', wage: { amount: amount(40), per: '1 h' } },
      { kind: 'equipment', name: 'saw', amount: '120.30 USD', low: '0.10 USD', high: '9999.17 USD' },
      { kind: 'material', name: 'dye', option: 'Colored', amount: amount(400) },
    ],
    contingency: { share: share(9) },
    overhead: either({ markup: share(20) }, { margin: share(20) }),
    profit: either({ markup: share(30) }, { margin: share(30) }),
    tax: either<JobBidInput['tax']>(
      { kind: 'on-price', rate: '8.875%' },
      { kind: 'on-purchases', rate: '6%', on: ['material'] },
    ),
  } as JobBidInput);
}

/** Every amount and share of a bid but those that a customer is to see. */
function secretsOf({ total, price, priceTax, roundedTo, options, ...rest }: JobBidFigures): string[] {
  const found: string[] = [];
  const gather = (value: unknown): void => {
    if (isQuantity(value)) found.push(value.format().replace(/ (?:USD|h)$/, ''));
    else if (typeof value === 'object' && value !== null)
      for (const part of Object.values(value)) gather(part);
  };
  gather(rest);
  gather(options?.map(({ cost }) => cost));
  // The likely total of the range is the total.
  return found.filter((one) => one !== total.format().replace(' USD', ''));
}

/** The column of a table in a quote as comma-separated values, without its head. */
const column = (csv: string, table: RegExp, at: number): number[] =>
  csv
    .split('\r\n')
    .filter((line) => table.test(line))
    .slice(1)
    .map((line) => Math.round(Number(line.split(',').at(at)) * 100));

describe('a quote', () => {
  it('tells nothing of what the work costs, whatever the bid', () => {
    const random = randoms(14_2026);
    for (let i = 0; i < runs(30); i += 1) {
      const bid = randomBid(random);
      const secret = secretsOf(bid.figures);
      for (const text of (['total', 'lines'] as const).flatMap((prices) => every({ bid, prices }))) {
        const read = text.replace(/<style>[\s\S]*<\/style>/, '');
        const shown = new Set(read.match(/\d[\d,]*(?:\.\d+)?%?/g)?.map((found) => found.replaceAll(',', '')));
        expect(secret.filter((one) => shown.has(one))).toEqual([]);
        expect(read).not.toMatch(TELLTALE);
      }
    }
  });

  it.each(['lines', 'elements', [{ name: 'all', lines: ['place and finish'] }]] as const)(
    'shows prices by %s that sum to the total, with the tax on each',
    (prices) => {
      for (const rate of ['7%', '6.85%', '8.875%']) {
        const bid = bidOf({ tax: { kind: 'on-price', rate } });
        const csv = quoteCsv({ bid, job, prices });
        for (const [at, whole] of [
          [-3, bid.figures.price],
          [-2, bid.figures.priceTax],
          [-1, bid.figures.total],
        ] as const) {
          const all = column(csv, /^"?Prices/, at);
          const sum = all.pop();
          expect(all.reduce((a, b) => a + b, 0)).toBe(sum);
          expect(sum).toBe(Math.round(Number(whole?.format().replace(' USD', '')) * 100));
        }
      }
    },
  );

  it('gives a line that names an element to that element, and the rest to all', () => {
    const csv = quoteCsv({ bid: bidOf(), job, prices: 'elements' });
    const bid = bidOf().figures;
    const gravel = (name: string): number =>
      Number(
        job.takeoff.figures.purchases
          .find(({ item }) => item === 'base')
          ?.by.find(({ element }) => element === name)
          ?.quantity.toNumber('ton' as never),
      );
    const concrete = (name: string): number =>
      Number(job.takeoff.figures.elements.find((one) => one.name === name)?.concrete?.toNumber('yd3'));
    const costs = ['delivery slab', 'bin pad'].map((name) => {
      const amountOf = (item: string): number =>
        Number(
          bid.lines
            .find((line) => line.name.startsWith(item))
            ?.amount.format()
            .replace(' USD', ''),
        );
      const part = (of: (name: string) => number): number => of(name) / (of('delivery slab') + of('bin pad'));
      return (
        amountOf('ready-mixed concrete') * part(concrete) +
        amountOf('gravel') * part(gravel) +
        (name === 'bin pad' ? 6 * 38 : 0)
      );
    });
    const price = Number(bid.price.format().replace(' USD', ''));
    const sum = costs.reduce((a, b) => a + b, 0);
    const shown = column(csv, /^"?Prices/, -1).slice(0, 2);
    for (const [i, cost] of costs.entries())
      expect(Math.abs((shown[i] ?? 0) / 100 - (price * cost) / sum)).toBeLessThan(0.011);
  });

  it('shares payments out to the cent, with what is kept back of each', () => {
    const bid = bidOf();
    const payments = [
      { when: 'on signing', share: '33.3%' },
      { when: 'on the day', share: '33.3%' },
    ];
    const quote = { bid, payments, retainage: '7.5%' };
    const csv = quoteCsv(quote);
    const asked = column(csv, /^"?Payments/, -3);
    const due = column(csv, /^"?Payments/, -1);
    const total = Math.round(Number(bid.figures.total.format().replace(' USD', '')) * 100);
    expect(asked.reduce((a, b) => a + b, 0)).toBe(total);
    expect(due.reduce((a, b) => a + b, 0)).toBe(total);
    expect(csv).toContain('The rest, when the work is done');
    const tooMuch = {
      bid,
      payments: [
        { when: 'now', share: '80%' },
        { when: 'later', amount: '5000 USD' },
      ],
    };
    expect(() => quoteText('Rear yard', tooMuch)).toThrow(/more than the price/);
    const twice = { bid, payments: [{ when: 'now' }, { when: 'later' }] };
    expect(() => quoteText('Rear yard', twice)).toThrow(InputError);
    const other = { bid, payments: [{ when: 'now', amount: '50 EUR' }] };
    expect(() => quoteText('Rear yard', other)).toThrow(InputError);
    const both = { bid, payments: [{ when: 'now', amount: '50 USD', share: '5%' }] };
    expect(() => quoteText('Rear yard', both)).toThrow(InputError);
  });

  it('names work that is not known, and nothing that only the contractor reckons by', () => {
    const outline = { shape: 'rectangle', length: '20 ft', width: '10 ft' };
    const unknown = reckonJob({
      version: 1,
      elements: [
        { name: 'walk', outline, thickness: '4 in', slab: true, base: { depth: '4 in' }, spacing: true },
      ],
      days: [
        { name: 'Friday', elements: ['walk'], startAt: '7:30', limits: true, evaporation: true, plan: true },
      ],
    } as never);
    expect(new Set(unknown.takeoff.figures.missing.map(({ part }) => part))).toEqual(
      new Set(['base', 'spacing', 'limits', 'evaporation', 'plan']),
    );
    const bid = jobBid({ lines: [{ kind: 'subcontract', name: 'walk', amount: '1000 USD' }] });
    const text = quoteText('Rear yard', { bid, job: unknown }).replace(/\s+/g, ' ');
    expect(text.match(/[^-]*since not all is known of it yet/g)).toEqual([expect.stringContaining('walk: ')]);
  });

  it('says what is not priced and not known, what lies over each other, and what is left out on purpose', () => {
    const bid = jobBid({
      lines: [
        { kind: 'material', name: 'concrete', amount: '1000 USD' },
        { kind: 'material', name: 'trench drain', quantity: '12 ft' },
      ],
    });
    const text = quoteText('Rear yard', { bid, job }).replace(/\s+/g, ' ');
    expect(text).toContain('trench drain, for which there is no price yet');
    expect(text).toContain('ramp: slab, since not all is known of it yet');
    expect(text).toContain('delivery slab and bin pad share');
    expect(text).toContain('Digging out, and taking earth or old concrete away');
    expect(text).not.toContain('Handrails');
    expect(text).toContain('close enough to pour from its chute');
    expect(quoteText('Rear yard', { bid, job, without: ['access', 'rails'] })).not.toContain(
      'pour from its chute',
    );
    expect(quoteText('Rear yard', { bid })).toContain('Handrails and guards');
  });

  it('says at the work itself what of it has no price yet', () => {
    const pad = {
      outline: { shape: 'rectangle', length: '12 ft', width: '8 ft' },
      thickness: '4 in',
    } as const;
    const { bid, job: priced } = bidOfJob({
      version: 1,
      elements: [
        { name: 'pad', ...pad, slab: true, bars: { bar: '#4', spacing: '18 in', cover: '2 in' } },
        { name: 'walk', ...pad, slab: true },
      ],
      prices: {
        items: [
          { item: 'ready-mix', price: { amount: '168 USD', per: '1 yd3' } },
          { item: 'concrete', price: { amount: '168 USD', per: '1 yd3' } },
          { item: 'bar', price: { amount: '11.40 USD', per: '1 each' } },
        ],
      },
    });
    const text = quoteText('Pads', { bid, job: priced }).replace(/\s+/g, ' ');
    expect(text).toContain(
      'Reinforce it with steel bars #4, 18 in apart (not in the price yet: bar ties; chairs or blocks)',
    );
    expect(text).toContain('bar ties, for which there is no price yet');
    expect(text.split('not in the price yet').length).toBe(2);
  });

  it.each([
    [{ kind: 'line-pump', rate: '20 yd3/h' }, 'its pump, within reach'],
    [{ kind: 'wheelbarrow', carriers: 3, load: '3 ft3', distance: '60 ft' }, 'way to wheel the concrete in'],
    [{ kind: 'chute' }, 'pour from its chute'],
  ] as const)('counts on what the concrete is placed by', (placing, said) => {
    const trucks = { placing, travelTime: '20 min' } as const;
    const text = quoteText('Rear yard', { bid: bidOf(), job: reckonJob({ ...yard, trucks }) });
    expect(text.replace(/\s+/g, ' ')).toContain(said);
    expect(text.includes('pour from its chute')).toBe(placing.kind === 'chute');
  });

  it('asks for no truck where the concrete is mixed from bags, and names what is supplied besides', () => {
    const { order: _, ...unordered } = yard;
    const elements = yard.elements.slice(1, 2).map((element) => ({
      ...element,
      also: [
        { name: 'anchor bolts', quantity: '4 each' },
        { name: 'drain', quantity: '1 each' },
      ],
    }));
    const items = [
      { item: 'other', of: { name: 'anchor bolts' }, price: { amount: '4 USD', per: '1 each' } },
    ] as const;
    const bagged: JobInput = { ...unordered, bags: { bag: '80 lb' }, elements, prices: { items } };
    const text = quoteText('Rear yard', { bid: bidOfJob(bagged).bid, job: reckonJob(bagged) });
    expect(text).not.toContain('truck can');
    expect(text.replace(/\s+/g, ' ')).toContain('Bags can be brought near');
    expect(text).toContain('Supply anchor bolts');
    expect(text).not.toContain('Supply drain');
    expect(text).toContain('drain, for which there is no price yet');
  });

  it('says what will be done, in the units of the job', () => {
    const text = quoteText('Rear yard', { bid: bidOf(), job, work: ['Wash down the wall'] });
    expect(text).toContain('Pour a slab of 28 ft by 18 ft, 504 ft², 6 in thick');
    expect(text).toContain('runs away from the building: it falls 5 in in all');
    expect(text).toContain('Wash down the wall');
    const metric = quoteText('Hof', { bid: bidOf(), job }, { system: 'metric' });
    expect(metric).not.toMatch(/\d (?:ft|in|yd³|°F)\b/);
    const slab = {
      name: 'pad',
      outline: { shape: 'circle', diameter: '3 m' },
      thickness: '100 mm',
      slab: true,
    };
    const own = quoteText('Hof', {
      bid: bidOf(),
      job: reckonJob({ version: 1, elements: [slab] } as JobInput),
    });
    expect(own).toContain('10 °C');
    expect(own).not.toMatch(/\d (?:ft|in|yd³|°F)\b/);
  });

  it('has the marks of numbers and the signs of units of the language that it is in', () => {
    const bid = jobBid({ lines: [{ kind: 'labor', name: 'all', amount: '14368.62 USD' }] });
    const page = (view: object): string => quoteHtml('Yard', { bid, job }, view).replace(/<[^>]+>/g, '');
    for (const view of [{}, { lang: 'en' }, { language: spanish, lang: 'es-US' }]) {
      expect(page(view)).toContain('14,368.62');
      expect(page(view)).toContain('50 °F');
    }
    expect(page({ lang: 'de-DE' })).toContain('14.368,62');
    expect(page({ lang: 'es-US', locale: 'de-DE' })).toContain('14.368,62');
    expect(page({ lang: 'no tag' })).toContain('14,368.62');
  });

  it('does not promise a fall that does not drain', () => {
    const [slab] = yard.elements;
    const flat = { ...slab, fall: { atBuilding: `100' 0"`, away: `99' 11"`, distance: "18'" } };
    const text = quoteText('Yard', {
      bid: bidOf(),
      job: reckonJob({ ...yard, elements: [flat] } as JobInput),
    });
    expect(text).not.toContain('Slope it');
  });

  it('keeps hostile words to their own text, and refuses what is none', () => {
    const bid = bidOf();
    const bad = `<script>alert(1)</script>"><img src=x onerror=alert(1)>\u202E`;
    const quote = {
      bid,
      from: [bad],
      to: [bad],
      site: bad,
      stands: bad,
      work: [bad],
      excluded: [bad],
      assumed: [bad],
    };
    const html = quoteHtml(bad, quote, { job: bad, date: bad });
    expect(html).not.toMatch(/<script|<img src=x/i);
    expect(html).not.toContain('\u202E');
    expect(quoteMarkdown(bad, quote)).not.toContain('<script');
    for (const wrong of [
      { from: 7 },
      { prices: 'cheap' },
      { work: ['x'.repeat(301)] },
      { without: ['all'] },
      { x: 1 },
    ])
      expect(() => quoteText('Yard', { bid, ...wrong } as unknown as Quote)).toThrow(InputError);
    expect(() => quoteText('Yard', { bid: job.takeoff } as unknown as Quote)).toThrow(InputError);
    expect(() => quoteText('Yard', { bid: null } as unknown as Quote)).toThrow(InputError);
    expect(() => quoteText('Yard', { bid, prices: [{ name: 'a', lines: ['nothing'] }] })).toThrow(/nothing/);
  });

  it('is the same of a bid that comes from a file', () => {
    const bid = bidOf();
    const stored = JSON.parse(JSON.stringify(bid));
    expect(quoteText('Yard', { bid: stored, job })).toBe(quoteText('Yard', { bid, job }));
  });

  it('shows changes and what is due as an account', () => {
    const bid = bidOf({
      changes: [{ name: 'a wider ramp', amount: '250 USD' }],
      retainage: '10%',
      progress: { complete: '50%', paid: '500 USD' },
    });
    const { contract, payment } = bid.figures;
    const text = quoteText('Yard', { bid }, { locale: 'en-US' }).replaceAll(',', '');
    expect(text).toContain(`Contract with its changes  ${contract?.format()}`);
    expect(text).toContain(`Due now                    ${payment?.due.format()}`);
  });
});

describe('what of the work has no price yet', () => {
  const { bid, job: reckoned } = bidOfJob({
    version: 1,
    elements: [
      {
        name: 'floor',
        outline: { shape: 'rectangle', length: '24 ft', width: '20 ft' },
        thickness: '5 in',
        slab: true,
        spacing: { aggregateSize: '3/4 in', slump: '4 in' },
        joints: { sealant: { width: '1/4 in', depth: '1/4 in' } },
        finish: {
          allowance: '0%',
          liquids: [{ kind: 'curing-compound', covers: '200 ft2', measure: '1 gal', container: '5 gal' }],
        },
      },
      {
        name: 'pad',
        outline: { shape: 'rectangle', length: '9 ft', width: '8 ft' },
        thickness: '5 in',
        excavation: { depth: '5 in' },
        slab: true,
        spacing: { aggregateSize: '3/4 in', slump: '4 in' },
        joints: {
          isolation: [{ against: 'wall', from: { x: '0 ft', y: '0 ft' }, to: { x: '9 ft', y: '0 ft' } }],
        },
      },
    ],
    prices: { items: [{ item: 'concrete', price: { amount: '300 USD', per: '1 yd3' } }] },
  });
  const text = quoteText('Barn', { bid, job: reckoned }).replace(/\s+/g, ' ');

  it('is told at the work that takes it, and at the element that does', () => {
    expect(text).toContain('(not in the price yet: joints to saw, 1-1/4 in; sealant)');
    expect(text).toContain('(not in the price yet: liquid, curing compound, 5 gal)');
    expect(text).toContain('(not in the price yet: isolation board, 1/2 in, 5 in)');
    expect(text.match(/not in the price yet/g)).toHaveLength(4);
  });

  it('tells a customer of earth, and not in which measure it is counted', () => {
    expect(text).toContain('(not in the price yet: earth to haul away)');
    expect(text).toContain('- earth to haul away, for which there is no price yet');
  });
});
