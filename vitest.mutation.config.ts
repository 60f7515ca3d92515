import { defineConfig } from 'vitest/config';

/** For mutation testing: without the tests that look at files rather than run the code. */
export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    setupFiles: ['test/support/seed.ts'],
    exclude: ['test/docs.test.ts', 'test/house.test.ts', 'test/types.test.ts'],
    testTimeout: 60_000,
  },
});
