import { describe, expect, test } from 'vitest';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { gasDoubt } from '../../../src/worksheets/live/run/run-gas.ts';
import { runReadings } from '../../../src/worksheets/live/run/run-readings.ts';

describe('a blend lighter than all of its foam could make it', () => {
  // 30.89 lb of cement, 13.91 lb of water, 7.58 gal of foam at 5.3 lb/ft³, in a bucket of 5 gal of 2 lb.
  const lb = (t: string) => ({ t, u: 'lb', s: 'us' as const });
  const gal = (t: string) => ({ t, u: 'gal', s: 'us' as const });
  const weighed = {
    ...{ cement: lb('30.89'), water: lb('13.91'), foamVolume: gal('7.58') },
    foamDensity: { t: '5.3', u: 'lb/ft3', s: 'us' as const },
    ...{ tare: lb('2'), vessel: gal('5') },
  };
  const us = speaker('us');
  const on = (full: string, more = {}) =>
    gasDoubt(
      runReadings(blankRecord({ readings: { ...weighed, full: lb(full), ...more } }), us),
      us,
    )?.replaceAll('\u00a0', ' ');

  test('is to be weighed again, with drawn-in air named beside a wrong reading', () => {
    // By hand: (44.8 + 5.3 × 1.01329) lb in (30.89 ÷ 196.65 + 13.91 ÷ 62.428 + 1.01329) ft³ is 36.0; 0.6684 ft³ the bucket.
    expect(on('24.06')).toMatch(
      /^Weigh again before .* it would weigh 36\.0 lb\/ft³, and this is lighter: a reading is wrong, or the paddle drew air in\./,
    );
  });

  test('also once base mix was added to it', () => {
    expect(on('25', { baseAdded: lb('6.6') })).toBeDefined();
    expect(on('27.1', { baseAdded: lb('6.6') })).toContain('it would weigh 39');
  });

  test('is not questioned within the ± of the readings, nor before all is weighed', () => {
    // 36.0 × 0.6684 + 2 = 26.07; 0.2 L of the bucket is 1 % of it, and 0.5 L of the foam 1.7 %.
    expect(on('26.1')).toBeUndefined();
    expect(on('25.7')).toBeUndefined();
    expect(on('24.06', { vessel: { ...gal('5'), p: '0.4', pu: 'gal' } })).toBeUndefined();
    expect(on('24.06', { foamVolume: { t: '' } })).toBeUndefined();
    expect(on('30')).toBeUndefined();
  });
});
