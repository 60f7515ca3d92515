/** A day of a thousand loads, and a last load with its probes. */
import { balanceLoad, truckPlan } from '../../src/index';
import type { Case } from './case';

const day = {
  volume: '10000 yd3',
  truckCapacity: '10 yd3',
  placing: { kind: 'rate', rate: '133 yd3/h' },
  travelTime: '25 min',
  trucks: 20,
  firstTruckAt: '7:00',
} as const;

const rest = {
  tickets: ['10 yd3', '10 yd3'],
  done: { area: '1440 ft2', probes: ['4 1/4 in', '4 in', '4 1/2 in', '4 1/4 in'] },
  left: { area: '360 ft2', thickness: '4 in', probes: ['4 1/4 in', '4 1/2 in', '4 in', '4 1/4 in'] },
  increment: '0.25 yd3',
} as const;

export const cases: readonly Case[] = [
  {
    name: 'truck-plan, a day of 1,000 loads with 20 trucks (wanted: under 20,000)',
    run: () => truckPlan(day),
  },
  { name: 'truck-plan, six loads', run: () => truckPlan({ ...day, volume: '60 yd3' }) },
  { name: 'balance-load, probed', run: () => balanceLoad(rest) },
];
