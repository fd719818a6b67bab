import { beforeEach, describe, expect, test } from 'vitest';
import {
  recordFromBench,
  recordToWeigh,
  weighedAnew,
} from '../../../src/bench/records/from-bench.ts';
import { openRecord } from '../../../src/bench/records/migrate.ts';
import { blankRecord, stageOf, today } from '../../../src/bench/records/record.ts';
import { unsaidPlan, unsaidWeighings } from '../../../src/bench/records/unsaid.ts';
import { enter, keep, onBench, replaceBench } from '../../../src/bench/store.ts';
import { benchKey } from '../../../src/islands/worksheet.ts';
import { observe } from '../../../src/worksheets/live/records/lessons.ts';
import correct from '../../../src/worksheets/mix/correct.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../../src/worksheets/mix/target-density.tsx';
import reconcile from '../../../src/worksheets/records/reconcile.tsx';
import { clearBench } from '../clear-bench.ts';

beforeEach(clearBench);
const kg = (t: string) => ({ t, u: 'kg', s: 'metric' as const });
const litres = (t: string) => ({ t, u: 'L', s: 'metric' as const });
/** What the two worksheets of the plan keep once anything in them is the reader's. */
const keepPlan = (v: number) => {
  keep('mix.wetDensity', { v, from: targetDensity.question });
  keep('mix.planned', { v, from: proportion.question });
};

describe('the planned density of a saved batch', () => {
  const target = (name: 'by' | 'use' | 'density') => benchKey(targetDensity, name);

  test('is the one typed into “How dense should it be?”', () => {
    enter(target('density'), { t: '550', u: 'kg/m3', s: 'metric' });
    keepPlan(550);
    const record = recordFromBench('a');
    expect(record.readings.planned).toMatchObject({ t: '550', u: 'kg/m3' });
    expect(unsaidPlan(record)).toBeUndefined();
  });

  test('is that of the part chosen there, and not of a number typed before', () => {
    enter(target('by'), { t: 'use' });
    enter(target('density'), { t: '550' });
    keepPlan(400);
    expect(recordFromBench('a').readings.planned).toBeUndefined();
    enter(target('use'), { t: 'insulation' });
    expect(recordFromBench('a').readings.planned?.t).toBe('400');
  });

  test('is not the example’s that was used while the typed one was not known', () => {
    enter(target('density'), { t: '550' });
    keep('mix.planned', { v: 600, from: proportion.question });
    expect(recordFromBench('a').readings.planned).toBeUndefined();
  });

  test('left at the example it is empty, and offered', () => {
    enter(benchKey(proportion, 'volume'), litres('80'));
    enter(benchKey(proportion, 'waterCement'), { t: '0.45' });
    keepPlan(600);
    const record = recordFromBench('a');
    expect(record.readings.planned).toBeUndefined();
    expect(unsaidPlan(record)).toBe(600);
    const said = { ...record, readings: { planned: { t: '600', u: 'kg/m3' } } };
    expect(unsaidPlan(said)).toBeUndefined();
    expect(unsaidPlan(blankRecord())).toBeUndefined();
  });
});

test('a result that waits for an answer waits in the batch too, and one on the example says so', () => {
  enter(benchKey(targetDensity, 'density'), { t: '550', u: 'kg/m3', s: 'metric' });
  keep('mix.planned', { waits: true, from: proportion.question, by: 'proportion' });
  keep('foam.density', { v: 80, from: 'How heavy is my foam?', example: true });
  const record = recordFromBench('a');
  expect(record.kept).toMatchObject({
    'mix.planned': { waits: true },
    'foam.density': { v: 80, example: true },
  });
  expect(record.readings).toEqual({});
  expect(unsaidPlan(record)).toBeUndefined();
  replaceBench({ entries: record.bench, kept: record.kept });
  expect(onBench().kept).toEqual(record.kept);
});

test('a log counted from a casting does not make the batch one that cannot be opened', () => {
  enter('curing.readings', { t: '0 20\n24 18.5', s: 'metric', from: '2026-05-08T14:00' });
  const record = recordFromBench('a');
  expect(openRecord(record)).toMatchObject({ ok: true, record: { bench: onBench().entries } });
});

describe('a weighing tried in a worksheet', () => {
  const tried = () => {
    enter('bucket.tare', kg('0.85'));
    enter('bucket.volume', litres('20'));
    enter(benchKey(correct, 'full'), kg('13.65'));
    enter(benchKey(reconcile, 'cement'), kg('13.57'));
    enter(benchKey(proportion, 'wetDensity'), { t: '600', u: 'kg/m3', s: 'metric' });
    keep('mix.planned', { v: 600, from: proportion.question });
    return recordFromBench('a');
  };

  test('does not make a batch cast, and teaches nothing', () => {
    const record = tried();
    expect(Object.keys(record.readings).sort()).toEqual(['planned', 'tare', 'vessel']);
    expect(stageOf(record)).toBeUndefined();
    expect(observe(record)).toEqual({});
  });

  test('is the batch’s once the reader says so', () => {
    const record = tried();
    const weighings = unsaidWeighings(record);
    expect(weighings).toEqual({ cement: kg('13.57'), full: kg('13.65') });
    const said = { ...record, readings: { ...record.readings, ...weighings } };
    expect(stageOf(said)).toBe('cast');
    expect(observe(said).landing).toBeCloseTo(640 / 600 - 1, 12);
    expect(unsaidWeighings(said)).toEqual({});
  });

  test('every weighing of both worksheets is found, and what was emptied is not', () => {
    for (const name of Object.keys(reconcile.fields)) enter(benchKey(reconcile, name), kg('1'));
    expect(Object.keys(unsaidWeighings(recordFromBench('a'))).sort()).toEqual(
      Object.keys(reconcile.fields)
        .filter((name) => !['tare', 'vessel', 'cementDensity'].includes(name))
        .sort(),
    );
    clearBench();
    enter(benchKey(correct, 'full'), { t: '' });
    expect(unsaidWeighings(recordFromBench('a'))).toEqual({});
  });

  test('the foam’s density comes with the foam that was put in, and alone is a plan', () => {
    const foam = { t: '5.1', u: 'lb/ft3', s: 'us' as const };
    enter(benchKey(reconcile, 'foamDensity'), foam);
    enter(benchKey(reconcile, 'cement'), kg('13.57'));
    expect(unsaidWeighings(recordFromBench('a'))).toEqual({ cement: kg('13.57') });
    enter(benchKey(reconcile, 'foamVolume'), litres('25'));
    const record = recordFromBench('a');
    expect(unsaidWeighings(record).foamDensity).toEqual(foam);
    // What was weighed and carried over stands.
    const weighed = { ...record, readings: { foamDensity: { t: '78.5', u: 'kg/m3' } } };
    expect(unsaidWeighings(weighed).foamDensity).toBeUndefined();
  });
});

test('a saved batch was cast when the bench says; one about to be weighed is cast today', () => {
  const day = () => recordFromBench('a').date;
  expect(day()).toBe(today());
  enter('curing.castAt', { t: '2025-10-12T19:30' });
  expect(day()).toBe('2025-10-12');
  expect(recordToWeigh('a').date).toBe(today());
  for (const t of ['', '2025-02-30T19:30', 'yesterday']) {
    enter('curing.castAt', { t });
    expect(day()).toBe(today());
  }
});

describe('a batch about to be weighed', () => {
  const before = blankRecord({
    notes: 'Cold day.',
    readings: {
      planned: { t: '600', u: 'kg/m3' },
      tare: kg('0.85'),
      vessel: litres('20'),
      foamDensity: { t: '78,5', u: 'g/L' },
    },
    corrections: [{ weighed: 640, foam: 0.0025 }],
  });

  test('has not been corrected', () => {
    expect(weighedAnew(before).corrections).toEqual([]);
  });

  test('has its foam weighed anew, as one that is begun has', () => {
    const { readings, notes } = weighedAnew(before);
    expect(Object.keys(readings).sort()).toEqual(['planned', 'tare', 'vessel']);
    expect(notes).toBe('Cold day.\nFoam tried before: 78.5 kg/m³.');
    enter('bucket.tare', kg('0.85'));
    enter('bucket.volume', litres('20'));
    enter('foam-density.full', kg('2.45'));
    keep('foam.density', { v: 80, from: 'How heavy is my foam?' });
    const saved = recordFromBench('a');
    expect(saved.readings.foamDensity?.t).toBe('80');
    expect(weighedAnew(saved).readings).toEqual(recordToWeigh('a').readings);
  });

  test('without foam it stays as it is', () => {
    const anew = weighedAnew(before);
    expect(weighedAnew(anew)).toEqual(anew);
    expect(weighedAnew(blankRecord({ id: 'a', changed: '' })).notes).toBe('');
  });
});
