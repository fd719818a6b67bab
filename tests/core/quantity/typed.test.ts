import { expect, test } from 'vitest';
import type { Kind } from '../../../src/core/quantity/kinds.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';

/** Units as people type them who do not type the symbol, and the unit they mean. */
const TYPED: Readonly<Partial<Record<Kind, Readonly<Record<string, readonly string[]>>>>> = {
  mass: {
    kg: ['kgs', 'kilos', 'kilograms'],
    g: ['grams', 'gm'],
    mg: ['milligrams'],
    t: ['tonnes', 'metric tons'],
    lb: ['lbs', 'pounds', '#'],
    oz: ['ounces'],
  },
  volume: {
    L: ['dm3', 'litres', 'liters'],
    mL: ['mls', 'millilitres'],
    cm3: ['cc', 'ccm'],
    m3: ['cu m', 'cbm', 'cubic metres'],
    ft3: ['cu ft', 'cubic feet'],
    yd3: ['cu yd', 'cubic yards'],
    in3: ['cu in', 'cubic inches'],
    gal: ['gallons', 'US gal'],
    qt: ['quarts'],
    pt: ['pints'],
    'fl oz': ['fluid ounces'],
    'imp gal': ['UK gal', 'imperial gallons'],
  },
  length: {
    mm: ['mms', 'millimetres', 'millimeters'],
    cm: ['cms', 'centimetres', 'centimeters'],
    m: ['metres', 'meters'],
    km: ['kilometres'],
    in: ['inches', '"'],
    ft: ['feet', 'foot', "'"],
    yd: ['yards'],
  },
  area: {
    m2: ['sq m', 'square metres'],
    cm2: ['sq cm'],
    mm2: ['sq mm'],
    ft2: ['sq ft', 'square feet'],
    in2: ['sq in', 'square inches'],
    yd2: ['sq yd', 'square yards'],
  },
  density: {
    'kg/m3': ['kg m-3', 'kg per cu m', 'kilograms per cubic metre'],
    'g/L': ['g/litre', 'grams per liter'],
    'kg/L': ['kg/litre', 't/m3'],
    'g/cm3': ['g/cc', 'g/mL'],
    'lb/ft3': ['pcf', 'pounds per cubic foot'],
    'lb/yd3': ['pcy', 'lb/cu yd'],
    'lb/gal': ['ppg', 'pounds per gallon'],
    'oz/gal': ['ounces per gallon'],
  },
  concentration: {
    'mg/L': ['g/m3', 'mg per litre'],
    'g/L': ['g per liter', 'mg/mL'],
    'kg/m3': ['kg m-3'],
    'ug/L': ['ppb'],
    'lb/10^6 gal': ['lb/Mgal'],
    'oz/gal': ['ounces per gallon'],
    'gr/gal': ['grains per gallon'],
  },
  hardness: {
    'mg/L CaCO3': ['ppm', 'mg/L'],
    'mmol/L': ['mol/m3'],
    'meq/L': ['mval/L'],
    dH: ['dGH'],
    fH: ['°TH', '°f'],
    eH: ['°Clark'],
    gpg: ['gr/gal', 'gr', 'grains'],
    'mg/L CaO': ['ppm CaO'],
  },
  temperature: {
    degC: ['C', 'oC', 'Celsius', 'Celcius', 'degrees Celcius', 'centigrade'],
    degF: ['F', '°f', 'oF', 'Fahrenheit', 'Farenheit'],
    K: ['kelvin'],
  },
  temperatureDifference: { degC: ['C°', 'Celsius'], degF: ['F°'], K: ['kelvins'] },
  pressure: {
    Pa: ['N/m2', 'pascals'],
    kPa: ['kN/m2', 'kilopascals'],
    MPa: ['N/mm2', 'megapascals'],
    bar: ['barg', 'bar(g)'],
    mbar: ['hPa', 'millibars'],
    atm: ['atmospheres'],
    psi: ['lb/in2', 'psig', 'PSIG'],
    psf: ['lb/ft2', 'lb per sq ft'],
  },
  stress: {
    MPa: ['MN/m2', 'megapascals'],
    'N/mm2': ['N/sq mm'],
    kPa: ['kN/m2', 'kilopascals'],
    Pa: ['N/m2', 'pascals'],
    GPa: ['kN/mm2', 'gigapascals'],
    psi: ['lb/in2'],
    ksi: ['kips per in2'],
  },
  time: {
    s: ['sec', 'seconds'],
    min: ['minutes'],
    h: ['hr', 'hours'],
    d: ['days'],
    wk: ['week', 'weeks'],
  },
  speed: {
    'm/s': ['m s-1', 'metres per second'],
    'km/h': ['kph', 'km/hr'],
    'm/h': ['m/hr'],
    'mm/h': ['mm/hr'],
    mph: ['miles per hour'],
    'ft/s': ['fps', 'feet per second'],
    'ft/min': ['fpm'],
    'ft/h': ['feet per hour'],
    'in/h': ['inches per hour'],
  },
  flow: {
    'm3/s': ['cumec', 'cu m/s'],
    'L/s': ['lps', 'litres per second'],
    'L/min': ['lpm', 'litres per minute'],
    'mL/min': ['cc/min'],
    'm3/h': ['m3/hr'],
    cfm: ['ft3/min', 'cu ft per min', 'scfm', 'SCFM'],
    gpm: ['gallons per minute'],
    'imp gpm': ['UK gpm'],
  },
  conductivity: {
    'W/(m.K)': ['W/m/K', 'W/m/°C'],
    'Btu.in/(h.ft2.degF)': ['Btu in/(hr ft2 °F)'],
    'Btu/(h.ft.degF)': ['Btu/(hr ft °F)'],
  },
  thermalResistance: {
    'm2.K/W': ['K m2/W'],
    'h.ft2.degF/Btu': ['hr ft2 °F/Btu', 'ft2 h °F/Btu'],
  },
  ratio: { '%': ['percent', 'per cent'], permil: ['per mille'], ppm: ['parts per million'] },
  angle: { deg: ['degree', 'degrees'], rad: ['radians'] },
  amountConcentration: {
    'mmol/L': ['mM'],
    'mol/m3': ['mol m-3'],
    'mol/L': ['M', 'mol/dm3'],
  },
};

test.each(Object.entries(TYPED))('%s is typed in other words than its symbols', (kind, units) => {
  for (const [id, words] of Object.entries(units))
    for (const word of words)
      expect(parseQuantity(`3 ${word}`, kind as Kind), word).toMatchObject({
        ok: true,
        unit: { id },
        typedUnit: true,
      });
});

test('a bare ° is of the temperature scale shown, and read in no other kind', () => {
  expect(parseQuantity('61°', 'temperature', 'degF')).toMatchObject({ unit: { id: 'degF' } });
  expect(parseQuantity('20 º', 'temperature', 'degC')).toMatchObject({ unit: { id: 'degC' } });
  expect(parseQuantity('61°', 'length')).toMatchObject({ problem: { unit: '°' } });
});
