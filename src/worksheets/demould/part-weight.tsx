import { partMass } from '../../core/demould/weight.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { densitiesDoubt } from '../shared/part/densities-doubt.ts';
import { dryDensity, wetDensity } from '../shared/part/part-densities.ts';
import { partLength, partThickness, partWidth } from '../shared/part/part-sides.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { MassBars } from './drawn/MassBars.tsx';
import { MOST_FOR_ONE, tooHeavy } from './too-heavy.ts';

/**
 * Up to this mass, kg, a part is light however it is lifted: about what the method allows from the
 * floor at arm’s length with a twist, the example of “Can I lift it?”. A choice.
 */
const LIGHT = 8;

const solid = {
  when: { shape: ['sides'] },
  asks: {
    beside: 'part.cores',
    say: 'the form has cores, so its sides do not give the volume of the part. Choose “volume” above.',
  },
} as const;

export default worksheet({
  id: 'part-weight',
  question: 'What does it weigh?',
  fields: {
    shape: choice({
      label: 'I know its',
      options: { sides: 'sides', volume: 'volume' },
      example: 'sides',
      follows: { 'part.volume': 'volume' },
    }),
    length: { ...partLength, ...solid },
    width: { ...partWidth, ...solid },
    thickness: {
      ...partThickness,
      ...solid,
      help: 'Of a solid part; of a hollow one give the volume.',
    },
    volume: number('volume', {
      label: 'Volume of the part',
      example: '8.1 L',
      takes: 'part.volume',
      min: '0.001 L',
      max: '10 m3',
      when: { shape: ['volume'] },
    }),
    wet: wetDensity,
    dry: dryDensity,
    fittings: number('mass', {
      label: 'Form, board or fittings that go with it',
      usual: true,
      example: '0 kg',
      min: '0 kg',
      max: '1000 kg',
    }),
    gone: number('ratio', {
      label: 'Water gone by now',
      help: 'Of the water that can leave. A covered part loses next to none; 0 errs on the heavy side.',
      example: '0 %',
      min: '0 %',
      max: '100 %',
      units: PERCENT,
      folded: true,
    }),
  },
  folded: 'Water gone',
  work: (v) => {
    const volume = v.shape === 'sides' ? v.length * v.width * v.thickness : v.volume;
    const mass = partMass({
      volume,
      wetDensity: v.wet,
      dryDensity: v.dry,
      gone: v.gone,
      fittings: v.fittings,
    });
    return { volume, ...mass };
  },
  results: {
    stripped: { label: 'As you lift it', kind: 'mass', of: (r) => r.stripped },
    wet: { label: 'Wet, as cast', kind: 'mass', of: (r) => r.wet },
    dry: { label: 'Oven-dry', kind: 'mass', of: (r) => r.dry },
    lost: {
      label: 'Water it may still lose',
      kind: 'mass',
      of: (r) => r.stripped - r.dry,
      significant: 2,
    },
    volume: { label: 'Volume', kind: 'volume', of: (r) => r.volume },
  },
  doubts: (_, { wet, dry }, say) => densitiesDoubt(wet, dry, say),
  judge: ({ stripped }, _, say) => {
    const mass = saidApart(stripped, 'mass', [MOST_FOR_ONE], say);
    if (stripped > MOST_FOR_ONE)
      return { verdict: 'stop', say: tooHeavy(mass, stripped, MOST_FOR_ONE, say) };
    if (stripped > LIGHT)
      return {
        verdict: 'look',
        say: `${mass}: whether that is too much depends on reach, height and how often. Work it out below before you lift.`,
      };
    return {
      verdict: 'good',
      say: `${mass} is light for one lift. Many lifts, or a long reach, can still make it too much.`,
    };
  },
  notes: (_, { shape }) => [
    ...(shape === 'volume'
      ? ['Of several forms this is the one worked last: lift by the heaviest of them.']
      : []),
    'Light concrete looks light: people lift what it looks like, not what it weighs. It is heaviest on the day it is weakest.',
  ],
  refusals: {
    'dry-not-above-wet': () =>
      'The oven-dry density is above the wet one; a part cannot gain mass by drying.',
  },
  blames: { wetDensity: 'wet', dryDensity: 'dry' },
  keeps: { stripped: 'part.mass', wet: 'part.wetMass' },
  working: [
    {
      tex: String.raw`m = \rho V + m_{\text{fittings}}`,
      put: (r, { wet, fittings }, say) =>
        `wet: ${say(wet, 'density')} × ${say(r.volume, 'volume')} + ${say(fittings, 'mass')} = ${say(r.wet, 'mass')}`,
    },
    {
      tex: String.raw`m_{\text{now}} = m_{\text{wet}} - g\,(m_{\text{wet}} - m_{\text{dry}})`,
      put: (r, { gone }, say) =>
        `${say(r.wet, 'mass')} − ${say(gone, 'ratio', { units: PERCENT, significant: 2 })} of ${say(r.wet - r.dry, 'mass')} = ${say(r.stripped, 'mass')}`,
    },
  ],
  figure: ({ result, say }) => (
    <MassBars
      bars={[
        ['wet, as cast', result.wet],
        ['as you lift it', result.stripped],
        ['oven-dry', result.dry],
      ]}
      limit={MOST_FOR_ONE}
      limitName="one person, best posture"
      say={say}
    />
  ),
  cautions: ['heavy-lift', 'falling-and-tipping'],
  defers: ['The person who lifts it decides; local manual-handling rules come first.'],
  sources: ['niosh-lifting-1994', 'astm-c869', 'common-practice'],
});
