/** The heat balance: the equation as it is taught, in floating numbers, and what must hold for any batch. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freshConcreteTemperature } from '../../src/index';
import { runs } from '../support/effort';

const n = (min: number, max: number) => fc.integer({ min, max });
/** Pounds and degrees Fahrenheit, moisture in tenths of a percent. */
const batches = fc.record({
  cement: n(300, 900),
  sand: n(800, 1600),
  stone: n(1200, 2000),
  water: n(100, 400),
  ice: n(0, 60),
  moist: n(0, 80),
  cementAt: n(40, 160),
  sandAt: n(35, 110),
  stoneAt: n(35, 110),
  waterAt: n(34, 100),
});
type Batch = typeof batches extends fc.Arbitrary<infer T> ? T : never;

const input = (b: Batch) => ({
  cement: { mass: `${b.cement} lb`, temperature: `${b.cementAt} degF` },
  aggregates: [
    { mass: `${b.sand} lb`, moisture: `${b.moist / 10}%`, temperature: `${b.sandAt} degF` },
    { mass: `${b.stone} lb`, moisture: '1%', temperature: `${b.stoneAt} degF` },
  ],
  water: { mass: `${b.water} lb`, temperature: `${b.waterAt} degF` },
  ...(b.ice > 0 ? { ice: { mass: `${b.ice} lb` } } : {}),
});

const mixed = (b: Batch, wanted?: string) =>
  freshConcreteTemperature({ ...input(b), ...(wanted ? { wanted } : {}) }).figures;

/** The equation of ACI 305 in degrees Fahrenheit. */
function taught(b: Batch): number {
  const [ws, wg] = [(b.sand * b.moist) / 1000, b.stone / 100];
  const top =
    0.22 * (b.sandAt * b.sand + b.stoneAt * b.stone + b.cementAt * b.cement) +
    b.waterAt * b.water +
    b.sandAt * ws +
    b.stoneAt * wg -
    112 * b.ice;
  return top / (0.22 * (b.sand + b.stone + b.cement) + b.water + ws + wg + b.ice);
}

describe('the heat balance', () => {
  it('is the equation as it is taught', () => {
    fc.assert(
      fc.property(batches, (b) => Math.abs(mixed(b).temperature.toNumber('degF') - taught(b)) < 1e-9),
      { numRuns: runs(100) },
    );
  });

  it('leaves ingredients of one temperature at it', () => {
    fc.assert(
      fc.property(batches, n(34, 100), (b, t) => {
        const even = { ...b, ice: 0, cementAt: t, sandAt: t, stoneAt: t, waterAt: t };
        return Math.abs(mixed(even).temperature.toNumber('degF') - t) < 1e-12;
      }),
      { numRuns: runs(60) },
    );
  });

  it('is the same in both unit systems', () => {
    fc.assert(
      fc.property(batches, (b) => {
        const one = freshConcreteTemperature(input(b));
        const other = freshConcreteTemperature(
          JSON.parse(
            JSON.stringify(input(b)).replace(
              /"(\d+) (lb|degF)"/g,
              (_, number: string, unit: string) =>
                `"${unit === 'lb' ? Number(number) * 0.45359237 : Number((((Number(number) - 32) * 5) / 9).toFixed(12))} ${unit === 'lb' ? 'kg' : 'degC'}"`,
            ),
          ),
        );
        const off = one.figures.temperature.toNumber('degC') - other.figures.temperature.toNumber('degC');
        return other.system === 'metric' && Math.abs(off) < 1e-9;
      }),
      { numRuns: runs(60) },
    );
  });

  it('tells by how much an ingredient moves it', () => {
    fc.assert(
      fc.property(batches, (b) => {
        const before = mixed(b);
        const after = mixed({ ...b, waterAt: b.waterAt + 10 });
        const moves = before.ingredients.find(({ ingredient }) => ingredient === 'water')?.moves;
        const moved = after.temperature.toNumber('degF') - before.temperature.toNumber('degF');
        return Math.abs((moves?.toNumber('degF') ?? 0) - moved) < 1e-9;
      }),
      { numRuns: runs(60) },
    );
  });

  it('counts water for four and a half of anything dry', () => {
    const { ingredients } = mixed({ ...one, cement: 500, water: 500 });
    const [cement, water] = ['cement', 'water'].map(
      (name) => ingredients.find(({ ingredient }) => ingredient === name)?.moves.toNumber('degF') ?? 0,
    ) as [number, number];
    expect(water / cement).toBeCloseTo(4.5, 0);
  });
});

const one: Batch = {
  cement: 564,
  sand: 1200,
  stone: 1800,
  water: 240,
  ice: 0,
  moist: 40,
  cementAt: 70,
  sandAt: 70,
  stoneAt: 70,
  waterAt: 70,
};

type Wanted = NonNullable<ReturnType<typeof mixed>['wanted']>;
type Job = ReturnType<typeof input>;

/** The batch with its water and its aggregates as they are wanted, together or each for itself. */
function heated(job: Job, { by, water, aggregates }: Wanted): object[] {
  const wet = water && { water: { ...job.water, temperature: water } };
  const dry = aggregates && {
    aggregates: job.aggregates.map((a) => ({ ...a, temperature: aggregates })),
  };
  const ways = by === 'water and aggregates' ? [{ ...wet, ...dry }] : [wet, dry];
  return ways.filter((way) => way !== undefined);
}

const iced = (job: Job, { ice, waterLeft }: Wanted): object[] =>
  ice && waterLeft ? [{ water: { ...job.water, mass: waterLeft }, ice: { mass: ice } }] : [];

describe('a wanted temperature', () => {
  it('comes out when the batch is changed as it says', () => {
    fc.assert(
      fc.property(batches, n(45, 95), (b, t) => {
        const plain = { ...b, ice: 0 };
        const wanted = mixed(plain, `${t} degF`).wanted as Wanted;
        const job = input(plain);
        return [...heated(job, wanted), ...iced(job, wanted)].every((changed) => {
          const { temperature } = freshConcreteTemperature({ ...job, ...changed }).figures;
          return Math.abs(temperature.toNumber('degF') - t) < 1e-9;
        });
      }),
      { numRuns: runs(100) },
    );
  });

  it('is never made of more ice than there is water', () => {
    fc.assert(
      fc.property(batches, n(33, 60), (b, t) => {
        const { wanted } = mixed({ ...b, ice: 0 }, `${t} degF`);
        return (wanted?.ice?.toNumber('lb') ?? 0) <= b.water + 1e-9;
      }),
      { numRuns: runs(60) },
    );
  });
});
