import { afterEach, describe, expect, test } from 'vitest';
import { recordToWeigh } from '../../../src/bench/records/from-bench.ts';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { $going } from '../../../src/bench/run.ts';
import { enter } from '../../../src/bench/store.ts';
import type { Written } from '../../../src/worksheets/live/records/RecordFields.tsx';
import { foamIn, foamWeighing } from '../../../src/worksheets/live/run/run-foam-in.ts';
import { clearBench } from '../../bench/clear-bench.ts';

const kg = (t: string) => ({ t, u: 'kg', s: 'metric' }) as const;
const litres = (t: string) => ({ t, u: 'L', s: 'metric' }) as const;
const pot = { tare: kg('0.5'), vessel: litres('10') };
const jar = { tare: kg('0.1'), vessel: litres('1') };

/** A batch begun at the bench, being written in. */
function begun(record: BatchRecord) {
  $going.set({ id: record.id, step: 1 });
  const editor: { record: BatchRecord; change: Written['change'] } = {
    record,
    change: (patch) => {
      editor.record = { ...editor.record, ...patch };
    },
  };
  const type = (to: Written, typed: BatchRecord['readings']) =>
    to.change({ readings: { ...to.record.readings, ...typed } });
  return {
    editor,
    /** Typed at the step of the foam, and at that of the blend. */
    forFoam: (typed: BatchRecord['readings']) => type(foamWeighing(editor), typed),
    forBlend: (typed: BatchRecord['readings']) => type(editor, typed),
  };
}
// Files share a worker, and with it the bench.
afterEach(() => {
  clearBench();
  $going.set(undefined);
});

const onBench = () => {
  enter('bucket.tare', pot.tare);
  enter('bucket.volume', pot.vessel);
};

describe('a batch run with a vessel for the foam and a bucket for the blend', () => {
  test('has both from the bench, each at its step', () => {
    onBench();
    enter('mix.bucketTare', jar.tare);
    enter('mix.bucketVolume', jar.vessel);
    const { editor } = begun(recordToWeigh('a'));
    expect(editor.record.readings).toMatchObject(jar);
    expect(foamWeighing(editor).record.readings).toMatchObject(pot);
  });

  test('keeps each bucket when the other is typed', () => {
    onBench();
    enter('mix.bucketVolume', jar.vessel);
    const { editor, forFoam, forBlend } = begun(recordToWeigh('a'));
    forFoam({ tare: kg('0.52') });
    expect(editor.record.readings).toMatchObject({ tare: pot.tare, vessel: jar.vessel });
    forBlend(jar);
    expect(editor.record.readings).toMatchObject(jar);
    expect(foamIn(editor)).toEqual({ tare: kg('0.52'), vessel: pot.vessel });
  });

  test('uses one bucket for both until another is typed for the blend', () => {
    const { editor, forFoam, forBlend } = begun(blankRecord({ readings: { cement: kg('13.57') } }));
    forFoam({ tare: kg('0.5') });
    forFoam({ vessel: litres('1') });
    forFoam({ vessel: litres('10') });
    expect(editor.record.readings).toEqual({ cement: kg('13.57'), ...pot });
    forBlend(jar);
    expect(foamIn(editor)).toEqual(pot);
    forFoam({ vessel: litres('9.8') });
    expect(editor.record.readings).toMatchObject(jar);
  });

  test('after a typed jar is cleared uses one bucket for both', () => {
    onBench();
    enter('mix.bucketTare', { ...jar.tare, t: '' });
    enter('mix.bucketVolume', { ...jar.vessel, t: ' ' });
    const { editor, forFoam } = begun(recordToWeigh('a'));
    expect(editor.record.readings).toMatchObject(pot);
    forFoam({ tare: kg('0.52') });
    expect(editor.record.readings).toMatchObject({ tare: kg('0.52'), vessel: pot.vessel });
  });

  test('other values written at the foam step belong to the batch', () => {
    onBench();
    enter('mix.bucketVolume', jar.vessel);
    const { editor, forFoam } = begun(recordToWeigh('a'));
    forFoam({ foamDensity: { t: '80', u: 'g/L' } });
    foamWeighing(editor).change({ notes: 'windy' });
    expect(editor.record).toMatchObject({
      notes: 'windy',
      readings: { foamDensity: { t: '80' }, vessel: jar.vessel },
    });
    expect(foamIn(editor)).toEqual(pot);
  });

  test('a bucket typed for the mix alone is used for the foam as well', () => {
    enter('mix.bucketTare', jar.tare);
    enter('mix.bucketVolume', jar.vessel);
    expect(foamIn(begun(recordToWeigh('a')).editor)).toEqual(jar);
  });
});
