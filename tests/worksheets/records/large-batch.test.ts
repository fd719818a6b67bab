import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { MIX_TARE, MIX_VESSEL } from '../../../src/bench/mix-bucket.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { RECORD_FIELDS } from '../../../src/worksheets/live/records/record-fields.ts';
import { balanceOf } from '../../../src/worksheets/live/records/record-numbers.ts';
import reconcile from '../../../src/worksheets/records/reconcile.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');

/** The example’s load, so many times as large, weighed in the same bucket: a little more gas than its foam brought. */
const load = (times: number) => ({
  cement: { t: `${13.57 * times}`, u: 'kg' },
  water: { t: `${5.43 * times}`, u: 'kg' },
  foamDensity: { t: '80', u: 'kg/m3' },
  foamVolume: { t: `${25.3 * times}`, u: 'L' },
  tare: { t: '0.85', u: 'kg' },
  full: { t: '12.6', u: 'kg' },
  vessel: { t: '20', u: 'L' },
});

/** What the worksheet says of it, and how sure it is of the foam that lived; the same of a record that holds it. */
function told(times: number) {
  const entries: Entries = Object.fromEntries(
    Object.entries(load(times)).map(([name, entry]) => [
      { foamDensity: 'mix.foamDensity', tare: MIX_TARE, vessel: MIX_VESSEL }[name] ??
        `reconcile.${name}`,
      entry,
    ]),
  );
  const found = answer(reconcile, readWorksheet(reconcile, entries, {}, say), say);
  mustAnswer(found);
  const record = balanceOf(blankRecord({ readings: load(times) }));
  if (!record.ok) throw new Error(record.missing.join(' '));
  return {
    verdict: found.judgement.verdict,
    sheet: found.numbers.survival!.sure!.pm,
    record: record.verdict.u.survival!,
    finding: record.verdict.finding,
  };
}

test('foam measured out by the bucket is no surer, for its amount, in a large batch', () => {
  const [one, ten, tenth] = [told(1), told(10), told(0.1)];
  expect(one.verdict).toBe('good');
  expect(ten.verdict).toBe('good');
  expect(ten.finding).toBe(one.finding);
  expect(one.sheet).toBeGreaterThan(0.015);
  for (const of of ['sheet', 'record'] as const) {
    expect(ten[of]).toBeGreaterThan(0.9 * one[of]);
    expect(tenth[of]).toBeLessThan(1.5 * one[of]);
  }
});

test('a little foam added, or left over, is known no worse than a fifth of it, on page and worksheet', () => {
  for (const name of ['foamAdded', 'leftOver'] as const)
    for (const own of ['plusMinus', 'plusMinusAtMost'] as const)
      expect(RECORD_FIELDS[name][own]).toBe(reconcile.fields[name][own]);
});

test('the page of a batch and the worksheet take a measured volume to be known as closely', () => {
  for (const name of ['foamVolume', 'placed'] as const) {
    const [sheet, record] = [reconcile.fields[name], RECORD_FIELDS[name]];
    for (const own of ['example', 'plusMinus', 'plusMinusGrows'] as const)
      expect(record[own]).toBe(sheet[own]);
  }
});
