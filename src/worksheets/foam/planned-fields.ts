import { number } from '../../islands/fields.ts';
import { foamShare } from '../shared/foam/foam-share.ts';
import { foamDensityField } from '../shared/mix/recipe.ts';

/** The batch a foam is for, as other worksheets have planned it; seldom typed here. */
export const plannedFields = {
  foamDensity: { ...foamDensityField, label: 'Foam density when made', folded: true },
  plannedSurvival: foamShare,
  target: number('density', {
    label: 'Planned wet density',
    example: '600 kg/m3',
    min: '10 kg/m3',
    max: '4000 kg/m3',
    takes: 'mix.planned',
    folded: true,
  }),
  baseDensity: number('density', {
    label: 'Base mix density',
    example: '1951 kg/m3',
    min: '10 kg/m3',
    max: '10000 kg/m3',
    takes: 'mix.baseDensity',
    folded: true,
  }),
  mass: number('mass', {
    label: 'Mix in one load',
    example: '21.02 kg',
    min: '0.01 kg',
    max: '100 t',
    takes: 'mix.loadMass',
    folded: true,
  }),
};
