/** What is of one size is one line of the purchase list, however its size is written. */
import { describe, expect, it } from 'vitest';
import { compareJobs, type ItemPrice, type JobInput, pricedPurchases, reckonJob } from '../../src/job/index';

/** The same sizes in another unit of the same family. */
const APART: Readonly<Record<string, readonly [unit: string, times: number]>> = {
  ft: ['in', 12],
  lb: ['oz', 16],
  gal: ['qt', 4],
  m: ['mm', 1000],
  kg: ['g', 1000],
};

function rewritten(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(rewritten);
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, rewritten(inner)]));
  const [, number, unit] = /^(\d+(?:\.\d+)?) (ft|lb|gal|m|kg)$/.exec(String(value)) ?? [];
  const [other, times] = APART[unit ?? ''] ?? [];
  return other && times ? `${Math.round(Number(number) * times * 1000) / 1000} ${other}` : value;
}

const yard = {
  outline: { shape: 'rectangle', length: '20 ft', width: '12 ft' },
  thickness: '0.5 ft',
  slab: true,
  base: {
    depth: '4 in',
    compactedDensity: '135 pcf',
    geotextile: { rollWidth: '12.5 ft', rollLength: '100 ft' },
  },
  forms: {
    board: { thickness: '1.5 in', height: '5.5 in' },
    stock: ['16 ft'],
    stakes: { spacing: '3 ft', length: '2 ft' },
    release: { covers: '400 ft2', measure: '1 gal', container: '5 gal' },
  },
  bars: { bar: '#4', spacing: '18 in', cover: '3 in', stockLength: '20 ft' },
  mesh: { style: '6x6-W1.4xW1.4', form: 'sheets', pieceLength: '20 ft', pieceWidth: '8 ft' },
  spacing: { aggregateSize: '3/4 in', slump: '4 in' },
  joints: {
    boardThickness: '0.5 in',
    isolation: [{ against: 'building', from: { x: '0 ft', y: '0 ft' }, to: { x: '20 ft', y: '0 ft' } }],
  },
  finish: {
    liquids: [{ kind: 'curing-compound', covers: '200 ft2', measure: '1 gal', container: '5 gal' }],
    color: { volume: '5 yd3', cement: '564 lb/yd3', dose: '4%', container: '25 lb' },
  },
};

const court = {
  outline: { shape: 'rectangle', length: '6 m', width: '4 m' },
  thickness: '0.15 m',
  slab: true,
  forms: {
    board: { thickness: '38 mm', height: '140 mm' },
    stock: ['4.8 m'],
    stakes: { spacing: '1 m', length: '0.6 m' },
  },
  bars: { bar: '12 mm', spacing: '400 mm', cover: '50 mm', stockLength: '6 m' },
  mesh: { style: '152x152-MW19xMW19', form: 'sheets', pieceLength: '4.8 m', pieceWidth: '2.4 m' },
};

const job = (...elements: readonly unknown[]): JobInput =>
  ({
    version: 1,
    elements: elements.map((e, i) => ({ name: `pad ${i + 1}`, ...(e as object) })),
  }) as JobInput;

const linesOf = (input: JobInput): string[] =>
  reckonJob(input).takeoff.figures.purchases.map(({ item, quantity }) => `${item} ${quantity.format()}`);

describe('the same sizes written apart', () => {
  it.each([
    ['customary', yard],
    ['metric', court],
  ])('are the same lines of a %s job', (_, element) => {
    const alike = linesOf(job(element, element));
    expect(rewritten(element)).not.toEqual(element);
    expect(linesOf(job(element, rewritten(element)))).toEqual(alike);
    expect(new Set(alike.map((line) => line.split(' ')[0])).size).toBeGreaterThan(5);
  });

  it('are no change from one job to the next', () => {
    const [before, after] = [reckonJob(job(yard)), reckonJob(job(rewritten(yard)))];
    expect(compareJobs(before, after)).toEqual({ elements: [], purchases: [], raised: [], settled: [] });
  });

  it('have one price', () => {
    const prices: ItemPrice[] = [
      { item: 'bar', of: { stockLength: '240 in' }, price: { amount: '9 USD', per: '1 each' } },
      { item: 'stake', of: { length: '2/3 yd' }, price: { amount: '1 USD', per: '1 each' } },
    ];
    const { lines } = pricedPurchases(reckonJob(job(yard, rewritten(yard))), prices);
    expect(lines.map(({ name }) => name.split(',')[0])).toEqual(['stake', 'reinforcing bars']);
  });
});
