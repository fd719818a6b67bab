import { BY_ITS_NUMBER } from '../words/cement-bag.ts';

/** One word for how quickly a cement works, where the bag does not say more. */
export const CEMENT_CLASS = {
  label: 'Cement',
  help: BY_ITS_NUMBER,
  options: {
    unknown: 'I do not know',
    slow: 'Slow: 32.5\u00a0N, CEM\u00a0III, or slow by its bag',
    ordinary: 'Ordinary: 32.5 R or 42.5\u00a0N',
    rapid: 'Rapid: 42.5 R or 52.5',
  },
  example: 'unknown',
  bench: 'curing.cement',
} as const;
