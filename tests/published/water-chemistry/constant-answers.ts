import {
  debyeHueckel,
  logGammaDavies,
  logGammaExtended,
  relativePermittivity,
} from '../../../src/core/water/carbonate/activity.ts';
import * as named from '../../../src/core/water/carbonate/constants.ts';
import { type Constant, logK, WATER } from '../../../src/core/water/carbonate/log-k.ts';
import { type Answers, answer } from '../answer.ts';

const constants: Readonly<Record<string, Constant>> = { ...named, WATER };
const kelvin = (celsius: number) => celsius + 273.15;

export const constantAnswers: Answers = {
  'carbonate/log-k': answer({
    asks: 'What is log₁₀ of this constant at this temperature (°C)?',
    input: { of: 'text', celsius: 'number' },
    gives: 'number',
    work: ({ of, celsius }) => {
      const constant = constants[of];
      if (!constant) throw new Error(`no constant '${of}'`);
      return logK(constant, kelvin(celsius));
    },
  }),
  'carbonate/debye-hueckel-a': answer({
    asks: 'What is A of Debye and Hückel, (kg/mol)^½, at this temperature (°C)?',
    input: { celsius: 'number', permittivity: 'number', density: 'number' },
    gives: 'number',
    work: ({ celsius, permittivity, density }) =>
      debyeHueckel(kelvin(celsius), permittivity ? { permittivity, density } : undefined).a,
  }),
  'carbonate/debye-hueckel-b': answer({
    asks: 'What is B of Debye and Hückel, (kg/mol)^½ per ångström, at this temperature (°C)?',
    input: { celsius: 'number', permittivity: 'number', density: 'number' },
    gives: 'number',
    work: ({ celsius, permittivity, density }) =>
      debyeHueckel(kelvin(celsius), permittivity ? { permittivity, density } : undefined).b,
  }),
  'carbonate/permittivity': answer({
    asks: 'What is the relative permittivity of water at 25 °C and this pressure (bar)?',
    input: { bar: 'number' },
    gives: 'number',
    work: ({ bar }) => relativePermittivity(298.15, bar),
  }),
  'carbonate/gamma-davies': answer({
    asks: 'What is the activity coefficient by Davies at 25 °C (ionic strength in mol/kg)?',
    input: { charge: 'number', strength: 'number' },
    gives: 'number',
    work: ({ charge, strength }) => 10 ** logGammaDavies(debyeHueckel(298.15), charge, strength),
  }),
  'carbonate/gamma-limiting': answer({
    asks: 'What is log₁₀ γ at 20 °C by the limiting law (an ion of no size)?',
    input: { charge: 'number', strength: 'number' },
    gives: 'number',
    work: ({ charge, strength }) =>
      logGammaExtended(
        debyeHueckel(293.15, { permittivity: 80.1, density: 998.2071 }),
        { charge, size: 0, slope: 0 },
        strength,
      ),
  }),
};
