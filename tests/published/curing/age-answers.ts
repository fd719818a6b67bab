import * as age from '../../../src/core/curing/age-factor.ts';
import { dinCuring, type GainClass } from '../../../src/core/curing/curing-rules.ts';
import { equivalentAge } from '../../../src/core/curing/equivalent-age.ts';
import { ONE_FREEZE_STRENGTH, REPEATED_FREEZE_STRENGTH } from '../../../src/core/curing/frost.ts';
import { temperatureHistory } from '../../../src/core/curing/history.ts';
import { nurseSaul, plowmanShare } from '../../../src/core/curing/nurse-saul.ts';
import * as growth from '../../../src/core/curing/strength-growth.ts';
import { DAY, HOUR, ICE_POINT } from '../../../src/core/quantity/constants.ts';
import { type Answers, answer } from '../answer.ts';

/** A history of stretches at constant temperature: days and degrees Celsius, jumping between them. */
function stretches(days: readonly number[], celsius: readonly number[]) {
  const times: number[] = [];
  const temperatures: number[] = [];
  let now = 0;
  days.forEach((length, i) => {
    // A jump is a microsecond wide: the history must rise in time.
    times.push(i === 0 ? 0 : now + 1e-6, now + length * DAY);
    temperatures.push(celsius[i]! + ICE_POINT, celsius[i]! + ICE_POINT);
    now += length * DAY;
  });
  return temperatureHistory({ times, temperatures });
}

export const ageAnswers: Answers = {
  'curing/age-model-code': answer({
    asks: 'Adjusted age by the model code after stretches of days at constant °C',
    input: { days: 'numbers', celsius: 'numbers' },
    gives: 'time',
    work: ({ days, celsius }) =>
      equivalentAge({ history: stretches(days, celsius), law: { law: 'model-code' } }).age,
  }),
  'curing/age-factor-model-code': answer({
    asks: 'Age factor by the model code',
    input: { temperature: 'temperature' },
    gives: 'ratio',
    work: age.modelCodeFactor,
  }),
  'curing/age-factor-arrhenius': answer({
    asks: 'Arrhenius age factor, reference 20 °C',
    input: { temperature: 'temperature', activationEnergy: 'molarEnergy' },
    gives: 'ratio',
    work: age.arrheniusFactor,
  }),
  'curing/age-factor-fhp': answer({
    asks: 'Age factor of Freiesleben Hansen and Pedersen',
    input: { temperature: 'temperature' },
    gives: 'ratio',
    work: age.fhpFactor,
  }),
  'curing/nurse-saul': answer({
    asks: 'Temperature–time in °C·h after stretches of days at constant °C',
    input: { days: 'numbers', celsius: 'numbers', datum: 'temperature' },
    gives: 'number',
    work: ({ days, celsius, datum }) =>
      nurseSaul({ history: stretches(days, celsius), datum }) / HOUR,
  }),
  'curing/plowman': answer({
    asks: 'Share of full-maturity strength by Plowman, from °C·h',
    input: { maturity: 'number', a: 'number', b: 'number' },
    gives: 'ratio',
    beside: true,
    work: ({ maturity, a, b }) => plowmanShare({ maturity: maturity * HOUR, a, b }),
  }),
  'curing/growth-coefficient': answer({
    asks: 'Growth coefficient s by class of cement',
    input: { cement: 'text', meanStrength: 'stress' },
    gives: 'ratio',
    beside: true,
    work: ({ cement, meanStrength }) =>
      growth.growthCoefficient({ cement: cement as growth.CementClass, meanStrength }),
  }),
  'curing/strength-share': answer({
    asks: 'Share of 28-day strength at an age',
    input: { age: 'time', cement: 'text', meanStrength: 'stress' },
    gives: 'ratio',
    beside: true,
    work: ({ age: at, cement, meanStrength }) =>
      growth.strengthShare({
        age: at,
        coefficient: growth.growthCoefficient({
          cement: cement as growth.CementClass,
          meanStrength,
        }),
      }),
  }),
  'curing/modulus-share': answer({
    asks: 'Share of 28-day modulus at an age',
    input: { age: 'time', cement: 'text' },
    gives: 'ratio',
    beside: true,
    work: ({ age: at, cement }) =>
      growth.modulusShare({
        age: at,
        coefficient: growth.growthCoefficient({ cement: cement as growth.CementClass }),
      }),
  }),
  'curing/frost-strength': answer({
    asks: 'Strength that stands freezing, once or repeatedly while saturated',
    input: { freezes: 'text' },
    gives: 'stress',
    work: ({ freezes }) => (freezes === 'once' ? ONE_FREEZE_STRENGTH : REPEATED_FREEZE_STRENGTH),
  }),
  'curing/din-1045-3': answer({
    asks: 'Shortest cure by DIN 1045-3 for rapid, medium, slow and very slow gain, days',
    input: { surface: 'temperature' },
    gives: 'numbers',
    work: ({ surface }) =>
      (['rapid', 'medium', 'slow', 'very-slow'] satisfies GainClass[]).map(
        (gain) => dinCuring({ surfaceTemperature: surface, gain }) / DAY,
      ),
  }),
};
