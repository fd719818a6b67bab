import { expect, test } from 'vitest';
import type { Entries, System } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { heard } from '../../src/islands/parts/heard.ts';
import type { AnyWorksheet } from '../../src/islands/worksheet.ts';
import frostGuard from '../../src/worksheets/curing/frost-guard.tsx';
import mixTemperature from '../../src/worksheets/curing/mix-temperature.tsx';

const heardOf = (sheet: AnyWorksheet, entries: Entries, system: System = 'metric') => {
  const say = speaker(system);
  const reading = readWorksheet(sheet, entries, {}, say);
  return heard(sheet, answer(sheet, reading, say), system, reading).replaceAll('\u00a0', ' ');
};

test('a screen reader hears the verdict before any number, with what is still the example’s', () => {
  const said = heardOf(frostGuard, {
    'frost-guard.strength28': { t: '0.5', u: 'MPa', s: 'metric' },
  });
  expect(said).toMatch(
    /^Good\. No frost is in these temperatures\. But this mix never reaches the 3\.5 MPa.* Still the example’s: “[^”]*”.*\.$/,
  );
});

test('a number in the verdict is not repeated', () => {
  const mix = (waterAt: string) =>
    heardOf(mixTemperature, { 'mix-temperature.waterAt': { t: waterAt } });
  expect(mix('23')).toMatch(/^Good\. 20\.1 °C will do\. For 22 °C [^:]* Still/);
  expect(mix('61')).toMatch(/^Stop\. Water at 61 °C .* Mix temperature: 41 °C\. Still/);
});

test('without an answer the problem is heard', () => {
  expect(heardOf(mixTemperature, { 'mix-temperature.waterAt': { t: 'warm' } })).toMatch(/warm/);
});
