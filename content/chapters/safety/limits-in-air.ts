import { formatNumber } from '~/core/quantity/format.ts';
import { EXPOSURE_LIMITS, type ExposureLimit } from '~/core/safety/exposure.ts';

/** The limit of that name. */
export function limitOf(id: string): ExposureLimit {
  const limit = EXPOSURE_LIMITS.find((each) => each.id === id);
  if (!limit) throw new Error(`No limit in air is called ${id}.`);
  return limit;
}

const MILLIGRAM = 1e-6;
/** `0.025 mg/m³` */
export const inMilligrams = (id: string): string =>
  `${formatNumber(limitOf(id).value / MILLIGRAM, { atMost: 3 })} mg/m³`;
