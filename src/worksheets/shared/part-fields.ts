import { choice, number } from '../../islands/fields.ts';
import { DAYS, KPA } from './amounts.ts';
import { SINCE_CASTING } from './since.ts';

/** The volume left out of the form, while anything is. */
const cores = 'part.cores';
const aWall = (side: string) => ({
  beside: cores,
  say: `the form has cores, and this is worked out for a solid part. Type the ${side} of one wall.`,
});

/** The sides of a solid part, shared by every worksheet about it. */
export const partLength = number('length', {
  label: 'Length',
  example: '450 mm',
  min: '10 mm',
  max: '10 m',
  takes: 'piece.length',
  bench: 'part.length',
  asks: aWall('length'),
});

export const partWidth = number('length', {
  label: 'Width',
  example: '300 mm',
  min: '10 mm',
  max: '10 m',
  takes: 'piece.width',
  bench: 'part.width',
  asks: aWall('width'),
});

export const partThickness = number('length', {
  label: 'Thickness',
  help: 'The thin way through; of a hollow part, its wall.',
  example: '60 mm',
  min: '5 mm',
  max: '3 m',
  takes: 'piece.thickness',
  bench: 'part.thickness',
  asks: {
    beside: cores,
    say: 'the form has cores, so its sides do not tell how thick the part is. Type its wall; where the cores are but small holes, the part.',
  },
});

/** As the mix lies in the form: its depth there need not be the thin way through, nor its face the part's long sides. */
export const partDepth = number('length', {
  label: 'Depth of the part as it lies',
  example: '60 mm',
  min: '5 mm',
  max: '2 m',
  takes: 'piece.deep',
  bench: 'part.deep',
});

export const openLength = number('length', {
  label: 'Open face, length',
  example: '450 mm',
  min: '10 mm',
  max: '10 m',
  takes: 'piece.long',
  bench: 'part.long',
});

export const openWidth = number('length', {
  label: 'Open face, width',
  example: '300 mm',
  min: '10 mm',
  max: '10 m',
  takes: 'piece.wide',
  bench: 'part.wide',
});

/** The mix as placed. Until a part has been seen to dry it weighs what it weighed then. */
export const wetDensity = number('density', {
  label: 'Wet density',
  help: 'What the mix weighed when it was placed.',
  example: '600 kg/m3',
  min: '50 kg/m3',
  max: '2500 kg/m3',
  takes: 'mix.planned',
  bench: 'part.wetDensity',
});

export const dryDensity = number('density', {
  label: 'Oven-dry density',
  help: 'Of a dried piece, or what the mix is to dry to.',
  example: '465 kg/m3',
  min: '50 kg/m3',
  max: '2400 kg/m3',
  takes: 'part.dryDensity',
  bench: 'part.oven',
});

/** Where the flexural strength comes from: set once, followed by every worksheet that needs it. */
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

/** What broken bars said: the mean, the low end for the next one, and when they were broken. */
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

/** From one bar the low end is a guess, so its number goes along. */
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

/** How much rougher a move may be than it was reckoned: a jerk, a sticking corner. A guess. Common practice, no source. */
export const JERK = 0.5;

/** By the clock, for a worksheet that asks the adjusted age as well: warmth does not shorten the first hours. */
export const sinceCasting = number('time', {
  label: 'Time since casting, by the clock',
  help: 'Warmth does not shorten the first hours. Leave it empty if you do not know it, or if it is more than 60 days: then the adjusted age alone counts.',
  tooHigh: ' Leave it empty for a part older than 60 days.',
  min: '0 h',
  optional: true,
  ...SINCE_CASTING,
});

export const barAge = number('time', {
  label: 'Age of the bars when broken',
  example: '1 d',
  min: '12 h',
  max: '365 d',
  units: DAYS,
  bench: 'part.barAge',
});
