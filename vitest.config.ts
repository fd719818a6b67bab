import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { nothingTested } from './tests/nothing-tested.ts';

const alias = { '~': fileURLToPath(new URL('./src', import.meta.url)) };

export default defineConfig({
  resolve: { alias },
  test: {
    reporters: ['default', nothingTested],
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'unit',
          include: ['tests/{core,published,worksheets,islands,bench,house}/**/*.test.{ts,tsx}'],
          environment: 'node',
          setupFiles: ['tests/seed.ts'],
          // Files share a worker: what is tested here keeps no state, or resets it.
          isolate: false,
          // No test leans on those before it. The seed is printed: `--sequence.seed=…` repeats an order.
          sequence: { shuffle: { tests: true } },
          // Every core: one is left over otherwise, which is half of a machine of two.
          maxWorkers: '100%',
          // Property tests try hundreds of inputs; a busy machine is no fault of theirs.
          testTimeout: 30_000,
        },
      },
      {
        resolve: { alias },
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          exclude: ['tests/browser/speed/**'],
          environment: 'node',
          globalSetup: ['tests/browser/served-site.ts'],
          setupFiles: ['tests/browser/left-open.ts'],
          // Files share a worker, for a browser is started once in each.
          isolate: false,
          // Two files and two windows at a time: a browser waits more than it works.
          maxWorkers: 2,
          maxConcurrency: 2,
          expect: { poll: { timeout: 5000 } },
          testTimeout: 90_000,
          hookTimeout: 120_000,
        },
      },
      {
        resolve: { alias },
        test: {
          // What is timed runs alone, one file after the other.
          name: 'speed',
          include: ['tests/speed/**/*.test.ts', 'tests/browser/speed/**/*.test.ts'],
          environment: 'node',
          globalSetup: ['tests/browser/served-site.ts'],
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
