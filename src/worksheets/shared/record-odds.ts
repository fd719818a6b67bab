import { readingValue } from '../../bench/records/reading-value.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import { DomainError } from '../../core/domain-error.ts';
import { CEMENT_DENSITY, MIX_WATER_DENSITY, SAND_DENSITY } from '../../core/mix/densities.ts';
import { landingOdds } from '../../core/records/landing-odds.ts';
import type { Learned } from '../../core/records/learn.ts';
import { cementDensityOf } from './cement-density.ts';
import { NEAR_ENOUGH } from './near-enough.ts';

/**
 * How many times in 100 a batch like this one lands near enough to its plan, kg/m³: its foam reckoned as if all of it
 * lived, and with the share learned. Undefined where too little of it is written down, or no such foam gets there.
 */
export function oddsOf(record: BatchRecord, survival: Learned) {
  const at = (name: Parameters<typeof readingValue>[1]) => readingValue(record, name);
  const [target, cement, water] = [at('planned'), at('cement'), at('water')];
  const foamDensity = at('foamDensity');
  if (survival.count === 0 || !target || !cement || !water || !foamDensity) return undefined;
  const sand = at('sand') ?? 0;
  const baseDensity =
    (cement + water + sand) /
    (cement / (cementDensityOf(record) ?? CEMENT_DENSITY) +
      water / MIX_WATER_DENSITY +
      sand / SAND_DENSITY);
  const odds = (aim: number) =>
    Math.round(
      100 *
        landingOdds({
          plan: { target, baseDensity, foamDensity },
          aim,
          next: survival.t,
          tolerance: NEAR_ENOUGH,
        }),
    );
  try {
    return { target, before: odds(1), after: odds(Math.min(1, survival.estimate)) };
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}

export const timesIn100 = (times: number) => `${times === 1 ? 'once' : `${times} times`} in 100`;
