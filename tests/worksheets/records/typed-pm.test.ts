import { expect, test } from 'vitest';
import type { Entry } from '../../../src/bench/entries.ts';
import type { Editor } from '../../../src/bench/records/editor.ts';
import { recordFromBench } from '../../../src/bench/records/from-bench.ts';
import type { ReadingName } from '../../../src/bench/records/readings.ts';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { enter } from '../../../src/bench/store.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { retyped, writeReading } from '../../../src/worksheets/live/records/RecordFields.tsx';
import { put } from '../../../src/worksheets/live/run/run-put.ts';
import { clearBench } from '../../bench/clear-bench.ts';

const say = speaker('metric');
const litres = (t: string, p?: string): Entry => ({
  ...{ t, u: 'L', s: 'metric' },
  ...(p !== undefined && { p, pu: 'L' }),
});
const open = (over: Partial<BatchRecord> = {}) => {
  const editor = {
    record: blankRecord(over),
    change: (patch: object) => {
      editor.record = { ...editor.record, ...patch };
    },
  };
  return editor as unknown as Editor;
};
/** Types over what stands there; its ± afterwards. */
const type = (editor: Editor, name: ReadingName, t: string) => {
  const entry = { ...editor.record.readings[name], t };
  writeReading(editor, name, retyped(editor, name, entry));
  return editor.record.readings[name]?.p;
};

test('a typed ± stays when its number is corrected or typed later', () => {
  for (const name of ['vessel', 'foamVolume'] as const) {
    const editor = open({ readings: { [name]: litres('10.1', '0.05') } });
    expect(type(editor, name, '10.12')).toBe('0.05');
    const { t: _, ...pmOnly } = litres('', '0.05');
    const first = open({ readings: { [name]: pmOnly } });
    for (const t of ['1', '10', '10.1']) expect(type(first, name, t)).toBe('0.05');
  }
});

test('a ± that came from the bench is removed with its bucket', () => {
  enter('bucket.volume', litres('12.6', '0.022'));
  enter('bucket.tare', { t: '0.6', u: 'kg', p: '0.002', pu: 'kg' });
  const record = recordFromBench('a');
  clearBench();
  const bucket = open(record);
  expect(bucket.record.readings.vessel?.p).toBe('0.022');
  const { vessel } = bucket.record.readings;
  // Another ± or another unit is no other number.
  expect(retyped(bucket, 'vessel', { ...vessel, p: '0.01' }).p).toBe('0.01');
  expect(retyped(bucket, 'vessel', { ...vessel, d: { us: 'qt' } }).p).toBe('0.022');
  expect(type(bucket, 'vessel', '2')).toBeUndefined();
  // Typed since, it is the reader's.
  writeReading(bucket, 'vessel', litres('2', '0.01'));
  expect(type(bucket, 'vessel', '2.1')).toBe('0.01');
  // A scale stays the same scale.
  expect(type(bucket, 'tare', '0.7')).toBe('0.002');
});

test('a calculated ± is removed with its number, unless one is typed', () => {
  const editor = open();
  put(editor, 'foamVolume', 0.015035, say, { significant: 4, pm: 0.000256 });
  expect(editor.record.readings.foamVolume).toEqual(litres('15.04', '0.26'));
  expect(type(editor, 'foamVolume', '15')).toBeUndefined();
  put(editor, 'foamVolume', 0.015035, say, { significant: 4, pm: 0.000256 });
  writeReading(editor, 'foamVolume', litres('15.04', '0.1'));
  expect(type(editor, 'foamVolume', '15')).toBe('0.1');
});

test('a number put in by a button keeps a typed ±, and no other', () => {
  const editor = open({ readings: { foamAdded: litres('1', '0.1') } });
  put(editor, 'foamAdded', 0.0035, say);
  expect(editor.record.readings.foamAdded).toEqual(litres('3.5', '0.1'));
  put(editor, 'foamVolume', 0.015, say, { pm: 0.0003 });
  put(editor, 'foamVolume', 0.016, say);
  expect(editor.record.readings.foamVolume).toEqual(litres('16'));
});
