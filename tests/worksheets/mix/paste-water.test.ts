import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import baseCheck from '../../../src/worksheets/mix/base-check.tsx';
import batch from '../../../src/worksheets/mix/batch.tsx';
import correct from '../../../src/worksheets/mix/correct.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../../src/worksheets/mix/target-density.tsx';

const say = speaker('metric');
const all = { 'proportion.counts': { t: 'total' } };
const density = (t: string) => ({ t, u: 'kg/m3' });

/** What is refused of a sheet with a w/c that counts all water. */
function refused(sheet: AnyWorksheet, waterCement: string, more: Entries) {
  const entries = { ...all, 'mix.waterCement': { t: waterCement }, ...more };
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  return found.ok ? undefined : found.problems[0];
}

describe.each<[string, AnyWorksheet, string, Entries]>([
  ['proportion', proportion, '0.4', { 'proportion.wetDensity': density('320') }],
  ['target-density', targetDensity, '0.4', { 'mix.targetDensity': density('200') }],
  ['batch, wet', batch, '0.4', { 'batch.wetDensity': density('320') }],
  ['batch, dry', batch, '0.3', { 'batch.aim': { t: 'dry' }, 'batch.dryDensity': density('250') }],
  [
    'batch, content',
    batch,
    '0.8',
    { 'batch.aim': { t: 'content' }, 'batch.content': density('100') },
  ],
  [
    'batch, a bag in half a cubic metre, the foam ignored',
    batch,
    '0.4',
    {
      'batch.aim': { t: 'bags' },
      'batch.volume': { t: '508', u: 'L' },
      'proportion.convention': { t: 'foam-ignored' },
    },
  ],
])('%s', (_, sheet, waterCement, more) => {
  test('a paste left too dry by the foam is told its limit and a w/c that is enough', () => {
    const problem = refused(sheet, waterCement, more);
    expect(problem?.input).toBe(`${sheet.id}-waterCement`);
    expect(problem?.say).toContain(`A water/cement ratio of ${Number(waterCement).toFixed(2)}`);
    expect(problem?.say).toContain('leaves the paste less than 0.20: it would take');
    const wanted = /it takes (\d\.\d\d) in all\.$/.exec(problem!.say)![1]!;
    expect(refused(sheet, wanted, more)).toBeUndefined();
    // A hundredth less will not.
    expect(refused(sheet, (Number(wanted) - 0.01).toFixed(2), more)).toBeDefined();
  });
});

test.each<[string, AnyWorksheet, string]>([
  ['base-check', baseCheck, '0.12'],
  ['base-check', baseCheck, '0.34'],
  ['correct', correct, '0.12'],
])('so is one where the foam is known already: %s, %s', (_, sheet, waterCement) => {
  // The example's foam brings 0.149.
  expect(refused(sheet, waterCement, {})).toEqual({
    input: `${sheet.id}-waterCement`,
    say: `Water/cement ratio: read ${waterCement}; it must be at least 0.349.`,
  });
  expect(refused(sheet, '0.349', {})).toBeUndefined();
});
