import { DUST } from './dust.ts';
import { type Kind, type Unit, unitOf } from './kinds.ts';

/**
 * A value in SI, in another unit of its kind: `(si − offset) / factor + mark`; the dust that a far offset leaves at the
 * zero of a scale is none. No range applies.
 * @throws {RangeError} when the kind has no such unit.
 * @source nist-sp-811
 */
export function toUnit(si: number, kind: Kind, unitId: string): number {
  const { factor, mark = 0, offset = 0 } = unitOf(kind, unitId);
  const value = (si - offset) / factor + mark;
  return Math.abs(value * factor) < DUST * offset ? 0 : value;
}

/**
 * A value in a unit of its kind, in SI: `(value − mark) · factor + offset`. No range applies.
 * @throws {RangeError} when the kind has no such unit.
 * @source nist-sp-811
 */
export const fromUnit = (value: number, kind: Kind, unitId: string): number =>
  siOf(value, unitOf(kind, unitId));

/**
 * The same of a unit that was found already. No range applies.
 * @source nist-sp-811
 */
export const siOf = (value: number, { factor, mark = 0, offset = 0 }: Unit): number =>
  (value - mark) * factor + offset;
