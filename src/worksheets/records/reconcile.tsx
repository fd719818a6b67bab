import { isBaseMix } from '../../core/mix/water-cement-limits.ts';
import { reconcile } from '../../core/records/reconcile.ts';
import { heavierThanAirless, judgeBatch } from '../../core/records/verdict.ts';
import { number, type Units } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { foamFaultDoubt } from '../shared/foam/foam-doubt.ts';
import { isFoam } from '../shared/foam/is-foam.ts';
import { lazy } from '../shared/lazy.ts';
import { OF_LITTLE } from '../shared/mix/of-little.ts';
import { foamDensityField } from '../shared/mix/recipe.ts';
import { cementDensity } from '../shared/mix/recipe-details.ts';
import { weighingBucket } from '../shared/mix/weighing-bucket.ts';
import { ADDED_FOAM, PERCENT } from '../shared/words/amounts.ts';
import { scaleReads } from '../shared/words/as-said.ts';
import { ReconcileBars } from './drawn/ReconcileBars.tsx';
import { readingLimits } from './reading-limits.ts';
import { reconcileJudgement } from './reconcile-words.ts';

const weighed = (
  label: string,
  example: string,
  more: { help?: string; folded?: boolean; nothingIsSure?: boolean } = {},
) => number('mass', { label, example, plusMinus: '0.01 kg', min: '0 kg', max: '5000 kg', ...more });
const measured = (
  label: string,
  example: string,
  plusMinus: string,
  more: {
    help?: string;
    folded?: boolean;
    nothingIsSure?: boolean;
    plusMinusAtMost?: number;
    units?: Units;
  } = {},
) => number('volume', { label, example, plusMinus, min: '0 L', max: '5 m3', ...more });

const fields = {
  cement: weighed('Cement', '13.57 kg'),
  water: weighed('Mixing water', '5.43 kg', { help: 'Without the foam’s.' }),
  sand: weighed('Sand', '0 kg', { folded: true, nothingIsSure: true }),
  cementDensity,
  foamVolume: { ...measured('Foam put in', '25.3 L', '0.5 L'), plusMinusGrows: true },
  foamDensity: { ...foamDensityField, plusMinus: '1 g/L' },
  full: weighed('Bucket, full of blended mix', '13.44 kg'),
  ...weighingBucket,
  placed: number('volume', {
    label: 'Filled in the forms',
    help: 'With what is left over it closes the balance of mass.',
    example: '32.4 L',
    plusMinus: '0.3 L',
    plusMinusGrows: true,
    min: '0 L',
    max: '5 m3',
    optional: true,
    folded: true,
  }),
  leftOver: number('mass', {
    label: 'Left over or spilled',
    help: 'With what was taken out before a correction.',
    example: '0.6 kg',
    plusMinus: '0.05 kg',
    ...OF_LITTLE,
    min: '0 kg',
    max: '5000 kg',
    optional: true,
    folded: true,
  }),
  foamAdded: measured('Foam added while correcting', '0 L', '0.5 L', {
    units: ADDED_FOAM,
    folded: true,
    nothingIsSure: true,
    ...OF_LITTLE,
  }),
  baseAdded: weighed('Base mix added while correcting', '0 kg', {
    folded: true,
    nothingIsSure: true,
  }),
} as const;
const LIMITS = readingLimits(fields);

export default worksheet({
  id: 'reconcile',
  question: 'Did it come out as it went in?',
  fields,
  folded: 'Sand, kind of cement, corrections, and where it went',
  work: (v, pm) => {
    const found = reconcile(v);
    // Judged only where the verdict is asked for: what is only nudged, to carry a ± along, is not.
    const judged = lazy(() => judgeBatch(v, pm, LIMITS));
    // Of water and cement that make no base mix nothing follows for the foam.
    const settled = isBaseMix(found.waterCementBase);
    // As in a record: a mix too heavy to hold any gas tells nothing. Also evaluated for perturbed
    // readings.
    const heavy = lazy(() => settled && heavierThanAirless(v, pm));
    return { ...found, judged, heavy, settled, tells: () => settled && !heavy() };
  },
  results: {
    survival: {
      label: 'Foam that survived',
      kind: 'ratio',
      of: (r) => (r.tells() ? r.survival : undefined),
      units: PERCENT,
      sure: true,
      note: 'share of its gas still in the mix when weighed',
    },
    air: {
      label: 'Gas in the mix',
      kind: 'ratio',
      of: (r) => (r.tells() ? r.air : undefined),
      units: PERCENT,
      sure: true,
    },
    ratio: {
      label: 'w/c with the foam’s water',
      kind: 'count',
      of: (r) => r.waterCement,
      sure: true,
    },
    wetDensity: {
      label: 'Wet density',
      kind: 'density',
      of: (r) => r.wetDensity,
      sure: true,
    },
    planned: {
      label: 'Wet density if every bubble had survived',
      kind: 'density',
      of: (r) => r.planned,
    },
    yield: {
      label: 'Yield',
      kind: 'volume',
      of: (r) => (r.heavy() ? undefined : r.yield),
      sure: true,
    },
    massIn: { label: 'Went in', kind: 'mass', of: (r) => r.massIn },
    missing: {
      label: 'Went in, not found',
      kind: 'mass',
      of: (r) => (r.heavy() ? undefined : r.missing),
      significant: 2,
      sure: true,
      // The verdict weighs it by its ± already.
      aboutZero: 'any',
    },
  },
  doubts: (_, { foamDensity }, say) =>
    isFoam(foamDensity) ? undefined : foamFaultDoubt(foamDensity, say)?.say,
  judge: (r, { sand }, say) => reconcileJudgement(r.judged(), sand, say),
  notes: (r, { placed, leftOver }) => [
    'The ± take each reading’s error as its own. Where foam and mix were measured in one bucket, an error of its volume moves the share that survived by less: its ± is then too large, and a little more gas than the foam brought may pass.',
    ...(r.missing === undefined
      ? [
          `Measure ${[
            ...(placed === undefined ? ['what filled the forms'] : []),
            ...(leftOver === undefined ? ['what was left over'] : []),
          ].join(' and ')}, and the mass is checked too.`,
        ]
      : []),
  ],
  refusals: {
    'no-gas': () => 'The foam is as heavy as water: it holds no gas. Check its weighing.',
  },
  working: [
    {
      tex: String.raw`V = \frac{M}{\rho}, \qquad M = C + W + S + \rho_f F`,
      put: (r, _, say) =>
        `V = ${say(r.massIn, 'mass', scaleReads(r.massIn, say))} ÷ ${say(r.wetDensity, 'density')} = ${say(r.yield, 'volume')}`,
    },
    {
      tex: String.raw`V_0 = \frac{C}{\rho_c} + \frac{W}{\rho_w} + \frac{S}{\rho_s} + \frac{\rho_f F}{\rho_w}`,
      put: (r, _, say) => `V₀ = ${say(r.airless, 'volume')}, all but the gas`,
    },
    {
      tex: String.raw`\text{survival} = \frac{V - V_0}{F\,(1 - \rho_f/\rho_w)}`,
      put: (r, _, say) =>
        r.tells()
          ? `survival = ${say(r.gasFound, 'volume')} ÷ ${say(r.gasIn, 'volume')} = ${say(r.survival, 'ratio', { units: PERCENT })}`
          : 'survival: not by such readings',
    },
  ],
  figure: ({ result, say }) => result.settled && <ReconcileBars found={result} say={say} />,
  cautions: ['caustic-slurry'],
  defers: ['Your scale and your bucket: the ± of each reading is theirs.'],
  sources: ['astm-c138', 'navedtra-14071', 'jcgm-100', 'common-practice'],
});
