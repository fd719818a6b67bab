import { describe, expect, test } from 'vitest';
import { batchCost } from '../../../src/core/mix/cost.ts';
import { fibreMass, fibreShare } from '../../../src/core/mix/fibres.ts';
import { pigmentMass } from '../../../src/core/mix/pigment.ts';
import { expectLimits } from '../refuses.ts';

describe('what a batch costs', () => {
  const line = (amount: number, price: number) => ({
    name: `${amount} at ${price}`,
    amount,
    price,
  });
  const cost = (lines: ReturnType<typeof line>[]) =>
    batchCost({ lines, parts: 2, made: 0.1, used: 0.1 });

  test('has the cost and share of each line, and names the dearest in any position', () => {
    const { lines, dearest, wasted } = cost([line(2, 3), line(4, 3.5), line(10, 0)]);
    expect(lines.map(({ cost }) => cost)).toEqual([6, 14, 0]);
    expect(lines.map(({ share }) => share)).toEqual([0.3, 0.7, 0]);
    expect(dearest).toBe(1);
    expect(wasted).toBe(0);
    expect(cost([line(4, 3), line(3, 4)]).dearest).toBe(0);
    expect(cost([line(4, 0), line(1, 0.01)]).dearest).toBe(1);
  });

  test('refuses parts, volumes, amounts and prices out of range', () => {
    expectLimits(
      ({ amount, price, ...batch }) => batchCost({ lines: [line(amount, price)], ...batch }),
      { amount: 2, price: 3, parts: 4, made: 0.1, used: 0.08 },
      {
        amount: { takes: [0], refuses: [-1] },
        price: { takes: [0, 1e15], refuses: [-1, 1.1e15] },
        parts: { takes: [1], refuses: [0, 0.9] },
        made: { refuses: [0, -1] },
        used: { takes: [0.1], refuses: [0, -0.1, 0.11] },
      },
    );
    expect(() => batchCost({ lines: [], parts: 1, made: 0.1, used: 0.11 })).toThrow(
      'more-used-than-made',
    );
  });
});

describe('a dose of pigment', () => {
  const dose = (share: number, ownMaximum?: number) =>
    pigmentMass({ cementitious: 20, share, ownMaximum });
  const codes = (share: number, ownMaximum?: number) =>
    dose(share, ownMaximum).notes.map(({ code }) => code);

  test('is a share of the binder, and at most a tenth of it or the pigment’s own maximum', () => {
    expect(dose(0.03)).toEqual({ mass: expect.closeTo(0.6, 12), most: 2, notes: [] });
    expect(dose(0.03, 0.04).most).toBeCloseTo(0.8, 12);
    expect(dose(0.03, 0.5).most).toBe(2);
  });

  test('exactly at a limit gets no note, and a dose of 0 is not called pale', () => {
    expect([0, 0.01, 0.05, 0.1].map((share) => codes(share))).toEqual([[], [], [], ['saturated']]);
    expect(codes(0.04, 0.04)).toEqual([]);
    expect(codes(0.0099)).toEqual(['pale']);
  });

  test('refuses negative binder and a share above 1', () => {
    expectLimits(
      pigmentMass,
      { cementitious: 20, share: 0.03, ownMaximum: 0.08 },
      {
        cementitious: { takes: [0], refuses: [-1] },
        share: { takes: [0, 1], refuses: [-0.01, 1.01], as: 'pigmentShare' },
        ownMaximum: { takes: [0, 1], refuses: [-0.01, 1.01] },
      },
    );
  });
});

test('the mass of fibre is its volume share times its density, by hand', () => {
  const dose = { kind: 'pva', share: 0.01, volume: 0.2 } as const;
  expect(fibreMass(dose)).toEqual({
    mass: expect.closeTo(2.6, 12),
    volume: expect.closeTo(0.002, 15),
  });
  expect(fibreMass({ ...dose, density: 1000 }).mass).toBeCloseTo(2, 12);
  expect(fibreShare({ kind: 'pva', mass: 2, volume: 0.2, density: 1000 })).toBeCloseTo(0.01, 12);
});
