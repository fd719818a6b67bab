import { describe, expect, test } from 'vitest';
import { fromBags, wholeBags } from '../../../src/core/mix/bags.ts';
import { type DesignInput, designBatch } from '../../../src/core/mix/batch-design.ts';
import { type ProportionInput, proportion } from '../../../src/core/mix/proportion.ts';

const plain: DesignInput = {
  volume: 0.1,
  target: { wetDensity: 600 },
  binder: [{ kind: 'portland', share: 1 }],
  waterCement: 0.4,
  foamDensity: 80,
};
const half: DesignInput = {
  ...plain,
  binder: [
    { kind: 'portland', share: 0.5 },
    { kind: 'slag', share: 0.5 },
  ],
};
const noted = (input: DesignInput) => designBatch(input).notes.map(({ code }) => code);

describe('the parts of a design', () => {
  test('a binder other than pure cement is noted', () => {
    expect(noted(half)).toContain('blend-binds-otherwise');
    expect(noted(plain)).not.toContain('blend-binds-otherwise');
    const none = [...plain.binder, { kind: 'slag' as const, share: 0 }];
    expect(noted({ ...plain, binder: none })).not.toContain('blend-binds-otherwise');
  });

  test('sand without a stated moisture is surface-dry, whatever its absorption', () => {
    const { sand, broughtByFillers, waterToAdd, mix } = designBatch({
      ...plain,
      sand: { ratio: 1, density: 2650, absorption: 0.02 },
    });
    expect(sand).toBeCloseTo(mix.cement, 9);
    expect(broughtByFillers).toBe(0);
    expect(waterToAdd).toBe(mix.water);
  });

  test('pigment has the volume of its own density, or that of iron oxide by default', () => {
    const { pigment, volumes, cementitious } = designBatch({
      ...plain,
      pigment: { share: 0.05, density: 5000 },
    });
    expect(pigment).toBeCloseTo(0.05 * cementitious, 12);
    expect(volumes.pigment).toBeCloseTo(pigment / 5000, 12);
    const iron = designBatch({ ...plain, pigment: { share: 0.05 } });
    expect(iron.volumes.pigment).toBeCloseTo(iron.pigment / 4500, 12);
  });

  test('refuses targets of 0 or less, and an oven-dry one no heavier than its fibre', () => {
    const refused = (target: DesignInput['target']) => () =>
      designBatch({ ...plain, fibre: { kind: 'polypropylene', share: 0.01 }, target });
    // Nothing is said of a limit from above.
    const low = (quantity: string, min: number) =>
      expect.objectContaining({
        quantity,
        because: undefined,
        allowed: expect.objectContaining({ min, aboveMin: true }),
      });
    expect(refused({ cementContent: 0 })).toThrow(low('cementContent', 0));
    expect(refused({ cementContent: -1 })).toThrow(low('cementContent', 0));
    expect(refused({ ovenDryDensity: 9 })).toThrow(low('ovenDryDensity', 9));
    expect(refused({ ovenDryDensity: 8.9 })).toThrow(low('ovenDryDensity', 9));
    expect(refused({ ovenDryDensity: 10 })).not.toThrow();
  });

  test('the upper limit of each target is the base mix without foam, which is accepted', () => {
    // One hundredth is fibre of 900 kg/m³; a kilogram of cement makes 1/3150 + 0.4/1000 m³ of base mix.
    const input: DesignInput = { ...plain, fibre: { kind: 'polypropylene', share: 0.01 } };
    const most = 0.99 / (1 / 3150 + 0.4 / 1000);
    const limit = (target: DesignInput['target'], because: string) => {
      expect(() => designBatch({ ...input, target })).toThrow(expect.objectContaining({ because }));
    };
    limit({ cementContent: most * 1.0001 }, 'overfills');
    limit({ ovenDryDensity: (1.2 * most + 9) * 1.0001 }, 'heavier-than-base-mix');
    for (const target of [
      { cementContent: most * 0.9999 },
      { ovenDryDensity: (1.2 * most + 9) * 0.9999 },
    ]) {
      const { volumes, cementitious } = designBatch({ ...input, target });
      expect(volumes.foam).toBeCloseTo(0, 4);
      expect(cementitious / (most * 0.1)).toBeCloseTo(1, 3);
    }
  });
});

describe('a binder content asked for is what comes, however water and foam are counted', () => {
  test.each([
    ['base', 'foam-counted'],
    ['base', 'foam-ignored'],
    ['total', 'foam-counted'],
    ['total', 'foam-ignored'],
  ] as const)('w/c of the %s, %s', (waterCementOf, convention) => {
    const counted = { ...plain, waterCement: 0.6, waterCementOf, convention };
    const fibre = { kind: 'polypropylene' as const, share: 0.01 };
    const content = designBatch({ ...counted, fibre, target: { cementContent: 350 } });
    expect(content.cementitious).toBeCloseTo(35, 9);
    // 1.2 of the cement stays dry, and 9 kg of fibre to the cubic metre.
    const dry = designBatch({ ...counted, fibre, target: { ovenDryDensity: 429 } });
    expect(dry.cementitious).toBeCloseTo(35, 9);
    expect(dry.ovenDryDensity).toBeCloseTo(429, 9);
  });
});

describe('bags', () => {
  test('of a batch of whole bags stay the same, rounded down and up', () => {
    const { target: _, ...recipe } = plain;
    for (const bags of [1, 3]) {
      const design = fromBags({ ...recipe, volume: 0.2 }, { bags, bag: 20 });
      const { exact, down, up } = wholeBags({ ...plain, volume: 0.2 }, design, 20);
      expect(exact).toBeCloseTo(bags, 9);
      expect([down?.bags, up.bags]).toEqual([bags, bags]);
      expect(up.cementitious).toBe(bags * 20);
    }
  });

  test('of a blend are counted by its cement, and are at least one', () => {
    const design = designBatch(half);
    const { exact, down, up } = wholeBags(half, design, 10);
    expect(exact).toBeCloseTo((0.5 * design.cementitious) / 10, 12);
    expect(exact).toBeGreaterThan(1);
    // A bag of 10 kg makes 20 kg of binder, and so much more or less of the recipe.
    expect(down!.bags).toBe(1);
    expect(down!.cementitious).toBeCloseTo(20, 12);
    expect(down!.volume).toBeCloseTo((0.1 * 20) / design.cementitious, 12);
    expect(up.bags).toBe(2);
    const large = wholeBags(half, design, 100);
    expect(large.down).toBeUndefined();
    expect(large.up.bags).toBe(1);
  });
});

describe('what is said of a proportion', () => {
  const mix: ProportionInput = {
    volume: 0.1,
    target: { wetDensity: 600 },
    waterCement: 0.5,
    foamDensity: 80,
  };
  const outside = (over: Partial<ProportionInput>) =>
    proportion({ ...mix, ...over }).notes.map(({ code, of }) => `${code} ${of}`);

  // 320 to 1920: astm-c869, aci-523-1r.
  test('notes a density outside that of cellular concrete', () => {
    const dense = { waterCement: 0.35, sandCement: 1 };
    expect(outside({ target: { wetDensity: 321 } })).toEqual([]);
    expect(outside({ target: { wetDensity: 319 } })).toEqual(['outside-range wetDensity']);
    expect(outside({ ...dense, target: { wetDensity: 1919 } })).toEqual([]);
    expect(outside({ ...dense, target: { wetDensity: 1921 } })).toEqual([
      'outside-range wetDensity',
    ]);
  });

  test('a sanded mix may be wetter than a neat one, unless its solid is not sand', () => {
    const wet = { waterCement: 1, sandCement: 0.5 };
    expect(outside(wet)).toEqual([]);
    expect(outside({ ...wet, sanded: false })).toEqual(['outside-range waterCementBase']);
    expect(outside({ waterCement: 1 })).toEqual(['outside-range waterCementBase']);
  });

  test('a total w/c that leaves exactly 0.2 is accepted, one below it refused', () => {
    const thin = { ...mix, waterCementOf: 'total' } as const;
    for (const wetDensity of [250, 300, 350, 400, 450, 500]) {
      const target = { wetDensity };
      const { waterCementTotal } = proportion({ ...mix, target, waterCement: 0.2 });
      const least = proportion({ ...thin, target, waterCement: waterCementTotal });
      expect(least.waterCementBase).toBeCloseTo(0.2, 9);
    }
  });
  test('a batch by dry density or cement content has the same least w/c', () => {
    const thin = { ...plain, waterCementOf: 'total' } as const;
    for (const wetDensity of [250, 300, 350, 400, 450, 500]) {
      const target = { wetDensity };
      const driest = designBatch({ ...plain, target, waterCement: 0.2 });
      const waterCement = driest.mix.waterCementTotal;
      for (const same of [
        { ovenDryDensity: driest.ovenDryDensity },
        { cementContent: driest.cementitious / plain.volume },
      ]) {
        const least = designBatch({ ...thin, target: same, waterCement });
        expect(least.mix.waterCementBase).toBeCloseTo(0.2, 9);
        const under = () => designBatch({ ...thin, target: same, waterCement: waterCement - 1e-6 });
        expect(under).toThrow('paste-robs-foam');
      }
    }
  });
});
