import { choice, number } from '../../../islands/fields.ts';
import { PERCENT } from '../words/amounts.ts';
import { dilution, oneInMany } from './dilution.ts';
import { whichSoap } from './which-soap.ts';

const small = { metric: 'g/cm3', us: 'g/cm3' } as const;

const DILUTION_NAMES = {
  'parts-water': '1 part to N parts of water (1 : N)',
  'one-in': '1 part in N, water counted (1 in N)',
  'percent-volume': 'Percent by volume, water counted',
  'percent-mass': 'Percent by mass, water counted',
} as const;

// Fields that every worksheet about the foaming solution asks in the same way.

export const glycerol = number('ratio', {
  label: 'Glycerol in the solution',
  usual: true,
  help: 'By mass; 0 for none. A little is common practice.',
  example: '2 %',
  min: '0 %',
  max: '40 %',
  units: PERCENT,
  bench: 'foam.glycerol',
});

export const lanceLoss = number('ratio', {
  label: 'Solution wasted, of what becomes foam',
  usual: true,
  help: 'Foam run off until it comes evenly, or left in the bucket. A bucket weighed goes into the mix; thrown away, 20\u00a0L (5.3\u00a0gal) is 26\u00a0% of the demo’s foam.',
  example: '10 %',
  min: '0 %',
  max: '200 %',
  units: PERCENT,
  bench: 'foam.lanceLoss',
});

export const priming = number('volume', {
  label: 'Solution that fills tank foot, hose and lance',
  usual: true,
  help: 'It stays there: the pump or the dip tube never reaches it.',
  example: '0.5 L',
  min: '0 L',
  max: '1000 L',
  bench: 'foam.priming',
});

/** N of “1 : N”: the usual form of the dose, and the one every worksheet asks for. */
export const partsWater = number('ratio', {
  label: 'N, parts of water to 1 of concentrate',
  ...dilution,
  example: '40',
  min: '1',
  max: '500',
  bench: 'foam.partsWater',
  when: { dose: ['parts-water'] },
});

/** The dose of concentrate in the other forms that labels and recipes use. */
export const stated = {
  dose: choice({
    label: 'How the label gives the dose',
    options: DILUTION_NAMES,
    example: 'parts-water',
    bench: 'foam.convention',
  }),
  oneIn: number('ratio', {
    label: 'N, parts of concentrate and water with 1 of concentrate in them',
    ...oneInMany,
    example: '40',
    min: '1.1',
    max: '500',
    bench: 'foam.oneIn',
    when: { dose: ['one-in'] },
  }),
  percent: number('ratio', {
    label: 'Concentrate in concentrate and water',
    example: '2.5 %',
    min: '0.1 %',
    max: '90 %',
    units: PERCENT,
    bench: 'foam.percent',
    when: { dose: ['percent-volume', 'percent-mass'] },
  }),
};

/** The properties of the concentrate that affect how much of it goes in. */
export const concentrate = {
  kind: choice({
    label: 'The concentrate is',
    options: { other: 'protein or synthetic', soap: 'a soap' },
    example: 'other',
    bench: 'foam.concentrateKind',
  }),
  hardness: number('hardness', {
    label: 'Hardness of the water in the solution',
    help: 'Of the water you make foam with, which should be the soft one.',
    example: '311.4 mg/L CaCO3',
    min: '0 mg/L CaCO3',
    max: '15000 mg/L CaCO3',
    takes: 'water.hardness',
    when: { kind: ['soap'] },
  }),
  soap: whichSoap,
  content: number('ratio', {
    label: 'Dry soap in the concentrate, by mass',
    help: 'Its sheet says; a bar is about 70 to 80\u00a0% soap, liquid soap far less (common practice, no source).',
    example: '30 %',
    min: '1 %',
    max: '100 %',
    units: PERCENT,
    bench: 'foam.soapContent',
    when: { kind: ['soap'] },
  }),
  concentrateDensity: number('density', {
    label: 'Density of the concentrate',
    help: 'Its own sheet decides.',
    example: '1.1 g/cm3',
    min: '0.8 g/cm3',
    max: '1.6 g/cm3',
    units: small,
    bench: 'foam.concentrateDensity',
    folded: true,
  }),
};

const THERE = 'as chosen in “What goes into the foaming solution?”.';

/**
 * The same fields for worksheets that only ask for “1 : N”. The form of the dose is chosen in “What
 * goes into the foaming solution?” alone; if it is not “1 : N”, the fields it needs are shown here,
 * so that all worksheets use the same dose.
 */
export const otherDose = {
  ...stated,
  ...concentrate,
  dose: { ...stated.dose, when: { dose: [] } },
  oneIn: { ...stated.oneIn, help: `By volume, ${THERE}` },
  percent: { ...stated.percent, help: `By volume or by mass, ${THERE}` },
  kind: { ...concentrate.kind, when: { kind: [] } },
  soap: { ...concentrate.soap, help: `A soap, ${THERE}` },
  concentrateDensity: {
    ...concentrate.concentrateDensity,
    usual: true,
    when: { dose: ['percent-volume', 'percent-mass'] },
  },
} as const;
