import { expect, test } from 'vitest';
import type { Entries, System } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import formPressure from '../../../src/worksheets/placing/form-pressure.tsx';
import { mustAnswer } from '../must-answer.ts';

/** A panel stiff enough for any depth, so that the depth alone is judged. */
const judged = (metres: string, system: System = 'metric') => {
  const say = speaker(system);
  const mm = (t: string) => ({ t, u: 'mm', s: 'metric' }) as const;
  const entries: Entries = {
    'form-pressure.depth': { t: metres, u: 'm', s: 'metric' },
    'form-pressure.span': mm('100'),
    'form-pressure.thickness': mm('100'),
  };
  const found = answer(formPressure, readWorksheet(formPressure, entries, {}, say), say);
  mustAnswer(found);
  return found.judgement;
};

test('a panel that is strong enough does not make a form higher than a person good', () => {
  for (const depth of ['1.81', '3', '10'])
    expect(judged(depth), depth).toMatchObject({
      verdict: 'stop',
      say: expect.stringContaining('licensed to design'),
    });
  expect(judged('1.8').verdict).toBe('look');
  expect(judged('1.21').say).toContain('one lift');
  expect(judged('1.21', 'us').say).toMatch(/no more than 4\sft/);
  expect(judged('1.2').verdict).toBe('good');
});

test('a good panel comes with what its clamps must carry', () => {
  const { verdict, say } = judged('0.06');
  expect(verdict).toBe('good');
  expect(say).toMatch(/^The panel holds/);
  expect(say).toMatch(
    /not checked here: .* each lower one must carry \d.*\sN, .* each upper one \d/,
  );
});

test.each([
  ['the span going up the fill', { spans: { t: 'up' } }],
  ['a short span', { span: { t: '150', u: 'mm' } }],
  ['a thinner panel up the fill', { spans: { t: 'up' }, thickness: { t: '15', u: 'mm' } }],
])('how far battens may stand apart does not rest on how far they do: %s', (_, typed) => {
  const say = speaker('metric');
  const asked = (typed: object) => {
    const entries: Entries = Object.fromEntries(
      Object.entries(typed).map(([name, entry]) => [`form-pressure.${name}`, entry]),
    );
    const found = answer(formPressure, readWorksheet(formPressure, entries, {}, say), say);
    mustAnswer(found);
    return found;
  };
  const { numbers, judgement } = asked(typed);
  const wide = asked({ ...typed, spans: { t: 'one' }, span: { t: '450', u: 'mm' } });
  expect(numbers.longest!.value).toBe(wide.numbers.longest!.value);
  // One that spans the depth is not told of a span it has passed.
  const up = 'spans' in typed;
  expect(judgement.say.includes('; it could span')).toBe(!up);
  expect(judgement.say.includes('; on upright battens it could span')).toBe(up);
  // What bulges less than a micrometre has no figure; its stress and the limits do.
  expect(numbers.deflection).toBeUndefined();
  expect(Object.keys(numbers)).toEqual(expect.arrayContaining(['mayBend', 'stress', 'mayStress']));
});
