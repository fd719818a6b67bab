import { expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import strengthTime from '../../../src/worksheets/curing/strength-time.tsx';
import handling from '../../../src/worksheets/demould/handling.tsx';
import partWeight from '../../../src/worksheets/demould/part-weight.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import strengthDensity from '../../../src/worksheets/finished/strength-density.tsx';
import { mustAnswer } from '../must-answer.ts';

const metric = speaker('metric');
const sheets = { strengthDensity, strengthTime, handling, partWeight, stripWindow };

/** What the sheet says of a part of these densities, kg/m³, carried at 28 days. */
function said(
  sheet: (typeof sheets)[keyof typeof sheets],
  wet: string,
  dry: string,
  more: Entries,
) {
  const entries: Entries = {
    'part.wetDensity': { t: wet },
    'part.oven': { t: dry },
    'part.sinceCasting': { t: '28', u: 'd' },
    'strip-window.stress': { t: '0.1', u: 'kPa' },
    'handling.age': { t: '28' },
    'handling.stage': { t: 'carried' },
    'strength-time.age': { t: '28' },
    ...more,
  };
  const found = answer(sheet, readWorksheet(sheet, entries, {}, metric), metric);
  mustAnswer(found);
  return found.judgement;
}

test.each(Object.entries(sheets))(
  '%s questions a wet and a dry density that cannot be of one mix',
  (_, sheet) => {
    // A mix of w/c 2 weighs 1293 at most: denser, the bound is of cement and water without air, so no one mix is named.
    const doubt = /Check the wet and the dry density: no mix dries from/;
    // (600 − 120) ÷ (3 − 120 × 0.0023175) = 176.3; 500 × 3150/2150 = 732.6.
    for (const [wet, dry] of [
      ['900', '100'],
      ['600', '176'],
      ['1500', '500'],
      ['1500', '732'],
    ] as const) {
      expect(said(sheet, wet, dry, {}), `${wet}, ${dry}`).toMatchObject({
        verdict: 'look',
        say: expect.stringMatching(doubt),
      });
    }
    for (const [wet, dry] of [
      ['600', '177'],
      ['1500', '733'],
      ['600', '465'],
      ['400', '300'],
    ] as const)
      expect(said(sheet, wet, dry, {}).say, `${wet}, ${dry}`).not.toMatch(doubt);
  },
);

test('where bars or cubes tell the strength, the dry density is not asked', () => {
  const bars = { 'part.strengthFrom': { t: 'bars' } };
  const own = { 'curing.strengthFrom': { t: 'own' } };
  for (const [sheet, more] of [
    [stripWindow, bars],
    [handling, bars],
    [strengthTime, own],
  ] as const)
    expect(said(sheet, '600', '60', more).say).not.toMatch(/dry density/);
});
