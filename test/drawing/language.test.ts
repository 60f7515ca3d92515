/** Every text on a plan goes through the language of who reads it; names that people gave do not. */
import { describe, expect, it, vi } from 'vitest';
import {
  dayTimeline,
  jointPlan,
  matPlan,
  matSection,
  meshPlan,
  outlinePlan,
  surfacePlan,
  thicknessPlan,
  truckTimeline,
} from '../../src/drawing/index';

// What is made of words is put into brackets: a text without them was never looked up.
vi.mock('../../src/report/view', async (load) => {
  const real = await load<typeof import('../../src/report/view')>();
  const wordsText: typeof real.wordsText = (words, view) => `«${real.wordsText(words, view)}»`;
  return { ...real, wordsText };
});

const outline = { shape: 'rectangle', length: '28 ft', width: '18 ft' } as const;
const openings = [
  { shape: 'circle', at: { x: '5 ft', y: '5 ft' }, diameter: '1 ft' },
  { shape: 'rectangle', at: { x: '9 ft', y: '5 ft' }, length: '1 ft', width: '2 ft' },
  { shape: 'regular', at: { x: '15 ft', y: '5 ft' }, sides: 6, side: '1 ft' },
] as const;
const curved = {
  shape: 'curved',
  points: [
    { x: '0 ft', y: '0 ft' },
    { x: '20 ft', y: '0 ft', rise: '2 ft' },
    { x: '20 ft', y: '10 ft', rise: '-1 ft' },
    { x: '0 ft', y: '10 ft' },
  ],
} as const;
const rows = [
  [0, 0, 100],
  [28, 0, 100.02],
  [0, 18, 99.6],
  [28, 18, 99.5],
  [14, 9, 99.4],
  [14, 2, 100.3],
] as const;
// So wide that nothing is crowded out.
const wide = { width: 4000 } as const;

const PLANS: Record<string, () => string> = {
  day: () =>
    dayTimeline(
      {
        startAt: '13:00',
        area: '960 ft2',
        placingTime: '60 min',
        finish: 'exposed-aggregate',
        finishers: 3,
        finishRate: { area: '160 ft2', in: '1 h' },
        edgeLength: '120 ft',
        edgeRate: { length: '120 ft', in: '1 h' },
        washAfter: { from: '12 h', to: '18 h' },
        saw: 'early-entry',
        sunset: '18:20',
        workTo: '17:00',
      },
      wide,
    ),
  trucks: () =>
    truckTimeline(
      {
        volume: '60 yd3',
        truckCapacity: '10 yd3',
        placing: { kind: 'chute', rate: '20 yd3/h' },
        travelTime: '55 min',
        trucks: 4,
        sending: 'at-once',
      },
      wide,
    ),
  outline: () => outlinePlan({ outline, openings }, wide),
  curved: () => outlinePlan({ outline: curved }, wide),
  ring: () => outlinePlan({ outline: { shape: 'ring', outerDiameter: '9 m', innerDiameter: '4 m' } }, wide),
  thickness: () => thicknessPlan({ outline, probes: [{ x: '2 ft', y: '2 ft', depth: '4 in' }] }, wide),
  joints: () =>
    jointPlan(
      {
        outline: { shape: 'L', length: '40 ft', width: '30 ft', notchLength: '12 ft', notchWidth: '9 ft' },
        openings: [openings[0]],
        thickness: '5 in',
        spacing: '12 ft',
        isolation: [{ against: 'building', from: { x: '0 ft', y: '0 ft' }, to: { x: '9 ft', y: '0 ft' } }],
        fixed: [{ type: 'construction', from: { x: '28 ft', y: '0 ft' }, to: { x: '28 ft', y: '21 ft' } }],
      },
      wide,
    ),
  round: () =>
    jointPlan({ outline: { shape: 'circle', diameter: '12 m' }, thickness: '125 mm', spacing: '3 m' }, wide),
  mats: () =>
    matPlan(
      {
        outline: curved,
        mats: [
          { layer: 'bottom', bar: '#4', spacing: '18 in', faceCover: '2 in' },
          { layer: 'top', bar: '#4', lines: 6, barAcross: '#5', linesAcross: 9 },
        ],
      },
      wide,
    ),
  section: () =>
    matSection(
      { outline, mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in' }], thickness: '6 in' },
      wide,
    ),
  mesh: () => meshPlan({ outline, form: 'sheets', pieceLength: '10 ft', pieceWidth: '5 ft' }, wide),
  surface: () =>
    surfacePlan(
      {
        surface: {
          table: { unit: 'ft', rows },
          lines: [
            { kind: 'building', name: 'name', along: ['row 1', 'row 2'] },
            { kind: 'curb', name: 'name 2', along: ['row 1', 'row 3'] },
            { kind: 'drain', name: 'name 3', along: ['row 5'] },
            { kind: 'walk', name: 'name 4', along: ['row 3', 'row 4'] },
          ],
        },
        stakes: [
          { name: 'name 5', x: '28 ft', y: '18 ft', mark: 'name' },
          { name: 'name 6', x: '9000 ft', y: '18 ft' },
        ],
      },
      wide,
    ),
};

const LENGTH = String.raw`(?:\d+ ft)?(?: ?\d+)?(?:[ -]?\d+/\d+)?(?: in| m| mm)?`;
/** Numbers, sizes, times of day, letters of the base line, marks of bars and letters of pieces, and names. */
const UNTOLD = new RegExp(
  String.raw`^(?:${LENGTH}|-?[\d.]+(?:%| m| mm| min)?|\d+ h(?: \d+ min)?|\d{1,2}:\d\d|[ABC]|[BT][LCEK]\d+|[a-z]|name.*)$`,
);

describe('every text of a plan is looked up', () => {
  it.each(Object.entries(PLANS))('on a %s plan', (_, draw) => {
    // Lines that were broken are joined again.
    const svg = draw().replace(/<\/text><text x="[\d.]+" y="[\d.]+">(?!«)/g, ' ');
    const texts = [...svg.matchAll(/<(?:text|title|desc)[^>]*>([^<]*)</g)].map(([, text = '']) => text);
    expect(texts.length).toBeGreaterThan(5);
    expect(texts.filter((text) => !/^«.*»$/.test(text) && !UNTOLD.test(text))).toEqual([]);
    expect(texts.filter((text) => /«.*name/.test(text))).toEqual([]);
  });
});
