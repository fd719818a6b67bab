import type { Example } from './examples.ts';

export const examples: readonly Example[] = [
  {
    sheet: 'evaporation',
    result: 'rate',
    expected: '0.1111 lb/(ft2.h)',
    within: 2e-3,
    by: '(68^2.5 − 0.45 × 71.6^2.5) × (1 + 0.4 × 12.427) × 1e-6: (38130 − 0.45 × 43380) × 5.971e-6',
  },
  {
    sheet: 'evaporation',
    result: 'lost',
    expected: '73.2 g',
    within: 3e-3,
    by: '0.1111 lb/(ft²·h) = 0.5424 kg/(m²·h); × 0.135 m²',
  },
  {
    sheet: 'mix-temperature',
    result: 'temperature',
    expected: '19.89 °C',
    within: 1e-4,
    by: '(40.72 × 1.14 × 18 + 16.29 × 4.187 × 23 + 6.07 × 4.187 × 15) ÷ (40.72 × 1.14 + 22.36 × 4.187)',
  },
  {
    sheet: 'mix-temperature',
    result: 'waterFor',
    expected: '23.22 °C',
    within: 1e-4,
    by: 'the same balance solved for the water, at 20 °C',
  },
  {
    sheet: 'set-time',
    result: 'initial',
    expected: '2.5149 h',
    within: 1e-4,
    by: '2.5 h × exp(42500/8.314 × (1/293.05 − 1/293.15))',
  },
  {
    sheet: 'set-time',
    result: 'third',
    expected: '2.5130 h',
    within: 1e-4,
    by: '2.5 h × (4/3)^(0.1 × 1.8/10)',
  },
  {
    sheet: 'temperature-age',
    result: 'age',
    expected: '0.7984 d',
    within: 2e-3,
    by: 'summed apart in steps of a minute over the same wave of days, from 14:00',
  },
  {
    sheet: 'temperature-age',
    result: 'reached',
    expected: '10.170 d',
    within: 2e-3,
    by: 'the same sum, carried on until it is 7 days',
  },
];
