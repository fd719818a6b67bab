import { bestSupportDistance } from '~/core/demould/beam.ts';
import { type FlatPart, type Hold, handlingStress } from '~/core/demould/handling.ts';
import { CARRIED, handlingMultiplier, MOULD_ADHESION } from '~/core/demould/multipliers.ts';
import { EARLIEST_ADJUSTED_AGE } from '~/core/demould/strip-window.ts';
import { HOUR, STANDARD_GRAVITY } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { stress } from './stress.ts';

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
  smooth: stress(tensionIn(SMOOTH)),
  rough: stress(tensionIn(ROUGH)),
  roughHeldWell: stress(tensionIn(ROUGH, { by: 'two-points', left: inset, right: inset })),
  byFactor: stress(tensionIn({ factor: byFactor })),
  freed: stress(tensionIn(FREED)),
  freedHalfAsThick: stress(tensionIn({ ...FREED, depth: thickness / 2 })),
  freedTwiceAsLong: stress(tensionIn({ ...FREED, length: 2 * length })),
};

/** How many times the tension half the thickness has, lifted off a smooth board that still holds it. */
export const thinnerHeld = tensionIn({ ...SMOOTH, depth: thickness / 2 }) / tensionIn(SMOOTH);

const ownWeight = demo.wetDensity * STANDARD_GRAVITY * thickness;
/** Over the underside of the slab. */
export const pull = {
  smooth: stress(SMOOTH.adhesion, 2),
  rough: stress(ROUGH.adhesion, 2),
  ownWeight: stress(ownWeight, 2),
  roughOverOwnWeight: ROUGH.adhesion / ownWeight,
};

/** Adjusted age before which no strength is guessed without bars. */
export const earliestHours = EARLIEST_ADJUSTED_AGE / HOUR;
