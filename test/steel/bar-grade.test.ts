import { describe, expect, it } from 'vitest';
import { barSize, formMaterials, length, steelMinimum } from '../../src/index';

/** What is written for one and the same on plans and tickets. Names of standards other than A615 from memory. */
const STRENGTHS: readonly (readonly [written: string, strength: string])[] = [
  ['Grade 60', '60000 psi'],
  ['gr. 60', '60 ksi'],
  ['Gr 420', '420 MPa'],
  ['B500B', '500 MPa'],
  ['D500N', '500 MPa'],
  ['500E', '500 MPa'],
  ['400W', '400 MPa'],
  ['Fe 415', '415 MPa'],
];

const steel = (yieldStrength: string): unknown =>
  steelMinimum({ kind: 'drag', thickness: '8 in', length: '24 ft', yieldStrength }).figures.along;

describe('grades of bars by name', () => {
  it.each(STRENGTHS)('%s is %s', (written, strength) => {
    expect(steel(written)).toEqual(steel(strength));
  });

  it('takes the word before the number of a grade that is asked for', () => {
    expect(barSize({ bar: '#4', grade: 'Grade 60' as never }).figures.yieldStrength?.format()).toBe(
      '60000 psi',
    );
  });

  it.each(['Grade 65', 'B485', 'Fe 501'])('refuses %s', (written) => {
    expect(() => steel(written)).toThrow('no grade of bars');
  });
});

describe('names that are spaced otherwise', () => {
  it.each(['2 x 6', '2X6', '2×6', ' 2x6 '])('%s is a 2x6', (nominal) => {
    const slab = {
      kind: 'slab-edge',
      outline: { shape: 'rectangle', length: '20 ft', width: '8 ft' },
    } as const;
    const given = { ...slab, height: '6 in', stock: ['16 ft'] } as const;
    const plain = formMaterials({ ...given, board: { nominal: '2x6' } });
    expect(formMaterials({ ...given, board: { nominal: nominal as '2x6' } }).figures).toEqual(plain.figures);
  });

  it('takes what stands behind a spacing on plans', () => {
    for (const text of ['12 in on center', '12" o.c.', '12 in on centers', '12 in c/c'])
      expect(length(text).format()).toBe('12 in');
    expect(length('300 mm on centres').format()).toBe('300 mm');
  });
});
