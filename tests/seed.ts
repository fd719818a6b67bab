import fc from 'fast-check';
import { beforeAll } from 'vitest';
import { clearBench } from './bench/clear-bench.ts';

// The same inputs in every run, so that a failure is about the change that was made and not about luck.
// `npm run fuzz` draws new ones each time.
if (import.meta.env.MODE !== 'fuzz')
  fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 20261125 });

// Files share a worker, and so the bench: none begins with what another has left on it.
beforeAll(clearBench);
