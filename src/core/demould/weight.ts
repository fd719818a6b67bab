import { demand } from '../domain-error.ts';

/**
 * The share of the removable water that counts as gone when the part is stripped. A part kept
 * covered in its form loses little, and zero errs on the heavy side. Common practice, no source.
 * @source common-practice
 */
const WATER_GONE_BY_STRIP = 0;

/**
 * How heavy is the part? Mass = density × volume + fittings, wet, as stripped and oven-dry.
 * As stripped it lies between: wet − share · (wet − dry). No range is published.
 * @param part volume m³ of concrete; wet and oven-dry density kg/m³; `gone` share 0–1 of the water
 *   that can leave, gone by stripping; fittings kg (inserts, mesh, an insert board)
 * @returns kg
 * @throws {DomainError} for a volume or density not above 0, a dry density above the wet, a share
 *   outside 0–1 or negative fittings
 * @source common-practice
 */
export function partMass(part: {
  readonly volume: number;
  readonly wetDensity: number;
  readonly dryDensity: number;
  readonly gone?: number;
  readonly fittings?: number;
}): { readonly wet: number; readonly stripped: number; readonly dry: number } {
  const { volume, wetDensity, dryDensity, gone = WATER_GONE_BY_STRIP, fittings = 0 } = part;
  demand('volume', volume, 'volume', { min: 0, aboveMin: true });
  demand('wetDensity', wetDensity, 'density', { min: 0, aboveMin: true });
  demand(
    'dryDensity',
    dryDensity,
    'density',
    { min: 0, aboveMin: true, max: wetDensity },
    'dry-not-above-wet',
  );
  demand('gone', gone, 'ratio', { min: 0, max: 1 });
  demand('fittings', fittings, 'mass', { min: 0 });
  const wet = wetDensity * volume + fittings;
  const dry = dryDensity * volume + fittings;
  return { wet, stripped: wet - gone * (wet - dry), dry };
}
