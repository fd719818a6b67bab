import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import evaporation from '../../../src/worksheets/curing/evaporation.tsx';

type Values = Parameters<typeof evaporation.work>[0];
const say = speaker('metric');
const worked = (entries: Entries) => {
  const values = readWorksheet(evaporation, entries, {}, say).values as Values;
  const result = evaporation.work(values, {} as never);
  return {
    result,
    words: evaporation.judge(result, values, say).say,
    now: evaporation.tables![0]!.rows(result, values, say)[0]!.at(-1)!,
  };
};

test('a surface temperature that was not measured is taken as that of the air', () => {
  const air = { 'curing.air': { t: '30' } };
  const left = worked(air).result.rate;
  expect(left).toBe(worked({ ...air, 'curing.face': { t: '30' } }).result.rate);
  expect(left).toBeGreaterThan(worked({ ...air, 'curing.face': { t: '20' } }).result.rate);
});

test('the verdict and the table use the same word at any wind speed', () => {
  const seen = new Set<string>();
  for (const wind of [0, 5, 6, 7, 8, 10, 20, 40, 80]) {
    const weather = { 'curing.air': { t: '15' }, 'curing.wind': { t: `${wind}` } };
    const [shaded, sunny] = ['no', 'yes'].map((t) => worked({ ...weather, 'curing.sun': { t } }));
    for (const { words, now } of [shaded!, sunny!])
      expect(words).toMatch(new RegExp(`(?<!perhaps )\\b${now}\\b`));
    seen.add(shaded!.now);
    // A face in the sun that nobody measured is not simply below them.
    expect(sunny!.now).toBe(shaded!.now === 'below the limits' ? 'perhaps take care' : shaded!.now);
  }
  expect([...seen]).toEqual(['below the limits', 'perhaps take care', 'take care', 'act']);
});
