import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import landing from '../../../src/worksheets/mix/landing.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const asked = (sheet: AnyWorksheet, entries: Entries = {}) => {
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  mustAnswer(found);
  return found;
};
const lives = { 'mix.foamLives': { t: '92', u: '%' } };

test('planned loss of foam is made up for without changing the density aimed at', () => {
  const sheet = proportion as AnyWorksheet;
  const [plain, made] = [asked(sheet), asked(sheet, lives)];
  const [before, after] = [plain.numbers, made.numbers];
  expect(after.foamVolume!.value / before.foamVolume!.value).toBeGreaterThan(1.08);
  expect(after.solution!.value).toBeGreaterThan(1.07 * before.solution!.value);
  expect(after.wet!.value).toBeCloseTo(before.wet!.value, 9);
  expect(sheet.results.foamVolume!.label).toBe('Foam to make');
  // The parts of the picture fill the batch, no more.
  const working = sheet.working[1]!.put(made.result, made.values, say);
  const [base, foam, all] = [...working.matchAll(/([\d.]+)\s(?:L|m³)/g)].map(([, x]) => Number(x));
  expect(base! + foam!).toBeCloseTo(all!, 0);
});

test('a plan for another loss than was found is told which way to change', () => {
  const sheet = landing as AnyWorksheet;
  const advice = (lives: string, lost: string) =>
    asked(sheet, {
      'mix.foamLives': { t: lives, u: '%' },
      'landing.gasLost': { t: lost, u: '%' },
    }).judgement.say.replaceAll('\u00a0', ' ');
  expect(advice('90', '3')).toMatch(
    /aiming light by .*allows for 10 % .*put the loss at 3\.?0? %\. Plan for less loss/,
  );
  expect(advice('100', '10')).toMatch(
    /aiming heavy by .*allows for 0 % .*put the loss at 10 %\. Plan for the gas/,
  );
  expect(advice('90', '10')).not.toContain('aiming');
});

test('the planned loss is not counted twice in where the batch lands', () => {
  const sheet = landing as AnyWorksheet;
  const lost = { 'landing.gasLost': { t: '8', u: '%', p: '2', pu: '%' } };
  const mean = (entries: Entries) => asked(sheet, entries).numbers.mean!.value;
  const target = (asked(sheet).values as { target: number }).target;
  expect(mean(lost)).toBeGreaterThan(1.03 * target);
  expect(Math.abs(mean({ ...lost, ...lives }) - target)).toBeLessThan(0.005 * target);
});

test('the odds in the picture and in words have the same limits', () => {
  const shown = (lost: string, own: string) =>
    asked(landing as AnyWorksheet, {
      'landing.gasLost': { t: lost, u: '%' },
      'landing.near': { t: 'own' },
      'landing.own': { t: own, u: 'kg/m3' },
    }).numbers.odds!.value;
  expect([shown('60', '30'), shown('0', '300')]).toEqual([0.01, 0.99]);
});
