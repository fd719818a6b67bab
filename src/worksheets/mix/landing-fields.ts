import { POUND_PER_CUBIC_FOOT } from '../../core/quantity/constants.ts';
import { choice, number } from '../../islands/fields.ts';
import { learned } from '../../islands/parts/LearnedOffer.tsx';
import { slide } from '../../islands/parts/Slider.tsx';
import { foamShare } from '../shared/foam/foam-share.ts';
import { FOAM_VESSEL } from '../shared/foam/foam-vessel.ts';
import { NEAR_ENOUGH } from '../shared/mix/near-enough.ts';
import { foamDensityField, sandCement, targetDensity, waterCement } from '../shared/mix/recipe.ts';
import { cementDensity, counts } from '../shared/mix/recipe-details.ts';
import { PERCENT, SMALL_MASS } from '../shared/words/amounts.ts';

/** A usual band of supply, kg/m³ either way. @source uk-supply-practice */
export const SUPPLY_BAND = 50;

export const landingFields = {
  target: targetDensity,
  foamDensity: foamDensityField,
  foamScale: number('mass', {
    label: 'The foam is weighed to ±',
    help: 'What if you weighed it on a 1\u00a0g scale? Move the slider.',
    example: '10 g',
    min: '0 g',
    max: '1 kg',
    units: SMALL_MASS,
    slider: slide('0.1 g', '200 g'),
  }),
  foamFill: number('ratio', {
    label: 'The foam is measured out to ±',
    help: 'Buckets not quite struck off, gaps in the foam.',
    example: '3 %',
    min: '0 %',
    max: '40 %',
    units: PERCENT,
    slider: slide('0.2 %', '20 %'),
  }),
  baseScale: number('mass', {
    label: 'Cement and water are weighed to ±',
    example: '10 g',
    min: '0 g',
    max: '10 kg',
    units: SMALL_MASS,
    slider: slide('1 g', '1 kg'),
  }),
  gasLost: number('ratio', {
    learned: learned('foam.gasLost'),
    label: 'Gas lost while blending',
    help: 'Of the gas in the foam. A guess until you have compared a batch with its plan. The ± of yours holds the errors of weighing too, which then count twice.',
    example: '3 %',
    plusMinus: '2 %',
    min: '-20 %',
    max: '90 %',
    units: PERCENT,
  }),
  near: choice({
    label: 'Near enough is',
    options: {
      percent: `Within ${100 * NEAR_ENOUGH}\u00a0%`,
      supply: `Within ${SUPPLY_BAND}\u00a0kg/m³ (${Math.round(SUPPLY_BAND / POUND_PER_CUBIC_FOOT)}\u00a0lb/ft³)`,
      own: 'My own',
    },
    example: 'percent',
  }),
  own: number('density', {
    label: 'My own, either way',
    example: '25 kg/m3',
    min: '0 kg/m3',
    aboveMin: true,
    max: '1000 kg/m3',
    when: { near: ['own'] },
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
  plannedSurvival: foamShare,
  waterCement: { ...waterCement, folded: true },
  counts,
  sandCement: { ...sandCement, folded: true },
  bucket: number('volume', {
    label: 'Bucket the foam was weighed in, to the brim',
    example: '20 L',
    plusMinus: '0.2 L',
    plusMinusGrows: true,
    min: '0 L',
    aboveMin: true,
    max: '1000 L',
    ...FOAM_VESSEL,
    folded: true,
  }),
  sameBucket: choice({
    label: 'The foam is measured out in',
    options: { same: 'The bucket it was weighed in', other: 'Another vessel' },
    example: 'same',
    folded: true,
  }),
  cementDensity: { ...cementDensity, plusMinus: '30 kg/m3' },
  together: number('ratio', {
    label: 'How far the weighings err together',
    help: 'A correlation: 0 for errors of their own, 1 for one scale that reads everything a little off.',
    example: '0',
    min: '0',
    max: '1',
    folded: true,
  }),
} as const;
