/** The band standards name for preformed foam, kg/m³ (2–4 lb/ft³). @source aci-523-1r (from memory) */
export const STANDARD_FOAM_BAND = { min: 32, max: 64 } as const;

/** Foam denser than this, kg/m³, is wet. Common practice, no source. @source common-practice */
export const WET_FOAM = 120;
