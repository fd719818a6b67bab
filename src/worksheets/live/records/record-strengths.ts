import { readingValue } from '../../../bench/records/reading-value.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { flexuralFromCompressive } from '../../../core/finished/flexural.ts';
import { strengthBand } from '../../../core/finished/strength-band.ts';
import { DAY } from '../../../core/quantity/constants.ts';
import { driedDensity } from './record-numbers.ts';
import { weighedDensity } from './record-words.ts';

/** Ages at which a strength is held against the published 28-day band. Common practice, no source. */
export const ABOUT_28_DAYS = { from: 21 * DAY, to: 60 * DAY } as const;
/** So many times outside what is published for its density, a strength is rather a slip, most likely of its unit. A choice; “a fifth” in words. */
export const OFF_BAND = 5;

/** Published strengths at 28 days for the densities of a batch, Pa; not dried yet, for what it weighs wet. */
export function publishedFor(record: BatchRecord) {
  const [wet, dry] = [weighedDensity(record), driedDensity(record)?.density];
  if (!wet || (dry !== undefined && dry > wet)) return undefined;
  const band = strengthBand({ wetDensity: wet, ovenDryDensity: dry ?? wet });
  return band.known && band.high !== null ? { low: band.low, high: band.high, dry } : undefined;
}

/** The strengths of a batch that lie far outside what is published, with the end of that beyond which they lie, Pa. */
export function strengthsOffBand(record: BatchRecord) {
  const crushed = publishedFor(record);
  if (!crushed) return [];
  const bands = { crush: crushed, bend: flexuralFromCompressive(crushed) };
  return (['crush', 'bend'] as const).flatMap((reading) => {
    const { low, high } = bands[reading];
    const strength = readingValue(record, reading);
    if (!strength) return [];
    if (strength > OFF_BAND * high) return [{ reading, strength, end: high, above: true }];
    // A young piece may be as weak; and not dried yet it may be far lighter than it weighs.
    const old = (readingValue(record, `${reading}Age`) ?? 0) >= ABOUT_28_DAYS.from;
    return old && crushed.dry !== undefined && strength < low / OFF_BAND
      ? [{ reading, strength, end: low, above: false }]
      : [];
  });
}
