import blendWaters from '../../../src/worksheets/water/blend-waters.tsx';
import boilWater from '../../../src/worksheets/water/boil-water.tsx';
import carbonateBalance from '../../../src/worksheets/water/carbonate-balance.tsx';
import compareWaters from '../../../src/worksheets/water/compare-waters.tsx';
import fitForCement from '../../../src/worksheets/water/fit-for-cement.tsx';
import rainStore from '../../../src/worksheets/water/rain-store.tsx';
import sequestrants from '../../../src/worksheets/water/sequestrants.tsx';
import setFaster from '../../../src/worksheets/water/set-faster.tsx';
import soapLost from '../../../src/worksheets/water/soap-lost.tsx';
import softenSoda from '../../../src/worksheets/water/soften-soda.tsx';
import softener from '../../../src/worksheets/water/softener.tsx';
import waterHardness from '../../../src/worksheets/water/water-hardness.tsx';
import { verdicts } from './verdicts.ts';

const mg = (x: number) => `${x} mg/L CaCO3`;
const tap = { hardness: mg(311), soft: mg(12) };

// Soft enough for foam is up to the survey’s “moderately hard”, 120 mg/L; very hard above 180; extremely so from 700.
verdicts(waterHardness, { method: 'total', total: mg(311), soft: mg(12) }, [
  [{ total: mg(120), soft: '' }, 'good', /for the foam and for the base mix/],
  [{ total: mg(121), soft: '' }, 'look', /with rain, distilled or softened water/],
  [{ soft: mg(120) }, 'good', /with the soft water/],
  [{ soft: mg(121) }, 'look', /still hard/],
  [{ soft: mg(180) }, 'look', /not much softer/],
  [{ soft: mg(181) }, 'stop', /not much softer/],
  [{ total: mg(170), soft: mg(400) }, 'look', /harder/],
  [{ total: mg(699) }, 'good', /with the soft water/],
  [{ total: mg(700) }, 'look', /before it mixes cement/],
  // A ± that reaches past the next class, at 180, tells nothing of the foam.
  [{ total: `${mg(120)} ± 59` }, 'good', /for the foam and for the base mix/],
  [{ total: `${mg(120)} ± 61` }, 'look', /^Test again, closer, .* as much as 181\s/],
  // Without a unit up to 30 may be °dH, 17.85 mg/L each: 6.72 are 120 mg/L, soft enough either way.
  [
    { total: '17' },
    'look',
    /^Look again at the unit of 17\smg\/L.*: if it is °dH, it is 303\smg\/L.*, very hard\./,
  ],
  [{ total: '17,0' }, 'look', /^Look again at the unit/],
  [{ total: '6.8' }, 'look', /^Look again.*121\smg\/L.*, hard\./],
  [{ total: '6.7' }, 'good', /^6\.7.* is soft\. Use it for the foam/],
  [{ total: '30' }, 'look', /^Look again/],
  [{ total: '31' }, 'good', /^31.* is soft\. Use it for the foam/],
  [{ total: '0' }, 'good', /is soft/],
  // Asked for its unit once.
  [
    { total: '17', alkalinity: mg(240) },
    'look',
    /^Look at the unit of the hardness(?!.*Look again)/,
  ],
  [{ total: mg(12) }, 'good', /^12.* is soft\. Use it for the foam/],
  [{ total: '12 mg/L' }, 'good', /^12.* is soft/],
  [{ total: '12 ppm' }, 'good', /^12.* is soft/],
  [{ total: '17 °dH' }, 'good', /with the soft water/],
  // Beyond 1500 it is brine.
  [{ total: mg(1500) }, 'look', /before it mixes cement/],
  [{ total: mg(1501) }, 'stop', /brine or sea water/],
]);

// Two of sodium oleate, 304.4 g/mol, to each of CaCO₃: a tenth of 8.2 g/L at 134.8 mg/L, half at 673.9, all at 1347.9.
verdicts(soapLost, { ...tap, kind: 'soap', soap: 'sodiumOleate', dose: '8.2 g/L' }, [
  [{ hardness: mg(134) }, 'good', /use this water for the foam/],
  [{ hardness: mg(136) }, 'look', /is lost\. Use the soft water/],
  [{ hardness: mg(673) }, 'look', /is lost/],
  [{ hardness: mg(675) }, 'stop', /gone before there is a bubble/],
  [{ hardness: mg(1347) }, 'stop', /gone before there is a bubble/],
  [{ hardness: mg(1349) }, 'stop', /takes the whole dose/],
  [{ hardness: mg(100), dose: '1 g/L' }, 'stop', /gone before there is a bubble/],
  // Soap as a tenth of the water is no foam's.
  [{ dose: '100 g/L' }, 'good', /^\S+\s% of the dose is lost/],
  [{ dose: '101 g/L' }, 'look', /^Look at the dose: 101\sg\/L is no foaming solution/],
  // A water is soft beside one of twice its hardness, if it does not stop the soap itself.
  [{ soft: mg(155) }, 'look', /Use the soft water/],
  [{ soft: mg(156) }, 'look', /not soft enough/],
  [{ hardness: mg(1400), soft: mg(673) }, 'stop', /Use the soft water/],
  [{ hardness: mg(1400), soft: mg(675) }, 'stop', /not soft enough/],
  // What another agent bears is not known, but that up to 120 mg/L need not be feared.
  [{ kind: 'protein', hardness: mg(120), soft: mg(121) }, 'good', /too little hardness to fear/],
  [{ kind: 'protein', hardness: mg(121), soft: mg(120) }, 'good', /the question does not arise/],
  [{ kind: 'protein', hardness: mg(121), soft: mg(121) }, 'look', /only its sheet says/],
  [{ kind: 'synthetic', hardness: mg(121), soft: mg(121) }, 'look', /some cloud or foam less/],
]);

// 0.914 g/L of trisodium citrate: 0.1 % of the cement, which retards, at 1.094 of solution to cement; near from 0.3 of it.
verdicts(sequestrants, { hardness: mg(311), agent: 'trisodiumCitrateDihydrate', where: 'foam' }, [
  [{ solutionCement: '0.327' }, 'look', /below what is known to retard/],
  [{ solutionCement: '0.33' }, 'look', /comes near/],
  [{ solutionCement: '1.09' }, 'look', /comes near/],
  [{ solutionCement: '1.1' }, 'stop', /hold back the set/],
  [{ agent: 'tetrasodiumEdta' }, 'look', /not known here/],
]);

verdicts(setFaster, { hardness: mg(311), waterCement: '0.4', alkalinity: '' }, [
  // A tenth of the usual 2 % of calcium chloride, 111 g/mol, at a w/c of 2: 9.01 mol/m³.
  [{ waterCement: '2', hardness: mg(901) }, 'good', /^No:/],
  [{ waterCement: '2', hardness: mg(903) }, 'look', /thermometer in the mixer tells better/],
  // 400 mg/L of calcium bicarbonate, 162.1 g/mol: 2.467 mol/m³.
  [{ alkalinity: mg(246) }, 'good', /^No:/],
  [{ alkalinity: mg(248) }, 'look', /called tolerable/],
]);

verdicts(softener, { hardness: mg(311), by: 'resin', leaves: mg(0) }, [
  [{ leaves: mg(120) }, 'good', /Make the foam with it/],
  [{ leaves: mg(121) }, 'look', /still hard for foam, which needs 120\smg\/L/],
  [{ leaves: mg(155) }, 'look', /still hard/],
  [{ leaves: mg(156) }, 'stop', /spent or bypassed/],
  // ASTM C1602: 600 mg/L as Na₂O, 61.98 g/mol, one for each of CaCO₃: 968.9 mg/L.
  [{ hardness: mg(968) }, 'good', /Make the foam with it/],
  [{ hardness: mg(970) }, 'look', /exceeds the strictest limit/],
]);

// It is 0.2246 past saturation at pH 7.4; near balance is within 0.3.
verdicts(carbonateBalance, { others: 'none' }, [
  [{ known: 'total', hardness: mg(0) }, 'good', /no calcite to come out/],
  [{ pH: '6.88' }, 'good', /Near balance/],
  [{ pH: '6.87' }, 'look', /dissolve calcite/],
  [{ pH: '7.47' }, 'good', /Near balance/],
  [{ pH: '7.48' }, 'look', /more calcite than it can keep/],
]);

// Caustic past pH 10; EN 1008 wants 4 or more. Whatever its calcium is.
verdicts(carbonateBalance, { others: 'none', calcium: '0 mg/L' }, [
  [{ pH: '10' }, 'good', /no calcite to come out/],
  [{ pH: '10.1' }, 'stop', /^Make no foam with this water, and keep it off skin.*caustic/],
  [{ pH: '10.1', calcium: '95 mg/L' }, 'stop', /caustic/],
  [{ pair: 'gas-pH', gas: '400 ppm', pH: '4' }, 'good', /no calcite to come out/],
  [{ pair: 'gas-pH', gas: '400 ppm', pH: '3.9' }, 'stop', /^Make no foam.*it is an acid/],
  [{ pair: 'gas-pH', gas: '400 ppm', pH: '3.9', calcium: '95 mg/L' }, 'stop', /an acid/],
]);

// So is a blend, of one water or of both.
verdicts(blendWaters, { ...tap, alkalinity: mg(240), pH: '7.4', softAlkalinity: mg(1000) }, [
  [{ target: mg(100), softPH: '9' }, 'good', /Stir together/],
  [
    { target: mg(100), softPH: '12' },
    'stop',
    /^Make no foam with this blend.*caustic.*read the pH and alkalinity of each water again/,
  ],
  [{ target: mg(12), softPH: '10' }, 'good', /No blending/],
  [{ target: mg(12), softPH: '10.1' }, 'stop', /^Make no foam with this blend/],
  // The first hides what the second is, but it is no water to use.
  [
    { target: mg(300), softPH: '3.9', softAlkalinity: mg(0) },
    'stop',
    /with the second water.*acid/,
  ],
]);

// Nor is a pH left out because the blend cannot be solved: each water’s own counts.
verdicts(blendWaters, { ...tap, target: mg(100) }, [
  [{ pH: '10' }, 'good', /^Stir together/],
  [{ pH: '10.1' }, 'stop', /^Make no foam with the first water.*caustic.*read its pH again/],
  [{ pH: '12', alkalinity: mg(240) }, 'stop', /^Make no foam with the first water/],
  [{ softPH: '4' }, 'good', /^Stir together/],
  [{ softPH: '3.9' }, 'stop', /^Make no foam with the second water.*an acid/],
  // The second alone: what the first is does not matter.
  [{ target: mg(12), pH: '12' }, 'good', /No blending/],
  [{ of: 'other', pH: '12' }, 'good', /^Stir together/],
  [
    { more: 'more', further: [{ hardness: mg(5), pH: '2.5', other: '1 mg/L' }] },
    'stop',
    /^Make no foam with the third water/,
  ],
]);

// A water caustic already needs no more soda, and is not called good for being soft.
for (const sheet of [softenSoda, boilWater])
  verdicts(sheet, { known: 'total', hardness: mg(60), alkalinity: mg(80), magnesiumShare: '0 %' }, [
    [{ pH: '10' }, 'good', /soft/],
    [{ pH: '10.1' }, 'stop', /^Make no foam with this water.*caustic/],
    [{ pH: '10.1', hardness: mg(311) }, 'stop', /^Make no foam with this water/],
  ]);

// Nine tenths of soft water: 311 − 0.9 × 299 = 41.9 mg/L.
verdicts(blendWaters, { of: 'hardness', ...tap }, [
  [{ target: mg(12) }, 'good', /No blending is needed/],
  [{ target: mg(41) }, 'look', /nearly all soft water/],
  [{ target: mg(43) }, 'good', /Stir together/],
  // A hundredth of it: 311 − 0.01 × 299 = 308.0. That little counts only where foam bears the blend, and not the first alone.
  [{ target: mg(307.9) }, 'look', /Stir together/],
  [{ target: mg(308.1) }, 'look', /^It would be nearly all of the first water\. Use/],
  [{ hardness: mg(12), soft: mg(311), target: mg(310.9) }, 'look', /Use the second water alone/],
  [{ hardness: mg(119), target: mg(118.99) }, 'look', /Use the first water alone/],
  [{ hardness: mg(120.5), target: mg(120) }, 'good', /Stir together.*hardness of the blend/],
  [
    { of: 'other', otherFirst: '311 mg/L', otherSecond: '12 mg/L', otherTarget: '41 mg/L' },
    'good',
    /then test the blend once/,
  ],
]);

verdicts(boilWater, { known: 'total', hardness: mg(311), magnesiumShare: '0 %' }, [
  [{ hardness: mg(120) }, 'good', /need not be boiled/],
  [{ hardness: mg(122) }, 'look', /Boil 6\.9\sL for/],
  [{ volume: '10 L' }, 'look', /Boil 10\sL for/],
  [{ volume: '10.1 L' }, 'look', /in lots of no more than/],
  // All but some 7 mg/L of the alkalinity comes out; less than 30 % of 311 mg/L, 93, is not worth it.
  [{ alkalinity: mg(102) }, 'look', /stays once it is cold/],
  [{ alkalinity: mg(99) }, 'stop', /Not worth the fuel/],
  [{ alkalinity: mg(10) }, 'stop', /Not worth the fuel/],
  [{ alkalinity: mg(5) }, 'stop', /no calcite to spare/],
  [{ alkalinity: mg(3) }, 'stop', /no calcite to spare/],
]);

/** Sets in minutes, strengths at 7 days. */
const pair = {
  controlInitial: '400 min',
  testInitial: '400 min',
  controlFinal: '600 min',
  testFinal: '600 min',
  controlStrength: '24 MPa',
  testStrength: '24 MPa',
};

verdicts(compareWaters, pair, [
  [{}, 'good', /passes both/],
  [{ testStrength: '' }, 'look', /still missing/],
  // Half as strong again is a slip, missing sets or not.
  [{ testStrength: '36 MPa' }, 'good', /passes both/],
  [{ testStrength: '36.1 MPa' }, 'look', /Read both strengths again/],
  [{ testStrength: '36.1 MPa', testFinal: '' }, 'look', /Read both strengths again/],
  // A ± of 0.5 MPa each: √(0.5² + 0.45²) = 0.673 above nine tenths of it. Of 5 min each, 7.07 below a difference,
  // and √(5² + 6.25²) = 8.0 below a quarter.
  [{ testStrength: '22.28 MPa' }, 'good', /passes both/],
  [{ testStrength: '22.26 MPa' }, 'look', /its strength lies within one ±/],
  [{ testStrength: '21.59 MPa' }, 'stop', /EN 1008 or ASTM C1602/],
  [{ testInitial: '348 min' }, 'good', /passes both/],
  [{ testInitial: '347 min' }, 'look', /its initial set lies within/],
  [{ controlInitial: '200 min', testInitial: '241 min' }, 'good', /passes both/],
  [{ controlInitial: '200 min', testInitial: '243 min' }, 'look', /its initial set lies/],
  [
    {
      controlInitial: '200 min',
      testInitial: '243 min',
      controlFinal: '700 min',
      testFinal: '716 min',
    },
    'look',
    /its initial set and final set lie within/,
  ],
  [{ controlFinal: '700 min', testFinal: '714 min' }, 'good', /passes both/],
  [{ controlFinal: '700 min', testFinal: '716 min' }, 'look', /its final set lies within/],
]);

/** The same, read without a doubt. */
const surely = Object.fromEntries(Object.entries(pair).map(([name, it]) => [name, `${it} ± 0`]));

verdicts(compareWaters, surely, [
  [{}, 'good', /passes both/],
  // Nine tenths of the strength, by both.
  [{ testStrength: '21.61 MPa ± 0' }, 'good', /passes both/],
  [{ testStrength: '21.59 MPa ± 0' }, 'stop', /EN 1008 or ASTM C1602/],
  // From an hour sooner to an hour and a half later, by ASTM; within a quarter, by EN.
  [{ testInitial: '341 min ± 0' }, 'good', /passes both/],
  [{ testInitial: '339 min ± 0' }, 'stop', /pass ASTM C1602/],
  [{ testInitial: '489 min ± 0' }, 'good', /passes both/],
  [{ testInitial: '491 min ± 0' }, 'stop', /pass ASTM C1602/],
  [{ controlInitial: '200 min ± 0', testInitial: '249 min ± 0' }, 'good', /passes both/],
  [{ controlInitial: '200 min ± 0', testInitial: '251 min ± 0' }, 'stop', /pass EN 1008/],
  // By EN not before an hour, nor hard after twelve.
  [{ controlInitial: '65 min ± 0', testInitial: '61 min ± 0' }, 'good', /passes both/],
  [{ controlInitial: '65 min ± 0', testInitial: '59 min ± 0' }, 'stop', /pass EN 1008/],
  [{ controlFinal: '700 min ± 0', testFinal: '719 min ± 0' }, 'good', /passes both/],
  [{ controlFinal: '700 min ± 0', testFinal: '721 min ± 0' }, 'stop', /pass EN 1008/],
]);

/** 4.8 L for each millimetre after the first. */
const butt = {
  perBatch: '6 L',
  batches: '4',
  roof: '6 m2',
  rain: '9 mm',
  firstFlush: '1 mm',
  runOff: '80 %',
  senses: 'clear',
  warmest: '17 °C',
  stood: '5 d',
};

verdicts(rainStore, butt, [
  [{ rain: '6.1 mm' }, 'good', /Enough/],
  [{ rain: '5.9 mm' }, 'look', /short\. Blend it/],
  [{ rain: '1.1 mm' }, 'look', /short\. Blend it/],
  [{ rain: '1 mm' }, 'look', /No rain came/],
  // Legionella grows from 25 °C up; stored water is best kept below 20.
  [{ warmest: '19.9 °C' }, 'good', /Enough/],
  [{ warmest: '20 °C' }, 'look', /warmer than stored rain should/],
  [{ warmest: '24.9 °C' }, 'look', /warmer than stored rain should/],
  [{ warmest: '25 °C' }, 'stop', /Legionella/],
  [{ warmest: '25 °C', senses: 'green' }, 'stop', /Legionella/],
  [{ senses: 'green' }, 'stop', /Algae/],
  [{ senses: 'oil' }, 'stop', /Oil kills foam/],
  [{ stood: '14 d' }, 'good', /Enough/],
  [{ stood: '14.1 d' }, 'look', /stood long/],
]);

// Of calcium alone: from some 260 mg/L on soda does less than half of the work, and a cold bucket keeps 35.
verdicts(softenSoda, { known: 'total', hardness: mg(311), magnesiumShare: '0 %' }, [
  [{ hardness: mg(120), target: mg(150) }, 'good', /without any soda/],
  [{ hardness: mg(121), target: mg(150) }, 'look', /without any soda.*still hard/],
  // 3 % above the target is as good as there.
  [{ target: mg(302) }, 'look', /about as soft as you want without any soda/],
  [{ target: mg(301.8) }, 'look', /^By the balance/],
  [{ target: mg(120) }, 'good', /^Dissolve/],
  [{ target: mg(121) }, 'look', /^Dissolve.*still hard/],
  // Half of the textbook’s soda, the rest by itself: what the balance gives, which no source has. They hold it still.
  [{ target: mg(257) }, 'look', /^Dissolve/],
  [{ target: mg(262) }, 'look', /comes out by itself/],
  // 3 % above the target is as good as there: of the 35 mg/L that stay in the cold, 33.98.
  [{ target: mg(34.1) }, 'good', /^Dissolve/],
  [{ target: mg(33.8) }, 'look', /a cold bucket will leave/],
  // It stings from pH 10, by the balance too.
  [{ target: mg(0.9) }, 'look', /a cold bucket will leave/],
  [{ target: mg(0.8) }, 'stop', /the water is caustic/],
]);

/** Each well within its limits, and their sum within the solids. */
const report = {
  senses: 'clear',
  use: 'plain',
  chloride: '42 mg/L',
  sulfate: '45 mg/L',
  sodium: '22 mg/L',
  potassium: '3 mg/L',
  nitrate: '20 mg/L',
  dissolvedSolids: '2000 mg/L',
};

verdicts(fitForCement, report, [
  [{}, 'good', /Within every limit/],
  // Natural waters hold up to 2000 mg/L; none is past pH 9, nor cold lime water past 13.
  [{ dissolvedSolids: '2010 mg/L' }, 'look', /more than natural waters do/],
  [{ pH: '9' }, 'good', /Within every limit/],
  [{ pH: '9.1' }, 'look', /wash water or lye/],
  [{ pH: '13' }, 'look', /wash water or lye/],
  [{ pH: '13.1' }, 'stop', /So caustic a water is lye/],
  // EN 1008: 2000 mg/L of sulfate; chloride of 4500 mg/L without steel, 1000 with it, 500 prestressed.
  [{ sulfate: '1990 mg/L', dissolvedSolids: '' }, 'look', /more than natural waters do/],
  [{ sulfate: '2010 mg/L', dissolvedSolids: '' }, 'stop', /Beyond a limit: sulfate/],
  [{ use: 'reinforced', chloride: '999 mg/L' }, 'good', /Within every limit/],
  [{ use: 'reinforced', chloride: '1001 mg/L' }, 'stop', /Beyond a limit: chloride/],
  [{ use: 'prestressed', chloride: '499 mg/L' }, 'good', /Within every limit/],
  [{ use: 'prestressed', chloride: '501 mg/L' }, 'stop', /Beyond a limit: chloride/],
  [{ chloride: '' }, 'look', /silent on chloride/],
  [{ senses: 'alive' }, 'look', /Let it settle/],
  [{ senses: 'green' }, 'stop', /Algae and rot/],
  [{ senses: 'oil' }, 'stop', /Oil, soap and sugar/],
  // Ions that come to more than a tenth over their total are doubted: 132 mg/L of them.
  [{ dissolvedSolids: '121 mg/L' }, 'good', /Within every limit/],
  [{ dissolvedSolids: '119 mg/L' }, 'look', /come to 132/],
]);
