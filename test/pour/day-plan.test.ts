/** The day of a pour: stages stay in their order, warmth and hands never make it later, and moving it moves all of it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DayPlanFigures, type DayPlanInput, type DayRange, dayPlan } from '../../src/index';
import { textSheet } from '../../src/report/index';
import { runs } from '../support/effort';

const n = (min: number, max: number) => fc.integer({ min, max });
const FINISHES = ['float', 'broom', 'hard-trowel', 'stamp', 'exposed-aggregate', 'rock-salt'] as const;
const CASES = ['earliest', 'likely', 'latest'] as const;

const days = fc.record({
  start: n(0, 1439),
  area: n(50, 5000),
  placing: n(10, 300),
  finishers: n(1, 9),
  rate: n(40, 400),
  concrete: n(40, 105),
  air: fc.option(n(35, 105), { nil: undefined }),
  set: fc.option(fc.tuple(n(90, 600), n(0, 300)), { nil: undefined }),
  finish: fc.constantFrom(...FINISHES),
  saw: fc.constantFrom<'conventional' | 'early-entry' | undefined>('conventional', 'early-entry', undefined),
  sheen: fc.option(n(0, 600), { nil: undefined }),
  age: n(0, 40),
});

type Drawn = typeof days extends fc.Arbitrary<infer T> ? T : never;

const clock = (minutes: number): string =>
  `${Math.floor(minutes / 60) % 24}:${String(minutes % 60).padStart(2, '0')}`;

function inputOf(day: Drawn): DayPlanInput {
  const { start, area, placing, finishers, rate, concrete, air, set, finish, saw, sheen, age } = day;
  return {
    startAt: clock(start),
    area: `${area} ft2`,
    placingTime: `${placing} min`,
    finish,
    finishers,
    finishRate: { area: `${rate} ft2`, in: '1 h' },
    concreteTemperature: `${concrete} degF`,
    age: `${age} min`,
    ...(air === undefined ? {} : { airTemperature: `${air} degF` }),
    ...(set ? { initialSet: { from: `${set[0]} min`, to: `${set[0] + set[1]} min` } } : {}),
    ...(saw ? { saw } : {}),
    ...(sheen === undefined ? {} : { sheenAt: clock(start + sheen) }),
    ...(finish === 'exposed-aggregate' ? { washAfter: { from: '12 h', to: '18 h' } } : {}),
  };
}

const plan = (day: Drawn, more: Partial<DayPlanInput> = {}): DayPlanFigures =>
  dayPlan({ ...inputOf(day), ...more }).figures;

const minutes = (q: { toNumber(unit: 'min'): number }): number => q.toNumber('min');
const times = (range: DayRange): number[] => CASES.map((name) => minutes(range[name]));
const notLater = (a: DayRange, b: DayRange): void =>
  times(a).forEach((t, i) => {
    expect(t).toBeLessThanOrEqual((times(b)[i] as number) + 1e-6);
  });
const stageOf = ({ stages }: DayPlanFigures, name: string) => stages.find(({ stage }) => stage === name);

describe('a day', () => {
  it('keeps its stages in order, each from the earliest to the latest', () => {
    fc.assert(
      fc.property(days, (day) => {
        const figures = plan(day);
        figures.stages.forEach((stage, i) => {
          const next = figures.stages[i + 1];
          for (const range of [stage.begins, stage.ends]) {
            const [a, b, c] = times(range) as [number, number, number];
            expect(a).toBeLessThanOrEqual(b + 1e-6);
            expect(b).toBeLessThanOrEqual(c + 1e-6);
          }
          notLater(stage.begins, stage.ends);
          if (next) notLater(stage.begins, next.begins);
        });
        const [wait, finish] = [stageOf(figures, 'wait'), stageOf(figures, 'finish')];
        expect(times(finish?.begins as DayRange)).toEqual(times(wait?.ends as DayRange));
        // Nothing is touched before it opens, the last placed neither.
        notLater(figures.opens, finish?.begins as DayRange);
        times(finish?.ends as DayRange).forEach((end, i) => {
          const last = minutes(figures.placingTime) + (times(figures.opens)[i] as number);
          expect(end).toBeGreaterThanOrEqual(last - 1e-6);
        });
      }),
      { numRuns: runs(70) },
    );
  });

  it('is never later for warmer concrete or air, nor for more hands', () => {
    fc.assert(
      fc.property(days, n(1, 15), (day, more) => {
        const now = plan(day);
        const warmer = plan({ ...day, concrete: Math.min(day.concrete + more, 120) });
        const inSun = day.air === undefined ? now : plan({ ...day, air: day.air + more });
        const helped = plan({ ...day, finishers: day.finishers + more });
        for (const other of [warmer, inSun, helped]) {
          for (const name of ['finish', 'cure', 'leave']) {
            const [a, b] = [stageOf(other, name), stageOf(now, name)];
            notLater(a?.begins as DayRange, b?.begins as DayRange);
            notLater(a?.ends as DayRange, b?.ends as DayRange);
          }
        }
        expect(minutes(now.ifHotter.later)).toBeLessThanOrEqual(1e-6);
        expect(minutes(now.ifColder.later)).toBeGreaterThanOrEqual(-1e-6);
        expect(minutes(now.ifWet.later)).toBeGreaterThanOrEqual(-1e-6);
        for (const shift of [now.ifWindier, now.ifWet])
          expect(Number(shift.finishersNeeded.value)).toBeGreaterThanOrEqual(
            Number(now.finishersNeeded.value),
          );
      }),
      { numRuns: runs(70) },
    );
  });

  it('moves as a whole with its start', () => {
    fc.assert(
      fc.property(days, n(1, 1439), (day, by) => {
        const [a, b] = [plan(day), plan({ ...day, start: (day.start + by) % 1440 })];
        a.stages.forEach(({ begins, ends, clock: before }, i) => {
          const other = b.stages[i];
          expect(times(other?.begins as DayRange)).toEqual(times(begins));
          expect(times(other?.ends as DayRange)).toEqual(times(ends));
          for (const name of CASES) {
            const [h, m] = before.ends[name].replace(/ .*/, '').split(':').map(Number) as [number, number];
            const moved = clock((h * 60 + m + by) % 1440);
            expect(other?.clock.ends[name].replace(/ .*/, '')).toBe(moved);
          }
        });
      }),
      { numRuns: runs(50) },
    );
  });

  it('has as many finishers as it needs when it says so, and is late with one fewer', () => {
    fc.assert(
      fc.property(days, (day) => {
        const needed = Number(plan(day).finishersNeeded.value);
        fc.pre(needed <= 200);
        const late = (finishers: number): boolean => {
          const figures = plan({ ...day, finishers });
          const ends = times(stageOf(figures, 'finish')?.ends as DayRange);
          const close = minutes(figures.placingTime);
          return ends.some((end, i) => end > close + (times(figures.closes)[i] as number) + 1e-6);
        };
        expect(late(needed)).toBe(false);
        if (needed > 1) expect(late(needed - 1)).toBe(true);
      }),
      { numRuns: runs(70) },
    );
  });

  it('agrees with a walk along the slab, foot by foot', () => {
    fc.assert(
      fc.property(days, (day) => {
        const figures = plan(day);
        const [P, W] = [minutes(figures.placingTime), minutes(figures.finishingTime)];
        const STEPS = 60;
        times(figures.opens).forEach((opens, i) => {
          // Finishers come to each strip when they are through with the one before and it is open.
          let at = opens;
          for (let k = 1; k <= STEPS; k += 1) {
            const open = (k / STEPS) * P + opens;
            at = Math.max(at + W / STEPS, open);
          }
          const end = times(stageOf(figures, 'finish')?.ends as DayRange)[i] as number;
          expect(end).toBeCloseTo(at, 5);
        });
      }),
      { numRuns: runs(50) },
    );
  });

  it('can begin at its latest start and not a minute later', () => {
    const input: DayPlanInput = {
      startAt: '7:00',
      area: '960 ft2',
      placingTime: '60 min',
      finish: 'broom',
      finishers: 3,
      finishRate: { area: '160 ft2', in: '1 h' },
      sunset: '18:40',
    };
    const by = dayPlan(input).figures.daylight?.startBy;
    const minute = Number(by?.time.toNumber('min'));
    const dark = (start: number): boolean =>
      dayPlan({ ...input, startAt: clock(start) }).cautions.some(({ code }) => code === 'finish-in-the-dark');
    expect([dark(minute), dark(minute + 1)]).toEqual([false, true]);
  });

  it('can begin its finish at the minute that is named as the end of the bleed water', () => {
    fc.assert(
      fc.property(n(40, 100), n(60, 300), (degrees, after) => {
        const input: DayPlanInput = {
          startAt: '7:00',
          area: '900 ft2',
          placingTime: '60 min',
          finish: 'broom',
          finishers: 3,
          finishRate: { area: '200 ft2', in: '1 h' },
          concreteTemperature: `${degrees} degF`,
        };
        const wet = (finishAt: string) =>
          dayPlan({ ...input, finishAt }).cautions.find(({ code }) => code === 'finish-on-bleed-water');
        const { clock: until } = wet(clock(420 + after))?.params ?? {};
        if (typeof until === 'string') expect(wet(until)).toBeUndefined();
      }),
      { numRuns: runs(60) },
    );
  });

  it('tells the crew of drying that it has to be ready for, before who works beside whom', () => {
    const result = dayPlan({
      startAt: '10:00',
      area: '1500 ft2',
      volume: '24 yd3',
      placingRate: '15 yd3/h',
      finish: 'broom',
      finishers: 2,
      finishRate: { area: '250 ft2', in: '1 h' },
      concreteTemperature: '85 degF',
      airTemperature: '95 degF',
      humidity: '20%',
      wind: '15 mph',
    });
    const crew = textSheet('', [{ name: '', results: [result] }], { detail: 'crew' }).replace(/\s+/g, ' ');
    expect(crew).toContain('put up windbreaks and dampen the base');
    expect(crew).toContain('in this plan: 2, too few');
    expect(crew).not.toContain('finishing needs people of its own');
    expect(result.cautions.map(({ code }) => code)).toContain('ready-while-placing');
  });
});
