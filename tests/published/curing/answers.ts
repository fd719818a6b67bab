import * as moist from '../../../src/core/air/moist.ts';
import * as saturation from '../../../src/core/air/saturation.ts';
import { chlorideSet } from '../../../src/core/curing/accelerator.ts';
import * as age from '../../../src/core/curing/age-factor.ts';
import { dinCuring, type GainClass } from '../../../src/core/curing/curing-rules.ts';
import { screedDryingTime } from '../../../src/core/curing/drying.ts';
import { equivalentAge } from '../../../src/core/curing/equivalent-age.ts';
import * as evaporation from '../../../src/core/curing/evaporation.ts';
import { ONE_FREEZE_STRENGTH, REPEATED_FREEZE_STRENGTH } from '../../../src/core/curing/frost.ts';
import * as heat from '../../../src/core/curing/heat/cement-heat.ts';
import * as hydration from '../../../src/core/curing/heat/hydration.ts';
import * as series from '../../../src/core/curing/heat/slab-series.ts';
import {
  freshHeatCapacity,
  SPECIFIC_HEAT,
} from '../../../src/core/curing/heat/thermal-properties.ts';
import { temperatureHistory } from '../../../src/core/curing/history.ts';
import { mixTemperature } from '../../../src/core/curing/mix-temperature.ts';
import { nurseSaul, plowmanShare } from '../../../src/core/curing/nurse-saul.ts';
import { thirdRuleFactor } from '../../../src/core/curing/set.ts';
import { type SabinCement, sabinSet } from '../../../src/core/curing/set-by-water.ts';
import * as growth from '../../../src/core/curing/strength-growth.ts';
import { DAY, HOUR, ICE_POINT } from '../../../src/core/curing/units.ts';
import { type Answers, answer } from '../answer.ts';
import { convectiveSlab, heldSlab } from './slabs.ts';

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

export const answers: Answers = {
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
    work: ({ maturity, a, b }) => plowmanShare({ maturity: maturity * HOUR, a, b }),
  }),
  'curing/growth-coefficient': answer({
    asks: 'Growth coefficient s by class of cement',
    input: { cement: 'text', meanStrength: 'stress' },
    gives: 'ratio',
    work: ({ cement, meanStrength }) =>
      growth.growthCoefficient({ cement: cement as growth.CementClass, meanStrength }),
  }),
  'curing/strength-share': answer({
    asks: 'Share of 28-day strength at an age',
    input: { age: 'time', cement: 'text', meanStrength: 'stress' },
    gives: 'ratio',
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
    work: ({ age: at, cement }) =>
      growth.modulusShare({
        age: at,
        coefficient: growth.growthCoefficient({ cement: cement as growth.CementClass }),
      }),
  }),
  'curing/saturation-pressure': answer({
    asks: 'Saturation pressure over water or ice',
    input: { temperature: 'temperature' },
    gives: 'pressure',
    work: saturation.saturationPressure,
  }),
  'curing/saturation-pressure-tetens': answer({
    asks: 'Saturation pressure by Tetens',
    input: { temperature: 'temperature' },
    gives: 'pressure',
    work: saturation.saturationPressureTetens,
  }),
  'curing/saturation-pressure-magnus': answer({
    asks: 'Saturation pressure by Magnus',
    input: { temperature: 'temperature' },
    gives: 'pressure',
    work: saturation.saturationPressureMagnus,
  }),
  'curing/saturation-pressure-uno': answer({
    asks: 'Saturation pressure as Uno and Menzel use it',
    input: { temperature: 'temperature' },
    gives: 'pressure',
    work: saturation.saturationPressureUno,
  }),
  'curing/mean-saturation-pressure': answer({
    asks: 'Mean of the saturation pressures at the day’s lowest and highest temperature, by Tetens',
    input: { coldest: 'temperature', warmest: 'temperature' },
    gives: 'pressure',
    work: ({ coldest, warmest }) =>
      (saturation.saturationPressureTetens({ temperature: coldest }) +
        saturation.saturationPressureTetens({ temperature: warmest })) /
      2,
  }),
  'curing/dew-point': answer({
    asks: 'Dew point of air',
    input: { temperature: 'temperature', relativeHumidity: 'ratio' },
    gives: 'temperature',
    work: (air) => saturation.dewPoint({ vapourPressure: moist.vapourPressure(air) }),
  }),
  'curing/wet-bulb': answer({
    asks: 'Wet-bulb temperature of air',
    input: { temperature: 'temperature', relativeHumidity: 'ratio', pressure: 'pressure' },
    gives: 'temperature',
    work: moist.wetBulb,
  }),
  'curing/humidity-ratio': answer({
    asks: 'Water per mass of dry air, from vapour pressure',
    input: { vapourPressure: 'pressure', pressure: 'pressure' },
    gives: 'ratio',
    work: moist.humidityRatio,
  }),
  'curing/humidity-ratio-saturated': answer({
    asks: 'Water per mass of dry air in saturated air at 101325 Pa',
    input: { temperature: 'temperature' },
    gives: 'ratio',
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
    work: moist.humidityRatioFromWetBulb,
  }),
  'curing/enthalpy-saturated': answer({
    asks: 'Enthalpy of saturated air at 101325 Pa, per mass of dry air',
    input: { temperature: 'temperature' },
    gives: 'specificEnergy',
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
    work: moist.moistAirDensity,
  }),
  'curing/standard-pressure': answer({
    asks: 'Standard air pressure at a height',
    input: { altitude: 'length' },
    gives: 'pressure',
    work: moist.standardPressure,
  }),
  'curing/slab-series-held': answer({
    asks: 'Share of a step felt in a slab with both faces held, exact series',
    input: { fourier: 'ratio', fromFace: 'ratio' },
    gives: 'ratio',
    work: series.slabSeriesHeld,
  }),
  'curing/slab-held': answer({
    asks: 'Temperature rise of a slab of half thickness 1 m, λ = ρc = 1, faces raised by 100 K: our scheme',
    input: { fromFace: 'length', time: 'time' },
    gives: 'temperatureDifference',
    work: ({ fromFace, time }) => heldSlab({ fromFace, time, cells: 400, steps: 400 }),
  }),
  'curing/slab-roots': answer({
    asks: 'First four roots of ξ tan ξ = Bi',
    input: { biot: 'ratio' },
    gives: 'numbers',
    work: ({ biot }) => series.biotRoots({ biot, count: 4 }),
  }),
  'curing/slab-weights': answer({
    asks: 'Weights of the first four roots of ξ tan ξ = Bi',
    input: { biot: 'ratio' },
    gives: 'numbers',
    work: ({ biot }) => series.biotRoots({ biot, count: 4 }).map(series.biotWeight),
  }),
  'curing/slab-one-term': answer({
    asks: 'First root and weight of the convective slab',
    input: { biot: 'ratio' },
    gives: 'numbers',
    work: ({ biot }) => {
      const root = series.biotRoots({ biot, count: 1 })[0]!;
      return [root, series.biotWeight(root)];
    },
  }),
  'curing/slab-series-convective': answer({
    asks: 'Share of the first difference left at the middle and at the face of a slab in air, exact series',
    input: { biot: 'ratio', fourier: 'ratio' },
    gives: 'numbers',
    work: (of) => [0, 1].map((fromMiddle) => series.slabSeriesConvective({ ...of, fromMiddle })),
  }),
  'curing/slab-convective': answer({
    asks: 'Share of the first difference left at the middle and at the face of a slab in air: our scheme',
    input: { biot: 'ratio', fourier: 'ratio' },
    gives: 'numbers',
    work: ({ biot, fourier }) => convectiveSlab({ biot, fourier, cells: 200, steps: 400 }),
  }),
  'curing/hydration-degree': answer({
    asks: 'Degree of hydration at an adjusted age',
    input: { age: 'time', ultimate: 'ratio', tau: 'time', beta: 'ratio' },
    gives: 'ratio',
    work: hydration.degreeOfHydration,
  }),
  'curing/hydration-degree-simple': answer({
    asks: 'Degree of hydration by t/(b + t)',
    input: { age: 'time', halfAge: 'time' },
    gives: 'ratio',
    work: hydration.simpleDegreeOfHydration,
  }),
  'curing/hydration-ultimate': answer({
    asks: 'Degree of hydration a mix can end at',
    input: { waterCement: 'ratio', flyAsh: 'ratio', slag: 'ratio' },
    gives: 'ratio',
    work: hydration.ultimateDegree,
  }),
  'curing/binder-heat': answer({
    asks: 'Heat of a blended binder, masses in lb',
    input: {
      cement: 'mass',
      cementHeat: 'specificEnergy',
      flyAsh: 'mass',
      flyAshLime: 'ratio',
      slag: 'mass',
      slagHeat: 'specificEnergy',
      other: 'mass',
    },
    gives: 'specificEnergy',
    work: heat.binderHeat,
  }),
  'curing/adiabatic-energy': answer({
    asks: 'Heat a cubic metre gives off in all, MJ',
    input: { heat: 'specificEnergy', degree: 'ratio', cement: 'density' },
    gives: 'number',
    work: (of) => hydration.adiabaticEnergy(of) / 1e6,
  }),
  'curing/adiabatic-rise': answer({
    asks: 'Warming of a mix without loss',
    input: {
      heat: 'specificEnergy',
      degree: 'ratio',
      cement: 'density',
      density: 'density',
      specificHeat: 'specificHeat',
    },
    gives: 'temperatureDifference',
    work: ({ density, specificHeat, ...of }) =>
      hydration.adiabaticRise({ ...of, heatCapacity: density * specificHeat }),
  }),
  'curing/heat-given-off': answer({
    asks: 'Heat the published ordinary cement has given off at an age at 23 °C',
    input: { age: 'time' },
    gives: 'specificEnergy',
    work: ({ age: at }) => {
      const cement = hydration.ORDINARY_CEMENT;
      const factor = age.arrheniusFactor({ ...cement, temperature: ICE_POINT + 23 });
      return cement.heat * hydration.degreeOfHydration({ ...cement, age: at * factor });
    },
  }),
  'curing/fresh-specific-heat': answer({
    asks: 'Specific heat of a fresh mix',
    input: {
      cement: 'density',
      sand: 'density',
      water: 'density',
      cementSpecificHeat: 'specificHeat',
    },
    gives: 'specificHeat',
    work: (of) => freshHeatCapacity(of) / (of.cement + of.sand + of.water),
  }),
  'curing/cement-specific-heat': answer({
    asks: 'Specific heat of dry cement',
    input: {},
    gives: 'specificHeat',
    work: () => SPECIFIC_HEAT.cement,
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
  'curing/third-rule': answer({
    asks: 'How many times longer set takes by the rule of a third',
    input: { referenceTemperature: 'temperature', temperature: 'temperature' },
    gives: 'ratio',
    work: thirdRuleFactor,
  }),
  'curing/chloride-cold': answer({
    asks: 'Set with calcium chloride in the cold over plain set in the warm',
    input: { dose: 'ratio', cold: 'temperature', warm: 'temperature' },
    gives: 'ratio',
    work: ({ dose, cold, warm }) =>
      chlorideSet({ dose, steel: false }).factor *
      thirdRuleFactor({ referenceTemperature: warm, temperature: cold }),
  }),
  'curing/chloride-shortest': answer({
    asks: 'Shortest set seen at a dose of calcium chloride, share of plain',
    input: { dose: 'ratio' },
    gives: 'ratio',
    work: ({ dose }) => chlorideSet({ dose, steel: false }).shortest,
  }),
};
