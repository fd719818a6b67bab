import type { System } from '../../bench/entries.ts';
import type { Answered, Unanswered } from '../engine/answer.ts';
import { type Reading, restOnExample } from '../engine/reading.ts';
import type { AnyWorksheet } from '../worksheet.ts';
import { worded } from './Results.tsx';
import { WORDS } from './Verdict.tsx';

/**
 * What a screen reader hears after a change: the verdict, and the answer if the verdict does not
 * contain it.
 */
export function heard(
  sheet: AnyWorksheet,
  answered: Answered | Unanswered,
  system: System,
  reading: Reading,
): string {
  if (!answered.ok) return answered.problems[0]?.say ?? '';
  const { verdict, say } = answered.judgement;
  const told = `${WORDS[verdict]}. ${say}`;
  const [name, found] = Object.entries(answered.numbers)[0] ?? [];
  const rests = restOnExample(reading) ?? '';
  if (!name || !found) return told + rests;
  const spec = sheet.results[name]!;
  const { text } = worded(found.value, spec, found.sure, system);
  return `${told}${told.includes(` ${text}`) ? '' : ` ${spec.label}: ${text}.`}${rests}`;
}
