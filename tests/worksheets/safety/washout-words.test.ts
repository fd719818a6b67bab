import { expect, test } from 'vitest';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import washout from '../../../src/worksheets/safety/washout.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const answered = (typed: { readonly pH: string; readonly temperature?: string }) => {
  const entries = Object.fromEntries(
    Object.entries(typed).map(([field, t]) => [`washout.${field}`, { t }]),
  );
  const found = answer(washout, readWorksheet(washout, entries, {}, metric), metric);
  mustAnswer(found);
  return found;
};
const judged = (pH: string) => answered({ pH }).judgement;

test('a pH is told to harm only what it harms', () => {
  expect(judged('8.5')).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('lets nothing go'),
  });
  for (const pH of ['8.6', '9'])
    expect(judged(pH), pH).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('above what one state asks of stormwater, 8.5'),
    });
  for (const pH of ['9.1', '11.4'])
    expect(judged(pH), pH).toMatchObject({
      verdict: 'stop',
      say: expect.stringContaining('harms life'),
    });
  for (const pH of ['8.6', '9.1', '11.4']) expect(judged(pH).say, pH).not.toMatch(/skin|kills/);
  expect(judged('11.5')).toMatchObject({
    verdict: 'stop',
    say: expect.stringContaining('burns skin'),
  });
  for (const pH of ['8.6', '9.1', '11.5', '12.3'])
    expect(judged(pH).say, pH).toContain('Do not pour it away');
});

test('a pH just off a limit is not shown rounded to it', () => {
  for (const [pH, words] of [
    ['8.52', /^A pH of 8\.52 is above .* 8\.5\./],
    ['8.48', /^A pH of 8\.48 is within/],
    ['9.04', /^A pH of 9\.04 harms life/],
    ['11.48', /^A pH of 11\.48 harms life/],
    ['11.5', /^A pH of 11\.5 burns skin/],
    ['9', /^A pH of 9\.0 is above/],
    ['12.34', /^A pH of 12\.3 burns skin/],
  ] as const)
    expect(judged(pH).say, pH).toMatch(words);
});

test('the pH beyond lime and the acid needed depend on the temperature', () => {
  // The table of that buffer, from memory: 13.00 at 10 °C, 12.63 at 20, 12.45 at 25.
  const doubted = (pH: string, temperature: string) =>
    answered({ pH, temperature }).notes.some((note) => note.includes('lime alone cannot'));
  expect(doubted('12.9', '10')).toBe(false);
  expect(doubted('13.1', '10')).toBe(true);
  expect(doubted('12.5', '20')).toBe(false);
  expect(doubted('12.5', '25')).toBe(true);
  const acid = (temperature: string) =>
    answered({ pH: '12.3', temperature }).numbers.citric!.value * 1000;
  // 15 L: at 25 °C 10^(12.3 − 14) mol/L, at 10 °C 10^(12.3 − 14.53); ÷ 3 × 210.139 g/mol.
  expect(acid('25')).toBeCloseTo(20.98, 1);
  expect(acid('10')).toBeCloseTo(6.13, 1);
});
