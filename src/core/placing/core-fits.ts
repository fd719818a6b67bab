import { justOver, SLIVER } from '../quantity/dust.ts';
import type { Corner } from './polygon.ts';
import type { Shape } from './shapes.ts';

/** The plan dimensions of a shape, and its height, m. */
interface Extent {
  readonly height: number;
  /** The shorter side of its bounding box. */
  readonly narrow: number;
  /** The longer one. */
  readonly long: number;
  /** Whether it is a circle, without corners. */
  readonly round: boolean;
}

/** The dimension of a core that exceeds what its form can hold, and the maximum, m. */
export interface Outgrown {
  readonly measure: 'height' | 'narrow' | 'long' | 'corners';
  readonly value: number;
  readonly most: number;
}

/**
 * Which dimension prevents a core from standing in its form, however it is turned about the
 * vertical; undefined if none does. `core` and `form` in m, the core's height along the form's.
 *
 * Higher than the form; wider than it; a box whose corners are further apart than a round form is
 * wide (`corners`: its diagonal against the diameter); a box p × q longer than a form a × b, and
 * too wide to lie diagonally in it (`long`). It lies diagonally only if b ≥ (2 p q a + (p² − q²)
 * √(p² + q² − a²)) / (p² + q²), at equality just touching both pairs of sides. An outline is
 * replaced by its bounding box with its sides as they lie: a form is never larger than that, but a
 * core of such an outline may fit where this says that it does not. For the other shapes each
 * condition is sufficient to rule a core out; in a box or a circle they also decide that a single
 * one fits. No range.
 *
 * @source none: it is geometry
 */
export function coreOutgrows(of: {
  readonly core: Shape;
  readonly form: Shape;
}): Outgrown | undefined {
  const [core, form] = [extentOf(of.core), extentOf(of.form)];
  const corners = core.round ? core.long : Math.hypot(core.long, core.narrow);
  const limits: readonly Outgrown[] = [
    { measure: 'height', value: core.height, most: form.height },
    { measure: 'narrow', value: core.narrow, most: form.narrow },
    form.round
      ? { measure: 'corners', value: corners, most: form.long }
      : { measure: 'long', value: core.long, most: form.long },
  ];
  return limits.find(
    ({ measure, value, most }) =>
      value > justOver(most, SLIVER) && !(measure === 'long' && liesAskew(core, form)),
  );
}

/** Whether a box longer than its form is narrow enough to lie diagonally in it. */
function liesAskew({ long: p, narrow: q }: Extent, form: Extent): boolean {
  const [a, b] = [justOver(form.long, SLIVER), justOver(form.narrow, SLIVER)];
  const square = p ** 2 + q ** 2;
  return b * square >= 2 * p * q * a + (p ** 2 - q ** 2) * Math.sqrt(square - a ** 2);
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
  round: false,
});

const round = (diameter: number, height: number): Extent => ({
  height,
  narrow: diameter,
  long: diameter,
  round: true,
});

/** A cap higher than a hemisphere is widest above its base. */
const widest = (base: number, height: number) =>
  height > base / 2 ? base ** 2 / (4 * height) + height : base;

const across = (corners: readonly Corner[], axis: 0 | 1) => {
  const along = corners.map((corner) => corner[axis]);
  return Math.max(...along) - Math.min(...along);
};
