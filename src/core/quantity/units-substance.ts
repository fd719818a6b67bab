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
import { metric, us } from './unit.ts';

/** SI: kg. */
export const MASS: readonly Unit[] = [
  metric('kg', 'kg', 1, ['kgs', 'kilo', 'kilogram', 'kilogramme']),
  metric('g', 'g', 1e-3, ['gram', 'gramme', 'gm', 'gms']),
  metric('mg', 'mg', 1e-6, ['milligram']),
  metric('t', 't', 1e3, ['Mg', 'tonne', 'metric ton']),
  us('lb', 'lb', POUND, ['lbs', 'lbm', 'pound', '#']),
  us('oz', 'oz', POUND / 16, ['ozs', 'ounce', 'oz av']),
];

/** SI: kg/m³. */
export const DENSITY: readonly Unit[] = [
  metric('kg/m3', 'kg/m³', 1, ['kg m-3', 'kg/cu m', 'kgm-3', 'kg/cum', 'kilograms/cubic metre']),
  metric('g/L', 'g/L', 1, ['g L-1', 'g/litre', 'g/liter', 'grams/litre', 'grams/liter']),
  metric('kg/L', 'kg/L', 1e3, ['kg/litre', 'kg/liter', 'kg L-1', 't/m3', 'kg/dm3']),
  metric('g/cm3', 'g/cm³', 1e3, ['g/cc', 'g/mL', 'g cm-3', 'g/ccm']),
  us('lb/ft3', 'lb/ft³', POUND_PER_CUBIC_FOOT, [
    'pcf',
    'lb/cu ft',
    'lbs/ft3',
    'lbs/cu ft',
    'lb/cf',
    'pounds/cubic foot',
    'lbs/cubic foot',
  ]),
  us('lb/yd3', 'lb/yd³', POUND / YARD ** 3, ['pcy', 'lb/cu yd', 'lbs/yd3', 'lbs/cu yd', 'lb/cy']),
  us('lb/gal', 'lb/gal', POUND / US_GALLON, ['lb/US gal', 'lbs/gal', 'ppg', 'pounds/gallon']),
  us('oz/gal', 'oz/gal', POUND / 16 / US_GALLON, ['oz/US gal', 'ounces/gallon']),
];

/** SI: m³/s. */
export const FLOW: readonly Unit[] = [
  metric('m3/s', 'm³/s', 1, ['cumec', 'cu m/s', 'm3/sec']),
  metric('L/s', 'L/s', 1e-3, ['L/sec', 'lps', 'litres/second']),
  metric('L/min', 'L/min', 1e-3 / 60, ['lpm', 'litres/minute', 'liters/minute']),
  metric('mL/min', 'mL/min', 1e-6 / 60, ['cc/min', 'cm3/min']),
  metric('m3/h', 'm³/h', 1 / HOUR, ['m3/hr', 'cu m/h', 'cmh']),
  us('cfm', 'cfm', FOOT ** 3 / 60, ['ft3/min', 'cu ft/min', 'CFM', 'scfm']),
  us('gpm', 'gal/min', US_GALLON / 60, ['US gpm', 'US gal/min', 'gallons/minute']),
  us('imp gpm', 'imp gal/min', IMPERIAL_GALLON / 60, ['UK gpm']),
];

/** SI: kg/(m²·s). */
export const MASS_FLUX: readonly Unit[] = [
  metric('kg/(m2.s)', 'kg/(m²·s)', 1, ['kg/m2/s', 'kg m-2 s-1']),
  metric('kg/(m2.h)', 'kg/(m²·h)', 1 / HOUR, ['kg/m2/h', 'kg/m2/hr', 'kg m-2 h-1']),
  metric('g/(m2.h)', 'g/(m²·h)', 1e-3 / HOUR, ['g/m2/h', 'g/m2/hr']),
  us('lb/(ft2.h)', 'lb/(ft²·h)', POUND / FOOT ** 2 / HOUR, ['lb/ft2/h', 'lb/ft2/hr', 'psf/h']),
];
