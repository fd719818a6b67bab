import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test, vi } from 'vitest';
import type { Entries } from '../../src/bench/entries.ts';
import BenchSheet from '../../src/worksheets/live/bench-sheet.tsx';

const bench = vi.hoisted(() => ({ entries: {} as Entries }));
// Rendered as it is built, a page shows the example: what the reader entered is put in here.
vi.mock('../../src/islands/hooks.ts', async (original) => ({
  ...(await original<object>()),
  useEntries: () => bench.entries,
}));

test('a solution without glycerol is mixed without it', () => {
  const mixed = (entries: Entries) => {
    bench.entries = entries;
    return /soft water: ([^<]*)<\/li>/.exec(renderToString(h(BenchSheet, {})))?.[1];
  };
  expect(mixed({})).toBe('water, glycerol, concentrate; stir gently.');
  expect(mixed({ 'foam.glycerol': { t: '0', u: '%', s: 'metric' } })).toBe(
    'water, concentrate; stir gently.',
  );
});
