import { demand } from '../domain-error.ts';

export interface BucketOfMix {
  /** kg and kg/m³ */
  readonly mass: number;
  readonly density: number;
}

/**
 * Several buckets of one batch together: their density is the total mass over the total volume, not
 * the mean of their densities, because a light bucket holds more volume for its mass. No range:
 * arithmetic.
 *
 * @returns kg, m³, kg/m³; `spread` is heaviest less lightest over the density of all, a share
 * @throws {DomainError} for no buckets, a mass or density not above 0
 * @source astm-c138 (density, yield); the sum is arithmetic
 */
export function pooled(buckets: readonly BucketOfMix[]): {
  readonly mass: number;
  readonly volume: number;
  readonly density: number;
  readonly spread: number;
} {
  demand('buckets', buckets.length, 'count', { min: 1 });
  let [mass, volume] = [0, 0];
  for (const bucket of buckets) {
    demand('mass', bucket.mass, 'mass', { min: 0, aboveMin: true });
    demand('density', bucket.density, 'density', { min: 0, aboveMin: true });
    mass += bucket.mass;
    volume += bucket.mass / bucket.density;
  }
  const densities = buckets.map((bucket) => bucket.density);
  const density = mass / volume;
  return {
    mass,
    volume,
    density,
    spread: (Math.max(...densities) - Math.min(...densities)) / density,
  };
}
