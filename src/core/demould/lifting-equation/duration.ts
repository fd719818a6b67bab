import { demand } from '../../domain-error.ts';
import { HOUR } from '../../quantity/constants.ts';
import { justUnder } from '../../quantity/dust.ts';
import type { Duration } from './lift.ts';

/** A spell of lifting and the light work or rest that follows it, s each. */
export interface Spell {
  readonly work: number;
  readonly recovery: number;
}

/**
 * Recovery after a short spell as a share of its work time, 2021 revision.
 * @source niosh-lifting-1994 p. 13
 */
const SHORT_RECOVERY_2021 = 1;
/** Recovery after a moderate spell as a share of its work time. @source niosh-lifting-1994 p. 14 */
const MODERATE_RECOVERY = 0.3;

/**
 * Short, moderate or long? Work not followed by enough recovery joins the next spell. A spell of at
 * most 1 h needs recovery of `shortRecovery` × its work to stand alone as short; one of at most 2 h
 * needs 0.3 × its work to stand alone as moderate; the rest is long (up to 8 h). The longest class
 * met counts. The last spell of the day is taken to be followed by enough rest. Range: up to 8 h of
 * work.
 * @param spells in order, s
 * @param shortRecovery share of the work time, 1.0 by the 2021 revision
 * @returns the class, and `work`: the longest joined work time in that class, s
 * @throws {DomainError} for negative times, no work at all or more than 8 h of work joined together
 * @source niosh-lifting-1994 pp. 13–14
 */
export function durationClass(
  spells: readonly Spell[],
  shortRecovery: number = SHORT_RECOVERY_2021,
): { readonly duration: Duration; readonly work: number } {
  let joined = 0;
  let longest = 0;
  for (const { work, recovery } of spells) {
    demand('work', work, 'time', { min: 0 });
    demand('recovery', recovery, 'time', { min: 0 });
    joined += work;
    longest = Math.max(longest, joined);
    const share = classOf(joined) === 'short' ? shortRecovery : MODERATE_RECOVERY;
    const rested = recovery >= justUnder(share * joined);
    if (rested && classOf(joined) !== 'long') joined = 0;
  }
  demand('work', longest, 'time', { min: 0, aboveMin: true, max: 8 * HOUR });
  return { duration: classOf(longest), work: longest };
}

/**
 * How much light work or rest must follow a spell for it to keep its class, s: shortRecovery × work
 * up to 1 h, 0.3 × work up to 2 h. Range: spells of up to 2 h; longer ones have no such rule.
 * @param work s, above 0, at most 2 h
 * @throws {DomainError} outside that range
 * @source niosh-lifting-1994 pp. 13–14
 */
export function recoveryNeeded(work: number, shortRecovery: number = SHORT_RECOVERY_2021): number {
  demand('work', work, 'time', { min: 0, aboveMin: true, max: 2 * HOUR });
  return (work <= HOUR ? shortRecovery : MODERATE_RECOVERY) * work;
}

function classOf(work: number): Duration {
  return work <= HOUR ? 'short' : work <= 2 * HOUR ? 'moderate' : 'long';
}
