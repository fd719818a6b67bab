import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designBatch } from '../../../src/core/mix/batch-design.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { isBaseMix } from '../../../src/core/mix/water-cement-limits.ts';
import { type BatchWeighed, reconcile } from '../../../src/core/records/reconcile.ts';
import { type Doubts, judgeBatch } from '../../../src/core/records/verdict.ts';

/** A batch by core's own proportioning, of whose gas `survival` is left when the bucket is weighed. */
function batch(survival: number, target = 600, over: Partial<BatchWeighed> = {}): BatchWeighed {
  const mix = proportion({
    volume: 0.04,
    target: { wetDensity: target },
    waterCement: 0.4,
    foamDensity: 80,
  });
  const gas = mix.foamVolume * (1 - 80 / 1000);
  const density = mix.mass / (mix.volume - (1 - survival) * gas);
  return {
    cement: mix.cement,
    water: mix.water,
    sand: 0,
    foamVolume: mix.foamVolume,
    foamDensity: 80,
    foamAdded: 0,
    baseAdded: 0,
    tare: 0.85,
    full: 0.85 + density * 0.02,
    vessel: 0.02,
    ...over,
  };
}

const u: Doubts = {
  cement: 0.01,
  water: 0.01,
  foamVolume: 0.0003,
  foamDensity: 1,
  full: 0.01,
  tare: 0.01,
  vessel: 0.0002,
};

const share = fc.double({ min: 0.3, max: 1, noNaN: true });
const target = fc.double({ min: 350, max: 1600, noNaN: true });

describe('what went in against what came out', () => {
  test('finds the survival that a batch was simulated with', () => {
    fc.assert(
      fc.property(share, target, (survival, density) => {
        expect(reconcile(batch(survival, density)).survival).toBeCloseTo(survival, 9);
      }),
    );
  });

  test('finds it beside fibre and pigment, base mix added or none', () => {
    const design = designBatch({
      volume: 0.04,
      target: { wetDensity: 600 },
      binder: [{ kind: 'portland', share: 1, density: 3150 }],
      waterCement: 0.4,
      foamDensity: 80,
      fibre: { kind: 'ar-glass', share: 0.01 },
      pigment: { share: 0.06 },
      survival: 0.8,
    });
    const further = {
      further: design.fibre + design.pigment,
      furtherVolume: design.volumes.fibre + design.volumes.pigment,
    };
    const made = batch(0.8, 600, {
      cement: design.mix.cement,
      water: design.waterToAdd,
      foamVolume: design.mix.foamVolume,
      full: 0.85 + 600 * 0.02,
    });
    const found = reconcile({ ...made, ...further });
    expect(found.survival).toBeCloseTo(0.8, 9);
    expect(found.massIn).toBeCloseTo(24, 9);
    expect(found.solidShare).toBeCloseTo(
      (design.mix.cement + design.fibre + design.pigment) / 24,
      9,
    );
    expect(Math.abs(reconcile(made).survival - 0.8)).toBeGreaterThan(0.05);
    // Base mix added has its share of them: half as much again of all but the foam.
    const base = made.cement + made.water + further.further;
    const more = reconcile({ ...made, ...further, baseAdded: base / 2 });
    expect(more.massIn).toBeCloseTo(24 + base / 2, 9);
    const liquid = (80 / 1000) * made.foamVolume;
    expect(more.airless - liquid).toBeCloseTo(1.5 * (found.airless - liquid), 12);
  });

  test('volume without gas and gas make up the yield', () => {
    fc.assert(
      fc.property(share, target, (survival, density) => {
        const r = reconcile(batch(survival, density));
        expect(r.airless + r.gasFound).toBeCloseTo(r.yield, 12);
        expect(r.air * r.yield).toBeCloseTo(r.gasFound, 12);
        expect(r.planned).toBeCloseTo(density, 6);
      }),
    );
  });

  test('a heavier bucket means less gas, in every batch', () => {
    fc.assert(
      fc.property(share, fc.double({ min: 0.01, max: 2, noNaN: true }), (survival, more) => {
        const b = batch(survival);
        expect(reconcile({ ...b, full: b.full + more }).survival).toBeLessThan(
          reconcile(b).survival,
        );
      }),
    );
  });

  test('base mix added while correcting keeps its ratios', () => {
    const b = batch(1);
    const added = reconcile({ ...b, baseAdded: b.cement + b.water });
    expect(added.massIn).toBeCloseTo(2 * (b.cement + b.water) + 80 * b.foamVolume, 9);
    expect(added.waterCement).toBeLessThan(reconcile(b).waterCement);
  });

  test('worked by hand: 10 kg cement, 4 kg water, 30 L of foam at 80 g/L, weighed at 600', () => {
    const r = reconcile(
      batch(1, 600, { cement: 10, water: 4, foamVolume: 0.03, tare: 1, full: 13, vessel: 0.02 }),
    );
    expect(r.massIn).toBeCloseTo(16.4, 12);
    expect(r.yield).toBeCloseTo(16.4 / 600, 12);
    expect(r.airless).toBeCloseTo(10 / 3150 + 0.004 + 0.0024, 12);
    expect(r.waterCement).toBeCloseTo(0.64, 12);
    expect(r.solidShare).toBeCloseTo(10 / 16.4, 12);
  });

  test('the share of solids of a sanded and corrected mix is the one worked out by hand', () => {
    // 20 kg of base mix, 15 of it solids, and 4 kg more of it; 2.4 and 0.8 kg of foam.
    const sanded = {
      cement: 10,
      water: 5,
      sand: 5,
      baseAdded: 4,
      foamVolume: 0.03,
      foamAdded: 0.01,
    };
    expect(reconcile(batch(1, 600, sanded)).solidShare).toBeCloseTo(18 / 27.2, 12);
  });
});

describe('the verdict', () => {
  test('an ordinary batch is consistent', () => {
    const v = judgeBatch(batch(0.93), u);
    expect(v.finding).toBe('consistent');
    expect(v.survival).toBeCloseTo(0.93, 9);
    expect(v.u.survival).toBeGreaterThan(0.005);
    expect(v.u.survival).toBeLessThan(0.05);
    expect(v.suspects).toEqual([]);
  });

  test('more air than the foam brought is found, and correcting the first suspect removes it', () => {
    const b = batch(1.2);
    const v = judgeBatch(b, u);
    expect(v.finding).toBe('more-air-than-foam');
    const first = v.suspects[0]!;
    const mended = { ...b, [first.reading]: (b[first.reading] as number) + first.by };
    expect(reconcile(mended).survival).toBeLessThan(1.06);
    expect(v.suspects.map(({ doubts }) => doubts)).toEqual(
      v.suspects.map(({ doubts }) => doubts).toSorted((x, y) => x - y),
    );
  });

  test('a density above that without gas is found', () => {
    const b = batch(0.5);
    const { massIn, airless } = reconcile(b);
    const v = judgeBatch({ ...b, full: b.tare + (massIn / airless) * 1.2 * b.vessel }, u);
    expect(v.finding).toBe('heavier-than-airless');
  });

  test('lost and gained mass are distinguished', () => {
    const b = batch(0.95);
    const placed = reconcile(b).yield;
    const out = (share: number, leftOver: number) =>
      judgeBatch(
        { ...b, placed: placed * share, leftOver },
        { ...u, placed: 0.0002, leftOver: 0.01 },
      ).finding;
    expect(out(1, 0)).toBe('consistent');
    expect(out(0.8, 0)).toBe('lost-mass');
    expect(out(0.8, 0.2 * reconcile(b).massIn)).toBe('consistent');
    expect(out(1.2, 0)).toBe('gained-mass');
  });

  test('readings with too large an uncertainty are not judged', () => {
    expect(judgeBatch(batch(0.9), { ...u, foamVolume: 0.015 }).finding).toBe('cannot-tell');
  });

  test('readings without uncertainty give results without uncertainty', () => {
    expect(judgeBatch(batch(0.9), {}).u.survival).toBe(0);
  });
});

test('refuses an impossible reading by its name', () => {
  expect(() => reconcile(batch(1, 600, { full: 0.8 }))).toThrow('full');
  expect(() => reconcile(batch(1, 600, { foamDensity: 1000 }))).toThrow('no-gas');
  expect(() => reconcile(batch(1, 600, { cement: 0 }))).toThrow('cement');
});

describe('an impossible base mix', () => {
  const of = (water: number, cement: number) =>
    judgeBatch(batch(0.9, 600, { water, cement }), u).finding;

  test('is found before anything about its foam', () => {
    const { water, cement } = batch(0.9);
    expect(of(water, cement)).toBe('consistent');
    expect(of(cement, water)).toBe('no-such-base-mix');
    expect(judgeBatch(batch(0.9, 600, { water: cement, cement: water }), u).suspects).toEqual([]);
    expect(reconcile(batch(0.9)).waterCementBase).toBeCloseTo(0.4, 12);
  });

  test.each([
    [0.2, true],
    [0.199, false],
    [1.25, true],
    [1.251, false],
  ])('a w/c of %d: %s', (waterCement, is) => {
    expect(isBaseMix(waterCement)).toBe(is);
  });
});
