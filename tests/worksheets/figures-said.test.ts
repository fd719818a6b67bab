import { Fragment, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { Entries } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import canILift from '../../src/worksheets/demould/can-i-lift.tsx';
import stripWindow from '../../src/worksheets/demould/strip-window.tsx';
import drainage from '../../src/worksheets/foam/drainage.tsx';
import survivalJar from '../../src/worksheets/foam/survival-jar.tsx';
import timeInHand from '../../src/worksheets/foam/time-in-hand.tsx';
import { signedPercent } from '../../src/worksheets/live/compare/signed-percent.ts';
import batch from '../../src/worksheets/mix/batch.tsx';
import shapes from '../../src/worksheets/placing/shapes.tsx';
import reconcile from '../../src/worksheets/records/reconcile.tsx';
import { mustAnswer } from './must-answer.ts';

const say = speaker('metric');

/** A worksheet’s answer, and what is drawn and said with it, after typing these by field. */
function drawn(
  sheet: AnyWorksheet,
  text: Readonly<Record<string, string>>,
  rows: Readonly<Record<string, unknown>> = {},
) {
  const entries = {
    ...Object.fromEntries(
      Object.entries(text).map(([field, t]) => [benchKey(sheet, field), { t, s: 'metric' }]),
    ),
    ...rows,
  } as Entries;
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  mustAnswer(found);
  const figure = sheet.figure?.({ values: found.values, result: found.result, say });
  const html = renderToString(h(Fragment, {}, figure || null)).replace(/&nbsp;|\u00a0/g, ' ');
  return { ...found, html };
}

test('a mix that grew lighter has a negative gain, and its picture a level line', () => {
  const { numbers, html } = drawn(survivalJar, { readings: '0 1.012\n10 1.000\n20 0.99' });
  // 578 over 600 kg/m³.
  expect(numbers.gain!.value).toBeCloseTo(-0.0367, 4);
  expect(html).toContain('the level line of no loss, for they show none.');
  expect(drawn(survivalJar, {}).html).toContain('the steady loss that comes nearest');
});

test('the lower bar of a batch is described by whether it is the longer', () => {
  expect(drawn(reconcile, {}).html).toContain('is the gas that was lost');
  const longer = drawn(reconcile, { full: '10 kg' }).html;
  expect(longer).toContain('The lower bar is the longer');
  expect(longer).not.toContain('was lost');
  expect(drawn(reconcile, { full: '40 kg' }).html).toContain('what is no gas at all');
});

test('a drainage curve is described only where there is one', () => {
  expect(drawn(drainage, {}).html).toContain('where it lies at 95');
  expect(drawn(drainage, {}).notes.join()).toMatch(
    /Half of the liquid is gone between 2[01]\.\d\smin and 2[23]\.\d\smin \(95\s% sure\)\./,
  );
  const { html } = drawn(drainage, { measure: 'share', byShare: '5 10' });
  expect(html).toContain('"1 reading of');
  expect(html).toContain('they set no curve yet');
});

test('a strength that is not reached is described without a date', () => {
  const { html } = drawn(stripWindow, { known: 'yes', stress: '500 kPa' });
  expect(html).toContain('does not pass that within the time shown;');
  expect(html).not.toContain('after not within');
});

test('a dosing line that leaves the picture early is described so', () => {
  const { html } = drawn(timeInHand, { tolerance: '0.5 kg/m3' });
  expect(html).toMatch(/planned \d+ kg\/m³, 0\.50 kg\/m³ more or less allowed/);
  expect(html).toContain('where it leaves the picture');
});

test('without a multiplier below 1 none is called the costliest', () => {
  expect(drawn(canILift, {}).judgement.say).toContain('The costliest is');
  const best = { horizontal: '25 cm', vertical: '75 cm', travel: '25 cm', asymmetry: '0 °' };
  const { say } = drawn(canILift, { ...best, perMinute: '0.2', coupling: 'good' }).judgement;
  expect(say).not.toContain('costliest');
});

test('a light filler is named only in a batch that has some', () => {
  expect(drawn(batch, { sandCement: '1' }).html).toMatch(/[";] ?sand \d/);
  expect(drawn(batch, { sandCement: '1', filler: 'some' }).html).toContain('sand, filler');
});

test('every dimension of a drawn form is described', () => {
  const { html } = drawn(shapes, { shape: 'ring', hollow: 'some' });
  expect(html).toMatch(
    /A ring: diameter 300 mm, height 150 mm, hole 200 mm; less 2 × cylinder, diameter 40, height 60 mm\./,
  );
});

test('a core with five dimensions is described in full, on lines that fit a phone', () => {
  const core = { core: { t: 'box-taper' }, across: { t: '40 mm' } };
  const { html } = drawn(shapes, { hollow: 'some' }, { 'shapes.cores': { rows: [core] } });
  const lines = ['length 40, width 40, height 60,', 'top length 30, top width 30 mm'];
  expect(html).toContain(`less 2 × box with sloping sides, ${lines.join(' ')}.`);
  for (const line of lines) expect(html).toContain(`>${line}<`);
});

test('a percentage that rounds to 0 has no sign', () => {
  expect([-0.0004, 0, 0.0004, -0.0006, 0.0006].map(signedPercent)).toEqual(
    ['0.0', '0.0', '0.0', '−0.1', '+0.1'].map((digits) => `${digits}\u00a0%`),
  );
});
