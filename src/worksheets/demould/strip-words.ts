import type { KeptResults } from '../../bench/entries.ts';
import { EARLIEST_ADJUSTED_AGE, tooColdToCure } from '../../core/curing/limits.ts';
import { JERK } from '../../core/demould/jerk.ts';
import type { Note } from '../../core/note.ts';
import { DAY, HOUR, ICE_POINT } from '../../core/quantity/constants.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Values } from '../../islands/fields.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { barsDoubt } from '../shared/part/bars-doubt.ts';
import { WEAKER } from '../shared/part/part-strength.ts';
import { frostyTests, frozenWords } from '../shared/time/first-frost.ts';
import { heatDoubt } from '../shared/time/heat-doubt.ts';
import { DAYS, HOURS, KPA, PERCENT } from '../shared/words/amounts.ts';
import { STRESS, type stripEstimate, type stripFields } from './strip-estimate.ts';

type Estimate = ReturnType<typeof stripEstimate>;
type Asked = Values<typeof stripFields>;

/** A time that is spoken of in hours, or nothing. */
export const soon = (time: number | undefined) =>
  time !== undefined && time < 2 * DAY ? time : undefined;

/** One that is spoken of in days, or nothing. */
export const late = (time: number | undefined) => (soon(time) === undefined ? time : undefined);

/** A share in per cent. */
export const percent = (share: number, say: Say) =>
  say(share, 'ratio', { units: PERCENT, significant: 2 });

const NEAR_FROST =
  ' It has been near freezing, or will be: see Frost, in the chapter on curing, before you trust this.';

const MOVED = 'the verdict of “Will it bear being moved like this?”';

const TEST_IT = 'Test it before you move it: thumbnail, edge and sounding, as in the table below.';

/** Which ends of the window are set by age, as the beginning of a sentence. */
function byAge({ notes }: { readonly notes: readonly Note[] }) {
  const ends = notes.flatMap(({ code, of }) => (code === 'set-not-strength' ? [of] : []));
  if (ends.length > 1) return 'Both ends are';
  return ends[0] && (ends[0] === 'latest' ? 'The later end is' : 'The earlier end is');
}

/**
 * While the tension of handling is the example slab's, no day is given for the reader's own pieces.
 * For one that froze none is given in any case.
 */
export const stressAwaited = ({ stress, frozen }: Estimate, say: Say, kept: KeptResults) =>
  frozen || kept[STRESS] || !kept['batch.count']
    ? undefined
    : {
        say: `What handling asks of your part is not known: ${say(stress.low, 'stress', { units: KPA })} is the example slab’s, and no day is given by it. Never strip before ${EARLIEST_ADJUSTED_AGE / HOUR} hours. First answer, for its way out of the form, “Will it bear being moved like this?”.`,
        first: 'handling',
      };

/** Whether to leave it, to test it, or to rely on its strength. */
export function stripJudgement(
  { window, cold, warm, frost, thawed, frozen, age, sure, oneBar }: Estimate,
  { now, strengthFrom, bars, mean, low, frost: first, cold: coldest }: Asked,
  say: Say,
): Judgement {
  const hot = heatDoubt(warm, say);
  if (hot?.verdict === 'stop') return hot;
  if (frozen)
    return {
      verdict: 'stop',
      say: `${frozenWords(first!, now, say)} Break a bar of it before you move it.`,
    };
  const how = (s: number) => ({ units: late(s) ? DAYS : HOURS, significant: 2 });
  const time = (s: number) => say(s, 'time', how(s));
  const least = (s: number) => say(s, 'time', { ...how(s), toward: 'up' });
  const frosty =
    frost !== undefined
      ? ` It freezes ${time(frost)} after casting: keep it from freezing, and see Frost, in the chapter on curing.`
      : thawed
        ? ` ${frostyTests(first!, 'bars', say)}${coldest < ICE_POINT ? ' Time below 0\u00a0°C (32\u00a0°F) is counted as time at it: if it freezes again, all of this is later.' : ''}`
        : tooColdToCure(cold)
          ? NEAR_FROST
          : '';
  const odd = frosty || (hot ? ` ${hot.say}` : '');
  if (window.earliest === undefined)
    return {
      verdict: 'stop',
      say: 'In two months it would not be strong enough to be moved like this, even if everything is favourable. Hold it better, make it thicker, or cast it where it can stay.',
    };
  if (now < window.earliest) {
    const earliest = least(window.earliest);
    // The earliest time assumes the warmest temperature from now on. If it was colder so far, the pace
    // so far gives a later one.
    const byPace = age ? now + ((window.earliestAge! - age) * now) / age : 0;
    const soFar = Math.max(EARLIEST_ADJUSTED_AGE, byPace);
    const warmth =
      window.earliest > EARLIEST_ADJUSTED_AGE ? ' even at the warmest from now on' : '';
    const later =
      soFar > window.earliest && least(soFar) !== earliest
        ? `${warmth}; at the pace so far, about ${least(soFar)}`
        : '';
    return {
      verdict: 'stop',
      say: `Leave it. It is not to be expected before ${earliest} after casting${later}. Keep it covered.${odd}`,
    };
  }
  if (window.latest === undefined && frost !== undefined)
    return {
      verdict: 'look',
      say: `${TEST_IT} If any of them fails, wait and test again; at the low end of its strength it need not be ready before the frost.${odd}`,
    };
  if (window.latest === undefined)
    return {
      verdict: 'look',
      say: `${TEST_IT} None of them tells what it bears in bending: at the low end of its strength this move asks for more than ${percent(sure, say)} of it even after two months. Free it of the form first, hold it where it bends least, or break ${strengthFrom === 'bars' ? 'more bars once it is older' : 'a bar'}.${odd}`,
    };
  if (now < window.latest)
    return {
      verdict: 'look',
      say: `${TEST_IT} If any of them fails, wait and test again; by ${least(window.latest)} after casting all should pass.${odd}`,
    };
  if (frosty)
    return {
      verdict: 'look',
      say: `It should be ready by its strength${frost === undefined && !thawed ? ', if it never froze' : ''}. ${TEST_IT}${frosty}`,
    };
  if (hot) return { verdict: 'look', say: `${hot.say} ${TEST_IT}` };
  if (oneBar)
    return {
      verdict: 'look',
      say: `By the guess that one bar allows it should be ready: break three more before you rely on it. ${TEST_IT}`,
    };
  if (strengthFrom === 'density')
    return {
      verdict: 'look',
      say: `Even at the low end of the strength guessed from its density it should be ready. ${WEAKER} ${TEST_IT}`,
    };
  const doubt = barsDoubt({ bars, mean, low });
  if (doubt)
    return {
      verdict: 'look',
      say: `By the low end of your bars it should be ready, but ${doubt} before you rely on it. ${TEST_IT}`,
    };
  return {
    verdict: 'good',
    say: `Even by the low end of your bars it should be ready. ${TEST_IT}`,
  };
}

/** What the window rests on. */
export const stripNotes = (
  { window, age, sure, oneBar }: Estimate,
  { age: given, strengthFrom, worse, share }: Asked,
  say: Say,
): string[] => [
  ...(age !== undefined && Math.abs(age / given! - 1) > 0.02
    ? [
        `The adjusted age given does not follow from these temperatures: ${say(age, 'time', { units: DAYS, significant: 2 })} is the nearest that does, and is used. Check them against one another.`,
      ]
    : []),
  ...(oneBar
    ? [
        'The low end of the strength is a guess, half of it or less, for it is of one bar, or of a number not given: the later end of the window is no surer than that. Break three more.',
      ]
    : []),
  `No jerk is in what handling asks: it is added here, ${percent(Math.max(worse, JERK), say)} of it${worse > JERK ? '' : `, as in ${MOVED}${worse < JERK ? `; the ${percent(worse, say)} chosen is the less cautious, and not used` : ''}`}.`,
  ...(share > sure
    ? [
        `The ${percent(share, say)} chosen of the strength sets the earlier end alone: the later uses half, as ${MOVED} does.`,
      ]
    : []),
  ...(byAge(window)
    ? [
        `${byAge(window)} set by age, not by strength: before ${EARLIEST_ADJUSTED_AGE / HOUR} hours, at 20\u00a0°C (68\u00a0°F) or warmer, the least that test specimens stay in their moulds, no estimate is worth anything.`,
      ]
    : []),
  'The growth curves were made for ordinary concrete; no source seen validates them for foamed concrete. Retarders, cold water and stored cement all make it later.',
  ...(strengthFrom === 'density'
    ? ['Strength here is guessed from density: the later end is no bound. A broken bar narrows it.']
    : [
        'The bars are taken to have lain beside the part until they were broken. The later end uses the warmest up to then, so that least strength is still to come, and with the coldest after.',
      ]),
];
