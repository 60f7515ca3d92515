/** Inputs whose structure is wrong: what is said names the member, and shows what is right in the units of the job. */
import { describe, expect, it } from 'vitest';
import { barCutting, concreteOrder, freshConcreteTemperature, jobTakeoff, slabVolume } from '../../src/index';

type Issues = readonly { path: string; sentence: string }[];
type Asked = { attempt: (input: never) => { ok: boolean; error?: { issues: Issues } } };

const said = (asked: Asked, input: unknown): string[] => {
  const { error } = asked.attempt(input as never);
  return (error?.issues ?? []).map(({ path, sentence }) => `${path}: ${sentence}`);
};

const slab = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '5 in' };
const metric = { outline: { shape: 'rectangle', length: '8.5 m', width: '5.4 m' }, thickness: '125 mm' };

describe('what is no object, or not there', () => {
  it.each([
    [slab, ['12 ft', '12 ft'], 'must be an object such as { x: "12 ft", y: "12 ft" }'],
    [metric, '4 m, 4 m', 'must be an object such as { x: "3.6 m", y: "3.6 m" }'],
    [metric, undefined, 'is missing; write it, for example { x: "3.6 m", y: "3.6 m" }'],
  ])('is shown with its members, in the units of the job', (job, at, sentence) => {
    const openings = [{ shape: 'circle', at, diameter: job.thickness }];
    expect(said(slabVolume, { ...job, openings })).toEqual([`openings[0].at: it ${sentence}`]);
  });

  it('is shown as the first of its kinds', () => {
    const rectangle = '{ shape: "rectangle", length: "3.6 m", width: "3.6 m" }';
    const of = (outline: unknown) => said(slabVolume, { ...metric, outline });
    expect(of('8.5 m x 5.4 m')).toEqual([`outline: it must be an object such as ${rectangle}`]);
    expect(of(undefined)).toEqual([`outline: it is missing; write it, for example ${rectangle}`]);
  });

  it('is shown as a list where a list is asked for', () => {
    const listed = '[{ length: "12 ft", count: 2 }]';
    const of = (pieces: unknown) => said(barCutting, { pieces, stock: [{ length: '20 ft' }] });
    expect(of({ length: '4 ft', count: 3 })).toEqual([`pieces: it must be a list such as ${listed}`]);
    expect(of(undefined)).toEqual([`pieces: it is missing; write it, for example ${listed}`]);
    expect(said(freshConcreteTemperature, {})[0]).toContain('{ mass: "50 lb", temperature: "55 degF" }');
  });
});

describe('a member that is not known', () => {
  const order = { volume: '7.5 m3', allowance: '8%', increment: '0.5 m3' };
  const pad = { name: 'pad', ...slab };
  it.each([
    ['thick', 'thickness', slabVolume, { outline: slab.outline, thick: '5 in' }],
    ['Thickness', 'thickness', slabVolume, { outline: slab.outline, Thickness: '5 in' }],
    ['opening', 'openings', slabVolume, { ...slab, opening: [] }],
    ['lenght', 'length', slabVolume, { ...slab, outline: { ...slab.outline, lenght: '1 ft' } }],
    ['truck_capacity', 'truckCapacity', concreteOrder, { ...order, truck_capacity: '7 m3' }],
    ['truck-capacity', 'truckCapacity', concreteOrder, { ...order, 'truck-capacity': '7 m3' }],
    ['volumes', 'volume', concreteOrder, { ...order, volumes: '7 m3' }],
    ['slabs', 'slab', jobTakeoff, { version: 1, elements: [{ ...pad, slabs: true }] }],
  ])('as %s is told %s first', (typed, meant, asked, input) => {
    expect(said(asked as unknown as Asked, input).at(-1)).toContain(
      `"${typed}" is not known here; known: ${meant},`,
    );
  });
});
