import { type Note, outsideRange } from '../../note.ts';
import { STANDARD_ATMOSPHERE } from '../../quantity/constants.ts';
import type { Balanced } from './balance.ts';
import { alkalinityOf, COMPONENTS, type Component, PLACE, SPECIES } from './species.ts';
import type { System } from './system.ts';
import type { CarbonateWater, Solutes } from './water.ts';

export type SpeciesName = (typeof SPECIES)[number]['name'];

/** A water with everything in it counted: it is a `CarbonateWater`, so it can be worked on further. */
export interface Speciation extends CarbonateWater {
  readonly calcium: number;
  readonly magnesium: number;
  readonly sodium: number;
  readonly sulfate: number;
  readonly chloride: number;
  readonly otherCations: number;
  readonly otherAnions: number;
  /** −log₁₀ of the activity of H⁺. */
  readonly pH: number;
  /** mol/kg. */
  readonly ionicStrength: number;
  readonly waterActivity: number;
  /** Pressure of CO₂ the water would be at rest with, Pa. */
  readonly carbonDioxidePressure: number;
  /** mol/kg of each species. */
  readonly molality: Readonly<Record<SpeciesName, number>>;
  /** ln activity of each component; −Infinity when it is not there. */
  readonly lnActivity: Readonly<Record<Component, number>>;
  /** Charge of what was given, eq/kg; zero when the balancing ion was left to the solver. */
  readonly chargeImbalance: number;
  /** 'outside-range' of 'ionicStrength' above `FRESH`. */
  readonly notes: readonly Note[];
}

/**
 * Ionic strength up to which the extended Debye–Hückel equation is trusted, mol/kg; a water of 2 g/L
 * has about 0.04. @source common-practice
 */
const FRESH = { max: 0.1 } as const;

/** Acids and bases that cancel to this share of them all do so but for rounding: `balance` meets no total closer. @source none: a choice */
const BALANCED = 1e-10;

/**
 * Counts up a solved system: totals in mol/kg (alkalinity in eq/kg), pH, pressure of CO₂ in Pa.
 * @source none: sums over the species
 */
export function speciation(system: System, solutes: Solutes, solved: Balanced): Speciation {
  const named = SPECIES.map((s, i) => [s.name, solved.molality[i]!] as const);
  const total = (of: (i: number) => number) =>
    SPECIES.reduce((sum, _, i) => sum + of(i) * solved.molality[i]!, 0);
  const alkalinity = total((i) => alkalinityOf(SPECIES[i]!));
  const shares = total((i) => Math.abs(alkalinityOf(SPECIES[i]!)));
  const totalOf = (component: Component) => total((i) => SPECIES[i]!.of[PLACE[component]]!);
  const absent = (component: Component) => component !== 'hydrogen' && totalOf(component) === 0;
  const lnActivity = COMPONENTS.map((name, c) => [
    name,
    absent(name) ? -Infinity : solved.lnActivity[c]!,
  ]);
  const lnH = solved.lnActivity[PLACE.hydrogen]!;
  const lnCarbonate = absent('carbonate') ? -Infinity : solved.lnActivity[PLACE.carbonate]!;
  const balancing = solutes.chloride === undefined;
  return {
    temperature: system.temperature,
    activity: system.activity,
    calcium: totalOf('calcium'),
    magnesium: totalOf('magnesium'),
    sodium: totalOf('sodium'),
    sulfate: totalOf('sulfate'),
    chloride: solutes.chloride ?? Math.max(solved.charge, 0),
    otherCations: (solutes.otherCations ?? 0) + (balancing ? Math.max(-solved.charge, 0) : 0),
    otherAnions: solutes.otherAnions ?? 0,
    alkalinity: Math.abs(alkalinity) > BALANCED * shares ? alkalinity : 0,
    carbon: totalOf('carbonate'),
    pH: -lnH / Math.LN10,
    ionicStrength: solved.ionicStrength,
    waterActivity: solved.waterActivity,
    carbonDioxidePressure:
      STANDARD_ATMOSPHERE *
      Math.exp(2 * lnH + lnCarbonate - Math.log(solved.waterActivity) - system.lnGas),
    molality: Object.fromEntries(named) as Record<SpeciesName, number>,
    lnActivity: Object.fromEntries(lnActivity) as Record<Component, number>,
    chargeImbalance: balancing ? 0 : solved.charge,
    notes: outsideRange('ionicStrength', solved.ionicStrength, FRESH),
  };
}
