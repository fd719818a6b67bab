import { demand } from '../domain-error.ts';

export interface DampAggregate {
  /** Required mass, saturated and surface-dry, kg. */
  readonly surfaceDry: number;
  /** All water in it over its oven-dry mass. */
  readonly moisture: number;
  /** What it holds when surface-dry, over its oven-dry mass. */
  readonly absorption: number;
}

/**
 * How much damp sand to weigh out, and by how much its water reduces the mixing water, kg.
 *
 * Oven-dry mass = surface-dry/(1 + absorption); to weigh = oven-dry × (1 + moisture); water it
 * brings = oven-dry × (moisture − absorption), negative for dry sand that absorbs water. No range:
 * arithmetic.
 *
 * @throws {DomainError} for a negative mass; moisture or absorption outside 0–1
 * @source army-en5466
 */
export function dampAggregate({ surfaceDry, moisture, absorption }: DampAggregate): {
  readonly toWeigh: number;
  readonly water: number;
  readonly ovenDry: number;
} {
  demand('surfaceDry', surfaceDry, 'mass', { min: 0 });
  demand('moisture', moisture, 'ratio', { min: 0, max: 1 });
  demand('absorption', absorption, 'ratio', { min: 0, max: 1 });
  const ovenDry = surfaceDry / (1 + absorption);
  return {
    ovenDry,
    toWeigh: ovenDry * (1 + moisture),
    water: ovenDry * (moisture - absorption),
  };
}

/**
 * The water on an aggregate whose free moisture is given as a share of its surface-dry mass, kg. No
 * range: arithmetic.
 *
 * @param surfaceDry kg; @param free share, negative where it will drink
 * @throws {DomainError} for a negative mass; a share outside −1…1
 * @source army-en5466
 */
export function freeWater({
  surfaceDry,
  free,
}: {
  readonly surfaceDry: number;
  readonly free: number;
}) {
  demand('surfaceDry', surfaceDry, 'mass', { min: 0 });
  demand('free', free, 'ratio', { min: -1, max: 1 });
  return surfaceDry * free;
}
