import { MIX_TARE, MIX_VESSEL } from '../../bench/mix-bucket.ts';
import { demand } from '../../core/domain-error.ts';
import type { WaterCementOf } from '../../core/mix/proportion.ts';
import { BASE_WATER_CEMENT } from '../../core/mix/water-cement-limits.ts';
import { justUnder, SLIVER } from '../../core/quantity/dust.ts';
import { choice, number } from '../../islands/fields.ts';
import { FOAM_TARE, FOAM_VESSEL } from '../shared/foam-vessel.ts';
import { waterCement } from '../shared/recipe.ts';

/** Of the grains, not of the bagful: blended cements are lighter than Portland cement. */
export const cementDensity = number('density', {
  label: 'Density of the cement’s particles',
  example: '3150 kg/m3',
  min: '2000 kg/m3',
  max: '4000 kg/m3',
  bench: 'mix.cementDensity',
  folded: true,
});

/** The same with what a blend weighs: a third of limestone at 2700 kg/m³ and the rest Portland cement, 2984. */
export const helpedCementDensity = {
  ...cementDensity,
  help: 'By its own sheet. A third of limestone in it, as CEM II may hold, makes it about 3000\u00a0kg/m³ (187\u00a0lb/ft³).',
} as const;

/** Which water that ratio counts. Its place on the bench is from when one worksheet alone asked. */
export const counts = choice({
  label: 'That ratio counts',
  options: { base: 'The water of the base mix', total: 'All water, the foam’s too' },
  example: 'base',
  bench: 'proportion.counts',
  folded: true,
});

/** The part of that ratio which is no water of the base mix, where it counts all water. */
export const solutionCement = number('ratio', {
  label: 'Foam’s liquid to cement, by mass',
  help: 'The ratio counts all water: so much of it comes with the foam.',
  example: '0.149',
  min: '0',
  max: '2',
  takes: 'mix.solutionCement',
  when: { counts: ['total'] },
  folded: true,
});

/** Which water the ratio counts, where another worksheet asks and this one only goes by it. */
export const countsElsewhere = { ...counts, when: { counts: [] as readonly string[] } } as const;

/** What a worksheet asks to know the water of the base mix. */
export const baseRatioFields = {
  waterCement: { ...waterCement, folded: true },
  counts: countsElsewhere,
  solutionCement,
} as const;

/** A w/c as it is typed: of the base mix, unless it counts all water; and what of that comes with the foam. */
export interface TypedRatio {
  readonly waterCement: number;
  readonly counts?: WaterCementOf;
  readonly solutionCement?: number;
}

/** The w/c of the base mix alone. */
export const baseWaterCement = ({ waterCement, counts, solutionCement = 0 }: TypedRatio): number =>
  waterCement - (counts === 'total' ? solutionCement : 0);

/** The w/c of the base mix alone, refused as in the plan where the foam’s liquid leaves it too little. */
export function pasteWaterCement(ratio: TypedRatio): number {
  const base = baseWaterCement(ratio);
  const brought = ratio.waterCement - base;
  const min = justUnder(BASE_WATER_CEMENT.min + brought, SLIVER);
  if (brought > 0) demand('waterCement', ratio.waterCement, 'ratio', { min }, 'paste-robs-foam');
  return base;
}

/** Whether the target has the foam's own mass in it. */
export const convention = choice({
  label: 'The foam’s own mass',
  help: 'The bucket on the scale counts it.',
  options: { 'foam-counted': 'Counted', 'foam-ignored': 'Ignored' },
  example: 'foam-counted',
  bench: 'proportion.convention',
  folded: true,
});

/** Said beside a dry density for which nobody asked what the grains hold. */
export const sandTakenAsDry = ({ sandCement: sand }: { readonly sandCement: number }) =>
  sand > 0
    ? [
        'The sand is counted as dry. Surface-dry grains still hold water, often about 1\u00a0% of the sand (common practice, no source): the oven-dry density comes out lower by that much of the sand in it.',
      ]
    : [];

export const largestLoad = number('volume', {
  label: 'Largest load the mixer takes',
  example: '40 L',
  // A jug and a hand blender.
  min: '0.1 L',
  max: '10 m3',
  bench: 'mix.largestLoad',
});

/** More loads than the mixer asks for, so that each fills whole pieces. */
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

/** The bucket in which the blend is weighed: the foam’s vessel, until another is typed. */
export const weighingBucket = {
  tare: number('mass', {
    label: 'Bucket, empty',
    example: '0.85 kg',
    plusMinus: '0.01 kg',
    min: '0 kg',
    max: '200 kg',
    borrows: FOAM_TARE,
    bench: MIX_TARE,
  }),
  vessel: number('volume', {
    label: 'Bucket’s volume to the brim',
    example: '20 L',
    plusMinus: '0.2 L',
    plusMinusGrows: true,
    min: '0.1 L',
    max: '1000 L',
    ...FOAM_VESSEL,
    bench: MIX_VESSEL,
  }),
};
