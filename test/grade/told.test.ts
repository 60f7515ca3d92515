/**
 * What is told of forms, yards and corrections.
 *
 * Checked against: slopes of planes by hand; the drainage check, for corrections: what drains needs none.
 */
import { describe, expect, it } from 'vitest';
import {
  drainageCheck,
  type FormGradesInput,
  formGrades,
  type GradeCorrectionInput,
  gradeCorrection,
  type SurfaceDrainageInput,
} from '../../src/index';
import { readVectors } from '../support/vectors';

const ft = (n: number): string => `${n} ft`;

describe('forms on a plane that falls 2% one way and lies level the other', () => {
  const at = (x: number, y: number): { x: string; y: string } => ({ x: ft(x), y: ft(y) });
  const falls = [
    { name: 'along', from: at(0, 0), to: at(10, 0), minimum: '1%' },
    { name: 'across', from: at(0, 0), to: at(0, 10), minimum: '1%' },
  ];
  const plane = {
    kind: 'sloped-plane',
    at: { name: 'corner', ...at(0, 0), elevation: '100 ft' },
    alongX: '2%',
    alongY: '0%',
  } as const;
  const told = (asked: typeof falls): string =>
    formGrades({ surface: plane, stakes: [{ name: 'corner', ...at(3, 4) }], falls: asked }).figures.verdict;

  it('meet all falls asked for, or do not', () => {
    expect(told(falls.slice(0, 1))).toBe('all falls met');
    expect(told(falls.slice(1))).toBe('falls not met');
    expect(told(falls)).toBe('falls not met');
  });
});

describe('forms that nothing but bounds and a fall hold', () => {
  const place = (x: number) => ({ x: ft(x), y: '0 ft' });
  const fall = { name: 'away', from: place(0), to: place(10), minimum: '2%' };
  const cornerUnder = (bounds: FormGradesInput['bounds']): string | undefined =>
    formGrades({
      stakes: [{ name: 'corner', ...place(10) }],
      falls: [fall],
      ...(bounds ? { bounds } : {}),
    }).figures.stakes[0]?.elevation.format('ft', { places: 2 });

  it('lie as low as a least allows, else as high as every most allows', () => {
    const least = { name: 'frost', ...place(0), minimum: '99 ft' };
    const most = { name: 'sill', ...place(0), maximum: '100 ft' };
    // 2% of 10 ft is 0.2 ft.
    expect(cornerUnder([least, most])).toBe('98.80 ft');
    expect(cornerUnder([most])).toBe('99.80 ft');
    expect(cornerUnder([most, { name: 'walk', ...place(10), maximum: '99.5 ft' }])).toBe('99.50 ft');
  });
});

describe('a yard that falls 2% toward a house with a door', () => {
  const rows = [0, 8, 12, 20].flatMap((x) =>
    [0, 20].map((y): [number, number, number] => [x, y, 100 + 0.02 * y]),
  );
  const line = (kind: 'building' | 'threshold', name: string, from: number, to: number) => ({
    kind,
    name,
    along: [
      { x: ft(from), y: '0 ft' },
      { x: ft(to), y: '0 ft' },
    ],
  });
  const input: SurfaceDrainageInput = {
    table: { unit: 'ft', rows },
    lines: [line('building', 'house', 0, 20), line('threshold', 'door', 8, 12)],
  };

  it('sends water to the door as to the wall beside it, each by its own width', () => {
    const { figures } = drainageCheck(input);
    expect(figures.reaches.map(({ line }) => line).sort()).toEqual(['door', 'house']);
  });

  it('must have an elevation in every row', () => {
    const table = { unit: 'ft', rows: [...rows, [10, 10, null]] };
    const attempt = drainageCheck.attempt({ ...input, table } as never);
    expect(attempt.ok).toBe(false);
    if (!attempt.ok) expect(attempt.error.issues.map(({ path }) => path)).toEqual(['table.rows']);
  });
});

/** A surface that was checked, as it is given for a correction; nothing where more was asked of it. */
function askedOf({ table, ...more }: SurfaceDrainageInput): GradeCorrectionInput | undefined {
  const known = ['lines', 'minimum', 'zone'];
  if (!table || Object.keys(more).some((key) => !known.includes(key))) return undefined;
  const { unit = 'm', rows } = table;
  const spots = rows.map(([x, y, z], i) => ({
    name: `row ${i + 1}`,
    x: `${x} ${unit}`,
    y: `${y} ${unit}`,
    elevation: `${z} ${unit}`,
  }));
  return { spots, ...more } as GradeCorrectionInput;
}

describe('a correction', () => {
  const square = [
    { name: 'a', x: '0 ft', y: '0 ft', elevation: '100 ft' },
    { name: 'b', x: '20 ft', y: '0 ft', elevation: '100 ft' },
    { name: 'c', x: '20 ft', y: '20 ft', elevation: '99.9 ft' },
    { name: 'd', x: '0 ft', y: '20 ft', elevation: '99.9 ft' },
  ];
  const house = {
    kind: 'building',
    name: 'house',
    along: [
      { x: '0 ft', y: '0 ft' },
      { x: '20 ft', y: '0 ft' },
    ],
  } as const;

  it('is the same where a spot was read twice', () => {
    const once = gradeCorrection({ spots: square, lines: [house] }).figures;
    // 2% over 20 ft is 0.4 ft: both far corners go down by 0.3 ft.
    expect(once.verdict).not.toBe('nothing to correct');
    for (const name of ['a', 'c', 'd']) {
      const again = { ...square.find((spot) => spot.name === name), name: `${name} again` };
      for (const spots of [
        [...square, again],
        [again, ...square],
      ]) {
        const { figures } = gradeCorrection({ spots: spots as typeof square, lines: [house] });
        expect(figures.verdict, name).toBe(once.verdict);
        expect(figures.struckOff.format(), name).toBe(once.struckOff.format());
      }
    }
  });

  it('is not needed where the check says that the surface drains', () => {
    const drained = readVectors().flatMap(({ at, vector }) => {
      const drains = vector.expect.figures?.['verdict']?.equals === 'drains';
      const asked =
        vector.calculation === 'drainage-check' && drains ? askedOf(vector.input as never) : undefined;
      return asked ? [{ at, asked }] : [];
    });
    expect(drained.length).toBeGreaterThan(2);
    for (const { at, asked } of drained) {
      const { figures } = gradeCorrection(asked);
      expect([figures.verdict, figures.moves], at).toEqual(['nothing to correct', []]);
    }
  });
});
