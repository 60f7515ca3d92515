const assert = require('node:assert/strict');
const { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } = require('node:fs');
const { dirname, join } = require('node:path');
const { transformSync } = require('@babel/core');

const from = join(__dirname, 'node_modules/flatwork-reckoner/dist');
const profile = process.argv[2];
const to = join(__dirname, 'node_modules', `compiled-${profile}`);
rmSync(to, { recursive: true, force: true });
const files = readdirSync(from, { recursive: true }).filter(
  (f) => f.endsWith('.js') && !f.startsWith('browser'),
);
for (const file of files) {
  const { code } = transformSync(readFileSync(join(from, file), 'utf8'), {
    filename: join(from, file),
    presets: [['module:@react-native/babel-preset', { unstable_transformProfile: profile }]],
    babelrc: false,
    configFile: false,
    compact: false,
  });
  mkdirSync(dirname(join(to, file)), { recursive: true });
  writeFileSync(join(to, file), code);
}
const { slabVolume, concreteOrder, InputError } = require(join(to, 'index.js'));
const { textSheet } = require(join(to, 'report/index.js'));
const { jointPlan } = require(join(to, 'drawing/index.js'));
const input = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '5 in' };
const result = slabVolume(input);
const { volume } = result.figures;
assert.equal(volume.format('yd3'), '7.78 yd3');
const order = concreteOrder({ volume, allowance: '8%', increment: '0.25 yd3', truckCapacity: '9 yd3' });
assert.equal(order.figures.order.format(), '8.50 yd3');
assert.ok(textSheet('Job', [{ name: 'Slab', results: [result] }]).includes('504 ft2'));
assert.match(
  jointPlan({
    outline: { shape: 'rectangle', length: '9 m', width: '6 m' },
    thickness: '125 mm',
    spacing: '4.5 m',
  }),
  /^<svg /,
);
assert.throws(
  () => slabVolume({ thickness: 4 }),
  (error) => error instanceof InputError,
);
