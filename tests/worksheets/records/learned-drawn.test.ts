import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterAll, expect, test, vi } from 'vitest';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';

afterAll(() => {
  vi.unstubAllGlobals();
  vi.doUnmock('../../../src/worksheets/live/records/use-records.ts');
  vi.resetModules();
});

test('batches tested too young to teach a strength are told why', async () => {
  vi.resetModules();
  let records = demoBatches();
  vi.doMock('../../../src/worksheets/live/records/use-records.ts', () => ({
    useRecords: () => [{ is: 'there', listed: { records } }],
  }));
  const { default: Learned } = await import('../../../src/worksheets/live/learned.tsx');
  vi.stubGlobal('document', { body: { dataset: { base: '/' } } });
  const drawn = () => renderToString(h(Learned, {}));
  const why = 'only what was crushed at 21 to 60 days counts';
  expect(drawn()).not.toContain(why);
  const at = (crushAge: string) =>
    demoBatches().map((batch) => ({
      ...batch,
      readings: {
        ...batch.readings,
        crush: { t: '1', u: 'MPa' },
        crushAge: { t: crushAge, u: 'd' },
        dried: { t: 'oven' },
      },
    }));
  records = at('14');
  expect(drawn()).toContain(why);
  records = at('28');
  expect(drawn()).not.toContain(why);
  // Nothing was tested: nothing is asked.
  records = demoBatches().map((batch) => ({ ...batch, readings: { planned: { t: '600' } } }));
  expect(drawn()).not.toContain(why);
});

test('what batches teach is drawn without a word to the browser’s store', async () => {
  vi.resetModules();
  const records = demoBatches();
  vi.doMock('../../../src/worksheets/live/records/use-records.ts', () => ({
    useRecords: () => [{ is: 'there', listed: { records } }],
  }));
  const { $learned } = await import('../../../src/bench/learned.ts');
  const { $unlearned, noteUnlearned } = await import('../../../src/bench/store.ts');
  const { default: Learned } = await import('../../../src/worksheets/live/learned.tsx');
  const { learnFrom, storeLearned } = await import(
    '../../../src/worksheets/live/records/lessons.ts'
  );
  vi.stubGlobal('document', { body: { dataset: { base: '/' } } });
  noteUnlearned();
  const writes = vi.fn();
  const stops = [$learned.listen(writes), $unlearned.listen(writes)];
  expect(renderToString(h(Learned, {}))).toContain('Foam that survives');
  expect(writes).not.toHaveBeenCalled();
  // What follows once it stands.
  storeLearned(learnFrom(records));
  expect(writes).toHaveBeenCalled();
  expect($unlearned.get()).toBeUndefined();
  for (const stop of stops) stop();
});
