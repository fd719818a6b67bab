import { MOLAR_MASS_CALCIUM_CARBONATE, MOLAR_MASS_CALCIUM_OXIDE } from '../quantity/constants.ts';

/**
 * Molar masses, kg/mol, from IUPAC's atomic weights. One by one, so that a page fetches those it
 * works with.
 * @source iupac-atomic-weights (from memory)
 */
export const calcium = 0.040078;
export const magnesium = 0.024305;
export const sodium = 0.022989769;
export const potassium = 0.0390983;
export const chloride = 0.03545;
export const sulfate = 0.09606;
export const nitrate = 0.062004;
export const bicarbonate = 0.061016;
export const carbonate = 0.060008;
export const carbonDioxide = 0.0440095;
export const calciumOxide = MOLAR_MASS_CALCIUM_OXIDE / 1000;
export const sodiumOxide = 0.0619789;
export const potassiumOxide = 0.094196;
export const calciumHydroxide = 0.0740927;

export const calciumCarbonate = MOLAR_MASS_CALCIUM_CARBONATE / 1000;
export const calciumBicarbonate = 0.16211;
export const calciumChloride = 0.110978;
export const calciumSulfate = 0.13614;
export const magnesiumCarbonate = 0.084313;
export const magnesiumBicarbonate = 0.146337;
export const magnesiumChloride = 0.095205;
export const magnesiumSulfate = 0.120365;
export const sodiumChloride = 0.0584428;
/** Washing soda without water: soda ash. */
export const sodiumCarbonate = 0.1059884;
/** Washing soda crystals, Na₂CO₃·10 H₂O. */
export const sodiumCarbonateDecahydrate = 0.2861412;
export const hydrochloricAcid = 0.036458;
export const sulfuricAcid = 0.098072;

export const citricAcid = 0.1921235;
export const citricAcidMonohydrate = 0.2101388;
export const trisodiumCitrateDihydrate = 0.2940996;
export const disodiumEdtaDihydrate = 0.3722364;
export const tetrasodiumEdta = 0.3801688;
export const sodiumTripolyphosphate = 0.3678638;

export const sodiumLaurate = 0.2223;
export const sodiumPalmitate = 0.27841;
export const sodiumStearate = 0.30646;
export const sodiumOleate = 0.30444;
export const potassiumOleate = 0.32055;
