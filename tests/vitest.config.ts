import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: `${import.meta.dirname}/..`,
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/draws.ts'],
    testTimeout: 60_000,
    hookTimeout: 180_000,
  },
});
