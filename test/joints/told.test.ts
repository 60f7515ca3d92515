/** What is told beside a plan or a spacing: rules for other work stay away, and what gave way is counted. */
import { expect, it } from 'vitest';
import { jointLayout, jointSpacing } from '../../src/index';

/** The kinds of work that a rule is named for. */
const named = ({ rule }: { readonly rule: { readonly says: string } }): string[] =>
  rule.says.match(/^(?:walks|curbs and gutters)$/) ?? [];

it.each([
  ['slab', []],
  ['walk', ['walks']],
  ['curb', ['curbs and gutters']],
] as const)('gives the rules of other work for no %s', (use, of) => {
  const { spacings, depths } = jointSpacing({
    use,
    thickness: '5 in',
    aggregateSize: '3/4 in',
    slump: '4 in',
  }).figures;
  expect(spacings.flatMap(named)).toEqual(of);
  expect(depths.flatMap(named)).toEqual(of);
});

it('counts the joints that lie off the module of the paving', () => {
  const plan = (width: string) =>
    jointLayout({
      outline: { shape: 'L', length: '21 ft', width, notchLength: '9 ft', notchWidth: '8 ft' },
      thickness: '4 in',
      spacing: '10 ft',
      module: '2 ft',
    }).figures;
  // The corner within lies 11 ft up, half a module off, and a joint must end there.
  const { givesWay, joints } = plan('19 ft');
  expect(givesWay).toMatchObject([{ rule: 'module' }]);
  expect(givesWay[0]?.actual?.value).toBe('1');
  const off = joints.filter(({ from, to }) => from.y.value === to.y.value && from.y.value === '11');
  expect(off).toHaveLength(1);
  expect(plan('18 ft').givesWay).toEqual([]);
});
