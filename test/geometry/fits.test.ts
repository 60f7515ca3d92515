/** An outline that cannot be is refused by everything that takes an outline, with the same words. */
import { describe, expect, it } from 'vitest';
import { outlinePlan } from '../../src/drawing/index';
import {
  baseTonnage,
  excavation,
  InputError,
  jointLayout,
  meshLayout,
  type OutlineInput,
  probedVolume,
  rebarLayout,
  slabVolume,
  vaporRetarder,
} from '../../src/index';

const taken: Record<string, (outline: OutlineInput) => unknown> = {
  'slab-volume': (outline) => slabVolume({ outline, thickness: '4 in' }),
  'base-tonnage': (outline) =>
    baseTonnage({ outline, depth: '4 in', compactedDensity: '130 pcf', looseDensity: '110 pcf' } as never),
  'vapor-retarder': (outline) =>
    vaporRetarder({ outline, rollWidth: '14 ft', rollLength: '100 ft' } as never),
  excavation: (outline) => excavation({ kind: 'pit', outline, depth: '1 ft' } as never),
  'joint-layout': (outline) => jointLayout({ outline, thickness: '4 in', spacing: '10 ft' }),
  'rebar-layout': (outline) =>
    rebarLayout({ outline, mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in' }] } as never),
  'mesh-layout': (outline) =>
    meshLayout({ outline, form: 'sheets', pieceLength: '10 ft', pieceWidth: '5 ft' } as never),
  'probed-volume': (outline) =>
    probedVolume({ outline, probes: [{ x: '0 ft', y: '0 ft', depth: '4 in' }] } as never),
  'outline plan': (outline) => outlinePlan({ outline }),
};

const CANNOT_BE: Record<string, readonly [OutlineInput, path: string]> = {
  'a sector that turns past its start': [
    { shape: 'sector', radius: '12 ft', angle: '400 deg' },
    'outline.angle',
  ],
  'a sector with an inner radius above its outer': [
    { shape: 'sector', radius: '12 ft', innerRadius: '20 ft', angle: '90 deg' },
    'outline.innerRadius',
  ],
  'a sector with both radii alike': [
    { shape: 'sector', radius: '12 ft', innerRadius: '12 ft', angle: '90 deg' },
    'outline.innerRadius',
  ],
  'a ring with a hole as wide as itself': [
    { shape: 'ring', outerDiameter: '12 ft', innerDiameter: '12 ft' },
    'outline.innerDiameter',
  ],
  'an L with a notch as long as itself': [
    { shape: 'L', length: '12 ft', width: '9 ft', notchLength: '12 ft', notchWidth: '3 ft' },
    'outline.notchLength',
  ],
  'a U with a notch as deep as itself': [
    { shape: 'U', length: '12 ft', width: '9 ft', notchLength: '4 ft', notchWidth: '9 ft' },
    'outline.notchWidth',
  ],
};

function issuesOf(act: () => unknown): readonly { code: string; path: string }[] {
  try {
    act();
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => ({ code, path }));
    throw error;
  }
  return [];
}

describe.each(Object.entries(CANNOT_BE))('%s', (_, [outline, path]) => {
  it.each(Object.entries(taken))('is refused by %s', (_name, take) => {
    const issues = issuesOf(() => take(outline));
    // A shape that is not served at all is refused before its dimensions are looked at.
    const notServed = issues.some(({ code }) => code === 'not-served');
    if (!notServed) expect(issues).toEqual([{ code: 'does-not-fit', path }]);
  });
});

it('what does not fit is named, and what it does not fit', () => {
  const said = (outline: OutlineInput): string => {
    const tried = slabVolume.attempt({ outline, thickness: '4 in' });
    return tried.ok ? '' : tried.error.issues.map(({ sentence }) => sentence).join();
  };
  for (const [outline, ...names] of [
    [CANNOT_BE['a sector with both radii alike']?.[0], 'innerRadius', 'radius'],
    [CANNOT_BE['a ring with a hole as wide as itself']?.[0], 'innerDiameter', 'outerDiameter'],
    [CANNOT_BE['an L with a notch as long as itself']?.[0], 'notchLength', 'length'],
    [CANNOT_BE['a U with a notch as deep as itself']?.[0], 'notchWidth', 'width'],
  ] as const)
    for (const name of names) expect(said(outline as OutlineInput)).toMatch(new RegExp(`\\b${name}\\b`));
});

describe('a sector of a whole turn', () => {
  it('has no straight edges: it is the circle or the ring', () => {
    const around = (outline: OutlineInput) => slabVolume({ outline, thickness: '4 in' }).figures;
    const whole = around({ shape: 'sector', radius: '6 ft', innerRadius: '2 ft', angle: '360 deg' });
    const ring = around({ shape: 'ring', outerDiameter: '12 ft', innerDiameter: '4 ft' });
    expect(whole.area.format('ft2')).toBe(ring.area.format('ft2'));
    expect(whole.perimeter?.format('ft')).toBe(ring.perimeter?.format('ft'));
    const drawn = outlinePlan({ outline: { shape: 'sector', radius: '6 ft', angle: '360 deg' } });
    const [, path = ''] = / d="([^"]*)"[^>]*class="outline"/.exec(drawn) ?? [];
    expect(path.match(/[ML]/g)).toHaveLength(96);
  });

  it('takes no opening in its hole', () => {
    const openings = [{ shape: 'circle', at: { x: '0 ft', y: '0 ft' }, diameter: '1 ft' }] as const;
    for (const outline of [
      { shape: 'sector', radius: '6 ft', innerRadius: '2 ft', angle: '360 deg' },
      { shape: 'ring', outerDiameter: '12 ft', innerDiameter: '4 ft' },
    ] as const) {
      expect(issuesOf(() => slabVolume({ outline, openings, thickness: '4 in' }))).toEqual([
        { code: 'outside-outline', path: 'openings[0]' },
      ]);
    }
  });
});
