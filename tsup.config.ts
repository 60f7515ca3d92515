import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, relative, resolve } from 'node:path';
import { minify } from 'terser';
import { defineConfig, type Options } from 'tsup';
import { leanDecimal } from './scripts/lean-decimal';

/** What users import, by its name in the package. */
const DOORS = {
  index: 'src/index.ts',
  'catalog/index': 'src/catalog/index.ts',
  'catalog/all': 'src/catalog/all.ts',
  'drawing/index': 'src/drawing/index.ts',
  'report/index': 'src/report/index.ts',
  'language/spanish/index': 'src/language/spanish/index.ts',
};

const ONE_FILE = { 'browser/flatwork-reckoner': 'src/browser.ts' };

const calculations = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((file) => join('src', file))
  .filter((file) => file.endsWith('.ts') && readFileSync(file, 'utf8').includes('/*#__PURE__*/ define('));

/** What belongs to no calculation has a file of its own too, so that a bundle without it leaves all of it out. */
const APART = ['src/opinion/index.ts'];

/** The packages of which a build took something in. */
const packagesIn = (inputs: readonly string[]): Set<string> =>
  new Set(
    inputs.flatMap(
      (file) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file)?.slice(0, 2).join('\n') ?? [],
    ),
  );

/** A package's name, version and license, as its license wants them kept with every copy. */
function notice(from: string): string {
  const [folder = '', name = ''] = from.split('\n');
  const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((f) => /^licen[cs]e/i.test(f));
  const text = file ? readFileSync(join(folder, file), 'utf8').trim() : `License: ${license}`;
  return `${name} ${version}\n\n${text}\n`;
}

/** Packages are taken in, so that the library stands alone; what they ask to be kept with them is kept. */
const licenses: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'licenses',
  setup(build) {
    build.initialOptions.metafile = true;
    build.onEnd(({ metafile }) => {
      const used = Object.values(metafile?.outputs ?? {}).flatMap(({ inputs }) =>
        Object.entries(inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : [])),
      );
      const rule = `\n${'-'.repeat(80)}\n\n`;
      // A build from nothing has no folder yet, and its files are written after this.
      mkdirSync('dist', { recursive: true });
      writeFileSync('dist/third-party-licenses.txt', [...packagesIn(used)].sort().map(notice).join(rule));
    });
  },
};

const sources = (): string[] =>
  readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => readFileSync(join('src', file), 'utf8'));

/** What clips outlines reckons in decimals of another library, whose settings stay as they are. */
const textOf = (name: string): string => readFileSync(createRequire(import.meta.url).resolve(name), 'utf8');
const clipping = (): string => textOf('polyclip-ts');
const CLIPPING = { owners: ['P', 'BigNumber'], never: ['config', 'set'] };

/** What looks for the best cuts keeps its places in a heap. */
const searching = (): string => textOf('yalps');
const HEAP = { owners: ['Heap', 'Heap.prototype'] };

/** Every calculation carries the decimal library: without what nobody calls it is 2.6 kB less, zipped. */
const lean: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'lean decimals',
  setup(build) {
    build.onLoad({ filter: /[\\/]decimal\.js[\\/]decimal\.mjs$/ }, ({ path }) => ({
      contents: leanDecimal(readFileSync(path, 'utf8'), sources()),
      loader: 'js',
    }));
    build.onLoad({ filter: /[\\/]bignumber\.js[\\/]bignumber\.mjs$/ }, ({ path }) => ({
      contents: leanDecimal(readFileSync(path, 'utf8'), [clipping()], CLIPPING),
      loader: 'js',
    }));
    build.onLoad({ filter: /[\\/]splaytree-ts[\\/].*[\\/]index\.js$/ }, ({ path }) => ({
      contents: leanDecimal(readFileSync(path, 'utf8'), [clipping()], { owners: [] }),
      loader: 'js',
    }));
    build.onLoad({ filter: /[\\/]heap[\\/]lib[\\/]heap\.js$/ }, ({ path }) => ({
      contents: leanDecimal(readFileSync(path, 'utf8'), [searching()], HEAP),
      loader: 'js',
    }));
    // Triangles ask for one of its four tests; the others would leave their tables behind.
    build.onLoad({ filter: /[\\/]robust-predicates[\\/]index\.js$/ }, ({ path }) => ({
      contents: `export { orient2d } from './esm/orient2d.js';`,
      resolveDir: dirname(path),
      loader: 'js',
    }));
  },
};

/**
 * Files that read alike in every trade, in the order in which they come first in the one file; then whole jobs, whose
 * pages would lie far from them behind the trades: tried, it is 2 kB less.
 */
const ALIKE = ['sources', 'cautions', 'faults', 'ordinary', 'slips', 'takeoff'];

/** What reads alike packs better side by side: what zips looks back no farther than 32 kB. */
const alikeTogether: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'alike together',
  setup(build) {
    const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
      .map((file) => file.replaceAll('\\', '/'))
      .filter((file) => !file.startsWith('language/'))
      .sort();
    const first = ALIKE.flatMap((kind) => files.filter((file) => file.endsWith(`${kind}.ts`)));
    build.onLoad({ filter: /[\\/]src[\\/]browser\.ts$/ }, ({ path }) => ({
      contents: `${first.map((file) => `import './${file.slice(0, -3)}';`).join('\n')}\n${readFileSync(path, 'utf8')}`,
      resolveDir: dirname(path),
      loader: 'ts',
    }));
  },
};

/**
 * Node loads a calculation on demand with the root, that has it already: a file for each costs more there than it saves.
 */
const fromRoot: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'calculations from the root',
  setup(build) {
    const own = new Set(calculations.map((file) => resolve(file)));
    build.onResolve({ filter: /^\./ }, ({ kind, path, resolveDir }) =>
      kind === 'dynamic-import' && own.has(resolve(resolveDir, `${path}.ts`))
        ? { path: resolve(DOORS.index) }
        : undefined,
    );
  },
};

/**
 * What Node imports: the names of a door, handed on from CommonJS. So a process that does both has one copy of the
 * library, and the first import reads few files: ES modules cost Node more, each, than what is in most of ours.
 */
async function writeNodeDoors(): Promise<void> {
  const required = createRequire(import.meta.url);
  for (const door of Object.keys(DOORS)) {
    const file = join('dist', 'node', `${door}.js`);
    const from = join(relative(dirname(file), 'dist'), `${door}.cjs`);
    const names = Object.keys(required(resolve('dist', `${door}.cjs`)));
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(
      file,
      `import { createRequire } from 'node:module';\nexport const { ${names.join(', ')} } = createRequire(import.meta.url)('${from}');\n`,
    );
  }
}

/** What is one file is pressed once more: half a minute, and 20 kB less of it, zipped. */
async function pressOneFile(): Promise<void> {
  const file = 'dist/browser/flatwork-reckoner.js';
  const { code = '', map } = await minify(readFileSync(file, 'utf8'), {
    module: true,
    ecma: 2020,
    compress: { passes: 3, keep_fargs: false },
    sourceMap: { content: readFileSync(`${file}.map`, 'utf8'), url: 'flatwork-reckoner.js.map' },
  });
  writeFileSync(file, code);
  writeFileSync(`${file}.map`, String(map));
}

const shared: Options = {
  // What older build chains of apps can read; private members are TypeScript's, since `#` would become WeakMaps.
  target: 'es2021',
  sourcemap: true,
};

/**
 * For bundlers every calculation is an entry of its own, beside the doors: what several of them need comes together in
 * one file for those that need it. So who imports one calculation bundles what it needs, and no helper package that it
 * never reaches. Blanks stay: with them would go the marks of purity, by which a bundler leaves out what is not named.
 * For Node, and as CommonJS, the doors alone are entries.
 */
export default defineConfig([
  {
    ...shared,
    entry: [...Object.values(DOORS), ...calculations, ...APART],
    format: ['esm'],
    splitting: true,
    esbuildPlugins: [licenses, lean],
    // What another build makes is not this one's to clean.
    clean: ['!browser/*.js*', '!node/**', '!**/*.cjs*', '!**/*.ts', '!**/*.cts'],
    onSuccess: async () => copyFileSync('src/catalog/generated/job.schema.json', 'dist/job.schema.json'),
  },
  {
    ...shared,
    entry: DOORS,
    format: ['cjs'],
    splitting: true,
    esbuildPlugins: [lean, fromRoot],
    // What rewrites imports afterward would make a call of each of these.
    esbuildOptions: (options) => {
      options.supported = { 'optional-chain': false, 'nullish-coalescing': false };
    },
    clean: ['!**/*.js', '!**/*.js.map', '!**/*.ts', '!**/*.cts', '!*.txt', '!*.json'],
    onSuccess: writeNodeDoors,
  },
  {
    entry: DOORS,
    format: ['esm', 'cjs'],
    dts: { only: true, entry: { ...DOORS, ...ONE_FILE } },
    clean: false,
  },
  {
    ...shared,
    entry: ONE_FILE,
    format: ['esm'],
    platform: 'browser',
    splitting: false,
    minify: true,
    esbuildPlugins: [lean, alikeTogether],
    clean: false,
    onSuccess: pressOneFile,
  },
]);
