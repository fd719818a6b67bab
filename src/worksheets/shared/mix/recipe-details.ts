import { choice, number } from '../../../islands/fields.ts';
import { CEM_TWO_WEIGHS } from '../words/cement-bag.ts';

/** Of the grains, not of the bagful: blended cements are lighter than Portland cement. */
export const cementDensity = number('density', {
  label: 'Density of the cement’s particles',
  example: '3150 kg/m3',
  min: '2000 kg/m3',
  max: '4000 kg/m3',
  bench: 'mix.cementDensity',
  folded: true,
});

/** The same with what a blend weighs. */
export const helpedCementDensity = { ...cementDensity, help: CEM_TWO_WEIGHS } as const;

/** Which water that ratio counts. Its place on the bench is from when one worksheet alone asked. */
export const counts = choice({
  label: 'The water/cement ratio counts',
  options: { base: 'The water of the base mix', total: 'All water, the foam’s too' },
  example: 'base',
  bench: 'proportion.counts',
  folded: true,
});

/** Which water the ratio counts, where another worksheet asks and this one only goes by it. */
export const countsElsewhere = { ...counts, when: { counts: [] as readonly string[] } } as const;

/** Whether the target has the foam's own mass in it. */
export const convention = choice({
  label: 'The foam’s own mass',
  help: 'The bucket on the scale counts it.',
  options: { 'foam-counted': 'Counted', 'foam-ignored': 'Ignored' },
  example: 'foam-counted',
  bench: 'proportion.convention',
  folded: true,
});
