import { demand } from '../domain-error.ts';

/** A uniform layer across the heat flow: m and W/(m·K). */
export interface Layer {
  readonly thickness: number;
  readonly conductivity: number;
}

/** Surface resistances by the way heat flows, m²·K/W. From memory. @source iso-6946 */
export const INSIDE_SURFACE = { upward: 0.1, horizontal: 0.13, downward: 0.17 } as const;
/** Surface resistance outdoors, m²·K/W. From memory. @source iso-6946 */
export const OUTSIDE_SURFACE = 0.04;

/**
 * How much does a layer resist heat? R = thickness ÷ conductivity, m²·K/W. Steady flow straight
 * through; no range is published.
 * @throws {DomainError} for a negative thickness or a conductivity not above 0
 * @source iso-6946
 */
export function layerResistance({ thickness, conductivity }: Layer): number {
  demand('thickness', thickness, 'length', { min: 0 });
  demand('conductivity', conductivity, 'conductivity', { min: 0, aboveMin: true });
  return thickness / conductivity;
}

/**
 * R of layers in series with their surfaces, m²·K/W, and U = 1/R, W/(m²·K). No range: resistances
 * in series.
 * @param wall layers in any order; surfaces: total surface resistance, m²·K/W, 0 or more
 * @throws {DomainError} for what `layerResistance` refuses, negative surfaces, or nothing that
 *   resists
 * @source iso-6946
 */
export function transmittance(wall: {
  readonly layers: readonly Layer[];
  readonly surfaces: number;
}): { readonly resistance: number; readonly transmittance: number } {
  demand('surfaces', wall.surfaces, 'thermalResistance', { min: 0 });
  const resistance = wall.layers.reduce(
    (sum, layer) => sum + layerResistance(layer),
    wall.surfaces,
  );
  demand('resistance', resistance, 'thermalResistance', { min: 0, aboveMin: true });
  return { resistance, transmittance: 1 / resistance };
}

/**
 * How thick must it be for a required R, m, and what does each square metre then weigh, kg?
 * thickness = R · conductivity. No range: arithmetic.
 * @param wanted resistance of the layer alone m²·K/W, 0 or more; conductivity W/(m·K); density
 *   kg/m³
 * @throws {DomainError} outside those
 * @source iso-6946
 */
export function thicknessForResistance(wanted: {
  readonly resistance: number;
  readonly conductivity: number;
  readonly density: number;
}): { readonly thickness: number; readonly massPerArea: number } {
  const { resistance, conductivity, density } = wanted;
  demand('resistance', resistance, 'thermalResistance', { min: 0 });
  demand('conductivity', conductivity, 'conductivity', { min: 0, aboveMin: true });
  demand('density', density, 'density', { min: 0, aboveMin: true });
  const thickness = resistance * conductivity;
  return { thickness, massPerArea: thickness * density };
}
