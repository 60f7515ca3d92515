/**
 * Mats over random outlines, 2,000 of them at full effort, looked over by plain geometry with nothing of the
 * library's own; `npm run differential` tries more.
 */
import { describe, expect, it } from 'vitest';
import { type BarPlace, barPlaces, InputError } from '../../src/index';
import { runs } from '../support/effort';
import {
  farthest,
  type MatCase,
  matCase,
  matFaults,
  matInput,
  outsideCover,
  promised,
  TINY,
  wayFaults,
} from '../support/steel/mats';
import { randomPlan, randoms } from './outlines';

const OUTLINES = runs(2000);

describe('mats over random outlines', () => {
  it(`keep their promises on ${OUTLINES} of them`, () => {
    const random = randoms(20_260_601);
    let laid = 0;
    let refused = 0;
    for (let k = 0; k < OUTLINES; k += 1) {
      const c = matCase(random, randomPlan(random));
      let bars: readonly BarPlace[];
      try {
        bars = barPlaces(matInput(c));
      } catch (error) {
        // A random ring may cross itself or be too narrow for any bar: refused with a code, never otherwise.
        expect(error).toBeInstanceOf(InputError);
        refused += 1;
        continue;
      }
      laid += 1;
      expect(matFaults(c, bars, random), `case ${k}`).toEqual([]);
    }
    expect(laid).toBeGreaterThan(OUTLINES * 0.9);
    expect(refused).toBeLessThan(OUTLINES * 0.1);
  }, 120_000);

  it('have a verifier that notices a bar moved, bars left out and laps cut short', () => {
    const random = randoms(1);
    const outer = [
      { x: 0, y: 0 },
      { x: 16, y: 0 },
      { x: 16, y: 9 },
      { x: 0, y: 9 },
    ];
    const c: MatCase = {
      plan: { outer, openings: [] },
      degrees: 0,
      spacing: 0.4,
      cover: 0.05,
      lap: 0.4,
      stock: 6,
      shortest: 0.1,
    };
    const bars = barPlaces(matInput(c));
    const along = bars.filter((b) => b.use === 'along');
    const moved = bars.map((b) => ({ ...b, path: b.path.map(({ x, y }) => ({ x: x + 0.03, y })) }));
    expect(outsideCover(c, bars)).toBeLessThan(TINY);
    expect(outsideCover(c, moved)).toBeGreaterThan(0.02);
    expect(farthest(c, bars.slice(Math.floor(bars.length / 2)), random)).toBeGreaterThan(promised(c));
    expect(wayFaults(c, along, 0)).toEqual([]);
    const inLine = along.map((b) => ({ ...b, path: b.path.map(({ x, y }) => ({ x: x - (x % 0.9), y })) }));
    expect(wayFaults(c, inLine, 0)).not.toEqual([]);
  });
});
