import { firstOrder } from '../../../src/core/uncertainty/first-order.ts';
import { type Answers, answer } from '../answer.ts';

/** The end gauge of GUM H.1: lengths in nm, expansions in 1/°C, temperatures in °C. */
const gaugeBlock = (x: readonly number[]) => {
  const [standard, difference, expansionGap, deviation, expansion, temperatureGap] = x as readonly [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return standard + difference - standard * (expansionGap * deviation + expansion * temperatureGap);
};

export const answers: Answers = {
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
      firstOrder(([a, b]) => a! ** 2 + b! ** 2, x, u, [
        [1, r],
        [r, 1],
      ]).u,
  }),
};
