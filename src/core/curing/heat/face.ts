import { demand } from '../../domain-error.ts';
import { type Layer, transmittance } from '../../finished/thermal-resistance.ts';
import { demandNotNegative, demandPositive } from '../bounds.ts';
import { steadyHistory, type TemperatureHistory } from '../history.ts';

/** The covering of a face from a time on: none, its form, a blanket. */
interface Covering {
  /** s from the start */
  readonly from: number;
  /**
   * Heat transfer coefficient, W/(m²·K). 0: no heat passes. Infinity: the face has the ambient
   * temperature.
   */
  readonly transfer: number;
}

/** The round part inside a form or blanket: `round` 1 for a column, 2 for a ball; its radius, m. */
export interface Around {
  readonly round: 0 | 1 | 2;
  readonly radius: number;
}

/** The surroundings of one face of a part. */
export interface Face {
  readonly ambient: TemperatureHistory;
  /** In order of time; the first begins at 0. */
  readonly coverings: readonly Covering[];
}

/**
 * Heat transfer coefficient of an outdoor face, W/(m²·K): 4 + 4·v by convection and about 5 by
 * radiation. `windSpeed` v m/s. No range is known to us. Sun, rain and evaporation are left out.
 * @throws {DomainError} for a negative wind.
 * @source iso-6946 Annex A, from memory
 */
export function outdoorTransfer({ windSpeed }: { readonly windSpeed: number }): number {
  demandNotNegative('windSpeed', windSpeed, 'speed');
  return 4 + 4 * windSpeed + 5;
}

/**
 * Heat transfer coefficient of a form or blanket with the air outside it, W/(m²·K): 1/(1/h + Σ
 * d/λ). `film` h W/(m²·K); `layers` from the part outward. Steady state: the layers' own heat
 * capacity is neglected. No range: series resistances.
 *
 * `around` a column or a ball of `radius` R, m, the heat spreads as it leaves. Per m² of the part,
 * a layer from radius a to b has the resistance ∫ (R/r)ⁿ dr/λ, which is R ln(b/a)/λ or R²(1/a −
 * 1/b)/λ, and the film outside it (R/b)ⁿ/h.
 * @throws {DomainError} for a film or radius not above zero, a negative thickness or a conductivity
 *   not above zero.
 * @source iso-6946 from memory
 * @source none: round a part, the integral is geometry
 */
export function throughLayers(of: {
  readonly film: number;
  readonly layers: readonly Layer[];
  readonly around?: Around;
}): number {
  const { film, layers, around } = of;
  demandPositive('film', film, 'thermalTransmittance');
  if (!around) return transmittance({ layers, surfaces: 1 / film }).transmittance;
  const { round, radius } = around;
  demandPositive('radius', radius, 'length');
  let outer = radius;
  const flattened = layers.map(({ thickness, conductivity }) => {
    demandNotNegative('thickness', thickness, 'length');
    const inner = outer;
    outer += thickness;
    const ways = [
      thickness,
      radius * Math.log(outer / inner),
      (thickness * radius ** 2) / (inner * outer),
    ] as const;
    return { thickness: ways[round], conductivity };
  });
  const surfaces = (radius / outer) ** round / film;
  return transmittance({ layers: flattened, surfaces }).transmittance;
}

/**
 * A face through which no heat passes: a symmetry plane, or perfect insulation. No range: a
 * boundary.
 * @source common-practice
 */
export const NO_FLOW: Face = {
  ambient: steadyHistory({ temperature: 293.15, duration: 1 }),
  coverings: [{ from: 0, transfer: 0 }],
};

/**
 * A face in air (or on ground) of one temperature, with one covering throughout.
 * `temperature` K; `transfer` W/(m²·K), Infinity to hold the face itself. No range: a boundary.
 * @throws {DomainError} for a temperature outside 150…500 K.
 * @source common-practice
 */
export function steadyFace(of: { readonly temperature: number; readonly transfer: number }): Face {
  return {
    ambient: steadyHistory({ temperature: of.temperature, duration: 1 }),
    coverings: [{ from: 0, transfer: of.transfer }],
  };
}

/**
 * Refuses a face whose coverings are missing, out of order or have a negative transfer. `Infinity`
 * is allowed.
 * @throws {DomainError} naming the covering's figure.
 * @source definition
 */
export function demandFace(face: Face): void {
  demand('coverings', face.coverings.length, 'count', { min: 1 });
  face.coverings.forEach(({ from, transfer }, i) => {
    const before = face.coverings[i - 1];
    demand(
      'from',
      from,
      'time',
      before ? { min: before.from, aboveMin: true } : { min: 0, max: 0 },
    );
    if (transfer !== Infinity) demandNotNegative('transfer', transfer, 'thermalTransmittance');
  });
}
