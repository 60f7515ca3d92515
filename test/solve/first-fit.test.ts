/** Longest-first fitting against a plain way: pieces one after the other, each into the first bar with room. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstFitBars } from '../../src/solve/stock/first-fit';
import { Numbers, Stretches } from '../../src/steel/stretches';
import { runs } from '../support/effort';

function oneByOne(list: readonly (readonly [number, number])[], capacity: number): number {
  const room: number[] = [];
  for (const [steps, count] of list) {
    for (let n = 0; n < count; n += 1) {
      const at = room.findIndex((left) => left >= steps);
      if (at < 0) room.push(capacity - steps);
      else room[at] = (room[at] as number) - steps;
    }
  }
  return room.length;
}

describe('longest-first fitting', () => {
  it('takes as many bars as fitting piece by piece', () => {
    const lists = fc.dictionary(fc.integer({ min: 1, max: 60 }).map(String), fc.integer({ min: 1, max: 9 }));
    fc.assert(
      fc.property(lists, fc.integer({ min: 60, max: 150 }), (counts, capacity) => {
        const list = Object.entries(counts)
          .map(([steps, n]) => [Number(steps), n] as const)
          .sort((a, b) => b[0] - a[0]);
        expect(firstFitBars(list, capacity)).toBe(oneByOne(list, capacity));
      }),
      { numRuns: runs(1000) },
    );
  });

  it('does not grow with lengths times bars', () => {
    const list = Array.from({ length: 100_000 }, (_, i) => [200_000 - i, 1] as const);
    const start = process.cpuUsage().user;
    expect(firstFitBars(list, 200_001)).toBe(100_000);
    expect(firstFitBars(list, 400_000)).toBeLessThan(45_000);
    expect(process.cpuUsage().user - start).toBeLessThan(2_000_000);
  });
});

describe('stretches along a line', () => {
  it('are joined where they overlap or come together', () => {
    const ends = fc.tuple(fc.integer({ min: 0, max: 80 }), fc.integer({ min: 1, max: 9 }));
    fc.assert(
      fc.property(fc.array(ends, { maxLength: 60 }), fc.integer({ min: 0, max: 1 }), (list, gap) => {
        const [stretches, numbers] = [new Stretches(), new Numbers()];
        const on = new Set<number>();
        for (const [from, long] of list) {
          stretches.add(from, from + long);
          numbers.add(from);
          // A gap of one that counts as none is filled.
          for (let at = from; at < from + long + gap; at += 1) on.add(at);
        }
        const joined = stretches
          .joined(gap)
          .flatMap(([from, to]) => Array.from({ length: to - from + gap }, (_, i) => from + i));
        expect(new Set(joined)).toEqual(on);
        expect([...numbers.sorted()]).toEqual(list.map(([from]) => from).sort((a, b) => a - b));
        stretches.clear();
        expect(stretches.joined(gap)).toEqual([]);
      }),
      { numRuns: runs(500) },
    );
  });
});
