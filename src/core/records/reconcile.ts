import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';
import { CEMENT_DENSITY, MIX_WATER_DENSITY, SAND_DENSITY } from '../mix/densities.ts';

/**
 * What was weighed and measured of one batch, SI. Masses in kg, volumes in m³, densities in kg/m³.
 */
export interface BatchWeighed {
  readonly cement: number;
  /** Mixing water, without the foam's. */
  readonly water: number;
  /** Saturated and surface dry. */
  readonly sand: number;
  readonly foamVolume: number;
  /** As the scale reads it, so that gas weighs nothing. */
  readonly foamDensity: number;
  /** Foam and base mix added as corrections. */
  readonly foamAdded: number;
  readonly baseAdded: number;
  /** The bucket of blended mix, as last weighed: kg, kg, m³. */
  readonly tare: number;
  readonly full: number;
  readonly vessel: number;
  /** What the mix filled in the forms, m³. */
  readonly placed?: number | undefined;
  /** What was left over, scraped out or spilled, kg. */
  readonly leftOver?: number | undefined;
}

/** What no reading tells: densities of particles, kg/m³, and what else is in it. */
export interface Particles {
  readonly cementDensity?: number;
  readonly sandDensity?: number;
  readonly waterDensity?: number;
  /** Fibre, pigment and the like in the base mix, not among the readings: kg and m³. */
  readonly further?: number;
  readonly furtherVolume?: number;
}

/**
 * What went in compared with what came out. Masses in kg, volumes in m³, the rest shares or ratios.
 */
export interface Reconciled {
  readonly massIn: number;
  /** Cement, sand and what is further in it over mass in: what drying does not remove. */
  readonly solidShare: number;
  readonly wetDensity: number;
  /** Mass in over the density weighed. */
  readonly yield: number;
  /** Volume of everything but gas. */
  readonly airless: number;
  /** Gas the foam brought, and gas found in the mix. */
  readonly gasIn: number;
  readonly gasFound: number;
  /** Gas found over gas brought. */
  readonly survival: number;
  /** Gas in the mix over its volume. */
  readonly air: number;
  /** Total water, including the foam's liquid, over cement. */
  readonly waterCement: number;
  /** Mixing water over cement, as weighed in. */
  readonly waterCementBase: number;
  /** Wet density if every bubble had survived. */
  readonly planned: number;
  /** Mass in minus mass in the forms and left over; undefined if either was not measured. */
  readonly missing: number | undefined;
  /**
   * The most that can be missing: mass in minus the part of mass out that was measured; undefined
   * if none was.
   */
  readonly mostMissing: number | undefined;
}

/**
 * What went into a batch compared with what came out: mass, yield, air and the foam that survived.
 *
 * With P further in the base mix, of volume V₊, and base mix scaled by k = 1 + added/(C + W + S +
 * P), foam F = F₁ + F₂ of density ρf: mass in M = k (C + W + S + P) + ρf F; wet density ρ = (full −
 * tare)/vessel; yield M/ρ; volume without gas V₀ = k (C/ρc + W/ρw + S/ρs + V₊) + ρf F/ρw; gas found
 * M/ρ − V₀; gas brought F (1 − ρf/ρw); survival their quotient; w/c (k W + ρf F)/(k C), of the base
 * mix W/C; solids k (C + S + P)/M. Air entrained with the base mix counts as foam that survived. No
 * range is published: a balance of mass and volume.
 *
 * @returns see `Reconciled`; a survival below 0 or above 1 is returned as it is, for a judge to
 *   explain
 * @throws {DomainError} amounts that are not positive, a full bucket not heavier than the empty
 *   one, a foam not lighter than water
 * @source astm-c138 (density, yield, gravimetric air); navedtra-14071 (absolute volume)
 */
export function reconcile(batch: BatchWeighed & Particles): Reconciled {
  const { cement, water, sand, foamVolume, foamDensity, foamAdded, baseAdded } = batch;
  const { cementDensity = CEMENT_DENSITY, sandDensity = SAND_DENSITY } = batch;
  const { waterDensity = MIX_WATER_DENSITY, placed, leftOver } = batch;
  const { further = 0, furtherVolume = 0 } = batch;
  demandAmount('cement', cement, 'mass');
  demandAmount('water', water, 'mass');
  demand('sand', sand, 'mass', { min: 0, max: EXTREMES.mass.max });
  demandAmount('foamVolume', foamVolume, 'volume');
  demandAmount('foamDensity', foamDensity, 'density');
  demand('foamDensity', foamDensity, 'density', { max: waterDensity, belowMax: true }, 'no-gas');
  demand('foamAdded', foamAdded, 'volume', { min: 0, max: EXTREMES.volume.max });
  demand('baseAdded', baseAdded, 'mass', { min: 0, max: EXTREMES.mass.max });
  demand('tare', batch.tare, 'mass', { min: 0, max: EXTREMES.mass.max });
  demand('full', batch.full, 'mass', { min: batch.tare, max: EXTREMES.mass.max, aboveMin: true });
  demandAmount('vessel', batch.vessel, 'volume');
  demand('cementDensity', cementDensity, 'density', { min: 1000, max: 5000 });
  demand('sandDensity', sandDensity, 'density', { min: 100, max: 5000 });
  demand('waterDensity', waterDensity, 'density', { min: 900, max: 1200 });
  demand('further', further, 'mass', { min: 0, max: EXTREMES.mass.max });
  demand('furtherVolume', furtherVolume, 'volume', { min: 0, max: EXTREMES.volume.max });
  if (placed !== undefined)
    demand('placed', placed, 'volume', { min: 0, max: EXTREMES.volume.max });
  if (leftOver !== undefined)
    demand('leftOver', leftOver, 'mass', { min: 0, max: EXTREMES.mass.max });

  const base = cement + water + sand + further;
  const scale = 1 + baseAdded / base;
  const foam = foamVolume + foamAdded;
  const liquid = foamDensity * foam;
  const massIn = scale * base + liquid;
  const wetDensity = (batch.full - batch.tare) / batch.vessel;
  const made = massIn / wetDensity;
  const airless =
    scale * (cement / cementDensity + water / waterDensity + sand / sandDensity + furtherVolume) +
    liquid / waterDensity;
  const gasIn = foam * (1 - foamDensity / waterDensity);
  const gasFound = made - airless;
  const known = (placed ?? 0) * wetDensity + (leftOver ?? 0);
  return {
    massIn,
    solidShare: (scale * (cement + sand + further)) / massIn,
    wetDensity,
    yield: made,
    airless,
    gasIn,
    gasFound,
    survival: gasFound / gasIn,
    air: gasFound / made,
    waterCement: (scale * water + liquid) / (scale * cement),
    waterCementBase: water / cement,
    planned: massIn / (airless + gasIn),
    missing: placed === undefined || leftOver === undefined ? undefined : massIn - known,
    mostMissing: placed === undefined && leftOver === undefined ? undefined : massIn - known,
  };
}
