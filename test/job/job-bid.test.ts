/** Bids: to the cent by a second way, markup and margin exactly, ranges by sampling, and what must hold for any bid. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BidLineInput, type JobBidInput, jobBid, money, ratio } from '../../src/index';
import { toCents } from '../../src/quantity/cents';
import { runs } from '../support/effort';
import { bidObjections, halfUp, madeBid } from '../support/job/bids';
import { chance } from '../support/relations/random';

const lump = (name: string, amount: string, more: Partial<BidLineInput> = {}): BidLineInput =>
  ({ kind: 'subcontract', name, amount, ...more }) as BidLineInput;
const total = (input: JobBidInput): string => jobBid(input).figures.total.format();

describe('a bid', () => {
  it('comes to the cent, in any order of its lines, as whole cents in big integers have it', () => {
    const dice = chance(20_261_127);
    for (let n = 0; n < runs(1000); n++) expect(bidObjections(madeBid(dice), dice)).toEqual([]);
  });

  it('rounds half a cent up, and half a cent owed the other way likewise', () => {
    expect(halfUp(17_125n, 10n)).toBe(1713n);
    expect(toCents(money('17.125 USD')).format()).toBe('17.13 USD');
    expect(toCents(money('-17.125 USD')).format()).toBe('-17.13 USD');
    expect(toCents(money('17.1249999999999999999999 USD')).format()).toBe('17.12 USD');
  });

  it('does not mind how a quantity is written', () => {
    const at = (quantity: string, per: string): string =>
      total({
        lines: [{ kind: 'material', name: 'concrete', quantity, price: { amount: '171.45 USD', per } }],
      });
    expect(new Set([at('27 ft3', 'yd3'), at('1 yd3', '27 ft3'), at('46656 in3', '1 yd3')]).size).toBe(1);
  });

  it('reads units of one word and of several', () => {
    const at = (quantity: string, per: string): string =>
      total({ lines: [{ kind: 'material', name: 'c', quantity, price: { amount: '2 USD', per } }] });
    expect(at('500 sq ft', 'sq ft')).toBe('1000.00 USD');
    expect(at('7.5 cubic yards', '1 cubic yard')).toBe('15.00 USD');
    expect(at('7.5 cu yd', 'cy')).toBe('15.00 USD');
    expect(at(`12' 6"`, 'ft')).toBe('25.00 USD');
    expect(at('500 lf', 'lf')).toBe('1000.00 USD');
  });

  it('adds to no other line', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e7 }), fc.integer({ min: 1, max: 1e7 }), (a, b) => {
        const [x, y] = [`${a / 100} USD`, `${b / 100} USD`];
        const both = jobBid({ lines: [lump('a', x), lump('b', y)] }).figures.total;
        return both.equals(money(x).plus(money(y)));
      }),
      { numRuns: runs(300) },
    );
  });
});

describe('markup and margin', () => {
  const shares = (profit: NonNullable<JobBidInput['profit']>) =>
    jobBid({ lines: [lump('a', '1 USD')], profit }).figures;

  it('are one another exactly, both ways', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (n) => {
        const { markup, margin } = shares({ margin: `${n / 100}%` });
        if (!markup || !margin) return false;
        // n ÷ (10000 − n), multiplied across; and back again.
        const across = markup.times(ratio(`${10_000 - n}:1`)).compareTo(ratio(`${n}:1`)) === 0;
        return across && shares({ markup: { ...markup } }).margin?.compareTo(margin) === 0;
      }),
      { numRuns: runs(300) },
    );
  });

  it('give the same price for the same profit', () => {
    for (const [markup, margin] of [
      ['25%', '20%'],
      ['100%', '50%'],
      ['300%', '75%'],
      ['60%', '37.5%'],
    ] as const) {
      const lines = [lump('a', '1234.56 USD')];
      expect(total({ lines, profit: { markup } })).toBe(total({ lines, profit: { margin } }));
    }
  });
});

describe('options', () => {
  it('come to the bid that has their lines in it', () => {
    const dice = chance(7);
    for (let n = 0; n < runs(60); n++) {
      const { input } = madeBid(dice);
      const { input: other } = madeBid(dice);
      const added = other.lines.map((line, i) => ({ ...line, name: `added ${i}`, option: 'more' }));
      const [option] = jobBid({ ...input, lines: [...input.lines, ...added] }).figures.options ?? [];
      const plain = added.map(({ option: _, ...line }) => line as BidLineInput);
      const whole = jobBid({ ...input, lines: [...input.lines, ...plain] }).figures.total;
      expect(option?.total.format()).toBe(whole.format());
      expect(option?.difference.format()).toBe(whole.minus(jobBid(input).figures.total).format());
    }
  });
});

describe('the range of a bid', () => {
  const lines = [
    lump('a', '1000 USD', { low: '800 USD', high: '1700 USD' }),
    lump('b', '2500 USD', { low: '2400 USD', high: '2900 USD', taxable: true }),
    lump('c', '400 USD'),
  ];
  const terms = {
    tax: { kind: 'on-purchases', rate: '7%', on: ['material'] },
    overhead: { markup: '12%' },
    profit: { margin: '15%' },
    contingency: { share: '4%' },
  } as const;

  /** A triangular draw by the inverse of its distribution. */
  function drawn([a, m, b]: readonly [number, number, number], u: number): number {
    const turn = (m - a) / (b - a);
    return u < turn ? a + Math.sqrt(u * (b - a) * (m - a)) : b - Math.sqrt((1 - u) * (b - a) * (b - m));
  }

  it('has the mean and the spread that drawn jobs have', () => {
    const { range } = jobBid({ lines, ...terms, distribution: 'triangular' }).figures;
    const dice = chance(11);
    const all = Array.from({ length: 20_000 }, () => {
      const [x, y] = [drawn([800, 1000, 1700], dice.next()), drawn([2400, 2500, 2900], dice.next())];
      return ((x + y * 1.07 + 400) * 1.04 * 1.12) / 0.85;
    });
    const mean = all.reduce((s, v) => s + v, 0) / all.length;
    const spread = Math.sqrt(all.reduce((s, v) => s + (v - mean) ** 2, 0) / all.length);
    expect(range?.mean.toNumber('USD')).toBeCloseTo(mean, -1);
    expect((range?.spread.toNumber('USD') ?? 0) / spread).toBeCloseTo(1, 1);
    const within = all.filter((v) => Math.abs(v - mean) <= spread).length / all.length;
    expect(within).toBeGreaterThan(0.6);
    expect(within).toBeLessThan(0.75);
  });

  it('ends where everything is at its least and at its most', () => {
    const { range } = jobBid({ lines, ...terms }).figures;
    const at = (x: string, y: string): string =>
      total({ lines: [lump('a', x), lump('b', y, { taxable: true }), lump('c', '400 USD')], ...terms });
    expect(range?.low.format()).toBe(at('800 USD', '2400 USD'));
    expect(range?.likely.format()).toBe(at('1000 USD', '2500 USD'));
    expect(range?.high.format()).toBe(at('1700 USD', '2900 USD'));
  });
});

describe('progress', () => {
  it('pays the contract in the end, however it is split', () => {
    const dice = chance(5);
    for (let n = 0; n < runs(60); n++) {
      const { input } = madeBid(dice);
      const { contract, payment } = jobBid({ ...input, progress: { complete: '100%' } }).figures;
      expect(payment?.due.format()).toBe(contract?.format());
      const part = jobBid({
        ...input,
        retainage: '10%',
        progress: { complete: `${dice.below(100)}%` },
      }).figures;
      const rest = part.payment?.balance.plus(part.payment.due).plus(part.payment.paid);
      expect(rest?.format()).toBe(part.contract?.format());
    }
  });
});
