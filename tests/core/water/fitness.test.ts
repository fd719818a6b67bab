import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';
import { compareWaters, type Readings } from '../../../src/core/water/comparison-test.ts';
import { alkaliesOf, judgeMixingWater } from '../../../src/core/water/fitness.ts';
import { LIMITS } from '../../../src/core/water/mixing-water-limits.ts';
import { expectLimits } from '../refuses.ts';

describe('a report judged', () => {
  test('has a row for each limit that applies, missing values as unknown', () => {
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

  test('has a lower limit for pH', () => {
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

test('the limits of EN 1008 are mandatory, those of ASTM C1602 only on request', () => {
  for (const { standard, of, optional } of LIMITS)
    expect(optional, `${standard} ${of}`).toBe(standard === 'ASTM C1602');
});

test('alkalies convert as 1.348 g of oxide for 1 g of sodium, 1.205 for potassium', () => {
  // By atomic masses, 61.979/45.980 and 94.196/78.197; potassium oxide counts 0.658.
  const of = (sodium: number, potassium: number) => alkaliesOf({ sodium, potassium });
  expect(of(2, 0)).toBeCloseTo(2.696, 3);
  expect(of(0, 2)).toBeCloseTo(2 * 1.2046 * 0.658, 3);
  expect(of(2, 3)).toBeCloseTo(of(2, 0) + of(0, 3), 12);
  expectLimits(
    alkaliesOf,
    { sodium: 1, potassium: 1 },
    {
      sodium: { takes: [0], refuses: [-0.001, Number.NaN] },
      potassium: { takes: [0], refuses: [-0.001, Number.NaN] },
    },
  );
});

describe('the comparison test', () => {
  test('gives unknown for what was not measured', () => {
    const { en1008, astmC1602 } = compareWaters({ control: {}, test: { initialSet: 7200 } });
    expect(en1008).toEqual({
      leastInitial: 'passes',
      initialWithin: 'unknown',
      mostFinal: 'unknown',
      finalWithin: 'unknown',
      strength: 'unknown',
    });
    expect(astmC1602).toEqual({ set: 'unknown', strength: 'unknown' });
    // A control alone neither passes nor fails a water.
    const control = { initialSet: 7200, finalSet: 14_400, strength: 1e7 };
    const { en1008: en, astmC1602: astm } = compareWaters({ control, test: {} });
    for (const verdict of Object.values({ ...en, ...astm })) expect(verdict).toBe('unknown');
  });

  test('can pass one standard and fail the other', () => {
    const { en1008, astmC1602 } = compareWaters({
      control: { initialSet: 3 * 3600 },
      test: { initialSet: 4.4 * 3600 },
    });
    expect(en1008.initialWithin).toBe('fails');
    expect(astmC1602.set).toBe('passes');
  });

  test('a reading exactly on a limit passes, one beyond it does not', () => {
    const hour = 3600;
    const control = { initialSet: 4 * hour, finalSet: 10 * hour, strength: 10e6 };
    const en = (test: Readings) => compareWaters({ control, test }).en1008;
    const astm = (test: Readings) => compareWaters({ control, test }).astmC1602;
    // neville-water-tests: an hour and twelve, a quarter from the control, nine tenths of its strength.
    expect(en({ initialSet: hour }).leastInitial).toBe('passes');
    expect(en({ initialSet: hour - 1 }).leastInitial).toBe('fails');
    for (const [initialSet, passes] of [
      [3 * hour, true],
      [3 * hour - 1, false],
      [5 * hour, true],
      [5 * hour + 1, false],
    ] as const)
      expect(en({ initialSet }).initialWithin).toBe(passes ? 'passes' : 'fails');
    expect(en({ finalSet: 12 * hour }).mostFinal).toBe('passes');
    expect(en({ finalSet: 12 * hour + 1 }).mostFinal).toBe('fails');
    expect(en({ strength: 9e6 }).strength).toBe('passes');
    expect(en({ strength: 8.99e6 }).strength).toBe('fails');
    // pca-design-control: an hour earlier to an hour and a half later.
    for (const [initialSet, passes] of [
      [3 * hour, true],
      [3 * hour - 1, false],
      [5.5 * hour, true],
      [5.5 * hour + 1, false],
    ] as const)
      expect(astm({ initialSet }).set).toBe(passes ? 'passes' : 'fails');
    expect(astm({ strength: 9e6 }).strength).toBe('passes');
    expect(astm({ strength: 8.99e6 }).strength).toBe('fails');
  });

  test('a limit is met exactly in tenths of an hour and in minutes', () => {
    const time = (number: number, unit: string) => {
      const read = parseQuantity(`${number} ${unit}`, 'time');
      if (!read.ok) throw new Error(`${number} ${unit}`);
      return read.value;
    };
    const set = (control: number, test: number) =>
      compareWaters({ control: { initialSet: control }, test: { initialSet: test } });
    for (let tenths = 11; tenths < 120; tenths++)
      for (const [unit, per] of [
        ['h', 10],
        ['min', 1 / 6],
      ] as const) {
        const of = (ours: number) => time(Number((ours / per).toFixed(1)), unit);
        for (const on of [tenths + 15, tenths - 10])
          expect(set(of(tenths), of(on)).astmC1602.set, `${on}/${tenths} ${unit}`).toBe('passes');
        for (const past of [tenths + 15.01, tenths - 10.01])
          expect(
            set(time(tenths / 10, 'h'), time(past / 10, 'h')).astmC1602.set,
            `${past}/${tenths}`,
          ).toBe('fails');
        if (tenths % 4 === 0)
          expect(set(of(tenths), of(1.25 * tenths)).en1008.initialWithin).toBe('passes');
      }
  });

  test('refuses readings of 0 or less, naming whose they are', () => {
    const good = { initialSet: 7200, finalSet: 14_400, strength: 1e7 };
    const positive = { refuses: [0, -1, Number.NaN] };
    for (const whose of ['control', 'test'] as const)
      expectLimits(
        (readings) => compareWaters({ control: {}, test: {}, [whose]: readings }),
        good,
        {
          initialSet: { ...positive, as: `${whose}.initialSet` },
          finalSet: { takes: [7201], refuses: [7200, 0], as: `${whose}.finalSet` },
          strength: { ...positive, as: `${whose}.strength` },
        },
      );
    expect(() => compareWaters({ control: {}, test: { finalSet: 0 } })).toThrow('test.finalSet');
  });

  test('refuses a final set before the initial', () => {
    const test = { initialSet: 7200, finalSet: 3600 };
    expect(() => compareWaters({ control: {}, test })).toThrow(RangeError);
  });
});
