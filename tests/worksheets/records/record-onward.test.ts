import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { $entries, enter } from '../../../src/bench/store.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import partWeight from '../../../src/worksheets/demould/part-weight.tsx';
import stripWindow from '../../../src/worksheets/demould/strip-window.tsx';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { putOnBench } from '../../../src/worksheets/live/records/onto-bench.ts';
import {
  goOnWith,
  onwardEntries,
  onwardWords,
  wentOn,
} from '../../../src/worksheets/live/records/record-onward.ts';
import { clearBench } from '../../bench/clear-bench.ts';

const say = speaker('metric');
const kg = (t: string) => ({ t, u: 'kg', s: 'metric' as const });
const made = new Date(2026, 10, 29, 14, 5);
const record = (over: Partial<BatchRecord> = {}) =>
  blankRecord({
    date: '2026-11-29',
    foamMade: made.toISOString(),
    readings: { tare: kg('0.6'), full: kg('12.876'), vessel: { t: '12', u: 'L', s: 'metric' } },
    ...over,
  });

test('going on enters the density placed and the casting time, in place of plan and example', () => {
  enter('part.wetDensity', undefined);
  const kept = { 'mix.planned': { v: 1000, from: '', by: 'proportion' } };
  const wet = () => readWorksheet(partWeight, $entries.get(), kept, say).fields.wet;
  expect(wet()).toMatchObject({ origin: 'kept', value: 1000 });
  goOnWith(record(), say);
  // 12.276 kg in 12 L.
  expect(wet()).toMatchObject({ origin: 'yours', value: 1023 });
  const { castAt } = readWorksheet(curingPlan, $entries.get(), {}, say).fields;
  expect(castAt).toMatchObject({ origin: 'yours', text: '2026-11-29T14:05' });
  clearBench();
});

test('the button tells what will be entered', () => {
  expect(onwardWords(record(), say).replaceAll('\u00a0', ' ')).toBe(
    '1023 kg/m³, cast Sun 29 Nov, 14:05,',
  );
  expect(onwardWords(record({ date: '2026-11-28' }), say)).toBe('1023\u00a0kg/m³');
});

test('a run past midnight was cast the next day, but foam made at noon that day is ignored', () => {
  const night = (hour: number) => ({
    date: '2026-11-28',
    foamMade: new Date(2026, 10, 29, hour, 10).toISOString(),
  });
  const at = (hour: number) => onwardEntries(record(night(hour)))['curing.castAt']?.t;
  expect(at(0)).toBe('2026-11-29T00:10');
  expect(at(13)).toBeUndefined();
});

describe('a day changed by hand, or a clock never started', () => {
  const { foamMade: _, ...unclocked } = record();
  const at = (t: string) => ({ t });
  const entries = (...given: Parameters<typeof onwardEntries>) => {
    const { 'part.wetDensity': wet, ...times } = onwardEntries(...given);
    expect(wet).toBeDefined();
    return times;
  };
  test('clears the time since casting, and a casting time of another batch', () => {
    const since = { 'part.sinceCasting': at('') };
    for (const one of [record({ date: '2026-11-28' }), unclocked]) {
      expect(entries(one)).toEqual(since);
      expect(entries(one, at(`${one.date}T09:00`))).toEqual(since);
      for (const other of ['2026-11-01T09:00', ''])
        expect(entries(one, at(other))).toEqual({ ...since, 'curing.castAt': at('') });
    }
    expect(onwardEntries(blankRecord({ foamMade: made.toISOString() }))).toEqual({});
    const reading = readWorksheet(stripWindow, onwardEntries(unclocked), {}, say);
    expect(reading.problems.map(({ input }) => input)).toEqual(['strip-window-now']);
  });

  test('is told', () => {
    const said = (castAt?: string) =>
      wentOn(unclocked, say, castAt === undefined ? castAt : at(castAt));
    expect(said()).toMatch(/not written down: type the time since casting where asked\.$/);
    expect(said('2026-11-01T09:00')).toMatch(/type it, and the time since casting, where asked\.$/);
    expect(wentOn(record({ date: '2026-11-27' }), say)).toMatch(
      /When its foam was made does not fit its day here: type the time since casting where asked\.$/,
    );
    expect(said('2026-11-29T09:00')).toContain(
      'The one on the bench, Sun\u00a029\u00a0Nov, 09:00, stays',
    );
  });
});

test('the time since casting is entered, rounded down', () => {
  const hours = (ms: number) => {
    const now = made.getTime() + ms;
    const entries = onwardEntries(record(), undefined, now);
    return [
      readWorksheet(stripWindow, entries, {}, say).fields.now,
      wentOn(record(), say, undefined, now).replaceAll('\u00a0', ' '),
    ];
  };
  // 26 h 17 min.
  expect(hours(94_620_000)).toMatchObject([
    { origin: 'yours', value: 26.2 * 3600 },
    expect.stringMatching(/cast Sun 29 Nov, 14:05, 26 h ago\.$/),
  ]);
  expect(hours(10 * 86_400_000)[1]).toMatch(/10(\.0)? d ago\.$/);
  expect(hours(-60_000)).toMatchObject([{ text: '' }, expect.stringContaining('still to come')]);
  // Less than a worksheet takes for an age.
  expect(hours(5 * 60_000)).toMatchObject([
    { text: '' },
    expect.stringMatching(/only minutes ago: type the time since casting where it is asked for\.$/),
  ]);
  expect(hours(7 * 60_000)[0]).toMatchObject({ value: 360 });
});

describe('undoing what was put on the bench', () => {
  const wet = (t: string) => ({ t, u: 'kg/m3', s: 'metric' as const });
  const [mine, cast] = [wet('777'), { t: '2026-04-01T08:00' }];
  const of = (t: string, castAt?: string) => ({
    'part.wetDensity': wet(t),
    ...(castAt && { 'curing.castAt': { t: castAt } }),
  });
  const on = (key: string) => $entries.get()[key];
  beforeEach(() => {
    enter('part.wetDensity', mine);
    enter('curing.castAt', cast);
  });
  afterEach(clearBench);

  test('restores what was there before the first of two', () => {
    putOnBench('onward', of('600', '2026-05-01T10:00'));
    const back = putOnBench('onward', of('800'));
    expect(on('part.wetDensity')).toEqual(wet('800'));
    back();
    expect([on('part.wetDensity'), on('curing.castAt')]).toEqual([mine, cast]);
    // Taken back, the next one begins anew.
    enter('part.wetDensity', wet('650'));
    putOnBench('onward', of('600'))();
    expect(on('part.wetDensity')).toEqual(wet('650'));
  });

  test('keeps what was typed since, or between the two', () => {
    const first = putOnBench('onward', of('600', '2026-05-01T10:00'));
    enter('part.wetDensity', wet('610'));
    first();
    expect([on('part.wetDensity'), on('curing.castAt')]).toEqual([wet('610'), cast]);
    putOnBench('onward', of('600'));
    enter('part.wetDensity', wet('620'));
    putOnBench('onward', of('800'))();
    expect(on('part.wetDensity')).toEqual(wet('620'));
  });

  test('undoes each action by itself', () => {
    const weighings = putOnBench('reconcile', { 'reconcile.cement': { t: '33', u: 'kg' } });
    putOnBench('onward', of('600'))();
    expect(on('reconcile.cement')).toBeDefined();
    weighings();
    expect(on('reconcile.cement')).toBeUndefined();
  });
});

test('the densities of the invented batches are accepted by the field', () => {
  for (const demo of demoBatches()) {
    const { fields } = readWorksheet(partWeight, onwardEntries(demo), {}, say);
    expect(fields.wet).toMatchObject({ origin: 'yours', problem: undefined });
  }
});
