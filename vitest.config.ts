import { defineConfig } from 'vitest/config';

const alias = { '~': new URL('./src', import.meta.url).pathname };

export default defineConfig({
  resolve: { alias },
  test: {
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'unit',
          include: ['tests/{core,published,worksheets,islands,bench,house}/**/*.test.{ts,tsx}'],
          environment: 'node',
          setupFiles: ['tests/seed.ts'],
          // Property tests try hundreds of inputs; a busy machine is no fault of theirs.
          testTimeout: 30_000,
        },
      },
      {
        resolve: { alias },
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          environment: 'node',
          globalSetup: ['tests/browser/served-site.ts'],
          fileParallelism: false,
          // Two windows at a time: as many as there are cores.
          maxConcurrency: 2,
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
