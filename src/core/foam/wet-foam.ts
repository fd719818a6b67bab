/** Foam denser than this, kg/m³, is wet. Common practice, no source. @source common-practice */
export const WET_FOAM = 120;
