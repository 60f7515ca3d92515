/** Joint plans as SVG: what is drawn is what the figures say. */
import { describe, expect, it } from 'vitest';
import { jointPlan } from '../../src/drawing/joint-plan';
import { InputError, type JointLayoutInput, jointLayout } from '../../src/index';

const yard: JointLayoutInput = {
  outline: { shape: 'L', length: '40 ft', width: '40 ft', notchLength: '18 ft', notchWidth: '20 ft' },
  openings: [{ shape: 'circle', at: { x: '11 ft', y: '12 ft' }, diameter: '2 ft' }],
  columns: [1],
  thickness: '5 in',
  spacing: '12 ft',
  isolation: [{ against: 'building', from: { x: '0 ft', y: '40 ft' }, to: { x: '22 ft', y: '40 ft' } }],
  fixed: [{ type: 'construction', from: { x: '22 ft', y: '0 ft' }, to: { x: '22 ft', y: '20 ft' } }],
};

const linesOf = (svg: string, kind: string): string[] =>
  svg.match(new RegExp(`<path[^>]*class="${kind}"`, 'g')) ?? [];

/** From the first point of a path to its second. */
function longOf(path: string): number {
  const [x1, y1, x2, y2] = [...path.matchAll(/-?\d+(?:\.\d+)?/g)].map(([n]) => Number(n)) as [
    number,
    number,
    number,
    number,
  ];
  return Math.hypot(x2 - x1, y2 - y1);
}

describe('a joint plan', () => {
  const svg = jointPlan(yard, { title: 'Delivery slab <&>' });
  const { figures } = jointLayout(yard);

  it('tells in the key what is too long to stand on its line beside the slab', () => {
    const deck = jointPlan({
      outline: { shape: 'rectangle', length: '14 m', width: '9 m' },
      openings: [{ shape: 'rectangle', at: { x: '3 m', y: '2.5 m' }, length: '8 m', width: '4 m' }],
      thickness: '100 mm',
      spacing: '2.5 m',
    });
    const told = [...deck.matchAll(/<text([^>]*)>(?:<[^>]*>)*3 at about 1\.333 m/g)].map(([, how]) => how);
    expect(told).toHaveLength(1);
    expect(told[0]).not.toContain('rotate');
  });

  it('has a line for each joint, by its type', () => {
    for (const type of ['contraction', 'construction'] as const) {
      expect(linesOf(svg, type).length).toBe(figures.joints.filter((j) => j.type === type).length);
    }
    expect(svg.match(/class="isolation"/g)?.length).toBe(2);
  });

  it('is drawn to one scale', () => {
    const drawn = linesOf(svg, 'contraction').map(longOf);
    const told = figures.joints.filter((j) => j.type === 'contraction').map((j) => j.length.toNumber('m'));
    const scale = (drawn[0] as number) / (told[0] as number);
    drawn.forEach((d, i) => {
      expect(d / scale).toBeCloseTo(told[i] as number, 2);
    });
  });

  it('numbers every panel and explains every pattern', () => {
    expect(svg.match(/class="panel"/g)?.length).toBe(figures.panels.length);
    const legend = svg.slice(svg.indexOf('class="legend"'));
    for (const name of ['edge of the slab', 'contraction joint', 'construction joint', 'isolation joint']) {
      expect(legend).toContain(name);
    }
    const patterns = [...legend.matchAll(/<path[^>]*>/g)].map(
      ([l]) => /stroke-dasharray="[^"]+"/.exec(l)?.[0] ?? 'none',
    );
    expect(new Set(patterns).size).toBe(patterns.length);
  });

  it('has dimensions, a title that is escaped, and nothing from outside', () => {
    expect(svg).toContain('>40 ft<');
    expect(svg).toContain('2 at 11 ft');
    expect(svg).toContain('Delivery slab &lt;&amp;&gt;');
    expect(svg).not.toMatch(/<script|href|url\(/);
  });

  it('draws circles of round slabs as circles', () => {
    const round = jointPlan({
      outline: { shape: 'circle', diameter: '40 ft' },
      thickness: '5 in',
      spacing: '12 ft',
    });
    expect(round.match(/<circle[^>]*class="contraction"/g)?.length).toBe(2);
  });

  it('throws what the calculation throws', () => {
    expect(() => jointPlan({ ...yard, spacing: '1 in' })).toThrow(InputError);
  });
});
