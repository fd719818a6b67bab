import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import frostGuard from '../../../src/worksheets/curing/frost-guard.tsx';
import temperatureAge from '../../../src/worksheets/curing/temperature-age.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import { mustAnswer } from '../must-answer.ts';

const judged = (sheet: AnyWorksheet, t: string, u: string, more: Entries = {}) => {
  const say = speaker(u === 'degF' ? 'us' : 'metric');
  const entries = {
    'curing.source': { t: 'steady' },
    'curing.steady': { t, u },
    'curing.warmest': { t, u },
    ...more,
  };
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  mustAnswer(found);
  return found.judgement;
};

const strong = { 'frost-guard.strength28': { t: '30', u: 'MPa' } };
/** Old enough, its bars known, and hardly asked anything: good, but for the heat. */
const light = {
  'part.strengthFrom': { t: 'bars' },
  'part.barMean': { t: '225', u: 'kPa' },
  'part.barLow': { t: '190', u: 'kPa' },
  'part.barsCounted': { t: '4' },
  'part.sinceCasting': { t: '60', u: 'd' },
  'curing.coldest': { t: '20', u: 'degC' },
  'strip-window.stress': { t: '3', u: 'kPa' },
};
const old = { 'part.sinceCasting': { t: '10', u: 'd' } };

test.each([
  ['curing-plan', curingPlan, {}],
  ['frost-guard', frostGuard, strong],
  ['temperature-age', temperatureAge, old],
  ['strip-window', stripWindow, light],
] as const)('an impossibly warm cure is questioned, its unit first: %s', (_, sheet, more) => {
  for (const [t, u] of [
    ['40', 'degC'],
    ['104', 'degF'],
  ] as const)
    expect(judged(sheet, t, u, more).verdict).toBe('good');
  for (const [t, u] of [
    ['41', 'degC'],
    ['68', 'degC'],
    ['150', 'degF'],
  ] as const)
    expect(judged(sheet, t, u, more)).toMatchObject({
      verdict: 'look',
      say: expect.stringMatching(/^It gets as warm as .*Check the figure and its unit/),
    });
  for (const [t, u] of [
    ['70', 'degC'],
    ['158', 'degF'],
  ] as const)
    expect(judged(sheet, t, u, more)).toMatchObject({
      verdict: 'stop',
      say: expect.stringContaining('the usual limit inside'),
    });
});

test('heat gives no stripping time before 16 hours', () => {
  const say = speaker('metric');
  const hot = { ...light, 'curing.coldest': { t: '65' }, 'curing.warmest': { t: '69' } };
  const found = answer(stripWindow, readWorksheet(stripWindow, hot, {}, say), say);
  expect(found.ok && found.numbers.earliest!.value).toBeGreaterThanOrEqual(16 * 3600);
});

test('a plan stopped for heat gives no date', () => {
  const say = speaker('metric');
  const planned = (t: string) => {
    const entries = { 'curing.source': { t: 'steady' }, 'curing.steady': { t } };
    const found = answer(curingPlan, readWorksheet(curingPlan, entries, {}, say), say);
    return found.ok && Object.keys(found.numbers);
  };
  expect(planned('20')).toContain('longest');
  expect(planned('90')).toEqual(['coldest', 'warmest']);
});
