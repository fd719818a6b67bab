import { MIX_TARE, MIX_VESSEL } from '../../../bench/mix-bucket.ts';
import { number } from '../../../islands/fields.ts';
import { FOAM_TARE, FOAM_VESSEL } from '../foam/foam-vessel.ts';

/** The bucket the blend is weighed in. It is the foam’s vessel until the reader types another. */
export const weighingBucket = {
  tare: number('mass', {
    label: 'Bucket, empty',
    example: '0.85 kg',
    plusMinus: '0.01 kg',
    min: '0 kg',
    max: '200 kg',
    borrows: FOAM_TARE,
    bench: MIX_TARE,
  }),
  vessel: number('volume', {
    label: 'Bucket’s volume to the brim',
    example: '20 L',
    plusMinus: '0.2 L',
    plusMinusGrows: true,
    min: '0.1 L',
    max: '1000 L',
    ...FOAM_VESSEL,
    bench: MIX_VESSEL,
  }),
};
