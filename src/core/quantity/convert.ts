import { DUST } from './dust.ts';
import { type Kind, type Unit, unitOf } from './kinds.ts';

/**
 * Converts an SI value to another unit of its kind: `(si − offset) / factor + mark`. Rounding error
 * at the zero of a scale with a large offset is removed. No range applies.
 * @throws {RangeError} when the kind has no such unit.
 * @source nist-sp-811
 */
export function toUnit(si: number, kind: Kind, unitId: string): number {
  const { factor, mark = 0, offset = 0 } = unitOf(kind, unitId);
  const value = (si - offset) / factor + mark;
  return Math.abs(value * factor) < DUST * offset ? 0 : value;
}

/**
 * Converts a value in a unit of its kind to SI: `(value − mark) · factor + offset`. No range
 * applies.
 * @throws {RangeError} when the kind has no such unit.
 * @source nist-sp-811
 */
export const fromUnit = (value: number, kind: Kind, unitId: string): number =>
  siOf(value, unitOf(kind, unitId));

/**
 * The same for a unit that was already looked up. No range applies.
 * @source nist-sp-811
 */
export const siOf = (value: number, { factor, mark = 0, offset = 0 }: Unit): number =>
  (value - mark) * factor + offset;
