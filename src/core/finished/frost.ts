import { ONE_FREEZE_STRENGTH, REPEATED_FREEZE_STRENGTH } from '../curing/frost.ts';

/** One published statement about frost, as a number with its unit of kind. */
export interface FrostFact {
  readonly id: string;
  readonly value: number;
  /** Pa, a share 0–1, or a count of cycles. */
  readonly unit: 'Pa' | 'share' | 'cycles';
  readonly of: string;
  readonly source: string;
  readonly standing: 'published';
}

/**
 * Published figures on freezing and thawing: for ordinary concrete, and for autoclaved aerated
 * concrete. None is for foamed concrete, so they show what to be wary of and are no rating.
 * @source aci-faq-795
 * @source pca-eb001-frost
 * @source jerman-2013
 */
export const FROST: readonly FrostFact[] = [
  {
    id: 'one-freeze',
    value: ONE_FREEZE_STRENGTH,
    unit: 'Pa',
    of: 'concrete-strength-before-one-freeze',
    source: 'aci-faq-795',
    standing: 'published',
  },
  {
    id: 'repeated-saturated',
    value: REPEATED_FREEZE_STRENGTH,
    unit: 'Pa',
    of: 'concrete-strength-before-repeated-freezing-saturated',
    source: 'aci-faq-795',
    standing: 'published',
  },
  {
    id: 'critical-saturation',
    value: 0.917,
    unit: 'share',
    of: 'pore-filling-that-bursts',
    source: 'pca-eb001-frost',
    standing: 'published',
  },
  {
    id: 'aac-saturated',
    value: 25,
    unit: 'cycles',
    of: 'aac-capillary-saturated',
    source: 'jerman-2013',
    standing: 'published',
  },
  {
    id: 'aac-moist',
    value: 50,
    unit: 'cycles',
    of: 'aac-below-tenth-by-volume',
    source: 'jerman-2013',
    standing: 'published',
  },
];
