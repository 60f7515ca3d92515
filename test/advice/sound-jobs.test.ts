/**
 * Twelve sound jobs, as a careful contractor builds them: nothing stops them, and each calculation has at
 * most three cautions for them beside what holds for every job of its kind. Invented jobs, ordinary sizes
 * (common practice).
 */
import { describe, expect, it } from 'vitest';
import { calculations as catalog } from '../../src/catalog/all';
import { wordsText } from '../../src/report/view';

/** Calculations of a job with their inputs. */
type Job = Readonly<Record<string, unknown>>;

const MIX = { aggregateSize: '3/4 in', slump: '4 in' };

const slab = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '5 in' };

/** 20 ft wide at the door and 24 ft at the street. */
const apron = {
  shape: 'polygon',
  points: [
    { x: '0 ft', y: '0 ft' },
    { x: '20 ft', y: '0 ft' },
    { x: '22 ft', y: '24 ft' },
    { x: '-2 ft', y: '24 ft' },
  ],
};

const walk = { shape: 'rectangle', length: '40 ft', width: '4 ft' };
const curvedWalk = { shape: 'sector', radius: '62 ft', innerRadius: '58 ft', angle: '60 deg' };

const POOL = {
  shape: 'polygon',
  points: [
    { x: '8 ft', y: '8 ft' },
    { x: '32 ft', y: '8 ft' },
    { x: '32 ft', y: '20 ft' },
    { x: '8 ft', y: '20 ft' },
  ],
};

const deck = { shape: 'rectangle', length: '40 ft', width: '28 ft' };
const patio = { shape: 'ring', outerDiameter: '20 ft', innerDiameter: '4 ft' };
const pad = { shape: 'rectangle', length: '3 m', width: '2.4 m' };

const JOBS: Readonly<Record<string, Job>> = {
  slab: {
    'slab-volume': slab,
    'joint-spacing': { thickness: '5 in', ...MIX },
    'joint-layout': { ...slab, spacing: '12 ft' },
    'base-tonnage': { outline: slab.outline, depth: '6 in', compactedDensity: '135 pcf' },
    'concrete-order': { volume: '7.78 yd3', allowance: '8%', increment: '0.25 yd3', truckCapacity: '10 yd3' },
    'square-check': { length: '28 ft', width: '18 ft' },
    'saw-window': { saw: 'conventional', weather: 'mild', placedAt: '8 h' },
    'evaporation-rate': {
      airTemperature: '62 degF',
      humidity: '60%',
      concreteTemperature: '66 degF',
      wind: '4 mph',
    },
    'placing-limits': {
      thickness: '5 in',
      forecast: { placing: '62 degF', low: '50 degF' },
      concreteTemperature: '66 degF',
    },
    'strength-gain': { strength: '4000 psi', uses: [{ use: 'drive', strength: '3000 psi' }] },
  },
  'apron with a taper': {
    'slab-volume': {
      outline: apron,
      thickness: '5 in',
      edge: { below: '6 in', width: '10 in' },
    },
    'joint-layout': { outline: apron, thickness: '5 in', spacing: '12 ft' },
    'drainage-check': {
      atBuilding: '100 ft',
      away: '99.5 ft',
      distance: '24 ft',
      surface: 'paved-by-building',
    },
  },
  walk: {
    'slab-volume': { outline: walk, thickness: '4 in' },
    'joint-layout': { outline: walk, thickness: '4 in', spacing: '4 ft' },
    'base-tonnage': { outline: walk, depth: '4 in', compactedDensity: '135 pcf' },
    slope: { slope: '1/4 in/ft', over: '4 ft' },
  },
  'curved walk': {
    'slab-volume': { outline: curvedWalk, thickness: '4 in' },
    'joint-layout': { outline: curvedWalk, thickness: '4 in', spacing: '5 ft' },
  },
  'pool deck': {
    'slab-volume': { outline: deck, openings: [POOL], thickness: '4 in' },
    'joint-layout': { outline: deck, openings: [POOL], thickness: '4 in', spacing: '10 ft' },
  },
  'patio with a pit': {
    'slab-volume': { outline: patio, thickness: '4 in' },
    'joint-layout': { outline: patio, thickness: '4 in', spacing: '8 ft' },
    'bag-count': { volume: '0.5 yd3', allowance: '10%', bag: '60 lb' },
  },
  steps: {
    'step-layout': { totalRise: '21 in', risers: 3, tread: '11 in' },
    'step-volume': { risers: 3, rise: '7 in', tread: '11 in', width: '5 ft', landingDepth: '4 ft' },
  },
  ramp: {
    slope: { rise: '7 in', run: '7 ft 6 in' },
    'slab-volume': { outline: { shape: 'rectangle', length: '7 ft 6 in', width: '4 ft' }, thickness: '5 in' },
  },
  footing: {
    'footing-volume': { footings: [{ kind: 'strip', length: '60 ft', width: '16 in', depth: '8 in' }] },
    excavation: { kind: 'trench', length: '60 ft', width: '16 in', depth: '3 ft', swell: '25%' },
    'concrete-order': {
      volume: '1.98 yd3',
      allowance: '10%',
      increment: '0.25 yd3',
      truckCapacity: '10 yd3',
    },
  },
  wall: {
    'wall-volume': { walls: [{ kind: 'straight', length: '24 ft', height: '4 ft', thickness: '8 in' }] },
    'lap-length': {
      kind: 'development',
      bar: '#4',
      strength: '4000 psi',
      cover: '2 in',
      spacing: '12 in',
      lapClass: 'B',
    },
  },
  'metric pad': {
    'slab-volume': { outline: pad, thickness: '125 mm' },
    'joint-spacing': { thickness: '125 mm', aggregateSize: '20 mm', slump: '80 mm' },
    'base-tonnage': { outline: pad, depth: '150 mm', compactedDensity: '2150 kg/m3' },
    'evaporation-rate': {
      airTemperature: '16 degC',
      humidity: '65%',
      concreteTemperature: '18 degC',
      wind: '7 km/h',
    },
    'fresh-concrete-temperature': {
      cement: { mass: '335 kg', temperature: '20 degC' },
      aggregates: [{ mass: '1800 kg', moisture: '2%', temperature: '16 degC' }],
      water: { mass: '140 kg', temperature: '14 degC' },
    },
    'placing-limits': {
      thickness: '125 mm',
      forecast: { placing: '16 degC', low: '9 degC' },
      concreteTemperature: '18 degC',
    },
    'concrete-order': { volume: '0.9 m3', allowance: '8%', increment: '0.1 m3', truckCapacity: '7 m3' },
  },
  'metric mat': {
    'rebar-layout': {
      outline: { shape: 'rectangle', length: '6 m', width: '4.5 m' },
      thickness: '150 mm',
      mats: [{ layer: 'top', bar: '10M', spacing: '300 mm', faceCover: '50 mm' }],
      cover: '75 mm',
      stockLength: '6 m',
    },
    'steel-placement': {
      steel: 'bars',
      thickness: '150 mm',
      coverTop: '50 mm',
      layer: '20 mm',
      supports: '1 m',
    },
  },
};

const cases = Object.entries(JOBS).flatMap(([job, inputs]) =>
  Object.entries(inputs).map(([id, input]) => [job, id, input] as const),
);

describe('a sound job', () => {
  it.each(cases)('%s: %s', (_, id, input) => {
    const attempt = catalog.find((entry) => entry.id === id)?.attempt(input);
    if (!attempt?.ok) throw attempt?.error ?? new Error(id);
    const said = attempt.result.cautions.filter(({ always }) => !always);
    expect(said.filter(({ severity }) => severity === 'stop').map((caution) => wordsText(caution))).toEqual(
      [],
    );
    expect(said.map(({ code }) => code).length, said.map(({ code }) => code).join()).toBeLessThanOrEqual(3);
    expect(said.map(({ code }) => code)).not.toContain('unusual');
  });

  it('is of twelve kinds', () => {
    expect(Object.keys(JOBS)).toHaveLength(12);
  });
});
