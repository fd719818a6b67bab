import { type StrengthBand, strengthBand } from '~/core/finished/strength-band.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoDryDensity } from '~/worksheets/demo-worked.ts';

function withBothEnds(band: StrengthBand) {
  if (!band.known || band.high === null)
    throw new Error('The chapter gives both ends of what is published at the demo’s density.');
  return { low: band.low, high: band.high, relations: band.relations };
}

/** What is published of compressive strength at 28 days at the demo's density, Pa. */
export const demoStrength = withBothEnds(
  strengthBand({ wetDensity: demo.wetDensity, ovenDryDensity: demoDryDensity }),
);
