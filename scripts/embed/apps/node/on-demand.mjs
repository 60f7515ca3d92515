import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import * as modules from 'flatwork-reckoner/catalog';

const commonjs = createRequire(import.meta.url)('flatwork-reckoner/catalog');
for (const { catalog, loadCalculation } of [modules, commonjs]) {
  assert.deepEqual(JSON.parse(JSON.stringify(catalog)), catalog);
  for (const { id, title } of catalog) {
    const loaded = await loadCalculation(id);
    assert.equal(loaded.calculation.id, id);
    assert.equal(loaded.title, title);
    assert.equal(loaded.formSchema.type, 'object');
  }
  const { calculation } = await loadCalculation('slope');
  const { ok, result } = calculation.attempt({ slope: '1/4 in/ft', over: '12 ft' });
  assert.ok(ok);
  assert.equal(result.figures.fall.format(), '3 in');
  assert.equal(await loadCalculation('no-such'), undefined);
}
