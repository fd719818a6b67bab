import { concentrateShare, DILUTIONS } from '../../../src/core/foam/dilution.ts';
import { drainageRate, timeToDrain } from '../../../src/core/foam/drainage-curve.ts';
import { drainedByVolume } from '../../../src/core/foam/drained.ts';
import {
  glycerolDensity,
  glycerolViscosity,
  idealMixtureDensity,
} from '../../../src/core/foam/glycerol.ts';
import { glycerolFreezing } from '../../../src/core/foam/glycerol-freezing.ts';
import { waterDensity } from '../../../src/core/water/density.ts';
import { waterSurfaceTension } from '../../../src/core/water/surface-tension.ts';
import { waterViscosity } from '../../../src/core/water/viscosity.ts';
import { type Answers, answer } from '../answer.ts';

const mixture = { glycerol: 'ratio', temperature: 'temperature' } as const;
const curve = { exponent: 'number', c: 'number' } as const;
const halfTime = ({ exponent, c }: { exponent: number; c: number }) => c ** (1 / exponent);

export const answers: Answers = {
  'glycerol/viscosity': answer({
    asks: 'Viscosity of a glycerol–water mixture, glycerol by mass',
    input: mixture,
    gives: 'viscosity',
    work: (of) => glycerolViscosity(of).viscosity,
  }),
  'glycerol/density': answer({
    asks: 'Density of a glycerol–water mixture, glycerol by mass',
    input: mixture,
    gives: 'density',
    work: (of) => glycerolDensity(of).density,
  }),
  'glycerol/specific-gravity': answer({
    asks: 'Density of a glycerol–water mixture at 20 °C over that of water at 20 °C',
    input: { glycerol: 'ratio' },
    gives: 'ratio',
    work: ({ glycerol }) =>
      glycerolDensity({ glycerol, temperature: 293.15 }).density / waterDensity(293.15),
  }),
  'glycerol/ideal-density': answer({
    asks: 'What a glycerol–water mixture would weigh if the volumes of its parts added',
    input: mixture,
    gives: 'density',
    work: idealMixtureDensity,
  }),
  'glycerol/freezing': answer({
    asks: 'Freezing point of a glycerol–water mixture, glycerol by mass',
    input: { glycerol: 'ratio' },
    gives: 'temperature',
    work: (of) => glycerolFreezing(of).freezing,
  }),
  'water/viscosity': answer({
    asks: 'Viscosity of water',
    input: { temperature: 'temperature' },
    gives: 'viscosity',
    work: (of) => waterViscosity(of).viscosity,
  }),
  'water/surface-tension': answer({
    asks: 'Surface tension of water',
    input: { temperature: 'temperature' },
    gives: 'surfaceTension',
    work: waterSurfaceTension,
  }),
  'drainage/drained': answer({
    asks: 'Share of a foam’s liquid drained, from the volume collected',
    input: { drained: 'volume', foam: 'volume', expansion: 'ratio' },
    gives: 'ratio',
    work: drainedByVolume,
  }),
  'drainage/time': answer({
    asks: 'Time by which a share has drained, in the unit of time c is told in: v(t) = tⁿ/(c + tⁿ)',
    input: { ...curve, share: 'number' },
    gives: 'number',
    work: ({ share, ...of }) =>
      timeToDrain({ drainage: { exponent: of.exponent, halfTime: halfTime(of) }, share }),
  }),
  'drainage/rate-at-half-time': answer({
    asks: 'Slope of the drained share at the half time, per unit of time: v(t) = tⁿ/(c + tⁿ)',
    input: curve,
    gives: 'number',
    beside: true,
    work: (of) =>
      drainageRate({
        drainage: { exponent: of.exponent, halfTime: halfTime(of) },
        time: halfTime(of),
      }),
  }),
  'dilution/share': answer({
    asks: 'Concentrate in the solution by volume, from a dilution as it is stated',
    input: {
      convention: 'text',
      stated: 'number',
      concentrateDensity: 'density',
      waterDensity: 'density',
    },
    gives: 'ratio',
    work: ({ convention, ...of }) =>
      concentrateShare({ ...of, convention: DILUTIONS.find((known) => known === convention)! })
        .byVolume,
  }),
};
