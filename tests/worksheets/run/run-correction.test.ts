import { describe, expect, test } from 'vitest';
import { speaker } from '../../../src/islands/engine/say.ts';
import { correctionWords } from '../../../src/worksheets/live/records/record-words.ts';
import {
  correcting,
  stands,
  uncorrected,
  withoutCorrection,
} from '../../../src/worksheets/live/run/run-correction.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import { batch, say } from './run-batch.ts';

describe('a correction', () => {
  const notes = 'Cold day, before a correction.';
  const before = batch({ full: '13.65', tare: '0.85', foamAdded: '1' }, { notes });
  const foam = { name: 'foamAdded', amount: 0.0025, weighed: 640.2 } as const;

  test('is recorded in SI and undone completely; notes are kept', () => {
    const { change, undo } = correcting(before, foam);
    expect(change).not.toHaveProperty('notes');
    expect(change.corrections).toEqual([{ weighed: 640.2, foam: 0.0025 }]);
    expect(change.readings.full).toBeUndefined();
    // As it is after a reload.
    const kept: typeof undo = JSON.parse(JSON.stringify(undo));
    expect(uncorrected(change, kept)).toEqual({
      readings: before.readings,
      corrections: [],
    });
  });

  test('keeps the ± and unit of the scale for the weighing after it', () => {
    const full = { t: '16.0', u: 'kg', s: 'metric', p: '0.1', pu: 'kg' } as const;
    const typed = { ...before, readings: { ...before.readings, full } };
    const { change, undo } = correcting(typed, foam);
    const record = { ...typed, ...change };
    expect(runReadings(record, say).at('full')).toBeUndefined();
    expect(runReadings(record, say).pm('full')).toBeCloseTo(0.1, 9);
    // What is typed into the field stands beside it, as `NumberInput` has it.
    const next = { ...record.readings.full, t: '12.9', u: 'kg', s: 'metric' } as const;
    const weighed = { ...record, readings: { ...record.readings, full: next } };
    expect(runReadings(weighed, say).pm('full')).toBeCloseTo(0.1, 9);
    // And to the one after a second correction.
    const twice = correcting(weighed, foam).change;
    expect(twice.readings.full).toEqual({ p: '0.1', pu: 'kg' });
    expect(uncorrected(change, undo).readings.full).toEqual(full);
    const grams = { ...before.readings.full!, d: { metric: 'g' } };
    const picked = { ...before, readings: { ...before.readings, full: grams } };
    expect(correcting(picked, foam).change.readings.full).toEqual({ d: { metric: 'g' } });
  });

  test('follows those before it, and only the last can be undone', () => {
    const once = { ...before, ...correcting(before, foam).change };
    const again = { name: 'baseAdded', amount: 1.2, weighed: 561 } as const;
    const { change, undo } = correcting(once, again);
    expect(change.corrections).toEqual([
      { weighed: 640.2, foam: 0.0025 },
      { weighed: 561, base: 1.2 },
    ]);
    expect(uncorrected(change, undo).corrections).toEqual(once.corrections);
  });

  test('undone, keeps what was written since', () => {
    const { change, undo } = correcting(before, { ...foam, name: 'baseAdded' });
    const since = {
      ...change,
      readings: { ...change.readings, baseAdded: { t: '2' }, placed: { t: '30' } },
    };
    expect(uncorrected(since, undo).readings).toEqual({
      ...before.readings,
      placed: { t: '30' },
    });
  });

  test('can be undone at the bench only while it is the last and its total unchanged', () => {
    const { change, undo } = correcting(before, foam);
    const sum = { t: '3.5', u: 'L' };
    const record = { ...change, readings: { ...change.readings, foamAdded: sum } };
    const wrote: typeof undo = JSON.parse(JSON.stringify({ ...undo, sum }));
    expect(stands(record, wrote)).toBe(true);
    const since = { ...record, readings: { ...record.readings, placed: { t: '30' } } };
    expect(stands(since, wrote)).toBe(true);
    const again = { weighed: 610, foam: 0.001 };
    for (const other of [
      withoutCorrection(record, 0).change,
      { ...record, corrections: [...record.corrections, again] },
      { ...record, readings: { ...record.readings, foamAdded: { t: '2', u: 'L' } } },
    ])
      expect(stands(other, wrote)).toBe(false);
    // One of an earlier version does not say what it wrote.
    const { made: _, ...unsaid } = wrote;
    expect(stands(record, unsaid)).toBe(false);
  });

  test('can be removed from the record and its total later, and restored', () => {
    const once = { ...before, ...correcting(before, foam).change };
    const base = { name: 'baseAdded', amount: 1.2, weighed: 561 } as const;
    const twice = { ...once, ...correcting(once, base).change };
    const three = { ...twice, ...correcting(twice, foam).change };
    const sums = {
      ...three.readings,
      foamAdded: { t: '5', u: 'L' },
      baseAdded: { t: '1.2', u: 'kg' },
    };
    const record = { ...three, readings: sums };
    const { change, back } = withoutCorrection(record, 0);
    expect(change.corrections).toEqual(record.corrections.slice(1));
    expect(change.readings.foamAdded).toEqual({ t: '2.5', u: 'L' });
    const since = { ...change, readings: { ...change.readings, placed: { t: '30' } } };
    expect(back(since)).toEqual({
      readings: { ...sums, placed: { t: '30' } },
      corrections: record.corrections,
    });
    // All of the base mix there was.
    expect(withoutCorrection(record, 1).change.readings).not.toHaveProperty('baseAdded');
    // A sum since changed by hand to less, and one that cannot be read.
    const less = { ...record, readings: { ...sums, foamAdded: { t: '1', u: 'L' } } };
    expect(withoutCorrection(less, 0).change.readings).not.toHaveProperty('foamAdded');
    const torn = { ...record, readings: { ...sums, foamAdded: { t: 'two' } } };
    expect(withoutCorrection(torn, 0).change.readings.foamAdded).toEqual({ t: 'two' });
  });

  test('is told in the reader’s units, with the amount added where known', () => {
    const corrections = [
      { weighed: 640.2, foam: 0.0025 },
      { weighed: 561, base: 1.2 },
      { weighed: 610 },
    ];
    const words = (system: 'metric' | 'us') =>
      correctionWords({ ...before, corrections }, speaker(system)).replaceAll('\u00a0', ' ');
    expect(words('metric')).toBe(
      '640 kg/m³, then 2.5 L of foam added; 561 kg/m³, then 1.2 kg of base mix added; 610 kg/m³',
    );
    // 640.2 ÷ 16.018463, 2.5 ÷ 0.946353, 1.2 ÷ 0.45359237.
    expect(words('us')).toMatch(/^40\.0 lb\/ft³, then 2\.6 qt of foam added; .*2\.6 lb of base/);
    expect(correctionWords(before, say)).toBe('');
  });
});
