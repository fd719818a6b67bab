import { describe, expect, test } from 'vitest';
import { compareWaters } from '../../../src/core/water/comparison-test.ts';
import { judgeMixingWater } from '../../../src/core/water/fitness.ts';
import { LIMITS } from '../../../src/core/water/mixing-water-limits.ts';

describe('a report judged', () => {
  test('shows a line for each limit that applies, silent ones as unknown', () => {
    const lines = judgeMixingWater({ chloride: 0.3 }, 'plain');
    expect(lines.length).toBe(LIMITS.filter((l) => l.uses.includes('plain')).length);
    expect(lines.filter((l) => l.verdict === 'unknown').length).toBe(lines.length - 1);
    expect(lines.every((l) => l.limit.clause !== '' && l.limit.source !== '')).toBe(true);
  });

  test('keeps both standards where they differ', () => {
    const verdicts = judgeMixingWater({ sulfate: 2.5, alkalies: 1 }, 'reinforced')
      .filter((l) => l.verdict !== 'unknown')
      .map((l) => `${l.limit.standard} ${l.limit.of} ${l.verdict}`);
    expect(verdicts).toEqual([
      'EN 1008 sulfate beyond',
      'EN 1008 alkalies within',
      'ASTM C1602 sulfate within',
      'ASTM C1602 alkalies beyond',
    ]);
  });

  test('takes pH from below', () => {
    const of = (pH: number) =>
      judgeMixingWater({ pH }, 'plain').find((l) => l.limit.of === 'pH')?.verdict;
    expect([of(3.9), of(4), of(9)]).toEqual(['beyond', 'within', 'within']);
  });

  test('refuses a negative reading', () => {
    expect(() => judgeMixingWater({ chloride: -1 }, 'plain')).toThrow(RangeError);
  });

  test('allows no more chloride where there is steel than where there is none', () => {
    const most = (use: 'plain' | 'reinforced' | 'prestressed') =>
      LIMITS.find((l) => l.standard === 'EN 1008' && l.of === 'chloride' && l.uses.includes(use))!
        .most!;
    expect(most('plain')).toBeGreaterThan(most('reinforced'));
    expect(most('reinforced')).toBeGreaterThan(most('prestressed'));
  });
});

describe('the comparison test', () => {
  test('says unknown of what was not measured', () => {
    const { en1008, astmC1602 } = compareWaters({ control: {}, test: { initialSet: 7200 } });
    expect(en1008).toEqual({
      leastInitial: 'passes',
      initialWithin: 'unknown',
      mostFinal: 'unknown',
      finalWithin: 'unknown',
      strength: 'unknown',
    });
    expect(astmC1602).toEqual({ set: 'unknown', strength: 'unknown' });
  });

  test('can pass one standard and fail the other', () => {
    const { en1008, astmC1602 } = compareWaters({
      control: { initialSet: 3 * 3600 },
      test: { initialSet: 4.4 * 3600 },
    });
    expect(en1008.initialWithin).toBe('fails');
    expect(astmC1602.set).toBe('passes');
  });

  test('refuses a final set before the initial', () => {
    const test = { initialSet: 7200, finalSet: 3600 };
    expect(() => compareWaters({ control: {}, test })).toThrow(RangeError);
  });
});
