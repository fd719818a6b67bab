import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { dryConductivityBand } from '../../../src/core/finished/conductivity.ts';
import { WONG_2026 } from '../../../src/core/finished/strength-relations/measured.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import heatThrough from '../../../src/worksheets/finished/heat-through.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const answered = (entries: Entries) => {
  const found = answer(heatThrough, readWorksheet(heatThrough, entries, {}, metric), metric);
  mustAnswer(found);
  return found;
};
const wanted = (t: string) => ({
  'heat-through.ask': { t: 'thickness' },
  'heat-through.wanted': { t, u: 'm2.K/W', s: 'metric' as const },
});

test('asked for a thickness, it gives the one that reaches the wanted resistance', () => {
  const { numbers } = answered(wanted('0.5'));
  expect(Object.keys(numbers)[0]).toBe('makeIt');
  const layer = answered({
    'part.thickness': { t: String(numbers.makeIt!.value), u: 'm', s: 'metric' },
  });
  expect(layer.numbers.low!.value).toBeCloseTo(0.5, 9);
  expect(layer.numbers.high!.value).toBeCloseTo(numbers.gives!.value, 9);
});

test('an advised thickness that heats too much inside is told', () => {
  expect(answered(wanted('2')).judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('heats inside'),
  });
  expect(answered(wanted('0.5')).judgement.say).not.toContain('heats inside');
});

test('a given thickness that heats too much inside is told', () => {
  const thick = (t: string) =>
    answered({ 'part.thickness': { t, u: 'mm', s: 'metric' } }).notes.join(' ');
  expect(thick('200')).toContain('200\u00a0mm thick heats inside');
  expect(thick('140')).not.toContain('heats inside');
});

test('a resistance is judged against a wish only where one was typed', () => {
  const of = (t: string, hoped?: string) =>
    answered({
      'part.thickness': { t, u: 'mm', s: 'metric' },
      ...(hoped && { 'heat-through.wanted': { t: hoped, u: 'm2.K/W', s: 'metric' as const } }),
    });
  const { judgement, numbers } = of('60');
  expect(judgement).toMatchObject({
    verdict: 'good',
    say: expect.stringMatching(/^Plan with 0\.32\s.*gives 0\.49\s/),
  });
  for (const name of ['thin', 'thick', 'mass']) expect(numbers).not.toHaveProperty(name);
  expect(of('60', '0.3').judgement.verdict).toBe('good');
  expect(of('60', '0.4').judgement.say).toMatch(/^It may or may not reach/);
  expect(of('60', '0.6').judgement).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^Even by the lowest of the tables it gives 0\.49\s/),
  });
});

test('no thickness that heats too much inside is advised without telling it', () => {
  const of = (t: string, hoped: string) =>
    answered({
      'part.thickness': { t, u: 'mm', s: 'metric' },
      'heat-through.wanted': { t: hoped, u: 'm2.K/W', s: 'metric' },
    }).judgement.say;
  expect(of('60', '1')).toMatch(/^Even by .* A pour 190\smm thick heats inside/);
  expect(of('140', '1')).toMatch(/^It may or may not .* A pour 190\smm thick heats inside/);
  expect(of('60', '0.6')).not.toContain('heats inside');
});

test('moisture raises the conductivity to at most six times dry, and at most by what the pores hold', () => {
  const moist = (percent: string, density = '465') => ({
    'heat-through.wetness': { t: 'other' },
    'heat-through.moisture': { t: percent, u: '%', s: 'metric' as const },
    'part.oven': { t: density, u: 'kg/m3', s: 'metric' as const },
  });
  const dry = answered(moist('0')).numbers.kHigh!.value;
  const times = (percent: string) => answered(moist(percent)).numbers.kHigh!.value / dry;
  expect(times('10')).toBeCloseTo(Math.exp(0.4), 12);
  expect(times('50')).toBeCloseTo(6, 12);
  expect(times('100')).toBeCloseTo(6, 12);
  // (1000 / 1600 − 1000 / 2600) is 24 %.
  expect(answered(moist('24', '1600')).judgement.verdict).toBe('look');
  expect(() => answered(moist('24.1', '1600'))).toThrow('more water than the pores');
});

test('a default moisture is never more than the piece can hold', () => {
  const dense = { 'part.oven': { t: '2400', u: 'kg/m3', s: 'metric' as const } };
  expect(answered(dense).numbers.low!.value).toBeGreaterThan(0);
});

test('the tables are not called bounds, nor results from them certain', () => {
  const asked = [
    {},
    wanted('0.5'),
    { 'heat-through.wanted': { t: '0.4', u: 'm2.K/W', s: 'metric' } },
  ];
  const most = Math.max(
    ...WONG_2026.map(
      ({ density, conductivity }) =>
        conductivity / dryConductivityBand({ dryDensity: density }).high,
    ),
  );
  for (const entries of asked as Entries[]) {
    const { judgement, notes, numbers } = answered(entries);
    const labels = Object.keys(numbers).map((name) => heatThrough.results[name]!.label);
    const words = [judgement.say, ...notes, ...labels].join(' ');
    expect(words).not.toMatch(/at (the )?(most|least|best|worst)|to be sure/i);
    expect(words).toContain(`conducted up to ${most.toFixed(1)} times`);
  }
});
