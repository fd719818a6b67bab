import { lines } from '../../islands/fields/lines.tsx';
import { moment } from '../../islands/fields/moment.tsx';
import { choice, number } from '../../islands/fields.ts';
import { linesSinceCasting } from '../shared/log/SinceCasting.tsx';
import { HOURS } from '../shared/words/amounts.ts';
import { temperature } from './curing-temperature.ts';

export const castAt = moment({
  label: 'Cast at',
  help: 'When the first water met the cement, by your clock.',
  example: '2026-05-08T14:00',
  bench: 'curing.castAt',
});

const dayColumns = {
  coldest: temperature('Lowest', '12 °C', {}),
  warmest: temperature('Highest', '20 °C', {}),
};

/** A fortnight in the demo's shed: mild, then a cold night under a clear sky, then mild again. */
export const DEMO_DAYS =
  '12\t20\n12\t20\n11\t19\n9\t16\n7\t14\n6\t13\n8\t15\n10\t17\n12\t19\n12\t20\n13\t21\n13\t21\n12\t20\n12\t20';

/**
 * How warm the part was and will be: one steady temperature, a table of days, or readings with a
 * forecast behind them. Shared by every worksheet that counts age.
 */
export const temperatureFields = {
  source: choice({
    label: 'What do you know of its temperature?',
    options: {
      days: 'Lowest and highest of each day',
      steady: 'One steady temperature',
      readings: 'Readings, typed, pasted or from a logger',
    },
    example: 'days',
    bench: 'curing.source',
  }),
  castAt,
  steady: temperature('Temperature', '15 °C', {
    help: 'Of the part, not of the air, where you can.',
    bench: 'curing.steady',
    when: { source: ['steady'] },
  }),
  days: lines({
    label: 'Lowest and highest, day by day',
    help: 'From the day of casting on. A line’s low is that day’s early morning; tonight’s low goes on tomorrow’s line. The last day repeats.',
    example: DEMO_DAYS,
    most: 60,
    bench: 'curing.days',
    of: dayColumns,
    when: { source: ['days'] },
  }),
  readings: linesSinceCasting({
    label: 'Readings since casting',
    help: 'Type them, paste two columns, or bring in a logger’s file above.',
    example: '0\t20\n6\t22\n12\t19\n18\t14\n24\t18\n30\t19\n36\t16\n42\t12\n48\t17',
    most: 400,
    bench: 'curing.readings',
    of: {
      time: number('time', {
        label: 'Hours since casting',
        example: '6 h',
        min: '0 h',
        max: '400 d',
        units: HOURS,
      }),
      temperature: temperature('Temperature', '20 °C', {}),
    },
    when: { source: ['readings'] },
  }),
  after: choice({
    label: 'After the last reading',
    options: {
      mean: 'One mean temperature',
      days: 'Lowest and highest of each day',
    },
    example: 'mean',
    bench: 'curing.after',
    when: { source: ['readings'] },
  }),
  afterMean: temperature('Mean temperature after it', '15 °C', {
    bench: 'curing.afterMean',
    when: { source: ['readings'], after: ['mean'] },
  }),
  forecast: lines({
    label: 'Forecast, day by day',
    help: 'From the day of the last reading on. A line’s low is that day’s early morning; tonight’s goes on tomorrow’s line. The last day repeats.',
    example: '12\t19\n12\t20\n13\t21',
    most: 60,
    bench: 'curing.forecast',
    of: dayColumns,
    when: { source: ['readings'], after: ['days'] },
  }),
} as const;
