import assert from 'node:assert/strict';
import { catalog } from 'flatwork-reckoner/catalog';

const slope = catalog.find(({ id }) => id === 'slope');
const calculation = typeof slope.load === 'function' ? await slope.load() : slope;
const { ok, result } = calculation.attempt({ slope: '1/4 in/ft', over: '12 ft' });
assert.ok(ok);
assert.equal(result.figures.fall.format(), '3 in');
assert.equal(JSON.parse(JSON.stringify(slope)).id, 'slope');
