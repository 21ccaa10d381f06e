import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** Folders of tests that touch the machine, a browser or a made-up one: each file gets a process of its own. */
const MACHINE = ['cli', 'e2e', 'main', 'renderer', 'tooling', 'walls'].map((folder) => `tests/${folder}/**`);

export default defineConfig({
  test: {
    // A browser test mostly waits for another process: two at a time are right even on two cores.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    // A browser or a PDF may be slow on two cores; a pure test that needs this long is a bug.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    passWithNoTests: false,
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: MACHINE,
          // Pure functions over readonly data leave nothing behind: files share a process, and half the time is saved.
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'machine',
          include: MACHINE.flatMap((folder) => [`${folder}/*.test.ts`, `${folder}/*.test.tsx`]),
          globalSetup: 'tests/helpers/runFolder.ts',
          // What a window shows after an act may take as long as any other step of a browser on a busy machine.
          expect: { poll: { timeout: 20_000 } },
        },
      },
    ],
  },
});
