import { readingValue } from '../../../bench/records/reading-value.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { ifAllowed } from '../../../core/domain-error.ts';
import { baseMix } from '../../../core/mix/base-mix.ts';
import { landingOdds } from '../../../core/records/landing-odds.ts';
import type { Learned } from '../../../core/records/learn.ts';
import { surfaceDry } from '../../shared/mix/further.ts';
import { NEAR_ENOUGH } from '../../shared/mix/near-enough.ts';
import { cementDensityOf } from './cement-density.ts';

/**
 * How many times in 100 a batch like this one lands within tolerance of its target, kg/m³:
 * `before`, with its foam planned for a survival of 1, and `after`, for the survival learned.
 * Undefined if too little is entered, or the target is out of reach.
 */
export function oddsOf(record: BatchRecord, survival: Learned) {
  const at = (name: Parameters<typeof readingValue>[1]) => readingValue(record, name);
  const [target, cement, poured] = [at('planned'), at('cement'), at('water')];
  const foamDensity = at('foamDensity');
  if (survival.count === 0 || !target || !cement || !poured || !foamDensity) return undefined;
  const { water, sand } = surfaceDry(poured, at('sand') ?? 0, record.kept);
  const cementDensity = cementDensityOf(record);
  const odds = (baseDensity: number, aim: number) =>
    Math.round(
      100 *
        landingOdds({
          plan: { target, baseDensity, foamDensity },
          aim,
          next: survival.t,
          tolerance: NEAR_ENOUGH,
        }),
    );
  return ifAllowed(() => {
    const { density } = baseMix({
      waterCement: water / cement,
      sandCement: sand / cement,
      ...(cementDensity && { cementDensity }),
    });
    return {
      target,
      before: odds(density, 1),
      after: odds(density, Math.min(1, survival.estimate)),
    };
  });
}

export const timesIn100 = (times: number) => `${times === 1 ? 'once' : `${times} times`} in 100`;
