import { choice, number } from '../../islands/fields.ts';
import { FOAM, HARDNESS, LITRES, PERCENT } from '../shared/amounts.ts';
import { glycerol, lanceLoss, priming } from '../shared/dose-fields.ts';

const PLAIN = { metric: '1', us: '1' } as const;
const small = { metric: 'g/cm3', us: 'g/cm3' } as const;

const DILUTION_NAMES = {
  'parts-water': '1 part to N parts of water (1 : N)',
  'one-in': '1 part in N parts of solution (1 in N)',
  'percent-volume': 'Percent of the solution, by volume',
  'percent-mass': 'Percent of the solution, by mass',
} as const;

const SOAP_NAMES = {
  sodiumOleate: 'Sodium oleate (olive-oil soap, mostly)',
  sodiumLaurate: 'Sodium laurate (coconut-oil soap, mostly)',
  sodiumPalmitate: 'Sodium palmitate (palm-oil soap, mostly)',
  sodiumStearate: 'Sodium stearate (tallow soap, in part)',
  potassiumOleate: 'Potassium oleate (soft soap, mostly)',
} as const;

/** What a foaming solution is asked for. */
export const solutionFields = {
  foamVolume: number('volume', {
    label: 'Foam wanted',
    example: '75.9 L',
    min: '0.1 L',
    max: '100 m3',
    units: LITRES,
    takes: 'mix.foamVolume',
  }),
  foamDensity: number('density', {
    label: 'Foam density',
    example: '80 g/L',
    min: '5 g/L',
    max: '500 g/L',
    units: FOAM,
    takes: 'foam.density',
    bench: 'mix.foamDensity',
  }),
  convention: choice({
    label: 'How the label gives the dose',
    options: DILUTION_NAMES,
    example: 'parts-water',
    bench: 'foam.convention',
  }),
  partsWater: number('ratio', {
    label: 'N, parts of water to 1 of concentrate',
    usual: true,
    oneTo: true,
    example: '40',
    min: '1',
    max: '500',
    units: PLAIN,
    bench: 'foam.partsWater',
    when: { convention: ['parts-water'] },
  }),
  oneIn: number('ratio', {
    label: 'N, parts of solution with 1 of concentrate in them',
    example: '40',
    min: '1.1',
    max: '500',
    units: PLAIN,
    bench: 'foam.oneIn',
    when: { convention: ['one-in'] },
  }),
  percent: number('ratio', {
    label: 'Concentrate in the solution',
    example: '2.5 %',
    min: '0.1 %',
    max: '90 %',
    units: PERCENT,
    bench: 'foam.percent',
    when: { convention: ['percent-volume', 'percent-mass'] },
  }),
  glycerol,
  lanceLoss,
  priming,
  kind: choice({
    label: 'The concentrate is',
    options: { other: 'protein or synthetic', soap: 'a soap' },
    example: 'other',
    bench: 'foam.concentrateKind',
  }),
  hardness: number('hardness', {
    label: 'Hardness of the water in the solution',
    help: 'Of the water you make foam with, which had better be the soft one.',
    example: '311.4 mg/L CaCO3',
    min: '0 mg/L CaCO3',
    max: '5000 mg/L CaCO3',
    units: HARDNESS,
    takes: 'water.hardness',
    when: { kind: ['soap'] },
  }),
  soap: choice({
    label: 'Which soap',
    options: SOAP_NAMES,
    example: 'sodiumOleate',
    bench: 'foam.soap',
    when: { kind: ['soap'] },
  }),
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
