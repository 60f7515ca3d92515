import { defineConfig } from 'tsup';

/**
 * Every source file is an entry of its own, so that the code of a module stays apart from that of
 * others: who imports one calculation then bundles what it needs, and no helper package that it never
 * reaches.
 */
export default defineConfig({
  entry: ['src/**/*.ts'],
  format: ['esm', 'cjs'],
  // What older build chains of apps can read; private members are TypeScript's, since `#` would become WeakMaps.
  target: 'es2021',
  sourcemap: true,
  dts: {
    entry: {
      index: 'src/index.ts',
      'catalog/index': 'src/catalog/index.ts',
      'drawing/index': 'src/drawing/index.ts',
      'report/index': 'src/report/index.ts',
    },
  },
  splitting: true,
  // These come as ES modules only, which CommonJS on Node 20 cannot load; so they are taken in.
  noExternal: ['delaunator', 'robust-predicates', 'yalps', 'polyclip-ts', 'bignumber.js', 'splaytree-ts'],
  clean: true,
});
