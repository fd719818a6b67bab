import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { recordToWeigh } from '../../../src/bench/records/from-bench.ts';
import { type BatchRecord, blankRecord, today } from '../../../src/bench/records/record.ts';
import { $going, type RunPlan } from '../../../src/bench/run.ts';
import { enter, onBench } from '../../../src/bench/store.ts';
import { handOver, takeBack } from '../../../src/worksheets/live/run/run-foam-bench.ts';
import { foamIn } from '../../../src/worksheets/live/run/run-foam-in.ts';
import { begun } from '../../../src/worksheets/live/run/run-going.ts';
import {
  following,
  isCarried,
  loadBefore,
  replannedLoad,
  replannedWords,
  tookBefore,
  withBucketOf,
} from '../../../src/worksheets/live/run/run-load-before.ts';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import { clearBench } from '../../bench/clear-bench.ts';
import { say } from './run-batch.ts';

const kg = (t: string) => ({ t, u: 'kg', s: 'metric' }) as const;
const litres = (t: string) => ({ t, u: 'L', s: 'metric' }) as const;
const bucket = { tare: kg('1.1'), vessel: litres('19.2') };
const jar = { tare: kg('0.1'), vessel: litres('1') };
const other = { tare: kg('0.85'), vessel: litres('20') };

beforeEach(clearBench);
// Files share a worker, and with it the bench.
afterEach(() => {
  takeBack('one');
  clearBench();
  $going.set(undefined);
});
const lay = (entries: Entries) => {
  for (const [key, entry] of Object.entries(entries)) enter(key, entry);
};
/** A load that was run: what its blend was weighed in, on the bench as it was when it was begun. */
const run = (readings: BatchRecord['readings'], over = {}) =>
  blankRecord({
    ...{ id: 'one', name: 'One', date: today() },
    readings: { cement: kg('14'), ...readings },
    bench: onBench().entries,
    ...over,
  });

describe('the bucket of the load before', () => {
  test('is taken over with weight and volume, or not at all', () => {
    const next = recordToWeigh('next');
    expect(withBucketOf(run(bucket), next).record.readings).toEqual(bucket);
    for (const half of [{ tare: bucket.tare }, { vessel: bucket.vessel }])
      expect(withBucketOf(run(half), next).record).toBe(next);
  });

  test('leaves the foam’s bucket from the bench, where that is another', () => {
    const before = run(jar);
    handOver({ id: 'one', step: 1, foam: kg('2.29') }, bucket, onBench());
    const { record, foamIn: foam } = withBucketOf(before, recordToWeigh('next'));
    expect(record.readings).toEqual(jar);
    expect(foam).toEqual(bucket);
    $going.set(following(begun(record, say), before, foam, say));
    expect(foamIn({ record, change: () => {} })).toEqual(bucket);
    // Of one bucket it is known once.
    const one = withBucketOf(run(bucket), recordToWeigh('next'));
    expect(one).toEqual({ record: expect.objectContaining({ readings: bucket }) });
  });

  test('is not taken over where the bench has a newer one, nor over typed values', () => {
    const before = run(bucket);
    lay({ 'mix.bucketTare': other.tare, 'mix.bucketVolume': other.vessel });
    const next = recordToWeigh('next');
    expect(withBucketOf(before, next).record).toBe(next);
    // It was there before already: another was typed at the run.
    expect(withBucketOf(run(bucket), next).record.readings).toEqual(bucket);
    clearBench();
    const typed = { ...recordToWeigh('next'), readings: other };
    expect(withBucketOf(run(bucket), typed).record).toBe(typed);
  });

  test('is told as long as it is unchanged', () => {
    const { before } = following({ id: 'next', step: 0 }, run(bucket), undefined, say);
    expect(before).toMatchObject({ name: 'One', vessel: bucket });
    expect(isCarried(before, bucket)).toBe(true);
    expect(isCarried(before, { ...bucket, tare: kg('1.2') })).toBe(false);
    expect(isCarried(undefined, bucket)).toBe(false);
    expect(isCarried({ name: 'One', vessel: {} }, {})).toBe(false);
  });

  test('is that of the batch mixed last the same day', () => {
    const next = recordToWeigh('next');
    const at = (changed: string, over = {}) => run(bucket, { id: changed, changed, ...over });
    const early = at('2026-01-01T10:00:00Z');
    const late = at('2026-01-01T11:00:00Z');
    expect(loadBefore(next, [early, late])).toBe(late);
    const no = [
      { ...late, date: '2020-01-01' },
      { ...late, invented: true as const },
      { ...late, id: next.id },
      blankRecord({ date: today(), readings: bucket, changed: '2026-01-01T12:00:00Z' }),
    ];
    expect(loadBefore(next, [early, ...no])).toBe(early);
    expect(loadBefore(next, no)).toBeUndefined();
  });
});

/** The reader's plan of 130 L in loads of 40 L at most, with such a foam, g/L. */
const planOf = (foam: string): RunPlan =>
  runPlan(
    {
      'proportion.volume': litres('130'),
      'mix.largestLoad': litres('40'),
      'proportion.wetDensity': { t: '600', u: 'kg/m3', s: 'metric' },
      'mix.foamDensity': { t: foam, u: 'g/L', s: 'metric' },
    },
    {},
    say,
  )!;
const plain = (words: readonly string[]) => words.join(' ').replaceAll('\u00a0', ' ');

describe('a load with other amounts than the one before', () => {
  const [was, now] = [planOf('80'), planOf('62')];
  const before = { name: 'One', vessel: bucket, plan: was };

  test('is told with the foam as the reason, the old amounts and the solution', () => {
    expect(was.loads).toBe(4);
    expect(now.cement).not.toBeCloseTo(was.cement, 1);
    expect(replannedLoad(before, now)).toBe(was);
    const words = plain(replannedWords(before, was, now, say));
    expect(words).toContain('planned at 62.0 g/L now');
    expect(words).toContain('for “One” it was 80.0 g/L');
    expect(words).toContain(
      `${say(was.solution!, 'volume')} was planned for all loads`.replaceAll('\u00a0', ' '),
    );
    expect(words).toContain('some is left over');
    expect(plain(replannedWords({ ...before, plan: now }, now, was, say))).toContain(
      'mix what is missing first',
    );
    expect(plain(tookBefore(was, now, 'cement', say))).toBe(
      `The load before took ${was.cement.toFixed(2)} kg.`,
    );
    expect(tookBefore(was, { ...now, cement: was.cement * 1.004 }, 'cement', say)).toEqual([]);
    expect(tookBefore(undefined, now, 'cement', say)).toEqual([]);
  });

  test('is not explained by the foam where the plan changed otherwise', () => {
    const richer = { ...was, cement: was.cement + 0.5, water: was.water - 0.5 };
    expect(replannedLoad(before, richer)).toBe(was);
    const words = plain(replannedWords(before, was, richer, say));
    expect(words).toContain('The plan on the bench is another than for “One”');
    expect(words).not.toMatch(/g\/L|solution/);
  });

  test('is told only for loads of the same batch', () => {
    const size = { cement: 1.1, water: 1.1, foamVolume: 1.1 };
    const larger = {
      ...now,
      ...{ cement: now.cement * size.cement, water: now.water * size.water },
      foamVolume: now.foamVolume * size.foamVolume,
    };
    /** As much by volume, of another density: another batch. */
    const denser = Object.fromEntries(
      (['cement', 'water', 'sand', 'foamDensity', 'wetDensity'] as const).map((of) => [
        of,
        now[of] * 1.1,
      ]),
    );
    for (const no of [
      was,
      undefined,
      larger,
      { ...now, ...denser },
      { ...now, wetDensity: 650 },
      { ...now, loads: 3 },
      { ...now, example: true },
    ])
      expect(replannedLoad(before, no)).toBeUndefined();
    expect(replannedLoad({ ...before, plan: { ...was, loads: 1 } }, { ...now, loads: 1 })).toBe(
      undefined,
    );
    expect(replannedLoad({ name: 'One', vessel: bucket }, now)).toBeUndefined();
    expect(replannedLoad(undefined, now)).toBeUndefined();
  });
});
