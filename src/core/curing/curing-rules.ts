import { DAY, HOUR, ICE_POINT } from '../quantity/constants.ts';
import { justUnder, SLIVER } from '../quantity/dust.ts';
import { demandTemperature } from './bounds.ts';

/**
 * How quickly a concrete gains strength, by the ratio of its mean 2-day to its 28-day strength:
 * rapid from 0.50, medium from 0.30, slow from 0.15, else very slow.
 * @source din-1045-3
 */
export type GainClass = 'rapid' | 'medium' | 'slow' | 'very-slow';

/**
 * Coldest surface temperature of each band, K, and its shortest cure, days.
 * @source din-1045-3 curing table
 */
export const DIN_CURING: readonly {
  readonly from: number;
  readonly days: Readonly<Record<GainClass, number>>;
}[] = [
  { from: ICE_POINT + 25, days: { rapid: 1, medium: 2, slow: 2, 'very-slow': 3 } },
  { from: ICE_POINT + 15, days: { rapid: 1, medium: 2, slow: 4, 'very-slow': 5 } },
  { from: ICE_POINT + 10, days: { rapid: 2, medium: 4, slow: 7, 'very-slow': 10 } },
  { from: ICE_POINT + 5, days: { rapid: 3, medium: 6, slow: 10, 'very-slow': 15 } },
];

/** Surface temperature below which time does not count, K. @source din-1045-3 */
export const DIN_COLD = ICE_POINT + 5;

/**
 * Shortest cure at a surface temperature by DIN 1045-3, s. Below 5 °C the 5–10 °C row holds, and
 * the caller adds the time spent below 5 °C. `surfaceTemperature` K; a mean may miss the limit of
 * its band by rounding error. For normal concrete; no range is published for foamed.
 * @throws {DomainError} for a temperature outside 150…500 K.
 * @source din-1045-3 curing table
 */
export function dinCuring(of: {
  readonly surfaceTemperature: number;
  readonly gain: GainClass;
}): number {
  demandTemperature('surfaceTemperature', of.surfaceTemperature);
  const band =
    DIN_CURING.find(({ from }) => of.surfaceTemperature >= justUnder(from, SLIVER)) ??
    DIN_CURING[DIN_CURING.length - 1]!;
  return band.days[of.gain] * DAY;
}

/**
 * Temperature below which American practice does not count the time, K.
 * @source aci-308r from memory
 */
export const ACI_COLD = ICE_POINT + 10;

/** A rule that asks for a plain number of days. */
export interface FlatRule {
  readonly rule: 'nhbc-plain' | 'nhbc-reinforced' | 'aci-normal' | 'aci-high-early';
  /** s */
  readonly duration: number;
  /** Coldest temperature at which time counts, K; undefined when the rule names none. */
  readonly above: number | undefined;
}

/**
 * UK housing: 4 days for plain Portland cement, 7 when reinforced or with other binders. ACI: 7
 * days, 3 for high-early cement, at 10 °C or more.
 * @source nhbc-3-1-15
 * @source aci-308r from memory
 */
export const FLAT_RULES: readonly FlatRule[] = [
  { rule: 'nhbc-plain', duration: 4 * DAY, above: undefined },
  { rule: 'nhbc-reinforced', duration: 7 * DAY, above: undefined },
  { rule: 'aci-normal', duration: 7 * DAY, above: ACI_COLD },
  { rule: 'aci-high-early', duration: 3 * DAY, above: ACI_COLD },
];

/**
 * EN 13670 curing class 4, the longest: as EN_CURING_SHARES has it.
 * @source en-13670 Table 4, from memory
 */
export const EN_CLASS_4_SHARE = 0.7;

/**
 * EN 13670 curing classes 2–4: share of the specified strength at the surface when curing may stop.
 * @source en-13670 Table 4, from memory
 */
export const EN_CURING_SHARES: Readonly<Record<2 | 3 | 4, number>> = {
  2: 0.35,
  3: 0.5,
  4: EN_CLASS_4_SHARE,
};

/**
 * EN 13670 curing class 1: a fixed time, s. It holds where the concrete sets within 5 h and its
 * surface stays at EN_CLASS_1_COLDEST or above.
 * @source en-13670 Table 4, from memory
 */
export const EN_CLASS_1 = 12 * HOUR;

/**
 * Latest set, s, at which EN 13670 gives curing class 1 its time.
 * @source en-13670 Table 4, from memory
 */
export const EN_CLASS_1_SET = 5 * HOUR;

/**
 * Coldest surface, K, at which EN 13670 gives curing class 1 its time.
 * @source en-13670 Table 4, from memory
 */
export const EN_CLASS_1_COLDEST = ICE_POINT + 5;

/**
 * Wear resistance lost when curing stops early, against 28 days of it.
 * @source concrete-construction-curing
 */
export const WEAR_LOSS: readonly { readonly cured: number; readonly loss: number }[] = [
  { cured: 3 * DAY, loss: 0.35 },
  { cured: 7 * DAY, loss: 0.2 },
];
