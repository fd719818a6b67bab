import { choice, number } from '../../../islands/fields.ts';
import { CEM_TWO_WEIGHS } from '../words/cement-bag.ts';

/** The particle density, not the bulk density. Blended cements are lighter than Portland cement. */
export const cementDensity = number('density', {
  label: 'Density of the cement’s particles',
  example: '3150 kg/m3',
  min: '2000 kg/m3',
  max: '4000 kg/m3',
  bench: 'mix.cementDensity',
  folded: true,
});

/** The same, with the density of a blended cement as its help. */
export const helpedCementDensity = { ...cementDensity, help: CEM_TWO_WEIGHS } as const;

/** Which water the w/c counts. Its bench key dates from when only one worksheet asked it. */
export const counts = choice({
  label: 'The water/cement ratio counts',
  options: { base: 'The water of the base mix', total: 'All water, the foam’s too' },
  example: 'base',
  bench: 'proportion.counts',
  folded: true,
});

/** The same for worksheets that use the choice but leave it to be made on another. */
export const countsElsewhere = { ...counts, when: { counts: [] as readonly string[] } } as const;

/** Whether the target density includes the foam’s own mass. */
export const convention = choice({
  label: 'The foam’s own mass',
  help: 'The bucket on the scale counts it.',
  options: { 'foam-counted': 'Counted', 'foam-ignored': 'Ignored' },
  example: 'foam-counted',
  bench: 'proportion.convention',
  folded: true,
});
