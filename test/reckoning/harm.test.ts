/** What comes first where not all is read: people, then the concrete of the day, then the work, then figures. Common practice. */
import { describe, expect, it } from 'vitest';
import { reckonJob } from '../../src/index';
import { gravestFirst } from '../../src/reckoning/harm';
import { jobHtml, jobParts, textSheet } from '../../src/report/index';

const order = (...cautions: readonly (readonly [severity: string, code: string])[]): string[] =>
  gravestFirst(cautions.map(([severity, code]) => ({ severity, code }) as never)).map(({ code }) => code);

describe('cautions', () => {
  it('stand by how grave they are, then by whom or what they harm', () => {
    expect(
      order(
        ['note', 'not-proved-best'],
        ['note', 'wide-spacing'],
        ['note', 'dew-on-concrete'],
        ['note', 'bent-boards-spring'],
        ['warning', 'unusual'],
        ['warning', 'uneven-risers'],
        ['warning', 'hot-concrete'],
        ['warning', 'impalement'],
        ['stop', 'no-price'],
        ['stop', 'no-air'],
        ['stop', 'bleed-water'],
      ),
    ).toEqual([
      'no-air',
      'bleed-water',
      'no-price',
      'impalement',
      'hot-concrete',
      'uneven-risers',
      'unusual',
      'bent-boards-spring',
      'dew-on-concrete',
      'wide-spacing',
      'not-proved-best',
    ]);
  });

  it.each(['engineered-excavation', 'cold-stress', 'heat-stress', 'impalement', 'scalding-water'])(
    'that somebody may be hurt stands before one of the pour as grave: %s',
    (code) =>
      expect(order(['warning', 'finish-too-late'], ['warning', code])).toEqual([code, 'finish-too-late']),
  );

  it.each(['cold-joint-risk', 'finish-too-late', 'outdoor-trowel', 'fast-drying'])(
    'of concrete that is placed today stands before one of the work: %s',
    (code) => expect(order(['warning', 'uneven-risers'], ['warning', code])).toEqual([code, 'uneven-risers']),
  );

  it('of a job show the crew what threatens the pour, whatever its elements have raised before', () => {
    const names = ['north pad', 'south pad', 'east pad', 'west pad'];
    const job = reckonJob({
      version: 1,
      shared: { allowance: '5%', bars: { bar: '#4', spacing: '30 in', cover: '3 in' } },
      order: { increment: '0.25 yd3', truckCapacity: '10 yd3' },
      elements: names.map((name) => ({
        name,
        outline: { shape: 'rectangle', length: '20 ft', width: '12 ft' },
        thickness: '6 in',
        slab: true,
        bars: true,
      })),
      days: [
        {
          name: 'Tuesday',
          elements: names,
          startAt: '7:00',
          airTemperature: '80 degF',
          concreteTemperature: '80 degF',
          humidity: '40%',
          wind: '8 mph',
          evaporation: true,
        },
      ],
    });
    const codes = job.takeoff.cautions.filter(({ always }) => !always).map(({ code }) => code);
    expect(codes.filter((code) => code === 'wide-spacing').length).toBeGreaterThan(3);
    expect(codes).toContain('drying-near-limit');
    const text = textSheet('Yard', jobParts(job), { detail: 'crew' });
    const html = jobHtml('Yard', job, 'crew');
    for (const page of [text, html]) expect(page).toMatch(/Note\W.*dries/);
    // What four elements are told alike stands there once.
    expect(html.replace(/<[^>]*>/g, '').split('spacing reads 30 in').length).toBe(2);
    expect(codes.indexOf('drying-near-limit')).toBeLessThan(codes.indexOf('wide-spacing'));
  });
});
