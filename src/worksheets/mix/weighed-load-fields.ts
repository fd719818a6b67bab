import { number } from '../../islands/fields.ts';
import { zeroed } from '../shared/foam/foam-vessel.ts';
import { largestLoad } from '../shared/mix/load-fields.ts';
import { baseRatioFields } from '../shared/mix/paste-water.ts';
import { foamDensityField, sandCement } from '../shared/mix/recipe.ts';
import { weighingBucket } from '../shared/mix/weighing-bucket.ts';
import { PERCENT } from '../shared/words/amounts.ts';

export const weighedLoadFields = {
  full: number('mass', {
    label: 'Bucket, struck full of blended mix',
    example: '13.65 kg',
    plusMinus: '0.01 kg',
    min: '0 kg',
    max: '5000 kg',
    tooLow: zeroed,
  }),
  ...weighingBucket,
  mass: number('mass', {
    label: 'Mix in the mixer',
    help: 'What went in, less what you have taken out.',
    example: '21.02 kg',
    min: '0.01 kg',
    max: '100 t',
    folded: true,
    takes: 'mix.loadMass',
  }),
  target: number('density', {
    label: 'Target wet density',
    example: '600 kg/m3',
    min: '10 kg/m3',
    max: '4000 kg/m3',
    takes: 'mix.planned',
    folded: true,
  }),
  foamDensity: { ...foamDensityField, label: 'Foam density now', folded: true },
  baseDensity: number('density', {
    label: 'Base mix density',
    example: '1951 kg/m3',
    min: '10 kg/m3',
    max: '4000 kg/m3',
    takes: 'mix.baseDensity',
    folded: true,
  }),
  cement: number('mass', {
    label: 'Cement in the load',
    example: '13.57 kg',
    min: '0 kg',
    aboveMin: true,
    max: '10 t',
    takes: 'mix.loadCement',
    folded: true,
  }),
  water: number('mass', {
    label: 'All water in the load, the foam’s too',
    example: '7.45 kg',
    min: '0 kg',
    max: '10 t',
    takes: 'mix.loadWater',
    folded: true,
  }),
  ...baseRatioFields,
  sandCement: { ...sandCement, folded: true },
  tolerance: number('ratio', {
    label: 'Near enough, either way',
    help: 'One code allows 5\u00a0% over at the point of deposit.',
    example: '5 %',
    min: '0 %',
    max: '50 %',
    units: PERCENT,
    folded: true,
  }),
  load: { ...largestLoad, folded: true },
  made: number('count', {
    label: 'Corrections made so far',
    example: '0',
    min: '0',
    max: '20',
    whole: true,
  }),
};
