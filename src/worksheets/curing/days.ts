import { DAY } from '../../core/quantity/constants.ts';

/** Time of day of a moment on the reader's clock, s after midnight. */
export const timeOfDay = (moment: number) => ((moment % DAY) + DAY) % DAY;

/** Sentences for what core refuses of a table of days. */
export const historyRefusals = {
  'warmest-below-coldest': () =>
    'A day’s highest temperature is below its lowest. Each line gives the lowest, then the highest.',
} as const;
