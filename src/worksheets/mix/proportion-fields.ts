import { choice, number } from '../../islands/fields.ts';
import { glycerol, lanceLoss, otherDose, partsWater, priming } from '../shared/foam/dose-fields.ts';
import { FOAM_VESSEL } from '../shared/foam/foam-vessel.ts';
import { largestLoad, leastLoads } from '../shared/mix/load-fields.ts';
import { foamDensityField, sandCement, waterCement } from '../shared/mix/recipe.ts';
import { convention, counts, helpedCementDensity } from '../shared/mix/recipe-details.ts';
import { plannedSurvival } from './planned-survival.ts';

export const proportionFields = {
  volume: number('volume', {
    label: 'Foamed mix to make',
    example: '105.12 L',
    min: '0.1 L',
    max: '100 m3',
    takes: 'batch.volume',
  }),
  aim: choice({
    label: 'Aim at',
    options: { wet: 'A wet density', dry: 'An oven-dry density' },
    example: 'wet',
  }),
  wetDensity: number('density', {
    label: 'Wet density',
    example: '600 kg/m3',
    min: '10 kg/m3',
    max: '4000 kg/m3',
    takes: 'mix.wetDensity',
    when: { aim: ['wet'] },
  }),
  dryDensity: number('density', {
    label: 'Oven-dry density',
    example: '500 kg/m3',
    min: '10 kg/m3',
    max: '4000 kg/m3',
    when: { aim: ['dry'] },
  }),
  waterCement,
  counts,
  sandCement,
  cementDensity: helpedCementDensity,
  foamDensity: foamDensityField,
  ...otherDose,
  partsWater: { ...partsWater, usual: true, help: 'By volume: 40 for 1 : 40.' },
  glycerol,
  plannedSurvival,
  lanceLoss: { ...lanceLoss, folded: true },
  priming: { ...priming, folded: true },
  load: { ...largestLoad, help: 'Of foamed mix, with room for the paddle.' },
  leastLoads,
  bucket: number('volume', {
    label: 'Bucket the foam is measured in',
    usual: true,
    example: '20 L',
    min: '0.1 L',
    max: '1000 L',
    ...FOAM_VESSEL,
    folded: true,
  }),
  convention,
};
