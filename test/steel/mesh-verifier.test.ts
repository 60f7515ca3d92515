/**
 * Mesh over random outlines, checked by plain geometry of the test's own; and against the closed form of
 * strips over a rectangle.
 */
import { describe, expect, it } from 'vitest';
import { InputError, type MeshPlace, meshLayout, meshPlaces } from '../../src/index';
import { runs } from '../support/effort';
import { meshFaults, meshInput, uncovered } from '../support/steel/sheets';
import { inside, randomPlan, randoms } from './outlines';

const OUTLINES = runs(1000);

describe('mesh over random outlines', () => {
  it(`covers ${OUTLINES} of them with pieces that can be cut`, () => {
    const random = randoms(77);
    let laid = 0;
    for (let k = 0; k < OUTLINES; k += 1) {
      const plan = randomPlan(random);
      const edge = 0.03 + random() * 0.05;
      let places: readonly MeshPlace[];
      try {
        places = meshPlaces(meshInput(plan, edge));
      } catch (error) {
        expect(error).toBeInstanceOf(InputError);
        continue;
      }
      laid += 1;
      expect(meshFaults(plan, places, edge, random), `case ${k}`).toEqual([]);
    }
    expect(laid).toBeGreaterThan(OUTLINES * 0.9);
  });

  it('buys no fewer than fit the length laid, and no more than without cutoffs', () => {
    const random = randoms(78);
    for (let k = 0; k < 100; k += 1) {
      const attempt = meshLayout.attempt(meshInput(randomPlan(random), 0.05));
      if (!attempt.ok) continue;
      const { pieces, leastPieces, withoutReuse, laidLength, pieceArea } = attempt.result.figures;
      expect(pieceArea.toNumber('m2')).toBeCloseTo(4.8 * 2.4);
      expect(pieces.toNumber('each')).toBeGreaterThanOrEqual(
        Math.ceil(laidLength.toNumber('m') / 4.8 - 1e-9),
      );
      expect(pieces.lessThan(leastPieces)).toBe(false);
      expect(pieces.greaterThan(withoutReuse)).toBe(false);
    }
  });

  it('takes no more sheets over a rectangle than strips of whole sheets do', () => {
    const random = randoms(79);
    for (let k = 0; k < 100; k += 1) {
      const [l, w] = [3 + Math.floor(random() * 270) / 10, 3 + Math.floor(random() * 170) / 10];
      const common = { form: 'sheets', pieceLength: '4.8 m', pieceWidth: '2.4 m', sideLap: '0.2 m' } as const;
      const { figures } = meshLayout({
        outline: { shape: 'rectangle', length: `${l} m`, width: `${w} m` },
        edge: '0 m',
        angle: '0 deg',
        ...common,
      });
      const whole = meshLayout({ length: `${l} m`, width: `${w} m`, ...common });
      expect(figures.pieces.greaterThan(whole.figures.pieces)).toBe(false);
      expect(figures.strips.equals(whole.figures.strips)).toBe(true);
    }
  });

  it('has a verifier that notices a piece left out', () => {
    const random = randoms(80);
    const plan = {
      outer: [
        { x: 0, y: 0 },
        { x: 9, y: 0 },
        { x: 9, y: 6 },
        { x: 0, y: 6 },
      ],
      openings: [],
    };
    const places = meshPlaces(meshInput(plan, 0.05));
    expect(uncovered(plan, places, 0.05, random)).toBe(0);
    expect(uncovered(plan, places.slice(1), 0.05, random)).toBeGreaterThan(0);
    expect(inside({ x: 1, y: 1 }, plan.outer)).toBe(true);
  });
});
