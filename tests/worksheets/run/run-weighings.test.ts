import { describe, expect, test } from 'vitest';
import type { Editor } from '../../../src/bench/records/editor.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { number } from '../../../src/islands/fields.ts';
import foamDensity from '../../../src/worksheets/foam/foam-density.tsx';
import { belowTare } from '../../../src/worksheets/live/records/record-words.ts';
import { put } from '../../../src/worksheets/live/run/run-put.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import {
  cameOf,
  foamByWeight,
  foamWeighed,
} from '../../../src/worksheets/live/run/run-weighings.ts';
import { batch, say } from './run-batch.ts';

describe('an impossible weighing is refused at its own field', () => {
  const field = number('mass', { label: 'Bucket, full of foam', example: '2.45 kg' });
  const foam = (value: number, problem?: string) =>
    foamWeighed(
      { field, value, pm: 0.01, problem },
      runReadings(batch({ tare: '0.85', vessel: '20' }), say),
      say,
    );

  test('foam in the bucket gives its density', () => {
    expect(foam(2.45).density).toBeCloseTo(80, 9);
    expect(foam(2.45).problem).toBeUndefined();
  });

  test('it has the ± that “How heavy is the foam?” gives, and is recorded', () => {
    const kg = (t: string) => ({ t, u: 'kg', s: 'metric' as const, p: '0.01', pu: 'kg' });
    const vessel = { t: '2', u: 'L', s: 'metric' as const, p: '0.02', pu: 'L' };
    const small = blankRecord({ readings: { tare: kg('0.3'), vessel } });
    const weighing = { field, value: 0.44, pm: 0.01, problem: undefined };
    const { density, doubt } = foamWeighed(weighing, runReadings(small, say), say);
    expect(density).toBeCloseTo(70, 9);
    // √(0.01² + 0.01² + (0.07 × 0.02)²) kg in 2 L.
    expect(doubt).toBeCloseTo(7.106, 3);
    const bench = { 'bucket.tare': kg('0.3'), 'bucket.volume': vessel };
    const sheet = readWorksheet(
      foamDensity,
      { ...bench, 'foam-density.full': kg('0.44') },
      {},
      say,
    );
    const found = answer(foamDensity, sheet, say);
    expect(found.ok && found.numbers.density!.sure!.pm).toBeCloseTo(doubt!, 3);
    const editor = { record: small, change: (over: object) => Object.assign(editor.record, over) };
    put(editor as unknown as Editor, 'foamDensity', density!, say, { significant: 3, pm: doubt });
    expect(editor.record.readings.foamDensity).toEqual({
      ...{ t: '70', u: 'g/L', s: 'metric' },
      ...{ p: '7.1', pu: 'g/L' },
    });
    expect(runReadings(editor.record, say).pm('foamDensity')).toBeCloseTo(7.1, 9);
  });

  test('foam put in by weight is converted to litres, with the ± of both weighings', () => {
    const record = batch({ foamDensity: '70.5' });
    const weighed = { value: 1.06, pm: 0.01, problem: undefined };
    const found = foamByWeight(weighed, runReadings(record, say))!;
    // 1.06 ÷ 70.5; √(0.01² + (0.015035 × 1)²) ÷ 70.5.
    expect(found.volume * 1000).toBeCloseTo(15.035, 3);
    expect(found.doubt * 1000).toBeCloseTo(0.25613, 4);
    expect(foamByWeight({ ...weighed, problem: 'refused' }, runReadings(record, say))).toBe(
      undefined,
    );
    expect(foamByWeight(weighed, runReadings(batch({}), say))).toBeUndefined();
  });

  test.each([
    [0.5, 'read 0.5\u00a0kg; it must be more than the bucket weighs empty, 0.85\u00a0kg.'],
    [
      0.86,
      'read 0.86\u00a0kg; that leaves 0.01\u00a0kg of foam in 20\u00a0L, less than 5\u00a0g/L.',
    ],
    [24, 'read 24\u00a0kg; it must be less than the bucket full of water, 20.83\u00a0kg.'],
  ])('%d kg', (full, says) => {
    expect(foam(full)).toEqual({ problem: `Bucket, full of foam: ${says}` });
  });

  test('clears a density from an earlier weighing, but not a typed one', () => {
    expect(cameOf(foam(2.47).density, 81)).toBe(true);
    // 80.96 and 100.4 in three digits.
    expect(cameOf(80.96, 81)).toBe(true);
    expect(cameOf(100.49, 100)).toBe(true);
    // Beyond the digits it was entered with, it was typed.
    expect(cameOf(100.51, 101.1)).toBe(false);
    expect(cameOf(foam(2.47).density, 75)).toBe(false);
    // The weighing that it came to was another vessel's, or is not known.
    expect(cameOf(foam(24).density, 81)).toBe(false);
    expect(cameOf(foam(2.47).density, undefined)).toBe(false);
  });

  test('what the field itself refuses keeps its own message, without a density', () => {
    expect(foam(2400, 'refused')).toEqual({ problem: 'refused' });
  });

  test.each([
    [{ vessel: '20' }, 'This weighing needs “Bucket, empty” too'],
    [{ tare: '0.85' }, 'This weighing needs “Bucket’s volume” too'],
  ])('a full bucket beside %o asks for what is missing', (readings, asks) => {
    const weighed = { field, value: 2.45, pm: 0.01, problem: undefined };
    const found = foamWeighed(weighed, runReadings(batch(readings), say), say);
    expect(found).toEqual({ lacks: expect.stringContaining(asks) });
    // Nothing is asked for before anything is weighed.
    const none = { ...weighed, value: undefined };
    expect(foamWeighed(none, runReadings(batch(readings), say), say)).toEqual({});
  });

  test('an empty bucket of 850 kg is refused and gives no density', () => {
    const readings = runReadings(batch({ tare: '850', vessel: '20' }), say);
    expect(readings.problem('tare')).toContain('at most 200\u00a0kg');
    expect(
      foamWeighed({ field, value: 2.45, pm: 0.01, problem: undefined }, readings, say),
    ).toEqual({});
  });

  test('the blend', () => {
    expect(belowTare('Bucket', 0.5, 0.85, say)).toContain('0.5\u00a0kg; it must be more than');
    expect(belowTare('Bucket', 13, 0.85, say)).toBeUndefined();
    expect(belowTare('Bucket', undefined, 0.85, say)).toBeUndefined();
  });
});
