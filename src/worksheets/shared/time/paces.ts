import { ACTIVATION_ENERGY_ASTM, type AgeLaw, ageFactor } from '../../../core/curing/age-factor.ts';
import { PEAK_LIMIT } from '../../../core/curing/limits.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { DAYS, HOURS } from '../words/amounts.ts';
import { saidApart } from '../words/said-apart.ts';

/**
 * Two laws of ageing. They differ most in the cold, so the result is given as the band between
 * them.
 */
const LAWS: readonly AgeLaw[] = [
  { law: 'fhp' },
  { law: 'arrhenius', activationEnergy: ACTIVATION_ENERGY_ASTM },
];

/** The least and the greatest adjusted age gained per second between two temperatures, K. */
export const paceBetween = (cold: number, warm: number) => ({
  slow: Math.min(...LAWS.map((law) => ageFactor(law, cold))),
  fast: Math.max(...LAWS.map((law) => ageFactor(law, warm))),
});

/**
 * Why an adjusted age, s, cannot have been reached in the time since casting, s, even at the
 * highest temperature a part should have; undefined if it can.
 */
export function tooOld(
  { age, since }: { readonly age: number; readonly since: number | undefined },
  say: Say,
): string | undefined {
  if (since === undefined) return undefined;
  const most = since * paceBetween(PEAK_LIMIT, PEAK_LIMIT).fast;
  if (age <= most) return undefined;
  const days = (time: number, apart: number) =>
    saidApart(time, 'time', [apart], say, { units: DAYS, significant: 2 });
  return `Check the age and its unit, and the time since casting: even at ${say(PEAK_LIMIT, 'temperature', { plain: true })}, ${say(since, 'time', { units: HOURS, plain: true })} by the clock count as no more than ${days(most, age)}, not ${days(age, most)}.`;
}
