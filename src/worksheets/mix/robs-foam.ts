import { type DomainError, demand } from '../../core/domain-error.ts';
import { BASE_WATER_CEMENT } from '../../core/mix/water-cement-limits.ts';
import { justUnder, SLIVER } from '../../core/quantity/dust.ts';
import { baseWaterCement, type TypedRatio } from './recipe-fields.ts';

/** The w/c of the base mix alone, refused as in the plan where the foam’s liquid leaves it too little. */
export function pasteWaterCement(ratio: TypedRatio): number {
  const base = baseWaterCement(ratio);
  const brought = ratio.waterCement - base;
  const min = justUnder(BASE_WATER_CEMENT.min + brought, SLIVER);
  if (brought > 0) demand('waterCement', ratio.waterCement, 'ratio', { min }, 'paste-robs-foam');
  return base;
}

/** Why a paste has too little water; where the ratio counts the foam’s too, how much that would have to be. */
export function robsFoam({ value, allowed: { min = 0 } }: DomainError): string {
  const least = BASE_WATER_CEMENT.min;
  const all = min > least ? ` With this much foam it takes ${upTo(min)} in all.` : '';
  return `A water/cement ratio of ${value.toFixed(2)} leaves the paste less than ${least.toFixed(2)}: it would take its water from the foam and break it.${all}`;
}

/** In hundredths, never less. */
const upTo = (ratio: number) => (Math.ceil(100 * ratio - 1e-6) / 100).toFixed(2);
