import { demand } from '../domain-error.ts';
import { STANDARD_GRAVITY as GRAVITY } from '../quantity/constants.ts';
import { DUST } from '../quantity/dust.ts';

/** A liquid that stands against a form. */
export interface Head {
  /** Wet density of what is poured, kg/m³. */
  readonly density: number;
  /** From the surface down to the bottom of the form, m. */
  readonly depth: number;
}

/**
 * Pressure on the form at a depth, Pa: p = ρ g h, full liquid head without any reduction.
 *
 * It holds while the mix is as poured; stiffening only lowers it. ACI 347 requires the full head
 * wherever the slump is above 7 in, which a foamed mix always is. No range is published.
 *
 * @param density kg/m³; @param depth below the surface, m
 * @throws {DomainError} for a density not above 0 or a negative depth
 * @source hurd-aci-347, hydrostatics
 */
export function headPressure({ density, depth }: Head): number {
  demand('density', density, 'density', { min: 0, aboveMin: true });
  demand('depth', depth, 'length', { min: 0 });
  return density * GRAVITY * depth;
}

/**
 * The force on a vertical side, N, and where it acts: R = ½ ρ g h² b, a third of the depth above
 * the bottom. Range as `headPressure`.
 *
 * @param width of the side, m
 * @returns resultant in N, its height above the bottom in m, greatest pressure in Pa
 * @throws {DomainError} as `headPressure`; a width not above 0
 * @source hydrostatics
 */
export function sidePush({ density, depth, width }: Head & { readonly width: number }): {
  readonly resultant: number;
  readonly above: number;
  readonly pressure: number;
} {
  demand('width', width, 'length', { min: 0, aboveMin: true });
  const pressure = headPressure({ density, depth });
  return { resultant: (pressure * depth * width) / 2, above: depth / 3, pressure };
}

/**
 * The net uplift on a core or blockout surrounded by the mix, N: weight of the mix it displaces
 * less its own, ρ g V − m g. Negative: it stays down by its own weight. Range as `headPressure`.
 *
 * @param displaced volume below the surface, m³; @param mass of the core, kg
 * @throws {DomainError} for a density not above 0, a negative volume or mass
 * @source hydrostatics (Archimedes)
 */
export function floatUp(core: {
  readonly density: number;
  readonly displaced: number;
  readonly mass: number;
}): number {
  demand('density', core.density, 'density', { min: 0, aboveMin: true });
  demand('displaced', core.displaced, 'volume', { min: 0 });
  demand('mass', core.mass, 'mass', { min: 0 });
  return (core.density * core.displaced - core.mass) * GRAVITY;
}

/**
 * The uplift on the upper half of a closed sphere that is full of mix, N: the weight of the mix
 * missing above its inner face, up to the level of its top. Of the cylinder π R² · R the hemisphere
 * takes ⅔ π R³, which leaves ρ g π R³/3. Range as `headPressure`.
 *
 * @param density kg/m³; @param diameter inside, m
 * @throws {DomainError} for a density not above 0, a negative diameter
 * @source hydrostatics
 */
export function upperHalfLift(ball: {
  readonly density: number;
  readonly diameter: number;
}): number {
  demand('diameter', ball.diameter, 'length', { min: 0 });
  const displaced = (Math.PI * (ball.diameter / 2) ** 3) / 3;
  return floatUp({ density: ball.density, displaced, mass: 0 });
}

/**
 * The load on a face that leans over the mix: the push normal to it and its vertical component, the
 * lift, N.
 *
 * Push p̄ A with p̄ the mean of the pressures at its top and bottom edge; lift = push × sin θ, θ
 * the lean from vertical. The lift also equals the mean pressure times the plan area of the face.
 * Range as `headPressure`, and a lean short of horizontal.
 *
 * @param density kg/m³; @param top depth of its upper edge, m; @param height upright, m;
 *   @param lean from upright, rad, 0 to below π/2; @param width m
 * @throws {DomainError} for anything negative, a lean outside its range
 * @source hydrostatics
 */
export function leaningFace(face: {
  readonly density: number;
  readonly top: number;
  readonly height: number;
  readonly lean: number;
  readonly width: number;
}): { readonly push: number; readonly lift: number; readonly sideways: number } {
  const { density, top, height, lean, width } = face;
  demand('height', height, 'length', { min: 0, aboveMin: true });
  demand('width', width, 'length', { min: 0, aboveMin: true });
  demand('lean', lean, 'angle', { min: 0, max: Math.PI / 2, belowMax: true });
  const mean = headPressure({ density, depth: top }) + headPressure({ density, depth: height }) / 2;
  const push = (mean * height * width) / Math.cos(lean);
  return { push, lift: push * Math.sin(lean), sideways: push * Math.cos(lean) };
}

/**
 * The load on each tie or clamp of an upright held by two rows of them, N, by the lever rule: lower
 * = R (y₂ − y̅)/(y₂ − y₁), upper = R (y̅ − y₁)/(y₂ − y₁), R the force over one spacing, y̅ a third
 * of the depth.
 *
 * A negative load means that row is pulled in, not pushed out: the two rows should be moved or
 * spread wider. Range as `headPressure`.
 *
 * @param spacing of the uprights along the side, m; @param lower and upper heights of the rows
 *   above the bottom, m
 * @throws {DomainError} as `sidePush`; rows not one above the other
 * @source hydrostatics, beam-statics
 */
export function tieLoads(
  form: Head & { readonly spacing: number; readonly lower: number; readonly upper: number },
): { readonly lower: number; readonly upper: number; readonly push: number } {
  const { density, depth, spacing, lower, upper } = form;
  demand('lower', lower, 'length', { min: 0 });
  demand('upper', upper, 'length', { min: lower, aboveMin: true }, 'rows-in-order');
  const { resultant, above } = sidePush({ density, depth, width: spacing });
  /** A row exactly a third of the depth up leaves only rounding error to the other. */
  const load = (arm: number) => {
    const share = arm / (upper - lower);
    return Math.abs(share) < DUST ? 0 : resultant * share;
  };
  return { lower: load(upper - above), upper: load(above - lower), push: resultant };
}
