import { MOLAR_MASS_CALCIUM_CARBONATE, MOLAR_MASS_CALCIUM_OXIDE } from '../quantity/constants.ts';

/** Molar masses, kg/mol, from IUPAC's atomic weights. @source iupac-atomic-weights (from memory) */
export const MOLAR_MASS = {
  calciumCarbonate: MOLAR_MASS_CALCIUM_CARBONATE / 1000,
  sodium: 0.022989769,
  potassium: 0.0390983,
  chloride: 0.03545,
  sulfate: 0.09606,
  nitrate: 0.062004,
  bicarbonate: 0.061016,
  carbonate: 0.060008,
  carbonDioxide: 0.0440095,
  calciumOxide: MOLAR_MASS_CALCIUM_OXIDE / 1000,
  calciumHydroxide: 0.0740927,
  calciumChloride: 0.110978,
  sodiumChloride: 0.0584428,
  /** Washing soda without water: soda ash. */
  sodiumCarbonate: 0.1059884,
  /** Washing soda crystals, Na₂CO₃·10 H₂O. */
  sodiumCarbonateDecahydrate: 0.2861412,
  citricAcid: 0.1921235,
  citricAcidMonohydrate: 0.2101388,
} as const;
