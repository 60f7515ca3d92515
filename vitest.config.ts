import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

/** What a test puts in the place of a module would stand there for the tests after it too. */
const REPLACING = readdirSync('test', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.test.ts'))
  .map((file) => join('test', file))
  .filter((file) => readFileSync(file, 'utf8').includes('vi.mock('));

export default defineConfig({
  test: {
    setupFiles: ['test/support/seed.ts'],
    testTimeout: 240_000,
    // One core less is left idle by default, which is half of a small machine.
    maxWorkers: '100%',
    coverage: { provider: 'v8', include: ['src/**'] },
    projects: [
      // The library keeps no state: its files are read once for all tests of a worker.
      {
        extends: true,
        test: { name: 'together', include: ['test/**/*.test.ts'], exclude: REPLACING, isolate: false },
      },
      { extends: true, test: { name: 'alone', include: REPLACING } },
    ],
  },
});
