import { type Kind, unitOf } from './kinds.ts';

/**
 * A value in SI, in another unit of its kind: `(si − offset) / factor + mark`. No range applies.
 * @throws {RangeError} when the kind has no such unit.
 * @source nist-sp-811
 */
export function toUnit(si: number, kind: Kind, unitId: string): number {
  const { factor, mark = 0, offset = 0 } = unitOf(kind, unitId);
  return (si - offset) / factor + mark;
}

/**
 * A value in a unit of its kind, in SI: `(value − mark) · factor + offset`. No range applies.
 * @throws {RangeError} when the kind has no such unit.
 * @source nist-sp-811
 */
export function fromUnit(value: number, kind: Kind, unitId: string): number {
  const { factor, mark = 0, offset = 0 } = unitOf(kind, unitId);
  return (value - mark) * factor + offset;
}
