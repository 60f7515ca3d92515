/** Drying of the surface: tables of vapor, both forms of both equations, and what must hold for any weather. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaporationRate } from '../../src/index';
import { runs } from '../support/effort';

/** CRC Handbook of Chemistry and Physics, 73rd edition: kPa from 0 to 50 degrees Celsius. */
const CRC = [
  0.61129, 0.65716, 0.70605, 0.75813, 0.81359, 0.8726, 0.93537, 1.0021, 1.073, 1.1482, 1.2281, 1.3129, 1.4027,
  1.4979, 1.5988, 1.7056, 1.8185, 1.938, 2.0644, 2.1978, 2.3388, 2.4877, 2.6447, 2.8104, 2.985, 3.169, 3.3629,
  3.567, 3.7818, 4.0078, 4.2455, 4.4953, 4.7578, 5.0335, 5.3229, 5.6267, 5.9453, 6.2795, 6.6398, 6.9969,
  7.3814, 7.784, 8.2054, 8.6463, 9.1075, 9.5895, 10.094, 10.62, 11.171, 11.745, 12.344,
];
/** The row of 38 degrees is misprinted: its neighbors, by fourth differences, give 6.6298. */
const MISPRINT = 38;

const saturated = (celsius: number): number =>
  evaporationRate({
    airTemperature: '20 degC',
    humidity: '50%',
    concreteTemperature: `${celsius} degC`,
    wind: '5 km/h',
  }).figures.vaporAtSurface.toNumber('kPa');

describe('the pressure of vapor', () => {
  it('is that of the table, but for the row that is misprinted', () => {
    const off = CRC.map((kPa, t) => Math.abs(saturated(t) / kPa - 1));
    expect(off.flatMap((x, t) => (x > 0.0005 ? [t] : []))).toEqual([MISPRINT]);
  });

  it('is the same in both unit systems', () => {
    for (let t = 0; t <= 50; t += 5) {
      const f = evaporationRate({
        airTemperature: '70 degF',
        humidity: '50%',
        concreteTemperature: `${t * 1.8 + 32} degF`,
        wind: '5 mph',
      }).figures.vaporAtSurface.toNumber('kPa');
      expect(Math.abs(f / saturated(t) - 1), `${t}`).toBeLessThan(2e-6);
    }
  });
});

/** Weather within the chart, in tenths of a degree Celsius, percent, and tenths of km/h. */
const weather = fc.record({
  air: fc.integer({ min: 50, max: 370 }),
  concrete: fc.integer({ min: 50, max: 370 }),
  humidity: fc.integer({ min: 5, max: 95 }),
  wind: fc.integer({ min: 0, max: 400 }),
});
type Weather = typeof weather extends fc.Arbitrary<infer T> ? T : never;

const metric = ({ air, concrete, humidity, wind }: Weather) =>
  evaporationRate({
    airTemperature: `${air / 10} degC`,
    concreteTemperature: `${concrete / 10} degC`,
    humidity: `${humidity}%`,
    wind: `${wind / 10} km/h`,
  }).figures;

const customary = ({ air, concrete, humidity, wind }: Weather) =>
  evaporationRate({
    airTemperature: `${(air * 0.18 + 32).toFixed(6)} degF`,
    concreteTemperature: `${(concrete * 0.18 + 32).toFixed(6)} degF`,
    humidity: `${humidity}%`,
    wind: `${(wind / 16.09344).toFixed(9)} mph`,
  }).figures;

const inMetric = (f: ReturnType<typeof metric>): number => f.rate.toNumber('kg/m2/h');

/** What the concrete would dry at into air without water, and what the water in the air gives back. */
const terms = ({ air, concrete, humidity, wind }: Weather): readonly [number, number] => {
  const term = (tenths: number): number => 5e-6 * (tenths / 10 + 18) ** 2.5 * (wind / 10 + 4);
  return [term(concrete), (humidity / 100) * term(air)];
};

describe('the one equation', () => {
  it('differs between the unit systems by no more than its rounded constants', () => {
    // 5 for 5.275, 18 for 17.78 and 4 for 4.02: 5.1% at most of what dries off and what the air gives back.
    fc.assert(
      fc.property(weather, (w) => {
        const [away, back] = terms(w);
        return Math.abs(inMetric(metric(w)) - inMetric(customary(w))) <= 0.051 * (away + back);
      }),
      { numRuns: runs(60) },
    );
  });

  it('is near the equation by the pressures of vapor in the warmth that it was made for', () => {
    fc.assert(
      fc.property(weather, (w) => {
        const warm = { ...w, air: 150 + (w.air % 220), concrete: 150 + (w.concrete % 220) };
        const [away, back] = terms(warm);
        const { rate, byVaporPressure } = customary(warm);
        return Math.abs(rate.minus(byVaporPressure).toNumber('kg/m2/h')) <= 0.15 * (away + back);
      }),
      { numRuns: runs(60) },
    );
  });

  it('is the closed form in floating numbers', () => {
    fc.assert(
      fc.property(weather, (w) => {
        const [t, a] = [w.concrete / 10 + 18, w.air / 10 + 18];
        const found = 5e-6 * (t ** 2.5 - (w.humidity / 100) * a ** 2.5) * (w.wind / 10 + 4);
        return Math.abs(found - inMetric(metric(w))) < 1e-9;
      }),
      { numRuns: runs(60) },
    );
  });

  it('dries faster with warmer concrete, drier air and, where it dries at all, more wind', () => {
    fc.assert(
      fc.property(weather, (w) => {
        const now = metric(w).rate;
        const hotter = metric({ ...w, concrete: w.concrete + 5 }).rate;
        const drier = metric({ ...w, humidity: w.humidity - 1 }).rate;
        const windier = metric({ ...w, wind: w.wind + 5 }).rate;
        return (
          hotter.greaterThan(now) &&
          drier.greaterThan(now) &&
          (now.sign() > 0 ? windier.greaterThan(now) : !windier.greaterThan(now))
        );
      }),
      { numRuns: runs(40) },
    );
  });
});

describe('what to do', () => {
  it('comes where the limit is passed or near, and lowers the drying with each step', () => {
    fc.assert(
      fc.property(weather, (w) => {
        const { next, verdict, rate } = metric(w);
        const rates = [rate, ...(next ?? []).flatMap((one) => one.rate ?? [])];
        const falls = rates.every((r, i) => i === 0 || r.lessThan(rates[i - 1] as typeof r));
        return falls && (next !== undefined) === /^(?:over|near)/.test(verdict);
      }),
      { numRuns: runs(60) },
    );
  });

  it('brings the wind of a station down to the slab, by about a third', () => {
    const { windAtSurface } = evaporationRate({
      airTemperature: '70 degF',
      humidity: '50%',
      concreteTemperature: '70 degF',
      wind: '12 mph',
      windHeight: '33 ft',
    }).figures;
    expect(windAtSurface.toNumber('mph') / 12).toBeGreaterThan(0.63);
    expect(windAtSurface.toNumber('mph') / 12).toBeLessThan(0.68);
  });
});
