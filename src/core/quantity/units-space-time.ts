import { DAY, FOOT, HOUR, IMPERIAL_GALLON, INCH, US_GALLON, YARD } from './constants.ts';
import type { Unit } from './kinds.ts';
import { unit } from './unit.ts';

/** SI: m. @source si-brochure, nist-sp-811 (customary) */
export const LENGTH: readonly Unit[] = [
  unit('mm', 'mm', 1e-3, ['mms', 'millimetre', 'millimeter']),
  unit('cm', 'cm', 1e-2, ['cms', 'centimetre', 'centimeter']),
  unit('m', 'm', 1, ['metre', 'meter', 'mtr']),
  unit('km', 'km', 1e3, ['kilometre', 'kilometer']),
  unit('in', 'in', INCH, ['"', "''", 'inch', 'inches', 'ins']),
  unit('ft', 'ft', FOOT, ["'", 'foot', 'feet']),
  unit('yd', 'yd', YARD, ['yds', 'yard']),
];

/** SI: m². @source si-brochure, nist-sp-811 (customary) */
export const AREA: readonly Unit[] = [
  unit('m2', 'm²', 1, ['sq m', 'sqm', 'square metre', 'square meters']),
  unit('cm2', 'cm²', 1e-4, ['sq cm']),
  unit('mm2', 'mm²', 1e-6, ['sq mm']),
  unit('ft2', 'ft²', FOOT ** 2, ['sq ft', 'sf', 'square foot', 'square feet']),
  unit('in2', 'in²', INCH ** 2, ['sq in', 'square inch', 'square inches']),
  unit('yd2', 'yd²', YARD ** 2, ['sq yd', 'square yard']),
];

/** SI: m³. @source si-brochure, nist-sp-811 (customary) */
export const VOLUME: readonly Unit[] = [
  unit('L', 'L', 1e-3, ['dm3', 'ltr', 'litre', 'liter']),
  unit('mL', 'mL', 1e-6, ['mls', 'millilitre', 'milliliter']),
  unit('cm3', 'cm³', 1e-6, ['cc', 'ccm', 'cu cm']),
  unit('m3', 'm³', 1, ['cu m', 'cum', 'cbm', 'cubic metre', 'cubic meters']),
  unit('ft3', 'ft³', FOOT ** 3, ['cu ft', 'cf', 'cft', 'cubic foot', 'cubic feet']),
  unit('yd3', 'yd³', YARD ** 3, ['cu yd', 'cy', 'cubic yard']),
  unit('in3', 'in³', INCH ** 3, ['cu in', 'cubic inch', 'cubic inches']),
  unit('gal', 'gal', US_GALLON, ['US gal', 'gallon', 'US gallon', 'US gallons']),
  unit('qt', 'qt', US_GALLON / 4, ['US qt', 'qts', 'quart']),
  unit('pt', 'pt', US_GALLON / 8, ['US pt', 'pts', 'pint']),
  unit('fl oz', 'fl oz', US_GALLON / 128, ['US fl oz', 'fluid ounce', 'oz fl']),
  unit('imp gal', 'imp gal', IMPERIAL_GALLON, [
    'UK gal',
    'UK gallon',
    'UK gallons',
    'imp gallon',
    'imperial gallon',
  ]),
];

/** SI: s. @source si-brochure */
export const TIME: readonly Unit[] = [
  unit('s', 's', 1, ['sec', 'second']),
  unit('min', 'min', 60, ['minute']),
  unit('h', 'h', HOUR, ['hr', 'hrs', 'hour']),
  unit('d', 'd', DAY, ['day']),
  unit('wk', 'wk', 7 * DAY, ['week']),
];

/** SI: m/s. @source si-brochure, nist-sp-811 (customary) */
export const SPEED: readonly Unit[] = [
  unit('m/s', 'm/s', 1, ['m s-1', 'm/sec', 'metres/second', 'meters/second']),
  unit('km/h', 'km/h', 1e3 / HOUR, ['kph', 'kmh', 'km/hr', 'kmph']),
  unit('m/min', 'm/min', 1 / 60),
  unit('m/h', 'm/h', 1 / HOUR, ['m/hr']),
  unit('mm/s', 'mm/s', 1e-3),
  unit('mm/min', 'mm/min', 1e-3 / 60),
  unit('mm/h', 'mm/h', 1e-3 / HOUR, ['mm/hr']),
  unit('mph', 'mph', (5280 * FOOT) / HOUR, ['mi/h', 'mile/hour', 'miles/hour']),
  unit('ft/s', 'ft/s', FOOT, ['fps', 'ft/sec', 'feet/second']),
  unit('ft/min', 'ft/min', FOOT / 60, ['fpm', 'feet/minute']),
  unit('ft/h', 'ft/h', FOOT / HOUR, ['ft/hr', 'feet/hour']),
  unit('in/h', 'in/h', INCH / HOUR, ['in/hr', 'inches/hour']),
];

/** SI: rad. @source si-brochure */
export const ANGLE: readonly Unit[] = [
  unit('deg', '°', Math.PI / 180),
  unit('rad', 'rad', 1, ['radian']),
];

/** SI: 1. @source si-brochure */
export const RATIO: readonly Unit[] = [
  unit('1', '', 1),
  unit('%', '%', 1e-2, ['percent', 'per cent', 'pct']),
  unit('permil', '‰', 1e-3, ['per mille', 'per mil']),
  unit('ppm', 'ppm', 1e-6, ['parts/million']),
];

/** SI: 1. @source si-brochure */
export const COUNT: readonly Unit[] = [unit('1', '', 1)];
