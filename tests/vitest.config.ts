import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: `${import.meta.dirname}/..`,
  test: {
    include: ['tests/**/*.test.ts'],
    // As many at once as there are processors: most of the time goes by in browsers and builds, not in the runner.
    maxWorkers: '100%',
    setupFiles: ['tests/draws.ts'],
    testTimeout: 180_000,
    hookTimeout: 300_000,
  },
});
