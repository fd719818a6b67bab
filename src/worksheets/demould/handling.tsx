import { strengthShare } from '../../core/curing/strength-growth.ts';
import { bestSupportDistance } from '../../core/demould/beam.ts';
import {
  type FlatPart,
  type Hold,
  handlingStress,
  utilisation,
} from '../../core/demould/handling.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { PERCENT } from '../shared/amounts.ts';
import { HandlingShape } from '../shared/HandlingShape.tsx';
import {
  burden,
  face,
  finish,
  form,
  hold,
  places,
  seenFromTheSide,
  stage,
  WAYS,
} from '../shared/handling-fields.ts';
import {
  barLow,
  barMean,
  DAYS,
  dryDensity,
  KPA,
  MM,
  partLength,
  partThickness,
  partWidth,
  strengthFrom,
  wetDensity,
} from '../shared/part-fields.ts';
import { FAST, flexuralAt28Days, SLOW } from '../shared/part-strength.ts';

/** Above this share of the strength handling is not for a young part. A choice. Common practice, no source. */
const CAUTIOUS = 0.5;
export default worksheet({
  id: 'handling',
  question: 'Will it bear being moved like this?',
  fields: {
    length: partLength,
    width: partWidth,
    thickness: partThickness,
    density: wetDensity,
    stage,
    form,
    face,
    hold,
    ...places,
    strengthFrom,
    mean: barMean,
    low: barLow,
    age: number('time', {
      label: 'Age, as time at 20 °C',
      help: 'A cold part is younger than its days.',
      example: '0.8 d',
      min: '12 h',
      max: '365 d',
      units: DAYS,
      takes: 'curing.age',
      when: { strengthFrom: ['density'] },
    }),
    spans: choice({
      label: 'The side that spans',
      options: { length: 'The length', width: 'The width' },
      example: 'length',
      folded: true,
    }),
    lies: choice({
      label: 'It is held',
      options: { flat: 'Flat', edge: 'Standing on edge' },
      example: 'flat',
      when: { hold: ['ends', 'two-points', 'middle'] },
      folded: true,
    }),
    finish,
    dry: { ...dryDensity, folded: true, when: { strengthFrom: ['density'] } },
  },
  work: (v) => {
    const [span, across] = v.spans === 'length' ? [v.length, v.width] : [v.width, v.length];
    const onEdge = v.lies === 'edge';
    const part: FlatPart = {
      length: span,
      width: onEdge ? v.thickness : across,
      depth: onEdge ? across : v.thickness,
      density: v.density,
      ...burden(v),
    };
    const asked: Record<keyof typeof WAYS, Hold> = {
      ends: { by: 'ends' },
      'two-points': { by: 'two-points', left: v.left, right: v.right },
      'four-points': { by: 'four-points', in: v.left, aside: v.aside },
      tipping: { by: 'tipping', grip: v.right },
      middle: { by: 'middle', grip: v.grip },
    };
    const held = handlingStress(part, asked[v.hold]);
    const at28 =
      v.strengthFrom === 'bars'
        ? undefined
        : flexuralAt28Days({ wetDensity: v.density, dryDensity: v.dry });
    const strength =
      v.strengthFrom === 'bars'
        ? { low: Math.min(v.low, v.mean), high: Math.max(v.low, v.mean) }
        : at28 && {
            low: at28.low * strengthShare({ age: v.age, coefficient: SLOW }),
            high: at28.high * strengthShare({ age: v.age, coefficient: FAST }),
          };
    const best = bestSupportDistance(span);
    const otherBest = bestSupportDistance(across);
    const others: readonly [string, Hold][] = [
      ['at its two ends', { by: 'ends' }],
      ['at two lines, best place', { by: 'two-points', left: best, right: best }],
      ['at four points, best place', { by: 'four-points', in: best, aside: otherBest }],
      ['tipped about one end', { by: 'tipping', grip: 0 }],
      ['in the middle, on one hand', { by: 'middle', grip: 0 }],
    ];
    return {
      part,
      held,
      strength,
      use: strength && utilisation({ stress: held.stress, strength }),
      best,
      ways: others.map(([name, way]) => ({ name, ...handlingStress(part, way) })),
      beam: seenFromTheSide(v.hold, v, part, held.load),
    };
  },
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
      significant: 3,
      answer: true,
    },
    useLow: {
      label: 'Of its strength, at best',
      kind: 'ratio',
      of: (r) => r.use?.low,
      units: PERCENT,
      significant: 3,
    },
    low: {
      label: 'Bending strength now, at least',
      kind: 'stress',
      of: (r) => r.strength?.low,
      units: KPA,
      significant: 2,
    },
    high: {
      label: 'Bending strength now, at most',
      kind: 'stress',
      of: (r) => r.strength?.high,
      units: KPA,
      significant: 2,
    },
    best: {
      label: 'Best place to hold it, in from each end',
      kind: 'length',
      of: (r) => r.best,
      units: MM,
    },
    bestStress: {
      label: 'Tension when held there',
      kind: 'stress',
      of: (r) => r.ways[1]?.stress,
      units: KPA,
    },
    moment: { label: 'Bending moment', kind: 'moment', of: (r) => r.held.moment },
    factor: {
      label: 'Weight multiplied by',
      kind: 'count',
      of: (r) => (r.part.factor > 1 ? r.part.factor : undefined),
      significant: 2,
      note: 'from memory, for ordinary concrete',
    },
    adhesion: {
      label: 'Pull of the mould reckoned',
      kind: 'stress',
      of: (r) => (r.part.adhesion > 0 ? r.part.adhesion : undefined),
      units: KPA,
      significant: 2,
      note: 'from memory, for ordinary concrete',
    },
  },
  judge: ({ use, held, ways }, { hold }, say) => {
    const better = ways[1]!.stress;
    const instead =
      better < held.stress * 0.95
        ? ` Held a fifth of its length in from each end it would be ${say(better, 'stress', { units: KPA })}.`
        : '';
    if (!use)
      return {
        verdict: 'stop',
        say: `No published strength covers this density. Break a bar before you move the part ${WAYS[hold]}.`,
      };
    const share = `${(use.high * 100).toFixed(0)} %`;
    if (use.low > 1)
      return {
        verdict: 'stop',
        say: `Moved ${WAYS[hold]} it is expected to crack: it asks for more than the most strength that may be hoped for.${instead}`,
      };
    if (use.high > 1)
      return {
        verdict: 'stop',
        say: `Moved ${WAYS[hold]} it may crack: at worst it asks for ${share} of the strength. Wait, or hold it otherwise.${instead}`,
      };
    if (use.high > CAUTIOUS)
      return {
        verdict: 'look',
        say: `Moved ${WAYS[hold]} it asks for up to ${share} of the strength. Keep it under half: wait a day or hold it better.${instead}`,
      };
    return {
      verdict: 'good',
      say: `Moved ${WAYS[hold]} it asks for at most ${share} of the strength in bending. Edges and corners break before the middle does: set it down on something soft.`,
    };
  },
  notes: ({ held }, { strengthFrom }) => [
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
  keeps: { stress: 'part.handlingStress' },
  working: [
    {
      tex: String.raw`w = (\rho\,g\,d\,k + a)\,b`,
      put: ({ density }, { part, held }, say) =>
        `w = (${say(density, 'density')} × g × ${say(part.depth, 'length', { units: MM })} × ${part.factor.toFixed(1)} + ${say(part.adhesion, 'stress', { units: KPA, significant: 2 })}) × ${say(part.width, 'length', { units: MM })}: ${say(held.load * part.length, 'force', { units: { metric: 'N', us: 'lbf' } })} in all`,
    },
    {
      tex: String.raw`\sigma = \frac{6M}{b\,d^2},\quad M_{\text{ends}} = \frac{wL^2}{8},\quad M_{0.207L} = 0.0214\,wL^2`,
      put: (_, { held, part }, say) =>
        `M = ${say(held.moment, 'moment')}, d = ${say(part.depth, 'length', { units: MM })}: σ = ${say(held.stress, 'stress', { units: KPA })}`,
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
              ? `${say(use.low, 'ratio', { units: PERCENT, significant: 3 })} to ${say(use.high, 'ratio', { units: PERCENT, significant: 3 })}`
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
    'caltrans-19-10',
    'common-practice',
  ],
});
