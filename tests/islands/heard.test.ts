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
  return heard(sheet, answer(sheet, readWorksheet(sheet, entries, {}, say), say), system);
};
const frost = (t: string) =>
  heardOf(frostGuard, { 'curing.source': { t: 'steady' }, 'curing.steady': { t } });

test('the verdict is heard before any number, and no more of it than one sentence', () => {
  const said = frost('-1');
  expect(said).toMatch(/^Stop\. It freezes [^!?]*\. Coldest from casting on: −1\.0\s°C\.$/);
  expect(said.split('. ')).toHaveLength(3);
});

test('a number that the sentence names already is not said twice', () => {
  const mix = (waterAt: string) =>
    heardOf(mixTemperature, { 'mix-temperature.waterAt': { t: waterAt } });
  expect(mix('23').replaceAll('\u00a0', ' ')).toBe('Good. 20.1 °C will do.');
  expect(mix('61').replaceAll('\u00a0', ' ')).toBe(
    'Stop. Water at 61 °C must not meet cement: above 60 °C it can set in a flash, in lumps. Mix temperature: 41 °C.',
  );
});

test('where nothing is worked out, what is wrong is heard', () => {
  expect(heardOf(mixTemperature, { 'mix-temperature.waterAt': { t: 'warm' } })).toMatch(/warm/);
});
