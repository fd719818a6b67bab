import { DAY } from '../quantity/constants.ts';
import type { PublishedRange } from './published-range.ts';

const REVIEW = { source: 'foam-review-2020', standing: 'published' } as const;
const BCA = {
  source: 'bca-1994',
  standing: 'from memory',
  where: 'table of typical properties',
  of: 'foamed-concrete',
} as const;
const at = (density: number) => ({ min: density, max: density });

/**
 * Drying shrinkage as ranges, as a strain (0.001 is 0.1 %). The review's rows were read; the
 * British table and the typical range are from memory. Densities in kg/m³ as each source states
 * them.
 * @source foam-review-2020 Table 2
 * @source bca-1994
 * @source ramamurthy-2009
 */
export const DRYING_SHRINKAGE: readonly PublishedRange[] = [
  {
    ...REVIEW,
    id: 'review-92',
    where: 'Table 2, its ref. 92',
    density: { min: 380, max: 830 },
    low: 0.001,
    high: 0.0049,
    of: 'polymer-fibre',
  },
  {
    ...REVIEW,
    id: 'review-44',
    where: 'Table 2, its ref. 44',
    density: at(600),
    low: 0.0025,
    high: 0.003,
    age: 90 * DAY,
    of: 'water-cement-0.5',
  },
  {
    ...REVIEW,
    id: 'review-94',
    where: 'Table 2, its ref. 94',
    density: { min: 1000, max: 1400 },
    low: 0.0009,
    high: 0.002,
    age: 365 * DAY,
    of: 'fly-ash-and-sand',
  },
  {
    ...REVIEW,
    id: 'review-95',
    where: 'Table 2, its ref. 95',
    density: { min: 260, max: 800 },
    low: 0.0018,
    high: 0.0031,
    of: 'foamed-concrete',
  },
  {
    ...REVIEW,
    id: 'review-96',
    where: 'Table 2, its ref. 96',
    density: { min: 300, max: 800 },
    low: 0.0026,
    high: 0.0035,
    age: 90 * DAY,
    of: 'foamed-concrete',
  },
  {
    ...REVIEW,
    id: 'review-97',
    where: 'Table 2, its ref. 97',
    density: { min: 900, max: 1100 },
    low: 0.007,
    high: 0.0072,
    age: 28 * DAY,
    of: 'sanded',
  },
  {
    ...REVIEW,
    id: 'review-99',
    where: 'Table 2, its ref. 99',
    density: { min: 400, max: 800 },
    low: 0.0009,
    high: 0.0018,
    age: 28 * DAY,
    of: 'fly-ash',
  },
  {
    id: 'ramamurthy-typical',
    source: 'ramamurthy-2009',
    where: 'typical range',
    standing: 'from memory',
    low: 0.001,
    high: 0.0035,
    of: 'foamed-concrete',
  },
  { ...BCA, id: 'bca-400', density: at(400), low: 0.003, high: 0.0035 },
  { ...BCA, id: 'bca-600', density: at(600), low: 0.0022, high: 0.0025 },
  { ...BCA, id: 'bca-800', density: at(800), low: 0.002, high: 0.0022 },
  { ...BCA, id: 'bca-1000', density: at(1000), low: 0.0015, high: 0.0018 },
  { ...BCA, id: 'bca-1200', density: at(1200), low: 0.0009, high: 0.0011 },
  { ...BCA, id: 'bca-1400', density: at(1400), low: 0.0007, high: 0.0009 },
  { ...BCA, id: 'bca-1600', density: at(1600), low: 0.0006, high: 0.0007 },
];
