import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';

/** Runs one small file, as a developer would, and only the tests of this name. */
const run = (name: string) =>
  spawnSync(
    process.execPath,
    [
      ...['node_modules/vitest/vitest.mjs', 'run', '--project', 'unit', '-t', name],
      'tests/house/source-keys.test.ts',
    ],
    { encoding: 'utf8', env: { ...process.env, VITEST: undefined } },
  );

// Vitest starts twice, which takes a busy machine a while.
test('a name that no test has is a failure, and one that a test has is none', {
  timeout: 120_000,
}, () => {
  const none = run('zzqq nothing');
  expect(none.status).toBe(1);
  expect(none.stderr).toContain('No test was run.');
  expect(run('every key of a comment').status).toBe(0);
});
