/** The bucket the mix is weighed in, if it has one of its own: its empty weight and its volume. */
export const MIX_TARE = 'mix.bucketTare';
export const MIX_VESSEL = 'mix.bucketVolume';
