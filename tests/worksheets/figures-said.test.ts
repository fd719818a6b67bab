import { Fragment, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { Entries } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import survivalJar from '../../src/worksheets/foam/survival-jar.tsx';

const say = speaker('metric');

/** A worksheet’s answer, and what is drawn and said with it, after typing these by field. */
function drawn(sheet: AnyWorksheet, text: Readonly<Record<string, string>>) {
  const entries = Object.fromEntries(
    Object.entries(text).map(([field, t]) => [benchKey(sheet, field), { t, s: 'metric' }]),
  ) as Entries;
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  if (!found.ok) throw new Error(found.problems.map((problem) => problem.say).join(' '));
  const figure = sheet.figure?.({ values: found.values, result: found.result, say });
  const html = renderToString(h(Fragment, {}, figure || null)).replace(/&nbsp;|\u00a0/g, ' ');
  return { ...found, html };
}

test('a mix that grew lighter did not grow by nothing, and shows no loss', () => {
  const { numbers, html } = drawn(survivalJar, { readings: '0 1.012\n10 1.000\n20 0.99' });
  // 578 over 600 kg/m³.
  expect(numbers.gain!.value).toBeCloseTo(-0.0367, 4);
  expect(html).toContain('the level line of no loss, for they show none.');
  expect(drawn(survivalJar, {}).html).toContain('the steady loss that comes nearest');
});
