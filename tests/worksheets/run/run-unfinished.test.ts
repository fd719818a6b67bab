import { describe, expect, test } from 'vitest';
import type { Editor } from '../../../src/bench/records/editor.ts';
import type { ReadingName } from '../../../src/bench/records/readings.ts';
import { otherPlan, replanWords } from '../../../src/worksheets/live/run/RunReplan.tsx';
import { isUnmixed, unfinishedOf } from '../../../src/worksheets/live/run/run-unfinished.ts';
import { batch, plan, say } from './run-batch.ts';

describe('the batches that can be continued', () => {
  const of = (readings: Partial<Record<ReadingName, string>>, over = {}) =>
    batch(readings, { date: '2026-05-09', changed: '2026-05-09T08:00:00.000Z', ...over });

  const noon = Date.parse('2026-05-09T12:00');
  const at = (hour: number) => ({ changed: `2026-05-09T0${hour}:00:00.000Z` });

  test('are those of today that are not placed, latest saved first', () => {
    const known = of({ planned: '600', tare: '0.85', vessel: '20', foamDensity: '80' }, at(5));
    const mixed = of({ cement: '13.57' }, at(6));
    const foamed = of({ full: '12.9' }, { ...at(7), foamMade: '2026-05-09T06:30:00.000Z' });
    const others = [
      of({ full: '12.9', placed: '30' }),
      of({ stripAge: '48' }),
      of({}, { date: '2026-05-08' }),
      of({}, { invented: true }),
    ];
    expect(unfinishedOf([known, ...others, mixed, foamed], noon)).toEqual([foamed, mixed, known]);
    expect([known, mixed, foamed].map(isUnmixed)).toEqual([true, false, false]);
  });

  test('are not counted as placed by a unit or a ± alone', () => {
    const begun = of({ full: '12.9' });
    for (const placed of [{ d: { metric: 'mL' } }, { p: '1' }, { t: ' ' }]) {
      const touched = { ...begun, readings: { ...begun.readings, placed } };
      expect(unfinishedOf([touched], noon)).toEqual([touched]);
    }
  });

  test('include those of the evening before, until half a day after their foam or start', () => {
    const at = (time: string) => new Date(`2026-05-${time}`).toISOString();
    const evening = { date: '2026-05-09', changed: at('09T23:55') };
    const begun = of({}, evening);
    const foamed = of({ full: '12.9' }, { ...evening, foamMade: at('09T23:50') });
    const noted = { ...foamed, changed: at('10T11:45') };
    const old = { ...begun, date: '2026-05-08', changed: at('10T00:01') };
    const found = (time: string) => unfinishedOf([begun, foamed, old], Date.parse(at(time)));
    expect(found('10T00:05')).toEqual([begun, foamed]);
    expect(found('10T11:52')).toEqual([begun]);
    expect(found('10T11:56')).toEqual([]);
    expect(unfinishedOf([noted], Date.parse(at('10T11:52')))).toEqual([]);
  });

  test('are offered another plan only before anything is weighed, and if it differs', () => {
    const own = { ...plan, example: false };
    const half = { ...own, cement: own.cement / 2, water: own.water / 2 };
    const other = (readings: Parameters<typeof of>[0], now: typeof plan | undefined) =>
      otherPlan({ record: of(readings) } as Editor, own, now);
    expect(other({ planned: '600' }, half)).toBe(half);
    expect(other({ cement: '13.57' }, half)).toBeUndefined();
    expect(other({}, { ...own })).toBeUndefined();
    expect(other({}, { ...half, example: true })).toBeUndefined();
    expect(other({}, undefined)).toBeUndefined();
  });

  test('are offered a plan only if it is shown differently, with the first difference', () => {
    const of = (over: Partial<typeof plan>) => ({ ...plan, example: false, ...over });
    const small = of({ cement: 1.161, water: 0.4643, foamVolume: 0.00213 });
    const words = (over: Partial<typeof plan>) => replanWords(small, { ...small, ...over }, say);
    expect(words({ cement: 1.159, water: 0.467 })).toBe(
      'This batch was begun with 464\u00a0g of water; on the bench 467\u00a0g is planned now.',
    );
    expect(words({ foamVolume: 0.00216 })).toMatch(/ 2\.13\sL of foam; on the bench 2\.16\sL is/);
    expect(words({ cement: 2.322, water: 0.928 })).toContain('1.16\u00a0kg of cement');
    // Nobody could weigh by the one and not by the other.
    expect(words({ water: 0.4641 })).toBeUndefined();
  });

  test('are three at most', () => {
    expect(unfinishedOf([of({}), of({}), of({}), of({})], noon)).toHaveLength(3);
  });
});
