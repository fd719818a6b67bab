import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterEach, expect, test, vi } from 'vitest';
import type { Editor } from '../../../src/bench/records/editor.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import type { Correcting } from '../../../src/bench/run.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { BatchOutcome } from '../../../src/worksheets/live/records/BatchOutcome.tsx';
import { balanceOf } from '../../../src/worksheets/live/records/record-numbers.ts';
import { correctionWords } from '../../../src/worksheets/live/records/record-words.ts';
import { adviceOn } from '../../../src/worksheets/live/run/run-advice.ts';
import { massIn, massNow } from '../../../src/worksheets/live/run/run-base.ts';
import {
  correcting,
  takenOut,
  uncorrected,
} from '../../../src/worksheets/live/run/run-correction.ts';
import { placedDoubt } from '../../../src/worksheets/live/run/run-doubt.ts';
import { gasDoubt } from '../../../src/worksheets/live/run/run-gas.ts';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import { put } from '../../../src/worksheets/live/run/run-put.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import { addWords } from '../../../src/worksheets/shared/mix/correction-advice.ts';

afterEach(() => void vi.unstubAllGlobals());

const say = speaker('metric');
const in_ = (t: string, u: string) => ({ t, u, s: 'metric' as const });
/** A mixer of 40 L with 40 L in it. */
const plan = {
  ...runPlan({ 'proportion.volume': in_('40', 'L') }, {}, say)!,
  example: false,
};
const bucket = (density: number) => in_(String(0.85 + density * 0.02), 'kg');
const readings = {
  planned: in_('600', 'kg/m3'),
  foamDensity: in_('80', 'g/L'),
  tare: in_('0.85', 'kg'),
  vessel: in_('20', 'L'),
};
const record = blankRecord({ readings });
const now = (of: typeof record) => massNow(runReadings(of, say), plan, say)!;
const advised = (of: typeof record, density: number) => {
  const weighed = { ...of, readings: { ...of.readings, full: bucket(density) } };
  const made = of.corrections.length;
  const advice = adviceOn({ density, target: 600, made }, runReadings(weighed, say), plan, say);
  if (advice?.is !== 'add') throw new Error(advice?.is);
  return { weighed, advice, out: takenOut(advice, density, say) };
};
/** As the button of the step has it. */
function corrected(of: typeof record, density: number) {
  const { weighed, advice, out } = advised(of, density);
  const { change, undo } = correcting(weighed, {
    ...{ name: 'baseAdded', amount: advice.fix.baseMass, weighed: density, out },
  } as const);
  const editor = {
    record: { ...weighed, ...change },
    change: (over: object) => Object.assign(editor.record, over),
  };
  put(editor as unknown as Editor, 'baseAdded', advice.fix.baseMass, say, { significant: 7 });
  put(editor as unknown as Editor, 'leftOver', out!, say, { significant: 7 });
  const wrote = editor.record.readings.leftOver!;
  return { record: editor.record, undo: { ...undo, out: { ...undo.out, wrote } } };
}

test('what was taken out before a correction is not in the mixer at the next one', () => {
  // 24 kg at 550: 43.6 L. Corrected whole it is 45.3 L, so 40 ÷ 45.3 of it is, 38.6 L.
  expect(now(record)).toBeCloseTo(24, 3);
  const { advice, out } = advised(record, 550);
  expect(addWords(advice, say)).toMatch(/first take out all but 38\.6\sL\. Then add 2\.8\skg of/);
  // 550 × (43.636 − 38.6) L, and 24 kg fill the mixer again, to the rounding of the 38.6 L.
  expect(out).toBeCloseTo(2.77, 2);
  const once = corrected(record, 550).record;
  expect(now(once)).toBeCloseTo(24, 1);
  // At 660 that is 36.4 L; 4.2 L of foam make it 40.6 L, and nothing comes out.
  const next = advised(once, 660);
  expect(next.out).toBeUndefined();
  expect(addWords(next.advice, say)).toMatch(/^Add 4\.2\sL of foam/);
});

test('it counts as left over, and more out than in is questioned', () => {
  const once = corrected(record, 550).record;
  const went = massIn(runReadings(once, say), plan, say)!;
  // (600 × 43.636 L − 24 kg) ÷ (1951.2 − 600) is 1.6147 L, 3.151 kg; of that the 40 ÷ 45.251.
  expect(went).toBeCloseTo(24 + 2.785, 2);
  const placed = (litres: string) => {
    const all = { ...once, readings: { ...once.readings, placed: in_(litres, 'L') } };
    return placedDoubt(runReadings(all, say), plan, say);
  };
  // 40 L at 600 and the 2.77 kg taken out are all of it.
  expect(placed('40')).toBeUndefined();
  expect(placed('46')?.say).toContain('26.8\u00a0kg went into the mixer');
  // Placed, the rest that is scraped out comes off nothing.
  const after = { ...once.readings, placed: in_('30', 'L'), leftOver: in_('8', 'kg') };
  expect(now({ ...once, readings: after })).toBeCloseTo(went, 9);
});

test('it is recorded with its correction, and not corrected itself', () => {
  expect(corrected(record, 550).record.corrections).toEqual([
    { weighed: 550, out: expect.closeTo(2.77, 2), base: expect.closeTo(2.785, 2) },
  ]);
  // Of 10.5 kg of base mix and 7.75 L of foam half is taken out, and 4.44 kg come. Had all its gas
  // lived, the rest would be 10 kg in 8.85 L; counted as the whole, 15.56 kg in 15.42 L.
  const mixed = (out: object) => {
    const amounts = { cement: '7.5', water: '3', baseAdded: '4.44', full: String(0.85 + 21) };
    const kg = Object.fromEntries(Object.entries(amounts).map(([name, t]) => [name, in_(t, 'kg')]));
    const all = { ...readings, ...kg, foamVolume: in_('7.75', 'L') };
    return blankRecord({ readings: all, corrections: [{ weighed: 900, ...out, base: 4.44 }] });
  };
  const half = mixed({ out: 5.56 });
  expect(correctionWords(half, say)).toBe(
    '900\u00a0kg/m³, 5.6\u00a0kg taken out, then 4.4\u00a0kg of base mix added',
  );
  // What a file lost of the density leaves the yield open, and the bucket tells of the foam all the same.
  vi.stubGlobal('document', { body: { dataset: {} } });
  const told = (weighed: number) => {
    const [made] = half.corrections;
    const lost = { ...half, corrections: [{ ...made!, weighed }] };
    return renderToString(h(BatchOutcome, { record: lost, say }));
  };
  expect(told(900)).toContain('Yield');
  expect(told(0)).not.toMatch(/Yield|look at it again/);
  expect(told(0)).toContain('is not known, so the yield is not either');
  expect(told(0)).toContain('Foam that survived');
  const says = (of: typeof record) => {
    const balance = balanceOf(of);
    return [balance.ok && balance.verdict.finding, gasDoubt(runReadings(of, say), say)];
  };
  expect(says(half)).toEqual(['more-air-than-foam', expect.stringContaining('weigh 1131')]);
  expect(says(mixed({}))).toEqual(['consistent', undefined]);
});

test('undone, everything is as before', () => {
  const { record: once, undo } = corrected(record, 550);
  const back = (of: Correcting) => uncorrected(once, JSON.parse(JSON.stringify(of))).readings;
  expect(back(undo)).toEqual({ ...readings, full: bucket(550) });
  const spilled = in_('0.3', 'kg');
  const before = { ...record, readings: { ...readings, leftOver: spilled } };
  const more = corrected(before, 550);
  expect(uncorrected(more.record, more.undo).readings.leftOver).toEqual(spilled);
  // What was left over otherwise is not this correction's.
  const { out: _, ...plain } = undo;
  expect(back(plain).leftOver).toEqual(once.readings.leftOver);
});

test('undone, it keeps what was typed over its values', () => {
  const { record: once, undo } = corrected(record, 550);
  const typed = in_('4', 'kg');
  const since = { ...once, readings: { ...once.readings, leftOver: typed } };
  expect(uncorrected(since, undo).readings.leftOver).toEqual(typed);
});
