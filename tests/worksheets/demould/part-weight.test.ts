import { expect, test } from 'vitest';
import type { System } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import canILift from '../../../src/worksheets/demould/can-i-lift.tsx';
import partWeight from '../../../src/worksheets/demould/part-weight.tsx';
import shapes from '../../../src/worksheets/placing/shapes.tsx';
import { mustAnswer } from '../must-answer.ts';

const judged = (sheet: AnyWorksheet, entries: object, system: System) => {
  const say = speaker(system);
  const found = answer(sheet, readWorksheet(sheet, { ...entries }, {}, say), say);
  mustAnswer(found);
  return found.judgement;
};
/** A part of so many kilograms, or pounds. */
const weighing = (mass: number, system: System = 'metric') => {
  const [m3, u] = system === 'us' ? [mass * 0.45359237, 'lb'] : [mass, 'kg'];
  const volume = { t: String(m3 / 600), u: 'm3', s: 'metric' };
  return {
    part: judged(
      partWeight,
      { 'part-weight.shape': { t: 'volume' }, 'part-weight.volume': volume },
      system,
    ),
    lift: judged(
      canILift,
      {
        'can-i-lift.mass': { t: String(mass), u, s: system },
        'can-i-lift.form': { t: system },
        'can-i-lift.special': { t: 'none' },
      },
      system,
    ),
  };
};

test('a part is good exactly where the example lift of “Can I lift it?” is', () => {
  for (const mass of [1, 4.86, 7.9, 8.1, 11, 22, 24]) {
    const { part, lift } = weighing(mass);
    expect(part.verdict === 'good', String(mass)).toBe(lift.verdict === 'good');
  }
});

test('a part too heavy for two is sent to lifting gear, not to more people', () => {
  for (const mass of [24, 30]) {
    const { part, lift } = weighing(mass);
    expect(part.say).toContain('lift with others');
    expect(part.say).toContain('In that posture, two may lift no more than 30\u00a0kg');
    // Of the lift that sheet begins with two may bear less: 2 × 8.037 kg × 2/3.
    expect(lift.say).toContain('Lifted like this, two may lift no more than 10\u00a0kg');
    expect(lift.say).not.toContain('not by hand');
  }
  for (const mass of [31, 36, 480])
    for (const { say } of Object.values(weighing(mass))) {
      expect(say).toContain('trolley or rated gear, not by hand');
      // However that sheet would lift it, the posture is the one just named.
      expect(say).toContain('In that posture, two may lift no more than 30\u00a0kg');
      expect(say).not.toContain('with others');
    }
});

test('the limit for one person is the same in both unit systems and in both worksheets', () => {
  for (const system of ['metric', 'us'] as const) {
    const pounds = (mass: number) => {
      const volume = { t: String((mass * 0.45359237) / 600), u: 'm3', s: 'metric' };
      const shape = { 'part-weight.shape': { t: 'volume' } };
      return {
        part: judged(partWeight, { ...shape, 'part-weight.volume': volume }, system),
        lift: judged(
          canILift,
          { 'can-i-lift.mass': { t: String(mass), u: 'lb', s: 'us' } },
          system,
        ),
      };
    };
    expect(pounds(50.6).part.verdict).toBe('look');
    for (const { verdict, say } of Object.values(pounds(50.8))) {
      expect(verdict).toBe('stop');
      expect(say).toContain(
        system === 'us' ? '50.8\u00a0lb is more than the 50.7\u00a0lb' : 'more than the 23\u00a0kg',
      );
    }
  }
  // The form in pounds, chosen there, is said as it is printed.
  expect(weighing(51.1, 'us').lift.say).toContain('the 51\u00a0lb');
});

test('a volume taken from several forms is noted as that of the last', () => {
  const say = speaker('us');
  const told = (shape: string) => {
    const entries = { 'part-weight.shape': { t: shape } };
    const found = answer(partWeight, readWorksheet(partWeight, entries, {}, say), say);
    return found.ok && found.notes.join(' ');
  };
  expect(told('volume')).toContain('Of several forms this is the one worked last');
  expect(told('sides')).not.toContain('worked last');
  const form = answer(shapes, readWorksheet(shapes, {}, {}, say), say);
  expect(form.ok && form.notes[0]).toContain('go by the form entered here last');
});
