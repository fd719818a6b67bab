import { number } from '../../islands/fields.ts';
import { dilution } from '../shared/dilution.ts';
import { concentrate, glycerol, lanceLoss, priming, stated } from '../shared/dose-fields.ts';
import { foamDensityField } from '../shared/recipe.ts';

/** What a foaming solution is asked for. */
export const solutionFields = {
  foamVolume: number('volume', {
    label: 'Foam wanted',
    example: '75.9 L',
    min: '0.1 L',
    max: '100 m3',
    takes: 'mix.foamVolume',
  }),
  foamDensity: foamDensityField,
  dose: stated.dose,
  partsWater: number('ratio', {
    label: 'N, parts of water to 1 of concentrate',
    usual: true,
    ...dilution,
    example: '40',
    min: '1',
    max: '500',
    bench: 'foam.partsWater',
    when: { dose: ['parts-water'] },
  }),
  oneIn: stated.oneIn,
  percent: stated.percent,
  glycerol,
  lanceLoss,
  priming,
  ...concentrate,
};
