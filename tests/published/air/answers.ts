import {
  airVolume,
  dryAirDensity,
  FREE_AIR,
  NORMAL_AIR,
  roomAirDensity,
} from '../../../src/core/air/density.ts';
import { freeAirForFoam } from '../../../src/core/air/foam-air.ts';
import { criticalRatio, effectiveArea, orificeFlow } from '../../../src/core/air/orifice.ts';
import { receiverContents } from '../../../src/core/air/receiver.ts';
import { storedEnergy, testDistance } from '../../../src/core/air/stored-energy.ts';
import { type Answers, answer } from '../answer.ts';

const state = { pressure: 'pressure', temperature: 'temperature' } as const;
const vessel = { vessel: 'volume', gauge: 'pressure' } as const;
/** The gauge pressures of the stored-energy examples are above the standard's own ambient. */
const energy = (of: { vessel: number; gauge: number }) =>
  storedEnergy({ vessel: of.vessel, pressure: of.gauge + 101_000 });
/** The molar gas constant, J/(kmol·K). */
const MOLAR = 8314.462618;

export const answers: Answers = {
  'air/dry-density': answer({
    asks: 'Density of dry air',
    input: state,
    gives: 'density',
    work: dryAirDensity,
  }),
  'air/room-density': answer({
    asks: 'Density of moist air, the balance-maker’s formula',
    input: { ...state, humidity: 'ratio' },
    gives: 'density',
    beside: true,
    work: (of) => roomAirDensity(of).density,
  }),
  'air/free-state': answer({
    asks: 'Temperature (K) and absolute pressure (Pa) of free air',
    input: {},
    gives: 'numbers',
    work: () => [FREE_AIR.temperature, FREE_AIR.pressure],
  }),
  'air/normal-state': answer({
    asks: 'Temperature (K) and absolute pressure (Pa) of the normal cubic metre',
    input: {},
    gives: 'numbers',
    beside: true,
    work: () => [NORMAL_AIR.temperature, NORMAL_AIR.pressure],
  }),
  'air/flow-of-mass': answer({
    asks: 'Volume flow, at a reference state, of a mass of dry air an hour',
    input: { kilogramsAnHour: 'number', ...state },
    gives: 'flow',
    work: ({ kilogramsAnHour, ...of }) => kilogramsAnHour / 3600 / dryAirDensity(of),
  }),
  'air/to-normal': answer({
    asks: 'The same flow in normal cubic metres (0 °C, 1.01325 bar)',
    input: { flow: 'flow', ...state },
    gives: 'flow',
    beside: true,
    work: ({ flow, ...from }) => airVolume({ volume: flow, from, to: NORMAL_AIR }),
  }),
  'air/for-foam': answer({
    asks: 'Free air (20 °C, 1 bar) that a volume of foam takes at one atmosphere and 20 °C',
    input: { foamVolume: 'volume', expansion: 'ratio' },
    gives: 'volume',
    work: freeAirForFoam,
  }),
  'air/receiver': answer({
    asks: 'Free air a receiver gives between two absolute pressures, slowly drawn',
    input: { vessel: 'volume', high: 'pressure', low: 'pressure' },
    gives: 'volume',
    work: (charge) => receiverContents(charge).slow,
  }),
  'air/critical-ratio': answer({
    asks: 'Ratio of absolute pressures at which flow chokes',
    input: { gamma: 'number' },
    gives: 'number',
    work: criticalRatio,
  }),
  'air/throat-pressure': answer({
    asks: 'Pressure in a choked throat',
    input: { upstream: 'pressure', temperature: 'temperature', gamma: 'number' },
    gives: 'pressure',
    work: (of) => throat(of).pressure,
  }),
  'air/throat-temperature': answer({
    asks: 'Temperature in a choked throat',
    input: { upstream: 'pressure', temperature: 'temperature', gamma: 'number' },
    gives: 'temperature',
    work: (of) => throat(of).temperature,
  }),
  'air/choked-factor': answer({
    asks: 'Choked mass flow as ṁ √T₀/(p₀ A), √(kg·K/J)',
    input: { gamma: 'number', gasConstant: 'specificHeat' },
    gives: 'number',
    work: (gas) =>
      orificeFlow({
        upstream: 1,
        downstream: 0,
        temperature: 1,
        area: 1,
        dischargeCoefficient: 1,
        gas,
      }).massFlow,
  }),
  'air/choked-flow': answer({
    asks: 'Choked mass flow of an ideal nozzle, kg/s',
    input: {
      upstream: 'pressure',
      temperature: 'temperature',
      area: 'area',
      gasConstant: 'specificHeat',
    },
    gives: 'number',
    work: ({ gasConstant, ...of }) =>
      orificeFlow({ ...of, downstream: 0, dischargeCoefficient: 1, gas: { gasConstant } }).massFlow,
  }),
  'air/api-c': answer({
    asks: 'The relief-valve standard’s coefficient C, 0.03948 √[k (2/(k + 1))^((k + 1)/(k − 1))]',
    input: { gamma: 'number' },
    gives: 'number',
    work: (gas) =>
      0.03948 *
      orificeFlow({
        upstream: 1,
        downstream: 0,
        temperature: 1,
        area: 1,
        dischargeCoefficient: 1,
        gas: { ...gas, gasConstant: 1 },
      }).massFlow,
  }),
  'air/api-f2': answer({
    asks: 'The relief-valve standard’s F₂: unchoked flow over √(2 ρ₁ (p₁ − p₂))',
    input: { gamma: 'number', upstream: 'pressure', downstream: 'pressure' },
    gives: 'number',
    work: ({ gamma, upstream, downstream }) =>
      orificeFlow({
        upstream,
        downstream,
        temperature: 1,
        area: 1,
        dischargeCoefficient: 1,
        gas: { gamma, gasConstant: 1 },
      }).massFlow / Math.sqrt(2 * upstream * (upstream - downstream)),
  }),
  'air/api-area': answer({
    asks: 'Opening that passes a flow of real gas (compressibility Z, molar mass M in kg/kmol) at a discharge coefficient',
    input: {
      kilogramsAnHour: 'number',
      upstream: 'pressure',
      downstream: 'pressure',
      temperature: 'temperature',
      gamma: 'number',
      z: 'number',
      molarMass: 'number',
      dischargeCoefficient: 'number',
    },
    gives: 'area',
    work: ({ kilogramsAnHour, gamma, z, molarMass, dischargeCoefficient, ...of }) =>
      effectiveArea({
        ...of,
        massFlow: kilogramsAnHour / 3600,
        gas: { gamma, gasConstant: (z * MOLAR) / molarMass },
      }) / dischargeCoefficient,
  }),
  'air/isothermal-per-mass': answer({
    asks: 'Work a kilogram of compressed air can do beyond pushing the air outside back, heat let in',
    input: { ...state, ambient: 'pressure' },
    gives: 'specificEnergy',
    work: ({ pressure, temperature, ambient }) =>
      storedEnergy({ vessel: 1, pressure, ambient }).isothermal /
      dryAirDensity({ pressure, temperature }),
  }),
  'air/stored-energy': answer({
    asks: 'Energy stored in a vessel of air, isentropic, from its gauge pressure above 101 kPa',
    input: vessel,
    gives: 'energy',
    work: (of) => energy(of).isentropic,
  }),
  'air/brode-energy': answer({
    asks: 'Energy stored in a vessel of air by Brode’s formula',
    input: vessel,
    gives: 'energy',
    work: (of) => energy(of).brode,
  }),
  'air/tnt': answer({
    asks: 'Mass of TNT of the energy stored in a vessel of air',
    input: vessel,
    gives: 'mass',
    work: (of) => energy(of).tnt,
  }),
  'air/scaled-distance': answer({
    asks: 'Scaled distance for a pressure test with air, before the floor',
    input: vessel,
    gives: 'length',
    work: (of) => testDistance(energy(of)).scaled,
  }),
  'air/test-distance': answer({
    asks: 'Distance for a pressure test with air',
    input: { energy: 'energy' },
    gives: 'length',
    work: (of) => testDistance({ isentropic: of.energy }).distance ?? Number.NaN,
  }),
};

function throat({
  upstream,
  temperature,
  gamma,
}: {
  upstream: number;
  temperature: number;
  gamma: number;
}) {
  return orificeFlow({
    upstream,
    downstream: 0,
    temperature,
    area: 1,
    dischargeCoefficient: 1,
    gas: { gamma },
  }).throat;
}
