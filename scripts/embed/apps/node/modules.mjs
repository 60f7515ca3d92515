import assert from 'node:assert/strict';
import { InputError, length, slabVolume } from 'flatwork-reckoner';
import { catalog } from 'flatwork-reckoner/catalog';
import { jointPlan } from 'flatwork-reckoner/drawing';
import { spanish } from 'flatwork-reckoner/language/spanish';
import { textSheet } from 'flatwork-reckoner/report';

const result = slabVolume({
  outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
  thickness: '5 in',
});
assert.equal(result.figures.volume.format('yd3'), '7.78 yd3');
assert.ok(textSheet('Job', [{ name: 'Slab', results: [result] }]).includes('504 ft2'));
assert.ok(
  textSheet('Job', [{ name: 'Slab', results: [result] }], { language: spanish }).includes('Volumen de losa'),
);
assert.notDeepEqual(length('1 m'), length('2 m'));
assert.throws(() => slabVolume({ thickness: 4 }), InputError);
assert.ok(catalog.length > 30);
const plan = jointPlan({
  outline: { shape: 'rectangle', length: '9 m', width: '6 m' },
  thickness: '125 mm',
  spacing: '4.5 m',
});
assert.match(plan, /^<svg /);
