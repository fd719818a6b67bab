import * as moist from '../../../src/core/air/moist.ts';
import * as saturation from '../../../src/core/air/saturation.ts';
import { type Answers, answer } from '../answer.ts';

export const airAnswers: Answers = {
  'curing/saturation-pressure': answer({
    asks: 'Saturation pressure over water or ice',
    input: { temperature: 'temperature' },
    gives: 'pressure',
    beside: true,
    work: saturation.saturationPressure,
  }),
  'curing/saturation-pressure-tetens': answer({
    asks: 'Saturation pressure by Tetens',
    input: { temperature: 'temperature' },
    gives: 'pressure',
    beside: true,
    work: saturation.saturationPressureTetens,
  }),
  'curing/saturation-pressure-magnus': answer({
    asks: 'Saturation pressure by Magnus',
    input: { temperature: 'temperature' },
    gives: 'pressure',
    beside: true,
    work: saturation.saturationPressureMagnus,
  }),
  'curing/saturation-pressure-uno': answer({
    asks: 'Saturation pressure as Uno and Menzel use it',
    input: { temperature: 'temperature' },
    gives: 'pressure',
    work: saturation.saturationPressureUno,
  }),
  'curing/dew-point': answer({
    asks: 'Dew point of air',
    input: { temperature: 'temperature', relativeHumidity: 'ratio' },
    gives: 'temperature',
    beside: true,
    work: (air) => saturation.dewPoint({ vapourPressure: moist.vapourPressure(air) }),
  }),
  'curing/wet-bulb': answer({
    asks: 'Wet-bulb temperature of air',
    input: { temperature: 'temperature', relativeHumidity: 'ratio', pressure: 'pressure' },
    gives: 'temperature',
    beside: true,
    work: moist.wetBulb,
  }),
  'curing/humidity-ratio': answer({
    asks: 'Water per mass of dry air, from vapour pressure',
    input: { vapourPressure: 'pressure', pressure: 'pressure' },
    gives: 'ratio',
    beside: true,
    work: moist.humidityRatio,
  }),
  'curing/humidity-ratio-saturated': answer({
    asks: 'Water per mass of dry air in saturated air at 101325 Pa',
    input: { temperature: 'temperature' },
    gives: 'ratio',
    beside: true,
    work: ({ temperature }) =>
      moist.humidityRatio({
        vapourPressure: saturation.saturationPressure({ temperature }),
        pressure: moist.SEA_LEVEL_PRESSURE,
      }),
  }),
  'curing/humidity-ratio-wet-bulb': answer({
    asks: 'Water per mass of dry air, from wet and dry bulb',
    input: { temperature: 'temperature', wetBulb: 'temperature', pressure: 'pressure' },
    gives: 'ratio',
    beside: true,
    work: moist.humidityRatioFromWetBulb,
  }),
  'curing/enthalpy-saturated': answer({
    asks: 'Enthalpy of saturated air at 101325 Pa, per mass of dry air',
    input: { temperature: 'temperature' },
    gives: 'specificEnergy',
    beside: true,
    work: ({ temperature }) =>
      moist.moistEnthalpy({
        temperature,
        humidityRatio: moist.humidityRatio({
          vapourPressure: saturation.saturationPressure({ temperature }),
          pressure: moist.SEA_LEVEL_PRESSURE,
        }),
      }),
  }),
  'curing/air-density': answer({
    asks: 'Density of moist air',
    input: { temperature: 'temperature', humidityRatio: 'ratio', pressure: 'pressure' },
    gives: 'density',
    beside: true,
    work: moist.moistAirDensity,
  }),
  'curing/standard-pressure': answer({
    asks: 'Standard air pressure at a height',
    input: { altitude: 'length' },
    gives: 'pressure',
    beside: true,
    work: moist.standardPressure,
  }),
};
