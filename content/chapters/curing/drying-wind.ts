import type { AmountProps } from '~/components/prose/amount.ts';
import {
  ACTION_RATE,
  CAUTION_RATE,
  evaporation,
  evaporationMenzel,
  evaporationUno,
  evaporationUnoPrintedSi,
  LITTLE_BLEED_SHARE,
  US_ACTION_RATE,
  waterLost,
} from '~/core/curing/evaporation.ts';
import { HOUR, ICE_POINT } from '~/core/quantity/constants.ts';
import { demoSlabFace } from '~/worksheets/demo-worked.ts';

const windyFace = {
  concreteTemperature: 20 + ICE_POINT,
  airTemperature: 22 + ICE_POINT,
  relativeHumidity: 0.45,
  windSpeed: 20_000 / HOUR,
};
const windyRate = evaporation(windyFace).rate;
const stillRate = evaporation({ ...windyFace, windSpeed: 0 }).rate;

const dryingRate = (value: number): AmountProps => ({
  value,
  kind: 'massFlux',
  metric: 'kg/(m2.h)',
  us: 'lb/(ft2.h)',
  significant: 2,
});

/** What one square metre of the demo's face loses. */
export const loses = {
  windy: dryingRate(windyRate),
  still: dryingRate(stillRate),
  menzel: dryingRate(evaporationMenzel(windyFace)),
};
/** How much less that is with no wind, a share. */
export const savedByCalm = 1 - stillRate / windyRate;
/** How much lower the SI form comes out as it was printed, a share. */
export const printedLower = 1 - evaporationUnoPrintedSi(windyFace) / evaporationUno(windyFace);

/** What the wind takes from the open face of a demo slab in an hour. */
export const slabLoses: AmountProps = {
  value: waterLost({ rate: windyRate, area: demoSlabFace, duration: HOUR }),
  kind: 'mass',
  metric: 'g',
  us: 'oz',
  significant: 2,
};

/** From which rate on to take care, and to act; and both for a mix that bleeds little. */
export const limits = {
  care: dryingRate(CAUTION_RATE),
  act: dryingRate(ACTION_RATE),
  careLittleBleed: dryingRate(CAUTION_RATE * LITTLE_BLEED_SHARE),
  actLittleBleed: dryingRate(ACTION_RATE * LITTLE_BLEED_SHARE),
};
/** The American limit, kg/(m²·h). */
export const usActionAnHour = US_ACTION_RATE * HOUR;
