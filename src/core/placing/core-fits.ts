import type { Corner } from './polygon.ts';
import type { Shape } from './shapes.ts';

/** Measures of a shape seen from above, and its height, m. */
interface Extent {
  readonly height: number;
  /** The narrower side of the box round it. */
  readonly narrow: number;
  /** The longer one. */
  readonly long: number;
  /** No straight line in it is longer. */
  readonly span: number;
}

/** What of a core is more than its form can hold, and the most that it can, m. */
export interface Outgrown {
  readonly measure: 'height' | 'long' | 'narrow';
  readonly most: number;
}

/** Past what two ways of typing the same length may differ by. */
const DUST = 1 + 1e-9;

/**
 * What of a core cannot stand in its form, however it is turned about the upright; undefined when nothing
 * stands against it. `core` and `form` in m, the core's height along the form's.
 *
 * Higher than the form; its longer side longer than the longest line across the form (the diagonal of the
 * box round it, or its diameter); its narrower side wider than the narrower side of that box. No range: each
 * is enough to know that it does not fit, and together they are not enough to know that it does.
 *
 * @source none: it is geometry
 */
export function coreOutgrows(of: {
  readonly core: Shape;
  readonly form: Shape;
}): Outgrown | undefined {
  const [core, form] = [extentOf(of.core), extentOf(of.form)];
  const limits: readonly Outgrown[] = [
    { measure: 'height', most: form.height },
    { measure: 'long', most: form.span },
    { measure: 'narrow', most: form.narrow },
  ];
  return limits.find(({ measure, most }) => core[measure] > most * DUST);
}

function extentOf(shape: Shape): Extent {
  switch (shape.shape) {
    case 'slab':
      return boxed(shape.length, shape.width, shape.thickness);
    case 'block':
      return boxed(shape.length, shape.width, shape.height);
    case 'cylinder':
      return round(shape.diameter, shape.height);
    case 'ring':
      return round(shape.outerDiameter, shape.height);
    case 'cone-frustum':
      return round(Math.max(shape.bottomDiameter, shape.topDiameter), shape.height);
    case 'box-frustum':
      return boxed(
        Math.max(shape.length, shape.topLength),
        Math.max(shape.width, shape.topWidth),
        shape.height,
      );
    case 'wedge':
      return boxed(shape.length, shape.width, Math.max(shape.thickness, shape.thinEnd));
    case 'cap':
    case 'shell':
      return round(widest(shape.baseDiameter, shape.height), shape.height);
    case 'prism':
      return boxed(across(shape.corners, 0), across(shape.corners, 1), shape.height);
  }
}

const boxed = (a: number, b: number, height: number): Extent => ({
  height,
  narrow: Math.min(a, b),
  long: Math.max(a, b),
  span: Math.hypot(a, b),
});

const round = (diameter: number, height: number): Extent => ({
  height,
  narrow: diameter,
  long: diameter,
  span: diameter,
});

/** A slice higher than half its ball is widest above its base. */
const widest = (base: number, height: number) =>
  height > base / 2 ? base ** 2 / (4 * height) + height : base;

const across = (corners: readonly Corner[], axis: 0 | 1) => {
  const along = corners.map((corner) => corner[axis]);
  return Math.max(...along) - Math.min(...along);
};
