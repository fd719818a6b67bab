import { expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';

test('refusing a total w/c that leaves the paste too dry gives the least total w/c', () => {
  const thin = {
    volume: 0.167,
    target: { ovenDryDensity: 150 },
    waterCement: 0.4,
    waterCementOf: 'total',
    foamDensity: 80,
  } as const;
  try {
    proportion(thin);
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(DomainError);
    const { because, allowed } = error as DomainError;
    expect(because).toBe('paste-robs-foam');
    const least = proportion({ ...thin, waterCement: allowed.min! * (1 + 1e-9) });
    expect(least.waterCementBase).toBeCloseTo(0.2, 6);
  }
});
