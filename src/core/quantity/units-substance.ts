import {
  FOOT,
  HOUR,
  IMPERIAL_GALLON,
  POUND,
  POUND_PER_CUBIC_FOOT,
  US_GALLON,
  YARD,
} from './constants.ts';
import type { Unit } from './kinds.ts';
import { unit } from './unit.ts';

/** SI: kg. @source si-brochure, nist-sp-811 (customary) */
export const MASS: readonly Unit[] = [
  unit('kg', 'kg', 1, ['kgs', 'kilo', 'kilogram', 'kilogramme']),
  unit('g', 'g', 1e-3, ['gram', 'gramme', 'gm', 'gms']),
  unit('mg', 'mg', 1e-6, ['milligram']),
  unit('t', 't', 1e3, ['Mg', 'tonne', 'metric ton']),
  unit('lb', 'lb', POUND, ['lbs', 'lbm', 'pound', '#']),
  unit('oz', 'oz', POUND / 16, ['ozs', 'ounce', 'oz av']),
];

/** SI: kg/m³. @source si-brochure, nist-sp-811 (customary) */
export const DENSITY: readonly Unit[] = [
  unit('kg/m3', 'kg/m³', 1, ['kg m-3', 'kg/cu m', 'kgm-3', 'kg/cum', 'kilograms/cubic metre']),
  unit('g/L', 'g/L', 1, ['g L-1', 'g/litre', 'g/liter', 'grams/litre', 'grams/liter']),
  unit('kg/L', 'kg/L', 1e3, ['kg/litre', 'kg/liter', 'kg L-1', 't/m3', 'kg/dm3']),
  unit('g/cm3', 'g/cm³', 1e3, ['g/cc', 'g/mL', 'g cm-3', 'g/ccm']),
  unit('lb/ft3', 'lb/ft³', POUND_PER_CUBIC_FOOT, [
    'pcf',
    'lb/cu ft',
    'lbs/ft3',
    'lbs/cu ft',
    'lb/cf',
    'pounds/cubic foot',
    'lbs/cubic foot',
  ]),
  unit('lb/yd3', 'lb/yd³', POUND / YARD ** 3, ['pcy', 'lb/cu yd', 'lbs/yd3', 'lbs/cu yd', 'lb/cy']),
  unit('lb/gal', 'lb/gal', POUND / US_GALLON, ['lb/US gal', 'lbs/gal', 'ppg', 'pounds/gallon']),
  unit('oz/gal', 'oz/gal', POUND / 16 / US_GALLON, ['oz/US gal', 'ounces/gallon']),
];

/** SI: m³/s. @source si-brochure, nist-sp-811 (customary) */
export const FLOW: readonly Unit[] = [
  unit('m3/s', 'm³/s', 1, ['cumec', 'cu m/s', 'm3/sec']),
  unit('L/s', 'L/s', 1e-3, ['L/sec', 'lps', 'litres/second']),
  unit('L/min', 'L/min', 1e-3 / 60, ['lpm', 'litres/minute', 'liters/minute']),
  unit('mL/min', 'mL/min', 1e-6 / 60, ['cc/min', 'cm3/min']),
  unit('m3/h', 'm³/h', 1 / HOUR, ['m3/hr', 'cu m/h', 'cmh']),
  unit('cfm', 'cfm', FOOT ** 3 / 60, ['ft3/min', 'cu ft/min', 'CFM', 'scfm']),
  unit('gpm', 'gal/min', US_GALLON / 60, ['US gpm', 'US gal/min', 'gallons/minute']),
  unit('imp gpm', 'imp gal/min', IMPERIAL_GALLON / 60, ['UK gpm']),
];

/** SI: kg/(m²·s). @source si-brochure, nist-sp-811 (customary) */
export const MASS_FLUX: readonly Unit[] = [
  unit('kg/(m2.s)', 'kg/(m²·s)', 1),
  unit('kg/(m2.h)', 'kg/(m²·h)', 1 / HOUR),
  unit('g/(m2.h)', 'g/(m²·h)', 1e-3 / HOUR),
  unit('lb/(ft2.h)', 'lb/(ft²·h)', POUND / FOOT ** 2 / HOUR),
];
