import { READINGS, readingOf } from '../../../bench/records/readings.ts';
import { DomainError } from '../../../core/domain-error.ts';
import { foamDensity } from '../../../core/foam/density.ts';
import type { NumberReading } from '../../../islands/engine/reading.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { densityDoubt } from '../../shared/mix/density-doubt.ts';
import { FOAM } from '../../shared/words/amounts.ts';
import { belowTare } from '../records/record-words.ts';
import type { RunReadings } from './run-readings.ts';

/** The least foam density its field takes, kg/m³; less is a slip. */
const LEAST_FOAM = READINGS.foamDensity.from;

/**
 * The result of weighing a bucket full of foam: its density with ±, kg/m³, or what is wrong with
 * the weighing.
 */
export interface FoamWeighed {
  readonly density?: number;
  readonly doubt?: number;
  readonly problem?: string;
  /** What is still missing, if only the full bucket is known. */
  readonly lacks?: string;
}

/**
 * The reading of its bucket that a weighing still needs, in words; undefined if none is missing, or
 * its field has a problem of its own.
 */
export function lacksOf({ at, problem }: RunReadings): string | undefined {
  const name = (['tare', 'vessel'] as const).find((one) => at(one) === undefined && !problem(one));
  return name && `This weighing needs “${readingOf(name).label}” too: nothing comes of it without.`;
}

export function foamWeighed(
  {
    value: full,
    pm: fullPm,
    problem,
    field: { label },
  }: Pick<NumberReading, 'value' | 'pm' | 'problem' | 'field'>,
  readings: RunReadings,
  say: Say,
): FoamWeighed {
  const { at, pm } = readings;
  if (problem) return { problem };
  const [tare, vessel] = [at('tare'), at('vessel')];
  const light = belowTare(label, full, tare, say);
  if (light) return { problem: light };
  if (full === undefined) return {};
  if (tare === undefined || !vessel) {
    const lacks = lacksOf(readings);
    return lacks ? { lacks } : {};
  }
  const mass = (si: number, significant = 5) => say(si, 'mass', { plain: true, significant });
  const read = `${label}: read ${mass(full)};`;
  try {
    const { apparent } = foamDensity({ tare, full, vessel });
    const doubts = { tare: pm('tare'), full: fullPm, vessel: pm('vessel') };
    if (apparent >= LEAST_FOAM)
      return { density: apparent, doubt: densityDoubt({ tare, full, vessel }, doubts) };
    return {
      problem: `${read} that leaves ${mass(full - tare, 2)} of foam in ${say(vessel, 'volume', { plain: true })}, less than ${say(LEAST_FOAM, 'density', { plain: true, units: FOAM })}.`,
    };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return {
      problem: `${read} it must be less than the bucket full of water, ${mass(error.allowed.max ?? 0, 4)}.`,
    };
  }
}

/**
 * Whether an entered foam density is the result of a weighing, to the digits it was entered with.
 */
export const cameOf = (weighed: number | undefined, written: number | undefined): boolean =>
  weighed !== undefined && written !== undefined && Math.abs(written / weighed - 1) < 0.005;

/**
 * Foam measured by weight, converted to m³, with the ± of both weighings; undefined until its
 * density is known.
 */
export function foamByWeight(
  { value: mass, pm: massPm, problem }: Pick<NumberReading, 'value' | 'pm' | 'problem'>,
  { at, pm }: RunReadings,
): { readonly volume: number; readonly doubt: number } | undefined {
  const density = at('foamDensity');
  if (problem || mass === undefined || !density) return undefined;
  const volume = mass / density;
  return { volume, doubt: Math.hypot(massPm, volume && volume * pm('foamDensity')) / density };
}
