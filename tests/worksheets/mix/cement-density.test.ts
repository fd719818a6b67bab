import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import baseCheck from '../../../src/worksheets/mix/base-check.tsx';
import landing from '../../../src/worksheets/mix/landing.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const asked = (sheet: AnyWorksheet, entries: Record<string, string> = {}) => {
  const typed = Object.fromEntries(Object.entries(entries).map(([key, t]) => [key, { t }]));
  const found = answer(sheet, readWorksheet(sheet, typed, {}, say), say);
  mustAnswer(found);
  return found;
};
const blended = { 'mix.cementDensity': '2900' };

test('a batch is worked out for the cement on the bag’s sheet', () => {
  const batch = (entries = {}) =>
    asked(proportion, { 'proportion.volume': '100', ...entries }).result as ReturnType<
      typeof proportion.work
    >;
  // By hand, 100 L at 600 kg/m³, w/c 0.4, foam of 80: v = 1/2900 + 0.4/1000 = 0.744828 L/kg,
  // C = 0.1 × 520 ÷ (1.4 − 80 × 0.000744828) = 38.794 kg, F = 100 − C v = 71.105 L; the base weighs 1.4/v.
  const { mix } = batch(blended);
  expect(mix.cement).toBeCloseTo(38.794, 3);
  expect(mix.foamVolume * 1000).toBeCloseTo(71.105, 3);
  expect(mix.baseDensity).toBeCloseTo(1879.63, 2);
  expect(batch().mix.foamVolume * 1000).toBeGreaterThan(72);
});

test.each([
  ['the check of the base mix', baseCheck],
  ['how close it lands', landing],
])('%s goes by the same reading', (_, sheet) => {
  const { cementDensity } = asked(sheet, blended).values;
  expect(cementDensity).toBe(2900);
  expect(asked(sheet).values.cementDensity).toBe(3150);
});
