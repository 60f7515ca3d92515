import Ajv2020 from 'ajv/dist/2020';
import { describe, expect, it } from 'vitest';
import { catalog } from '../src/catalog/index';
import { readVectors } from './support/vectors';

const WORDS = ['x-dimension', 'x-discriminator', 'x-limits'];
const vectors = readVectors().map(({ vector }) => vector);
describe('schemas', () => {
  it.each(catalog.map((c) => [c.id, c] as const))('%s', (id, c) => {
    const ajv = new Ajv2020({ strict: true, allErrors: true });
    for (const w of WORDS) ajv.addVocabulary([w]);
    const check = ajv.compile(c.inputSchema);
    const bad: string[] = [];
    for (const v of vectors.filter((v) => v.calculation === id)) {
      const ok = check(v.input);
      const codes = v.expect.error as string[] | undefined;
      if (!codes && !ok) bad.push(`REFUSES ${v.id} ${ajv.errorsText(check.errors)}`);
      if (codes && ok && codes.some((c) => /^(missing|give-one-of|unknown-key|unknown-choice|wrong-type|too-few|not-a-count)$/.test(c))) bad.push(`TAKES ${v.id} ${codes} ${JSON.stringify(v.input).slice(0, 300)}`);
    }
    expect(bad.join('\n')).toBe('');
  });
});
