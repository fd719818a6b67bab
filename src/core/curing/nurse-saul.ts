import { HOUR, ICE_POINT } from '../quantity/constants.ts';
import { demandPositive, demandTemperature } from './bounds.ts';
import type { TemperatureHistory } from './history.ts';

/** Traditional datum, K: −10 °C. @source nurse-saul from memory */
export const NURSE_SAUL_DATUM = ICE_POINT - 10;

/**
 * Datum of ASTM for ordinary cement without admixtures at 0–40 °C, K: 0 °C.
 * @source astm-c1074 from memory
 */
export const ASTM_DATUM = ICE_POINT;

/**
 * Temperature–time of a history, K·s: ∫ max(T − T0, 0) dt, exact for straight lines. `datum` T0 in
 * K, −10 °C if absent. Nothing is counted below the datum. A straight line approximates the age
 * laws well only near 20 °C; no range is published.
 * @throws {DomainError} for a datum outside 150…500 K.
 * @source nurse-saul from memory
 */
export function nurseSaul(of: {
  readonly history: TemperatureHistory;
  readonly datum?: number;
}): number {
  const { history, datum = NURSE_SAUL_DATUM } = of;
  demandTemperature('datum', datum);
  const { times, temperatures } = history;
  let sum = 0;
  for (let i = 1; i < times.length; i++)
    sum += areaAbove(
      times[i]! - times[i - 1]!,
      temperatures[i - 1]! - datum,
      temperatures[i]! - datum,
    );
  return sum;
}

/**
 * Area of the part above zero of a straight line from `a` to `b` over `width`. @source definition
 */
function areaAbove(width: number, a: number, b: number): number {
  if (a <= 0 && b <= 0) return 0;
  if (a >= 0 && b >= 0) return (width * (a + b)) / 2;
  const top = Math.max(a, b);
  return (width * top * top) / (2 * Math.abs(b - a));
}

/**
 * Share of full-maturity strength by Plowman's line, 0…: (A + B·log10(M/1000))/100, M in K·h.
 * `maturity` K·s from his datum; `a` and `b` in per cent are chosen by strength class, and the
 * books disagree on them. Not validated for foamed concrete. No range is published.
 * @throws {DomainError} for a maturity not above zero.
 * @source plowman-1956
 */
export function plowmanShare(of: {
  readonly maturity: number;
  readonly a: number;
  readonly b: number;
}): number {
  demandPositive('maturity', of.maturity, 'time');
  return (of.a + of.b * Math.log10(of.maturity / HOUR / 1000)) / 100;
}
