/** Outlines of many corners: uniform thickness against the triangulation of the same corners alone. */
import Delaunator from 'delaunator';
import { slabVolume } from '../../src/index';
import type { Case } from './case';

/** A wavy ring with ripples, deterministic. */
function ring(n: number): { x: string; y: string }[] {
  return Array.from({ length: n }, (_, i) => {
    const [angle, radius] = [
      (2 * Math.PI * i) / n,
      1000 + 200 * Math.sin(7 * ((2 * Math.PI * i) / n)) + Math.sin(i / 5),
    ];
    return {
      x: `${(radius * Math.cos(angle)).toFixed(4)} ft`,
      y: `${(radius * Math.sin(angle)).toFixed(4)} ft`,
    };
  });
}

function pair(n: number): Case[] {
  const points = ring(n);
  const flat = points.flatMap(({ x, y }) => [Number.parseFloat(x), Number.parseFloat(y)]);
  return [
    {
      name: `slabVolume, ${n} corners from text`,
      run: () => slabVolume({ outline: { shape: 'polygon', points }, thickness: '4 in' }),
    },
    { name: `triangulating ${n} corners`, run: () => new Delaunator(flat) },
  ];
}

const SIZES = [1000, 10_000];

export const cases: readonly Case[] = SIZES.flatMap(pair);

export const ratios: readonly (readonly [string, string, string])[] = [
  [
    'slabVolume, 10000 corners from text',
    'triangulating 10000 corners',
    'slabVolume ÷ triangulation, 10,000 corners',
  ],
  [
    'slabVolume, 10000 corners from text',
    'slabVolume, 1000 corners from text',
    'growth from 1,000 to 10,000 corners',
  ],
];
