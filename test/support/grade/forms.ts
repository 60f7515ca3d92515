/** Random yards whose forms are to be set, and the same conditions as a linear program of its own. */
import type { FormGradesInput } from '../../../src/index';
import { drawer } from '../draw';
import type { OracleRow } from '../oracle';

export interface RandomSite {
  readonly input: FormGradesInput;
  readonly rows: OracleRow[];
  readonly fill: Record<string, number>;
}

const m = (v: number): string => `${v.toFixed(3)} m`;

/** A yard with a door, required falls, bounds and rough ground, all to the millimeter. */
export function randomSite(seed: number): RandomSite {
  const draw = drawer(seed);
  const mm = (low: number, high: number): number => Math.round((low + (high - low) * draw()) * 1000) / 1000;
  const rows: OracleRow[] = [];
  const point = (x: number, y: number): Record<string, number> => ({ h: 1, b: x, c: y });
  const stakes = Array.from({ length: 4 + Math.floor(draw() * 9) }, (_, i) => {
    const [x, y, ground] = [mm(0, 12), mm(0, 12), mm(99.5, 100.3)];
    const f: OracleRow = { weights: { h: -1, b: -x, c: -y, [`f${i}`]: 1 }, least: -ground };
    rows.push(f);
    return { name: `stake ${i}`, x: m(x), y: m(y), ground: m(ground) };
  });
  const fixed = Array.from({ length: Math.floor(draw() * 3) }, (_, i) => {
    const [x, y, z] = [mm(0, 12), mm(0, 2), mm(100, 100.05)];
    rows.push({ weights: point(x, y), least: z, most: z });
    return { name: `door ${i}`, x: m(x), y: m(y), elevation: m(z) };
  });
  const bounds = Array.from({ length: 1 + Math.floor(draw() * 2) }, (_, i) => {
    const [x, y, least] = [mm(0, 12), mm(0, 12), mm(99.6, 99.9)];
    const most = Math.round((least + mm(0.05, 0.4)) * 1000) / 1000;
    rows.push({ weights: point(x, y), least, most });
    return { name: `bound ${i}`, x: m(x), y: m(y), minimum: m(least), maximum: m(most) };
  });
  const falls = Array.from({ length: 1 + Math.floor(draw() * 3) }, (_, i) => {
    const [x, y] = [mm(0, 6), mm(0, 6)];
    const [dx, dy] = [mm(0, 5), mm(1, 5)];
    const least = Math.round(draw() * 25) / 1000;
    rows.push({ weights: { h: 0, b: -dx, c: -dy }, least: least * Math.hypot(dx, dy) });
    return {
      name: `fall ${i}`,
      from: { x: m(x), y: m(y) },
      to: { x: m(Math.round((x + dx) * 1000) / 1000), y: m(Math.round((y + dy) * 1000) / 1000) },
      minimum: { value: least * 1000, unit: 'mm/m' },
    };
  });
  const fill = Object.fromEntries(stakes.map((_, i) => [`f${i}`, 1]));
  // Rough ground between near bounds: the steepness is left open, so that fill alone decides.
  const input = { stakes, bounds, falls, maximum: '1000%', ...(fixed.length > 0 ? { fixed } : {}) };
  return { input, rows, fill };
}

/** What the program may choose freely: the height at the origin and the slopes along x and y. */
export const FREE: ReadonlySet<string> = new Set(['h', 'b', 'c']);
