import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { $kept, keep } from '../../../src/bench/store.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { restOnExample } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { keepResults } from '../../../src/islands/keep-results.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import batch from '../../../src/worksheets/mix/batch.tsx';
import correct from '../../../src/worksheets/mix/correct.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');

/** A bucket of ten litres that is too heavy by a tenth, on a scale of this ±. */
function weighed(plusMinus: string) {
  const entries = {
    'bucket.tare': { t: '0.5', u: 'kg', p: plusMinus, pu: 'kg' },
    'bucket.volume': { t: '10', u: 'L', p: '0.01', pu: 'L' },
    'correct.full': { t: '7.1', u: 'kg', p: plusMinus, pu: 'kg' },
    'correct.target': { t: '600', u: 'kg/m3' },
    'correct.mass': { t: '21', u: 'kg' },
  };
  const found = answer(correct, readWorksheet(correct, entries, {}, say), say);
  mustAnswer(found);
  return { verdict: found.judgement.say, add: found.numbers.addFoam };
}

test('readings that cannot tell a good mix from a bad one give no amount to add', () => {
  expect(weighed('0.5')).toMatchObject({ add: undefined });
  expect(weighed('0.5').verdict).toContain('cannot tell a good mix from a bad one');
});

test('on a scale that can, the same bucket asks for foam', () => {
  expect(weighed('0.01').add!.value).toBeGreaterThan(0);
});

test('no amount is given for the example’s mass in the mixer, unless none is needed', () => {
  const on = (full: string, more: Entries = {}) => {
    const entries = {
      'bucket.tare': { t: '0.4', u: 'kg' },
      'bucket.volume': { t: '10', u: 'L' },
      'correct.made': { t: '0' },
      'correct.full': { t: full, u: 'kg' },
      ...more,
    };
    const reading = readWorksheet(correct, entries, {}, say);
    const found = answer(correct, reading, say);
    if (!found.ok) throw new Error('no answer');
    return [found.judgement.say, Object.keys(found.numbers), restOnExample(reading)] as const;
  };
  const [words, shown, rests] = on('6.9');
  expect(words).toMatch(/^8\s% too heavy\. How much to add depends on what is in the mixer/);
  expect(shown).toEqual(['measured']);
  expect(rests).toMatch(/: “Mix in the mixer”, “Target wet density”, “Foam density now”, /);
  expect(on('6.4')[0]).toContain('is near enough to the invented example’s density. Place it only');
  expect(on('6.9', { 'correct.mass': { t: '7.8', u: 'kg' } })[0]).toMatch(/Add 1\.2\sL of foam/);
});

/** A plan of the reader's, and the bucket not yet weighed. */
test('a weighing that is still the example’s does not stop', () => {
  const of = (entries: Entries) => {
    const found = answer(correct, readWorksheet(correct, entries, {}, say), say);
    return found.ok ? found.judgement : undefined;
  };
  const plan: Entries = {
    'correct.target': { t: '1000', u: 'kg/m3' },
    'correct.mass': { t: '35', u: 'kg' },
  };
  expect(of(plan)).toEqual({
    verdict: 'look',
    say: 'Type what your bucket weighs, struck full of the blend.',
  });
  const full = { 'correct.full': { t: '13.65', u: 'kg' } };
  expect(of({ ...plan, ...full })!.say).toMatch(/reads 36\s% lighter than planned/);
  expect(of({})!.verdict).not.toBe('stop');
  // As planned the load is 14 L, and the bucket holds 20.
  const small = of({ ...plan, 'correct.mass': { t: '14', u: 'kg' } })!;
  expect(small.say).toMatch(/holds more than one load: bring a vessel of about 3\sL/);
});

test.each([
  ['proportion', proportion as AnyWorksheet],
  ['batch', batch as AnyWorksheet],
])('what of a plan is still the example’s, and what is not, is told apart: %s', (id, sheet) => {
  const at = (full: string, plan: Entries) => {
    const entries = { ...plan, 'correct.full': { t: full, u: 'kg' } };
    const reading = readWorksheet(sheet, entries, {}, say);
    keepResults(sheet, reading, answer(sheet, reading, say), true);
    const kept = $kept.get();
    const found = answer(correct, readWorksheet(correct, entries, kept, say), say, kept);
    for (const key of Object.keys(kept)) keep(key, undefined);
    return found.ok ? found.judgement : undefined;
  };
  const foam = { 'foam.density': { t: '75', u: 'g/L' }, 'batch.foamDensity': { t: '75' } };
  const aim = { [`${id}.wetDensity`]: { t: '600', u: 'kg/m3' } };
  const volume = { [`${id}.volume`]: { t: '30', u: 'L' } };
  for (const plan of [foam, aim, { ...foam, ...volume }])
    expect(at('14', plan)!.say).toMatch(/^10\s% too heavy\. How much to add depends/);
  expect(at('14', { ...aim, ...volume })!.say).toMatch(/Add \S+\sL of foam/);
  expect(at('13', { ...foam, ...volume })).toMatchObject({
    verdict: 'look',
    say: expect.stringContaining('the invented example’s density'),
  });
  expect(at('13', aim)).toMatchObject({
    verdict: 'good',
    say: expect.stringContaining('Stop stirring and place it.'),
  });
});
