// What Stryker is told; scripts/mutate.mjs runs it for one subject at a time.

export default {
  mutate: (process.env.MUTATE ?? '').split(','),
  // Texts are names of fields and codes, which the type check guards; an emptied text breaks no
  // sum.
  mutator: { excludedMutations: ['StringLiteral'] },
  testRunner: 'vitest',
  vitest: { configFile: 'vitest.core.config.ts' },
  coverageAnalysis: 'perTest',
  concurrency: 2,
  // A mutant that takes too long counts as noticed: on a busy machine it must not be the machine
  // that does.
  timeoutMS: 30_000,
  tempDirName: '.build/stryker',
  ignorePatterns: ['.build', 'dist', '.astro', 'public'],
  reporters: ['json'],
  jsonReporter: { fileName: process.env.REPORT ?? '.build/mutation/report.json' },
  allowConsoleColors: false,
};
