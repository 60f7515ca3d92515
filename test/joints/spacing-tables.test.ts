/**
 * The tables and rules of spacing and depth as their sources print them (named beside each), in feet and inches and as
 * metric editions round them: 10 ft is 3 m, 1 in 25 mm.
 */
import { describe, expect, it } from 'vitest';
import { type JointSpacingInput, jointSpacing, type Quantity } from '../../src/index';
import {
  isLargeStone,
  isThreeQuarterStone,
  nominally,
  nominallyAtLeast,
  nominallyAtMost,
} from '../../src/joints/nominal';
import { length } from '../../src/quantity/make';

const MIX = { aggregateSize: '1 in', slump: '5 in' } as const;

/** The same mix in the units of the slab. */
const mixFor = (thickness: string) =>
  thickness.endsWith('mm') ? { aggregateSize: '25 mm', slump: '125 mm' } : MIX;

const figuresOf = (thickness: string, more: Partial<JointSpacingInput> = {}) =>
  jointSpacing({ ...mixFor(thickness), thickness, ...more }).figures;

interface Given {
  readonly source: string;
  readonly spacing: Quantity<'length'>;
  readonly least?: Quantity<'length'>;
}

/** What a source gives: `least to most`, or one value; in its order. */
const given = (rows: readonly Given[], source: string): string[] =>
  rows
    .filter((row) => row.source.includes(source))
    .map(({ spacing, least }) => (least ? `${least.format()} to ${spacing.format()}` : spacing.format()));

const spacings = (source: string, thickness: string, more: Partial<JointSpacingInput> = {}): string[] =>
  given(figuresOf(thickness, more).spacings, source);

describe('the spacing that a source gives', () => {
  it.each([
    // SUDAS Design Manual, table 5G-2.01, beside its rule of 24 times.
    ['SUDAS', '5 in', ['10 ft']],
    ['SUDAS', '6 in', ['12 ft', '12 ft']],
    ['SUDAS', '7 in', ['14 ft', '15 ft']],
    ['SUDAS', '8 in', ['16 ft', '15 ft']],
    ['SUDAS', '9 in', ['18 ft', '15 ft']],
    ['SUDAS', '10 in', ['20 ft', '20 ft']],
    ['SUDAS', '12 in', ['24 ft', '20 ft']],
    ['SUDAS', '150 mm', ['3.6 m', '3.6 m']],
    ['SUDAS', '200 mm', ['4.8 m', '4.5 m']],
    ['SUDAS', '300 mm', ['7.2 m', '6 m']],
    // Illinois Ready Mixed Concrete Association: 4, 5 and 6 in.
    ['Joints', '4 in', ['10 ft']],
    ['profile', '4 in', ['10 ft']],
    ['profile', '5 in', ['12 ft']],
    ['profile', '6 in', ['15 ft']],
    ['profile', '7 in', []],
    ['profile', '4-1/2 in', []],
    ['profile', '125 mm', ['3.6 m']],
    // UFC 3-260-02, table 12-7.
    ['UFC', '8 in', ['12.5 ft to 15 ft']],
    ['UFC', '9 in', ['15 ft to 20 ft']],
    ['UFC', '12 in', ['15 ft to 20 ft']],
    ['UFC', '12-1/2 in', ['20 ft']],
    ['UFC', '200 mm', ['3.8 m to 4.6 m']],
    ['UFC', '250 mm', ['4.6 m to 6.1 m']],
    ['UFC', '400 mm', ['6.1 m']],
    // ACI 302.1R-96, as quoted: 24 to 36 times, at most 18 ft.
    ['ACI 302', '4 in', ['8 ft to 12 ft']],
    ['ACI 302', '6 in', ['12 ft to 18 ft']],
    ['ACI 302', '8 in', ['16 ft to 18 ft']],
    ['ACI 302', '12 in', ['18 ft to 18 ft']],
    ['ACI 302', '250 mm', ['5.5 m to 5.5 m']],
    // The Canadian standard stops at 5 m.
    ['A23', '100 mm', ['2.4 m to 3.6 m']],
    ['A23', '150 mm', ['3.6 m to 5 m']],
    ['A23', '250 mm', ['5 m to 5 m']],
    // Floors, 12 to 25 ft.
    ['Sawcutting', '6 in', ['12 ft to 25 ft']],
    ['Sawcutting', '150 mm', ['3.6 m to 7.5 m']],
    // Caps of 15 ft, 4.5 m where both are printed.
    ['pool deck', '4 in', ['8 ft']],
    ['pool deck', '8 in', ['15 ft']],
    ['pool deck', '225 mm', ['4.5 m']],
    ['Curved', '4 in', ['8 ft to 12 ft']],
    ['Curved', '6 in', ['12 ft to 15 ft']],
    ['Curved', '8 in', ['15 ft to 15 ft']],
    ['culs-de-sac', '5 in', ['15 ft to 15 ft']],
    ['unreinforced', '5 in', ['15 ft']],
    ['unreinforced', '6 in', ['15 ft to 20 ft']],
    ['unreinforced', '150 mm', ['4.5 m to 6 m']],
    // American Concrete Pavement Association: 24 times on granular, 21 on treated base, under 10 in.
    ['Basics', '4 in', ['8 ft', '7 ft']],
    ['Basics', '8 in', ['15 ft', '14 ft']],
    ['Basics', '9-1/2 in', ['15 ft', '15 ft']],
    ['Basics', '10 in', []],
  ] as const)('is as it prints it: %s at %s', (source, thickness, expected) => {
    // Titles are matched by a word of their own; two publishers have a page of the same name.
    const all = spacings(source === 'Joints' ? 'profile: Joints' : source, thickness);
    expect(all).toEqual(expected);
  });

  it('of a strip is its width by their ratios, and 600 sq ft', () => {
    // TM 5-809-12: 25% longer than wide; Masonry and Concrete: 1.5; Highway Engineering Handbook: 2.
    const of = (source: string, width: string, thickness = '6 in'): string[] =>
      spacings(source, thickness, { width });
    expect(of('TM 5-809-12', '20 ft')).toEqual(['25 ft', '30 ft']);
    expect(of('Highway', '20 ft')).toEqual(['40 ft']);
    expect(of('Masonry', '20 ft').at(-1)).toBe('30 ft');
    expect(of('TM 5-809-12', '4 m', '150 mm')).toEqual(['5 m', '14 m']);
    expect(spacings('TM 5-809-12', '6 in')).toEqual([]);
  });

  it('by slump and stone is 24, 30 or 36 times, both where two of its columns overlap', () => {
    // Masonry and Concrete, figure 2-15: 3 to 5 in of slump, or under 4 in; stone of 3/4 in counts as the larger.
    const of = (slump: string, aggregateSize: string): string[] =>
      spacings('Masonry', '4 in', { slump, aggregateSize });
    expect(of('2-1/2 in', '1/2 in')).toEqual(['12 ft']);
    expect(of('3 in', '1/2 in')).toEqual(['8 ft to 12 ft']);
    expect(of('3-1/2 in', '3/4 in')).toEqual(['10 ft to 12 ft']);
    expect(of('4 in', '1/2 in')).toEqual(['8 ft']);
    expect(of('4 in', '1 in')).toEqual(['10 ft']);
    expect(spacings('Masonry', '100 mm', { slump: '75 mm', aggregateSize: '20 mm' })).toEqual([
      '3 m to 3.6 m',
    ]);
  });

  it('of walks, curbs and steel shows for those alone', () => {
    const of = (source: string, more: Partial<JointSpacingInput>, thickness = '5 in'): string[] =>
      spacings(source, thickness, more);
    expect(of('UFGS', { use: 'walk' })).toEqual(['5 ft']);
    expect(of('UFGS', { use: 'curb' })).toEqual(['10 ft']);
    expect(of('UFGS', { use: 'walk' }, '125 mm')).toEqual(['1.5 m']);
    expect(of('UFGS', {})).toEqual([]);
    expect(of('NAVEDTRA', {})).toEqual([]);
    // Navy, Engineering Aid: the source has feet alone.
    expect(given(figuresOf('5 in', { reinforced: true }).spacings, 'Engineering Aid')).toEqual([
      '15 ft to 25 ft',
    ]);
  });
});

describe('isolation at regular intervals', () => {
  const of = (more: Partial<JointSpacingInput>, thickness = '5 in'): string[] =>
    figuresOf(thickness, more).isolation.map(({ regular, atMost }) =>
      regular ? `${atMost?.format()}` : 'none',
    );
  it('is wanted by some for walks, curbs and reinforced slabs, in the units of the job', () => {
    expect(of({})).toEqual(['none']);
    expect(of({ use: 'walk' })).toEqual(['none', '50 ft']);
    expect(of({ use: 'curb' })).toEqual(['none', '100 ft']);
    expect(of({ reinforced: true })).toEqual(['none', '20 ft']);
    expect(of({ use: 'walk', reinforced: true }, '125 mm')).toEqual(['none', '15 m', '6 m']);
  });
});

describe('the depth by each way', () => {
  it('is a quarter, an inch, or a fifth of the thickness', () => {
    const of = (thickness: string, more: Partial<JointSpacingInput> = {}): Record<string, string[]> => {
      const rows: Record<string, string[]> = {};
      for (const { rule, depth, most } of figuresOf(thickness, more).depths) {
        const told = most ? `${depth.format()} to ${most.format()}` : depth.format();
        rows[rule.says] = [...(rows[rule.says] ?? []), told];
      }
      return rows;
    };
    expect(of('6 in')).toEqual({
      'conventional-saw': ['1.5 in'],
      'early-entry-saw': ['1 in'],
      'hand-groover': ['1.5 in'],
      'preformed-strip': ['1.5 in'],
      'a quarter to a third': ['1.5 in to 2 in', '1.5 in to 2 in'],
      'a fifth, as some have it': ['1.2 in'],
      'at least a quarter': ['1.5 in'],
    });
    expect(of('10 in')['early-entry-saw']).toEqual(['2 in']);
    expect(of('9 in')['early-entry-saw']).toEqual(['1 in']);
    expect(of('3 in')['conventional-saw']).toEqual(['1 in']);
    expect(of('4 in', { use: 'walk' })['walks']).toEqual(['1 in']);
    expect(of('100 mm', { use: 'walk' })['walks']).toEqual(['25 mm']);
    expect(of('6 in', { use: 'curb' })['curbs and gutters']).toEqual(
      ['3/4 in'].map((t) => length(t).format()),
    );
    expect(of('150 mm', { use: 'curb' })['curbs and gutters']).toEqual(['20 mm']);
  });
});

describe('what is assumed of a mix on a boundary', () => {
  const assumed = (slump: string, aggregateSize: string): string[] =>
    jointSpacing({ thickness: '4 in', slump, aggregateSize, use: 'slab', method: 'hand-groover' })
      .assumed.filter(({ name }) => name.endsWith('class'))
      .map(({ name }) => name);
  it.each([
    ['4 in', '1 in', ['slump class']],
    ['100 mm', '25 mm', ['slump class']],
    ['4 in', '3/4 in', ['slump class', 'aggregate class']],
    ['5 in', '3/4 in', ['aggregate class']],
    ['5 in', '19 mm', ['aggregate class']],
    ['5 in', '20 mm', ['aggregate class']],
    // Drier concrete has one multiple for all stone.
    ['3 in', '3/4 in', []],
    ['5 in', '1/2 in', []],
    ['5 in', '1 in', []],
  ] as const)('is told for slump of %s and stone of %s', (slump, stone, names) => {
    expect(assumed(slump, stone)).toEqual(names);
  });

  it('stays out where use and method are given, and is told where not', () => {
    const names = (more: object): string[] =>
      jointSpacing({ thickness: '4 in', ...MIX, ...more }).assumed.map(({ name }) => name);
    expect(names({ use: 'slab', method: 'conventional-saw' })).toEqual([]);
    expect(names({})).toEqual(['method', 'use']);
    expect(names({ use: 'slab', method: 'conventional-saw', width: '10 ft' })).toEqual(['longestRatio']);
    expect(
      names({ use: 'slab', method: 'conventional-saw', width: '10 ft', longestRatio: '1.25:1' }),
    ).toEqual([]);
  });
});

describe('a size by its name', () => {
  it('is within a sixtieth of the inches that it goes by', () => {
    const at = (text: string): boolean[] =>
      [nominallyAtLeast, nominally, nominallyAtMost].map((is) => is(length(text), 4));
    expect(at('100 mm')).toEqual([true, true, true]);
    expect(at('4 in')).toEqual([true, true, true]);
    // 59/60 and 61/60 of 4 in are the last that count.
    expect(at('3.9333333333 in')).toEqual([false, false, true]);
    expect(at('3.9333333334 in')).toEqual([true, true, true]);
    expect(at('236/60 in')).toEqual([true, true, true]);
    expect(at('244/60 in')).toEqual([true, true, true]);
    expect(at('4.0666666667 in')).toEqual([true, false, false]);
  });

  it('is stone of 3/4 in from 19 to 20 mm, and large above', () => {
    const at = (text: string): boolean[] => [isThreeQuarterStone(length(text)), isLargeStone(length(text))];
    expect(at('18.9 mm')).toEqual([false, false]);
    expect(at('19 mm')).toEqual([true, false]);
    expect(at('3/4 in')).toEqual([true, false]);
    expect(at('20 mm')).toEqual([true, false]);
    expect(at('20.1 mm')).toEqual([false, true]);
  });
});

describe('the rule that governs', () => {
  it.each([
    // 24 x 4 in, 30 x 4 in and 36 x 4 in; the cap of 18 ft; 1.5 times the width; the plans.
    ['thickness', '10 ft', { thickness: '4 in' }],
    ['maximum', '18 ft', { thickness: '8 in' }],
    ['panel shape', '9 ft', { thickness: '4 in', width: '6 ft' }],
    ['panel shape', '7.5 ft', { thickness: '4 in', width: '6 ft', longestRatio: '1.25:1' }],
    ['plans', '7 ft', { thickness: '4 in', maximum: '7 ft' }],
    ['walk', '5 ft', { thickness: '4 in', use: 'walk' }],
    ['curb', '10 ft', { thickness: '6 in', use: 'curb' }],
    ['walk', '1.5 m', { thickness: '100 mm', use: 'walk' }],
    ['curb', '3 m', { thickness: '150 mm', use: 'curb' }],
    ['maximum', '5.5 m', { thickness: '200 mm' }],
    // Plans that ask for no less than the concrete does govern nothing.
    ['thickness', '10 ft', { thickness: '4 in', maximum: '10 ft' }],
  ] as const)('is %s: %s', (governs, spacing, input) => {
    const { figures } = jointSpacing({ ...mixFor(input.thickness), ...input });
    expect([figures.governs, figures.spacing.format()]).toEqual([governs, spacing]);
  });

  it('and heeds a strip that is wide for its panels, or for its joints', () => {
    const codes = (more: Partial<JointSpacingInput>): string[] =>
      jointSpacing({ ...MIX, thickness: '4 in', method: 'hand-groover', ...more }).cautions.map(
        ({ code }) => code,
      );
    // 10 ft apart at most: a strip of 12 ft 6 in is a quarter over and no more.
    expect(codes({ width: '12.5 ft' })).toEqual([]);
    expect(codes({ width: '12.6 ft' })).toEqual(['wide-strip']);
    expect(codes({ width: '15 ft' })).toEqual(['wide-strip']);
    expect(codes({ width: '16 ft' })).toEqual(['wide-strip']);
    const severity = (width: string): string | undefined =>
      jointSpacing({ ...MIX, thickness: '4 in', width }).cautions.find(({ code }) => code === 'wide-strip')
        ?.severity;
    // Half as wide again as its panels are long they still have the shape; beyond they crack across.
    expect([severity('15 ft'), severity('15.1 ft')]).toEqual(['note', 'warning']);
    // A walk of 6 ft jointed every 5 ft by the guide bears 10 ft between joints.
    expect(codes({ use: 'walk', width: '6 ft' })).toEqual([]);
  });
});
