import { expect, test } from 'vitest';
import { arrheniusFactor, fhpFactor } from '../../../src/core/curing/age-factor.ts';
import { dinCuring } from '../../../src/core/curing/curing-rules.ts';
import { evaporationUno } from '../../../src/core/curing/evaporation.ts';
import { steadyFace, throughLayers } from '../../../src/core/curing/heat/face.ts';
import {
  dailyHistory,
  steadyHistory,
  temperatureHistory,
} from '../../../src/core/curing/history.ts';
import { nurseSaul } from '../../../src/core/curing/nurse-saul.ts';
import { strengthShare } from '../../../src/core/curing/strength-growth.ts';
import { waterSurfaceTension } from '../../../src/core/water/surface-tension.ts';
import { expectLimits } from '../refuses.ts';

const kelvin = { takes: [150, 500], refuses: [149.9, 500.1, Number.NaN] };

test('every function of curing temperature takes 150 to 500 K, as its comment says', () => {
  const at = (of: { temperature: number }) => of;
  expectLimits(
    ({ temperature }) => temperatureHistory({ times: [0], temperatures: [temperature] }),
    at({ temperature: 293 }),
    { temperature: kelvin },
  );
  expectLimits(steadyHistory, { temperature: 293, duration: 60 }, { temperature: kelvin });
  expectLimits(steadyFace, { temperature: 293, transfer: 8 }, { temperature: kelvin });
  expectLimits(fhpFactor, at({ temperature: 293 }), {
    temperature: { takes: [180, 500], refuses: [149.9, 500.1] },
  });
  expect(() => fhpFactor({ temperature: 179 })).toThrow('activationEnergy');
  expectLimits(
    arrheniusFactor,
    { temperature: 293, activationEnergy: 4e4, referenceTemperature: 293 },
    {
      temperature: kelvin,
      referenceTemperature: kelvin,
      activationEnergy: { takes: [0, 200_000], refuses: [-1, 200_001] },
    },
  );
  expectLimits(
    ({ surfaceTemperature }) => dinCuring({ surfaceTemperature, gain: 'slow' }),
    { surfaceTemperature: 293 },
    { surfaceTemperature: kelvin },
  );
  const history = steadyHistory({ temperature: 293, duration: 60 });
  expectLimits(({ datum }) => nurseSaul({ history, datum }), { datum: 263 }, { datum: kelvin });
});

test('refuses a surface film of zero coefficient', () => {
  expectLimits(
    ({ film }) => throughLayers({ film, layers: [{ thickness: 0.02, conductivity: 0.13 }] }),
    { film: 8 },
    { film: { takes: [1e-3], refuses: [0, -8, Number.NaN] } },
  );
});

test('growth coefficients, weather and pure water have the limits that their comments give', () => {
  expectLimits(
    strengthShare,
    { age: 86_400, coefficient: 0.2 },
    { age: { takes: [0], refuses: [-1] }, coefficient: { takes: [0, 2], refuses: [-0.1, 2.01] } },
  );
  const weather = {
    concreteTemperature: 293,
    airTemperature: 293,
    relativeHumidity: 0.5,
    windSpeed: 2,
  };
  const [zeroFahrenheit, boil] = [273.15 - 160 / 9, 373.15];
  const met = { takes: [zeroFahrenheit + 1e-9, boil], refuses: [zeroFahrenheit - 0.1, boil + 0.1] };
  expectLimits(evaporationUno, weather, { concreteTemperature: met, airTemperature: met });
  expectLimits(
    waterSurfaceTension,
    { temperature: 293 },
    { temperature: { takes: [273.15, 647.096], refuses: [273.14, 647.1] } },
  );
});

test('a history made from days has points every quarter of an hour unless asked otherwise', () => {
  const days = [{ coldest: 278, warmest: 288 }];
  expect(dailyHistory({ days })).toEqual(dailyHistory({ days, step: 900 }));
  expect(dailyHistory({ days }).times).toHaveLength(97);
});
