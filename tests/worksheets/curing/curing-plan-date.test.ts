import type { VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import type { CalendarDate } from '../../../src/worksheets/curing/icalendar.ts';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');

/** The plan of one steady temperature, and the date it puts in a calendar. */
function planned(steady: string, more: Entries = {}) {
  const entries = { 'curing.source': { t: 'steady' }, 'curing.steady': { t: steady }, ...more };
  const found = answer(curingPlan, readWorksheet(curingPlan, entries, {}, say), say);
  mustAnswer(found);
  const { values, result, judgement } = found;
  const figure = curingPlan.figure!({
    values: values as never,
    result: result as never,
    say,
  }) as { props: { children: readonly { props: { date?: CalendarDate } }[] } };
  const chart = figure.props.children[0]!;
  const text = renderToString(chart as unknown as VNode).replaceAll(/<[^>]*>|\s+/g, ' ');
  return { date: chart.props.date, text, judgement };
}

test('the calendar gets one date, with the rule it follows', () => {
  // Four days by the German table at 20 °C and slow gain, four by UK housing, seven by American practice.
  const { date } = planned('20', { 'curing.castAt': { t: '2026-11-20T14:00' } });
  expect(date?.at).toBe(Date.UTC(2026, 10, 27, 14) / 1000);
  expect(date?.title).toBe('Curing may end, by the longest of three rules: American practice');
});

test('where a rule never ends, there is no date', () => {
  const { date, text, judgement } = planned('8');
  expect(judgement.say).toContain('at the least. American practice counts no time below');
  expect(date).toBeUndefined();
  // The others give one, and the table has it: only the one rule gives none.
  expect(text).toContain('no calendar file: by these temperatures American practice gives no end.');
  const frost = planned('-3');
  expect(frost.date).toBeUndefined();
  expect(frost.text).toContain('no calendar file: by these temperatures no end would hold.');
});
