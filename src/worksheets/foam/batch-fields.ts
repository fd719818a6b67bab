import { number } from '../../islands/fields.ts';
import { DENSITY, FOAM, PERCENT } from '../shared/amounts.ts';

/** The batch a foam is for, as other worksheets have planned it; seldom typed here. */
export const batchFields = {
  foamDensity: number('density', {
    label: 'Foam density when made',
    example: '80 g/L',
    min: '5 g/L',
    max: '500 g/L',
    units: FOAM,
    takes: 'foam.density',
    bench: 'mix.foamDensity',
    folded: true,
  }),
  /** `foamShare` of the recipe, which a page of foam need not fetch for it. */
  foamLives: number('ratio', {
    label: 'Foam that the plan takes to live, of its gas',
    usual: true,
    help: 'As in the batch: its foam was made for that.',
    example: '100 %',
    min: '20 %',
    max: '100 %',
    units: PERCENT,
    bench: 'mix.foamLives',
    folded: true,
  }),
  target: number('density', {
    label: 'Planned wet density',
    example: '600 kg/m3',
    min: '10 kg/m3',
    max: '4000 kg/m3',
    units: DENSITY,
    takes: 'mix.planned',
    folded: true,
  }),
  baseDensity: number('density', {
    label: 'Base mix density',
    example: '1951 kg/m3',
    min: '10 kg/m3',
    max: '10000 kg/m3',
    units: DENSITY,
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
