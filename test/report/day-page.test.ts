/** The day of a pour as a crew carries it: clock times in a short table, in both unit systems and languages. */
import { describe, expect, it } from 'vitest';
import { type JobInput, reckonJob } from '../../src/job/index';
import { spanish } from '../../src/language/spanish/index';
import { jobHtml, jobParts, textSheet } from '../../src/report/index';

const day = (plan: object, air = '75 degF'): JobInput =>
  ({
    version: 1,
    elements: [
      {
        name: 'slab',
        outline: { shape: 'rectangle', length: '27 ft', width: '24 ft' },
        thickness: '4 in',
        slab: true,
      },
    ],
    days: [
      {
        name: 'Tuesday',
        elements: ['slab'],
        startAt: '7:00',
        airTemperature: air,
        concreteTemperature: '72 degF',
        plan: {
          finish: 'broom',
          finishers: 3,
          finishRate: { area: '250 ft2', in: '1 h' },
          placingTime: '30 min',
          ...plan,
        },
      },
    ],
  }) as never;

const metric: JobInput = {
  version: 1,
  elements: [
    {
      name: 'losa',
      outline: { shape: 'rectangle', length: '8 m', width: '7 m' },
      thickness: '100 mm',
      slab: true,
    },
  ],
  days: [
    {
      name: 'martes',
      elements: ['losa'],
      startAt: '20:00',
      airTemperature: '24 degC',
      concreteTemperature: '22 degC',
      plan: {
        finish: 'broom',
        finishers: 2,
        finishRate: { area: '20 m2', in: '1 h' },
        placingTime: '40 min',
      },
    },
  ],
} as never;

const sheetOf = (job: JobInput, view: object = {}): string =>
  textSheet('Yard', jobParts(reckonJob(job), view), { detail: 'crew', ...view });

/** Minutes since midnight of each time in a row. */
const rowOf = (sheet: string, stage: string): number[] => {
  const line = sheet.split('\n').find((one) => one.trim().startsWith(`${stage} `) && /:\d\d/.test(one)) ?? '';
  return [...line.matchAll(/(\d+):(\d\d)(?: (AM|PM))?(, next day|, día siguiente)?/g)].map(
    ([, hour, minute, half, next]) =>
      ((Number(hour) % (half ? 12 : 24)) + (half === 'PM' ? 12 : 0) + (next ? 24 : 0)) * 60 + Number(minute),
  );
};

const STAGES = [
  'place',
  'strike-off',
  'bull-float',
  'last placed by',
  'finish',
  'finish ends',
  'cure',
  'leave',
  'cover until',
];

describe('the day on the page of a crew', () => {
  it('is a short table of clock times by stage', () => {
    const sheet = sheetOf(day({}));
    const rows = STAGES.map((stage) => rowOf(sheet, stage));
    for (const [i, row] of rows.entries()) {
      expect(row, STAGES[i]).toHaveLength(3);
      expect(
        [...row].sort((a, b) => a - b),
        STAGES[i],
      ).toEqual(row);
    }
    expect(rows[0]).toEqual([420, 420, 420]);
    expect(rows[3]).toEqual([450, 450, 450]);
    const likely = rows.map(([, middle]) => middle);
    expect(likely.slice(3, 7)).toEqual(likely.slice(3, 7).toSorted((a = 0, b = 0) => a - b));
    expect(sheet).not.toMatch(/held up|initial set|opens|closes|placing time|Put in: .*start at/);
    expect(sheet).toMatch(/verdict +fits the day/);
  });

  it('says what other weather does only where it does something', () => {
    expect(sheetOf(day({}))).not.toMatch(/if (?:hotter|colder|windier|wet)/);
    const tight = [100, 150, 200, 250].map((rate) =>
      sheetOf(day({ finishers: 2, finishRate: { area: `${rate} ft2`, in: '1 h' } })),
    );
    const turns = /verdict +fits the day[\s\S]*if hotter +too/;
    expect(tight.some((sheet) => turns.test(sheet))).toBe(true);
  });

  it('is told in Spanish, by the clock of a metric job, past midnight', () => {
    const html = jobHtml('Patio', reckonJob(metric), 'crew', { language: spanish, lang: 'es-MX' });
    for (const word of [
      'colocar',
      'acabado',
      'curar',
      'cubrir hasta',
      'lo más temprano',
      'lo más tarde',
      '20:00',
    ])
      expect(html).toContain(word);
    expect(html).not.toMatch(/\b(?:AM|PM|degF|ft2)\b/);
    const sheet = sheetOf(metric);
    const [, likely = 0] = rowOf(sheet, 'cover until');
    expect(likely).toBeGreaterThan(22 * 60);
  });

  it('leaves all figures on the page for checking', () => {
    const html = jobHtml('Yard', reckonJob(day({})), 'calculation');
    for (const word of ['initial set', 'opens', 'placing time']) expect(html.toLowerCase()).toContain(word);
  });
});
