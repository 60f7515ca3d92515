/** What README says of the check vectors is what they come to. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { foundations } from './support/sources';

it('counts tables, works and cases from practice as README says', () => {
  const all = foundations().at(-1);
  const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8').replace(/\s+/g, ' ');
  expect(readme).toContain(
    `checked against ${all?.places} published tables and worked examples out of ${all?.works} works`,
  );
  expect(readme).toContain(`${all?.advice} cases from practice`);
});
