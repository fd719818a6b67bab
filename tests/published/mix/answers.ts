import { absoluteVolume, lastPart } from '../../../src/core/mix/absolute-volume.ts';
import { waterCementRatio } from '../../../src/core/mix/base-mix.ts';
import { dundeeRule } from '../../../src/core/mix/dundee.ts';
import { ovenDryDensity } from '../../../src/core/mix/oven-dry.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { airContent, wetDensity, yieldVolume } from '../../../src/core/mix/weigh.ts';
import { type Answers, answer } from '../answer.ts';
import { batchAnswers } from './batch-answers.ts';

const concrete = {
  volume: 'volume',
  air: 'ratio',
  waterDensity: 'density',
  cement: 'mass',
  cementGravity: 'number',
  water: 'mass',
  coarse: 'mass',
  coarseGravity: 'number',
  fineGravity: 'number',
} as const;

/** The last part of an ordinary concrete: the fine aggregate. */
const fineAggregate = (mix: { readonly [K in keyof typeof concrete]: number }) =>
  lastPart({
    volume: mix.volume,
    air: mix.air,
    density: mix.fineGravity * mix.waterDensity,
    parts: [
      { mass: mix.cement, density: mix.cementGravity * mix.waterDensity },
      { mass: mix.water, density: mix.waterDensity },
      { mass: mix.coarse, density: mix.coarseGravity * mix.waterDensity },
    ],
  });

export const answers: Answers = {
  ...batchAnswers,
  'mix/absolute-volume': answer({
    asks: 'Space this much of a material takes in a mix',
    input: { mass: 'mass', gravity: 'number', waterDensity: 'density' },
    gives: 'volume',
    beside: true,
    work: ({ mass, gravity, waterDensity }) =>
      absoluteVolume({ mass, density: gravity * waterDensity }),
  }),
  'mix/fine-volume': answer({
    asks: 'Volume left for the fine aggregate',
    input: concrete,
    gives: 'volume',
    beside: true,
    work: (mix) => fineAggregate(mix).volume,
  }),
  'mix/fine-mass': answer({
    asks: 'Mass of fine aggregate that fills the volume left',
    input: concrete,
    gives: 'mass',
    beside: true,
    work: (mix) => fineAggregate(mix).mass,
  }),
  'mix/volume-without-fine': answer({
    asks: 'Volume of cement, water, coarse aggregate and air together',
    input: concrete,
    gives: 'volume',
    beside: true,
    work: (mix) => mix.volume - fineAggregate(mix).volume,
  }),
  'mix/water-cement': answer({
    asks: 'Water-cement ratio of a batch whose water was measured by volume',
    input: { cement: 'mass', water: 'volume' },
    gives: 'ratio',
    beside: true,
    work: waterCementRatio,
  }),
  'mix/cement': answer({
    asks: 'Cement in a cubic metre of foamed mix; w/c with the foam’s liquid counted',
    input: { wetDensity: 'density', waterCementTotal: 'ratio', foamDensity: 'density' },
    gives: 'density',
    work: ({ wetDensity, waterCementTotal, foamDensity }) =>
      proportion({
        volume: 1,
        target: { wetDensity },
        waterCementOf: 'total',
        waterCement: waterCementTotal,
        foamDensity,
      }).cement,
  }),
  'mix/oven-dry-of-wet': answer({
    asks: 'Oven-dry density of a neat foamed mix of this wet density; w/c with the foam’s liquid counted',
    input: { wetDensity: 'density', waterCementTotal: 'ratio', foamDensity: 'density' },
    gives: 'density',
    work: ({ wetDensity, waterCementTotal, foamDensity }) =>
      proportion({
        volume: 1,
        target: { wetDensity },
        waterCementOf: 'total',
        waterCement: waterCementTotal,
        foamDensity,
      }).ovenDryDensity,
  }),
  'mix/wet-for-oven-dry': answer({
    asks: 'Wet density to cast for this oven-dry density; w/c with the foam’s liquid counted',
    input: { ovenDryDensity: 'density', waterCementTotal: 'ratio', foamDensity: 'density' },
    gives: 'density',
    work: ({ ovenDryDensity: dry, waterCementTotal, foamDensity }) =>
      proportion({
        volume: 1,
        target: { ovenDryDensity: dry },
        waterCementOf: 'total',
        waterCement: waterCementTotal,
        foamDensity,
      }).wetDensity,
  }),
  'mix/oven-dry': answer({
    asks: 'Oven-dry density of a cubic metre with this much cement and aggregate',
    input: { cement: 'mass', aggregate: 'mass' },
    gives: 'density',
    work: ({ cement, aggregate }) => ovenDryDensity({ cement, aggregate, volume: 1 }),
  }),
  'mix/dundee-water': answer({
    asks: 'Water in a cubic metre by the Dundee rule',
    input: { density: 'density', cement: 'density' },
    gives: 'density',
    beside: true,
    work: (mix) => dundeeRule(mix).water,
  }),
  'mix/dundee-fine': answer({
    asks: 'Fine aggregate in a cubic metre by the Dundee rule',
    input: { density: 'density', cement: 'density' },
    gives: 'density',
    beside: true,
    work: (mix) => dundeeRule(mix).fine,
  }),
  'mix/foam-mass-difference': answer({
    asks: 'How far two readings of one mix lie apart, foam mass counted and ignored',
    input: { wetDensity: 'density', waterCement: 'ratio', foamDensity: 'density' },
    gives: 'density',
    work: ({ wetDensity: target, waterCement, foamDensity }) => {
      const p = proportion({
        volume: 1,
        target: { wetDensity: target },
        waterCement,
        foamDensity,
        convention: 'foam-ignored',
      });
      return p.wetDensity - p.wetDensityFoamIgnored;
    },
  }),
  'mix/unit-weight': answer({
    asks: 'Density from weighing a measure',
    input: { tare: 'mass', full: 'mass', vessel: 'volume' },
    gives: 'density',
    work: wetDensity,
  }),
  'mix/yield': answer({
    asks: 'Volume a batch makes at the density it weighs',
    input: { mass: 'mass', density: 'density' },
    gives: 'volume',
    beside: true,
    work: yieldVolume,
  }),
  'mix/air-content': answer({
    asks: 'Air content from the density with no air and the density weighed',
    input: { airFreeDensity: 'density', density: 'density' },
    gives: 'ratio',
    beside: true,
    work: airContent,
  }),
};
