import { vi } from 'vitest';
import { FakeDatabase } from './fake-database.ts';

/** Modules that are loaded from now on keep batches in memory, unless `open` gives another database or none. */
export function stubDatabase(open = async (db: FakeDatabase) => db): FakeDatabase {
  const db = new FakeDatabase();
  vi.resetModules();
  vi.doMock('idb', () => ({ openDB: () => open(db) }));
  vi.stubGlobal(
    'BroadcastChannel',
    class {
      postMessage() {}
    },
  );
  return db;
}

/** To be called when the tests of a file are over. */
export function unstubDatabase(): void {
  vi.doUnmock('idb');
  vi.unstubAllGlobals();
  vi.resetModules();
}
