import { dryConductivityBand } from './conductivity.ts';
import { WONG_2026 } from './strength-relations/measured.ts';

/**
 * How many times the most that the relation and the tables say of a dry piece the measured pieces of a
 * foamed slag binder conduct: the highest of them. Their moisture is not given.
 * @source wong-2026
 */
export const MEASURED_OVER_TABLES = Math.max(
  ...WONG_2026.map(
    ({ density, conductivity }) => conductivity / dryConductivityBand({ dryDensity: density }).high,
  ),
);
