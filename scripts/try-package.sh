#!/usr/bin/env bash
# Packs the library, installs it in an empty project, and uses it there as ES modules, as CommonJS
# (without Node's help in loading ES modules from CommonJS), and from TypeScript.
set -euo pipefail
root=$(cd "$(dirname "$0")/.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$root"
tarball=$(npm pack --silent --pack-destination "$work")
cd "$work"
npm init -y >/dev/null
npm install --silent --no-audit --no-fund "./$tarball" "$root/node_modules/typescript" >/dev/null
if grep -rlE '__privateAdd|static \{' node_modules/flatwork-reckoner/dist --include='*.js' --include='*.cjs'; then
  echo "these files have members that only newer engines read"; exit 1
fi
# What README and the docs link to is in the package.
node -e '
const { existsSync, readFileSync, readdirSync } = require("node:fs");
const { dirname, join } = require("node:path");
const root = "node_modules/flatwork-reckoner";
const pages = ["README.md", "DEVELOPERS.md", ...readdirSync(join(root, "docs")).filter((f) => f.endsWith(".md")).map((f) => `docs/${f}`)];
const dead = pages.flatMap((page) => [...readFileSync(join(root, page), "utf8").matchAll(/\]\((?!https?:|#)([^)#]+)/g)].map(([, to]) => join(dirname(page), to)).filter((to) => !existsSync(join(root, to))).map((to) => `${page}: ${to}`));
if (dead.length > 0) { console.error(dead.join("\n")); process.exit(1); }
'
[ ! -e node_modules/flatwork-reckoner/src ] || { echo "sources are in the package"; exit 1; }

cat > use.mjs <<'JS'
import assert from 'node:assert';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { catalog, loadCalculation } from 'flatwork-reckoner/catalog';
import { InputError, length, revive, slabVolume } from 'flatwork-reckoner';
import { textSheet } from 'flatwork-reckoner/report';
const input = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '5 in' };
assert.equal(slabVolume(input).figures.volume.format('yd3'), '7.78 yd3');
assert.ok(textSheet('Job', [{ name: 'Slab', results: [slabVolume(input)] }]).includes('504 ft2'));
// A quantity of the other copy is read by its exact JSON.
const other = createRequire(import.meta.url)('flatwork-reckoner');
assert.notEqual(other.length, length);
assert.ok(length(other.length('5 in')).equals(length('5 in')));
assert.equal(length('1 ft').plus(other.length('6 in')).format(), '1 ft 6 in');
assert.ok(other.slabVolume.attempt({}).error instanceof InputError);
for (const result of [other.slabVolume(input), structuredClone(slabVolume(input))]) {
  assert.ok(textSheet('Job', [{ name: 'Slab', results: [result] }]).includes('504 ft2'));
  assert.equal(revive(result).figures.volume.format('yd3'), '7.78 yd3');
}
assert.equal(slabVolume({ ...input, thickness: other.length('5 in') }).figures.volume.format(), '7.78 yd3');
const vector = createRequire(import.meta.url).resolve('flatwork-reckoner/vectors/slope/patio-12-ft.json');
const { calculation, input: asked, expect } = JSON.parse(readFileSync(vector, 'utf8'));
assert.ok(catalog.some(({ id }) => id === calculation));
const loaded = await loadCalculation(calculation);
const attempt = loaded.calculation.attempt(asked);
assert.ok(attempt.result.figures.fall.equals(length(expect.figures.fall.equals)));
console.log('as ES modules: works');
JS
# As bundlers do, so that there are two copies to be held to each other; then as Node does.
node --conditions=module use.mjs
node -e 'import("flatwork-reckoner").then((m) => require("node:assert").equal(m.length, require("flatwork-reckoner").length))'

cat > use.cjs <<'JS'
const assert = require('node:assert');
const { slopeOf, InputError } = require('flatwork-reckoner');
const { catalog } = require('flatwork-reckoner/catalog');
const { markdownSheet } = require('flatwork-reckoner/report');
const result = slopeOf({ slope: '1/4 in/ft', over: '12 ft' });
assert.equal(result.figures.fall.format(), '3 in');
assert.ok(catalog.length > 8);
assert.ok(markdownSheet('Job', [{ name: 'Pitch', results: [result] }]).startsWith('# Job'));
assert.throws(() => slopeOf({ slope: 2 }), InputError);
console.log('as CommonJS: works');
JS
node --no-experimental-require-module use.cjs

cat > use.ts <<'TS'
import { type Quantity, type Result, slabVolume, type SlabVolumeFigures } from 'flatwork-reckoner';
import { catalog } from 'flatwork-reckoner/catalog';
import { textSheet } from 'flatwork-reckoner/report';
const result: Result<SlabVolumeFigures> = slabVolume({
  outline: { shape: 'circle', diameter: '9 ft' },
  thickness: '4 in',
});
const volume: Quantity<'volume'> = result.figures.volume;
const sheet: string = textSheet('Job', [{ name: 'Pad', results: [result] }]);
// @ts-expect-error a bare number is no thickness
slabVolume.attempt && slabVolume({ outline: { shape: 'circle', diameter: '9 ft' }, thickness: 4 });
export const shown: string[] = [volume.format('m3'), sheet, ...catalog.map(({ id }) => id)];
TS
cp use.ts use.cts
compile() { node node_modules/typescript/bin/tsc --noEmit --strict --exactOptionalPropertyTypes --target es2022 --lib es2023 "$@"; }
compile --module node16 --moduleResolution node16 use.ts use.cts
compile --module esnext --moduleResolution bundler use.ts
echo "in TypeScript under node16 and bundler: works"
for file in $(find node_modules/flatwork-reckoner/dist -name "*.d.ts" -o -name "*.d.cts"); do
  if grep -nE "from '(zod|decimal)|zod|Decimal" "$file" | grep -vE '^\s*[0-9]+:\s*(\*|//)' | grep -E "import|: Decimal|Zod"; then
    echo "$file shows a type of zod or decimal.js"; exit 1
  fi
done
echo "no type of zod or decimal.js shows in the declarations"
