/** Where an issue stands: as text, and member by member for form libraries. */
import { expect, it } from 'vitest';
import { slabVolume } from '../../src/index';

const PLAIN = { outline: { shape: 'rectangle', length: '9 ft', width: '9 ft' }, thickness: '4 in' };

it.each([
  ['dotted.name', '["dotted.name"]'],
  ['brackets[0]', '["brackets[0]"]'],
  ['"quoted". and \\ slashed', '["\\"quoted\\". and \\\\ slashed"]'],
  ['', '[""]'],
  ['two words', 'two words'],
  ['0', '0'],
])('keeps the name %j whole', (name, text) => {
  const top = slabVolume.attempt({ ...PLAIN, [name]: 1 } as never);
  expect(top.ok ? [] : top.error.issues.map(({ path }) => path)).toEqual([text]);
  const within = { ...PLAIN, openings: [{ ...PLAIN.outline, [name]: 1 }] };
  const { issues = [] } = slabVolume['~standard'].validate(within);
  const last = issues.find(({ message }) => message.includes('not known here'));
  expect(last?.path).toEqual(['openings', 0, name]);
});
