/** When to saw: the clock counted minute by minute, and what must always hold. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SawWindowInput, sawWindow } from '../../src/index';
import { runs } from '../support/effort';

const WEATHERS = ['hot', 'mild', 'cold'] as const;
const VERDICTS = ['fits', 'fits if ready early', 'outside working hours', 'too slow'];

const saw = fc.constantFrom('conventional' as const, 'early-entry' as const);
const weather = fc.option(fc.constantFrom(...WEATHERS), { nil: undefined });
const minute = fc.integer({ min: 0, max: 1439 });
const cutting = fc.integer({ min: 5, max: 900 });

const given = (x: object): SawWindowInput =>
  Object.fromEntries(Object.entries(x).filter(([, value]) => value !== undefined)) as never;

/** Of the minutes from one to another, those that lie in the shift; a shift may pass midnight. */
function walked(from: number, to: number, [start, end]: readonly [number, number]): number {
  let minutes = 0;
  for (let m = Math.ceil(from); m < to; m += 1) {
    const clock = m % 1440;
    const inside = start < end ? clock >= start && clock < end : clock >= start || clock < end;
    if (inside) minutes += 1;
  }
  return minutes;
}

describe('saw window by the clock', () => {
  it('has the working time that counting minutes gives', () => {
    fc.assert(
      fc.property(saw, weather, minute, minute, minute, (s, w, placed, from, to) => {
        fc.pre(from !== to);
        const { clock } = sawWindow(
          given({
            saw: s,
            weather: w,
            placedAt: `${placed} min`,
            workFrom: `${from} min`,
            workTo: `${to} min`,
          }),
        ).figures;
        const minutes = ({ day, time }: NonNullable<typeof clock>['startFrom']): number =>
          day.toNumber('each') * 1440 + time.toNumber('min');
        if (!clock) throw new Error('no clock');
        const told = walked(minutes(clock.startFrom), minutes(clock.finishBy), [from, to]);
        expect(clock.workable.toNumber('min')).toBeCloseTo(told, 6);
      }),
      { numRuns: runs(300) },
    );
  });

  it('leaves just the cutting time after the latest start', () => {
    fc.assert(
      fc.property(saw, weather, minute, cutting, (s, w, placed, k) => {
        const { figures } = sawWindow(
          given({ saw: s, weather: w, placedAt: `${placed} min`, cuttingTime: `${k} min` }),
        );
        const { clock } = figures;
        if (!clock?.startBy) return;
        const at = clock.startBy.day.toNumber('each') * 1440 + clock.startBy.time.toNumber('min');
        const end = clock.finishBy.day.toNumber('each') * 1440 + clock.finishBy.time.toNumber('min');
        expect(walked(at, end, [7 * 60, 18 * 60])).toBe(k);
      }),
      { numRuns: runs(200) },
    );
  });

  it('reads a clock as it reads hours since midnight', () => {
    fc.assert(
      fc.property(minute, (m) => {
        const [h, rest] = [Math.floor(m / 60), String(m % 60).padStart(2, '0')];
        const written = [
          `${m} min`,
          `${h}:${rest}`,
          `${h % 12 || 12}:${rest} ${h < 12 ? 'am' : 'pm'}`,
          `${h % 12 || 12}:${rest}${h < 12 ? 'A.M.' : 'P.M.'}`,
        ];
        const starts = written.map((placedAt) =>
          sawWindow({ saw: 'conventional', placedAt }).figures.clock?.startFrom.time.toNumber('min'),
        );
        expect(new Set(starts).size).toBe(1);
        expect(starts[0]).toBe((m + 240) % 1440);
      }),
      { numRuns: runs(200) },
    );
  });

  it.each(['13 pm', '0 am', '9:75', '24:01', '9:5', '12:00 pm pm', ':30', '9::00'])('refuses %s', (t) => {
    const tried = sawWindow.attempt({ saw: 'conventional', placedAt: t });
    expect(tried.ok).toBe(false);
    if (!tried.ok) expect(tried.error.issues[0]?.sentence).toContain('"9:00"');
  });

  it.each(['half past seven', 'noonish', '7ish', '7h30', 7, 7.5, '7', "7 o'clock"])(
    'says of %j how a time of day is written',
    (placedAt) => {
      const tried = sawWindow.attempt({ saw: 'conventional', placedAt: placedAt as string });
      expect(tried.ok ? '' : tried.error.issues[0]?.sentence).toContain('"9:00"');
    },
  );

  it.each(['９：３０ pm', '9 : 30 PM', '9:30\u202fpm', '21:30'])('reads %s', (placedAt) => {
    const at = (time: string) => sawWindow({ saw: 'conventional', placedAt: time }).figures.clock?.startFrom;
    expect(at(placedAt)).toEqual(at('9:30 pm'));
  });

  it('refuses waiting without end at once', () => {
    const ready = { by: 'maturity' as const, after: '100000000000000 s', within: '1 s' };
    const began = performance.now();
    expect(sawWindow.attempt({ saw: 'conventional', placedAt: '9:00', ready }).ok).toBe(false);
    expect(
      sawWindow.attempt({ saw: 'conventional', placedAt: '9:00', cuttingTime: '1000000000000 s' }).ok,
    ).toBe(false);
    expect(performance.now() - began).toBeLessThan(2000);
  });
});

describe('saw window', () => {
  it('starts before it closes and is as uncertain as it is wide', () => {
    fc.assert(
      fc.property(saw, weather, (s, w) => {
        const { start, finishBy, uncertainty } = sawWindow(given({ saw: s, weather: w })).figures;
        expect(start.from.lessThan(start.to)).toBe(true);
        expect(finishBy.lessThan(start.to)).toBe(false);
        expect(uncertainty.compareTo(start.to.minus(start.from))).toBe(0);
      }),
    );
  });

  it('closes sooner the hotter it is', () => {
    for (const s of ['conventional', 'early-entry'] as const) {
      const by = WEATHERS.map((w) => sawWindow({ saw: s, weather: w }).figures);
      const close = by.map(({ finishBy }) => finishBy.toNumber('h'));
      const start = by.map(({ start: { from } }) => from.toNumber('h'));
      expect(close).toEqual([...close].sort((a, b) => a - b));
      expect(start).toEqual([...start].sort((a, b) => a - b));
      expect(new Set(close).size).toBe(3);
    }
  });

  it('never judges longer cutting better', () => {
    fc.assert(
      fc.property(
        saw,
        weather,
        fc.option(minute, { nil: undefined }),
        cutting,
        cutting,
        (s, w, placed, one, other) => {
          const rank = (k: number): number => {
            const placedAt = placed === undefined ? undefined : `${placed} min`;
            const { verdict } = sawWindow(
              given({ saw: s, weather: w, placedAt, cuttingTime: `${k} min` }),
            ).figures;
            return VERDICTS.indexOf(verdict ?? '');
          };
          const [short, long] = [Math.min(one, other), Math.max(one, other)];
          expect(rank(short)).toBeGreaterThanOrEqual(0);
          expect(rank(long)).toBeGreaterThanOrEqual(rank(short));
        },
      ),
      { numRuns: runs(200) },
    );
  });

  it('does not stop an ordinary morning', () => {
    fc.assert(
      fc.property(fc.integer({ min: 7 * 60, max: 12 * 60 }), weather, (placed, w) => {
        const { cautions } = sawWindow(given({ saw: 'conventional', weather: w, placedAt: `${placed} min` }));
        expect(cautions.filter(({ severity }) => severity === 'stop')).toEqual([]);
      }),
      { numRuns: runs(100) },
    );
  });

  it('warns of every placing whose cuts all fall outside working hours', () => {
    fc.assert(
      fc.property(saw, weather, minute, (s, w, placed) => {
        const { figures, cautions } = sawWindow(given({ saw: s, weather: w, placedAt: `${placed} min` }));
        if (figures.clock?.workable.sign() !== 0) return;
        expect(cautions.map(({ code }) => code)).toContain('saw-at-night');
      }),
      { numRuns: runs(200) },
    );
  });
});
