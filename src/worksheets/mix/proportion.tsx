import { MIX_WATER_DENSITY, SAND_DENSITY } from '../../core/mix/densities.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { ASSUMED_FOAM } from '../shared/foam/assumed-foam.ts';
import { littleConcentrate } from '../shared/foam/little-concentrate.ts';
import { solutionDoubt } from '../shared/foam/solution-doubt.ts';
import { Bucket } from '../shared/mix/Bucket.tsx';
import { buckets } from '../shared/mix/buckets.ts';
import { sandTakenAsDry } from '../shared/mix/sand-taken-as-dry.ts';
import { jointsOf, PIECES_KEPT, piecesFilled } from '../shared/mix/whole-pieces.ts';
import { FOAM } from '../shared/words/amounts.ts';
import { judgeBy } from '../shared/words/judge-by.ts';
import { PiecesInLoads } from './drawn/PiecesInLoads.tsx';
import { assumedDoubt, loadsDoubt, mixDoubts } from './mix-doubts.ts';
import { proportionPlan } from './proportion-plan.ts';

export default worksheet({
  ...proportionPlan,
  judge: ({ mix, loads, solution }, v, say, kept = {}) => {
    const each = loads.count === 1 ? 'in one load' : `in ${loads.count} equal loads`;
    const { volume, load: largestLoad } = v;
    const filled = piecesFilled(kept, volume);
    // Pieces of several sizes may yet be shared out.
    const joints = filled && jointsOf({ ...filled, volume, loads: loads.count, largestLoad });
    const doubts: (Judgement | undefined)[] = [
      joints && (filled.alike || joints.sure) ? { verdict: 'look', say: joints.short } : undefined,
      loadsDoubt(v),
      assumedDoubt(v.foamDensity, kept, say),
      ...mixDoubts(mix, v.foamDensity, say),
      solutionDoubt(solution, { ...v, foamVolume: mix.foamVolume }, say),
    ];
    return judgeBy(doubts, {
      verdict: 'good',
      say: `Mix the base first, ${each}; make the foam last, of ${say(v.foamDensity, 'density', { units: FOAM })}, and blend it in at once.`,
    });
  },
  minds: [...PIECES_KEPT, ASSUMED_FOAM],
  notes: ({ mix, loads, solution }, v, say) => [
    ...littleConcentrate(solution, say),
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
  folded: 'More choices',
  working: [
    {
      tex: String.raw`C\left(1 + \tfrac{w}{c} + \tfrac{s}{c}\right) + \rho_f F = \rho V`,
      put: ({ mix }, v, say) =>
        `Mass: ${say(mix.cement, 'mass')} × ${(1 + mix.waterCementBase + v.sandCement).toFixed(3)} + ${say(v.foamDensity, 'density', { units: FOAM })} × ${say(mix.foamVolume, 'volume')} = ${say(mix.mass, 'mass')}`,
    },
    {
      tex: String.raw`C\left(\tfrac{1}{\rho_c} + \tfrac{w/c}{\rho_w} + \tfrac{s/c}{\rho_s}\right) + F = V`,
      put: ({ mix }, _, say) =>
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
