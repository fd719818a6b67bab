import fc from 'fast-check';
import { beforeAll } from 'vitest';
import { clearBench } from './bench/clear-bench.ts';

fc.configureGlobal({
  ...fc.readConfigureGlobal(),
  // The same inputs in every run, so that a failure is about the change that was made and not about
  // luck. `npm run fuzz` draws new ones each time.
  ...(import.meta.env.MODE !== 'fuzz' && { seed: 20261125 }),
  // Without this, no text or list is longer than 10, whatever `maxLength` says.
  defaultSizeToMaxWhenMaxSpecified: true,
});

// Files share a worker, and so the bench: none begins with what another has left on it.
beforeAll(clearBench);
