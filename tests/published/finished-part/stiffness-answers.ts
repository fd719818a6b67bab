import {
  FLEXURAL_RATIO,
  SPLITTING_RATIO_MINIMA,
  splittingComparators,
} from '../../../src/core/finished/flexural.ts';
import {
  flyAshModulus,
  pauwModulus,
  sandModulus,
  tadaModulus,
} from '../../../src/core/finished/modulus.ts';
import { type Answers, answer } from '../answer.ts';

export const stiffnessAnswers: Answers = {
  'finished-part/modulus-sand': answer({
    asks: 'Young’s modulus of sanded foamed concrete',
    input: { compressive: 'stress' },
    gives: 'stress',
    work: (of) => sandModulus(of).modulus,
  }),
  'finished-part/modulus-fly-ash': answer({
    asks: 'Young’s modulus of foamed concrete with coarse fly ash',
    input: { compressive: 'stress' },
    gives: 'stress',
    work: (of) => flyAshModulus(of).modulus,
  }),
  'finished-part/modulus-pauw': answer({
    asks: 'Young’s modulus from density and strength',
    input: { density: 'density', compressive: 'stress' },
    gives: 'stress',
    work: (of) => pauwModulus(of).modulus,
  }),
  'finished-part/modulus-tada': answer({
    asks: 'Young’s modulus from density alone',
    input: { density: 'density' },
    gives: 'stress',
    work: (of) => tadaModulus(of).modulus,
  }),
  'finished-part/splitting-normal': answer({
    asks: 'Splitting strength of normal-weight concrete, as a comparator',
    input: { compressive: 'stress' },
    gives: 'stress',
    beside: true,
    work: ({ compressive }) => splittingComparators(compressive).normalWeight,
  }),
  'finished-part/splitting-light': answer({
    asks: 'Splitting strength of lightweight-aggregate concrete, as a comparator',
    input: { compressive: 'stress' },
    gives: 'stress',
    beside: true,
    work: ({ compressive }) => splittingComparators(compressive).lightweight,
  }),
  'finished-part/splitting-minima': answer({
    asks: 'Least splitting over least compressive strength of the standard batch',
    input: {},
    gives: 'number',
    beside: true,
    work: () => SPLITTING_RATIO_MINIMA,
  }),
  'finished-part/flexural-ratio': answer({
    asks: 'Flexural over compressive strength, least and most',
    input: { of: 'text' },
    gives: 'numbers',
    work: ({ of }) => {
      const { low, high } = FLEXURAL_RATIO[of as keyof typeof FLEXURAL_RATIO];
      return [low, high];
    },
  }),
};
