import { describe, expect, test } from 'vitest';
import { readFile } from '../../../src/bench/records/file.ts';
import type { ReadingName } from '../../../src/bench/records/readings.ts';
import { blankRecord, inOrder, someByName } from '../../../src/bench/records/record.ts';
import { chartJudgement } from '../../../src/worksheets/live/compare/LandingChart.tsx';
import { landedOf } from '../../../src/worksheets/live/compare/record-landed.ts';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { learnFrom, observe } from '../../../src/worksheets/live/records/lessons.ts';
import { plannedSurvival } from '../../../src/worksheets/mix/planned-survival.ts';
import { foamShare } from '../../../src/worksheets/shared/foam/foam-share.ts';
import { file, whole } from './whole-file.ts';

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

const said = (errors: readonly number[], leftOut: readonly string[] = [], share = 1) =>
  chartJudgement({
    landed: errors.map((error, i) => ({
      name: `B${i + 1}`,
      planned: 1000,
      weighed: 1000 * (1 + error),
      share,
    })),
    invented: false,
    leftOut,
    otherPlan: [],
  });

describe('which batches the charts and what they say are of', () => {
  test('invented ones while there are no others, and the verdict says so', () => {
    const found = landedOf(demo);
    expect(found.landed).toHaveLength(6);
    expect(found.invented).toBe(true);
    const { say } = chartJudgement(found);
    expect(say).toMatch(/^These batches are invented, so your plan stays as it is\. Of your own/);
    expect(say).toContain('too heavy on average');
  });

  test('the reader’s alone once one of them has a plan', () => {
    const light = own('A', { ...plan, ...bucket, full: '12.9' });
    const heavy = own('B', { ...plan, ...bucket, full: '13.1' });
    const found = landedOf([...demo, light, heavy]);
    const { landed, invented } = found;
    expect(landed.map(({ name }) => name)).toEqual(['A', 'B']);
    expect(landed.map(({ weighed }) => Math.round(weighed))).toEqual([595, 605]);
    expect(invented).toBe(false);
    expect(chartJudgement(found).verdict).toBeUndefined();
  });

  test('by what was weighed first: a correction mends the mix, not the plan', () => {
    const mended = Array.from({ length: 6 }, (_, i) => ({
      ...own(`B${i}`, { planned: '1000', ...bucket, full: '21' }),
      corrections: [
        { weighed: 1062.7, foam: 0.0015 },
        { weighed: 1030, foam: 0.0004 },
      ],
    }));
    expect(observe(mended[0]!).landing).toBeCloseTo(0.0627, 9);
    const found = landedOf(mended);
    expect(found.landed[5]!.weighed).toBe(1062.7);
    expect(chartJudgement(found)).toMatchObject({
      verdict: 'look',
      say: expect.stringContaining('come out 6.3\u00a0% too heavy on average'),
    });
    const [stopped] = mended.map(({ readings: { full: _, ...readings }, ...rest }) => ({
      ...rest,
      readings,
    }));
    expect(landedOf([stopped!]).landed).toMatchObject([{ weighed: 1062.7 }]);
  });

  test('by nothing where a file has lost what was weighed first', () => {
    const batch = own('B', { ...plan, ...bucket, full: '13' });
    const brought = (...corrections: readonly unknown[]) =>
      file(readFile(whole([{ ...batch, corrections }]))).batches[0]!;
    const second = { weighed: 640, foam: 0.002 };
    const lost = brought({ weighed: '700', foam: 0.003 }, second);
    expect(lost.corrections).toEqual([{ weighed: 0, foam: 0.003 }, second]);
    const unlisted = file(readFile(whole([{ ...batch, corrections: 'two' }]))).batches[0]!;
    for (const one of [lost, brought(5), unlisted]) {
      expect(landedOf([one]).landed).toEqual([]);
      expect(observe(one).landing).toBeUndefined();
    }
    // What is lost of a later one, or of what was added, is no loss to this.
    for (const one of [brought({ weighed: 700 }, 5), brought({ weighed: 700, foam: 'x' }, second)])
      expect(landedOf([one]).landed).toMatchObject([{ weighed: 700 }]);
  });

  test('a plan is enough, a batch without one is not', () => {
    expect(landedOf([...demo, own('A', plan)])).toMatchObject({
      invented: false,
      landed: [],
    });
    expect(landedOf([...demo, own('A', { ...bucket, full: '13' })]).landed).toHaveLength(6);
    expect(landedOf([])).toEqual({
      invented: false,
      landed: [],
      leftOut: [],
      otherPlan: [],
    });
  });
});

describe('what the landings are said to show', () => {
  const close = [0.01, -0.02, 0.02, -0.01, 0.01];

  test('five that land close are good; of two nothing is said, however they lie', () => {
    expect(said(close)).toMatchObject({ verdict: 'good' });
    expect(said([0.407, 0.028])).toEqual({
      verdict: undefined,
      say: expect.stringMatching(/^Two batches are too few/),
    });
    expect(said([0.001, 0]).verdict).toBeUndefined();
  });

  test('few, or many that scatter, are not called good', () => {
    expect(said(close.slice(0, 4))).toMatchObject({
      verdict: undefined,
      say: expect.stringContaining('too few'),
    });
    expect(said([0.2, -0.2, 0.25, -0.2, 0.15, -0.2])).toMatchObject({
      verdict: undefined,
      say: expect.stringContaining('too scattered'),
    });
    // Heavy beyond their ±, by less than is worth a correction.
    expect(said([0.019, 0.018, 0.016, 0.018]).say).toMatch(/too little off to correct.*too few/);
    expect(said(close.slice(0, 4)).say).toContain('neither heavy nor light');
  });

  test('a batch whose readings cannot all be true is left out, and nothing is good beside it', () => {
    expect(said(close, ['X'])).toEqual({ ...said(close), verdict: undefined });
    expect(said([0.1, 0.11, 0.1, 0.11, 0.1], ['X']).verdict).toBe('look');
    // 11 kg in the bucket: more gas than the foam brought, or less than none.
    const [first, ...rest] = demo;
    const wrong = { ...first!, readings: { ...first!.readings, full: { t: '11', u: 'kg' } } };
    const { landed, leftOut } = landedOf([wrong, ...rest]);
    expect(leftOut).toEqual([first!.name]);
    expect(landed).toEqual(landedOf(rest).landed);
    expect(landedOf(demo).leftOut).toEqual([]);
  });

  test('the chart has the errors that are learned from', () => {
    const [first, ...rest] = demo;
    const wrong = { ...first!, readings: { ...first!.readings, full: { t: '11', u: 'kg' } } };
    const learned = learnFrom([wrong, ...rest]).lessons.find(({ lesson }) => lesson === 'landing')!;
    expect(
      landedOf([wrong, ...rest]).landed.map(({ weighed, planned }) => weighed / planned - 1),
    ).toEqual(learned.from.map(({ value }) => value));
  });

  test('one that stands apart, by the rule that batches teach by, is named: both pages may be true', () => {
    const apart = [0.02, 0.03, 0.01, 0.14, 0.02, 0.03];
    const { lessons } = learnFrom(
      apart.map((error, i) =>
        own(`B${i + 1}`, { ...plan, ...bucket, full: (1 + 12 * (1 + error)).toFixed(2) }),
      ),
    );
    const { moved } = lessons.find(({ lesson }) => lesson === 'landing')!.learned;
    expect(moved).toEqual([3]);
    expect(said(apart).say).toMatch(
      /no more than chance explains.*\+4\.2\s%.*“B4” stands apart from the rest, .* counts it for less\.$/,
    );
    expect(said([...apart, 0.2, 0.02, 0.03, 0.02]).say).toContain('“B4”, “B7” stand apart');
    expect(said(close).say).not.toContain('apart');
  });

  test('of many beyond the limits a few are named, and the rest counted', () => {
    const many = Array.from({ length: 3000 }, (_, i) => (i < 1000 ? 0 : i < 2000 ? 0.5 : 1));
    const { say } = said(many);
    expect(say).toMatch(/^“[^”]+”(, “[^”]+”){5} and \d+ more lie beyond/);
  });

  test('several beyond the limits lie, one lies', () => {
    const flat = Array.from({ length: 20 }, (_, i) => (i % 2 ? 0.001 : -0.001));
    expect(said([...flat, 0.3]).say).toMatch(/^“B21” lies beyond/);
    expect(said([...flat, 0.3, ...flat, -0.3]).say).toMatch(/^“B21”, “B42” lie beyond/);
  });
});

describe('batches of another plan', () => {
  // As if all foam lived, three come out heavy; with the share they taught, the others land.
  const batches = [0.064, 0.052, 0.049, 0.018, 0.003, 0, 0.003, -0.012].map((error, i) => ({
    ...own(`B${i + 1}`, { ...plan, ...bucket, full: (1 + 12 * (1 + error)).toFixed(3) }),
    bench:
      i < 3 ? {} : { [foamShare.bench!]: { t: ['93', '92', '92', '92', '92'][i - 3]!, u: '%' } },
  }));
  const saidOf = (count: number) => chartJudgement(landedOf(batches.slice(0, count)));

  test('are told how to correct the plan once, by the field, so that the target stays', () => {
    expect(saidOf(3).say).toMatch(
      /^Correct the plan once.* keep the target .*too heavy on average/,
    );
    const [field] = plannedSurvival.label.split(',');
    expect(saidOf(3).say).toContain(`“${field}”`);
  });

  test('are left out, by their names, once the plan has changed: what was cured is not found again', () => {
    expect(landedOf(batches.slice(0, 4)).landed.map(({ name }) => name)).toEqual(['B4']);
    for (const count of [5, 6, 7, 8]) {
      const { landed, otherPlan } = landedOf(batches.slice(0, count));
      expect(landed).toHaveLength(count - 3);
      expect(otherPlan).toEqual(['B1', 'B2', 'B3']);
      expect(saidOf(count).say).toMatch(
        / Left out, as planned for another share of foam that survives: “B1”, “B2”, “B3”\.$/,
      );
      expect(saidOf(count).say).not.toMatch(/beyond what chance|Correct the plan/);
    }
    expect(saidOf(8).verdict).toBe('good');
    // What they teach of landing is of the same ones.
    const { from } = learnFrom(batches).lessons.find(({ lesson }) => lesson === 'landing')!;
    expect(from.map(({ record }) => record.name)).toEqual(['B4', 'B5', 'B6', 'B7', 'B8']);
  });

  test('are those whose share is more than a per cent and a half away', () => {
    const count = (share: string) =>
      landedOf(
        [share, '92'].map((t) => ({
          ...own('A', { ...plan, ...bucket, full: '13' }),
          bench: { [foamShare.bench!]: { t, u: '%' } },
        })),
      ).landed.length;
    expect(['90.4', '90.6', '93.4', '93.6'].map(count)).toEqual([1, 2, 2, 1]);
  });

  test('too light of foam that was planned to live whole, is no fault of the share', () => {
    const light = [-0.05, -0.06, -0.05, -0.06, -0.05];
    expect(said(light, [], 0.9).say).toMatch(/^Correct the plan once/);
    expect(said(light, [], 1).say).toMatch(/^Look at the bucket.*too light on average/);
  });

  test('a mean that is off by less than it is worth is left alone', () => {
    const slightly = [0.016, 0.018, 0.016, 0.018, 0.016, 0.018];
    expect(said(slightly).verdict).toBe('good');
    expect(said(slightly.map((error) => error + 0.006)).say).toMatch(/^Correct the plan once/);
  });
});

describe('readings that cannot be', () => {
  test('are charted nowhere: a plan of 60000 or 6 kg/m³', () => {
    for (const planned of ['60000', '6'])
      expect(landedOf([own('A', { planned, ...bucket, full: '13' })]).landed).toEqual([]);
  });

  test('and so are a bucket’s of 6200 kg/m³, which is named as left out', () => {
    const { invented: _, ...made } = demo[0]!;
    const full = { t: '125', u: 'kg' };
    const heavy = { ...made, name: 'Heavy', readings: { ...made.readings, full } };
    expect(landedOf([heavy])).toMatchObject({ landed: [], leftOut: ['Heavy'] });
  });
});

describe('batches of one day', () => {
  const made = (name: string, foamMade?: string) =>
    blankRecord({ name, date: '2026-05-01', ...(foamMade && { foamMade }) });
  const names = (records: readonly ReturnType<typeof made>[]) =>
    records.toSorted(inOrder).map(({ name }) => name);

  test('stand by when their foam was made, else by the numbers in their names', () => {
    const untimed = [10, 2, 1, 9].map((n) => made(`Batch ${n}`));
    expect(names(untimed)).toEqual(['Batch 1', 'Batch 2', 'Batch 9', 'Batch 10']);
    const timed = [made('A', '2026-05-01T11:00:00.000Z'), made('B', '2026-05-01T09:30:00.000Z')];
    expect(names(timed)).toEqual(['B', 'A']);
    expect(names([...untimed, ...timed]).slice(0, 2)).toEqual(['B', 'A']);
    expect([someByName(untimed), someByName(timed), someByName([...timed, untimed[0]!])]).toEqual([
      true,
      false,
      true,
    ]);
    expect(someByName([made('A'), { ...made('B'), date: '2026-05-02' }])).toBe(false);
  });
});
