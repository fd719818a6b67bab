import { demand } from '../domain-error.ts';
import { demandNotNegative } from './bounds.ts';
import { type Drying, type Evaporation, evaporation, evaporationState } from './evaporation.ts';

/**
 * The share of a sunlit surface's loss that remains in shade. Outdoors in hot weather, shade at
 * least halved it.
 * @source hasanain-1989
 */
const SHADE_LEAVES = 0.5;

/**
 * The share of the wind at the surface that remains behind a windbreak of panels. Common practice,
 * no source.
 * @source common-practice
 */
const WINDBREAK_LEAVES = 0.4;

/**
 * The share of the loss that remains under a sheet laid on the face and weighted at the edges.
 * Common practice, no source.
 * @source common-practice
 */
const SHEET_LEAVES = 0.05;

/**
 * How much cooler a mix with cold water comes out, K. Common practice, no source.
 * @source common-practice
 */
const COOLER_BY = 5;

type Measure = 'nothing' | 'shade' | 'windbreak' | 'cooler-mix' | 'sheet';

export interface MeasureResult {
  readonly measure: Measure;
  /** kg/(m²·s) */
  readonly rate: number;
  /** Share saved compared with doing nothing, 0…1; 0 when nothing evaporates. */
  readonly saved: number;
  readonly state: Evaporation['state'];
}

/**
 * What shade, a windbreak, a cooler mix or a sheet would each do to the loss, one at a time.
 *
 * `sunlit` says whether the surface is in the sun now (shade helps only then); `limitShare` as
 * evaporation. The other arguments, with named defaults: the share of the loss shade and a sheet
 * leave, the share of the wind a windbreak leaves (0…1), and how much cooler the mix would be, K.
 * The wind and temperature measures are worked with evaporationUno; shade and sheet scale its
 * result. As rough as ±40 %. No range is published for the shares; the weather's is as
 * evaporationUno.
 * @throws {DomainError} for a share outside 0…1, a negative cooling, or weather evaporationUno
 *   refuses, with the cooler mix too.
 * @source hasanain-1989 for shade
 * @source common-practice for the rest
 */
export function evaporationMeasures(
  weather: Drying & {
    readonly sunlit: boolean;
    readonly limitShare?: number;
    readonly shadeLeaves?: number;
    readonly windbreakLeaves?: number;
    readonly sheetLeaves?: number;
    readonly coolerBy?: number;
  },
): readonly MeasureResult[] {
  const {
    shadeLeaves = SHADE_LEAVES,
    windbreakLeaves = WINDBREAK_LEAVES,
    sheetLeaves = SHEET_LEAVES,
    coolerBy = COOLER_BY,
  } = weather;
  for (const [name, share] of Object.entries({ shadeLeaves, windbreakLeaves, sheetLeaves }))
    demand(name, share, 'ratio', { min: 0, max: 1 });
  demandNotNegative('coolerBy', coolerBy, 'temperatureDifference');
  const now = evaporation(weather);
  const calmer = evaporation({ ...weather, windSpeed: weather.windSpeed * windbreakLeaves });
  const cooler = evaporation({
    ...weather,
    concreteTemperature: weather.concreteTemperature - coolerBy,
  });
  const results: readonly (readonly [Measure, number])[] = [
    ['nothing', now.rate],
    ...(weather.sunlit ? [['shade', now.rate * shadeLeaves] as const] : []),
    ['windbreak', calmer.rate],
    ['cooler-mix', cooler.rate],
    ['sheet', now.rate * sheetLeaves],
  ];
  return results.map(([measure, rate]) => ({
    measure,
    rate,
    saved: now.rate > 0 ? 1 - rate / now.rate : 0,
    state: evaporationState(rate, weather.limitShare),
  }));
}
