import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import handling from '../../../src/worksheets/demould/handling.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import strengthDensity from '../../../src/worksheets/finished/strength-density.tsx';
import { flexuralAt28Days } from '../../../src/worksheets/shared/part/part-strength.ts';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const answered = (sheet: AnyWorksheet, entries: Entries) => {
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  mustAnswer(found);
  return found;
};
const kPa = (t: string) => ({ t, u: 'kPa', s: 'metric' }) as const;
const bars = {
  'part.strengthFrom': { t: 'bars' },
  'part.barMean': kPa('225'),
  'part.barLow': kPa('190'),
  'part.barsCounted': { t: '4' },
} as const;

test('where only minimum strengths are published, the largest of them is the high end', () => {
  // 10 psi and 40 psi in compression, 0.22 to 0.35 of them in bending.
  const { low, high } = flexuralAt28Days({ wetDensity: 400, dryDensity: 312 })!;
  expect(low / 1000).toBeCloseTo(0.22 * 68.95, 1);
  expect(high / 1000).toBeCloseTo(96.5, 1);
});

test('past its window a part is good by bars, but only looked at by density', () => {
  const old = {
    'part.sinceCasting': { t: '60', u: 'd' },
    'curing.coldest': { t: '20', u: 'degC' },
    'strip-window.stress': kPa('3'),
  } as const;
  const guessed = answered(stripWindow, old);
  expect(guessed.numbers.latest!.value).toBeLessThan(60 * 86_400);
  expect(guessed.judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/low end of the strength guessed.*Weaker mixes have been measured/),
  });
  expect(answered(stripWindow, { ...old, ...bars }).judgement).toMatchObject({
    verdict: 'good',
    say: expect.stringMatching(/low end of your bars/),
  });
});

test('a move that asks little is good by bars alone', () => {
  const gently = {
    'handling.hold': { t: 'two-points' },
    'handling.stage': { t: 'carried' },
    'handling.age': { t: '28', u: 'd', s: 'metric' },
  } as const;
  const guessed = answered(handling, gently);
  expect(guessed.numbers.useJerk!.value).toBeLessThan(0.5);
  expect(guessed.judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/guessed from its density\. Weaker mixes have been measured/),
  });
  const tested = { ...gently, ...bars, 'handling.beside': { t: 'same' } };
  expect(answered(handling, tested).judgement.verdict).toBe('good');
});

test('results below the band are told as below what specifications require, not below all measurements', () => {
  const weak = { 'strength-density.own': { t: 'crushed' } };
  const { judgement } = answered(strengthDensity, {
    ...weak,
    'strength-density.crushed': { t: '465\t0.2\n470\t0.3' },
  });
  expect(judgement.verdict).toBe('stop');
  expect(judgement.say).toContain('the least that any specification or table here gives');
});

test('a refused dry density that nobody typed is named as the example’s', () => {
  const refused = (sheet: AnyWorksheet, entries: Entries) => {
    const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
    return found.ok ? [] : found.problems.map((problem) => problem.say.replaceAll('\u00a0', ' '));
  };
  const wet = { 'part.wetDensity': { t: '420', u: 'kg/m3' } } as const;
  const dry = { 'part.oven': { t: '470', u: 'kg/m3' } } as const;
  for (const sheet of [strengthDensity, handling] as AnyWorksheet[]) {
    expect(refused(sheet, wet), sheet.id).toEqual([
      'Oven-dry density: read 465 kg/m³; it must be at most 420 kg/m³. Still the example’s: “Oven-dry density”.',
    ]);
    expect(refused(sheet, { ...wet, ...dry }), sheet.id).toEqual([
      'Oven-dry density: read 470 kg/m³; it must be at most 420 kg/m³.',
    ]);
  }
});

test('an upper end that falls with density is explained by its source', () => {
  const upper = (wet: string, dry: string) => {
    const density = {
      'part.wetDensity': { t: wet, u: 'kg/m3' },
      'part.oven': { t: dry, u: 'kg/m3' },
    };
    const { numbers, notes } = answered(strengthDensity, density as Entries);
    return { high: numbers.high!.value, by: notes.find((note) => /set by/.test(note)) };
  };
  const [within, beyond] = [upper('1774', '1375'), upper('1806', '1400')];
  expect(beyond.high).toBeLessThan(within.high / 2);
  expect(within.by).toMatch(/set by Kado 2018, sanded\. .* may fall as the mix gets denser/);
  expect(beyond.by).not.toMatch(/Kado/);
});
