import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acceleratorFactor, chlorideSet } from '../../../src/core/curing/accelerator.ts';
import * as factor from '../../../src/core/curing/age-factor.ts';
import { diffusionDryingTime, screedDryingTime } from '../../../src/core/curing/drying.ts';
import * as evaporation from '../../../src/core/curing/evaporation.ts';
import * as cement from '../../../src/core/curing/heat/cement-heat.ts';
import { conduct } from '../../../src/core/curing/heat/conduction.ts';
import { outdoorTransfer, steadyFace, throughLayers } from '../../../src/core/curing/heat/face.ts';
import * as hydration from '../../../src/core/curing/heat/hydration.ts';
import * as thermal from '../../../src/core/curing/heat/thermal-properties.ts';
import { dailyHistory, steadyHistory } from '../../../src/core/curing/history.ts';
import {
  iceFor,
  mixTemperature,
  waterTemperatureFor,
} from '../../../src/core/curing/mix-temperature.ts';
import { nurseSaul, plowmanShare } from '../../../src/core/curing/nurse-saul.ts';
import { setByTemperature, setRace } from '../../../src/core/curing/set.ts';
import { sabinFactors } from '../../../src/core/curing/set-by-water.ts';
import { fitStrength } from '../../../src/core/curing/strength-fit.ts';
import * as growth from '../../../src/core/curing/strength-growth.ts';
import { DomainError } from '../../../src/core/domain-error.ts';

/** Any number a stray key may make, and ordinary ones. */
const any = fc.oneof(
  fc.double(),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.double({ min: 250, max: 400, noNaN: true }),
  fc.constantFrom(0, -1, 1e300, 1e-300, 1e12, Number.NaN, Number.POSITIVE_INFINITY),
);

/** Every number found anywhere in a result. */
function numbers(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (value instanceof Float64Array) return [...value];
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbers);
  return [];
}

type Ask = (n: () => number) => unknown;
const asks: Readonly<Record<string, Ask>> = {
  evaporation: (n) =>
    evaporation.evaporation({
      concreteTemperature: n(),
      airTemperature: n(),
      relativeHumidity: n(),
      windSpeed: n(),
    }),
  menzel: (n) =>
    evaporation.evaporationMenzel({
      concreteTemperature: n(),
      airTemperature: n(),
      relativeHumidity: n(),
      windSpeed: n(),
    }),
  waterLost: (n) => evaporation.waterLost({ rate: n(), area: n(), duration: n() }),
  arrhenius: (n) =>
    factor.arrheniusFactor({
      temperature: n(),
      activationEnergy: n(),
      referenceTemperature: n(),
    }),
  fhp: (n) => factor.fhpFactor({ temperature: n() }),
  modelCode: (n) => factor.modelCodeFactor({ temperature: n() }),
  nurseSaul: (n) =>
    nurseSaul({ history: steadyHistory({ temperature: n(), duration: n() }), datum: n() }),
  plowman: (n) => plowmanShare({ maturity: n(), a: 20, b: 60 }),
  dailyHistory: (n) =>
    dailyHistory({ days: [{ coldest: n(), warmest: n() }], start: n(), step: n() }),
  strengthShare: (n) => growth.strengthShare({ age: n(), coefficient: n() }),
  ageForShare: (n) => growth.ageForShare({ share: n(), coefficient: n() }) ?? 0,
  fitStrength: (n) =>
    fitStrength({
      results: [
        { age: n(), strength: n() },
        { age: n(), strength: n() },
      ],
      coefficient: 0.25,
    }),
  bogue: (n) =>
    cement.cementHeat(cement.bogue({ cao: n(), sio2: n(), al2o3: n(), fe2o3: n(), so3: n() })),
  binderHeat: (n) => cement.binderHeat({ cement: n(), cementHeat: n(), slag: n(), flyAsh: n() }),
  degree: (n) => hydration.degreeOfHydration({ age: n(), ultimate: n(), tau: n(), beta: n() }),
  hydrationOf: (n) =>
    hydration.hydrationOf({ compounds: { c3s: n(), c3a: n(), c4af: n(), so3: n() }, blaine: n() }),
  ultimate: (n) => hydration.ultimateDegree({ waterCement: n(), flyAsh: n(), slag: n() }),
  adiabaticRise: (n) =>
    hydration.adiabaticRise({ heat: n(), degree: n(), cement: n(), heatCapacity: n() }),
  freshHeat: (n) => thermal.freshHeatCapacity({ cement: n(), water: n(), sand: n() }),
  mostFresh: (n) => thermal.mostFreshConductivity({ cement: n(), water: n(), sand: n() }),
  outdoorTransfer: (n) => outdoorTransfer({ windSpeed: n() }),
  throughLayers: (n) =>
    throughLayers({ film: n(), layers: [{ thickness: n(), conductivity: n() }] }),
  throughShells: (n) =>
    throughLayers({
      film: n(),
      layers: [{ thickness: n(), conductivity: n() }],
      around: { round: 2, radius: n() },
    }),
  conduct: (n) =>
    conduct({
      thickness: n(),
      conductivity: n(),
      heatCapacity: n(),
      initialTemperature: n(),
      near: steadyFace({ temperature: n(), transfer: n() }),
      far: steadyFace({ temperature: n(), transfer: 8 }),
      duration: n(),
      step: n(),
      cells: 6,
      hydration: { ...hydration.ORDINARY_CEMENT, cement: n() },
    }).energy,
  screed: (n) => screedDryingTime({ thickness: n() }),
  diffusion: (n) =>
    diffusionDryingTime({ thickness: n(), faces: 1, initial: n(), target: n(), resting: n() }),
  mixTemperature: (n) =>
    mixTemperature({
      ingredients: [{ mass: n(), temperature: n(), specificHeat: n() }],
      ice: { mass: n(), temperature: n() },
    }),
  waterTemperature: (n) =>
    waterTemperatureFor({
      others: [{ mass: n(), temperature: n(), specificHeat: n() }],
      water: n(),
      wanted: n(),
    }),
  ice: (n) =>
    iceFor({
      others: [{ mass: n(), temperature: n(), specificHeat: 900 }],
      water: n(),
      waterTemperature: n(),
      wanted: n(),
    }),
  set: (n) =>
    setByTemperature({
      reference: { initial: n(), final: n() },
      referenceTemperature: n(),
      temperature: n(),
      law: { law: 'arrhenius', activationEnergy: n() },
    }),
  race: (n) => setRace({ initialSet: n(), foamTime: n(), settling: { depth: n(), after: n() } }),
  sabin: (n) => sabinFactors({ from: n(), to: n() }),
  chloride: (n) => chlorideSet({ dose: n(), steel: false }),
  accelerator: (n) => acceleratorFactor({ dose: n(), lowest: n(), highest: n(), claimed: n() }),
};

describe('whatever is typed, the answer is finite or refused by name', () => {
  test.each(Object.keys(asks))('%s', (name) => {
    fc.assert(
      fc.property(fc.array(any, { minLength: 14, maxLength: 14 }), (given) => {
        let next = 0;
        try {
          const result = asks[name]!(() => given[next++]!);
          for (const each of numbers(result)) expect(each).toSatisfy(Number.isFinite);
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
        }
      }),
      { numRuns: 600, endOnFailure: true },
    );
  });
});
