/** One check of a hand estimate beside the calculation that it is of, and beside one run for each value of its input. */
import {
  baseTonnage,
  concreteOrder,
  estimateCheck,
  type JobInput,
  jobTakeoff,
  pierVolume,
  rebarLayout,
  slabVolume,
  stepVolume,
  wallVolume,
} from '../../src/index';
import type { Case } from './case';

const SLAB = {
  outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
  thickness: '4 in',
} as const;
const BASE = {
  outline: { shape: 'rectangle', length: '32 ft', width: '24 ft' },
  margin: '1 ft',
  depth: '6 in',
  compactedDensity: '135 pcf',
  allowance: '10%',
} as const;
const ORDER = {
  volume: '11.36 yd3',
  allowance: '8%',
  increment: '0.25 yd3',
  truckCapacity: '10 yd3',
} as const;
const PIERS = { piers: [{ kind: 'round', diameter: '12 in', height: '4 ft', count: 9 }] } as const;
const STEPS = { risers: 5, rise: '7 in', tread: '11 in', width: '5 ft', landingDepth: '4 ft' } as const;
const WALL = { walls: [{ kind: 'straight', length: '46 ft', height: '4 ft', thickness: '8 in' }] } as const;

/** Bars in a slab with a digit of its width misread: what is bought is planned anew in every run. */
const BARS = {
  length: '31 ft 10 in',
  width: '26 ft 11 in',
  thickness: '4 in',
  bar: '#5',
  spacing: '14 in',
} as const;
const misread = rebarLayout({ ...BARS, width: '28 ft 11 in' }).figures;
const barClaims = {
  totalLength: misread.totalLength.format(),
  barsToBuy: misread.barsToBuy,
  tieWire: misread.tieWire.format(),
};

/** Each with a slip in it: inches as tenths, no margin, 0.8%, a diameter for a radius, a tread too many, 6 in for 8. */
const checks = (): unknown[] => [
  estimateCheck(slabVolume, SLAB, { volume: '7.47 yd3' }),
  estimateCheck(baseTonnage, BASE, { deliveredMass: '28.5 ton' }),
  estimateCheck(concreteOrder, ORDER, { withAllowance: '11.45 yd3' }),
  estimateCheck(pierVolume, PIERS, { volume: '4.19 yd3' }),
  estimateCheck(stepVolume, STEPS, { volume: '3.40 yd3' }),
  estimateCheck(wallVolume, WALL, { volume: '3.41 yd3' }),
];

const calculations = (): unknown[] => [
  slabVolume(SLAB),
  baseTonnage(BASE),
  concreteOrder(ORDER),
  pierVolume(PIERS),
  stepVolume(STEPS),
  wallVolume(WALL),
];

/** Twenty slabs of a job, with their base. */
const job: JobInput = {
  version: 1,
  shared: { allowance: '8%', base: { depth: '4 in', compactedDensity: '135 pcf' } },
  order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
  elements: Array.from({ length: 20 }, (_, i) => ({
    name: `pad ${i + 1}`,
    outline: { shape: 'rectangle', length: `${12 + i} ft`, width: '8 ft' },
    thickness: '4 in',
    slab: true,
    base: true,
  })),
};

const whole = jobTakeoff(job).figures.concrete?.toNumber('yd3') ?? 0;

export const cases: readonly Case[] = [
  { name: 'six calculations', run: calculations },
  { name: 'six checks, each with a slip', run: checks },
  { name: 'take-off of 20 elements', run: (): unknown => jobTakeoff(job) },
  {
    name: 'check of it, divided by 25',
    run: (): unknown => estimateCheck(jobTakeoff, job, { concrete: `${((whole * 27) / 25).toFixed(2)} yd3` }),
  },
  { name: 'bars of a slab', run: (): unknown => rebarLayout(BARS) },
  {
    name: 'check of them, a width misread',
    run: (): unknown => estimateCheck(rebarLayout, BARS, barClaims),
  },
];

export const ratios = [
  ['six checks, each with a slip', 'six calculations', 'checks to calculations'],
  ['check of it, divided by 25', 'take-off of 20 elements', 'check of a job to its take-off'],
  ['check of them, a width misread', 'bars of a slab', 'check of bars to their layout'],
] as const;
