import { gelSpaceRatio } from '../../../src/core/finished/gel-space.ts';
import {
  type CuringWater,
  FULL_HYDRATION_WATER,
  greatestHydration,
  POWERS_2001,
  POWERS_BENTZ,
  POWERS_PER_GRAM,
  type PowersVolumes,
  powersVolumes,
} from '../../../src/core/finished/powers.ts';
import { type Answers, answer } from '../answer.ts';

type NumberOf<T> = { [K in keyof T]: T[K] extends number ? K : never }[keyof T];

type Volume = NumberOf<PowersVolumes>;

export const pasteAnswers: Answers = {
  'finished-part/powers-volume': answer({
    asks: 'A share of hardened paste by Powers’ model (`capillary`: water-filled and emptied together)',
    input: { part: 'text', set: 'text', waterCement: 'number', degree: 'number', curing: 'text' },
    gives: 'number',
    work: ({ part, set, waterCement, degree, curing }) => {
      const volumes = powersVolumes({
        waterCement,
        degree,
        air: 0,
        inert: 0,
        reaction: set === 'powers-bentz' ? POWERS_BENTZ : POWERS_2001,
        curing: curing as CuringWater,
        waterDensity: 1000,
      });
      return part === 'capillary'
        ? volumes.capillaryWater + volumes.emptied
        : volumes[part as Volume];
    },
  }),
  'finished-part/gel-space': answer({
    asks: 'Gel–space ratio',
    input: { waterCement: 'number', degree: 'number', airPerCement: 'number' },
    gives: 'number',
    work: gelSpaceRatio,
  }),
  'finished-part/greatest-hydration': answer({
    asks: 'How far the cement can react before its water is used up',
    input: { waterCement: 'number', curing: 'text' },
    gives: 'number',
    work: ({ waterCement, curing }) =>
      greatestHydration({ waterCement, curing: curing as CuringWater }),
  }),
  'finished-part/water-gap': answer({
    asks: 'Water that sealed cement needs beyond cement kept under water, g/g',
    input: {},
    gives: 'number',
    work: () => FULL_HYDRATION_WATER.sealed - FULL_HYDRATION_WATER.saturated,
  }),
  'finished-part/water-sealed-from-parts': answer({
    asks: 'Water to hydrate cement sealed, from bound and gel water, g/g',
    input: {},
    gives: 'number',
    beside: true,
    work: () => POWERS_PER_GRAM.bound + POWERS_PER_GRAM.gel,
  }),
  'finished-part/water-saturated-from-parts': answer({
    asks: 'Water to hydrate cement kept under water, from its parts, g/g',
    input: {},
    gives: 'number',
    beside: true,
    work: () => POWERS_PER_GRAM.bound + POWERS_PER_GRAM.gel - POWERS_PER_GRAM.shrinkage,
  }),
};
