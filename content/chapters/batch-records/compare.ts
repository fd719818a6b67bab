import { toTenth } from '~/components/prose/percent.ts';
import { controlChart } from '~/core/records/control-chart.ts';
import { ONE_PLAN } from '~/worksheets/live/records/record-numbers.ts';
import { lessonOf } from './invented.ts';

const signed = (share: number) => `${share < 0 ? '' : '+'}${toTenth(share)}`;

/** How far off the density planned each invented batch landed. */
const errors = lessonOf('landing').from.map(({ value }) => value);
const chart = controlChart(errors);
if (chart.beyond.length > 0 || errors.some((error) => error <= 0))
  throw new Error(
    'An invented batch is out of the ordinary, or light: the page says that none is.',
  );

export const landed = {
  errors: errors.map(signed).join(', '),
  centre: signed(chart.centre),
  knownTo: toTenth(chart.centreReach),
  low: signed(chart.low),
  high: signed(chart.high),
};

/** How far apart two planned shares of foam that lives may be and count as one plan, percentage points. */
export const onePlan = ONE_PLAN * 100;
