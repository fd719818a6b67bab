import { READINGS } from '../../../bench/records/readings.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';
import { KPA, MPA } from '../../shared/words/amounts.ts';
import { OFF_BAND, strengthsOffBand } from './record-strengths.ts';

/**
 * The doubts about strengths so far from the published ones for their density that a wrong number
 * or unit is likelier.
 */
export const recordStrengthDoubts = (record: BatchRecord, say: Say): readonly Judgement[] =>
  strengthsOffBand(record).map(({ reading, strength, end, above }) => {
    const units = reading === 'crush' ? MPA : KPA;
    const stress = (si: number) => say(si, 'stress', { units, significant: 2 });
    const what =
      reading === 'crush'
        ? 'published at 28\u00a0days for its density'
        : 'for its density, as worked out from the crushing strengths published at 28\u00a0days';
    return {
      verdict: 'look',
      say: `${READINGS[reading].label}: read ${stress(strength)}, ${above ? `over ${OFF_BAND} times` : 'less than a fifth of'} ${stress(end)}, the ${above ? 'most' : 'least'} ${what}. Look again at it and at its unit, and at what the density comes from; as it stands it teaches nothing.`,
    };
  });
