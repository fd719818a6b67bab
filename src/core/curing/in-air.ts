import { demandPositive, demandTemperature } from './bounds.ts';

/** The air around a part, and how fast the part takes on its temperature. */
export interface AirAround {
  /** K */
  readonly temperature: number;
  /** The time in which the difference falls to 1/e, s. */
  readonly timeConstant: number;
}

/**
 * Time constant with which a thin part takes on the temperature of the air, s: ρc·(d/2)/h.
 * `thickness` d m, of a slab or wall with both faces in the air; `heatCapacity` ρc J/(m³·K);
 * `transfer` h W/(m²·K). The part is assumed to have one temperature throughout. Range: h·(d/2)/λ
 * up to 0.1, which is some centimetres of foamed concrete. A thicker part takes longer by a share
 * d·h/(6·λ), because the heat inside must reach the faces. The heat of its cement is left out.
 * @throws {DomainError} for anything not above zero.
 * @source incropera lumped capacitance, from memory
 */
export function coolingTime(of: {
  readonly thickness: number;
  readonly heatCapacity: number;
  readonly transfer: number;
}): number {
  const { thickness, heatCapacity, transfer } = of;
  demandPositive('thickness', thickness, 'length');
  demandPositive('heatCapacity', heatCapacity, 'energy');
  demandPositive('transfer', transfer, 'thermalTransmittance');
  return (heatCapacity * thickness) / 2 / transfer;
}

/**
 * Temperature of a part after a time in the air, K: air + (from − air)·e^(−t/τ). `from` K; `time`
 * s. Range as coolingTime.
 * @source incropera lumped capacitance, from memory
 */
export const temperatureInAir = (from: number, air: AirAround, time: number): number =>
  air.temperature + (from - air.temperature) * Math.exp(-time / air.timeConstant);

/**
 * In time constants: the pieces in which the pace is integrated, and when the part has the
 * temperature of the air, to some ten-thousandths of a kelvin.
 */
const PIECE = 0.25;
const AS_THE_AIR = 12;

/**
 * Number of Newton steps within a piece, where the pace changes little: each doubles the digits.
 */
const STEPS = 4;

/**
 * How long a process takes in a part that takes on the temperature of the air, s: the t at which ∫
 * pace(T) dt from 0 to t equals `needed`, with T by temperatureInAir. `needed` is the time at pace
 * 1, s; `from` the initial temperature, K; `pace` the relative rate at a temperature, K. Integrated
 * by Gauss’s three-point rule over pieces of a quarter of the time constant. Range as coolingTime
 * and as the pace.
 * @throws {DomainError} for a time not above zero or a temperature outside 150…500 K.
 * @source fhp-1977 from memory: age as the sum of its paces
 */
export function timeInAir(of: {
  readonly needed: number;
  readonly from: number;
  readonly air: AirAround;
  readonly pace: (temperature: number) => number;
}): number {
  const { needed, from, air, pace } = of;
  demandPositive('needed', needed, 'time');
  demandTemperature('from', from);
  demandTemperature('air', air.temperature);
  demandPositive('timeConstant', air.timeConstant, 'time');
  const paceAt = (time: number) => pace(temperatureInAir(from, air, time));
  const off = Math.sqrt(0.6) / 2;
  const gained = (since: number, time: number) =>
    (time *
      (5 * paceAt(since + time * (0.5 - off)) +
        8 * paceAt(since + time / 2) +
        5 * paceAt(since + time * (0.5 + off)))) /
    18;
  const piece = PIECE * air.timeConstant;
  let [since, left] = [0, needed];
  while (since < AS_THE_AIR * air.timeConstant) {
    const more = gained(since, piece);
    if (more >= left) break;
    since += piece;
    left -= more;
  }
  let time = left / paceAt(since);
  for (let step = 0; step < STEPS; step++)
    time += (left - gained(since, time)) / paceAt(since + time);
  return since + time;
}
