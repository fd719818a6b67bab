import { demand } from '../domain-error.ts';
import { ICE_POINT } from '../quantity/constants.ts';
import { AIR_GAMMA, type AirState, airVolume, FREE_AIR } from './density.ts';

/**
 * Air in a receiver that has stood in a workshop, K: 20 °C. Common practice, no source.
 * @source common-practice
 */
const RECEIVER_TEMPERATURE = ICE_POINT + 20;

export interface ReceiverCharge {
  /** Volume of the vessel, m³. */
  readonly vessel: number;
  /** Absolute pressure when full, Pa. */
  readonly high: number;
  /** Absolute pressure below which it no longer serves, Pa. */
  readonly low: number;
  /** Temperature of the air in it, K; `RECEIVER_TEMPERATURE` when left out. */
  readonly temperature?: number;
  /** The state that free air is stated at, `FREE_AIR` if omitted. */
  readonly free?: AirState;
}

export interface ReceiverContents {
  /** Free air given by a slow draw, the air in the vessel staying at its temperature, m³. */
  readonly slow: number;
  /** Free air from a draw so fast that no heat enters before the low pressure is reached, m³. */
  readonly fast: number;
}

/**
 * How much free air does a receiver give between two pressures?
 *
 * Slow: V (high − low)/pfree × Tfree/T. Fast: V high/pfree × Tfree/T [1 − (low/high)^(1/γ)], since
 * the air left behind is cold; the rest becomes available as it warms up again.
 * @returns free air, m³: a real draw lies between the two. An ideal gas. Pressures are absolute:
 *   gauge plus the atmosphere. No range is published.
 * @throws {DomainError} a vessel not positive, low below 0, high not above low
 * @source common-practice the laws of Boyle and Poisson
 */
export function receiverContents(charge: ReceiverCharge): ReceiverContents {
  const { vessel, high, low, temperature = RECEIVER_TEMPERATURE, free = FREE_AIR } = charge;
  demand('vessel', vessel, 'volume', { min: 0, aboveMin: true });
  demand('low', low, 'pressure', { min: 0 });
  demand('high', high, 'pressure', { min: low, aboveMin: true });
  const all = airVolume({ volume: vessel, from: { pressure: high, temperature }, to: free });
  return { slow: all * (1 - low / high), fast: all * (1 - (low / high) ** (1 / AIR_GAMMA)) };
}

export interface CompressorBalance {
  /** Share of the time the compressor must run, above 1 when it cannot keep up. */
  readonly duty: number;
  /** Free air delivered beyond the demand, m³/s; negative when short. */
  readonly spare: number;
  /** How long the receiver covers the shortage, s. Infinity when there is none. */
  readonly lasts: number;
  /** How long the compressor takes to fill the receiver again with no draw, s. */
  readonly recovers: number;
}

/**
 * Can the compressor keep up? Duty = demand/delivery; a shortage is met from the receiver for
 * contents/(demand − delivery).
 *
 * `delivery` is free air delivered at the working pressure, not the swept volume often printed
 * larger on the machine.
 *
 * @param demand free air used, m³/s
 * @param delivery free air delivered, m³/s, same state
 * @param contents free air held between the pressures, m³, from `receiverContents`
 * @returns duty, spare flow in m³/s, times in s. No range is published: a volume balance.
 * @throws {DomainError} a negative demand or contents, a delivery not positive
 * @source iso-1217 free air delivery
 * @source common-practice volume balance
 */
export function compressorBalance(flows: {
  readonly demand: number;
  readonly delivery: number;
  readonly contents: number;
}): CompressorBalance {
  const { delivery, contents } = flows;
  demand('demand', flows.demand, 'flow', { min: 0 });
  demand('delivery', delivery, 'flow', { min: 0, aboveMin: true });
  demand('contents', contents, 'volume', { min: 0 });
  const spare = delivery - flows.demand;
  return {
    duty: flows.demand / delivery,
    spare,
    lasts: spare < 0 ? contents / -spare : Number.POSITIVE_INFINITY,
    recovers: contents / delivery,
  };
}
