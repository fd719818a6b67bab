import { POUND_PER_CUBIC_FOOT, PSI } from '../../quantity/constants.ts';
import { classMinimum, MPA, type Step, type StrengthRelation } from './relation.ts';

const us = (steps: readonly Step[]): Step[] =>
  steps.map(([from, minimum]) => [from * POUND_PER_CUBIC_FOOT, minimum * PSI]);

/**
 * Minimum strength by class of cast density. Printed in whole lb/ft³ (24–29, 30–35 …): between 29
 * and 30 the lower class is assumed to continue.
 */
export const caltransClasses: StrengthRelation = {
  key: 'caltrans-classes',
  against: 'wet',
  range: { min: 24 * POUND_PER_CUBIC_FOOT, max: 90 * POUND_PER_CUBIC_FOOT },
  at: classMinimum(
    us([
      [24, 10],
      [30, 40],
      [36, 80],
      [42, 120],
      [50, 160],
      [80, 300],
    ]),
  ),
  standing: 'published',
  source: 'caltrans-19-10',
  where: 'Section 19-10, Classes I–VI',
};

/**
 * Low-density controlled low-strength material. The classes meet (18–24, 24–30 …); a density on the
 * boundary goes to the upper one. The table is remembered as in-service density, used here as cast
 * density: in-service is somewhat less, so the class found is the same or one too high.
 */
export const aci229Classes: StrengthRelation = {
  key: 'aci-229r-classes',
  against: 'wet',
  range: { min: 18 * POUND_PER_CUBIC_FOOT, max: 120 * POUND_PER_CUBIC_FOOT },
  at: classMinimum(
    us([
      [18, 10],
      [24, 40],
      [30, 80],
      [36, 120],
      [42, 160],
      [50, 300],
      [80, 500],
    ]),
  ),
  standing: 'from memory',
  source: 'aci-229r-99',
  where: 'Table 8.1, Classes I–VII',
};

/** The strength a foaming agent must reach in the standard test batch at 40 ± 3 lb/ft³. */
export const c869TestBatch: StrengthRelation = {
  key: 'c869-test-batch',
  against: 'wet',
  range: { min: 37 * POUND_PER_CUBIC_FOOT, max: 43 * POUND_PER_CUBIC_FOOT },
  at: classMinimum([[0, 200 * PSI]]),
  standing: 'published',
  source: 'astm-c869',
  where: 'Table 1',
};

/** Minimum mean strength of factory blocks by grade; between grades the lower one continues. */
export const is2185Blocks: StrengthRelation = {
  key: 'is-2185-4-blocks',
  against: 'oven-dry',
  range: { min: 800, max: 1800 },
  at: classMinimum([
    [800, 2.5 * MPA],
    [1000, 3.5 * MPA],
    [1200, 6.5 * MPA],
    [1400, 12 * MPA],
    [1600, 17.5 * MPA],
    [1800, 25 * MPA],
  ]),
  standing: 'from memory',
  source: 'is-2185-4',
  where: 'Table 1',
};
