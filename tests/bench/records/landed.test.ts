import { describe, expect, test } from 'vitest';
import type { ReadingName } from '../../../src/bench/records/readings.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { demoBatches } from '../../../src/worksheets/shared/demo-batches.ts';
import { chartJudgement } from '../../../src/worksheets/shared/LandingChart.tsx';
import { landedOf } from '../../../src/worksheets/shared/record-landed.ts';

const demo = demoBatches();
const own = (name: string, readings: Partial<Record<ReadingName, string>>) => {
  const units = { planned: 'kg/m3', tare: 'kg', full: 'kg', vessel: 'L' } as const;
  const entries = Object.entries(readings).map(([reading, t]) => [
    reading,
    { t, u: units[reading as keyof typeof units] },
  ]);
  return blankRecord({ name, readings: Object.fromEntries(entries) });
};
const bucket = { tare: '1', vessel: '20' };
const plan = { planned: '600' };

describe('which batches the charts and what they say are of', () => {
  test('invented ones while there are no others, and the verdict says so', () => {
    const { landed, invented } = landedOf(demo);
    expect(landed).toHaveLength(6);
    expect(invented).toBe(true);
    const { say } = chartJudgement(landed, invented);
    expect(say).toMatch(/^These batches are invented, so your plan stays as it is\. Of your own/);
    expect(say).toContain('too heavy on average');
  });

  test('the reader’s alone once one of them has a plan', () => {
    const light = own('A', { ...plan, ...bucket, full: '12.9' });
    const heavy = own('B', { ...plan, ...bucket, full: '13.1' });
    const { landed, invented } = landedOf([...demo, light, heavy]);
    expect(landed.map(({ name }) => name)).toEqual(['A', 'B']);
    expect(landed.map(({ weighed }) => Math.round(weighed))).toEqual([595, 605]);
    expect(invented).toBe(false);
    expect(chartJudgement(landed, invented)).toMatchObject({
      verdict: 'good',
      say: expect.stringMatching(/^The batches differ by chance alone/),
    });
  });

  test('a plan is enough, a batch without one is not', () => {
    expect(landedOf([...demo, own('A', plan)])).toEqual({ invented: false, landed: [] });
    expect(landedOf([...demo, own('A', { ...bucket, full: '13' })]).landed).toHaveLength(6);
    expect(landedOf([])).toEqual({ invented: false, landed: [] });
  });
});
