/**
 * Whole jobs as a contractor has them. Every figure was worked out by hand, with the arithmetic beside it, before the
 * job was run. Rules of the trade in them (openings are neither dug nor graveled, pails and rolls are bought whole) are
 * common practice.
 */
import { describe, expect, it } from 'vitest';
import { bidOfJob, type InputError, jobTakeoff, reckonJob } from '../../src/index';
import type { JobInput } from '../../src/job/document';
import { jobHtml, quoteText } from '../../src/report/index';

const rectangle = (length: string, width: string) => ({ shape: 'rectangle', length, width }) as const;
const price = (amount: string, per: string) => ({ amount, per });

/** `item quantity` of the purchase list. */
const bought = (job: unknown): string[] =>
  jobTakeoff(job as JobInput).figures.purchases.map(({ item, quantity }) => `${item} ${quantity.format()}`);

const textOf = (html: string): string => html.replace(/<[^>]*>/g, ' ').replace(/ +/g, ' ');

const issuesOf = (run: () => unknown): string[] => {
  try {
    run();
    return [];
  } catch (error) {
    return (error as InputError).issues.map(({ path, sentence }) => `${path}: ${sentence}`);
  }
};

const panels = {
  version: 1,
  shared: { allowance: '5%', pour: 'slab' },
  order: { increment: '0.25 yd3', truckCapacity: '9 yd3', minimumLoad: '4 yd3' },
  elements: [
    {
      name: 'panel',
      count: 3,
      outline: rectangle('12 ft', '10 ft'),
      thickness: '6 in',
      slab: true,
      base: { depth: '2 in', compactedDensity: '135 pcf' },
      dowels: {
        joint: '10 ft',
        placing: 'drilled',
        into: 'slab',
        spacing: '12 in',
        diameter: '3/4 in',
        length: '14 in',
        cartridge: '22 fl oz',
      },
      joints: {
        spacing: '12 ft',
        isolation: [
          { against: 'existing-slab', from: { x: '0 ft', y: '0 ft' }, to: { x: '12 ft', y: '0 ft' } },
        ],
        sealant: { width: '3/8 in', depth: '1/2 in' },
      },
    },
  ],
  prices: {
    items: [
      { item: 'ready-mix', price: price('180 USD', '1 yd3') },
      { item: 'base', price: price('30 USD', '1 ton'), taxRate: '4%' },
      { item: 'dowel', name: 'dowels', price: price('3.25 USD', '1 each') },
      { item: 'epoxy', name: 'epoxy', price: price('29 USD', '1 each') },
      { item: 'isolation-board', price: price('0.60 USD', '1 ft') },
      { item: 'backer-rod', price: price('0.10 USD', '1 ft') },
    ],
    lines: [
      {
        kind: 'subcontract',
        name: 'saw out and haul',
        amount: '1450 USD',
        low: '1300 USD',
        high: '2000 USD',
      },
      {
        kind: 'labor',
        name: 'drill, place, finish',
        hours: '36 h',
        wage: price('34 USD', '1 h'),
        burden: '28%',
        low: '1400 USD',
        high: '1800 USD',
      },
      { kind: 'short-load', name: 'small load', minimumLoad: '8 yd3', price: price('45 USD', '1 yd3') },
      { kind: 'material', name: 'coated dowels', amount: '240 USD', option: 'Coated dowels' },
    ],
    options: [{ name: 'Coated dowels', replaces: ['dowels'] }],
    tax: { kind: 'on-purchases', rate: '8%', on: ['material'], rounded: 'each-line' },
    contingency: { share: '4%' },
    overhead: { markup: '10%' },
    profit: { markup: '15%' },
    changes: [{ name: 'soft base', planned: '2 yd3', measured: '3.5 yd3', price: price('95 USD', '1 yd3') }],
    retainage: '10%',
    progress: { complete: '50%', paid: '1000 USD' },
  },
};

const edited = (prices: object): JobInput =>
  ({ ...panels, prices: { ...panels.prices, ...prices } }) as unknown as JobInput;

describe('three panels dowelled to old concrete', () => {
  it('buys for all three', () => {
    // 3 × 12 × 10 × 0.5 = 180 ft3 = 6.67 yd3, 7.00 with 5%; 60 ft3 × 135 ÷ 2,000 = 4.05 tons; 10 dowels a joint.
    // Holes 7/8 in by 7 in: 30 × π ÷ 4 × (0.765625 − 0.5625) × 7 × 1.25 = 41.88 in3 = 23.2 fl oz, two cartridges of 22.
    // Sealant 36 ft × 3/8 in × 1/2 in = 81 in3 = 0.35 gal.
    expect(bought(panels)).toEqual([
      'ready-mix 7.00 yd3',
      'base 4.05 ton',
      'dowel 30 each',
      'epoxy 44 fl oz',
      'isolation-board 36 ft',
      'backer-rod 36 ft',
      'sealant 0.35 gal',
    ]);
  });

  it('is bid to the cent, cartridges by the piece', () => {
    const { bid } = bidOfJob(edited({}));
    const { lines, payment, range, options = [], ...sums } = bid.figures;
    // 7 × 180, 4.05 × 30, 30 × 3.25, 2 × 29, 36 × 0.60, 36 × 0.10, nothing for sealant, 36 × 34 × 1.28, 1 yd3 short.
    expect(lines.map(({ amount }) => amount.format('USD'))).toEqual(
      [
        '1260.00',
        '121.50',
        '97.50',
        '58.00',
        '21.60',
        '3.60',
        '0.00',
        '1450.00',
        '1566.72',
        '45.00',
        '240.00',
      ].map((amount) => `${amount} USD`),
    );
    // Tax by line: 100.80 + 4.86 at its own 4% + 7.80 + 4.64 + 1.73 + 0.29.
    expect(sums.purchaseTax?.format()).toBe('120.12 USD');
    // 4,623.92 + 120.12 = 4,744.04; × 4% = 189.76; 4,933.80 × 10% = 493.38; 5,427.18 × 15% = 814.08.
    expect(sums.cost.format()).toBe('4744.04 USD');
    expect(sums.contingency?.format()).toBe('189.76 USD');
    expect(sums.overhead?.format()).toBe('493.38 USD');
    expect(sums.total.format()).toBe('6241.26 USD');
    // 1.5 yd3 × 95 on top; half done, a tenth of it kept, 1,000 paid.
    expect(sums.contract?.format()).toBe('6383.76 USD');
    expect(payment?.due.format()).toBe('1872.69 USD');
    // Spreads 700 ÷ 6 and 400 ÷ 6 of a sixth each, √(116.67² + 66.67²) × 1.04 × 1.1 × 1.15.
    expect(Number(range?.spread.value)).toBeCloseTo(176.78, 1);
    // 240 and its tax less 97.50 and its tax, 153.90, with what is put on it.
    expect(Number(options[0]?.difference.value)).toBeCloseTo(153.9 * 1.04 * 1.1 * 1.15, 1);
  });

  it('says what a wrong name could have meant, and what a wrong measure must be', () => {
    expect(
      issuesOf(() => bidOfJob(edited({ options: [{ name: 'Coated dowels', replaces: ['dowel'] }] }))),
    ).toEqual([
      expect.stringMatching(/^prices\.options\[0\]\.replaces\[0\]: .*"dowel"; its lines: .*"dowels"/),
    ]);
    expect(
      issuesOf(() => bidOfJob(edited({ items: [{ item: 'ready-mix', price: price('180 USD', '1 each') }] }))),
    ).toEqual([expect.stringMatching(/^prices\.items\[0\]\.price\.per: per must be a volume/)]);
  });

  it('tells the crew that it is done three times, and no price', () => {
    const crew = textOf(jobHtml('Yard', reckonJob(edited({})), 'crew'));
    expect(crew).toContain('panel (3 alike, figures of one)');
    expect(crew).toContain('existing slab');
    expect(crew).not.toMatch(/USD|existing-slab/);
    expect(textOf(jobHtml('Yard', reckonJob(edited({})), 'yard'))).toContain('44.9 fl oz');
  });

  it('tells the customer which work has no price in it, and not one of another name', () => {
    const { bid, job } = bidOfJob(edited({ lines: [{ kind: 'material', name: 'gravel, extra' }] }));
    const quote = quoteText('Yard', { bid, job });
    expect(quote).toContain('(not in the price yet: sealant)');
    expect(quote).not.toMatch(/not in the price yet: [^)]*gravel/);
  });
});

describe('a deck around a pool', () => {
  const deck = {
    version: 1,
    elements: [
      {
        name: 'deck',
        outline: rectangle('40 ft', '30 ft'),
        openings: [{ ...rectangle('30 ft', '15 ft'), at: { x: '5 ft', y: '5 ft' } }],
        thickness: '4 in',
        slab: true,
        base: { depth: '4 in', compactedDensity: '135 pcf' },
        excavation: { depth: '8 in' },
        retarder: { rollWidth: '20 ft', rollLength: '100 ft' },
      },
    ],
  };

  it('is dug and graveled around it', () => {
    // 1,200 − 450 = 750 ft2: × 1/3 = 250 ft3 = 9.26 yd3; × 2/3 = 500 ft3 = 18.52 yd3; 250 × 135 ÷ 2,000 = 16.875 tons.
    expect(bought(deck)).toEqual([
      'concrete 9.26 yd3',
      'haul-away 18.52 yd3',
      'base 16.88 ton',
      'vapor-retarder 1 each',
      'seam-tape 10 ft',
    ]);
  });

  it('has gravel of its own outline where it says one', () => {
    const [element] = deck.elements;
    const own = { ...element?.base, outline: rectangle('40 ft', '5 ft') };
    expect(bought({ ...deck, elements: [{ ...element, base: own }] })).toContain('base 4.50 ton');
  });
});

describe('two pads that touch on one footing', () => {
  const pad = {
    outline: rectangle('6 ft', '5 ft'),
    standsOn: 'footing',
    thickness: '5 in',
    slab: true,
    base: true,
  };
  const padsOn = (base: object) => ({
    version: 1,
    shared: {
      allowance: '8%',
      base: { depth: '4 in', margin: '6 in', compactedDensity: '135 pcf', ...base },
    },
    order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
    elements: [
      {
        name: 'footing',
        outline: rectangle('12 ft', '16 in'),
        at: { x: '0 ft', y: '0 ft' },
        base: false,
        allowance: '10%',
        footings: { footings: [{ kind: 'strip', length: '12 ft', width: '16 in', depth: '12 in' }] },
      },
      { ...pad, name: 'pad A', at: { x: '0 ft', y: '0 ft' } },
      { ...pad, name: 'pad B', at: { x: '6 ft', y: '0 ft' } },
    ],
  });

  it('shares gravel, cloth and what is trimmed away', () => {
    // (25 × 1.08 + 16 × 1.1) ÷ 27 = 1.65 yd3. Gravel 13 × 6 = 78 ft2 × 1/3 × 135 ÷ 2,000 = 1.755 tons; cloth of 84.8 ft2
    // with its laps from one roll of 625 ft2.
    const geotextile = { rollWidth: '12.5 ft', rollLength: '50 ft', lap: '12 in' };
    expect(bought(padsOn({ geotextile }))).toEqual([
      'ready-mix 1.75 yd3',
      'base 1.76 ton',
      'geotextile 1 each',
    ]);
    // Placed 14 × 7 = 98 ft2 × 1/3 × 135 ÷ 2,000 = 2.205 tons.
    expect(bought(padsOn({ edgeTrim: '6 in' }))).toEqual(['ready-mix 1.75 yd3', 'base 2.21 ton']);
  });
});

describe('a shed slab with a thickened edge', () => {
  it('has its edge and its sheet without a seam', () => {
    // 128 ft3; edge (384 − 308) × 2/3 + ∫(72 z − 4 z²) over 2/3 = 66.27 ft3: 7.195 yd3, 7.91 with 10%. The sheet of 20 ft
    // covers 16 ft in one strip.
    const shed = {
      version: 1,
      shared: { allowance: '10%' },
      order: { increment: '0.25 yd3', truckCapacity: '10 yd3' },
      elements: [
        {
          name: 'shed slab',
          outline: rectangle('24 ft', '16 ft'),
          thickness: '4 in',
          slab: { edge: { below: '8 in', width: '12 in', haunch: '8 in' } },
          retarder: { rollWidth: '20 ft', rollLength: '100 ft' },
        },
      ],
    };
    expect(bought(shed)).toEqual(['ready-mix 8.00 yd3', 'vapor-retarder 1 each']);
  });
});

describe('trucks of a pour', () => {
  it('come by whole minutes', () => {
    const job = reckonJob({
      version: 1,
      shared: { allowance: '5%' },
      order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
      // 9 yd3 at 16 yd3 an hour: 33.75 min.
      trucks: { placing: { kind: 'chute' }, travelTime: '20 min', crewRate: '16 yd3/h' },
      elements: [{ name: 'slab', outline: rectangle('36 ft', '30 ft'), thickness: '6 in', slab: true }],
    } as JobInput);
    expect(textOf(jobHtml('Yard', job, 'crew'))).toMatch(/then every.*34 min/i);
  });
});

describe('a drive whose earth is hauled and whose joints are sawn at a price', () => {
  const drive = {
    version: 1,
    elements: [
      {
        name: 'drive',
        outline: rectangle('27 ft', '12 ft'),
        thickness: '4 in',
        slab: true,
        excavation: { depth: '8 in', swell: '25%' },
        joints: { spacing: '9 ft' },
        also: [{ name: 'drain pipe', quantity: '27 ft' }],
      },
      {
        name: 'ramp',
        count: 2,
        outline: rectangle('9 ft', '4 ft'),
        slab: { thickness: { kind: 'taper', along: 'x', from: '4 in', to: '10 in' } },
        also: [{ name: 'anchor bolts', quantity: '3 each' }],
      },
    ],
    prices: {
      items: [
        { item: 'concrete', price: price('150 USD', '1 yd3') },
        { item: 'haul-away', price: price('20 USD', '1 yd3') },
        { item: 'saw-cut', price: price('1 USD', '1 ft') },
        { item: 'isolation-board', price: price('1 USD', '1 ft') },
        { item: 'other', of: { name: 'drain pipe' }, price: price('2 USD', '1 ft') },
        { item: 'other', of: { name: 'anchor bolts' }, price: price('4 USD', '1 each') },
      ],
      tax: { kind: 'on-purchases', rate: '10%', on: ['material'] },
    },
  };

  it('is taxed on what is bought, and not on work that nobody buys', () => {
    const { bid } = bidOfJob(drive as unknown as JobInput);
    // Concrete 27 × 12 ÷ 3 = 108 ft3 and two ramps of 9 × 4 × 7/12 = 21 ft3: 150 ft3 × 150 ÷ 27 = 833.33; pipe 54; bolts
    // 24: their taxes 83.33, 5.40 and 2.40. Hauling, 27 × 12 × 2/3 × 1.25 = 270 ft3, 10 yd3, is 200 and has none; nor
    // has the sawing.
    expect(bid.figures.purchaseTax?.format()).toBe('91.13 USD');
    const untaxed = bid.figures.lines.filter(({ kind }) => kind === 'subcontract');
    expect(untaxed.map(({ amount }) => amount.format())[0]).toBe('200.00 USD');
    expect(untaxed.length).toBe(2);
  });

  it('is told to the customer with what becomes of the earth, how thick a taper is, and how much is supplied', () => {
    const { bid, job } = bidOfJob(drive as unknown as JobInput);
    const text = quoteText('Drive', { bid, job }).replace(/\s+/g, ' ');
    expect(text).toContain('Dig out 8 in deep, 8.00 yd³ of earth, and take it away');
    expect(text).toContain('9 ft by 4 ft, 36 ft², 4 in to 10 in thick');
    expect(text).toContain('Supply drain pipe: 27 ft');
    // Three for each of two ramps.
    expect(text).toContain('2 alike, each as follows');
    expect(text).toContain('Supply anchor bolts: 3');
  });

  it('promises to haul away nothing that has no price, and not what is filled in again', () => {
    const [first, second] = drive.elements;
    const gap = { length: '60 ft', width: '6 in', depth: '6 in', looser: '25%', fromDig: true };
    const kept = { ...drive, elements: [{ ...first, backfill: { gap } }, second] };
    const { bid, job } = bidOfJob(kept as unknown as JobInput);
    const text = quoteText('Drive', { bid, job }).replace(/\s+/g, ' ');
    expect(text).toContain('of earth, and take away what is not filled in again');
    const items = drive.prices.items.filter(({ item }) => item !== 'haul-away');
    const without = bidOfJob({ ...drive, prices: { ...drive.prices, items } } as unknown as JobInput);
    const said = quoteText('Drive', { bid: without.bid, job: without.job }).replace(/\s+/g, ' ');
    expect(said).toContain('of earth (not in the price yet: earth to haul away');
    expect(said).not.toContain('take it away');
  });
});

describe('trucks for what is dug', () => {
  it('are counted without the earth that is filled in again', () => {
    const dig = { depth: '8 in', swell: '25%', haul: { truckVolume: '10 yd3' } };
    const gap = { length: '78 ft', width: '6 in', depth: '9 in', looser: '20%', fromDig: true };
    const job = (slabs: object[]) =>
      reckonJob({
        version: 1,
        elements: [...slabs, { name: 'edges', backfill: { gap } }],
      } as unknown as JobInput);
    const loads = (job: ReturnType<typeof reckonJob>): string[] =>
      job.parts.flatMap(({ part, result: { figures } }) => {
        const { haul } = figures as { haul?: { loads: { format: () => string } } };
        return part === 'excavation' && haul ? [haul.loads.format()] : [];
      });
    // 27 × 12 × 2/3 = 216 ft3, 10 yd3 loose, of which 78 × 1/2 × 3/4 × 1.2 = 1.3 yd3 stay: 8.7 yd3 are one load; 28 ft
    // would be 10.37, two loads, and less 1.3 one. Of two digs alike each keeps 0.65 yd3, so that each of two has one.
    const slab = { name: 'slab', outline: rectangle('28 ft', '12 ft'), excavation: dig };
    expect(loads(job([slab]))).toEqual(['1 each']);
    expect(loads(job([{ ...slab, count: 2 }]))).toEqual(['1 each']);
    expect(loads(job([slab, { ...slab, name: 'other' }]))).toEqual(['1 each', '1 each']);
    const page = textOf(jobHtml('Yard', job([slab]), 'crew'));
    expect(page).toMatch(/haul\s+loose volume\s+9\.07 yd3\s*, loads 1/);
    expect(bought({ version: 1, elements: [slab, { name: 'edges', backfill: { gap } }] })[0]).toBe(
      'haul-away 9.07 yd3',
    );
  });
});

describe('a pour on a cold day', () => {
  const US = {
    long: rectangle('30 ft', '4 ft'),
    small: rectangle('6 ft', '4 ft'),
    thickness: '4 in',
    cold: ['50 degF', '28 degF', '65 degF'],
    warm: ['75 degF', '60 degF', '70 degF'],
    by: '1 yd3',
  };
  const METRIC: typeof US = {
    long: rectangle('9 m', '1.2 m'),
    small: rectangle('2 m', '1 m'),
    thickness: '100 mm',
    cold: ['10 degC', '-2 degC', '18 degC'],
    warm: ['24 degC', '15 degC', '21 degC'],
    by: '1 m3',
  };
  const walk = ({ long, small, thickness, cold, warm, by }: typeof US, prices: object) => {
    const day = (name: string, element: string, [air, low, concrete]: string[], more: object) => ({
      name,
      elements: [element],
      airTemperature: air,
      concreteTemperature: concrete,
      limits: { forecast: { low }, ...more },
    });
    return {
      version: 1,
      elements: [
        { name: 'walk', count: 2, outline: long, thickness, slab: true },
        { name: 'pad', outline: small, thickness, slab: true },
      ],
      days: [
        day('Thursday', 'walk', cold, { protection: 'blankets', layers: 2 }),
        day('Friday', 'pad', warm, {}),
      ],
      prices: { items: [{ item: 'concrete', price: price('150 USD', by) }, ...Object.values(prices)] },
    } as unknown as JobInput;
  };

  it('has its blankets on the list, of the slabs that are poured on it and of no warm day', () => {
    // Two walks of 120 ft2 in two layers: 480 ft2. Two of 10.8 m2: 43.2 m2.
    expect(bought(walk(US, {}))).toContain('blanket 480 ft2');
    expect(bought(walk(METRIC, {}))).toContain('blanket 43.2 m2');
    const yard = textOf(jobHtml('Walk', reckonJob(walk(US, {})), 'yard'));
    expect(yard).toMatch(/Blankets against frost\s+480 ft2\s+walk/);
  });

  it('says to the customer whether they are in the price', () => {
    const told = (prices: object): string => {
      const { bid, job } = bidOfJob(walk(US, prices));
      return quoteText('Walk', { bid, job }).replace(/\s+/g, ' ');
    };
    const without = told({});
    expect(without).toContain('blankets against frost, for which there is no price yet');
    expect(without).toContain('Covers and heat against frost are extra.');
    const priced = told({ blanket: { item: 'blanket', price: price('0.20 USD', '1 ft2') } });
    expect(priced.match(/Cover it with blankets against frost/g)?.length).toBe(1);
    expect(priced).toContain('Covers against frost are in the price where it says so above.');
    expect(priced).not.toContain('Covers and heat against frost are extra.');
  });
});

describe('a stoop from bags beside a slab by truck', () => {
  const both = {
    version: 1,
    shared: { allowance: '10%' },
    order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
    bags: { bag: '60 lb' },
    trucks: { placing: { kind: 'chute' }, travelTime: '20 min', firstTruckAt: '8:00' },
    elements: [
      { name: 'patio', outline: rectangle('27 ft', '15 ft'), thickness: '4 in', slab: true },
      { name: 'stoop', bagged: true, outline: rectangle('5 ft', '3 ft'), thickness: '7 in', slab: true },
    ],
    prices: {
      items: [
        { item: 'ready-mix', price: price('160 USD', '1 yd3') },
        { item: 'bagged-mix', price: price('5 USD', '1 each') },
      ],
    },
  } as unknown as JobInput;

  it('is on every page in its own line, with no truck of its own', () => {
    const { bid, job } = bidOfJob(both);
    // 5.5 × 160 = 880, and 22 × 5 = 110.
    expect(bid.figures.total.format()).toBe('990.00 USD');
    const yard = textOf(jobHtml('Patio', job, 'yard'));
    expect(yard).toMatch(/concrete\s+5\.50 yd3\s+5\.50 yd3\s+8:00 AM/);
    expect(yard.match(/8:00 AM/g)?.length).toBe(1);
    expect(yard).toMatch(/Bagged mix, bag 60 lb\s+22\s+stoop/i);
    expect(quoteText('Patio', { bid, job })).toContain('pour from its chute');
  });
});

describe('a mat over an outline of its own', () => {
  it('lies there, and not over all of its element', () => {
    // Bars at 12 in over the 6 ft by 4 ft where a machine stands, cover 3 in: 42 ÷ 12 and 66 ÷ 12 give 5 and 7 lines.
    const job = reckonJob({
      version: 1,
      elements: [
        {
          name: 'floor',
          outline: rectangle('20 ft', '12 ft'),
          thickness: '6 in',
          slab: true,
          bars: { outline: rectangle('6 ft', '4 ft'), bar: '#4', spacing: '12 in', cover: '3 in' },
        },
      ],
    } as JobInput);
    const found = job.parts.find(({ part }) => part === 'bars')?.result.figures as unknown;
    const { bars } = found as {
      bars: { length: { format: () => string }; count: { format: () => string } }[];
    };
    expect(bars.map(({ length, count }) => `${count.format()} ${length.format()}`)).toEqual([
      '5 each 5 ft 6 in',
      '7 each 3 ft 6 in',
    ]);
  });
});
