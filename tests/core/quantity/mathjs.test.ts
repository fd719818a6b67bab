import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { fromUnit } from '../../../src/core/quantity/convert.ts';
import { KINDS, type Kind } from '../../../src/core/quantity/kinds.ts';

/**
 * Our table against one made by others. Each kind's SI unit and each unit's name there, `times` how
 * many of those make one of ours; `off` is the relative error of a factor that mathjs itself
 * carries rounded.
 */
const math = create(all!);
type Theirs = string | { name: string; off?: number; times?: number };
const psi: Theirs = { name: 'psi', off: 1e-10 }; // 6894.75729276459 there; 6894.757293168… from lbf and in
const table: Partial<Record<Kind, { si: string; units: Record<string, Theirs> }>> = {
  mass: {
    si: 'kg',
    units: { kg: 'kg', g: 'g', mg: 'mg', t: 'tonne', lb: 'lbm', oz: 'ounce' },
  },
  volume: {
    si: 'm^3',
    units: {
      L: 'L',
      mL: 'mL',
      cm3: 'cm^3',
      m3: 'm^3',
      ft3: 'ft^3',
      yd3: 'yd^3',
      in3: 'in^3',
      gal: 'gallon',
      qt: 'quart',
      pt: 'pint',
      'fl oz': 'fluidounce',
    },
  },
  length: {
    si: 'm',
    units: { mm: 'mm', cm: 'cm', m: 'm', km: 'km', in: 'in', ft: 'ft', yd: 'yd' },
  },
  area: {
    si: 'm^2',
    units: { m2: 'm^2', cm2: 'cm^2', mm2: 'mm^2', ft2: 'sqft', in2: 'sqin', yd2: 'sqyd' },
  },
  density: {
    si: 'kg/m^3',
    units: {
      'kg/m3': 'kg/m^3',
      'g/L': 'g/L',
      'kg/L': 'kg/L',
      'g/cm3': 'g/cm^3',
      'lb/ft3': 'lbm/ft^3',
      'lb/yd3': 'lbm/yd^3',
      'lb/gal': 'lbm/gallon',
      'oz/gal': 'ounce/gallon',
    },
  },
  concentration: {
    si: 'kg/m^3',
    units: {
      'mg/L': 'mg/L',
      'g/L': 'g/L',
      'kg/m3': 'kg/m^3',
      'ug/L': 'ug/L',
      ppm: 'mg/L',
      'lb/10^6 gal': { name: 'lbm/gallon', times: 1e-6 },
      'oz/gal': 'ounce/gallon',
      'gr/gal': 'grain/gallon',
    },
  },
  temperature: { si: 'K', units: { degC: 'degC', degF: 'degF', K: 'K' } },
  pressure: {
    si: 'Pa',
    units: {
      Pa: 'Pa',
      kPa: 'kPa',
      MPa: 'MPa',
      bar: 'bar',
      mbar: 'mbar',
      atm: 'atm',
      psi,
      psf: 'lbf/ft^2',
    },
  },
  stress: {
    si: 'Pa',
    units: {
      Pa: 'Pa',
      kPa: 'kPa',
      MPa: 'MPa',
      GPa: 'GPa',
      'N/mm2': 'N/mm^2',
      psi: 'lbf/in^2',
      ksi: { name: 'psi', times: 1000, off: 1e-10 },
    },
  },
  time: { si: 's', units: { s: 's', min: 'minute', h: 'hour', d: 'day', wk: 'week' } },
  speed: {
    si: 'm/s',
    units: {
      'm/s': 'm/s',
      'km/h': 'km/hour',
      'm/min': 'm/minute',
      'm/h': 'm/hour',
      'mm/s': 'mm/s',
      'mm/min': 'mm/minute',
      'mm/h': 'mm/hour',
      mph: 'mile/hour',
      'ft/s': 'ft/s',
      'ft/min': 'ft/minute',
      'ft/h': 'ft/hour',
      'in/h': 'in/hour',
    },
  },
  flow: {
    si: 'm^3/s',
    units: {
      'm3/s': 'm^3/s',
      'L/s': 'L/s',
      'L/min': 'L/minute',
      'mL/min': 'mL/minute',
      'm3/h': 'm^3/hour',
      cfm: 'ft^3/minute',
      gpm: 'gallon/minute',
    },
  },
  energy: { si: 'J', units: { J: 'J', kJ: 'kJ', MJ: 'MJ', kWh: 'kWh', Btu: 'BTU' } },
  power: {
    si: 'W',
    units: { W: 'W', kW: 'kW', 'Btu/h': 'BTU/hour', hp: { name: 'hp', off: 1e-10 } },
  },
  force: {
    si: 'N',
    units: { N: 'N', kN: 'kN', kgf: 'kgf', lbf: 'lbf', kip: { name: 'kip', off: 5e-9 } },
  },
  moment: {
    si: 'N m',
    units: { 'N.m': 'N m', 'kN.m': 'kN m', 'lbf.ft': 'lbf ft', 'lbf.in': 'lbf in' },
  },
  viscosity: {
    si: 'Pa s',
    units: { 'Pa.s': 'Pa s', 'mPa.s': 'mPa s', cP: { name: 'dyn s/cm^2', times: 0.01 } },
  },
  conductivity: {
    si: 'W/(m K)',
    units: {
      'W/(m.K)': 'W/(m K)',
      'Btu.in/(h.ft2.degF)': 'BTU in/(hour ft^2 degF)',
      'Btu/(h.ft.degF)': 'BTU/(hour ft degF)',
    },
  },
  thermalResistance: {
    si: 'm^2 K/W',
    units: { 'm2.K/W': 'm^2 K/W', 'h.ft2.degF/Btu': 'hour ft^2 degF/BTU' },
  },
  thermalTransmittance: {
    si: 'W/(m^2 K)',
    units: { 'W/(m2.K)': 'W/(m^2 K)', 'Btu/(h.ft2.degF)': 'BTU/(hour ft^2 degF)' },
  },
  specificHeat: {
    si: 'J/(kg K)',
    units: {
      'J/(kg.K)': 'J/(kg K)',
      'kJ/(kg.K)': 'kJ/(kg K)',
      'Btu/(lb.degF)': 'BTU/(lbm degF)',
    },
  },
  specificEnergy: {
    si: 'J/kg',
    units: { 'kJ/kg': 'kJ/kg', 'J/g': 'J/g', 'J/kg': 'J/kg', 'Btu/lb': 'BTU/lbm' },
  },
  massFlux: {
    si: 'kg/(m^2 s)',
    units: {
      'kg/(m2.s)': 'kg/(m^2 s)',
      'kg/(m2.h)': 'kg/(m^2 hour)',
      'g/(m2.h)': 'g/(m^2 hour)',
      'lb/(ft2.h)': 'lbm/(ft^2 hour)',
    },
  },
  molarEnergy: { si: 'J/mol', units: { 'kJ/mol': 'kJ/mol', 'J/mol': 'J/mol' } },
  surfaceTension: { si: 'N/m', units: { 'mN/m': 'dyn/cm', 'N/m': 'N/m' } },
  angle: { si: 'rad', units: { deg: 'deg', rad: 'rad' } },
  amountConcentration: {
    si: 'mol/m^3',
    units: { 'mmol/L': 'mmol/L', 'mol/m3': 'mol/m^3', 'mol/L': 'mol/L' },
  },
};

/** What mathjs has no word for: worked out in units.test.ts and tests/published/units, or plain counting. */
const UNKNOWN_THERE = new Set(['volume imp gal', 'flow imp gpm']);
const NOT_COMPARED = new Set<Kind>(['hardness', 'ratio', 'count', 'temperatureDifference']);

const cases = Object.entries(table).flatMap(([kind, { si, units }]) =>
  Object.entries(units).map(([id, theirs]) => ({ kind: kind as Kind, id, si, theirs })),
);

describe('the table of units agrees with that of mathjs', () => {
  test.each(cases)('$kind $id', ({ kind, id, si, theirs }) => {
    const { name, off = 2e-15, times = 1 } = typeof theirs === 'string' ? { name: theirs } : theirs;
    for (const value of [1, 37.5]) {
      const expected = math.unit(value * times, name).toNumber(si);
      const ours = fromUnit(value, kind, id);
      expect(Math.abs(ours - expected)).toBeLessThanOrEqual(off * expected);
    }
  });

  test('every unit is compared or listed as not known to mathjs', () => {
    const compared = new Set(cases.map(({ kind, id }) => `${kind} ${id}`));
    const missing = (Object.keys(KINDS) as Kind[])
      .filter((kind) => !NOT_COMPARED.has(kind))
      .flatMap((kind) => KINDS[kind].units.map(({ id }) => `${kind} ${id}`))
      .filter((unit) => !compared.has(unit) && !UNKNOWN_THERE.has(unit));
    expect(
      missing,
      'each needs its name there in `table`; what mathjs has no word for stands in UNKNOWN_THERE, or its kind in NOT_COMPARED, and is worked out elsewhere',
    ).toEqual([]);
  });
});
