/** A share with its sign, to a tenth of a per cent: `+1.2 %`. What rounds to nought has none. */
export const signedPercent = (x: number): string => {
  const digits = Math.abs(x * 100).toFixed(1);
  return `${Number(digits) === 0 ? '' : x < 0 ? '−' : '+'}${digits}\u00a0%`;
};
