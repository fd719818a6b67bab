import {
  waterDensity,
  waterDensityKell1975,
  waterDensityTanaka2001,
} from '../../../src/core/water/density.ts';
import {
  hardnessFromIons,
  hardnessFromTitration,
  hardnessParts,
  titreFromStandard,
} from '../../../src/core/water/hardness.ts';
import { usgsClass } from '../../../src/core/water/hardness-class.ts';
import * as MOLAR_MASS from '../../../src/core/water/molar-masses.ts';
import { type Answers, answer } from '../answer.ts';

export const answers: Answers = {
  'water/hardness-from-ions': answer({
    asks: 'Total hardness of a water with this much calcium and magnesium',
    input: { calcium: 'concentration', magnesium: 'concentration' },
    gives: 'hardness',
    work: ({ calcium = 0, magnesium = 0 }) => hardnessFromIons({ calcium, magnesium }).total,
  }),
  'water/hardness-from-molarity': answer({
    asks: 'Total hardness of a water with these moles of calcium and magnesium',
    input: { calcium: 'amountConcentration', magnesium: 'amountConcentration' },
    gives: 'hardness',
    work: ({ calcium, magnesium }) =>
      hardnessFromIons({
        calcium: calcium * MOLAR_MASS.calcium,
        magnesium: magnesium * MOLAR_MASS.magnesium,
      }).total,
  }),
  'water/carbonate-hardness': answer({
    asks: 'The part of the hardness that the alkalinity balances',
    input: { total: 'hardness', alkalinity: 'hardness' },
    gives: 'hardness',
    // Alkalinity printed as calcium carbonate: two equivalents to the mole.
    work: ({ total, alkalinity }) => hardnessParts({ total, alkalinity: 2 * alkalinity }).carbonate,
  }),
  'water/non-carbonate-hardness': answer({
    asks: 'The part of the hardness that boiling leaves',
    input: { total: 'hardness', alkalinity: 'hardness' },
    gives: 'hardness',
    work: ({ total, alkalinity }) =>
      hardnessParts({ total, alkalinity: 2 * alkalinity }).nonCarbonate,
  }),
  'water/hardness-from-titration': answer({
    asks: 'Total hardness from a titration with EDTA of known strength',
    input: { titrant: 'volume', titre: 'amountConcentration', sample: 'volume' },
    gives: 'hardness',
    work: hardnessFromTitration,
  }),
  'water/hardness-from-standard': answer({
    asks: 'Hardness from a titration, the EDTA set against a standard water',
    input: {
      standard: 'hardness',
      standardSample: 'volume',
      standardTitrant: 'volume',
      sample: 'volume',
      titrant: 'volume',
    },
    gives: 'hardness',
    beside: true,
    work: ({ standard, standardSample, standardTitrant, sample, titrant }) => {
      const run = { standard, sample: standardSample, titrant: standardTitrant };
      return hardnessFromTitration({ titre: titreFromStandard(run), sample, titrant });
    },
  }),
  'water/temporary-hardness': answer({
    asks: 'Hardness that boiling removes: one titration before, one after',
    input: {
      standard: 'hardness',
      standardSample: 'volume',
      standardTitrant: 'volume',
      sample: 'volume',
      titrant: 'volume',
      boiledTitrant: 'volume',
    },
    gives: 'hardness',
    beside: true,
    work: ({ standard, standardSample, standardTitrant, sample, titrant, boiledTitrant }) => {
      const titre = titreFromStandard({
        standard,
        sample: standardSample,
        titrant: standardTitrant,
      });
      // What boiling took away is what the boiled sample no longer needs: a blank by another name.
      return hardnessFromTitration({ titre, sample, titrant, blank: boiledTitrant });
    },
  }),
  'water/usgs-class': answer({
    asks: 'The class of a water of this total hardness',
    input: { total: 'hardness' },
    gives: 'text',
    work: ({ total }) => usgsClass(total),
  }),
  'water/density-tanaka': answer({
    asks: 'Density of pure water, Tanaka 2001',
    input: { temperature: 'temperature' },
    gives: 'density',
    work: ({ temperature }) => waterDensityTanaka2001(temperature),
  }),
  'water/density-kell': answer({
    asks: 'Density of pure water, Kell 1975',
    input: { temperature: 'temperature' },
    gives: 'density',
    work: ({ temperature }) => waterDensityKell1975(temperature),
  }),
  'water/density': answer({
    asks: 'Density of water as this handbook takes it',
    input: { temperature: 'temperature' },
    gives: 'density',
    work: ({ temperature }) => waterDensity(temperature),
  }),
};
