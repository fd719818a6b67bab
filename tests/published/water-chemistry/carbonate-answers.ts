import { STANDARD_ATMOSPHERE } from '../../../src/core/quantity/constants.ts';
import { blendWaters } from '../../../src/core/water/blend.ts';
import { equilibrateWithCalcite } from '../../../src/core/water/carbonate/equilibrate.ts';
import { type Mineral, saturationIndex } from '../../../src/core/water/carbonate/saturation.ts';
import { speciate, speciateWater } from '../../../src/core/water/carbonate/speciate.ts';
import type { Speciation } from '../../../src/core/water/carbonate/speciation.ts';
import { boil } from '../../../src/core/water/soften/boil.ts';
import { softenWithSoda } from '../../../src/core/water/soften/washing-soda.ts';
import { type Answers, answer } from '../answer.ts';

/** One figure of a water, by the name a row gives it. Amounts in mmol (meq) per kg of water. */
function figure(water: Speciation & { precipitated?: number }, of: string): number {
  if (of.startsWith('si ')) return saturationIndex(water, of.slice(3) as Mineral);
  if (of.startsWith('m ')) return water.molality[of.slice(2) as keyof Speciation['molality']] * 1e3;
  switch (of) {
    case 'pH':
      return water.pH;
    case 'log pCO2':
      return Math.log10(water.carbonDioxidePressure / STANDARD_ATMOSPHERE);
    case 'water activity':
      return water.waterActivity;
    case 'hardness':
      return (water.calcium + water.magnesium) * 1e3;
    case 'ionicStrength':
    case 'carbon':
    case 'alkalinity':
    case 'calcium':
    case 'magnesium':
    case 'precipitated': {
      const value = water[of];
      if (value === undefined) throw new Error(`no ${of}`);
      return value * 1e3;
    }
    default:
      throw new Error(`no figure '${of}'`);
  }
}

interface Given {
  readonly celsius: number;
  readonly pH: number;
  readonly alkalinity: number;
  readonly calcium: number;
  readonly magnesium: number;
  readonly sodium: number;
  readonly sulfate: number;
  readonly chloride: number;
}

const WATER = {
  celsius: 'number',
  pH: 'number',
  alkalinity: 'number',
  calcium: 'number',
  magnesium: 'number',
  sodium: 'number',
  sulfate: 'number',
  chloride: 'number',
} as const;

const known = (w: Given) =>
  speciate(
    {
      temperature: 273.15 + w.celsius,
      calcium: w.calcium / 1e3,
      magnesium: w.magnesium / 1e3,
      sodium: w.sodium / 1e3,
      sulfate: w.sulfate / 1e3,
      chloride: w.chloride / 1e3,
    },
    { pH: w.pH, alkalinity: w.alkalinity / 1e3 },
  );

const atmospheres = (log: number) => STANDARD_ATMOSPHERE * 10 ** log;

/** A row's list `[°C, pH, alkalinity, Ca, Mg, Na, SO₄, Cl]`. */
const listed = (list: readonly number[]) => {
  const [celsius, pH, alkalinity, calcium, magnesium, sodium, sulfate, chloride] = list as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return known({ celsius, pH, alkalinity, calcium, magnesium, sodium, sulfate, chloride });
};

export const carbonateAnswers: Answers = {
  'carbonate/speciate': answer({
    asks: 'What is in a water of this pH and alkalinity (°C; mmol and meq per kg of water)?',
    input: { ...WATER, of: 'text' },
    gives: 'number',
    work: (w) => figure(known(w), w.of),
  }),
  'carbonate/calcite-closed': answer({
    asks: 'What does it become beside calcite, closed to the air?',
    input: { ...WATER, of: 'text' },
    gives: 'number',
    work: (w) => figure(equilibrateWithCalcite(known(w), { calcite: Infinity }), w.of),
  }),
  'carbonate/calcite-open': answer({
    asks: 'What does pure water become beside calcite, open to CO₂ (log₁₀ of atmospheres)?',
    input: { celsius: 'number', logPressure: 'number', of: 'text' },
    gives: 'number',
    work: ({ celsius, logPressure, of }) =>
      figure(
        equilibrateWithCalcite(
          { temperature: 273.15 + celsius, alkalinity: 0, carbon: 0 },
          { calcite: Infinity, carbonDioxidePressure: atmospheres(logPressure) },
        ),
        of,
      ),
  }),
  'carbonate/open': answer({
    asks: 'What does a water of this alkalinity (meq/kg) become, open to CO₂ (log₁₀ of atmospheres)?',
    input: { celsius: 'number', alkalinity: 'number', logPressure: 'number', of: 'text' },
    gives: 'number',
    work: ({ celsius, alkalinity, logPressure, of }) =>
      figure(
        speciate(
          { temperature: 273.15 + celsius },
          { alkalinity: alkalinity / 1e3, carbonDioxidePressure: atmospheres(logPressure) },
        ),
        of,
      ),
  }),
  'carbonate/calcium-sulfate': answer({
    asks: 'What is in pure water with this much CaSO₄ (°C; mmol/kg)?',
    input: { celsius: 'number', calcium: 'number', of: 'text' },
    gives: 'number',
    work: ({ celsius, calcium, of }) =>
      figure(
        speciateWater({
          temperature: 273.15 + celsius,
          calcium: calcium / 1e3,
          sulfate: calcium / 1e3,
          alkalinity: 0,
          carbon: 0,
        }),
        of,
      ),
  }),
  'soften/soda': answer({
    asks: 'What does washing soda (mmol/kg of Na₂CO₃) make of it?',
    input: { ...WATER, soda: 'number', of: 'text' },
    gives: 'number',
    work: (w) => figure(softenWithSoda({ water: known(w), soda: w.soda / 1e3 }).water, w.of),
  }),
  'soften/boil': answer({
    asks: 'What is left once CO₂ is driven off and the scale settled?',
    input: { ...WATER, logPressure: 'number', of: 'text' },
    gives: 'number',
    work: (w) =>
      figure(
        boil({ water: known(w), carbonDioxidePressure: atmospheres(w.logPressure) }).water,
        w.of,
      ),
  }),
  'blend/carbonate': answer({
    asks: 'What do two waters make, blended by mass? Each as [°C, pH, alkalinity, Ca, Mg, Na, SO₄, Cl]',
    input: { a: 'numbers', b: 'numbers', fractionA: 'number', celsius: 'number', of: 'text' },
    gives: 'number',
    work: ({ a, b, fractionA, celsius, of }) =>
      figure(
        blendWaters(
          [
            { mass: fractionA, water: listed(a) },
            { mass: 1 - fractionA, water: listed(b) },
          ],
          273.15 + celsius,
        ),
        of,
      ),
  }),
};
