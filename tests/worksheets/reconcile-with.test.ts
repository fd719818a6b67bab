import { expect, test } from 'vitest';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import reconcileSheet from '../../src/worksheets/records/reconcile.tsx';
import { demoBatches } from '../../src/worksheets/shared/demo-batches.ts';
import { RECONCILE_KEYS, reconcileEntries } from '../../src/worksheets/shared/reconcile-with.ts';
import { reckon } from '../../src/worksheets/shared/record-numbers.ts';

test('every field of the worksheet is filled from a record, under its own key', () => {
  expect(RECONCILE_KEYS).toEqual(
    Object.fromEntries(
      Object.keys(reconcileSheet.fields).map((name) => [name, benchKey(reconcileSheet, name)]),
    ),
  );
});

test('a record in the worksheet survives by what the record says', () => {
  const { placed: _, ...readings } = demoBatches()[0]!.readings;
  const record = { ...demoBatches()[0]!, readings };
  const say = speaker('metric');
  const { values, own } = readWorksheet(reconcileSheet, reconcileEntries(record), {}, say);
  expect(own).toBe(true);
  expect(values).toMatchObject({ sand: 0, foamAdded: 0, baseAdded: 0, placed: undefined });
  const found = reconcileSheet.work(values as never, {} as never);
  const reckoned = reckon(record);
  if (!reckoned.ok) throw new Error('the record is complete');
  expect((found as { survival: number }).survival).toBeCloseTo(reckoned.verdict.survival, 9);
});

test('what was not added at all brings no ±, and is never blamed for it', () => {
  const say = speaker('metric');
  const answered = answer(reconcileSheet, readWorksheet(reconcileSheet, {}, {}, say), say);
  expect(answered.ok).toBe(true);
  if (!answered.ok) return;
  for (const { sure } of Object.values(answered.numbers))
    expect(sure?.mostFrom ?? '').not.toMatch(/added/);
  expect(answered.numbers.survival!.sure!.pm).toBeCloseTo(0.0226, 3);
});
