import { demand } from '../domain-error.ts';
import { justOver } from '../quantity/dust.ts';

/**
 * The share of the available space that the gel fills, 0–1: x = 0.68 a / (0.32 a + w/c + air), air
 * being the volume of air per mass of cement, mL/g. From memory for the air term; without air as
 * published. No range is published.
 * @param of waterCement by mass; degree 0–1; airPerCement L/kg, 0 or more
 * @throws {DomainError} outside those, or when the gel would fill more than all the room
 * @source powers-gel-space
 */
export function gelSpaceRatio(of: {
  readonly waterCement: number;
  readonly degree: number;
  readonly airPerCement: number;
}): number {
  demand('waterCement', of.waterCement, 'ratio', { min: 0, aboveMin: true });
  demand('degree', of.degree, 'ratio', { min: 0, max: 1 });
  demand('airPerCement', of.airPerCement, 'ratio', { min: 0 });
  // x reaches 1 where 0.68 a = 0.32 a + w/c + air.
  const room = (of.waterCement + of.airPerCement) / 0.36;
  demand('degree', of.degree, 'ratio', { min: 0, max: justOver(room) }, 'out-of-space');
  const x = (0.68 * of.degree) / (0.32 * of.degree + of.waterCement + of.airPerCement);
  return Math.min(1, x);
}
