import {
  GRAIN,
  IMPERIAL_GALLON,
  MOLAR_MASS_CALCIUM_CARBONATE,
  MOLAR_MASS_CALCIUM_OXIDE,
  POUND,
  US_GALLON,
} from './constants.ts';
import type { Unit } from './kinds.ts';
import { unit } from './unit.ts';

/**
 * SI: kg/m³, the mass of what is dissolved in a volume of water.
 * @source si-brochure, nist-sp-811 (customary), common-practice (ppm)
 */
export const CONCENTRATION: readonly Unit[] = [
  unit('mg/L', 'mg/L', 1e-3, ['g/m3', 'mg/litre', 'mg/liter', 'mg L-1', 'mg/dm3']),
  unit('g/L', 'g/L', 1, ['g/litre', 'g/liter', 'g L-1', 'g/dm3', 'mg/mL']),
  unit('kg/m3', 'kg/m³', 1, ['kg m-3']),
  unit('ug/L', 'µg/L', 1e-6, ['mcg/L', 'ppb']),
  // Read as mg/L, as water reports use it; parts per million by mass only in water of 1 kg/L.
  unit('ppm', 'ppm', 1e-3),
  unit('lb/10^6 gal', 'lb/10⁶ gal', POUND / (1e6 * US_GALLON), [
    'lb/Mgal',
    'lb/MG',
    'lb/million gal',
    'lb/million gallons',
  ]),
  unit('oz/gal', 'oz/gal', POUND / 16 / US_GALLON, ['ounces/gallon', 'ounce/gallon', 'oz/gallon']),
  unit('gr/gal', 'gr/gal', GRAIN / US_GALLON, ['grains/gallon', 'grain/gal', 'grains/gal']),
];

const asCalciumCarbonate = 1 / MOLAR_MASS_CALCIUM_CARBONATE;
const asCalciumOxide = 1 / MOLAR_MASS_CALCIUM_OXIDE;

/**
 * SI: mol/m³ (mmol/L) of calcium and magnesium together.
 * @source si-brochure; hardness-definitions (degrees, and as CaCO₃ or CaO)
 * @source definition (meq/L)
 */
export const HARDNESS: readonly Unit[] = [
  unit('mg/L CaCO3', 'mg/L CaCO₃', asCalciumCarbonate, [
    'mg/L',
    'ppm',
    'ppm CaCO3',
    'mg CaCO3/L',
    '°aH',
    'mg/litre CaCO3',
    'mg/liter CaCO3',
  ]),
  unit('mmol/L', 'mmol/L', 1, ['mol/m3', 'mM', 'mmol/dm3', 'mmol/litre', 'mmol/liter']),
  // Calcium and magnesium carry two charges each.
  unit('meq/L', 'meq/L', 0.5, ['mval/L', 'mval', 'meq/litre', 'meq/liter']),
  unit('dH', '°dH', 10 * asCalciumOxide, ['dGH', '°dGH', '°d', '°German', 'Grad dH']),
  unit('fH', '°fH', 10 * asCalciumCarbonate, ['°French', '°TH']),
  unit('eH', '°e', (GRAIN / IMPERIAL_GALLON) * 1e3 * asCalciumCarbonate, [
    '°eH',
    '°Clark',
    'Clark',
    '°English',
    'gr/imp gal',
  ]),
  unit(
    'gpg',
    'gpg',
    (GRAIN / US_GALLON) * 1e3 * asCalciumCarbonate,
    // After a mass `gr` would be a gram to some readers, so there it is not read.
    ['gr/gal', 'gr', 'grains', 'grains/gallon', 'grains/gal', 'grain/gal', 'gr/US gal'],
  ),
  unit('mg/L CaO', 'mg/L CaO', asCalciumOxide, ['mg CaO/L', 'ppm CaO']),
];

/** SI: mol/m³. @source si-brochure */
export const AMOUNT_CONCENTRATION: readonly Unit[] = [
  unit('mmol/L', 'mmol/L', 1, ['mM', 'mmol/dm3', 'mmol/litre', 'mmol/liter']),
  unit('mol/m3', 'mol/m³', 1, ['mol m-3']),
  unit('mol/L', 'mol/L', 1e3, ['M', 'mol/dm3', 'mol/litre', 'mol/liter']),
];

/** SI: J/mol. @source si-brochure */
export const MOLAR_ENERGY: readonly Unit[] = [
  unit('kJ/mol', 'kJ/mol', 1e3),
  unit('J/mol', 'J/mol', 1),
];

/** SI: N/m. @source si-brochure */
export const SURFACE_TENSION: readonly Unit[] = [unit('mN/m', 'mN/m', 1e-3), unit('N/m', 'N/m', 1)];
