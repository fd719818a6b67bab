import { number } from '../../../islands/fields.ts';

/**
 * The density of the mix as placed. The part is taken to weigh the same until it is seen to dry.
 */
export const wetDensity = number('density', {
  label: 'Wet density',
  help: 'What the mix weighed when it was placed.',
  example: '600 kg/m3',
  min: '50 kg/m3',
  max: '2500 kg/m3',
  takes: 'mix.planned',
  bench: 'part.wetDensity',
});

export const dryDensity = number('density', {
  label: 'Oven-dry density',
  help: 'Of a dried piece, or what the mix is to dry to.',
  example: '465 kg/m3',
  min: '50 kg/m3',
  max: '2400 kg/m3',
  takes: 'part.dryDensity',
  bench: 'part.oven',
});
