import { demo } from '~/worksheets/demo.ts';

/** How surely the demo's bucket holds what it is said to: 0.2 L in 20 L. A share. */
export const BUCKET_DOUBT = 0.01;

/** How surely its scale and bucket tell such a density, kg/m³. A share of it. */
export function densityDoubt(density: number): number {
  const fullAndTare = Math.SQRT2 * demo.scale;
  return Math.hypot(fullAndTare / (demo.bucket.volume * density), BUCKET_DOUBT);
}
