import { keptValue } from '../../bench/entries.ts';
import { readingValue } from '../../bench/records/csv.ts';
import { READINGS } from '../../bench/records/readings.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { DENSITY, PERCENT } from './amounts.ts';
import { baseMixDoubt } from './base-mix-doubt.ts';
import { NEAR_ENOUGH, STILL_THAT_MIX } from './near-enough.ts';
import { KPA, MPA } from './part-fields.ts';
import { driedDensity } from './record-numbers.ts';
import { OFF_BAND, strengthsOffBand } from './record-strengths.ts';
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

/** Strengths so far from all that is published for their density that a slip is likelier, of the number or of its unit. */
export const recordStrengthDoubts = (record: BatchRecord, say: Say): readonly Judgement[] =>
  strengthsOffBand(record).map(({ reading, strength, end, above }) => {
    const units = reading === 'crush' ? MPA : KPA;
    const stress = (si: number) => say(si, 'stress', { units, significant: 2 });
    const what =
      reading === 'crush'
        ? 'published at 28\u00a0days for its density'
        : 'to be expected by the crushing strengths published at 28\u00a0days for its density';
    return {
      verdict: 'look',
      say: `${READINGS[reading].label}: read ${stress(strength)}, ${above ? `over ${OFF_BAND} times the most` : `not 1/${OFF_BAND} of the least`} ${what}, ${stress(end)}. Look again at it and at its unit, and at what the density comes from; as it stands it teaches nothing.`,
    };
  });
