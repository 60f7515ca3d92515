/** An outline is read the same way by whoever takes one: what cannot be is refused with one code at one place. */
import { describe, expect, it } from 'vitest';
import { calculations as catalog } from '../../src/catalog/all';
import { jointPlan, matPlan, meshPlan, outlinePlan, thicknessPlan } from '../../src/drawing/index';
import { InputError } from '../../src/index';
import { goodInputs } from '../support/inputs';

const point = (x: string, y: string): object => ({ x, y });

const BAD: readonly (readonly [name: string, outline: object, code: string, at: string])[] = [
  [
    'a sector beyond a full turn',
    { shape: 'sector', radius: '20 ft', angle: '400 deg' },
    'does-not-fit',
    'outline.angle',
  ],
  [
    'a sector with crossed radii',
    { shape: 'sector', radius: '20 ft', angle: '90 deg', innerRadius: '30 ft' },
    'does-not-fit',
    'outline.innerRadius',
  ],
  [
    'a ring that is all hole',
    { shape: 'ring', outerDiameter: '20 ft', innerDiameter: '20 ft' },
    'does-not-fit',
    'outline.innerDiameter',
  ],
  [
    'an L that is all notch',
    { shape: 'L', length: '20 ft', width: '20 ft', notchLength: '20 ft', notchWidth: '4 ft' },
    'does-not-fit',
    'outline.notchLength',
  ],
  [
    'three sides that do not meet',
    { shape: 'triangle', sides: ['10 ft', '10 ft', '30 ft'] },
    'no-such-triangle',
    'outline.sides',
  ],
  [
    'a bow tie',
    {
      shape: 'polygon',
      points: [
        point('0 ft', '0 ft'),
        point('20 ft', '20 ft'),
        point('20 ft', '0 ft'),
        point('0 ft', '30 ft'),
      ],
    },
    'self-crossing',
    'outline.points',
  ],
  [
    'a corner given twice',
    {
      shape: 'polygon',
      points: [point('0 ft', '0 ft'), point('20 ft', '0 ft'), point('20 ft', '0 ft'), point('0 ft', '20 ft')],
    },
    'repeated-point',
    'outline.points',
  ],
  [
    'corners on one line',
    { shape: 'polygon', points: [point('0 ft', '0 ft'), point('20 ft', '0 ft'), point('40 ft', '0 ft')] },
    'zero-area',
    'outline.points',
  ],
  [
    'a walk that does not come home',
    {
      shape: 'walk',
      legs: [
        { length: '20 ft', turn: 'left' },
        { length: '20 ft', turn: 'left' },
        { length: '20 ft', turn: 'left' },
        { length: '5 ft', turn: 'left' },
      ],
    },
    'does-not-close',
    'outline.legs',
  ],
  [
    'an arc with a radius too short for its chord',
    {
      shape: 'curved',
      points: [
        { x: '0 ft', y: '0 ft', radius: '5 ft' },
        { x: '20 ft', y: '0 ft' },
        { x: '20 ft', y: '20 ft' },
      ],
    },
    'does-not-fit',
    'outline.points[0].radius',
  ],
  [
    'a side of a hair',
    { shape: 'rectangle', length: '20 ft', width: '0.0000001 ft' },
    'out-of-range',
    'outline.width',
  ],
];

/** A job that the calculation takes, with an outline in it. */
const jobOf = (id: string): object | undefined =>
  (goodInputs.get(id) ?? []).find((input) => Object.hasOwn(input as object, 'outline')) as object | undefined;

/** What takes an outline: by its name, how it answers one put into a job that it takes. */
const TAKERS: (readonly [name: string, take: (outline: object) => unknown])[] = catalog.flatMap((entry) => {
  const job = jobOf(entry.id);
  if (!job) return [];
  const take = (outline: object): unknown => {
    const attempt = entry.attempt({ ...job, outline });
    if (!attempt.ok) throw attempt.error;
    return attempt.result;
  };
  return [[entry.id, take] as const];
});

const planOf = (draw: (input: never) => string, id: string) => (outline: object) =>
  draw({ ...jobOf(id), outline } as never);

const PLANS: typeof TAKERS = [
  ['joint plan', planOf(jointPlan, 'joint-layout')],
  ['mat plan', planOf(matPlan, 'rebar-layout')],
  ['mesh plan', planOf(meshPlan, 'mesh-layout')],
  ['thickness plan', planOf(thicknessPlan, 'probed-volume')],
  ['outline plan', (outline) => outlinePlan({ outline } as never)],
];

/** A ring of probes has no thickness in the middle: it is refused before its dimensions are looked at. */
const NOT_SERVED = 'not-served at outline';
const PROBED = new Set(['probed-volume', 'thickness plan']);

function refusal(take: (outline: object) => unknown, outline: object): string {
  try {
    take(outline);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} at ${path}`).join();
    throw error;
  }
  return 'taken';
}

describe.each(BAD)('%s', (_, outline, code, at) => {
  it.each([...TAKERS, ...PLANS])('is refused by %s', (name, take) => {
    const wanted =
      Object.hasOwn(outline, 'innerDiameter') && PROBED.has(name) ? NOT_SERVED : `${code} at ${at}`;
    expect(refusal(take, outline)).toBe(wanted);
  });
});

it('is tried on all that take an outline', () => {
  expect(TAKERS.length).toBeGreaterThanOrEqual(7);
});
