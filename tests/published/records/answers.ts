import { controlChart, D2, D3 } from '../../../src/core/records/control-chart.ts';
import { median, robustDeviation } from '../../../src/core/records/robust.ts';
import { studentT, studentTBelow } from '../../../src/core/uncertainty/student-t.ts';
import { type Answers, answer } from '../answer.ts';

export const answers: Answers = {
  'records/student-t': answer({
    asks: 'Student’s t that holds a share of the readings between −t and t',
    input: { freedom: 'number', confidence: 'number' },
    gives: 'number',
    work: ({ freedom, confidence }) => studentT({ freedom, confidence }),
  }),
  'records/student-t-below': answer({
    asks: 'The share of Student’s t below a value',
    input: { t: 'number', freedom: 'number' },
    gives: 'number',
    work: ({ t, freedom }) => studentTBelow({ t, freedom }),
  }),
  'records/chart-constant': answer({
    asks: 'A constant of the chart of individual values and moving ranges of two',
    input: { name: 'text' },
    gives: 'number',
    work: ({ name }) => {
      const constants: Record<string, number> = {
        d2: D2,
        d3: D3,
        D4: 1 + (3 * D3) / D2,
        E2: 3 / D2,
      };
      return constants[name] ?? Number.NaN;
    },
  }),
  'records/individuals-chart': answer({
    asks: 'Lower limit, centre, upper limit and mean moving range of a chart of individual values',
    input: { values: 'numbers' },
    gives: 'numbers',
    work: ({ values }) => {
      const { low, centre, high, meanRange } = controlChart(values);
      return [low, centre, high, meanRange];
    },
  }),
  'records/median': answer({
    asks: 'The median of some readings',
    input: { values: 'numbers' },
    gives: 'number',
    work: ({ values }) => median(values),
  }),
  'records/robust-deviation': answer({
    asks: 'The median absolute deviation, scaled to a standard deviation',
    input: { values: 'numbers' },
    gives: 'number',
    work: ({ values }) => robustDeviation(values),
  }),
};
