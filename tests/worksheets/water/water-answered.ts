import type { Entries } from '../../../src/bench/entries.ts';
import { type Answered, answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import { mustAnswer } from '../must-answer.ts';

export const say = speaker('metric');

/** The worksheet as the reader sees it after typing these, by bench key; metric. */
function typed(sheet: AnyWorksheet, text: Readonly<Record<string, string>>) {
  const entries = Object.fromEntries(
    Object.entries(text).map(([key, t]) => [key, { t, s: 'metric' }]),
  ) as Entries;
  return answer(sheet, readWorksheet(sheet, entries, {}, say), say);
}

/** Its answer; it must have one. */
export function answered(
  sheet: AnyWorksheet,
  text: Readonly<Record<string, string>> = {},
): Answered {
  const outcome = typed(sheet, text);
  mustAnswer(outcome);
  return outcome;
}

/** Its first refusal; it must have one. */
export function refusal(sheet: AnyWorksheet, text: Readonly<Record<string, string>>): string {
  const outcome = typed(sheet, text);
  if (outcome.ok) throw new Error('it was answered');
  return outcome.problems[0]!.say;
}

/** The demo's report, typed: once a reader types, optional examples no longer count. */
export const report = {
  'water.chloride': '42',
  'water.sulfate': '45',
  'water.sodium': '22',
  'water.potassium': '3',
  'water.nitrate': '20',
  'water.dissolved': '400',
};

/** A water’s trial beside a control, typed. */
export const trial = {
  'trial.controlInitial': '165',
  'trial.controlFinal': '250',
  'trial.controlStrength': '24',
  'trial.testInitial': '190',
  'trial.testFinal': '285',
  'trial.testStrength': '22.8',
};

/** One of its numbers, SI. */
export const result = (sheet: AnyWorksheet, name: string, text = {}) =>
  answered(sheet, text).numbers[name]!.value;
