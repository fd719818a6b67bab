import { number } from '../../islands/fields.ts';

/** Temperatures the curing worksheets take, from a hard frost to the hottest mix. */
const BOUNDS = { min: '-40 °C', max: '100 °C' } as const;

export const temperature = (
  label: string,
  example: string,
  more: Partial<Omit<Parameters<typeof number>[1], 'optional'>>,
) => number('temperature', { ...BOUNDS, label, example, ...more });
