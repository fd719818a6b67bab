import { utilisation } from '../../core/demould/handling.ts';
import { withJerk } from '../../core/demould/jerk.ts';
import { CAUTIOUS_SHARE, EARLIEST_ADJUSTED_AGE } from '../../core/demould/strip-window.ts';
import { DAY } from '../../core/quantity/constants.ts';
import { justUnder, SLIVER } from '../../core/quantity/dust.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Values } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { barsDoubt } from '../shared/part/bars-doubt.ts';
import { densitiesDoubt } from '../shared/part/densities-doubt.ts';
import { WEAKER } from '../shared/part/part-strength.ts';
import { youngWords } from '../shared/part/young-words.ts';
import { frostyTests, frozenWords } from '../shared/time/first-frost.ts';
import { tooOld } from '../shared/time/paces.ts';
import { AHEAD } from '../shared/time/since.ts';
import { DAYS, HOURS, KPA, PERCENT } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { HandlingShape } from './drawn/HandlingShape.tsx';
import { WAYS } from './handling-fields.ts';
import { moved, moveFields } from './moved.ts';
import { strongBars } from './strong-bars.ts';
import { MOST_FOR_ONE, tooHeavy } from './too-heavy.ts';

/** What there is to do about a move that asks for too much, and how long waiting would take. */
function waitWords(
  { enough, ofBars }: ReturnType<typeof moved>,
  { age, since }: Values<typeof moveFields>,
  say: Say,
): string {
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

export default worksheet({
  id: 'handling',
  question: 'Will it bear being moved like this?',
  fields: moveFields,
  work: moved,
  results: {
    stress: {
      label: 'Tension from bending',
      kind: 'stress',
      of: (r) => r.held.stress,
      units: KPA,
    },
    useHigh: {
      label: 'Of its strength, at worst',
      kind: 'ratio',
      of: (r) => r.use?.high,
      units: PERCENT,
      decimals: 0,
      answer: true,
    },
    useLow: {
      label: 'Of its strength, at best',
      kind: 'ratio',
      of: (r) => r.use?.low,
      units: PERCENT,
      significant: 2,
    },
    useJerk: {
      label: 'At worst, with a jerk',
      kind: 'ratio',
      of: (r) => r.use && withJerk(r.use.high),
      units: PERCENT,
      decimals: 0,
      note: 'half as much again, a guess',
    },
    low: {
      label: 'Bending strength now, from',
      kind: 'stress',
      of: (r) => (r.ofBars ? undefined : r.strength?.low),
      units: KPA,
      significant: 2,
    },
    high: {
      label: 'Bending strength now, up to',
      kind: 'stress',
      of: (r) => (r.ofBars ? undefined : r.strength?.high),
      units: KPA,
      significant: 2,
    },
    barLow: {
      label: 'Bending strength at the bars’ age, at least',
      kind: 'stress',
      of: (r) => (r.ofBars && !r.oneBar ? r.strength?.low : undefined),
      units: KPA,
      significant: 2,
    },
    oneBarLow: {
      label: 'Bending strength at the bar’s age, at least',
      kind: 'stress',
      of: (r) => (r.oneBar ? r.strength?.low : undefined),
      units: KPA,
      significant: 2,
      note: 'a guess: one bar tells nothing of the next',
    },
    barHigh: {
      label: 'Bending strength at the bars’ age, at most',
      kind: 'stress',
      of: (r) => (r.ofBars ? r.strength?.high : undefined),
      units: KPA,
      significant: 2,
    },
    best: {
      label: 'Best place to hold it, in from each end',
      kind: 'length',
      of: (r) => r.best,
      significant: 2,
    },
    bestStress: {
      label: 'Tension when held there',
      kind: 'stress',
      of: (r) => r.bestStress,
      units: KPA,
    },
    mass: { label: 'Solid, it weighs', kind: 'mass', of: (r) => r.mass },
    moment: { label: 'Bending moment', kind: 'moment', of: (r) => r.held.moment },
    factor: {
      label: 'Weight multiplied by',
      kind: 'count',
      of: (r) => (r.part.factor > 1 ? r.part.factor : undefined),
      significant: 2,
      note: 'from memory, for ordinary concrete',
    },
    adhesion: {
      label: 'Pull of the form reckoned',
      kind: 'stress',
      of: (r) => (r.part.adhesion > 0 ? r.part.adhesion : undefined),
      units: KPA,
      significant: 2,
      note: 'from memory, for ordinary concrete',
    },
  },
  doubts: ({ ofBars }, v, say) =>
    ofBars
      ? strongBars(v.mean, v.density, say)
      : (densitiesDoubt(v.density, v.dry, say) ?? tooOld(v, say)),
  judge: (r, v, say) => {
    const { use, held, best, bestStress, freed, stripping, oneBar, ofBars, young, frozen, mass } =
      r;
    const { hold, grip, beside, bars, frost } = v;
    const way =
      hold === 'middle' ? `in the middle on hands ${say(grip, 'length')} apart` : WAYS[hold];
    const kpa = (stress: number) => say(stress, 'stress', { units: KPA });
    const instead = [
      ...(stripping && freed < held.stress * 0.95
        ? [`With the form off first, the tension is ${kpa(freed)}.`]
        : []),
      ...(bestStress < held.stress * 0.95
        ? [
            `Held ${say(best, 'length', { significant: 2 })} from each end of its span, it has a tension of ${kpa(bestStress)}.`,
          ]
        : []),
    ]
      .map((sentence) => ` ${sentence}`)
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
    // 105 % is not all of it, nor 50.4 % half.
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
  },
  notes: ({ held, stripping }, { strengthFrom }) => [
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
  ],
  refusals: {
    'would-tip': () =>
      'The middle of the part is not between the holds: it would tip off. Move a hold.',
    'supports-cross': () => 'The two holds stand at or past one another. Move them apart.',
  },
  blames: { in: 'left', depth: 'thickness', wetDensity: 'density', ovenDryDensity: 'dry' },
  folded: 'More about the part and the form',
  // A part is stripped on the strength of it: never that of one which is free already.
  leaves: { 'part.strippingStress': (r) => r.stripping && r.held.stress },
  working: [
    {
      tex: String.raw`w = (\rho\,g\,d\,k + a)\,b`,
      put: ({ density }, { part, held }, say) =>
        `k the factor or a the pull, whichever asks more. w = (${say(density, 'density')} × g × ${say(part.depth, 'length')} × ${part.factor.toFixed(1)} + ${say(part.adhesion, 'stress', { units: KPA, significant: 2 })}) × ${say(part.width, 'length')}: ${say(held.load * part.length, 'force', { units: { metric: 'N', us: 'lbf' } })} in all`,
    },
    {
      tex: String.raw`\begin{gathered}\sigma = \frac{6M}{b\,d^2},\\ M_{\text{ends}} = \frac{wL^2}{8},\\ M_{0.207L} = 0.0214\,wL^2\end{gathered}`,
      put: (_, { held, part }, say) =>
        `M = ${say(held.moment, 'moment')}, d = ${say(part.depth, 'length')}: σ = ${say(held.stress, 'stress', { units: KPA })}`,
    },
  ],
  figure: ({ values, result, say }) => (
    <HandlingShape
      beam={result.beam}
      depth={result.part.depth}
      stress={result.held.stress}
      tipped={values.hold === 'tipping'}
      say={say}
    />
  ),
  tables: [
    {
      caption: 'The same part, held otherwise',
      columns: ['Held', 'Tension', 'Of its strength'],
      rows: ({ ways, strength }, _, say) =>
        ways.map(({ name, stress }) => {
          const use = strength && utilisation({ stress, strength });
          return [
            name,
            say(stress, 'stress', { units: KPA }),
            use
              ? `${say(use.low, 'ratio', { units: PERCENT, significant: 2 })} to ${say(use.high, 'ratio', { units: PERCENT, decimals: 0 })}`
              : 'not known',
          ];
        }),
    },
  ],
  cautions: ['falling-and-tipping', 'heavy-lift', 'not-load-bearing'],
  defers: [
    'The person who lifts it decides. Anything raised above people needs a qualified person, rated gear and a design.',
  ],
  sources: [
    'beam-statics',
    'lifting-points-statics',
    'pci-handbook',
    'cen-tr-15728',
    'narayanan-ramamurthy-2000',
    'ramamurthy-2009',
    'en-1992-1-1',
    'en-12390-2',
    'niosh-lifting-1994',
    'caltrans-19-10',
    'wong-2026',
    'common-practice',
  ],
});
