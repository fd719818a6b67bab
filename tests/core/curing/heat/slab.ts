import { steadyFace } from '../../../../src/core/curing/heat/face.ts';
import { ORDINARY_CEMENT } from '../../../../src/core/curing/heat/hydration.ts';
import type { Slab } from '../../../../src/core/curing/heat/slab.ts';

export const DAY = 86400;

export const air = steadyFace({ temperature: 293.15, transfer: 8 });

export const slab: Slab = {
  thickness: 0.3,
  conductivity: 0.4,
  heatCapacity: 1.3e6,
  initialTemperature: 293.15,
  near: air,
  far: air,
  duration: 2 * DAY,
  step: 900,
  cells: 30,
  hydration: { ...ORDINARY_CEMENT, cement: 400 },
};
