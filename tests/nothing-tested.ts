import type { Reporter } from 'vitest/node';

/** A run in which no test passed or failed tested nothing, a name mistyped after `-t` for one: it is no success. */
export const nothingTested: Reporter = {
  onTestRunEnd(modules) {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    if (tests.some((test) => ['passed', 'failed'].includes(test.result().state))) return;
    console.error('No test was run.');
    process.exitCode = 1;
  },
};
