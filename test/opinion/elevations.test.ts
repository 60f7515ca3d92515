/**
 * What is told from a mark: elevations and what a small length is the difference of. The claims were reckoned by hand with
 * the slip in them, as told beside each; that nobody rounds a level book to whole feet is common practice.
 */
import { describe, expect, it } from 'vitest';
import { drainageCheck, estimateCheck, formGrades, levelNotes, squareCheck } from '../../src/index';
import { first } from '../support/opinion/first';

const book = {
  kind: 'level',
  benchMark: { name: 'BM', elevation: '100.00 ft' },
  rows: [
    { point: 'BM', backsight: '4.35 ft' },
    { point: 'A', foresight: '5.12 ft' },
    { point: 'C', foresight: '3.60 ft' },
  ],
} as const;

const inMeters = {
  kind: 'level',
  benchMark: { name: 'BM', elevation: '100.000 m' },
  rows: [
    { point: 'BM', backsight: '1.325 m' },
    { point: 'A', foresight: '1.560 m' },
  ],
} as const;

const yard = { atBuilding: '100 ft', away: `99' 9"`, distance: '18 ft' } as const;

const plane = {
  surface: {
    kind: 'plane',
    through: [
      { name: 'P', x: '0 ft', y: '0 ft', elevation: '100 ft' },
      { name: 'Q', x: '28 ft', y: '0 ft', elevation: '99.44 ft' },
      { name: 'R', x: '0 ft', y: '18 ft', elevation: '99.90 ft' },
    ],
  },
  stakes: [{ name: 'B', x: '14 ft', y: '0 ft' }],
} as const;

describe('an elevation', () => {
  it('is no rounding of one that is an inch off', () => {
    // 5.21 read for 5.12: 104.35 − 5.21.
    const transposed = estimateCheck(levelNotes, book, { 'elevations.A': '99.14 ft' });
    expect(transposed.verdict).toBe('differs');
    expect(first(transposed)).toBe('digits-transposed');
    // 104.53 for 104.35, less 3.60.
    expect(first(estimateCheck(levelNotes, book, { 'elevations.C': '100.93 ft' }))).toBe('digits-transposed');
    // 1.650 for 1.560: 101.325 − 1.650.
    const metric = estimateCheck(levelNotes, inMeters, { 'elevations.A': '99.675 m' });
    expect(metric.verdict).toBe('differs');
    expect(first(metric)).toBe('digits-transposed');
  });
  it('agrees as it is kept in a book, or read on a tape', () => {
    for (const right of ['99.23 ft', `99' 2-3/4"`, '99.2 ft'])
      expect(estimateCheck(levelNotes, book, { 'elevations.A': right }).verdict).toBe('agrees');
    expect(estimateCheck(levelNotes, inMeters, { 'elevations.A': '99.765 m' }).verdict).toBe('agrees');
  });
  it('is explained by nothing that leaves most of it unexplained', () => {
    // 100 + 0.28 for 100 − 0.28.
    const up = estimateCheck(formGrades, plane, { 'stakes[0].elevation': '100.28 ft' });
    expect(first(up)).toBe('added-for-subtracted');
    expect(up.slips.every(({ gives }) => gives[0]?.would.format('ft') === '100.28 ft')).toBe(true);
  });
});

describe('a small difference of large lengths', () => {
  it('is not rounded away with them', () => {
    // 100 less 99.75 is 3 in.
    expect(estimateCheck(drainageCheck, yard, { fall: '2.5 in' }).verdict).toBe('differs');
    expect(estimateCheck(drainageCheck, yard, { fall: '0.25 ft' }).verdict).toBe('agrees');
    const diagonals = { length: '28 ft', width: '18 ft', diagonals: [`33' 3-1/2"`, `33' 3"`] } as const;
    expect(estimateCheck(squareCheck, diagonals, { difference: '0.05 ft' }).verdict).toBe('differs');
    expect(estimateCheck(squareCheck, diagonals, { difference: '0.04 ft' }).verdict).toBe('agrees');
  });
});
