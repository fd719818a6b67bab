import { dryConductivityBand } from './conductivity.ts';
import { WONG_2026 } from './strength-relations/measured.ts';

/**
 * How far the measured pieces of a foamed slag binder exceed the highest value that the relation
 * and the tables give for a dry piece, as a factor: that of the highest piece. Their moisture is
 * not given.
 * @source wong-2026
 */
export const MEASURED_OVER_TABLES = Math.max(
  ...WONG_2026.map(
    ({ density, conductivity }) => conductivity / dryConductivityBand({ dryDensity: density }).high,
  ),
);
