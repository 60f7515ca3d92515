import assert from 'node:assert/strict';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
for (const door of ['', '/catalog', '/catalog/all', '/drawing', '/report', '/language/spanish']) {
  const modules = await import(`flatwork-reckoner${door}`);
  const commonjs = require(`flatwork-reckoner${door}`);
  assert.deepEqual(Object.keys(modules).sort(), Object.keys(commonjs).sort());
  for (const [name, value] of Object.entries(modules)) assert.equal(value, commonjs[name], name);
}
