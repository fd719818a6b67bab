import { firstOrderCorrelated } from '../../../src/core/uncertainty/correlated.ts';
import { firstOrder } from '../../../src/core/uncertainty/first-order.ts';
import { type Answers, answer } from '../answer.ts';
import { beyondAnswers } from './beyond-answers.ts';
import { gaugeBlock } from './gauge-block.ts';

export const answers: Answers = {
  ...beyondAnswers,
  'uncertainty/gauge-block-length': answer({
    asks: 'The length of the end gauge, in nm',
    input: { x: 'numbers', u: 'numbers' },
    gives: 'number',
    work: ({ x, u }) => firstOrder(gaugeBlock, x, u).value,
  }),
  'uncertainty/gauge-block': answer({
    asks: 'The standard uncertainty of the length of the end gauge, in nm',
    input: { x: 'numbers', u: 'numbers' },
    gives: 'number',
    work: ({ x, u }) => firstOrder(gaugeBlock, x, u).u,
  }),
  'uncertainty/ratio': answer({
    asks: 'The standard uncertainty of the ratio of two readings',
    input: { x: 'numbers', u: 'numbers' },
    gives: 'number',
    work: ({ x, u }) => firstOrder(([a, b]) => a! / b!, x, u).u,
  }),
  'uncertainty/sum-of-squares': answer({
    asks: 'The standard uncertainty of x₁² + x₂², with correlation r',
    input: { x: 'numbers', u: 'numbers', r: 'number' },
    gives: 'number',
    work: ({ x, u, r }) =>
      firstOrderCorrelated(([a, b]) => a! ** 2 + b! ** 2, x, u, [
        [1, r],
        [r, 1],
      ]).u,
  }),
};
