/** Invoices: whole cents in big integers, the order of tickets, and where an allowance must lie. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type InvoiceCheckInput, invoiceCheck } from '../../src/index';
import { runs } from '../support/effort';
import { halfUp } from '../support/job/bids';

const n = (min: number, max: number) => fc.integer({ min, max });
const hundredths = (value: number | bigint): string => (Number(value) / 100).toFixed(2);
const volumes = fc.array(n(1, 1200), { minLength: 1, maxLength: 8 });

const job = (planned: number, tickets: readonly number[]): InvoiceCheckInput => ({
  elements: [{ name: 'slab', planned: `${hundredths(planned)} yd3` }],
  tickets: tickets.map((v) => ({ volume: `${hundredths(v)} yd3` })),
});

describe('an invoice', () => {
  it('comes to whole cents in big integers, with its short loads', () => {
    fc.assert(
      fc.property(
        volumes,
        n(1, 40_000),
        n(1, 900),
        n(0, 1200),
        n(0, 2000),
        (tickets, p, minimum, fee, rate) => {
          const all = tickets.reduce((a, b) => a + b, 0);
          const concrete = halfUp(BigInt(all) * BigInt(p), 100n);
          const lacking = tickets.reduce((sum, v) => sum + Math.max(minimum - v, 0), 0);
          const short = halfUp(BigInt(lacking) * BigInt(fee + 1), 100n);
          const tax = halfUp((concrete + short) * BigInt(rate), 10_000n);
          const usd = (cents: number | bigint): string => `${hundredths(cents)} USD`;
          const { invoice } = invoiceCheck({
            ...job(all, tickets),
            invoice: {
              lines: [
                {
                  kind: 'concrete',
                  name: 'mix',
                  quantity: `${hundredths(all)} yd3`,
                  price: { amount: usd(p), per: 'yd3' },
                  amount: usd(concrete),
                },
              ],
              shortLoad: {
                minimumLoad: `${hundredths(minimum)} yd3`,
                price: { amount: usd(fee + 1), per: '1 yd3' },
                amount: usd(short),
              },
              tax: { rate: `${hundredths(rate)}%`, amount: usd(tax) },
              total: usd(concrete + short + tax),
            },
          }).figures;
          return (
            invoice?.difference.sign() === 0 &&
            invoice.notDelivered?.sign() === 0 &&
            invoice.reckoned.format() === usd(concrete + short + tax)
          );
        },
      ),
      { numRuns: runs(300) },
    );
  });

  it('in two currencies is refused where the other stands', () => {
    const input: InvoiceCheckInput = {
      elements: [{ name: 'slab', planned: '9 yd3' }],
      tickets: [{ volume: '9 yd3' }],
      invoice: {
        lines: [
          {
            kind: 'concrete',
            name: 'mix',
            quantity: '9 yd3',
            price: { amount: '165 USD', per: '1 yd3' },
            amount: '1485.00 USD',
          },
        ],
        shortLoad: { minimumLoad: '4 yd3', price: { amount: '38 EUR', per: '1 yd3' }, amount: '57.00 EUR' },
      },
    };
    expect(invoiceCheck.attempt(input)).toMatchObject({
      ok: false,
      issues: [{ code: 'currency-mismatch', path: 'invoice.shortLoad.price.amount' }],
    });
  });
});

describe('what a job took', () => {
  it('does not mind the order of its tickets, nor how they are split', () => {
    fc.assert(
      fc.property(n(100, 5000), volumes, (planned, tickets) => {
        const whole = tickets.reduce((a, b) => a + b, 0);
        const found = [tickets, [...tickets].reverse(), [whole]].map(
          (list) => invoiceCheck(job(planned, list)).figures,
        );
        return found.every(({ overShare }) => found[0] && overShare.compareTo(found[0].overShare) === 0);
      }),
      { numRuns: runs(200) },
    );
  });

  it('carries an allowance between the least and the most of all jobs', () => {
    const jobs = fc.array(fc.tuple(n(100, 5000), n(100, 6000)), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(jobs, ([[planned, delivered] = [1, 1], ...past]) => {
        const { carry } = invoiceCheck({
          ...job(planned, [delivered]),
          ...(past.length > 0 && {
            pastJobs: past.map(([p, d]) => ({
              planned: `${hundredths(p)} yd3`,
              delivered: `${hundredths(d)} yd3`,
            })),
          }),
        }).figures;
        const sums = [[planned, delivered] as const, ...past].reduce(
          ([p, d], [q, e]) => [p + q, d + e] as const,
          [0, 0] as const,
        );
        const share = Math.max((100 * (sums[1] - sums[0])) / sums[0], 0);
        expect(carry.allowance.toNumber('%')).toBeCloseTo(share, 8);
        return !carry.allowance.greaterThan(carry.most) || carry.most.sign() < 0;
      }),
      { numRuns: runs(200) },
    );
  });
});
