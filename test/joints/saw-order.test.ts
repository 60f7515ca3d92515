/** The order of sawing: TM 5-822-7 wants joints across consecutively; those along and arcs follow. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type JointLayoutInput, jointLayout, type PlanJoint } from '../../src/index';
import { runs } from '../support/effort';

const plan = (outline: JointLayoutInput['outline'], sawOrder?: 'consecutive' | 'reverse'): PlanJoint[] => {
  const { joints, sawing } = jointLayout({
    outline,
    thickness: '5 in',
    spacing: '10 ft',
    ...(sawOrder ? { sawOrder } : {}),
  }).figures;
  return (sawing?.order ?? []).map((n) => joints[n.toNumber('each') - 1] as PlanJoint);
};

const runsAlongX = ({ from, to }: PlanJoint): boolean => from.y.compareTo(to.y) === 0;

describe('saw order', () => {
  it('saws the joints across one after another, then those along', () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 90 }), fc.integer({ min: 5, max: 25 }), (long, wide) => {
        const order = plan({ shape: 'rectangle', length: `${long} ft`, width: `${wide} ft` });
        const along = order.map(runsAlongX);
        expect(along).toEqual([...along].sort((a, b) => Number(a) - Number(b)));
        const across = order.filter((j) => !runsAlongX(j)).map((j) => j.from.x.toNumber('ft'));
        expect(across).toEqual([...across].sort((a, b) => a - b));
      }),
      { numRuns: runs(25) },
    );
  });

  it('turns with the slab', () => {
    const lying = plan({ shape: 'rectangle', length: '60 ft', width: '18 ft' });
    const standing = plan({ shape: 'rectangle', length: '18 ft', width: '60 ft' });
    expect(standing.map((j) => !runsAlongX(j))).toEqual(lying.map(runsAlongX));
    expect(lying.map(runsAlongX).at(-1)).toBe(true);
  });

  it('begins at the other end when asked', () => {
    const outline = { shape: 'rectangle', length: '60 ft', width: '9 ft' } as const;
    const forth = plan(outline).map((j) => j.from.x.toNumber('ft'));
    expect(plan(outline, 'reverse').map((j) => j.from.x.toNumber('ft'))).toEqual([...forth].reverse());
  });

  it('leaves circles of a round slab to the last', () => {
    const { joints, sawing } = jointLayout({
      outline: { shape: 'circle', diameter: '60 ft' },
      thickness: '5 in',
      spacing: '10 ft',
    }).figures;
    const order = (sawing?.order ?? []).map((n) => joints[n.toNumber('each') - 1] as PlanJoint);
    const curved = order.map(({ shape }) => shape !== 'straight');
    expect(curved.includes(true)).toBe(true);
    expect(curved).toEqual([...curved].sort((a, b) => Number(a) - Number(b)));
  });
});
