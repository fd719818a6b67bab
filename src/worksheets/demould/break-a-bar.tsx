import { breakABar } from '../../core/demould/break-a-bar.ts';
import { barsTogether } from '../../core/demould/several-bars.ts';
import { demand } from '../../core/domain-error.ts';
import { choice, lines, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { BarTest } from '../shared/BarTest.tsx';
import { barAge, KPA, MM } from '../shared/part-fields.ts';

/** One bar says nothing of scatter; half of it is carried on as the low end. Common practice, no source. */
const ONE_BAR_SHARE = 0.5;

const side = (label: string, example: string) =>
  number('length', { label, example, min: '5 mm', max: '1 m', units: MM });

interface Bar {
  readonly hung: number;
  readonly breadth: number;
  readonly depth: number;
  readonly mass: number;
  /** From the middle of the span to the break, m. */
  readonly brokeAt: number;
}

/** A bar on a line of its own. */
const bar = {
  hung: number('mass', {
    label: 'Hung from it when it broke',
    example: '7.45 kg',
    min: '0 kg',
    max: '500 kg',
  }),
  breadth: side('Breadth', '50 mm'),
  depth: side('Depth', '50 mm'),
  mass: number('mass', {
    label: 'The bar itself',
    example: '0.45 kg',
    min: '0.001 kg',
    max: '200 kg',
  }),
};

export default worksheet({
  id: 'break-a-bar',
  question: 'How strong is it in bending?',
  fields: {
    loading: choice({
      label: 'Loaded',
      options: {
        centre: 'At one point, in the middle',
        thirds: 'At two points, a third of the span in from each support',
      },
      example: 'centre',
    }),
    span: number('length', {
      label: 'Between the supports',
      help: 'At least three times the depth, or the bar is too stubby for the sum.',
      example: '250 mm',
      min: '20 mm',
      max: '3 m',
      units: MM,
    }),
    length: number('length', {
      label: 'Length of the bars',
      example: '300 mm',
      min: '20 mm',
      max: '4 m',
      units: MM,
    }),
    age: barAge,
    bars: lines({
      label: 'Bars broken',
      help: 'Hung: bucket, what was in it, hook and batten. Breadth and depth at the break.',
      of: bar,
      example:
        '7.45  50  50  0.45\n8.10  50  50.5  0.46\n6.70  50  49.5  0.44\n7.70  50.5  50  0.45',
      most: 20,
      when: { loading: ['centre'] },
    }),
    thirds: lines({
      label: 'Bars broken',
      help: 'Hung: bucket, what was in it, hook and spreader. Breadth and depth at the break.',
      of: {
        ...bar,
        brokeAt: number('length', {
          label: 'Break from the middle of the span',
          example: '4 mm',
          min: '0 mm',
          max: '1.5 m',
          units: MM,
        }),
      },
      example: '11.2  50  50  0.45  4\n12.1  50  50.5  0.46  39\n10.1  50  49.5  0.44  12',
      most: 20,
      when: { loading: ['thirds'] },
    }),
    tape: number('length', {
      label: '± of the tape',
      example: '0.5 mm',
      min: '0 mm',
      max: '20 mm',
      units: MM,
      folded: true,
    }),
    scale: number('mass', {
      label: '± of the scale',
      example: '0.01 kg',
      min: '0 kg',
      max: '5 kg',
      folded: true,
    }),
  },
  work: ({ loading, span, length, bars, thirds, tape, scale }) => {
    const read: readonly Bar[] =
      loading === 'thirds' ? thirds : bars.map((line) => ({ ...line, brokeAt: 0 }));
    const metres = (value: number) => ({ value, uncertainty: tape });
    const kilograms = (value: number) => ({ value, uncertainty: scale });
    const broken = read.map((bar) =>
      breakABar(
        {
          span: metres(span),
          breadth: metres(bar.breadth),
          depth: metres(bar.depth),
          length: metres(length),
          barMass: kilograms(bar.mass),
          hung: kilograms(bar.hung),
        },
        loading,
        bar.brokeAt,
      ),
    );
    const has = (code: string) => broken.filter(({ notes }) => notes.some((n) => n.code === code));
    const counted = broken.filter((bar) => !has('throw-out').includes(bar));
    demand('bars', counted.length, 'count', { min: 1 }, 'all-thrown-out');
    const together = barsTogether(counted);
    const reading = Math.max(...counted.map((bar) => bar.uncertainty));
    return {
      read,
      broken,
      counted,
      together,
      reading,
      low: together.nextBarLow ?? ONE_BAR_SHARE * together.mean,
      short: has('short-span').length > 0,
      thrown: broken.length - counted.length,
    };
  },
  results: {
    mean: {
      label: 'Flexural strength, mean',
      kind: 'stress',
      of: (r) => r.together.mean,
      units: KPA,
    },
    plusMinus: {
      label: 'The mean is sure to ±',
      kind: 'stress',
      of: (r) => r.together.plusMinus,
      units: KPA,
      significant: 2,
      note: '19 times in 20, scatter and readings together',
    },
    low: {
      label: 'The next bar should exceed',
      kind: 'stress',
      of: (r) => r.low,
      units: KPA,
      answer: true,
      note: 'carried on to the strip window',
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
    },
    own: {
      label: 'Of it, the bar’s own weight',
      kind: 'stress',
      of: (r) => r.counted[0]?.ownWeight,
      units: KPA,
      significant: 2,
    },
    counted: { label: 'Bars counted', kind: 'count', of: (r) => r.counted.length, whole: true },
  },
  judge: (r, _, say) => {
    const mean = say(r.together.mean, 'stress', { units: KPA });
    if (r.low <= 0)
      return {
        verdict: 'stop',
        say: 'The bars scatter so widely that nothing is sure of the next one. Look at the broken faces for hollows and cold joints, and break more bars.',
      };
    if (r.short)
      return {
        verdict: 'look',
        say: 'A bar spans less than three times its depth: part of the load goes straight to the supports and the strength reads high. Move the supports apart, or cast thinner bars.',
      };
    if (r.counted.length === 1)
      return {
        verdict: 'look',
        say: `One bar gave ${mean} and says nothing of the next. Half of it is carried on. Break three more.`,
      };
    if (r.counted.length < 4)
      return {
        verdict: 'look',
        say: `${r.counted.length} bars are few: chance alone puts the low end at ${say(r.low, 'stress', { units: KPA })}. Another bar or two would raise it if they agree.`,
      };
    return {
      verdict: 'good',
      say: `${mean} from ${r.counted.length} bars. Reckon with ${say(r.low, 'stress', { units: KPA })} for a part cured beside them.`,
    };
  },
  notes: (r, { loading }) => [
    'A bar tells of the part only if it was cast from the same bucket and kept beside the part, covered as it was. A bucket on a string is not the standard test; it is loaded by hand and never as slowly.',
    ...(loading === 'centre'
      ? ['The load is reckoned at the middle wherever the bar broke, as the standard test does.']
      : []),
    ...(r.thrown > 0
      ? [
          `${r.thrown} ${r.thrown === 1 ? 'bar' : 'bars'} broke too far outside the middle third and ${r.thrown === 1 ? 'is' : 'are'} left out (from memory of the standard).`,
        ]
      : []),
  ],
  refusals: {
    'shorter-than-span': () => 'The bars are shorter than the space between the supports.',
    'all-thrown-out': () =>
      'Every bar broke too far outside the middle third to be counted. Load them more evenly and break others.',
  },
  blames: {
    barMass: 'bars',
    hung: 'bars',
    breadth: 'bars',
    depth: 'bars',
    brokeAt: 'bars',
    strength: 'bars',
  },
  folded: 'How finely you read',
  keeps: { mean: 'part.flexural', low: 'part.flexuralLow' },
  working: [
    {
      tex: String.raw`f = \frac{6M}{b\,d^2},\quad M = \frac{F\,s}{4}\ \text{or}\ \frac{F\,s}{6}`,
      put: ({ span, loading }, r, say) => {
        const [bar, broken] = [r.read[0]!, r.broken[0]!];
        return `First bar: F = ${say(bar.hung, 'mass')} × g, s = ${say(span, 'length', { units: MM })}, divided by ${loading === 'centre' ? 4 : 6}; with its own weight (${say(broken.ownWeight, 'stress', { units: KPA, significant: 2 })}) f = ${say(broken.strength, 'stress', { units: KPA })}`;
      },
    },
    {
      tex: String.raw`f_{\text{next}} = \bar f - \sqrt{t^2 s^2\left(1+\tfrac1n\right) + (1.645\,u)^2}`,
      put: (_, r, say) =>
        r.together.scatter === undefined
          ? 'One bar: no scatter is known, and half the strength is carried on (common practice, no source).'
          : `mean ${say(r.together.mean, 'stress', { units: KPA })}, scatter ${say(r.together.scatter, 'stress', { units: KPA, significant: 2 })}, n = ${r.counted.length}: ${say(r.low, 'stress', { units: KPA })}`,
    },
  ],
  figure: ({ values, result, say }) => (
    <BarTest
      loading={values.loading}
      span={values.span}
      strengths={result.counted.map((bar) => bar.strength)}
      mean={result.together.mean}
      low={result.low}
      plusMinus={result.together.plusMinus}
      say={say}
    />
  ),
  tables: [
    {
      caption: 'Bar by bar',
      columns: ['Bar', 'Load', 'Strength', '± from the readings', 'Of it, own weight'],
      rows: ({ read, broken, counted }, _, say) =>
        broken.map((bar, i) => [
          counted.includes(bar) ? `${i + 1}` : `${i + 1}, left out`,
          say(read[i]!.hung, 'mass'),
          say(bar.strength, 'stress', { units: KPA }),
          say(bar.uncertainty, 'stress', { units: KPA, significant: 2 }),
          say(bar.ownWeight, 'stress', { units: KPA, significant: 2 }),
        ]),
    },
  ],
  cautions: ['falling-load', 'not-load-bearing'],
  defers: [
    'Where a strength must be proved, an accredited laboratory and the standard test decide.',
  ],
  sources: ['astm-c78', 'astm-c293', 'beam-statics', 'jcgm-100', 'student-t', 'common-practice'],
});
