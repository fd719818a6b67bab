import { describe, expect, test } from 'vitest';
import { KINDS, type Kind } from '../../../src/core/quantity/kinds.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';
import { problem } from './read.ts';

describe('units', () => {
  test('a number without a unit has the unit shown, or else the metric one', () => {
    expect(parseQuantity('10', 'mass')).toMatchObject({ value: 10, typedUnit: false });
    expect(parseQuantity('10', 'mass', 'g')).toMatchObject({ value: 0.01, unit: { id: 'g' } });
    expect(parseQuantity('50', 'temperature', 'degF')).toMatchObject({ unit: { id: 'degF' } });
    expect(() => parseQuantity('1', 'mass', 'L')).toThrow(RangeError);
  });

  test('a typed unit overrides the one shown', () => {
    expect(parseQuantity('22 1/2 lb', 'mass', 'kg')).toMatchObject({
      number: 22.5,
      typedUnit: true,
      unit: { id: 'lb' },
    });
  });

  test.each<[string, Kind, string]>([
    ['80 kg/m3', 'density', 'kg/m3'],
    ['80 kg / m³', 'density', 'kg/m3'],
    ['80 kg/m^3', 'density', 'kg/m3'],
    ['80 kg m⁻³', 'density', 'kg/m3'],
    ['80kg·m-3', 'density', 'kg/m3'],
    ['80 KG/M3', 'density', 'kg/m3'],
    ['80 kg per m3', 'density', 'kg/m3'],
    ['5 lb/ft3', 'density', 'lb/ft3'],
    ['5 lb/cu ft', 'density', 'lb/ft3'],
    ['5 lb./cu. ft.', 'density', 'lb/ft3'],
    ['5 pcf', 'density', 'lb/ft3'],
    ['5 lbs per cubic foot', 'density', 'lb/ft3'],
    ['5 lb/cuft', 'density', 'lb/ft3'],
    ['5 in.', 'length', 'in'],
    ['5"', 'length', 'in'],
    ['5″', 'length', 'in'],
    ['5”', 'length', 'in'],
    ["5'", 'length', 'ft'],
    ['5′', 'length', 'ft'],
    ['5’', 'length', 'ft'],
    ['17 °dH', 'hardness', 'dH'],
    ['17dH', 'hardness', 'dH'],
    ['17 ° dH', 'hardness', 'dH'],
    ['17 °DH', 'hardness', 'dH'],
    ['17 degrees Clark', 'hardness', 'eH'],
    ['300 ppm', 'hardness', 'mg/L CaCO3'],
    ['300 mg/l', 'hardness', 'mg/L CaCO3'],
    ['300 mg/L as CaCO₃', 'hardness', 'mg/L CaCO3'],
    ['300 ppm (CaCO3)', 'hardness', 'mg/L CaCO3'],
    ['5 mEq/L', 'hardness', 'meq/L'],
    ['5 gal', 'volume', 'gal'],
    ['5 U.S. gal', 'volume', 'gal'],
    ['5 gal (US)', 'volume', 'gal'],
    ['5 gallons (U.S.)', 'volume', 'gal'],
    ['8 fl. oz. (US)', 'volume', 'fl oz'],
    ['5 gal (UK)', 'volume', 'imp gal'],
    ['5 gallons imp.', 'volume', 'imp gal'],
    ['5 UK gallons', 'volume', 'imp gal'],
    ['5 GALLONS', 'volume', 'gal'],
    ['5 fl. oz.', 'volume', 'fl oz'],
    ['5 ml', 'volume', 'mL'],
    ['5 l', 'volume', 'L'],
    ['300 mg/l', 'concentration', 'mg/L'],
    ['300 ppm', 'concentration', 'ppm'],
    ['70 F', 'temperature', 'degF'],
    ['70 °F', 'temperature', 'degF'],
    ['70 f', 'temperature', 'degF'],
    ['70 deg F', 'temperature', 'degF'],
    ['21 ℃', 'temperature', 'degC'],
    ['21 ºC', 'temperature', 'degC'],
    ['21 degrees Celsius', 'temperature', 'degC'],
    ['3 degrees', 'angle', 'deg'],
    ['5 Mg', 'mass', 't'],
    ['5 mg', 'mass', 'mg'],
    ['5 MPa', 'stress', 'MPa'],
    ['5 mpa', 'stress', 'MPa'],
    ['5 PSI', 'stress', 'psi'],
    ['5 mPa·s', 'viscosity', 'mPa.s'],
    ['0.2 W/mK', 'conductivity', 'W/(m.K)'],
    ['0.2 W/(m K)', 'conductivity', 'W/(m.K)'],
    ['5 lb/10⁶ gal', 'concentration', 'lb/10^6 gal'],
    ['5\tkg', 'mass', 'kg'],
    ['45%', 'ratio', '%'],
    ['٤٥٪', 'ratio', '%'],
    ['80 kg m\u20133', 'density', 'kg/m3'],
    ['80 kg。', 'mass', 'kg'],
  ])('%j as %s is in %s', (text, kind, id) => {
    expect(parseQuantity(text, kind)).toMatchObject({ ok: true, typedUnit: true, unit: { id } });
  });

  test('upper and lower case distinguish milli from mega', () => {
    expect(problem('5 mPa', 'stress').code).toBe('unknown-unit');
    expect(problem('5 ML', 'volume').code).toBe('unknown-unit');
    expect(problem('5 Mg/L', 'concentration').code).toBe('unknown-unit');
    expect(problem('5 MG', 'mass').code).toBe('unknown-unit');
    expect(problem('5 mJ', 'energy').code).toBe('unknown-unit');
  });

  test('a unit spelt exactly as one of another kind is not read as a similar one of this kind', () => {
    // M is moles in a litre, m a metre.
    expect(problem('5 M', 'length')).toMatchObject({ code: 'unknown-unit', unit: 'M' });
    expect(parseQuantity('5 m', 'length')).toMatchObject({ ok: true, unit: { id: 'm' } });
  });

  test.each<[string, Kind]>([
    ['2.5/3 kg', 'mass'],
    ['2.5 / 3', 'mass'],
    ['5 ½/3', 'mass'],
    ['5"/2', 'length'],
    ['2.5%/4', 'ratio'],
  ])('%j divides by a second number', (text, kind) => {
    expect(problem(text, kind).code).toBe('several-numbers');
  });

  test('a slash before a unit is not read', () => {
    expect(problem('5 /m3')).toMatchObject({ code: 'unknown-unit', unit: '/m3' });
    expect(problem('2.5/kg')).toMatchObject({ code: 'unknown-unit', unit: '/kg' });
    expect(problem('2.5 /').code).toBe('not-a-number');
  });

  test('an unknown unit is reported with the known ones', () => {
    expect(problem('5 stone')).toEqual({
      code: 'unknown-unit',
      read: '5 stone',
      unit: 'stone',
      known: KINDS.mass.units.map(({ symbol }) => symbol),
    });
    expect(problem('5 kg/x3')).toMatchObject({ code: 'unknown-unit', unit: 'kg/x3' });
  });

  test.each<[string, Kind, string]>([
    ['5 gal', 'mass', 'gal'],
    ['5 kg', 'volume', 'kg'],
    ['70 °F', 'hardness', '°F'],
    ['45 %', 'mass', '%'],
    ['5 kg', 'count', 'kg'],
    ['5 m', 'time', 'm'],
    ['80 g/L', 'mass', 'g/L'],
  ])('%j for a %s has a unit of another kind', (text, kind, unit) => {
    expect(problem(text, kind)).toMatchObject({ code: 'unknown-unit', unit });
  });
});

describe('a time as a clock that counts shows it', () => {
  test.each([
    ['2:30', 'h', 9000],
    ['6:45', 'h', 24_300],
    ['0:04', 'min', 4],
    ['90:00', 'min', 5400],
    ['2:30', 's', 150],
    ['1:02:30', 'h', 3750],
    ['1:02:30', 'd', 3750],
    ['1:30 h', 'min', 5400],
    ['1:30 hours', 'd', 5400],
    ['2:30hrs', 's', 9000],
    ['1:02:30 h', 'min', 3750],
  ])('%j in %s', (text, unit, seconds) => {
    expect(parseQuantity(text, 'time', unit)).toMatchObject({
      ok: true,
      value: expect.closeTo(seconds, 9),
    });
  });

  test.each([
    ['2:30', 'd'],
    ['2:30 d', 'h'],
    ['2:30 m', 'h'],
    ['2:30 min', 'h'],
    ['2:75', 'h'],
    ['7:30 pm', 'h'],
    ['2:3', 'h'],
  ])('%j in %s is none', (text, unit) => {
    expect(parseQuantity(text, 'time', unit)).toMatchObject({
      ok: false,
      problem: { code: 'several-numbers' },
    });
  });

  test('is not read as a quantity of another kind', () => {
    expect(problem('2:30', 'mass').code).toBe('several-numbers');
  });
});

describe('a larger unit and a smaller', () => {
  test.each<[string, Kind, number, string]>([
    ['5\' 6"', 'length', 5.5, 'ft'],
    ['5′6″', 'length', 5.5, 'ft'],
    ['2 ft 6 in', 'length', 2.5, 'ft'],
    ['2ft 6in.', 'length', 2.5, 'ft'],
    ['6\'-0"', 'length', 6, 'ft'],
    ['6′–0 1⁄2″', 'length', 6 + 1 / 24, 'ft'],
    ['5\' 6 3/4"', 'length', 5.5625, 'ft'],
    ['5\' ¾"', 'length', 5.0625, 'ft'],
    ['-5\' 6"', 'length', -5.5, 'ft'],
    ['3 lb 4 oz', 'mass', 3.25, 'lb'],
    ['3 lbs 4,5 oz', 'mass', 3.28125, 'lb'],
    ["5' 6", 'length', 5.5, 'ft'],
    ['1 ft 4', 'length', 16 / 12, 'ft'],
    ['31 lb 6', 'mass', 31.375, 'lb'],
    ['3 kg 4 g', 'mass', 3.004, 'kg'],
    ['1 m 60 cm', 'length', 1.6, 'm'],
    ['1 h 30 min', 'time', 1.5, 'h'],
    ['2 min 15 s', 'time', 2.25, 'min'],
    ['2 h 30', 'time', 2.5, 'h'],
    ['1h30m', 'time', 1.5, 'h'],
    ['1 h 30 m', 'time', 1.5, 'h'],
  ])('%j', (text, kind, expected, id) => {
    expect(parseQuantity(text, kind)).toMatchObject({ ok: true, number: expected, unit: { id } });
  });

  test.each<[string, Kind]>([
    ['5\' 12"', 'length'],
    ['5 in 6 ft', 'length'],
    ['2.5 ft 6 in', 'length'],
    ['3 lb 4 kg', 'mass'],
    ['2 ft -6 in', 'length'],
    ['5\' 6" 7"', 'length'],
    ['3 kg 4', 'mass'],
    ['31 lb 18', 'mass'],
    ['1 d 30 m', 'time'],
  ])('%j holds several numbers', (text, kind) => {
    expect(problem(text, kind).code).toBe('several-numbers');
  });
});
