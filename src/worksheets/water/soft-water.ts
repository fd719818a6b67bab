/** The soft water to find or to soften: as much as the batch’s foaming solution needs. */
export const softWater = {
  example: '6.86 L',
  min: '0 L',
  aboveMin: true,
  max: '100000 L',
  takes: 'foam.softWater',
} as const;
