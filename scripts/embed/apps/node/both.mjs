import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import * as modules from 'flatwork-reckoner';
import * as sheets from 'flatwork-reckoner/report';

const require = createRequire(import.meta.url);
const commonjs = require('flatwork-reckoner');
const commonjsSheets = require('flatwork-reckoner/report');
assert.notEqual(modules.length, commonjs.length, 'one copy only');

const input = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '5 in' };
for (const [a, b, sheet] of [
  [modules, commonjs, commonjsSheets],
  [commonjs, modules, sheets],
]) {
  // A quantity of one copy is a quantity of the other.
  assert.equal(a.length('1 ft').plus(b.length('6 in')).format(), '1 ft 6 in');
  assert.equal(a.length('1 ft').compareTo(b.length('6 in')), 1);
  assert.ok(a.length(b.length('5 in')).equals(a.length('5 in')));
  assert.deepEqual(a.length('5 in'), a.length(b.length('5 in')));
  assert.equal(a.slabVolume({ ...input, thickness: b.length('5 in') }).figures.volume.format(), '7.78 yd3');
  // A result of one is shown and revived by the other.
  const result = a.slabVolume(input);
  assert.ok(sheet.textSheet('Job', [{ name: 'Slab', results: [result] }]).includes('504 ft2'));
  assert.equal(b.revive(result).figures.volume.format('yd3'), '7.78 yd3');
  assert.equal(
    b
      .concreteOrder({
        volume: result.figures.volume,
        allowance: '8%',
        increment: '0.25 yd3',
        truckCapacity: '9 yd3',
      })
      .figures.order.format(),
    '8.50 yd3',
  );
  // An error of one is an error of the other.
  const { error } = a.slabVolume.attempt({});
  assert.ok(error instanceof a.InputError);
  assert.ok(error instanceof b.InputError);
}
