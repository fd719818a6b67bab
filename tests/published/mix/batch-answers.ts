import { fromBags } from '../../../src/core/mix/bags.ts';
import { checkBase } from '../../../src/core/mix/base-check.ts';
import { designBatch } from '../../../src/core/mix/batch-design.ts';
import { binderDensity } from '../../../src/core/mix/binder.ts';
import {
  ALKALI_RESISTANT_ZIRCONIA,
  FIBRES,
  type FibreKind,
  fibreMass,
} from '../../../src/core/mix/fibres.ts';
import { dampAggregate, freeWater } from '../../../src/core/mix/moisture.ts';
import { PIGMENT_USUAL, pigmentMass } from '../../../src/core/mix/pigment.ts';
import { pooled } from '../../../src/core/mix/several-buckets.ts';
import { type Answers, answer } from '../answer.ts';

const portland = [{ kind: 'portland', share: 1 }] as const;

export const batchAnswers: Answers = {
  'mix/free-water': answer({
    asks: 'Water on an aggregate of this free moisture',
    input: { surfaceDry: 'mass', free: 'ratio' },
    gives: 'mass',
    work: freeWater,
  }),
  'mix/water-to-add': answer({
    asks: 'Water still to add when both aggregates bring some',
    input: {
      wanted: 'volume',
      coarse: 'mass',
      coarseFree: 'ratio',
      fine: 'mass',
      fineFree: 'ratio',
      gallon: 'mass',
    },
    gives: 'volume',
    work: ({ wanted, coarse, coarseFree, fine, fineFree, gallon }) => {
      const brought =
        freeWater({ surfaceDry: coarse, free: coarseFree }) +
        freeWater({ surfaceDry: fine, free: fineFree });
      return wanted - (brought / gallon) * 3.785411784e-3;
    },
  }),
  'mix/damp-sand': answer({
    asks: 'Damp sand to weigh for this much surface-dry',
    input: { surfaceDry: 'mass', moisture: 'ratio', absorption: 'ratio' },
    gives: 'mass',
    work: (sand) => dampAggregate(sand).toWeigh,
  }),
  'mix/fibre-mass': answer({
    asks: 'Fibre in a cubic metre at this dose by volume',
    input: { share: 'ratio', density: 'density' },
    gives: 'mass',
    work: ({ share, density }) =>
      fibreMass({ kind: 'polypropylene', share, density, volume: 1 }).mass,
  }),
  'mix/fibre-density': answer({
    asks: 'Density taken for a kind of fibre',
    input: { kind: 'text' },
    gives: 'density',
    work: ({ kind }) => FIBRES[kind as FibreKind].density,
  }),
  'mix/fibre-tried': answer({
    asks: 'Highest dose of a kind of fibre read of in a trial, by volume',
    input: { kind: 'text' },
    gives: 'ratio',
    work: ({ kind }) => {
      const { tried, triedInOrdinary } = FIBRES[kind as FibreKind];
      return tried ?? triedInOrdinary ?? Number.NaN;
    },
  }),
  'mix/zirconia': answer({
    asks: 'Least zirconia in alkali-resistant glass, by mass',
    input: {},
    gives: 'ratio',
    work: () => ALKALI_RESISTANT_ZIRCONIA,
  }),
  'mix/pigment-most': answer({
    asks: 'Most pigment that may be prescribed for this binder',
    input: { cement: 'mass', slag: 'mass' },
    gives: 'mass',
    work: ({ cement, slag }) => pigmentMass({ cementitious: cement + slag, share: 0.03 }).most,
  }),
  'mix/pigment-usual': answer({
    asks: 'Usual doses of pigment, from and to',
    input: {},
    gives: 'numbers',
    work: () => [PIGMENT_USUAL.min, PIGMENT_USUAL.max],
  }),
  'mix/binder-density': answer({
    asks: 'Particle density of a binder of portland cement and slag, by their shares of its mass',
    input: { portland: 'ratio', slag: 'ratio' },
    gives: 'density',
    work: ({ portland: share, slag }) =>
      binderDensity([
        { kind: 'portland', share },
        { kind: 'slag', share: slag },
      ]),
  }),
  'mix/base-check': answer({
    asks: 'Water-cement ratio of a base mix, from its mass and volume',
    input: {
      cement: 'mass',
      water: 'mass',
      cementVolume: 'volume',
      waterVolume: 'volume',
      waterDensity: 'density',
      cementGravity: 'number',
    },
    gives: 'ratio',
    work: ({ cement, water, cementVolume, waterVolume, waterDensity, cementGravity }) =>
      checkBase({
        measuredDensity: (cement + water) / (cementVolume + waterVolume),
        recipe: { waterCement: 0.5, waterDensity, cementDensity: cementGravity * waterDensity },
        cement,
      }).waterCement,
  }),
  'mix/design-oven-dry': answer({
    asks: 'Oven-dry density by the whole-batch design; w/c with the foam’s liquid counted',
    input: { wetDensity: 'density', waterCementTotal: 'ratio', foamDensity: 'density' },
    gives: 'density',
    work: ({ wetDensity, waterCementTotal, foamDensity }) =>
      designBatch({
        volume: 1,
        target: { wetDensity },
        binder: portland,
        waterCement: waterCementTotal,
        waterCementOf: 'total',
        foamDensity,
      }).ovenDryDensity,
  }),
  'mix/two-equations': answer({
    asks: 'Binder in a cubic metre, part of it fly ash, foam mass counted',
    input: { wetDensity: 'density', waterBinder: 'ratio', ash: 'ratio', foamDensity: 'density' },
    gives: 'density',
    work: ({ wetDensity, waterBinder, ash, foamDensity }) =>
      designBatch({
        volume: 1,
        target: { wetDensity },
        binder: [
          { kind: 'portland', share: 1 - ash },
          { kind: 'fly-ash', share: ash },
        ],
        waterCement: waterBinder,
        foamDensity,
      }).cementitious,
  }),
  'mix/one-bag': answer({
    asks: 'Wet density that one bag in this form comes to',
    input: { bag: 'mass', volume: 'volume', waterCement: 'ratio', foamDensity: 'density' },
    gives: 'density',
    work: ({ bag, volume, waterCement, foamDensity }) =>
      fromBags({ volume, binder: portland, waterCement, foamDensity }, { bags: 1, bag }).wetDensity,
  }),
  'mix/pooled': answer({
    asks: 'Density of buckets of one mass together, in kg/m³',
    input: { densities: 'numbers' },
    gives: 'density',
    work: ({ densities }) => pooled(densities.map((density) => ({ mass: 10, density }))).density,
  }),
};
