import { fromBags, wholeBags } from '../../core/mix/bags.ts';
import { designBatch } from '../../core/mix/batch-design.ts';
import { MIX_WATER_DENSITY } from '../../core/mix/densities.ts';
import { mixerLoads } from '../../core/mix/loads.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { ASSUMED_FOAM } from '../shared/foam/assumed-foam.ts';
import { Bucket } from '../shared/mix/Bucket.tsx';
import { mixRefusals } from '../shared/mix/mix-refusals.ts';
import { judgeBy } from '../shared/words/judge-by.ts';
import { batchDoubts } from './batch-doubts.ts';
import { batchFields } from './batch-fields.ts';
import { recipeOf } from './batch-input.ts';
import { results } from './batch-results.ts';
import { amountsOf, bagRows, leavesFurther, NAMES } from './batch-tables.ts';
import { assumedDoubt } from './mix-doubts.ts';
import { OWN_PLAN, ownPlan } from './own-plan.ts';

/** Below this share of a bag, rounding to whole bags is not suggested. A choice. */
const PART_OF_A_BAG = 0.1;

export default worksheet({
  id: 'batch',
  question: 'What goes into the whole batch, with everything in it?',
  fields: batchFields,
  work: (v) => {
    const recipe = recipeOf(v);
    const target = {
      wet: { wetDensity: v.wetDensity },
      dry: { ovenDryDensity: v.dryDensity },
      content: { cementContent: v.content },
      bags: undefined,
    }[v.aim];
    const design = target
      ? designBatch({ ...recipe, target })
      : fromBags(recipe, { bags: v.bags, bag: v.bag });
    const input = { ...recipe, target: target ?? { wetDensity: design.wetDensity } };
    const loads = mixerLoads({
      batch: { ...design.mix, volume: v.volume },
      largestLoad: v.load,
      foamBucket: v.load,
      least: v.leastLoads,
    }).count;
    const free = design.sand > 0 ? (v.moisture - v.absorption) / (1 + v.moisture) : 0;
    return { design, loads, damp: v.moisture, free, bags: wholeBags(input, design, v.bag) };
  },
  results,
  judge: ({ design, bags }, v, say, kept = {}) => {
    const density = say(design.wetDensity, 'density');
    return judgeBy([assumedDoubt(v.foamDensity, kept, say), ...batchDoubts(design, v, say)], {
      verdict: 'good',
      say:
        v.aim === 'bags'
          ? `All of it in that volume comes to ${density} wet and ${say(design.ovenDryDensity, 'density')} dry. Is that what the part needs?`
          : bags.exact < PART_OF_A_BAG
            ? 'Weigh it out as in the table below: it takes a small part of a bag.'
            : `${bags.exact.toFixed(2)} bags. The table says what rounding to whole ones does to the rest.`,
    });
  },
  minds: [ASSUMED_FOAM],
  notes: ({ design }) => [
    ...(design.notes.some(({ code }) => code === 'blend-binds-otherwise')
      ? [
          'The oven-dry density takes a fifth of all the binder as bound water. That figure is stated for Portland cement; slag, ash and fume bind otherwise and later, limestone hardly.',
        ]
      : []),
  ],
  refusals: {
    ...mixRefusals,
    overfills: (e, say) =>
      `So much cement makes more base mix than the volume holds, before any foam: at most ${say(e.allowed.max!, 'density')} fit. Fewer bags, or a larger form.`,
    'too-wet': () =>
      'The damp sand, filler and admixture bring more water than the mix may have. Dry the sand, or raise the w/c.',
    'no-cement': () =>
      'Slag, ash, fume and limestone together must leave some cement: without it nothing sets.',
  },
  folded: 'Blends, sand, fibre, pigment, loads and parts',
  blames: {
    wetDensity: ['wetDensity', 'dryDensity', 'content', 'bags'],
    ovenDryDensity: 'dryDensity',
    cementContent: ['content', 'bags'],
    largestLoad: 'load',
    least: 'leastLoads',
    waterToAdd: 'moisture',
    surfaceDry: 'sandCement',
    portland: 'slag',
  },
  keeps: {
    cementitious: 'mix.cement',
    water: 'mix.water',
    foamMass: 'mix.foamMass',
    wet: 'mix.planned',
    dry: 'part.dryDensity',
    base: 'mix.baseDensity',
    foam: 'mix.foamVolume',
    loads: 'mix.loads',
    loadMass: 'mix.loadMass',
  },
  leaves: {
    [OWN_PLAN]: ownPlan,
    'mix.loadCement': ({ design, loads }) => design.cementitious / loads,
    'mix.loadFoam': ({ design, loads }) => design.mix.foamVolume / loads,
    'mix.loadWater': ({ design: { mix }, loads }) => (mix.water + mix.foamMass) / loads,
    'mix.solutionCement': ({ design: { mix } }) => mix.foamMass / mix.cement,
    ...leavesFurther,
    'mix.portland': ({ design: { binder } }) =>
      binder.find(({ kind }) => kind === 'portland')?.mass ?? 0,
    'mix.sand': ({ design }) => design.sand,
    'mix.sandWater': ({ damp }) => damp,
    'mix.sandFree': ({ free }) => free,
  },
  working: [
    {
      tex: String.raw`\frac{1}{\rho_b} = \sum \frac{x_i}{\rho_i} \qquad V(1-\varphi) = C\left(\frac{1}{\rho_b} + \frac{w}{\rho_w} + \sum\frac{r_i}{\rho_i}\right) + F`,
      put: ({ design: { volumes: v, binder } }, _, say) =>
        `Volume: ${(Object.keys(v) as (keyof typeof v)[])
          .filter((name) => v[name] > 0)
          .map(
            (name) =>
              `${NAMES[name]}${name === 'binder' && binder.length > 1 ? ' and stand-ins' : ''} ${say(v[name], 'volume')}`,
          )
          .join(' + ')}`,
    },
    {
      tex: String.raw`W_{\text{pour}} = w\,C - \frac{S\,(m - a)}{1 + a} - d\,q\,C`,
      put: ({ design: d }, _, say) =>
        `Water to pour: ${say(d.mix.water, 'mass')} − ${say(d.broughtByFillers, 'mass')} with sand and filler − ${say(d.broughtByAdmixture, 'mass')} with the admixture = ${say(d.waterToAdd, 'mass')}`,
    },
  ],
  figure: ({
    values,
    result: {
      design: { volumes: v, mix, binder, sand },
    },
    say,
  }) => {
    const fillers = values.filler === 'none' ? 'sand' : sand > 0 ? 'sand, filler' : 'filler';
    const liquid = (mix.foamVolume * values.foamDensity) / MIX_WATER_DENSITY;
    return (
      <Bucket
        title="The batch by volume"
        parts={[
          {
            name: binder.length > 1 ? 'binder' : 'cement',
            fill: 'cement',
            volume: v.binder,
          },
          { name: fillers, fill: 'sand', volume: v.fillers },
          { name: 'pigment', fill: 'pigment', volume: v.pigment },
          { name: 'fibre', fill: 'fibre', volume: v.fibre },
          { name: 'water', fill: 'water', volume: v.water },
          { name: 'foam’s liquid', fill: 'solution', volume: liquid },
          { name: 'gas', fill: 'foam', volume: v.foam - liquid },
        ]}
        say={say}
      />
    );
  },
  tables: [
    {
      caption: 'Batch, load and part, and what the mix holds',
      columns: ['Weigh out', 'Batch', 'One load', 'In the mix', 'Per part, waste counted'],
      rows: ({ design, loads }, v, say) =>
        amountsOf(design, { loads, volume: v.volume, parts: v.parts }, say),
    },
    {
      caption: 'In whole bags',
      columns: ['Bags', 'Same recipe makes', 'Same volume comes to, wet', 'and dry'],
      rows: ({ bags }, _, say) => bagRows(bags, say),
    },
  ],
  cautions: [
    'caustic-slurry',
    'cement-dust',
    'hot-sand',
    'drill-mixer',
    'glass-fibre',
    'pigment-dust',
    'heavy-lift',
    'not-load-bearing',
  ],
  defers: [
    'The sheets of the cement, the admixture, the fibre and the concentrate outrank the figures used here.',
  ],
  sources: [
    'navedtra-14071',
    'army-en5466',
    'kearsley-mostert-2005',
    'astm-c869',
    'pca-cement',
    'pca-eb001-materials',
    'en-197-1',
    'en-15422',
    'astm-c979',
    'common-practice',
  ],
});
