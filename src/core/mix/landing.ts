import { DomainError, demand } from '../domain-error.ts';
import { justOver, SLIVER } from '../quantity/dust.ts';
import { firstOrderCorrelated } from '../uncertainty/correlated.ts';
import { correlationFactor } from '../uncertainty/correlation.ts';
import { simulateNormal } from '../uncertainty/monte-carlo.ts';
import { type Spread, spreadOf, symmetricInterval } from '../uncertainty/spread.ts';
import { HYDRATE_WATER } from './oven-dry.ts';

/** The readings a batch is calculated from, in the order of `READINGS`: kg, m³, kg/m³, shares. */
export const READINGS = [
  'cement',
  'water',
  'sand',
  'foamVolume',
  'foamDensity',
  'gasLost',
  'cementDensity',
  'sandDensity',
] as const;
type ReadingName = (typeof READINGS)[number];

interface Doubtful {
  readonly value: number;
  /** Standard uncertainty, same unit. */
  readonly u: number;
}

export type BatchReadings = Readonly<Record<ReadingName, Doubtful>>;

export interface Landing {
  readonly wetDensity: Outcome & {
    /** Its values over the trials, in any order, and their 95 % interval. */
    readonly landed: readonly number[];
    readonly low: number;
    readonly high: number;
  };
  readonly yield: Outcome;
  readonly ovenDryDensity: Outcome;
  /** The number of trials left out because their readings are impossible (a negative mass). */
  readonly impossible: number;
}

interface Outcome {
  /** The value from the readings themselves, SI. */
  readonly value: number;
  /** Standard uncertainty to first order. */
  readonly first: number;
  /** Mean and standard deviation of the trials. */
  readonly trials: Spread;
  /** The contribution of each reading alone, same unit, in the order of `READINGS`. */
  readonly parts: readonly number[];
}

/**
 * Few enough for a page. Two such odds differ by chance with a standard deviation of up to half a
 * per cent, √(2 × ¼/N): a third of such pairs differ by more.
 */
export const LANDING_TRIALS = 20_000;
/** Any whole number would do; it is fixed so that the answer changes only with the readings. */
const LANDING_SEED = 20_250;

/**
 * How close a batch lands, and what that depends on: wet density, yield and oven-dry density, with
 * an uncertainty in every reading.
 *
 * V = C/ρc + W/ρw + S/ρs + F (1 − l g), with g = 1 − ρf/ρw the share of gas in the foam and l the
 * share of that gas lost in blending; wet density (C + W + S + ρf F)/V; oven-dry (1.2 C + S)/V, the
 * sand taken as dry. Propagated to first order, and by `LANDING_TRIALS` Monte Carlo trials of
 * normal readings, both with the same correlations. No range is published; the trials show how far
 * the first order holds.
 *
 * @param together correlation of the errors of the weighings (cement, water, sand), 0–1: one scale
 *   that reads a share too high does so for all of them
 * @param sameBucket how closely, 0–1, the errors of foam volume and foam density go in opposite
 *   ways, as they do when both hang on the volume of the same bucket: their correlation, with the
 *   sign turned
 * @throws {DomainError} for a negative uncertainty; a reading that cannot be: cement, water or foam
 *   not above 0, sand below 0, gas lost below −1 or from 1 on, a density outside 900–1200 (water),
 *   1000–5000 (cement) or 100–5000 kg/m³ (sand); `too-doubtful`, an uncertainty over half its
 *   reading, or over 0.5 of gas lost; a correlation outside 0–1
 * @source jcgm-100 5.1.2, 5.2.2; jcgm-101 clause 7; astm-c138; astm-c869
 */
export function landing({
  readings,
  waterDensity,
  together = 0,
  sameBucket = 0,
  trials = LANDING_TRIALS,
  seed = LANDING_SEED,
}: {
  readonly readings: BatchReadings;
  readonly waterDensity: number;
  readonly together?: number;
  readonly sameBucket?: number;
  readonly trials?: number;
  readonly seed?: number;
}): Landing {
  demand('waterDensity', waterDensity, 'density', { min: 900, max: 1200 });
  demand('together', together, 'ratio', { min: 0, max: 1 });
  demand('sameBucket', sameBucket, 'ratio', { min: 0, max: 1 });
  const mean = READINGS.map((name) => readings[name].value);
  const u = READINGS.map((name) => readings[name].u);
  demandReadings(readings);
  const correlation = correlations(together, sameBucket);
  const model = batchModel(waterDensity);
  const { values, impossible } = simulateNormal({
    mean,
    u,
    factor: correlationFactor(correlation),
    model,
    results: 3,
    trials,
    seed,
  });
  const [x, y] = [new Float64Array(READINGS.length), new Float64Array(3)];
  const outcome = (k: number): Outcome => {
    // Always pass the model the same type of list, or JavaScript engines take the slow path in
    // every trial.
    const f = (readings: readonly number[]) => {
      x.set(readings);
      model(x, y);
      // Impossible readings have no outcome: the slope is then taken from the other side.
      demand('outcome', y[k]!, 'count', {});
      return y[k]!;
    };
    const { value, u: first, parts } = firstOrderCorrelated(f, mean, u, correlation);
    return { value, first, trials: spreadOf(values[k]!), parts };
  };
  const landed = values[0]!;
  return {
    wetDensity: Object.assign(outcome(0), { landed, ...symmetricInterval(landed, 0.95) }),
    yield: outcome(1),
    ovenDryDensity: outcome(2),
    impossible,
  };
}

function batchModel(waterDensity: number) {
  return (x: Float64Array, y: Float64Array) => {
    // Element by element: this is called tens of thousands of times per key press.
    const cement = x[0]!;
    const water = x[1]!;
    const sand = x[2]!;
    const foam = x[3]!;
    const foamDensity = x[4]!;
    const gasLost = x[5]!;
    const cementDensity = x[6]!;
    const sandDensity = x[7]!;
    const gas = foam * (1 - foamDensity / waterDensity);
    const volume =
      cement / cementDensity + water / waterDensity + sand / sandDensity + foam - gasLost * gas;
    const sound =
      cement > 0 &&
      water > 0 &&
      sand >= 0 &&
      foam >= 0 &&
      foamDensity > 0 &&
      gasLost < 1 &&
      cementDensity > 0 &&
      sandDensity > 0 &&
      volume > 0;
    y[0] = sound ? (cement + water + sand + foamDensity * foam) / volume : Number.NaN;
    y[1] = sound ? volume : Number.NaN;
    y[2] = sound ? ((1 + HYDRATE_WATER) * cement + sand) / volume : Number.NaN;
  };
}

function demandReadings(readings: BatchReadings): void {
  const positive = { min: 0, aboveMin: true } as const;
  demand('cement', readings.cement.value, 'mass', positive);
  demand('water', readings.water.value, 'mass', positive);
  demand('sand', readings.sand.value, 'mass', { min: 0 });
  demand('foamVolume', readings.foamVolume.value, 'volume', positive);
  demand('foamDensity', readings.foamDensity.value, 'density', positive);
  demand('gasLost', readings.gasLost.value, 'ratio', { min: -1, max: 1, belowMax: true });
  demand('cementDensity', readings.cementDensity.value, 'density', { min: 1000, max: 5000 });
  demand('sandDensity', readings.sandDensity.value, 'density', { min: 100, max: 5000 });
  // With such uncertainties most trials would be impossible mixes.
  for (const name of READINGS) {
    const { value, u } = readings[name];
    const most = name === 'gasLost' ? 0.5 : Math.abs(value) / 2;
    if (u > justOver(most, SLIVER))
      throw new DomainError({
        quantity: name,
        value: u,
        kind: KIND[name],
        allowed: { min: 0, max: most },
        because: 'too-doubtful',
      });
  }
}

const KIND = {
  cement: 'mass',
  water: 'mass',
  sand: 'mass',
  foamVolume: 'volume',
  foamDensity: 'density',
  gasLost: 'ratio',
  cementDensity: 'density',
  sandDensity: 'density',
} as const;

function correlations(together: number, sameBucket: number): number[][] {
  const r: number[][] = READINGS.map((_, i) => READINGS.map((__, j) => (i === j ? 1 : 0)));
  for (const [i, j] of [
    [0, 1],
    [0, 2],
    [1, 2],
  ] as const) {
    r[i]![j] = together;
    r[j]![i] = together;
  }
  r[3]![4] = -sameBucket;
  r[4]![3] = -sameBucket;
  return r;
}
