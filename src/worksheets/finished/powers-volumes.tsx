import { gelSpaceRatio } from '../../core/finished/gel-space.ts';
import { greatestDegree, greatestHydration, powersVolumes } from '../../core/finished/powers.ts';
import { MIX_WATER_DENSITY, SAND_DENSITY } from '../../core/mix/densities.ts';
import { formatNumber, formatQuantity } from '../../core/quantity/format.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { unfitFoam } from '../shared/foam/foam-doubt.ts';
import { foamShare } from '../shared/foam/foam-share.ts';
import { cubicMetre } from '../shared/mix/cubic-metre.ts';
import { mixRefusals } from '../shared/mix/mix-refusals.ts';
import { foamDensityField, sandCement, waterCement } from '../shared/mix/recipe.ts';
import { cementDensity, counts } from '../shared/mix/recipe-details.ts';
import { sandTakenAsDry } from '../shared/mix/sand-taken-as-dry.ts';
import { wetDensity } from '../shared/part/part-densities.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { PARTS, SETS, VolumesPlot } from './drawn/VolumesPlot.tsx';

const whole = (share: number) => formatQuantity(share, 'ratio', '%', { decimals: 0 }).text;

export default worksheet({
  id: 'powers-volumes',
  question: 'What is it made of, once hard?',
  fields: {
    density: wetDensity,
    waterCement,
    counts,
    sandCement: { ...sandCement, folded: true },
    cementDensity,
    plannedSurvival: foamShare,
    foam: foamDensityField,
    degree: number('ratio', {
      label: 'Share of the cement that has reacted',
      usual: true,
      help: 'Half in the first days, three quarters in a month if it was kept damp: a guess, no source.',
      example: '70 %',
      min: '0 %',
      max: '100 %',
      units: PERCENT,
    }),
    curing: choice({
      label: 'Kept',
      options: { sealed: 'covered, no water added', saturated: 'under water' },
      example: 'sealed',
    }),
    set: choice({
      label: 'Constants of the model',
      options: {
        restated: 'Restated 2001 (from memory)',
        bentz: 'A hydration model’s',
      },
      example: 'restated',
      folded: true,
    }),
  },
  work: (v) => {
    const mix = cubicMetre({ ...v, foamDensity: v.foam }, v.density);
    // The foam's liquid stays in the paste as water; the rest of what lives of it is air.
    const air = mix.airShare;
    const total = mix.waterCementTotal;
    const paste = {
      waterCement: total,
      air,
      inert: mix.sand / SAND_DENSITY,
      reaction: SETS[v.set],
      curing: v.curing,
      waterDensity: MIX_WATER_DENSITY,
    };
    const most = greatestDegree(paste);
    const degree = Math.min(v.degree, most);
    return {
      mix,
      paste,
      most,
      degree,
      stopped: v.degree > most,
      paper: greatestHydration({ waterCement: total, curing: v.curing }),
      volumes: powersVolumes({ ...paste, degree }),
      gelSpace: gelSpaceRatio({
        waterCement: total,
        degree: Math.min(degree, (total + (air / mix.cement) * 1000) / 0.36),
        airPerCement: (air / mix.cement) * 1000,
      }),
    };
  },
  results: {
    air: {
      label: 'Air from the foam',
      kind: 'ratio',
      of: (r) => r.volumes.air,
      units: PERCENT,
    },
    pores: {
      label: 'Pores in the paste, water and emptied',
      kind: 'ratio',
      of: (r) => r.volumes.capillaryWater + r.volumes.emptied,
      units: PERCENT,
      significant: 2,
    },
    gel: {
      label: 'Gel, its own water with it',
      kind: 'ratio',
      of: (r) => r.volumes.gelSolids + r.volumes.gelWater,
      units: PERCENT,
      significant: 2,
    },
    unhydrated: {
      label: 'Cement not reacted',
      kind: 'ratio',
      of: (r) => r.volumes.unhydrated,
      units: PERCENT,
      significant: 2,
    },
    shrinkage: {
      label: 'Chemical shrinkage',
      kind: 'ratio',
      of: (r) => (r.volumes.emptied > 0 ? r.volumes.emptied : undefined),
      units: PERCENT,
      significant: 2,
      note: 'inner pores, not a shorter part',
    },
    most: {
      label: 'The cement can react as far as',
      kind: 'ratio',
      of: (r) => r.most,
      units: PERCENT,
      significant: 2,
    },
    gelSpace: {
      label: 'Room filled by gel',
      kind: 'ratio',
      of: (r) => r.gelSpace,
      units: PERCENT,
      significant: 2,
      note: 'gel–space ratio, the air counted',
    },
    ratio: {
      label: 'w/c with the foam’s water',
      kind: 'count',
      of: (r) => r.mix.waterCementTotal,
      significant: 2,
    },
    dry: {
      label: 'Oven-dry density to expect',
      kind: 'density',
      of: (r) => r.mix.ovenDryDensity,
    },
  },
  judge: (r, { foam }, say) => {
    const unfit = unfitFoam(foam, say);
    if (unfit) return unfit;
    const percent = (x: number) => say(x, 'ratio', { units: PERCENT, significant: 2 });
    if (r.stopped)
      return {
        verdict: 'look',
        say: `Water or room runs out at ${percent(r.most)}: the cement can react no further than that, and the picture shows it there.`,
      };
    const pores = r.volumes.capillaryWater + r.volumes.emptied;
    return {
      verdict: 'good',
      say: `${percent(r.volumes.air)} is the foam’s air; of the rest, ${percent(pores / (1 - r.volumes.air))} is pores between the gel. Those hold the water that frost and drying work on: cure it longer and they shrink; they never all close.`,
    };
  },
  notes: (r, v) => [
    'Powers’ model is for plain Portland cement paste. With a filler, slag or fly ash it is only a picture.',
    ...(whole(r.paper) === whole(r.most)
      ? []
      : [
          `By the usual rule the cement could react to ${whole(r.paper)}; this set of constants says ${whole(r.most)}. Each set is rounded and has its own limit, up to 3\u00a0% apart.`,
        ]),
    'The air is the foam’s as planned. What broke beyond that is gone, and the mix would be heavier than planned.',
    ...sandTakenAsDry(v),
  ],
  refusals: mixRefusals,
  blames: {
    wetDensity: 'density',
    foamDensity: 'foam',
    airPerCement: 'foam',
    air: 'foam',
    inert: 'sandCement',
  },
  folded: 'The rest of the mix, and the model’s constants',
  keeps: { air: 'part.designedAir' },
  working: [
    {
      tex: String.raw`\begin{gathered}V_{\text{gel}} = q\,g\,\alpha,\\ V_{\text{emptied}} = q\,s\,\alpha,\\ V_{\text{unhydrated}} = q\,(1-\alpha)\end{gathered}`,
      put: ({ paste, degree }, _, say) =>
        `paste is ${say(1 - paste.air - paste.inert, 'ratio', { units: PERCENT, decimals: 1 })} of the volume; of it cement filled q = ${(MIX_WATER_DENSITY / paste.reaction.cementDensity / (paste.waterCement + MIX_WATER_DENSITY / paste.reaction.cementDensity)).toFixed(3)}, by the model’s own cement of ${say(paste.reaction.cementDensity, 'density')} (yours counts in the air alone); g = ${paste.reaction.gel}, s = ${paste.reaction.shrinkage.toFixed(3)}, α = ${degree.toFixed(2)}`,
    },
    {
      tex: String.raw`x = \frac{0.68\,\alpha}{0.32\,\alpha + w/c + a}`,
      put: ({ gelSpace, mix, paste }) =>
        `w/c = ${paste.waterCement.toFixed(3)}, a = ${formatNumber((paste.air / mix.cement) * 1000, { decimals: 2 })}\u00a0mL of air to a gram of cement: x = ${gelSpace.toFixed(3)}`,
    },
  ],
  figure: ({ result, say }) => (
    <VolumesPlot paste={result.paste} degree={result.degree} most={result.most} say={say} />
  ),
  tables: [
    {
      caption: 'By volume, at that degree',
      columns: ['Part', 'Share'],
      rows: ({ volumes }, _, say) =>
        PARTS.filter(([key]) => volumes[key] > 0).map(([key, name]) => [
          name,
          say(volumes[key], 'ratio', { units: PERCENT }),
        ]),
    },
  ],
  cautions: ['not-load-bearing'],
  defers: [
    'A picture of what goes on inside, not a measure of your part; a weighed, dried piece decides.',
  ],
  sources: [
    'powers-brownyard-1947',
    'jensen-hansen-2001',
    'bentz-nist-hydration',
    'powers-gel-space',
    'chemistrylab-cement',
    'kearsley-mostert-2005',
  ],
});
