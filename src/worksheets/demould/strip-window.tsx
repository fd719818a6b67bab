import { ACTIVATION_ENERGY_ASTM, type AgeLaw, ageFactor } from '../../core/curing/age-factor.ts';
import { strengthShare } from '../../core/curing/strength-growth.ts';
import { stripAfterBars } from '../../core/demould/strip-after-bars.ts';
import { EARLIEST_ADJUSTED_AGE, stripWindow } from '../../core/demould/strip-window.ts';
import { demand } from '../../core/domain-error.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { PERCENT } from '../shared/amounts.ts';
import { cement } from '../shared/curing-fields.ts';
import { GROWTH } from '../shared/curing-history.ts';
import {
  barAge,
  barLow,
  barMean,
  DAYS,
  dryDensity,
  HOURS,
  KPA,
  strengthFrom,
  wetDensity,
} from '../shared/part-fields.ts';
import { flexuralAt28Days } from '../shared/part-strength.ts';
import { StripPlot } from '../shared/StripPlot.tsx';

/** How far the worksheet looks, s: beyond a month nothing waits for its form. */
const WITHIN = 60 * 86_400;
/** The drawing shows at least this, s. */
const LEAST_SHOWN = 4 * 86_400;
/** Two ways to count age; they part most in the cold, and the spread is the honest answer. */
const LAWS: readonly AgeLaw[] = [
  { law: 'fhp' },
  { law: 'arrhenius', activationEnergy: ACTIVATION_ENERGY_ASTM },
];
const temperature = (label: string, example: string, bench: string, takes: string) =>
  number('temperature', { label, example, min: '0 °C', max: '70 °C', bench, takes });

/** A time that is spoken of in hours, or nothing. */
const soon = (time: number | undefined) =>
  time !== undefined && time < 2 * 86_400 ? time : undefined;

export default worksheet({
  id: 'strip-window',
  question: 'When may it come out of the form?',
  fields: {
    now: number('time', {
      label: 'Time since casting, now',
      example: '24 h',
      min: '0 h',
      max: '60 d',
      units: HOURS,
      bench: 'part.sinceCasting',
    }),
    cold: temperature('Coldest it has been', '12 °C', 'curing.coldest', 'curing.coldestSoFar'),
    warm: temperature('Warmest it has been', '20 °C', 'curing.warmest', 'curing.warmestSoFar'),
    stress: number('stress', {
      label: 'What handling asks of it',
      help: 'Its tension when moved, factors in: from “Will it bear being moved like this?”.',
      example: '19.4 kPa',
      min: '0.01 kPa',
      max: '20 MPa',
      units: KPA,
      takes: 'part.handlingStress',
    }),
    strengthFrom,
    mean: barMean,
    low: barLow,
    tested: { ...barAge, when: { strengthFrom: ['bars'] } },
    cement,
    density: { ...wetDensity, when: { strengthFrom: ['density'] } },
    dry: { ...dryDensity, folded: true, when: { strengthFrom: ['density'] } },
    worse: number('ratio', {
      label: 'Handling may be rougher by',
      help: 'A jerk, a corner that sticks. A guess; common practice, no source.',
      example: '50 %',
      min: '0 %',
      max: '500 %',
      units: PERCENT,
      folded: true,
    }),
    share: number('ratio', {
      label: 'Share of the strength to use',
      help: 'Half is a choice on the cautious side; common practice, no source.',
      example: '50 %',
      min: '1 %',
      max: '100 %',
      units: PERCENT,
      folded: true,
    }),
  },
  work: (v) => {
    const [cold, warm] = [Math.min(v.cold, v.warm), Math.max(v.cold, v.warm)];
    const pace = {
      slow: Math.min(...LAWS.map((law) => ageFactor(law, cold))),
      fast: Math.max(...LAWS.map((law) => ageFactor(law, warm))),
    };
    const [slow, fast] = GROWTH[v.cement];
    const common = {
      stress: { low: v.stress, high: v.stress * (1 + v.worse) },
      gain: {
        slow: (age: number) => strengthShare({ age, coefficient: slow }),
        fast: (age: number) => strengthShare({ age, coefficient: fast }),
      },
      adjustedAge: {
        slow: (time: number) => time * pace.slow,
        fast: (time: number) => time * pace.fast,
      },
      share: v.share,
      within: WITHIN,
    };
    if (v.strengthFrom === 'bars') {
      const tested = { low: Math.min(v.low, v.mean), high: Math.max(v.low, v.mean) };
      const window = stripAfterBars({ ...common, tested, testedAt: v.tested });
      const at = (time: number) =>
        (['slow', 'fast'] as const).flatMap((key) => {
          const age = common.adjustedAge[key];
          const gain = common.gain[key](age(time)) / common.gain[key](age(v.tested));
          return [tested.low * gain, tested.high * gain];
        });
      const strength = (time: number) => [Math.min(...at(time)), Math.max(...at(time))] as const;
      return { window, strength, pace, stress: common.stress };
    }
    const strength28 = flexuralAt28Days({ wetDensity: v.density, dryDensity: v.dry });
    demand('density', strength28 ? 0 : v.density, 'density', { max: 0 }, 'no-published-strength');
    const band = strength28!;
    const window = stripWindow({ ...common, strength28: band });
    const strength = (time: number) =>
      [
        band.low * common.gain.slow(common.adjustedAge.slow(time)),
        band.high * common.gain.fast(common.adjustedAge.fast(time)),
      ] as const;
    return { window, strength, pace, stress: common.stress };
  },
  results: {
    earliest: {
      label: 'Not before',
      kind: 'time',
      of: (r) => soon(r.window.earliest),
      units: HOURS,
      significant: 2,
      note: 'after casting, if everything is favourable',
    },
    earliestLate: {
      label: 'Not before',
      kind: 'time',
      of: (r) => (soon(r.window.earliest) === undefined ? r.window.earliest : undefined),
      units: DAYS,
      significant: 2,
      answer: true,
      note: 'after casting, if everything is favourable',
    },
    latest: {
      label: 'Should be ready by',
      kind: 'time',
      of: (r) => r.window.latest,
      units: DAYS,
      significant: 2,
      answer: true,
      note: 'if everything is unfavourable',
    },
    needed: {
      label: 'Bending strength it should have',
      kind: 'stress',
      of: (r) => r.window.needed.high,
      units: KPA,
      significant: 2,
    },
    slowest: {
      label: 'A day there counts as',
      kind: 'time',
      of: (r) => 86_400 * r.pace.slow,
      units: HOURS,
      significant: 2,
      note: 'at 20 °C, by the coldest',
    },
  },
  judge: ({ window }, { now }, say) => {
    const time = (s: number) =>
      say(s, 'time', { units: soon(s) === undefined ? DAYS : HOURS, significant: 2 });
    if (window.earliest === undefined)
      return {
        verdict: 'stop',
        say: 'In two months it would not be strong enough to be moved like this, even if everything is favourable. Hold it better, make it thicker, or cast it where it can stay.',
      };
    if (now < window.earliest)
      return {
        verdict: 'stop',
        say: `Leave it. It is not to be expected before ${time(window.earliest)} after casting. Keep it covered.`,
      };
    if (window.latest === undefined)
      return {
        verdict: 'look',
        say: 'If everything is unfavourable it is not strong enough within two months. Go by the tests below, and hold it where it bends least.',
      };
    if (now < window.latest)
      return {
        verdict: 'look',
        say: `It may be ready. Test it: thumbnail, edge, sounding. If any of them fails, wait until ${time(window.latest)} after casting and test again.`,
      };
    return {
      verdict: 'good',
      say: 'It should be ready even if everything was unfavourable. Test it all the same before you move it.',
    };
  },
  notes: ({ window }, { strengthFrom }) => [
    ...(window.notes.some(({ code, of }) => code === 'set-not-strength' && of === 'earliest')
      ? [
          `The earlier end is set by age, not by strength: before ${EARLIEST_ADJUSTED_AGE / 3600} hours at 20 °C, the least that test specimens stay in their moulds, no estimate is worth anything.`,
        ]
      : []),
    'For a light part the form may hold harder than any multiple of its weight: work “Will it bear being moved like this?” by the pull of the form on its area, and take the larger stress. The window then moves later, by weeks for a weak mix.',
    'The growth curves were made for ordinary concrete; no source seen validates them for foamed concrete. Retarders, cold water and stored cement all make it later.',
    ...(strengthFrom === 'density'
      ? ['Strength here is guessed from density. A bar of the batch, broken, narrows the window.']
      : []),
  ],
  refusals: {
    'no-published-strength': () =>
      'Wet density: no published strength covers it. Break bars of the batch and choose them above.',
  },
  blames: {
    strength28: 'density',
    wetDensity: 'density',
    ovenDryDensity: 'dry',
    testedAt: 'tested',
    tested: 'low',
    gain: 'tested',
  },
  folded: 'How cautious',
  working: [
    {
      tex: String.raw`\sigma\,(1+r) \le \eta\, f_{28}\; e^{\,s\left(1-\sqrt{28/t_e}\right)}`,
      put: ({ share }, { stress, window }, say) =>
        `σ = ${say(stress.low, 'stress', { units: KPA })} to ${say(stress.high, 'stress', { units: KPA })}, η = ${say(share, 'ratio', { units: PERCENT, significant: 2 })}: it should have ${say(window.needed.low, 'stress', { units: KPA })} to ${say(window.needed.high, 'stress', { units: KPA })}`,
    },
    {
      tex: String.raw`t_e = t \cdot e^{\frac{E}{R}\left(\frac{1}{293} - \frac{1}{T}\right)}`,
      put: ({ cold, warm }, { pace }, say) =>
        `a day counts as ${say(86_400 * pace.slow, 'time', { units: HOURS, significant: 2 })} at ${say(Math.min(cold, warm), 'temperature')} and as ${say(86_400 * pace.fast, 'time', { units: HOURS, significant: 2 })} at ${say(Math.max(cold, warm), 'temperature')}`,
    },
  ],
  figure: ({ values, result, say }) => {
    const { earliest, latest } = result.window;
    return (
      <StripPlot
        until={Math.min(WITHIN, Math.max(LEAST_SHOWN, (latest ?? earliest ?? WITHIN) * 1.9))}
        usable={(time) => {
          const [low, high] = result.strength(time);
          return [low * values.share, high * values.share];
        }}
        stress={result.stress}
        earliest={earliest}
        latest={latest}
        now={values.now}
        say={say}
      />
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
    'foamed-demould-practice',
    'common-practice',
  ],
});
