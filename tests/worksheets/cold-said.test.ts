import { expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import curingPlan from '../../src/worksheets/curing/curing-plan.tsx';
import frostGuard from '../../src/worksheets/curing/frost-guard.tsx';
import heatInside from '../../src/worksheets/curing/heat-inside.tsx';
import temperatureAge from '../../src/worksheets/curing/temperature-age.tsx';
import stripWindow from '../../src/worksheets/demould/strip-window.tsx';

const metric = speaker('metric');
const outcome = (sheet: AnyWorksheet, entries: Entries, kept: KeptResults = {}) =>
  answer(sheet, readWorksheet(sheet, entries, kept, metric), metric);
const answered = (...of: Parameters<typeof outcome>) => {
  const found = outcome(...of);
  if (!found.ok) throw new Error(found.problems.map(({ say }) => say).join(' '));
  return found;
};
const days = (t: string) => ({ 'curing.source': { t: 'days' }, 'curing.days': { t } });
const celsius = (t: string) => ({ t, u: 'degC', s: 'metric' }) as const;

test('a plan does not call good what is below the 5 °C it asks for', () => {
  const cold = answered(curingPlan, days('2\t13')).judgement;
  expect(cold.verdict).toBe('look');
  expect(cold.say.replaceAll('\u00a0', ' ')).toMatch(/below 5 °C for \d+(\.\d)? [hd] of that/);
  expect(answered(curingPlan, days('6\t13')).judgement.verdict).toBe('good');
  // The cold comes after the longest of the rules has ended.
  const late = `${'14\t20\n'.repeat(40)}2\t13`;
  expect(answered(curingPlan, days(late)).judgement.verdict).toBe('good');
});

test('exactly 5 °C is not below it, in °C or in °F', () => {
  for (const [t, u] of [
    ['5', 'degC'],
    ['41', 'degF'],
  ] as const) {
    const steady = { 'curing.source': { t: 'steady' }, 'curing.steady': { t, u } };
    const { result } = answered(curingPlan, steady);
    expect((result as { cold: number }).cold).toBe(0);
  }
});

test.each([
  ['curing-plan', curingPlan],
  ['frost-guard', frostGuard],
  ['temperature-age', temperatureAge],
] as const)('a cold week entered in %s is what stripping is reckoned with', (_, sheet) => {
  // The coldest night is the last one, long after the time since casting of the example.
  const { numbers } = answered(sheet, days('12\t20\n12\t22\n1\t10'));
  const kept = Object.fromEntries(
    Object.entries((sheet as AnyWorksheet).keeps ?? {}).flatMap(([name, key]) =>
      numbers[name] ? [[key, { v: numbers[name].value, from: sheet.question, by: sheet.id }]] : [],
    ),
  );
  const { values, fields } = readWorksheet(stripWindow, {}, kept, metric);
  expect(fields.cold!.origin).toBe('kept');
  expect(values?.cold).toBeCloseTo(274.15, 9);
  expect(values?.warm).toBeCloseTo(295.15, 9);
  expect(answered(stripWindow, {}, kept).judgement.say).toContain('near freezing');
});

const inside = (coldest: string, warmest: string, more: Entries = {}) =>
  outcome(heatInside, {
    'curing.airColdest': celsius(coldest),
    'curing.airWarmest': celsius(warmest),
    'heat-inside.thickness': { t: '50', u: 'mm', s: 'metric' },
    ...more,
  });

test('a part whose face freezes is never good, however little it warms', () => {
  const found = inside('-7', '2');
  expect(found.ok && found.judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/face falls to .*freezes.*see Frost/),
  });
  const mild = inside('3', '9');
  expect(mild.ok && mild.judgement.verdict).toBe('good');
  expect(mild.ok && mild.judgement.say).not.toContain('freezes');
  // Air a little below freezing, which the part’s own warmth keeps from its face.
  const covered = inside('-1', '15', {
    'heat-inside.near': { t: 'insulated' },
    'heat-inside.far': { t: 'insulated' },
    'heat-inside.strip': { t: '30', u: 'd', s: 'metric' },
  });
  expect(covered.ok).toBe(true);
  expect(covered.ok && covered.judgement.say).not.toContain('freezes');
});

test('a highest of the day below its lowest is refused at its field', () => {
  const found = inside('35', '4');
  expect(found).toMatchObject({
    ok: false,
    problems: [
      { input: 'heat-inside-warmest', say: expect.stringMatching(/4\s°C is below the lowest/) },
    ],
  });
  expect(inside('4', '4').ok).toBe(true);
});

test('140 °F passes where 60 °C does, and 140.1 °F does not', () => {
  const mix = (t: string) => inside('4', '9', { 'heat-inside.mixAt': { t, u: 'degF', s: 'us' } });
  expect(mix('140').ok).toBe(true);
  expect(mix('140.1').ok).toBe(false);
});
