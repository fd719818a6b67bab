import baseCheck from '../../../src/worksheets/mix/base-check.tsx';
import batch from '../../../src/worksheets/mix/batch.tsx';
import correct from '../../../src/worksheets/mix/correct.tsx';
import correctBuckets from '../../../src/worksheets/mix/correct-buckets.tsx';
import cost from '../../../src/worksheets/mix/cost.tsx';
import fibres from '../../../src/worksheets/mix/fibres.tsx';
import landing from '../../../src/worksheets/mix/landing.tsx';
import pigment from '../../../src/worksheets/mix/pigment.tsx';
import proportion from '../../../src/worksheets/mix/proportion.tsx';
import targetDensity from '../../../src/worksheets/mix/target-density.tsx';
import { verdicts } from './verdicts.ts';

const neat = { density: '600 kg/m3', waterCement: '0.4', sandCement: '0', foam: '80 g/L' };

verdicts(targetDensity, neat, [
  // The least that is published, ACI 229R, begins at 18 lb/ft³, 288.3 kg/m³; cellular mixes are of 320 to 1920.
  [{ density: '288 kg/m3' }, 'stop', /No published figure covers/],
  [{ density: '289 kg/m3' }, 'look', /outside the 320/],
  [{ density: '319 kg/m3' }, 'look', /outside the 320/],
  [{ density: '320 kg/m3' }, 'good', /carry nothing but themselves/],
  [{ density: '1920 kg/m3', sandCement: '1' }, 'good', /carry nothing but themselves/],
  [{ density: '1921 kg/m3', sandCement: '1' }, 'look', /outside the 320/],
  // Its class of 40 psi, 0.28 MPa, ends at 36 lb/ft³, 576.7 kg/m³; the next has 80. A thumb dents below 0.5 MPa.
  [{ density: '576 kg/m3' }, 'good', /a thumb dents it/],
  [{ density: '577 kg/m3' }, 'good', /^By common practice (?!.*thumb).*\. For parts/],
  // A typed density is said to be for what it is usual for, with its condition, or for what lies about it.
  [
    { density: '600 kg/m3' },
    'good',
    /^By common practice 600\skg\/m³ is for “Insulating slab [^”]*” \(light and warm, and soft\)\. For/,
  ],
  [{ density: '625 kg/m3' }, 'good', /practice 600\skg\/m³ is for [^“]*“[^”]*” \([^)]*\)\. For/],
  // Lighter than any of them it is not called usual.
  [{ density: '574 kg/m3' }, 'good', /warm, and soft\); yours is lighter and softer still\. The/],
  [{ density: '576 kg/m3' }, 'good', /warm, and soft\)\. The/],
  [
    { density: '700 kg/m3' },
    'good',
    /practice 600\skg\/m³ is for “Insul.* and soft\), 800\skg\/m³ is for “Light panel.*never fixed to a wall\)\. For/,
  ],
  [
    { density: '976 kg/m3' },
    'good',
    /practice 1000\skg\/m³ is for “Planter[^”]*” \([^)]*in winter bring it in or keep it dry\)\. For/,
  ],
  [
    { density: '974 kg/m3' },
    'good',
    /practice 800\s.*, 1000\skg\/m³ is for “Planter.*keep it dry\)/,
  ],
  [
    { density: '1326 kg/m3', sandCement: '1' },
    'good',
    /practice 1300\skg\/m³ is for “Block [^”]*” \([^)]*no strength to count on\)\. For/,
  ],
  [{ by: 'use', use: 'planter' }, 'good', /^Firm enough to move, and .* keep it dry\. For parts/],
  // More water, the same wet density and less cement: a thumb dents it, said once.
  [{ by: 'use', use: 'insulation' }, 'good', /^Light and warm, and soft\. For parts/],
  [
    { by: 'use', use: 'insulation', waterCement: '0.8', sandCement: '0.04' },
    'good',
    /^(?!.*thumb.*thumb).*a thumb dents it/,
  ],
  // A foam is of 16 to 250 g/L, of no less than 32 by the standards, and wet above 120.
  [{ foam: '15.9 g/L' }, 'stop', /hardly foam/],
  [{ foam: '16.1 g/L' }, 'stop', /lighter than the standards/],
  [{ foam: '31.9 g/L' }, 'stop', /lighter than the standards/],
  [{ foam: '32.1 g/L' }, 'good', /carry nothing/],
  [{ foam: '119 g/L' }, 'good', /carry nothing/],
  [{ foam: '121 g/L' }, 'look', /is wet/],
  [{ foam: '249 g/L' }, 'look', /is wet/],
  [{ foam: '251 g/L' }, 'stop', /hardly foam/],
  // A w/c of 0.35 to 0.8, to 1.25 with sand.
  [{ waterCement: '0.349' }, 'look', /a w\/c of 0\.349\. Below 0\.35 a paste/],
  [{ waterCement: '0.351' }, 'good', /carry nothing/],
  [{ waterCement: '0.8' }, 'good', /carry nothing/],
  [{ waterCement: '0.804' }, 'look', /^A w\/c of 0\.804 is above the usual range, to 0\.8/],
  [{ waterCement: '0.81' }, 'look', /above the usual range/],
  [{ waterCement: '1.25', sandCement: '1' }, 'good', /carry nothing/],
  [{ waterCement: '1.26', sandCement: '1' }, 'look', /above the usual range/],
  // 0.4 of water to all that is dry: 15 % at 1.667 of sand, 10 % at 3.
  [{ sandCement: '1.66' }, 'good', /carry nothing/],
  [{ sandCement: '1.67' }, 'look', /a stiff base mix/],
  [{ sandCement: '2.99' }, 'look', /a stiff base mix/],
  [{ sandCement: '3.01' }, 'stop', /damp sand/],
]);

const planned = {
  target: '600 kg/m3',
  foamDensity: '80 g/L',
  gasLost: '0 %',
  plannedSurvival: '100 %',
  near: 'own',
};

// Loads scatter by 14.6 kg/m³: half of them within 0.674 of that, 9.9, and nine in ten within 1.645, 24.1.
verdicts(landing, planned, [
  [{ own: '9.5 kg/m3' }, 'stop', /Only 49/],
  [{ own: '10.2 kg/m3' }, 'look', /Only 52/],
  // What misses a line is not told as it.
  [{ own: '9.7 kg/m3' }, 'stop', /Only 49\.\d/],
  [{ own: '24 kg/m3' }, 'look', /Only 89\.\d/],
  [{ own: '23.5 kg/m3' }, 'look', /Only 89/],
  [{ own: '24.8 kg/m3' }, 'good', /91\s% of such loads land/],
  [{ own: '24.8 kg/m3', foamDensity: '31.9 g/L' }, 'stop', /lighter than the standards/],
  [{ own: '40 kg/m3', foamDensity: '251 g/L' }, 'stop', /hardly foam/],
  // And 99 % within 2.576 of it, 37.6, one in a hundred within 0.0125, 0.18: no trials are certainty.
  [{ own: '36.9 kg/m3' }, 'good', /^99\s% of such loads land/],
  [{ own: '38.4 kg/m3' }, 'good', /^More than 99\s% of such loads land/],
  [{ own: '0.22 kg/m3' }, 'stop', /^Only 1\.\d\s% of such loads land/],
  [{ own: '0.14 kg/m3' }, 'stop', /^Fewer than 1\s% of such loads land/],
  // Nine in ten lie within 1.645 × 30.4 and 1.645 × 18.2 kg/m³, which foam measured to 7.6 and to 4.1 % has.
  [{ near: 'supply', foamFill: '7.5 %' }, 'good', /91\s% of such loads land/],
  [{ near: 'supply', foamFill: '7.8 %' }, 'look', /Only 89\.\d/],
  [{ near: 'percent', foamFill: '4 %' }, 'good', /91\s% of such loads land/],
  [{ near: 'percent', foamFill: '4.2 %' }, 'look', /Only 89\.\d/],
  // 3 % of 66.4 % of gas gone: 12.2 kg/m³ heavier; 12.06 lighter where a plan allows for it. Half of the band is less.
  [{ gasLost: '3 %', own: '24.3 kg/m3' }, 'look', /aiming heavy by 12\s/],
  [{ gasLost: '3 %', own: '24.5 kg/m3' }, 'look', /improve first/],
  [{ plannedSurvival: '97 %', own: '24.0 kg/m3' }, 'look', /aiming light by 12\s/],
  [{ plannedSurvival: '97 %', own: '24.2 kg/m3' }, 'look', /improve first/],
  // Foam measured out to 3.21 % makes as much as that lost gas: what is longer is named beside it.
  [{ gasLost: '3 %', own: '20 kg/m3', foamFill: '3.2 %' }, 'look', /aiming heavy(?!.*improve)/],
  [
    { gasLost: '3 %', own: '20 kg/m3', foamFill: '3.23 %' },
    'look',
    /aiming heavy.*improve next: foam measured/,
  ],
  [{ gasLost: '3 %', near: 'percent', foamFill: '12 %' }, 'stop', /improve first: foam measured/],
  // No plan allows for less than nothing, only for less of what it allows for.
  [{ gasLost: '-20 %' }, 'stop', /which is a gain\. Weigh again/],
  [{ gasLost: '-4.9 %', plannedSurvival: '95 %' }, 'stop', /Plan for less loss/],
  [{ gasLost: '-5.1 %', plannedSurvival: '95 %' }, 'stop', /which is a gain/],
]);

// No dose is doubted up to half a per cent; plain glass is at any.
verdicts(fibres, { kind: 'polypropylene' }, [
  [{ share: '0 %' }, 'good', /^No fibre/],
  [{ by: 'mass', mass: '0 g' }, 'good', /^No fibre/],
  [{ share: '0.01 %' }, 'good', /Drill off/],
  [{ share: '0.5 %' }, 'good', /Drill off/],
  [{ share: '0.51 %' }, 'look', /more than the 0\.50\s% tried/],
  [{ kind: 'ar-glass', share: '0.5 %' }, 'good', /Drill off/],
  [{ kind: 'ar-glass', share: '0.51 %' }, 'look', /No dose of this fibre/],
  [{ kind: 'plain-glass', share: '0.1 %' }, 'stop', /Not plain glass/],
]);

// ASTM C979 ends at 10 % of the cementitious mass; usual are 1 to 5, from memory.
verdicts(pigment, { cement: '10 kg', own: '100 %' }, [
  [{ share: '0 %' }, 'good', /No pigment/],
  [{ share: '0.99 %' }, 'look', /may hardly show/],
  [{ share: '1 %' }, 'good', /usual range/],
  [{ share: '5 %' }, 'good', /usual range/],
  [{ share: '5.1 %' }, 'look', /hardly deepens/],
  [{ share: '10 %' }, 'look', /hardly deepens/],
  [{ share: '10.1 %' }, 'stop', /may be prescribed at all/],
  [{ own: '3 %', share: '3 %' }, 'good', /usual range/],
  [{ own: '3 %', share: '3.1 %' }, 'stop', /own maximum/],
]);

// More than 15 % that ends in no part is looked at.
verdicts(cost, { volume: '100 L' }, [
  [{ net: '85 L' }, 'good', /allowance/],
  [{ net: '84.9 L' }, 'look', /does not end in a part/],
  [{ net: '85 L', foamDensity: '251 g/L' }, 'stop', /hardly foam/],
]);

/** A litre of a base mix that was to have a w/c of 0.4. */
const jug = {
  tare: '0.15 kg',
  jug: '1 L ± 0.003',
  cement: '10 kg',
  waterCement: '0.4',
  counts: 'base',
};

// 1 + w/c over 1 ÷ 3150 + w/c ÷ 1000, and the jug: as meant within two hundredths, and what a jug can tell.
verdicts(baseCheck, { ...jug, sandCement: '0', air: '0 %', cementDensity: '3150 kg/m3' }, [
  [{ full: '2.076 kg' }, 'good', /as near to 0\.40/],
  [{ full: '2.074 kg' }, 'look', /Wetter than meant/],
  [{ full: '2.128 kg' }, 'good', /as near to 0\.40/],
  [{ full: '2.131 kg' }, 'look', /Drier than meant\. Add/],
  // Below 0.35, at 2.173 kg, it takes its water from the foam.
  [{ full: '2.172 kg' }, 'look', /Drier than meant\. Add/],
  [{ full: '2.174 kg' }, 'stop', /dry enough to take water out of the foam/],
  [{ full: '2.172 kg', waterCement: '0.35' }, 'good', /as near to 0\.35/],
  // That told to ± 0.0084, one meant so is too dry from 0.3416, one that was meant drier at once.
  [{ full: '2.185 kg', waterCement: '0.35' }, 'good', /as near to 0\.35/],
  [{ full: '2.186 kg', waterCement: '0.35' }, 'look', /whatever was meant.*Add 86\sg of water/],
  [{ full: '2.172 kg', waterCement: '0.349' }, 'good', /as near to 0\.35/],
  [
    { full: '2.173 kg', waterCement: '0.349' },
    'look',
    /^0\.3497 is below 0\.35,.*Add a little water/,
  ],
  [{ full: '2.173 kg', waterCement: '0.36' }, 'good', /^0\.350 is as near to 0\.36/],
  // More than half of the cement, from 0.6 on, is a slip; as is a w/c below 0.2.
  [{ full: '1.895 kg' }, 'look', /Wetter than meant/],
  [{ full: '1.893 kg' }, 'stop', /is a slip, not a splash/],
  [{ full: '2.468 kg' }, 'stop', /dry enough to take water/],
  [{ full: '2.471 kg' }, 'stop', /is a slip, not a splash/],
]);

// With three parts of sand a jug tells the w/c to ± 0.027: beyond that it is told so, within twice that weighed again.
verdicts(baseCheck, { ...jug, jug: '1 L', sandCement: '3', waterCement: '0.5', cement: '20 kg' }, [
  [{ full: '2.47 kg' }, 'look', /^Weigh the jug’s volume/],
  [{ full: '2.48 kg' }, 'look', /Drier than meant\. Weigh once more; if it is still drier, add/],
  [{ full: '2.5 kg' }, 'look', /Drier than meant\. Add/],
]);

/** In 20 L near enough is from 12.25 to 13.45 kg. */
const load = { tare: '0.85 kg', vessel: '20 L', target: '600 kg/m3', tolerance: '5 %' };

verdicts(correct, load, [
  [{ full: '13.44 kg' }, 'good', /is near enough/],
  [{ full: '13.46 kg' }, 'look', /too heavy/],
  [{ full: '12.26 kg' }, 'good', /is near enough/],
  [{ full: '12.24 kg' }, 'look', /too light/],
  // After two corrections a mix within twice that is placed, and one outside it is another.
  [{ full: '14.04 kg', made: '1' }, 'look', /too heavy/],
  [{ full: '14.04 kg', made: '2' }, 'look', /place it as it is/],
  [{ full: '14.06 kg', made: '2' }, 'stop', /Do not correct it again/],
]);

const buckets = (...fulls: readonly string[]) => ({
  buckets: fulls.map((full) => ({ full, mass: '21 kg' })),
});

// Buckets 5 % apart, of 615 kg/m³ that is 0.615 kg, are not one mix; near enough is from 602.7 to 627.3 kg/m³.
verdicts(correctBuckets, { ...load, target: '615 kg/m3', tolerance: '2 %', drains: 'not' }, [
  [buckets('12.85 kg', '13.46 kg'), 'good', /near enough/],
  [buckets('12.85 kg', '13.47 kg'), 'look', /The buckets differ/],
]);

// However far apart, what is near enough by itself is placed; after two corrections what is not is, or is set aside.
verdicts(correctBuckets, { ...load, drains: 'not' }, [
  [
    buckets('12.3 kg', '13.4 kg'),
    'good',
    /^Stop stirring and place them.* differ by 9.*each is near/,
  ],
  [buckets('12.3 kg', '13.46 kg'), 'look', /Correct each by its own line/],
  [{ ...buckets('12.3 kg', '13.46 kg'), made: '2' }, 'look', /^No more corrections/],
  [{ ...buckets('12.3 kg', '14.06 kg'), made: '2' }, 'stop', /^No more corrections/],
  [{ ...buckets('12.3 kg', '13.4 kg'), made: '2' }, 'good', /^Stop stirring and place them/],
]);

// A quarter of the foam’s liquid is out after ten minutes, half of it after twenty.
const foam = { drains: 'line', perMinute: '2.5 %', ...buckets('12.85 kg') };
verdicts(correctBuckets, { ...load, target: '560 kg/m3', ...foam }, [
  [{ age: '10 min' }, 'look', /^Add/],
  [{ age: '10.1 min' }, 'look', /More than a quarter/],
  [{ age: '20 min' }, 'look', /More than a quarter/],
  [{ age: '20.1 min' }, 'stop', /Make fresh foam, weigh it/],
]);

/** Paste and foam, in three loads. */
const planned100 = {
  volume: '100 L',
  load: '40 L',
  aim: 'wet',
  wetDensity: '600 kg/m3',
  waterCement: '0.4',
  sandCement: '0',
  foamDensity: '80 g/L',
};

// The limits of a mix (see the target density above), and loads: 20 are a day's work, more sooner a slip.
for (const [sheet, good] of [
  [proportion, /^Mix the base first/],
  [batch, /^\d+\.\d\d bags/],
] as const)
  verdicts(sheet, planned100, [
    [{ wetDensity: '319 kg/m3' }, 'look', /outside the 320/],
    [{ wetDensity: '320 kg/m3' }, 'good', good],
    [{ wetDensity: '1920 kg/m3', sandCement: '1' }, 'good', good],
    [{ wetDensity: '1921 kg/m3', sandCement: '1' }, 'look', /outside the 320/],
    [{ foamDensity: '15.9 g/L' }, 'stop', /hardly foam/],
    [{ foamDensity: '16.1 g/L' }, 'stop', /lighter than the standards/],
    [{ foamDensity: '31.9 g/L' }, 'stop', /lighter than the standards/],
    [{ foamDensity: '32.1 g/L' }, 'good', good],
    [{ foamDensity: '119 g/L' }, 'good', good],
    [{ foamDensity: '121 g/L' }, 'look', /is wet/],
    [{ foamDensity: '251 g/L' }, 'stop', /hardly foam/],
    [{ waterCement: '0.349' }, 'look', /Below 0\.35 a paste/],
    [{ waterCement: '0.351' }, 'good', good],
    [{ waterCement: '0.8' }, 'good', good],
    [{ waterCement: '0.81' }, 'look', /above the usual range/],
    [{ waterCement: '1.25', sandCement: '1' }, 'good', good],
    [{ waterCement: '1.26', sandCement: '1' }, 'look', /above the usual range/],
    [{ sandCement: '1.66' }, 'good', good],
    [{ sandCement: '1.67' }, 'look', /a stiff base mix/],
    [{ sandCement: '2.99' }, 'look', /a stiff base mix/],
    [{ sandCement: '3.01' }, 'stop', /damp sand/],
    [{ volume: '800 L' }, 'good', good],
    [{ volume: '801 L' }, 'look', /^21 loads/],
  ]);

// Its solution as the foaming solution's own sheet.
verdicts(proportion, { ...planned100, dose: 'parts-water', glycerol: '0 %' }, [
  [{ glycerol: '10 %', partsWater: '40' }, 'good', /^Mix the base first/],
  [{ glycerol: '10.1 %', partsWater: '40' }, 'look', /a great deal/],
  [{ partsWater: '9' }, 'good', /^Mix the base first/],
  [{ partsWater: '8.9' }, 'look', /far more than/],
  [{ partsWater: '199' }, 'good', /^Mix the base first/],
  [{ partsWater: '201' }, 'look', /far less than/],
  // Three times 72.2 L of foam, 5.78 kg at 1 kg/L.
  [{ priming: '17.2 L' }, 'good', /^Mix the base first/],
  [{ priming: '17.5 L' }, 'look', /^Check the 17\.5\sL that fill/],
]);

// 387.4 kg/m³ of cement: 2.5 kg, a tenth of a bag, are in 6.453 L.
verdicts(batch, { ...planned100, bag: '25 kg' }, [
  [{ volume: '6.46 L' }, 'good', /^0\.10 bags/],
  [{ volume: '6.44 L' }, 'good', /small part of a bag/],
]);

// Stand-ins by common practice, limestone by EN 197-1; fibre and pigment as their own sheets.
verdicts(batch, { ...planned100, cementKind: 'blend', ash: '0 %' }, [
  [{ slag: '70 %' }, 'good', /bags/],
  [{ slag: '70.5 %' }, 'look', /^Too little cement/],
  [{ ash: '50 %' }, 'good', /bags/],
  [{ ash: '50.5 %' }, 'look', /^Too little cement/],
  [{ fume: '15 %' }, 'good', /bags/],
  [{ fume: '15.5 %' }, 'look', /^Too little cement/],
  [{ limestone: '35 %' }, 'good', /bags/],
  [{ limestone: '35.5 %' }, 'look', /^Too little cement/],
  [{ slag: '35 %', ash: '25 %' }, 'good', /bags/],
  [{ slag: '35 %', ash: '25.5 %' }, 'look', /^Too little cement/],
  [{ fibreKind: 'polypropylene', fibreShare: '0.5 %' }, 'good', /bags/],
  [{ fibreKind: 'polypropylene', fibreShare: '0.51 %' }, 'look', /more than the 0\.50\s% tried/],
  [{ fibreKind: 'plain-glass', fibreShare: '0.1 %' }, 'stop', /^Not plain glass/],
  [{ pigment: '0.99 %' }, 'look', /may hardly show/],
  [{ pigment: '1 %' }, 'good', /bags/],
  [{ pigment: '5 %' }, 'good', /bags/],
  [{ pigment: '5.1 %' }, 'look', /hardly deepens/],
]);
