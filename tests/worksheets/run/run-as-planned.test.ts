import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { baseIn, foamWanted } from '../../../src/worksheets/live/run/run-base.ts';
import { runDoubt } from '../../../src/worksheets/live/run/run-doubt.ts';
import { gasDoubt } from '../../../src/worksheets/live/run/run-gas.ts';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';

const say = speaker('metric');
const lives = { 'mix.foamLives': { t: '80', u: '%' } } as const;
const lighter = { 'mix.cementDensity': { t: '2900', u: 'kg/m3' } } as const;
const kg = (t: string) => ({ t, u: 'kg', s: 'metric' as const });
/** As it is read again after a reload. */
const planOf = (entries: Entries): NonNullable<ReturnType<typeof runPlan>> =>
  JSON.parse(JSON.stringify(runPlan(entries, {}, say)));
const nothing = runReadings(blankRecord(), say);

describe('the run asks for the same foam as the worksheet', () => {
  test.each([
    ['foam of which a fifth dies', lives],
    ['another cement', lighter],
    ['both', { ...lives, ...lighter }],
    ['both, aiming at a dry density', { ...lives, ...lighter, 'proportion.aim': { t: 'dry' } }],
    ['both, and sand', { ...lives, ...lighter, 'mix.sandCement': { t: '1' } }],
    ['the usual', {}],
  ] as [string, Entries][])('%s', (_, entries) => {
    const plan = planOf(entries);
    expect(baseIn(nothing, plan)!.density).toBeCloseTo(plan.baseDensity, 6);
    const wanted = foamWanted(nothing, plan, say);
    expect(wanted.is === 'amount' && wanted.volume).toBeCloseTo(plan.foamVolume, 9);
    expect(wanted.is === 'amount' && wanted.say.includes('of whose gas 80')).toBe(
      'mix.foamLives' in entries,
    );
  });

  test('also for the amounts weighed in', () => {
    // By hand: B 15.43 kg, Vb = 10/2.9 + 5.43 = 8.8783 L; of foam of 80 a volume leaves 1 − 0.2 × 0.92 = 0.816.
    // (15.43 − 0.6 × 8.8783) ÷ (0.6 × 0.816 − 0.08) = 24.670 L.
    const record = blankRecord({ readings: { cement: kg('10'), water: kg('5.43') } });
    const wanted = foamWanted(runReadings(record, say), planOf({ ...lives, ...lighter }), say);
    expect(wanted.is === 'amount' && wanted.volume * 1000).toBeCloseTo(24.67, 2);
  });

  test('foam that is lost takes no room in the mixer', () => {
    const entries = { ...lives, 'mix.foamLives': { t: '40', u: '%' } } as const;
    const plan = { ...planOf(entries), example: false };
    // Twice as much foam goes in as is left of it, and the load fills the mixer.
    const load = { ...plan, largestLoad: plan.foamVolume };
    const record = blankRecord({
      readings: { cement: kg(`${plan.cement}`), water: kg(`${plan.water}`) },
    });
    expect(runDoubt(runReadings(record, say), load, say)).toBeUndefined();
  });

  test('without a plan the cement is the one the batch was saved with', () => {
    const of = (bench: Entries, plan?: ReturnType<typeof planOf>) =>
      baseIn(
        runReadings(
          blankRecord({ bench, readings: { cement: kg('10'), water: kg('4'), sand: kg('0') } }),
          say,
        ),
        plan,
      )!.density;
    // 14 kg in 10/2.9 + 4 L.
    expect(of(lighter)).toBeCloseTo(1879.63, 2);
    expect(of({})).toBeCloseTo(1951.33, 2);
    // With one it is the plan’s.
    expect(of(lighter, planOf({}))).toBeCloseTo(1951.33, 2);
  });
});

test('a light cement is not mistaken for gas', () => {
  const entries = { 'mix.cementDensity': { t: '2700', u: 'kg/m3' } } as const;
  const { cement, water, foamVolume, foamDensity, wetDensity } = planOf(entries);
  const sure = (t: number, u: string) => ({ t: `${t}`, u, p: '0.001', pu: u });
  const readings = {
    ...{ cement: sure(cement, 'kg'), water: sure(water, 'kg'), tare: sure(1, 'kg') },
    ...{ foamVolume: sure(foamVolume, 'm3'), foamDensity: sure(foamDensity, 'g/L') },
    ...{ vessel: sure(20, 'L'), full: sure(1 + 0.02 * wetDensity, 'kg') },
  };
  readings.foamVolume.p = '0.00001';
  const said = (bench: Entries) =>
    gasDoubt(runReadings(blankRecord({ bench, readings }), say), say);
  expect(said(entries)).toBeUndefined();
  expect(said({})).toContain('Weigh again');
});
