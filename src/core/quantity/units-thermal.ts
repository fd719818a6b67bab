import { BTU, FAHRENHEIT_DEGREE, FOOT, HOUR, ICE_POINT, INCH } from './constants.ts';
import type { Unit } from './kinds.ts';
import { unit } from './unit.ts';

const CELSIUS = [
  'C',
  '°C',
  'oC',
  'Celsius',
  '°Celsius',
  'Celcius',
  '°Celcius',
  'centigrade',
  '°centigrade',
];
const FAHRENHEIT = ['F', '°F', 'oF', 'Fahrenheit', '°Fahrenheit', 'Farenheit', '°Farenheit'];
const KELVIN = ['°K', 'kelvin', 'kelvins'];

/** SI: K. @source si-brochure, nist-sp-811 (customary) */
export const TEMPERATURE: readonly Unit[] = [
  unit('degC', '°C', 1, CELSIUS, { offset: ICE_POINT }),
  // Relative to its freezing point: 32 °F is exactly 0 °C, where limits are.
  unit('degF', '°F', FAHRENHEIT_DEGREE, FAHRENHEIT, { mark: 32, offset: ICE_POINT }),
  unit('K', 'K', 1, KELVIN),
];

/**
 * SI: K. The ids are those of temperature, so that a ± follows the unit of its reading.
 * @source si-brochure, nist-sp-811 (customary)
 */
export const TEMPERATURE_DIFFERENCE: readonly Unit[] = [
  unit('degC', '°C', 1, [...CELSIUS, 'C°']),
  unit('degF', '°F', FAHRENHEIT_DEGREE, [...FAHRENHEIT, 'F°']),
  unit('K', 'K', 1, KELVIN),
];

/** SI: W/(m·K). @source si-brochure, nist-sp-811 (customary) */
export const CONDUCTIVITY: readonly Unit[] = [
  unit('W/(m.K)', 'W/(m·K)', 1, ['W/m/K', 'W/m/°C', 'W/(m.°C)', 'W m-1 K-1']),
  unit(
    'Btu.in/(h.ft2.degF)',
    'Btu·in/(h·ft²·°F)',
    (BTU * INCH) / (HOUR * FOOT ** 2 * FAHRENHEIT_DEGREE),
    ['Btu in/(hr ft2 °F)', 'Btu in/(h ft2 F)', 'Btu in/(hr ft2 F)'],
  ),
  unit('Btu/(h.ft.degF)', 'Btu/(h·ft·°F)', BTU / (HOUR * FOOT * FAHRENHEIT_DEGREE), [
    'Btu/(hr ft °F)',
    'Btu/(h ft F)',
    'Btu/(hr ft F)',
  ]),
];

/** SI: m²·K/W. @source si-brochure, nist-sp-811 (customary) */
export const THERMAL_RESISTANCE: readonly Unit[] = [
  unit('m2.K/W', 'm²·K/W', 1, ['K m2/W', 'm2 °C/W']),
  unit('h.ft2.degF/Btu', 'h·ft²·°F/Btu', (HOUR * FOOT ** 2 * FAHRENHEIT_DEGREE) / BTU, [
    'hr ft2 °F/Btu',
    'h ft2 F/Btu',
    'ft2 h °F/Btu',
    'ft2 hr °F/Btu',
    'ft2 °F h/Btu',
  ]),
];

/** SI: W/(m²·K). @source si-brochure, nist-sp-811 (customary) */
export const THERMAL_TRANSMITTANCE: readonly Unit[] = [
  unit('W/(m2.K)', 'W/(m²·K)', 1),
  unit('Btu/(h.ft2.degF)', 'Btu/(h·ft²·°F)', BTU / (HOUR * FOOT ** 2 * FAHRENHEIT_DEGREE)),
];

/** SI: J/(kg·K). @source si-brochure, nist-sp-811 (customary) */
export const SPECIFIC_HEAT: readonly Unit[] = [
  unit('J/(kg.K)', 'J/(kg·K)', 1),
  unit('kJ/(kg.K)', 'kJ/(kg·K)', 1e3),
  unit('Btu/(lb.degF)', 'Btu/(lb·°F)', 2326 / FAHRENHEIT_DEGREE),
];

/** SI: J/kg. @source si-brochure, nist-sp-811 (customary) */
export const SPECIFIC_ENERGY: readonly Unit[] = [
  unit('kJ/kg', 'kJ/kg', 1e3),
  unit('J/g', 'J/g', 1e3),
  unit('J/kg', 'J/kg', 1),
  unit('Btu/lb', 'Btu/lb', 2326),
];
