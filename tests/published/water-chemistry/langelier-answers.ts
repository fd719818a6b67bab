import { STANDARD_ATMOSPHERE } from '../../../src/core/quantity/constants.ts';
import { alkalinityFromIons } from '../../../src/core/water/alkalinity.ts';
import { blendWaters } from '../../../src/core/water/blend.ts';
import { equilibrateWithCalcite } from '../../../src/core/water/carbonate/equilibrate.ts';
import {
  solutesFromReport,
  waterPerVolume,
} from '../../../src/core/water/carbonate/from-report.ts';
import { precipitationPotential } from '../../../src/core/water/carbonate/langelier.ts';
import { type Mineral, saturationIndex } from '../../../src/core/water/carbonate/saturation.ts';
import { speciate } from '../../../src/core/water/carbonate/speciate.ts';
import type { Speciation } from '../../../src/core/water/carbonate/speciation.ts';
import { langelierByFactors, langelierField } from '../../../src/core/water/langelier-field.ts';
import { type Answers, answer } from '../answer.ts';

/** Sea water by mass: ions in mg per kg of solution, made up to a kg of water. */
function seaWater(): Speciation {
  const ppm = {
    calcium: 412.3,
    magnesium: 1291.8,
    sodium: 10768,
    potassium: 399.1,
    chloride: 19353,
    sulfate: 2712,
    bicarbonate: 141.682,
    silicon: 4.28,
  };
  const water = 1 - Object.values(ppm).reduce((a, b) => a + b) / 1e6;
  const { bicarbonate, silicon: _, ...ions } = ppm;
  const report = Object.fromEntries(Object.entries(ions).map(([name, mg]) => [name, mg / 1e3]));
  return speciate(solutesFromReport({ ...report, temperature: 298.15 }, 1000 * water), {
    pH: 8.22,
    alkalinity: bicarbonate / 1e6 / 0.061016 / water,
  });
}

function figure(water: Speciation, of: string): number {
  if (of === 'water activity') return water.waterActivity;
  if (of === 'ionic strength') return water.ionicStrength;
  if (of === 'pH') return water.pH;
  if (of === 'calcium') return water.calcium;
  if (of === 'carbon') return water.carbon;
  if (of === 'log pCO2') return Math.log10(water.carbonDioxidePressure / STANDARD_ATMOSPHERE);
  return saturationIndex(water, of as Mineral);
}

export const langelierAnswers: Answers = {
  'carbonate/sea-water': answer({
    asks: 'What is in sea water of the usual make-up at 25 °C and pH 8.22?',
    input: { of: 'text' },
    gives: 'number',
    work: ({ of }) => figure(seaWater(), of),
  }),
  'carbonate/sea-water-blend': answer({
    asks: 'What does ground water at rest with calcite and 0.01 atm of CO₂ make with 30 % sea water?',
    input: { of: 'text' },
    gives: 'number',
    work: ({ of }) => {
      const ground = equilibrateWithCalcite(
        { temperature: 298.15, alkalinity: 0, carbon: 0 },
        { calcite: Infinity, carbonDioxidePressure: STANDARD_ATMOSPHERE / 100 },
      );
      const blend = blendWaters([
        { mass: 0.7, water: ground },
        { mass: 0.3, water: seaWater() },
      ]);
      return figure(blend, of);
    },
  }),
  'langelier/field': answer({
    asks: 'What is Langelier’s index by the field formula?',
    input: {
      pH: 'number',
      temperature: 'temperature',
      dissolved: 'concentration',
      calcium: 'hardness',
      alkalinity: 'hardness',
    },
    gives: 'number',
    work: (water) => langelierField({ ...water, alkalinity: 2 * water.alkalinity }).index,
  }),
  'langelier/factors': answer({
    asks: 'What is Langelier’s index by a pool tester’s factors?',
    input: {
      pH: 'number',
      temperature: 'temperature',
      calcium: 'hardness',
      alkalinity: 'hardness',
    },
    gives: 'number',
    beside: true,
    work: (water) => langelierByFactors({ ...water, alkalinity: 2 * water.alkalinity }),
  }),
  'langelier/precipitation-potential': answer({
    asks: 'How much calcium carbonate would this water throw down (negative: dissolve), as mg/L?',
    input: {
      pH: 'number',
      temperature: 'temperature',
      calcium: 'concentration',
      alkalinity: 'hardness',
    },
    gives: 'number',
    work: ({ pH, temperature, calcium, alkalinity }) => {
      const perVolume = waterPerVolume({ temperature });
      const water = speciate(solutesFromReport({ temperature, calcium }), {
        pH,
        alkalinity: (2 * alkalinity) / perVolume,
      });
      return precipitationPotential(water) * perVolume * 100.0869;
    },
  }),
  'alkalinity/from-ions': answer({
    asks: 'What alkalinity do these ions make (with a pH: H⁺ and OH⁻ counted)?',
    input: { bicarbonate: 'concentration', carbonate: 'concentration', pH: 'number' },
    gives: 'hardness',
    beside: true,
    work: (ions) => alkalinityFromIons(ions) / 2,
  }),
};
