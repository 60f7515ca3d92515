/** The site plan of a job. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sitePlan } from '../../src/drawing/index';
import { pourOrder } from '../../src/drawing/pour-order';
import type { JobElementInput, JobInput } from '../../src/job/document';
import { reckonJob } from '../../src/job/job-takeoff';
import { InputError } from '../../src/quantity/input-error';

const read = (name: string): JobInput =>
  JSON.parse(readFileSync(new URL(`../../scripts/demo/${name}.json`, import.meta.url), 'utf8')) as JobInput;

const yard = read('rear-yard');

const pad = (name: string, x: string, more: Partial<JobElementInput> = {}): JobElementInput => ({
  name,
  outline: { shape: 'rectangle', length: '4 m', width: '3 m' },
  at: { x, y: '0 m' },
  thickness: '100 mm',
  slab: true,
  ...more,
});

describe('the site plan', () => {
  it('shows every element by name, with its joints', () => {
    const svg = sitePlan(yard);
    for (const { name } of yard.elements) expect(svg).toContain(`>${name}<`);
    expect(svg.match(/class="joint"/g)).toHaveLength(3);
    expect(svg.match(/class="outline"/g)).toHaveLength(yard.elements.length);
  });

  it('is the same at survey coordinates', () => {
    const near = sitePlan({ version: 1, elements: [pad('a', '0 m'), pad('b', '5 m', { turned: '30 deg' })] });
    const far = sitePlan({
      version: 1,
      elements: [pad('a', '500000 m'), pad('b', '500005 m', { turned: '30 deg' })],
    });
    expect(far).toBe(near);
  });

  it('names what has no place, and what lies over each other', () => {
    const { at: _, ...unplaced } = pad('shed', '0 m');
    const svg = sitePlan({ version: 1, elements: [pad('a', '0 m'), pad('b', '3 m'), unplaced] });
    expect(svg).toContain('shed');
    expect(svg).toContain('a and b lie over each other on 3 m2');
    expect(svg).not.toMatch(/\d (?:in|ft)\b/);
  });

  it('tells the height of the forms at each corner of a fall from the building, and the way down', () => {
    const svg = sitePlan(yard, { width: 720 });
    // 100 ft at the building and 5 in lower over the 18 ft of its width.
    expect(svg.match(/>100 ft</g)).toHaveLength(2);
    expect(svg.match(/>99 ft 7 in</g)).toHaveLength(2);
    expect(svg.match(/class="fall"/g)).toHaveLength(1);
    expect(svg).toContain('>0.278 in/ft<');
  });

  it('tells heights and the fall on any turn, as the stakes have them', () => {
    const at = (x: string, y: string) => ({ name: `${x} ${y}`, x, y, top: '10 m' });
    const surface = {
      kind: 'sloped-plane',
      at: { name: 'door', x: '0 m', y: '0 m', elevation: '10 m' },
      alongX: '2%',
      alongY: '0%',
    } as const;
    const stakes = { surface, stakes: [at('0 m', '0 m'), at('4 m', '0 m')] };
    for (const turned of ['0 deg', '90 deg', '180 deg', '270 deg']) {
      const svg = sitePlan({ version: 1, elements: [pad('a', '0 m', { stakes, turned })] });
      expect(svg).toContain('>9.92 m, 80 mm down<');
      expect(svg).toContain('>2%<');
      const [, x0, y0, x1, y1] =
        /d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)[^"]*"[^>]*class="fall"/.exec(svg) ?? [];
      const [dx, dy] = [Number(x1) - Number(x0), Number(y1) - Number(y0)];
      const degrees = Math.round((Math.atan2(-dy, dx) * 180) / Math.PI);
      expect((degrees + 360) % 360).toBe(Number.parseInt(turned, 10));
    }
  });

  it('draws no arrow where nothing says which way it falls', () => {
    const fall = { atBuilding: '100 m', away: '99.9 m', distance: '4 m' };
    const svg = sitePlan({ version: 1, elements: [pad('a', '0 m', { fall })] });
    expect(svg).not.toContain('class="fall"');
    expect(svg).toContain('a falls 2.5%; nothing says which way');
  });

  it('numbers elements in the order of pouring, what stands on another after it', () => {
    const elements = [
      pad('cap', '0 m', { standsOn: 'footing' }),
      pad('bare', '5 m', { slab: false }),
      pad('footing', '10 m'),
      pad('walk', '15 m'),
    ];
    const order = pourOrder(reckonJob({ version: 1, elements }), elements as never);
    expect([...order]).toEqual([
      ['footing', 1],
      ['cap', 2],
      ['walk', 3],
    ]);
    const svg = sitePlan({ version: 1, elements });
    expect(svg.match(/<rect[^>]*class="number"/g)).toHaveLength(3);
    const both = [pad('a', '0 m', { standsOn: 'b' }), pad('b', '5 m', { standsOn: 'a' })];
    expect(pourOrder(reckonJob({ version: 1, elements: both }), both as never).size).toBe(2);
  });

  it('takes a job that was reckoned, and draws the same', () => {
    expect(sitePlan(reckonJob(yard))).toBe(sitePlan(yard));
    const stored = JSON.parse(JSON.stringify(reckonJob(yard)));
    expect(() => sitePlan(stored)).toThrow(InputError);
    for (const wrong of [null, undefined, 7, 'job', {}])
      expect(() => sitePlan(wrong as never)).toThrow(InputError);
  });

  it('asks for a place where nothing has one, and keeps names to their own text', () => {
    const { at: _, ...unplaced } = pad('shed', '0 m');
    expect(() => sitePlan({ version: 1, elements: [unplaced] })).toThrow(InputError);
    expect(sitePlan({ version: 1, elements: [pad('<script>x</script>', '0 m')] })).not.toContain('<script');
  });
});

/** Slopes and ways of the arrows on a plan. */
const slopesOf = (svg: string): string[] =>
  [...svg.matchAll(/class="slope"[^>]*>([^<]*)</g)].map(([, text = '']) => text).sort();

describe('a surface of spots on the site plan', () => {
  // Two planes that meet along y = 2 m: 2% down from the south, 1% down from the north, toward a gutter.
  const metric = {
    unit: 'm',
    rows: [
      [0, 0, 10],
      [4, 0, 10],
      [4, 2, 9.96],
      [0, 2, 9.96],
      [4, 4, 9.98],
      [0, 4, 9.98],
    ],
  };
  const feet = {
    unit: 'ft',
    rows: [
      [0, 0, 100],
      [12, 0, 100],
      [12, 8, 99.84],
      [0, 8, 99.84],
      [12, 16, 99.92],
      [0, 16, 99.92],
    ],
  };
  const plan = (outline: object, thickness: string, table: object, turned = '0 deg'): string =>
    sitePlan(
      {
        version: 1,
        elements: [
          { name: 'a', outline, at: { x: '0 m', y: '0 m' }, turned, thickness, slab: true, fall: { table } },
        ],
      } as never,
      { width: 720 },
    );

  it.each([
    [{ shape: 'rectangle', length: '4 m', width: '4 m' }, '100 mm', metric],
    [{ shape: 'rectangle', length: '12 ft', width: '16 ft' }, '4 in', feet],
  ])('has an arrow in each of its pieces, with the slope of each', (outline, thickness, table) => {
    expect(slopesOf(plan(outline, thickness, table))).toEqual(['1%', '2%']);
    expect(plan(outline, thickness, table)).not.toContain('nothing says which way');
  });

  it('has each arrow in its own facet, where the cells of a grid fall about their middles', () => {
    // Heights in hundredths of a foot, spots 12 ft apart: cells that are in no plane have four facets each.
    const heights = [
      [10000, 10000, 10000, 10000],
      [9970, 9972, 9968, 9966],
      [9940, 9935, 9930, 9942],
    ];
    const rows = heights.flatMap((row, j) => row.map((z, i) => [12 * i, 12 * j, z / 100]));
    const svg = plan({ shape: 'rectangle', length: '36 ft', width: '24 ft' }, '6 in', { unit: 'ft', rows });
    const numbers = (text: string): number[] => (text.match(/[\d.]+/g) ?? []).map(Number);
    const [, edge = ''] = /d="([^"]*)"[^>]*class="outline"/.exec(svg) ?? [];
    const [left = 0, bottom = 0, right = 0] = numbers(edge);
    const cell = (right - left) / 3;
    const facets = [...svg.matchAll(/d="([^"]*)"[^>]*class="fall"/g)].map(([, d = '']) => {
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = numbers(d);
      // The middle of an arrow by cells: which cell, and on which side of its middle.
      const [x, y] = [((x1 + x2) / 2 - left) / cell, (bottom - (y1 + y2) / 2) / cell];
      const [i, j] = [Math.floor(x), Math.floor(y)];
      const [u, v] = [x - i - 0.5, y - j - 0.5];
      return `${i},${j} ${Math.abs(u) > Math.abs(v) ? `x${Math.sign(u)}` : `y${Math.sign(v)}`}`;
    });
    expect(facets.filter((facet) => /^[012],[01] /.test(facet))).toHaveLength(facets.length);
    expect(new Set(facets).size).toBe(facets.length);
    // Six cells of four; where a name stands there may be no room for one.
    expect(facets.length).toBeGreaterThan(21);
    expect(slopesOf(svg)).toHaveLength(facets.length);
  });

  it('has none on a level surface', () => {
    const level = { ...metric, rows: metric.rows.map(([x, y]) => [x, y, 10]) };
    const svg = plan({ shape: 'rectangle', length: '4 m', width: '4 m' }, '100 mm', level);
    expect(slopesOf(svg)).toEqual([]);
  });
});
