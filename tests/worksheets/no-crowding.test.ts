import { Fragment, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { LETTER } from '../../src/islands/plots/scale.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import timeInHand from '../../src/worksheets/foam/time-in-hand.tsx';
import { LandingChart } from '../../src/worksheets/live/compare/LandingChart.tsx';
import { RankedBars } from '../../src/worksheets/mix/drawn/RankedBars.tsx';

test('without anything to rank nothing is drawn', () => {
  expect(renderToString(h(RankedBars, { title: 'What the money goes on', bars: [] }))).toBe('');
});

test('batches beyond the limits are marked by their numbers, however long their names', () => {
  const landed = [600, 601, 598, 602, 600, 599, 900, 905, 601, 600, 598, 602].map((weighed, i) => ({
    name: `Workshop slabs for the shed, load ${i + 1}`,
    planned: 600,
    weighed,
    share: 1,
  }));
  const html = renderToString(h(LandingChart, { landed, byName: false }));
  const marked = [...html.matchAll(/<text class="strong on-layer"[^>]*>([^<]+)</g)];
  expect(marked.map(([, name]) => name)).toEqual(['7', '8']);
});

test('the name of the steepest curve overlaps no curve, however small the tolerance', () => {
  const say = speaker('metric');
  const sheet = timeInHand as unknown as AnyWorksheet;
  const entries = { [benchKey(sheet, 'tolerance')]: { t: '0.5', u: 'kg/m3' } };
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  if (!found.ok) throw new Error('refused');
  const html = renderToString(
    h(Fragment, {}, sheet.figure?.({ values: found.values, result: found.result, say })),
  );
  const [, x, y] = /x="([\d.]+)" y="([\d.]+)" text-anchor="start">by weight</.exec(html)!;
  const [left, foot] = [Number(x), Number(y)];
  const curves = [...html.matchAll(/class="curve[^"]*" d="M([^"]+)"/g)].map(([, line]) =>
    line!.split('L').map((at) => at.split(' ').map(Number) as [number, number]),
  );
  expect(curves).toHaveLength(3);
  for (const [x, y] of curves.flat())
    expect(x > left && x < left + 9 * LETTER && y > foot - 12 && y < foot + 4, `${x} ${y}`).toBe(
      false,
    );
});
