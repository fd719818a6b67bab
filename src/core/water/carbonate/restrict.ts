import { STANDARD_ATMOSPHERE } from '../../quantity/constants.ts';
import type { Inert, Restriction } from './balance.ts';
import { COMPONENTS, PLACE } from './species.ts';
import type { System } from './system.ts';
import type { Solutes } from './water.ts';

/** What determines the carbonate in a water: two of these, or a mineral in place of one. */
export interface Fixed {
  readonly alkalinity?: number;
  readonly carbon?: number;
  readonly lnHydrogen?: number;
  readonly lnCarbonate?: number;
  /** Pressure of CO₂, Pa. */
  readonly carbonDioxidePressure?: number;
  readonly calcite?: boolean;
}

const { hydrogen: H, carbonate: C, calcium: Ca } = PLACE;
/** Less than a molecule in a bathtub, mol/kg: counts as absent. */
export const NOTHING = 1e-26;

/**
 * Turns what is known of a water into a system of balances (see `Restriction`).
 *
 * The total of H⁺ is 2·carbon − alkalinity, since alkalinity is 2 CO₃ − H. At a fixed pressure of
 * CO₂, carbonate is proportional to 1/H², and the total of H⁺ becomes −alkalinity. In equilibrium
 * with calcite, calcium is proportional to 1/carbonate, and calcium − carbon is conserved; with
 * both fixed, 2·calcium − alkalinity is.
 *
 * @source none: stoichiometry of the dissolved species
 */
export function restrict(system: System, solutes: Solutes, fixed: Fixed): Restriction {
  const { alkalinity = 0, carbon = 0, carbonDioxidePressure: gas } = fixed;
  const totals = [
    2 * carbon - alkalinity,
    carbon,
    solutes.calcium ?? 0,
    solutes.magnesium ?? 0,
    solutes.sodium ?? 0,
    solutes.sulfate ?? 0,
  ];
  const offset = [0, 0, 0, 0, 0, 0];
  const dry = [0, 0, 0, 0, 0, 0];
  const columns: (number[] | undefined)[] = COMPONENTS.map((_, c) => unit(c));
  const carbonate = carbon > NOTHING || gas !== undefined || fixed.lnCarbonate !== undefined;
  const absent = totals.map((t, c) => c !== H && t <= NOTHING);
  absent[C] = !carbonate && !fixed.calcite;
  if (fixed.calcite) absent[Ca] = false;

  if (fixed.lnHydrogen !== undefined) {
    offset[H] = fixed.lnHydrogen;
    columns[H] = undefined;
  }
  if (fixed.lnCarbonate !== undefined) {
    offset[C] = fixed.lnCarbonate;
    columns[C] = undefined;
  }
  if (gas !== undefined) {
    offset[C] = system.lnGas + Math.log(gas / STANDARD_ATMOSPHERE) - 2 * offset[H]!;
    dry[C] = 1;
    columns[C] = undefined;
    if (columns[H]) columns[H][C] = -2;
    totals[H] = -alkalinity;
  }
  if (fixed.calcite && gas !== undefined) {
    offset[Ca] = system.lnCalcite - offset[C]!;
    dry[Ca] = -1;
    columns[Ca] = undefined;
    if (columns[H]) columns[H][Ca] = 2;
    totals[H]! += 2 * totals[Ca]!;
  } else if (fixed.calcite) {
    offset[C] = system.lnCalcite;
    columns[C] = undefined;
    columns[Ca] = [0, -1, 1, 0, 0, 0];
    totals[Ca]! -= carbon;
  }
  const kept = COMPONENTS.map((_, c) => c).filter((c) => columns[c] && !absent[c]);
  const guess = firstGuess(solutes, fixed);
  return {
    offset,
    dry,
    columns: kept.map((c) => columns[c]!),
    totals: kept.map((c) => totals[c]!),
    guess: kept.map((c) => guess[c]!),
    absent,
  };
}

/**
 * The ions of a water that contribute only to its ionic strength, mol/kg.
 * @source none: bookkeeping
 */
export function inertOf(solutes: Solutes): Inert {
  return {
    cations: solutes.otherCations ?? 0,
    anions: (solutes.otherAnions ?? 0) + (solutes.chloride ?? 0),
    balance: solutes.chloride === undefined,
  };
}

const unit = (at: number): number[] => COMPONENTS.map((_, c) => (c === at ? 1 : 0));

/** Rough logarithms of the component activities, good enough to start the descent. */
function firstGuess(solutes: Solutes, fixed: Fixed): number[] {
  const { alkalinity = 0, carbon = 0 } = fixed;
  const dioxide = carbon - alkalinity;
  let pH = 8.5;
  if (alkalinity <= 0) pH = Math.min(7, -Math.log10(Math.max(-alkalinity, 1e-7)));
  else if (dioxide > 0.01 * alkalinity) pH = 6.35 - Math.log10(dioxide / alkalinity);
  else if (alkalinity > 1.01 * carbon) pH = alkalinity > 2 * carbon ? 11 : 9.5;
  const ln = (x: number | undefined) => Math.log(Math.max(x ?? 0, 1e-9));
  const carbonate = Math.max(carbon, 1e-9) * 10 ** Math.min(0, pH - 10.3);
  return [
    -pH * Math.LN10,
    Math.log(carbonate),
    ln(solutes.calcium),
    ln(solutes.magnesium),
    ln(solutes.sodium),
    ln(solutes.sulfate),
  ];
}
