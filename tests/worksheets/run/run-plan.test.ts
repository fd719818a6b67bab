import { describe, expect, test } from 'vitest';
import type { Entries, KeptResults } from '../../../src/bench/entries.ts';
import type { Editor } from '../../../src/bench/records/editor.ts';
import {
  recordFromBench,
  recordToWeigh,
  weighedAnew,
} from '../../../src/bench/records/from-bench.ts';
import { type BatchRecord, blankRecord } from '../../../src/bench/records/record.ts';
import { unsaidPlan } from '../../../src/bench/records/unsaid.ts';
import { enter } from '../../../src/bench/store.ts';
import { writeAim } from '../../../src/worksheets/live/run/run-aim.ts';
import { begun, turned } from '../../../src/worksheets/live/run/run-going.ts';
import {
  formsPlanned,
  formsShort,
  jointsPlanned,
  runPlan,
} from '../../../src/worksheets/live/run/run-plan.ts';
import { clearBench } from '../../bench/clear-bench.ts';
import { plan, say, wanted } from './run-batch.ts';

describe('the batch that is going', () => {
  const own = { ...plan, example: false };
  const going = { id: 'x', step: 0 };

  test('keeps the plan it was begun with, whatever changes on the bench', () => {
    const later = turned(going, 1, own);
    expect(later).toEqual({ id: 'x', step: 1, plan: own });
    // A weight left out is the plan’s of then: 13.57 kg of cement, not what is sized since.
    const sizedSince = { ...own, cement: 99, foamDensity: 120 };
    const foam = wanted({ planned: '600' }, later.plan ?? sizedSince);
    expect(foam.is === 'amount' && foam.volume).toBeCloseTo(own.foamVolume, 12);
    expect(turned(later, -1, later.plan).plan).toEqual(own);
  });

  test('has the volume of forms where it comes from them, and not where it was typed', () => {
    const by = { from: 'How much must I make?', by: 'pieces' };
    const kept = {
      'batch.volume': { v: 0.03, ...by },
      'batch.net': { v: 0.02775, ...by },
      'part.volume': { v: 0.00925, ...by },
    };
    const ofForms = runPlan({}, kept, say)!;
    const words = (of: typeof plan) => formsPlanned(of, say)?.replaceAll('\u00a0', ' ');
    expect(words(ofForms)).toBe('27.8 L: 3 of 9.25 L');
    expect(words({ ...ofForms, loads: 2 })).toBe('13.9 L a load; in all 27.8 L: 3 of 9.25 L');
    const { 'part.volume': _, ...unlike } = kept;
    expect(words(runPlan({}, unlike, say)!)).toBe('27.8 L');
    const typed = { 'proportion.volume': { t: '50', u: 'L' } };
    expect(words(runPlan(typed, kept, say)!)).toBeUndefined();
    expect(words(plan)).toBeUndefined();
  });

  test('tells that forms will not be filled beyond a tolerance, with advice for one or several', () => {
    const { unsized: _, ...sized } = plan;
    const short = (mix: number, of: object) => formsShort(mix, { ...sized, loads: 1, ...of }, say);
    for (const mix of [0.03999, 0.0397]) expect(short(mix, { forms: 0.04 })).toBeUndefined();
    expect(short(0.0395, { forms: 0.04 })).toMatch(/hold 40\.0\sL: fill whole pieces first\.$/);
    expect(short(0.0395, { forms: 0.04, form: 0.01 })).toContain('fill whole pieces');
    const one = { forms: 0.04, form: 0.04 };
    expect(short(0.03, one)).toMatch(/and the form takes 40\.0\sL: it comes out short\.$/);
    const shared = short(0.018, { ...one, loads: 2 });
    expect(shared).toMatch(/takes 20\.0\sL of each load: it comes out short\.$/);
  });

  test('marks which of its parts are still the example’s', () => {
    const by = { from: 'How much must I make?', by: 'pieces' };
    const of = (entries: Entries, kept: KeptResults = {}) => {
      const { example, unsized, aimed } = runPlan(entries, kept, say)!;
      return { example, unsized, aimed };
    };
    const volume = { 'proportion.volume': { t: '40', u: 'L' } };
    const target = { 'proportion.wetDensity': { t: '700', u: 'kg/m3' } };
    const own = { example: false, unsized: undefined };
    expect(of({})).toEqual({ example: true, unsized: true, aimed: false });
    // The foam was weighed, and nothing sized.
    const foam = { 'mix.foamDensity': { t: '75', u: 'g/L' } };
    expect(of(foam)).toEqual({ ...own, unsized: true, aimed: false });
    expect(of(volume)).toEqual({ ...own, aimed: false });
    expect(of({ ...volume, ...target })).toEqual({ ...own, aimed: true });
    expect(of(target, { 'batch.volume': { v: 0.03, ...by } })).toEqual({ ...own, aimed: true });
    const onExample = { 'batch.volume': { v: 0.03, ...by, example: true as const } };
    expect(of(target, onExample)).toEqual({ ...own, unsized: true, aimed: true });
  });

  test('has the foaming solution of all its loads', () => {
    expect(plan.loads).toBe(3);
    // 75.91 L of foam × 80 g/L × 1.10 are 6.680 kg, over 1.00485 kg/L, and half a litre stays in tank, hose and lance.
    expect(plan.solution! * 1000).toBeCloseTo(7.148, 2);
  });

  test('tells where slabs are filled from two loads, and the number of loads that avoids it', () => {
    const by = { from: 'How much must I make?', by: 'pieces' };
    // Four slabs of 27.5 L with 3 and 5 % for settling and waste: 119 L, three loads of a mixer of 45 L.
    const kept = {
      'batch.volume': { v: 4 * 0.0275 * 1.03 * 1.05, ...by },
      'batch.net': { v: 0.11, ...by },
      'batch.count': { v: 4, ...by },
      'part.volume': { v: 0.0275, ...by },
    };
    const of = (load: string, more = {}, from = kept) => {
      const entries = { 'mix.largestLoad': { t: load, u: 'L' }, ...more };
      const planned = runPlan(entries, from, say)!;
      return { loads: planned.loads, said: jointsPlanned(planned) };
    };
    expect(of('45')).toEqual({
      loads: 3,
      said: expect.stringMatching(
        /^3 loads for 4 pieces: some are filled from two, with a joint .*\. 4 loads of 1 piece avoid it\.$/,
      ),
    });
    expect(of('45', { 'mix.leastLoads': { t: '4' } })).toEqual({ loads: 4, said: undefined });
    expect(of('60')).toEqual({ loads: 2, said: undefined });
    expect(of('25').said).toContain('Only a larger mixer, or a smaller piece, avoids it');
    const { 'part.volume': _, ...unlike } = kept;
    expect(of('45', {}, unlike as typeof kept).said).toMatch(
      /^3 loads for pieces of more than one size: share them out .* gets a joint /,
    );
    const shared = { ...unlike, 'batch.evenLoads': { v: 6, ...by } };
    expect(of('45', {}, shared as never)).toEqual({ loads: 3, said: undefined });
    expect(of('400', {}, unlike as typeof kept)).toEqual({ loads: 1, said: undefined });
    const sum = { 'proportion.volume': { t: '9.94 + 1.06', u: 'gal' } };
    expect(of('4 gal', sum)).toEqual({
      loads: 3,
      said: expect.stringMatching(/^3 loads of a volume typed in: see that no piece is filled/),
    });
    expect(of('12 gal', sum)).toEqual({ loads: 1, said: undefined });
  });

  test('takes no plan on going back a step, nor the example’s', () => {
    expect(turned({ ...going, step: 1 }, -1, own)).toEqual(going);
    expect(turned(going, 1, plan)).toEqual({ id: 'x', step: 1 });
    expect(turned(going, 1, undefined)).toEqual({ id: 'x', step: 1 });
  });

  test('records the reader’s target density, and only asks about the example’s', () => {
    const of = (entries: Entries, kept: KeptResults = {}, over: Partial<BatchRecord> = {}) => {
      const editor = {
        record: blankRecord(over),
        change(patch: Partial<BatchRecord>) {
          this.record = { ...this.record, ...patch };
        },
      };
      writeAim(editor as unknown as Editor, runPlan(entries, kept, say)!, say);
      const { record } = editor;
      return [record.readings.planned?.t, unsaidPlan(record)];
    };
    const volume = { 'proportion.volume': { t: '40', u: 'L' } };
    const asked = [undefined, expect.closeTo(600, 9)];
    expect(of({})).toEqual(asked);
    // Sized, and aimed at nothing of one's own.
    expect(of(volume)).toEqual(asked);
    const target = { 'proportion.wetDensity': { t: '700', u: 'kg/m3' } };
    expect(of({ ...volume, ...target })).toEqual(['700', undefined]);
    const found = { 'mix.wetDensity': { v: 550, from: 'How dense?', by: 'target-density' } };
    expect(of({ 'mix.targetDensity': { t: '550' } }, found)).toEqual(['550', undefined]);
    const readings = { planned: { t: '620', u: 'kg/m3' } };
    expect(of(target, {}, { readings })).toEqual(['620', undefined]);
  });

  test('saved on another day, uses the plan that was saved with it', () => {
    const sized = (t: string) => ({
      'proportion.wetDensity': { t, u: 'kg/m3', s: 'metric' as const },
    });
    enter('proportion.wetDensity', sized('700')['proportion.wetDensity']);
    const saved = recordFromBench('Monday');
    enter('proportion.wetDensity', sized('400')['proportion.wetDensity']);
    const monday = begun(weighedAnew(saved), say, 5);
    expect(monday).toEqual({
      ...{ id: saved.id, step: 0, begun: 5 },
      plan: runPlan(sized('700'), {}, say),
    });
    expect(monday.plan?.wetDensity).toBeCloseTo(700, 9);
    const now = begun(recordToWeigh('Today'), say);
    expect(now.plan).toEqual(runPlan(sized('400'), {}, say));
    // The lighter of the two has less cement in as much mix.
    expect(now.plan!.cement).toBeLessThan(monday.plan!.cement);
    clearBench();
    expect(begun(recordToWeigh('Nothing sized'), say)).not.toHaveProperty('plan');
  });
});
