/**
 * How long the check of a large survey takes, beside its triangulation alone.
 *
 * The survey is a yard that falls away from a building with gentle humps and a few millimeters of
 * roughness, as concrete has; spots are scattered.
 */
import Delaunator from 'delaunator';
import { drainageCheck, type SurfaceDrainageInput } from '../../src/index';

/** Numbers from 0 to 1 that are the same on every run. */
function* numbers(seed: number): Generator<number> {
  let state = seed;
  for (;;) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield state / 2 ** 32;
  }
}

/** A survey of so many spots, in meters. */
export function surveyOf(count: number): [number, number, number][] {
  const draw = numbers(count);
  const next = (): number => draw.next().value as number;
  const across = Math.ceil(Math.sqrt(count));
  return Array.from({ length: count }, (_, i) => {
    const [column, row] = [i % across, Math.floor(i / across)];
    const x = Math.round((column + 0.6 * next()) * 500) / 1000;
    const y = row === 0 ? 0 : Math.round((row + 0.6 * next()) * 500) / 1000;
    const hump = 0.03 * Math.sin(x / 3) * Math.sin(y / 3);
    return [x, y, Math.round((100 - 0.02 * y + hump + 0.002 * next()) * 10000) / 10000];
  });
}

/** The input for such a survey, with a building along one side. */
export const inputOf = (rows: [number, number, number][]): SurfaceDrainageInput => {
  const side = Math.ceil(Math.sqrt(rows.length)) / 2;
  return {
    table: { unit: 'm', rows },
    lines: [
      {
        kind: 'building',
        name: 'wall',
        along: [
          { x: '0 m', y: '0 m' },
          { x: `${side.toFixed(3)} m`, y: '0 m' },
        ],
      },
    ],
  };
};

const SIZES = [1_000, 5_000, 20_000];

/** For each size: the triangulation alone, then the whole check from the door to the figures. */
export const cases = SIZES.flatMap((count) => {
  const rows = surveyOf(count);
  const input = inputOf(rows);
  const flat = Float64Array.from(rows.flatMap(([x, y]) => [x, y]));
  return [
    { name: `triangulate ${count} spots`, run: (): unknown => new Delaunator(flat) },
    { name: `check drainage of ${count} spots`, run: (): unknown => drainageCheck(input) },
  ];
});
