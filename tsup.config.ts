import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
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

/** Every calculation carries the decimal library: without what nobody calls it is 2.3 kB less, zipped. */
const lean: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'lean decimals',
  setup(build) {
    build.onLoad({ filter: /[\\/]decimal\.js[\\/]decimal\.mjs$/ }, ({ path }) => ({
      contents: leanDecimal(readFileSync(path, 'utf8'), sources()),
      loader: 'js',
    }));
  },
};

const shared: Options = {
  // What older build chains of apps can read; private members are TypeScript's, since `#` would become WeakMaps.
  target: 'es2021',
  sourcemap: true,
  // Blanks cost a fifth of the time that the first import takes; names stay as they are. Not in CommonJS: what rewrites
  // it afterward takes a keyword and the name behind it together where there is no blank.
  esbuildOptions: (options, { format }) => {
    options.minifyWhitespace = format === 'esm';
    options.minifySyntax = format === 'esm';
  },
};

/**
 * Every calculation is an entry of its own, beside the doors: what several of them need comes together in one file
 * for those that need it. So who imports one calculation bundles what it needs, and no helper package that it never
 * reaches; and who loads the whole does not load a file for each module, which costs more than running it.
 */
export default defineConfig([
  {
    ...shared,
    entry: [...Object.values(DOORS), ...calculations, ...APART],
    format: ['esm', 'cjs'],
    dts: { entry: { ...DOORS, ...ONE_FILE } },
    splitting: true,
    esbuildPlugins: [licenses, lean],
    clean: ['!browser/*.js*'],
    onSuccess: async () => copyFileSync('src/catalog/generated/job.schema.json', 'dist/job.schema.json'),
  },
  {
    ...shared,
    entry: ONE_FILE,
    format: ['esm'],
    platform: 'browser',
    splitting: false,
    minify: true,
    esbuildPlugins: [lean],
    // A folder of another build's file is not this one's to clean.
    clean: false,
  },
]);
