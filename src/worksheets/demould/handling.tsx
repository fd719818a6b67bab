import { utilisation } from '../../core/demould/handling.ts';
import { withJerk } from '../../core/demould/jerk.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { densitiesDoubt } from '../shared/part/densities-doubt.ts';
import { tooOld } from '../shared/time/paces.ts';
import { KPA, PERCENT } from '../shared/words/amounts.ts';
import { HandlingShape } from './drawn/HandlingShape.tsx';
import { handlingJudgement, handlingNotes } from './handling-words.ts';
import { moved, moveFields } from './handling-worked.ts';
import { strongBars } from './strong-bars.ts';

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
      label: 'Pull of the form counted',
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
  judge: handlingJudgement,
  notes: handlingNotes,
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
      put: ({ part, held }, { density }, say) =>
        `k the factor or a the pull, whichever asks more. w = (${say(density, 'density')} × g × ${say(part.depth, 'length')} × ${part.factor.toFixed(1)} + ${say(part.adhesion, 'stress', { units: KPA, significant: 2 })}) × ${say(part.width, 'length')}: ${say(held.load * part.length, 'force', { units: { metric: 'N', us: 'lbf' } })} in all`,
    },
    {
      tex: String.raw`\begin{gathered}\sigma = \frac{6M}{b\,d^2},\\ M_{\text{ends}} = \frac{wL^2}{8},\\ M_{0.207L} = 0.0214\,wL^2\end{gathered}`,
      put: ({ held, part }, _, say) =>
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
