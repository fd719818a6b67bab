import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBags, wholeBags } from '../../../src/core/mix/bags.ts';
import { type DesignInput, designBatch } from '../../../src/core/mix/batch-design.ts';
import { binderDensity } from '../../../src/core/mix/binder.ts';
import { FIBRES, fibreMass, fibreShare } from '../../../src/core/mix/fibres.ts';
import { dampAggregate } from '../../../src/core/mix/moisture.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { between } from '../arbitrary.ts';
import { expectLimits } from '../refuses.ts';

const plain: DesignInput = {
  volume: 0.10512,
  target: { wetDensity: 600 },
  binder: [{ kind: 'portland', share: 1 }],
  waterCement: 0.4,
  foamDensity: 80,
};

/** Mixes with everything in them. */
const full: fc.Arbitrary<DesignInput> = fc
  .record({
    volume: between(0.01, 2),
    wet: between(450, 950),
    slag: between(0, 0.6),
    ash: between(0, 0.3),
    waterCement: between(0.4, 0.8),
    sand: between(0, 1.5),
    moisture: between(0, 0.04),
    absorption: between(0, 0.02),
    light: between(0, 0.1),
    lightDensity: between(150, 900),
    fibre: between(0, 0.005),
    pigment: between(0, 0.06),
    admixture: between(0, 0.01),
    waterShare: between(0.5, 1),
    foamDensity: between(30, 100),
    total: fc.boolean(),
    survival: between(0.5, 1),
  })
  .map((r) => {
    const base: DesignInput = {
      volume: r.volume,
      target: { wetDensity: r.wet },
      binder: [
        { kind: 'portland' as const, share: 1 - r.slag - r.ash },
        { kind: 'slag' as const, share: r.slag },
        { kind: 'fly-ash' as const, share: r.ash },
      ],
      waterCement: r.waterCement,
      sand: { ratio: r.sand, density: 2650, moisture: r.moisture, absorption: r.absorption },
      lightFiller: { ratio: r.light, density: r.lightDensity },
      fibre: { kind: 'polypropylene' as const, share: r.fibre },
      pigment: { share: r.pigment },
      admixture: { share: r.admixture, waterShare: r.waterShare },
      foamDensity: r.foamDensity,
      survival: r.survival,
    };
    // The total that the foam's liquid makes of it: any other might leave the base mix too dry.
    const { waterCementTotal } = designBatch(base).mix;
    return r.total ? { ...base, waterCementOf: 'total', waterCement: waterCementTotal } : base;
  });

test('pigment or admixture does not make a neat mix a sanded one', () => {
  const wet: DesignInput = { ...plain, waterCement: 1 };
  const codes = (more: Partial<DesignInput>) =>
    designBatch({ ...wet, ...more }).notes.map(({ code, of }) => `${code} ${of}`);
  const outside = 'outside-range waterCementBase';
  expect(codes({})).toContain(outside);
  expect(codes({ pigment: { share: 0.005 } })).toContain(outside);
  expect(codes({ admixture: { share: 0.01, waterShare: 0.6 } })).toContain(outside);
  expect(codes({ sand: { ratio: 1, density: 2650 } })).not.toContain(outside);
});

describe('a whole batch', () => {
  test('of cement, water and foam alone is the one proportion gives', () => {
    const { mix, waterToAdd, wetDensity, ovenDryDensity } = designBatch(plain);
    const simple = proportion({
      volume: 0.10512,
      target: { wetDensity: 600 },
      waterCement: 0.4,
      foamDensity: 80,
    });
    expect(mix.cement).toBeCloseTo(simple.cement, 10);
    expect(waterToAdd).toBeCloseTo(simple.water, 10);
    expect(wetDensity).toBeCloseTo(600, 9);
    expect(ovenDryDensity).toBeCloseTo(simple.ovenDryDensity, 9);
  });

  test('with gas loss and a cement density of its own is the one worked out by hand', () => {
    // w/c 0.4, foam of 80, nine tenths of its gas living: 0.908 of the foam is left. 1 kg of cement of 2900
    // and its water fill 0.744828 L. For 100 L at 600: C = 0.1 (600 × 0.908 − 80)/(1.4 × 0.908 − 80 ×
    // 0.000744828) = 38.362 kg; what is left of the foam fills 100 − 28.573 = 71.427 L, so 78.664 L are made.
    const { cementitious, mix, volumes } = designBatch({
      ...plain,
      volume: 0.1,
      binder: [{ kind: 'portland', share: 1, density: 2900 }],
      survival: 0.9,
    });
    expect(cementitious).toBeCloseTo(38.362, 3);
    expect(volumes.foam * 1000).toBeCloseTo(71.427, 3);
    expect(mix.foamVolume * 1000).toBeCloseTo(78.664, 3);
  });

  test('mass and volume balance, whatever is in it', () => {
    fc.assert(
      fc.property(full, (input) => {
        const d = designBatch(input);
        const volume = Object.values(d.volumes).reduce((sum, each) => sum + each, 0);
        expect(volume / input.volume).toBeCloseTo(1, 9);
        const weighed =
          d.cementitious +
          d.sand +
          d.lightFiller +
          d.fibre +
          d.pigment +
          d.admixture +
          d.waterToAdd +
          d.mix.foamMass;
        expect(weighed / d.mass).toBeCloseTo(1, 9);
        expect(d.wetDensity / (input.target as { wetDensity: number }).wetDensity).toBeCloseTo(
          1,
          9,
        );
        const counted = d.mix.water + (input.waterCementOf === 'total' ? d.mix.foamMass : 0);
        expect(counted / d.cementitious).toBeCloseTo(input.waterCement, 9);
      }),
    );
  });

  test('is the same when asked for by its oven-dry density or binder content', () => {
    fc.assert(
      fc.property(full, (input) => {
        const d = designBatch(input);
        const dry = designBatch({ ...input, target: { ovenDryDensity: d.ovenDryDensity } });
        const content = designBatch({
          ...input,
          target: { cementContent: d.cementitious / input.volume },
        });
        for (const again of [dry, content]) {
          expect(again.wetDensity / d.wetDensity).toBeCloseTo(1, 9);
          expect(again.cementitious / d.cementitious).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  test('damp sand changes what is weighed and poured, not what is cast', () => {
    const sand = { ratio: 1, density: 2650, absorption: 0.01 };
    const dry = designBatch({ ...plain, sand: { ...sand, moisture: 0 } });
    const wet = designBatch({ ...plain, sand: { ...sand, moisture: 0.06 } });
    expect(wet.wetDensity).toBeCloseTo(dry.wetDensity, 9);
    expect(wet.cementitious).toBeCloseTo(dry.cementitious, 9);
    expect(wet.sand - dry.sand).toBeCloseTo(dry.waterToAdd - wet.waterToAdd, 9);
    expect(wet.waterToAdd).toBeLessThan(dry.waterToAdd);
  });

  test('each filler brings its own water: by hand', () => {
    const { cementitious, broughtByFillers, sand, lightFiller } = designBatch({
      ...plain,
      sand: { ratio: 1.01, density: 2650, moisture: 0.05, absorption: 0.01 },
      lightFiller: { ratio: 0.11, density: 800, moisture: 0.3, absorption: 0.1 },
    });
    // Oven-dry: 1 and 0.1 to a kilogram of binder.
    expect(sand / cementitious).toBeCloseTo(1.05, 9);
    expect(lightFiller / cementitious).toBeCloseTo(0.13, 9);
    expect(broughtByFillers / cementitious).toBeCloseTo(0.04 + 0.02, 9);
  });

  test('a blended binder is weighed out by its shares', () => {
    const { binder, cementitious } = designBatch({
      ...plain,
      binder: [
        { kind: 'portland', share: 0.7 },
        { kind: 'slag', share: 0.3 },
      ],
    });
    expect(binder).toEqual([
      { kind: 'portland', mass: expect.closeTo(0.7 * cementitious, 9) },
      { kind: 'slag', mass: expect.closeTo(0.3 * cementitious, 9) },
    ]);
  });

  test('refuses sand wetter than the mix and cement that does not fit', () => {
    expect(() =>
      designBatch({
        ...plain,
        target: { wetDensity: 1400 },
        sand: { ratio: 3, density: 2650, moisture: 0.3, absorption: 0 },
      }),
    ).toThrow('too-wet');
    expect(() => designBatch({ ...plain, target: { cementContent: 1500 } })).toThrow('overfills');
    expect(() => designBatch({ ...plain, target: { ovenDryDensity: 2500 } })).toThrow(
      'heavier-than-base-mix',
    );
  });
});

describe('whole bags', () => {
  test('one bag and this form: the density that comes out holds that cement', () => {
    const { target: _, ...recipe } = plain;
    const design = fromBags({ ...recipe, volume: 0.0486 }, { bags: 1, bag: 25 });
    expect(design.cementitious).toBeCloseTo(25, 9);
    // 25 kg of cement and 10 of water take 17.94 L; 30.66 L of foam at 80 g/L fill the rest.
    expect(design.mix.foamVolume).toBeCloseTo(0.0486 - 25 / 3150 - 10 / 1000, 9);
    expect(design.wetDensity).toBeCloseTo((35 + 80 * design.mix.foamVolume) / 0.0486, 9);
  });

  test('rounding down and up lie about the batch, recipe or volume kept', () => {
    fc.assert(
      fc.property(full, between(1, 50), (input, bag) => {
        const design = designBatch(input);
        const { exact, down, up } = wholeBags(input, design, bag);
        expect(up.bags).toBeGreaterThanOrEqual(exact - 1e-6);
        expect(up.volume / input.volume).toBeCloseTo(up.cementitious / design.cementitious, 9);
        if (up.sameVolume) expect(up.sameVolume.cementitious / up.cementitious).toBeCloseTo(1, 9);
        if (!down) {
          expect(exact).toBeLessThan(1);
          return;
        }
        expect(down.bags).toBeLessThanOrEqual(exact + 1e-6);
        expect(up.bags - down.bags).toBeLessThanOrEqual(1);
        // More cement is denser only where the base mix is denser than what it pushes out: foam.
        if (
          down.sameVolume &&
          up.sameVolume &&
          up.bags > down.bags &&
          input.waterCementOf === 'base'
        )
          expect(up.sameVolume.wetDensity).toBeGreaterThan(down.sameVolume.wetDensity);
      }),
    );
  });

  test('a rounding that is impossible at the same volume is left out, and the other kept', () => {
    // 41.9 kg of cement. With 25 and 18 of water in all, foam fills (160 − 7.94 − 18)/0.9 = 149 L and
    // takes 14.9 kg of that water; 3.1 are left to mix 25 kg with, a w/c of 0.12.
    const light: DesignInput = {
      ...plain,
      volume: 0.16,
      target: { wetDensity: 450 },
      waterCement: 0.72,
      waterCementOf: 'total',
      foamDensity: 100,
    };
    const robbed = wholeBags(light, designBatch(light), 25);
    expect(robbed.down).toMatchObject({ bags: 1, sameVolume: undefined });
    expect(robbed.up.sameVolume!.cementitious).toBeCloseTo(50, 9);
    // 20 L hold 20/(1/3.15 + 0.4) = 27.9 kg of cement as base mix without foam: two bags of 15 do not fit.
    const dense = { ...plain, volume: 0.02, target: { wetDensity: 1900 } };
    const full = wholeBags(dense, designBatch(dense), 15);
    expect(full.down!.sameVolume!.cementitious).toBeCloseTo(15, 9);
    expect(full.up).toMatchObject({ bags: 2, sameVolume: undefined });
  });

  test('of a blend the bags hold the cement only', () => {
    const { target: _, ...recipe } = plain;
    const half: Omit<DesignInput, 'target'> = {
      ...recipe,
      binder: [
        { kind: 'portland', share: 0.5 },
        { kind: 'slag', share: 0.5 },
      ],
    };
    expect(fromBags(half, { bags: 1, bag: 20 }).cementitious).toBeCloseTo(40, 9);
  });

  test('refuse counts, bag masses and volumes of 0 or less', () => {
    const { target: _, ...recipe } = plain;
    expectLimits(
      ({ volume, ...bags }: { volume: number; bags: number; bag: number }) =>
        fromBags({ ...recipe, volume }, bags),
      { volume: 0.1, bags: 1, bag: 25 },
      {
        volume: { refuses: [0, -1, Number.NaN] },
        bags: { takes: [0.5], refuses: [0, -1, Number.NaN] },
        bag: { takes: [5], refuses: [0, -25] },
      },
    );
    const [input, design] = [plain, designBatch(plain)];
    expectLimits(
      ({ bag }: { bag: number }) => wholeBags(input, design, bag),
      { bag: 25 },
      { bag: { takes: [5], refuses: [0, -25] } },
    );
  });

  test('refuse a binder without cement', () => {
    const { target: _, ...recipe } = plain;
    expect(() =>
      fromBags({ ...recipe, binder: [{ kind: 'slag', share: 1 }] }, { bags: 1, bag: 25 }),
    ).toThrow('no-cement');
  });
});

describe('parts of it', () => {
  test('a blend lies between its powders, and shares must be whole', () => {
    const blend = binderDensity([
      { kind: 'portland', share: 0.7 },
      { kind: 'slag', share: 0.3 },
    ]);
    expect(blend).toBeCloseTo(1 / (0.7 / 3150 + 0.3 / 2900), 9);
    expect(() => binderDensity([{ kind: 'portland', share: 0.9 }])).toThrow('shares-not-whole');
  });

  test('fibre by volume and by mass convert back and forth', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(FIBRES) as (keyof typeof FIBRES)[])),
        between(0, 0.1),
        between(0.001, 5),
        (kind, share, volume) => {
          const { mass } = fibreMass({ kind, share, volume });
          expect(fibreShare({ kind, mass, volume })).toBeCloseTo(share, 12);
        },
      ),
    );
  });

  test('the mass of damp sand includes its water', () => {
    fc.assert(
      fc.property(
        between(0, 1000),
        between(0, 0.3),
        between(0, 0.1),
        (surfaceDry, moisture, absorption) => {
          const { toWeigh, water } = dampAggregate({ surfaceDry, moisture, absorption });
          expect(toWeigh - water).toBeCloseTo(surfaceDry, 8);
        },
      ),
    );
  });
});
