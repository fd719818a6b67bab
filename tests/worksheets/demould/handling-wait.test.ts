import { expect, test } from 'vitest';
import type { Entries, Entry } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import handling from '../../../src/worksheets/demould/handling.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('us');
const answered = (entries: Entries) => {
  const found = answer(handling, readWorksheet(handling, entries, {}, say), say);
  mustAnswer(found);
  const words = found.judgement.say.replaceAll('\u00a0', ' ');
  return { ...found.judgement, say: words, numbers: found.numbers };
};
const inch = (t: string): Entry => ({ t, u: 'in', s: 'us' });
const pcf = (t: string): Entry => ({ t, u: 'lb/ft3', s: 'us' });
/** A slab of 24 × 12 × 2 in, 45 lb/ft³, dry 35, carried by its two ends. */
const slab = {
  'part.length': inch('24'),
  'part.width': inch('12'),
  'part.thickness': inch('2'),
  'part.wetDensity': pcf('45'),
  'part.oven': pcf('35'),
  'handling.stage': { t: 'carried' },
  'handling.hold': { t: 'ends' },
};
const aged = (age: string, hours: string): Entries => ({
  'handling.age': { t: age, u: 'd', s: 'us' },
  'part.sinceCasting': { t: hours, u: 'h', s: 'us' },
});

test('the advised wait is in days, and at its end the part passes', () => {
  const { verdict, say: words } = answered({ ...slab, ...aged('3', '172') });
  expect(verdict).toBe('look');
  const days = /wait until it is ([\d.]+) d old as at 20 °C/.exec(words)?.[1];
  expect(Number(days)).toBeGreaterThan(7);
  expect(words).toContain('counts as 3.0 d now');
  // 172 h for three days of age: at that pace each day takes 2.39.
  const more = Number(/so about ([\d.]+) d more/.exec(words)?.[1]);
  expect(more / ((Number(days) - 3) * (172 / 72))).toBeCloseTo(1, 1);
  const then = answered({ ...slab, ...aged(days!, '1400') });
  expect(then.numbers.useJerk!.value).toBeLessThanOrEqual(0.5);
  expect(then.numbers.useJerk!.value).toBeGreaterThan(0.49);
  expect(then.say).not.toContain('Hold it better');
});

test('where waiting does not help, the verdict says so', () => {
  const long = { ...slab, 'part.length': inch('40') };
  const { say: words } = answered({ ...long, ...aged('20', '900') });
  expect(words).toContain('two months of waiting are not enough');
  expect(words).not.toContain('wait until');
});

test('a stress above the strength with a jerk is stopped, and not shown rounded to 100 %', () => {
  // The tension grows with the square of the length: 0.70 of the strength at worst.
  const use = answered({ ...slab, ...aged('3', '172') }).numbers.useHigh!.value;
  const length = (wanted: number) => inch(String(24 * Math.sqrt(wanted / use)));
  const at = (wanted: number) =>
    answered({ ...slab, ...aged('3', '172'), 'part.length': length(wanted) });
  expect(at(0.7)).toMatchObject({
    verdict: 'stop',
    say: expect.stringMatching(/may crack at a jerk.*70 % of the strength, and 105 % with a jerk/),
  });
  expect(at(0.66).verdict).toBe('look');
  expect(at(1.02)).toMatchObject({ verdict: 'stop', say: expect.stringContaining('102 % of') });
  expect(at(0.3349)).toMatchObject({ say: expect.stringContaining('50.2 % with a jerk') });
});

test('with bars no waiting time is given, but the advice to break bars again', () => {
  const bars = {
    ...slab,
    'part.strengthFrom': { t: 'bars' },
    'part.barMean': { t: '15', u: 'psi', s: 'us' },
    'part.barLow': { t: '13', u: 'psi', s: 'us' },
    'part.barsCounted': { t: '4' },
  } satisfies Entries;
  expect(answered(bars).say).toContain('wait and break bars again');
});
