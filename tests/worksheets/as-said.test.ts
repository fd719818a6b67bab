import { describe, expect, test } from 'vitest';
import type { Editor } from '../../src/bench/records/editor.ts';
import type { ReadingName } from '../../src/bench/records/readings.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { put } from '../../src/worksheets/live/run/run-put.ts';
import { ADDED_FOAM } from '../../src/worksheets/shared/words/amounts.ts';
import { asSaid, onScale } from '../../src/worksheets/shared/words/as-said.ts';
import { batch, say } from './run/run-batch.ts';

describe('a button enters the amount as it was shown', () => {
  const LITRES = { metric: 'L', us: 'gal' };
  const us = speaker('us');

  test.each([
    // By hand: 2.8 qt of 0.946352946 L, 7.58 gal of 3.785411784 L, 13.9 and 2.7 lb of 0.45359237 kg, 7.1 of its sixteenths.
    [0.00262, 'volume', { units: LITRES, significant: 2 }, '2.8\u00a0qt', 0.002649788],
    [0.0287, 'volume', { units: LITRES }, '7.58\u00a0gal', 0.028693421],
    [6.3052, 'mass', { decimals: 2 }, '13.90\u00a0lb', 6.30493394],
    [1.24, 'mass', { significant: 2 }, '2.7\u00a0lb', 1.2246994],
    [0.2, 'mass', { significant: 2 }, '7.1\u00a0oz', 0.20128161],
  ] as const)('%d %s %o: %s', (si, kind, how, shown, taken) => {
    expect(us(si, kind, how)).toBe(shown);
    expect(asSaid(si, kind, how, us)).toBeCloseTo(taken, 7);
    for (const voice of [us, say])
      expect(voice(asSaid(si, kind, how, voice), kind, how)).toBe(voice(si, kind, how));
  });

  test('and it is written in full in the unit of the field', () => {
    const editor = {
      record: batch({}),
      change: (over: object) => Object.assign(editor.record, over),
    };
    const write = (name: ReadingName, si: number, how: object) =>
      put(editor as unknown as Editor, name, si, us, how);
    write('water', asSaid(6.3099, 'mass', { decimals: 2 }, us), { significant: 7 });
    // Said as 2.8 qt.
    write('foamAdded', asSaid(0.00262, 'volume', { units: ADDED_FOAM, significant: 2 }, us), {});
    expect(editor.record.readings).toEqual({
      water: { t: '13.91', u: 'lb', s: 'us' },
      foamAdded: { t: '2.8', u: 'qt', s: 'us' },
    });
  });
});

describe('a weight stands as a US scale shows it too', () => {
  const us = speaker('us');
  const shown = (pounds: number, how: object) =>
    onScale(pounds * 0.45359237, how, us).replaceAll('\u00a0', ' ');

  test.each([
    // By hand: .17 of 16 oz are 2.72; .71 are 11.36; .5 are 8; .97 are 15.52, a pound.
    [18.17, { decimals: 2 }, '18.17 lb = 18 lb 3 oz'],
    [2.71, { decimals: 2 }, '2.71 lb = 2 lb 11.4 oz'],
    [9.53, { significant: 2 }, '9.5 lb = 9 lb 8 oz'],
    [10.97, { decimals: 2 }, '10.97 lb = 11 lb 0 oz'],
    [12, { decimals: 2 }, '12.00 lb'],
    [10, { significant: 2 }, '10 lb'],
    [0.8, {}, '12.8 oz'],
  ])('%d lb, %o: %s', (pounds, how, says) => {
    expect(shown(pounds, how)).toBe(says);
  });

  test('and in metric alone', () => {
    expect(onScale(8.24, { decimals: 2 }, say)).toBe('8.24\u00a0kg');
  });
});
