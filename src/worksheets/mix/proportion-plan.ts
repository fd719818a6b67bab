import { foamingSolution } from '../../core/foam/solution.ts';
import { MIX_WATER_DENSITY } from '../../core/mix/densities.ts';
import { mixerLoads } from '../../core/mix/loads.ts';
import { proportion } from '../../core/mix/proportion.ts';
import { sum } from '../../islands/worksheet.ts';
import { doseOf } from '../shared/foam/dose.ts';
import { mixRefusals } from '../shared/mix/mix-refusals.ts';
import { PERCENT, SMALL_MASS, SMALL_VOLUME } from '../shared/words/amounts.ts';
import { OWN_PLAN, ownPlan } from './own-plan.ts';
import { proportionFields } from './proportion-fields.ts';

/** What “What goes into the batch?” works out: the plan by which a batch is weighed out. */
export const proportionPlan = sum({
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
      survival: v.plannedSurvival,
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
  refusals: mixRefusals,
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
    'mix.loadFoam': ({ loads }) => loads.each.foamVolume,
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
});
