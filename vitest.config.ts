import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    setupFiles: ['test/support/seed.ts'],
    testTimeout: 240_000,
    // One core less is left idle by default, which is half of a small machine.
    maxWorkers: '100%',
    coverage: { provider: 'v8', include: ['src/**'] },
  },
});
