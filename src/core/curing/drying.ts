import { demand } from '../domain-error.ts';
import { EQUILIBRIUM_MOISTURE } from '../finished/moisture.ts';
import { DAY } from '../quantity/constants.ts';
import { demandNotNegative, demandPositive } from './bounds.ts';

/** Depth to which screed practice asks one day a millimetre, m. @source bs-8204 */
const FAST_DEPTH = 0.05;

/**
 * Days to dry by screed practice, s: one a millimetre to 50 mm, two a millimetre beyond.
 * `thickness` m, drying from one face. Made for sand–cement screed in warm, dry, moving air; no
 * range is published.
 * @throws {DomainError} for a thickness not above zero.
 * @source bs-8204
 */
export function screedDryingTime({ thickness }: { readonly thickness: number }): number {
  demandPositive('thickness', thickness, 'length');
  const deep = Math.max(0, thickness - FAST_DEPTH);
  return (1000 * (thickness - deep) + 2000 * deep) * DAY;
}

/**
 * Air in the pores at or below which coverings may be laid, relative humidity.
 * @source bs-8204-coverings
 */
export const DRY_ENOUGH_HUMIDITY = 0.75;

/**
 * Equilibrium moisture of aerated concrete in air of that humidity, kg/kg: our straight line
 * between its figures at 50 and 80 %.
 * @source iso-10456 from memory
 */
export const DRY_ENOUGH_MOISTURE =
  EQUILIBRIUM_MOISTURE.dryRoom +
  ((DRY_ENOUGH_HUMIDITY - 0.5) / 0.3) *
    (EQUILIBRIUM_MOISTURE.dampRoom - EQUILIBRIUM_MOISTURE.dryRoom);

/**
 * Moisture diffusion of normal concrete while still wet, m²/s. Foamed concrete's own is not known
 * to us.
 * @source code-aster-hsna102
 */
export const MOISTURE_DIFFUSIVITY = 3e-10;

/**
 * Factor by which the diffusivity may be smaller or larger, for lack of a figure for foamed
 * concrete. Common practice, no source.
 * @source common-practice
 */
export const DIFFUSIVITY_DOUBT = 5;

export interface DryingSlab {
  /** m */
  readonly thickness: number;
  /** Faces it can dry from. */
  readonly faces: 1 | 2;
  /** m²/s */
  readonly diffusivity?: number;
}

/**
 * Mean share of the water to be lost that is still inside, 0…1: Σ
 * 8/((2n+1)π)²·exp(−((2n+1)π/2)²·Fo), Fo = D·t/L², L the distance to the face. `time` s. It assumes
 * constant diffusivity and faces at once in equilibrium with the air, so the start is too fast and
 * the end too slow. No range is published.
 * @throws {DomainError} for a negative time, or a thickness or diffusivity not above zero.
 * @source code-aster-ttll01 the same series, averaged over the depth
 */
export function moistureLeft(of: DryingSlab & { readonly time: number }): number {
  demandNotNegative('time', of.time, 'time');
  return meanLeft((diffusivityOf(of) * of.time) / wayOut(of) ** 2);
}

/**
 * Time to dry to a mean moisture by diffusion, s, with its band. `initial`, `target` and `resting`
 * moisture in one unit (kg/kg), resting what the air allows (`EQUILIBRIUM_MOISTURE` of the finished
 * part is one published guess). The band is the diffusivity five times larger and smaller: as rough
 * as it looks. No range is published.
 * @throws {DomainError} for a target not between resting and initial, or as moistureLeft.
 * @source code-aster-hsna102 for the diffusivity
 * @source common-practice for the band
 */
export function diffusionDryingTime(
  of: DryingSlab & {
    readonly initial: number;
    readonly target: number;
    readonly resting: number;
  },
): { readonly time: number; readonly soonest: number; readonly latest: number } {
  const { initial, target, resting } = of;
  demandNotNegative('resting', resting, 'ratio');
  demand('target', target, 'ratio', { min: resting, aboveMin: true });
  demand('initial', initial, 'ratio', { min: target });
  const share = (target - resting) / (initial - resting);
  let low = 0;
  let high = 1;
  while (meanLeft(high) > share) high *= 2;
  while (high - low > 1e-12 * high) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (meanLeft(middle) > share) low = middle;
    else high = middle;
  }
  const time = (((low + high) / 2) * wayOut(of) ** 2) / diffusivityOf(of);
  return { time, soonest: time / DIFFUSIVITY_DOUBT, latest: time * DIFFUSIVITY_DOUBT };
}

function meanLeft(fourier: number): number {
  // Early on the series converges slowly, and the square-root-of-time law is exact to 1e-9.
  if (fourier < 0.05) return 1 - 2 * Math.sqrt(fourier / Math.PI);
  let sum = 0;
  for (let n = 20; n >= 0; n--) {
    const k = ((2 * n + 1) * Math.PI) / 2;
    sum += (2 / (k * k)) * Math.exp(-k * k * fourier);
  }
  return sum;
}

function wayOut({ thickness, faces }: DryingSlab): number {
  demandPositive('thickness', thickness, 'length');
  return faces === 2 ? thickness / 2 : thickness;
}

function diffusivityOf({ diffusivity = MOISTURE_DIFFUSIVITY }: DryingSlab): number {
  demandPositive('diffusivity', diffusivity, 'ratio');
  return diffusivity;
}
