import { BUCKET_MOST } from '../../core/demould/break-a-bar.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { FACES, FEW, scatterWidely } from '../shared/part/bars-doubt.ts';
import { KPA } from '../shared/words/amounts.ts';
import { barFields, barsBroken } from './bars-broken.ts';
import { BarTest } from './drawn/BarTest.tsx';
import { strongBars } from './strong-bars.ts';

/** The bars, whichever way they were loaded. */
const LOADED = ['bars', 'thirds'] as const;

type Broken = ReturnType<typeof barsBroken>;

/** A strength that reads high goes no further. */
const carried = (of: (r: Broken) => number) => (r: Broken) => (r.short ? undefined : of(r));

export default worksheet({
  id: 'break-a-bar',
  question: 'How strong is it in bending?',
  fields: barFields,
  work: barsBroken,
  results: {
    mean: {
      label: 'Flexural strength, mean',
      kind: 'stress',
      of: (r) => r.together.mean,
      units: KPA,
    },
    low: {
      label: 'Low end, to plan with',
      kind: 'stress',
      of: carried((r) => r.low),
      units: KPA,
      answer: true,
      note: 'of several bars, what the next should exceed 19 times in 20; of one bar, half of it, a guess',
    },
    plusMinus: {
      label: 'The mean is sure to ±',
      kind: 'stress',
      of: (r) => r.together.plusMinus,
      units: KPA,
      significant: 2,
      note: '19 times in 20, scatter and readings together',
    },
    scatter: {
      label: 'Scatter between bars',
      kind: 'stress',
      of: (r) => r.together.scatter,
      units: KPA,
      significant: 2,
      note: 'standard deviation',
    },
    reading: {
      label: '± of one bar from the readings alone',
      kind: 'stress',
      of: (r) => r.reading,
      units: KPA,
      significant: 2,
      note: 'one standard uncertainty, about two times in three; so are the ± of the tape and of the scale',
    },
    own: {
      label: 'Of the first bar’s strength, from its own weight',
      kind: 'stress',
      of: (r) => r.counted[0]?.ownWeight,
      units: KPA,
      significant: 2,
    },
    counted: { label: 'Bars counted', kind: 'count', of: (r) => r.counted.length, decimals: 0 },
  },
  judge: (r, _, say) => {
    const mean = say(r.together.mean, 'stress', { units: KPA });
    const { coarse, plusMinus = 0 } = r.together;
    const widely = scatterWidely({ mean: r.together.mean, low: r.low });
    if (coarse && (r.low <= 0 || plusMinus > r.together.mean))
      return {
        verdict: 'stop',
        say: `The scale and the tape are too coarse for bars like these: of ${mean} almost nothing is sure. Look at the ± of both, and at its unit; read finer, or break thicker bars.`,
      };
    if (r.low <= 0)
      return {
        verdict: 'stop',
        say: `The bars scatter so widely that nothing is sure of the next one: ${FACES} break more bars.`,
      };
    const heavy =
      r.heaviest > BUCKET_MOST &&
      `${say(r.heaviest, 'mass', { significant: 2 })} is more than a bucket on a string is for, and it drops when the bar breaks. Cast thinner bars, move the supports apart, or leave it to a laboratory.`;
    if (r.short)
      return {
        verdict: 'look',
        say: `A bar spans less than three times its depth: part of the load goes straight to the supports and the strength reads high, so no other worksheet takes it over. ${heavy ? `And ${heavy}` : 'Move the supports apart, or cast thinner bars.'}`,
      };
    if (heavy) return { verdict: 'look', say: `${mean}, but ${heavy}` };
    const strong = strongBars(r.together.mean, r.density, say);
    if (strong) return { verdict: 'look', say: strong };
    if (coarse && widely)
      return {
        verdict: 'look',
        say: `${mean} is sure to ±\u00a0${say(plusMinus, 'stress', { units: KPA, significant: 2 })} only, and that is the scale and the tape, which leave more open than the bars scatter: more bars would not help. Look at the ± of both, and at its unit; read finer, or break thicker bars.`,
      };
    if (r.counted.length === 1)
      return {
        verdict: 'look',
        say: `One bar gave ${mean}. One bar cannot tell how far the next may lie from that; half of it is passed on as a guess, and the next may be weaker still. Break three more before you rely on any of this.`,
      };
    if (r.counted.length < FEW)
      return {
        verdict: 'look',
        say: `${r.counted.length} bars are few${coarse ? ', and they agree better than the scale and the tape can tell: that may be chance. Break another or two' : `: chance alone puts the low end at ${say(r.low, 'stress', { units: KPA })}. Another bar or two would raise it if they agree`}.`,
      };
    if (widely)
      return {
        verdict: 'look',
        say: `${mean} from ${r.counted.length} bars, but they scatter widely: the next may bear no more than ${say(r.low, 'stress', { units: KPA })}, under half of it. Before you rely on it, ${FACES} break more bars.`,
      };
    return {
      verdict: 'good',
      say: `${mean} from ${r.counted.length} bars. Plan with ${say(r.low, 'stress', { units: KPA })} for a part cured beside them.`,
    };
  },
  notes: (r, { loading }) => [
    'A bar tells of the part only if it was cast from the same bucket and kept beside the part, covered as it was. A bucket on a string is not the standard test; it is loaded by hand and never as slowly.',
    ...(loading === 'centre'
      ? ['The load is counted at the middle wherever the bar broke, as the standard test does.']
      : []),
    ...(r.thrown > 0
      ? [
          `${r.thrown} ${r.thrown === 1 ? 'bar' : 'bars'} broke too far outside the middle third and ${r.thrown === 1 ? 'is' : 'are'} left out (from memory of the standard).`,
        ]
      : []),
  ],
  refusals: {
    'shorter-than-span': () => 'The bars are shorter than the space between the supports.',
    'no-such-bar': ({ value }, say) =>
      `By its mass and sides the bar would weigh ${say(value, 'density')}, as no concrete does. Check its mass and sides, and the length.`,
    'all-thrown-out': () =>
      'Every bar broke too far outside the middle third to be counted. Load them more evenly and break others.',
  },
  blames: {
    bars: LOADED,
    barMass: LOADED,
    hung: LOADED,
    breadth: LOADED,
    depth: LOADED,
    brokeAt: 'thirds',
    strength: LOADED,
  },
  folded: 'How finely you read',
  leaves: {
    'part.flexural': carried((r) => r.together.mean),
    'part.flexuralLow': carried((r) => r.low),
    'part.barsCounted': carried((r) => r.counted.length),
  },
  working: [
    {
      tex: String.raw`f = \frac{6M}{b\,d^2},\quad M = \frac{F\,s}{4}\ \text{or}\ \frac{F\,s}{6}`,
      put: (r, { span, loading }, say) => {
        const [bar, broken] = [r.read[0]!, r.broken[0]!];
        return `First bar: F = ${say(bar.hung, 'mass')} × g, s = ${say(span, 'length')}, divided by ${loading === 'centre' ? 4 : 6}; with its own weight (${say(broken.ownWeight, 'stress', { units: KPA, significant: 2 })}) f = ${say(broken.strength, 'stress', { units: KPA })}`;
      },
    },
    {
      tex: String.raw`\begin{gathered}f_{\text{next}} = \bar f - \sqrt{a^2 + (1.645\,u)^2},\\ a^2 = t^2 s^2\left(1+\tfrac1n\right)\end{gathered}`,
      put: (r, _, say) =>
        r.together.scatter === undefined
          ? 'One bar: no scatter is known, so no low end can be worked out; half the strength is passed on as a guess (common practice, no source).'
          : `mean ${say(r.together.mean, 'stress', { units: KPA })}, scatter ${say(r.together.scatter, 'stress', { units: KPA, significant: 2 })}, n = ${r.counted.length}: ${r.low > 0 ? say(r.low, 'stress', { units: KPA }) : 'below 0, so taken as 0'}`,
    },
  ],
  figure: ({ values, result, say }) => (
    <BarTest
      loading={values.loading}
      span={values.span}
      strengths={result.counted.map((bar) => bar.strength)}
      mean={result.together.mean}
      low={result.low}
      guessed={result.guessed}
      plusMinus={result.together.plusMinus}
      say={say}
    />
  ),
  tables: [
    {
      caption: 'Bar by bar',
      columns: ['Bar', 'Load', 'Strength', '± of the readings, two times in three'],
      rows: ({ read, broken, counted }, _, say) =>
        broken.map((bar, i) => [
          counted.includes(bar) ? `${i + 1}` : `${i + 1}, left out`,
          say(read[i]!.hung, 'mass'),
          say(bar.strength, 'stress', { units: KPA }),
          say(bar.uncertainty, 'stress', { units: KPA, significant: 2 }),
        ]),
    },
  ],
  cautions: ['falling-load', 'not-load-bearing'],
  defers: [
    'Where a strength must be proved, an accredited laboratory and the standard test decide.',
  ],
  sources: ['astm-c78', 'astm-c293', 'beam-statics', 'jcgm-100', 'student-t', 'common-practice'],
});
