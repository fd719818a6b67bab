import { number } from '../../islands/fields.ts';

/** The recipe's two ratios, shared by every worksheet that needs them. */
export const waterCement = number('ratio', {
  label: 'Water/cement ratio',
  help: 'By mass, of the base mix. Often near 0.37 (common practice, no source); below 0.35 the paste begins to take water from the foam.',
  example: '0.4',
  min: '0.1',
  max: '3',
  units: { metric: '1', us: '1' },
  bench: 'mix.waterCement',
});

export const sandCement = number('ratio', {
  label: 'Sand to cement',
  help: 'By mass, sand surface-dry. 0 for none.',
  example: '0',
  min: '0',
  max: '10',
  units: { metric: '1', us: '1' },
  bench: 'mix.sandCement',
});
