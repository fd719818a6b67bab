/** One reading: its value and its standard uncertainty, in the same unit. */
export interface Reading {
  readonly value: number;
  readonly uncertainty: number;
}

/**
 * First-order propagation of independent readings: u² = Σ (∂f/∂x · u_x)², slopes by central difference.
 * @returns the value, its standard uncertainty, and the part of u² that comes from each reading, 0–1
 * @source jcgm-100
 */
export function firstOrder<K extends string>(
  readings: Readonly<Record<K, Reading>>,
  f: (values: Readonly<Record<K, number>>) => number,
): { readonly value: number; readonly uncertainty: number; readonly shares: Record<K, number> } {
  const names = Object.keys(readings) as K[];
  const pairs = names.map((k) => [k, readings[k].value] as const);
  const at = Object.fromEntries(pairs) as Record<K, number>;
  const parts = names.map((k) => {
    const { value, uncertainty } = readings[k];
    if (uncertainty === 0) return 0;
    const step = 1e-4 * uncertainty;
    const slope = (f({ ...at, [k]: value + step }) - f({ ...at, [k]: value - step })) / (2 * step);
    return (slope * uncertainty) ** 2;
  });
  const total = parts.reduce((sum, part) => sum + part, 0);
  const shares = names.map((k, i) => [k, total === 0 ? 0 : parts[i]! / total] as const);
  return {
    value: f(at),
    uncertainty: Math.sqrt(total),
    shares: Object.fromEntries(shares) as Record<K, number>,
  };
}
