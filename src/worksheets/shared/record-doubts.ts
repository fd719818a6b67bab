import { keptValue } from '../../bench/entries.ts';
import { readingValue } from '../../bench/records/csv.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { DENSITY, PERCENT } from './amounts.ts';
import { baseMixDoubt } from './base-mix-doubt.ts';
import { NEAR_ENOUGH, STILL_THAT_MIX } from './near-enough.ts';
import { driedDensity } from './record-numbers.ts';
import { weighedDensity } from './record-words.ts';

/** Water and cement of a saved batch, against the plan that was saved with it. */
export function recordBaseDoubt(record: BatchRecord, say: Say): Judgement | undefined {
  const [water, cement] = [readingValue(record, 'water'), readingValue(record, 'cement')];
  if (water === undefined || cement === undefined) return undefined;
  const plan = {
    water: keptValue(record.kept['mix.water']),
    cement: keptValue(record.kept['mix.cement']),
  };
  const planned =
    plan.water && plan.cement ? { water: plan.water, cement: plan.cement } : undefined;
  return baseMixDoubt({ water, cement }, planned, say);
}

/** A mix as it was placed, so far from its plan that it is another one, however well its readings agree. */
export function recordPlanDoubt(record: BatchRecord, say: Say): Judgement | undefined {
  const [planned, wet] = [readingValue(record, 'planned'), weighedDensity(record)];
  if (!planned || wet === undefined) return undefined;
  const off = wet / planned - 1;
  if (Math.abs(off) <= STILL_THAT_MIX * NEAR_ENOUGH) return undefined;
  const density = (x: number) => say(x, 'density', { units: DENSITY });
  const by = say(Math.abs(off), 'ratio', { units: PERCENT, significant: 2 });
  return {
    verdict: 'look',
    say: `It weighs ${density(wet)} where ${density(planned)} was planned, ${by} ${off > 0 ? 'heavier' : 'lighter'}: it is not the mix that was planned. Go on with the weighed density for weight, strength and curing, and look for the cause before the next batch.`,
  };
}

/** A piece cannot come out of drying heavier than the mix it was cast from. */
export function recordDryDoubt(record: BatchRecord, say: Say): Judgement | undefined {
  const [dry, wet] = [driedDensity(record)?.density, weighedDensity(record)];
  if (dry === undefined || wet === undefined || dry <= wet) return undefined;
  const density = (x: number) => say(x, 'density', { units: DENSITY });
  return {
    verdict: 'look',
    say: `Dried, the piece weighs ${density(dry)}, more than the ${density(wet)} of the fresh mix, and drying only takes water away. Look at the weight of the piece, its volume and their units. If they stand, the mix fell together in the form after it was weighed.`,
  };
}
