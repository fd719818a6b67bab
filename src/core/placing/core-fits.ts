import { justOver, SLIVER } from '../quantity/dust.ts';
import type { Corner } from './polygon.ts';
import type { Shape } from './shapes.ts';

/** Measures of a shape seen from above, and its height, m. */
interface Extent {
  readonly height: number;
  /** The narrower side of the box round it. */
  readonly narrow: number;
  /** The longer one. */
  readonly long: number;
  /** Whether it is a circle, and has no corners. */
  readonly round: boolean;
}

/** What of a core is more than its form can hold, and the most that it can, m. */
export interface Outgrown {
  readonly measure: 'height' | 'narrow' | 'long' | 'corners';
  readonly value: number;
  readonly most: number;
}

/**
 * What of a core cannot stand in its form, however it is turned about the upright; undefined when nothing
 * stands against it. `core` and `form` in m, the core's height along the form's.
 *
 * Higher than the form; wider than it; a box whose corners lie further apart than a round form is wide
 * (`corners`: its diagonal against the diameter); a box p × q longer than a form a × b, and too wide to lie
 * askew in it (`long`). Askew it lies only where
 * b ≥ (2 p q a + (p² − q²) √(p² + q² − a²)) / (p² + q²), that is, where it just touches both pairs of sides.
 * An outline is taken as the box round it, its sides as they lie: a form is never larger, but a core of such
 * an outline may fit where this says that it does not. Of the others each is enough to know that a core does
 * not fit; in a box or a circle they also say that one alone does. No range.
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

/** Whether a box longer than its form is narrow enough to lie askew in it. */
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

/** A slice higher than half its ball is widest above its base. */
const widest = (base: number, height: number) =>
  height > base / 2 ? base ** 2 / (4 * height) + height : base;

const across = (corners: readonly Corner[], axis: 0 | 1) => {
  const along = corners.map((corner) => corner[axis]);
  return Math.max(...along) - Math.min(...along);
};
