/** The site plan of a job. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sitePlan } from '../../src/drawing/index';
import type { JobElementInput, JobInput } from '../../src/job/document';
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

  it('asks for a place where nothing has one, and keeps names to their own text', () => {
    const { at: _, ...unplaced } = pad('shed', '0 m');
    expect(() => sitePlan({ version: 1, elements: [unplaced] })).toThrow(InputError);
    expect(sitePlan({ version: 1, elements: [pad('<script>x</script>', '0 m')] })).not.toContain('<script');
  });
});
