import { expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import frostGuard from '../../../src/worksheets/curing/frost-guard.tsx';
import strengthTime from '../../../src/worksheets/curing/strength-time.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const answered = (sheet: AnyWorksheet, entries: Entries, kept: KeptResults = {}) => {
  const found = answer(sheet, readWorksheet(sheet, entries, kept, say), say);
  mustAnswer(found);
  return found;
};
const DAY = 86_400;

/** What stays on the bench of a reader's own results. */
function tested(results: string): KeptResults {
  const { numbers, result } = answered(strengthTime, {
    'curing.strengthFrom': { t: 'own' },
    'curing.results': { t: results },
  });
  const growth = strengthTime.leaves!['curing.growth']!(result as never, {} as never);
  const owner = { from: strengthTime.question, by: strengthTime.id };
  return {
    'curing.strength28': { v: numbers.low28!.value, ...owner },
    ...(typeof growth === 'number' && { 'curing.growth': { v: growth, ...owner } }),
  };
}

const slowly = '3\t0.9\n7\t2.6\n14\t5.0\n28\t8.0';
const frost = { 'curing.days': { t: `${'12\t20\n'.repeat(6)}-4\t8` } };

test('slow growth found from the reader’s cubes is used for frost, not the cement’s', () => {
  const kept = tested(slowly);
  expect(kept['curing.growth']).toMatchObject({ v: expect.closeTo(1.06, 2) });
  const { judgement, numbers, notes } = answered(frostGuard, frost, kept);
  expect(judgement).toMatchObject({ verdict: 'stop', say: expect.stringContaining('less than') });
  // By strength-time's own curve, at its low end, for the age the part has when it freezes.
  expect(numbers.atFreeze!.value).toBeGreaterThan(1.2e6);
  expect(numbers.atFreeze!.value).toBeLessThan(1.8e6);
  expect(notes.join(' ')).toMatch(/lowest curve at each age: .* s = 1\.06/);
  // Without its growth the same strength at 28 days would pass the mark first.
  const { 'curing.growth': _, ...alone } = kept;
  expect(answered(frostGuard, frost, alone).judgement.say).toContain('stands one freeze, but');
});

test('growth steeper than the cement’s gives no more strength after 28 days', () => {
  const wait = {
    'curing.source': { t: 'steady' },
    'curing.steady': { t: '20' },
    'frost-guard.strength28': { t: '2' },
    'frost-guard.wanted': { t: '3' },
  };
  const steep = answered(frostGuard, { ...wait, 'curing.ownGrowth': { t: '1.06' } }).numbers;
  expect(steep.reached).toBeUndefined();
});

test('after 28 days an unknown cement counts as the one that grows least', () => {
  const waiting = (cement: string, wanted: string) =>
    answered(frostGuard, {
      'curing.source': { t: 'steady' },
      'curing.steady': { t: '20' },
      'frost-guard.strength28': { t: '2' },
      'frost-guard.wanted': { t: wanted },
      'curing.cement': { t: cement },
    }).numbers;
  for (const wanted of ['0.5', '1.9', '2.1', '2.6']) {
    const known = ['slow', 'ordinary', 'rapid'].map((cement) => waiting(cement, wanted));
    const unknown = waiting('unknown', wanted);
    const times = known.map(({ reached }) => reached?.value ?? Infinity);
    expect(unknown.reached?.value ?? Infinity, wanted).toBe(Math.max(...times));
  }
});

test('results that show no growth keep none on the bench', () => {
  expect(tested('7\t2.6\n7\t2.8')).not.toHaveProperty('curing.growth');
  expect(tested('3\t5\n28\t4')).not.toHaveProperty('curing.growth');
  expect(tested('0.2\t0.01\n28\t8')['curing.growth']).toBeDefined();
  expect(
    strengthTime.leaves!['curing.growth']!(answered(strengthTime, {}).result as never, {} as never),
  ).toBe(undefined);
});

test('the European curing classes use the reader’s own growth', () => {
  const ends = (kept: KeptResults, rule: string) =>
    (
      answered(curingPlan, {}, kept).result as {
        entries: readonly { rule: string; ends: number | undefined }[];
      }
    ).entries.find((entry) => entry.rule === rule)!.ends!;
  for (const rule of ['en-class-2', 'en-class-3', 'en-class-4'])
    expect(ends(tested(slowly), rule), rule).toBeGreaterThan(ends({}, rule) + DAY);
  // Growth quicker than the cement's ends no cure sooner.
  const quick = tested('3\t6\n28\t8');
  expect(ends(quick, 'en-class-4')).toBe(ends({}, 'en-class-4'));
});
