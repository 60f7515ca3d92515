/** Rounds of trucks: they agree with the closed form of a cycle, carry all the concrete, and come out the same. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type TruckPlanFigures, type TruckPlanInput, truckPlan, volume } from '../../src/index';
import { worksheet } from '../../src/report/index';
import { runs } from '../support/effort';

const n = (min: number, max: number) => fc.integer({ min, max });

/** Whole minutes and yards, so that plain numbers are exact enough to compare with. */
const days = fc.record({
  count: n(1, 40),
  place: n(4, 70),
  loading: n(3, 25),
  travel: n(0, 70),
  wash: n(0, 20),
  back: n(0, 70),
  trucks: n(1, 12),
});

type Day = typeof days extends fc.Arbitrary<infer T> ? T : never;

/** Loads of so many yards that take so many minutes each. */
function plan(day: Day, more: Partial<TruckPlanInput> = {}): TruckPlanFigures {
  const { count, place, loading, travel, wash, back } = day;
  return truckPlan({
    volume: `${place * count} yd3`,
    truckCapacity: `${place} yd3`,
    placing: { kind: 'rate', rate: '60 yd3/h' },
    loadingTime: `${loading} min`,
    travelTime: `${travel} min`,
    washOutTime: `${wash} min`,
    returnTime: `${back} min`,
    ...more,
  }).figures;
}

const minutes = (q: { toNumber(unit: 'min'): number }): number => q.toNumber('min');

/** The same loads as a list, each read on its own. */
const listOf = ({ count, place }: Day): string[] => Array.from({ length: count }, () => `${place} yd3`);

describe('trucks', () => {
  it('settle into the closed form of their round, whether sent at once or by a schedule', () => {
    fc.assert(
      fc.property(days, fc.constantFrom<'at-once' | 'spaced'>('at-once', 'spaced'), (day, sending) => {
        const { place, loading, travel, wash, back, trucks } = day;
        // Long enough for every truck to have gone round a few times.
        const { loads, interval } = plan({ ...day, count: 45 }, { trucks, sending });
        const round = loading + travel + place + wash + back;
        const closed = Math.max(place, loading, round / trucks);
        const between = minutes(loads[32]?.starts as never);
        const last = minutes(loads[32 + trucks]?.starts as never);
        expect(minutes(interval)).toBeCloseTo(closed, 6);
        expect(last - between).toBeCloseTo(trucks * closed, 6);
      }),
      { numRuns: runs(120) },
    );
  });

  it('that are needed keep placing going, and one fewer does not', () => {
    fc.assert(
      fc.property(days, (day) => {
        const free = plan(day);
        const needed = Number(free.trucksNeeded.value);
        const { place, loading, travel, wash, back, count } = day;
        const round = loading + travel + place + wash + back;
        expect(needed).toBe(Math.min(count, Math.ceil(round / Math.max(place, loading) - 1e-9)));
        // Followed one by one, as loads that differ are, they are as many.
        const listed = plan(day, {
          volume: undefined,
          truckCapacity: undefined,
          loads: listOf(day),
        } as never);
        expect(Number(listed.trucksNeeded.value)).toBe(needed);
        // Where the plant is the slower one, only the plant makes gaps.
        const byPlant = Math.max(0, loading - place) * (count - 1);
        expect(minutes(plan(day, { trucks: needed }).gaps)).toBeCloseTo(byPlant, 6);
        if (needed > 1)
          expect(minutes(plan(day, { trucks: needed - 1 }).gaps)).toBeGreaterThan(byPlant + 1e-6);
      }),
      { numRuns: runs(150) },
    );
  });

  it('bring all of it, each in its turn, and no truck is in two places', () => {
    fc.assert(
      fc.property(
        fc.array(n(1, 40), { minLength: 1, maxLength: 30 }),
        days,
        fc.constantFrom<'at-once' | 'spaced'>('at-once', 'spaced'),
        (quarters, day, sending) => {
          const loads = quarters.map((q) => `${q / 4} yd3`);
          const { trucks } = day;
          const figures = truckPlan({
            loads,
            placing: { kind: 'rate', rate: '16 yd3/h' },
            loadingTime: `${day.loading} min`,
            travelTime: `${day.travel} min`,
            washOutTime: `${day.wash} min`,
            returnTime: `${day.back} min`,
            trucks,
            sending,
          }).figures;
          const sum = figures.loads.reduce((all, load) => all.plus(load.volume), volume('0 yd3'));
          expect(sum.compareTo(figures.volume)).toBe(0);
          expect(sum.toNumber('yd3')).toBeCloseTo(quarters.reduce((a, b) => a + b, 0) / 4, 9);
          const free: number[] = [];
          let [empty, left] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
          for (const load of figures.loads) {
            const [starts, ends, arrives] = [load.starts, load.ends, load.arrives].map(minutes) as [
              number,
              number,
              number,
            ];
            const departs = minutes(load.departs);
            // One unloads at a time, one loads at a time.
            expect(starts).toBeGreaterThanOrEqual(Math.max(arrives, empty) - 1e-6);
            expect(departs - day.loading).toBeGreaterThanOrEqual(left - 1e-6);
            const truck = Number(load.truck.value);
            expect(departs - day.loading).toBeGreaterThanOrEqual((free[truck] ?? -1e9) - 1e-6);
            free[truck] = ends + day.wash + day.back;
            // Placing takes what the rate takes, and nothing stands still but for want of a truck.
            expect(ends - starts).toBeCloseTo((load.volume.toNumber('yd3') / 16) * 60, 6);
            expect(minutes(load.waits)).toBeCloseTo(starts - arrives, 6);
            if (minutes(load.gap) > 1e-6) expect(starts).toBeCloseTo(arrives, 6);
            expect(minutes(load.age)).toBeCloseTo(ends - departs + day.loading, 6);
            [empty, left] = [ends, departs];
          }
          const placing = (quarters.reduce((a, b) => a + b, 0) / 4 / 16) * 60;
          expect(minutes(figures.ends)).toBeCloseTo(placing + minutes(figures.gaps), 6);
        },
      ),
      { numRuns: runs(100) },
    );
  });

  it('come out the same each time', () => {
    fc.assert(
      fc.property(days, (day) => {
        expect(JSON.stringify(plan(day))).toBe(JSON.stringify(plan(day)));
      }),
      { numRuns: runs(25) },
    );
  });

  it('one more never makes a gap longer, sent by a schedule', () => {
    fc.assert(
      fc.property(days, (day) => {
        const [few, more] = [plan(day, { trucks: day.trucks }), plan(day, { trucks: day.trucks + 1 })];
        expect(minutes(more.gaps)).toBeLessThanOrEqual(minutes(few.gaps) + 1e-6);
        expect(minutes(more.ends)).toBeLessThanOrEqual(minutes(few.ends) + 1e-6);
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('set', () => {
  const at = (T: string): [number, number] => {
    const { from, to } = plan(
      { count: 1, place: 30, loading: 10, travel: 20, wash: 10, back: 20, trucks: 1 },
      { concreteTemperature: T },
    ).initialSet;
    return [from.toNumber('h'), to.toNumber('h')];
  };

  it('is the same told in either scale, within what four places of the factor carry', () => {
    fc.assert(
      fc.property(n(35, 115), (f) => {
        const [a, b] = [at(`${f} degF`), at(`${((f - 32) / 1.8).toFixed(6)} degC`)];
        const closed = 2 ** ((70 - f) / 20);
        expect(a[0]).toBeCloseTo(4 * closed, 2);
        expect(a[1]).toBeCloseTo(6 * closed, 2);
        expect(b[0]).toBeCloseTo(a[0], 2);
      }),
      { numRuns: runs(60) },
    );
  });
});

describe('wheelbarrows', () => {
  it('bring what their trips bring', () => {
    fc.assert(
      fc.property(n(1, 20), n(10, 200), n(10, 120), n(10, 30), (carriers, feet, lost, tenths) => {
        const { placingRate } = truckPlan({
          loads: ['5 yd3'],
          placing: {
            kind: 'wheelbarrow',
            carriers,
            load: `${tenths / 10} ft3`,
            distance: `${feet} ft`,
            speed: '4 ft/s',
            lostTime: `${lost} s`,
          },
          travelTime: '10 min',
        }).figures;
        const seconds = (2 * feet) / 4 + lost;
        expect(placingRate.toNumber('yd3/h')).toBeCloseTo((carriers * tenths * 360) / seconds / 27, 9);
      }),
      { numRuns: runs(50) },
    );
  });
});

describe('advice about trucks', () => {
  const told = (input: TruckPlanInput): string => worksheet(truckPlan(input)).replace(/\s+/g, ' ');

  it('is to ask the plant where the plant makes the gap', () => {
    const slow = {
      placing: { kind: 'line-pump', rate: '60 yd3/h' },
      travelTime: '30 min',
      loadingTime: '20 min',
    } as const;
    expect(told({ ...slow, volume: '30 yd3', truckCapacity: '10 yd3' })).toContain('plant takes');
    expect(told({ ...slow, loads: ['20 yd3', '3 yd3', '3 yd3'] })).toContain('plant takes');
  });

  it('is another schedule where the schedule makes the gap', () => {
    const loose = {
      placing: { kind: 'rate', rate: '30 yd3/h' },
      travelTime: '20 min',
      spacing: '40 min',
    } as const;
    expect(told({ ...loose, loads: ['10 yd3', '10 yd3', '10 yd3'] })).toContain('Trucks 20 min apart');
    expect(told({ ...loose, loads: ['10 yd3', '5 yd3', '10 yd3'] })).toContain('is empty');
  });

  it('is more trucks where they are too few, closer together where the schedule is loose besides', () => {
    const few = {
      loads: Array.from({ length: 8 }, () => '10 yd3'),
      placing: { kind: 'rate', rate: '20 yd3/h' },
      travelTime: '25 min',
      trucks: 2,
    } as const;
    expect(told(few)).toContain('With 4 trucks none waits');
    expect(told({ ...few, spacing: '60 min' })).toContain('With 4 trucks 30 min apart');
  });

  it('is a number of trucks and the time between them, where sent all at once or too close they would queue', () => {
    const rate = { placing: { kind: 'rate', rate: '15 yd3/h' }, travelTime: '20 min' } as const;
    const loads = Array.from({ length: 6 }, () => '9 yd3');
    const many = { ...rate, loads, trucks: 5, sending: 'at-once' } as const;
    expect(told(many)).toContain('With 3 trucks sent 36 min apart none waits');
    expect(told({ ...rate, loads, trucks: 2, sending: 'at-once' })).toContain('With 3 trucks 36 min apart');
    expect(told({ ...rate, loads, trucks: 2, spacing: '20 min' })).toContain('With 3 trucks 36 min apart');
    const mixed = ['9 yd3', '4 yd3', '9 yd3', '4 yd3', '9 yd3', '9 yd3'];
    expect(told({ ...many, loads: mixed })).toContain('trucks that each come as the one before is empty');
    const codes = (input: TruckPlanInput) => truckPlan(input).cautions.map(({ code }) => code);
    expect(codes(many)).toContain('trucks-queue');
    const followed = codes({ ...rate, loads, trucks: 3, spacing: '36 min' });
    expect(followed).not.toContain('trucks-queue');
    expect(followed).not.toContain('placing-waits');
  });

  /** A load is out in time if it is placed in what loading and the way leave of the limit. */
  it('names the largest load that is out in time, and none where the way alone is too long', () => {
    fc.assert(
      fc.property(n(10, 120), n(6, 30), n(6, 11), (travel, rate, truck) => {
        const input: TruckPlanInput = {
          volume: '30 yd3',
          truckCapacity: `${truck} yd3`,
          placing: { kind: 'rate', rate: `${rate} yd3/h` },
          travelTime: `${travel} min`,
          concreteTemperature: '50 degF',
        };
        const room = (rate * (90 - 10 - travel)) / 60;
        const text = told(input);
        const most = Math.floor(room * 4) / 4;
        const late = room < truck;
        if (room <= 0) expect(text).toContain('alone use up that limit');
        else if (late && most >= truck / 4) {
          expect(text).toContain(`loads of at most ${most.toFixed(2)} yd3`);
          const smaller = truckPlan({ ...input, truckCapacity: `${most} yd3` });
          expect(smaller.cautions.map(({ code }) => code)).not.toContain('too-old');
        } else expect(text).not.toContain('loads of at most');
      }),
      { numRuns: runs(60) },
    );
  });

  it('is no promise of trucks where the plant loads slower than they are emptied', () => {
    const slow = { placing: { kind: 'line-pump', rate: '50 yd3/h' }, travelTime: '20 min' } as const;
    const text = told({ ...slow, loads: ['10 yd3', '10 yd3', '10 yd3'], loadingTime: '24 min', trucks: 2 });
    // Twelve minutes to place a load that takes twenty-four to fill.
    expect(text).toContain('With 3 trucks 24 min apart it is down to 12 min');
    const even = told({ ...slow, loads: ['10 yd3', '10 yd3', '10 yd3'], loadingTime: '14 min', trucks: 2 });
    expect(even).toContain('With 3 trucks none waits');
  });

  it('is more trucks where one of unlike loads comes late and the next waits for it', () => {
    const late = {
      loads: ['10 yd3', '5 yd3', '10 yd3', '5 yd3', '10 yd3'],
      placing: { kind: 'rate', rate: '12 yd3/h' },
      travelTime: '30 min',
    } as const;
    const queues = (input: TruckPlanInput) =>
      truckPlan(input).cautions.some(({ code }) => code === 'trucks-queue');
    expect(queues({ ...late, trucks: 2 })).toBe(true);
    expect(told({ ...late, trucks: 2 })).toMatch(/stiff in the drum. With 4 trucks none waits/);
    expect(queues({ ...late, trucks: 4 })).toBe(false);
  });

  it('looks for what is too old without any waiting, and not only at the oldest', () => {
    const text = told({
      loads: ['9 yd3', '9 yd3', '9 yd3', '4 yd3'],
      placing: { kind: 'rate', rate: '12 yd3/h' },
      travelTime: '40 min',
      loadingTime: '17 min',
      trucks: 4,
      sending: 'at-once',
    });
    // 90 − 40 − 17 leaves 33 min, in which 6.6 yd3 are placed.
    expect(text).toContain('load 4 is 2 h 41 min old');
    expect(text).toContain('loads of at most 6.50 yd3');
  });

  it('is that of the worst: what sets before it is out is never said to keep going', () => {
    fc.assert(
      fc.property(days, n(40, 110), (day, f) => {
        const { oldest, initialSet, ageLimit, verdict } = plan(day, { concreteTemperature: `${f} degF` });
        expect(verdict === 'sets in the truck').toBe(minutes(oldest) >= minutes(initialSet.from));
        if (verdict === 'keeps going') expect(minutes(oldest)).toBeLessThanOrEqual(minutes(ageLimit));
      }),
      { numRuns: runs(60) },
    );
  });
});
