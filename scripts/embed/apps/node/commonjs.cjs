const assert = require('node:assert/strict');
const { InputError, slopeOf } = require('flatwork-reckoner');
const { catalog } = require('flatwork-reckoner/catalog');
const { outlinePlan } = require('flatwork-reckoner/drawing');
const { spanish } = require('flatwork-reckoner/language/spanish');
const { markdownSheet } = require('flatwork-reckoner/report');

const result = slopeOf({ slope: '1/4 in/ft', over: '12 ft' });
assert.equal(result.figures.fall.format(), '3 in');
assert.ok(catalog.length > 30);
assert.ok(markdownSheet('Job', [{ name: 'Pitch', results: [result] }]).startsWith('# Job'));
assert.match(outlinePlan({ outline: { shape: 'circle', diameter: '9 ft' } }), /^<svg /);
assert.equal(spanish['Slab volume'], 'Volumen de losa');
assert.throws(() => slopeOf({ slope: 2 }), InputError);
