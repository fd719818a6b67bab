/** A share in per cent with its sign, to a tenth: `+1.2`; no sign if it rounds to 0. */
export const signedTenths = (x: number): string => {
  const digits = Math.abs(x * 100).toFixed(1);
  return `${Number(digits) === 0 ? '' : x < 0 ? '−' : '+'}${digits}`;
};

/** The same with its unit: `+1.2 %`. */
export const signedPercent = (x: number): string => `${signedTenths(x)}\u00a0%`;
