import type { RunPlan } from '../../bench/run.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { foamFaultDoubt } from '../mix/mix-doubts.ts';
import { FOAM } from './amounts.ts';
import { foamFault, LIGHT_FOAM } from './is-foam.ts';
import type { RunReadings } from './run-readings.ts';

/** Foam so many times heavier or lighter than planned was weighed or typed wrong. A choice. */
const ANOTHER_FOAM = 2;

/** Foam that is none, or not the one of the reader’s own plan: a slip, or of no use. */
export function foamDoubt(
  { at }: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): Judgement | undefined {
  const foam = at('foamDensity');
  if (!foam) return undefined;
  const planned = plan?.example ? 0 : (plan?.foamDensity ?? 0);
  const another = planned && Math.max(foam / planned, planned / foam) > ANOTHER_FOAM;
  const fault = foamFault(foam);
  if (fault?.is === 'thin') return foamFaultDoubt(foam, say);
  if (!another && fault?.is !== 'hardly') return undefined;
  const words = (density: number) => say(density, 'density', { units: FOAM });
  return {
    verdict: fault?.verdict ?? 'look',
    say: `The foam comes to ${words(foam)}, ${another ? `where ${words(planned)} is planned` : 'which is hardly foam'}: look again at the bucket’s volume, its empty weight and what it weighs full of foam.`,
  };
}

/** What is to be said of foam that may be used all the same. */
export function foamLook(
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): Judgement | undefined {
  const foam = readings.at('foamDensity');
  if (!foam || foamDoubt(readings, plan, say)) return undefined;
  if (foam >= LIGHT_FOAM) return foamFaultDoubt(foam, say);
  return {
    verdict: 'look',
    say: `Foam of ${say(foam, 'density', { units: FOAM })} is lighter than small-batch makers want it (common practice, no source): give it a little less air, or use it and expect to correct.`,
  };
}
