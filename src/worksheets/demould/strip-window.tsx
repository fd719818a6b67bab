import { ACTIVATION_ENERGY_ASTM } from '../../core/curing/age-factor.ts';
import { EARLIEST_ADJUSTED_AGE, tooColdToCure } from '../../core/curing/limits.ts';
import type { Band } from '../../core/curing/strength-growth.ts';
import { JERK } from '../../core/demould/jerk.ts';
import type { Note } from '../../core/note.ts';
import { DAY, HOUR, ICE_POINT } from '../../core/quantity/constants.ts';
import type { Say } from '../../islands/engine/say.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { barsDoubt } from '../shared/part/bars-doubt.ts';
import { densitiesDoubt } from '../shared/part/densities-doubt.ts';
import { WEAKER } from '../shared/part/part-strength.ts';
import { frostyTests, frozenWords } from '../shared/time/first-frost.ts';
import { heatDoubt } from '../shared/time/heat-doubt.ts';
import { AHEAD } from '../shared/time/since.ts';
import { DAYS, HOURS, KPA, PERCENT } from '../shared/words/amounts.ts';
import { LearnedNote } from '../shared/words/LearnedNote.tsx';
import { StripPlot } from './drawn/StripPlot.tsx';
import { stripEstimate, stripFields, timesOfAges } from './strip-estimate.ts';
import { strongBars } from './strong-bars.ts';

/** The drawing shows at least this, s. */
const LEAST_SHOWN = 4 * DAY;

/** A time that is spoken of in hours, or nothing. */
const soon = (time: number | undefined) =>
  time !== undefined && time < 2 * DAY ? time : undefined;

const percent = (share: number, say: Say) =>
  say(share, 'ratio', { units: PERCENT, significant: 2 });

const FIRST_TEST = 'after casting, if everything is favourable; not a time to strip at';

const FROST = 'by the temperatures ahead; no day after it is given';

const NEAR_FROST =
  ' It has been near freezing, or will be: see Frost, in the chapter on curing, before you trust this.';

const MOVED = 'the verdict of “Will it bear being moved like this?”';

const TEST_IT = 'Test it before you move it: thumbnail, edge and sounding, as in the table below.';

/** Which ends of the window are set by age, as the beginning of a sentence; undefined where neither is. */
const byAge = ({ notes }: { readonly notes: readonly Note[] }) => {
  const ends = notes.flatMap(({ code, of }) => (code === 'set-not-strength' ? [of] : []));
  if (ends.length > 1) return 'Both ends are';
  return ends[0] && (ends[0] === 'latest' ? 'The later end is' : 'The earlier end is');
};

export default worksheet({
  id: 'strip-window',
  question: 'When may it come out of the form?',
  fields: stripFields,
  work: stripEstimate,
  results: {
    earliest: {
      label: 'Begin to test it, no sooner than',
      kind: 'time',
      of: (r) => soon(r.window.earliest),
      units: HOURS,
      significant: 2,
      toward: 'up',
      note: FIRST_TEST,
    },
    earliestLate: {
      label: 'Begin to test it, no sooner than',
      kind: 'time',
      of: (r) => (soon(r.window.earliest) === undefined ? r.window.earliest : undefined),
      units: DAYS,
      significant: 2,
      toward: 'up',
      answer: true,
      note: FIRST_TEST,
    },
    latest: {
      label: 'It should pass by',
      kind: 'time',
      of: (r) => r.window.latest,
      units: DAYS,
      significant: 2,
      toward: 'up',
      answer: true,
      note: 'after casting, by the low end of its strength and the coldest, taken as no colder than 0\u00a0°C (32\u00a0°F); it stays in until it does pass',
    },
    beyond: {
      label: 'It may still not bear this after',
      kind: 'time',
      of: (r) => (r.window.latest === undefined && !r.frost && !r.frozen ? AHEAD : undefined),
      units: DAYS,
      significant: 2,
      answer: true,
      note: 'by the low end of its strength: change the move, or break bars, again later if need be',
    },
    frostSoon: {
      label: 'It freezes after',
      kind: 'time',
      of: (r) => soon(r.frost),
      units: HOURS,
      significant: 2,
      answer: true,
      note: FROST,
    },
    frost: {
      label: 'It freezes after',
      kind: 'time',
      of: (r) => (soon(r.frost) === undefined ? r.frost : undefined),
      units: DAYS,
      significant: 2,
      answer: true,
      note: FROST,
    },
    needed: {
      label: 'It must bear at least',
      kind: 'stress',
      of: (r) => r.window.needed.high,
      units: KPA,
      significant: 2,
      note: 'in bending: what handling asks, with the jerk, divided by the share of the strength to use, at most half',
    },
    slowest: {
      label: 'A day at the coldest counts as',
      kind: 'time',
      of: (r) => DAY * r.pace.slow,
      units: HOURS,
      significant: 2,
      note: 'at 20\u00a0°C (68\u00a0°F); the coldest taken as no colder than 0\u00a0°C (32\u00a0°F)',
    },
  },
  doubts: (_, { strengthFrom, mean, density, dry }, say) =>
    strengthFrom === 'bars' ? strongBars(mean, density, say) : densitiesDoubt(density, dry, say),
  judge: (
    { window, cold, warm, frost, thawed, frozen, age, sure },
    { now, strengthFrom, bars, mean, low, frost: first, cold: coldest },
    say,
  ) => {
    const hot = heatDoubt(warm, say);
    if (hot?.verdict === 'stop') return hot;
    if (frozen)
      return {
        verdict: 'stop',
        say: `${frozenWords(first!, now, say)} Break a bar of it before you move it.`,
      };
    const time = (s: number) =>
      say(s, 'time', { units: soon(s) === undefined ? DAYS : HOURS, significant: 2 });
    const least = (s: number) =>
      say(s, 'time', {
        units: soon(s) === undefined ? DAYS : HOURS,
        significant: 2,
        toward: 'up',
      });
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
      // Of a part that has been colder than the warmest, each look ahead finds it later.
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
    if (strengthFrom === 'bars' && (bars ?? 1) < 2)
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
  },
  notes: ({ window, age, sure }, { age: given, strengthFrom, bars, worse, share }, say) => [
    ...(age !== undefined && Math.abs(age / given! - 1) > 0.02
      ? [
          `The adjusted age given does not come of these temperatures: ${say(age, 'time', { units: DAYS, significant: 2 })} is the nearest that does, and is reckoned with. Check them against one another.`,
        ]
      : []),
    ...(strengthFrom === 'bars' && (bars ?? 1) < 2
      ? [
          'The low end of the strength is a guess, half of it or less, for it is of one bar, or nobody said of how many: the later end of the window is no surer than that. Break three more.',
        ]
      : []),
    `No jerk is in what handling asks: it is added here, ${percent(Math.max(worse, JERK), say)} of it${worse > JERK ? '' : `, as in ${MOVED}${worse < JERK ? `; the ${percent(worse, say)} chosen is the less cautious, and not reckoned with` : ''}`}.`,
    ...(share > sure
      ? [
          `The ${percent(share, say)} chosen of the strength sets the earlier end alone: the later reckons with half, as ${MOVED} does.`,
        ]
      : []),
    ...(byAge(window)
      ? [
          `${byAge(window)} set by age, not by strength: before ${EARLIEST_ADJUSTED_AGE / HOUR} hours, at 20\u00a0°C (68\u00a0°F) or warmer, the least that test specimens stay in their moulds, no estimate is worth anything.`,
        ]
      : []),
    'The growth curves were made for ordinary concrete; no source seen validates them for foamed concrete. Retarders, cold water and stored cement all make it later.',
    ...(strengthFrom === 'density'
      ? [
          'Strength here is guessed from density: the later end is no bound. A broken bar narrows it.',
        ]
      : [
          'The bars are taken to have lain beside the part until they were broken. The later end reckons with the warmest up to then, so that least strength is still to come, and with the coldest after.',
        ]),
  ],
  refusals: {
    'bars-older': ({ value, allowed }, say) =>
      `The bars were ${say(allowed.min!, 'time', { units: DAYS, plain: true })} old when they were broken, but the part they lay beside was cast only ${say(value, 'time', { units: HOURS, plain: true })} ago. One of the two is wrong.`,
    'may-freeze': (_, say) =>
      `Coldest, so far or ahead: below ${say(ICE_POINT, 'temperature', { plain: true })} young concrete may freeze, and strength is not to be reckoned from age. Enter when the first frost is, or was. See Frost, in the chapter on curing: “Will frost catch it before it is strong enough?”.`,
    'no-published-strength': () =>
      'Wet density: no published strength covers it. Break bars of the batch and choose them above.',
  },
  blames: {
    wetDensity: 'density',
    ovenDryDensity: 'dry',
    testedAt: 'tested',
  },
  folded: 'How cautious',
  working: [
    {
      tex: String.raw`\sigma\,(1+r) \le \eta\, f_{28}\; e^{\,s\left(1-\sqrt{28/t_e}\right)}`,
      put: ({ share }, { stress, window, sure }, say) =>
        `σ = ${say(stress.low, 'stress', { units: KPA })} to ${say(stress.high, 'stress', { units: KPA })}, η = ${percent(share, say)}${share > sure ? ` and ${percent(sure, say)}` : ''}: it must bear ${say(window.needed.low, 'stress', { units: KPA })} to ${say(window.needed.high, 'stress', { units: KPA })}`,
    },
    {
      tex: String.raw`\begin{gathered}t_e = t \cdot e^{\frac{E}{R}\left(\frac{1}{293.15\,\mathrm K} - \frac{1}{T}\right)}\\ E = 33.5 + 1.47\,\max(0,\,20 - t)\\ \text{or } E = ${ACTIVATION_ENERGY_ASTM / 1000}\end{gathered}`,
      put: ({ now }, { pace, cold, warm, age }, say) =>
        `E in kJ/mol, t in °C, the slower of the two for the coldest and the faster for the warmest: ${age === undefined ? '' : `its ${say(now, 'time', { units: HOURS })} so far count as ${say(age, 'time', { units: HOURS, significant: 3 })}; from now on `}a day counts as ${say(DAY * pace.slow, 'time', { units: HOURS, significant: 2 })} at ${say(cold, 'temperature')} and as ${say(DAY * pace.fast, 'time', { units: HOURS, significant: 2 })} at ${say(warm, 'temperature')}`,
    },
  ],
  figure: ({ values, result, say }) => {
    if (result.frozen) return null;
    const { earliest, latest } = result.window;
    const shown = latest === undefined ? 4 * Math.max(values.now, earliest ?? 0) : 1.9 * latest;
    const days = (time: number) => say(time, 'time', { units: DAYS, significant: 2 });
    const span = ({ low, high }: Band) => [...new Set([low, high].map(days))].join(' to ');
    return (
      <>
        <StripPlot
          until={Math.min(result.frost ?? AHEAD, AHEAD, Math.max(LEAST_SHOWN, shown))}
          usable={(time) => {
            const { low, high } = result.strength(time);
            return [low * result.sure, high * values.share];
          }}
          stress={result.stress}
          earliest={earliest}
          latest={latest}
          now={values.now}
          say={say}
        />
        <LearnedNote
          name="strip.age"
          words={({ v, ...found }) => {
            const { ages, times } = timesOfAges(found, result.pace);
            return `came out clean at an age of ${days(v)} at 20\u00a0°C (68\u00a0°F); the next should, 19 times in 20, at ${span(ages)}, which is ${span(times)} after casting at the temperatures above. The tests decide.`;
          }}
        />
      </>
    );
  },
  tables: [
    {
      caption: 'Test it, each time you think of moving it',
      columns: ['Test', 'Wait if', 'What it tells'],
      rows: () => [
        [
          'Thumbnail, on a hidden edge',
          'the nail sinks in or the edge crumbles',
          'the skin has set; nothing of the middle',
        ],
        [
          'Edge: rub the arris with a thumb',
          'grains come away',
          'whether it will bear the form being drawn off',
        ],
        [
          'Sounding: knock with a knuckle',
          'it sounds dull or soft anywhere',
          'the inside, against the sound of the edge; listen for one spot unlike the rest',
        ],
        ['Feel it', 'it is still warm', 'it is still hydrating fast; strength is coming'],
      ],
    },
  ],
  cautions: ['falling-and-tipping', 'frost-and-heat', 'caustic-slurry'],
  defers: [
    'The part decides, by its tests. Where it must carry or hang over people, a licensed engineer decides.',
  ],
  sources: [
    'en-12390-2',
    'en-1992-1-1',
    'fib-mc2010',
    'fhp-1977',
    'astm-c1074',
    'pci-handbook',
    'narayanan-ramamurthy-2000',
    'ramamurthy-2009',
    'caltrans-19-10',
    'wong-2026',
    'foamed-demould-practice',
    'common-practice',
  ],
});
