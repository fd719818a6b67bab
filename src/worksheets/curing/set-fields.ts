import { choice, number } from '../../islands/fields.ts';
import { sandCement, waterCement } from '../shared/mix/recipe.ts';
import { wetDensity } from '../shared/part/part-densities.ts';
import { partDepth, partThickness } from '../shared/part/part-sides.ts';
import { HOURS, PERCENT } from '../shared/words/amounts.ts';
import { byHours } from '../shared/words/spelt.ts';
import { LAWS } from './age-laws.ts';
import { temperature } from './curing-temperature.ts';

const time = (label: string, example: string) =>
  number('time', { label, example, min: '1 min', max: '14 d', units: HOURS, spelt: byHours });
const share = (label: string, example: string, max: string) =>
  number('ratio', { label, example, min: '0 %', max, units: PERCENT });
const inOtherAir = { when: { around: ['other'] as string[] } };
const product = { when: { accelerator: ['product'] as string[] } };

/** What the bag says of set, how warm the mix is, and what is to hurry it. */
export const setFields = {
  initial: {
    ...time('Initial set, from the bag or its sheet', '2.5 h'),
    help: 'From first water. The example is invented: type yours.',
  },
  final: { ...time('Final set, from the same', '3.5 h'), folded: true },
  mixAt: temperature('Temperature of the mix', '20.1 °C', {
    help: 'Of the mix as poured, a thermometer in it; not of the air.',
    min: '0 °C',
    max: '60 °C',
    takes: 'curing.mixTemperature',
  }),
  around: choice({
    label: 'The air around it, until it sets',
    help: 'A thin part is as warm as the air within an hour or two.',
    options: { alike: 'About as warm as the mix', other: 'Colder or warmer' },
    example: 'alike',
    byOwn: { air: 'other' },
  }),
  air: temperature('Air', '12 °C', {
    help: 'Over the hours until it sets; if the night falls in them, near its lowest.',
    min: '-15 °C',
    bench: 'curing.air',
    ...inOtherAir,
  }),
  thickness: { ...partThickness, ...inOtherAir },
  wet: { ...wetDensity, folded: true, ...inOtherAir },
  sandCement: { ...sandCement, folded: true, ...inOtherAir },
  waterCement: { ...waterCement, folded: true },
  foamTime: number('time', {
    label: 'Half of the foam has drained after',
    help: 'Or how long the mix was seen to hold its height.',
    example: '22 min',
    min: '1 min',
    max: '30 d',
    takes: 'foam.halfTime',
  }),
  sunk: number('length', {
    label: 'Sinking seen, if any was read',
    help: 'The example’s goes when you enter anything of your own; empty, its rows are left out.',
    example: '3 mm',
    min: '0 mm',
    max: '1 m',
    optional: true,
  }),
  sunkAfter: number('time', {
    label: 'Seen after',
    needs: 'sunk',
    example: '30 min',
    min: '1 min',
    max: '7 d',
  }),
  depth: partDepth,
  steel: choice({
    label: 'Steel in the part, now or ever?',
    help: 'Mesh, screws, steel fibre, a steel form left in.',
    options: { yes: 'Yes, or perhaps', no: 'No' },
    example: 'yes',
  }),
  accelerator: choice({
    label: 'Accelerator',
    options: {
      none: 'None',
      chloride: 'Calcium chloride',
      product: 'A product with a sheet',
    },
    example: 'none',
  }),
  chloride: {
    ...share('Calcium chloride, anhydrous, by mass of cement', '1 %', '2 %'),
    when: { accelerator: ['chloride'] },
  },
  dose: { ...share('Dose, by mass of cement', '2 %', '50 %'), ...product },
  lowest: { ...share('Sheet’s lowest dose', '1 %', '50 %'), ...product },
  highest: { ...share('Sheet’s highest dose', '4 %', '50 %'), ...product },
  claimed: { ...share('Set left at the highest, by the sheet', '40 %', '100 %'), ...product },
  referenceAt: temperature('The bag’s times are for', '20 °C', {
    min: '0 °C',
    max: '60 °C',
    folded: true,
  }),
  testWater: number('ratio', {
    label: 'Water/cement ratio of the bag’s test',
    help: 'The standard paste takes near 0.28; from memory.',
    example: '0.28',
    min: '0.15',
    max: '2',
    folded: true,
  }),
  law: choice({
    label: 'Law of temperature',
    help: 'The same laws as for age; the first is the slowest in the cold.',
    options: LAWS,
    example: 'fhp',
    folded: true,
  }),
  energy: number('molarEnergy', {
    usual: true,
    label: 'Activation energy of set',
    help: '40 to 45\u00a0kJ/mol for ordinary cement; from memory.',
    example: '42.5 kJ/mol',
    min: '0 kJ/mol',
    max: '200 kJ/mol',
    folded: true,
    when: { law: ['arrhenius'] },
  }),
  warmerWater: number('temperatureDifference', {
    label: 'Warmer water would make the mix warmer by',
    example: '5 °C',
    min: '0 °C',
    max: '40 °C',
    folded: true,
  }),
  warmerRoom: number('temperatureDifference', {
    label: 'A warmer room would, by',
    example: '5 °C',
    min: '0 °C',
    max: '40 °C',
    folded: true,
  }),
  rapid: {
    ...share('A rapid cement’s initial set, against this one’s', '70 %', '100 %'),
    min: '1 %',
    help: 'From the two bags. The example is invented.',
    folded: true,
  },
} as const;
