import { number } from '../../islands/fields.ts';
import {
  concentrate,
  glycerol,
  lanceLoss,
  partsWater,
  priming,
  stated,
} from '../shared/foam/dose-fields.ts';
import { foamDensityField } from '../shared/mix/recipe.ts';

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
  partsWater: { ...partsWater, usual: true },
  oneIn: stated.oneIn,
  percent: stated.percent,
  glycerol,
  lanceLoss,
  priming,
  ...concentrate,
};
