import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    environment: 'node',
    globalSetup: 'tests/helpers/runFolder.ts',
    // A browser test mostly waits for another process: two at a time are right even on two cores.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    // A browser or a PDF may be slow on two cores; a pure test that needs this long is a bug.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    passWithNoTests: false,
  },
});
