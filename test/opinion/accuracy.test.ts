/**
 * Small counts of what `npm run opinion-accuracy` does with large ones: whether the slip that was made is the one that
 * is named. The shares are a little below what was measured.
 */
import { describe, expect, it } from 'vitest';
import { runs } from '../support/effort';
import { answersPutBack, drawsWithin } from '../support/opinion/inverse';
import { ESTIMATED } from '../support/opinion/jobs';
import { falseAlarms, slipsTold } from '../support/opinion/measured';
import { chance } from '../support/relations/random';

/** Those that answer soonest. */
const QUICK = [
  'slab-volume',
  'base-tonnage',
  'footing-volume',
  'wall-volume',
  'concrete-order',
  'bag-count',
  'slope',
];

describe('estimates of another hand', () => {
  it('with one slip: it is named', () => {
    const { count, first, firstThree } = slipsTold(runs(32), 1, chance(1));
    expect(ESTIMATED.length).toBeGreaterThan(20);
    expect(first / count).toBeGreaterThan(0.6);
    expect(firstThree / count).toBeGreaterThan(0.6);
  });

  it('right but rounded: not said to be off', () => {
    expect(falseAlarms(runs(20), chance(2)).differs).toEqual([]);
  });

  it('with two slips: the pair is named', () => {
    const { count, firstThree } = slipsTold(runs(8), 2, chance(3));
    expect(firstThree / count).toBeGreaterThan(0.1);
  });
});

describe('answers of another hand', () => {
  it('give what was wanted when they are put back', () => {
    expect(answersPutBack(runs(20), chance(4)).objections).toEqual([]);
  });

  it('are not left by a draw within the tolerances', () => {
    expect(drawsWithin(runs(400), chance(5), QUICK).objections).toEqual([]);
  });
});
