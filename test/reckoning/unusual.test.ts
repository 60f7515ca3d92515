/** Values out of the ordinary: read, reckoned with, and asked about. */

import { describe, expect, it } from 'vitest';
import type { Caution } from '../../src';
import * as base from '../../src/base/ordinary';
import * as joints from '../../src/joints/ordinary';
import { define } from '../../src/reckoning/calculation';
import { fields, list, maybe, quantity } from '../../src/reckoning/fields';
import * as ordinary from '../../src/reckoning/ordinary';
import { wordsText } from '../../src/report/view';
import * as steel from '../../src/steel/ordinary';

const calculation = define({
  id: 'echo',
  title: 'Echo',
  version: 1,
  sources: [],
  input: () =>
    fields({
      thickness: maybe(quantity('length', 'thickness', 'positive', ordinary.SLAB_THICKNESS)),
      slump: maybe(quantity('length', 'slump', 'positive', joints.SLUMP)),
      allowance: maybe(quantity('ratio', 'allowance', 'not-negative', ordinary.WASTE_ALLOWANCE)),
      density: maybe(quantity('density', 'density', 'positive', base.SOIL_DENSITY)),
      strength: maybe(quantity('pressure', 'strength', 'positive', steel.STRENGTH)),
      spots: maybe(
        list(fields({ depth: quantity('length', 'depth', 'positive', ordinary.SLAB_THICKNESS) }), 1, 99),
      ),
    }),
  reckon: (input) => input,
});

/** What is asked about, and the slip that is named. */
function asked(input: unknown): string[] {
  const attempt = calculation.attempt(input);
  if (!attempt.ok) throw attempt.error;
  return attempt.result.cautions.map((caution) => {
    const { code, input: path } = caution;
    expect(code).toBe('unusual');
    return `${path}: ${/(?:Was|Is it in) (.*) (?:meant|units)/.exec(wordsText(caution))?.[1] ?? 'no slip named'}`;
  });
}

describe('a value out of the ordinary', () => {
  it.each([
    ['feet typed for inches', { thickness: '5 ft' }, 'thickness: 5 in meant'],
    ['inches typed for millimeters', { thickness: '100 in' }, 'thickness: metric meant'],
    ['meters typed for millimeters', { thickness: '125 m' }, 'thickness: 125 mm meant'],
    ['millimeters typed for centimeters', { thickness: '12 mm' }, 'thickness: 12 cm meant'],
    ['slump in feet', { slump: '4 ft' }, 'slump: 4 in meant'],
    ['a share typed for a percentage', { allowance: '0.1%' }, 'allowance: 10% meant'],
    ['a factor typed for a percentage', { allowance: '108%' }, 'allowance: 8% meant'],
    ['a factor', { allowance: '1.08:1' }, 'allowance: 8% meant'],
    ['tonnes typed as kilograms', { density: '2.4 kg/m3' }, 'density: 2.4 tonne/m3 meant'],
    ['pascals typed for pounds', { strength: '4000 MPa' }, 'strength: customary meant'],
  ])('%s', (_, input, wanted) => {
    expect(asked(input)).toEqual([wanted.replace(' meant', '')]);
  });

  it('is named where it stands, a few at a time', () => {
    expect(asked({ spots: [{ depth: '4 in' }, { depth: '4 ft' }] })).toEqual(['spots[1].depth: 4 in']);
    const spots = Array.from({ length: 60 }, () => ({ depth: '4 ft' }));
    expect(asked({ spots })).toHaveLength(5);
  });

  it('is left alone at its bounds, within them, and at nothing', () => {
    expect(
      asked({
        thickness: '18 in',
        slump: '25 mm',
        allowance: '0%',
        density: '2800 kg/m3',
        strength: '14 MPa',
      }),
    ).toEqual([]);
    expect(asked({ thickness: '450 mm', slump: '9 in', allowance: '30%', density: '175 pcf' })).toEqual([]);
  });

  it('shows the range in the units of the value, and keeps the value', () => {
    const result = calculation({ thickness: '1.5 m' });
    expect(wordsText(result.cautions[0] as Caution)).toContain('from 50 mm to 450 mm');
    expect(result.cautions[0]?.limit?.format()).toBe('450 mm');
    expect(wordsText(calculation({ thickness: '5 ft' }).cautions[0] as Caution)).toContain(
      'from 2 in to 18 in',
    );
    expect((result.figures as { thickness: { format(): string } }).thickness.format()).toBe('1.5 m');
  });

  it('does not hide what is wrong beside it', () => {
    const attempt = calculation.attempt({ thickness: '5 ft', slump: '4' });
    expect(attempt.ok ? [] : attempt.error.issues.map(({ path }) => path)).toEqual(['slump']);
  });
});
