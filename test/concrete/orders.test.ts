/** Orders split into loads, and bags: what must hold for any of them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bagCount, baseTonnage, concreteOrder, excavation, type LoadSplit, volume } from '../../src/index';

const n = (min: number, max: number) => fc.integer({ min, max });
const cases = fc.tuple(
  n(1, 200_000),
  n(0, 200),
  fc.constantFrom('0.25 yd3', '0.5 yd3', '1 yd3', '0.1 m3'),
  fc.constantFrom('9 yd3', '9.8 yd3', '10 yd3', '7.5 m3'),
);
const order = (
  [v, a, increment, truckCapacity]: readonly [number, number, string, string],
  more: { split?: LoadSplit; minimumLoad?: string } = {},
) =>
  concreteOrder({ volume: `${v}/1000 yd3`, allowance: `${a}/10%`, increment, truckCapacity, ...more })
    .figures;

describe('an even split', () => {
  it('orders the same, carries it all, overloads no truck, and differs by one increment at most', () => {
    fc.assert(
      fc.property(cases, (job) => {
        const [, , increment, truck] = job;
        const even = order(job, { split: 'even' });
        const sum = even.loads.reduce((all, load) => all.plus(load), volume('0 yd3'));
        const [first, last] = [even.loads[0], even.loads.at(-1)];
        if (!first || !last) throw new Error('no loads');
        return (
          even.order.equals(order(job).order) &&
          sum.compareTo(even.order) === 0 &&
          !first.greaterThan(volume(truck)) &&
          !first.minus(last).greaterThan(volume(increment)) &&
          even.loads.every((l) => l.upTo(volume(increment)).compareTo(l) === 0)
        );
      }),
    );
  });

  it('is chosen where it spares a load below the minimum, and only there', () => {
    fc.assert(
      fc.property(cases, n(1, 16), (job, quarter) => {
        const minimumLoad = `${quarter}/4 yd3`;
        const plain = order(job, { split: 'full-first', minimumLoad });
        const even = order(job, { split: 'even', minimumLoad });
        const free = order(job, { minimumLoad });
        const dribble =
          plain.loads.length > 1 && (plain.loads.at(-1)?.lessThan(volume(minimumLoad)) ?? false);
        const spared = even.loads.every((l) => !l.lessThan(volume(minimumLoad)));
        const wanted = dribble && spared && even.loads.length === plain.loads.length ? 'even' : 'full-first';
        return free.split === wanted;
      }),
    );
  });

  it('never leaves an uneconomic dribble where increments divide the truck', () => {
    // With n loads each is within one increment of the mean, and the mean of two or more is over half a truck.
    fc.assert(
      fc.property(n(9001, 200_000), (v) => {
        const { loads } = order([v, 0, '0.25 yd3', '9 yd3'], { minimumLoad: '4 yd3' });
        return loads.every((l) => !l.lessThan(volume('4 yd3')));
      }),
    );
  });
});

describe('elements', () => {
  it('with one allowance come to the same as their sum, within what rounding up adds once', () => {
    fc.assert(
      fc.property(fc.array(n(1, 5000), { minLength: 1, maxLength: 12 }), n(0, 15), (volumes, a) => {
        const t = { increment: '0.25 yd3', truckCapacity: '9 yd3' } as const;
        const allowance = `${a}%`;
        const each = concreteOrder({
          elements: volumes.map((v) => ({ volume: `${v}/100 yd3`, allowance })),
          ...t,
        });
        const sum = volumes.reduce((x, y) => x + y, 0);
        const whole = concreteOrder({ volume: `${sum}/100 yd3`, allowance, ...t });
        return (
          each.figures.order.equals(whole.figures.order) &&
          each.figures.withAllowance.compareTo(whole.figures.withAllowance) === 0
        );
      }),
    );
  });

  it('show the published allowances, which disagree', () => {
    expect(order([1000, 50, '1 yd3', '9 yd3']).publishedAllowances.map((t) => /^\d+%/.exec(t)?.[0])).toEqual([
      '5%',
      '8%',
      '10%',
      '10%',
    ]);
  });
});

describe('bag-count', () => {
  it('never falls short and never has a whole bag to spare', () => {
    fc.assert(
      fc.property(
        n(1, 60_000),
        n(0, 200),
        fc.constantFrom('40 lb', '50 lb', '60 lb', '80 lb'),
        (v, a, bag) => {
          const { figures } = bagCount({
            volume: `${v}/1000 ft3`,
            allowance: `${a}/10%`,
            bag,
            barrow: '2 ft3',
          });
          const spare = figures.made.minus(figures.withAllowance);
          const trips = figures.barrowTrips?.toNumber('each') ?? 0;
          const barrows = figures.withAllowance.toNumber('ft3') / 2;
          return (
            spare.sign() >= 0 &&
            spare.lessThan(figures.yield) &&
            trips >= barrows - 1e-12 &&
            trips < barrows + 1
          );
        },
      ),
    );
  });

  it('of any size weigh the same for a volume that they fill: yields are in proportion to weight', () => {
    const weights = ['40 lb', '50 lb', '60 lb', '80 lb'].map((bag) => {
      const { weight, water } = bagCount({ volume: '54 ft3', allowance: '0%', bag }).figures;
      return `${weight.format()} ${water.format('gal')}`;
    });
    expect(new Set(weights)).toEqual(new Set(['7200 lb 67.5 gal']));
  });
});

describe('cautions for people on the site', () => {
  it('come with their severity and their source', () => {
    const dig = excavation({ method: 'trench', length: '20 ft', width: '2 ft', depth: '6 ft' });
    const base = baseTonnage({ area: '500 ft2', depth: '6 in', material: 'gravel' });
    const bags = bagCount({ volume: '9 ft3', allowance: '10%', bag: '80 lb' });
    const found = [dig, base, bags].flatMap(({ cautions }) =>
      cautions.map(({ code, severity, source }) => [
        code,
        `${severity}, ${source.fromMemory ? 'memory' : 'read'}`,
      ]),
    );
    expect(Object.fromEntries(found)).toMatchObject({
      'trench-depth': 'stop, memory',
      'buried-utilities': 'warning, memory',
      'wheel-loads': 'warning, memory',
      'lifting-bags': 'warning, memory',
      'alkaline-burns': 'warning, memory',
    });
  });
});
