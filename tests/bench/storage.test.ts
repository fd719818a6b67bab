import { beforeEach, describe, expect, test } from 'vitest';
import { setDamagedAside } from '../../src/bench/storage.ts';

/** A browser's store, as far as this needs one. */
function storeWith(values: Record<string, string>): Storage {
  const map = new Map(Object.entries(values));
  return new Proxy({} as Storage, {
    get: (_, name) =>
      ({
        getItem: (key: string) => map.get(key) ?? null,
        setItem: (key: string, value: string) => void map.set(key, value),
        removeItem: (key: string) => void map.delete(key),
      })[name as 'getItem'],
    ownKeys: () => [...map.keys()],
    getOwnPropertyDescriptor: () => ({ enumerable: true, configurable: true }),
  });
}

const good = '{"t":"0.85","u":"kg","s":"metric"}';
let store: Storage;

beforeEach(() => {
  store = storeWith({
    'suds.bench.1.bucket.tare': good,
    'suds.bench.1.bucket.volume': '{"t":20}',
    'suds.bench.1.foam.method': 'not json',
    'suds.bench.0.old': good,
    'suds.kept.1.foam.density': '{"v":null,"from":"x"}',
    'suds.kept.1.mix.planned': '{"v":600,"from":"What goes into the batch?"}',
    'suds.units': 'us',
    'someone.else': '{',
  });
});

describe('stored values that cannot be read', () => {
  test('are set aside by name, and the rest stays', () => {
    expect([...setDamagedAside(store)].sort()).toEqual([
      'suds.bench.0.old',
      'suds.bench.1.bucket.volume',
      'suds.bench.1.foam.method',
      'suds.kept.1.foam.density',
    ]);
    expect(
      Object.keys(store)
        .filter((key) => !key.startsWith('suds.aside.'))
        .sort(),
    ).toEqual([
      'someone.else',
      'suds.bench.1.bucket.tare',
      'suds.kept.1.mix.planned',
      'suds.units',
    ]);
  });

  test('are kept to be looked at', () => {
    setDamagedAside(store);
    expect(store.getItem('suds.aside.suds.bench.1.foam.method')).toBe('not json');
  });

  test('are set aside once', () => {
    setDamagedAside(store);
    expect(setDamagedAside(store)).toEqual([]);
  });
});
