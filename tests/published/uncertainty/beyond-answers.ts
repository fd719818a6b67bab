import { correlationFactor } from '../../../src/core/uncertainty/correlation.ts';
import {
  arcsine,
  curvedTrapezoid,
  type Distribution,
  gaussian,
  rectangular,
  scaledT,
} from '../../../src/core/uncertainty/distributions.ts';
import { firstOrder } from '../../../src/core/uncertainty/first-order.ts';
import { simulate, simulateNormal } from '../../../src/core/uncertainty/monte-carlo.ts';
import { secondOrder } from '../../../src/core/uncertainty/second-order.ts';
import { spreadOf, symmetricInterval } from '../../../src/core/uncertainty/spread.ts';
import { studentT } from '../../../src/core/uncertainty/student-t.ts';
import { type Answers, answer } from '../answer.ts';
import { gaugeBlock } from './gauge-block.ts';

const SEED = 101;
const readings = { x: 'numbers', u: 'numbers' } as const;
const squares = { ...readings, r: 'number' } as const;

/** The sum of four like inputs, a million times. */
const sumOfFour = (each: Distribution) =>
  simulate({
    inputs: [each, each, each, each],
    model: (x, y) => {
      y[0] = x[0]! + x[1]! + x[2]! + x[3]!;
    },
    results: 1,
    trials: 1_000_000,
    seed: SEED,
  }).values[0]!;

const ends = (values: readonly number[]) => {
  const { low, high } = symmetricInterval(values, 0.95);
  return [low, high];
};

/** x₁² + x₂² in millionths, of readings with correlation r. */
const squaresTrials = ({ x, u, r }: { x: readonly number[]; u: readonly number[]; r: number }) =>
  spreadOf(
    simulateNormal({
      mean: x,
      u,
      factor: correlationFactor([
        [1, r],
        [r, 1],
      ]),
      model: ([a, b], y) => {
        y[0] = (a! ** 2 + b! ** 2) * 1e6;
      },
      results: 1,
      trials: 400_000,
      seed: SEED,
    }).values[0]!,
  );

const squaresSecond = ({
  x,
  u,
  minus,
}: {
  x: readonly number[];
  u: readonly number[];
  minus?: number;
}) => secondOrder(([a, b]) => (a! ** 2 + (minus ? -1 : 1) * b! ** 2) * 1e6, x, u);

/** The end gauge with the distributions of JCGM 101, 9.5, in nm. */
const gaugeTrials = () =>
  spreadOf(
    simulate({
      inputs: [
        scaledT({ mean: 50000623, scale: 25, freedom: 18 }),
        scaledT({ mean: 215, scale: 6, freedom: 24 }),
        scaledT({ mean: 0, scale: 4, freedom: 5 }),
        scaledT({ mean: 0, scale: 7, freedom: 8 }),
        curvedTrapezoid({ low: -1e-6, high: 1e-6, slack: 0.1e-6 }),
        gaussian(-0.1, 0.2),
        arcsine(-0.5, 0.5),
        rectangular(9.5e-6, 13.5e-6),
        curvedTrapezoid({ low: -0.05, high: 0.05, slack: 0.025 }),
      ],
      model: (x, y) => {
        y[0] = gaugeBlock([x[0]!, x[1]! + x[2]! + x[3]!, x[4]!, x[5]! + x[6]!, x[7]!, x[8]!]);
      },
      results: 1,
      trials: 500_000,
      seed: SEED,
    }).values[0]!,
  );

export const beyondAnswers: Answers = {
  'uncertainty/gauge-block-second': answer({
    asks: 'The standard uncertainty of the length of the end gauge to second order, in nm',
    input: readings,
    gives: 'number',
    beside: true,
    work: ({ x, u }) => secondOrder(gaugeBlock, x, u).u,
  }),
  'uncertainty/gauge-block-parts': answer({
    asks: 'What each input alone brings to the length of the end gauge, in nm',
    input: readings,
    gives: 'numbers',
    work: ({ x, u }) => firstOrder(gaugeBlock, x, u).parts,
  }),
  'uncertainty/expanded': answer({
    asks: 'Expanded uncertainty of the end gauge at this confidence, in nm',
    input: { ...readings, freedom: 'number', confidence: 'ratio' },
    gives: 'number',
    work: ({ x, u, freedom, confidence }) =>
      studentT({ freedom, confidence }) * firstOrder(gaugeBlock, x, u).u,
  }),
  'uncertainty/coverage-factor': answer({
    asks: 'Coverage factor at this confidence and these degrees of freedom',
    input: { freedom: 'number', confidence: 'ratio' },
    gives: 'number',
    work: studentT,
  }),
  'uncertainty/four-normals-u': answer({
    asks: 'Standard uncertainty of the sum of four standard normal inputs',
    input: {},
    gives: 'number',
    beside: true,
    work: () => spreadOf(sumOfFour(gaussian(0, 1))).sd,
  }),
  'uncertainty/four-normals-interval': answer({
    asks: 'Interval that holds 95 % of the sum of four standard normal inputs',
    input: {},
    gives: 'numbers',
    beside: true,
    work: () => ends(sumOfFour(gaussian(0, 1))),
  }),
  'uncertainty/four-rectangles-u': answer({
    asks: 'Standard uncertainty of the sum of four rectangular inputs of standard deviation 1',
    input: {},
    gives: 'number',
    beside: true,
    work: () => spreadOf(sumOfFour(rectangular(-Math.sqrt(3), Math.sqrt(3)))).sd,
  }),
  'uncertainty/four-rectangles-interval': answer({
    asks: 'Interval that holds 95 % of the sum of four rectangular inputs of standard deviation 1',
    input: {},
    gives: 'numbers',
    beside: true,
    work: () => ends(sumOfFour(rectangular(-Math.sqrt(3), Math.sqrt(3)))),
  }),
  'uncertainty/gauge-block-trials': answer({
    asks: 'The standard uncertainty of the end gauge by trials of its inputs’ own distributions, in nm',
    input: {},
    gives: 'number',
    beside: true,
    work: () => gaugeTrials().sd,
  }),
  'uncertainty/squares-trials-mean': answer({
    asks: 'Mean of x₁² + x₂² by trials, in millionths, with correlation r',
    input: squares,
    gives: 'number',
    work: (input) => squaresTrials(input).mean,
  }),
  'uncertainty/squares-trials-sd': answer({
    asks: 'Standard uncertainty of x₁² + x₂² by trials, in millionths, with correlation r',
    input: squares,
    gives: 'number',
    work: (input) => squaresTrials(input).sd,
  }),
  'uncertainty/squares-second-mean': answer({
    asks: 'Mean of x₁² + x₂² to second order, in millionths; with a minus between them where asked',
    input: { ...readings, minus: 'number' },
    gives: 'number',
    beside: true,
    work: (input) => squaresSecond(input).mean,
  }),
  'uncertainty/squares-second-sd': answer({
    asks: 'Standard uncertainty of x₁² + x₂² to second order, in millionths',
    input: readings,
    gives: 'number',
    beside: true,
    work: (input) => squaresSecond(input).u,
  }),
  'uncertainty/ratio-mean': answer({
    asks: 'Mean of the ratio of two readings, to second order',
    input: readings,
    gives: 'number',
    beside: true,
    work: ({ x, u }) => secondOrder(([a, b]) => a! / b!, x, u).mean,
  }),
};
