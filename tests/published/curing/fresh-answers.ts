import { chlorideSet } from '../../../src/core/curing/accelerator.ts';
import { screedDryingTime } from '../../../src/core/curing/drying.ts';
import * as evaporation from '../../../src/core/curing/evaporation.ts';
import { timeInAir } from '../../../src/core/curing/in-air.ts';
import { mixTemperature } from '../../../src/core/curing/mix-temperature.ts';
import { type SabinCement, sabinSet } from '../../../src/core/curing/set-by-water.ts';
import { thirdRuleFactor } from '../../../src/core/curing/third-rule.ts';
import { ICE_POINT } from '../../../src/core/quantity/constants.ts';
import { type Answers, answer } from '../answer.ts';

const weather = {
  concrete: 'temperature',
  air: 'temperature',
  humidity: 'ratio',
  wind: 'speed',
} as const;

function drying(of: {
  readonly concrete: number;
  readonly air: number;
  readonly humidity: number;
  readonly wind: number;
}): evaporation.Drying {
  return {
    concreteTemperature: of.concrete,
    airTemperature: of.air,
    relativeHumidity: of.humidity,
    windSpeed: of.wind,
  };
}

export const freshAnswers: Answers = {
  'curing/evaporation-uno': answer({
    asks: 'Water leaving fresh concrete by Uno, US form converted exactly',
    input: weather,
    gives: 'massFlux',
    work: (of) => evaporation.evaporationUno(drying(of)),
  }),
  'curing/evaporation-uno-printed-si': answer({
    asks: 'Water leaving fresh concrete by Uno, SI form as printed',
    input: weather,
    gives: 'massFlux',
    work: (of) => evaporation.evaporationUnoPrintedSi(drying(of)),
  }),
  'curing/evaporation-menzel': answer({
    asks: 'Water leaving fresh concrete by Menzel',
    input: weather,
    gives: 'massFlux',
    work: (of) => evaporation.evaporationMenzel(drying(of)),
  }),
  'curing/evaporation-limit': answer({
    asks: 'The limit of evaporation by its name',
    input: { name: 'text' },
    gives: 'massFlux',
    work: ({ name }) =>
      ({
        caution: evaporation.CAUTION_RATE,
        act: evaporation.ACTION_RATE,
        'US act': evaporation.US_ACTION_RATE,
      })[name] ?? Number.NaN,
  }),
  'curing/screed-drying': answer({
    asks: 'Time to dry by screed practice',
    input: { thickness: 'length' },
    gives: 'time',
    work: screedDryingTime,
  }),
  'curing/mix-temperature': answer({
    asks: 'Temperature of a mix from cement, water, aggregate and ice at 0 °C, specific heats 0.22 and 1',
    input: {
      cement: 'mass',
      cementTemperature: 'temperature',
      water: 'mass',
      waterTemperature: 'temperature',
      aggregate: 'mass',
      aggregateTemperature: 'temperature',
      ice: 'mass',
    },
    gives: 'temperature',
    work: (of) =>
      mixTemperature({
        ingredients: [
          { mass: of.cement, temperature: of.cementTemperature, specificHeat: 0.22 * 4187 },
          { mass: of.water, temperature: of.waterTemperature, specificHeat: 4187 },
          { mass: of.aggregate, temperature: of.aggregateTemperature, specificHeat: 0.22 * 4187 },
        ],
        ice: { mass: of.ice, temperature: ICE_POINT },
        waterSpecificHeat: 4187,
        latentHeat: 80 * 4187,
      }).temperature,
  }),
  'curing/sabin': answer({
    asks: 'Initial and final set of Sabin’s cement at a water content, minutes',
    input: { cement: 'text', waterCement: 'ratio' },
    gives: 'numbers',
    work: ({ cement, waterCement }) => {
      const { initial, final } = sabinSet({ cement: cement as SabinCement, waterCement });
      return [initial / 60, final / 60];
    },
  }),
  'curing/time-in-air': answer({
    asks: 'Time to gather an age while the part takes on the temperature of the air, the pace e to the distance from the air’s over a step',
    input: {
      needed: 'time',
      from: 'temperature',
      air: 'temperature',
      timeConstant: 'time',
      step: 'temperatureDifference',
    },
    gives: 'time',
    work: ({ needed, from, air, timeConstant, step }) =>
      timeInAir({
        needed,
        from,
        air: { temperature: air, timeConstant },
        pace: (temperature) => Math.exp((temperature - air) / step),
      }),
  }),
  'curing/third-rule': answer({
    asks: 'How many times longer set takes by the rule of a third',
    input: { referenceTemperature: 'temperature', temperature: 'temperature' },
    gives: 'ratio',
    work: ({ referenceTemperature, temperature }) =>
      thirdRuleFactor(temperature - referenceTemperature),
  }),
  'curing/chloride-cold': answer({
    asks: 'Set with calcium chloride in the cold over plain set in the warm',
    input: { dose: 'ratio', cold: 'temperature', warm: 'temperature' },
    gives: 'ratio',
    work: ({ dose, cold, warm }) =>
      chlorideSet({ dose, steel: false }).factor * thirdRuleFactor(cold - warm),
  }),
  'curing/chloride-shortest': answer({
    asks: 'Shortest set seen at a dose of calcium chloride, share of plain',
    input: { dose: 'ratio' },
    gives: 'ratio',
    work: ({ dose }) => chlorideSet({ dose, steel: false }).shortest,
  }),
};
