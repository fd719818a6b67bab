/** The bucket the mix is weighed in, where it has one of its own: empty, and its volume. */
export const MIX_TARE = 'mix.bucketTare';
export const MIX_VESSEL = 'mix.bucketVolume';
