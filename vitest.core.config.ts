// Only the tests that stand beside core, over core alone: for `npm run coverage` and `npm run mutate`.
import { defineConfig } from 'vitest/config';

/** Mutation testing takes one folder of core at a time; `core` are the files that lie in none. */
const subject = process.env.SUBJECT;
const beside = subject === 'core' ? '*' : subject ? `${subject}/**/*` : '**/*';

export default defineConfig({
  test: {
    include: [`tests/core/${beside}.test.ts`, 'tests/published/published.test.ts'],
    environment: 'node',
    setupFiles: ['tests/seed.ts'],
    testTimeout: 60_000,
    // Counted code is slower: tests of speed sit this out.
    env: { INSTRUMENTED: '1' },
    coverage: {
      provider: 'v8',
      reportOnFailure: true,
      include: ['src/core/**'],
      reporter: ['text-summary', 'json', ['text', { skipFull: true }]],
      reportsDirectory: '.build/coverage',
      thresholds: { lines: 98, branches: 98 },
    },
  },
});
