import { number } from '../../islands/fields.ts';
import { solutionCement } from '../shared/mix/paste-water.ts';
import { sandCement, waterCement } from '../shared/mix/recipe.ts';
import { counts, helpedCementDensity } from '../shared/mix/recipe-details.ts';
import { PERCENT } from '../shared/words/amounts.ts';

/** What “Is the base mix what I meant?” asks for. */
export const baseCheckFields = {
  full: number('mass', {
    label: 'Jug, struck full of base mix',
    help: 'Before any foam is in it.',
    example: '2.04 kg',
    plusMinus: '0.005 kg',
    min: '0 kg',
    max: '1000 kg',
  }),
  tare: number('mass', {
    label: 'Jug, empty',
    example: '0.150 kg',
    plusMinus: '0.005 kg',
    min: '0 kg',
    max: '200 kg',
    bench: 'jug.tare',
  }),
  jug: number('volume', {
    label: 'Jug’s volume to the brim',
    help: 'From the weight of water that fills it under a flat sheet, not from its marks.',
    example: '1 L',
    plusMinus: '0.007 L',
    min: '0 L',
    aboveMin: true,
    max: '200 L',
    bench: 'jug.volume',
  }),
  cement: number('mass', {
    label: 'Cement in the base mix',
    example: '13.57 kg',
    min: '0 kg',
    aboveMin: true,
    max: '10 t',
    takes: 'mix.loadCement',
  }),
  waterCement,
  counts,
  solutionCement,
  sandCement,
  air: number('ratio', {
    label: 'Air stirred into it',
    help: 'A fast paddle whips in one or two per cent, and each reads as more water.',
    example: '0 %',
    min: '0 %',
    max: '20 %',
    units: PERCENT,
    folded: true,
  }),
  cementDensity: { ...helpedCementDensity, plusMinus: '30 kg/m3' },
  plan: number('density', {
    label: 'Base mix density by the plan',
    help: 'It counts pigment, filler and blended cement. Left empty, there are none.',
    example: '',
    // As much as that of the cement comes to.
    plusMinus: '8 kg/m3',
    optional: true,
    min: '0 kg/m3',
    aboveMin: true,
    max: '4000 kg/m3',
    takes: 'mix.baseDensity',
    folded: true,
  }),
} as const;
