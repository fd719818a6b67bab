import { type Note, outsideRange } from '../../note.ts';
import { STANDARD_ATMOSPHERE } from '../../quantity/constants.ts';
import type { Balanced } from './balance.ts';
import { alkalinityOf, COMPONENTS, type Component, PLACE, SPECIES } from './species.ts';
import type { System } from './system.ts';
import type { CarbonateWater, Solutes } from './water.ts';

export type SpeciesName = (typeof SPECIES)[number]['name'];

/** A solved water. It is a `CarbonateWater` too, so other functions take it. */
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
  /** Pressure of CO₂ in equilibrium with the water, Pa. */
  readonly carbonDioxidePressure: number;
  /** mol/kg of each species. */
  readonly molality: Readonly<Record<SpeciesName, number>>;
  /** ln activity of each component; −Infinity if it is absent. */
  readonly lnActivity: Readonly<Record<Component, number>>;
  /** Charge imbalance of the ions given, eq/kg; zero if the solver added a balancing ion. */
  readonly chargeImbalance: number;
  /** The balances as solved: a similar water can be solved from them, sooner. */
  readonly solved: Balanced;
  /** 'outside-range' of 'ionicStrength' above `FRESH`. */
  readonly notes: readonly Note[];
}

/**
 * Ionic strength up to which the extended Debye–Hückel equation is valid, mol/kg; a water of 2 g/L
 * has about 0.04. @source common-practice
 */
const FRESH = { max: 0.1 } as const;

/**
 * An alkalinity that is a smaller share than this of all acids and bases is zero: `balance` is not
 * more accurate. @source none: a choice
 */
const BALANCED = 1e-10;

/**
 * The totals of a solved system in mol/kg (alkalinity in eq/kg), its pH and pressure of CO₂ in Pa.
 * @source none: sums over the species
 */
export function speciation(system: System, solutes: Solutes, solved: Balanced): Speciation {
  const named = SPECIES.map((s, i) => [s.name, solved.molality[i]!] as const);
  const total = (of: (i: number) => number) =>
    SPECIES.reduce((sum, _, i) => sum + of(i) * solved.molality[i]!, 0);
  const alkalinity = total((i) => alkalinityOf(SPECIES[i]!));
  const shares = total((i) => Math.abs(alkalinityOf(SPECIES[i]!)));
  const totals = COMPONENTS.map((_, c) => total((i) => SPECIES[i]!.of[c]!));
  const totalOf = (component: Component) => totals[PLACE[component]]!;
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
    solved,
    notes: outsideRange('ionicStrength', solved.ionicStrength, FRESH),
  };
}
