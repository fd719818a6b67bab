import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { learn } from '../../../src/core/records/learn.ts';
import { PRIORS } from '../../../src/core/records/priors.ts';
import { judgeBatch } from '../../../src/core/records/verdict.ts';

describe('a batch judged', () => {
  const mix = proportion({
    volume: 0.04,
    target: { wetDensity: 600 },
    waterCement: 0.4,
    foamDensity: 80,
  });
  const batch = {
    cement: mix.cement,
    water: mix.water,
    sand: 0,
    foamVolume: mix.foamVolume,
    foamDensity: 80,
    foamAdded: 0,
    baseAdded: 0,
    tare: 0.85,
    full: 0.85 + 600 * 0.02,
    vessel: 0.02,
  };

  test('a doubt that is nothing changes nothing', () => {
    const u = { cement: 0.01, full: 0.01 };
    expect(judgeBatch(batch, { ...u, tare: 0 })).toEqual(judgeBatch(batch, u));
  });

  test('a doubt that reaches beyond what can be leaves the batch undecided', () => {
    // The tare is in doubt by more than the full bucket weighs.
    const judged = judgeBatch(batch, { tare: 1000 });
    expect(judged.finding).toBe('cannot-tell');
    expect(judged.survival).toBeCloseTo(1, 6);
    expect(judged.suspects).toEqual([]);
  });

  test('a reading that has no say in what is wrong is no suspect', () => {
    // Twice as heavy as the base mix without air; how much was placed changes nothing of that.
    const heavy = { ...batch, full: 0.85 + 4000 * 0.02, placed: 0.03 };
    const judged = judgeBatch(heavy, { full: 0.01, placed: 0.001 });
    expect(judged.finding).toBe('heavier-than-airless');
    expect(judged.suspects.map(({ reading }) => reading)).toEqual(['full']);
  });

  test('an impossible batch is refused, doubts or none', () => {
    expect(() => judgeBatch({ ...batch, vessel: 0 }, {})).toThrow(DomainError);
    expect(() => judgeBatch({ ...batch, cement: -1 }, { cement: 1 })).toThrow(DomainError);
  });
});

test('degrees of freedom are whole, and at least 3', () => {
  for (const freedom of [2, 3.5, Number.NaN])
    expect(() => learn({ values: [], prior: { ...PRIORS.survival, freedom } })).toThrow(
      DomainError,
    );
  expect(learn({ values: [], prior: { ...PRIORS.survival, freedom: 3 } }).count).toBe(0);
});
