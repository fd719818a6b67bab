import { demand } from '../../domain-error.ts';
import * as MOLAR_MASS from '../molar-masses.ts';

/**
 * What binds calcium and magnesium mole for mole without removing them, with the molar mass
 * (kg/mol) as sold. `retards` is the share of the cement's mass from which a delay of the set is to
 * be expected; from memory, and cements vary widely. For EDTA no figure is known.
 * @source iupac-atomic-weights (from memory), retarders (from memory)
 */
export const SEQUESTRANTS = {
  citricAcid: { molarMass: MOLAR_MASS.citricAcid, retards: 0.001 },
  citricAcidMonohydrate: { molarMass: MOLAR_MASS.citricAcidMonohydrate, retards: 0.001 },
  trisodiumCitrateDihydrate: { molarMass: MOLAR_MASS.trisodiumCitrateDihydrate, retards: 0.001 },
  disodiumEdtaDihydrate: { molarMass: MOLAR_MASS.disodiumEdtaDihydrate, retards: undefined },
  tetrasodiumEdta: { molarMass: MOLAR_MASS.tetrasodiumEdta, retards: undefined },
  sodiumTripolyphosphate: { molarMass: MOLAR_MASS.sodiumTripolyphosphate, retards: 0.001 },
} as const;
export type Sequestrant = keyof typeof SEQUESTRANTS;

/**
 * Sugar that begins to retard, as a share of the cement: about 0.05 %.
 * @source retarders (from memory)
 */
export const SUGAR_RETARDS = 0.0005;

export interface Sequestered {
  /** Dose of the sequestrant, kg per m³ of water. */
  readonly dose: number;
  /** The same as a share of the mass of cement the water is mixed with. */
  readonly shareOfCement: number;
  /** Multiple of the share from which it is known to retard; undefined if none is known. */
  readonly timesRetarding: number | undefined;
}

/**
 * How much of a sequestrant binds a hardness, and what that means for the cement.
 *
 * `hardness` in mol/m³, one mole each; `waterCement` is the water–cement ratio by mass, with the
 * water taken as 1000 kg/m³. Binding is never quite complete, and at the high pH of cement it is
 * cement's own calcium that the sequestrant meets. No range is published.
 *
 * @throws {DomainError} for a negative hardness or a water–cement ratio that is not positive.
 * @source iupac-atomic-weights (from memory), retarders (from memory)
 */
export function sequester(need: {
  readonly hardness: number;
  readonly sequestrant: Sequestrant;
  readonly waterCement: number;
}): Sequestered {
  demand('hardness', need.hardness, 'hardness', { min: 0 });
  demand('waterCement', need.waterCement, 'ratio', { min: 0, aboveMin: true });
  const { molarMass, retards } = SEQUESTRANTS[need.sequestrant];
  const dose = need.hardness * molarMass;
  const shareOfCement = (dose / 1000) * need.waterCement;
  return {
    dose,
    shareOfCement,
    timesRetarding: retards === undefined ? undefined : shareOfCement / retards,
  };
}
