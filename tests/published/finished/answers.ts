import { hoff1972, kearsleyWainwright2002 } from '../../../src/core/finished/strength-forms.ts';
import {
  aci229Classes,
  c869TestBatch,
  caltransClasses,
  is2185Blocks,
} from '../../../src/core/finished/strength-relations/class-minima.ts';
import {
  aci523NeatCement,
  bcaTable,
  kado2018,
} from '../../../src/core/finished/strength-relations/ranges.ts';
import {
  MPA,
  type StrengthRelation,
} from '../../../src/core/finished/strength-relations/relation.ts';
import { PSI } from '../../../src/core/quantity/constants.ts';
import { type Answers, answer } from '../answer.ts';

const minimum = (asks: string, relation: StrengthRelation) =>
  answer({
    asks,
    input: { density: 'density' },
    gives: 'stress',
    work: ({ density }) => relation.at(density).low,
  });

const range = (asks: string, relation: StrengthRelation, unit: number) =>
  answer({
    asks,
    input: { density: 'density' },
    gives: 'numbers',
    work: ({ density }) => {
      const { low, high } = relation.at(density);
      return [low / unit, (high ?? Number.NaN) / unit];
    },
  });

export const answers: Answers = {
  'finished/caltrans-class': minimum(
    'Least strength of the class this cast density falls in',
    caltransClasses,
  ),
  'finished/aci-229r-class': minimum(
    'Least strength of the low-density class this density falls in',
    aci229Classes,
  ),
  'finished/test-batch': minimum(
    'Least strength of the standard test batch at this cast density',
    c869TestBatch,
  ),
  'finished/is-2185-block': minimum(
    'Least mean strength of a block of this oven-dry grade',
    is2185Blocks,
  ),
  'finished/bca-range': range(
    'Typical strength at this dry density, lower and upper end in MPa',
    bcaTable,
    MPA,
  ),
  'finished/neat-cement-range': range(
    'Typical strength of neat-cement cellular concrete of this oven-dry density, in psi',
    aci523NeatCement,
    PSI,
  ),
  'finished/sanded-range': range(
    'Strength one study found for sanded mixes at this density, in MPa',
    kado2018,
    MPA,
  ),
  'finished/hoff': answer({
    asks: 'Strength of neat-cement cellular concrete by Hoff’s power law of its solids',
    input: {
      wetDensity: 'density',
      waterCement: 'ratio',
      cementDensity: 'density',
      intrinsic: 'stress',
      exponent: 'number',
    },
    gives: 'stress',
    work: hoff1972,
  }),
  'finished/time-porosity': answer({
    asks: 'Strength from age and porosity by Kearsley and Wainwright’s form',
    input: { age: 'time', porosity: 'ratio' },
    gives: 'stress',
    beside: true,
    work: kearsleyWainwright2002,
  }),
};
