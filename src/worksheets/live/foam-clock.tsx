import { useEffect, useRef, useState } from 'preact/hooks';
import {
  type Clock,
  clearClock,
  elapsed,
  lookAtClock,
  restartClock,
  resumeClock,
  startClock,
  stopClock,
} from '../../bench/clock.ts';
import { notify, withdraw } from '../../bench/notices.ts';
import { useClock } from '../../islands/clock.ts';
import { useKept } from '../../islands/hooks.ts';
import { keepFocus } from '../../islands/parts/keep-focus.ts';
import { Way } from '../../islands/parts/Way.tsx';
import { milestone, onClock } from './sheet/milestones.ts';

/** Update interval, ms: short enough that no second is skipped. */
const TICK = 250;

/**
 * A clock for the foam: it counts from its start, also while the page is closed. `short` leaves
 * room on a phone for the step below.
 */
export default function FoamClock({ short = false }: { readonly short?: boolean }) {
  const clock = useClock();
  const kept = useKept()['foam.timeInHand'];
  const found = kept && 'v' in kept ? kept : undefined;
  // The example's drainage does not apply to this foam.
  const inHand = found?.example ? undefined : found?.v;
  const now = useNow(clock?.stop === undefined ? clock?.start : undefined);
  const setBack = clock?.setBack;
  const seconds = clock && !setBack ? elapsed(clock, now) : undefined;
  const told = seconds === undefined ? undefined : milestone(seconds, inHand);
  const left = inHand === undefined || seconds === undefined ? undefined : inHand - seconds;
  // Without a known time in hand it is neither over nor late.
  const state = setBack || left! <= 0 ? 'over' : left! < inHand! / 4 ? 'late' : '';
  return (
    <section
      class={`foam-clock ${state} ${short ? 'short' : ''}`}
      aria-label="Foam clock"
      data-ticks=""
    >
      <p class="clock-figures" role="timer" aria-label="Time since the foam was made">
        {setBack ? '?' : onClock(seconds ?? 0)}
      </p>
      <p class="clock-left">
        {setBack
          ? ''
          : found?.example
            ? 'Nothing to count down to: “How long may the foam wait?” still rests partly on the example.'
            : short && inHand === undefined
              ? later(told !== undefined)
              : leftWords(inHand, left)}
      </p>
      {/* With nothing to count down to, no room is held for it before it speaks. */}
      <p class={inHand === undefined && !setBack && !told ? 'unseen' : 'clock-says'} role="status">
        {setBack ? SET_BACK : (told?.say ?? '')}
      </p>
      <p class="clock-buttons">
        <Buttons clock={clock} />
      </p>
    </section>
  );
}

const later = (stood: boolean) => (
  <>
    <Way to="time-in-hand">How long this foam may wait</Way> is not known yet
    {stood ? '.' : ': use it at once.'}
  </>
);

const SET_BACK =
  'Go by another clock, or make the foam afresh: this device’s clock was set back while this one ran.';

const MAIN = 'foam-clock-main';
export const CLOCK_NOTICE = 'clock';

/** A second tap within this time, ms, was meant for the button at that place before. */
const SECOND_TAP = 800;

/** The first button is always there, so that the focus is not lost. */
function Buttons({ clock }: { readonly clock: Clock | undefined }) {
  const runs = clock !== undefined && clock.stop === undefined;
  const tapped = useRef(Number.NEGATIVE_INFINITY);
  // Only a finger can hit a button that has just replaced another; a key press cannot.
  const once = (press: (event: MouseEvent) => void) => (event: MouseEvent) => {
    const now = performance.now();
    if (event.detail > 0 && now - tapped.current < SECOND_TAP) return;
    tapped.current = now;
    press(event);
  };
  return (
    <>
      <button
        type="button"
        id={MAIN}
        class="main"
        onClick={once(() => {
          if (!clock) withdraw(CLOCK_NOTICE);
          (runs ? stopClock : clock ? resumeClock : startClock)(Date.now());
        })}
      >
        {runs ? 'Stop' : clock ? 'Go on' : 'Foam made: start'}
      </button>
      {clock && !runs && (
        <>
          <button
            type="button"
            onClick={once((event) => {
              keepFocus(event, MAIN);
              tell('The clock was started again.', restartClock(Date.now()));
            })}
          >
            New foam: start again
          </button>
          <button
            type="button"
            onClick={once((event) => {
              keepFocus(event, MAIN);
              tell('The clock is cleared.', clearClock());
            })}
          >
            Clear
          </button>
        </>
      )}
    </>
  );
}

/** Tells that the time of the previous foam was cleared, also in its record, with an undo. */
function tell(words: string, back: () => void): void {
  notify(CLOCK_NOTICE, words, [{ label: 'Put it back', run: back, undoes: true }]);
  // Scroll to below the notice, so that it covers nothing.
  document.querySelector('.run')?.scrollIntoView();
}

function leftWords(inHand: number | undefined, left: number | undefined): string {
  if (inHand === undefined)
    return 'How long this foam may wait is not known yet. Answer “How long may the foam wait?” with your own readings, and the clock counts down to it.';
  if (left === undefined) return `Time in hand: ${onClock(inHand)}.`;
  return left > 0
    ? `${onClock(left)} left of ${onClock(inHand)}.`
    : `${onClock(-left)} over the ${onClock(inHand)} it had.`;
}

/**
 * The present time, updated while a clock `started` at a time runs, and at once when the page is
 * shown again.
 */
function useNow(started: number | undefined): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    let seen = 0;
    const look = () => {
      const at = Date.now();
      lookAtClock(at, seen);
      seen = Math.max(seen, at);
      // In whole seconds, as nothing changes in between.
      setNow(started === undefined ? at : at - ((at - started) % 1000));
    };
    look();
    if (started === undefined) return;
    const timer = setInterval(look, TICK);
    document.addEventListener('visibilitychange', look);
    window.addEventListener('pageshow', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
      window.removeEventListener('pageshow', look);
    };
  }, [started]);
  return now;
}
