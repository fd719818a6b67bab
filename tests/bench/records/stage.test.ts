import { describe, expect, test } from 'vitest';
import { toCsv } from '../../../src/bench/records/csv.ts';
import { BEFORE_MIXING, type ReadingName } from '../../../src/bench/records/readings.ts';
import { type BatchRecord, blankRecord, stageOf } from '../../../src/bench/records/record.ts';
import { progressOf } from '../../../src/worksheets/live/records/record-words.ts';
import { isUnmixed, unfinishedOf } from '../../../src/worksheets/live/run/run-unfinished.ts';

const DAY = '2026-05-09';
const batch = (names: readonly ReadingName[], over: Partial<BatchRecord> = {}) =>
  blankRecord({
    date: DAY,
    readings: Object.fromEntries(names.map((name) => [name, { t: '1' }])),
    ...over,
  });

const said = (record: BatchRecord) => progressOf(record).replaceAll('\u00a0', ' ');

describe('how far a batch has come', () => {
  test('one of which only is known what is known before is not mixed, and may be gone on with', () => {
    const record = batch(BEFORE_MIXING);
    expect(stageOf(record)).toBeUndefined();
    expect(said(record)).toBe('9 May 2026, not mixed yet');
    expect(toCsv([record]).split('\r\n')[1]).toContain(',2026-05-09,,,');
    expect(unfinishedOf([record], Date.parse(`${DAY}T12:00`))).toEqual([record]);
    expect(isUnmixed(record)).toBe(true);
  });

  test.each([
    [batch([...BEFORE_MIXING, 'cement']), 'mixed', '9 May 2026, mixed'],
    [batch([], { foamMade: `${DAY}T08:30:00.000Z` }), 'mixed', '9 May 2026, mixed'],
    [batch(['tare'], { corrections: [{ weighed: 640 }] }), 'cast', 'cast 9 May 2026'],
    [batch(['full', 'tare']), 'cast', 'cast 9 May 2026'],
    [batch(['stripAge', 'full']), 'stripped', 'cast 9 May 2026, stripped'],
    [batch([], { log: { seconds: [0], kelvin: [290] } }), 'cured', 'cast 9 May 2026, cured'],
  ])('%#: %s', (record, stage, words) => {
    expect(stageOf(record)).toBe(stage);
    expect(said(record)).toBe(words);
    expect(isUnmixed(record)).toBe(false);
  });
});
