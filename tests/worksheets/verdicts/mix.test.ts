import cost from '../../../src/worksheets/mix/cost.tsx';
import fibres from '../../../src/worksheets/mix/fibres.tsx';
import landing from '../../../src/worksheets/mix/landing.tsx';
import pigment from '../../../src/worksheets/mix/pigment.tsx';
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
  [{ density: '577 kg/m3' }, 'good', /^For parts/],
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
  [{ waterCement: '0.349' }, 'look', /Below 0\.35 a paste/],
  [{ waterCement: '0.351' }, 'good', /carry nothing/],
  [{ waterCement: '0.8' }, 'good', /carry nothing/],
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
  foamLives: '100 %',
  near: 'own',
};

// Loads scatter by 14.6 kg/m³: half of them within 0.674 of that, 9.9, and nine in ten within 1.645, 24.1.
verdicts(landing, planned, [
  [{ own: '9.5 kg/m3' }, 'stop', /Only 49/],
  [{ own: '10.2 kg/m3' }, 'look', /Only 52/],
  [{ own: '23.5 kg/m3' }, 'look', /Only 89/],
  [{ own: '24.8 kg/m3' }, 'good', /91\s% of such loads land/],
  // 3 % of 66.4 % of gas gone: 12.2 kg/m³ heavier, and half a kilogram by what is not even. Half of the band is less.
  [{ gasLost: '3 %', own: '25.2 kg/m3' }, 'look', /aiming heavy/],
  [{ gasLost: '3 %', own: '25.6 kg/m3' }, 'look', /improve first/],
  [{ foamLives: '97 %', own: '22.9 kg/m3' }, 'look', /aiming light/],
  [{ foamLives: '97 %', own: '23.4 kg/m3' }, 'look', /improve first/],
]);

// No dose is doubted up to half a per cent; plain glass is at any.
verdicts(fibres, { kind: 'polypropylene' }, [
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
]);
