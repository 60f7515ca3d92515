/** Maturity: both equations in floating numbers, and what must hold for any history. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maturity, sawWindow } from '../../src/index';
import { runs } from '../support/effort';

/** Minutes between readings, and tenths of a degree Celsius above freezing. */
const histories = fc.array(
  fc.record({ minutes: fc.integer({ min: 5, max: 300 }), tenths: fc.integer({ min: 0, max: 600 }) }),
  { minLength: 2, maxLength: 12 },
);
type History = readonly { readonly minutes: number; readonly tenths: number }[];

function readings(history: History): { at: number; celsius: number }[] {
  let at = 0;
  return history.map(({ minutes, tenths }, i) => {
    at += i === 0 ? 0 : minutes;
    return { at, celsius: tenths / 10 };
  });
}

const metric = (history: History) =>
  maturity({
    history: readings(history).map(({ at, celsius }) => ({
      at: `${at} min`,
      temperature: `${celsius} degC`,
    })),
  }).figures;

describe('both methods', () => {
  it('are the equations in floating numbers', () => {
    fc.assert(
      fc.property(histories, (history) => {
        let [m, e] = [0, 0];
        const all = readings(history);
        for (const [i, b] of all.entries()) {
          const a = all[i - 1];
          if (!a) continue;
          const [t, mean] = [(b.at - a.at) / 60, (a.celsius + b.celsius) / 2];
          m += Math.max(0, mean + 10) * t;
          e += t * Math.exp(-5000 * (1 / (mean + 273.15) - 1 / 293.15));
        }
        const { temperatureTime, equivalentAge } = metric(history);
        return (
          Math.abs(temperatureTime.toNumber('degC-h') - m) < 1e-9 * (1 + m) &&
          Math.abs(equivalentAge.toNumber('h') - e) < 1e-9 * (1 + e)
        );
      }),
      { numRuns: runs(60) },
    );
  });

  it('come to the same in both unit systems', () => {
    fc.assert(
      fc.property(histories, (history) => {
        const { figures, system } = maturity({
          history: readings(history).map(({ at, celsius }) => ({
            at: `${at} min`,
            temperature: `${(celsius * 1.8 + 32).toFixed(2)} degF`,
          })),
        });
        const other = metric(history);
        return (
          system === 'customary' &&
          figures.temperatureTime.compareTo(other.temperatureTime) === 0 &&
          Math.abs(figures.equivalentAge.over(other.equivalentAge).toNumber(':1') - 1) < 1e-15
        );
      }),
      { numRuns: runs(40) },
    );
  });

  it('add up where a history is cut at a reading', () => {
    fc.assert(
      fc.property(histories, fc.nat(), (history, where) => {
        if (history.length < 3) return true;
        const cut = 1 + (where % (history.length - 2));
        const [whole, first, second] = [history, history.slice(0, cut + 1), history.slice(cut)].map(
          metric,
        ) as [ReturnType<typeof metric>, ReturnType<typeof metric>, ReturnType<typeof metric>];
        const sum = first.temperatureTime.plus(second.temperatureTime);
        const age = first.equivalentAge.plus(second.equivalentAge);
        return (
          sum.compareTo(whole.temperatureTime) === 0 &&
          Math.abs(age.minus(whole.equivalentAge).toNumber('s')) < 1e-9
        );
      }),
      { numRuns: runs(40) },
    );
  });

  it('grow with warmth', () => {
    fc.assert(
      fc.property(histories, (history) => {
        const [cool, warm] = [metric(history), metric(history.map((r) => ({ ...r, tenths: r.tenths + 10 })))];
        return (
          warm.temperatureTime.greaterThan(cool.temperatureTime) &&
          warm.equivalentAge.greaterThan(cool.equivalentAge)
        );
      }),
      { numRuns: runs(40) },
    );
  });

  it('are the same with a long list of readings, which is summed up by averages', () => {
    const history = Array.from({ length: 1000 }, (_, i) => ({
      at: `${i * 5} min`,
      temperature: `${20 + (i % 7)} degC`,
    }));
    const { figures, working } = maturity({ history });
    expect(working.length).toBeLessThan(10);
    expect(figures.temperatureTime.toNumber('degC-h') / figures.span.toNumber('h')).toBeCloseTo(33, 1);
  });
});

it('tells a saw when the concrete is ready', () => {
  const { wanted } = maturity({
    history: [
      { at: '0 h', temperature: '72 degF' },
      { at: '3 h', temperature: '76 degF' },
      { at: '6 h', temperature: '84 degF' },
    ],
    calibration: [
      { maturity: '200 degF-h', strength: '60 psi' },
      { maturity: '900 degF-h', strength: '900 psi' },
    ],
    wanted: '250 psi',
  }).figures;
  if (!wanted?.reachedAt) throw new Error('not reached');
  const { start, startedBy } = sawWindow({
    saw: 'conventional',
    ready: { by: 'maturity', after: wanted.reachedAt, within: '1 h' },
  }).figures;
  expect(startedBy).toBe('maturity');
  expect(start.from.plus(start.to).toNumber('h') / 2).toBeCloseTo(wanted.reachedAt.toNumber('h'), 9);
});
