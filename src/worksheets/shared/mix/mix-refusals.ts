import type { DomainError } from '../../../core/domain-error.ts';
import { BASE_WATER_CEMENT } from '../../../core/mix/water-cement-limits.ts';
import { wholeOnes } from '../../../core/mix/whole.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { saidApart } from '../words/said-apart.ts';

/**
 * A w/c to two decimals, or more if it would otherwise read the same as a mark it is compared with.
 */
export const hundredths = (ratio: number, marks: readonly number[], say: Say) =>
  saidApart(ratio, 'count', marks, say, { decimals: 2 });

/**
 * Why a paste has too little water and, if the w/c counts all water, the least w/c that would do.
 */
function robsFoam({ value, allowed: { min = 0 } }: DomainError, say: Say): string {
  const least = BASE_WATER_CEMENT.min;
  const all = min > least ? ` With this much foam it takes ${upTo(min)} in all.` : '';
  return `A water/cement ratio of ${hundredths(value, [least, min], say)} leaves the paste less than ${least.toFixed(2)}: it would take its water from the foam and break it.${all}`;
}

/** A ratio rounded up to two decimals. */
const upTo = (ratio: number) => (wholeOnes(100 * ratio) / 100).toFixed(2);

/** The sentences for mixes that cannot exist, by the code of core’s refusal. */
export const mixRefusals = {
  'heavier-than-base-mix': (e: DomainError, say: Say) =>
    `${say(e.value, 'density')} cannot be reached: without any foam this mix is ${say(e.allowed.max!, 'density', { significant: 4 })}. Aim lower, or add sand.`,
  'lighter-than-foam': (e: DomainError, say: Say) =>
    `${say(e.value, 'density')} cannot be reached: the foam alone is ${say(e.allowed.min!, 'density')}. Aim higher, or make lighter foam.`,
  'paste-robs-foam': robsFoam,
};
