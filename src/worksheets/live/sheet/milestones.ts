import { HOUR, MINUTE } from '../../../core/quantity/constants.ts';

/** Interval of messages if nothing is known of the foam, and once its time is over, s. */
const EVERY = 5 * MINUTE;
const WARNING = 2 * MINUTE;

export interface Milestone {
  /** Seconds since the foam was made. */
  readonly at: number;
  readonly say: string;
}

/** `4 minutes` */
const minutes = (seconds: number) => {
  const count = Math.round(seconds / MINUTE);
  return `${count} ${count === 1 ? 'minute' : 'minutes'}`;
};

/**
 * The latest message of the clock by now, if any, in words that stay true until the next. With a
 * time in hand: at half of it, two minutes before its end, at its end, and every five minutes
 * after. Without: every five minutes.
 */
export function milestone(elapsed: number, inHand: number | undefined): Milestone | undefined {
  const rounds = Math.floor(elapsed / EVERY) * EVERY;
  if (inHand === undefined)
    return rounds > 0
      ? {
          at: rounds,
          say: `More than ${minutes(rounds)} since the foam was made: if it is not in the mix yet, make it afresh, or at least put its liquid in too.`,
        }
      : undefined;
  const over = Math.floor((elapsed - inHand) / EVERY) * EVERY;
  if (over > 0)
    return {
      at: inHand + over,
      say: `More than ${minutes(over)} over. This foam is no longer the foam you weighed: make it afresh.`,
    };
  if (elapsed >= inHand)
    return { at: inHand, say: 'Time is up: blend it now, or make fresh foam.' };
  // A short time in hand has no warning before its end.
  if (inHand > 2 * WARNING && elapsed >= inHand - WARNING)
    return { at: inHand - WARNING, say: 'Less than 2 minutes left.' };
  if (elapsed >= inHand / 2) return { at: inHand / 2, say: 'More than half of the time is gone.' };
  return undefined;
}

/** `4:07`, `1:02:30`: whole seconds, rounded down, as clocks show them. */
export function onClock(seconds: number): string {
  const whole = Math.floor(seconds);
  const [h, m, s] = [Math.floor(whole / HOUR), Math.floor((whole % HOUR) / 60), whole % 60];
  const two = (n: number) => String(n).padStart(2, '0');
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
}
