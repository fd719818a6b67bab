import * as age from '../../../src/core/curing/age-factor.ts';
import * as heat from '../../../src/core/curing/heat/cement-heat.ts';
import * as hydration from '../../../src/core/curing/heat/hydration.ts';
import * as series from '../../../src/core/curing/heat/slab-series.ts';
import {
  freshHeatCapacity,
  SPECIFIC_HEAT,
} from '../../../src/core/curing/heat/thermal-properties.ts';
import { ICE_POINT } from '../../../src/core/quantity/constants.ts';
import { type Answers, answer } from '../answer.ts';
import { convectiveSlab, heldSlab } from './slabs.ts';

export const heatAnswers: Answers = {
  'curing/slab-series-held': answer({
    asks: 'Share of a step felt in a slab with both faces held, exact series',
    input: { fourier: 'ratio', fromFace: 'ratio' },
    gives: 'ratio',
    beside: true,
    work: series.slabSeriesHeld,
  }),
  'curing/slab-held': answer({
    asks: 'Temperature rise of a slab of half thickness 1 m, λ = ρc = 1, faces raised by 100 K: our scheme',
    input: { fromFace: 'length', time: 'time' },
    gives: 'temperatureDifference',
    beside: true,
    work: ({ fromFace, time }) => heldSlab({ fromFace, time, cells: 400, steps: 400 }),
  }),
  'curing/slab-roots': answer({
    asks: 'First four roots of ξ tan ξ = Bi',
    input: { biot: 'ratio' },
    gives: 'numbers',
    beside: true,
    work: ({ biot }) => series.biotRoots({ biot, count: 4 }),
  }),
  'curing/slab-weights': answer({
    asks: 'Weights of the first four roots of ξ tan ξ = Bi',
    input: { biot: 'ratio' },
    gives: 'numbers',
    beside: true,
    work: ({ biot }) => series.biotRoots({ biot, count: 4 }).map(series.biotWeight),
  }),
  'curing/slab-one-term': answer({
    asks: 'First root and weight of the convective slab',
    input: { biot: 'ratio' },
    gives: 'numbers',
    beside: true,
    work: ({ biot }) => {
      const root = series.biotRoots({ biot, count: 1 })[0]!;
      return [root, series.biotWeight(root)];
    },
  }),
  'curing/slab-series-convective': answer({
    asks: 'Share of the first difference left at the middle and at the face of a slab in air, exact series',
    input: { biot: 'ratio', fourier: 'ratio' },
    gives: 'numbers',
    beside: true,
    work: (of) => [0, 1].map((fromMiddle) => series.slabSeriesConvective({ ...of, fromMiddle })),
  }),
  'curing/slab-convective': answer({
    asks: 'Share of the first difference left at the middle and at the face of a slab in air: our scheme',
    input: { biot: 'ratio', fourier: 'ratio' },
    gives: 'numbers',
    beside: true,
    work: ({ biot, fourier }) => convectiveSlab({ biot, fourier, cells: 200, steps: 400 }),
  }),
  'curing/hydration-degree': answer({
    asks: 'Degree of hydration at an adjusted age',
    input: { age: 'time', ultimate: 'ratio', tau: 'time', beta: 'ratio' },
    gives: 'ratio',
    beside: true,
    work: hydration.degreeOfHydration,
  }),
  'curing/hydration-degree-simple': answer({
    asks: 'Degree of hydration by t/(b + t)',
    input: { age: 'time', halfAge: 'time' },
    gives: 'ratio',
    beside: true,
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
    beside: true,
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
    beside: true,
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
};
