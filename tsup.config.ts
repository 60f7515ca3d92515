import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    drawing: 'src/drawing/index.ts',
    catalog: 'src/catalog/index.ts',
    report: 'src/report/index.ts',
  },
  format: ['esm', 'cjs'],
  target: 'es2022',
  dts: true,
  splitting: true,
  treeshake: true,
  clean: true,
});
