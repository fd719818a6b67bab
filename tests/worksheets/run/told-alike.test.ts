import { readFileSync } from 'node:fs';
import { Fragment, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterEach, expect, test, vi } from 'vitest';
import { Editor } from '../../../src/bench/records/editor.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { LANDING_TRIALS } from '../../../src/core/mix/landing.ts';
import { formatNumber } from '../../../src/core/quantity/format.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import type { AnyWorksheet } from '../../../src/islands/worksheet.ts';
import handling from '../../../src/worksheets/demould/handling.tsx';
import receiver from '../../../src/worksheets/foam/receiver.tsx';
import BenchSheet from '../../../src/worksheets/live/bench-sheet.tsx';
import { RUN_STEPS } from '../../../src/worksheets/live/run/RunSteps.tsx';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import landing from '../../../src/worksheets/mix/landing.tsx';
import storedEnergy from '../../../src/worksheets/safety/stored-energy.tsx';
import { mustAnswer } from '../must-answer.ts';

/** What a sheet says twice must be the same figure both times. */
const say = speaker('metric');

function example(sheet: AnyWorksheet) {
  const found = answer(sheet, readWorksheet(sheet, {}, {}, say), say);
  mustAnswer(found);
  return { ...found, sheet };
}

afterEach(() => void vi.unstubAllGlobals());

test('how much of its strength a move asks: in the answer and in the table of moves', () => {
  const { sheet, numbers, result, values } = example(handling);
  const worst = say(numbers.useHigh!.value, 'ratio', {
    units: { metric: '%', us: '%' },
    decimals: 0,
  });
  const rows = sheet.tables![0]!.rows(result, values, say) as string[][];
  expect(rows.map((row) => row.at(-1))).toContainEqual(expect.stringMatching(`to ${worst}$`));
});

test('how often a batch is played: beside the picture and in the note', () => {
  const { sheet, result, values, notes } = example(landing);
  const often = formatNumber(LANDING_TRIALS, { decimals: 0 });
  expect(notes.join(' ')).toContain(`${often} trials`);
  const picture = sheet.figure!({ values, result, say });
  expect(renderToString(h(Fragment, {}, picture))).toContain(`a share of ${often} such loads`);
});

test('pressure times volume: in the results and where a receiver is judged', () => {
  // 24 L at 8 bar.
  const { value } = example(storedEnergy).numbers.product!;
  const { significant } = storedEnergy.results.product!;
  expect(say(value, 'count', { significant: significant! })).toBe('192');
  expect(example(receiver).notes.join(' ')).toContain('192\u00a0bar·L');
});

test('how the lance is cleared: bled before it is opened and after the water, into the waste bucket, wherever it is told', () => {
  const order = /bleed[^.]* to zero.*(?:refill|fill in).*water.*through the lance.*bleed.*again/is;
  const editor = new Editor(blankRecord({}), () => {});
  const last = RUN_STEPS.at(-1)!.Step;
  vi.stubGlobal('document', { body: { dataset: {} } });
  const props = { editor, plan: runPlan({}, {}, say)!, say, undo: undefined, setUndo: () => {} };
  const chapter = (page: string) => readFileSync(`content/chapters/${page}.mdx`, 'utf8');
  const step = (text: string, start: RegExp) => text.split('\n').find((line) => start.test(line));
  for (const told of [
    renderToString(h(last, props)),
    renderToString(h(BenchSheet, {})),
    step(chapter('first-batch/index'), /^10\. /),
    step(chapter('safety/setting-up'), /^2\. \*\*The lance/),
  ]) {
    expect(told).toMatch(order);
    expect(told).toContain('waste bucket');
  }
});

test('what is done with the top: covered, struck off once it has sunk, covered again', () => {
  const page = (name: string) => readFileSync(`content/chapters/${name}.mdx`, 'utf8');
  const [first] = page('safety/setting-up').match(/^1\. \*\*The part first.*$/m)!;
  expect(first).toMatch(/covered before anything is washed.*stopped sinking.*covered again/i);
  expect(page('first-batch/index')).toMatch(
    /\*\*Cover\*\* at once.*\*\*Bleed.*\*\*Strike off\*\*[^.]*stopped sinking[^.]*cover again/s,
  );
  const strikingOff = page('placing/filling').split('{ #strike-off }')[1]!;
  expect(strikingOff).toMatch(
    /hold a sheet.*washed.*strike off when it has stopped sinking.*cover it again/is,
  );
});
