import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { slabLimit } from '../../content/chapters/demoulding/lift.ts';
import { youngLighter } from '../../content/chapters/finished-part/density.ts';
import { dosed, without } from '../../content/chapters/mix/admixtures.ts';
import { ROUNDED, SHARP_CHOKED, SHARP_EDGED } from '../../src/core/air/orifice.ts';
import { fhpActivationEnergy } from '../../src/core/curing/age-factor.ts';
import { DRY_ENOUGH_MOISTURE, diffusionDryingTime } from '../../src/core/curing/drying.ts';
import { ONE_FREEZE_STRENGTH } from '../../src/core/curing/frost.ts';
import { steadyFace, throughLayers } from '../../src/core/curing/heat/face.ts';
import { ORDINARY_CEMENT } from '../../src/core/curing/heat/hydration.ts';
import { DIFFERENCE_LIMIT, heatInside } from '../../src/core/curing/heat/inside.ts';
import { STILL_AIR_TRANSFER } from '../../src/core/curing/heat/still-air.ts';
import { dailyHistory } from '../../src/core/curing/history.ts';
import { PEAK_LIMIT } from '../../src/core/curing/limits.ts';
import { curingPlan } from '../../src/core/curing/plan.ts';
import { setByTemperature } from '../../src/core/curing/set.ts';
import { GROWTH_COEFFICIENT } from '../../src/core/curing/strength-growth.ts';
import { thirdRuleFactor } from '../../src/core/curing/third-rule.ts';
import { handlingStress } from '../../src/core/demould/handling.ts';
import { LOAD_CONSTANT_METRIC } from '../../src/core/demould/lifting-equation/lift.ts';
import { TWO_PEOPLE_SHARE } from '../../src/core/demould/lifting-equation/scope.ts';
import { HANDLING_MULTIPLIERS, MOULD_ADHESION } from '../../src/core/demould/multipliers.ts';
import { FLEXURAL_RATIO } from '../../src/core/finished/flexural.ts';
import { EQUILIBRIUM_MOISTURE, SATURATED_FACTOR } from '../../src/core/finished/moisture.ts';
import { POWERS_PER_GRAM } from '../../src/core/finished/powers.ts';
import { strengthBand } from '../../src/core/finished/strength-band.ts';
import { WONG_2026 } from '../../src/core/finished/strength-relations/measured.ts';
import { valoreConductivity } from '../../src/core/finished/valore.ts';
import { concentrateShare } from '../../src/core/foam/dilution.ts';
import { glycerolViscosity } from '../../src/core/foam/glycerol.ts';
import { FIBRES } from '../../src/core/mix/fibres.ts';
import { proportion } from '../../src/core/mix/proportion.ts';
import { SPAN_CASES } from '../../src/core/placing/panel.ts';
import { batchVolume } from '../../src/core/placing/volume.ts';
import { STANDARD_ATMOSPHERE } from '../../src/core/quantity/constants.ts';
import { toUnit } from '../../src/core/quantity/convert.ts';
import { parseQuantity } from '../../src/core/quantity/parse.ts';
import * as MOLAR_MASS from '../../src/core/water/molar-masses.ts';
import { POT_CARBON_DIOXIDE } from '../../src/core/water/soften/boil.ts';
import { DECAHYDRATE_FACTOR } from '../../src/core/water/soften/washing-soda.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { DEMO_DAYS } from '../../src/worksheets/curing/curing-fields.ts';
import strengthTime from '../../src/worksheets/curing/strength-time.tsx';
import { demo } from '../../src/worksheets/demo.ts';
import { ABOUT_28_DAYS } from '../../src/worksheets/live/records/record-strengths.ts';

/**
 * Most figures in the chapters are put there by core when a page is built. These are typed, or said in
 * words, and rest on core all the same: each must stand in its page as written here, and be true.
 */
const chapters = resolve(import.meta.dirname, '../../content/chapters');
const words = (page: string) =>
  readFileSync(join(chapters, `${page}.mdx`), 'utf8')
    // What turns with the reader's units is in a span of its own.
    .replace(/<\/?span\b[^>]*>/g, '')
    .replace(/\s+/g, ' ');

const CELSIUS = 273.15;
const mix = proportion({
  volume: 1,
  target: { wetDensity: demo.wetDensity },
  waterCement: demo.waterCement,
  foamDensity: demo.foam.density,
});

/** The demo mix, or one as dense as that, as thick as that, conducting as when soaked and as when dry. */
function insideOf(
  thickness: number,
  celsius = 20,
  transfer = STILL_AIR_TRANSFER,
  wetDensity: number = demo.wetDensity,
) {
  const mix = proportion({
    volume: 1,
    target: { wetDensity },
    waterCement: demo.waterCement,
    foamDensity: demo.foam.density,
  });
  const dry = valoreConductivity({ dryDensity: mix.ovenDryDensity }).conductivity;
  const air = steadyFace({ temperature: CELSIUS + 15, transfer });
  const run = (more = {}) => {
    const { peak, difference } = heatInside({
      thickness,
      mix: { cement: mix.cement, water: mix.water + mix.foamMass },
      hydration: ORDINARY_CEMENT,
      initialTemperature: CELSIUS + celsius,
      near: air,
      far: air,
      duration: 5 * 86_400,
      cells: 40,
      ...more,
    });
    const pastPeak = peak.temperature > PEAK_LIMIT;
    const pastDifference = difference.value > DIFFERENCE_LIMIT;
    return { peak: peak.temperature, pastPeak, pastDifference };
  };
  return { wet: run(), dry: run({ conductivity: dry }) };
}

/** 50 mm of foam board in still air. */
const BOARD = throughLayers({
  film: STILL_AIR_TRANSFER,
  layers: [{ thickness: 0.05, conductivity: 0.035 }],
});

/** How far the viscosity formula lies from each value of the table, shares. */
function viscosityErrors(): number[] {
  const file = join(import.meta.dirname, '../published/foam-liquid/glycerol-viscosity.json');
  const { rows } = JSON.parse(readFileSync(file, 'utf8')) as {
    rows: { asks: string; source: string; input: Record<string, string>; expected: string }[];
  };
  return rows
    .filter((row) => row.source === 'segur-oberstar-1951')
    .map(({ input, expected }) => {
      const si = (text: string, kind: Parameters<typeof parseQuantity>[1]) => {
        const read = parseQuantity(text, kind);
        if (!read.ok) throw new Error(text);
        return read.value;
      };
      const { viscosity } = glycerolViscosity({
        glycerol: si(input.glycerol!, 'ratio'),
        temperature: si(input.temperature!, 'temperature'),
      });
      return Math.abs(viscosity / si(expected, 'viscosity') - 1);
    });
}

const share = (convention: 'parts-water' | 'one-in', stated: number) =>
  concentrateShare({ convention, stated, concentrateDensity: 1100, waterDensity: 998 }).byVolume;
const stripping = HANDLING_MULTIPLIERS.filter(({ during }) => during === 'stripping');
const wongBy = (end: 'min' | 'max') => {
  const conductivity = Math[end](...WONG_2026.map((point) => point.conductivity));
  return WONG_2026.find((point) => point.conductivity === conductivity)!;
};

/** Page, words that stand in it, the figure in them, what core has, how near a rounded figure must be. */
const figures: readonly [string, string, number, () => number, number][] = [
  [
    'curing/temperature-and-age',
    '33.5 kJ/mol from 20 °C up',
    33_500,
    () => fhpActivationEnergy({ temperature: CELSIUS + 20 }),
    0,
  ],
  [
    'curing/temperature-and-age',
    '1.47 more for each degree below',
    1470,
    () => fhpActivationEnergy({ temperature: CELSIUS + 10 }) / 10 - 3350,
    1e-6,
  ],
  [
    'curing/heat-inside',
    'from 0.6 of a degree',
    0.6,
    () => (insideOf(0.3).wet.peak - insideOf(0.3, 15).wet.peak) / 5,
    0.05,
  ],
  [
    'curing/heat-inside',
    'to a whole one off the peak',
    1,
    () => (insideOf(0.3).dry.peak - insideOf(0.3, 15).dry.peak) / 5,
    0.05,
  ],
  [
    'curing/set',
    'a third more time for each 10 °F',
    1 / 3,
    () => thirdRuleFactor(-50 / 9) - 1,
    1e-9,
  ],
  ['curing/set', 'warmer takes off a quarter', 1 / 4, () => 1 - thirdRuleFactor(50 / 9), 1e-9],
  ['demoulding/when-to-strip', 'times 0.22 to', 0.22, () => FLEXURAL_RATIO.cellular.low, 0],
  ['demoulding/when-to-strip', '0.22 to 0.35', 0.35, () => FLEXURAL_RATIO.foamed.high, 0],
  [
    'demoulding/handling',
    'the weight, 1.2 to',
    1.2,
    () => Math.min(...stripping.map(({ factor }) => factor)),
    0,
  ],
  [
    'demoulding/handling',
    '1.2 to 1.7 by the shape',
    1.7,
    () => Math.max(...stripping.map(({ factor }) => factor)),
    0,
  ],
  [
    'demoulding/lift',
    'about a third of the constant',
    1 / 3,
    () => slabLimit / LOAD_CONSTANT_METRIC,
    0.03,
  ],
  ['demoulding/lift', 'the worksheet takes two thirds of it', 2 / 3, () => TWO_PEOPLE_SHARE, 0],
  ['finished-part/drying', 'can bind 0.23 g of water', 0.23, () => POWERS_PER_GRAM.bound, 0],
  [
    'finished-part/drying',
    'as if 87 % of it had reacted',
    0.87,
    () => 0.2 / POWERS_PER_GRAM.bound,
    0.005,
  ],
  ['finished-part/drying', 'hold 0.19 g in its gel', 0.19, () => POWERS_PER_GRAM.gel, 0],
  ['finished-part/heat', 'from 0.28 at 561', 0.28, () => wongBy('min').conductivity, 0.005],
  ['finished-part/heat', 'at 561 kg/m³', 561, () => wongBy('min').density, 0.5],
  ['finished-part/heat', '0.66 at 1404', 0.66, () => wongBy('max').conductivity, 0.005],
  ['finished-part/heat', 'at 1404', 1404, () => wongBy('max').density, 0.5],
  ['finished-part/heat', 'six times as much as dry', 6, () => SATURATED_FACTOR, 0],
  ['foam/air', 'at 8 bar (116 psi) by its gauge', 116, () => toUnit(8e5, 'pressure', 'psi'), 0.5],
  ['foam/air', 'between 8 and 4 bar (116 and 58', 58, () => toUnit(4e5, 'pressure', 'psi'), 0.5],
  ['foam/air', 'about 0.61 for a sharp edge', 0.61, () => SHARP_EDGED, 0],
  ['foam/air', '0.97 for a rounded one', 0.97, () => ROUNDED, 0],
  ['foam/air', 'rising, to about 0.85', 0.85, () => SHARP_CHOKED, 0],
  [
    'foam/glycerol',
    '1.5 % on average',
    0.015,
    () => viscosityErrors().reduce((a, b) => a + b) / viscosityErrors().length,
    0.0005,
  ],
  ['foam/glycerol', '3.5 % at worst', 0.035, () => Math.max(...viscosityErrors()), 0.0005],
  [
    'foam/solution',
    '1 : 5 and 1 in 5 differ by a fifth',
    0.2,
    () => share('one-in', 5) / share('parts-water', 5) - 1,
    1e-6,
  ],
  [
    'mix/fibres',
    'the same thread, a third of the weight',
    1 / 3,
    () => FIBRES.polypropylene.density / FIBRES['ar-glass'].density,
    0.01,
  ],
  [
    'placing/pressure',
    'it bulges about half as much',
    0.5,
    () => SPAN_CASES[3].deflection / SPAN_CASES[1].deflection,
    0.05,
  ],
  [
    'water/hardness',
    '2.497 times the calcium',
    2.497,
    () => (MOLAR_MASS.calciumCarbonate * 1000) / 40.078,
    0.0005,
  ],
  [
    'water/hardness',
    '4.118 times the magnesium',
    4.118,
    () => (MOLAR_MASS.calciumCarbonate * 1000) / 24.305,
    0.0005,
  ],
  [
    'water/softening',
    '1.06 g of soda ash',
    1.06,
    () => MOLAR_MASS.sodiumCarbonate / MOLAR_MASS.calciumCarbonate,
    0.005,
  ],
  [
    'water/softening',
    'At 0.00001 atm of CO₂',
    0.00001,
    () => POT_CARBON_DIOXIDE / STANDARD_ATMOSPHERE,
    1e-12,
  ],
  ['water/softening', '2.7 times the soda', 2.7, () => DECAHYDRATE_FACTOR, 0.05],
  ['water/softening', '0.37 of the soda', 0.37, () => 1 / DECAHYDRATE_FACTOR, 0.005],
];

/** What is said of the first of the example's cubes, at an age between them. */
const cubes = (count: number) => {
  const { values } = readWorksheet(strengthTime, {}, {}, speaker('metric'));
  const v = { ...(values as Parameters<typeof strengthTime.work>[0]), from: 'own' as const };
  const given = { ...v, age: 5 * 86_400, results: v.results.slice(0, count) };
  return strengthTime.judge(strengthTime.work(given, {} as never), given, speaker('metric'))
    .verdict;
};

/** Page, words that stand in it, and what must hold for them to be true. */
const claims: readonly [string, string, () => boolean][] = [
  [
    'finished-part/density',
    'of it reacted, a guess for two weeks',
    () =>
      Number.parseFloat(youngLighter) ===
      Math.round(100 * (1 - (1 + 0.6 * POWERS_PER_GRAM.bound) / 1.2)),
  ],
  [
    'batch-records/learn',
    'only if it was crushed at 21 to 60 days',
    () => ABOUT_28_DAYS.from === 21 * 86_400 && ABOUT_28_DAYS.to === 60 * 86_400,
  ],
  [
    'curing/strength',
    'believe it if there are four or more',
    () => cubes(3) === 'look' && cubes(4) === 'good',
  ],
  [
    'demoulding/handling',
    'Half the thickness means twice, once the part is free; in the form, whose pull does not halve, it means',
    () => {
      const { length, width, thickness } = demo.slab;
      const thinner = (adhesion: number) => {
        const of = (depth: number) =>
          handlingStress(
            { length, width, depth, density: demo.wetDensity, factor: 1, adhesion },
            { by: 'ends' },
          ).stress;
        return of(thickness / 2) / of(thickness);
      };
      return (
        Math.abs(thinner(0) - 2) < 1e-9 && thinner(MOULD_ADHESION['oiled-steel-or-plastic']) > 3
      );
    },
  ],
  [
    'curing/frost',
    'By these figures it never reaches the first mark',
    () => {
      const band = strengthBand(mix);
      return band.known && band.low * Math.exp(GROWTH_COEFFICIENT['32.5N']) < ONE_FREEZE_STRENGTH;
    },
  ],
  [
    'curing/drying-to-use',
    'a week to half a year standing',
    () => {
      const initial = (mix.water + mix.foamMass - 0.2 * mix.cement) / mix.ovenDryDensity;
      const { soonest, latest } = diffusionDryingTime({
        thickness: demo.slab.thickness,
        initial,
        target: Number(DRY_ENOUGH_MOISTURE.toFixed(3)),
        resting: EQUILIBRIUM_MOISTURE.dryRoom,
        faces: 2,
      });
      const days = [soonest, latest].map((s) => s / 86_400);
      return Math.abs(days[0]! - 7) < 1 && Math.abs(days[1]! - 182) < 15;
    },
  ],
  [
    'curing/heat-inside',
    'The slabs of the demo hardly notice',
    () => insideOf(0.06).dry.peak < CELSIUS + 25,
  ],
  [
    'curing/heat-inside',
    'at each of these thicknesses the heavier is the hotter, whichever way it conducts, except where neither gets warmer than it was mixed',
    () =>
      [0.06, 0.15, 0.3, 0.6].every((thickness) => {
        const peaks = [400, 600, 800, 1200].map((wet) => {
          const found = insideOf(thickness, 20, STILL_AIR_TRANSFER, wet);
          return [found.wet.peak, found.dry.peak] as const;
        });
        const hotter = (heavy: number, light: number) =>
          heavy > light || heavy <= CELSIUS + 20 + 1e-6;
        return peaks
          .slice(1)
          .every(([wet, dry], i) => hotter(wet, peaks[i]![0]) && hotter(dry, peaks[i]![1]));
      }),
  ],
  [
    'curing/heat-inside',
    'At 150 mm (6 in) whether [a limit](#limits) is reached depends on how well the fresh mix conducts',
    () => {
      const { wet, dry } = insideOf(0.15);
      return !(wet.pastPeak || wet.pastDifference) && (dry.pastPeak || dry.pastDifference);
    },
  ],
  [
    'curing/heat-inside',
    'At 300 mm (12 in) in one pour one is reached however it conducts',
    () => {
      const { wet, dry } = insideOf(0.3);
      return (wet.pastPeak || wet.pastDifference) && (dry.pastPeak || dry.pastDifference);
    },
  ],
  [
    'curing/heat-inside',
    'at twice that, both are passed by far',
    () => {
      const { wet, dry } = insideOf(0.6);
      return wet.pastPeak && wet.pastDifference && dry.pastPeak && dry.pastDifference;
    },
  ],
  [
    'curing/set',
    'the variable energy, the slowest there',
    () => {
      const at = (law: Parameters<typeof setByTemperature>[0]['law']) =>
        setByTemperature({
          reference: { initial: 9000, final: 12_600 },
          referenceTemperature: CELSIUS + 20,
          temperature: CELSIUS + 5,
          law,
        });
      const [variable, one] = [
        at({ law: 'fhp' }),
        at({ law: 'arrhenius', activationEnergy: 42_500 }),
      ];
      return variable.arrhenius.initial > Math.max(one.arrhenius.initial, variable.third.initial);
    },
  ],
  [
    'curing/plan',
    'comes out longest of the three',
    () => {
      const days = DEMO_DAYS.split('\n').map((line) => {
        const [coldest = 0, warmest = 0] = line
          .split('\t')
          .map((celsius) => CELSIUS + Number(celsius));
        return { coldest, warmest };
      });
      const plan = curingPlan({
        history: dailyHistory({ days, start: 14 * 3600 }),
        gain: 'slow',
        law: { law: 'fhp' },
        coefficient: GROWTH_COEFFICIENT['32.5N'],
      });
      const ends = (rule: string) => plan.find((entry) => entry.rule === rule)?.ends ?? 0;
      return ends('aci-normal') > Math.max(ends('din-1045-3'), ends('nhbc-plain'));
    },
  ],
  [
    'mix/admixtures',
    'its solids: they stand in for a little cement, and that cement’s water',
    () => {
      const rest = without.waterToAdd - dosed.waterToAdd - dosed.broughtByAdmixture;
      const cement = without.cementitious - dosed.cementitious;
      const solids = dosed.admixture - dosed.broughtByAdmixture;
      // All but the trace of foam that the change of volume takes.
      return (
        cement > 0 &&
        Math.abs(rest - demo.waterCement * cement) < 1e-9 &&
        Math.abs(cement + rest - solids) < 0.05 * solids
      );
    },
  ],
  [
    'finished-part/heat',
    'all lie well above these',
    () =>
      WONG_2026.every(
        ({ density, conductivity }) =>
          conductivity > 1.25 * valoreConductivity({ dryDensity: density }).conductivity,
      ),
  ],
  [
    'finished-part/heat',
    'more than a light part has to shed. So keep it dry first, and then make it lighter',
    () => {
      const dry = (dryDensity: number) => valoreConductivity({ dryDensity }).conductivity;
      const perKilogram = Math.log(dry(501) / dry(500));
      const { ovenDryDensity } = mix;
      return (
        Math.log(SATURATED_FACTOR) / perKilogram > 2 * ovenDryDensity &&
        // Soaked, the lightest of the page’s rows conducts more than the demo does dry.
        SATURATED_FACTOR * dry(400) > dry(ovenDryDensity)
      );
    },
  ],
  [
    'placing/how-much',
    'is as much denser than the bucket said',
    () => {
      // The share is of the part, not of the mix poured: what was poured ends in the part’s own room.
      const settling = 0.03;
      const pieces = [{ piece: { shape: 'slab', ...demo.slab }, count: 1 }] as const;
      const { total, net } = batchVolume({ pieces, settling, waste: 0 });
      return Math.abs(total / net - (1 + settling)) < 1e-9;
    },
  ],
  [
    'finished-part/strength',
    'Some of them lie below all of it',
    () =>
      WONG_2026.some(({ density, strength }) => {
        // Read as dry: once with no water in it, once with what a mix of that dry density is cast with.
        const bands = [density, 1.034 * density + 102].map((wetDensity) =>
          strengthBand({ wetDensity, ovenDryDensity: density }),
        );
        return bands.every((band) => band.known && strength < band.low);
      }),
  ],
  [
    'curing/heat-inside',
    'Insulation evens it, and heats it',
    () => {
      const [bare, boarded] = [insideOf(0.3), insideOf(0.3, 20, BOARD)];
      return (
        boarded.wet.peak > bare.wet.peak &&
        boarded.dry.peak > bare.dry.peak &&
        bare.wet.pastDifference &&
        !boarded.wet.pastDifference
      );
    },
  ],
  [
    'curing/frost',
    'Insulated above and below, even a slab can get',
    () => insideOf(demo.slab.thickness, 20, BOARD).wet.pastPeak,
  ],
];

describe('figures typed in the text', () => {
  test.each(figures)('%s: %s', (page, text, figure, core, within) => {
    expect(words(page)).toContain(text);
    expect(Math.abs(core() - figure)).toBeLessThanOrEqual(within);
  });
});

describe('what the text says of its own figures', () => {
  test.each(claims)('%s: %s', (page, text, holds) => {
    expect(words(page)).toContain(text);
    expect(holds()).toBe(true);
  });
});
