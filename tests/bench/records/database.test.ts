import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import {
  refusalOf,
  reportFault,
  trying,
  unreadOf,
  upgrade,
} from '../../../src/bench/records/database.ts';

const reported = vi.fn();
beforeEach(() => {
  reported.mockClear();
  vi.stubGlobal('indexedDB', {});
  vi.stubGlobal('reportError', reported);
});
afterEach(() => {
  vi.unstubAllGlobals();
});

test.each<[string, unknown, RegExp, RegExp]>([
  [
    'a later layout is no storage that is off',
    new DOMException('the requested version (1) is less', 'VersionError'),
    /^Nothing was stored: .*later version.*left as it is.*Reload the page/,
    /^The batches .* cannot be read here: .*later version.*left as it is.*Reload the page/,
  ],
  ['no room', new DOMException('', 'QuotaExceededError'), /no room left/, /no room left/],
  ['what a browser denies', new DOMException('', 'SecurityError'), /is off/, /is off/],
])('%s', (_, error, refused, unread) => {
  expect(refusalOf(error)).toMatch(refused);
  expect(unreadOf(error)).toMatch(unread);
  expect(reportFault(error)).toBe(false);
  expect(reported).not.toHaveBeenCalled();
});

test('a browser without a database counts as one with storage off', () => {
  const error = new ReferenceError('indexedDB is not defined');
  vi.stubGlobal('indexedDB', undefined);
  expect(unreadOf(error)).toContain('is off');
  expect(reported).not.toHaveBeenCalled();
});

test('a programming error is reported as one, and logged', async () => {
  const error = new TypeError('x is not a function');
  const done = await trying(() => Promise.reject(error));
  expect(done).toEqual({
    ok: false,
    full: false,
    say: 'Nothing was stored, by a fault of this handbook (TypeError: x is not a function).',
  });
  expect(unreadOf(error)).toContain('cannot be read here, by a fault of this handbook');
  expect(reportFault(error)).toBe(true);
  expect(reported.mock.calls).toEqual([[error], [error], [error]]);
});

test('object stores that exist already are not created again', () => {
  const made: string[] = [];
  const createObjectStore = (name: string) => {
    made.push(name);
    return { createIndex: () => undefined } as never;
  };
  upgrade({ createObjectStore }, 0);
  expect(made).toEqual(['batches', 'photos', 'bin', 'aside']);
  made.length = 0;
  upgrade({ createObjectStore }, 1);
  expect(made).toEqual([]);
});
