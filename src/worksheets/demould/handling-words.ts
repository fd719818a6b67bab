import { withJerk } from '../../core/demould/jerk.ts';
import { CAUTIOUS_SHARE, EARLIEST_ADJUSTED_AGE } from '../../core/demould/strip-window.ts';
import { DAY } from '../../core/quantity/constants.ts';
import { justUnder, SLIVER } from '../../core/quantity/dust.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Values } from '../../islands/fields.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { barsDoubt } from '../shared/part/bars-doubt.ts';
import { WEAKER } from '../shared/part/part-strength.ts';
import { youngWords } from '../shared/part/young-words.ts';
import { frostyTests, frozenWords } from '../shared/time/first-frost.ts';
import { AHEAD } from '../shared/time/since.ts';
import { DAYS, HOURS, KPA, PERCENT } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { WAYS } from './handling-fields.ts';
import type { moved, moveFields } from './handling-worked.ts';
import { MOST_FOR_ONE, tooHeavy } from './too-heavy.ts';

type Moved = ReturnType<typeof moved>;
type Asked = Values<typeof moveFields>;

/** Another hold is named where it leaves less than this share of the tension. A choice. */
const WORTH_NAMING = 0.95;

/** What there is to do about a move that asks for too much, and how long waiting would take. */
function waitWords({ enough, ofBars }: Moved, { age, since }: Asked, say: Say): string {
  if (ofBars) return 'Hold it better, or wait and break bars again.';
  if (enough === undefined || enough > AHEAD)
    return 'Hold it better: at the low end of its strength two months of waiting are not enough.';
  const days = (time: number) =>
    say((Math.ceil(justUnder((10 * time) / DAY, SLIVER)) / 10) * DAY, 'time', {
      units: DAYS,
      significant: 3,
      plain: true,
    });
  const more =
    since && age > 0
      ? `, so about ${say(((enough - age) * since) / age, 'time', { units: DAYS, significant: 2 })} more at the pace so far`
      : '';
  return `Hold it better, or wait until it is ${days(enough)} old as at 20\u00a0°C (68\u00a0°F): it counts as ${say(age, 'time', { units: DAYS, significant: 2 })} now${more}.`;
}

/** Whether it bears the move, or what to do instead. */
export function handlingJudgement(r: Moved, v: Asked, say: Say): Judgement {
  const { use, held, best, bestStress, freed, stripping, oneBar, ofBars, young, frozen, mass } = r;
  const { hold, grip, beside, bars, frost } = v;
  const way =
    hold === 'middle' ? `in the middle on hands ${say(grip, 'length')} apart` : WAYS[hold];
  const kpa = (stress: number) => say(stress, 'stress', { units: KPA });
  const isLess = (stress: number) => stress < WORTH_NAMING * held.stress;
  const instead = [
    stripping && isLess(freed) && ` With the form off first, the tension is ${kpa(freed)}.`,
    isLess(bestStress) &&
      ` Held ${say(best, 'length', { significant: 2 })} from each end of its span, it has a tension of ${kpa(bestStress)}.`,
  ]
    .filter(Boolean)
    .join('');
  if (frozen)
    return {
      verdict: 'stop',
      say: `${frozenWords(frost!, v.since, say)} Break a bar of it before you move it.`,
    };
  if (young)
    return {
      verdict: 'stop',
      say: `It is younger than ${say(EARLIEST_ADJUSTED_AGE, 'time', { units: HOURS, significant: 2 })}, at 20\u00a0°C (68\u00a0°F) or warmer, and before that no estimate of its strength is worth anything.${youngWords(v, say)} Leave it where it is.`,
    };
  if (!use)
    return {
      verdict: 'stop',
      say: `No published strength covers this density. Break a bar before you move the part ${way}.`,
    };
  // Never in the words of a limit it has passed: 50.4 % is not shown as half.
  const percent = (part: number) =>
    saidApart(part, 'ratio', [CAUTIOUS_SHARE, 1], say, {
      units: PERCENT,
      ...(part < 0.1 ? { significant: 2 } : { decimals: 0 }),
    });
  const jerk = withJerk(use.high);
  const [share, jerked] = [percent(use.high), percent(jerk)];
  if (use.low > 1)
    return {
      verdict: 'stop',
      say: `Moved ${way} it is expected to crack: it asks for more than the most strength that may be hoped for.${instead}`,
    };
  const guess = oneBar
    ? `${bars === undefined ? 'You have not said how many bars these are. ' : ''}Of one bar the low end is a guess: half of it, or less. `
    : '';
  if (use.high > 1)
    return {
      verdict: 'stop',
      say: `Moved ${way} it may crack: at worst it asks for ${share} of the strength. ${guess}${waitWords(r, v, say)}${instead}`,
    };
  if (jerk > 1)
    return {
      verdict: 'stop',
      say: `Moved ${way} it may crack at a jerk: at worst it asks for ${share} of the strength, and ${jerked} with a jerk. ${guess}${waitWords(r, v, say)}${instead}`,
    };
  const bends = `Moved ${way} it asks for at most ${share} of the strength in bending, ${jerked} with a jerk.`;
  if (oneBar)
    return {
      verdict: 'look',
      say: `${guess}By that guess, moved ${way} it asks for up to ${share} of the strength, ${jerked} with a jerk. Break three more before you rely on it.${instead}`,
    };
  if (jerk > CAUTIOUS_SHARE)
    return {
      verdict: 'look',
      say: `Moved ${way} it asks for up to ${share} of the strength, ${jerked} with a jerk. Keep that under half. ${waitWords(r, v, say)}${instead}`,
    };
  if (ofBars && beside !== 'same')
    return {
      verdict: 'look',
      say: `At most ${share} of the strength of the bars, ${jerked} with a jerk: ${beside === 'other' ? 'but a part that is younger, or was kept elsewhere, may have far less. Break a bar that was kept with it.' : 'but that is the part’s only if it is as old as the bars were and was kept as they were. Say so above.'}`,
    };
  if (ofBars && frost !== undefined)
    return { verdict: 'look', say: `${bends} ${frostyTests(frost, 'bars', say)}` };
  if (mass > MOST_FOR_ONE)
    return {
      verdict: 'look',
      say: `${bends} But ${tooHeavy(saidApart(mass, 'mass', [MOST_FOR_ONE], say), mass, MOST_FOR_ONE, say)}`,
    };
  if (!ofBars)
    return {
      verdict: 'look',
      say: `${bends} But that strength is guessed from its density. ${WEAKER}`,
    };
  const doubt = barsDoubt(v);
  if (doubt)
    return {
      verdict: 'look',
      say: `${bends} But ${doubt} before you rely on it.`,
    };
  return {
    verdict: 'good',
    say: `${bends} Edges and corners break before the middle does: set it down on something soft.`,
  };
}

/** What the tension counts, and what the strength rests on. */
export const handlingNotes = ({ held, stripping }: Moved, { strengthFrom }: Asked): string[] => [
  stripping
    ? 'The tension counts the weight and the pull of the form or a factor on the weight, whichever asks more; no jerk. The verdict adds half as much again for a jerk and asks to stay under half of the strength; so does “When may it come out of the form?”, unless you change that there.'
    : 'The tension has no pull of the form in it and no jerk. So “When may it come out of the form?” does not take it: say above that it comes out of the form, or, if the form is drawn off before anybody lifts it, type this tension there.',
  ...(stripping?.governs === 'pull'
    ? [
        'The pull of the form on its area governs: for a part so light it is more than the factor on its weight allows for. Both are from memory and for ordinary concrete; the pull on oiled faces is given as “at least”.',
      ]
    : []),
  'Plain and uncracked: fibres, mesh and nets are given no credit. What bars with the same fibres were tested to bear may be entered as their strength.',
  ...(strengthFrom === 'density'
    ? [
        'The strength is a guess from density and age: published figures for the density, 0.22 to 0.35 of the compressive strength (from memory), and growth curves made for ordinary concrete. Bars of the batch are worth more.',
      ]
    : []),
  ...(held.notes.some(({ code }) => code === 'strip-narrower-than-half')
    ? [
        'The strip that works at each line of lifters is limited to fifteen thicknesses (from memory).',
      ]
    : []),
];
