import { expect, test } from 'vitest';
import type { KeptResults } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { restOnExample } from '../../../src/islands/engine/reading.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import formPressure from '../../../src/worksheets/placing/form-pressure.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const tie = (width: string, spacing: string) => {
  const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;
  const entries = { 'form-pressure.width': mm(width), 'form-pressure.spacing': mm(spacing) };
  const found = answer(formPressure, readWorksheet(formPressure, entries, {}, metric), metric);
  mustAnswer(found);
  const { lowerTie, upperTie, resultant } = found.numbers;
  return { rows: lowerTie!.value + upperTie!.value, push: resultant!.value };
};

test('the upper row of ties is measured from the surface', () => {
  const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;
  const at = (below: string) => {
    const entries = { 'form-pressure.depth': mm('300'), 'form-pressure.below': mm(below) };
    return answer(formPressure, readWorksheet(formPressure, entries, {}, metric), metric);
  };
  const deep = at('0');
  // The push acts at a third of the depth: two thirds of it on the lower row.
  expect(deep.ok && deep.numbers.lowerTie!.value).toBeCloseTo(
    2 * (deep.ok ? deep.numbers.upperTie!.value : Number.NaN),
    9,
  );
  expect(at('220')).toMatchObject({ judgement: { say: expect.stringContaining('pulled in') } });
  // With the surface at 300 mm the push is at 100: a row just there carries all of it, and the other nothing.
  const third = { 'form-pressure.lower': mm('100'), 'form-pressure.depth': mm('300') };
  const alone = answer(formPressure, readWorksheet(formPressure, third, {}, metric), metric);
  expect(alone).toMatchObject({
    judgement: {
      verdict: 'look',
      say: expect.stringContaining('one row carries nothing'),
    },
  });
  expect(at('300')).toMatchObject({ ok: false, problems: [{ input: 'form-pressure-below' }] });
});

test('clamps further apart than the side is long carry its whole force', () => {
  const far = tie('600', '1500');
  expect(far.rows).toBeCloseTo(far.push, 9);
  const near = tie('600', '300');
  expect(near.rows).toBeCloseTo(near.push / 2, 9);
});

test('the force on a clamp is in pounds, or in newtons with the equivalent mass', () => {
  const said = (system: 'metric' | 'us') => {
    const say = speaker(system);
    const found = answer(formPressure, readWorksheet(formPressure, {}, {}, say), say);
    return found.ok ? found.judgement.say : '';
  };
  expect(said('metric')).toMatch(/must carry [\d.]+\sN, the weight of [\d.]+\sk?g/);
  expect(said('us')).toMatch(/must carry [\d.]+\slbf, each upper one [\d.]+\slbf\. Clamp it/);
});

test('the uplift is named after the face or the core, and missing without either', () => {
  const lifted = (core: string) => {
    const entries = { 'form-pressure.core': { t: core } };
    const found = answer(formPressure, readWorksheet(formPressure, entries, {}, metric), metric);
    return Object.keys(found.ok ? found.numbers : {})
      .map((name) => formPressure.results[name]!.label)
      .filter((label) => label.startsWith('Lift on'));
  };
  expect(lifted('none')).toEqual([]);
  expect(lifted('floats')).toEqual(['Lift on the core']);
  expect(lifted('leans')).toEqual(['Lift on the face']);
});

test('a core known from another worksheet floats, unless the reader chooses otherwise', () => {
  const cores = { 'part.cores': { v: 0.058, from: 'How much?', by: 'shapes' } };
  const judged = (entries = {}, kept: KeptResults = cores) => {
    const found = answer(formPressure, readWorksheet(formPressure, entries, kept, metric), metric);
    return found.ok && found.judgement;
  };
  expect(judged()).toMatchObject({
    verdict: 'look',
    say: expect.stringMatching(/^The core floats/),
  });
  expect(judged({}, {})).toMatchObject({ verdict: 'good' });
  expect(judged({ 'form-pressure.core': { t: 'none' } })).toMatchObject({ verdict: 'good' });
});

test('the positions of clamps are given to three digits in inches', () => {
  const us = speaker('us');
  const found = answer(formPressure, readWorksheet(formPressure, {}, {}, us), us);
  mustAnswer(found);
  expect(found.judgement.say.replaceAll('\u00a0', ' ')).toContain(
    'one every 17.7 in, in rows 0 in and 2.36 in above',
  );
});

test('the force on a clamp is given with its spacing, named as the example’s until typed', () => {
  const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;
  const said = (more: Record<string, ReturnType<typeof mm>> = {}) => {
    const own = {
      'form-pressure.depth': mm('900'),
      'form-pressure.width': mm('2400'),
      'form-pressure.span': mm('300'),
      ...more,
    };
    const read = readWorksheet(formPressure, own, {}, metric);
    const found = answer(formPressure, read, metric);
    mustAnswer(found);
    return `${found.judgement.say}${restOnExample(read)}`.replaceAll('\u00a0', ' ');
  };
  expect(said()).toMatch(
    /every 450 mm, in rows 0 mm and 900 mm above the bottom, each lower one must carry 710 N/,
  );
  expect(said()).toContain('“Clamps or ties along the side, every”');
  const far = said({ 'form-pressure.spacing': mm('1200') });
  expect(far).toMatch(/every 1200 mm, .* must carry 1900 N/);
  expect(far).not.toContain('“Clamps');
});
