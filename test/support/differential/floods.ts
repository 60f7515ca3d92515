/** Ponds and where water goes: the surface flooded cell by cell on a fine grid. */
import Delaunator from 'delaunator';
import { drainageCheck } from '../../../src/index';
import { fineGridFlood, fineGridRun, type Row } from '../../grade/fine-grid';
import type { Site } from './draw';
import { fourOnACircle } from './scans';
import { type Compared, numberOf } from './trial';

const SIDE = 4;
const CELLS = 100;
/** So many times smaller are the cells where the others do not decide. */
const FINE = 4;

const mm = (v: number): number => Math.round(v * 1000) / 1000;

interface Yard {
  readonly rows: readonly Row[];
  readonly walled: boolean;
}

/** Scattered spots on a square, most lower toward its middle. */
function yard(site: Site): Yard {
  const at: [number, number][] = [];
  // Corners, and spots along the sides that are not in line with each other.
  at.push([0, 0], [SIDE, 0], [SIDE, SIDE], [0, SIDE]);
  for (const s of [1, 2, 3]) {
    const near = (): number => mm(s + 0.4 * (site.dice.next() - 0.5));
    at.push([near(), 0], [SIDE, near()], [near(), SIDE], [0, near()]);
  }
  for (let i = site.between(2, 12); i > 0; i -= 1)
    at.push([mm(0.2 + site.dice.next() * 3.6), mm(0.2 + site.dice.next() * 3.6)]);
  const [hollow, rough, fall] = [
    0.03 * site.dice.next(),
    0.01 + 0.05 * site.dice.next(),
    0.04 * (site.dice.next() - 0.5),
  ];
  const rows = at.map(
    ([x, y]): Row => [x, y, mm(5 + hollow * Math.hypot(x - 2, y - 2) + fall * y + rough * site.dice.next())],
  );
  return { rows, walled: site.maybe() };
}

function flooded(site: Site): Compared {
  const { rows, walled } = yard(site);
  const { triangles } = new Delaunator(Float64Array.from(rows.flatMap(([x, y]) => [x, y])));
  if (fourOnACircle(rows, triangles))
    return {
      figures: 0,
      deviation: 0,
      input: rows,
      disagreements: [],
      skipped: 'four on a circle: which way they are joined is open',
    };
  // At survey coordinates the same water stands.
  const [dx, dy] = site.dice.below(3) === 0 ? [609_601, 152_400] : [0, 0];
  const input = {
    table: {
      unit: 'm' as const,
      rows: rows.map(([x, y, z]) => [mm(x + dx), mm(y + dy), z] as [number, number, number]),
    },
    ...(walled
      ? {
          lines: [
            {
              kind: 'building' as const,
              name: 'wall',
              along: [
                { x: `${dx} m`, y: `${dy} m` },
                { x: `${dx + SIDE} m`, y: `${dy} m` },
              ],
            },
          ],
        }
      : {}),
  };
  const attempt = drainageCheck.attempt(input);
  if (!attempt.ok)
    return { figures: 0, deviation: 0, input, disagreements: [`refused: ${attempt.error.message}`] };
  const figures = attempt.result.figures as {
    pondVolume: unknown;
    ponds: readonly { depth: unknown }[];
    pondCount: { toNumber(unit: string): number };
    reaches: readonly { area: unknown }[];
  };
  const open = walled ? ['north', 'east', 'west'] : ['north', 'east', 'west', 'south'];
  const grid = fineGridFlood(rows, SIDE, CELLS, open);
  const found: string[] = [];
  const volume = numberOf(figures.pondVolume);
  const listed = figures.pondCount.toNumber('each') === figures.ponds.length;
  const off = Math.abs(volume - grid.volume);
  if (listed && off > grid.error + 1e-9) {
    // What the cells can tell is an estimate of first order: smaller cells decide.
    const finer = fineGridFlood(rows, SIDE, FINE * CELLS, open);
    if (Math.abs(volume - finer.volume) > Math.min(finer.error + 1e-9, off / 2))
      found.push(`ponds hold ${volume} m3, on the grid ${finer.volume} within ${finer.error}`);
  }
  // On the grid water ends in a pond; ours follows what a full one spills.
  if (walled && figures.ponds.length === 0) found.push(...wallFaults(rows, open, figures.reaches));
  return {
    figures: walled ? 2 : 1,
    deviation: found.length === 0 && grid.error < volume / 5 ? off / Math.max(volume, grid.volume) : 0,
    input,
    disagreements: found,
  };
}

/** Water that meets the wall on the grid must be told, and what is told must be met. */
function wallFaults(
  rows: readonly Row[],
  open: readonly string[],
  reaches: readonly { area: unknown }[],
): string[] {
  const told = reaches.reduce((all, { area }) => all + numberOf(area), 0) / SIDE ** 2;
  const { meets } = fineGridRun(rows, SIDE, CELLS, open);
  // A cell drains to one of eight neighbors, so that a stream may stray; what is plain must agree.
  if (meets > 0.08 && told < 0.01)
    return [`${meets} of the water meets the wall on the grid, ours says ${told}`];
  if (told > 0.15 && meets < 0.01)
    return [`ours says ${told} of the water meets the wall, the grid ${meets}`];
  return [];
}

export const FLOODS: readonly ((site: Site) => Compared)[] = [flooded];
