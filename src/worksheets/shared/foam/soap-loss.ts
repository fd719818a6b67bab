/**
 * Shares of the soap dose lost to hard water: up to the first the foam looks the same, from the
 * second on there is hardly any foam. Common practice, no source.
 */
const [SMALL_LOSS, GREAT_LOSS] = [0.1, 0.5];

/** The verdict on a water that takes this share of the soap dose. */
export const soapLoss = (share: number): 'good' | 'look' | 'stop' =>
  share >= GREAT_LOSS ? 'stop' : share > SMALL_LOSS ? 'look' : 'good';
