import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { DRAINED } from '../shared/foam/drained-foam.ts';
import { addWords, doubtWords, isSpent, spentJudgement } from '../shared/mix/correction-advice.ts';
import { targetRefusals } from '../shared/mix/target-refusals.ts';
import { ADDED_FOAM, ADDED_FOAM_MASS, FOAM, PERCENT } from '../shared/words/amounts.ts';
import { bucketsFields } from './buckets-fields.ts';
import { bucketRows, readingRows } from './buckets-tables.ts';
import { bucketsWorked } from './buckets-worked.ts';
import { noSuchMix } from './weighing-doubts.ts';

export default worksheet({
  id: 'correct-buckets',
  question: 'Several buckets, and foam that has waited: what do I add?',
  fields: bucketsFields,
  work: bucketsWorked,
  results: {
    density: {
      label: 'All of it together weighs',
      kind: 'density',
      of: (r) => r.all.density,
      sure: true,
      listed: (r) => [r.byScale, 'buckets'],
    },
    addFoam: {
      label: 'Add foam, as it is now',
      kind: 'volume',
      of: (r) => r.add?.foamVolume || undefined,
      units: ADDED_FOAM,
      significant: 2,
      answer: true,
    },
    addFoamMass: {
      label: 'Foam to add, by weight',
      kind: 'mass',
      of: (r) => r.add?.foamMass || undefined,
      units: ADDED_FOAM_MASS,
      significant: 2,
    },
    addBase: {
      label: 'Add base mix',
      kind: 'mass',
      of: (r) => r.add?.baseMass || undefined,
      significant: 2,
      answer: true,
    },
    spread: {
      label: 'Heaviest to lightest bucket',
      kind: 'ratio',
      of: (r) => r.all.spread,
      units: PERCENT,
      significant: 2,
    },
    foamNow: {
      label: 'The foam weighs now',
      kind: 'density',
      of: (r) => (r.share < DRAINED.all ? r.foam.density : undefined),
      units: FOAM,
    },
    drained: {
      label: 'The foam’s liquid that has drained',
      kind: 'ratio',
      of: (r) => r.share,
      units: PERCENT,
      significant: 2,
    },
    volume: { label: 'Mix you will have', kind: 'volume', of: (r) => r.add?.volume },
  },
  judge: (
    { all, each, advice, doubted, tooLarge, share, apart, over, wantsFoam, gone, mix },
    { load },
    say,
  ) => {
    const density = say(all.density, 'density');
    // A slip in one of several may hide in what they come to together.
    const slip = each[doubted] ?? { density: all.density, advice };
    const words =
      slip.advice.is === 'refused'
        ? ({ verdict: 'stop', say: noSuchMix(slip.density, say) } as const)
        : doubtWords(slip.advice, say);
    if (words)
      return each.length > 1 && doubted >= 0
        ? { ...words, say: `Bucket ${doubted + 1}: ${words.say}` }
        : words;
    const differ = `The buckets differ by ${say(all.spread, 'ratio', { units: PERCENT, significant: 2 })}`;
    if (apart && each.every((one) => one.advice.is === 'leave'))
      return {
        verdict: 'good',
        say: `Stop stirring and place them. ${differ}, but each is near enough.`,
      };
    if (apart && isSpent(mix.made, mix.most))
      return {
        verdict: each.some((one) => one.advice.is === 'another-mix') ? 'stop' : 'look',
        say: `No more corrections. ${differ}: do with each what its own line in the first table says.`,
      };
    if (advice.is === 'place' || advice.is === 'another-mix')
      return spentJudgement({ ...mix, density: all.density }, say);
    if (wantsFoam && gone)
      return {
        verdict: 'stop',
        say: `${say(share, 'ratio', { units: PERCENT, significant: 2 })} of the foam’s liquid has drained: what is left is dry and breaks as it is folded in. Make fresh foam, weigh it, and set its age to 0.`,
      };
    const dry =
      wantsFoam && share > DRAINED.thin
        ? 'More than a quarter of the foam’s liquid has drained. It can still be used, but it is dry and its bubbles are large: make fresh foam if you can, and set its age to 0.'
        : '';
    if (apart)
      return {
        verdict: 'look',
        say: `${dry && `${dry} `}${differ}: it is not one mix yet, or not one batch. Correct each by its own line in the first table, or turn them together gently and weigh again.`,
      };
    if (advice.is === 'leave')
      return { verdict: 'good', say: `${density} is near enough. Stop stirring and place it.` };
    if (advice.is !== 'add' || dry) return { verdict: 'look', say: dry };
    const litres = (volume: number) => say(volume, 'volume');
    const large = each[tooLarge];
    const room = `and the mixer takes ${litres(load)}`;
    const add = over
      ? `Correct each by its own line in the first table${large ? '' : `: corrected, the largest of them would be ${litres(over)}, ${room}`}.`
      : `${addWords(advice, say)}${each.length > 1 ? ' in all, to each its share' : ''}, folded in gently, and weigh once more.`;
    return {
      verdict: 'look',
      say: large
        ? `Look at the mix bucket ${tooLarge + 1} stands for: ${say(large.mass, 'mass')} is ${litres(large.mass / large.density)}, ${room}. If it is right: ${add}`
        : add,
    };
  },
  notes: () => [
    'Foam is added without the liquid that has run out of it; what stays weighs less to the litre than when it was made, and carries less water into the mix.',
    'Weigh the foam again and enter that with an age of 0 if there is a moment to do it: a reading beats a curve.',
  ],
  refusals: {
    'no-such-mix': (e, say) => noSuchMix(e.value, say),
    ...targetRefusals('The target'),
  },
  folded: 'Limits, the foam, the base mix, and the table',
  blames: {
    targetDensity: 'target',
    mass: 'buckets',
    massInHand: 'buckets',
    measuredDensity: 'buckets',
    time: 'age',
    halfTime: 'half',
    rate: 'perMinute',
  },
  working: [
    {
      tex: String.raw`\bar\rho = \frac{\sum M_i}{\sum M_i/\rho_i}`,
      put: ({ all }, _, say) =>
        `ρ = ${say(all.mass, 'mass')} ÷ ${say(all.volume, 'volume')} = ${say(all.density, 'density')}`,
    },
    {
      tex: String.raw`\rho_f' = \frac{(1 - v)\,\rho_f}{1 - v\,\rho_f/\rho_s} \qquad F = \frac{M - \rho_t V}{\rho_t - \rho_f'}`,
      put: ({ foam, share }, v, say) =>
        `foam: ${say(v.foamDensity, 'density', { units: FOAM })} when made, ${say(share, 'ratio', { units: PERCENT, significant: 2 })} of its liquid gone, ${share < DRAINED.all ? say(foam.density, 'density', { units: FOAM }) : 'none'} now`,
    },
  ],
  figure: ({ values, result: { each, all, mix }, say }) => (
    <DensityScale
      title="The buckets, and where they should be"
      from={Math.min(...each.map(({ density }) => density), values.target) * 0.85}
      to={Math.max(...each.map(({ density }) => density), values.target) * 1.12}
      bands={[
        {
          from: values.target - mix.tolerance,
          to: values.target + mix.tolerance,
          label: 'near enough',
        },
      ]}
      marks={[
        ...each.map(({ density }, i) => ({
          at: density,
          label: `${i + 1}:`,
          role: 'plain' as const,
        })),
        { at: values.target, label: 'target', role: 'target' },
        { at: all.density, label: 'together', role: 'measured' },
        { at: values.baseDensity, label: 'base mix', role: 'plain', far: true },
      ]}
      say={say}
    />
  ),
  tables: [
    {
      caption: 'Each bucket corrected by itself',
      columns: ['Bucket', 'Wet density', 'Add foam', 'Add of the same base mix'],
      rows: (r, _, say) => bucketRows(r, say),
    },
    {
      caption: 'To print: if a bucket of the whole weighs …',
      columns: [
        'Bucket weighs',
        'Wet density',
        'Add foam',
        'Foam by weight',
        'Add of the same base mix',
      ],
      rows: readingRows,
    },
  ],
  cautions: ['caustic-slurry', 'drill-mixer'],
  defers: ['The tolerance is yours, or that of the code or specification the part is made to.'],
  sources: ['astm-c138', 'food-foam-drainage', 'california-721-2-1', 'common-practice'],
});
