import { demand } from '../domain-error.ts';
import { interpolate } from '../interpolate.ts';
import { ICE_POINT, MOLAR_MASS_CALCIUM_CARBONATE } from '../quantity/constants.ts';

/**
 * Langelier's saturation index by the field formula.
 *
 * pH_s = (9.3 + A + B) − (C + D); A = (log TDS − 1)/10; B = −13.12 log(t + 273) + 34.55; C =
 * log(calcium hardness) − 0.4; D = log(alkalinity), t in °C, the rest in mg/L, hardness and
 * alkalinity as CaCO₃. Here `temperature` in K, `dissolved` (TDS) in kg/m³, `calcium` in mol/m³,
 * `alkalinity` in eq/m³. For a mains water it is within 0.3 of the full calculation
 * (`saturationPH`); no range is published.
 *
 * @throws {DomainError} for a pH outside 0–14, a temperature outside 0–100 °C, or anything else not
 * positive; the alkalinity is refused as mol/m³ of CaCO₃, half its eq/m³.
 * @source lsi-field-formula
 */
export function langelierField(water: {
  readonly pH: number;
  readonly temperature: number;
  readonly dissolved: number;
  readonly calcium: number;
  readonly alkalinity: number;
}): { readonly index: number; readonly saturationPH: number } {
  const above = { min: 0, aboveMin: true };
  demand('pH', water.pH, 'count', { min: 0, max: 14 });
  demand('temperature', water.temperature, 'temperature', {
    min: ICE_POINT,
    max: ICE_POINT + 100,
  });
  demand('dissolved', water.dissolved, 'concentration', above);
  demand('calcium', water.calcium, 'hardness', above);
  // As the equivalent calcium carbonate, which is how it is read and written.
  demand('alkalinity', water.alkalinity / 2, 'hardness', above);
  const a = (Math.log10(water.dissolved * 1000) - 1) / 10;
  const b = -13.12 * Math.log10(water.temperature - 0.15) + 34.55;
  const c = Math.log10(water.calcium * MOLAR_MASS_CALCIUM_CARBONATE) - 0.4;
  const d = Math.log10((water.alkalinity * MOLAR_MASS_CALCIUM_CARBONATE) / 2);
  const saturation = 9.3 + a + b - (c + d);
  return { index: water.pH - saturation, saturationPH: saturation };
}

/**
 * A pool tester's factors: °F, and mg/L as CaCO₃ with the factor beside it. The calcium and
 * alkalinity columns are read, the temperatures that go with 0.1 to 0.9 are from memory.
 * @source lsi-factor-table
 */
const LANGELIER_FACTORS = {
  temperature: {
    at: [32, 37, 46, 53, 60, 66, 76, 84, 94, 105, 128],
    factor: [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
  },
  strength: { at: [5, 25, 50, 75, 100, 150, 200, 300, 400, 800, 1000] },
  calcium: { factor: [0.3, 1.0, 1.3, 1.5, 1.6, 1.8, 1.9, 2.1, 2.2, 2.5, 2.6] },
  alkalinity: { factor: [0.7, 1.4, 1.7, 1.9, 2.0, 2.2, 2.3, 2.5, 2.6, 2.9, 3.0] },
} as const;

/**
 * The index by those factors: pH + TF + CF + AF − 12.1, interpolated. Dissolved solids of about 1
 * g/L are built into the 12.1 (from memory). Same arguments as `langelierField`. Range: the table,
 * 0–53.3 °C and 5–1,000 mg/L as CaCO₃.
 *
 * @throws {DomainError} outside the table: 0–53.3 °C, 5–1,000 mg/L as CaCO₃ of either.
 * @source lsi-factor-table
 */
export function langelierByFactors(water: {
  readonly pH: number;
  readonly temperature: number;
  readonly calcium: number;
  readonly alkalinity: number;
}): number {
  const { temperature, strength, calcium, alkalinity } = LANGELIER_FACTORS;
  const kelvin = temperature.at.map((f) => (f + 459.67) / 1.8);
  const molar = strength.at.map((mg) => mg / MOLAR_MASS_CALCIUM_CARBONATE);
  const range = { min: molar[0]!, max: molar.at(-1)! };
  // As the calcium carbonate it stands for: half a mole to the equivalent.
  const alkaline = water.alkalinity / 2;
  demand('temperature', water.temperature, 'temperature', { min: kelvin[0]!, max: kelvin.at(-1)! });
  demand('calcium', water.calcium, 'hardness', range);
  demand('alkalinity', alkaline, 'hardness', range);
  return (
    water.pH +
    interpolate(kelvin, temperature.factor, water.temperature) +
    interpolate(molar, calcium.factor, water.calcium) +
    interpolate(molar, alkalinity.factor, alkaline) -
    12.1
  );
}
