/** Soap lost, of the dose: the most that the eye does not see in a foam, and what leaves none. Common practice, no source. */
const [SMALL_LOSS, GREAT_LOSS] = [0.1, 0.5];

/** What a water is for a soap of whose dose it takes such a share, whichever worksheet asks. */
export const soapLoss = (share: number): 'good' | 'look' | 'stop' =>
  share >= GREAT_LOSS ? 'stop' : share > SMALL_LOSS ? 'look' : 'good';
