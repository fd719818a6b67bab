import { keptValue } from '../../bench/entries.ts';
import { readingValue } from '../../bench/records/csv.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { DENSITY } from './amounts.ts';
import { baseMixDoubt } from './base-mix-doubt.ts';
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
