import { demand } from '../../core/domain-error.ts';
import { EXTREMES } from '../../core/extremes.ts';
import { SOLUTION_DENSITY } from '../../core/foam/density.ts';
import { drainedAt } from '../../core/foam/drainage-curve.ts';
import { standingFoam } from '../../core/foam/standing-foam.ts';
import { correctMix } from '../../core/mix/correct.ts';
import { correctionTable } from '../../core/mix/correction-table.ts';
import { pooled } from '../../core/mix/several-buckets.ts';
import { wetDensity } from '../../core/mix/weigh.ts';
import type { Values } from '../../islands/fields.ts';
import { DensityScale } from '../../islands/figures/DensityScale.tsx';
import { worksheet } from '../../islands/worksheet.ts';
import { DRAINED } from '../shared/foam/drained-foam.ts';
import { drainageOf } from '../shared/foam/drains.ts';
import {
  addWords,
  doubtWords,
  hasRoom,
  inTable,
  isSpent,
  type MixAdvice,
  mixAdvice,
  spentJudgement,
} from '../shared/mix/correction-advice.ts';
import { densityDoubt } from '../shared/mix/density-doubt.ts';
import { targetRefusals } from '../shared/mix/target-refusals.ts';
import { ADDED_FOAM, ADDED_FOAM_MASS, FOAM, PERCENT } from '../shared/words/amounts.ts';
import { baseCell, correctionColumns } from '../shared/words/one-unit.ts';
import { correctFields } from './correct-fields.ts';
import { roundReadings } from './round-readings.ts';
import { noSuchMix } from './weighing-doubts.ts';

/** Buckets farther apart than this are not one mix. Common practice, no source. */
const ONE_MIX = 0.05;

/** What one bucket of several has that may not show in what they come to together. */
const DOUBTED: readonly MixAdvice['is'][] = ['refused', 'weigh-again', 'too-small'];

type V = Values<typeof correctFields>;

/** The share of the foam’s liquid that has drained by now. */
function drained(v: V): number {
  if (v.drains === 'not') return 0;
  const drainage = drainageOf(v.drains, v);
  // The last of the liquid never leaves, and foam without any has no density to reckon with.
  return Math.min(DRAINED.all, drainedAt({ drainage, time: v.age }));
}

/** What a table says in the place of foam that is no longer any. */
const freshFirst = ({ foamVolume }: { readonly foamVolume: number }, gone: boolean) =>
  gone && foamVolume > 0 ? 'fresh foam first' : undefined;

export default worksheet({
  id: 'correct-buckets',
  question: 'Several buckets, and foam that has waited: what do I add?',
  fields: correctFields,
  work: (v, pm, typed) => {
    const share = drained(v);
    const foam = standingFoam({
      foamDensity: v.foamDensity,
      solutionDensity: SOLUTION_DENSITY,
      share,
    });
    const common = {
      targetDensity: v.target,
      foamDensity: foam.density,
      baseDensity: v.baseDensity,
      tolerance: v.tolerance * v.target,
    };
    const { target, made, most, tare, vessel } = v;
    // Of a mixer that nobody typed nothing is known.
    const load = typed?.('load') ? v.load : Number.POSITIVE_INFINITY;
    const mix = { target, tolerance: common.tolerance, made, most, vessel, load };
    const weighing = (density: number) => ({
      ...mix,
      density,
      // One scale errs alike in each bucket: together they are known no closer than one.
      doubt: densityDoubt(
        { tare, full: tare + density * vessel, vessel },
        { tare: pm.tare, full: pm.tare, vessel: pm.vessel },
      ),
    });
    const each = v.buckets.map(({ full, mass }, i) => {
      demand(`buckets.${i}.full`, full, 'mass', { min: tare, aboveMin: true });
      const density = wetDensity({ tare, full, vessel });
      demand(`buckets.${i}.full`, density, 'density', EXTREMES.density, 'no-such-mix');
      const fix = correctMix({
        ...common,
        massInHand: mass,
        measuredDensity: density,
      });
      return { mass, density, fix, advice: mixAdvice(fix, weighing(density)) };
    });
    const all = pooled(each);
    // Each stands for a mix of its own: together they have room where the largest has.
    const mixers = all.mass / Math.max(...each.map(({ mass }) => mass));
    const together = (density: number) => ({ ...weighing(density), load: mixers * load });
    const fix = correctMix({
      ...common,
      massInHand: all.mass,
      measuredDensity: all.density,
    });
    // Only a correction that should be made is shown as an amount.
    const advice = mixAdvice(fix, together(all.density));
    const tooLarge = each.findIndex(({ mass, density }) => !hasRoom(mass / density, load));
    const doubted = each.findIndex(({ advice: { is } }) => DOUBTED.includes(is));
    const apart = all.spread > ONE_MIX;
    const over = advice.is === 'add' && each.length > 1 ? advice.over : undefined;
    const advised = apart || over ? each.map((one) => one.advice) : [advice];
    const wantsFoam = advised.some((one) => one.is === 'add' && one.fix.action === 'add-foam');
    const gone = share > DRAINED.gone;
    const mayAdd = doubted < 0 && !over && !(gone && fix.action === 'add-foam');
    const add = advice.is === 'add' && mayAdd ? advice.fix : undefined;
    return {
      share,
      foam,
      each,
      all,
      fix,
      advice,
      byScale: pm.tare / vessel,
      doubted,
      tooLarge,
      apart,
      over: over && over.volume / mixers,
      wantsFoam,
      gone,
      add,
      common,
      mix,
      weighing,
      together,
    };
  },
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
        ? 'More than a quarter of the foam’s liquid has drained. It can still be reckoned with, but it is dry and its bubbles are large: make fresh foam if you can, and set its age to 0.'
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
        ? `Look at the mix bucket ${tooLarge + 1} stands for: ${say(large.mass, 'mass')} is ${litres(large.mass / large.density)}, ${room}. If it stands: ${add}`
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
      put: (_, { all }, say) =>
        `ρ = ${say(all.mass, 'mass')} ÷ ${say(all.volume, 'volume')} = ${say(all.density, 'density')}`,
    },
    {
      tex: String.raw`\rho_f' = \frac{(1 - v)\,\rho_f}{1 - v\,\rho_f/\rho_s} \qquad F = \frac{M - \rho_t V}{\rho_t - \rho_f'}`,
      put: (v, { foam, share }, say) =>
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
      rows: ({ each, weighing, gone }, _, say) => {
        const cells = each.map(({ density, fix }) => inTable(fix, weighing(density), say));
        const { foam, foamMass, base } = correctionColumns(cells, say);
        return each.map(({ density }, i) => {
          const line = [`${i + 1}`, say(density, 'density')];
          const { fix, instead, first } = cells[i]!;
          if (instead) return [...line, instead];
          const fresh = freshFirst(fix, gone);
          if (fresh) return [...line, fresh, '—'];
          return [
            ...line,
            fix.foamVolume > 0
              ? `${first}${say(fix.foamVolume, 'volume', foam)} (${say(fix.foamMass, 'mass', foamMass)})`
              : '—',
            baseCell(fix, () => `${first}${say(fix.baseMass, 'mass', base)}`),
          ];
        });
      },
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
      rows: ({ common, all, each, together, gone }, v, say) => {
        const { step, densities } = roundReadings(v, say);
        const { tare, vessel } = v;
        const table = correctionTable({ ...common, massInHand: all.mass, tare, vessel, densities });
        const cells = table.map((row) => inTable(row, together(row.density), say));
        const { foam, foamMass, base } = correctionColumns(cells, say);
        return table.map((row, i) => {
          const line = [say(row.reading, 'mass', step), say(row.density, 'density')];
          const { fix, instead, first } = cells[i]!;
          if (instead) return [...line, instead];
          const fresh = freshFirst(fix, gone);
          if (fresh) return [...line, fresh, '—', '—'];
          if (first && each.length > 1) return [...line, 'each by itself: no room'];
          return [
            ...line,
            fix.foamVolume > 0 ? `${first}${say(fix.foamVolume, 'volume', foam)}` : '—',
            fix.foamMass > 0 ? say(fix.foamMass, 'mass', foamMass) : '—',
            baseCell(fix, () => `${first}${say(fix.baseMass, 'mass', base)}`),
          ];
        });
      },
    },
  ],
  cautions: ['caustic-slurry', 'drill-mixer'],
  defers: ['The tolerance is yours, or that of the code or specification the part is made to.'],
  sources: ['astm-c138', 'food-foam-drainage', 'california-721-2-1', 'common-practice'],
});
