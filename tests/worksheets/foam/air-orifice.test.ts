import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import orifice from '../../../src/worksheets/foam/air-orifice.tsx';
import { mustAnswer } from '../must-answer.ts';

const asked = (entries: Record<string, string> = {}, system: 'metric' | 'us' = 'metric') => {
  const say = speaker(system);
  const typed = Object.fromEntries(Object.entries(entries).map(([key, t]) => [key, { t }]));
  const found = answer(orifice, readWorksheet(orifice, typed as Entries, {}, say), say);
  mustAnswer(found);
  return found;
};

test('a choked sharp hole gives the range of its two coefficients, called nearly steady', () => {
  const { numbers, judgement } = asked();
  expect(numbers.most!.value / numbers.freeAir!.value).toBeCloseTo(0.85 / 0.61, 9);
  expect(judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^33\.0\sL\/min to 46\.\d\sL\/min, choked and nearly steady/),
  });
  expect(asked({}, 'us').judgement.say).toMatch(/^1\.1\d\scfm to 1\.6\d\scfm/);
});

test('only a rounded entry is called unaffected by the pressure behind it', () => {
  const rounded = asked({ 'air.edge': 'rounded' });
  expect(rounded.numbers.most).toBeUndefined();
  expect(rounded.judgement).toMatchObject({
    verdict: 'good',
    say: expect.stringContaining('changes nothing'),
  });
  for (const way of [{ 'air.orificeKnown': 'measured' }, { 'air.edge': 'own' }])
    expect(asked(way).judgement).toMatchObject({
      verdict: 'good',
      say: expect.stringContaining('changes little'),
    });
});

test('an unchoked sharp hole gives one value', () => {
  const { numbers, judgement } = asked({ 'air.after': '2.5' });
  expect(numbers.most).toBeUndefined();
  expect(judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('not choked'),
  });
});

test('the flow into a bucket is that of air at the place, not free air', () => {
  const high = { 'air.orificeKnown': 'measured', 'air.measured': '37.8', 'air.atmosphere': '835' };
  // 37.8 L/min × 835 ÷ 1000 mbar, at 20 °C.
  expect(asked(high).numbers.freeAir!.value * 60_000).toBeCloseTo(31.563, 3);
});
