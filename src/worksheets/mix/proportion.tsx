import { foamingSolution } from '../../core/foam/solution.ts';
import { MIX_WATER_DENSITY, SAND_DENSITY } from '../../core/mix/densities.ts';
import { mixerLoads } from '../../core/mix/loads.ts';
import { proportion } from '../../core/mix/proportion.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { doseOf } from '../foam/dose.ts';
import { solutionDoubt } from '../foam/solution-doubt.ts';
import { FOAM, PERCENT, SMALL_MASS, SMALL_VOLUME } from '../shared/amounts.ts';
import { Bucket } from '../shared/Bucket.tsx';
import { buckets } from '../shared/buckets.ts';
import { judgeBy } from '../shared/judge-by.ts';
import { mixRefusals } from '../shared/mix-refusals.ts';
import { OWN_PLAN, ownPlan } from '../shared/own-plan.ts';
import { PiecesInLoads } from '../shared/PiecesInLoads.tsx';
import { jointsOf, PIECES_KEPT, piecesFilled } from '../shared/whole-pieces.ts';
import { loadsDoubt, mixDoubts } from './mix-doubts.ts';
import { proportionFields } from './proportion-fields.ts';
import { sandTakenAsDry } from './recipe-fields.ts';

export default worksheet({
  id: 'proportion',
  question: 'What goes into the batch?',
  fields: proportionFields,
  work: (v) => {
    const mix = proportion({
      volume: v.volume,
      target: v.aim === 'wet' ? { wetDensity: v.wetDensity } : { ovenDryDensity: v.dryDensity },
      waterCement: v.waterCement,
      waterCementOf: v.counts,
      sandCement: v.sandCement,
      cementDensity: v.cementDensity,
      foamDensity: v.foamDensity,
      convention: v.convention,
      survival: v.foamLives,
    });
    const loads = mixerLoads({
      batch: mix,
      largestLoad: v.load,
      foamBucket: v.bucket,
      least: v.leastLoads,
    });
    const solution = foamingSolution({
      foamVolume: mix.foamVolume,
      foamDensity: v.foamDensity,
      ...doseOf(v),
      glycerolShare: v.glycerol,
      lanceLoss: v.lanceLoss,
      priming: v.priming,
    });
    return { mix, loads, solution };
  },
  results: {
    cement: { label: 'Cement', kind: 'mass', of: (r) => r.mix.cement },
    water: { label: 'Mixing water', kind: 'mass', of: (r) => r.mix.water },
    sand: { label: 'Sand', kind: 'mass', of: (r) => (r.mix.sand > 0 ? r.mix.sand : undefined) },
    foamVolume: {
      label: 'Foam to make',
      kind: 'volume',
      of: (r) => r.mix.foamVolume,
    },
    foamMass: { label: 'Foam, by weight', kind: 'mass', of: (r) => r.mix.foamMass },
    solution: {
      label: 'Foaming solution to mix',
      note: 'with what is wasted or stays in the hose',
      kind: 'volume',
      of: (r) => r.solution.solutionVolume,
    },
    softWater: {
      label: 'Soft water for the solution',
      kind: 'volume',
      of: (r) => r.solution.waterVolume,
    },
    glycerol: {
      label: 'Glycerol for the solution',
      kind: 'mass',
      of: (r) => (r.solution.glycerolMass > 0 ? r.solution.glycerolMass : undefined),
      units: SMALL_MASS,
    },
    concentrate: {
      label: 'Concentrate for the solution',
      kind: 'volume',
      of: (r) => r.solution.concentrateVolume,
      units: SMALL_VOLUME,
    },
    loads: { label: 'Mixer loads', kind: 'count', of: (r) => r.loads.count, decimals: 0 },
    wet: {
      label: 'Wet density, as the bucket reads it',
      kind: 'density',
      of: (r) => r.mix.wetDensity,
    },
    dry: {
      label: 'Oven-dry density to expect',
      kind: 'density',
      of: (r) => r.mix.ovenDryDensity,
    },
    base: {
      label: 'Base mix density',
      kind: 'density',
      of: (r) => r.mix.baseDensity,
      significant: 4,
    },
    ratio: {
      label: 'w/c with the foam’s water',
      kind: 'count',
      of: (r) => r.mix.waterCementTotal,
    },
    foamShare: {
      label: 'Foam in the mix, by volume',
      kind: 'ratio',
      of: (r) => r.mix.foamShare,
      units: PERCENT,
    },
    loadMass: { label: 'One load weighs', kind: 'mass', of: (r) => r.mix.mass / r.loads.count },
  },
  judge: ({ mix, loads, solution }, v, say, kept = {}) => {
    const each = loads.count === 1 ? 'in one load' : `in ${loads.count} equal loads`;
    const { volume, load: largestLoad } = v;
    const filled = piecesFilled(kept, volume);
    // Pieces of several sizes may yet be shared out.
    const joints =
      filled?.alike && jointsOf({ ...filled, volume, loads: loads.count, largestLoad });
    const doubts: (Judgement | undefined)[] = [
      joints ? { verdict: 'look', say: joints.short } : undefined,
      loadsDoubt(v),
      ...mixDoubts(mix, v.foamDensity, say),
      solutionDoubt(solution, { ...v, foamVolume: mix.foamVolume }, say),
    ];
    return judgeBy(doubts, {
      verdict: 'good',
      say: `Mix the base first, ${each}; make the foam last, of ${say(v.foamDensity, 'density', { units: FOAM })}, and blend it in at once.`,
    });
  },
  minds: PIECES_KEPT,
  notes: ({ mix, loads }, v, say) => [
    ...(v.bucket > loads.each.foamVolume
      ? [
          `The foam’s bucket holds ${say(v.bucket * v.foamDensity, 'mass')} of it, and a load takes ${say(loads.each.foamMass, 'mass')}: weigh foam in a smaller vessel, or count a bucket of it as waste.`,
        ]
      : []),
    ...(v.convention === 'foam-ignored'
      ? [
          `With the foam’s mass ignored, the batch is called ${say(mix.wetDensityFoamIgnored, 'density')}: ${say(mix.wetDensity - mix.wetDensityFoamIgnored, 'density', { significant: 2 })} less than the bucket will read.`,
        ]
      : []),
    ...sandTakenAsDry(v),
  ],
  refusals: mixRefusals,
  folded: 'More choices',
  blames: {
    ovenDryDensity: 'dryDensity',
    largestLoad: 'load',
    foamBucket: 'bucket',
    least: 'leastLoads',
    glycerolShare: 'glycerol',
    stated: ['partsWater', 'oneIn', 'percent'],
  },
  keeps: {
    cement: 'mix.cement',
    water: 'mix.water',
    foamMass: 'mix.foamMass',
    wet: 'mix.planned',
    base: 'mix.baseDensity',
    dry: 'part.dryDensity',
    foamVolume: 'mix.foamVolume',
    softWater: 'foam.softWater',
    loads: 'mix.loads',
    loadMass: 'mix.loadMass',
  },
  leaves: {
    [OWN_PLAN]: ownPlan,
    'mix.loadCement': ({ loads }) => loads.each.cement,
    'mix.loadWater': ({ loads: { each } }) => each.water + each.foamMass,
    // As much of the foam's liquid as a water-cement ratio counts, and all the water that the batch takes.
    'mix.solutionCement': ({ mix }) => mix.foamMass / mix.cement,
    'mix.portland': ({ mix }) => mix.cement,
    'mix.sand': ({ mix }) => mix.sand,
    'mix.sandWater': () => 0,
    'mix.sandFree': () => 0,
    'mix.further': () => 0,
    'mix.volume': ({ mix }) => mix.volume,
    'mix.allWater': ({ mix, solution }) => mix.water / MIX_WATER_DENSITY + solution.waterVolume,
  },
  working: [
    {
      tex: String.raw`C\left(1 + \tfrac{w}{c} + \tfrac{s}{c}\right) + \rho_f F = \rho V`,
      put: (v, { mix }, say) =>
        `Mass: ${say(mix.cement, 'mass')} × ${(1 + mix.waterCementBase + v.sandCement).toFixed(3)} + ${say(v.foamDensity, 'density', { units: FOAM })} × ${say(mix.foamVolume, 'volume')} = ${say(mix.mass, 'mass')}`,
    },
    {
      tex: String.raw`C\left(\tfrac{1}{\rho_c} + \tfrac{w/c}{\rho_w} + \tfrac{s/c}{\rho_s}\right) + F = V`,
      put: (_, { mix }, say) =>
        `Volume: base mix ${say(mix.baseVolume, 'volume')} + foam as it is left ${say(mix.volume - mix.baseVolume, 'volume')} = ${say(mix.volume, 'volume')}`,
    },
  ],
  figure: ({ values, result: { mix, loads }, say }) => (
    <>
      <PiecesInLoads
        loads={loads.count}
        volume={values.volume}
        largestLoad={values.load}
        stays="proportion-fields"
        say={say}
      />
      <Bucket
        title="The batch by volume"
        parts={[
          { name: 'cement', fill: 'cement', volume: mix.cement / values.cementDensity },
          { name: 'sand', fill: 'sand', volume: mix.sand / SAND_DENSITY },
          { name: 'water', fill: 'water', volume: mix.water / MIX_WATER_DENSITY },
          { name: 'foam', fill: 'foam', volume: mix.volume - mix.baseVolume },
        ]}
        say={say}
      />
    </>
  ),
  tables: [
    {
      caption: 'To weigh out: the loads are equal',
      columns: ['', 'For each load', 'For all of them'],
      rows: ({ loads: { each, foamBuckets, count }, mix }, v, say) => [
        ['Cement', say(each.cement, 'mass'), say(mix.cement, 'mass')],
        ['Mixing water', say(each.water, 'mass'), say(mix.water, 'mass')],
        ...(mix.sand > 0 ? [['Sand', say(each.sand, 'mass'), say(mix.sand, 'mass')]] : []),
        ['Foam, by volume', say(each.foamVolume, 'volume'), say(mix.foamVolume, 'volume')],
        ['Foam, by weight', say(each.foamMass, 'mass'), say(mix.foamMass, 'mass')],
        [
          'Foam, by the bucket',
          buckets(foamBuckets, v.bucket, say, v.foamDensity),
          count === 1 ? 'the same' : `${count} times that`,
        ],
      ],
    },
  ],
  cautions: [
    'caustic-slurry',
    'cement-dust',
    'drill-mixer',
    'glycerol-and-concentrate',
    'heavy-lift',
    'not-load-bearing',
  ],
  defers: [
    'The cement bag’s and the concentrate’s own sheets outrank the densities and the dilution used here.',
  ],
  sources: [
    'navedtra-14071',
    'kearsley-mostert-2005',
    'astm-c869',
    'aci-523-1r',
    'pca-cement',
    'astm-c796',
    'common-practice',
  ],
});
