import type { WaterCementOf } from '../../core/mix/proportion.ts';
import { number } from '../../islands/fields.ts';
import { counts, waterCement } from './recipe-fields.ts';

/** The part of that ratio which is no water of the base mix, where it counts all water. */
export const solutionCement = number('ratio', {
  label: 'Foam’s liquid to cement, by mass',
  help: 'The ratio counts all water: so much of it comes with the foam.',
  example: '0.149',
  min: '0',
  max: '2',
  units: { metric: '1', us: '1' },
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
