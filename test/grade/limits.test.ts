/** Limits as data: what the named sources print, written down apart from the library's own table. */
import { describe, expect, it } from 'vitest';
import { gradeLimits, slope } from '../../src/index';
import { wordsText } from '../../src/report/view';

/**
 * Per mille, from the sources: IRC R401.3, PCA, ADA 405, UFC 3-210-06A (parking across: 1% at most),
 * grading standards as quoted (parking: 0.5% at least), Barrington Hills.
 */
const PRINTED: Readonly<Record<string, readonly [least: number | undefined, most: number | undefined]>> = {
  'paved-by-building': [20, undefined],
  'ground-by-building': [50, undefined],
  'swale-by-building': [20, undefined],
  'slab-outdoors': [10, undefined],
  patio: [1000 / 48, undefined],
  'garage-floor': [1000 / 96, undefined],
  'walk-along': [5, 150],
  'walk-across': [10, 1000 / 48],
  'steps-and-landings': [undefined, 1000 / 48],
  'accessible-walk-along': [undefined, 50],
  'accessible-walk-across': [undefined, 1000 / 48],
  'accessible-ramp': [undefined, 1000 / 12],
  'accessible-landing': [undefined, 1000 / 48],
  'parking-across': [5, 10],
  driveway: [undefined, 100],
};

describe('limits of slopes', () => {
  it('are those that the sources print', () => {
    expect(
      gradeLimits()
        .map(({ use }) => use)
        .sort(),
    ).toEqual(Object.keys(PRINTED).sort());
    for (const { use, least, most } of gradeLimits()) {
      const [low, high] = PRINTED[use] ?? [];
      for (const [found, wanted] of [
        [least, low],
        [most, high],
      ] as const) {
        expect(found === undefined, use).toBe(wanted === undefined);
        if (found && wanted) expect(found.toNumber('mm/m'), use).toBeCloseTo(wanted, 9);
      }
    }
  });

  it('name their source, and say which are common practice', () => {
    for (const { use, source, because } of gradeLimits()) {
      expect(source.title.length, use).toBeGreaterThan(10);
      expect(wordsText(because).length, use).toBeGreaterThan(5);
      if (source.kind === 'published') expect(source.publisher, use).toBeTruthy();
    }
    const practice = gradeLimits().filter(({ source }) => source.kind === 'common-practice');
    expect(practice.map(({ use }) => use)).toEqual([
      'garage-floor',
      'accessible-walk-along',
      'accessible-walk-across',
    ]);
  });

  it('keep 1/4 in per ft apart from 2%', () => {
    expect(slope('1/4 in/ft').compareTo(slope('1:48'))).toBe(0);
    expect(slope('1/4 in/ft').greaterThan(slope('2%'))).toBe(true);
  });
});
