import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { Differences } from '../../../src/worksheets/live/records/Differences.tsx';

test('of two batches that differ, a text that is cut says so, and an empty one is a dash', () => {
  const here = blankRecord({ id: 'a', notes: 'n'.repeat(121) });
  const there = { ...here, notes: '' };
  const shown = render(h(Differences, { here, there, where: 'In the file' }));
  expect(shown).toContain(`>${'n'.repeat(120)}…<`);
  expect(shown).toContain('>—<');
  expect(shown).toContain('In the file');
});
