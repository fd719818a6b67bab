import { formatQuantity } from '~/core/quantity/format.ts';
import { weighedDensity } from '~/worksheets/live/records/record-words.ts';
import { firstBatch, reading } from './invented.ts';

/** Its empty bucket, in the units of the full one beside it, not in grams. */
const [tareKilograms, tarePounds] = ['kg', 'lb'].map(
  (unit) => formatQuantity(reading('tare'), 'mass', unit, { significant: 2 }).text,
);
const weighed = weighedDensity(firstBatch);
if (weighed === undefined) throw new Error('The first invented batch weighs what no mix does.');

/** What the first invented batch says: of its bucket in kg and m³, of its mix in kg/m³. */
export const first = {
  readings: Object.keys(firstBatch.readings).length,
  vessel: reading('vessel'),
  full: reading('full'),
  tare: `${tareKilograms} (${tarePounds})`,
  weighed,
  planned: reading('planned'),
};
