import { STANDARD_ATMOSPHERE } from '../../core/quantity/constants.ts';
import type { Pair } from '../../core/water/carbonate/speciate.ts';
import type { Speciation, SpeciesName } from '../../core/water/carbonate/speciation.ts';
import { choice, number } from '../../islands/fields.ts';
import { hardnessParts } from './hardness-parts.ts';
import {
  dissolved,
  otherIons,
  others,
  readAlkalinity,
  readPH,
  waterTemperature,
} from './water-fields.ts';

export const PPM = { metric: 'ppm', us: 'ppm' } as const;

/** Names of the species the table lists, in its order. */
export const SPECIES = {
  carbonDioxide: 'CO₂, dissolved',
  bicarbonate: 'HCO₃⁻',
  carbonate: 'CO₃²⁻',
  calcium: 'Ca²⁺',
  calciumBicarbonate: 'CaHCO₃⁺',
  calciumCarbonate: 'CaCO₃, dissolved',
  calciumSulfate: 'CaSO₄, dissolved',
  calciumHydroxide: 'CaOH⁺',
  magnesium: 'Mg²⁺',
  magnesiumBicarbonate: 'MgHCO₃⁺',
  magnesiumCarbonate: 'MgCO₃, dissolved',
  magnesiumSulfate: 'MgSO₄, dissolved',
  magnesiumHydroxide: 'MgOH⁺',
  sodium: 'Na⁺',
  sodiumBicarbonate: 'NaHCO₃, dissolved',
  sodiumCarbonate: 'NaCO₃⁻',
  sodiumSulfate: 'NaSO₄⁻',
  sulfate: 'SO₄²⁻',
  bisulfate: 'HSO₄⁻',
  hydrogen: 'H⁺',
  hydroxide: 'OH⁻',
} as const satisfies Record<SpeciesName, string>;

export const balanceFields = {
  ...hardnessParts,
  pair: choice({
    label: 'What else do you know?',
    options: {
      'alkalinity-pH': 'Alkalinity and pH',
      'alkalinity-gas': 'Alkalinity and the air’s CO₂',
      'alkalinity-carbon': 'Alkalinity and total inorganic carbon',
      'carbon-pH': 'Total inorganic carbon and pH',
      'gas-pH': 'pH and the air’s CO₂',
      'carbon-gas': 'Total inorganic carbon and the air’s CO₂',
    },
    example: 'alkalinity-pH',
    bench: 'water.pair',
  }),
  alkalinity: {
    ...readAlkalinity,
    when: { pair: ['alkalinity-pH', 'alkalinity-gas', 'alkalinity-carbon'] },
  },
  pH: { ...readPH, when: { pair: ['alkalinity-pH', 'carbon-pH', 'gas-pH'] } },
  carbon: number('amountConcentration', {
    label: 'Total inorganic carbon',
    help: 'In mg/L of carbon: divide by 12.',
    example: '5.2 mmol/L',
    min: '0 mmol/L',
    max: '1000 mmol/L',
    bench: 'water.carbon',
    when: { pair: ['alkalinity-carbon', 'carbon-pH', 'carbon-gas'] },
  }),
  gas: number('ratio', {
    label: 'CO₂ in that air',
    help: 'Outdoors some 400\u00a0ppm.',
    example: '400 ppm',
    min: '1 ppm',
    max: '1000000 ppm',
    units: PPM,
    bench: 'water.gas',
    when: { pair: ['alkalinity-gas', 'gas-pH', 'carbon-gas'] },
  }),
  temperature: waterTemperature,
  others,
  ...otherIons,
  dissolved: { ...dissolved, help: 'Needed by the field formula only.', folded: true },
  activity: choice({
    label: 'Activities by',
    options: { 'extended-debye-hueckel': 'extended Debye–Hückel', davies: 'Davies' },
    example: 'extended-debye-hueckel',
    folded: true,
  }),
} as const;

interface Known {
  readonly pair: string;
  readonly alkalinity: number;
  readonly pH: number;
  readonly carbon: number;
  readonly gas: number;
}

/** What is to be read again of the pairs whose pH is worked out. */
export const READ_AGAIN: Readonly<Record<string, string>> = {
  'alkalinity-gas': 'the alkalinity and the CO₂',
  'alkalinity-carbon': 'the alkalinity and the carbon',
  'carbon-gas': 'the carbon and the CO₂',
};

/** The two things known, as the solver takes them: per kg of water, pressure in Pa. */
export function pairOf(v: Known, perVolume: number): Pair {
  const alkalinity = (2 * v.alkalinity) / perVolume;
  const carbon = v.carbon / perVolume;
  const carbonDioxidePressure = v.gas * STANDARD_ATMOSPHERE;
  switch (v.pair) {
    case 'alkalinity-gas':
      return { alkalinity, carbonDioxidePressure };
    case 'alkalinity-carbon':
      return { alkalinity, carbon };
    case 'carbon-pH':
      return { carbon, pH: v.pH };
    case 'gas-pH':
      return { pH: v.pH, carbonDioxidePressure };
    case 'carbon-gas':
      return { carbon, carbonDioxidePressure };
    default:
      return { alkalinity, pH: v.pH };
  }
}

/** The charges left over, as a share of all there are. */
export function imbalanceOf(water: Speciation): number {
  const { calcium, magnesium, sodium, otherCations, sulfate, chloride, otherAnions } = water;
  const all =
    2 * (calcium + magnesium + sulfate) +
    sodium +
    otherCations +
    chloride +
    otherAnions +
    Math.abs(water.alkalinity);
  return all > 0 ? water.chargeImbalance / all : 0;
}
