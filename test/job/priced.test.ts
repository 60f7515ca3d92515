/** What a job changes by an edit, and what its purchase list costs. */
import { describe, expect, it } from 'vitest';
import { compareJobs, jobBid, pricedPurchases, reckonJob } from '../../src/job/index';

const pad = (thickness: string, name = 'pad') => ({
  name,
  outline: { shape: 'rectangle', length: '27 ft', width: '12 ft' } as const,
  thickness,
  slab: true,
  base: { depth: '4 in', compactedDensity: '120 lb/ft3' },
});

const job = (...elements: ReturnType<typeof pad>[]) =>
  reckonJob({
    version: 1,
    shared: { allowance: '0%' },
    order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
    elements,
  });

describe('two jobs', () => {
  it('are alike where nothing changed', () => {
    const { elements, purchases, raised, settled, concrete } = compareJobs(
      job(pad('4 in')),
      job(pad('4 in')),
    );
    expect([elements, purchases, raised, settled, concrete]).toEqual([[], [], [], [], undefined]);
  });

  it('differ by what changed, what is new and what is gone', () => {
    const thicker = compareJobs(job(pad('4 in')), job(pad('6 in')));
    expect(thicker.concrete?.change.format('yd3')).toBe('2.00 yd3');
    expect(thicker.purchases.map(({ item, change }) => [item, change.format()])).toEqual([
      ['ready-mix', '2.00 yd3'],
    ]);
    const more = compareJobs(job(pad('4 in')), job(pad('4 in'), pad('4 in', 'second')));
    expect(more.elements).toHaveLength(1);
    expect(more.elements[0]?.before).toBeUndefined();
    const less = compareJobs(job(pad('4 in'), pad('4 in', 'second')), job(pad('4 in')));
    expect(less.elements[0]?.after).toBeUndefined();
    expect(less.elements[0]?.change.format('yd3')).toBe('-4.00 yd3');
  });

  it('tell which cautions were raised and settled', () => {
    const short = reckonJob({ version: 1, elements: [{ ...pad('4 in'), thickness: undefined as never }] });
    expect(compareJobs(job(pad('4 in')), short).raised.map(({ code }) => code)).toContain('parts-missing');
    expect(compareJobs(short, job(pad('4 in'))).settled.map(({ code }) => code)).toContain('parts-missing');
  });
});

describe('a purchase list', () => {
  it('becomes lines of a bid, each at its price, and tells what has none', () => {
    const { lines, unpriced } = pricedPurchases(job(pad('4 in')), [
      { item: 'ready-mix', price: { amount: '165 USD', per: '1 yd3' } },
    ]);
    expect(unpriced.map(({ item }) => item)).toEqual(['base']);
    expect(jobBid({ lines }).figures.cost.format()).toBe('660.00 USD');
  });

  it('takes the price that says most of the size', () => {
    const bars = reckonJob({
      version: 1,
      elements: [
        {
          ...pad('6 in'),
          slab: false,
          base: false,
          bars: { bar: '#4', spacing: '18 in', cover: '3 in' },
        } as never,
      ],
    });
    const any = { item: 'bar', price: { amount: '9 USD', per: '1 each' } } as const;
    const { lines } = pricedPurchases(bars, [
      any,
      { ...any, of: { bar: '#4', stockLength: '240 in' }, price: { amount: '7 USD', per: '1 each' } },
    ]);
    expect(lines.find(({ name }) => name.startsWith('reinforcing bars, #4'))?.price?.amount).toBe('7 USD');
    const { unpriced } = pricedPurchases(bars, [{ ...any, of: { bar: '#5' } }]);
    expect(unpriced.map(({ item }) => item)).toContain('bar');
  });
});
