/** Placing limits: what must hold of any weather. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placingLimits } from '../../src/index';
import { runs } from '../support/effort';

const n = (min: number, max: number) => fc.integer({ min, max });
const days = fc.record({
  inches: n(2, 100),
  placing: n(10, 100),
  below: n(0, 40),
  concrete: n(40, 100),
  protection: fc.constantFrom('none', 'blankets', 'heated-enclosure'),
});
type Day = typeof days extends fc.Arbitrary<infer T> ? T : never;

const judged = ({ inches, placing, below, concrete, protection }: Day) =>
  placingLimits({
    thickness: `${inches} in`,
    forecast: { placing: `${placing} degF`, low: `${placing - below} degF` },
    concreteTemperature: `${concrete} degF`,
    ground: 'not-frozen',
    protection,
  });

const RANK = ['place', 'place and protect', 'hold', 'postpone'];

describe('a day', () => {
  it('that is colder at night gets no better verdict, and no fewer blankets', () => {
    fc.assert(
      fc.property(days, n(1, 20), (day, colder) => {
        const [a, b] = [judged(day).figures, judged({ ...day, below: day.below + colder }).figures];
        const layers = (f: typeof a): number => f.blankets?.toNumber('each') ?? 3;
        // Once it is cold weather, what was only cool is too cold to place; a warm load stays as it was.
        return RANK.indexOf(b.verdict) >= RANK.indexOf(a.verdict) && layers(b) >= layers(a);
      }),
      { numRuns: runs(100) },
    );
  });

  it('asks for no colder concrete the thinner the section is', () => {
    fc.assert(
      fc.property(days, n(1, 60), (day, more) => {
        const [thin, thick] = [judged(day).figures, judged({ ...day, inches: day.inches + more }).figures];
        return (
          !thin.keptAtLeast.lessThan(thick.keptAtLeast) && !thin.coolingPerDay.lessThan(thick.coolingPerDay)
        );
      }),
      { numRuns: runs(60) },
    );
  });

  it('in which nothing is wrong has nothing to be done', () => {
    fc.assert(
      fc.property(days, (day) => {
        const { figures, cautions } = judged({ ...day, protection: 'none' });
        const grave = cautions.some(({ code }) => !/stress|unusual|warmer|cold-concrete/.test(code));
        return figures.verdict !== 'place' || figures.next.length > 0 || !grave;
      }),
      { numRuns: runs(60) },
    );
  });

  it('is judged alike in both unit systems where both have the same round numbers', () => {
    const both = [
      { thickness: '5 in', forecast: { placing: '50 degF', low: '26 degF' }, concreteTemperature: '62 degF' },
      {
        thickness: '125 mm',
        forecast: { placing: '10 degC', low: '-3 degC' },
        concreteTemperature: '17 degC',
      },
    ].map((job) => placingLimits({ ...job, ground: 'not-frozen' }));
    expect(both.map(({ system }) => system)).toEqual(['customary', 'metric']);
    expect(new Set(both.map(({ figures }) => figures.verdict)).size).toBe(1);
    expect(new Set(both.map(({ figures }) => figures.next.join())).size).toBe(1);
    expect(new Set(both.map(({ cautions }) => cautions.map(({ code }) => code).join())).size).toBe(1);
  });
});

describe('a summer day', () => {
  it('tells of no slow cooling, which a cold one does', () => {
    const dropOn = (placing: string, low: string) =>
      placingLimits({ thickness: '4 in', forecast: { placing, low }, concreteTemperature: '64 degF' }).figures
        .gradualDropTo;
    expect(dropOn('88 degF', '70 degF')).toBeUndefined();
    expect(dropOn('45 degF', '30 degF')?.format()).toBe('14 degF');
  });
});

describe('what is not said', () => {
  it('of cement and of layers is taken and told', () => {
    const night = { thickness: '4 in', forecast: { placing: '40 degF', low: '25 degF' } } as const;
    const named = (more: object) => placingLimits({ ...night, ...more }).assumed.map(({ name }) => name);
    expect(named({ protection: 'blankets' })).toEqual(expect.arrayContaining(['layers', 'cement']));
    expect(named({})).not.toContain('layers');
    const said = named({ protection: 'blankets', layers: 1, cement: 'ordinary' });
    expect(said).not.toContain('layers');
    expect(said).not.toContain('cement');
    expect(named({ forecast: { placing: '70 degF', low: '60 degF' } })).not.toContain('cement');
  });
});
