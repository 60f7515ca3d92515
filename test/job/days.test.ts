/** Days of a job: each part as somebody would chain the calculations by hand, and every cubic yard on one day. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pourOrder } from '../../src/drawing/pour-order';
import type { JobDayInput, JobInput } from '../../src/job/index';
import { jobTakeoff, reckonJob } from '../../src/job/index';
import { elementsOf } from '../../src/job/job-takeoff';
import { concreteOrder } from '../../src/pour/concrete-order';
import { type DayPlanFigures, dayPlan } from '../../src/pour/day-plan';
import { truckPlan } from '../../src/pour/truck-plan';
import { jobHtml } from '../../src/report/index';
import { evaporationRate } from '../../src/weather/evaporation-rate';
import { placingLimits } from '../../src/weather/placing-limits';
import { runs } from '../support/effort';

const slab = (name: string, length: string, width: string, thickness: string) => ({
  name,
  outline: { shape: 'rectangle', length, width } as const,
  thickness,
  slab: true,
});

const trucks = { placing: { kind: 'chute' }, travelTime: '20 min', crewRate: '16 yd3/h' } as const;
const work = { finish: 'broom', finishers: 3, finishRate: { area: '250 ft2', in: '1 h' } } as const;

const weather = {
  startAt: '7:00',
  airTemperature: '75 degF',
  concreteTemperature: '72 degF',
  humidity: '50%',
  wind: '6 mph',
} as const;

const yard = (...days: readonly JobDayInput[]): JobInput => ({
  version: 1,
  shared: { allowance: '5%' },
  order: { increment: '0.25 yd3', truckCapacity: '10 yd3' },
  trucks,
  elements: [
    slab('delivery slab', '27 ft', '24 ft', '4 in'),
    slab('bin pad', '13.5 ft', '12 ft', '6 in'),
    slab('walk', '27 ft', '4 ft', '4 in'),
  ],
  days,
});

const tuesday: JobDayInput = {
  name: 'Tuesday',
  elements: ['bin pad', 'delivery slab'],
  ...weather,
  evaporation: true,
  limits: { forecast: { low: '55 degF' } },
  plan: work,
};

const formsOffIn = (job: JobInput): string[] =>
  (jobTakeoff(job).figures.formsOff ?? []).map(({ element, day, after, at }) =>
    [element, day, after.format(), at && `${at.time.format()} on day ${at.day.format()}`].join(', '),
  );

const missingIn = (job: JobInput): string[] => jobTakeoff(job).figures.missing.map(({ at }) => at);

const faultsOf = (job: unknown): string[] => {
  const attempt = jobTakeoff.attempt(job as JobInput);
  return attempt.ok ? [] : attempt.error.issues.map(({ code, path }) => `${code} ${path}`);
};

describe('a day of a job', () => {
  it('says when forms come off: edges after a day, low walls after three, later in the cold; risers by themselves', () => {
    const board = { thickness: '1.5 in', height: '5.5 in' };
    const forms = (kind: string, height: string) => ({
      forms: { kind, height, board, stock: ['16 ft'], courses: kind === 'low-wall' ? 3 : 1 },
    });
    const [delivery, bin, walk] = yard().elements;
    const job = {
      ...yard({ ...tuesday, elements: ['delivery slab', 'bin pad'] }),
      elements: [
        { ...delivery, ...forms('slab-edge', '4 in') },
        { ...bin, ...forms('low-wall', '16 in') },
        { ...walk, ...forms('slab-edge', '4 in') },
        { ...slab('step', '4 ft', '3 ft', '6 in'), ...forms('riser', '6 in') },
      ],
    } as unknown as JobInput;
    const placed = (() => {
      const { parts } = reckonJob(job);
      return parts.find(({ part }) => part === 'trucks')?.result.figures as {
        ends?: { toNumber(u: string): number };
      };
    })();
    // 7:00 and as long as the trucks take, a day and three days later.
    const hours = ((7 * 60 + (placed.ends?.toNumber('min') ?? Number.NaN)) / 60).toFixed(2);
    const [edge = '', wall = '', unplaced = '', ...more] = formsOffIn(job);
    expect(edge).toMatch(new RegExp(`^delivery slab, Tuesday, 24 h, ${hours} h on day 1 each$`));
    expect(wall).toMatch(new RegExp(`^bin pad, Tuesday, 3 day, ${hours} h on day 3 each$`));
    expect([unplaced, ...more]).toEqual(['walk, , 24 h, ']);
    const page = jobHtml('Yard', reckonJob(job), 'crew');
    expect(page).toContain('<caption>Strip the forms</caption>');
    expect(page).toContain('next day');
  });

  it('is what its calculations give, one chained to the other by hand', () => {
    const { parts } = reckonJob(yard(tuesday));
    const of = (part: string) =>
      parts.find((each) => each.day === 'Tuesday' && each.part === part)?.result.figures;
    const order = concreteOrder({
      increment: '0.25 yd3',
      truckCapacity: '10 yd3',
      elements: [
        { volume: '3 yd3', allowance: '5%' },
        { volume: '8 yd3', allowance: '5%' },
      ],
    }).figures;
    const onTheRoad = truckPlan({
      ...trucks,
      loads: order.loads,
      firstTruckAt: '7:00',
      airTemperature: '75 degF',
      concreteTemperature: '72 degF',
    }).figures;
    const drying = evaporationRate({
      airTemperature: '75 degF',
      concrete: '72 degF',
      humidity: '50%',
      wind: '6 mph',
    }).figures;
    expect(of('order')).toEqual(order);
    expect(of('trucks')).toEqual(onTheRoad);
    expect(of('evaporation')).toEqual(drying);
    expect(of('limits')).toEqual(
      placingLimits({
        thickness: '4 in',
        concrete: '72 degF',
        forecast: { placing: '75 degF', low: '55 degF' },
      }).figures,
    );
    expect(of('plan')).toEqual(
      dayPlan({
        ...work,
        startAt: '7:00',
        airTemperature: '75 degF',
        concreteTemperature: '72 degF',
        area: '810 ft2',
        placingTime: onTheRoad.ends,
        age: onTheRoad.oldest,
        evaporation: drying.rate,
      }).figures,
    );
  });

  it('takes humidity and wind for its plan where nothing else says what the surface dries at', () => {
    const { evaporation: _, limits: __, ...day } = tuesday;
    const { parts } = reckonJob(yard(day));
    const plan = parts.find(({ part }) => part === 'plan');
    expect(plan?.input).not.toHaveProperty('evaporation');
    expect(String(plan?.input['humidity'])).toBe('50%');
  });

  it('goes by a rate of placing without trucks, and says its own of whatever it says', () => {
    const day = { ...tuesday, trucks: false, plan: { ...work, placingRate: '11 yd3/h', startAt: '9:00' } };
    const { parts } = reckonJob(yard(day));
    const plan = parts.find(({ part }) => part === 'plan');
    expect(parts.some((each) => each.part === 'trucks' && each.day !== undefined)).toBe(false);
    const { placingTime, startsAt } = (plan?.result.figures ?? {}) as Partial<DayPlanFigures>;
    expect([placingTime?.format('min'), startsAt?.time.format('h')]).toEqual(['60 min', '9 h']);
  });

  it('takes area that two of its slabs share once', () => {
    const at = { x: '0 ft', y: '0 ft' };
    const job = yard(tuesday);
    const elements = job.elements.map((element) => (element.name === 'walk' ? element : { ...element, at }));
    const { parts } = reckonJob({ ...job, elements });
    expect(String(parts.find(({ part }) => part === 'plan')?.input['area'])).toBe('648 ft2');
  });

  it('says where it lacks something, and gives the rest', () => {
    const { startAt: _, ...day } = tuesday;
    expect(missingIn(yard({ ...day, plan: { finish: 'broom', finishers: 3 } }))).toEqual([
      'days[0].startAt',
      'days[0].plan.finishRate',
    ]);
    const { trucks: __, ...job } = yard({ ...tuesday, limits: true });
    expect(missingIn(job)).toEqual(['days[0].limits.forecast', 'days[0].plan.placingTime']);
  });

  it('calls a fault by its place in the document, and once', () => {
    expect(faultsOf(yard({ ...tuesday, wind: '6' }))).toEqual(['missing-unit days[0].wind']);
    expect(faultsOf(yard({ ...tuesday, plan: { ...work, finishers: 0 } }))).toEqual([
      'not-a-count days[0].plan.finishers',
    ]);
    expect(faultsOf(yard({ ...tuesday, trucks: { ageLimit: '90' } }))).toEqual([
      'missing-unit days[0].trucks.ageLimit',
    ]);
    const wrong = {
      ...yard(tuesday, { name: 'Friday', elements: ['walk'] }),
      trucks: { ...trucks, travelTime: '20' },
    };
    expect(faultsOf(wrong)).toEqual(['missing-unit trucks.travelTime']);
  });

  it('lets the trucks of a second mix come as those of the first are done, and tells whose they are', () => {
    const { elements, ...rest } = yard(tuesday);
    const mixed = elements.map((each) => ({
      ...each,
      mix: each.name === 'bin pad' ? 'pad mix' : 'drive mix',
    }));
    const job = reckonJob({ ...rest, elements: mixed });
    const plans = job.parts.filter(({ part }) => part === 'trucks');
    expect(plans.map(({ day, mix }) => [day, mix])).toEqual([
      ['Tuesday', 'pad mix'],
      ['Tuesday', 'drive mix'],
      [undefined, 'drive mix'],
    ]);
    // 3.25 yd3 of the pad at 16 yd3 an hour are out of the truck 12.1875 min after 7:00.
    const [first, second, later] = plans.map(({ input }) => input['firstTruckAt']);
    expect([String(first), String(second), later]).toEqual(['7 h', '7.203125 h', undefined]);
    const page = jobHtml('Rear yard', job, 'crew');
    expect(page).toContain('Trucks for a pour, pad mix');
    expect(page).toContain('Trucks for a pour, drive mix');
    expect(page).not.toContain('7 h<');
  });

  it('tells the yard on which day each order comes, and by the clock', () => {
    const page = jobHtml('Rear yard', reckonJob(yard(tuesday)), 'yard');
    expect(page).toMatch(/Tuesday.*7:00 AM.*no day yet/s);
    expect(jobHtml('Rear yard', reckonJob(yard()), 'yard')).not.toMatch(/no day yet|First truck at/);
  });

  it('says whose day a caution is of', () => {
    const hot = { ...tuesday, airTemperature: '95 degF', humidity: '20%', wind: '15 mph' } as const;
    expect(jobHtml('Rear yard', reckonJob(yard(hot)), 'crew')).toMatch(
      /Warning, <bdi>?Tuesday|Warning, Tuesday/,
    );
  });

  it('tells the crew its times by the clock', () => {
    const page = jobHtml('Rear yard', reckonJob(yard(tuesday)), 'crew');
    expect(page).toContain('Tuesday');
    expect(page).toContain('7:00 AM');
  });
});

describe('the order of pouring', () => {
  it('is that of the days, then that of the document', () => {
    const job = reckonJob(yard(tuesday));
    expect([...pourOrder(job, elementsOf(job) ?? [])]).toEqual([
      ['bin pad', 1],
      ['delivery slab', 2],
      ['walk', 3],
    ]);
  });
});

describe('the joints of a day', () => {
  const poured = (joints: object, plan: object) => {
    const [first, ...rest] = yard(tuesday).elements;
    const elements = [{ ...first, joints: { spacing: '10 ft', ...joints } }, ...rest] as JobInput['elements'];
    const job: JobInput = { ...yard({ ...tuesday, plan: { ...work, ...plan } }), elements };
    const { parts } = reckonJob(job);
    const found = (id: string) => parts.find((part) => part.id === id);
    return { input: found('day-plan')?.input, figures: found('day-plan')?.result.figures as DayPlanFigures };
  };
  const stagesOf = ({ figures }: ReturnType<typeof poured>): string[] =>
    figures.stages.map(({ stage }) => stage);

  it('are sawn by the saw that they are planned for', () => {
    const sawn = poured({}, {});
    expect(sawn.input?.['saw']).toBe('conventional');
    expect(stagesOf(sawn)).toContain('saw');
    expect(poured({ method: 'early-entry-saw' }, {}).input?.['saw']).toBe('early-entry');
    expect(poured({}, { saw: 'early-entry' }).input?.['saw']).toBe('early-entry');
  });

  it('take as long as they are long', () => {
    const rate = { length: '60 ft', in: '1 h' };
    // Three bays each way of 27 ft by 24 ft: two joints of 24 ft and two of 27 ft.
    expect(String(poured({ sawRate: rate }, {}).input?.['cuttingTime'])).toBe('1.7 h');
    expect(poured({}, {}).input?.['cuttingTime']).toBeUndefined();
  });

  it('are not sawn where they are tooled, or where there are none', () => {
    expect(stagesOf(poured({ method: 'hand-groover' }, {}))).not.toContain('saw');
    expect(stagesOf(poured({ spacing: '30 ft' }, {}))).not.toContain('saw');
  });
});

describe('the concrete of a job', () => {
  it('is poured on one day each, whatever the days', () => {
    const names = ['a', 'b', 'c', 'd', 'e', 'f'];
    const assigned = fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(assigned, fc.integer({ min: 1, max: 4 }), (days, count) => {
        const elements = names.map((name, i) => ({ ...slab(name, `${10 + i} ft`, '9 ft', '4 in'), count }));
        const told = [1, 2, 3].flatMap((n) => {
          const some = names.filter((_, i) => days[i] === n);
          return some.length > 0 ? [{ name: `day ${n}`, elements: some.reverse() }] : [];
        });
        const job: JobInput = {
          version: 1,
          shared: { allowance: '5%' },
          order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
          elements,
        };
        const whole = jobTakeoff(job).figures;
        const split = jobTakeoff({ ...job, days: told }).figures;
        expect(split.concrete?.compareTo(whole.concrete as NonNullable<typeof whole.concrete>)).toBe(0);
        expect((split.days ?? []).map((day) => [day.name, day.elements])).toEqual(
          told.map((day) => [day.name, day.elements]),
        );
        const sum = split.mixes.reduce((all, { net }) => all + net.toNumber('yd3'), 0);
        expect(sum).toBeCloseTo(whole.concrete?.toNumber('yd3') ?? 0, 9);
        expect(new Set(split.mixes.map(({ day }) => day)).size).toBe(split.mixes.length);
      }),
      { numRuns: runs(40) },
    );
  });
});
