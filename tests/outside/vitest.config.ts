import { defineConfig } from 'vitest/config';

/** What other programs say of our files: run by `npm run test:outside`, which needs them. */
export default defineConfig({
  root: `${import.meta.dirname}/../..`,
  test: {
    include: ['tests/outside/*.ts'],
    exclude: ['tests/outside/vitest.config.ts', 'tests/outside/needed.ts'],
    testTimeout: 120_000,
    hookTimeout: 300_000,
  },
});
