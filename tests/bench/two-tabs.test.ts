import { setPersistentEngine } from '@nanostores/persistent';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { FakeStorage } from './records/fake-storage.ts';

/** Neither tab has heard yet of what the other writes: a browser tells it a moment later. */
const deaf = { addEventListener() {}, removeEventListener() {} };
/** What the browser keeps, for both. */
let kept: Record<string, string>;

type Bench = typeof import('../../src/bench/store.ts');
/** A tab that has read what is noted, and listens to it. */
async function openTab(): Promise<Bench> {
  vi.resetModules();
  const bench = await import('../../src/bench/store.ts');
  setPersistentEngine(kept as unknown as Storage, deaf);
  bench.$behind.listen(() => {});
  return bench;
}
/** What a page that is opened next finds noted. */
const noted = async () => Object.values((await openTab()).$behind.get()).sort();

beforeEach(() => {
  kept = {};
});
afterEach(() => {
  vi.unstubAllGlobals();
  setPersistentEngine({}, deaf);
  vi.resetModules();
});

test('what two tabs note at once is noted, whichever writes last', async () => {
  const [one, other] = [await openTab(), await openTab()];
  one.enter('shapes.count', { t: '2' });
  other.enter('bucket.tare', { t: '0.9' });
  one.enter('foam.assumed', { t: '80' });
  expect(await noted()).toEqual(['bucket.tare', 'foam.assumed', 'shapes.count']);
});

test('what one tab is done with goes, and what the other noted meanwhile stays, of the same field too', async () => {
  const [one, other] = [await openTab(), await openTab()];
  one.enter('shapes.count', { t: '2' });
  one.enter('foam.assumed', { t: '80' });
  const marks = Object.keys(one.$behind.get());
  other.enter('shapes.count', { t: '3' });
  one.dropBehind(marks);
  expect(await noted()).toEqual(['shapes.count']);
});

test('a field is noted once, however often it is typed in', async () => {
  const bench = await openTab();
  for (const t of ['1', '12', '12.', '12.5']) bench.enter('foam.assumed', { t });
  expect(Object.keys(kept).filter((key) => key.startsWith('suds.behind.'))).toHaveLength(1);
  expect(await noted()).toEqual(['foam.assumed']);
});

test('what an earlier version had listed is noted, and the list goes', async () => {
  const bench = await openTab();
  const store = new FakeStorage();
  store.setItem('suds.behind', 'shapes.count bucket.tare');
  vi.stubGlobal('localStorage', store);
  bench.noteLate();
  expect(await noted()).toEqual(['bucket.tare', 'shapes.count']);
  expect(store.getItem('suds.behind')).toBeNull();
});
