/** A job that is known in part: any one of several ways may be lacking, and nothing that is said is dropped unseen. */
import { describe, expect, it } from 'vitest';
import { type JobInput, jobTakeoff, reckonJob } from '../../src/job/index';
import { jobHtml } from '../../src/report/index';

const outline = { shape: 'rectangle', length: '20 ft', width: '10 ft' } as const;

const jobOf = (element: object, more: object = {}): JobInput =>
  ({ version: 1, ...more, elements: [{ name: 'pad', ...element }] }) as never;

const missingIn = (job: JobInput): string[] => jobTakeoff(job).figures.missing.map(({ at }) => at);

const refusedIn = (job: JobInput): string[] => {
  const attempt = jobTakeoff.attempt(job);
  return attempt.ok ? [] : attempt.error.issues.map(({ code, path }) => `${code} ${path}`);
};

describe('a part of which any one way would do, and none is there', () => {
  it.each<[string, object, string[]]>([
    [
      'gravel without an outline',
      { base: { depth: '4 in', compactedDensity: '135 pcf' } },
      ['elements[0].outline'],
    ],
    [
      'gravel without a depth',
      { outline, base: { compactedDensity: '135 pcf' } },
      ['elements[0].base.depth'],
    ],
    ['a pit without an outline', { excavation: { depth: '8 in' } }, ['elements[0].outline']],
    [
      'bars without a spacing',
      { outline, thickness: '5 in', bars: { bar: '#4', cover: '2 in' } },
      ['elements[0].bars.spacing'],
    ],
  ])('is listed as missing: %s', (_, element, at) => {
    expect(missingIn(jobOf(element))).toEqual(at);
    expect(jobTakeoff(jobOf(element)).cautions.map(({ code }) => code)).toContain('parts-missing');
  });

  it.each<[string, object, string]>([
    [
      'an outline and an area',
      { outline, base: { area: '200 ft2', outline, depth: '4 in', compactedDensity: '135 pcf' } },
      'give-one-of elements[0].base',
    ],
    [
      'two densities',
      {
        outline,
        base: { depth: '4 in', compactedDensity: '135 pcf', solidDensity: '165 pcf', voids: '20%' },
      },
      'give-one-of elements[0].base',
    ],
  ])('is refused where two are: %s', (_, element, told) => {
    expect(refusedIn(jobOf(element))).toEqual([told]);
  });
});

describe('mats and a bar beside them', () => {
  const mats = [{ layer: 'bottom', bar: '#5', spacing: '12 in' }];
  const bars = (own: object, shared?: object): JobInput =>
    jobOf({ outline, thickness: '6 in', bars: own }, shared ? { shared: { bars: shared } } : {});
  const sizes = (job: JobInput): unknown[] =>
    jobTakeoff(job)
      .figures.purchases.filter(({ item }) => item === 'bar')
      .map(({ of }) => of['bar']);

  it('are refused together, since one would be dropped', () => {
    expect(refusedIn(bars({ mats, bar: '#4', cover: '2 in' }))).toEqual(['give-one-of elements[0].bars']);
    expect(refusedIn(bars({ cover: '2 in' }, { mats, bar: '#4' }))).toEqual(['give-one-of shared.bars']);
  });

  it("the element's own word goes first, whichever it is", () => {
    expect(sizes(bars({ mats, cover: '2 in' }, { bar: '#4', spacing: '18 in' }))).toEqual(['#5']);
    expect(sizes(bars({ bar: '#4', spacing: '18 in', cover: '2 in' }, { mats }))).toEqual(['#4']);
    expect(sizes(bars({ cover: '2 in' }, { mats }))).toEqual(['#5']);
  });
});

describe('what follows from a value that is missing', () => {
  const spacing = { aggregateSize: '3/4 in', slump: '4 in' };

  it('waits for that value, not for one of its own', () => {
    const forms = { board: { nominal: '2x6' }, stock: ['12 ft'] };
    expect(missingIn(jobOf({ outline, forms }))).toEqual(['elements[0].thickness']);
    expect(
      missingIn(jobOf({ outline, thickness: '4 in', spacing: { slump: '4 in' }, joints: true })),
    ).toEqual(['elements[0].spacing.aggregateSize', 'elements[0].spacing']);
    expect(missingIn(jobOf({ outline, slab: true, fibers: { kind: 'micro' } }))).toEqual([
      'elements[0].thickness',
      'elements[0].slab',
    ]);
    const plan = {
      startAt: '7:00',
      finish: 'broom',
      finishers: 2,
      finishRate: { area: '200 ft2', in: '1 h' },
    };
    const day = { name: 'Friday', elements: ['pad'], plan: { ...plan, placingTime: '1 h' } };
    expect(missingIn(jobOf({ outline, slab: true }, { days: [day] }))).toEqual([
      'elements[0].thickness',
      'elements[0].slab',
    ]);
  });

  it('is asked of its own part where nothing else would bring it', () => {
    expect(missingIn(jobOf({ outline, thickness: '4 in', joints: true }))).toEqual([
      'elements[0].joints.spacing',
    ]);
    expect(missingIn(jobOf({ outline, thickness: '4 in', fibers: { kind: 'micro' } }))).toEqual([
      'elements[0].fibers.volume',
    ]);
  });

  it('is counted once, however many parts wait for it, and one is not called several', () => {
    const job = jobOf({ outline, slab: true, spacing });
    const told = (each: JobInput) =>
      jobTakeoff(each).cautions.find(({ code }) => code === 'parts-missing')?.says ?? '';
    expect(missingIn(job)).toEqual(['elements[0].thickness', 'elements[0].thickness']);
    expect(told(job)).toContain('one value is missing');
    expect(told(jobOf({ slab: true }))).toContain('{count} values');
  });
});

describe('a page of a job that is known in part', () => {
  it('lists each value once, with all that waits for it, by whose it is', () => {
    const day = {
      name: 'Friday',
      elements: ['pad'],
      evaporation: { airTemperature: '70 degF', concreteTemperature: '70 degF', wind: '5 mph' },
    };
    const job = reckonJob(
      jobOf(
        { outline, slab: true, spacing: { slump: '4 in', aggregateSize: '3/4 in' }, joints: true },
        { days: [day] },
      ),
    );
    const page = jobHtml('Rear yard', job, 'crew')
      .replace(/<[^>]+>/g, ' ')
      .replace(/\s+/g, ' ');
    expect(page).toContain(
      'pad: slab, spacing, joints thickness pad: joints spacing Friday: evaporation humidity',
    );
    expect(page).not.toContain('known in part');
    expect(jobHtml('Rear yard', job, 'calculation')).toContain('days[0].humidity');
  });
});
