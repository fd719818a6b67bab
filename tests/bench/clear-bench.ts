import { replaceBench } from '../../src/bench/store.ts';

/** Takes everything off the bench: test files share it. */
export const clearBench = (): void => replaceBench({ entries: {} });
