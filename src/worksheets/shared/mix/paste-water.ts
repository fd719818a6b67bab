import { demand } from '../../../core/domain-error.ts';
import type { WaterCementOf } from '../../../core/mix/proportion.ts';
import { BASE_WATER_CEMENT } from '../../../core/mix/water-cement-limits.ts';
import { justUnder, SLIVER } from '../../../core/quantity/dust.ts';
import { number } from '../../../islands/fields.ts';
import { waterCement } from './recipe.ts';
import { countsElsewhere } from './recipe-details.ts';

/**
 * The foam’s liquid over cement: the part of a w/c that counts all water which is not in the base
 * mix.
 */
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

/** Fields from which a worksheet finds the w/c of the base mix. */
export const baseRatioFields = {
  waterCement: { ...waterCement, folded: true },
  counts: countsElsewhere,
  solutionCement,
} as const;

/**
 * A w/c as typed: of the base mix or, if it `counts` all water, with the part that comes with the
 * foam.
 */
export interface TypedRatio {
  readonly waterCement: number;
  readonly counts?: WaterCementOf;
  readonly solutionCement?: number;
}

/** The w/c of the base mix alone. */
export const baseWaterCement = ({ waterCement, counts, solutionCement = 0 }: TypedRatio): number =>
  waterCement - (counts === 'total' ? solutionCement : 0);

/** The same, refused as in the plan if the foam’s liquid leaves the base mix too little water. */
export function pasteWaterCement(ratio: TypedRatio): number {
  const base = baseWaterCement(ratio);
  const brought = ratio.waterCement - base;
  const min = justUnder(BASE_WATER_CEMENT.min + brought, SLIVER);
  if (brought > 0) demand('waterCement', ratio.waterCement, 'ratio', { min }, 'paste-robs-foam');
  return base;
}
