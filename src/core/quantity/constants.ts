/**
 * The exact numbers that customary units are built from, in SI.
 * @source nist-sp-811 Appendix B.8 (exact factors), quoted from memory
 */
export const POUND = 0.45359237; // kg
export const GRAIN = 64.79891e-6; // kg, 1/7000 lb
export const FOOT = 0.3048; // m
export const INCH = 0.0254; // m
export const YARD = 0.9144; // m
export const US_GALLON = 3.785411784e-3; // m³, 231 in³
export const IMPERIAL_GALLON = 4.54609e-3; // m³
export const STANDARD_GRAVITY = 9.80665; // m/s²
export const POUND_FORCE = POUND * STANDARD_GRAVITY; // N
export const PSI = POUND_FORCE / INCH ** 2; // Pa
export const POUND_PER_CUBIC_FOOT = POUND / FOOT ** 3; // kg/m³
export const FAHRENHEIT_DEGREE = 5 / 9; // K
/** The International Table British thermal unit, from 1 Btu/lb = 2326 J/kg exactly. */
export const BTU = 2326 * POUND; // J
export const MINUTE = 60; // s
export const HOUR = 60 * MINUTE; // s
export const DAY = 24 * HOUR; // s

/** 0 °C in kelvin, exact. @source definition */
export const ICE_POINT = 273.15;
/** A standard atmosphere in Pa, exact. @source nist-sp-811 Appendix B.8, quoted from memory */
export const STANDARD_ATMOSPHERE = 101_325;

/** Molar gas constant, J/(mol·K), exact. @source codata-2018 (from memory) */
export const GAS_CONSTANT = 8.314462618;
/** Avogadro's constant, 1/mol, exact. @source codata-2018 (from memory) */
export const AVOGADRO = 6.02214076e23;
/** The thermochemical calorie, J, exact. @source nist-sp-811 Appendix B.8, quoted from memory */
export const CALORIE = 4.184;

/**
 * Molar masses that define the hardness degrees, g/mol.
 * @source hardness-definitions
 */
export const MOLAR_MASS_CALCIUM_CARBONATE = 100.0869;
export const MOLAR_MASS_CALCIUM_OXIDE = 56.0774;
