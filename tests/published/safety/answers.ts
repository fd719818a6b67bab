import {
  BLOW_OFF_PRESSURE,
  CHROMIUM_VI_LIMIT,
  EXPOSURE_LIMITS,
  EYE_RINSE,
  REDUCER_KEEPS,
} from '../../../src/core/safety/exposure.ts';
import {
  FISH_HARM_PH,
  FRESH_WATER_LIFE,
  limeSaturatedPH,
  neutralise,
  pKwAt,
  STORMWATER_TARGET,
  WASH_WATER_PH,
} from '../../../src/core/safety/washout.ts';
import * as MOLAR_MASS from '../../../src/core/water/molar-masses.ts';
import { answer } from '../answer.ts';

const masses = { ...MOLAR_MASS };
const MONTH = 30 * 86400;
const PH_MARKS = {
  washout: [WASH_WATER_PH],
  'fresh-water-life': FRESH_WATER_LIFE,
  'fish-harm': [FISH_HARM_PH],
  'stormwater-target': STORMWATER_TARGET,
};
const limit = (row: string) => EXPOSURE_LIMITS.find(({ id }) => id === row)!;

function amount(
  washout: { volume: number; pH: number; limeReserve: number },
  agent: string,
): number {
  const { carbonDioxide, citricAcid } = neutralise(washout);
  if (agent === 'co2') return carbonDioxide;
  return agent === 'citric-monohydrate' ? citricAcid.monohydrate : citricAcid.anhydrous;
}

export const answers = {
  'safety/per-lime': answer({
    asks: 'Acid or carbon dioxide that neutralises slaked lime, mass per mass',
    input: { agent: 'text' },
    gives: 'number',
    work: ({ agent }) => {
      // At pH 7 the water itself brings 10⁻⁷ mol/L: too little to show beside 1 kg of lime.
      return amount({ volume: 1e-3, pH: 7, limeReserve: 1 }, agent);
    },
  }),
  'safety/per-volume': answer({
    asks: 'Acid or carbon dioxide that neutralises the dissolved hydroxide of wash water',
    input: { pH: 'number', agent: 'text' },
    gives: 'concentration',
    work: ({ pH, agent }) => amount({ volume: 1, pH, limeReserve: 0 }, agent),
  }),
  'safety/limit': answer({
    asks: 'Limit in air, mg/m³',
    input: { row: 'text' },
    gives: 'number',
    work: ({ row }) => limit(row).value * 1e6,
  }),
  'safety/fibre-limit': answer({
    asks: 'Limit in air, fibres/cm³',
    input: { row: 'text' },
    gives: 'number',
    work: ({ row }) => limit(row).value / 1e6,
  }),
  'safety/chromium': answer({
    asks: 'Soluble chromium(VI) allowed in cement, mg/kg',
    input: {},
    gives: 'number',
    work: () => CHROMIUM_VI_LIMIT * 1e6,
  }),
  'safety/eye-rinse': answer({
    asks: 'How long at least to rinse eyes',
    input: {},
    gives: 'time',
    work: () => EYE_RINSE,
  }),
  'safety/blow-off': answer({
    asks: 'Pressure below which air may be used for blowing off',
    input: {},
    gives: 'pressure',
    work: () => BLOW_OFF_PRESSURE,
  }),
  'safety/reducer': answer({
    asks: 'How long a chromate reducer keeps, months',
    input: { state: 'text' },
    gives: 'number',
    work: ({ state }) => REDUCER_KEEPS[state as keyof typeof REDUCER_KEEPS] / MONTH,
  }),
  'safety/ph-mark': answer({
    asks: 'pH that a public body names: one mark, or the ends of a range',
    input: { row: 'text' },
    gives: 'numbers',
    work: ({ row }) => PH_MARKS[row as keyof typeof PH_MARKS],
  }),
  'safety/lime-water-ph': answer({
    asks: 'pH of water saturated with lime',
    input: { temperature: 'temperature' },
    gives: 'number',
    work: ({ temperature }) => limeSaturatedPH(pKwAt(temperature)),
  }),
  'safety/molar-mass': answer({
    asks: 'Molar mass of what neutralises, g/mol',
    input: { of: 'text' },
    gives: 'number',
    work: ({ of }) => masses[of as keyof typeof masses] * 1000,
  }),
};
