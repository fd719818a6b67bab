import { demand, demandWhole } from '../../domain-error.ts';
import type { Note } from '../../note.ts';
import { outsideAgeRange } from '../age-factor.ts';
import type { TemperatureHistory } from '../history.ts';
import { BOILS } from '../limits.ts';
import { conduct, type HeatRun } from './conduction.ts';
import type { Face } from './face.ts';
import type { Hydration } from './hydration.ts';
import type { Slab } from './slab.ts';
import { freshHeatCapacity, mostFreshConductivity } from './thermal-properties.ts';

/**
 * Limit of the temperature difference between core and face, K. Common practice for normal
 * concrete, no source.
 * @source common-practice
 */
export const DIFFERENCE_LIMIT = 20;

/**
 * Number of cells and step, s, that give the peak within 0.1 K of a mesh four times as fine.
 * @source none: a comparison; the tests make it for bare parts of ordinary cement, 30 mm to 1 m
 *   thick
 */
const CELLS = 60;
const STEP = 300;

export interface Part {
  /** Thickness, or the diameter of a round part, m */
  readonly thickness: number;
  readonly round?: Slab['round'];
  /** Contents of a cubic metre of fresh mix, kg */
  readonly mix: { readonly cement: number; readonly water: number; readonly sand?: number };
  /** W/(m·K); by default the most the fresh mix can conduct. */
  readonly conductivity?: number;
  readonly hydration: Hydration;
  /** K */
  readonly initialTemperature: number;
  readonly near: Face;
  readonly far: Face;
  /** s */
  readonly duration: number;
  readonly cells?: number;
  readonly step?: number;
  readonly firstStep?: number;
  readonly late?: Slab['late'];
}

export interface HeatInside {
  readonly run: HeatRun;
  /** W/(m·K) */
  readonly conductivity: number;
  /** J/(m³·K) */
  readonly heatCapacity: number;
  /** The hottest place and moment: K, s, m from the near face. */
  readonly peak: { readonly temperature: number; readonly time: number; readonly depth: number };
  /** Largest difference between the hottest place inside and the cooler face, K, and when, s. */
  readonly difference: { readonly value: number; readonly time: number };
  readonly notes: readonly Note[];
}

/**
 * How hot a part gets inside, when, and how much cooler its faces are.
 *
 * Finds the heat capacity of the mix and the most it can conduct (unless a conductivity is given),
 * and runs `conduct`. One-dimensional: a block calculated across its thickness comes out too hot, a
 * cube much too hot; calculated as a ball of the same width it comes out too cool. The caller
 * applies the limits of practice, PEAK_LIMIT and DIFFERENCE_LIMIT. Notes: 'outside-range' of
 * 'temperature' if a cell is outside 0…80 °C, the range of its ageing law; 'boils' if a place is
 * above boiling, where steam carries heat that is left out. No range is published for foamed
 * concrete.
 * @throws {DomainError} as conduct, freshHeatCapacity or mostFreshConductivity.
 * @source schindler-folliard-2005 for the heat, from memory
 * @source wiener-1912 for the conductivity, from memory
 * @source fib-mc2010 for the range of ageing, from memory
 * @source common-practice for the limits
 */
export function heatInside(part: Part): HeatInside {
  const { mix, hydration, cells = CELLS, step = STEP } = part;
  const conductivity = part.conductivity ?? mostFreshConductivity(mix);
  const heatCapacity = freshHeatCapacity(mix);
  const run = conduct({
    thickness: part.thickness,
    ...(part.round && { round: part.round }),
    conductivity,
    heatCapacity,
    initialTemperature: part.initialTemperature,
    near: part.near,
    far: part.far,
    duration: part.duration,
    step,
    ...(part.firstStep && { firstStep: part.firstStep }),
    ...(part.late && { late: part.late }),
    cells,
    hydration: { ...hydration, cement: mix.cement },
  });
  const peak = peakOf(run);
  const difference = differenceOf(run);
  return {
    run,
    conductivity,
    heatCapacity,
    peak,
    difference,
    notes: [
      ...outsideAgeRange(...extremesOf(run)),
      ...(peak.temperature > BOILS ? [{ code: 'boils', of: 'peak' }] : []),
    ],
  };
}

/** The hottest place and moment of a run. No range: a search. @source common-practice */
export function peakOf({ temperatures, times, depths }: HeatRun): HeatInside['peak'] {
  let [temperature, row, place] = [-Infinity, 0, 0];
  temperatures.forEach((along, r) => {
    for (let i = 0; i < along.length; i++)
      if (along[i]! > temperature) [temperature, row, place] = [along[i]!, r, i];
  });
  return { temperature, time: times[row]!, depth: depths[place]! };
}

/**
 * The lowest and the highest temperature of any cell, K. The faces do not age, so they do not
 * count.
 */
function extremesOf({ temperatures }: HeatRun): readonly [number, number] {
  let [coldest, hottest] = [Infinity, -Infinity];
  // About ten thousand comparisons at a key press, so no function is called for each.
  for (const along of temperatures)
    for (let i = 1; i < along.length - 1; i++) {
      const cell = along[i]!;
      if (cell < coldest) coldest = cell;
      if (cell > hottest) hottest = cell;
    }
  return [coldest, hottest];
}

/**
 * The largest difference between the hottest place inside and the cooler face. No range: a search.
 * @source common-practice
 */
export function differenceOf({ temperatures, times }: HeatRun): HeatInside['difference'] {
  let [value, time] = [0, times[0]!];
  temperatures.forEach((along, row) => {
    let hottest = -Infinity;
    for (let i = 1; i < along.length - 1; i++) if (along[i]! > hottest) hottest = along[i]!;
    const lag = hottest - coolerFace(along);
    if (lag > value) [value, time] = [lag, times[row]!];
  });
  return { value, time };
}

/**
 * The temperature history of a face in a run, s and K. No range: it selects a column.
 * @source definition
 */
export function faceHistory(
  { temperatures, times }: HeatRun,
  face: 'near' | 'far',
): TemperatureHistory {
  const at = temperatures.map((along) => along[face === 'near' ? 0 : along.length - 1]!);
  return { times: [...times], temperatures: at, gaps: [] };
}

const coolerFace = (along: readonly number[]) => Math.min(along[0]!, along[along.length - 1]!);

/**
 * Temperature of a run at a depth and a recorded moment, K: a straight line between neighbours.
 * `depth` m from the near face; `row` is the index of the moment. No range: straight lines.
 * @throws {DomainError} for a depth outside the slab, or a row the run does not have.
 * @source common-practice
 */
export function temperatureInside(run: HeatRun, depth: number, row: number): number {
  demandWhole('row', row, { min: 0, max: run.times.length - 1 });
  return readerAt(run, depth)(row);
}

/**
 * A function that gives the temperature at one depth by row, K. The depth is looked up only once.
 * `depth` m from the near face. No range: a straight line between neighbours.
 * @throws {DomainError} for a depth outside the slab.
 * @source common-practice
 */
export function readerAt(run: HeatRun, depth: number): (row: number) => number {
  const { depths, temperatures } = run;
  demand('depth', depth, 'length', { min: 0, max: depths[depths.length - 1]! });
  const after = Math.max(
    1,
    depths.findIndex((d) => d >= depth),
  );
  const [d0, d1] = [depths[after - 1]!, depths[after]!];
  const share = (depth - d0) / (d1 - d0);
  return (row) => {
    const along = temperatures[row]!;
    return along[after - 1]! + share * (along[after]! - along[after - 1]!);
  };
}
