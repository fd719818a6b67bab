import { expect, test } from 'vitest';
import type { Fields } from '../../src/islands/fields.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import { sheets } from './all.ts';

test('fields that share a place on the bench offer the same of what the reader’s batches teach', () => {
  const offers = new Map<string, Set<string>>();
  for (const sheet of sheets)
    for (const [name, field] of Object.entries(sheet.fields as Fields)) {
      const key = benchKey(sheet, name);
      const lesson = (field.type === 'number' && field.learned?.key) || 'none';
      offers.set(key, (offers.get(key) ?? new Set()).add(lesson));
    }
  const shared = Object.fromEntries(
    [...offers].map(([key, lessons]) => [key, [...lessons].sort().join(', ')]),
  );
  expect(shared['pieces.settling']).toBe('form.settling');
  expect(Object.entries(shared).filter(([, lessons]) => lessons.includes(', '))).toEqual([]);
});
