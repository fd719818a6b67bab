import { Fragment, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { Entries, System } from '../../src/bench/entries.ts';
import { answer } from '../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { type AnyWorksheet, benchKey } from '../../src/islands/worksheet.ts';
import heatInside from '../../src/worksheets/curing/heat-inside.tsx';
import liftingJob from '../../src/worksheets/demould/lifting-job.tsx';
import stripWindow from '../../src/worksheets/demould/strip-window.tsx';
import powersVolumes from '../../src/worksheets/finished/powers-volumes.tsx';
import foamDensity from '../../src/worksheets/foam/foam-density.tsx';
import receiver from '../../src/worksheets/foam/receiver.tsx';
import survivalJar from '../../src/worksheets/foam/survival-jar.tsx';
import baseCheck from '../../src/worksheets/mix/base-check.tsx';
import batch from '../../src/worksheets/mix/batch.tsx';
import correct from '../../src/worksheets/mix/correct.tsx';
import reconcile from '../../src/worksheets/records/reconcile.tsx';
import { mustAnswer } from './must-answer.ts';

/** What a line of working says must give the result from what stands in it. */
function worked(sheet: AnyWorksheet, typed: Record<string, string>, system: System = 'metric') {
  const say = speaker(system);
  const entries = Object.fromEntries(
    Object.entries(typed).map(([field, t]) => [benchKey(sheet, field), { t, s: system }]),
  ) as Entries;
  const found = answer(sheet, readWorksheet(sheet, entries, {}, say), say);
  mustAnswer(found);
  const { values, result } = found;
  const spaced = (text: string) => text.replaceAll('\u00a0', ' ');
  return {
    lines: sheet.working.map(({ put }) => spaced(put(result, values, say))),
    picture: () => spaced(renderToString(h(Fragment, {}, sheet.figure!({ values, result, say })))),
  };
}

test('the working of Powers names the cement density that it uses', () => {
  for (const cementDensity of ['2600 kg/m3', '3150 kg/m3']) {
    const [paste, gel] = worked(powersVolumes, { cementDensity, set: 'bentz' }).lines;
    // 998.2 ÷ 3200 in w/c of the whole and that.
    const [, q, density] = /q = ([\d.]+), by the model’s own cement of (\d+) kg/.exec(paste!)!;
    const [, ratio] = /w\/c = ([\d.]+)/.exec(gel!)!;
    expect(density).toBe('3200');
    expect(Number(q)).toBeCloseTo(0.312 / (Number(ratio) + 0.312), 2);
    expect(gel).not.toContain('kg/m³');
  }
});

test('the working of a small jar has enough digits to add up', () => {
  const jar = { tare: '0.02', full: '0.036', vessel: '0.2' };
  const [foam] = worked(foamDensity, jar).lines;
  expect(foam).toBe('ρf = (0.036 kg − 0.020 kg) ÷ 200 mL = 80.0 g/L');
  const [mix] = worked(correct, { ...jar, full: '0.150', mass: '0.6' }).lines;
  expect(mix).toBe('ρ = (0.150 kg − 0.020 kg) ÷ 200 mL = 650 kg/m³');
  expect(worked(correct, {}).lines[0]).toMatch(/^ρ = \(\d+\.\d\d kg − 0\.85 kg\)/);
  const little = { cement: '0.0335', water: '0.0134', foamVolume: '0.15' };
  const [went] = worked(reconcile, { ...little, full: '0.15', tare: '0.02', vessel: '0.2' }).lines;
  expect(went).toMatch(/^V = 0\.0\d\d kg/);
});

test('the working of a mix within tolerance has no correction', () => {
  const at = (full: string) => {
    const typed = { full, tare: '0.85 kg', vessel: '20 L', mass: '21.02 kg', target: '600 kg/m3' };
    return worked(correct, typed).lines[1];
  };
  // 582.5 kg/m³, and 5 % either way is near enough.
  expect(at('12.5 kg')).toBe(
    'ρ is within 30 kg/m³ of ρt = 600 kg/m³: near enough, and nothing is added.',
  );
  expect(at('12.2 kg')).toMatch(/^B = .*= 0?\d*\.?\d+ kg$/);
  expect(at('13.5 kg')).toMatch(/^F = /);
});

test('the working of a receiver tells where its flow stops being choked', () => {
  const low = (at: string) =>
    worked(receiver, { vessel: '50 L', full: '10 bar', low: at, area: '2 mm2' }).lines[0];
  expect(low('0.2 bar')).toMatch(/^In all 4\.70 min kept warm.* down to 0\.90 bar, below which/);
  expect(low('2 bar')).toMatch(/^In all [\d.]+ min kept warm, [\d.]+ min cooling$/);
});

test('a blended binder is named so in the working and in the picture', () => {
  const blend = worked(batch, { cementKind: 'blend', ash: '20 %' });
  expect(blend.lines[0]).toContain('cement and stand-ins 1');
  expect(blend.picture()).toContain('binder 1');
  const plain = worked(batch, {});
  expect(plain.lines[0] + plain.picture()).not.toMatch(/stand-ins|binder/);
});

test('the index of a job is the sum of the parts shown', () => {
  const [line] = worked(liftingJob, {}).lines;
  const [sum, ...parts] = line!
    .match(/[\d.]+/g)!
    .map(Number)
    .reverse();
  expect(parts.length).toBeGreaterThan(1);
  expect(parts.reduce((all, each) => all + each)).toBeCloseTo(sum!, 2.5);
});

test('the cement to add follows from the ratios as shown', () => {
  for (const full of ['2', '2.005', '2.01', '2.015']) {
    const [, line] = worked(baseCheck, { full: `${full} kg` }).lines;
    const [got, meant, _, cement, add] = line!.match(/[\d.]+/g)!.map(Number);
    // In kilograms where it is much.
    expect(line).toMatch(/^ΔC = .* kg = (\d+ g|\d\.\d\d kg)$/);
    const grams = line!.endsWith('kg') ? 1000 : 1;
    expect(Math.abs((got! / meant! - 1) * cement! * 1000 - add! * grams)).toBeLessThan(6);
  }
});

test('both age laws are named where either may count', () => {
  expect(stripWindow.working[1]!.tex).toMatch(/33\.5.*42\.5/s);
  expect(worked(stripWindow, {}).lines[1]).toMatch(/^E in kJ\/mol.* the slower of the two/);
});

test('a working in US units has no metric units', () => {
  const heat = worked(heatInside, {}, 'us').lines[0]!;
  expect(heat).not.toMatch(/kJ|m³/);
  const of = (system: System) => worked(survivalJar, {}, system).lines[0]!;
  const [metric, us] = (['metric', 'us'] as const).map((system) =>
    Number(/mix: ([\d.]+)/.exec(of(system))![1]),
  );
  expect(of('us')).toMatch(/^Gas in a pound of mix: [\d.]+ in³/);
  // 0.45359237 kg in a pound, 16.387064 mL in a cubic inch.
  expect(us!).toBeCloseTo((metric! * 0.45359237) / 16.387064, 0);
});

test('the marks of the foam scale are evenly spaced', () => {
  const marks = (system: System) =>
    [
      ...worked(foamDensity, {}, system)
        .picture()
        .matchAll(
          /translate\(([\d.]+) 0\)"><path class="tick"[^>]*>(?:<\/path>)?<text[^>]*>([\d.]+)</g,
        ),
    ].map(([, x, tick]) => ({ x: Number(x), tick: Number(tick) }));
  for (const system of ['metric', 'us'] as const) {
    const found = marks(system);
    expect(found.length).toBeGreaterThan(1);
    const steps = found.slice(1).map(({ x }, i) => x - found[i]!.x);
    for (const step of steps) expect(step).toBeCloseTo(steps[0]!, 0);
  }
});
