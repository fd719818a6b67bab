import { readingValue } from '../../../bench/records/reading-value.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { flexuralFromCompressive } from '../../../core/finished/flexural.ts';
import { strengthBand } from '../../../core/finished/strength-band.ts';
import { DAY } from '../../../core/quantity/constants.ts';
import { driedDensity } from './record-numbers.ts';
import { weighedDensity } from './record-words.ts';

/**
 * Ages at which a strength is compared with the published 28-day band. Common practice, no source.
 */
export const ABOUT_28_DAYS = { from: 21 * DAY, to: 60 * DAY } as const;
/**
 * Factor outside the published band from which a strength is taken for a slip, probably of its
 * unit. A choice; “a fifth” in words.
 */
export const OFF_BAND = 5;
/** No bar that can be lifted and broken is so far below it: MPa were typed as kPa. A choice. */
const OFF_UNIT = 100;

/**
 * Published strengths at 28 days for the densities of a batch, Pa; for its wet density alone if not
 * dried yet.
 */
export function publishedFor(record: BatchRecord) {
  const [wet, dry] = [weighedDensity(record), driedDensity(record)?.density];
  if (!wet || (dry !== undefined && dry > wet)) return undefined;
  const band = strengthBand({ wetDensity: wet, ovenDryDensity: dry ?? wet });
  return band.known && band.high !== null ? { low: band.low, high: band.high, dry } : undefined;
}

/**
 * The strengths of a batch that are far outside the published band, with the end that they exceed,
 * Pa.
 */
export function strengthsOffBand(record: BatchRecord) {
  const crushed = publishedFor(record);
  if (!crushed) return [];
  const bands = { crush: crushed, bend: flexuralFromCompressive(crushed) };
  return (['crush', 'bend'] as const).flatMap((reading) => {
    const { low, high } = bands[reading];
    const strength = readingValue(record, reading);
    if (!strength) return [];
    if (strength > OFF_BAND * high) return [{ reading, strength, end: high, above: true }];
    // A young piece may be that weak, and an undried one may have a far lower dry density.
    const old = (readingValue(record, `${reading}Age`) ?? 0) >= ABOUT_28_DAYS.from;
    return crushed.dry !== undefined && strength < low / (old ? OFF_BAND : OFF_UNIT)
      ? [{ reading, strength, end: low, above: false }]
      : [];
  });
}
