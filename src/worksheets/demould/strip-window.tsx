import { ACTIVATION_ENERGY_ASTM } from '../../core/curing/age-factor.ts';
import type { Band } from '../../core/curing/strength-growth.ts';
import { DAY, ICE_POINT } from '../../core/quantity/constants.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { densitiesDoubt } from '../shared/part/densities-doubt.ts';
import { AHEAD } from '../shared/time/since.ts';
import { DAYS, HOURS, KPA } from '../shared/words/amounts.ts';
import { LearnedNote } from '../shared/words/LearnedNote.tsx';
import { StripPlot } from './drawn/StripPlot.tsx';
import { stripEstimate, stripFields, timesOfAges } from './strip-estimate.ts';
import { late, percent, soon, stressAwaited, stripJudgement, stripNotes } from './strip-words.ts';
import { strongBars } from './strong-bars.ts';

/** The drawing shows at least this, s. */
const LEAST_SHOWN = 4 * DAY;

const FIRST_TEST = 'after casting, if everything is favourable; not a time to strip at';

const FROST = 'by the temperatures ahead; no day after it is given';

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
      of: (r) => late(r.window.earliest),
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
      of: (r) => late(r.frost),
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
  awaits: [['stress', stressAwaited]],
  minds: ['batch.count'],
  judge: stripJudgement,
  notes: stripNotes,
  refusals: {
    'bars-older': ({ value, allowed }, say) =>
      `The bars were ${say(allowed.min!, 'time', { units: DAYS, plain: true })} old when they were broken, but the part they lay beside was cast only ${say(value, 'time', { units: HOURS, plain: true })} ago. One of the two is wrong.`,
    'may-freeze': (_, say) =>
      `Coldest, so far or ahead: below ${say(ICE_POINT, 'temperature', { plain: true })} young concrete may freeze, and strength cannot be worked out from age. Enter when the first frost is, or was. See Frost, in the chapter on curing: “Will frost catch it before it is strong enough?”.`,
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
      put: ({ stress, window, sure }, { share }, say) =>
        `σ = ${say(stress.low, 'stress', { units: KPA })} to ${say(stress.high, 'stress', { units: KPA })}, η = ${percent(share, say)}${share > sure ? ` and ${percent(sure, say)}` : ''}: it must bear ${say(window.needed.low, 'stress', { units: KPA })} to ${say(window.needed.high, 'stress', { units: KPA })}`,
    },
    {
      tex: String.raw`\begin{gathered}t_e = t \cdot e^{\frac{E}{R}\left(\frac{1}{293.15\,\mathrm K} - \frac{1}{T}\right)}\\ E = 33.5 + 1.47\,\max(0,\,20 - t)\\ \text{or } E = ${ACTIVATION_ENERGY_ASTM / 1000}\end{gathered}`,
      put: ({ pace, cold, warm, age }, { now }, say) =>
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
