import {
  COMPARISON,
  compareWaters,
  comparisonMargins,
  type Verdict,
} from '../../core/water/comparison-test.ts';
import { number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { byHours } from '../shared/words/spelt.ts';
import { SetFigure } from './drawn/SetFigure.tsx';

const set = (label: string, example: string, bench: string) =>
  number('time', {
    label,
    example,
    plusMinus: '5 min',
    min: '0 min',
    aboveMin: true,
    max: '10000 min',
    optional: true,
    spelt: byHours,
    bench,
  });
const strength = (label: string, example: string, bench: string) =>
  number('stress', {
    label,
    example,
    plusMinus: '0.5 MPa',
    min: '0 MPa',
    aboveMin: true,
    // No mortar is as strong in a week. From memory.
    max: '150 MPa',
    optional: true,
    bench,
  });
/** As much stronger than with a good water a mix is sooner by a slip. A choice. */
const MOST_STRENGTH = 1.5;
/** What each line of the standards is about. */
const LINES = {
  leastInitial: 'initial set',
  initialWithin: 'initial set',
  set: 'initial set',
  mostFinal: 'final set',
  finalWithin: 'final set',
  strength: 'strength',
} as const;
/** The limits, as shares of the control's values. */
const { within, leastStrength } = COMPARISON.en1008;
const SHARES = [leastStrength, 1 - within, 1 + within];
const AND = new Intl.ListFormat('en-GB');
const WORDS: Readonly<Record<Verdict, string>> = {
  passes: 'passes',
  fails: 'FAILS',
  unknown: 'not read',
};

export default worksheet({
  id: 'compare-waters',
  question: 'Does this water pass beside a known one?',
  fields: {
    controlInitial: set('Control, initial set', '165 min', 'trial.controlInitial'),
    controlFinal: set('Control, final set', '250 min', 'trial.controlFinal'),
    controlStrength: strength('Control, strength at 7 days', '24 MPa', 'trial.controlStrength'),
    testInitial: set('On test, initial set', '190 min', 'trial.testInitial'),
    testFinal: set('On test, final set', '285 min', 'trial.testFinal'),
    testStrength: strength('On test, strength at 7 days', '22.8 MPa', 'trial.testStrength'),
  },
  work: (v, pm) => {
    const pair = pairOf(v);
    const margins = marginsOf(v);
    // With each reading off by its ±: of a set that may be too early or too late only one way is the worse.
    const off = (Object.keys(pm) as (keyof Read)[]).flatMap((name) => {
      const read = v[name];
      return read === undefined
        ? []
        : [[pm[name], -pm[name]].map((by) => marginsOf({ ...v, [name]: read + by }))];
    });
    const lines = Object.keys(LINES) as (keyof typeof LINES)[];
    const close = lines.filter((line) => {
      const margin = margins[line];
      if (margin === undefined) return false;
      const lost = off.map((ways) => Math.max(...ways.map((moved) => margin - moved[line]!)));
      return margin < Math.hypot(...lost);
    });
    return { ...pair, close: new Set(close.map((line) => LINES[line])), ...compareWaters(pair) };
  },
  results: {
    fails: {
      label: 'Lines it does not pass, of the seven below',
      kind: 'count',
      of: ({ en1008, astmC1602 }) =>
        [...Object.values(en1008), ...Object.values(astmC1602)].filter((line) => line === 'fails')
          .length,
      decimals: 0,
    },
    strength: {
      label: 'Strength, of the control’s',
      kind: 'ratio',
      of: ({ control, test }) => over(test.strength, control.strength),
      units: PERCENT,
      sure: true,
    },
    initial: {
      label: 'Initial set, of the control’s',
      kind: 'ratio',
      of: ({ control, test }) => over(test.initialSet, control.initialSet),
      units: PERCENT,
      sure: true,
    },
    later: {
      label: 'Initial set, later by',
      kind: 'time',
      of: ({ control, test }) => less(test.initialSet, control.initialSet),
      note: 'below 0: earlier',
    },
    final: {
      label: 'Final set, of the control’s',
      kind: 'ratio',
      of: ({ control, test }) => over(test.finalSet, control.finalSet),
      units: PERCENT,
    },
  },
  doubts: ({ control, test }, _, say) => {
    const strength = over(test.strength, control.strength) ?? 1;
    return strength > MOST_STRENGTH
      ? `Read both strengths again: ${say(strength, 'ratio', { units: PERCENT })} of what a good water gives is more likely a slip than the water.`
      : undefined;
  },
  judge: ({ close, control, test, en1008, astmC1602 }, _, say) => {
    const en = Object.values(en1008);
    const astm = Object.values(astmC1602);
    const fails = [
      ...(en.includes('fails') ? ['EN 1008'] : []),
      ...(astm.includes('fails') ? ['ASTM C1602'] : []),
    ];
    // Its ± rounds a result to the line itself; here it is told from it.
    const shares = [
      ['strength', en1008.strength, over(test.strength, control.strength)],
      ['initial set', en1008.initialWithin, over(test.initialSet, control.initialSet)],
      ['final set', en1008.finalWithin, over(test.finalSet, control.finalSet)],
    ] as const;
    const off = shares.flatMap(([name, line, share]) =>
      line === 'fails'
        ? [
            `${name} ${saidApart(share!, 'ratio', SHARES, say, { units: PERCENT })} of the control’s`,
          ]
        : [],
    );
    if (fails.length > 0)
      return {
        verdict: 'stop',
        say: `It does not pass ${fails.join(' or ')}${off.length > 0 ? `: ${AND.format(off)}` : ''}. Do not mix with it; repeat the pair once if a reading looks like a slip.`,
      };
    if ([...en, ...astm].includes('unknown'))
      return {
        verdict: 'look',
        say: 'Nothing fails so far; some readings are still missing. Wait for them before a batch rests on this water.',
      };
    if (close.size > 0)
      return {
        verdict: 'look',
        say: `Make the pair once more, and mix with it only if it passes again: its ${AND.format(close)} ${close.size > 1 ? 'lie' : 'lies'} within one ± of a limit.`,
      };
    return {
      verdict: 'good',
      say: 'It passes both standards on every line. Mix with it, and test again when the season or the source changes.',
    };
  },
  notes: () => [
    'Both mixes alike but for the water: the same cement, sand, w/c, temperature and hands; distilled water, or one known to be good, in the control. One pair tells little more than its own scatter: make two or three.',
  ],
  refusals: {},
  blames: {
    'control.initialSet': 'controlInitial',
    'control.finalSet': 'controlFinal',
    'control.strength': 'controlStrength',
    'test.initialSet': 'testInitial',
    'test.finalSet': 'testFinal',
    'test.strength': 'testStrength',
  },
  working: [
    {
      tex: String.raw`\frac{R_{\text{test}}}{R_{\text{control}}} \ge 0.90`,
      put: (r, v, say) =>
        v.testStrength === undefined || v.controlStrength === undefined
          ? 'Strengths are still missing.'
          : `${say(v.testStrength, 'stress')} ÷ ${say(v.controlStrength, 'stress')} = ${say(over(r.test.strength, r.control.strength)!, 'ratio', { units: PERCENT })}`,
    },
    {
      tex: String.raw`\left|\,t_{\text{test}} - t_{\text{control}}\right| \le 0.25\,t_{\text{control}}`,
      put: (_, v, say) =>
        v.testInitial === undefined || v.controlInitial === undefined
          ? 'Initial sets are still missing.'
          : `Initial set: ${say(Math.abs(v.testInitial - v.controlInitial), 'time')} apart, ${say(COMPARISON.en1008.within * v.controlInitial, 'time')} allowed by EN 1008; 60\u00a0min earlier to 90\u00a0min later by ASTM C1602.`,
    },
  ],
  figure: ({ result }) => <SetFigure control={result.control} test={result.test} />,
  tables: [
    {
      caption: 'Each line of each standard on its own',
      columns: ['Standard', 'What it asks', 'This water'],
      rows: ({ en1008: en, astmC1602: astm }) => [
        ['EN 1008', 'initial set at least 1\u00a0h', WORDS[en.leastInitial]],
        ['EN 1008', 'initial set within 25\u00a0% of the control', WORDS[en.initialWithin]],
        ['EN 1008', 'final set at most 12\u00a0h', WORDS[en.mostFinal]],
        ['EN 1008', 'final set within 25\u00a0% of the control', WORDS[en.finalWithin]],
        ['EN 1008', 'strength at least 90\u00a0% of the control', WORDS[en.strength]],
        ['ASTM C1602', 'set from 1:00 earlier to 1:30 later', WORDS[astm.set]],
        ['ASTM C1602', 'strength at least 90\u00a0% of the control', WORDS[astm.strength]],
      ],
    },
  ],
  cautions: ['caustic-slurry', 'cement-dust'],
  defers: ['The standard that binds you, and the laboratory when the part matters.'],
  sources: ['neville-water-tests', 'pca-design-control', 'common-practice'],
});

type Read = Readonly<
  Record<`${'control' | 'test'}${'Initial' | 'Final' | 'Strength'}`, number | undefined>
>;
const pairOf = (v: Read) => ({
  control: {
    initialSet: v.controlInitial,
    finalSet: v.controlFinal,
    strength: v.controlStrength,
  },
  test: { initialSet: v.testInitial, finalSet: v.testFinal, strength: v.testStrength },
});
/** Both standards' lines in one; the strength is the same in both. */
const marginsOf = (v: Read) => {
  const { en1008, astmC1602 } = comparisonMargins(pairOf(v));
  return { ...en1008, ...astmC1602 };
};

const over = (a: number | undefined, b: number | undefined) =>
  a === undefined || b === undefined ? undefined : a / b;
const less = (a: number | undefined, b: number | undefined) =>
  a === undefined || b === undefined ? undefined : a - b;
