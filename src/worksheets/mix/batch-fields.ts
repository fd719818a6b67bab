import { choice, number } from '../../islands/fields.ts';
import { BATCH_VOLUME } from '../shared/mix/batch-volume.ts';
import { largestLoad, leastLoads } from '../shared/mix/load-fields.ts';
import { foamDensityField, sandCement, waterCement } from '../shared/mix/recipe.ts';
import { convention, counts, helpedCementDensity } from '../shared/mix/recipe-details.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { FIBRE_NAMES } from './fibre-names.ts';
import { pigmentShare } from './pigment-share.ts';
import { plannedSurvival } from './planned-survival.ts';

const share = (label: string, example: string, max: string, more: object = {}) =>
  number('ratio', { label, example, min: '0 %', max, units: PERCENT, folded: true, ...more });

const BLEND = { when: { cementKind: ['blend'] } };
/** For an ingredient that a blend may do without: 0 until it is typed. */
const NONE_OF_IT = { ...BLEND, usual: true };

export const batchFields = {
  volume: number('volume', {
    label: 'Foamed mix to make',
    example: '105.12 L',
    min: '0 L',
    aboveMin: true,
    max: '100 m3',
    ...BATCH_VOLUME,
  }),
  aim: choice({
    label: 'Start from',
    options: {
      wet: 'A wet density',
      dry: 'An oven-dry density',
      content: 'A cement content',
      bags: 'The bags I have',
    },
    example: 'wet',
  }),
  wetDensity: number('density', {
    label: 'Wet density',
    example: '600 kg/m3',
    min: '0 kg/m3',
    aboveMin: true,
    max: '4000 kg/m3',
    takes: 'mix.wetDensity',
    when: { aim: ['wet'] },
  }),
  dryDensity: number('density', {
    label: 'Oven-dry density',
    example: '500 kg/m3',
    min: '0 kg/m3',
    aboveMin: true,
    max: '4000 kg/m3',
    when: { aim: ['dry'] },
  }),
  content: number('density', {
    label: 'Cement content, with stand-ins',
    example: '380 kg/m3',
    min: '0 kg/m3',
    aboveMin: true,
    max: '3000 kg/m3',
    when: { aim: ['content'] },
  }),
  bags: number('count', {
    label: 'Bags, all to be used',
    help: 'What density comes out when the form above is to be full?',
    example: '1',
    min: '0',
    aboveMin: true,
    max: '1000',
    when: { aim: ['bags'] },
  }),
  bag: number('mass', {
    label: 'Cement comes in bags of',
    aside: { aim: ['wet', 'dry', 'content'] },
    example: '25 kg',
    min: '0.1 kg',
    max: '2 t',
  }),
  waterCement,
  sandCement,
  foamDensity: foamDensityField,
  parts: number('count', {
    label: 'Parts it fills',
    usual: true,
    help: 'By the form worked on last: for several, type all.',
    example: '12',
    min: '1',
    max: '100000',
    whole: true,
    takes: 'batch.count',
    folded: true,
  }),
  load: { ...largestLoad, folded: true },
  leastLoads,
  counts,
  plannedSurvival,
  cementDensity: helpedCementDensity,
  moisture: share('Water in the sand as it lies', '1 %', '50 %', {
    help: 'Of its oven-dry mass. Dry a panful and weigh it twice.',
  }),
  absorption: share('Water the sand’s grains hold', '1 %', '30 %', {
    help: 'When surface-dry; from the pit’s sheet.',
  }),
  cementKind: choice({
    label: 'Cement',
    options: { plain: 'Portland cement alone', blend: 'Blended, on the bench or in the bag' },
    example: 'plain',
    folded: true,
  }),
  slag: share('Ground slag, of the whole', '0 %', '90 %', NONE_OF_IT),
  ash: share('Fly ash, of the whole', '20 %', '90 %', BLEND),
  fume: share('Silica fume, of the whole', '0 %', '30 %', NONE_OF_IT),
  limestone: share('Limestone powder, of the whole', '0 %', '90 %', NONE_OF_IT),
  filler: choice({
    label: 'Fine light filler',
    options: { none: 'None', some: 'Some' },
    example: 'none',
    folded: true,
  }),
  fillerRatio: number('ratio', {
    label: 'Light filler to cement, by mass',
    example: '0.05',
    min: '0',
    max: '5',
    when: { filler: ['some'] },
    folded: true,
  }),
  fillerDensity: number('density', {
    label: 'Density of its grains',
    help: 'Of the closed grain, not of the heap.',
    example: '700 kg/m3',
    min: '100 kg/m3',
    max: '3000 kg/m3',
    when: { filler: ['some'] },
    folded: true,
  }),
  fillerMoisture: share('Water in the filler as it lies', '0 %', '100 %', {
    usual: true,
    when: { filler: ['some'] },
  }),
  fibreKind: choice({
    label: 'Fibre',
    options: { none: 'None', ...FIBRE_NAMES },
    bench: 'fibre.kind',
    example: 'none',
    // A dose that was typed on the page on fibres is of the fibre that stood there.
    byOwn: { fibreShare: 'ar-glass' },
    folded: true,
  }),
  fibreShare: share('Fibre, of the finished mix by volume', '0.3 %', '5 %', {
    bench: 'fibre.share',
    when: { fibreKind: Object.keys(FIBRE_NAMES) },
  }),
  pigment: { ...pigmentShare, example: '0 %', folded: true },
  admixture: share('Liquid admixture, of cement and stand-ins', '0 %', '10 %', {
    help: 'Only one whose sheet says that it goes with foam.',
  }),
  admixtureWater: share('Water in that admixture', '65 %', '100 %'),
  convention,
} as const;
