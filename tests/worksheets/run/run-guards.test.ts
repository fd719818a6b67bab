import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/bench/entries.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { adviceOn } from '../../../src/worksheets/live/run/run-advice.ts';
import { runPlan } from '../../../src/worksheets/live/run/run-plan.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';
import correct from '../../../src/worksheets/mix/correct.tsx';
import { addWords, doubtWords } from '../../../src/worksheets/shared/mix/correction-advice.ts';

const say = speaker('metric');
const of = (t: string, u: string): Entry => ({ t, u, s: 'metric' });
const litres = (x: number) => say(x, 'volume', { units: { metric: 'L', us: 'gal' } });

/** Mix planned at 1000 kg/m³ with foam of 70 g/L, in a 12 L bucket and a 25 L mixer. */
interface Load {
  readonly cement: number;
  readonly water: number;
  readonly foam: number;
  /** What the bucket reads, kg. */
  readonly full: number;
  /** The ± of the bucket’s volume, L. */
  readonly doubt?: number;
}

/** What “The bucket weighs this” and the run at the bench each say of it. */
function both({ cement, water, foam, full, doubt }: Load) {
  const pm = doubt === undefined ? {} : { p: `${doubt}`, pu: 'L' };
  const vessel = { ...of('12', 'L'), ...pm };
  const bench = {
    'bucket.tare': of('0.6', 'kg'),
    'bucket.volume': vessel,
    'mix.foamDensity': of('70', 'g/L'),
    'mix.largestLoad': of('25', 'L'),
    'mix.waterCement': of(`${water / cement}`, '1'),
  };
  const found = answer(
    correct,
    readWorksheet(
      correct,
      {
        ...bench,
        'correct.full': of(`${full}`, 'kg'),
        'correct.mass': of(`${cement + water + foam * 0.07}`, 'kg'),
        'correct.target': of('1000', 'kg/m3'),
        'correct.baseDensity': of(`${(cement + water) / (cement / 3.15 + water) / 0.001}`, 'kg/m3'),
      },
      {},
      say,
    ),
    say,
  );
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  const readings = runReadings(
    blankRecord({
      readings: {
        cement: of(`${cement}`, 'kg'),
        water: of(`${water}`, 'kg'),
        foamDensity: of('70', 'g/L'),
        foamVolume: of(`${foam}`, 'L'),
        tare: of('0.6', 'kg'),
        full: of(`${full}`, 'kg'),
        vessel,
      },
    }),
    say,
  );
  const density = (full - 0.6) / 0.012;
  const advice = adviceOn(
    { density, target: 1000, made: 0 },
    readings,
    runPlan(bench, {}, say),
    say,
  )!;
  return { found, advice, run: doubtWords(advice, say) };
}

const small = { cement: 7.9, water: 3.32, foam: 5.35 };
const full = { cement: 15.66, water: 6.58, foam: 11.5 };

describe('the run at the bench has the guards of the worksheet', () => {
  test('a bucket larger than the whole mix', () => {
    const { found, run } = both({ ...small, full: 13.6 });
    expect(run?.verdict).toBe('stop');
    expect(run?.say).toContain('The bucket holds more than the whole mix');
    expect(found.judgement).toEqual(run);
  });

  test('a bucket whose volume is hardly known', () => {
    const { found, run } = both({ ...full, full: 13.6, doubt: 1 });
    expect(run?.say).toContain('cannot tell a good mix from a bad one');
    expect(found.judgement).toEqual(run);
    expect(both({ ...full, full: 13.6, doubt: 0.1 }).advice.is).toBe('add');
  });

  test('in a full mixer some is taken out first, and both amounts are for the rest', () => {
    const { found, advice } = both({ ...full, full: 10.5 });
    const words = advice.is === 'add' && addWords(advice, say);
    expect(words).toContain('first take out all but');
    expect(words).toContain('the mixer takes 25.0\u00a0L');
    expect(found.judgement.say).toContain(words);
    // By hand: M = 15.66 + 6.58 + 0.805 kg at 825 kg/m³ is 27.933 L, ρb = 22.24 ÷ (15.66/3150 + 6.58/1000);
    // base mix of 175/(ρb − 1000) times that. What fits of both together is 25 L.
    const [mass, base] = [23.045, 22.24 / (15.66 / 3150 + 6.58 / 1000)];
    const before = mass / 825;
    const whole = before * (1 + 175 / (base - 1000));
    const asked = ((before * 175) / (base - 1000)) * base * (0.025 / whole);
    expect(advice.is === 'add' && advice.fix.baseMass).toBeCloseTo(asked, 6);
    expect(found.numbers.addBase!.value).toBeCloseTo(asked, 3);
    expect(words).toContain(`would be ${litres(whole)}`);
    expect(words).toContain(`all but ${litres((before * 0.025) / whole)}`);
    expect(words).toContain(`Then add ${say(asked, 'mass', { significant: 2 })} of base mix`);
  });

  test('a full mixer has room for an ordinary correction, and a good mix is good', () => {
    const { found, advice } = both({ ...full, full: 13.6 });
    expect(advice.is === 'add' && addWords(advice, say)).toMatch(/^Add 1\.9\sL of foam/);
    expect(found.judgement.say).toContain('Add 1.9\u00a0L of foam');
    expect(both({ ...full, full: 12.7 }).advice.is).toBe('leave');
    expect(both({ ...full, full: 12.7 }).found.judgement.verdict).toBe('good');
  });
});
