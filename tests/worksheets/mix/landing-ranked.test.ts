import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/bench/entries.ts';
import { LANDING_TRIALS } from '../../../src/core/mix/landing.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import landing from '../../../src/worksheets/mix/landing.tsx';
import type { ranked } from '../../../src/worksheets/mix/landing-ranked.ts';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const bars = (sameBucket: 'same' | 'other') => {
  const entries: Entries = {
    'landing.foamFill': { t: '0.001', u: '%' },
    'landing.foamScale': { t: '0.01', u: 'g' },
    'landing.baseScale': { t: '0.01', u: 'g' },
    'landing.gasLost': { t: '0', u: '%', p: '0.001', pu: '%' },
    'landing.sameBucket': { t: sameBucket },
    'landing.bucket': { t: '10', u: 'L', p: '0.1', pu: 'L' },
  };
  const found = answer(landing, readWorksheet(landing, entries, {}, say), say);
  mustAnswer(found);
  return {
    rows: (found.result as { ranked: ReturnType<typeof ranked> }).ranked,
    values: found.values,
  };
};

describe('what to improve first', () => {
  test('a bucket’s ± of 1 % that weighs and measures the foam counts for both', () => {
    const { rows, values } = bars('same');
    // The same foam by weight, in 1 % more room: the mix is lighter by the foam's share of that.
    const base = 1 / values.cementDensity + values.waterCement / 998;
    const mass = 1 + values.waterCement;
    const foam = (mass - values.target * base) / (values.target - values.foamDensity);
    const density = (f: number) => (mass + values.foamDensity * foam) / (base + f);
    expect(rows[0]?.label).toBe('Volume of the bucket');
    expect(rows[0]!.size / (density(foam) - density(1.01 * foam))).toBeCloseTo(1, 1);
    expect(rows.find(({ label }) => label === 'Foam measured out')!.size).toBeLessThan(0.1);
  });

  test('with foam weighed in another bucket, its ± counts in the density alone', () => {
    const [same, other] = (['same', 'other'] as const).map(
      (which) => bars(which).rows.find(({ label }) => label === 'Volume of the bucket')!.size,
    );
    expect(other).toBeLessThan(same! / 4);
  });
});

test('a note gives the difference in odds that the number of trials cannot tell', () => {
  // The standard deviation of the difference of two shares of N trials, where they are largest.
  expect(Math.sqrt((2 * 0.5 * 0.5) / LANDING_TRIALS)).toBeCloseTo(0.005, 12);
  const found = answer(landing, readWorksheet(landing, {}, {}, say), say);
  expect(found.ok && found.notes.join(' ')).toContain('odds less than half a per cent apart');
});

test('the first-order ± is given beside that of the trials for all three results', () => {
  const found = answer(landing, readWorksheet(landing, {}, {}, say), say);
  mustAnswer(found);
  const words = landing.working[1]!.put(found.result as never, found.values as never, say);
  expect(words).toMatch(
    /u = 14\.8\skg.*trials give 1[45]\.\d\skg.*yield 9[01]\d\smL and 9[01]\d\smL/,
  );
  expect(words).toMatch(/oven-dry density 12\.\d\skg\/m³ and 12\.\d\skg\/m³$/);
});
