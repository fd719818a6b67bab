import { AIR_DENSITY, foamDensity } from '../../../src/core/foam/density.ts';
import { foamingSolution } from '../../../src/core/foam/solution.ts';
import { STANDARD_FOAM_BAND } from '../../../src/core/foam/standard-band.ts';
import { vesselVolume } from '../../../src/core/foam/vessel.ts';
import { type Answers, answer } from '../answer.ts';

export const answers: Answers = {
  'foam/density': answer({
    asks: 'Density of a foam, as the scale reads it',
    input: { tare: 'mass', full: 'mass', vessel: 'volume' },
    gives: 'density',
    work: (reading) => foamDensity(reading).apparent,
  }),
  'foam/expansion': answer({
    asks: 'Volumes of foam from one of solution, by weighing, the air left out of it',
    input: { tare: 'mass', full: 'mass', vessel: 'volume', solutionDensity: 'density' },
    gives: 'ratio',
    work: (reading) => foamDensity({ ...reading, airDensity: 0 }).expansion,
  }),
  'foam/standard-band': answer({
    asks: 'The band of densities standards name for preformed foam, its lower and upper end in kg/m³',
    input: {},
    gives: 'numbers',
    work: () => [STANDARD_FOAM_BAND.min, STANDARD_FOAM_BAND.max],
  }),
  'foam/air-density': answer({
    asks: 'Density of the workshop air the weighings assume',
    input: {},
    gives: 'density',
    work: () => AIR_DENSITY,
  }),
  'foam/vessel-volume': answer({
    asks: 'Volume of a vessel from weighing it full of water',
    input: { empty: 'mass', filled: 'mass', temperature: 'temperature' },
    gives: 'volume',
    work: (reading) => vesselVolume(reading).volume,
  }),
  'foam/concentrate-volume': answer({
    asks: 'Concentrate to measure out for this much foam at 1 : N by volume',
    input: { foamVolume: 'volume', foamDensity: 'density', partsWater: 'ratio' },
    gives: 'volume',
    work: (wanted) => foamingSolution(wanted).concentrateVolume,
  }),
};
