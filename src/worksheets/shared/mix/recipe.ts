import { number } from '../../../islands/fields.ts';
import { FOAM } from '../words/amounts.ts';

// The recipe’s two ratios and its foam.

export const waterCement = number('ratio', {
  label: 'Water/cement ratio',
  usual: true,
  help: 'By mass, of the base mix. Often near 0.37 (common practice, no source); below 0.35 the paste begins to take water from the foam.',
  example: '0.4',
  min: '0.1',
  max: '3',
  bench: 'mix.waterCement',
});

export const sandCement = number('ratio', {
  label: 'Sand to cement',
  usual: true,
  help: 'By mass, sand surface-dry. 0 for none.',
  example: '0',
  min: '0',
  max: '10',
  bench: 'mix.sandCement',
});

/** The density of the foam, as weighed or assumed. */
export const foamDensityField = number('density', {
  label: 'Foam density',
  example: '80 g/L',
  min: '5 g/L',
  max: '500 g/L',
  units: FOAM,
  takes: 'foam.density',
  bench: 'mix.foamDensity',
});

/** The wet density that a mix is planned for. */
export const targetDensity = number('density', {
  label: 'Target wet density',
  example: '600 kg/m3',
  min: '0 kg/m3',
  aboveMin: true,
  max: '4000 kg/m3',
  takes: 'mix.planned',
});
