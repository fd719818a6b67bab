import { demand } from '../domain-error.ts';
import { justOver, SLIVER } from '../quantity/dust.ts';

export interface AirVoids {
  /** A: air by volume of the whole, 0–1. */
  readonly airContent: number;
  /** n: voids met per length of line, 1/m. */
  readonly voidFrequency: number;
  /** l: mean chord across a void, m. */
  readonly meanChord: number;
  /** α: surface of the voids per volume of them, 1/m. */
  readonly specificSurface: number;
  /** p/A */
  readonly pasteAirRatio: number;
  /** L: the largest distance, by the model, from paste to a void, m. */
  readonly spacingFactor: number;
  readonly branch: 'thin-walls' | 'far-voids';
}

/** p/A at which the two expressions for the spacing factor meet. From memory. @source astm-c457 */
export const SPACING_BRANCH = 4.342;
/**
 * Air above which the spacing factor of spheres in plenty of paste stops being physical (50–60 %).
 * From memory.
 * @source astm-c457
 */
export const SPACING_LIMIT = 0.5;
/**
 * The largest share that equal spheres packed at random fill; above it the voids are no longer
 * spheres. From memory.
 * @source random-packing
 */
export const RANDOM_PACKING = 0.64;

/**
 * Bubbles counted along a line: A = T_a/T_t, n = N/T_t, l = T_a/N, α = 4/l. Spacing factor: p/A ≤
 * 4.342: L = T_p/(4N); else L = (3/α)[1.4(1 + p/A)^⅓ − 1]. Range: made for air-entrained concrete
 * of a few per cent of air; above SPACING_LIMIT the spacing factor means nothing, and above
 * RANDOM_PACKING the voids are no spheres.
 * @param line traverse T_t, air T_a and paste T_p along it, m; voids N met
 * @throws {DomainError} for a line or air not above 0, air and paste longer than the line, no void
 * @source astm-c457
 */
export function linearTraverse(line: {
  readonly traverse: number;
  readonly air: number;
  readonly paste: number;
  readonly voids: number;
}): AirVoids {
  const { traverse, air, paste, voids } = line;
  demand('traverse', traverse, 'length', { min: 0, aboveMin: true });
  demand('air', air, 'length', { min: 0, aboveMin: true, max: traverse });
  demand('paste', paste, 'length', { min: 0, max: justOver(traverse, SLIVER) - air });
  demand('voids', voids, 'count', { min: 1 });
  return airVoids(air / traverse, paste / traverse, voids / traverse);
}

/**
 * The same from points: A = S_a/S_t, p = S_p/S_t, T_t = S_t · I, n = N/T_t, l = A/n. Range as
 * `linearTraverse`.
 * @param grid stops S_t, of them over air S_a and over paste S_p; interval I, m; voids N met by the
 *   line
 * @throws {DomainError} for no stop, no stop over air, more over air and paste than stops, an
 *   interval not above 0, no void
 * @source astm-c457
 */
export function pointCount(grid: {
  readonly stops: number;
  readonly airStops: number;
  readonly pasteStops: number;
  readonly interval: number;
  readonly voids: number;
}): AirVoids {
  const { stops, airStops, pasteStops, interval, voids } = grid;
  demand('stops', stops, 'count', { min: 1 });
  demand('airStops', airStops, 'count', { min: 0, aboveMin: true, max: stops });
  demand('pasteStops', pasteStops, 'count', { min: 0, max: stops - airStops });
  demand('interval', interval, 'length', { min: 0, aboveMin: true });
  demand('voids', voids, 'count', { min: 1 });
  return airVoids(airStops / stops, pasteStops / stops, voids / (stops * interval));
}

function airVoids(airContent: number, paste: number, voidFrequency: number): AirVoids {
  const meanChord = airContent / voidFrequency;
  const specificSurface = 4 / meanChord;
  const pasteAirRatio = paste / airContent;
  const thin = pasteAirRatio <= SPACING_BRANCH;
  const spacingFactor = thin
    ? paste / (4 * voidFrequency)
    : (3 / specificSurface) * (1.4 * Math.cbrt(1 + pasteAirRatio) - 1);
  return {
    airContent,
    voidFrequency,
    meanChord,
    specificSurface,
    pasteAirRatio,
    spacingFactor,
    branch: thin ? 'thin-walls' : 'far-voids',
  };
}
