import { choice, number } from '../../../islands/fields.ts';
import { DAYS, KPA } from '../words/amounts.ts';

/** Where the flexural strength comes from: chosen once, used by every worksheet that needs it. */
export const strengthFrom = choice({
  label: 'Bending strength from',
  options: {
    density: 'published figures for the density',
    bars: 'bars of this batch, broken',
  },
  example: 'density',
  bench: 'part.strengthFrom',
  follows: { 'part.flexural': 'bars' },
});

// The results of broken bars: their mean, the low end for the next bar, their number and their age.

export const barMean = number('stress', {
  label: 'Mean strength of the bars',
  help: 'From “How strong is it in bending?”.',
  example: '225 kPa',
  min: '0.1 kPa',
  max: '50 MPa',
  units: KPA,
  takes: 'part.flexural',
  bench: 'part.barMean',
  when: { strengthFrom: ['bars'] },
});

export const barLow = number('stress', {
  label: 'Low end of the bars',
  help: 'What the next bar should exceed; of one bar, a guess.',
  example: '188 kPa',
  min: '0.1 kPa',
  max: '50 MPa',
  units: KPA,
  takes: 'part.flexuralLow',
  bench: 'part.barLow',
  when: { strengthFrom: ['bars'] },
});

/** Needed because the low end of a single bar is a guess. */
export const barsCounted = number('count', {
  label: 'Bars counted',
  example: '4',
  min: '1',
  max: '100',
  whole: true,
  optional: true,
  takes: 'part.barsCounted',
  bench: 'part.barsCounted',
  when: { strengthFrom: ['bars'] },
});

export const barAge = number('time', {
  label: 'Age of the bars when broken',
  example: '1 d',
  min: '12 h',
  max: '365 d',
  units: DAYS,
  bench: 'part.barAge',
});
