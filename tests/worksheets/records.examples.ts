import type { Example } from './examples.ts';

export const examples: readonly Example[] = [
  {
    sheet: 'reconcile',
    result: 'survival',
    expected: '92.95 %',
    within: 1e-4,
    by: 'M = 13.57 + 5.43 + 2.024 = 21.024 kg; ÷ 0.6295 kg/L = 33.398 L; V₀ = 4.308 + 5.43 + 2.024 = 11.762 L; 21.636 ÷ (25.3 × 0.92)',
  },
  {
    sheet: 'reconcile',
    result: 'ratio',
    expected: '0.5493',
    within: 1e-4,
    by: '(5.43 + 25.3 × 0.08) ÷ 13.57',
  },
  {
    sheet: 'reconcile',
    result: 'missing',
    expected: '0.0282 kg',
    within: 1e-6,
    by: '21.024 − 32.4 × 0.6295 − 0.6',
  },
];
