/** Standard acceleration of free fall, m/s², exact by definition. @source nist-sp-811 */
export const STANDARD_GRAVITY = 9.80665;
