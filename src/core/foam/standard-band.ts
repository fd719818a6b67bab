/**
 * The band standards name for preformed foam, kg/m³ (2–4 lb/ft³). @source aci-523-1r (from memory)
 */
export const STANDARD_FOAM_BAND = { min: 32, max: 64 } as const;
