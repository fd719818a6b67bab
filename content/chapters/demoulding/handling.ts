import { inKilopascals } from '~/components/prose/amounts.ts';
import { bestSupportDistance } from '~/core/demould/beam.ts';
import { type FlatPart, type Hold, handlingStress } from '~/core/demould/handling.ts';
import { CARRIED, handlingMultiplier, MOULD_ADHESION } from '~/core/demould/multipliers.ts';
import { EARLIEST_ADJUSTED_AGE } from '~/core/demould/strip-window.ts';
import { HOUR, STANDARD_GRAVITY } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';

const { length, width, thickness } = demo.slab;
const SLAB: FlatPart = {
  length,
  width,
  depth: thickness,
  density: demo.wetDensity,
  factor: 1,
  adhesion: 0,
};
/** How it is lifted: off a smooth, waxed board that still holds it, off a rough one, and with the board drawn off first. */
export const SMOOTH = { adhesion: MOULD_ADHESION['oiled-steel-or-plastic'] };
const ROUGH = { adhesion: MOULD_ADHESION['rough-timber'] };
export const FREED = { factor: CARRIED };

/** The tension in the demo slab, or in one that differs from it, Pa. */
export const tensionIn = (differently: Partial<FlatPart>, hold: Hold = { by: 'ends' }) =>
  handlingStress({ ...SLAB, ...differently }, hold).stress;

/** The multiplier for a flat slab out of a smooth, oiled form. */
function flatMultiplier(): number {
  const found = handlingMultiplier({
    form: 'flat-removable-sides',
    finish: 'smooth-oiled',
    during: 'stripping',
  });
  if (!found)
    throw new Error('No multiplier is known for a flat slab out of a smooth, oiled form.');
  return found.factor;
}

const inset = bestSupportDistance(length);
export const byFactor = flatMultiplier();
export const tension = {
  smooth: inKilopascals(tensionIn(SMOOTH)),
  rough: inKilopascals(tensionIn(ROUGH)),
  roughHeldWell: inKilopascals(tensionIn(ROUGH, { by: 'two-points', left: inset, right: inset })),
  byFactor: inKilopascals(tensionIn({ factor: byFactor })),
  freed: inKilopascals(tensionIn(FREED)),
  freedHalfAsThick: inKilopascals(tensionIn({ ...FREED, depth: thickness / 2 })),
  freedTwiceAsLong: inKilopascals(tensionIn({ ...FREED, length: 2 * length })),
};

/** How many times the tension the slab has when it is half as thick, lifted off a smooth board that still holds it. */
export const timesHalfAsThick = tensionIn({ ...SMOOTH, depth: thickness / 2 }) / tensionIn(SMOOTH);

const ownWeight = demo.wetDensity * STANDARD_GRAVITY * thickness;
/** The demo slab’s weight, spread over its underside, and how many times that rough timber pulls. */
export const spread = {
  ownWeight: inKilopascals(ownWeight, 2),
  roughOverOwnWeight: ROUGH.adhesion / ownWeight,
};

/** Adjusted age before which no strength is guessed without bars. */
export const earliestHours = EARLIEST_ADJUSTED_AGE / HOUR;
