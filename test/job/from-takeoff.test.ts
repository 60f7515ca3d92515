/**
 * Prices that go by the take-off: bars by their weight, labor by its production rate, and what each element takes of a
 * line. Weights by hand: 0.668 lb/ft for #4 (ASTM A615/A615M, table of designations), 0.888 kg/m for 12 mm (EN 10080,
 * from memory).
 */
import { describe, expect, it } from 'vitest';
import { bidOfJob, type JobInput, type JobLineInput, jobTakeoff } from '../../src/job/index';
import { InputError } from '../../src/quantity/input-error';
import { quoteCsv } from '../../src/report/index';

const yard = {
  version: 1,
  shared: { allowance: '5%', bars: { bar: '#4', spacing: '18 in', cover: '3 in' } },
  order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
  elements: [
    {
      name: 'dock',
      outline: { shape: 'rectangle', length: '27 ft', width: '15 ft' },
      thickness: '6 in',
      slab: true,
      bars: true,
    },
    {
      name: 'bin pad',
      count: 2,
      outline: { shape: 'rectangle', length: '12 ft', width: '9 ft' },
      thickness: '4 in',
      slab: true,
    },
  ],
} as const satisfies JobInput;

const metricYard = {
  version: 1,
  shared: { allowance: '5%', bars: { bar: '12 mm', spacing: '450 mm', cover: '75 mm', stockLength: '6 m' } },
  order: { increment: '0.25 m3', truckCapacity: '7 m3' },
  elements: [
    {
      name: 'dock',
      outline: { shape: 'rectangle', length: '8 m', width: '4.5 m' },
      thickness: '150 mm',
      slab: true,
      bars: true,
    },
  ],
} as const satisfies JobInput;

const bid = (job: JobInput, prices: object) => bidOfJob({ ...job, prices } as JobInput);

const lineOf = ({ bid: { figures } }: ReturnType<typeof bid>, name: string) =>
  figures.lines.find((line) => line.name === name);

const barsOf = (job: JobInput): number =>
  jobTakeoff(job)
    .figures.purchases.find(({ item }) => item === 'bar')
    ?.quantity.toNumber('each') ?? 0;

const faultsOf = (job: JobInput, line: unknown): string[] => {
  try {
    bid(job, { lines: [line] });
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map(({ code, path }) => `${code} ${path}`);
  }
};

const cents = (amount: number): number => Math.round(amount * 100) / 100;

describe('bars that are priced by weight', () => {
  it.each([
    ['1 lb', 0.7, 1],
    ['1 ton', 1400, 1 / 2000],
    ['1 kg', 1.55, 0.45359237],
    ['1 tonne', 1550, 0.00045359237],
  ])('weigh what is bought of them, by %s', (per, price, share) => {
    const found = bid(yard, {
      items: [{ item: 'bar', name: 'bars', price: { amount: `${price} USD`, per } }],
    });
    const pounds = barsOf(yard) * 20 * 0.668;
    expect(lineOf(found, 'bars')?.quantity?.toNumber('lb')).toBeCloseTo(pounds, 9);
    expect(lineOf(found, 'bars')?.amount.toNumber('USD')).toBe(cents(pounds * share * price));
  });

  it.each([
    ['1 kg', 1.2, 1],
    ['1 tonne', 1200, 1 / 1000],
    ['1 m', 1.1, 1 / 0.888],
  ])('weigh what is bought of them in meters, by %s', (per, price, share) => {
    const items = [{ item: 'bar', name: 'bars', price: { amount: `${price} EUR`, per } }];
    const kilograms = barsOf(metricYard) * 6 * 0.888;
    const { amount } = lineOf(bid(metricYard, { items }), 'bars') ?? {};
    expect(amount?.toNumber('EUR')).toBe(cents(kilograms * share * price));
  });

  it('are billed in whole steps of weight', () => {
    const price = { amount: '0.70 USD', per: '1 lb' };
    const found = bid(yard, { items: [{ item: 'bar', name: 'bars', increment: '100 lb', price }] });
    const steps = Math.ceil((barsOf(yard) * 20 * 0.668) / 100);
    expect(lineOf(found, 'bars')?.amount.toNumber('USD')).toBe(steps * 70);
  });

  it('are refused by a unit that is one of two', () => {
    const items = [{ item: 'bar', price: { amount: '1400 USD', per: '1 t' } }];
    expect(() => bid(yard, { items })).toThrow(/two ways.*"ton" or "tonne"/);
  });

  it.each(['1 yd3', '1 h', '1 ft2'])('are refused by %s, which their sizes do not tell', (per) => {
    const items = [{ item: 'bar', price: { amount: '5 USD', per } }];
    expect(() => bid(yard, { items })).toThrow(expect.objectContaining({ name: 'InputError' }));
  });
});

describe('mesh that is priced by weight', () => {
  const meshed = (outline: object, mesh: object): JobInput =>
    ({
      version: 1,
      elements: [{ name: 'walk', outline: { shape: 'rectangle', ...outline }, mesh }],
    }) as never;
  const pieces = (job: JobInput): number =>
    jobTakeoff(job)
      .figures.purchases.find(({ item }) => item === 'mesh')
      ?.quantity.toNumber('each') ?? 0;

  it('weighs what whole rolls of its style weigh', () => {
    // 6x6-W1.4xW1.4 weighs 21 lb on 100 ft2 (WWR-500, table of common styles, from memory): 157.5 lb a roll.
    const roll = {
      form: 'rolls',
      pieceLength: '150 ft',
      pieceWidth: '5 ft',
      style: '6x6-W1.4xW1.4',
    };
    const job = meshed({ length: '100 ft', width: '12 ft' }, roll);
    const items = [{ item: 'mesh', name: 'mesh', price: { amount: '0.80 USD', per: '1 lb' } }];
    const line = lineOf(bid(job, { items }), 'mesh');
    expect(pieces(job)).toBeGreaterThan(0);
    expect(line?.amount.toNumber('USD')).toBe(cents(pieces(job) * 157.5 * 0.8));
  });

  it('weighs what whole sheets weigh by the tonne, as the part itself says', () => {
    // A142 weighs 2.22 kg/m2 (BS 4483, from memory): 25.6 kg a sheet of 4.8 m by 2.4 m.
    const sheet = { form: 'sheets', pieceLength: '4.8 m', pieceWidth: '2.4 m', style: 'A142' };
    const job = meshed({ length: '12 m', width: '5 m' }, sheet);
    const items = [{ item: 'mesh', name: 'mesh', price: { amount: '1500 EUR', per: '1 tonne' } }];
    const found = bid(job, { items });
    const mass = lineOf(found, 'mesh')?.quantity?.toNumber('kg') ?? 0;
    expect(Math.abs(mass / (pieces(job) * 25.6) - 1)).toBeLessThan(0.01);
    const [part] = found.job.parts.filter((one) => one.part === 'mesh');
    const { weight } = (part?.result.figures ?? {}) as { weight?: { toNumber(unit: string): number } };
    expect(mass).toBeCloseTo(weight?.toNumber('kg') ?? 0, 9);
  });

  it('is of no known weight without its style', () => {
    const sheet = { form: 'sheets', pieceLength: '10 ft', pieceWidth: '5 ft' };
    const items = [{ item: 'mesh', price: { amount: '1 USD', per: '1 lb' } }];
    const job = meshed({ length: '20 ft', width: '10 ft' }, sheet);
    expect(() => bid(job, { items })).toThrow(expect.objectContaining({ name: 'InputError' }));
  });
});

describe('labor by its production rate', () => {
  const crew = [{ count: 3, wage: { amount: '30 USD', per: '1 h' } }];
  const rate = (output: string, time = '1 h') => ({ output, time, by: 'crew' });
  const labor = (from: object, output: string, more: object = {}): JobLineInput =>
    ({ kind: 'labor', name: 'work', from, production: rate(output), crew, ...more }) as JobLineInput;

  it('takes its quantity from a figure of a part, of all elements and as often as they are', () => {
    // 27 × 15 + 2 × 12 × 9 = 621 ft2 at 100 ft2 an hour: 6.21 h of three at 30.
    const found = bid(yard, { lines: [labor({ part: 'slab', figure: 'area' }, '100 ft2')] });
    expect(lineOf(found, 'work')?.amount.format()).toBe('558.90 USD');
    expect(found.bid.figures.laborHours?.toNumber('h')).toBeCloseTo(18.63, 9);
    const one = labor({ part: 'slab', figure: 'area', elements: ['dock'] }, '100 ft2');
    expect(lineOf(bid(yard, { lines: [one] }), 'work')?.amount.format()).toBe('364.50 USD');
  });

  it('follows the take-off when it changes', () => {
    const lines = [labor({ item: 'concrete' }, '2 yd3')];
    // 27 × 15 × 0.5 ft = 7.5 yd3, and two of 12 × 9 × 4 in 2.667 together: 10.1667 yd3, 5.0833 h.
    expect(lineOf(bid(yard, { lines }), 'work')?.amount.format()).toBe('457.50 USD');
    const [dock, pad] = yard.elements;
    const thicker = { ...yard, elements: [{ ...dock, thickness: '8 in' }, pad] } as JobInput;
    expect(lineOf(bid(thicker, { lines }), 'work')?.amount.format()).toBe('570.00 USD');
  });

  it('goes by what is bought, in the measure of the rate', () => {
    const found = bid(yard, { lines: [labor({ item: 'bar', of: { bar: '#4' } }, '400 lb')] });
    const hours = (barsOf(yard) * 20 * 0.668) / 400;
    expect(lineOf(found, 'work')?.amount.toNumber('USD')).toBe(cents(hours * 90));
  });

  it('goes by meters as well', () => {
    const euros = [{ count: 2, wage: { amount: '28 EUR', per: '1 h' } }];
    const line = labor({ part: 'slab', figure: 'area' }, '9 m2', { crew: euros });
    // 36 m2 at 9 m2 an hour: 4 h of two at 28.
    expect(lineOf(bid(metricYard, { lines: [line] }), 'work')?.amount.format()).toBe('224.00 EUR');
  });

  it('takes a unit price too, of whatever kind the line is', () => {
    const line = { kind: 'subcontract', name: 'pump', from: { item: 'ready-mix' } };
    const lines = [{ ...line, price: { amount: '12 USD', per: '1 yd3' } }] as JobLineInput[];
    // 10.1667 with 5 % is 10.675: 10.75 yd3 ordered.
    expect(lineOf(bid(yard, { lines }), 'pump')?.amount.format()).toBe('129.00 USD');
  });

  it('stands in no bid of a job that has none of it, and is named', () => {
    const wage = { kind: 'labor', name: 'sweep', hours: '1 h', wage: { amount: '20 USD', per: '1 h' } };
    const found = bid(yard, { lines: [labor({ part: 'forms', figure: 'length' }, '20 ft'), wage] });
    expect(found.unused).toEqual(['work']);
    expect(lineOf(found, 'work')).toBeUndefined();
    expect(found.bid.cautions.filter(({ params }) => params?.['name'] === 'work')).toEqual([]);
    expect(lineOf(found, 'sweep')?.amount.format()).toBe('20.00 USD');
  });

  it('stands in the bid as still to come where the job lacks what it goes by', () => {
    const [, pad] = yard.elements;
    const unknown = { ...yard, elements: [{ name: 'ramp', thickness: '4 in', slab: true }, pad] } as JobInput;
    const line = labor({ part: 'slab', figure: 'area', elements: ['ramp'] }, '100 ft2');
    const wage = { kind: 'labor', name: 'sweep', hours: '1 h', wage: { amount: '20 USD', per: '1 h' } };
    const found = bid(unknown, { lines: [line, wage] });
    expect(found.unused).toEqual([]);
    const told = found.bid.cautions.find(({ params }) => params?.['name'] === 'work');
    expect([told?.code, told?.severity]).toEqual(['no-price', 'stop']);
    expect(told?.says).toMatch(/^nothing is known yet/);
  });

  it('waits only for the parts that its item comes of', () => {
    const [dock, pad] = yard.elements;
    const base = { depth: '4 in' };
    const wage = { kind: 'labor', name: 'sweep', hours: '1 h', wage: { amount: '20 USD', per: '1 h' } };
    const job = { ...yard, elements: [{ ...dock, base }, pad] } as JobInput;
    const lines = (item: string, per: string, from: object = {}) =>
      bid(job, { lines: [labor({ item, ...from }, per), wage] }).unused;
    // The density of the gravel is not known: gravel waits, mesh is none of this job.
    expect(lines('base', '1 ton')).toEqual([]);
    expect(lines('mesh', '1 each')).toEqual(['work']);
    expect(lines('base', '1 ton', { elements: ['bin pad'] })).toEqual(['work']);
  });

  it.each([
    ['give-one-of prices.lines[0].from', labor({ part: 'slab', figure: 'area', item: 'base' }, '9 ft2')],
    ['give-one-of prices.lines[0].from', labor({}, '9 ft2')],
    ['give-one-of prices.lines[0].from', labor({ item: 'bar' }, '9 lb', { quantity: '4 lb' })],
    ['missing prices.lines[0].from.figure', labor({ part: 'slab' }, '9 ft2')],
    ['unknown-choice prices.lines[0].from.part', labor({ part: 'slabs', figure: 'area' }, '9 ft2')],
    ['unknown-name prices.lines[0].from.figure', labor({ part: 'slab', figure: 'aera' }, '9 ft2')],
    [
      'unknown-name prices.lines[0].from.elements[0]',
      labor({ part: 'slab', figure: 'area', elements: ['deck'] }, '9 ft2'),
    ],
    ['wrong-dimension prices.lines[0].production.output', labor({ item: 'concrete' }, '9 ft2')],
    [
      'unknown-name prices.lines[0].elements[0].element',
      labor({ item: 'bar' }, '9 lb', { elements: [{ element: 'x' }] }),
    ],
  ])('is refused: %s', (told, line) => {
    expect(faultsOf(yard, line)).toEqual([told]);
  });

  it('is refused by the take-off too for a slip in it', () => {
    const lines = [labor({ part: 'slabs', figure: 'area' }, '9 ft2')];
    expect(jobTakeoff.attempt({ ...yard, prices: { lines } } as unknown as JobInput).ok).toBe(false);
  });
});

describe('what is for one element', () => {
  const rows = (prices: object): Record<string, number> => {
    const { bid: made, job } = bid(yard, prices);
    const csv = quoteCsv({ bid: made, job, prices: 'elements' }).split('\r\n');
    const cells = csv.slice(1).map((row) => row.split(','));
    return Object.fromEntries(cells.map((row) => [row.at(-2), Number(row.at(-1))]));
  };

  it('stands with it in the quote, whatever it is called there', () => {
    // All bars are the dock's, 700; 1000 of concrete by 7.5 and 2.667 yd3.
    const bars = {
      item: 'bar',
      name: 'steel',
      price: { amount: '700 USD', per: '1 each' },
      increment: '1000 each',
    };
    const mix = { item: 'ready-mix', name: 'mix', price: { amount: '100 USD', per: '1 yd3' } };
    const lump = (item: object, per: string) => ({
      ...item,
      price: { amount: '1000 USD', per },
      increment: per,
    });
    const found = rows({ items: [lump(bars, '1000 each'), lump(mix, '1000 yd3')] });
    expect(found['dock']).toBeCloseTo(1000 + (1000 * 7.5) / (7.5 + 8 / 3), 2);
    expect(found['bin pad']).toBeCloseTo((1000 * (8 / 3)) / (7.5 + 8 / 3), 2);
  });

  it('stands with the elements that a line says, alike or by what each takes', () => {
    const line = (elements: object[]) => ({
      kind: 'subcontract',
      name: 'sealer',
      amount: '900 USD',
      elements,
    });
    expect(rows({ lines: [line([{ element: 'dock' }, { element: 'bin pad' }])] })).toMatchObject({
      dock: 450,
      'bin pad': 450,
    });
    const shares = [
      { element: 'dock', quantity: '405 ft2' },
      { element: 'bin pad', quantity: '202.5 ft2' },
    ];
    expect(rows({ lines: [line(shares)] })).toMatchObject({ dock: 600, 'bin pad': 300 });
  });

  it('is told for all elements of a line in one measure, or for none', () => {
    const line = (elements: object[]) => ({
      kind: 'subcontract',
      name: 'sealer',
      amount: '900 USD',
      elements,
    });
    const dock = { element: 'dock', quantity: '405 ft2' };
    expect(faultsOf(yard, line([dock, { element: 'bin pad' }]))).toEqual([
      'missing prices.lines[0].elements[1].quantity',
    ]);
    expect(faultsOf(yard, line([{ element: 'bin pad' }, dock]))).toEqual([
      'missing prices.lines[0].elements[0].quantity',
    ]);
    expect(faultsOf(yard, line([dock, { element: 'bin pad', quantity: '5 ft' }]))).toEqual([
      'wrong-dimension prices.lines[0].elements[1].quantity',
    ]);
  });
});
