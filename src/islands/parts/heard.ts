import type { System } from '../../bench/entries.ts';
import type { Answered, Unanswered } from '../engine/answer.ts';
import type { AnyWorksheet } from '../worksheet.ts';
import { worded } from './Results.tsx';
import { WORDS } from './Verdict.tsx';

/** What a screen reader hears after a change: the verdict with its first sentence, and the answer if that leaves it out. */
export function heard(
  sheet: AnyWorksheet,
  answered: Answered | Unanswered,
  system: System,
): string {
  if (!answered.ok) return answered.problems[0]?.say ?? '';
  const { verdict, say } = answered.judgement;
  // A decimal point has no space after it.
  const told = `${WORDS[verdict]}. ${/^.*?[.?!](?= |$)/.exec(say)?.[0] ?? say}`;
  const [name, found] = Object.entries(answered.numbers)[0] ?? [];
  if (!name || !found) return told;
  const spec = sheet.results[name]!;
  const { text } = worded(found.value, spec, found.sure, system);
  return told.includes(` ${text}`) ? told : `${told} ${spec.label}: ${text}.`;
}
