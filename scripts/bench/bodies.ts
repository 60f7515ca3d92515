/** Bodies and earth: what one calculation with its working costs. */
import { excavation, footingVolume, stepVolume } from '../../src/index';
import type { Case } from './case';

const GRID = Array.from({ length: 21 }, (_, i) => Array.from({ length: 21 }, (_, j) => `${(i + j) % 7} ft`));
const FOOTINGS = Array.from({ length: 100 }, (_, i) => ({
  kind: 'pad' as const,
  length: `${i + 12} in`,
  width: '2 ft',
  depth: '10 in',
}));

export const cases: readonly Case[] = [
  {
    name: 'step-volume, straight with a landing',
    run: () =>
      stepVolume({
        risers: 4,
        rise: '7 in',
        tread: '11 in',
        width: '5 ft',
        landingDepth: '4 ft',
        openSides: 1,
      }),
  },
  { name: 'footing-volume, 100 pads', run: () => footingVolume({ footings: FOOTINGS }) },
  {
    name: 'excavation, grid of 21 by 21 spots',
    run: () => excavation({ kind: 'grid', across: '10 ft', along: '10 ft', depths: GRID }),
  },
  {
    name: 'excavation, L with margin and slopes',
    run: () =>
      excavation({
        kind: 'pit',
        outline: { shape: 'L', length: '30 ft', width: '20 ft', notchLength: '10 ft', notchWidth: '8 ft' },
        depth: '3 ft',
        margin: '2 ft',
        sideSlope: '1:1',
      }),
  },
];
