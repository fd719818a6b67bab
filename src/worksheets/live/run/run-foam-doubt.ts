import type { RunPlan } from '../../../bench/run.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { foamFaultDoubt, unsureFoam } from '../../shared/foam/foam-doubt.ts';
import { foamFault, LIGHT_FOAM } from '../../shared/foam/is-foam.ts';
import { FOAM } from '../../shared/words/amounts.ts';
import type { RunReadings } from './run-readings.ts';

/**
 * Ratio of weighed to planned foam density, either way, above which a mistake is assumed. A choice.
 */
const ANOTHER_FOAM = 2;

/** The other reason for foam much lighter than planned: it waited, and was then weighed. */
const DRAINED = ' If it has stood, it has drained: make it afresh.';

/** The doubt about foam, planned or weighed, that is unusable or far from the reader's own plan. */
export function foamDoubt(
  { at }: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): Judgement | undefined {
  // As a quotient of two amounts it may be off a limit by a rounding error.
  const planned = plan?.example ? 0 : Number((plan?.foamDensity ?? 0).toPrecision(9));
  const weighed = at('foamDensity');
  const foam = weighed ?? planned;
  if (!foam) return undefined;
  const another = planned && Math.max(foam / planned, planned / foam) > ANOTHER_FOAM;
  const fault = foamFault(foam);
  if (!another && fault?.verdict !== 'stop') return undefined;
  if (weighed === undefined) return foamFaultDoubt(foam, say, undefined, 'The plan’s foam');
  if (!another && fault?.is === 'thin') return foamFaultDoubt(foam, say);
  const words = (density: number) => say(density, 'density', { units: FOAM });
  return {
    verdict: fault?.verdict ?? 'look',
    say: `The foam comes to ${words(foam)}, ${another ? `where ${words(planned)} is planned` : 'which is hardly foam'}: look again at the bucket’s volume, its empty weight and what it weighs full of foam.${another && foam < planned ? DRAINED : ''}`,
  };
}

/** The remark on foam that may be used all the same. */
export function foamLook(
  readings: RunReadings,
  plan: RunPlan | undefined,
  say: Say,
): Judgement | undefined {
  const foam = readings.at('foamDensity');
  if (!foam || foamDoubt(readings, plan, say)) return undefined;
  const pm = readings.pm('foamDensity');
  // A ± that cannot be read has its own message at its field.
  const unsure = Number.isFinite(pm) && unsureFoam(pm, say);
  if (unsure) return unsure;
  if (foam >= LIGHT_FOAM) return foamFaultDoubt(foam, say);
  return {
    verdict: 'look',
    say: `Foam of ${say(foam, 'density', { units: FOAM })} is lighter than small-batch makers want it (common practice, no source).${DRAINED} If it is fresh, give it a little less air, or use it and expect to correct.`,
  };
}
