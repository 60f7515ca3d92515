/** A job that carries its prices: bid by one call, and handed on without them. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  bidOfJob,
  compareJobs,
  type JobInput,
  jobBid,
  jobTakeoff,
  pricedPurchases,
  reckonJob,
  withoutPrices,
} from '../../src/job/index';
import { InputError } from '../../src/quantity/input-error';
import { jobHtml, quoteText } from '../../src/report/index';

const prices = {
  items: [
    { item: 'ready-mix', price: { amount: '165 USD', per: '1 yd3' } },
    {
      item: 'bar',
      of: { bar: '#4' },
      name: 'number four bars',
      price: { amount: '11.40 USD', per: '1 each' },
      taxable: false,
    },
    { item: 'bar', price: { amount: '19 USD', per: '1 each' } },
  ],
  lines: [
    {
      kind: 'labor',
      name: 'place and finish',
      hours: '26 h',
      crew: [{ count: 4, wage: { amount: '34 USD', per: '1 h' } }],
    },
    {
      kind: 'short-load',
      name: 'small load',
      minimumLoad: '3 yd3',
      price: { amount: '40 USD', per: '1 yd3' },
    },
  ],
  profit: { markup: '20%' },
} as const;

const yard = {
  version: 1,
  shared: { allowance: '5%' },
  order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
  elements: [
    {
      name: 'pad',
      outline: { shape: 'rectangle', length: '27 ft', width: '15 ft' },
      thickness: '6 in',
      slab: true,
      base: { depth: '4 in', compactedDensity: '120 lb/ft3' },
      bars: { bar: '#4', spacing: '18 in', cover: '3 in' },
    },
  ],
} as const satisfies JobInput;

const priced = { ...yard, prices } as unknown as JobInput;

const faultsOf = (job: unknown): string[] => {
  try {
    bidOfJob(job as JobInput);
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map(({ code, path }) => `${code} ${path}`);
  }
};

const withPrices = (more: object): unknown => ({ ...yard, prices: { ...prices, ...more } });

describe('a job that carries its prices', () => {
  it('is bid by one call, small loads by its own orders', () => {
    // 27 × 15 × 0.5 ft = 7.5 yd3, 7.875 with 5 %, ordered 8.00 in one load; no load is short of 3.
    const { bid, unpriced, input } = bidOfJob(priced);
    const amounts = Object.fromEntries(bid.figures.lines.map(({ name, amount }) => [name, amount.format()]));
    expect(amounts['ready-mixed concrete']).toBe('1320.00 USD');
    expect(amounts['place and finish']).toBe('3536.00 USD');
    expect(amounts['small load']).toBe('0.00 USD');
    expect(unpriced.map(({ item }) => item)).toEqual(['base', 'tie', 'bar-support']);
    expect(jobBid(input, { system: 'customary' }).figures).toEqual(bid.figures);
  });

  it('charges for what the last load lacks', () => {
    const longer = { ...yard.elements[0], outline: { shape: 'rectangle', length: '36 ft', width: '15 ft' } };
    // 10 yd3, 10.5 with 5 %: 9 and 1.5, which lacks 1.5 yd3 at 40 USD.
    const { bid } = bidOfJob({ ...priced, elements: [longer] } as JobInput);
    expect(bid.figures.lines.find(({ name }) => name === 'small load')?.amount.format()).toBe('60.00 USD');
  });

  it('says in the bid and in the quote what has no price', () => {
    const { bid, job } = bidOfJob(priced);
    expect(
      bid.cautions.filter(({ code }) => code === 'no-price').map(({ params }) => params?.['name']),
    ).toEqual(['gravel', 'bar ties', 'chairs or blocks']);
    expect(quoteText('Yard', { bid, job })).toContain('gravel, for which there is no price yet');
  });

  it('takes the price that says most of the size, by its own name', () => {
    const { bid } = bidOfJob(priced);
    const bars = bid.figures.lines.find(({ name }) => name === 'number four bars');
    // 15 bars lengthwise of 26 ft 6 in in two pieces each and 19 across of 14 ft 6 in: 20 ft stock at 11.40.
    expect(Number(bars?.amount.value) / 11.4).toBe(Number(bars?.quantity?.value));
  });

  it('has the take-off, the cautions and the system of the same job without them', () => {
    const metric = {
      ...prices,
      items: [{ item: 'base', price: { amount: '31 EUR', per: '1 tonne' } }],
      lines: [],
      area: '40 m2',
      profit: { markup: '900%' },
    };
    const odd = { ...yard, prices: metric } as unknown as JobInput;
    expect(jobTakeoff(odd)).toEqual(jobTakeoff(yard));
    expect(jobTakeoff(odd)).toEqual(jobTakeoff(withoutPrices(odd)));
  });

  it.each([
    ['missing prices', yard],
    ['unknown-choice prices.items[0].item', withPrices({ items: [{ ...prices.items[0], item: 'cement' }] })],
    ['unknown-key prices.profits', withPrices({ profits: {} })],
    ['repeated-name prices.items[1]', withPrices({ items: [prices.items[0], prices.items[0]] })],
    [
      'wrong-dimension prices.items[0].price.per',
      withPrices({ items: [{ item: 'ready-mix', price: { amount: '165 USD', per: '1 ton' } }] }),
    ],
    [
      'currency-mismatch prices.lines[0].amount',
      withPrices({ lines: [{ kind: 'fee', name: 'permit', amount: '90 CAD' }] }),
    ],
    ['outside-range prices.profit.margin', withPrices({ profit: { margin: '100%' } })],
    [
      'missing-unit prices.items[0].price.amount',
      withPrices({ items: [{ item: 'bar', price: { amount: '12', per: '1 each' } }] }),
    ],
  ])('is refused for %s, by its place', (told, job) => {
    expect(faultsOf(job)).toEqual([told]);
  });

  it('is refused by the take-off too for a slip in its prices', () => {
    expect(jobTakeoff.attempt(withPrices({ profits: {} }) as JobInput).ok).toBe(false);
  });

  it('bids a job again that was edited, and reckons only what changed', () => {
    const first = bidOfJob(priced);
    const dearer = bidOfJob(withPrices({ profit: { markup: '30%' } }) as JobInput, { from: first.job });
    for (const [i, part] of dearer.job.parts.entries()) expect(part.result).toBe(first.job.parts[i]?.result);
    expect(dearer.bid.figures.profit.greaterThan(first.bid.figures.profit)).toBe(true);
  });
});

describe('two jobs with their bids', () => {
  const [pad] = yard.elements;
  const before = bidOfJob(priced);
  const changes = (more: object) => compareJobs(before, bidOfJob({ ...priced, ...more } as JobInput));

  it('differ by nothing where nothing changed', () => {
    expect(changes({}).money).toEqual({ lines: [] });
  });

  it('differ in money by what an edit costs, and by what is put on it', () => {
    // 6 in to 8 in: 7.5 to 10 yd3, 7.875 to 10.5 with 5 %, 8.00 to 10.50 ordered: 2.50 at 165 is 412.50. The second
    // load is 1.5 yd3, 1.5 less than 3: 60. With 20 % markup (412.50 + 60) × 1.2 = 567.
    const { money, purchases } = changes({ elements: [{ ...pad, thickness: '8 in' }] });
    const told = Object.fromEntries((money?.lines ?? []).map(({ name, change }) => [name, change.format()]));
    expect(told).toEqual({ 'ready-mixed concrete': '412.50 USD', 'small load': '60.00 USD' });
    expect(money?.cost?.change.format()).toBe('472.50 USD');
    expect(money?.total?.change.format()).toBe('567.00 USD');
    expect(purchases.map(({ item, change }) => [item, change.format()])).toEqual([['ready-mix', '2.50 yd3']]);
  });

  it('tell lines that are new and lines that are gone', () => {
    const bare = changes({ prices: { ...prices, lines: [] } }).money?.lines ?? [];
    expect(bare.map(({ name, after }) => [name, after])).toEqual([
      ['place and finish', undefined],
      ['small load', undefined],
    ]);
  });

  it('say nothing of money where one has no bid', () => {
    expect(compareJobs(before, reckonJob(yard)).money).toBeUndefined();
    expect(compareJobs(before.job, before).money).toBeUndefined();
  });

  it('are refused where they are in two currencies', () => {
    const items = [{ item: 'ready-mix', price: { amount: '165 EUR', per: '1 yd3' } }];
    expect(() => changes({ prices: { items } })).toThrow(expect.objectContaining({ name: 'InputError' }));
  });
});

/** All of a currency, a price or a share of profit. */
const MONEY = /USD|EUR|\$|price|profit|markup|margin|cost\b|11\.40|165|\b34\b/i;

describe('a job without its prices', () => {
  it('carries no money, and loses nothing else', () => {
    const handed = withoutPrices(priced);
    expect(handed).toEqual(yard);
    expect(JSON.stringify(handed)).not.toMatch(MONEY);
    expect(priced.prices).toBe(prices);
  });

  it('carries no price of stock either', () => {
    const cutting = {
      stock: [
        { length: '20 ft', price: '11.40 USD' },
        { length: '40 ft', price: '23 USD' },
      ],
      aim: 'least-cost',
    };
    const { cutting: bare } = withoutPrices({ ...priced, cutting });
    expect(bare).toEqual({ stock: [{ length: '20 ft' }, { length: '40 ft' }], aim: 'least-length' });
    expect(jobTakeoff.attempt({ ...yard, cutting: bare } as JobInput).ok).toBe(true);
    for (const odd of [true, false, null, { stock: 5 }, { stock: [null, 5] }])
      expect(withoutPrices({ ...yard, cutting: odd }).cutting).toEqual(odd);
  });

  it('is what it was where it has none', () => {
    const demo = JSON.parse(
      readFileSync(new URL('../../scripts/demo/rear-yard-metric.json', import.meta.url), 'utf8'),
    );
    expect(withoutPrices(demo)).toEqual(demo);
  });

  it('is refused as every document is', () => {
    for (const wrong of [undefined, null, 5, 'x', [], { version: 9 }]) {
      expect(() => withoutPrices(wrong)).toThrow(InputError);
    }
  });
});

describe('the pages of a job that carries its prices', () => {
  it.each(['crew', 'yard', 'calculation'] as const)('tell no money on that of the %s', (page) => {
    const { job } = bidOfJob(priced);
    const shown = jobHtml('Yard', job, page).replace(/<style>[\s\S]*<\/style>/, '');
    expect(shown).not.toMatch(/USD|\$|\b(?:prices?|profit|markup)\b/);
    expect(JSON.stringify(job)).not.toMatch(/USD|profit/);
  });
});

describe('prices of a purchase list', () => {
  it.each([undefined, null, 5, 'x', {}, [5], [{ item: 'bar' }], [{ item: 'bar', of: [], price: 1 }]])(
    'are refused with an InputError where they are none: %j',
    (wrong) => {
      expect(() => pricedPurchases(reckonJob(yard), wrong as never)).toThrow(InputError);
    },
  );
});

describe('work that nobody buys', () => {
  const outline = { shape: 'rectangle', length: '30 ft', width: '10 ft' } as const;
  const drive = (lines: readonly object[]) =>
    bidOfJob({
      version: 1,
      elements: ['upper', 'lower'].map((name) => ({
        name,
        outline,
        thickness: '5 in',
        excavation: { depth: '9 in' },
        joints: { spacing: '10 ft' },
      })),
      prices: { lines },
    } as unknown as JobInput);
  const line = (item: string, more: object = {}) => ({
    kind: 'equipment',
    name: item,
    from: { item },
    price: { amount: '2 USD', per: item === 'saw-cut' ? '1 ft' : '1 ft3' },
    ...more,
  });
  const unpricedBy = (...lines: object[]) => drive(lines).unpriced.map(({ item }) => item);

  it('is priced by a line that is for it, once', () => {
    const { bid, unpriced } = drive([line('saw-cut'), line('haul-away')]);
    expect(unpriced).toEqual([]);
    // Two joints of 10 ft in each of two slabs; 300 ft2 by 9 in twice.
    expect(bid.figures.lines.map(({ amount }) => amount.format())).toEqual(['80.00 USD', '900.00 USD']);
    expect(bid.cautions.map(({ code }) => code)).not.toContain('no-price');
  });

  it('is without a price where the line is an option, for some of it or for something else', () => {
    expect(unpricedBy(line('saw-cut'))).toEqual(['haul-away']);
    expect(unpricedBy(line('saw-cut', { option: 'sawn' }))).toEqual(['haul-away', 'saw-cut']);
    expect(unpricedBy(line('saw-cut', { from: { item: 'saw-cut', elements: ['upper'] } }))).toEqual([
      'haul-away',
      'saw-cut',
    ]);
  });

  it('asks for the price of what is bought, whatever is done with it', () => {
    const { unpriced } = bidOfJob({
      version: 1,
      elements: [{ name: 'pad', outline, thickness: '5 in', slab: true }],
      prices: {
        lines: [
          {
            kind: 'labor',
            name: 'place',
            from: { item: 'concrete' },
            production: { output: '1 yd3', time: '1 h', by: 'worker' },
            wage: { amount: '30 USD', per: '1 h' },
          },
        ],
      },
    });
    expect(unpriced.map(({ item }) => item)).toEqual(['concrete']);
  });
});
