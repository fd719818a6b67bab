import { choice, number } from '../../islands/fields.ts';
import { dilution } from '../shared/dilution.ts';
import { glycerol, lanceLoss, otherDose, priming } from '../shared/dose-fields.ts';
import { FOAM_VESSEL } from '../shared/foam-vessel.ts';
import { foamDensityField, sandCement, waterCement } from '../shared/recipe.ts';
import { foamLives } from './foam-lives.ts';
import { cementDensity, convention, counts, leastLoads } from './recipe-fields.ts';

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
  cementDensity,
  foamDensity: foamDensityField,
  ...otherDose,
  partsWater: number('ratio', {
    label: 'Concentrate, 1 part to … parts of water',
    usual: true,
    help: 'By volume: 40 for 1 : 40.',
    ...dilution,
    example: '40',
    min: '1',
    max: '500',
    bench: 'foam.partsWater',
    when: { dose: ['parts-water'] },
  }),
  glycerol,
  foamLives,
  lanceLoss: { ...lanceLoss, folded: true },
  priming: { ...priming, folded: true },
  load: number('volume', {
    label: 'Largest load the mixer takes',
    help: 'Of foamed mix, with room for the paddle.',
    example: '40 L',
    min: '1 L',
    max: '10 m3',
    bench: 'mix.largestLoad',
  }),
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
