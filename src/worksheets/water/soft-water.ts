/** As much soft water as the batch’s foaming solution wants, where a page asks how much to find or to soften. */
export const softWater = {
  example: '6.86 L',
  min: '0 L',
  aboveMin: true,
  max: '100000 L',
  takes: 'foam.softWater',
} as const;
