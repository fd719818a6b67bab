import { readingOf } from '../../../bench/records/readings.ts';
import type { RunPlan } from '../../../bench/run.ts';
import { ifAllowed } from '../../../core/domain-error.ts';
import { correctMix } from '../../../core/mix/correct.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { type MixAdvice, mixAdvice, offWords } from '../../shared/mix/correction-advice.ts';
import { densityDoubt } from '../../shared/mix/density-doubt.ts';
import { NEAR_ENOUGH } from '../../shared/mix/near-enough.ts';
import { baseIn, massNow } from './run-base.ts';
import type { RunReadings } from './run-readings.ts';

/** What to do with a blend of this density; undefined while that cannot be told. */
export function adviceOn(
  { density, target, made }: { density: number; target: number; made: number },
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): MixAdvice | undefined {
  const { at, pm } = readings;
  const base = baseIn(readings, plan);
  const foamDensity = at('foamDensity') ?? plan?.foamDensity;
  const mass = massNow(readings, plan, say);
  if (!base || !foamDensity || mass === undefined) return undefined;
  const tolerance = NEAR_ENOUGH * target;
  const fix = ifAllowed(() =>
    correctMix({
      measuredDensity: density,
      massInHand: mass,
      targetDensity: target,
      foamDensity,
      baseDensity: base.density,
      tolerance,
    }),
  );
  if (!fix) return { is: 'refused' };
  const [tare, full, vessel] = [at('tare'), at('full'), at('vessel')];
  const bucket =
    tare !== undefined && full !== undefined && vessel
      ? {
          vessel,
          doubt: densityDoubt(
            { tare, full, vessel },
            { tare: pm('tare'), full: pm('full'), vessel: pm('vessel') },
          ),
        }
      : {};
  return mixAdvice(fix, {
    density,
    target,
    tolerance,
    made,
    load: plan?.largestLoad,
    ...bucket,
  });
}

/** Why readings cannot be those of a mix: for a wrong full bucket, with the range it may weigh. */
export function refusedWords(readings: RunReadings, plan: RunPlan | undefined, say: Say): string {
  const { at } = readings;
  const [tare = 0, vessel = 0, full = 0] = [at('tare'), at('vessel'), at('full')];
  const [foam = 0, base = 0] = [
    at('foamDensity') ?? plan?.foamDensity,
    baseIn(readings, plan)?.density,
  ];
  const [least, most] = [tare + foam * vessel, tare + base * vessel];
  if (full >= least && full <= most)
    return 'These readings cannot be a mix of this base mix and this foam. Weigh again.';
  const mass = (si: number) => say(si, 'mass', { plain: true, significant: 3 });
  return `${readingOf('full').label}: read ${mass(full)}; with this foam and this base mix it must be from ${mass(least)} to ${mass(most)}. Weigh again, and look at the bucket’s empty weight and volume.`;
}

/** The line added to the notes of a batch that came out as a different mix. */
export const anotherMixNote = (density: number, off: number, say: Say): string =>
  `${say(density, 'density')} after two corrections, ${offWords(off, say)}: not for the part it was made for.`;
