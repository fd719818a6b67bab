import { number } from '../../../islands/fields.ts';

export const largestLoad = number('volume', {
  label: 'Largest load the mixer takes',
  example: '40 L',
  // The smallest mixer is a jug with a hand blender.
  min: '0.1 L',
  max: '10 m3',
  bench: 'mix.largestLoad',
});

/** The reader may ask for more loads than the mixer needs, so that each fills whole pieces. */
export const leastLoads = number('count', {
  label: 'Loads, at least',
  usual: true,
  example: '1',
  min: '1',
  max: '200',
  whole: true,
  bench: 'mix.leastLoads',
  folded: true,
});
